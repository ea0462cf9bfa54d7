-- sqlite3: the columns are declared as text before the file is imported; .import into a new table would do as well (it makes text
-- columns), but a column declared INTEGER or NUMERIC turns 06 into 6.
.mode csv
CREATE TABLE end_points (chart TEXT, cone TEXT NOT NULL, rate_celsius_per_hour REAL, celsius REAL, fahrenheit REAL, source TEXT, confidence TEXT, note TEXT);
.import --skip 1 data/end-points.csv end_points
.mode list
SELECT CASE WHEN
  (SELECT celsius FROM end_points WHERE chart = 'witness-self-supporting' AND cone = '06' AND rate_celsius_per_hour = 60) = 998 AND
  (SELECT celsius FROM end_points WHERE chart = 'witness-self-supporting' AND cone = '6' AND rate_celsius_per_hour = 60) = 1222
THEN 'zeros kept' ELSE 'ZEROS LOST' END;
-- The careless way: an affinity for numbers.
.mode csv
CREATE TABLE careless (chart TEXT, cone NUMERIC, rate_celsius_per_hour REAL, celsius REAL, fahrenheit REAL, source TEXT, confidence TEXT, note TEXT);
.import --skip 1 data/end-points.csv careless
.mode list
SELECT CASE WHEN (SELECT count(*) FROM careless WHERE CAST(cone AS TEXT) = '06') = 0 THEN 'careless loses them' ELSE 'CARELESS KEEPS THEM' END;
