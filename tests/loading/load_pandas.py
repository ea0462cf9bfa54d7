"""pandas: read the cone columns as text; left to itself it makes numbers of them, and 06 and 6 are one cone."""
import pandas as pd

cells = pd.read_csv("data/end-points.csv", dtype={"cone": "string"})
chart = cells[(cells["chart"] == "witness-self-supporting") & (cells["rate_celsius_per_hour"] == 60)].set_index("cone")["celsius"]
assert chart["06"] == 998 and chart["6"] == 1222, "zeros lost"
by_rank = cells.sort_values("cone_rank", kind="stable")["cone"].drop_duplicates().tolist()
assert by_rank.index("06") < by_rank.index("05.5") < by_rank.index("1") < by_rank.index("6"), "order lost"
cones = pd.read_csv("data/cones.csv", dtype={"id": "string"})
assert cones["id"].is_unique and {"06", "6"} <= set(cones["id"]), "zeros lost"
joined = cells.merge(cones, left_on=["cone", "cone_rank"], right_on=["id", "position"])
assert len(joined) == len(cells), "join lost"

careless = pd.read_csv("data/processes.csv")["cone_min"].astype("string")
assert not any(c.startswith("0") for c in careless.dropna()), "careless keeps them"
print("zeros kept")
