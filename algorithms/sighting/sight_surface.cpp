// SPDX-License-Identifier: GPL-2.0-or-later
#include "sighting/sight_surface.h"

#include "sighting/cover_table.h"
#include "sighting/extinction.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace brushline {

void extinctionRow(const CoverMap &map, const std::vector<double> &extinctions, MapPoint first, double cell,
                   std::vector<double> &row) {
  // The row's line is cut at the borders once; a cell has the cover of the stretch that its centre lies in.
  const double count = double(row.size());
  const MapPoint start{first.x - cell / 2, first.y}, end{first.x + (count - 0.5) * cell, first.y};
  size_t column = 0;
  for (const CoverStretch &stretch : map.along(start, end)) {
    const double value = stretch.cover >= 0 ? extinctions[size_t(stretch.cover)] : std::numeric_limits<double>::quiet_NaN();
    const double last = std::ceil(stretch.to * count - 0.5); // cells whose centres lie before the stretch's end
    for (; column < row.size() && double(column) < last; ++column)
      row[column] = value;
  }
}

void sightsFromExtinctions(std::vector<double> &row, double probability) {
  for (double &value : row)
    value = std::min(clearDistance(value, probability).metres(), CoverClass::sightLimits.most); // NaN first: it stays
}

} // namespace brushline
