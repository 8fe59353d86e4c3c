#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-2.0-or-later
# postgis_test.sh PREFIX: every algorithm reads from and writes to a PostGIS server, and what goes wrong there is told.
# The server is the test's own.
# shellcheck source-path=SCRIPTDIR source=surroundings.sh
. "$(dirname "${BASH_SOURCE[0]}")/surroundings.sh"
# shellcheck source-path=SCRIPTDIR source=postgis_server.sh
. "$tests/postgis_server.sh"

prefix=${1:?give the prefix Brushline is installed in}
[ -f "$prefix/lib/qgis/plugins/libbrushline.so" ] || fail "$prefix/lib/qgis/plugins/libbrushline.so is not there."
python=$(find_python)
"$python" -c 'from osgeo import gdal, ogr' 2>/dev/null || fail "$python has no module osgeo (Debian: python3-gdal)."
start_postgis
use_plugin "$prefix"
export OGR_SQLITE_SYNCHRONOUS=OFF # the files are gone soon; a busy disk would make minutes of seconds

echo "-- layers in, layers out"
sql "create schema read; create schema written"
BRUSHLINE_SAMPLE=$sample BRUSHLINE_HOST=$host "$python" "$tests/postgis_check.py" "$postgis" "$temporary" ||
  fail "see above."

echo "-- a connection that breaks off while the routes are read"
sql "create table read.many as
  select k as id, 'R' || k as route, st_setsrid(st_makeline(array(
      select st_makepoint(500000 + 20 * (k % 1000) + 15 * (j % 2), 5400000 + 20 * (k / 1000) + 15 * j)
      from generate_series(0, 10) j)), 32621)::geometry(LineString, 32621) as geom
  from generate_series(1, 30000) k;
  alter table read.many add primary key (id)"
broken() { # broken OUTPUT: a run whose session the server ends once it has a cursor open
  local run code=0
  "$host" run brushline:annotatelegs -- DATE=2026-06-20 ROUTE_FIELD=route \
    INPUT="postgres://$postgis table=\"read\".\"many\" (geom)" OUTPUT="$1" >"$temporary/out" 2>&1 &
  run=$!
  # Fetched, and not yet at the end: a cursor of 300 000 legs takes seconds, its first rows a moment.
  until [ "$(sql "select count(pg_terminate_backend(pid)) from pg_stat_activity
      where pid <> pg_backend_pid() and query ~ '^FETCH' and state like 'idle in transaction%'")" != 0 ]; do
    kill -0 "$run" 2>/dev/null || break
  done
  wait "$run" || code=$?
  [ "$code" != 0 ] || fail "half of a layer was taken for the whole: $(tail -n 20 "$temporary/out")"
  grep -q '“many” broke off' "$temporary/out" || fail "not told what happened: $(tail -n 20 "$temporary/out")"
}
broken "$temporary/broken.gpkg"
[ ! -e "$temporary/broken.gpkg" ] || fail "a run that broke off left a file."
broken "postgres://$postgis table=\"written\".\"broken\" (geom)"
[ "$(sql "select count(*) from pg_tables where tablename = 'broken'")" = 0 ] || fail "a run that broke off left a table."
echo "PostGIS: a connection that breaks off is an error, and nothing half-written stays"

echo "passed"
