// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "handouts/drawing.h"
#include "quantities/angle.h"

#include <array>
#include <optional>
#include <string>

namespace brushline {

//! A dial as it is to be set.
struct DialPicture {
  std::string number; //!< to stand at the index line
  Angle turn;         //!< that the number stands for: clockwise on the dial from its N
  //! Where the needle comes to lie, clockwise on the dial from its N: 0 but for dials that count from another north
  //! than the needle's. None: not known, and none is drawn.
  std::optional<Angle> needle;
  std::array<std::string, 4> letters{"N", "E", "S", "W"};
};

//! A picture's height over its width.
constexpr double dialPictureHeight = 1.3;

/**
 * The housing of a baseplate compass seen from above, the way to go upward: the dial with its letters turned so that
 * the number stands at the index line, and the needle, where that is known, as it lies when one faces the right way.
 *
 * \param area where it goes, dialPictureHeight times as high as wide.
 */
Drawing drawDial(const DialPicture &dial, const Area &area, const TextRuler &ruler);

} // namespace brushline
