// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/bearing.h"
#include "quantities/length.h"

namespace brushline {

/*
 * Where one who walks by compass and pace count may really be.
 *
 *   across, by chance:   sigma_b * sqrt(sum of d_i^2)   sightings err independently, hop by hop
 *   across, in common:   L * delta                       one dial setting, one declination
 *   along:               L * p                           the count of paces
 *
 * with angles in radians, small. Shorter hops reduce only the first.
 */

//! The errors of one who walks a leg; 1 sigma each.
struct LegErrors {
  Angle sighting;    //!< of one sighting, independent from hop to hop
  Angle setting;     //!< of the dial's setting, common to a leg, independent from leg to leg
  Angle declination; //!< common to all legs
  double pacing;     //!< of a paced distance as a share of it, independent from leg to leg
};

//! The error of a number rounded to a graduation: step / sqrt(12). Source: variance of the uniform distribution.
Angle roundingError(Angle step);

//! The spread of a position; 1 sigma.
struct DriftEllipse {
  Length across; //!< square to the last leg
  Length along;  //!< along the last leg
  Length semi_major, semi_minor;
  TrueBearing major_axis; //!< of the two directions the one in [0, 180)
};

/**
 * The radius of the circle (in units of sigma) that holds a share of a two-dimensional normal distribution:
 * sqrt(-2 ln(1 - share)); 2.4477 for 95 percent.
 */
double sigmasHolding(double share);

/**
 * The spread that builds up along a route, from the last place that was found with certainty.
 *
 * The legs' errors are added in a plane (a route is short), the error of the declination as one for all legs.
 */
class RouteDrift {
public:
  //! One stands at a known place.
  void restart();

  /**
   * Walks a leg and tells the spread at its end.
   *
   * \param squared_hops sum of the squares of the hops' lengths, square metres.
   */
  DriftEllipse walk(TrueBearing bearing, Length length, double squared_hops, const LegErrors &errors);

private:
  double mEastEast = 0, mEastNorth = 0, mNorthNorth = 0; // covariance of what is independent from leg to leg, m^2
  double mTurnEast = 0, mTurnNorth = 0;                  // what a turn of the whole route by 1 rad moves its end, m
};

} // namespace brushline
