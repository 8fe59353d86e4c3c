#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-2.0-or-later
# gpx_readback_test.sh PREFIX SCHEMA: exports the sample's legs and marks through qgis_process, and reads the file with
# xmllint (against the schema of GPX 1.1, which is put at SCHEMA), gpxpy and GDAL.
# shellcheck source-path=SCRIPTDIR source=../plugin/surroundings.sh
here=$(cd -P "$(dirname "${BASH_SOURCE[0]}")" && pwd)
. "$here/../plugin/surroundings.sh"

prefix=${1:?give the prefix Brushline is installed in}
schema=${2:?give the place of the schema}
command -v xmllint >/dev/null || fail "xmllint is not there (Debian: libxml2-utils)."
python=$(find_python)
"$python" -c 'import gpxpy' || fail "$python has no module gpxpy (Debian: python3-gpxpy)."
"$here/gpx_schema.sh" "$schema" || fail "no schema."

process() {
  timeout 120 "$host" "$@" >"$temporary/out" 2>&1 || fail "$*: $(cat "$temporary/out")"
}
use_plugin "$prefix"
process run brushline:annotatelegs -- INPUT="$sample/sample.gpkg|layername=routes" ROUTE_FIELD=route \
  POINTS="$sample/sample.gpkg|layername=points" DEM="$sample/terrain.tif" \
  COVER="$sample/sample.gpkg|layername=cover" COVER_CLASS=class WALKERS="$sample/sample.gpkg|layername=walkers" \
  DIRECTION=2 DATE=2026-06-20 OUTPUT="$temporary/legs.gpkg" MARKS="$temporary/marks.gpkg"
for one in false true; do
  echo "-- ONE_ROUTE=$one"
  process run brushline:exportgpx -- INPUT="$temporary/legs.gpkg" MARKS="$temporary/marks.gpkg" ONE_ROUTE=$one \
    OUTPUT="$temporary/$one.gpx"
  grep -q '^ROUTE_COUNT:' "$temporary/out" || fail "no ROUTE_COUNT: $(cat "$temporary/out")"
  xmllint --noout --nonet --schema "$schema" "$temporary/$one.gpx" || fail "not valid by the schema."
  "$python" "$here/gpx_readback_check.py" "$temporary/legs.gpkg" "$temporary/marks.gpkg" "$temporary/$one.gpx" $one ||
    fail "the file does not say what the layer says."
done
echo "-- a file that is not valid is found out"
sed 's/magvar>/magvra>/g' "$temporary/true.gpx" >"$temporary/wrong.gpx"
xmllint --noout --nonet --schema "$schema" "$temporary/wrong.gpx" 2>/dev/null && fail "the schema takes anything."
echo "passed"
