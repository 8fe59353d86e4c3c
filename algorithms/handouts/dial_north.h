// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/bearing.h"
#include "shared/compass.h"

#include <array>
#include <optional>

namespace brushline {

//! A number on a dial and the bearings it may stand for, as far as they are known.
struct DialReading {
  double dial = 0; //!< in the dial's unit
  std::optional<double> back_dial;
  std::optional<double> magnetic, geographic, grid; //!< bearings of the leg from the three norths, degrees
};

//! Whether a number can stand on a dial: 0 to its full circle, the end included; not NaN. Both in the dial's unit.
bool isOnDial(double number, double full_circle);

/**
 * Finds out which north the numbers on a dial count from, since legs tell the numbers and all three bearings, but not
 * which of them was rounded.
 *
 * All numbers are multiples of the dial's graduation, so that it is at most their greatest common divisor, and none is
 * farther than half of that from the bearing it stands for.
 */
class DialNorth {
public:
  //! \param unit that the dial is divided in. Dials of different units are of different compasses: no north is found.
  //! Neither is one when a number is on no dial: not a number, below 0 or above the full circle.
  void add(const DialReading &reading, DialUnit unit);

  //! The north; none when more than one is possible (where they differ by less than the graduation), or none is.
  std::optional<North> north() const;

private:
  std::optional<DialUnit> mUnit;
  bool mUnclear = false;             // dials of several units, or numbers that are on none
  long mDivisor = 0;                 // hundredths of the unit; 0: nothing but zeros
  std::array<double, 3> mFarthest{}; // by North: the greatest difference, in the unit
};

} // namespace brushline
