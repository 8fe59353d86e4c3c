#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-2.0-or-later
# files_bench.sh PREFIX [LEGS]: what each further leg costs as a card, in the tables and as GPX: time and peak memory of
# qgis_process with LEGS legs, less those with a tenth of them, by the legs between.
# shellcheck source-path=SCRIPTDIR source=../plugin/surroundings.sh
source "$(dirname "${BASH_SOURCE[0]}")/../plugin/surroundings.sh"
# shellcheck source-path=SCRIPTDIR source=measure.sh
source "$(dirname "${BASH_SOURCE[0]}")/measure.sh"
prefix=$1
many=${2:-20000}
few=$((many / 10))
python=$(find_python)
use_plugin "$prefix"
for count in "$few" "$many"; do
  "$python" "$tests/many_legs.py" "$temporary/$count.fgb" "$count" || fail "no legs."
done

# cost ALGORITHM KEY OUTPUT
cost() {
  local before=() count
  for count in "$few" "$many"; do
    rm -rf "${temporary:?}/$3"
    measure "$host" run "brushline:$1" -- INPUT="$temporary/$count.fgb" "$2=$temporary/$3" ||
      fail "$1: $(cat "$temporary/said")"
    [ "$count" = "$few" ] && before=("$seconds" "$megabytes")
  done
  tell "$1, each leg from $few to $many" "$(reckon "1000 * ($seconds - ${before[0]}) / ($many - $few)" 3) ms, \
$(reckon "1024 * ($megabytes - ${before[1]}) / ($many - $few)" 2) kB of memory" "none set" "-"
}
cost legcards FOLDER cards
cost legtables FOLDER tables
cost exportgpx OUTPUT legs.gpx
