// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/length.h"
#include "quantities/place.h"
#include "quantities/progress.h"
#include "shared/shapes.h"

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <memory>
#include <vector>

namespace brushline {

//! A point of a course area's plane in whole millimetres, so that comparisons come out alike on every machine.
struct GroundPoint {
  int64_t east = 0;
  int64_t north = 0;

  bool operator==(const GroundPoint &other) const { return east == other.east && north == other.north; }
  bool operator<(const GroundPoint &other) const {
    return east != other.east ? east < other.east : north < other.north;
  }
};

//! Twice the area of the triangle: positive where c lies to the left of the way from a to b. Exact for points within
//! 1000 km of each other.
inline int64_t turnOf(const GroundPoint &a, const GroundPoint &b, const GroundPoint &c) {
  return (b.east - a.east) * (c.north - a.north) - (b.north - a.north) * (c.east - a.east);
}

//! Metres between two points.
inline double metresBetween(const GroundPoint &a, const GroundPoint &b) {
  const double east = double(b.east - a.east), north = double(b.north - a.north);
  return std::sqrt(east * east + north * north) / 1000;
}

//! Whether two stretches touch or cross.
bool stretchesMeet(const GroundPoint &a, const GroundPoint &b, const GroundPoint &c, const GroundPoint &d);

//! Whether a leg may be walked, as far as areas tell.
enum class GroundLeg { Open, LeavesArea, Avoided };

/**
 * The area that courses are laid out in, and what they keep away from, in a plane that touches the Earth in its middle.
 *
 * The area is all that lies in any of its polygons (each by the even-odd rule over its rings), so polygons may touch,
 * overlap or lie apart. Edges are straight in the plane; gaps under 1.5 mm are none. Safe to ask from several threads.
 * Accuracy: that of LocalPlane, and 1 mm.
 */
class CourseGround {
public:
  /**
   * \param area shapes that are no polygons do not count. \param avoid polygons, lines and points.
   * \param clearance that a leg keeps from what is avoided; 0: it does not touch it.
   * \throws std::invalid_argument without a polygon of any size, or for an area wider than mostWidth; Cancelled.
   */
  CourseGround(const std::vector<Shape> &area, const std::vector<Shape> &avoid, Length clearance,
               const Progress &progress);
  ~CourseGround();
  CourseGround(CourseGround &&) noexcept;

  static constexpr double mostWidth = 100000; //!< metres

  //! The nearest whole millimetre.
  GroundPoint toGround(const Place &place) const;
  Place toPlace(const GroundPoint &point) const;
  Place centre() const;

  bool holds(const GroundPoint &point) const;
  //! Whether it lies in what is avoided, or nearer to it than the clearance.
  bool avoids(const GroundPoint &point) const;
  GroundLeg leg(const GroundPoint &from, const GroundPoint &to) const;

  //! The corners of the box around the area.
  GroundPoint low() const;
  GroundPoint high() const;

private:
  struct Layer;
  struct Ground;
  std::unique_ptr<Ground> mGround;
};

} // namespace brushline
