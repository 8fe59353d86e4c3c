#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-2.0-or-later
# gpx_schema.sh FILE: puts the schema of GPX 1.1 there, unless it is there already. It is not ours to hand on, so it is
# taken out of a Debian package that ships it.
set -euo pipefail

target=${1:?say where the schema goes}
[ -s "$target" ] && exit 0
mkdir -p "$(dirname "$target")"
temporary=$(mktemp -d)
trap 'rm -rf "$temporary"' EXIT
cd "$temporary"

for source in zoph/gpx11.xsd pytrainer/Topografix_gpx11.xsd; do
  apt-get download "${source%/*}" >>log 2>&1 || continue
  dpkg-deb -x "${source%/*}"_*.deb unpacked
  found=$(find unpacked -name "${source#*/}" | head -n 1)
  if [ -n "$found" ] && grep -q 'targetNamespace="http://www.topografix.com/GPX/1/1"' "$found"; then
    cp "$found" "$target.$$"
    mv "$target.$$" "$target"
    exit 0
  fi
done
cat log >&2
echo "FAILED: no schema of GPX 1.1: apt-get can download neither zoph nor pytrainer (see above; perhaps" \
  "apt-get update was never run). To do without, put gpx11.xsd to $target." >&2
exit 1
