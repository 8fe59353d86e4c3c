#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-2.0-or-later
# Time and memory of qgis_process for growing input, and what is refused before the work starts; a Markdown table.
#
#   limits.sh PREFIX [--quick | --full] [--out FILE]
#
# PREFIX   where the plugin is installed
# --quick  small sizes: shows that it runs
# --full   the greatest too: 10 million legs, 100 million cells (hours, and some 10 GB of room in TMPDIR)
# --out    else sample-project/manual/limits-table.md, which the manual includes
# shellcheck source-path=SCRIPTDIR source=../plugin/surroundings.sh
source "$(dirname "${BASH_SOURCE[0]}")/../plugin/surroundings.sh"
# shellcheck source-path=SCRIPTDIR source=measure.sh
source "$(dirname "${BASH_SOURCE[0]}")/measure.sh"
bench=$(cd -P "$tests/../bench" && pwd)
[ -d "${1:-}" ] || fail "say where the plugin is installed: limits.sh PREFIX"
prefix=$(realpath "$1") && shift
sizes=usual out=$sample/manual/limits-table.md
while [ $# -gt 0 ]; do
  case $1 in
  --quick | --full) sizes=${1#--} ;;
  --out) out=$(realpath "$2") && shift ;;
  *) fail "unknown: $1" ;;
  esac
  shift
done
python=$(find_python)
use_plugin "$prefix"
table=$temporary/table
result=$temporary/result

# steps QUICK USUAL FULL: the sizes that hold, each list a word.
steps() {
  case $sizes in
  quick) echo "$1" ;;
  usual) echo "$2" ;;
  full) echo "$2 $3" ;;
  esac
}
make() { "$python" "$bench/make_input.py" "$@" || fail "no input: $*"; }
grouped() { printf "%'d" "$1" | sed 's/,/ /g'; }

# ask ALGORITHM KEY=VALUE...: measures it, with $result empty before; its exit code.
ask() {
  local algorithm=$1 code=0
  shift
  rm -rf "$result" && mkdir "$result"
  measure "$host" run "brushline:$algorithm" -- "$@" || code=$?
  ! grep -q 'not specified' "$temporary/said" || fail "$algorithm was not asked: $(cat "$temporary/said")"
  return "$code"
}

# row WHAT SIZE ALGORITHM KEY=VALUE...: runs it and writes a line; a run that fails is told too.
row() {
  local what=$1 size=$2 algorithm=$3 remark=''
  shift 3
  ask "$algorithm" "$@" || remark="failed: $(reason)"
  printf '%s: %s, %s s, %s MB %s\n' "$algorithm" "$size $what" "$seconds" "$megabytes" "$remark" >&2
  printf '| %s | %s %s | %s | %s | %s |\n' "$algorithm" "$size" "$what" "$seconds" "$megabytes" "$remark" >>"$table"
}
# What the host says that matters, on one line.
reason() { grep -vE '^\s*$|^-+$|^(Inputs|Results|Running|Application)|^[A-Z_]+:\s' "$temporary/said" | tail -n 1 | sed 's/^\s*//' | tr '|' '/'; }

# refused WHAT ALGORITHM KEY=VALUE...: has to fail, and fast.
refused() {
  local what=$1 algorithm=$2
  shift 2
  if ask "$algorithm" "$@"; then fail "$algorithm takes $what"; fi
  [ -z "$(ls "$result")" ] || fail "$algorithm refuses $what and leaves files"
  printf '%s refuses %s: %s s\n' "$algorithm" "$what" "$seconds" >&2
  printf '| %s | %s | %s | %s | %s |\n' "$algorithm" "$what" "$seconds" "$megabytes" "$(reason)" >>"$temporary/refused"
}

# annotatelegs by legs
for legs in $(steps "1000 10000" "10000 100000 1000000" "10000000"); do
  make routes "$temporary/routes.fgb" "$legs"
  row legs "$(grouped "$legs")" annotatelegs INPUT="$temporary/routes.fgb" ROUTE_FIELD=name DATE=2026-06-15 \
    OUTPUT="$result/legs.fgb"
done
make terrain "$temporary/terrain.tif" 4000
make cover "$temporary/cover.tif" 4000
legs=$(steps 1000 100000 "")
make routes "$temporary/routes.fgb" "${legs%% *}"
row "legs, DEM and cover raster of 16 000 000 cells" "$(grouped "${legs%% *}")" annotatelegs \
  INPUT="$temporary/routes.fgb" ROUTE_FIELD=name DATE=2026-06-15 DEM="$temporary/terrain.tif" \
  COVER_RASTER="$temporary/cover.tif" COVER_LEGEND=1 OUTPUT="$result/legs.fgb"

