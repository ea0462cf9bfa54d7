"""Python's own csv module reads every cell as text: nothing to do but to leave it so."""
import csv

with open("data/end-points.csv", encoding="utf-8", newline="") as file:
    cells = {(row["chart"], row["cone"], row["rate_celsius_per_hour"]): row["celsius"] for row in csv.DictReader(file)}
assert cells["witness-self-supporting", "06", "60"] == "998", "zeros lost"
assert cells["witness-self-supporting", "6", "60"] == "1222", "zeros lost"
with open("data/end-points.csv", encoding="utf-8", newline="") as file:
    ranks = {row["cone"]: float(row["cone_rank"]) for row in csv.DictReader(file)}
assert sorted(["6", "1", "06", "05.5"], key=ranks.get) == ["06", "05.5", "1", "6"], "order lost"
assert int("06") == int("6")  # the careless way: a number of it
print("zeros kept")
