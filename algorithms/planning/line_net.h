// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "shared/shapes.h"

#include <optional>
#include <vector>

namespace brushline {

//! A place on a line.
struct OnLine {
  size_t line, part, edge; //!< of the net; the edge runs from the vertex of its number to the next
  double along_m = 0;      //!< from the part's first vertex
  Place place;
  double away_m = 0; //!< from the place that was asked for
};

/**
 * Lines that one walks along, with their lengths. Safe to ask from several threads.
 *
 * Lines of the same name are one line, and so are the parts of a feature. Parts join where exactly two of a line's ends
 * meet (within 1 cm), so that a trail drawn in pieces is one; where three or more meet, nothing joins, since the trail
 * forks there. Vertices that come twice in a row count once; parts of one vertex are left out, and so is what is no
 * line.
 */
class LineNet {
public:
  //! Throws Cancelled.
  explicit LineNet(std::vector<Shape> shapes, const Progress &progress = Progress());

  //! The lines, joined. A part that ends where it starts is closed.
  const Shapes &shapes() const { return mShapes; }
  //! Geodesic metres from a part's first vertex to another.
  double along(size_t line, size_t part, size_t vertex) const { return mAlong[line][part][vertex]; }
  double length(size_t line, size_t part) const { return mAlong[line][part].back(); }
  bool closed(size_t line, size_t part) const;

  //! The nearest place on a line within reach; none when there is none.
  std::optional<OnLine> nearest(const Place &place, Length reach) const;

  /**
   * How far it is along a part from one place to another.
   *
   * \returns metres, positive in the direction of its vertices; on a closed part the shorter way round.
   */
  double way(size_t line, size_t part, double from_m, double to_m) const;

  //! The vertices of that way, both ends included.
  std::vector<Place> walk(const OnLine &from, const OnLine &to) const;

private:
  Shapes mShapes;
  std::vector<std::vector<std::vector<double>>> mAlong;
};

} // namespace brushline
