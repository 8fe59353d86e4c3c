// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <cmath>

namespace brushline {

//! An angle, so that a degree cannot meet a radian. Any real value, degrees inside; no north, no sense of its own.
class Angle {
public:
  constexpr Angle() = default;
  static constexpr Angle degrees(double value) { return Angle(value); }
  static constexpr Angle radians(double value) { return Angle(value * (180.0 / pi)); }

  constexpr double degrees() const { return mDegrees; }
  constexpr double radians() const { return mDegrees * (pi / 180.0); }

  constexpr Angle operator-() const { return Angle(-mDegrees); }
  constexpr Angle operator+(Angle other) const { return Angle(mDegrees + other.mDegrees); }
  constexpr Angle operator-(Angle other) const { return Angle(mDegrees - other.mDegrees); }

  //! The same direction in [-180, 180] degrees.
  Angle signedTurn() const { return Angle(std::remainder(mDegrees, 360.0)); }

  /**
   * The same direction in [0, 360) degrees; never 360, also for a tiny negative angle.
   */
  Angle fullCircle() const {
    double d = std::fmod(mDegrees, 360.0);
    if (d < 0)
      d += 360.0;
    return Angle(d >= 360.0 ? 0.0 : d + 0.0); // -1e-20 + 360 rounds to 360; + 0.0 turns -0 into 0
  }

  static constexpr double pi = 3.141592653589793238462643383279502884;

private:
  constexpr explicit Angle(double degrees) : mDegrees(degrees) {}
  double mDegrees = 0;
};

} // namespace brushline
