// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/course_legs.h"

#include "planning/hazards.h"
#include "shared/grid_north.h"
#include "sighting/footing.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace brushline {

namespace {
constexpr double share = 0.95; // of walks that end within the reach

// To the thousandth: the machine's last bits decide nothing.
double rounded(double value) { return std::round(value * 1000) / 1000; }

AnnotateSettings bothWays(AnnotateSettings settings) {
  settings.direction = Direction::Both;
  settings.names = nullptr;
  settings.keep_marks = false;
  return settings;
}

AnnotateSettings withoutCover(AnnotateSettings settings) {
  settings = bothWays(std::move(settings));
  settings.cover_table = nullptr;
  return settings;
}
} // namespace

CourseLegs::CourseLegs(Tools tools)
    : mTools(std::move(tools)), mGrid(standardGrid(mTools.ground->centre())),
      mAnnotator(bothWays(mTools.legs), std::move(mTools.terrain), std::move(mTools.cover)),
      mBare(withoutCover(mTools.legs), std::move(mTools.bare_terrain), nullptr) {}

Route CourseLegs::routeOf(const Place &from, const Place &to) const {
  // The points of the grid serve grid bearings only, which nobody asks for here.
  return {mGrid, {{{from, {0, 0}, 0}, {to, {0, 0}, 1}}}};
}

LegEffort CourseLegs::effortOf(const AnnotatedLeg &leg) const {
  LegEffort effort;
  effort.climb_m = leg.profile ? rounded(leg.profile->climb.metres()) : 0;
  for (const LegForWalker &walker : leg.by_walker) {
    effort.seconds = std::max(effort.seconds, rounded(walker.time ? walker.time->seconds() : 0));
    effort.across_m = std::max(effort.across_m, rounded(walker.drift.across.metres()));
    effort.reach_m = std::max(effort.reach_m, rounded(walker.drift.semi_major.metres() * sigmasHolding(share)));
  }
  effort.bare_seconds = effort.seconds;
  for (const LegWarning &warning : leg.warnings)
    if (warning.remark == LegRemark::NoCover)
      effort.unknown_m = rounded(warning.metres);
  return effort;
}

CourseLeg CourseLegs::between(const Place &from, const Place &to, const GroundPoint &a, const GroundPoint &b,
                              const LegWindow &window, const Progress &progress) {
  CourseLeg result;
  const auto barred = [&](LegBar bar) {
    result.bar = bar;
    return result;
  };
  const GeodesicLeg geodesic = geodesicBetween(from, to);
  result.length_m = geodesic.length.metres();
  if (!(result.length_m >= window.least_m && result.length_m <= window.most_m))
    return barred(LegBar::Length);
  if (const GroundLeg ground = mTools.ground->leg(a, b); ground != GroundLeg::Open)
    return barred(ground == GroundLeg::Avoided ? LegBar::Avoided : LegBar::LeavesArea);
  progress.check();
  const std::vector<AnnotatedLeg> legs = mAnnotator.annotate(routeOf(from, to), progress);
  if (legs.size() != 2)
    return barred(LegBar::Length);
  for (const LegWarning &warning : legs[0].warnings) {
    if (warning.remark == LegRemark::NotWalked)
      return barred(LegBar::NotWalked);
    if (warning.remark == LegRemark::NoCover && mTools.close_unknown)
      return barred(LegBar::NoCover);
    if (warning.remark == LegRemark::NoTerrain)
      return barred(LegBar::NoHeight);
  }
  if (mTools.slope_terrain) {
    const Length step = mTools.slope_terrain->profile(from, to, geodesic.length).step;
    const SteepGround steep = steepGround(*mTools.slope_terrain, LegLine(from, geodesic.departure, geodesic.length),
                                          step, mTools.slope_limit);
    if (steep.without_data_m > 0)
      return barred(LegBar::NoHeight);
    if (!steep.stretches.empty())
      return barred(LegBar::Steep);
  }
  result.length_m = rounded(result.length_m);
  result.out = effortOf(legs[0]);
  result.back = effortOf(legs[1]);
  if (mTools.cover_classes) {
    const std::vector<AnnotatedLeg> bare = mBare.annotate(routeOf(from, to), progress);
    result.out.bare_seconds = effortOf(bare[0]).seconds;
    result.back.bare_seconds = effortOf(bare[1]).seconds;
  }
  return result;
}

bool CourseLegs::closedAt(const Place &place) {
  if (mTools.slope_terrain && std::isnan(mTools.slope_terrain->height(place)))
    return true;
  if (!mTools.spot_cover)
    return false;
  const Length look = Length::metres(0.01);
  for (const CoverPiece &piece : mTools.spot_cover->along(place, TrueBearing(), look))
    if ((!piece.extinction && mTools.close_unknown) ||
        (piece.cover >= 0 && !mTools.legs.cover_table->at(piece.cover).speed_factor))
      return true;
  return false;
}

double CourseLegs::farthestReach(double length_m, const Progress &progress) {
  // Level and open; a whit more for what the field differs over the area.
  LegAnnotator open(withoutCover(mTools.legs), nullptr, nullptr);
  const Place from = mTools.ground->centre();
  const Place to = geodesicDestination(from, TrueBearing(), Length::metres(length_m));
  double reach = 0;
  for (const AnnotatedLeg &leg : open.annotate(routeOf(from, to), progress))
    reach = std::max(reach, effortOf(leg).reach_m);
  return std::ceil(reach * 1001) / 1000;
}

} // namespace brushline
