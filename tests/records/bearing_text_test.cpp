// SPDX-License-Identifier: GPL-2.0-or-later
// Values are reckoned by hand beside each case; the forms are common practice, no source.
#include "records/bearing_text.h"
#include "support/check_values.h"
#include "support/comma_locale.h"
#include "support/near.h"
#include "support/random.h"

#include <set>

using namespace brushline;
using namespace brushline::test;

namespace {
constexpr DialUnit deg = DialUnit::Degrees, mil = DialUnit::Mils, gon = DialUnit::Gon;

double degreesOf(const char *text, DialUnit unit = deg) {
  const auto reading = readBearing(text, unit);
  return std::holds_alternative<WrittenBearing>(reading) ? std::get<WrittenBearing>(reading).angle.degrees() : -1;
}

std::set<long> swappedOf(const char *text, DialUnit unit = deg) {
  std::set<long> result;
  const auto reading = readBearing(text, unit);
  for (const Angle angle : std::get<WrittenBearing>(reading).swapped)
    result.insert(std::lround(angle.degrees() * 100));
  return result;
}
} // namespace

class BearingTextTest : public QObject {
  Q_OBJECT
private slots:
  void accepted() {
    const std::tuple<const char *, DialUnit, double> all[] = {
        {"42", deg, 42},
        {"042", deg, 42},
        {" 042 ", deg, 42},
        {"0", deg, 0},
        {"000", deg, 0},
        {"359.9", deg, 359.9},
        {"42\u00b0", deg, 42},
        {"42 \u00b0", deg, 42},
        {"42\u00ba", deg, 42},
        {"42 deg", deg, 42},
        {"42Degrees", mil, 42},
        {"42.5", deg, 42.5},
        {"42,5", deg, 42.5},
        {"42,5\u00b0", gon, 42.5},
        {"0.125", deg, 0.125},
        // a full circle is north
        {"360", deg, 0},
        {"6400", mil, 0},
        {"400", gon, 0},
        {"360\u00b0", mil, 0},
        {"6400 mil", deg, 0},
        // units: 800 mils and 50 gon are 45 degrees
        {"800", mil, 45},
        {"0800 mil", deg, 45},
        {"800MILS", gon, 45},
        {"50", gon, 45},
        {"050 gon", deg, 45},
        {"0747 mil", deg, 747 * 0.05625},
        {"47 gon", mil, 42.3},
        // minutes and seconds
        {"42\u00b030'", deg, 42.5},
        {"42\u00b0 30\u2032", mil, 42.5},
        {"42\u00b030'36\"", deg, 42.51},
        {"68\u00b005'35.5''", deg, 68 + 5 / 60.0 + 35.5 / 3600},
        {"42\u00b07.5'", deg, 42.125},
        // quadrants
        {"N 42 E", deg, 42},
        {"n42e", deg, 42},
        {"S 42 E", deg, 138},
        {"S10W", deg, 190},
        {"N 10 W", deg, 350},
        {"N 0 W", deg, 0},
        {"N 90 E", deg, 90},
        {"S 90 W", deg, 270},
        {"S0E", deg, 180},
        {"N 42,5 E", deg, 42.5},
        {"N 42\u00b0 E", mil, 42},
        {"N 800 mil E", mil, 45},
        {"S 50 gon W", gon, 225},
        {"N 42 deg E", gon, 42},
        {"S68\u00b005'35\"W", deg, 180 + 68 + 5 / 60.0 + 35 / 3600.0},
        {"S68-05-35W", deg, 180 + 68 + 5 / 60.0 + 35 / 3600.0},
        {"N 45-55-20.7 E", deg, 45 + 55 / 60.0 + 20.7 / 3600},
        {"N19\u201346W", deg, 360 - 19 - 46 / 60.0},
        // points of the compass
        {"N", deg, 0},
        {"ne", deg, 45},
        {"E", mil, 90},
        {"NNE", gon, 22.5},
        {"WSW", deg, 247.5},
        {"NNW", deg, 337.5},
        {"n e", deg, 45},
        {"N-E", deg, 45},
        {"NE by N", deg, 33.75},
        {"NEbN", deg, 33.75},
        {"N by W", deg, 348.75},
        {"SbE", deg, 168.75}};
    const CommaLocale locale;
    for (const auto &[text, unit, expected] : all) {
      const auto reading = readBearing(text, unit);
      VERIFY_AT(std::holds_alternative<WrittenBearing>(reading), text);
      VERIFY_NEAR(std::get<WrittenBearing>(reading).angle.degrees(), expected, 1e-12 * 360, text);
    }
  }

