// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/bearing.h"
#include "quantities/place.h"
#include "shared/route.h"

#include <memory>
#include <string>

namespace brushline {

/**
 * The grid of a projected coordinate system: where its north points, and whether it goes on round the Earth. One thread
 * at a time.
 *
 * Grid north and grid east are the ways the grid's lines run on a map with north up. Systems whose axes are named west
 * or south (the Lo belts of South Africa, Krovak's south and west) count against them; polar ones, whose axes both run
 * north or both south along meridians of their own, count as their names say.
 */
class GridNorth {
public:
  /**
   * \param crs any definition PROJ reads: "EPSG:32621", WKT, a PROJ string with +type=crs.
   * \throws std::invalid_argument when it is not a projected coordinate system.
   */
  explicit GridNorth(const std::string &crs);
  ~GridNorth();
  GridNorth(GridNorth &&) noexcept;
  GridNorth &operator=(GridNorth &&) noexcept;

  /**
   * The bearing of grid north from true north; east positive, [-180, 180] degrees.
   *
   * \param place taken on the system's own datum: a shift of 100 m between datums changes the answer by under
   * 0.001 degrees.
   * \returns NaN where the projection does not reach.
   * Degenerate: at a pole, where every direction is north or south, that of the given longitude.
   * Accuracy: 1e-7 degrees against PROJ's own factors, whose call is a thousand times slower on a coordinate system.
   */
  Convergence at(const Place &place) const;

  /**
   * The bearing of the straight line on the grid between two points; of no meaning when they are one, NaN when one is.
   * On a grid that goes on round the Earth the shorter way.
   */
  GridBearing bearing(const GridPoint &from, const GridPoint &to) const;

  /**
   * The way a line runs on the grid where it passes a place. On a grid that keeps angles that is its true bearing less
   * the convergence; on others beside it, by up to 0.2 degrees on web maps and 2 degrees far out on equal-area ones.
   *
   * \param place as for at(). \param way of the line there.
   * \returns NaN where the projection does not reach.
   * Accuracy: 1e-7 degrees.
   */
  GridBearing bearing(const Place &place, TrueBearing way) const;

  /**
   * How wide the whole Earth is on it, in its units: on a map that goes on round the Earth, such as Mercator's, a place
   * comes again after so much x.
   *
   * \returns 0 where nothing comes again, as in a UTM zone.
   * Accuracy: 1e-14 of the width.
   */
  double worldWidth() const { return mWorldWidth; }

private:
  struct Projection;
  double longitudeOf(const Place &place) const; // from the system's own meridian, degrees
  double findWorldWidth() const;
  std::unique_ptr<Projection> mProjection;
  double mWorldWidth = 0;
};

/**
 * The UTM zone (or UPS cap beyond 84 north and 80 south) of a place as "EPSG:...", with the zones of Norway and
 * Svalbard as they are. WGS84.
 */
std::string standardGrid(const Place &place);

} // namespace brushline
