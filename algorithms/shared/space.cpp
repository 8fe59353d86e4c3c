// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/space.h"

#include <GeographicLib/Geocentric.hpp>

namespace brushline {

namespace {
constexpr double leastRadius = 6.3e6; // of the Earth's curve, metres; under all there are
} // namespace

SpacePoint inSpace(const Place &place) {
  double x, y, z;
  GeographicLib::Geocentric::WGS84().Forward(place.latitude.degrees(), place.longitude.degrees(), 0, x, y, z);
  return {x, y, z};
}

SpaceBox grown(const SpaceBox &box, double by) {
  const SpacePoint &low = box.min_corner(), &high = box.max_corner();
  return {{low.get<0>() - by, low.get<1>() - by, low.get<2>() - by},
          {high.get<0>() + by, high.get<1>() + by, high.get<2>() + by}};
}

double bulge(const SpacePoint &a, const SpacePoint &b) {
  const double x = a.get<0>() - b.get<0>(), y = a.get<1>() - b.get<1>(), z = a.get<2>() - b.get<2>();
  const double squared = x * x + y * y + z * z;
  return squared < 1e12 ? squared / (8 * leastRadius) * 1.02 : 2 * leastRadius;
}

} // namespace brushline
