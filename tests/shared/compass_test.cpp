// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/compass.h"

#include "support/comma_locale.h"
#include "support/near.h"

#include <algorithm>
#include <set>
#include <sstream>

using namespace brushline;
using namespace brushline::test;

class CompassTest : public QObject {
  Q_OBJECT
private slots:
  void circles();
  void usualWithinLimits();
  void readings_data();
  void readings();
  void sweep_data();
  void sweep();
  void lastGraduationOfEveryStep();
  void texts_data();
  void texts();
  void textInAnotherLocale();
  void points();
};

namespace {
Compass compassWith(DialUnit unit, double step) {
  Compass compass;
  compass.unit = unit;
  compass.step = step;
  return compass;
}
} // namespace

// By definition: 360 degrees, 6400 mils (the mil of NATO compasses), 400 gon.
void CompassTest::circles() {
  QVERIFY(fullCircle(DialUnit::Degrees) == 360);
  QVERIFY(fullCircle(DialUnit::Mils) == 6400);
  QVERIFY(fullCircle(DialUnit::Gon) == 400);
  QVERIFY(coarsestStep(DialUnit::Degrees) == 45);
  QVERIFY(coarsestStep(DialUnit::Mils) == 800);
  QVERIFY(coarsestStep(DialUnit::Gon) == 50);
  QVERIFY(dialBearing(90, DialUnit::Degrees).degrees() == 90);
  QVERIFY(dialBearing(1600, DialUnit::Mils).degrees() == 90);
  QVERIFY(dialBearing(100, DialUnit::Gon).degrees() == 90);
}

void CompassTest::usualWithinLimits() {
  const Compass compass;
  QVERIFY(Compass::stepLimits.contains(compass.step));
  QVERIFY(Compass::errorLimits.contains(compass.bearing_error.degrees()));
}

// Computed by hand; halves up: common practice, no source.
void CompassTest::readings_data() {
  QTest::addColumn<int>("unit");
  QTest::addColumn<double>("step");
  QTest::addColumn<double>("bearing");
  QTest::addColumn<double>("expected");
  const int degrees = int(DialUnit::Degrees), mils = int(DialUnit::Mils), gon = int(DialUnit::Gon);
  QTest::newRow("nearest, down") << degrees << 2.0 << 42.9 << 42.0;
  QTest::newRow("nearest, up") << degrees << 2.0 << 43.1 << 44.0;
  QTest::newRow("half up") << degrees << 2.0 << 43.0 << 44.0;
  QTest::newRow("half up at 1") << degrees << 1.0 << 0.5 << 1.0;
  QTest::newRow("half up to a full circle is 0") << degrees << 2.0 << 359.0 << 0.0;
  QTest::newRow("just under the half") << degrees << 2.0 << 358.9999 << 358.0;
  QTest::newRow("nearly a full circle") << degrees << 1.0 << 359.999999 << 0.0;
  QTest::newRow("a full circle") << degrees << 1.0 << 360.0 << 0.0;
  QTest::newRow("another turn") << degrees << 5.0 << 722.0 << 0.0;
  QTest::newRow("another turn back") << degrees << 5.0 << -3.0 << 355.0;
  QTest::newRow("a hair under north") << degrees << 2.0 << -1e-20 << 0.0;
  QTest::newRow("half degrees") << degrees << 0.5 << 42.3 << 42.5;
  QTest::newRow("7 does not divide the circle: last graduation") << degrees << 7.0 << 357.0 << 357.0;
  QTest::newRow("7: under the middle of the short gap") << degrees << 7.0 << 358.4 << 357.0;
  QTest::newRow("7: over the middle of the short gap") << degrees << 7.0 << 358.6 << 0.0;
  QTest::newRow("7: half up in the short gap") << degrees << 7.0 << 358.5 << 0.0;
  QTest::newRow("42 degrees are 746.67 mils") << mils << 1.0 << 42.0 << 747.0;
  QTest::newRow("20 mil") << mils << 20.0 << 42.0 << 740.0;
  QTest::newRow("20 mil, half up: 10 mils are 0.5625 degrees") << mils << 20.0 << 0.5625 << 20.0;
  QTest::newRow("20 mil, full circle") << mils << 20.0 << 359.5 << 0.0;
  QTest::newRow("42 degrees are 46.67 gon") << gon << 1.0 << 42.0 << 47.0;
  QTest::newRow("gon, full circle: 0.5 gon are 0.45 degrees") << gon << 1.0 << 359.6 << 0.0;
  QTest::newRow("a step wider than the circle leaves 0 only") << degrees << 800.0 << 123.0 << 0.0;
}

