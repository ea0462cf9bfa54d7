#!/usr/bin/env bash
# A spreadsheet: import the file with the cone column set to text (in the import dialogue, mark the column and choose the type Text;
# do not double-click the file). Here with LibreOffice: filter option 5 gives each column a format, 2 is text, 1 is standard.
set -euo pipefail
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
convert() { soffice --headless "-env:UserInstallation=file://$work/profile" --infilter="CSV:44,34,76,1,$1" --convert-to csv:"Text - txt - csv (StarCalc)":44,34,76,1,,0,false,true --outdir "$work/$2" data/end-points.csv > /dev/null 2>&1; }
convert 2/2 careful
convert '' careless
grep -q '^witness-self-supporting,06,-6,60,998,' "$work/careful/end-points.csv" || { echo "zeros lost"; exit 1; }
grep -q '^witness-self-supporting,6,6,60,1222,' "$work/careful/end-points.csv" || { echo "zeros lost"; exit 1; }
! grep -q '^witness-self-supporting,06,' "$work/careless/end-points.csv" || { echo "careless keeps them"; exit 1; }
# Even there the rank tells the two apart.
grep -q '^witness-self-supporting,6,-6,60,998,' "$work/careless/end-points.csv" || { echo "rank lost"; exit 1; }
echo "zeros kept"
