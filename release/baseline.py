"""Copies a package with its reference assembly in place of the assembly, and without texts: baseline.py PACKAGE ASSEMBLY COPY"""

import pathlib
import sys
import zipfile

package, assembly, copy = map(pathlib.Path, sys.argv[1:])
with zipfile.ZipFile(package) as whole, zipfile.ZipFile(copy, "w") as kept:
    for name in whole.namelist():
        if name == f"lib/net10.0/{assembly.name}":
            kept.writestr(name, assembly.read_bytes())
        elif not name.startswith("lib/"):
            kept.writestr(name, whole.read(name))
