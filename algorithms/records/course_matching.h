// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "records/leg_comparison.h"

#include <memory>
#include <optional>
#include <vector>

namespace brushline {

//! Legs to be walked one after the other: a route one way, or there and back.
struct PlannedCourse {
  size_t route;                 //!< number of the route that it is a way to walk; courses of a route stand together
  std::vector<PlannedLeg> legs; //!< at least one
};

//! Why a track belongs to no course.
enum class NoMatch {
  TooFewFixes, //!< less than two that differ
  Elsewhere,   //!< farther from every planned turn than the tolerance
  Unlike,      //!< near enough, but no leg can be recognised
};

//! A track with the course that it is a walk of.
struct TrackMatch {
  std::optional<size_t> course;
  NoMatch reason = NoMatch::TooFewFixes; //!< of no meaning with a course
  double nearest_m = 0;                  //!< of NoMatch::Elsewhere: from the track's first fix to the nearest start
  std::optional<size_t> rival;           //!< a course of another route that fits as well
  CleanTrack track;
  std::vector<WalkedLeg> legs; //!< one for each of the course's
  bool begins_before = false, goes_on = false;
};

/**
 * Finds for each track the course that it is a walk of.
 *
 * Among the routes with a planned turn within the tolerance of the track the eight nearest (mean distance of planned
 * turns) are tried, each in all its courses, and the one whose legs fit best is taken (TrackCuts::score); a match has
 * a whole leg, and at least half of the legs found are like those planned.
 * A rival is one whose score is not a unit less.
 */
class CourseMatcher {
public:
  //! \param courses at least one; kept.
  CourseMatcher(std::vector<PlannedCourse> courses, const TrackRule &track, double tolerance_m);
  ~CourseMatcher();

  /**
   * \param only the route that the track says it is; nothing: any.
   * Degenerate: without two differing fixes there is no match. \throws Cancelled
   */
  TrackMatch match(const std::vector<TrackFix> &fixes, std::optional<size_t> only, const Progress &progress) const;

  const PlannedCourse &course(size_t i) const { return mCourses[i]; }

private:
  struct Boxes;
  std::vector<size_t> candidates(const std::vector<TrackFix> &fixes, const CleanTrack &track, const LocalPlane &plane,
                                 std::optional<size_t> only, const Progress &progress) const;

  std::vector<PlannedCourse> mCourses;
  TrackRule mRule;
  CuttingRule mCutting;
  std::unique_ptr<Boxes> mBoxes;
};

} // namespace brushline
