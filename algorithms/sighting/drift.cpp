// SPDX-License-Identifier: GPL-2.0-or-later
#include "sighting/drift.h"

#include <algorithm>
#include <cmath>

namespace brushline {

Angle roundingError(Angle step) { return Angle::degrees(step.degrees() / std::sqrt(12.0)); }

double sigmasHolding(double share) { return std::sqrt(-2 * std::log1p(-share)); }

void RouteDrift::restart() { *this = RouteDrift(); }

DriftEllipse RouteDrift::walk(TrueBearing bearing, Length length, double squared_hops, const LegErrors &errors) {
  const double alongEast = std::sin(bearing.angle().radians()), alongNorth = std::cos(bearing.angle().radians());
  const double acrossEast = alongNorth, acrossNorth = -alongEast; // to the right
  const double metres = length.metres();

  const double sighting = errors.sighting.radians(), setting = errors.setting.radians() * metres;
  const double acrossVariance = sighting * sighting * squared_hops + setting * setting;
  const double alongVariance = errors.pacing * metres * errors.pacing * metres;
  mEastEast += acrossVariance * acrossEast * acrossEast + alongVariance * alongEast * alongEast;
  mEastNorth += acrossVariance * acrossEast * acrossNorth + alongVariance * alongEast * alongNorth;
  mNorthNorth += acrossVariance * acrossNorth * acrossNorth + alongVariance * alongNorth * alongNorth;
  mTurnEast += metres * acrossEast;
  mTurnNorth += metres * acrossNorth;

  const double declination = errors.declination.radians();
  const double ee = mEastEast + declination * declination * mTurnEast * mTurnEast;
  const double en = mEastNorth + declination * declination * mTurnEast * mTurnNorth;
  const double nn = mNorthNorth + declination * declination * mTurnNorth * mTurnNorth;
  const auto sigma = [&](double east, double north) {
    return Length::metres(std::sqrt(std::max(0.0, ee * east * east + 2 * en * east * north + nn * north * north)));
  };
  const double mean = (ee + nn) / 2, spread = std::hypot((ee - nn) / 2, en);
  DriftEllipse ellipse;
  ellipse.across = sigma(acrossEast, acrossNorth);
  ellipse.along = sigma(alongEast, alongNorth);
  ellipse.semi_major = Length::metres(std::sqrt(mean + spread));
  ellipse.semi_minor = Length::metres(std::sqrt(std::max(0.0, mean - spread)));
  // The axis's angle from east, anticlockwise, is half of atan2(2 en, ee - nn).
  const Angle fromEast = Angle::radians(std::atan2(2 * en, ee - nn) / 2);
  const double clockwise = std::fmod(Angle(Angle::degrees(90) - fromEast).fullCircle().degrees(), 180.0);
  ellipse.major_axis = TrueBearing(Angle::degrees(clockwise));
  return ellipse;
}

} // namespace brushline
