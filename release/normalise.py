"""Writes NuGet packages anew so that the same contents are the same bytes: normalise.py PACKAGE…

Names and ids that the packer draws by chance, its own version and the times of files are replaced; the order is that of names.
"""

import hashlib
import pathlib
import re
import sys
import zipfile

# The first moment that an archive can tell.
TIME = (1980, 1, 1, 0, 0, 0)
PROPERTIES = "package/services/metadata/core-properties/package.psmdcp"


def normalised(path):
    with zipfile.ZipFile(path) as package:
        parts = {info.filename: package.read(info) for info in package.infolist() if not info.is_dir()}
    drawn = next(name for name in parts if name.endswith(".psmdcp"))
    properties = re.sub(rb"(<lastModifiedBy>).*?(</lastModifiedBy>)", rb"\1NuGet\2", parts.pop(drawn))
    relations = parts["_rels/.rels"].decode("utf-8").replace(drawn, PROPERTIES)
    ids = iter(range(1, 100))
    parts["_rels/.rels"] = re.sub(r' Id="[^"]+"', lambda _: f' Id="R{next(ids)}"', relations).encode("utf-8")
    parts[PROPERTIES] = properties
    return parts


for path in map(pathlib.Path, sys.argv[1:]):
    parts = normalised(path)
    with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED, compresslevel=9) as package:
        for name in sorted(parts):
            entry = zipfile.ZipInfo(name, TIME)
            entry.compress_type, entry.create_system, entry.external_attr = zipfile.ZIP_DEFLATED, 3, 0o644 << 16
            package.writestr(entry, parts[name])
    print(hashlib.sha256(path.read_bytes()).hexdigest(), path.name)
