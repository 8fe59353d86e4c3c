// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/line_net.h"

#include "shared/geodesic.h"
#include "shared/local_plane.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <utility>

namespace brushline {

namespace {

using Part = std::vector<Place>;
using End = std::array<long long, 2>; // a place to within about 1 cm
constexpr double perDegree = 1e7;
constexpr long long aroundTheEarth = 3600000000LL;

End endAt(const Place &place) {
  const double longitude = std::abs(place.latitude.degrees()) > 89.9999999 ? 0 : place.longitude.fullCircle().degrees();
  return {std::llround(place.latitude.degrees() * perDegree), std::llround(longitude * perDegree) % aroundTheEarth};
}

bool samePlace(const Place &a, const Place &b) { return endAt(a) == endAt(b); }

// Makes one place of ends that are a centimetre or less apart, though their roundings may differ.
void snapEnds(std::vector<Part> &parts) {
  std::map<End, Place> known;
  const auto snapped = [&known](const Place &place) {
    const End at = endAt(place);
    for (const long long north : {0, -1, 1})
      for (const long long east : {0, -1, 1}) {
        const auto found = known.find({at[0] + north, (at[1] + east + aroundTheEarth) % aroundTheEarth});
        if (found == known.end())
          continue;
        const Place &other = found->second;
        const double turn = std::remainder((other.longitude - place.longitude).degrees(), 360);
        if (samePlace(other, place) ||
            (std::abs((other.latitude - place.latitude).degrees()) * perDegree <= 1 && std::abs(turn) * perDegree <= 1))
          return other;
      }
    return known.emplace(at, place).first->second;
  };
  for (Part &part : parts) {
    part.front() = snapped(part.front());
    part.back() = snapped(part.back());
  }
  parts.erase(std::remove_if(parts.begin(), parts.end(),
                             [](const Part &part) { return part.size() == 2 && samePlace(part[0], part[1]); }),
              parts.end());
}

// Joins parts at the places where exactly two of their ends meet.
std::vector<Part> joined(std::vector<Part> parts) {
  snapEnds(parts);
  std::map<End, std::vector<size_t>> ends; // parts by their ends; a closed part is there twice
  for (size_t i = 0; i < parts.size(); ++i)
    for (const Place &place : {parts[i].front(), parts[i].back()})
      ends[endAt(place)].push_back(i);
  std::vector<bool> used(parts.size(), false);
  // Lengthens a part at its back as long as exactly one other part goes on there.
  const auto lengthen = [&](Part &part) {
    for (;;) {
      const auto &here = ends.at(endAt(part.back()));
      if (here.size() != 2)
        return;
      const size_t next = used[here[0]] ? here[1] : here[0];
      if (used[next])
        return;
      used[next] = true;
      Part &onward = parts[next];
      if (!samePlace(onward.front(), part.back()))
        std::reverse(onward.begin(), onward.end());
      part.insert(part.end(), onward.begin() + 1, onward.end());
    }
  };
  std::vector<Part> result;
  for (size_t i = 0; i < parts.size(); ++i) {
    if (used[i])
      continue;
    used[i] = true;
    Part part = std::move(parts[i]);
    if (!samePlace(part.front(), part.back())) {
      lengthen(part);
      std::reverse(part.begin(), part.end());
      lengthen(part);
      std::reverse(part.begin(), part.end());
    }
    result.push_back(std::move(part));
  }
  return result;
}

std::vector<Shape> linesOf(std::vector<Shape> shapes, const Progress &progress) {
  std::vector<Shape> lines;
  std::map<std::string, size_t> byName;
  for (Shape &shape : shapes) {
    if (shape.kind != ShapeKind::Line)
      continue;
    progress.check();
    std::vector<Part> parts;
    for (const Part &part : shape.parts) {
      Part kept;
      for (const Place &place : part)
        if (kept.empty() || !samePlace(kept.back(), place))
          kept.push_back(place);
      if (kept.size() > 1)
        parts.push_back(std::move(kept));
    }
    if (parts.empty())
      continue;
    shape.parts = std::move(parts);
    if (!shape.name.empty()) {
      const auto [known, isNew] = byName.emplace(shape.name, lines.size());
      if (!isNew) {
        auto &others = lines[known->second].parts;
        others.insert(others.end(), shape.parts.begin(), shape.parts.end());
        continue;
      }
    }
    lines.push_back(std::move(shape));
  }
  for (Shape &line : lines) {
    progress.check();
    line.parts = joined(std::move(line.parts));
  }
  lines.erase(std::remove_if(lines.begin(), lines.end(), [](const Shape &line) { return line.parts.empty(); }),
              lines.end());
  return lines;
}

} // namespace

LineNet::LineNet(std::vector<Shape> shapes, const Progress &progress)
    : mShapes(linesOf(std::move(shapes), progress), progress) {
  mAlong.resize(mShapes.size());
  for (size_t i = 0; i < mShapes.size(); ++i)
    for (const Part &part : mShapes[i].parts) {
      auto &along = mAlong[i].emplace_back(1, 0.0);
      for (size_t v = 1; v < part.size(); ++v) {
        if (v % 1024 == 1)
          progress.check();
        along.push_back(along.back() + geodesicBetween(part[v - 1], part[v]).length.metres());
      }
    }
}

bool LineNet::closed(size_t line, size_t part) const {
  const Part &places = mShapes[line].parts[part];
  return places.size() > 3 && samePlace(places.front(), places.back());
}

std::optional<OnLine> LineNet::nearest(const Place &place, Length reach) const {
  const LocalPlane plane(place);
  std::optional<OnLine> best;
  double bestShare = 0;
  for (const ShapeStretch &stretch : mShapes.near(place, place, reach)) {
    const Part &part = mShapes[stretch.shape].parts[stretch.part];
    PlanePoint a = plane.toPlane(part[stretch.first]);
    for (size_t edge = stretch.first; edge < stretch.last; ++edge) {
      const PlanePoint b = plane.toPlane(part[edge + 1]);
      const double east = b.east - a.east, north = b.north - a.north;
      const double squared = east * east + north * north;
      const double share =
          squared > 0 ? std::min(std::max(-(a.east * east + a.north * north) / squared, 0.0), 1.0) : 0.0;
      const double away = std::hypot(a.east + share * east, a.north + share * north);
      if (away <= reach.metres() && (!best || away < best->away_m)) {
        best = OnLine{stretch.shape, stretch.part, edge, 0, {}, away};
        bestShare = share;
      }
      a = b;
    }
  }
  if (best) {
    const Part &part = mShapes[best->line].parts[best->part];
    const PlanePoint a = plane.toPlane(part[best->edge]), b = plane.toPlane(part[best->edge + 1]);
    best->place = plane.toPlace({a.east + bestShare * (b.east - a.east), a.north + bestShare * (b.north - a.north)});
    const double start = along(best->line, best->part, best->edge);
    best->along_m = start + bestShare * (along(best->line, best->part, best->edge + 1) - start);
  }
  return best;
}

double LineNet::way(size_t line, size_t part, double from_m, double to_m) const {
  return closed(line, part) ? std::remainder(to_m - from_m, length(line, part)) : to_m - from_m;
}

std::vector<Place> LineNet::walk(const OnLine &from, const OnLine &to) const {
  const Part &part = mShapes[from.line].parts[from.part];
  const double metres = way(from.line, from.part, from.along_m, to.along_m);
  std::vector<Place> places{from.place};
  if (metres != 0) {
    // Vertices met on the way; on a closed part the last vertex is the first one again.
    const bool round = closed(from.line, from.part), forward = metres > 0;
    const size_t edges = part.size() - 1;
    size_t edge = from.edge;
    double left = std::abs(metres);
    double at = from.along_m;
    while (true) {
      const size_t vertex = forward ? edge + 1 : edge;
      const double step = std::abs(along(from.line, from.part, vertex) - at);
      if (step >= left)
        break;
      left -= step;
      places.push_back(part[vertex]);
      if (forward ? edge + 1 == edges : edge == 0) {
        if (!round)
          break;
        edge = forward ? 0 : edges - 1;
        at = forward ? 0 : length(from.line, from.part);
      } else {
        edge = forward ? edge + 1 : edge - 1;
        at = along(from.line, from.part, vertex);
      }
    }
  }
  places.push_back(to.place);
  return places;
}

} // namespace brushline
