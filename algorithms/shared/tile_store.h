// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <functional>
#include <future>
#include <list>
#include <memory>
#include <mutex>
#include <unordered_map>
#include <utility>
#include <vector>

namespace brushline {

//! The cells of a tile, row by row; shared by all who look at them.
using TileCells = std::shared_ptr<const std::vector<float>>;

/**
 * Tiles of a raster, the latest ones kept, for several threads: each is read once, by the thread that asks first; who
 * asks meanwhile waits for that one.
 */
class TileStore {
public:
  //! \param tilesKept at least 1; tiles in use elsewhere live on when they are let go here.
  explicit TileStore(size_t tilesKept) : mTilesKept(tilesKept > 0 ? tilesKept : 1) {}

  //! \param read called when the tile is not kept. What it throws comes out here, and is not kept.
  TileCells get(int64_t key, const std::function<std::vector<float>()> &read);

private:
  using Entry = std::pair<int64_t, std::shared_future<TileCells>>;

  std::mutex mMutex;
  size_t mTilesKept;
  std::list<Entry> mTiles; // latest first
  std::unordered_map<int64_t, std::list<Entry>::iterator> mByKey;
};

} // namespace brushline
