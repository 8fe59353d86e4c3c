// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "shared/tile_store.h"

#include <cstdint>
#include <functional>
#include <list>
#include <memory>
#include <unordered_map>
#include <vector>

namespace brushline {

//! Where a raster lies and how it is divided. Rows run from the top (greatest y) down; y grows upwards.
struct GridShape {
  double left = 0;
  double top = 0;
  double cell_width = 1;  //!< in the raster's units, > 0
  double cell_height = 1; //!< in the raster's units, > 0
  int64_t columns = 0;
  int64_t rows = 0;
};

//! A position counted in cells from the raster's top left corner; the centre of the first cell is (0.5, 0.5).
struct CellPosition {
  double column;
  double row;
};

//! A rectangle of cells.
struct CellWindow {
  int64_t column;
  int64_t row;
  int64_t columns;
  int64_t rows;
};

//! A piece of a line over a raster that lies in cells of one value.
struct CellRun {
  double to;    //!< its end, as a share of the line, 0 to 1; it starts where the one before ends
  double value; //!< NaN outside the raster and where it has no data
};

/**
 * A raster band read by tiles as it is needed, the latest ones kept.
 *
 * Asking a host's raster point by point costs a call each (and a request each from a server, and a block of the file
 * each when its cache is small); a tile costs one. One thread at a time; grids over the same raster may share a store,
 * each with a reader of its own.
 */
class TiledGrid {
public:
  //! Reads the cells of a window, row by row from the top; NaN where there is no data. Throws when reading fails.
  using ReadWindow = std::function<std::vector<float>(const CellWindow &)>;

  //! \param tilesKept memory is tilesKept * 256 KiB at the most.
  TiledGrid(const GridShape &shape, ReadWindow read, size_t tilesKept = 256);
  //! With a store that grids over the same raster share.
  TiledGrid(const GridShape &shape, ReadWindow read, std::shared_ptr<TileStore> store);

  //! The cell position of a place in the raster's coordinates; NaN for NaN.
  CellPosition cellOf(double x, double y) const;

  /**
   * The value at a position, bilinear between the four cell centres around it; in the outer half cell the border's
   * values reach outwards.
   *
   * \returns NaN outside the raster, for a NaN position, and where one of the cells used has no data.
   */
  double interpolated(CellPosition position);

  //! The value of the cell that holds a position; NaN outside the raster, for a NaN position, and without data.
  double nearest(CellPosition position);

  /**
   * The cells' values along the straight line between two positions, from cell border to cell border; neighbours
   * differ. A cell met on less than 1e-9 of the line counts to the next one. One run of NaN when an end is NaN.
   */
  std::vector<CellRun> along(CellPosition from, CellPosition to);

  const GridShape &shape() const { return mShape; }

private:
  static constexpr int64_t tileSize = 256;
  struct Tile {
    int64_t key;
    int64_t columns;
    TileCells shared;
    const float *cells;
  };

  double cell(int64_t column, int64_t row);
  const Tile &tile(int64_t tileColumn, int64_t tileRow);

  GridShape mShape;
  ReadWindow mRead;
  int64_t mTileColumns;
  std::shared_ptr<TileStore> mStore;
  size_t mRecent;         // how many tiles are at hand without asking the store
  std::list<Tile> mTiles; // latest first
  std::unordered_map<int64_t, std::list<Tile>::iterator> mByKey;
};

} // namespace brushline
