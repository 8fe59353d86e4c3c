// SPDX-License-Identifier: GPL-2.0-or-later
// Someone who walks by compass, errs by chance and sees where they meet a line: written apart from what it checks.
#pragma once

#include <array>
#include <cmath>
#include <cstdint>
#include <optional>
#include <random>
#include <vector>

namespace brushline::test {

//! Walks in a plane, x to the east and y to the north, from its origin.
class WalkerByChance {
public:
  struct Stretch {
    std::array<double, 2> a, b;
  };
  struct Errors {
    double common; //!< of a whole walk, radians, 1 sigma
    double hop;    //!< of each hop
  };

  WalkerByChance(std::vector<Stretch> lines, const Errors &errors, uint64_t seed)
      : mLines(std::move(lines)), mErrors(errors), mNumbers(seed) {}

  //! One walk; the stretch met first and the place. \param hops their lengths; the last one comes again until the walk
  //! is as long as most.
  std::optional<std::pair<size_t, std::array<double, 2>>> walk(double bearing, const std::vector<double> &hops,
                                                               double most) {
    const double common = mErrors.common * normal();
    double x = 0, y = 0, walked = 0;
    for (size_t i = 0; walked < most; ++i) {
      const double hop = std::min(hops[std::min(i, hops.size() - 1)], most - walked);
      const double way = bearing + common + mErrors.hop * normal();
      const double dx = hop * std::sin(way), dy = hop * std::cos(way);
      double soonest = 2;
      size_t which = 0;
      for (size_t k = 0; k < mLines.size(); ++k) {
        // (x, y) + s (dx, dy) = a + t (ex, ey), by Cramer's rule.
        const auto &[a, b] = mLines[k];
        const double ex = b[0] - a[0], ey = b[1] - a[1], det = ex * dy - ey * dx;
        if (det == 0)
          continue;
        const double s = (ex * (a[1] - y) - ey * (a[0] - x)) / det, t = (dx * (a[1] - y) - dy * (a[0] - x)) / det;
        if (s >= 0 && s <= 1 && t >= 0 && t <= 1 && s < soonest) {
          soonest = s;
          which = k;
        }
      }
      if (soonest <= 1)
        return std::pair(which, std::array{x + soonest * dx, y + soonest * dy});
      x += dx;
      y += dy;
      walked += hop;
    }
    return std::nullopt;
  }

private:
  double uniform() { return (double(mNumbers() >> 11) + 0.5) * 0x1p-53; }
  // Two uniform numbers make a normal one (Box and Muller 1958, from memory).
  double normal() { return std::sqrt(-2 * std::log(uniform())) * std::cos(2 * std::acos(-1.0) * uniform()); }

  std::vector<Stretch> mLines;
  Errors mErrors;
  std::mt19937_64 mNumbers;
};

} // namespace brushline::test
