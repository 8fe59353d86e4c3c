// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "magnetics/field_setting.h"
#include "quantities/progress.h"
#include "shared/geodesic_chords.h"

#include <functional>
#include <limits>
#include <stdexcept>
#include <vector>

namespace brushline {

//! A point of a projected system, in its own units.
struct ProjectedPoint {
  double x;
  double y;
};

//! Where lines are wanted: a rectangle of a projected system, and the ways between that system and the ellipsoid.
struct NorthLinesArea {
  double left, bottom, right, top;
  Project to_plane;  //!< from longitudes and latitudes, degrees
  Project to_places; //!< the other way; may also serve beyond the edge of the map, as round the 180th meridian
};

//! A line that follows magnetic north. A line that leaves the area and comes back gives several, of the same number.
struct NorthLine {
  int number;                         //!< from 1, from magnetic west to magnetic east
  std::vector<ProjectedPoint> points; //!< towards magnetic north
  Place middle;                       //!< halfway along
  Declination declination;            //!< there
  CompassZone zone;                   //!< the worst of its vertices
  double done;                        //!< share of the work, 0 to 1
};

//! What came of it.
struct NorthLinesReport {
  int lines = 0;         //!< numbers given; 0 where no compass works in the whole area
  bool caution = false;  //!< some line runs where the needle is weak
  bool blackout = false; //!< in part of the area or all of it no compass works
  bool edge = false;     //!< part of the area is not reached by the projection
  //! Distance on the ground between neighbouring lines, at their ends and middles within the area; none for one line.
  double least_spacing_m = std::numeric_limits<double>::infinity();
  double most_spacing_m = 0;
};

//! More lines than anybody can use.
struct TooManyLines : std::length_error {
  explicit TooManyLines(double lines);
  double count; //!< about
};

//! Nowhere does the projection reach the area.
struct AreaOutOfReach : std::domain_error {
  AreaOutOfReach();
};

constexpr int mostNorthLines = 10000;

/**
 * Lines that run with the horizontal part of the magnetic field at the height of the ellipsoid, over a rectangle.
 *
 * A cross-line is drawn first: through the rectangle's middle and everywhere square to magnetic north. On it the lines
 * start, a spacing apart on the ground, one of them in the middle. Where such a cross-line meets the zone without a
 * working compass, it is drawn through that of 21 by 21 places nearest to the middle where the needle is not weak, if
 * that one stays clear. Elsewhere the lines draw together or spread as the field
 * does. Both kinds of line are integral curves, found in the plane by the classical fourth-order Runge-Kutta scheme,
 * the direction at each point by the projection's own differentials (central differences over 100 m).
 *
 * Lines stop where no compass works and where the projection ends.
 *
 * \param spacing > 0. \param take called with each line in the order of their numbers.
 * \throws std::invalid_argument for an empty rectangle, a spacing that is not positive, or what is not a number;
 * TooManyLines; AreaOutOfReach; Cancelled.
 * Accuracy: every chord keeps within 0.0075 degrees of magnetic north along all its length, and so does the geodesic
 * between its ends, unless it is 1 m short; the curve and its chords are then under 15 cm apart.
 */
NorthLinesReport northLines(const FieldSetting &field, const NorthLinesArea &area, Length spacing,
                            const Progress &progress, const std::function<void(const NorthLine &line)> &take);

} // namespace brushline
