#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-2.0-or-later
# numbers.sh PREFIX FOLDER: what the plugin installed in PREFIX works out from the sample, every algorithm that writes
# layers, as layers in FOLDER for compare.py. The day is always the same.
# shellcheck source-path=SCRIPTDIR source=../plugin/surroundings.sh
. "$(dirname "${BASH_SOURCE[0]}")/../plugin/surroundings.sh"
prefix=$(realpath "${1:?give the prefix Brushline is installed in}")
out=$(realpath -m "${2:?give a folder}")
use_plugin "$prefix"
rm -rf "$out"
mkdir -p "$out"

layer() { printf '%s|layername=%s' "$sample/sample.gpkg" "$1"; }
work_out() { # work_out ID ARGUMENTS
  timeout 300 "$host" run "brushline:$1" -- "${@:2}" >"$temporary/out" 2>&1 || fail "$1: $(cat "$temporary/out")"
}
ground=(DEM="$sample/terrain.tif" COVER="$(layer cover)" COVER_CLASS=class)
day=(DATE=2026-06-20)
walkers=(WALKERS="$(layer walkers)")
routes=(INPUT="$(layer routes)" ROUTE_FIELD=route)

work_out annotatelegs "${routes[@]}" "${ground[@]}" "${day[@]}" "${walkers[@]}" POINTS="$(layer points)" DIRECTION=2 \
  OUTPUT="$out/legs.gpkg" MARKS="$out/marks.gpkg" DRIFT="$out/drift.gpkg"
work_out choosemarks "${routes[@]}" "${ground[@]}" "${day[@]}" CANDIDATES="$(layer points)" MAX_OFFSET=60 \
  OUTPUT="$out/chosen.gpkg" SIGHTINGS="$out/sightings.gpkg" GAPS="$out/gaps.gpkg"
work_out sightsurface COVER="$(layer cover)" COVER_CLASS=class CELL=20 OUTPUT="$out/sight.tif"
work_out throughcover "${ground[@]}" POINTS="$(layer points)" STARTS="$(layer points)|subset=name = 'Camp'" \
  ENDS="$(layer points)|subset=name = 'Hunting Stand'" OUTPUT="$out/planned.gpkg" EFFORT="$out/effort.tif"
work_out aimoff "${ground[@]}" "${day[@]}" "${walkers[@]}" STARTS="$(layer points)|subset=name = 'Hunting Stand'" \
  LINES="$(layer trails)" OUTPUT="$out/aimed.gpkg"
work_out detourlegs "${routes[@]}" "${day[@]}" "${walkers[@]}" CLEARANCE=15 MAX_DETOUR=2000 \
  OBSTACLES="$(layer cover)|subset=class = 'water'" OUTPUT="$out/detours.gpkg"
work_out featuresmet "${routes[@]}" "${ground[@]}" "${walkers[@]}" FEATURES="$(layer streams)" \
  FEATURES="$(layer trails)" OUTPUT="$out/met.gpkg"
work_out checkhazards "${routes[@]}" DEM="$sample/terrain.tif" "${day[@]}" HAZARDS="$(layer cliffs)" \
  OUTPUT="$out/hazards.gpkg"
work_out fieldatpoints INPUT="$(layer points)" "${day[@]}" OUTPUT="$out/field.gpkg"
work_out northlines EXTENT=631500,634500,5405500,5408500\ \[EPSG:32621\] SPACING=250 "${day[@]}" OUTPUT="$out/north.gpkg"
