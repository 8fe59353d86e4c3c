#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-2.0-or-later
# Gets what building and testing need, builds with warnings as errors, runs all tests, then runs those of the core and
# the wrappers again under the sanitizers and each fuzzer for a minute. Needs no screen. Ends with 0 only if all passed.
#
#   run.sh [--no-sanitizers] [--no-long]
#
# --no-sanitizers  the tests alone, without fuzzers either
# --no-long        without the tests labelled long, which start the host dozens or hundreds of times
set -euo pipefail

root=$(cd -P "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
build=$root/build/tests
sanitized=$root/build/sanitized
threads=$root/build/threads
export LC_ALL=C.UTF-8
cd "$root" # for the presets

sanitizers=yes
which=()
while [ $# -gt 0 ]; do
  case $1 in
    --no-sanitizers) sanitizers=no ;;
    --no-long) which=(--label-exclude long) ;;
    *) echo "run.sh [--no-sanitizers] [--no-long]" >&2; exit 2 ;;
  esac
  shift
done

say() { printf '== %d:%02d %s\n' $((SECONDS / 60)) $((SECONDS % 60)) "$*"; } # minutes since the start

"$root/plugin/packaging/set-up.sh" --tests --build "$build" -DBRUSHLINE_WERROR=ON

failed=()
say "All tests"
rm -f "$build"/tests.xml "$build"/tests-again.xml # what hosts.sh makes a table of
ctest --test-dir "$build" "${which[@]}" --output-on-failure --no-tests=error --parallel 2 \
  --output-junit "$build/tests.xml" --test-output-size-passed 65536 || failed+=("the tests in $build")

if [ "$sanitizers" = yes ]; then
  say "Core and wrappers again, under the address and undefined-behaviour sanitizers"
  cmake --preset sanitized
  cmake --build --preset sanitized
  ctest --test-dir "$sanitized" --output-on-failure --no-tests=error --parallel 2 || failed+=("the sanitized tests in $sanitized")

  say "What starts threads, under the thread sanitizer"
  cmake --preset threads
  cmake --build --preset threads
  ctest --test-dir "$threads" -L threads --output-on-failure --no-tests=error --parallel 2 || failed+=("the threads in $threads")

  say "Each fuzzer for a minute"
  "$root/tests/fuzz/run.sh" --seconds 60 || failed+=("the fuzzers")
fi

if [ ${#failed[@]} -gt 0 ]; then
  for each in "${failed[@]}"; do say "FAILED: $each"; done
  exit 1
fi
say "All passed"
