"""Dates a bill of materials by a time that is given, orders its components, and holds it against the lock file:
sbom.py SECONDS PROJECT_DIRECTORY FILE. Fails, naming them, when packages are missing or have another version."""

import datetime
import json
import pathlib
import sys

seconds, project, path = int(sys.argv[1]), pathlib.Path(sys.argv[2]), pathlib.Path(sys.argv[3])
bill = json.loads(path.read_text(encoding="utf-8-sig"))

# What is only built with, and goes nowhere with what is built.
frameworks = json.loads((project / "obj" / "project.assets.json").read_text(encoding="utf-8"))["project"]["frameworks"]
private = {name for framework in frameworks.values() for name, of in framework["dependencies"].items() if of.get("suppressParent") == "All"}
locked = {
    (name.lower(), package["resolved"])
    for framework in json.loads((project / "packages.lock.json").read_text(encoding="utf-8"))["dependencies"].values()
    for name, package in framework.items()
    if package["type"] != "Project" and name not in private
}
named = {(component["name"].lower(), component["version"]) for component in bill["components"]}
if missing := sorted(locked - named):
    sys.exit(f"{path.name} lacks {len(missing)} of {len(locked)} packages: {', '.join(f'{name} {version}' for name, version in missing)}.")

bill["metadata"]["timestamp"] = datetime.datetime.fromtimestamp(seconds, datetime.timezone.utc).strftime("%Y-%m-%dT%H:%M:%SZ")
bill["components"].sort(key=lambda component: component["bom-ref"])
bill["dependencies"].sort(key=lambda dependency: dependency["ref"])
path.write_text(json.dumps(bill, ensure_ascii=False, indent=2) + "\n", encoding="utf-8")
