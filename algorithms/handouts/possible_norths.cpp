// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/possible_norths.h"

#include "shared/compass.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace brushline {

namespace {

constexpr double grain = 1e-4; // of the dial's unit; numbers for the dial are told to a hundredth

bool isOnDial(double number, double full_circle) { return number >= 0 && number <= full_circle; }

// The coarsest graduation that all numbers are multiples of, in the dial's unit.
double coarsestGraduation(const std::vector<DialWithBearings> &dials, double full_circle) {
  const long long most = std::llround(full_circle * Compass::coarsestShare / grain);
  long long common = 0;
  for (const DialWithBearings &leg : dials) {
    common = std::gcd(common, std::llround(leg.dial / grain));
    if (leg.back_dial)
      common = std::gcd(common, std::llround(*leg.back_dial / grain));
  }
  long long found = common == 0 ? most : 1; // common is 0 for zeros alone
  for (long long divisor = 1; divisor * divisor <= common; ++divisor)
    if (common % divisor == 0)
      for (const long long one : {divisor, common / divisor})
        if (one <= most)
          found = std::max(found, one);
  return double(found) * grain;
}

} // namespace

std::vector<North> possibleNorths(const std::vector<DialWithBearings> &dials, double full_circle) {
  std::vector<North> possible;
  if (dials.empty() || !std::all_of(dials.begin(), dials.end(), [full_circle](const DialWithBearings &leg) {
        return isOnDial(leg.dial, full_circle) && isOnDial(leg.back_dial.value_or(0), full_circle);
      }))
    return possible;
  const double half = coarsestGraduation(dials, full_circle) / full_circle * 360 / 2;
  constexpr double slack = 1e-6; // degrees; that of the arithmetic
  for (const auto &[north, bearing] :
       {std::pair(North::Magnetic, &DialWithBearings::magnetic), std::pair(North::True, &DialWithBearings::true_),
        std::pair(North::Grid, &DialWithBearings::grid)})
    if (std::all_of(dials.begin(), dials.end(), [&, b = bearing](const DialWithBearings &leg) {
          return !(leg.*b) ||
                 std::abs((Angle::degrees(leg.dial / full_circle * 360) - *(leg.*b)).signedTurn().degrees()) <=
                     half + slack;
        }))
      possible.push_back(north);
  return possible;
}

} // namespace brushline
