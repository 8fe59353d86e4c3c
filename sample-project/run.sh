#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-2.0-or-later
# Builds Brushline, works out the legs of the sample's routes with it and makes all that is handed out, by the model
# event.model3. Needs no screen. The legs come to sample-project/result/legs.gpkg and, as tables, to the terminal; cards,
# tables, GPX and a picture of a route's legs come to sample-project/result. Then plots the garden course from its
# written bearings and paces.
#
#   run.sh [BUILD]   BUILD is the folder to build in; build/ of this repository when none is given
set -euo pipefail

here=$(cd -P "$(dirname "${BASH_SOURCE[0]}")" && pwd)
root=$(dirname "$here")
build=$(realpath -m "${1:-$root/build}")
result=$here/result/legs.gpkg
marks=$here/result/marks.gpkg

"$root/plugin/packaging/set-up.sh" --build "$build"

# A profile of its own: yours is neither read nor changed.
export QGIS_CUSTOM_CONFIG_PATH=$build/profile
export QGIS_PLUGINPATH=$build/prefix/share/qgis/python/plugins
export QT_QPA_PLATFORM=offscreen LC_ALL=C.UTF-8 PYTHONWARNINGS=ignore PYTHONDONTWRITEBYTECODE=1
export GDAL_PAM_ENABLED=NO # no side file beside the terrain
export XDG_RUNTIME_DIR=$build/runtime
rm -rf "$QGIS_CUSTOM_CONFIG_PATH" # enabling twice is an error to qgis_process
mkdir -p "$QGIS_CUSTOM_CONFIG_PATH" "$here/result"
mkdir -p "$XDG_RUNTIME_DIR"
chmod 700 "$XDG_RUNTIME_DIR"

# Debian 12 wraps qgis_process in a script that passes on an option the program refuses.
qgis_process=qgis_process
command -v qgis_process.bin >/dev/null && qgis_process=qgis_process.bin

day=$(date +%Y-%m-%d)
if [[ $day < 2025-01-01 || $day > 2029-12-31 ]]; then
  echo "== The built-in magnetic model knows the years 2025 to 2029, not $day; taking 2027-06-20 instead."
  day=2027-06-20
fi

echo "== Enabling the plugin in a profile of the sample's own"
"$qgis_process" plugins enable brushline

echo "== Working out the legs for $day"
rm -rf "$result" "$result"-* "$marks" "$marks"-* "$here/result/tables" "$here/result/cards" "$here/result/routes.gpx" "$here/result/legs.png"
sample() { printf '%s|layername=%s' "$here/sample.gpkg" "$1"; }
"$qgis_process" run "$here/event.model3" --PROJECT_PATH="$here/sample.qgz" -- \
  ROUTES="$(sample routes)" ROUTE_FIELD=route \
  POINTS="$(sample points)" \
  DEM="$here/terrain.tif" \
  COVER="$(sample cover)" COVER_CLASS=class \
  WALKERS="$(sample walkers)" \
  DATE="$day" TITLE="Two days at the pond" PAPER=1 \
  LAYERS=Trails LAYERS=Streams LAYERS=Cover \
  "legs:Legs=$result" "legs:Marks=$marks" \
  "tables:Tables=$here/result/tables" "cards:Cards=$here/result/cards" "gpx:GPX=$here/result/routes.gpx"

echo "== Plotting the garden course for $day"
garden=$here/result/garden.gpkg
rm -rf "$garden" "$garden"-* "$here/result/garden_closure.csv"
"$qgis_process" run brushline:plotlegs -- \
  INPUT="$here/garden_legs.csv" ROUTE_FIELD=route ORDER_FIELD=order BEARING_FIELD=bearing PACES_FIELD=paces \
  WALKER_FIELD=counted WALKERS="$here/garden_walkers.csv" STARTS="$here/garden_start.geojson" \
  CLOSE=1 DATE="$day" OUTPUT="$garden" CLOSURE="$here/result/garden_closure.csv"

# The python3 found first may be one without the host's modules.
python=python3
for each in /usr/bin/python3 python3; do
  if "$each" -c 'import qgis.core; from osgeo import ogr' 2>/dev/null; then
    python=$each
    break
  fi
done
echo
echo "== The legs are in $result, the marks in $marks"
echo
"$python" "$here/print_legs.py" "$result"
"$python" "$here/render.py" --prefix "$build/prefix" --out "$here/result" legs.png >/dev/null
echo
echo "== To hand out:"
echo "   tables, for paper and phone:  $here/result/tables/index.html"
echo "   cards, one PDF each:          $here/result/cards/cards.html"
echo "   for GPS receivers:            $here/result/routes.gpx"
echo "   a picture of one route:       $here/result/legs.png"
echo
echo "== The garden course is in $garden; how it closes, in $here/result/garden_closure.csv"
for made in "$garden" "$here/result/garden_closure.csv" "$here/result/tables/index.html" "$here/result/cards/cards.html" "$here/result/routes.gpx" "$here/result/legs.png"; do
  [ -s "$made" ] || { echo "$made was not made." >&2; exit 1; }
done
