// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/progress.h"

#include <memory>
#include <vector>

namespace brushline {

//! A point in a map's own plane coordinates.
struct MapPoint {
  double x;
  double y;
};

//! A patch of cover: rings by the even-odd rule (outer ones and holes alike), each closed whether or not its last point
//! repeats the first.
struct CoverPatch {
  std::vector<std::vector<MapPoint>> rings;
  int cover; //!< a class, >= 0
};

//! A piece of a line with one class of cover.
struct CoverStretch {
  double to;        //!< its end, as a share of the line, 0 to 1; it starts where the one before ends
  int cover;        //!< -1: no cover is known here
  bool overlapping; //!< more than one patch lies here
};

/**
 * Patches of cover with a spatial index. Where patches overlap the first one counts. Safe to ask from several threads.
 */
class CoverMap {
public:
  //! Throws Cancelled.
  explicit CoverMap(std::vector<CoverPatch> patches, const Progress &progress = Progress());
  ~CoverMap();
  CoverMap(CoverMap &&) noexcept;
  CoverMap &operator=(CoverMap &&) noexcept;

  /**
   * The cover along the straight line between two points of the map.
   *
   * \returns stretches in order, the last one ending at 1; neighbours differ. One stretch without cover outside all
   * patches and for a line without length outside them.
   * Exact but for rounding; a line that runs along a border has the cover of the side that lies to its right.
   */
  std::vector<CoverStretch> along(MapPoint from, MapPoint to) const;

private:
  struct Index;
  std::unique_ptr<Index> mIndex;
};

} // namespace brushline
