#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-2.0-or-later
# loader_test.sh PREFIX: the installed loader in qgis_process, and the library's plain C face in PyQGIS programs.
# shellcheck source-path=SCRIPTDIR source=surroundings.sh
. "$(dirname "${BASH_SOURCE[0]}")/surroundings.sh"

prefix=${1:?give the prefix Brushline is installed in}
library=$prefix/lib/qgis/plugins/libbrushline.so
[ -f "$library" ] || fail "$library is not there."

process() { # process ARGUMENTS: output in $temporary/out, both streams; the host's exit code
  timeout 60 "$host" "$@" >"$temporary/out" 2>&1
}
expect() { # expect COUNT PATTERN: lines of the last output that match
  local found
  found=$(grep -c -e "$2" "$temporary/out" || true)
  if [ "$found" != "$1" ]; then
    cat "$temporary/out"
    fail "expected $1 line(s) with '$2' in the output above, found $found."
  fi
}

echo "-- qgis_process: enabling, list, help"
use_plugin "$prefix"
process list || fail "list: $(cat "$temporary/out")"
expect 1 '^Brushline$'
expect 1 'annotatelegs'
process help brushline:annotatelegs || fail "help: $(cat "$temporary/out")"
expect 1 'CAUTION'
expect 1 '^INPUT: '

echo "-- qgis_process: run"
process run brushline:annotatelegs -- INPUT="$sample/sample.gpkg|layername=routes" ROUTE_FIELD=route \
  POINTS="$sample/sample.gpkg|layername=points" DATE=2026-06-20 OUTPUT="$temporary/legs.gpkg" ||
  fail "run: $(cat "$temporary/out")"
expect 1 '^LEG_COUNT:.17$'
expect 1 '^ROUTE_COUNT:.3$'
[ -s "$temporary/legs.gpkg" ] || fail "run wrote no legs."

echo "-- qgis_process: run, JSON out"
process --json run brushline:annotatelegs -- INPUT="$sample/sample.gpkg|layername=routes" DATE=2026-06-20 \
  OUTPUT="$temporary/json.gpkg" || fail "JSON run: $(cat "$temporary/out")"
expect 1 '"LEG_COUNT": 17'

echo "-- qgis_process: functions in expressions, the same numbers as the algorithms"
python=$(find_python)
all_true() { # all_true LAYER EXPRESSION: it is true for each of its features
  process run native:fieldcalculator -- INPUT="$1" FIELD_NAME=same FIELD_TYPE=1 FORMULA="$2" \
    OUTPUT="$temporary/calculated.gpkg" || fail "field calculator: $(cat "$temporary/out")"
  "$python" - "$temporary/calculated.gpkg" <<'EOF' || fail "$2 is not true everywhere"
import sqlite3
import sys
same = [row[0] for row in sqlite3.connect(sys.argv[1]).execute("select same from calculated")]
sys.exit(not same or set(same) != {1})
EOF
}
all_true "$temporary/legs.gpkg" 'brushline_dial("true_brg", $geometry, "date") = "dial"'
all_true "$temporary/legs.gpkg" 'brushline_compass_point("dial") = "compass_pt" and brushline_paces("dist_m", 130) = "paces"'
process run brushline:fieldatpoints -- INPUT="$sample/sample.gpkg|layername=points" DATE=2026-06-20 \
  OUTPUT="$temporary/field.gpkg" || fail "field at points: $(cat "$temporary/out")"
all_true "$temporary/field.gpkg" "brushline_declination(\$geometry, date:='2026-06-20') = \"decl\""
all_true "$temporary/field.gpkg" "brushline_declination(\$x, \$y, 'EPSG:32621', '2026-06-20') = \"decl\""
if process run native:fieldcalculator -- INPUT="$temporary/field.gpkg" FIELD_NAME=same FIELD_TYPE=0 \
  FORMULA="brushline_declination(\$geometry, date:='1999-01-01')" OUTPUT="$temporary/bad.gpkg"; then
  fail "a day that no model reaches was taken."
fi
grep -q 'give a date within them' "$temporary/out" || fail "not told what to do: $(cat "$temporary/out")"
rm -f "$temporary/bad.gpkg"

echo "-- qgis_process: a bad value is refused, with a code that scripts can see"
if process run brushline:annotatelegs -- INPUT="$sample/sample.gpkg|layername=routes" DIAL_STEP=-1 \
  OUTPUT="$temporary/bad.gpkg"; then
  cat "$temporary/out"
  fail "a graduation of -1 was accepted."
fi
expect 0 'Segmentation'
[ ! -e "$temporary/bad.gpkg" ] || fail "a refused run left a file."

echo "-- a library that cannot be loaded: one line, no crash"
broken=$temporary/broken
mkdir -p "$broken/lib/qgis/plugins" "$broken/share/qgis/python/plugins"
cp -r "$QGIS_PLUGINPATH/brushline" "$broken/share/qgis/python/plugins/"
echo "built for another host" >"$broken/lib/qgis/plugins/libbrushline.so"
QGIS_PLUGINPATH=$broken/share/qgis/python/plugins
process list || fail "list with a broken library: $(cat "$temporary/out")"
expect 0 'annotatelegs'
expect 1 'Brushline cannot be loaded in QGIS'
expect 0 'Traceback'
expect 1 'native:centroids' # the host's own go on working

for step in early counted after_exit destroyed loader_and_library broken; do
  echo "-- PyQGIS: $step"
  timeout 60 "$python" "$tests/loader_check.py" "$step" "$prefix" "$broken" "$sample" >"$temporary/out" 2>&1 || {
    code=$?
    cat "$temporary/out"
    fail "loader_check.py $step ended with $code."
  }
  expect 1 '^done$'
done
echo "passed"
