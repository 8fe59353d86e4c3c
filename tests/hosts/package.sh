#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-2.0-or-later
# package.sh PACKAGE NEWER SAMPLE: in a Debian that has nothing of ours, as root: the package installs with what it
# needs, works, gives way to a newer one, and leaves nothing behind when it goes. SAMPLE is the folder of the sample.
set -euo pipefail
package=$1 newer=$2 sample=$3
fail() { printf 'FAILED: %s\n' "$*" >&2; exit 1; }
export DEBIAN_FRONTEND=noninteractive LC_ALL=C.UTF-8 QT_QPA_PLATFORM=offscreen HOME=/root
temporary=$(mktemp -d)
trap 'rm -rf "$temporary"' EXIT

install() { apt-get install -q -y --no-install-recommends "$@" >"$temporary/log" 2>&1 || fail "$*: $(tail -n 20 "$temporary/log")"; }
works() {
  local host=qgis_process
  command -v qgis_process.bin >/dev/null && host=qgis_process.bin # Debian 12 wraps it in a script that refuses
  rm -rf /root/.local "$temporary/legs.gpkg"
  "$host" plugins enable brushline >"$temporary/log" 2>&1 || fail "not enabled: $(cat "$temporary/log")"
  "$host" run brushline:annotatelegs -- INPUT="$sample/sample.gpkg|layername=routes" ROUTE_FIELD=route \
    DATE=2026-06-20 OUTPUT="$temporary/legs.gpkg" >"$temporary/log" 2>&1 || fail "no legs: $(cat "$temporary/log")"
  grep -q '^LEG_COUNT:.17$' "$temporary/log" || fail "other legs: $(cat "$temporary/log")"
}

apt-get update -q >/dev/null
install "$package" qgis
works
version=$(dpkg-query -W -f '${Version}' brushline)
install "$newer"
[ "$(dpkg-query -W -f '${Version}' brushline)" != "$version" ] || fail "the newer package did not take the place of $version."
works
apt-get purge -q -y brushline >"$temporary/log" 2>&1 || fail "purge: $(cat "$temporary/log")"
rm -rf /root/.local
left=$(find / -xdev \( -path /proc -o -path "$(dirname "$sample")" -o -path "$(dirname "$package")" \) -prune -o -iname '*brushline*' -print)
[ -z "$left" ] || fail "left behind: $left"
echo "installed, upgraded, removed"
