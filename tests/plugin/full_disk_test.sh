#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-2.0-or-later
# full_disk_test.sh PREFIX: what the host's writers leave on a full disk is an error and no file, in every format that
# people use; and a run tells how many features are in the file. The host itself is silent about most of it, and ends
# well. One algorithm stands for all, since they write layers by the same class.
# shellcheck source-path=SCRIPTDIR source=surroundings.sh
here=$(cd -P "$(dirname "${BASH_SOURCE[0]}")" && pwd)
. "$here/surroundings.sh"

use_plugin "${1:?give the prefix Brushline is installed in}"
python=$(find_python)
side=70 # squared: points
"$python" "$here/many_places.py" "$temporary" $side || fail "no points."

run() { # run OUTPUT
  "$host" run brushline:fieldatpoints -- INPUT="$temporary/points.fgb" KEEP_STYLE=false OUTPUT="$1" \
    >"$temporary/out" 2>&1
}
features() { # features FILE [LAYER]: how many can be read
  "$python" - "$@" <<'END'
import sys
from osgeo import ogr
data = ogr.Open(sys.argv[1])
print(sum(1 for _ in (data.GetLayerByName(sys.argv[2]) if len(sys.argv) > 2 else data.GetLayer(0))))
END
}
must_fail() { # must_fail HOW FOLDER: the run before, and leave nothing
  grep -q 'OUTPUT: .* could not be written whole' "$temporary/out" || fail "$1: no word on it: $(cat "$temporary/out")"
  grep -q '^Results' "$temporary/out" && fail "$1: it tells of results: $(cat "$temporary/out")"
  [ -z "$(ls -A "$2")" ] || fail "$1: left are $(ls -A "$2")"
}

mkdir "$temporary/whole"
disks=0
for ending in gpkg shp geojson fgb csv; do
  out=$temporary/whole/out.$ending
  run "$out" || fail "$ending: $(cat "$temporary/out")"
  told=$(sed -n 's/^.*[^0-9]\([0-9]*\) rows; model.*/\1/p' <<<" $(cat "$temporary/out")")
  [ "$told" = $((side * side)) ] || fail "$ending: it tells of $told rows."
  [ "$(features "$out")" = "$told" ] || fail "$ending: $(features "$out") features are in it, and it tells of $told."
  biggest=$(find "$temporary/whole" -name 'out.*' -printf '%s\n' | sort -n | tail -n 1)
  size=$(find "$temporary/whole" -name 'out.*' -printf '%s\n' | awk '{ sum += $1 } END { print sum }')
  rm "$temporary/whole/"*
  for limit in $((biggest * 3 / 10 / 1024)) $(((biggest - 1) / 1024)); do
    folder=$temporary/limited-$ending-$limit
    mkdir "$folder"
    # The signal is ignored, so that writing fails as it does on a full disk; bash counts in 1024 bytes.
    if (trap '' XFSZ; ulimit -f "$limit"; run "$folder/out.$ending"); then
      fail "$ending: it ends well with files of at most $limit KiB: $(cat "$temporary/out")"
    fi
    must_fail "$ending of at most $limit KiB" "$folder"
  done
  echo "-- $ending: $told features, $biggest bytes; nothing is left of 30 % of it, nor of all but the end"

  if [ "$(id -u)" -ne 0 ]; then
    echo "NOT RUN: $ending on full disks, since only root can mount one"
    continue
  fi
  for percent in 30 95; do
    folder=$temporary/disk-$ending-$percent
    mkdir "$folder"
    mount -t tmpfs -o size=$((size * percent / 100 / 4096 * 4096)) tmpfs "$folder" 2>/dev/null || {
      echo "NOT RUN: $ending on a disk of $percent %, since none can be mounted here"
      continue
    }
    trap 'umount "$temporary"/disk-* 2>/dev/null || true; rm -rf "$temporary"' EXIT
    if run "$folder/out.$ending"; then fail "$ending: it ends well on a disk of $percent %: $(cat "$temporary/out")"; fi
    must_fail "$ending on a disk of $percent %" "$folder"
    umount "$folder"
    disks=$((disks + 1))
  done
done
echo "   $disks runs on full disks"

echo "-- a layer in a file that stays: the others in it stay too"
cp "$sample/sample.gpkg" "$temporary/stays.gpkg"
chmod u+w "$temporary/stays.gpkg"
into="ogr:dbname='$temporary/stays.gpkg' table=\"field\" (geom)"
routes=$(features "$temporary/stays.gpkg" routes)
if (trap '' XFSZ; ulimit -f $(($(stat -c %s "$temporary/stays.gpkg") / 1024 + 100)); run "$into"); then
  fail "it ends well on a full disk: $(cat "$temporary/out")"
fi
[ -f "$temporary/stays.gpkg" ] || fail "the file with the other layers is gone."
[ "$(features "$temporary/stays.gpkg" routes)" = "$routes" ] || fail "the layer routes is not what it was."
run "$into" || fail "run: $(cat "$temporary/out")"
[ "$(features "$temporary/stays.gpkg" field)" = $((side * side)) ] || fail "the layer is not whole."
[ "$(features "$temporary/stays.gpkg" routes)" = "$routes" ] || fail "the layer routes is not what it was."
echo "passed"
