// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "planning/leg_line.h"
#include "quantities/angle.h"
#include "shared/shapes.h"
#include "shared/terrain.h"

#include <functional>
#include <optional>
#include <vector>

namespace brushline {

//! A stretch of a leg, metres from its start.
struct LegStretch {
  double from_m, to_m;
};

/**
 * The stretches of a leg that lie nearer to a shape than a distance, or inside it; in order, apart from each other.
 *
 * Degenerate: a stretch may have no length where the leg only touches the border. \param distance >= 0; with 0 what is
 * crossed gives stretches without length, and areas those inside them.
 * Accuracy: that of LegLine. Edges are geodesics; lines that are straight in degrees are apart from them by
 * L^2 tan(latitude) / 8 R on edges of length L that run east: 3 cm on 1 km at latitude 60, 14 m on 20 km.
 */
std::vector<LegStretch> stretchesNear(const Shape &shape, const LegLine &leg, double distance);

//! A leg's stretches near one of several shapes.
struct NearShape {
  size_t shape;
  std::vector<LegStretch> stretches;
};

/**
 * As above, for all shapes of an index, in their order.
 * \param distanceOf by shape, >= 0; none: the shape does not count. \param most the greatest of them.
 */
std::vector<NearShape> shapesNear(const Shapes &shapes, const LegLine &leg,
                                  const std::function<std::optional<Length>(size_t)> &distanceOf, Length most);

//! What the ground's steepness along a leg is.
struct SteepGround {
  std::vector<LegStretch> stretches; //!< steeper than the limit
  double steepest_m = 0;             //!< where the steepest place lies
  Angle steepest;                    //!< there
  double without_data_m = 0;         //!< of the leg; nothing is known of these
};

/**
 * Where the ground under a leg is steeper than a limit: whichever way it falls, so that a traverse of a steep side
 * counts as well.
 *
 * The slope is that of the plane through the heights a cell (step) before, behind, left and right of each place of the
 * profile; a stretch runs half a step to either side of such places.
 *
 * \param step of the terrain model's cells on the ground, > 0.
 */
SteepGround steepGround(Terrain &terrain, const LegLine &leg, Length step, Angle limit);

} // namespace brushline
