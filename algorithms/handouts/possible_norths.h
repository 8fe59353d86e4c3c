// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/bearing.h"

#include <optional>
#include <vector>

namespace brushline {

//! A number for the dial and the bearings of the same leg, as a table has them.
struct DialWithBearings {
  double dial = 0;                            //!< in the dial's unit
  std::optional<double> back_dial;            //!< likewise; tells of the graduation only
  std::optional<Angle> magnetic, true_, grid; //!< clockwise from each north; none: not known
};

/**
 * The norths that numbers for the dial can have been counted from. A table of legs does not name it; but a number is
 * the graduation nearest to its bearing, so the right north is no farther from any number than half a graduation, and
 * the graduation divides all numbers, those that are sighted back to as well.
 *
 * \param full_circle 360, 6400 or 400. \param dials of one compass.
 * \returns magnetic, true, grid in that order, those that are possible. Several where they lie too close together to
 * tell, or where there are few numbers; none where the numbers fit no north, where one of them is on no dial (below 0,
 * above the full circle, NaN), nor without numbers. A leg that does not know the bearing from a north does not speak
 * against that north.
 * Accuracy: the right one is always among them for graduations of whole hundredths up to an eighth of the circle, which
 * are those that legs are made with (Compass::coarsestShare); where only one is left, it is the right one. Method: own,
 * no source.
 */
std::vector<North> possibleNorths(const std::vector<DialWithBearings> &dials, double full_circle);

} // namespace brushline
