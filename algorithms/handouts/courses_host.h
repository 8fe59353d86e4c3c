// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "handouts/leg_sheets_host.h"
#include "quantities/progress.h"

#include <QCoreApplication>

#include <vector>

namespace brushline {

//! Nearer than this two places are one: no pace count tells them apart (common practice, no source).
constexpr double samePlaceWithin_m = 0.1;

//! How far apart two places are, metres.
double metresBetween(const Place &a, const Place &b);
bool samePlace(const Place &a, const Place &b);

//! A leg, and who walks it.
struct LegOnSheet {
  const LegSheet *sheet = nullptr;
  const SheetLeg *leg = nullptr;
};

//! A mark, and who counts paces to it.
struct CountedMark {
  const LegSheet *sheet = nullptr;
  const SheetMark *mark = nullptr;
  int walker = 0; //!< which of the course's, from 1
};

//! A route in one direction, with a sheet for each of its walkers. The sheets are borrowed.
struct SheetCourse {
  QString letter;                       //!< begins the names that are made up; empty when there is one course only
  std::vector<const LegSheet *> sheets; //!< at least one
};

//! A mark that is not a leg's end. Marks of several walkers at one place are one.
struct CourseMark {
  QString name;
  const SheetLeg *leg = nullptr;    //!< of the first walker
  bool one_of_several = false;      //!< the course has several walkers, so that paces need their names
  std::vector<CountedMark> counted; //!< a walker each, at least one
};

/**
 * Sheets ordered into courses, names for places on small screens, and marks without their repetitions.
 */
namespace courses {

std::vector<SheetCourse> of(const std::vector<LegSheet> &sheets);

//! Those sheets of a course that differ in who walks only, so that one route can stand for them; else each by itself.
std::vector<std::vector<const LegSheet *>> together(const SheetCourse &course);

//! The name of a route in a list, what tells it from others first: "A back Mia: North loop".
QString routeName(const SheetCourse &course, const std::vector<const LegSheet *> &walked);

//! Names of the place where a leg starts and where one ends: people's own, else "3", "A3", "3 end", "End".
QString startName(const SheetCourse &course, const LegSheet &sheet, size_t leg);
QString endName(const SheetCourse &course, const LegSheet &sheet, size_t leg);

//! The marks of a course leg by leg; those at a leg's end are left out. Named as on the ground, else "3.2", "A3.2".
//! Throws Cancelled.
std::vector<CourseMark> marks(const SheetCourse &course, const Progress &progress);

} // namespace courses

} // namespace brushline
