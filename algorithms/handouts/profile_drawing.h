// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "handouts/card_table.h"
#include "handouts/drawing.h"

#include <string>
#include <vector>

namespace brushline {

//! A leg in the profile, by its distances from the course's start.
struct ProfileLeg {
  int number;
  double start_m, end_m;
  std::string cover;         //!< empty: not known
  std::vector<double> marks; //!< metres from the course's start
  std::string letter{};      //!< behind the number, of a piece of a leg
};

//! The ground along a course.
struct CourseProfile {
  struct Point {
    double along_m, height_m; //!< height NaN: no data
  };
  std::vector<Point> points; //!< in order
  std::vector<ProfileLeg> legs;

  double length() const { return legs.empty() ? 0 : legs.back().end_m; }
};

struct ProfileWords {
  std::string metres;
  std::string stretched;  //!< "heights drawn %1 times"
  std::string level;      //!< the same for once
  std::string no_heights; //!< where nothing is known of any
};

/**
 * The profile as a strip: the ground over the way, legs with their numbers, ticks at the marks, the cover written
 * below. Where heights are lacking the line is left open. Heights are drawn larger than lengths by a round number,
 * which is told; 20 times at most, so that level ground looks level.
 */
Drawing drawProfile(const CourseProfile &profile, const Area &area, const ProfileWords &words, const CardType &type,
                    const TextRuler &ruler);

//! Fewer points that look the same on so many millimetres: for each fifth of one the lowest and the highest, and every
//! gap kept.
std::vector<CourseProfile::Point> thinned(const std::vector<CourseProfile::Point> &points, double width);

} // namespace brushline
