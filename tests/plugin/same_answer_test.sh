#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-2.0-or-later
# same_answer_test.sh PREFIX: every algorithm gives the same, bit for bit, by 1, 2 and 8 threads, run after run, and in
# whatever order the rows of its inputs come; a random course is the same on every machine.
# shellcheck source-path=SCRIPTDIR source=surroundings.sh
. "$(dirname "${BASH_SOURCE[0]}")/surroundings.sh"
# shellcheck source=../hosts/work_list.sh
. "$tests/../hosts/work_list.sh"
prefix=${1:?give the prefix Brushline is installed in}
python=$(find_python)
helper() { "$python" "$tests/same_answer.py" "$@"; }
command -v cc >/dev/null || fail "there is no C compiler here (Debian: gcc)."
use_plugin "$prefix"

# The host takes no more threads than there are processors, so it is told of eight. Its setting for the number is
# heeded by the desktop alone; here the host's own start-up script sets it.
cat >"$temporary/processors.c" <<'EOF'
#define _GNU_SOURCE
#include <dlfcn.h>
#include <unistd.h>
long sysconf(int name) {
  static long (*next)(int);
  if (name == _SC_NPROCESSORS_ONLN)
    return 8;
  if (!next)
    next = (long (*)(int))dlsym(RTLD_NEXT, "sysconf");
  return next(name);
}
EOF
cc -shared -fPIC -o "$temporary/processors.so" "$temporary/processors.c" -ldl || fail "no library that tells of eight processors."
cat >"$temporary/startup.py" <<'EOF'
import os
from qgis.core import QgsApplication
QgsApplication.setMaxThreads(int(os.environ["BRUSHLINE_THREADS"]))
with open(os.environ["BRUSHLINE_THREADS_TOLD"], "w") as told:
    told.write("%d" % QgsApplication.maxThreads())
EOF
# The order in which Qt writes the fonts of a PDF hangs on a number by chance.
export QT_HASH_SEED=0

threads=1
work_out() { # work_out ID [OPTIONS] -- ARGUMENTS: with $threads threads; what is told goes to $log
  local told=$log.told
  rm -f "$told"
  LD_PRELOAD=$temporary/processors.so PYQGIS_STARTUP=$temporary/startup.py BRUSHLINE_THREADS=$threads \
    BRUSHLINE_THREADS_TOLD=$told timeout 300 "$host" run "brushline:$1" "${@:2}" >"$log" 2>&1 || fail "$1: $(cat "$log")"
  # From 3.24 on the host takes two at least.
  [[ $threads:$(cat "$told") =~ ^($threads:$threads|1:2)$ ]] || fail "the host took $(cat "$told") threads instead of $threads."
}
pass() { # pass NAME THREADS DATA LEGS: every algorithm, into $temporary/NAME/numbers and .../handouts
  local log=$temporary/log.$1 threads=$2
  mkdir -p "$temporary/$1/numbers" "$temporary/$1/handouts"
  work_through "$3" "$temporary/$1/numbers" "$4/legs.gpkg"
  # The map under a course is drawn by the host, row after row; what is handed out of the same legs is ours.
  hand_out "$sample" "$temporary/$1/handouts" "$4/legs.gpkg" "$4/marks.gpkg" "$4/met.gpkg"
}
wide() { # wide NAME THREADS: routes and starts for many threads
  local log=$temporary/log.wide.$1 threads=$2 out=$temporary/$1
  mkdir -p "$out"
  work_out annotatelegs -- INPUT="$temporary/wide.gpkg|layername=routes" ROUTE_FIELD=route DATE=2026-06-20 \
    DEM="$sample/terrain.tif" COVER="$sample/sample.gpkg|layername=cover" COVER_CLASS=class DIRECTION=2 \
    OUTPUT="$out/legs.gpkg" MARKS="$out/marks.gpkg" DRIFT="$out/drift.gpkg"
  work_out aimoff -- STARTS="$temporary/wide.gpkg|layername=starts" START_NAME=name DATE=2026-06-20 \
    LINES="$sample/sample.gpkg|layername=trails" DEM="$sample/terrain.tif" OUTPUT="$out/aimed.gpkg"
}

echo "-- the same rows in their own order, reversed and shuffled"
for order in given reversed shuffled; do
  helper reorder "$order" "$sample" "$temporary/$order.data"
done
helper wide "$sample" "$temporary/wide.gpkg"
started=$SECONDS
echo "-- 1 thread"
first=$temporary/one/numbers
pass one 1 "$temporary/given.data" "$first"
for order in reversed shuffled; do
  for each in legs marks met; do
    helper rows "$order" "$first/$each.gpkg" "$temporary/$order.data/$each.gpkg"
  done
done
echo "   $((SECONDS - started)) s"

echo "-- 8 threads; 2 threads and rows reversed; 8 threads and rows shuffled"
( pass eight 8 "$temporary/given.data" "$first" ) & eight=$!
( pass reversed 2 "$temporary/reversed.data" "$temporary/reversed.data" ) & reversed=$!
wait $eight || fail "a run by 8 threads."
wait $reversed || fail "a run with rows reversed."
( pass shuffled 8 "$temporary/shuffled.data" "$temporary/shuffled.data" ) & shuffled=$!
for threads in 1 2 8; do
  wide "wide.$threads" "$threads"
done
wait $shuffled || fail "a run with rows shuffled."
echo "   $((SECONDS - started)) s"

faults=0
same() { helper "$@" || faults=$((faults + 1)); }
echo "-- 1 and 8 threads, run after run"
same compare "$temporary/one" "$temporary/eight"
same compare "$temporary/wide.1" "$temporary/wide.2"
same compare "$temporary/wide.1" "$temporary/wide.8"
echo "-- the order of rows"
same compare-sorted "$temporary/one" "$temporary/reversed"
same compare-sorted "$temporary/one" "$temporary/shuffled"
echo "-- a random course, the same on every machine"
same course "$first/controls.gpkg" "$tests/data/same_course.csv"

echo "-- that it can fail"
mkdir "$temporary/changed"
helper rows reversed "$first/field.gpkg" "$temporary/changed/field.gpkg"
mkdir "$temporary/field"
cp "$first/field.gpkg" "$temporary/field"
! helper compare "$temporary/field" "$temporary/changed" >/dev/null || fail "another order of rows is not seen."
helper compare-sorted "$temporary/field" "$temporary/changed" >/dev/null || fail "sorting does not help."
helper nudge "$temporary/changed/field.gpkg" decl
! helper compare-sorted "$temporary/field" "$temporary/changed" >/dev/null || fail "the last bit of a number is not seen."
[ "$faults" = 0 ] || fail "$faults comparisons, see above."
echo "passed"
