// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/dial_north.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace brushline {

bool isOnDial(double number, double full_circle) { return number >= 0 && number <= full_circle; }

void DialNorth::add(const DialReading &reading, DialUnit unit) {
  if ((mUnit && *mUnit != unit) || !isOnDial(reading.dial, fullCircle(unit)) ||
      !isOnDial(reading.back_dial.value_or(0), fullCircle(unit))) {
    mUnclear = true;
    return;
  }
  mUnit = unit;
  mDivisor = std::gcd(mDivisor, std::lround(reading.dial * 100));
  if (reading.back_dial)
    mDivisor = std::gcd(mDivisor, std::lround(*reading.back_dial * 100));
  const double perDegree = fullCircle(unit) / 360;
  const std::optional<double> bearings[] = {reading.magnetic, reading.geographic, reading.grid}; // as North counts
  for (size_t i = 0; i < mFarthest.size(); ++i)
    if (bearings[i]) {
      const double apart = std::abs(std::remainder(reading.dial - *bearings[i] * perDegree, fullCircle(unit)));
      mFarthest[i] = std::max(mFarthest[i], apart);
    }
}

std::optional<North> DialNorth::north() const {
  if (mDivisor == 0 || mUnclear)
    return std::nullopt;
  const double most = double(mDivisor) / 200 + 0.006; // numbers may have been rounded to hundredths
  std::optional<North> found;
  for (size_t i = 0; i < mFarthest.size(); ++i)
    if (mFarthest[i] <= most) {
      if (found)
        return std::nullopt;
      found = North(i);
    }
  return found;
}

} // namespace brushline