  void refused() {
    const std::tuple<const char *, DialUnit, TextFault> all[] = {{"", deg, TextFault::Empty},
                                                                 {"  ", deg, TextFault::Empty},
                                                                 {"\u00a0", deg, TextFault::Empty},
                                                                 {"361", deg, TextFault::BeyondCircle},
                                                                 {"360.001", deg, TextFault::BeyondCircle},
                                                                 {"6401", mil, TextFault::BeyondCircle},
                                                                 {"401", gon, TextFault::BeyondCircle},
                                                                 {"747", deg, TextFault::BeyondCircle},
                                                                 {"401 gon", deg, TextFault::BeyondCircle},
                                                                 {"-5", deg, TextFault::Negative},
                                                                 {"\u22125", deg, TextFault::Negative},
                                                                 {"-0", deg, TextFault::Negative},
                                                                 {"N -42 E", deg, TextFault::Negative},
                                                                 {"N 91 E", deg, TextFault::BeyondQuarter},
                                                                 {"N 1601 mil E", deg, TextFault::BeyondQuarter},
                                                                 {"S90-00-01W", deg, TextFault::BeyondQuarter},
                                                                 {"N 42 E", mil, TextFault::NeedsUnit},
                                                                 {"N 42 E", gon, TextFault::NeedsUnit},
                                                                 {"42\u00b060'", deg, TextFault::BeyondSixty},
                                                                 {"42\u00b030'60\"", deg, TextFault::BeyondSixty},
                                                                 {"S68-60-00W", deg, TextFault::BeyondSixty},
                                                                 {"1,600", mil, TextFault::Thousands},
                                                                 {"1,600 mil", deg, TextFault::Thousands},
                                                                 {"1.600", mil, TextFault::Thousands},
                                                                 {"1.600 mil", deg, TextFault::Thousands},
                                                                 {"N 1.600 mil E", deg, TextFault::Thousands},
                                                                 {"north", deg, TextFault::Unreadable},
                                                                 {"forty-two", deg, TextFault::Unreadable},
                                                                 {"North 42 East", deg, TextFault::Unreadable},
                                                                 {"NO", deg, TextFault::Unreadable},
                                                                 {"O", deg, TextFault::Unreadable},
                                                                 {"NEN", deg, TextFault::Unreadable},
                                                                 {"NS", deg, TextFault::Unreadable},
                                                                 {"E 10 S", deg, TextFault::Unreadable},
                                                                 {"42 E", deg, TextFault::Unreadable},
                                                                 {"N 42", deg, TextFault::Unreadable},
                                                                 {"42 Grad", deg, TextFault::Unreadable},
                                                                 {"42 g", deg, TextFault::Unreadable},
                                                                 {"42 rad", deg, TextFault::Unreadable},
                                                                 {"310/130", deg, TextFault::Unreadable},
                                                                 {"310-130", deg, TextFault::Unreadable},
                                                                 {"042-24", deg, TextFault::Unreadable},
                                                                 {"42 30", deg, TextFault::Unreadable},
                                                                 {"N 42 30 E", deg, TextFault::Unreadable},
                                                                 {"42\u00b030", deg, TextFault::Unreadable},
                                                                 {"42\u00b030\"", deg, TextFault::Unreadable},
                                                                 {"42.5\u00b030'", deg, TextFault::Unreadable},
                                                                 {"42\u00b030.5'10\"", deg, TextFault::Unreadable},
                                                                 {"S68-05-35-10W", deg, TextFault::Unreadable},
                                                                 {"S68-W", deg, TextFault::Unreadable},
                                                                 {"+42", deg, TextFault::Unreadable},
                                                                 {"4e1", deg, TextFault::Unreadable},
                                                                 {"nan", deg, TextFault::Unreadable},
                                                                 {"042?", deg, TextFault::Unreadable},
                                                                 {"~42", deg, TextFault::Unreadable},
                                                                 {"42.", deg, TextFault::Unreadable},
                                                                 {".5", deg, TextFault::Unreadable},
                                                                 {"42\u00b0N", deg, TextFault::Unreadable},
                                                                 {"NE 42", deg, TextFault::Unreadable},
                                                                 {"N E 42 E", deg, TextFault::Unreadable},
                                                                 {"?", deg, TextFault::Unreadable},
                                                                 {"N\u00c9", deg, TextFault::Unreadable}};
    for (const auto &[text, unit, fault] : all) {
      const auto reading = readBearing(text, unit);
      VERIFY_AT(std::holds_alternative<TextFault>(reading), text);
      VERIFY_AT(std::get<TextFault>(reading) == fault, text);
    }
  }

