"""Printed end points of a cone, from the data package's files alone: end_points.py DIRECTORY 06"""

import csv
import pathlib
import sys

directory, cone = pathlib.Path(sys.argv[1]), sys.argv[2]
with open(directory / "end-points.csv", encoding="utf-8", newline="") as file:
    # Every cell is text, and so is a cone: 06 is not 6.
    for row in csv.DictReader(file):
        if row["cone"] == cone:
            print(f"{row['chart']}: {row['celsius']} °C at {row['rate_celsius_per_hour']} °C/h ({row['confidence']})")
