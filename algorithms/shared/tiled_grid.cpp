// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/tiled_grid.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <stdexcept>
#include <utility>

namespace brushline {

namespace {
constexpr size_t recentTiles = 16;
} // namespace

TiledGrid::TiledGrid(const GridShape &shape, ReadWindow read, size_t tilesKept)
    : TiledGrid(shape, std::move(read), std::make_shared<TileStore>(tilesKept)) {
  mRecent = 1; // the store is at hand already
}

TiledGrid::TiledGrid(const GridShape &shape, ReadWindow read, std::shared_ptr<TileStore> store)
    : mShape(shape), mRead(std::move(read)), mTileColumns((shape.columns + tileSize - 1) / tileSize),
      mStore(std::move(store)), mRecent(recentTiles) {
  if (!(shape.cell_width > 0) || !(shape.cell_height > 0) || shape.columns < 1 || shape.rows < 1)
    throw std::invalid_argument("a raster needs cells of positive size");
}

CellPosition TiledGrid::cellOf(double x, double y) const {
  return {(x - mShape.left) / mShape.cell_width, (mShape.top - y) / mShape.cell_height};
}

double TiledGrid::interpolated(CellPosition position) {
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
  const int64_t c = column0 % tileSize, r0 = row0 % tileSize;
  if (fx > 0 && fy > 0 && c + 1 < tileSize && r0 + 1 < tileSize) {
    // The usual case, all four in one tile.
    const Tile &t = tile(column0 / tileSize, row0 / tileSize);
    const float *north = t.cells + r0 * t.columns + c, *south = north + t.columns;
    const double upper = double(north[0]) + fx * (double(north[1]) - double(north[0]));
    const double lower = double(south[0]) + fx * (double(south[1]) - double(south[0]));
    return upper + fy * (lower - upper);
  }
  // A neighbour of weight 0 is not asked: its lack of data does not matter.
  const auto along = [&](int64_t r) {
    const double west = cell(column0, r);
    return fx > 0 ? west + fx * (cell(column0 + 1, r) - west) : west;
  };
  const double north = along(row0);
  return fy > 0 ? north + fy * (along(row0 + 1) - north) : north;
}

double TiledGrid::nearest(CellPosition position) {
  if (!(position.column >= 0 && position.column < double(mShape.columns) && position.row >= 0 &&
        position.row < double(mShape.rows)))
    return std::numeric_limits<double>::quiet_NaN();
  return cell(int64_t(position.column), int64_t(position.row));
}

std::vector<CellRun> TiledGrid::along(CellPosition from, CellPosition to) {
  const double columns = to.column - from.column, rows = to.row - from.row;
  if (!std::isfinite(columns) || !std::isfinite(rows))
    return {{1, std::numeric_limits<double>::quiet_NaN()}};
  std::vector<double> borders;
  const auto cross = [&](double start, double span, double last) {
    if (span == 0)
      return;
    // Borders outside the raster change nothing.
    const double low = std::clamp(std::min(start, start + span), 0.0, last);
    const double high = std::clamp(std::max(start, start + span), 0.0, last);
    for (double border = std::ceil(low); border <= high; ++border)
      if (const double share = (border - start) / span; share > 0 && share < 1)
        borders.push_back(share);
  };
  cross(from.column, columns, double(mShape.columns));
  cross(from.row, rows, double(mShape.rows));
  borders.push_back(1);
  std::sort(borders.begin(), borders.end());
  constexpr double sliver = 1e-9; // what rounding leaves of a cell whose corner alone is touched
  std::vector<CellRun> runs;
  double before = 0;
  for (const double border : borders) {
    if (border - before <= sliver) {
      if (border == 1)
        runs.back().to = 1;
      continue;
    }
    const double middle = (before + border) / 2;
    const double value = nearest({from.column + middle * columns, from.row + middle * rows});
    if (!runs.empty() && (runs.back().value == value || (std::isnan(runs.back().value) && std::isnan(value))))
      runs.back().to = border;
    else
      runs.push_back({border, value});
    before = border;
  }
  return runs;
}

double TiledGrid::cell(int64_t column, int64_t row) {
  const Tile &t = tile(column / tileSize, row / tileSize);
  return t.cells[size_t((row % tileSize) * t.columns + column % tileSize)];
}

const TiledGrid::Tile &TiledGrid::tile(int64_t tileColumn, int64_t tileRow) {
  const int64_t key = tileRow * mTileColumns + tileColumn;
  if (!mTiles.empty() && mTiles.front().key == key)
    return mTiles.front();
  if (const auto found = mByKey.find(key); found != mByKey.end()) {
    mTiles.splice(mTiles.begin(), mTiles, found->second);
    return mTiles.front();
  }
  const CellWindow window{tileColumn * tileSize, tileRow * tileSize,
                          std::min(tileSize, mShape.columns - tileColumn * tileSize),
                          std::min(tileSize, mShape.rows - tileRow * tileSize)};
  const TileCells cells = mStore->get(key, [&] {
    std::vector<float> read = mRead(window);
    if (read.size() != size_t(window.columns * window.rows))
      throw std::runtime_error("a tile of the raster was read in the wrong size");
    return read;
  });
  if (mTiles.size() >= mRecent) {
    mByKey.erase(mTiles.back().key);
    mTiles.pop_back();
  }
  mTiles.push_front({key, window.columns, cells, cells->data()});
  mByKey[key] = mTiles.begin();
  return mTiles.front();
}

} // namespace brushline
