#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-2.0-or-later
# leg_cards_pdf_test.sh PREFIX: cards of the sample, made with the installed plugin, say what the layer says.
# shellcheck source-path=SCRIPTDIR source=../plugin/surroundings.sh
. "$(dirname "${BASH_SOURCE[0]}")/../plugin/surroundings.sh"

prefix=${1:?give the prefix Brushline is installed in}
here=$(cd -P "$(dirname "${BASH_SOURCE[0]}")" && pwd)
for program in pdftotext pdffonts pdfimages pdfinfo; do
  command -v $program >/dev/null || fail "there is no $program (Debian: apt-get install poppler-utils)."
done
process() { timeout 120 "$host" "$@" >"$temporary/out" 2>&1 || fail "$*: $(tail -n 30 "$temporary/out")"; }
use_plugin "$prefix"

annotate() { # annotate ROUTES LEGS MARKS ...
  process run brushline:annotatelegs -- INPUT="$1" ROUTE_FIELD=route POINTS="$sample/sample.gpkg|layername=points" \
    DEM="$sample/terrain.tif" COVER="$sample/sample.gpkg|layername=cover" COVER_CLASS=class DATE=2026-11-25 \
    OUTPUT="$2" MARKS="$3" "${@:4}"
}
cards() { # cards FOLDER ...
  process run brushline:legcards --project_path="$sample/sample.qgz" -- FOLDER="$@"
}
check() { python3 "$here/leg_cards_pdf_check.py" "$@" || fail "$*"; }

legs=$temporary/legs.gpkg marks=$temporary/marks.gpkg
annotate "$sample/sample.gpkg|layername=routes" "$legs" "$marks" WALKERS="$sample/sample.gpkg|layername=walkers" \
  DIRECTION=2

# Sizes in points: ISO 216 and letter, 72 to the inch.
echo "-- A5, fitted"
cards "$temporary/a5" INPUT="$legs"
check "$legs" "$temporary/a5" --size 419.5x595.3
echo "-- A6, with marks, dials, profile"
cards "$temporary/a6" INPUT="$legs" MARKS="$marks" DEM="$sample/terrain.tif" DIAGRAMS=true PAPER=0
check "$legs" "$temporary/a6" --size 297.6x419.5
echo "-- A6 across"
cards "$temporary/a6w" INPUT="$legs" PAPER=0 ORIENTATION=1
check "$legs" "$temporary/a6w" --size 419.5x297.6
echo "-- A4 across, 1:10 000, with the sample's layers: vectors, no pictures"
cards "$temporary/a4w" INPUT="$legs" PAPER=2 ORIENTATION=1 SCALE=10000 DEM="$sample/terrain.tif" \
  LAYERS=Points LAYERS=Cliffs LAYERS=Trails LAYERS="Power line" LAYERS=Streams LAYERS=Cover
check "$legs" "$temporary/a4w" --size 841.9x595.3 --scale 10000 --layers
[ "$(pdftotext "$temporary/a4w/Camp to stand - Joff (12).pdf" - | grep -c 'Pond Landing')" -ge 1 ] ||
  fail "the layers are not on the map."
echo "-- letter and half a letter"
cards "$temporary/letter" INPUT="$legs" PAPER=3 TITLE="Second day"
check "$legs" "$temporary/letter" --size 612x792
cards "$temporary/half" INPUT="$legs" PAPER=4 ORIENTATION=1 SCALE=25000 LAYERS="$legs"
check "$legs" "$temporary/half" --size 612x396 --scale 25000 --with-legs

echo "-- a projection that stretches the ground: the scale holds on the ground"
process run native:reprojectlayer -- INPUT="$sample/sample.gpkg|layername=routes" TARGET_CRS=EPSG:3857 \
  OUTPUT="$temporary/web.gpkg"
