// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/place.h"

#include <string>
#include <vector>

namespace brushline {

//! A place on a projected grid, in its units, as the system counts: some count to the west, to the south or northings
//! first (GridNorth::bearing() knows which).
struct GridPoint {
  double easting;
  double northing;
};

//! A vertex of a planned route.
struct RouteVertex {
  Place place;
  GridPoint grid; //!< the same place in the route's grid
  size_t source;  //!< its number in the input, handed through
};

//! A planned route: parts walked one after the other, each a line of vertices.
struct Route {
  std::string grid; //!< the grid's coordinate system, as GridNorth reads it
  std::vector<std::vector<RouteVertex>> parts;
};

} // namespace brushline
