// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/bearing.h"
#include "quantities/length.h"
#include "shared/local_plane.h"

#include <optional>
#include <vector>

namespace brushline {

//! How far a traverse ends from where it should.
struct Closure {
  Length walked;               //!< the legs together, as read
  PlanePoint miss;             //!< from where it should end to where it does
  Length missed;               //!< its length
  TrueBearing bearing;         //!< its bearing; north for a miss of nothing
  std::optional<double> ratio; //!< walked / missed; none under a millimetre, which nobody measures
};

//! \param walked the legs together. \param miss from where the traverse should end to where it does.
Closure closureOf(Length walked, const PlanePoint &miss);

/**
 * The compass rule (Bowditch): the miss is taken off the points in proportion to the length walked up to them, so that
 * each leg's north and east parts are mended by -miss * length / whole length.
 *
 * \param points of the traverse, start and end included. \param lengths of its legs as read, one fewer, each > 0.
 * \param target where it should end.
 * \returns as many points; the first as it was, the last on the target.
 * Bad input: std::invalid_argument for lengths that do not match the points.
 * Source: J. Mahun, Open Access Surveying Library, Traverse Computations, chapter E.
 */
std::vector<PlanePoint> compassRule(const std::vector<PlanePoint> &points, const std::vector<Length> &lengths,
                                    const PlanePoint &target);

//! A traverse over the ellipsoid, seen from where it should end.
struct PlacedClosure {
  Closure closure;                //!< exact: the geodesic from the target
  std::vector<PlanePoint> points; //!< in the plane that touches there; the target is its origin
  std::vector<Place> adjusted;    //!< by the compass rule; the first as it was, the last the target
};

/**
 * Closure and compass rule on the WGS84 ellipsoid, in the plane that touches it at the target.
 *
 * \param places, lengths as for compassRule().
 * Accuracy: of the miss, that of a geodesic. A point is moved by its share of the miss; the plane bends that shift (not
 * the point) by a share of up to r^2 / 4 R^2, with r the distance from the target: 3e-8 at 2 km, 2e-4 at 150 km.
 */
PlacedClosure closeTraverse(const std::vector<Place> &places, const std::vector<Length> &lengths, const Place &target);

} // namespace brushline
