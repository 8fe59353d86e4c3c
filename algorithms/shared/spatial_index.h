// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/progress.h"

#include <boost/geometry/index/rtree.hpp>
#include <boost/geometry/strategies/strategies.hpp>
#include <boost/iterator/function_output_iterator.hpp>

#include <algorithm>
#include <iterator>
#include <type_traits>
#include <utility>
#include <vector>

namespace brushline {

/**
 * What lies where: a value for each of many keys (points or boxes of Boost.Geometry, without NaN). Safe to ask from
 * several threads.
 *
 * Boost's R-tree of millions is made in one long go that nothing can stop; so many keys are parted by place first, and
 * each part has a tree of its own.
 */
template <typename Key, typename Value> class SpatialIndex {
public:
  using Entry = std::pair<Key, Value>;

  SpatialIndex() = default;
  //! Throws Cancelled.
  explicit SpatialIndex(std::vector<Entry> entries, const Progress &progress = Progress()) {
    part<0>(entries.begin(), entries.end(), progress);
    std::vector<std::pair<Box, size_t>> bounds;
    for (size_t i = 0; i < mParts.size(); ++i)
      bounds.emplace_back(mParts[i].bounds(), i);
    mBounds = decltype(mBounds)(bounds.begin(), bounds.end());
  }

  //! The entries whose keys meet a geometry, borders included, in no particular order.
  template <typename Geometry> std::vector<Entry> meeting(const Geometry &geometry) const {
    std::vector<Entry> found;
    meeting(geometry, found);
    return found;
  }
  //! The same into a vector that was used before, which saves its memory being taken anew.
  template <typename Geometry> void meeting(const Geometry &geometry, std::vector<Entry> &found) const {
    namespace index = boost::geometry::index;
    found.clear();
    mBounds.query(index::intersects(geometry), boost::make_function_output_iterator([&](const auto &part) {
                    mParts[part.second].query(index::intersects(geometry), std::back_inserter(found));
                  }));
  }

private:
  using Point = typename boost::geometry::point_type<Key>::type;
  using Tree = boost::geometry::index::rtree<Entry, boost::geometry::index::quadratic<16>>;
  using Box = typename Tree::bounds_type;
  static constexpr size_t dimensions = boost::geometry::dimension<Key>::value;
  static constexpr std::ptrdiff_t mostInPart = 16384; // made in some milliseconds
  static constexpr size_t checkEvery = 65536;

  template <size_t Dimension> static double twiceTheMiddle(const Key &key) {
    namespace bg = boost::geometry;
    if constexpr (std::is_same_v<Key, Point>)
      return 2 * bg::get<Dimension>(key);
    else
      return bg::get<bg::min_corner, Dimension>(key) + bg::get<bg::max_corner, Dimension>(key);
  }

  // Halves what lies between, along each dimension in turn, until the parts are small.
  template <size_t Dimension, typename Iterator> void part(Iterator first, Iterator last, const Progress &progress) {
    progress.check();
    if (first == last)
      return;
    if (last - first <= mostInPart) {
      mParts.emplace_back(first, last);
      return;
    }
    size_t compared = 0;
    const Iterator middle = first + (last - first) / 2;
    std::nth_element(first, middle, last, [&](const Entry &a, const Entry &b) {
      if (++compared % checkEvery == 0)
        progress.check();
      return twiceTheMiddle<Dimension>(a.first) < twiceTheMiddle<Dimension>(b.first);
    });
    constexpr size_t next = (Dimension + 1) % dimensions;
    part<next>(first, middle, progress);
    part<next>(middle, last, progress);
  }

  std::vector<Tree> mParts;
  boost::geometry::index::rtree<std::pair<Box, size_t>, boost::geometry::index::quadratic<16>> mBounds;
};

} // namespace brushline
