// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/leg_line.h"

#include "shared/geodesic.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace brushline {

LegLine::LegLine(const Place &start, TrueBearing departure, Length length)
    : mLength(length.metres()), mFrame(start, geodesicDestination(start, departure, length)) {}

std::vector<ShapeStretch> LegLine::near(const Shapes &shapes, Length beyond, Length reach) const {
  constexpr double piece = 1000; // metres; the box around a long line holds half a country
  const double end = mLength + beyond.metres();
  const int count = std::max(1, int(std::ceil(end / piece)));
  std::vector<ShapeStretch> stretches;
  Place from = placeAt(0);
  for (int i = 1; i <= count; ++i) {
    const Place to = placeAt(end * i / count);
    const std::vector<ShapeStretch> found = shapes.near(from, to, reach);
    stretches.insert(stretches.end(), found.begin(), found.end());
    from = to;
  }
  const auto key = [](const ShapeStretch &s) { return std::tie(s.shape, s.part, s.first); };
  std::sort(stretches.begin(), stretches.end(),
            [&](const ShapeStretch &a, const ShapeStretch &b) { return key(a) < key(b); });
  stretches.erase(std::unique(stretches.begin(), stretches.end(),
                              [&](const ShapeStretch &a, const ShapeStretch &b) { return key(a) == key(b); }),
                  stretches.end());
  return stretches;
}

bool isInside(const Shape &shape, const Place &place) {
  if (shape.kind != ShapeKind::Polygon)
    return false;
  // Borders are counted along the meridian, which is straight in the plane about the place, as geodesics near it are;
  // parallels of latitude are not.
  constexpr double farthest = 1e7; // metres; beyond, the plane turns what lies round the antipode inside out
  const LocalPlane plane(place);
  const double longitude = place.longitude.degrees();
  const auto isEast = [&](const Place &corner) {
    return std::remainder(corner.longitude.degrees() - longitude, 360) > 0;
  };
  bool inside = false;
  for (const std::vector<Place> &ring : shape.parts) {
    bool before = !ring.empty() && isEast(ring.front());
    for (size_t i = 1; i < ring.size(); ++i) {
      const bool here = isEast(ring[i]);
      if (here != before) {
        const PlanePoint a = plane.toPlane(ring[i - 1]), b = plane.toPlane(ring[i]);
        const double north = a.north - a.east / (b.east - a.east) * (b.north - a.north);
        if (north > 0 && north < farthest)
          inside = !inside;
      }
      before = here;
    }
  }
  return inside;
}

} // namespace brushline