# choosemarks by candidates
make routes "$temporary/routes.fgb" "$(steps 100 1000 "")"
for count in $(steps "1000 10000" "10000 100000 1000000" ""); do
  make points "$temporary/trees.fgb" "$count"
  row candidates "$(grouped "$count")" choosemarks INPUT="$temporary/routes.fgb" ROUTE_FIELD=name \
    CANDIDATES="$temporary/trees.fgb" MARK_NAME=name DATE=2026-06-15 OUTPUT="$result/marks.fgb"
done

# Rasters by cells
for side in $(steps "500 1000" "1000 2000 4000" "10000"); do
  make terrain "$temporary/terrain.tif" "$side"
  make cover "$temporary/cover.tif" "$side"
  make pair "$temporary" "$side"
  cells=$(grouped $((side * side)))
  row "cells" "$cells" sightsurface COVER_RASTER="$temporary/cover.tif" COVER_LEGEND=1 CELL=5 OUTPUT="$result/sight.tif"
  row "cells" "$cells" throughcover STARTS="$temporary/start.geojson" ENDS="$temporary/end.geojson" \
    DEM="$temporary/terrain.tif" COVER_RASTER="$temporary/cover.tif" COVER_LEGEND=1 CELL=5 MARGIN=1000000 \
    OUTPUT="$result/plan.gpkg"
done

# Courses in a square of 3 km
make area "$temporary/area.geojson" 3000
make points "$temporary/starts.fgb" 5 3000
make points "$temporary/sites.fgb" "$(steps 2000 20000 "")" 3000
course=(AREA="$temporary/area.geojson" STARTS="$temporary/starts.fgb" SITES="$temporary/sites.fgb" LEGS=6
  DATE=2026-06-15 OUTPUT="$result/courses.gpkg" CONTROLS="$result/controls.gpkg")
for count in $(steps "10" "50 100 200" ""); do
  row "courses of 6 legs" "$(grouped "$count")" practicecourse "${course[@]}" COURSES="$count"
done
for count in $(steps "10 100" "100 1000 10000" ""); do
  "$python" "$tests/many_legs.py" "$temporary/legs.fgb" $((count * 6)) 6 || fail "no legs."
  for each in legcards:FOLDER=cards legtables:FOLDER=tables exportgpx:OUTPUT=legs.gpx; do
    output=${each#*:}
    row "courses of 6 legs" "$(grouped "$count")" "${each%%:*}" INPUT="$temporary/legs.fgb" \
      "${output%=*}=$result/${output#*=}"
  done
done

# Refused before the work starts
make routes "$temporary/routes.fgb" 100
make pair "$temporary" 4000
refused "201 courses" practicecourse "${course[@]}" COURSES=201
refused "cells of 0.1 m over 20 km" throughcover STARTS="$temporary/start.geojson" ENDS="$temporary/end.geojson" \
  CELL=0.1 COVER_RASTER="$temporary/cover.tif" COVER_LEGEND=1 OUTPUT="$result/plan.gpkg"
refused "cells of 0.01 m over 20 km" sightsurface COVER_RASTER="$temporary/cover.tif" COVER_LEGEND=1 CELL=0.01 \
  OUTPUT="$result/sight.tif"
refused "lines 1 m apart over 6000 km" northlines EXTENT="0,6000000,0,6000000 [EPSG:32621]" SPACING=1 DATE=2026-06-15 \
  OUTPUT="$result/lines.fgb"

{
  printf '<!-- SPDX-License-Identifier: GPL-2.0-or-later -->\n<!-- Made by tests/bench/limits.sh. -->\n\n'
  printf 'A whole run of qgis_process each, start of the host included; memory is the most it held at one time.\n'
  printf '%s\n\n' "$(machine)"
  printf '| algorithm | size | seconds | MB | |\n| --- | --- | --- | --- | --- |\n'
  cat "$table"
  printf '\nRefused before the work starts, with nothing left behind:\n\n'
  printf '| algorithm | what | seconds | MB | what it says |\n| --- | --- | --- | --- | --- |\n'
  cat "$temporary/refused"
} >"$out"
echo "$out"