void CompassTest::readings() {
  QFETCH(int, unit);
  QFETCH(double, step);
  QFETCH(double, bearing);
  QFETCH(double, expected);
  QVERIFY(dialReading(Angle::degrees(bearing), compassWith(DialUnit(unit), step)) == expected);
}

void CompassTest::sweep_data() {
  QTest::addColumn<int>("unit");
  QTest::addColumn<double>("step");
  for (int unit : {0, 1, 2})
    for (double step : {0.1, 0.5, 1.0, 2.0, 2.5, 5.0, 7.0, 20.0})
      QTest::addRow("unit %d step %g", unit, step) << unit << step;
}

// Every hundredth of a degree, twice round: a multiple of the step, in the circle, and no graduation is nearer.
void CompassTest::sweep() {
  QFETCH(int, unit);
  QFETCH(double, step);
  const Compass compass = compassWith(DialUnit(unit), step);
  const double full = fullCircle(compass.unit);
  const int graduations = int(std::ceil(full / step - 1e-9));
  std::set<long> seen;
  for (int hundredth = -36000; hundredth < 36000; ++hundredth) {
    const double bearing = hundredth / 100.0;
    const double exact = (hundredth + 36000) % 36000 / 36000.0 * full;
    const double reading = dialReading(Angle::degrees(bearing), compass);
    VERIFY_AT(reading >= 0 && reading < full, std::to_string(bearing));
    const double multiple = reading / step;
    VERIFY_NEAR(multiple, std::round(multiple), 1e-9, std::to_string(bearing));
    seen.insert(std::lround(multiple));
    // The graduations to either side, and 0 from below.
    const auto apart = [&](double other) { return std::abs(std::remainder(exact - other, full)); };
    const double below = std::floor(exact / step) * step;
    const double nearest =
        std::min({apart(below), apart(std::min(below + step, full)), apart(std::max(below - step, 0.0))});
    VERIFY_NEAR(apart(reading), nearest, 1e-9, std::to_string(bearing));
    VERIFY_AT(apart(reading) <= step / 2 + 1e-9, std::to_string(bearing));
    // What the dial says is where it points.
    VERIFY_NEAR(turnBetween(dialBearing(reading, compass.unit).degrees(), bearing), apart(reading) * 360 / full, 1e-9,
                std::to_string(bearing));
  }
  if (step * 100 >= full / 360) // finer graduations lie between the bearings tried
    QCOMPARE(int(seen.size()), graduations);
}

// Every step of two decimals: where it divides the circle, the graduation at the full circle is 0, not a hair less.
void CompassTest::lastGraduationOfEveryStep() {
  for (int unit : {0, 1, 2})
    for (int hundredths = 1; hundredths <= 80000; ++hundredths) {
      const Compass compass = compassWith(DialUnit(unit), hundredths / 100.0);
      const double full = fullCircle(compass.unit);
      const int circle = int(full) * 100;
      const double almost = dialReading(Angle::degrees(std::nextafter(360.0, 0.0)), compass);
      VERIFY_AT(almost == 0, std::to_string(compass.step));
      // One step before the last gap's end: the last graduation itself.
      const int last = (circle - 1) / hundredths * hundredths;
      const double reading = dialReading(Angle::degrees(last * 360.0 / circle), compass);
      VERIFY_NEAR(reading, last / 100.0, 1e-9, std::to_string(compass.step));
    }
}

