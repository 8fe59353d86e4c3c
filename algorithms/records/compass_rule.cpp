// SPDX-License-Identifier: GPL-2.0-or-later
#include "records/compass_rule.h"

#include <cmath>
#include <stdexcept>

namespace brushline {

namespace {
constexpr Length leastMeasured = Length::metres(0.001);

Length sum(const std::vector<Length> &lengths) {
  Length whole;
  for (const Length length : lengths)
    whole = whole + length;
  return whole;
}
} // namespace

Closure closureOf(Length walked, const PlanePoint &miss) {
  Closure closure;
  closure.walked = walked;
  closure.miss = miss;
  closure.missed = Length::metres(std::hypot(miss.east, miss.north));
  closure.bearing = TrueBearing(Angle::radians(std::atan2(miss.east, miss.north)));
  if (closure.missed > leastMeasured)
    closure.ratio = walked.metres() / closure.missed.metres();
  return closure;
}

std::vector<PlanePoint> compassRule(const std::vector<PlanePoint> &points, const std::vector<Length> &lengths,
                                    const PlanePoint &target) {
  if (points.size() != lengths.size() + 1 || lengths.empty())
    throw std::invalid_argument("a traverse has a point more than legs");
  const PlanePoint miss{points.back().east - target.east, points.back().north - target.north};
  const double whole = sum(lengths).metres();
  std::vector<PlanePoint> adjusted = points;
  double walked = 0;
  for (size_t i = 1; i < points.size(); ++i) {
    walked += lengths[i - 1].metres();
    adjusted[i].east -= miss.east * walked / whole;
    adjusted[i].north -= miss.north * walked / whole;
  }
  adjusted.back() = target;
  return adjusted;
}

PlacedClosure closeTraverse(const std::vector<Place> &places, const std::vector<Length> &lengths, const Place &target) {
  const LocalPlane plane(target);
  PlacedClosure result;
  for (const Place &place : places)
    result.points.push_back(plane.toPlane(place));
  const std::vector<PlanePoint> adjusted = compassRule(result.points, lengths, {0, 0});
  result.closure = closureOf(sum(lengths), result.points.back());
  result.adjusted.push_back(places.front());
  for (size_t i = 1; i + 1 < adjusted.size(); ++i)
    result.adjusted.push_back(plane.toPlace(adjusted[i]));
  result.adjusted.push_back(target);
  return result;
}

} // namespace brushline
