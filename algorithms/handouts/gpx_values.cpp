// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/gpx_values.h"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace brushline {

namespace {

// With so many decimals, less the zeros at the end.
std::string trimmed(double value, int decimals) {
  std::string text = roundedNumber(value, decimals);
  text.erase(text.find_last_not_of('0') + 1);
  if (text.back() == '.')
    text.pop_back();
  return text;
}

} // namespace

std::string shortestNumber(double value) {
  if (!std::isfinite(value))
    return std::string();
  char digits[32];
  return std::string(digits, std::to_chars(digits, digits + sizeof digits, value + 0.0).ptr); // -0 + 0 is 0
}

std::string roundedNumber(double value, int decimals) {
  if (!std::isfinite(value))
    return std::string();
  char digits[400]; // the greatest number has 309 before the point
  const char *const end =
      std::to_chars(digits, digits + sizeof digits, value, std::chars_format::fixed, std::min(decimals, 60)).ptr;
  const char *start = digits;
  if (*start == '-' && std::all_of(start + 1, end, [](char c) { return c == '0' || c == '.'; }))
    ++start;
  return std::string(start, end);
}

std::string gpxLatitude(Angle latitude) { return trimmed(latitude.degrees(), 9); }

std::string gpxLongitude(Angle longitude) {
  std::string text = trimmed(longitude.signedTurn().degrees(), 9);
  return text == "180" ? "-180" : text;
}

std::string gpxMagneticVariation(Declination declination) {
  std::string text = trimmed(declination.east.fullCircle().degrees(), 6);
  return text == "360" ? "0" : text;
}

void GpxBounds::add(const Place &place) {
  const double latitude = place.latitude.degrees();
  double longitude = place.longitude.signedTurn().degrees();
  if (longitude >= 180 - 0.5e-9) // is written as -180
    longitude = -180;
  mSouth = std::min(mSouth, latitude);
  mNorth = std::max(mNorth, latitude);
  mWest = std::min(mWest, longitude);
  mEast = std::max(mEast, longitude);
}

std::string letterOf(size_t index) {
  std::string letters;
  for (++index; index > 0; index = (index - 1) / 26)
    letters.insert(letters.begin(), char('A' + (index - 1) % 26));
  return letters;
}

} // namespace brushline
