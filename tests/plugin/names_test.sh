#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-2.0-or-later
# names_test.sh PREFIX SCHEMA: names that attack whatever reads them (markup, formulas, paths, SQL, control and direction
# signs, names of 1 MB) come through every output as plain text. SCHEMA is where the schema of GPX 1.1 is put.
# shellcheck source-path=SCRIPTDIR source=surroundings.sh
. "$(dirname "${BASH_SOURCE[0]}")/surroundings.sh"
prefix=${1:?give the prefix Brushline is installed in}
schema=${2:?give the place of the schema}
python=$(find_python)
helper() { "$python" "$tests/names_test.py" "$@"; }
for program in xmllint tidy pdftotext; do
  command -v $program >/dev/null || fail "there is no $program (Debian: libxml2-utils, tidy, poppler-utils)."
done
"$tests/../handouts/gpx_schema.sh" "$schema" || fail "no schema."
use_plugin "$prefix"

all=$temporary/all.log
process() { # process ID ARGUMENTS
  timeout 120 "$host" run "brushline:$1" -- "${@:2}" >"$temporary/out" 2>&1 || fail "$1: $(cat -v "$temporary/out")"
  # What the host itself says of the parameters ends with its first empty lines.
  sed '1,/^----------------$/d' "$temporary/out" | sed '1,/^$/d' >>"$all"
}
work="$temporary/work"
mkdir "$work"
helper make "$work"
layer() { printf '%s|layername=%s' "$work/$1.gpkg" "$2"; }
annotate() { # annotate FILE FOLDER ENDING ...: the legs of its routes
  process annotatelegs INPUT="$(layer "$1" routes)" ROUTE_FIELD=route POINTS="$(layer "$1" points)" POINT_NAME=name \
    COVER="$(layer "$1" cover)" COVER_CLASS=class COVER_TABLE="$(layer "$1" kinds)" DATE=2026-06-20 \
    OUTPUT="$2/legs.$3" "${@:4}"
}
hand_out() { # hand_out FILE FOLDER
  local legs=(INPUT="$2/legs.gpkg" MARKS="$2/marks.gpkg" TITLE="<b>=Title</b> & \"more\"")
  process legtables "${legs[@]}" FORMAT=2 FOLDER="$2/tables"
  process legcards "${legs[@]}" FEATURES="$(layer "$1" met)" FOLDER="$2/cards"
  process exportgpx "${legs[@]}" OUTPUT="$2/legs.gpx"
}

echo "-- harmless names, to compare with"
plain=$work/plain
mkdir "$plain"
annotate plain "$plain" gpkg MARKS="$plain/marks.gpkg"
hand_out plain "$plain"

echo "-- names of routes, points and classes"
nasty=$work/nasty
mkdir "$nasty"
annotate names "$nasty" gpkg MARKS="$nasty/marks.gpkg"
annotate names "$nasty" csv
annotate names "$nasty" geojson
before=$(find "$work" -maxdepth 2 | sort)
hand_out names "$nasty"
after=$(find "$work" -maxdepth 2 ! -path "$nasty/tables" ! -path "$nasty/cards" ! -path "$nasty/legs.gpx" | sort)
[ "$before" = "$after" ] || fail "files outside the folder: $(diff <(echo "$before") <(echo "$after"))"
echo "-- names of walkers"
walkers=$work/walkers
mkdir "$walkers"
process annotatelegs INPUT="$(layer plain routes)|subset=fid = 1" ROUTE_FIELD=route DATE=2026-06-20 \
  WALKERS="$(layer names walkers)" OUTPUT="$walkers/legs.gpkg" MARKS="$walkers/marks.gpkg"
hand_out plain "$walkers"

faults=0
check() { helper "$@" || faults=$((faults + 1)); }
check layers "$nasty"
for each in "$nasty:route" "$walkers:walker"; do
  check tables "${each%:*}/tables" "$plain/tables" "${each#*:}"
  check cards "${each%:*}/cards" "$plain/cards"
  xmllint --noout --nonet --schema "$schema" "${each%:*}/legs.gpx" 2>/dev/null || {
    xmllint --noout --nonet --schema "$schema" "${each%:*}/legs.gpx" 2>&1 | tail -n 3
    faults=$((faults + 1))
  }
  check gpx "${each%:*}/legs.gpx" "${each#*:}"
  for page in "${each%:*}/tables/"*.html "${each%:*}/cards/"*.html; do
    tidy -e -q "$page" 2>"$temporary/tidy" || { echo "$page: $(head -n 3 "$temporary/tidy")"; faults=$((faults + 1)); break; }
  done
done

echo "-- messages: classes that no table knows, names that stand twice"
if (process annotatelegs INPUT="$(layer names routes)" ROUTE_FIELD=route COVER="$(layer names cover)" \
  COVER_CLASS=class DATE=2026-06-20 OUTPUT="$work/unknown.gpkg") 2>/dev/null; then
  fail "classes that no table knows were taken."
fi
cp "$temporary/out" "$temporary/refused"
process featuresmet INPUT="$(layer names routes)" ROUTE_FIELD=route FEATURES="$(layer names points)" \
  FEATURE_NAME=name OUTPUT="$work/met.gpkg"
check log "$all"
check log "$temporary/refused"
grep -qF '“%1 %n %2” (1)' "$temporary/refused" || { echo "   a name with %1 is changed"; faults=$((faults + 1)); }

echo "-- what the desktop shows when the pointer rests on a leg"
check tips "$tests/../../algorithms"

echo "-- names of 1 MB: bounds on time and memory"
long=$work/long
mkdir "$long"
seconds=40 megabytes=1200
big() { # big ID ARGUMENTS
  helper run "$seconds" "$megabytes" "$host" run "brushline:$1" -- "${@:2}" >"$temporary/out" 2>&1 || {
    echo "   $1: $(tail -n 3 "$temporary/out" | cut -c 1-300)"
    faults=$((faults + 1))
  }
  grep -a ' MB$' "$temporary/out" | sed "s/^/   $1:/" || true
}
big annotatelegs INPUT="$(layer long routes)" ROUTE_FIELD=route POINTS="$(layer long points)" POINT_NAME=name \
  COVER="$(layer long cover)" COVER_CLASS=class COVER_TABLE="$(layer long kinds)" DATE=2026-06-20 \
  OUTPUT="$long/legs.gpkg" MARKS="$long/marks.gpkg"
big legtables INPUT="$long/legs.gpkg" FORMAT=2 FOLDER="$long/tables"
big legcards INPUT="$long/legs.gpkg" MARKS="$long/marks.gpkg" FEATURES="$(layer long met)" FOLDER="$long/cards"
big exportgpx INPUT="$long/legs.gpkg" OUTPUT="$long/legs.gpx"
check cards "$long/cards" "$plain/cards" 4
[ "$faults" = 0 ] || fail "$faults checks, see above."
echo "passed"
