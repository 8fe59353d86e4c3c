// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/tile_store.h"

#include <exception>

namespace brushline {

TileCells TileStore::get(int64_t key, const std::function<std::vector<float>()> &read) {
  std::promise<TileCells> promise;
  {
    std::unique_lock lock(mMutex);
    if (const auto found = mByKey.find(key); found != mByKey.end()) {
      mTiles.splice(mTiles.begin(), mTiles, found->second);
      const std::shared_future<TileCells> tile = mTiles.front().second;
      lock.unlock();
      return tile.get();
    }
    if (mTiles.size() >= mTilesKept) {
      mByKey.erase(mTiles.back().first);
      mTiles.pop_back();
    }
    mTiles.emplace_front(key, promise.get_future().share());
    mByKey[key] = mTiles.begin();
  }
  try {
    const auto cells = std::make_shared<const std::vector<float>>(read());
    promise.set_value(cells);
    return cells;
  } catch (...) {
    promise.set_exception(std::current_exception());
    const std::lock_guard lock(mMutex);
    if (const auto found = mByKey.find(key); found != mByKey.end()) {
      mTiles.erase(found->second);
      mByKey.erase(found);
    }
    throw;
  }
}

} // namespace brushline
