// SPDX-License-Identifier: GPL-2.0-or-later
// Areas, what they avoid, spots in them, and practice courses over these.
#include "fuzz_land.h"

#include "planning/practice_courses.h"

#include <set>
#include <stdexcept>

using namespace brushline;

namespace {

std::vector<NamedPlace> named(fuzz::Land &land, size_t most) {
  std::vector<NamedPlace> all;
  for (const Place &place : land.line(0, most))
    all.push_back({place, all.size() % 2 ? "b" : "a"});
  return all;
}

void lay(fuzz::Input &input) {
  const double half = input.scaled(10, 3000);
  fuzz::Land land(input, half);
  std::vector<Shape> area;
  for (size_t count = 1 + input.upTo(2); count > 0; --count)
    area.push_back(land.shape(ShapeKind::Polygon, 2, 6));
  const std::vector<Shape> avoid = land.shapesNearAndFar(3);
  const CourseGround ground(area, avoid, Length::metres(input.from({0.0, 2.0, 50.0})), fuzz::Patience(10000));
  const GroundPoint low = ground.low(), high = ground.high();
  PROMISED(low.east <= high.east && low.north <= high.north);
  std::vector<GroundPoint> points;
  for (const Place &place : land.line(0, 10)) {
    const GroundPoint point = ground.toGround(place);
    PROMISED(ground.toGround(ground.toPlace(point)) == point);
    if (ground.holds(point))
      PROMISED(point.east >= low.east && point.east <= high.east && point.north >= low.north &&
               point.north <= high.north);
    points.push_back(point);
  }
  for (size_t i = 1; i < points.size(); ++i)
    if (ground.leg(points[i - 1], points[i]) == GroundLeg::Open) {
      PROMISED(!ground.avoids(points[i - 1]) && !ground.avoids(points[i]));
      PROMISED(ground.leg(points[i], points[i - 1]) == GroundLeg::Open);
    }
  CourseRandom random(input.upTo(1000));
  const double apart = half * input.between(0.01, 2);
  const auto chosen = spotsApart(points, {}, apart, random);
  for (size_t i = 1; i < chosen.size(); ++i) {
    PROMISED(chosen[i] > chosen[i - 1] && chosen[i] < points.size());
    PROMISED(metresBetween(points[chosen[i]], points[chosen[i - 1]]) > apart);
  }
  for (const GroundPoint &point : scatteredSpots(
           ground, points, apart, 10, [](const GroundPoint &) { return true; }, random, fuzz::Patience(10000)))
    PROMISED(ground.holds(point));

  const CoverTable &table = builtInCover(CoverLegend::Own);
  CourseLegs::Tools tools;
  tools.ground = &ground;
  tools.legs.field = &fuzz::field(input);
  tools.legs.walkers.push_back(fuzz::walker(input));
  tools.legs.compass = fuzz::compass(input);
  if (input.flag()) {
    const auto heights = land.heights();
    tools.terrain = land.terrain(heights);
    tools.bare_terrain = land.terrain(heights);
    tools.slope_terrain = land.terrain(heights);
    tools.slope_limit = Angle::degrees(input.between(0, 90));
  }
  if (input.flag()) {
    const auto cover = land.cover(int(table.classes().size()));
    tools.legs.cover_table = &table;
    tools.cover = land.source(cover, table);
    tools.spot_cover = land.source(cover, table);
    tools.cover_classes = cover.map || !cover.codes.empty();
  }
  CourseLegs legs(std::move(tools));
  PracticeSetting setting;
  setting.rule.courses = 1 + int(input.upTo(3));
  setting.rule.legs = 1 + int(input.upTo(4));
  setting.rule.window.least_m = std::max(2.0, half * input.between(0.05, 1));
  setting.rule.window.most_m = std::min(10000.0, setting.rule.window.least_m * input.between(1, 4));
  setting.rule.least_turn = Angle::degrees(input.between(0, 150));
  setting.rule.closed = input.flag();
  if (setting.rule.closed && setting.rule.legs < 2)
    setting.rule.legs = 2;
  setting.rule.seed = input.upTo(1000);
  if (input.flag())
    setting.starts = named(land, 3);
  if (input.flag())
    setting.sites = named(land, 12);
  const PracticeCourses laid = layPracticeCourses(setting, ground, legs, fuzz::Patience(200),
                                                  [](double share) { PROMISED(fuzz::isShare(share)); });
  if (laid.failure)
    return;
  PROMISED(!laid.set.courses.empty() && laid.set.courses.size() <= size_t(setting.rule.courses));
  for (const Course &course : laid.set.courses) {
    PROMISED(course.spots.size() == size_t(setting.rule.legs) + 1);
    PROMISED(!setting.rule.closed || course.spots.front() == course.spots.back());
    const std::set<size_t> once(course.spots.begin(), course.spots.end());
    PROMISED(once.size() == course.spots.size() - size_t(setting.rule.closed));
    for (size_t i = 0; i < course.spots.size(); ++i) {
      PROMISED(course.spots[i] < laid.spots.size());
      const GroundPoint at = ground.toGround(laid.spots[course.spots[i]].place);
      PROMISED(ground.holds(at) && !ground.avoids(at));
      if (i > 0)
        PROMISED(laid.effort(course.spots[i - 1], course.spots[i]).seconds > 0);
    }
    for (const double measure : course.measure)
      PROMISED(std::isfinite(measure) && measure >= 0);
  }
}

} // namespace

FUZZ(input) {
  try {
    lay(input);
  } catch (const std::invalid_argument &) {
  } catch (const Cancelled &) {
  }
}
