// SPDX-License-Identifier: GPL-2.0-or-later
#include "records/bearing_text.h"

#include <algorithm>
#include <array>
#include <optional>
#include <utility>

namespace brushline {

namespace {

constexpr std::array<std::string_view, 32> points = {
    "N", "NBE", "NNE", "NEBN", "NE", "NEBE", "ENE", "EBN", "E", "EBS", "ESE", "SEBE", "SE", "SEBS", "SSE", "SBE",
    "S", "SBW", "SSW", "SWBS", "SW", "SWBW", "WSW", "WBS", "W", "WBN", "WNW", "NWBW", "NW", "NWBN", "NNW", "NBW"};
constexpr double pointStep = 360.0 / 32;

std::variant<WrittenBearing, TextFault> readPoint(std::string text) {
  for (size_t at = text.find("BY"); at != std::string::npos; at = text.find("BY"))
    text.replace(at, 2, "B");
  text.erase(std::remove_if(text.begin(), text.end(), [](char c) { return c == ' ' || c == '-'; }), text.end());
  const auto found = std::find(points.begin(), points.end(), text);
  if (found == points.end())
    return TextFault::Unreadable;
  const size_t number = size_t(found - points.begin());
  return WrittenBearing{
      Angle::degrees(pointStep * double(number)), Angle::degrees(number % 2 == 0 ? 2 * pointStep : pointStep), {}};
}

// An angle as written: a number in a unit, and minutes and seconds beside it.
struct Written {
  std::string digits;
  double rest = 0;              // beside the digits, in the unit
  std::optional<DialUnit> unit; // none: the writer says nothing
  bool grouped = false;         // might as well be thousands

  static double valueOf(const std::string &digits, double rest) { return WrittenNumber{digits, rest}.value(); }
};

// Minutes or seconds, and the mark that closes them; not last: whole ones.
std::variant<double, TextFault> takeSixtieth(std::string_view &text, bool &decimal) {
  if (decimal)
    return TextFault::Unreadable; // 42.5°30'
  skipSpaces(text);
  const auto taken = takeNumber(text);
  if (const auto *fault = std::get_if<TextFault>(&taken))
    return *fault;
  const auto &number = std::get<WrittenNumber>(taken);
  decimal = number.decimal;
  if (number.value() >= 60)
    return TextFault::BeyondSixty;
  return number.value();
}

std::variant<Written, TextFault> readAngle(std::string_view text, bool dashes) {
  skipSpaces(text);
  if (text.empty())
    return TextFault::Unreadable;
  if (text.front() == '-')
    return TextFault::Negative;
  const auto taken = takeNumber(text);
  if (const auto *fault = std::get_if<TextFault>(&taken))
    return *fault;
  const auto &number = std::get<WrittenNumber>(taken);
  Written result{number.digits, number.fraction, std::nullopt, number.grouped};
  bool decimal = number.decimal;
  const bool dashed = dashes && !text.empty() && text.front() == '-';
  skipSpaces(text);
  if (text.empty())
    return result;
  if (text == "MIL" || text == "MILS") {
    result.unit = DialUnit::Mils;
    return result;
  }
  if (text == "GON") {
    result.unit = DialUnit::Gon;
    return result;
  }
  result.unit = DialUnit::Degrees;
  if (text == "DEG" || text == "DEGREE" || text == "DEGREES")
    return result;
  if (!dashed && text.front() != '*')
    return TextFault::Unreadable;
  text.remove_prefix(1);
  skipSpaces(text);
  double part = 60;
  for (const char mark : {'\'', '"'}) {
    if (text.empty() && (!dashed || part > 60))
      return result;
    const auto sixtieths = takeSixtieth(text, decimal);
    if (const auto *fault = std::get_if<TextFault>(&sixtieths))
      return *fault;
    result.rest += std::get<double>(sixtieths) / part;
    part *= 60;
    if (!dashed) {
      skipSpaces(text);
      if (text.empty() || text.front() != mark)
        return TextFault::Unreadable;
      text.remove_prefix(1);
      skipSpaces(text);
    } else if (!text.empty()) {
      if (text.front() != '-' || part > 3600)
        return TextFault::Unreadable;
      text.remove_prefix(1);
    }
  }
  if (!text.empty())
    return TextFault::Unreadable;
  return result;
}

// A bearing is a start and a way to turn from it.
struct Frame {
  double base = 0; // degrees
  int sense = 1;
  bool quadrant = false;
};

std::variant<WrittenBearing, TextFault> place(const Written &written, const Frame &frame, DialUnit dial) {
  const DialUnit unit = written.unit.value_or(frame.quadrant ? DialUnit::Degrees : dial);
  if (unit == DialUnit::Mils && written.grouped)
    return TextFault::Thousands;
  const double most = fullCircle(unit) / (frame.quadrant ? 4 : 1);
  const auto inside = [&](double value) { return value <= most; };
  const auto angle = [&](double value) {
    return Angle::degrees(frame.base + frame.sense * dialBearing(value, unit).degrees()).fullCircle();
  };
  const double value = Written::valueOf(written.digits, written.rest);
  if (!inside(value))
    return frame.quadrant ? TextFault::BeyondQuarter : TextFault::BeyondCircle;
  WrittenBearing result{angle(value), Angle(), {}};

  // People write 042 or 42 and mean the same digits.
  std::string digits = written.digits;
  const size_t usual = frame.quadrant ? 2 : unit == DialUnit::Mils ? 4 : 3;
  digits.insert(0, usual - std::min(usual, digits.size()), '0');
  for (size_t i = 0; i < digits.size(); ++i)
    for (size_t j = i + 1; j < digits.size(); ++j) {
      if (digits[i] == digits[j])
        continue;
      std::string other = digits;
      std::swap(other[i], other[j]);
      if (const double swapped = Written::valueOf(other, written.rest); inside(swapped))
        result.swapped.push_back(angle(swapped));
    }
  return result;
}

} // namespace

std::variant<WrittenBearing, TextFault> readBearing(std::string_view utf8, DialUnit unit) {
  const std::string spelled = plainSpelling(utf8);
  std::string_view text(spelled);
  if (text.empty())
    return TextFault::Empty;
  if (spelled.find_first_of("0123456789") == std::string::npos)
    return readPoint(spelled);
  Frame frame;
  const char first = text.front(), last = text.back();
  if ((first == 'N' || first == 'S') && (last == 'E' || last == 'W')) {
    frame = {first == 'N' ? 0.0 : 180.0, (first == 'N') == (last == 'E') ? 1 : -1, true};
    text.remove_prefix(1);
    text.remove_suffix(1);
    while (!text.empty() && text.back() == ' ')
      text.remove_suffix(1);
  }
  const auto written = readAngle(text, frame.quadrant);
  if (const auto *fault = std::get_if<TextFault>(&written))
    return *fault;
  const auto &angle = std::get<Written>(written);
  if (frame.quadrant && !angle.unit && unit != DialUnit::Degrees)
    return TextFault::NeedsUnit;
  return place(angle, frame, unit);
}

} // namespace brushline
