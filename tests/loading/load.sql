-- sqlite3: the columns are declared as text before the file is imported; .import into a new table would do as well (it makes text
-- columns), but a column declared INTEGER or NUMERIC turns 06 into 6.
.mode csv
CREATE TABLE end_points (chart TEXT, cone TEXT NOT NULL, cone_rank REAL, rate_celsius_per_hour REAL, celsius REAL, fahrenheit REAL, source TEXT, confidence TEXT, note TEXT);
.import --skip 1 data/end-points.csv end_points
.mode list
SELECT CASE WHEN
  (SELECT celsius FROM end_points WHERE chart = 'witness-self-supporting' AND cone = '06' AND rate_celsius_per_hour = 60) = 998 AND
  (SELECT celsius FROM end_points WHERE chart = 'witness-self-supporting' AND cone = '6' AND rate_celsius_per_hour = 60) = 1222 AND
  (SELECT group_concat(cone) FROM (SELECT cone FROM end_points WHERE chart = 'witness-self-supporting' AND rate_celsius_per_hour = 60
   AND cone IN ('6', '06', '05.5', '1') ORDER BY cone_rank)) = '06,05.5,1,6'
THEN 'zeros kept' ELSE 'ZEROS LOST' END;
-- The careless way: an affinity for numbers.
.mode csv
CREATE TABLE careless (chart TEXT, cone NUMERIC, cone_rank REAL, rate_celsius_per_hour REAL, celsius REAL, fahrenheit REAL, source TEXT, confidence TEXT, note TEXT);
.import --skip 1 data/end-points.csv careless
.mode list
SELECT CASE WHEN (SELECT count(*) FROM careless WHERE CAST(cone AS TEXT) = '06') = 0 AND
  -- The rank tells them apart all the same.
  (SELECT count(DISTINCT celsius) FROM careless WHERE chart = 'witness-self-supporting' AND rate_celsius_per_hour = 60 AND cone_rank IN (-6, 6)) = 2
THEN 'careless loses them' ELSE 'CARELESS KEEPS THEM' END;