// The first three are the samples of the interface; the others computed by hand.
void CompassTest::texts_data() {
  QTest::addColumn<int>("unit");
  QTest::addColumn<double>("step");
  QTest::addColumn<double>("reading");
  QTest::addColumn<QString>("expected");
  const int degrees = int(DialUnit::Degrees), mils = int(DialUnit::Mils), gon = int(DialUnit::Gon);
  QTest::newRow("degrees") << degrees << 2.0 << 42.0 << QStringLiteral("042°");
  QTest::newRow("mils") << mils << 1.0 << 747.0 << QStringLiteral("0747 mil");
  QTest::newRow("gon") << gon << 1.0 << 47.0 << QStringLiteral("047 gon");
  QTest::newRow("north") << degrees << 1.0 << 0.0 << QStringLiteral("000°");
  QTest::newRow("north in mils") << mils << 20.0 << 0.0 << QStringLiteral("0000 mil");
  QTest::newRow("three digits") << degrees << 1.0 << 359.0 << QStringLiteral("359°");
  QTest::newRow("four digits") << mils << 20.0 << 6380.0 << QStringLiteral("6380 mil");
  QTest::newRow("half degrees") << degrees << 0.5 << 7.0 << QStringLiteral("007.0°");
  QTest::newRow("tenths") << degrees << 0.1 << 0.30000000000000004 << QStringLiteral("000.3°");
  QTest::newRow("tenths from below") << degrees << 0.1 << 359.90000000000003 << QStringLiteral("359.9°");
  QTest::newRow("quarters") << degrees << 0.25 << 42.25 << QStringLiteral("042.25°");
  QTest::newRow("hundredths, a zero after the point") << gon << 0.01 << 47.05 << QStringLiteral("047.05 gon");
  QTest::newRow("two and a half") << gon << 2.5 << 397.5 << QStringLiteral("397.5 gon");
  QTest::newRow("two decimals at most") << degrees << 0.125 << 0.125 << QStringLiteral("000.13°");
  QTest::newRow("a full circle is never shown") << degrees << 1.0 << 359.99 << QStringLiteral("000°");
  QTest::newRow("nor in mils") << mils << 1.0 << 6399.9 << QStringLiteral("0000 mil");
  QTest::newRow("nor in tenths") << gon << 0.1 << 399.99 << QStringLiteral("000.0 gon");
}

void CompassTest::texts() {
  QFETCH(int, unit);
  QFETCH(double, step);
  QFETCH(double, reading);
  QFETCH(QString, expected);
  QCOMPARE(QString::fromStdString(dialText(reading, compassWith(DialUnit(unit), step))), expected);
}

void CompassTest::textInAnotherLocale() {
  const CommaLocale comma;
  std::ostringstream control;
  control << 1234.5;
  QCOMPARE(control.str(), std::string("1.234,5")); // the locale does change what streams write
  QCOMPARE(dialText(42.5, compassWith(DialUnit::Degrees, 0.5)), std::string("042.5\u00b0"));
  QCOMPARE(dialText(1234, compassWith(DialUnit::Mils, 1)), std::string("1234 mil"));
  QVERIFY(dialReading(Angle::degrees(42.3), compassWith(DialUnit::Degrees, 0.5)) == 42.5);
}

// By definition: sixteen points of 22.5 degrees; the border belongs to the point further clockwise.
void CompassTest::points() {
  const char *names[] = {"N", "NNE", "NE", "ENE", "E", "ESE", "SE", "SSE",
                         "S", "SSW", "SW", "WSW", "W", "WNW", "NW", "NNW"};
  for (int i = 0; i < 16; ++i)
    for (double turn : {0.0, 360.0, -720.0}) {
      const double middle = i * 22.5 + turn;
      QCOMPARE(compassPoint(Angle::degrees(middle)), names[i]);
      QCOMPARE(compassPoint(Angle::degrees(middle - 11.25)), names[i]);
      QCOMPARE(compassPoint(Angle::degrees(middle + 11.249)), names[i]);
      QCOMPARE(compassPoint(Angle::degrees(middle + 11.25)), names[(i + 1) % 16]);
      QCOMPARE(compassPoint(Angle::degrees(middle - 11.251)), names[(i + 15) % 16]);
    }
}

QTEST_APPLESS_MAIN(CompassTest)
#include "compass_test.moc"
