// SPDX-License-Identifier: GPL-2.0-or-later
#include "walking/walking_time.h"

#include <cmath>

namespace brushline {

double offTrailSpeed(double slope) {
  const double percent = 100 * slope + 2;
  return 0.11 + 0.67 * std::exp(-percent * percent / 1800);
}

double onTrailSpeed(double slope) {
  const double percent = 100 * slope + 5;
  return 0.11 + std::exp(-percent * percent / 1800);
}

double hikingSpeed(double slope) { return 6 / 3.6 * std::exp(-3.5 * std::abs(slope + 0.05)); }

Duration distanceAndClimbTime(Length run, Length rise) {
  constexpr double perMetreRun = 0.72, perMetreClimb = 6.0, perMetreDescent = 1.9998; // s/m
  static const double moderate = std::tan(Angle::degrees(5).radians());
  static const double steep = std::tan(Angle::degrees(12).radians());
  double seconds = perMetreRun * run.metres();
  const double fall = -rise.metres();
  if (fall < 0)
    seconds += perMetreClimb * -fall;
  else if (fall > steep * run.metres())
    seconds += perMetreDescent * fall;
  else if (fall >= moderate * run.metres())
    seconds -= perMetreDescent * fall;
  return Duration::seconds(seconds);
}

namespace {
Duration timeOver(Length run, Length rise, const Walker &walker) {
  const double slope = run.metres() > 0 ? rise.metres() / run.metres() : 0;
  switch (walker.time_rule) {
  case TimeRule::OffTrailSpeed:
    return Duration::seconds(run.metres() / offTrailSpeed(slope));
  case TimeRule::HikingOffPath:
    return Duration::seconds(run.metres() / (offPathFactor * hikingSpeed(slope)));
  case TimeRule::DistanceAndClimb:
    break;
  }
  return distanceAndClimbTime(run, rise);
}
} // namespace

Duration walkingTime(Length run, Length rise, const Walker &walker) {
  return Duration::seconds(timeOver(run, rise, walker).seconds() / walker.speed_factor);
}

} // namespace brushline
