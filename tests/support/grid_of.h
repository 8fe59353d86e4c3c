// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "shared/tiled_grid.h"

#include <functional>
#include <utility>
#include <vector>

namespace brushline::test {

//! A value by a grid's own coordinates.
using Surface = std::function<double(double x, double y)>;

//! Cells that hold a surface at their centres.
inline TiledGrid gridOf(const GridShape &shape, Surface surface) {
  return {shape, [shape, surface = std::move(surface)](const CellWindow &window) {
            std::vector<float> cells;
            for (int64_t r = 0; r < window.rows; ++r)
              for (int64_t c = 0; c < window.columns; ++c)
                cells.push_back(float(surface(shape.left + (double(window.column + c) + 0.5) * shape.cell_width,
                                              shape.top - (double(window.row + r) + 0.5) * shape.cell_height)));
            return cells;
          }};
}

} // namespace brushline::test
