# R: name the class of the cone columns; left to itself read.csv makes numbers of a column that looks like numbers.
cells <- read.csv("data/end-points.csv", colClasses = c(cone = "character"), encoding = "UTF-8")
at <- function(cone) cells$celsius[cells$chart == "witness-self-supporting" & cells$cone == cone & !is.na(cells$rate_celsius_per_hour) & cells$rate_celsius_per_hour == 60]
stopifnot(at("06") == 998, at("6") == 1222)
sorted <- cells[order(cells$cone_rank), ]
first <- function(cone) match(cone, sorted$cone)
stopifnot(first("06") < first("05.5"), first("05.5") < first("1"), first("1") < first("6"))

careless <- read.csv("data/processes.csv")$cone_min
stopifnot(!any(startsWith(as.character(careless[!is.na(careless)]), "0")))
cat("zeros kept\n")
