// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/walker.h"

namespace brushline {

namespace {
constexpr double surelyDouble = 90;
constexpr double surelySingle = 110;
} // namespace

std::optional<double> singleSteps(double count, PaceKind kind) {
  if (kind == PaceKind::Single || count > surelySingle)
    return count;
  if (count < surelyDouble)
    return 2 * count;
  return std::nullopt;
}

double countGiven(double steps, PaceKind kind) {
  return kind == PaceKind::Single || steps > surelySingle ? steps : steps / 2;
}

} // namespace brushline
