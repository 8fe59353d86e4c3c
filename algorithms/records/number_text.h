// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <variant>

namespace brushline {

//! Why something written down in the field is not what it should be.
enum class TextFault {
  Empty,
  Unreadable,
  Negative,
  Zero,          //!< nothing to walk
  Thousands,     //!< "1,200" and "1.200" are 1200 to some and 1.2 to others
  BeyondCircle,  //!< more than the full circle
  BeyondQuarter, //!< more than a quarter in a bearing such as N 42 E
  BeyondSixty,   //!< 60 or more minutes or seconds
  NeedsUnit,     //!< "N 42 E" beside a dial that is not in degrees
};

//! A number as it was written.
struct WrittenNumber {
  std::string digits;   //!< before the decimal sign, leading zeros kept
  double fraction = 0;  //!< after it, [0, 1)
  bool decimal = false; //!< has a decimal sign
  bool grouped = false; //!< might as well be thousands: "1.250", one digit but 0, a point, three digits

  //! 15 digits and fewer are exact.
  double value() const;
};

/**
 * What people write in one spelling: ASCII, capitals, no space at the ends, single spaces within.
 *
 * Degree signs (also the ordinal sign and the ring, which keyboards offer in its place) become '*', typographic and
 * doubled marks of minutes and seconds ' and ", dashes and the minus sign -, special spaces plain ones. Other signs
 * beyond ASCII become '?', which nothing reads.
 */
std::string plainSpelling(std::string_view utf8);

/**
 * Takes a number off the front of a text: digits, and a point or a comma with digits. No sign, no exponent, no
 * grouping.
 *
 * \returns the fault Unreadable when there is none; Thousands for a comma with exactly three digits after it, unless
 * nothing but 0 stands before it.
 */
std::variant<WrittenNumber, TextFault> takeNumber(std::string_view &text);

//! Takes spaces off the front.
void skipSpaces(std::string_view &text);

//! What an amount counts.
enum class AmountKind { Paces, Metres };

/**
 * An amount of paces ("62", "62,5", "62 paces") or of metres ("47.5", "47,5 m", "0.12 km").
 *
 * "1.250" paces or metres are the fault Thousands, as "1,250" are: 1250 where points stand between thousands. "12.500"
 * is 12.5, since no leg has twelve thousand; nor are 1.250 km 1250 km.
 *
 * \returns more than 0, or why not. "steps" is no unit here: some count every second one.
 */
std::variant<double, TextFault> readAmount(std::string_view utf8, AmountKind kind);

} // namespace brushline
