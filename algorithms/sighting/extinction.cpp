// SPDX-License-Identifier: GPL-2.0-or-later
#include "sighting/extinction.h"

#include <cmath>

namespace brushline {

double extinctionOf(Length half_clear) { return std::log(2.0) / half_clear.metres(); }

Length clearDistance(double extinction, double probability) {
  return Length::metres(-std::log(probability) / extinction);
}

double standExtinction(double stems_per_ha, Length mean_diameter, double understorey) {
  return stems_per_ha * mean_diameter.metres() / 10000 + understorey;
}

} // namespace brushline
