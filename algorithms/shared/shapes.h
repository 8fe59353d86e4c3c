// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/length.h"
#include "quantities/place.h"
#include "quantities/progress.h"

#include <memory>
#include <string>
#include <vector>

namespace brushline {

enum class ShapeKind { Point, Line, Polygon };

//! Something on the ground: a trail, a fence, a pond.
struct Shape {
  ShapeKind kind = ShapeKind::Line;
  std::vector<std::vector<Place>> parts; //!< points: one place each; lines; rings of polygons, by the even-odd rule,
                                         //!< each closed by its first place once more
  std::string name;                      //!< UTF-8; empty: none
  size_t source = 0;                     //!< where it came from, by the reader's own count
  long long feature = 0;                 //!< its number there
};

//! Some places of a shape that follow each other.
struct ShapeStretch {
  size_t shape;
  size_t part;
  size_t first, last; //!< places of the part; edges run from first to last; equal for points
};

/**
 * Shapes with a spatial index, anywhere on the Earth. Safe to ask from several threads.
 */
class Shapes {
public:
  //! Throws Cancelled.
  explicit Shapes(std::vector<Shape> shapes, const Progress &progress = Progress());
  ~Shapes();
  Shapes(Shapes &&) noexcept;
  Shapes &operator=(Shapes &&) noexcept;

  size_t size() const;
  const Shape &operator[](size_t i) const;

  /**
   * Stretches of shapes that may come within reach of the geodesic between two places, in order of shape, part and
   * place. All that do are among them; some that do not may be.
   */
  std::vector<ShapeStretch> near(const Place &from, const Place &to, Length reach) const;

  //! Polygons that may hold a place, however far off their borders are, in order. All that do are among them; some that
  //! do not may be.
  std::vector<size_t> mayHold(const Place &place) const;

private:
  struct Index;
  std::unique_ptr<Index> mIndex;
};

} // namespace brushline
