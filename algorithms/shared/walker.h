// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/angle.h"
#include "quantities/length.h"
#include "shared/limits.h"

#include <optional>
#include <string>

namespace brushline {

//! What a walker counts. A pace is one natural step, or every second one. The numbers are those of PACE_KIND.
enum class PaceKind { Single = 0, Double = 1 };

//! How slope changes the count of paces. The numbers are those of SLOPE_RULE.
enum class SlopeRule { None = 0, SlopeTable = 1 };

//! How minutes are worked out. The numbers are those of TIME_RULE.
enum class TimeRule { OffTrailSpeed = 0, HikingOffPath = 1, DistanceAndClimb = 2 };

//! One who walks: how they step, how well they hold a bearing and a count, and how fast they are.
struct Walker {
  std::string name;                             //!< empty when nobody named them
  double steps_per_100m = countLimits.usual;    //!< single steps on level ground, whatever they count
  PaceKind kind = PaceKind::Single;             //!< what they count
  double pace_error_percent = paceErrorLimits.usual; //!< 1 sigma of a distance paced
  Angle bearing_error = Angle::degrees(3);      //!< 1 sigma of one sighting
  Length eye_height = Length::metres(eyeLimits.usual);
  double speed_factor = speedLimits.usual;      //!< multiplies the speed of the time rule
  SlopeRule slope_rule = SlopeRule::SlopeTable;
  TimeRule time_rule = TimeRule::OffTrailSpeed;

  //! Count over 100 m. 130 single steps: 30-inch pace of the US Army's FM 3-25.26 (read second-hand).
  static constexpr Limits countLimits{20, 1000, 130};
  static constexpr Limits paceErrorLimits{0.1, 50, 5};
  static constexpr Limits eyeLimits{0.3, 3, 1.6};
  static constexpr Limits speedLimits{0.05, 5, 1};
};

/**
 * Single steps per 100 m from the number a walker gives.
 *
 * A count is given in single steps, also by one who counts double paces (130 and double paces: 65 are counted).
 * As nobody's steps are longer than 1.1 m, a count under 90 by one who counts double paces is taken for a count of
 * double paces already. From 90 to 110 it could be either, and a child would be sent twice as far by the wrong
 * guess: no answer is given.
 *
 * \param count over 100 m, within Walker::countLimits.
 * \returns single steps per 100 m, or nothing when the count can be read two ways.
 * Source of the bounds: common practice, no source.
 */
std::optional<double> singleSteps(double count, PaceKind kind);

/**
 * The number a walker gives for single steps per 100 m: singleSteps() makes the same steps of it.
 *
 * \param steps single steps over 100 m, whatever is counted, within Walker::countLimits.
 * \returns the same number; for one who counts double paces half of it up to 110, where it would be misread.
 */
double countGiven(double steps, PaceKind kind);

} // namespace brushline
