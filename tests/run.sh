#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-2.0-or-later
# Gets what building and testing need, builds with warnings as errors, runs all tests, then runs those of the core and
# the wrappers again under the sanitizers and each fuzzer for a minute. Needs no screen. Ends with 0 only if all passed.
#
#   run.sh [--no-sanitizers]
#
# --no-sanitizers  the tests alone, without fuzzers either
set -euo pipefail

root=$(cd -P "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
build=$root/build/tests
sanitized=$root/build/sanitized
threads=$root/build/threads
export LC_ALL=C.UTF-8

sanitizers=yes
[ "${1:-}" = --no-sanitizers ] && sanitizers=no

say() { printf '== %d:%02d %s\n' $((SECONDS / 60)) $((SECONDS % 60)) "$*"; } # minutes since the start

"$root/plugin/packaging/set-up.sh" --tests --build "$build" -DBRUSHLINE_WERROR=ON

failed=()
say "All tests"
ctest --test-dir "$build" --output-on-failure --no-tests=error --parallel 2 || failed+=("the tests in $build")

if [ "$sanitizers" = yes ]; then
  say "Core and wrappers again, under the address and undefined-behaviour sanitizers"
  "$root/plugin/packaging/set-up.sh" --tests --build "$sanitized" \
    -DBRUSHLINE_SANITIZE=address,undefined -DCMAKE_BUILD_TYPE=Sanitized -DCMAKE_CXX_FLAGS="-O1 -g1"
  ctest --test-dir "$sanitized" --output-on-failure --no-tests=error --parallel 2 || failed+=("the sanitized tests in $sanitized")

  say "What starts threads, under the thread sanitizer"
  cmake -S "$root" -B "$threads" -G Ninja -DBRUSHLINE_SANITIZE=thread -DCMAKE_BUILD_TYPE=Sanitized -DCMAKE_CXX_FLAGS="-O1 -g1"
  cmake --build "$threads" --target threaded_tests
  ctest --test-dir "$threads" -L threads --output-on-failure --no-tests=error || failed+=("the threads in $threads")

  say "Each fuzzer for a minute"
  "$root/tests/fuzz/run.sh" --seconds 60 || failed+=("the fuzzers")
fi

if [ ${#failed[@]} -gt 0 ]; then
  for each in "${failed[@]}"; do say "FAILED: $each"; done
  exit 1
fi
say "All passed"
