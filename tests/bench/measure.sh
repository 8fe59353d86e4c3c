# SPDX-License-Identifier: GPL-2.0-or-later
# shellcheck shell=bash disable=SC2034,SC2154
# Sourced by the benches here, after ../plugin/surroundings.sh.

# measure COMMAND...: runs it; its seconds and its peak memory in MB are in $seconds and $megabytes, what it said in
# $temporary/said. Returns its exit code.
measure() {
  local code=0
  /usr/bin/time -f '%e %M' -o "$temporary/time" "$@" >"$temporary/said" 2>&1 || code=$?
  read -r seconds megabytes < <(tail -n 1 "$temporary/time")
  megabytes=$((megabytes / 1024))
  return "$code"
}

# reckon EXPRESSION DECIMALS: a number, by awk.
reckon() { awk "BEGIN { printf \"%.${2}f\", $1 }"; }

# tell WHAT MEASURED TARGET MET: a row of the table that run.sh makes.
tell() {
  printf '| %s | %s | %s | %s |\n' "$@"
  if [ -n "${BRUSHLINE_BENCH:-}" ]; then printf '| %s | %s | %s | %s |\n' "$@" >>"$BRUSHLINE_BENCH"; fi
}

# The processor, the load and the day, for a table's last line.
machine() {
  printf '%s, %s processors, load %s at the end, %s, QGIS %s.' \
    "$(sed -n 's/^model name\s*: //p' /proc/cpuinfo | head -n 1)" "$(nproc)" "$(cut -d ' ' -f 1 /proc/loadavg)" \
    "$(date +%Y-%m-%d)" "$(QT_QPA_PLATFORM=offscreen "$host" --version 2>/dev/null | sed -n 's/^QGIS \([0-9.]*\).*/\1/p' | head -n 1)"
}
