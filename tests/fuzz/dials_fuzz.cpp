// SPDX-License-Identifier: GPL-2.0-or-later
// Numbers on dials, the norths they count from, angles, days, and how they are written.
#include "fuzz_land.h"

#include "handouts/gpx_values.h"
#include "handouts/possible_norths.h"
#include "magnetics/dial_setting.h"
#include "quantities/decimal_year.h"
#include "records/blunders.h"
#include "records/north_mix_up.h"

#include <stdexcept>

using namespace brushline;

namespace {

void angles(fuzz::Input &input) {
  const double degrees = input.any();
  const double whole = Angle::degrees(degrees).fullCircle().degrees();
  PROMISED(std::isfinite(degrees) ? fuzz::isBearing(whole) : std::isnan(whole));
  const double turn = Angle::degrees(degrees).signedTurn().degrees();
  PROMISED(std::isfinite(degrees) ? std::abs(turn) <= 180 : std::isnan(turn));

  const Compass compass = fuzz::compass(input);
  const double finite = input.finite();
  const double reading = dialReading(Angle::degrees(finite), compass);
  PROMISED(reading >= 0 && reading < fullCircle(compass.unit));
  PROMISED(!dialText(reading, compass).empty());
  PROMISED(fuzz::isBearing(dialBearing(reading, compass.unit).degrees()));
  PROMISED(compassPoint(Angle::degrees(finite))[0] != '\0');

  const TrueBearing bearing(Angle::degrees(input.between(0, 360)));
  const GridBearing grid(Angle::degrees(input.between(0, 360)));
  LocalField field{{Angle::degrees(input.between(-180, 180))}, {}, CompassZone::Reliable, 20000};
  field.zone = input.from({CompassZone::Reliable, CompassZone::Caution, CompassZone::Blackout});
  const auto setting = dialSetting(compass, bearing, grid, field);
  PROMISED(bool(setting) == (field.zone != CompassZone::Blackout));
  PROMISED(!setting || (*setting >= 0 && *setting < fullCircle(compass.unit)));
}

void norths(fuzz::Input &input) {
  Compass compass = fuzz::compass(input);
  compass.step = std::round(compass.step * 100) / 100; // numbers for the dial are told to a hundredth
  const double circle = fullCircle(compass.unit);
  const double declination = input.between(-180, 180), convergence = input.between(-30, 30);
  std::vector<DialWithBearings> dials;
  bool clean = true;
  for (size_t count = input.upTo(8); count > 0; --count) {
    const double truly = input.between(0, 359.999);
    std::array<double, 3> by{truly - declination, truly, truly - convergence};
    for (double &each : by)
      each = Angle::degrees(each).fullCircle().degrees();
    double dial = dialReading(Angle::degrees(by[size_t(compass.north)]), compass);
    if (input.upTo(7) == 0) { // what a table may hold that was not made here
      dial = input.any();
      clean = false;
    }
    dials.push_back({dial, {}, Angle::degrees(by[0]), Angle::degrees(by[1]), Angle::degrees(by[2])});
    if (input.flag())
      dials.back().back_dial = dialReading(Angle::degrees(by[size_t(compass.north)] + 180), compass);
  }
  const auto possible = possibleNorths(dials, circle);
  PROMISED(possible.size() <= 3);
  if (clean && !dials.empty() && compass.step <= coarsestStep(compass.unit))
    PROMISED(std::find(possible.begin(), possible.end(), compass.north) != possible.end());

  for (const CommonTurn &turn :
       commonTurns(compass.north, {Angle::degrees(declination)}, {Angle::degrees(convergence)}))
    PROMISED(std::isfinite(turn.clockwise.degrees()));
  std::optional<Convergence> known;
  if (input.flag())
    known = Convergence{Angle::degrees(convergence)};
  for (const Explanation &each : explain(Angle::degrees(input.between(-180, 180)),
                                         Angle::degrees(input.between(0, 180)), {Angle::degrees(declination)}, known))
    PROMISED(std::isfinite(each.error.degrees()));
}

void numbers(fuzz::Input &input) {
  const double value = input.any();
  const std::string shortest = shortestNumber(value);
  PROMISED(shortest.empty() == !std::isfinite(value));
  if (std::isfinite(value))
    PROMISED(std::strtod(shortest.c_str(), nullptr) == value);
  const int decimals = int(input.upTo(70));
  const std::string rounded = roundedNumber(value, decimals);
  PROMISED(rounded.empty() == !std::isfinite(value));
  PROMISED(rounded.find_first_not_of("-0.") != std::string::npos || rounded.find('-') == std::string::npos);

  GpxBounds bounds;
  for (size_t count = input.upTo(4); count > 0; --count) {
    const Place place{Angle::degrees(input.between(-90, 90)), Angle::degrees(input.finite())};
    bounds.add(place);
    const double longitude = std::strtod(gpxLongitude(place.longitude).c_str(), nullptr);
    PROMISED(longitude >= -180 && longitude < 180);
    const double latitude = std::strtod(gpxLatitude(place.latitude).c_str(), nullptr);
    PROMISED(latitude >= -90 && latitude <= 90);
    PROMISED(std::strtod(bounds.west().c_str(), nullptr) <= longitude &&
             longitude <= std::strtod(bounds.east().c_str(), nullptr));
    PROMISED(std::strtod(bounds.south().c_str(), nullptr) <= latitude &&
             latitude <= std::strtod(bounds.north().c_str(), nullptr));
  }
  const double variation = std::strtod(gpxMagneticVariation({Angle::degrees(input.finite())}).c_str(), nullptr);
  PROMISED(fuzz::isBearing(variation));
  for (const char c : letterOf(size_t(std::abs(input.between(0, 9e15)))))
    PROMISED(c >= 'A' && c <= 'Z');

  try {
    const CalendarDate date{int(input.between(-3000, 12000)), int(input.between(-2, 15)), int(input.between(-2, 40))};
    const double year = DecimalYear::of(date).value();
    PROMISED(year >= date.year && year < date.year + 1);
  } catch (const std::invalid_argument &) {
  }
}

} // namespace

FUZZ(input) {
  switch (input.upTo(2)) {
  case 0:
    return angles(input);
  case 1:
    return norths(input);
  default:
    numbers(input);
  }
}
