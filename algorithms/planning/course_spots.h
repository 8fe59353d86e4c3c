// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "planning/course_ground.h"

#include <functional>
#include <random>
#include <vector>

namespace brushline {

//! The same numbers from the same seed on every machine: the standard fixes this generator, not its distributions.
class CourseRandom {
public:
  explicit CourseRandom(uint64_t seed) : mGenerator(seed) {}
  //! One of 0 .. count - 1, count > 0. Off from even by under count / 2^64.
  uint64_t below(uint64_t count) { return mGenerator() % count; }
  template <typename Value> void shuffle(std::vector<Value> &values) {
    for (size_t i = values.size(); i > 1; --i)
      std::swap(values[i - 1], values[below(i)]);
  }

private:
  std::mt19937_64 mGenerator;
};

/**
 * Chooses spots that all lie farther than a distance from each other and from some fixed ones: taken in a random order,
 * each as long as it has room, so that none could be added.
 *
 * \param spots in any order; the outcome depends on the order, so sort them first. \param apart metres, >= 0.
 * \returns indices of spots, ascending.
 */
std::vector<size_t> spotsApart(const std::vector<GroundPoint> &spots, const std::vector<GroundPoint> &fixed,
                               double apart, CourseRandom &random);

/**
 * Scatters spots over an area at random, all farther than a distance from each other and from some fixed ones
 * (dart throwing; a Poisson disc sample).
 *
 * \param apart metres, > 0. \param most at most so many. \param allowed whether a point may be used.
 * \returns in the order thrown; fewer than most once 30 darts for each one asked for are thrown.
 * \throws Cancelled
 */
std::vector<GroundPoint> scatteredSpots(const CourseGround &ground, const std::vector<GroundPoint> &fixed, double apart,
                                        size_t most, const std::function<bool(const GroundPoint &)> &allowed,
                                        CourseRandom &random, const Progress &progress);

} // namespace brushline
