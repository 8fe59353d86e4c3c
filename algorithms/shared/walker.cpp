// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/walker.h"

namespace brushline {

std::optional<double> singleSteps(double count, PaceKind kind) {
  constexpr double surelyDouble = 90;
  constexpr double surelySingle = 110;
  if (kind == PaceKind::Single || count > surelySingle)
    return count;
  if (count < surelyDouble)
    return 2 * count;
  return std::nullopt;
}

} // namespace brushline
