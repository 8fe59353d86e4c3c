// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/place.h"

#include <cmath>
#include <cstdint>
#include <random>

namespace brushline::test {

//! The same numbers from the same seed on every machine (the standard fixes the generator, not its distributions).
class Random {
public:
  explicit Random(uint64_t seed) : mGenerator(seed) {}

  //! Uniform in [least, most).
  double between(double least, double most) { return least + (most - least) * double(mGenerator() >> 11) * 0x1p-53; }
  //! Uniform over the globe.
  Place place() {
    const double latitude = std::asin(between(-1, 1)) * (180 / Angle::pi);
    return {Angle::degrees(latitude), Angle::degrees(between(-180, 180))};
  }

private:
  std::mt19937_64 mGenerator;
};

} // namespace brushline::test
