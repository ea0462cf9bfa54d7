"""Dates bills of materials by a time that is given, and orders their components: sbom.py SECONDS FILE…"""

import datetime
import json
import pathlib
import sys

time = datetime.datetime.fromtimestamp(int(sys.argv[1]), datetime.timezone.utc).strftime("%Y-%m-%dT%H:%M:%SZ")
for path in map(pathlib.Path, sys.argv[2:]):
    bill = json.loads(path.read_text(encoding="utf-8-sig"))
    bill["metadata"]["timestamp"] = time
    bill["components"].sort(key=lambda component: component["bom-ref"])
    bill["dependencies"].sort(key=lambda dependency: dependency["ref"])
    path.write_text(json.dumps(bill, ensure_ascii=False, indent=2) + "\n", encoding="utf-8")
