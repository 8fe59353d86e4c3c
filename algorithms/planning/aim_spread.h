// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/angle.h"
#include "quantities/length.h"
#include "sighting/drift.h"

#include <cmath>
#include <vector>

namespace brushline {

/**
 * How far a walk by compass errs to the side, at any distance from its start: the across of RouteDrift for a leg that
 * ends there, as an angle seen from the start.
 *
 *   sigma(r)^2 = sighting^2 * S(r) / r^2 + setting^2 + declination^2
 *
 * S(r) sums the squares of the hops up to r, the last one cut off there; beyond the leg's end it grows with the
 * distance, as by hops like those of the leg.
 */
class AimSpread {
public:
  /**
   * \param marks where the hops of the leg end, metres from its start, ascending, the last at the leg's end; at least
   * one. \param errors of the walker.
   */
  AimSpread(const std::vector<double> &marks, const LegErrors &errors);

  //! One standard deviation, radians. \param metres > 0.
  double at(double metres) const;
  //! As above, the most at any distance: that of the first hop.
  double most() const { return std::sqrt(mRandom + mCommon); }

private:
  struct Node {
    double at_m;
    double squared; // S there
  };
  std::vector<Node> mNodes;
  double mRandom, mCommon; // variances, radians^2
};

//! The share of a normal distribution below so many standard deviations.
double shareBelow(double sigmas);

} // namespace brushline
