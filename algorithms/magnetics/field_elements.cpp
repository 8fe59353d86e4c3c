// SPDX-License-Identifier: GPL-2.0-or-later
#include "magnetics/field_elements.h"

#include <cmath>

namespace brushline {

double FieldVector::horizontal() const { return std::hypot(north, east); }

double FieldVector::total() const { return std::hypot(north, east, down); }

Declination FieldVector::declination() const { return {Angle::radians(std::atan2(east, north))}; }

Angle FieldVector::inclination() const { return Angle::radians(std::atan2(down, horizontal())); }

Angle declinationChange(const FieldVector &field, const FieldVector &changePerYear) {
  const double squared = field.north * field.north + field.east * field.east;
  return Angle::radians((field.north * changePerYear.east - field.east * changePerYear.north) / squared);
}

CompassZone compassZone(double horizontal_nt) {
  if (horizontal_nt < blackoutBelow)
    return CompassZone::Blackout;
  return horizontal_nt < cautionBelow ? CompassZone::Caution : CompassZone::Reliable;
}

const char *zoneWord(CompassZone zone) {
  switch (zone) {
  case CompassZone::Reliable:
    return "reliable";
  case CompassZone::Caution:
    return "caution";
  case CompassZone::Blackout:
    return "blackout";
  }
  return "";
}

Angle DeclinationErrorModel::at(double horizontal_nt) const {
  return Angle::degrees(std::hypot(floor_degrees, per_horizontal / horizontal_nt));
}

} // namespace brushline
