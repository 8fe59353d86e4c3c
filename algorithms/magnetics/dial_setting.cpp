// SPDX-License-Identifier: GPL-2.0-or-later
#include "magnetics/dial_setting.h"

namespace brushline {

std::optional<double> dialSetting(const Compass &compass, TrueBearing bearing, GridBearing grid,
                                  const LocalField &field) {
  if (field.zone == CompassZone::Blackout)
    return std::nullopt;
  switch (compass.north) {
  case North::Magnetic:
    return dialReading(toMagnetic(bearing, field.declination).angle(), compass);
  case North::True:
    return dialReading(bearing.angle(), compass);
  case North::Grid:
    return dialReading(grid.angle(), compass);
  }
  return std::nullopt;
}

} // namespace brushline
