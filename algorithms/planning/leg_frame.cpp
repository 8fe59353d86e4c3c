// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/leg_frame.h"

#include <GeographicLib/Geodesic.hpp>

#include <algorithm>
#include <cmath>

namespace brushline {

namespace {
constexpr double widestSpacing = 2000; // metres between stations

const GeographicLib::Geodesic &wgs84() { return GeographicLib::Geodesic::WGS84(); }
} // namespace

LegFrame::LegFrame(const Place &from, const Place &to)
    : mLine(wgs84().InverseLine(from.latitude.degrees(), from.longitude.degrees(), to.latitude.degrees(),
                                to.longitude.degrees(),
                                GeographicLib::Geodesic::LATITUDE | GeographicLib::Geodesic::LONGITUDE |
                                    GeographicLib::Geodesic::AZIMUTH | GeographicLib::Geodesic::DISTANCE_IN)),
      mLength(mLine.Distance()) {
  const auto count = size_t(std::max(1.0, std::ceil(mLength / widestSpacing)));
  mSpacing = mLength / double(count);
  mStations.reserve(count);
  for (size_t i = 0; i < count; ++i) {
    const double along = (double(i) + 0.5) * mSpacing;
    double latitude, longitude, azimuth;
    mLine.Position(along, latitude, longitude, azimuth);
    const Angle bearing = Angle::degrees(azimuth);
    mStations.push_back({along, LocalPlane({Angle::degrees(latitude), Angle::degrees(longitude)}),
                         std::sin(bearing.radians()), std::cos(bearing.radians())});
  }
}

size_t LegFrame::stationNear(double along) const {
  const double station = std::floor(along / mSpacing);
  return size_t(std::min(std::max(station, 0.0), double(mStations.size() - 1)));
}

LegPoint LegFrame::toLeg(const Place &place, size_t &station) const {
  station = std::min(station, mStations.size() - 1);
  for (int tries = 0;; ++tries) {
    const Station &here = mStations[station];
    const PlanePoint point = here.plane.toPlane(place);
    const double along = here.along + point.east * here.sine + point.north * here.cosine;
    const size_t nearest = stationNear(along);
    if (nearest == station || tries == 6) // between two stations either will do
      return {along, point.east * here.cosine - point.north * here.sine};
    station = nearest;
  }
}

Place LegFrame::toPlace(const LegPoint &point) const {
  double latitude, longitude, azimuth;
  mLine.Position(point.along, latitude, longitude, azimuth);
  if (point.across != 0) {
    const double footLatitude = latitude, footLongitude = longitude;
    wgs84().Direct(footLatitude, footLongitude, azimuth + 90, point.across, latitude, longitude);
  }
  return {Angle::degrees(latitude), Angle::degrees(longitude)};
}

} // namespace brushline
