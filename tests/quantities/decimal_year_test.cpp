// SPDX-License-Identifier: GPL-2.0-or-later
#include "quantities/decimal_year.h"

#include "support/check_values.h"
#include "support/near.h"

#include <stdexcept>

using namespace brushline;
using namespace brushline::test;

class DecimalYearTest : public QObject {
  Q_OBJECT
private slots:
  void checkValues();
  void everyDay();
};

void DecimalYearTest::checkValues() {
  const CheckValues values("quantities/data/decimal_year.csv");
  int good = 0, bad = 0, published = 0;
  for (const CheckRow &row : values.rows()) {
    const std::string where = "line " + std::to_string(row.line());
    const CalendarDate date{int(row.number("year")), int(row.number("month")), int(row.number("day"))};
    if (row.text("expect") == "error") {
      std::string answer = "ok";
      try {
        DecimalYear::of(date);
      } catch (const std::invalid_argument &) {
        answer = "error";
      }
      VERIFY_CHECK(values.check(row, "expect", answer));
      ++bad;
      continue;
    }
    VERIFY_AT(row.text("expect") == "ok", where);
    const double year = DecimalYear::of(date).value();
    VERIFY_CHECK(values.check(row, "decimal_year", year));
    if (row.maybe("published_decimal_year")) {
      VERIFY_CHECK(values.check(row, "published_decimal_year", year));
      ++published;
    }
    ++good;
  }
  QVERIFY(good > 0 && bad > 0 && published > 0);
}

// Every day of 1900 to 2100: equal steps, 1 January whole, leap years by the Gregorian rule (4, not 100, but 400).
void DecimalYearTest::everyDay() {
  const int days[] = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
  for (int year = 1900; year <= 2100; ++year) {
    const bool leap = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
    int passed = 0;
    for (int month = 1; month <= 12; ++month) {
      const int last = days[month - 1] + (leap && month == 2 ? 1 : 0);
      for (int day = 1; day <= last; ++day, ++passed)
        VERIFY_NEAR(DecimalYear::of({year, month, day}).value(), year + passed / (leap ? 366.0 : 365.0), 1e-12,
                    std::to_string(year) + "-" + std::to_string(month) + "-" + std::to_string(day));
      QVERIFY_EXCEPTION_THROWN(DecimalYear::of({year, month, last + 1}), std::invalid_argument);
    }
    QCOMPARE(passed, leap ? 366 : 365);
  }
}

QTEST_APPLESS_MAIN(DecimalYearTest)
#include "decimal_year_test.moc"
