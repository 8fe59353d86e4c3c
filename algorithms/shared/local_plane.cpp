// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/local_plane.h"

#include <GeographicLib/AzimuthalEquidistant.hpp>

namespace brushline {

namespace {
const GeographicLib::AzimuthalEquidistant &projection() {
  static const GeographicLib::AzimuthalEquidistant onWgs84;
  return onWgs84;
}
} // namespace

PlanePoint LocalPlane::toPlane(const Place &place) const {
  PlanePoint point;
  projection().Forward(mCentre.latitude.degrees(), mCentre.longitude.degrees(), place.latitude.degrees(),
                       place.longitude.degrees(), point.east, point.north);
  return point;
}

Place LocalPlane::toPlace(const PlanePoint &point) const {
  double latitude, longitude;
  projection().Reverse(mCentre.latitude.degrees(), mCentre.longitude.degrees(), point.east, point.north, latitude,
                       longitude);
  return {Angle::degrees(latitude), Angle::degrees(longitude)};
}

} // namespace brushline
