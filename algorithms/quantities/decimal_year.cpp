// SPDX-License-Identifier: GPL-2.0-or-later
#include "quantities/decimal_year.h"

#include <GeographicLib/Utility.hpp>

#include <stdexcept>

namespace brushline {

DecimalYear DecimalYear::of(CalendarDate date) {
  using GeographicLib::Utility;
  try {
    const int day = Utility::day(date.year, date.month, date.day, true);
    const int first = Utility::day(date.year, 1, 1);
    const int next = Utility::day(date.year + 1, 1, 1);
    return DecimalYear(date.year + double(day - first) / double(next - first));
  } catch (const GeographicLib::GeographicErr &error) {
    throw std::invalid_argument(error.what());
  }
}

} // namespace brushline
