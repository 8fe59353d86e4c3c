#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-2.0-or-later
# leg_tables_files_test.sh PROGRAM: has the test program write tables, then puts the pages before tidy and the CSV files
# before Python's csv module and GDAL.
set -euo pipefail

program=${1:?give the path of leg_tables_algorithm_test}
here=$(cd -P "$(dirname "${BASH_SOURCE[0]}")" && pwd)
temporary=$(mktemp -d)
trap 'rm -rf "$temporary"' EXIT
export LC_ALL=C.UTF-8 QT_QPA_PLATFORM=offscreen PYTHONWARNINGS=ignore PYTHONDONTWRITEBYTECODE=1

fail() {
  printf 'FAILED: %s\n' "$*" >&2
  exit 1
}
command -v tidy >/dev/null || fail "there is no tidy here (Debian: tidy)."
python=
for each in /usr/bin/python3 python3; do
  if "$each" -c 'from osgeo import ogr' 2>/dev/null; then
    python=$each
    break
  fi
done
[ -n "$python" ] || fail "no python3 here has the module osgeo (Debian: python3-gdal)."

BRUSHLINE_FILES=$temporary "$program" filesForOtherPrograms >"$temporary/out" 2>&1 || fail "$(cat "$temporary/out")"

pages=0
while IFS= read -r -d '' page; do
  pages=$((pages + 1))
  tidy -e -q --show-warnings yes "$page" 2>"$temporary/tidy" || fail "$page: $(cat "$temporary/tidy")"
  [ ! -s "$temporary/tidy" ] || fail "$page: $(cat "$temporary/tidy")"
done < <(find "$temporary" -name '*.html' -print0)
[ "$pages" -gt 80 ] || fail "only $pages pages were written."
echo "$pages pages: no errors, no warnings"

# That it can fail:
printf '<!DOCTYPE html><html lang="en"><head><title>x</title></head><body><b>x</body></html>' >"$temporary/bad.html"
! tidy -e -q "$temporary/bad.html" 2>/dev/null || fail "tidy finds nothing wrong with a page that is."

for each in crooked nasty full bare; do
  "$python" "$here/leg_tables_files_check.py" "$temporary/$each.gpkg" "$temporary/$each" ||
    fail "the CSV files of $each."
done
