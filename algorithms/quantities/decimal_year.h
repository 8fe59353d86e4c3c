// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

namespace brushline {

//! A day of the Gregorian calendar: year, month 1..12, day 1..31.
struct CalendarDate {
  int year = 0;
  int month = 0;
  int day = 0;
};

//! A moment as a year with its fraction, the argument of the magnetic models.
class DecimalYear {
public:
  constexpr explicit DecimalYear(double value) : mValue(value) {}

  /**
   * The decimal year of the start of a day.
   *
   * \param date a day of the Gregorian calendar; before 14 September 1752 GeographicLib takes the Julian one.
   * \returns year + (day of the year - 1) / (365, or 366 in a leap year); 1 January gives the whole year.
   * \throws std::invalid_argument for a day that the calendar does not have.
   *
   * Rule: MIL-PRF-89500B, section 3.2; summed by GeographicLib.
   */
  static DecimalYear of(CalendarDate date);

  constexpr double value() const { return mValue; }

private:
  double mValue;
};

} // namespace brushline
