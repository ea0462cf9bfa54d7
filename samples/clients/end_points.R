# Printed end points of a cone, from the data package's files alone: Rscript end_points.R DIRECTORY 06
arguments <- commandArgs(trailingOnly = TRUE)
# Every cell is text, and so is a cone: 06 is not 6.
points <- read.csv(file.path(arguments[1], "end-points.csv"), colClasses = "character", encoding = "UTF-8")
found <- points[points$cone == arguments[2], ]
cat(sprintf("%s: %s °C at %s °C/h (%s)\n", found$chart, found$celsius, found$rate_celsius_per_hour, found$confidence), sep = "")
