// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/height_grid.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <stdexcept>
#include <utility>

namespace brushline {

HeightGrid::HeightGrid(const GridShape &shape, ReadWindow read, size_t tilesKept)
    : mShape(shape), mRead(std::move(read)), mTilesKept(std::max<size_t>(tilesKept, 1)) {
  if (!(shape.cell_width > 0) || !(shape.cell_height > 0) || shape.columns < 1 || shape.rows < 1)
    throw std::invalid_argument("a height grid needs cells of positive size");
}

CellPosition HeightGrid::cellOf(double x, double y) const {
  return {(x - mShape.left) / mShape.cell_width, (mShape.top - y) / mShape.cell_height};
}

double HeightGrid::height(CellPosition position) {
  // Written so that NaN fails.
  if (!(position.column >= 0 && position.column <= double(mShape.columns) && position.row >= 0 &&
        position.row <= double(mShape.rows)))
    return std::numeric_limits<double>::quiet_NaN();
  const double column = std::clamp(position.column - 0.5, 0.0, double(mShape.columns - 1));
  const double row = std::clamp(position.row - 0.5, 0.0, double(mShape.rows - 1));
  const auto column0 = int64_t(column);
  const auto row0 = int64_t(row);
  const double fx = column - double(column0);
  const double fy = row - double(row0);
  // A neighbour of weight 0 is not asked: its lack of data does not matter.
  const auto along = [&](int64_t r) {
    const double west = cell(column0, r);
    return fx > 0 ? west + fx * (cell(column0 + 1, r) - west) : west;
  };
  const double north = along(row0);
  return fy > 0 ? north + fy * (along(row0 + 1) - north) : north;
}

double HeightGrid::cell(int64_t column, int64_t row) {
  const Tile &t = tile(column / tileSize, row / tileSize);
  return t.cells[size_t((row % tileSize) * t.columns + column % tileSize)];
}

const HeightGrid::Tile &HeightGrid::tile(int64_t tileColumn, int64_t tileRow) {
  const int64_t key = tileRow * ((mShape.columns + tileSize - 1) / tileSize) + tileColumn;
  if (!mTiles.empty() && mTiles.front().key == key)
    return mTiles.front();
  if (const auto found = mByKey.find(key); found != mByKey.end()) {
    mTiles.splice(mTiles.begin(), mTiles, found->second);
    return mTiles.front();
  }
  const CellWindow window{tileColumn * tileSize, tileRow * tileSize,
                          std::min(tileSize, mShape.columns - tileColumn * tileSize),
                          std::min(tileSize, mShape.rows - tileRow * tileSize)};
  std::vector<float> cells = mRead(window);
  if (cells.size() != size_t(window.columns * window.rows))
    throw std::runtime_error("a tile of the terrain model was read in the wrong size");
  if (mTiles.size() >= mTilesKept) {
    mByKey.erase(mTiles.back().key);
    mTiles.pop_back();
  }
  mTiles.push_front({key, window.columns, std::move(cells)});
  mByKey[key] = mTiles.begin();
  return mTiles.front();
}

} // namespace brushline
