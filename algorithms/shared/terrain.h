// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/bearing.h"
#include "quantities/length.h"
#include "quantities/place.h"
#include "shared/geodesic_chords.h"
#include "shared/tiled_grid.h"

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
  //! \param project into the grid's coordinate system.
  Terrain(TiledGrid grid, Project project);

  //! Height in metres, bilinear between the four cells around; NaN outside the model and where it has no data.
  double height(const Place &place);
  //! As above, for many places at once.
  std::vector<double> heights(const std::vector<Place> &places);

  /**
   * The profile along the geodesic between two places, at the model's own resolution: equal steps, as many as are
   * needed for none to be longer than a cell; but none shorter than 1 cm unless the line is.
   *
   * \param length the geodesic's length; 0 gives one height.
   * Accuracy of the places: see chordsAlong().
   */
  Profile profile(const Place &from, const Place &to, Length length);

  //! As above, from a place by a bearing.
  Profile profile(const Place &from, TrueBearing departure, Length length);

  //! Lengthens a profile of at least one step beyond its end, by the same steps.
  //! \param end the place where it ends. \param onward the line's bearing there. \param by how much, at least.
  void lengthen(Profile &profile, const Place &end, TrueBearing onward, Length by);

private:
  Profile profileOver(const std::vector<GeodesicChord> &chords, Length length);
  std::vector<double> heightsOver(const std::vector<GeodesicChord> &chords, Length length, size_t steps);

  TiledGrid mGrid;
  Project mProject;
};

} // namespace brushline
