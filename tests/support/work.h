// SPDX-License-Identifier: GPL-2.0-or-later
// How work grows with its input, for tests of what a comment promises. How long it takes is for tests/bench.
#pragma once

#include <algorithm>
#include <ctime>

namespace brushline::test {

//! How many times as long work may take: the sanitizers slow it down.
#if defined(__SANITIZE_ADDRESS__) || defined(__SANITIZE_THREAD__)
constexpr double slower = 10;
#else
constexpr double slower = 1;
#endif

//! Seconds of the processor's time that a job takes, the least of some tries: whoever else is busy counts for nothing.
template <typename Job> double secondsOfWork(Job job, int tries = 3) {
  double least = 0;
  for (int i = 0; i < tries; ++i) {
    const std::clock_t before = std::clock();
    job();
    const double seconds = double(std::clock() - before) / CLOCKS_PER_SEC;
    least = i == 0 ? seconds : std::min(least, seconds);
  }
  return least;
}

} // namespace brushline::test
