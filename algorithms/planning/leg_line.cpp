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
  // Round the place itself no border is crossed at the 180th meridian.
  const double latitude = place.latitude.degrees(), longitude = place.longitude.degrees();
  bool inside = false;
  for (const std::vector<Place> &ring : shape.parts)
    for (size_t i = 0; i + 1 < ring.size(); ++i) {
      const double y0 = ring[i].latitude.degrees() - latitude, y1 = ring[i + 1].latitude.degrees() - latitude;
      if ((y0 > 0) == (y1 > 0))
        continue;
      const double x0 = std::remainder(ring[i].longitude.degrees() - longitude, 360);
      const double x1 = x0 + std::remainder(ring[i + 1].longitude.degrees() - ring[i].longitude.degrees(), 360);
      if (x0 + (0 - y0) / (y1 - y0) * (x1 - x0) > 0)
        inside = !inside;
    }
  return inside;
}

} // namespace brushline
