// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/geodesic.h"

#include <GeographicLib/Geodesic.hpp>

namespace brushline {

GeodesicLeg geodesicBetween(const Place &from, const Place &to) {
  double length, azimuth1, azimuth2;
  GeographicLib::Geodesic::WGS84().Inverse(from.latitude.degrees(), from.longitude.degrees(), to.latitude.degrees(),
                                           to.longitude.degrees(), length, azimuth1, azimuth2);
  return {Length::metres(length), TrueBearing(Angle::degrees(azimuth1)), TrueBearing(Angle::degrees(azimuth2))};
}

Place geodesicDestination(const Place &from, TrueBearing departure, Length distance) {
  double latitude, longitude;
  GeographicLib::Geodesic::WGS84().Direct(from.latitude.degrees(), from.longitude.degrees(), departure.degrees(),
                                          distance.metres(), latitude, longitude);
  return {Angle::degrees(latitude), Angle::degrees(longitude)};
}

} // namespace brushline
