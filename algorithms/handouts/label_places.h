// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "handouts/drawing.h"

#include <utility>
#include <vector>

namespace brushline {

//! A label that wants to stand beside a spot.
struct LabelWish {
  Spot anchor;
  double width, height; //!< millimetres
  double clear;         //!< how far to keep from the spot
};

struct PlacedLabel {
  Area area;
  bool far = false; //!< so far from its spot that a line should lead there
};

/**
 * Places for labels, one by one in their order: beside their spots, where they hide least of lines, of spots and of the
 * labels before; farther off where it is crowded.
 *
 * \param lines that should stay seen. \param inside no label leaves it, unless it is larger.
 * The same wishes give the same places.
 */
std::vector<PlacedLabel> placeLabels(const std::vector<LabelWish> &wishes,
                                     const std::vector<std::pair<Spot, Spot>> &lines, const Area &inside);

//! How much of a line lies inside an area, millimetres.
double lengthInside(const std::pair<Spot, Spot> &line, const Area &area);

} // namespace brushline
