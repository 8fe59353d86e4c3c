// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/hazards.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace brushline {

namespace {

constexpr double joined = 1e-6; // metres; what rounding leaves between stretches

// The stretch of the endless line across = 0 within a distance of an edge: one, since what lies within a distance of a
// straight edge has no dents.
std::optional<LegStretch> nearEdge(const LegPoint &a, const LegPoint &b, double distance) {
  std::optional<LegStretch> found;
  const auto add = [&](double from, double to) {
    if (!(from <= to))
      return;
    found = found ? LegStretch{std::min(found->from_m, from), std::max(found->to_m, to)} : LegStretch{from, to};
  };
  for (const LegPoint &end : {a, b})
    if (const double rest = distance * distance - end.across * end.across; rest >= 0)
      add(end.along - std::sqrt(rest), end.along + std::sqrt(rest));
  // Beside the edge: across(t) within the distance, square to it.
  const double dx = b.along - a.along, dy = b.across - a.across, length = std::hypot(dx, dy);
  if (!(length > 0))
    return found;
  // A place s on the line: its foot is at share ((s - ax) dx - ay dy) / length^2, its distance |(s - ax) dy + ay dx| / length.
  double low = -HUGE_VAL, high = HUGE_VAL;
  const auto within = [&](double slope, double offset, double least, double most) { // least <= slope s + offset <= most
    if (std::abs(slope) < 1e-12) {
      if (offset < least || offset > most)
        high = -HUGE_VAL;
      return;
    }
    const double one = (least - offset) / slope, other = (most - offset) / slope;
    low = std::max(low, std::min(one, other));
    high = std::min(high, std::max(one, other));
  };
  within(dx / length, (-a.along * dx - a.across * dy) / length, 0, length);
  within(dy / length, (-a.along * dy + a.across * dx) / length, -distance, distance);
  if (low <= high && std::isfinite(low) && std::isfinite(high))
    add(low, high);
  return found;
}

std::vector<LegStretch> merged(std::vector<LegStretch> stretches, double length) {
  std::sort(stretches.begin(), stretches.end(),
            [](const LegStretch &a, const LegStretch &b) { return a.from_m < b.from_m; });
  std::vector<LegStretch> result;
  for (LegStretch stretch : stretches) {
    stretch.from_m = std::max(stretch.from_m, 0.0);
    stretch.to_m = std::min(stretch.to_m, length);
    if (stretch.from_m > stretch.to_m)
      continue;
    if (!result.empty() && stretch.from_m <= result.back().to_m + joined)
      result.back().to_m = std::max(result.back().to_m, stretch.to_m);
    else
      result.push_back(stretch);
  }
  return result;
}

// Adds the stretches near the edges between two places of a part.
void addEdges(const std::vector<Place> &part, size_t first, size_t last, const LegLine &leg, double distance,
              std::vector<LegStretch> &stretches) {
  LegPoint before = leg.at(part[first]);
  if (first == last) {
    if (const auto near = nearEdge(before, before, distance))
      stretches.push_back(*near);
    return;
  }
  for (size_t i = first + 1; i <= last; ++i) {
    const LegPoint here = leg.at(part[i]);
    if (const auto near = nearEdge(before, here, distance))
      stretches.push_back(*near);
    before = here;
  }
}

// Adds what lies inside an area, from border to border.
void addInside(const Shape &shape, const LegLine &leg, std::vector<LegStretch> &stretches) {
  if (shape.kind != ShapeKind::Polygon)
    return;
  std::vector<double> borders; // on the endless line of the leg, which comes from outside
  for (const std::vector<Place> &ring : shape.parts) {
    if (ring.empty())
      continue;
    LegPoint before = leg.at(ring.front());
    for (size_t i = 1; i < ring.size(); ++i) {
      const LegPoint here = leg.at(ring[i]);
      if ((before.across > 0) != (here.across > 0))
        borders.push_back(before.along + before.across / (before.across - here.across) * (here.along - before.along));
      before = here;
    }
  }
  std::sort(borders.begin(), borders.end());
  for (size_t i = 0; i + 1 < borders.size(); i += 2)
    stretches.push_back({borders[i], borders[i + 1]});
}

} // namespace

