// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/angle.h"
#include "records/number_text.h"
#include "shared/compass.h"

#include <string_view>
#include <variant>
#include <vector>

namespace brushline {

//! A bearing as somebody wrote it down.
struct WrittenBearing {
  Angle angle;                //!< clockwise from the north of the compass that was read, [0, 360) degrees
  Angle coarseness;           //!< the step of what was written where that is a point of the compass, else 0
  std::vector<Angle> swapped; //!< the same with two of its digits exchanged, where that is a bearing too
};

/**
 * A bearing from the ways people write one; capitals or not:
 *
 * - a number in the dial's unit: 42, 042, 42.5, 42,5; with a unit of its own: 42°, 42 deg, 0747 mil, 47 gon
 * - degrees with minutes and seconds: 42°30', 68°05'35.5"
 * - from north or south towards east or west, up to a quarter of the circle: N 42 E, S10W, S68°05'35"W, S68-05-35W;
 *   these are degrees; beside a dial of mils or gon only with a sign or a unit, since nobody could tell
 * - one of the 32 points of the compass: NE, NNE, NE by N, NEbN. As coarse as they are: 22.5 degrees for the sixteen,
 *   11.25 for those with "by".
 *
 * A full circle (360, 6400, 400) is 0. All else is a fault: words, more than a full circle, a sign, O for east or west
 * in other languages, "Grad", which is a degree to some and a gon to others, "310/130"; "1.600" in mils, which is 1600
 * where points stand between thousands (a circle has neither so many degrees nor gon).
 *
 * \param unit of the dial, for numbers that have none.
 * Accuracy: that of a double. Source of the forms: common practice, no source; the points: the sailors' compass card.
 */
std::variant<WrittenBearing, TextFault> readBearing(std::string_view utf8, DialUnit unit);

} // namespace brushline
