#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-2.0-or-later
# start_bench.sh PREFIX [REPEAT]: a warm start of qgis_process that annotates the sample's routes, beside one that does
# next to nothing (centroids of the same routes) in a profile without the plugin. They take turns; the least of each
# counts. And what the enabled plugin alone adds to the latter.
# shellcheck source-path=SCRIPTDIR source=../plugin/surroundings.sh
source "$(dirname "${BASH_SOURCE[0]}")/../plugin/surroundings.sh"
# shellcheck source-path=SCRIPTDIR source=measure.sh
source "$(dirname "${BASH_SOURCE[0]}")/measure.sh"
prefix=$1
repeat=${2:-10}
cp "$sample/sample.gpkg" "$temporary/"
routes="$temporary/sample.gpkg|layername=routes"
with=$temporary/profile without=$temporary/bare
use_plugin "$prefix"

centroids() {
  "$host" run native:centroids -- INPUT="$routes" OUTPUT="$temporary/centroids.fgb" >"$temporary/out" 2>&1 ||
    fail "native:centroids: $(cat "$temporary/out")"
}
annotate() {
  "$host" run brushline:annotatelegs -- INPUT="$routes" ROUTE_FIELD=route DATE=2026-06-20 \
    OUTPUT="$temporary/legs.fgb" >"$temporary/out" 2>&1 || fail "brushline:annotatelegs: $(cat "$temporary/out")"
}
job() {
  rm -f "$temporary"/*.fgb
  case $1 in
  host) (unset QGIS_PLUGINPATH && export QGIS_CUSTOM_CONFIG_PATH=$without && centroids) ;; # set to nothing is slower
  plugin) QGIS_CUSTOM_CONFIG_PATH=$with centroids ;;
  legs) QGIS_CUSTOM_CONFIG_PATH=$with annotate ;;
  esac
}

declare -A least=()
for ((i = 0; i <= repeat; i++)); do
  for each in host plugin legs; do
    before=${EPOCHREALTIME/./}
    job $each
    took=$((${EPOCHREALTIME/./} - before))
    [ $i -gt 0 ] || continue # the first only warms the caches
    if [ -z "${least[$each]:-}" ] || [ $took -lt "${least[$each]}" ]; then least[$each]=$took; fi
  done
done

# compare WHAT JOB PERCENT
compare() {
  local met=MISSED
  [ $((least[$2] * 100)) -le $((least[host] * (100 + $3))) ] && met=met
  tell "$1" "$(reckon "${least[$2]} / ${least[host]}" 3) ($(reckon "${least[$2]} / 1e6" 3) s / \
$(reckon "${least[host]} / 1e6" 3) s)" "at most $(reckon "1 + $3 / 100" 2)" "$met"
}
compare "warm start: annotatelegs on the sample / native:centroids in a profile without the plugin" legs 15
compare "warm start: native:centroids with the plugin / without" plugin 15
