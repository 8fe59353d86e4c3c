#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-2.0-or-later
# postgis_bench.sh PREFIX [ROUTES] [PART_ROUTES]: Annotate legs out of a PostGIS server and into it, and a job split over
# two processes. Run by hand; the server is its own. Prints rows of a table: seconds by the clock, peak memory.
#
# ROUTES of ten legs each (100000: a million legs) are read from PostGIS and written to it. PART_ROUTES (20000) are
# worked out by one process, then by two at once, each with the half that a filter picks.
# shellcheck source-path=SCRIPTDIR source=../plugin/surroundings.sh
. "$(dirname "${BASH_SOURCE[0]}")/../plugin/surroundings.sh"
# shellcheck source-path=SCRIPTDIR source=../plugin/postgis_server.sh
. "$tests/postgis_server.sh"

prefix=${1:?give the prefix Brushline is installed in}
routes=${2:-100000} part=${3:-20000}
[ -x /usr/bin/time ] || fail "there is no /usr/bin/time (Debian: apt-get install time)."
start_postgis
use_plugin "$prefix"
cp -r "$QGIS_CUSTOM_CONFIG_PATH" "$temporary/profile2"

# Lines of ten legs of some 100 m each, side by side in one zone.
sql "create table routes as
  select k as route_id, 'R' || k as route, st_setsrid(st_makeline(array(
      select st_makepoint(400000 + 200 * (k % 1000) + 60 * (j % 2), 5300000 + 1100 * (k / 1000) + 100 * j)
      from generate_series(0, 10) j)), 32621)::geometry(LineString, 32621) as geom
  from generate_series(1, greatest($routes, $part)) k;
  alter table routes add primary key (route_id);
  create index on routes using gist (geom);
  analyze routes"

table() { printf 'postgres://%s table="public"."%s" (geom)' "$postgis" "$1"; }
legs() { # legs LOG FILTER OUTPUT: seconds and kilobytes come to LOG
  /usr/bin/time -f '%e %M' -o "$1" "$host" run brushline:annotatelegs -- DATE=2026-06-20 ROUTE_FIELD=route \
    INPUT="$(table routes) sql=$2" OUTPUT="$3" >"$1.out" 2>&1 || fail "$3: $(tail "$1.out")"
}
rows() { sed -n 's/^LEG_COUNT:\s*//p' "$1.out"; }
row() { # row WHAT LEGS SECONDS KILOBYTES
  printf '| %s | %s | %s | %s |\n' "$1" "$2" "$3" "$((${4%.*} / 1024))"
}

echo "| $(nproc) cores | legs | seconds | peak memory (MB, each process) |"
echo "| --- | --- | --- | --- |"
for way in file table; do
  output=$temporary/all.gpkg
  [ "$way" = table ] && output=$(table all_legs)
  legs "$temporary/all" "route_id <= $routes" "$output"
  read -r seconds memory <"$temporary/all"
  row "PostGIS to $([ "$way" = table ] && echo PostGIS || echo GeoPackage)" "$(rows "$temporary/all")" "$seconds" "$memory"
  rm -f "$temporary/all.gpkg"*
done

for way in file table; do
  output() { if [ "$way" = table ]; then table "$1"; else echo "$temporary/$1.gpkg"; fi; }
  legs "$temporary/one" "route_id <= $part" "$(output "one_$way")"
  read -r seconds memory <"$temporary/one"
  row "one process, a $way" "$(rows "$temporary/one")" "$seconds" "$memory"
  began=$EPOCHREALTIME
  for half in 0 1; do
    (
      [ "$half" = 1 ] && export QGIS_CUSTOM_CONFIG_PATH=$temporary/profile2
      legs "$temporary/half$half" "route_id <= $part and route_id % 2 = $half" "$(output "half${half}_$way")"
    ) &
  done
  wait -n || fail "a half"
  wait -n || fail "a half"
  ended=$EPOCHREALTIME
  hundredths=$(((${ended/./} - ${began/./}) / 10000))
  both=$(($(rows "$temporary/half0") + $(rows "$temporary/half1")))
  [ "$both" = "$(rows "$temporary/one")" ] || fail "the halves have $both legs, the whole $(rows "$temporary/one")."
  read -r _ memory <"$temporary/half0"
  row "two processes, a $way each" "$both" "$(printf "%d.%02d" $((hundredths / 100)) $((hundredths % 100)))" "$memory"
done
