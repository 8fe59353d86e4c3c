// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/bearing.h"
#include "quantities/length.h"
#include "quantities/place.h"

#include <functional>
#include <vector>

namespace brushline {

//! Turns longitudes (in x, degrees, [-180, 180]) and latitudes (in y) into coordinates of another system, in place; a
//! place that cannot be turned becomes NaN.
using Project = std::function<void(std::vector<double> &x, std::vector<double> &y)>;

//! A piece of a geodesic, short enough to be straight on a map.
struct GeodesicChord {
  double start_m, end_m; //!< along the geodesic
  double x0, y0, x1, y1; //!< of its ends, in the other system's coordinates; NaN where that does not reach
};

/**
 * A geodesic as chords in another coordinate system, none longer than 1 km and none across the 180th meridian (where a
 * system in degrees is left at one edge and entered at the other).
 *
 * \param length of the geodesic, >= 0; 0 gives one chord of no length.
 * Accuracy: between the ends of a chord the straight line strays from the geodesic by under 0.12 m up to latitude 80
 * (L^2 tan(latitude) / 8 R).
 */
std::vector<GeodesicChord> chordsAlong(const Place &from, const Place &to, Length length, const Project &project);

//! As above, from a place by a bearing.
std::vector<GeodesicChord> chordsAlong(const Place &from, TrueBearing departure, Length length, const Project &project);

} // namespace brushline
