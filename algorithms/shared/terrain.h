// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/length.h"
#include "quantities/place.h"
#include "shared/height_grid.h"

#include <functional>
#include <vector>

namespace brushline {

//! Heights along a line: one every step, from its start to its end, both included.
struct Profile {
  Length step;                 //!< horizontal, between neighbours
  std::vector<double> heights; //!< metres; NaN where the terrain model has no data
};

/**
 * A terrain model that can be asked for heights on the WGS84 ellipsoid. One thread at a time.
 */
class Terrain {
public:
  //! Turns longitudes (in x, degrees) and latitudes (in y) into the model's own coordinates, in place; a place that
  //! cannot be turned becomes NaN.
  using Project = std::function<void(std::vector<double> &x, std::vector<double> &y)>;

  Terrain(HeightGrid grid, Project project);

  //! Height in metres, bilinear between the four cells around; NaN outside the model and where it has no data.
  double height(const Place &place);

  /**
   * The profile along the geodesic between two places, at the model's own resolution: as many equal steps as cells
   * are needed to cross it, so no step is longer than a cell.
   *
   * \param length the geodesic's length; 0 gives one height.
   * Accuracy: the line is straight in the model's coordinates between points of the geodesic at most 1 km apart; it
   * strays from the geodesic by under 0.12 m up to latitude 80 (L^2 tan(latitude) / 8 R).
   */
  Profile profile(const Place &from, const Place &to, Length length);

private:
  HeightGrid mGrid;
  Project mProject;
  std::vector<double> mX, mY;
};

} // namespace brushline
