#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-2.0-or-later
# Builds Brushline and works out the legs of the sample's routes with it. Needs no screen.
# The legs come to sample-project/result/legs.gpkg and, as tables, to the terminal.
set -euo pipefail

here=$(cd -P "$(dirname "${BASH_SOURCE[0]}")" && pwd)
root=$(dirname "$here")
build=$root/build
result=$here/result/legs.gpkg

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
rm -f "$result" "$result"-*
"$qgis_process" run brushline:annotatelegs -- \
  INPUT="$here/sample.gpkg|layername=routes" ROUTE_FIELD=route \
  POINTS="$here/sample.gpkg|layername=points" \
  DEM="$here/terrain.tif" \
  COVER="$here/sample.gpkg|layername=cover" COVER_CLASS=class \
  WALKERS="$here/sample.gpkg|layername=walkers" \
  DATE="$day" \
  OUTPUT="$result"

# The python3 found first may be one without GDAL.
python=python3
for each in /usr/bin/python3 python3; do
  if "$each" -c 'from osgeo import ogr' 2>/dev/null; then
    python=$each
    break
  fi
done
echo
echo "== The legs are in $result"
echo
"$python" "$here/print_legs.py" "$result"
