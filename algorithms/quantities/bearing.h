// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/angle.h"

namespace brushline {

//! The north a bearing is counted from. The numbers are those of the parameter NORTH.
enum class North { Magnetic = 0, True = 1, Grid = 2 };

/**
 * A bearing: clockwise from its own north, 0 <= degrees < 360. Bearings of different norths are different types;
 * only the functions below lead from one to another.
 */
template <North N> class Bearing {
public:
  constexpr Bearing() = default;
  explicit Bearing(Angle clockwise) : mAngle(clockwise.fullCircle()) {}
  double degrees() const { return mAngle.degrees(); }
  Angle angle() const { return mAngle; }
  Bearing reversed() const { return Bearing(mAngle + Angle::degrees(180)); }

private:
  Angle mAngle;
};

using TrueBearing = Bearing<North::True>;
using MagneticBearing = Bearing<North::Magnetic>;
using GridBearing = Bearing<North::Grid>;

//! The bearing of magnetic north, counted from true north; east positive.
struct Declination {
  Angle east;
};

//! The bearing of grid north, counted from true north; east positive.
struct Convergence {
  Angle east;
};

//! magnetic = true - declination.
inline MagneticBearing toMagnetic(TrueBearing bearing, Declination declination) {
  return MagneticBearing(bearing.angle() - declination.east);
}

//! true = magnetic + declination.
inline TrueBearing toTrue(MagneticBearing bearing, Declination declination) {
  return TrueBearing(bearing.angle() + declination.east);
}

//! grid = true - convergence.
inline GridBearing toGrid(TrueBearing bearing, Convergence convergence) {
  return GridBearing(bearing.angle() - convergence.east);
}

//! true = grid + convergence.
inline TrueBearing toTrue(GridBearing bearing, Convergence convergence) {
  return TrueBearing(bearing.angle() + convergence.east);
}

} // namespace brushline
