#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-2.0-or-later
# event_model_test.sh PREFIX: the sample's model makes an event's handouts in one go, by qgis_process: 40 routes and 5
# walkers give 200 cards, tables and routes, each once.
source "$(dirname "${BASH_SOURCE[0]}")/surroundings.sh"
prefix=$1
use_plugin "$prefix"

"$(find_python)" - "$sample/sample.gpkg" "$temporary/event.gpkg" <<'PYTHON'
import sys
from osgeo import ogr
ogr.UseExceptions()
source = ogr.Open(sys.argv[1])
out = ogr.GetDriverByName("GPKG").CreateDataSource(sys.argv[2])
routes = source.GetLayer("routes")
lines = [feature.GetGeometryRef().Clone() for feature in routes]
layer = out.CreateLayer("routes", routes.GetSpatialRef(), ogr.wkbLineString)
layer.CreateField(ogr.FieldDefn("route", ogr.OFTString))
for i in range(40):
    line = ogr.Geometry(ogr.wkbLineString)
    for point in lines[i % len(lines)].GetPoints():
        line.AddPoint_2D(point[0] + 3 * i, point[1] - 2 * i)
    feature = ogr.Feature(layer.GetLayerDefn())
    feature.SetField("route", "Course %d" % (i + 1))
    feature.SetGeometry(line)
    layer.CreateFeature(feature)
table = out.CreateLayer("walkers", None, ogr.wkbNone)
table.CreateField(ogr.FieldDefn("walker", ogr.OFTString))
table.CreateField(ogr.FieldDefn("paces_100m", ogr.OFTReal))
for i in range(5):
    feature = ogr.Feature(table.GetLayerDefn())
    feature.SetField("walker", "Walker %d" % (i + 1))
    feature.SetField("paces_100m", 120 + 15 * i)
    table.CreateFeature(feature)
PYTHON

out=$temporary/handouts
mkdir "$out"
started=$(date +%s)
"$host" run "$sample/event.model3" -- "ROUTES=$temporary/event.gpkg|layername=routes" ROUTE_FIELD=route \
  "WALKERS=$temporary/event.gpkg|layername=walkers" "DEM=$sample/terrain.tif" DATE=2026-06-01 \
  "COVER=$sample/sample.gpkg|layername=cover" COVER_CLASS=class "LAYERS=$sample/sample.gpkg|layername=trails" \
  "legs:Legs=$out/legs.gpkg" "legs:Marks=$out/marks.gpkg" "tables:Tables=$out/tables" "cards:Cards=$out/cards" \
  "gpx:GPX=$out/routes.gpx" >"$temporary/log" 2>&1 || { cat "$temporary/log"; fail "the model did not run"; }
echo "took $(($(date +%s) - started)) s"

count() { find "$1" -maxdepth 1 -name "$2" | wc -l; }
[ "$(count "$out/cards" '*.pdf')" = 200 ] || fail "$(count "$out/cards" '*.pdf') cards instead of 200"
[ "$(count "$out/tables" '*.csv')" = 200 ] || fail "$(count "$out/tables" '*.csv') tables instead of 200"
[ "$(count "$out/tables" '*.html')" = 201 ] || fail "$(count "$out/tables" '*.html') pages instead of 200 and an index"
[ -s "$out/cards/cards.html" ] || fail "the cards have no list"
[ "$(grep -c '<rte>' "$out/routes.gpx")" = 200 ] || fail "$(grep -c '<rte>' "$out/routes.gpx") routes instead of 200"
for walker in 1 5; do
  pdftotext "$out/cards/Course 40 - Walker $walker.pdf" - | grep "Walker $walker" >/dev/null || fail "a card without its walker"
done
[ -z "$(find "$out" -name '.*' -mindepth 1)" ] || fail "something half-written was left"
echo "200 cards, 200 tables, 200 routes"
