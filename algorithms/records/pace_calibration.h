// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/length.h"
#include "shared/walker.h"

#include <optional>
#include <vector>

namespace brushline {

/*
 * A walker's paces from tries over known distances.
 *
 *   y = 100 n q / d      single steps over 100 m, brought to the level: n steps over d metres along the ground of slope
 *                        s, q = stepLengthRatio(s) by the slope table
 *   y = a + b x + error  x = 1 - q; variance of the error: sigma^2 / d
 *
 * The error: each step strays on its own, so that the error of a count grows as the root of the distance, and a try of
 * 400 m weighs as much as four of 100 m. a is what the walker takes over 100 m of level ground. Where the table holds
 * for the walker b is 0, and a is all steps over all metres. The walker's own effect of slope, k = 1 + b / a, is by how
 * much of the table's effect the walker's steps become more: 1 as the table has it, 0 not at all.
 */

//! A walk over a known distance.
struct PaceTry {
  double count = 0; //!< of what is counted, > 0
  Length distance;  //!< along the ground, > 0
  Angle slope;      //!< even; uphill positive
};

//! What is wrong with a try.
enum class TryFlag {
  None,
  TooSteep, //!< steeper than the slope table
  Half,     //!< about half of what the others have: double paces among single steps
  Twice,    //!< about twice: single steps among double paces
  Feet,     //!< about 0.3 of what the others have: the distance is in feet
  FarOff,   //!< off by some other large factor
  Outlier,  //!< by the outlier test
};

struct JudgedTry {
  double steps_per_100m = 0;   //!< single steps, brought to the level by the slope table
  double residual_percent = 0; //!< off what the walker's result foretells; 0 where there is none
  TryFlag flag = TryFlag::None;
  bool used = false; //!< also with a flag, when too few would be left
};

//! Ends of a 95 percent interval.
struct Interval95 {
  double low, high;
};

//! The walker's own effect of slope, as a multiple of the slope table's.
struct SlopeEffect {
  double factor;
  std::optional<Interval95> interval; //!< none where it has no two ends
};

//! Why a walker has no number.
enum class NoPaces {
  NoTry,    //!< none that can be used
  Disagree, //!< tries that cannot all be true, and no saying which are
  NoSteps,  //!< nobody's steps are so long, or so short
};

struct PaceCalibration {
  std::vector<JudgedTry> tries; //!< as they were given
  size_t used = 0, flagged = 0;
  size_t sloped = 0; //!< of those used
  Length paced;      //!< by those used

  std::optional<NoPaces> none;              //!< then nothing below is good
  double steps_per_100m = 0;                //!< single steps on level ground
  std::optional<double> spread;             //!< sigma of a try of mean length, single steps per 100 m; none of one try
  std::optional<Interval95> interval;       //!< of steps_per_100m; none of one try
  std::optional<double> pace_error_percent; //!< as Walker has it; none of one try
  bool spread_is_rounding = false;          //!< the tries agree better than whole paces can
  std::optional<SlopeEffect> slope;         //!< none without enough of it
  bool own_slope = false; //!< the table does not hold for this walker: brought to the level by their own
};

/**
 * Works out a walker's paces.
 *
 * Weights and sigma as above. interval: Student's t. pace_error_percent is what Walker::pace_error_percent says, one
 * sigma of a distance paced: half the width of the 68.27 percent prediction interval (Student's t) for another distance
 * as long as the mean try. That is the spread of the tries, widened by what so few tells of it and by the error of the
 * mean itself: times 2.25 for two tries, 1.25 for five, 1.0 for many. Neither spread is taken as less than the rounding
 * of a count to whole paces (1 / sqrt(12) pace over the mean try); pace_error_percent is at least the walker's limit.
 *
 * Blunders: tries beyond 0.6 to 1.6 times the median are left out if those left are two or more, and more than half.
 * Outliers: the largest studentized residual is tested by t of n - p - 1 at 1 percent, Bonferroni's for n tries; where
 * all distances are alike and the ground level this is Grubbs' test (F. E. Grubbs, Technometrics 11:1, 1969). It is
 * left out when three or more are left, and the next is tested. Nothing within 3 percent is an outlier: careful pacing
 * strays so much (Moss, Manual of Military Training, 2nd edition, 1917, paragraph 1887). Two equal outliers hide each
 * other; the spread tells of them. (At 5 percent the tries so lost make the interval of four tries hold 92 percent
 * only.)
 *
 * Slope: with three or more sloped tries (2 degrees and more), four in all, and 5 degrees between the extremes, k is
 * told, with Fieller's interval (E. C. Fieller, J. R. Stat. Soc. B 16:175, 1954). If that interval leaves out 1 the
 * table does not hold for this walker and a is taken from the line; else b is 0. Otherwise tries are taken as the table
 * has them.
 *
 * No number: a spread of more than 25 percent of the result; paces longer than two steps of 1.1 m; more than 1000 steps
 * over 100 m. Bounds: common practice, no source. Bad input: counts and distances must be finite and > 0.
 */
PaceCalibration calibratePaces(const std::vector<PaceTry> &tries, PaceKind kind);

} // namespace brushline
