// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/compass.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace brushline {

double fullCircle(DialUnit unit) {
  switch (unit) {
  case DialUnit::Degrees:
    return 360;
  case DialUnit::Mils:
    return 6400;
  case DialUnit::Gon:
    return 400;
  }
  return 360;
}

double coarsestStep(DialUnit unit) { return fullCircle(unit) * Compass::coarsestShare; }

double dialReading(Angle bearing, const Compass &compass) {
  const double full = fullCircle(compass.unit);
  const double exact = bearing.fullCircle().degrees() * (full / 360.0);
  const double count = std::floor(exact / compass.step);
  const double below = count * compass.step;
  const double above = std::min((count + 1) * compass.step, full);
  const double nearest = exact - below < above - exact ? below : above;
  return nearest >= full ? 0 : nearest;
}

Angle dialBearing(double reading, DialUnit unit) { return Angle::degrees(reading * (360.0 / fullCircle(unit))); }

std::string dialText(double reading, const Compass &compass) {
  int decimals = 0;
  double scaled = compass.step;
  while (decimals < 2 && std::abs(scaled - std::round(scaled)) > 1e-9) {
    scaled *= 10;
    ++decimals;
  }
  const long scale = decimals == 0 ? 1 : decimals == 1 ? 10 : 100;
  long value = std::lround(reading * double(scale));
  if (value >= std::lround(fullCircle(compass.unit)) * scale)
    value = 0;
  std::string whole = std::to_string(value / scale);
  const size_t width = compass.unit == DialUnit::Mils ? 4 : 3;
  whole.insert(0, width - std::min(width, whole.size()), '0');
  if (decimals > 0) {
    std::string fraction = std::to_string(value % scale);
    fraction.insert(0, size_t(decimals) - fraction.size(), '0');
    whole += "." + fraction;
  }
  switch (compass.unit) {
  case DialUnit::Degrees:
    return whole + "\u00b0";
  case DialUnit::Mils:
    return whole + " mil";
  case DialUnit::Gon:
    return whole + " gon";
  }
  return whole;
}

const char *compassPoint(Angle bearing) {
  static constexpr std::array<const char *, 16> points = {"N", "NNE", "NE", "ENE", "E", "ESE", "SE", "SSE",
                                                          "S", "SSW", "SW", "WSW", "W", "WNW", "NW", "NNW"};
  return points[size_t(std::floor(bearing.fullCircle().degrees() / 22.5 + 0.5)) % 16];
}

} // namespace brushline
