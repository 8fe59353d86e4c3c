// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "sighting/cover_map.h"

#include <vector>

namespace brushline {

/**
 * Whether a polygon of one ring is surely valid: none of its edges comes near another but its neighbours, and none of
 * these folds back. Most polygons are like that, and it is told several times sooner than GEOS tells.
 *
 * \param ring closed, its last point being the first; finite coordinates.
 * \returns false says nothing of the ring, only that a closer look is needed: edges whose boxes meet, a point given
 * twice, an edge that all but folds back, or more edges than are worth holding against each other.
 * Bad input: false for a ring that is open, empty or has less than three edges.
 */
bool isPlainRing(const std::vector<MapPoint> &ring);

} // namespace brushline
