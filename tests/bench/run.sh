#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-2.0-or-later
# All benches in one table with the target beside each: what is compared takes turns, and the least of several runs
# counts. Give it a quiet machine, some GB of room in TMPDIR, and an hour.
#
#   run.sh [--quick] [--strict] [--build FOLDER] [--prefix FOLDER] [--table FILE] [NAME...]
#
# --quick   small sizes, two runs: shows that all works, not how fast
# --strict  ends with 1 when a target is missed; else with 0 whatever comes out
# --build   build folder; else that of the preset "developer", build/tests
# --prefix  where the plugin is installed already; else it is built and installed in the build folder
# --table   writes the table there too, as a page of the manual: sample-project/manual/speed-table.md. Rows of benches
#           that did not run now stay as they were in it.
# NAME      some of: annotate memory terrain sighting marks surface effort gpx files start threads
home=$HOME
# shellcheck source-path=SCRIPTDIR source=../plugin/surroundings.sh
source "$(dirname "${BASH_SOURCE[0]}")/../plugin/surroundings.sh"
# shellcheck source-path=SCRIPTDIR source=measure.sh
source "$(dirname "${BASH_SOURCE[0]}")/measure.sh"
root=$(cd -P "$tests/../.." && pwd)
bench=$root/tests/bench
build=$root/build/tests prefix='' quick='' strict='' page='' names=()
while [ $# -gt 0 ]; do
  case $1 in
  --quick) quick=yes ;;
  --strict) strict=yes ;;
  --build) build=$(realpath "$2") && shift ;;
  --prefix) prefix=$(realpath "$2") && shift ;;
  --table) page=$(realpath "$2") && shift ;;
  -*) fail "unknown: $1" ;;
  *) names+=("$1") ;;
  esac
  shift
done
[ ${#names[@]} -gt 0 ] || names=(annotate memory terrain sighting marks surface effort gpx files start threads)

# size FULL QUICK: the one that holds.
size() { if [ -n "$quick" ]; then echo "$2"; else echo "$1"; fi; }
repeat=$(size 5 2)

make_target() {
  HOME=$home cmake --build "$build" --target "$@" >"$temporary/build" 2>&1 || fail "cannot build $*: $(tail -n 20 "$temporary/build")"
}
installed() {
  [ -z "$prefix" ] || return 0
  make_target brushline
  prefix=$build/prefix
  cmake --install "$build" --prefix "$prefix" >/dev/null
}
program() {
  make_target "$1"
  find "$build/tests" -name "$1" -type f -perm -u+x | head -n 1
}
# A bench's own files go with it, and what it prints goes to the error stream; the table comes last.
a_program() { local path && path=$(program "$1") && "$path" "${@:2}" >&2; }

one() {
  case $1 in
  annotate) a_program annotate_legs_bench --routes "$(size 10000 100)" --repeat "$repeat" ;;
  memory) a_program annotate_legs_bench --memory --routes "$(size 10000 100)" ;;
  terrain) a_program terrain_bench --routes "$(size 10000 50)" --repeat "$repeat" ;;
  sighting) a_program sighting_bench --routes "$(size 1000 5)" --repeat "$repeat" ;;
  marks) a_program sighting_bench --marks --candidates "$(size 1000000 100000)" --repeat "$(size 3 1)" ;;
  surface) a_program sighting_bench --surface --cells "$(size 20000 1000)" ;;
  gpx) a_program handouts_bench --routes "$(size 1000 20)" --repeat "$repeat" ;;
  effort)
    local path
    path=$(program through_cover_bench)
    # shellcheck disable=SC2046
    /usr/bin/python3 "$bench/effort_bench.py" --program "$path" --repeat "$(size 3 2)" \
      --sides $(size "1000 2000 4000" 500) >&2
    ;;
  files) installed && "$bench/files_bench.sh" "$prefix" "$(size 20000 1000)" >&2 ;;
  start) installed && "$bench/start_bench.sh" "$prefix" "$(size 10 3)" >&2 ;;
  threads)
    installed && QGIS_PLUGINPATH=$prefix/share/qgis/python/plugins /usr/bin/python3 "$bench/threads_bench.py" \
      --scale "$(size 1 0.02)" --repeat "$(size 3 1)" >&2
    ;;
  *) fail "no bench $1" ;;
  esac
}

[ -f "$build/CMakeCache.txt" ] || (cd "$root" && HOME=$home cmake --preset developer >/dev/null) || fail "cannot configure."
export BRUSHLINE_BENCH=$temporary/table
: >"$BRUSHLINE_BENCH"
for name in "${names[@]}"; do
  printf '== %s\n' "$name" >&2
  # A bench that fails is a row, and the others go on.
  if ! (one "$name"); then tell "$name" "failed" "" MISSED >/dev/null; fi
done

{
  printf '| what | measured | target | |\n| --- | --- | --- | --- |\n'
  cat "$BRUSHLINE_BENCH"
  printf '\n%s%s\n' "$(machine)" "${quick:+ Small sizes: these figures say nothing about speed.}"
} >"$temporary/page"
cat "$temporary/page"
if [ -n "$page" ]; then
  touch "$page"
  {
    printf '<!-- SPDX-License-Identifier: GPL-2.0-or-later -->\n<!-- Made by tests/bench/run.sh. -->\n\n'
    # The old page's rows in their order, each as it is now; then new ones; then the machine.
    awk -F ' [|] ' '
      FNR == 1 { ++file }
      !/^[|]/ { if (file == 1) machine = machine $0 "\n"; next }
      file == 1 { now[$1] = $0; order[++count] = $1; next }
      $1 in now { print now[$1]; delete now[$1]; next }
      { print }
      END { for (i = 1; i <= count; ++i) if (order[i] in now) print now[order[i]]; printf "%s", machine }
    ' "$temporary/page" "$page" >"$temporary/merged"
    cat "$temporary/merged"
  } >"$temporary/whole"
  cp "$temporary/whole" "$page"
fi
if [ -n "$strict" ] && grep -q '| MISSED |$' "$BRUSHLINE_BENCH"; then exit 1; fi