annotate "$temporary/web.gpkg" "$temporary/web_legs.gpkg" "$temporary/web_marks.gpkg"
cards "$temporary/web" INPUT="$temporary/web_legs.gpkg" SCALE=12500 LAYERS="$temporary/web_legs.gpkg"
check "$temporary/web_legs.gpkg" "$temporary/web" --scale 12500 --with-legs
echo "-- degrees: the map is in the place's UTM zone"
process run native:reprojectlayer -- INPUT="$sample/sample.gpkg|layername=routes" TARGET_CRS=EPSG:4326 \
  OUTPUT="$temporary/degrees.gpkg"
annotate "$temporary/degrees.gpkg" "$temporary/degrees_legs.gpkg" "$temporary/degrees_marks.gpkg"
cards "$temporary/degrees" INPUT="$temporary/degrees_legs.gpkg" LAYERS="$temporary/degrees_legs.gpkg"
check "$temporary/degrees_legs.gpkg" "$temporary/degrees" --not-grid --with-legs

echo "-- legs with detours: a row for each piece"
cat >"$temporary/across.geojson" <<'JSON'
{"type": "FeatureCollection", "crs": {"type": "name", "properties": {"name": "EPSG:32621"}}, "features": [
 {"type": "Feature", "properties": {"route": "Round the block"},
  "geometry": {"type": "LineString", "coordinates": [[632200, 5406800], [632500, 5406800], [632500, 5407000]]}}]}
JSON
cat >"$temporary/block.geojson" <<'JSON'
{"type": "FeatureCollection", "crs": {"type": "name", "properties": {"name": "EPSG:32621"}}, "features": [
 {"type": "Feature", "properties": {"name": "Block"},
  "geometry": {"type": "Polygon", "coordinates": [[[632300, 5406780], [632340, 5406780], [632340, 5406820],
                                                   [632300, 5406820], [632300, 5406780]]]}}]}
JSON
process run brushline:detourlegs -- INPUT="$temporary/across.geojson" ROUTE_FIELD=route \
  OBSTACLES="$temporary/block.geojson" DATE=2026-11-25 OUTPUT="$temporary/detours.gpkg"
cards "$temporary/detours_a5" INPUT="$temporary/detours.gpkg"
check "$temporary/detours.gpkg" "$temporary/detours_a5"
cards "$temporary/detours_a6" INPUT="$temporary/detours.gpkg" PAPER=0 DIAGRAMS=true
check "$temporary/detours.gpkg" "$temporary/detours_a6"
pdftotext "$temporary/detours_a6/Round the block.pdf" - | grep '1c' >/dev/null || fail "no piece of leg 1."

echo "-- what legs meet"
cat >"$temporary/met.csv" <<'CSV'
WKT,route,leg,feature,at_m,role
"POINT(632800 5406900)",Camp to stand,2,Spring Rill,100,crossed
CSV
process run brushline:legcards -- FOLDER="$temporary/met" INPUT="$legs" FEATURES="$temporary/met.csv"
# 331 paces over 207.19 m: 160 over 100 m.
pdftotext "$temporary/met/Camp to stand - Joff (12).pdf" - | grep 'crosses Spring Rill at 160 paces' >/dev/null ||
  fail "what the leg meets is not told."
if pdftotext "$temporary/met/Camp to stand - Joff (12) - back.pdf" - | grep 'Spring Rill' >/dev/null; then
  fail "what is met on the way out is told on the way back."
fi

echo "-- no font: said, not printed as empty boxes"
cat >"$temporary/fonts.conf" <<XML
<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig><dir>/nowhere</dir><cachedir>$temporary/fonts</cachedir></fontconfig>
XML
if FONTCONFIG_FILE=$temporary/fonts.conf timeout 60 "$host" run brushline:legcards -- FOLDER="$temporary/none" \
  INPUT="$legs" >"$temporary/out" 2>&1; then
  fail "cards without a font."
fi
grep -q 'No font is installed' "$temporary/out" || fail "the lack of fonts is not told: $(tail -n 20 "$temporary/out")"
[ ! -e "$temporary/none" ] || fail "a folder was made all the same."
echo "passed"
