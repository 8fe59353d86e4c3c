// SPDX-License-Identifier: GPL-2.0-or-later
#include "records/course_matching.h"

#include "records/track_cleaning.h"
#include "shared/space.h"

#include <boost/geometry.hpp>
#include <boost/geometry/index/rtree.hpp>

#include <algorithm>
#include <cmath>
#include <map>

namespace brushline {

namespace {
namespace bg = boost::geometry;
using Flat = bg::model::point<double, 2, bg::cs::cartesian>;
using FlatTree = bg::index::rtree<Flat, bg::index::rstar<16>>;

constexpr size_t mostTried = 8;
constexpr double asGood = 1;

// The track as points not much farther apart than the step.
FlatTree pointsOf(const CleanTrack &track, double step) {
  std::vector<Flat> points;
  PlanePoint last{};
  for (const CleanFix &fix : track.fixes) {
    const double way = points.empty() ? 0 : std::hypot(fix.at.east - last.east, fix.at.north - last.north);
    if (!points.empty() && way < step && &fix != &track.fixes.back())
      continue;
    const size_t count = std::min<size_t>(1000, 1 + size_t(way / step));
    for (size_t k = 1; k <= count && !points.empty(); ++k) {
      const double t = double(k) / double(count);
      points.emplace_back(last.east + t * (fix.at.east - last.east), last.north + t * (fix.at.north - last.north));
    }
    if (points.empty())
      points.emplace_back(fix.at.east, fix.at.north);
    last = fix.at;
  }
  return FlatTree(points);
}

// The mean distance of a course's turns from the track, none counted for more than the tolerance; nothing when all are
// farther.
std::optional<double> farnessOf(const PlannedCourse &course, const FlatTree &track, const LocalPlane &plane,
                                double tolerance) {
  double sum = 0;
  bool near = false;
  const auto add = [&](const Place &turn) {
    const PlanePoint p = plane.toPlane(turn);
    const Flat at(p.east, p.north);
    std::vector<Flat> found;
    track.query(bg::index::nearest(at, 1), std::back_inserter(found));
    const double off = bg::distance(at, found.front());
    near = near || off <= tolerance;
    sum += std::min(off, tolerance);
  };
  add(course.legs.front().from);
  for (const PlannedLeg &leg : course.legs)
    add(leg.to);
  return near ? std::optional(sum / double(course.legs.size() + 1)) : std::nullopt;
}

// Enough of the legs found are what was planned.
bool recognised(const std::vector<WalkedLeg> &legs, const std::vector<PlannedLeg> &planned) {
  size_t whole = 0, like = 0, found = 0;
  for (size_t i = 0; i < legs.size(); ++i) {
    if (legs[i].share == LegShare::None || planned[i].any_way)
      continue;
    ++found;
    like += legs[i].like ? 1 : 0;
    whole += legs[i].like && legs[i].share == LegShare::Whole ? 1 : 0;
  }
  return whole > 0 && 2 * like >= found;
}
} // namespace

struct CourseMatcher::Boxes {
  std::vector<SpaceBox> of; // by course
};

CourseMatcher::CourseMatcher(std::vector<PlannedCourse> courses, const TrackRule &track, double tolerance_m)
    : mCourses(std::move(courses)), mRule(track), mCutting{tolerance_m, track.error_m},
      mBoxes(std::make_unique<Boxes>()) {
  for (const PlannedCourse &course : mCourses) {
    SpaceBox box(inSpace(course.legs.front().from), inSpace(course.legs.front().from));
    for (const PlannedLeg &leg : course.legs)
      bg::expand(box, inSpace(leg.to));
    mBoxes->of.push_back(box);
  }
}

CourseMatcher::~CourseMatcher() = default;

std::vector<size_t> CourseMatcher::candidates(const std::vector<TrackFix> &fixes, const CleanTrack &track,
                                              const LocalPlane &plane, std::optional<size_t> only,
                                              const Progress &progress) const {
  SpaceBox box(inSpace(fixes.front().place), inSpace(fixes.front().place));
  double longest = 0;
  for (size_t i = 1; i < fixes.size(); ++i) {
    const SpacePoint at = inSpace(fixes[i].place);
    longest = std::max(longest, bulge(inSpace(fixes[i - 1].place), at));
    bg::expand(box, at);
  }
  box = grown(box, mCutting.tolerance_m + longest + 1);
  const FlatTree points = pointsOf(track, mCutting.tolerance_m / 4);
  std::map<size_t, double> farness; // by route: of its nearest course
  for (size_t i = 0; i < mCourses.size(); ++i) {
    progress.check();
    if ((only && mCourses[i].route != *only) || !bg::intersects(box, mBoxes->of[i]) ||
        farness.count(mCourses[i].route) > 0)
      continue;
    if (const auto far = farnessOf(mCourses[i], points, plane, mCutting.tolerance_m))
      farness.emplace(mCourses[i].route, *far);
  }
  std::vector<std::pair<double, size_t>> routes;
  for (const auto &[route, far] : farness)
    routes.emplace_back(far, route);
  std::sort(routes.begin(), routes.end());
  routes.resize(std::min(routes.size(), mostTried));
  std::vector<size_t> result;
  for (size_t i = 0; i < mCourses.size(); ++i)
    if (std::any_of(routes.begin(), routes.end(), [&](const auto &each) { return each.second == mCourses[i].route; }))
      result.push_back(i);
  return result;
}

TrackMatch CourseMatcher::match(const std::vector<TrackFix> &fixes, std::optional<size_t> only,
                                const Progress &progress) const {
  TrackMatch match;
  if (fixes.size() < 2)
    return match;
  const LocalPlane plane(fixes[fixes.size() / 2].place);
  match.track = cleanTrack(fixes, plane, mRule, progress);
  if (match.track.fixes.size() < 2)
    return match;

  const std::vector<size_t> tried = candidates(fixes, match.track, plane, only, progress);
  std::vector<std::pair<size_t, TrackCuts>> cuts; // courses that can be cut at all
  for (const size_t i : tried)
    if (auto found = cutAtTurns(match.track, onPlane(mCourses[i].legs, plane), mCutting, progress))
      cuts.emplace_back(i, std::move(*found));
  std::stable_sort(cuts.begin(), cuts.end(),
                   [](const auto &a, const auto &b) { return a.second.score > b.second.score; });
  for (size_t k = 0; k < cuts.size() && !match.course; ++k) {
    const auto &[i, found] = cuts[k];
    std::vector<WalkedLeg> legs = compareLegs(match.track, found, mCourses[i].legs, plane, mRule.error_m, progress);
    if (!recognised(legs, mCourses[i].legs))
      continue;
    match.course = i;
    match.legs = std::move(legs);
    match.begins_before = !found.cuts.front().at_end;
    match.goes_on = !found.cuts.back().at_end;
    for (size_t other = k + 1; other < cuts.size() && !match.rival; ++other)
      if (mCourses[cuts[other].first].route != mCourses[i].route && cuts[other].second.score > found.score - asGood)
        match.rival = cuts[other].first;
  }
  if (!match.course) {
    match.reason = tried.empty() ? NoMatch::Elsewhere : NoMatch::Unlike;
    match.nearest_m = HUGE_VAL;
    for (const PlannedCourse &course : mCourses)
      if (!only || course.route == *only)
        match.nearest_m =
            std::min(match.nearest_m, geodesicBetween(fixes.front().place, course.legs.front().from).length.metres());
  }
  return match;
}

} // namespace brushline
