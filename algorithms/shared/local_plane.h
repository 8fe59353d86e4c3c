// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/place.h"

namespace brushline {

//! A point of a local plane, metres.
struct PlanePoint {
  double east;
  double north;
};

/**
 * A plane that touches the Earth at a place: distances and true bearings from that place are exact (azimuthal
 * equidistant projection of the WGS84 ellipsoid).
 *
 * Accuracy: between two other points, both within r of the centre, lengths are too long by up to r^2 / 6 R^2 (4e-9 at
 * 1 km, 4e-5 at 100 km) and directions turn by up to r^2 / 4 R^2. Works at the poles and across the 180th meridian.
 * Source: GeographicLib, AzimuthalEquidistant.
 */
class LocalPlane {
public:
  explicit LocalPlane(const Place &centre) : mCentre(centre) {}

  PlanePoint toPlane(const Place &place) const;
  Place toPlace(const PlanePoint &point) const;

private:
  Place mCentre;
};

} // namespace brushline