  // The quadrant bearings of a published loop.
  void publishedQuadrants() {
    const CheckValues loop("records/data/compass_rule_loop.csv");
    for (const CheckRow &row : loop.rows()) {
      VERIFY_CHECK(loop.check(row, "bearing_deg", degreesOf(row.text("bearing").c_str())));
      VERIFY_AT(degreesOf(row.text("printed_adj_bearing").c_str()) >= 0, row.text("course"));
    }
  }

  void allPointsStandInOrder() {
    static const char *const names[] = {
        "N", "NbE", "NNE", "NEbN", "NE", "NEbE", "ENE", "EbN", "E", "EbS", "ESE", "SEbE", "SE", "SEbS", "SSE", "SbE",
        "S", "SbW", "SSW", "SWbS", "SW", "SWbW", "WSW", "WbS", "W", "WbN", "WNW", "NWbW", "NW", "NWbN", "NNW", "NbW"};
    for (int i = 0; i < 32; ++i) {
      VERIFY_NEAR(degreesOf(names[i]), i * 11.25, 0, names[i]);
      const double coarse = std::get<WrittenBearing>(readBearing(names[i], deg)).coarseness.degrees();
      VERIFY_NEAR(coarse, i % 2 ? 11.25 : 22.5, 0, names[i]);
      if (i % 2 == 0)
        QCOMPARE(std::string(names[i]), std::string(compassPoint(Angle::degrees(i * 11.25))));
    }
  }

  // Whatever a dial's text says is read back, in each unit.
  void dialTextsAreReadBack() {
    Random random(11);
    for (const DialUnit unit : {deg, mil, gon})
      for (const double step : {0.01, 0.5, 1.0, 2.0, 5.0})
        for (int i = 0; i < 500; ++i) {
          Compass compass;
          compass.unit = unit;
          compass.step = step;
          const double dial = dialReading(Angle::degrees(random.between(0, 360)), compass);
          const std::string text = dialText(dial, compass);
          for (const DialUnit other : {deg, mil, gon}) {
            const auto reading = readBearing(text, other);
            VERIFY_AT(std::holds_alternative<WrittenBearing>(reading), text);
            VERIFY_NEAR(
                turnBetween(std::get<WrittenBearing>(reading).angle.degrees(), dialBearing(dial, unit).degrees()), 0,
                1e-9, text);
          }
        }
  }

  void swappedDigits() {
    using Set = std::set<long>;                     // hundredths of a degree
    QCOMPARE(swappedOf("042"), (Set{2400, 24000})); // 402 is none
    QCOMPARE(swappedOf("42"), (Set{2400, 24000}));
    QCOMPARE(swappedOf("310"), (Set{13000, 1300, 30100}));
    QCOMPARE(swappedOf("042.5"), (Set{2450, 24050}));
    QCOMPARE(swappedOf("S 24 W"), (Set{22200}));
    QCOMPARE(swappedOf("S 49 W"), Set{});            // 94 is more than a quarter
    QCOMPARE(swappedOf("100", gon), (Set{900, 90})); // 10 gon, 1 gon
    QCOMPARE(swappedOf("NE"), Set{});
    QCOMPARE(swappedOf("111"), Set{});
    QCOMPARE(swappedOf("0800", mil).size(), size_t(2)); // 0080, 0008
  }
};

QTEST_GUILESS_MAIN(BearingTextTest)
#include "bearing_text_test.moc"
