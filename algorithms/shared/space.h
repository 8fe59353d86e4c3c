// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/place.h"

#include <boost/geometry/geometries/box.hpp>
#include <boost/geometry/geometries/point.hpp>

namespace brushline {

/*
 * Places as points straight through space (WGS84, geocentric, metres), for spatial indexes: there is no edge at the
 * 180th meridian and none at the poles. A chord is never longer than the geodesic, so a box grown by a reach holds all
 * that is within it.
 */
using SpacePoint = boost::geometry::model::point<double, 3, boost::geometry::cs::cartesian>;
using SpaceBox = boost::geometry::model::box<SpacePoint>;

//! A place at height 0.
SpacePoint inSpace(const Place &place);

//! A box wider by so many metres on every side.
SpaceBox grown(const SpaceBox &box, double by);

//! How far the Earth's surface rises above the straight line between two points, metres; never less. Points 1000 km
//! apart are taken to be everywhere.
double bulge(const SpacePoint &a, const SpacePoint &b);

constexpr double spaceRounding = 1e-6; //!< of the coordinates, metres, with room

} // namespace brushline