std::vector<LegStretch> stretchesNear(const Shape &shape, const LegLine &leg, double distance) {
  std::vector<LegStretch> stretches;
  for (const std::vector<Place> &part : shape.parts)
    if (!part.empty())
      addEdges(part, 0, part.size() - 1, leg, distance, stretches);
  addInside(shape, leg, stretches);
  return merged(std::move(stretches), leg.length_m());
}

std::vector<NearShape> shapesNear(const Shapes &shapes, const LegLine &leg,
                                  const std::function<std::optional<Length>(size_t)> &distanceOf, Length most) {
  const std::vector<ShapeStretch> near = leg.near(shapes, Length(), most);
  std::vector<NearShape> found;
  for (size_t i = 0; i < near.size();) {
    const size_t index = near[i].shape;
    std::vector<LegStretch> stretches;
    const auto distance = distanceOf(index);
    const Shape &shape = shapes[index];
    for (; i < near.size() && near[i].shape == index; ++i)
      if (distance)
        addEdges(shape.parts[near[i].part], near[i].first, near[i].last, leg, distance->metres(), stretches);
    if (!distance)
      continue;
    addInside(shape, leg, stretches);
    if (stretches = merged(std::move(stretches), leg.length_m()); !stretches.empty())
      found.push_back({index, std::move(stretches)});
  }
  // An area with no border near holds all of the leg or nothing of it.
  const auto isNear = [&](size_t index) {
    const auto place = std::lower_bound(near.begin(), near.end(), index,
                                        [](const ShapeStretch &stretch, size_t i) { return stretch.shape < i; });
    return place != near.end() && place->shape == index;
  };
  const Place start = leg.placeAt(0);
  for (const size_t index : shapes.mayHold(start))
    if (!isNear(index) && distanceOf(index) && isInside(shapes[index], start))
      found.push_back({index, {{0, leg.length_m()}}});
  std::sort(found.begin(), found.end(), [](const NearShape &a, const NearShape &b) { return a.shape < b.shape; });
  return found;
}

SteepGround steepGround(Terrain &terrain, const LegLine &leg, Length step, Angle limit) {
  SteepGround ground;
  const double length = leg.length_m();
  const auto count = size_t(std::max(1.0, std::ceil(length / step.metres())));
  const double pace = length / double(count), side = step.metres();
  std::vector<Place> places;
  places.reserve(4 * (count + 1));
  for (size_t i = 0; i <= count; ++i)
    for (const auto &[along, across] : {std::pair(side, 0.0), {-side, 0.0}, {0.0, side}, {0.0, -side}})
      places.push_back(leg.placeOff({pace * double(i) + along, across}));
  const std::vector<double> heights = terrain.heights(places);
  std::vector<LegStretch> stretches;
  for (size_t i = 0; i <= count; ++i) {
    const double at = pace * double(i);
    const double *round = &heights[4 * i]; // ahead, behind, right, left
    const double from = std::max(0.0, at - pace / 2), to = std::min(length, at + pace / 2);
    const double rise = std::hypot(round[0] - round[1], round[2] - round[3]) / (2 * side);
    if (std::isnan(rise)) {
      ground.without_data_m += to - from;
      continue;
    }
    const Angle slope = Angle::radians(std::atan(rise));
    if (slope.degrees() > ground.steepest.degrees()) {
      ground.steepest = slope;
      ground.steepest_m = at;
    }
    if (slope.degrees() > limit.degrees())
      stretches.push_back({from, to});
  }
  ground.stretches = merged(std::move(stretches), length);
  return ground;
}

} // namespace brushline
