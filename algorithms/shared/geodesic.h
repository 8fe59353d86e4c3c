// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/bearing.h"
#include "quantities/length.h"
#include "quantities/place.h"

namespace brushline {

//! The shortest way between two places.
struct GeodesicLeg {
  Length length;
  TrueBearing departure; //!< at the first place, towards the second
  TrueBearing arrival;   //!< at the second place, onward
};

/**
 * The geodesic from one place to another on the WGS84 ellipsoid.
 *
 * \returns length and the forward bearings at both ends.
 * Degenerate: for equal places the length is 0 and the bearings are those of GeographicLib (north or south).
 * Bad input: latitudes beyond 90 degrees give NaN.
 * Accuracy: 15 nanometres. Source: GeographicLib; C. F. F. Karney, Algorithms for geodesics, J. Geodesy 87 (2013).
 */
GeodesicLeg geodesicBetween(const Place &from, const Place &to);

/**
 * The place reached from another by a bearing and a distance along the geodesic.
 *
 * \param distance metres, any sign.
 */
Place geodesicDestination(const Place &from, TrueBearing departure, Length distance);

} // namespace brushline
