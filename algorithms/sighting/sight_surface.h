// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "sighting/cover_map.h"

#include <vector>

namespace brushline {

/**
 * The extinction at the centres of a row of square cells.
 *
 * \param extinctions of the map's classes, 1/m.
 * \param first the centre of the row's first cell, in the map's coordinates; the others follow to the right.
 * \param cell their size in the map's units, > 0.
 * \param row as long as there are cells; filled with 1/m, NaN where no cover is known.
 */
void extinctionRow(const CoverMap &map, const std::vector<double> &extinctions, MapPoint first, double cell,
                   std::vector<double> &row);

/**
 * Sight distances from extinctions, in place: the distance at which a mark is clear with the probability asked for.
 * NaN stays NaN. Bare ground, on which nothing hides a mark, has the greatest sight of the tables: rasters keep no
 * infinity, and it is not ground of which nothing is known.
 * \param probability in (0, 1).
 */
void sightsFromExtinctions(std::vector<double> &row, double probability);

} // namespace brushline
