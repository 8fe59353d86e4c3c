// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "planning/course_plan.h"

#include <optional>
#include <string>
#include <vector>

namespace brushline {

//! What courses are laid over.
struct PracticeSetting {
  CourseRule rule;
  std::vector<NamedPlace> starts;               //!< none: one is chosen
  std::optional<std::vector<NamedPlace>> sites; //!< where controls may stand; none: anywhere
};

//! A place that courses use or might have used.
struct PracticeSpot {
  Place place;
  std::string name; //!< UTF-8; empty: none
  bool is_start = false, is_site = false;
};

//! What became of the points given.
struct SpotCounts {
  size_t outside = 0; //!< the area
  size_t avoided = 0; //!< in what is avoided, or too near to it
  size_t closed = 0;  //!< on ground that nobody walks, or of which nothing is known
  size_t crowded = 0; //!< too near to another, or to a start
  size_t surplus = 0; //!< more than mostSites
  size_t usable = 0;
};

enum class CourseFailure {
  NoStart,  //!< none of those given can be used
  FewSpots, //!< fewer places for controls than a course needs
  NoCourse, //!< none was found
};

//! Courses and what stands behind them.
struct PracticeCourses {
  std::optional<CourseFailure> failure;
  CourseSet set;
  std::vector<PracticeSpot> spots; //!< Course::spots counts these
  std::vector<double> reach_m;     //!< by spot: the farthest reach of the legs in use that lead there; 0 unused
  std::vector<double> apart_m;     //!< by spot: to the nearest other one in use; infinite without
  SpotCounts starts, sites;
  double spacing_m = 0; //!< what places for controls were kept apart
  size_t legs_tried = 0;
  std::array<size_t, legBars> barred{}; //!< of these, by LegBar

  //! What a leg in use asks for.
  std::function<LegEffort(size_t from, size_t to)> effort;
};

constexpr size_t mostSites = 1500;

/**
 * Lays out practice courses: chooses the places that controls may stand at, and courses over them.
 *
 * Controls must stand so far apart that one who walks a leg by its bearing and count, and misses as far as 5 percent
 * do, still has no other control nearer than that to its end. So places for controls are first chosen farther apart
 * than the reach of the longest leg; where that does not give all courses, without fault, nearer together: than the
 * reach of a middling leg, then of the shortest; and legs lead only where their reach is within the room. The best of
 * the three is taken. The order in which points are given does not matter: starts are taken by name and place.
 *
 * \param told of the share done, 0 to 1. \throws Cancelled
 */
PracticeCourses layPracticeCourses(const PracticeSetting &setting, const CourseGround &ground, CourseLegs &legs,
                                   const Progress &progress, const std::function<void(double)> &told);

} // namespace brushline
