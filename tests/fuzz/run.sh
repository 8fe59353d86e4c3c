#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-2.0-or-later
# Builds the fuzz targets (preset fuzz) and runs each of them for a while, two at a time. Ends with 0 only if nothing was
# found. What is found lies in build/fuzz/findings; once it is mended, the file goes into corpus/TARGET.
#
#   run.sh [--seconds N] [--seed N] [--table FILE] [TARGET ...]
#
# --seconds  for each target; default 60
# --seed     of the fuzzer's chance; default 1, so that a fresh run does what the last one did. 0: another one each time
# --table    adds what these runs did to that page: sample-project/manual/fuzz-table.md. Give --seed 0 with it, for doing
#            again what an earlier run did adds nothing. Where there is no such file the count begins anew
set -euo pipefail

here=$(cd -P "$(dirname "${BASH_SOURCE[0]}")" && pwd)
root=$(cd -P "$here/../.." && pwd)
build=$root/build/fuzz
seconds=60
seed=1
table=''
targets=()
while [ $# -gt 0 ]; do
  case $1 in
    --seconds) seconds=${2:?--seconds needs a number}; shift ;;
    --seed) seed=${2:?--seed needs a number}; shift ;;
    --table) table=$(realpath "${2:?--table needs a file}"); shift ;;
    -*) echo "run.sh [--seconds N] [--seed N] [--table FILE] [TARGET ...]" >&2; exit 2 ;;
    *) targets+=("$1") ;;
  esac
  shift
done
if [ ${#targets[@]} -eq 0 ]; then
  for source in "$here"/*_fuzz.cpp; do
    targets+=("$(basename "$source" _fuzz.cpp)")
  done
fi

# What a target tries, by the table in README.md.
functions() { sed -n "s/^| \`$1\` | \(.*\) |\$/\1/p" "$here/README.md"; }
for target in "${targets[@]}"; do
  if [ ! -f "$here/${target}_fuzz.cpp" ] || [ -z "$(functions "$target")" ]; then
    echo "There is no target $target, or README.md does not tell what it tries." >&2
    exit 2
  fi
done

cd "$root"
cmake --preset fuzz
cmake --build --preset fuzz --target "${targets[@]/%/_fuzz}"

mkdir -p "$build/findings" "$build/log"
export ASAN_OPTIONS=allocator_may_return_null=1 UBSAN_OPTIONS=print_stacktrace=1

# Inputs take milliseconds; one of 25 s is a finding.
fuzz() {
  local corpus=$build/corpus/$1 result=ok status=0 seeds=() began=$SECONDS
  mkdir -p "$corpus"
  rm -f "$build/log/$1.row"
  [ -d "$here/corpus/$1" ] && seeds=("$here/corpus/$1")
  "$build/tests/fuzz/$1_fuzz" -max_total_time="$seconds" -seed="$seed" -timeout=25 -rss_limit_mb=4096 -max_len=4096 \
    -print_final_stats=1 -artifact_prefix="$build/findings/$1-" "$corpus" "${seeds[@]}" \
    >"$build/log/$1" 2>&1 || status=$?
  [ $status -eq 0 ] || result="FOUND: build/fuzz/log/$1"
  local executions coverage
  executions=$(sed -n 's/^stat::number_of_executed_units: *//p' "$build/log/$1" | tail -n 1)
  coverage=$(sed -n 's/.* cov: \([0-9]*\) .*/\1/p' "$build/log/$1" | tail -n 1)
  printf '%-18s %12s %9s  %s\n    %s\n' "$1" "$executions" "$coverage" "$result" "$(functions "$1")"
  printf '| `%s` | %s | %s | %s | %s | %s |\n' "$1" "$(functions "$1")" "$((SECONDS - began))" "${executions:-0}" "${coverage:-0}" \
    "$([ $status -eq 0 ] && echo nothing || echo something)" >"$build/log/$1.row"
  return $status
}
export -f fuzz functions
export here build seconds seed

printf '%-18s %12s %9s  %s\n' fuzzer executions coverage result
found=no
printf '%s\n' "${targets[@]}" | xargs -P 2 -I{} bash -c 'fuzz {}' || found=yes
[ -z "$table" ] || /usr/bin/python3 "$here/fuzz_table.py" "$table" "$build/log" "${targets[@]}"
if [ $found = yes ]; then
  echo "== Something was found: the inputs lie in build/fuzz/findings"
  exit 1
fi
echo "== Nothing was found in $seconds s each"
