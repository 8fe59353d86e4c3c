#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-2.0-or-later
# formats_test.sh PREFIX: every algorithm reads and writes GeoPackage, Shapefile, GeoJSON, FlatGeobuf, SpatiaLite and CSV,
# and makes the same of each.
# shellcheck source-path=SCRIPTDIR source=surroundings.sh
. "$(dirname "${BASH_SOURCE[0]}")/surroundings.sh"

prefix=${1:?give the prefix Brushline is installed in}
[ -f "$prefix/lib/qgis/plugins/libbrushline.so" ] || fail "$prefix/lib/qgis/plugins/libbrushline.so is not there."
python=$(find_python)
"$python" -c 'from osgeo import gdal, ogr' 2>/dev/null || fail "$python has no module osgeo (Debian: python3-gdal)."
use_plugin "$prefix"
export OGR_SQLITE_SYNCHRONOUS=OFF # the files are gone soon; a busy disk would make minutes of seconds
BRUSHLINE_SAMPLE=$sample BRUSHLINE_HOST=$host "$python" "$tests/formats_check.py" "$temporary" || fail "see above."
echo "passed"
