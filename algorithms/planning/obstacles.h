// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/progress.h"
#include "shared/shapes.h"

#include <memory>
#include <vector>

namespace brushline {

/**
 * Polygons that nobody walks through. Safe to ask from several threads.
 */
class Obstacles {
public:
  /**
   * \param shapes polygons; points and lines among them stop nobody. Edges are geodesics. A shape smaller than half the
   * Earth.
   * \throws Cancelled
   */
  Obstacles(std::vector<Shape> shapes, const Progress &progress);
  ~Obstacles();
  Obstacles(Obstacles &&) noexcept;
  Obstacles &operator=(Obstacles &&) noexcept;

  //! Their outlines, in the order given, with places added so that no edge is longer than longestEdge.
  const Shapes &outlines() const;

  /**
   * The polygons that hold a place, by the even-odd rule over all rings of each, in order.
   *
   * Accuracy: for places within 1 mm of an outline (10 mm for polygons of 1000 km) either answer may come.
   */
  std::vector<size_t> holding(const Place &place) const;

  static constexpr double longestEdge = 1000; //!< metres

private:
  struct Bodies;
  std::unique_ptr<Bodies> mBodies;
};

} // namespace brushline
