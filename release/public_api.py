"""Brings the lists of what a package has public up to date with what its build warned of: public_api.py PROJECT LOG [--ship]"""

import pathlib
import re
import sys

HEADER = "#nullable enable"
project, log = pathlib.Path(sys.argv[1]), pathlib.Path(sys.argv[2]).read_text(encoding="utf-8")
ship = sys.argv[3:] == ["--ship"]
files = {name: project / f"PublicAPI.{name}.txt" for name in ("Shipped", "Unshipped")}


def read(name):
    return [line for line in files[name].read_text(encoding="utf-8").splitlines() if line and line != HEADER]


def found(code):
    """The symbols of a warning, as the analyzer writes them."""
    return {symbol for symbol in re.findall(rf"(?:warning|error) {code}: Symbol '(.+?)' (?:is not part|is part) of", log)}


shipped, unshipped, new, gone = read("Shipped"), read("Unshipped"), found("RS0016"), found("RS0017")
broken = sorted(gone & set(shipped))
unshipped = sorted((set(unshipped) - gone) | new)
if ship:
    shipped, unshipped = sorted(set(shipped) | set(unshipped)), []
for name, lines in (("Shipped", shipped), ("Unshipped", unshipped)):
    files[name].write_text("\n".join([HEADER, *lines]) + "\n", encoding="utf-8")
for other in sorted(set(re.findall(r"warning (RS00(?!16|17)\d\d: .+?) \[", log))):
    print(other)
print(f"{project.name}: {len(shipped)} shipped, {len(unshipped)} not yet, {len(new)} new, {len(gone)} gone")
if broken:
    sys.exit("\n".join(["Shipped and gone, which breaks who builds on it; take these out of the list by hand if it must be:", *broken]))
