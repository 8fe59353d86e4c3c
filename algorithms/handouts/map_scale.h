// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "handouts/drawing.h"

#include <vector>

namespace brushline {

//! How large a map is drawn: 1 : number.
struct MapScale {
  double number;

  double toPaper(double ground_m) const { return ground_m * 1000 / number; }  //!< millimetres
  double toGround(double paper_mm) const { return paper_mm * number / 1000; } //!< metres
};

//! What lies on the ground, in metres.
struct GroundSize {
  double width, height;
};

/**
 * The largest scale with a round number (1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 6, 7.5 times a power of ten, from 1 : 250 on)
 * at which something has room.
 *
 * \param room millimetres, > 0.
 */
MapScale roundScale(GroundSize what, const Area &room);

//! Whether something has room at a scale.
bool hasRoom(GroundSize what, const Area &room, MapScale scale);

//! The largest of 1, 2, 5 times a power of ten that is no more than a value > 0.
double roundDown(double value);

/**
 * Parallel lines across an area, equally far from each other, one through its middle.
 *
 * \param turn their direction, clockwise from upward. \param apart millimetres, > 0.
 * \returns for each its end that lies backward and the one that lies forward.
 */
std::vector<std::pair<Spot, Spot>> parallelsAcross(const Area &area, double turn_degrees, double apart);

} // namespace brushline
