# SPDX-License-Identifier: GPL-2.0-or-later
# shellcheck shell=bash
# Sourced: each algorithm once, on the sample or on data like it; the day and all else that may change are fixed.
# Whoever calls has a function work_out ID [OPTIONS] -- ARGUMENTS that runs brushline:ID.

# work_through DATA OUT [LEGS]: every algorithm that writes layers or rasters. DATA is a folder that holds what the
# sample holds. LEGS is where annotated legs are read from by those that take them; what annotatelegs has just written
# when none are given.
work_through() {
  local data=$1 out=$2 legs=${3:-$2/legs.gpkg}
  layer() { printf '%s|layername=%s' "$data/sample.gpkg" "$1"; }
  local ground=(DEM="$data/terrain.tif" COVER="$(layer cover)" COVER_CLASS=class)
  local day=(DATE=2026-06-20)
  local walkers=(WALKERS="$(layer walkers)")
  local routes=(INPUT="$(layer routes)" ROUTE_FIELD=route)
  local walked=$data/walked.gpkg # instead of a GPX file, whose points have an order of their own
  [ -e "$walked" ] || walked=$data/walked.gpx

  work_out annotatelegs -- "${routes[@]}" "${ground[@]}" "${day[@]}" "${walkers[@]}" POINTS="$(layer points)" \
    DIRECTION=2 OUTPUT="$out/legs.gpkg" MARKS="$out/marks.gpkg" DRIFT="$out/drift.gpkg"
  work_out choosemarks -- "${routes[@]}" "${ground[@]}" "${day[@]}" CANDIDATES="$(layer points)" MAX_OFFSET=60 \
    OUTPUT="$out/chosen.gpkg" SIGHTINGS="$out/sightings.gpkg" GAPS="$out/gaps.gpkg"
  work_out sightsurface -- COVER="$(layer cover)" COVER_CLASS=class CELL=20 OUTPUT="$out/sight.tif"
  work_out throughcover -- "${ground[@]}" POINTS="$(layer points)" STARTS="$(layer points)|subset=name = 'Camp'" \
    ENDS="$(layer points)|subset=name = 'Hunting Stand'" OUTPUT="$out/planned.gpkg" EFFORT="$out/effort.tif"
  work_out aimoff -- "${ground[@]}" "${day[@]}" "${walkers[@]}" STARTS="$(layer points)|subset=name = 'Hunting Stand'" \
    LINES="$(layer trails)" OUTPUT="$out/aimed.gpkg"
  work_out detourlegs -- "${routes[@]}" "${day[@]}" "${walkers[@]}" CLEARANCE=15 MAX_DETOUR=2000 \
    OBSTACLES="$(layer cover)|subset=class = 'water'" OBSTACLE_NAME=class OUTPUT="$out/detours.gpkg"
  work_out featuresmet -- "${routes[@]}" "${ground[@]}" "${walkers[@]}" FEATURES="$(layer streams)" \
    FEATURES="$(layer trails)" OUTPUT="$out/met.gpkg"
  work_out checkhazards -- "${routes[@]}" DEM="$data/terrain.tif" "${day[@]}" HAZARDS="$(layer cliffs)" \
    OUTPUT="$out/hazards.gpkg"
  work_out fieldatpoints -- INPUT="$(layer points)" "${day[@]}" OUTPUT="$out/field.gpkg"
  work_out northlines -- EXTENT=631500,634500,5405500,5408500\ \[EPSG:32621\] SPACING=250 "${day[@]}" \
    OUTPUT="$out/north.gpkg"
  work_out practicecourse -- AREA="$(layer cover)" STARTS="$(layer points)|subset=kind in ('camp', 'stand', 'rock')" \
    START_NAME=name SITES="$(layer points)|subset=kind not in ('camp', 'stand')" SITE_NAME=name COURSES=3 LEGS=4 \
    LEG_MIN=100 LEG_MAX=900 SEED=7 "${ground[@]}" "${day[@]}" "${walkers[@]}" \
    OUTPUT="$out/courses.gpkg" CONTROLS="$out/controls.gpkg"
  work_out plotlegs -- INPUT="$data/garden_legs.csv" ROUTE_FIELD=route ORDER_FIELD=order BEARING_FIELD=bearing \
    PACES_FIELD=paces WALKER_FIELD=counted WALKERS="$data/garden_walkers.csv" STARTS="$data/garden_start.geojson" \
    CLOSE=1 ADJUST=true "${day[@]}" OUTPUT="$out/plotted.gpkg" CLOSURE="$out/closure.gpkg"
  work_out calibratepaces -- INPUT="$data/pace_tries.csv" WALKER_FIELD=walker DISTANCE_FIELD=metres COUNT_FIELD=count \
    SLOPE_FIELD=slope OUTPUT="$out/calibrated.gpkg" TRIES="$out/tries.gpkg"
  work_out comparetrack -- TRACKS="$walked|layername=track_points" \
    INPUT="$legs|subset=route = 'Practice loop' and walker = 'Joff (12)' and direction = 'out'" \
    OUTPUT="$out/walked.gpkg" PROFILE="$out/profile.gpkg" GROUPS="$out/groups.gpkg"
}

# hand_out DATA OUT LEGS MARKS MET: every algorithm that makes something to hand out, of annotated legs, their marks
# and what they meet.
hand_out() {
  local data=$1 out=$2
  local legs=(INPUT="$3" MARKS="$4" TITLE="Two days at the pond")
  work_out legtables -- "${legs[@]}" FORMAT=2 FOLDER="$out/tables"
  work_out legcards --project_path="$data/sample.qgz" -- "${legs[@]}" FEATURES="$5" DEM="$data/terrain.tif" \
    DIAGRAMS=true LAYERS=Trails LAYERS=Streams LAYERS=Cover FOLDER="$out/cards"
  work_out exportgpx -- "${legs[@]}" OUTPUT="$out/routes.gpx"
}
