// SPDX-License-Identifier: GPL-2.0-or-later
#include "quantities/angle.h"

#include "support/near.h"
#include "support/random.h"

#include <limits>
#include <type_traits>

using namespace brushline;
using namespace brushline::test;

static_assert(!std::is_convertible_v<double, Angle> && !std::is_convertible_v<Angle, double>,
              "a bare number is neither degrees nor radians");

class AngleTest : public QObject {
  Q_OBJECT
private slots:
  void units();
  void arithmetic();
  void fullCircleEdges_data();
  void fullCircleEdges();
  void fullCircleRandom();
  void signedTurn_data();
  void signedTurn();
  void notANumber();
};

// Values by definition: half a circle is pi radians.
void AngleTest::units() {
  QCOMPARE(Angle().degrees(), 0.0);
  QCOMPARE(Angle::degrees(180).radians(), Angle::pi);
  QCOMPARE(Angle::radians(Angle::pi / 2).degrees(), 90.0);
  QCOMPARE(Angle::pi, std::acos(-1.0));
  Random random(1);
  for (int i = 0; i < 1000; ++i) {
    const double degrees = random.between(-1000, 1000);
    VERIFY_NEAR(Angle::radians(Angle::degrees(degrees).radians()).degrees(), degrees, 1e-12, "there and back");
  }
}

// Computed by hand.
void AngleTest::arithmetic() {
  QCOMPARE((Angle::degrees(350) + Angle::degrees(20)).degrees(), 370.0);
  QCOMPARE((Angle::degrees(10) - Angle::degrees(20)).degrees(), -10.0);
  QCOMPARE((-Angle::degrees(10)).degrees(), -10.0);
}

// By definition of the interval [0, 360).
void AngleTest::fullCircleEdges_data() {
  QTest::addColumn<double>("degrees");
  QTest::addColumn<double>("expected");
  QTest::newRow("zero") << 0.0 << 0.0;
  QTest::newRow("minus zero") << -0.0 << 0.0;
  QTest::newRow("360") << 360.0 << 0.0;
  QTest::newRow("-360") << -360.0 << 0.0;
  QTest::newRow("720") << 720.0 << 0.0;
  QTest::newRow("-1e-20") << -1e-20 << 0.0;
  QTest::newRow("least negative") << -std::numeric_limits<double>::denorm_min() << 0.0;
  QTest::newRow("-1e-15, closer to 360 than the next number below it") << -1e-15 << 0.0;
  QTest::newRow("just under 360") << std::nextafter(360.0, 0.0) << std::nextafter(360.0, 0.0);
  QTest::newRow("1e-20") << 1e-20 << 1e-20;
  QTest::newRow("-90") << -90.0 << 270.0;
  QTest::newRow("450") << 450.0 << 90.0;
  QTest::newRow("-810") << -810.0 << 270.0;
  QTest::newRow("359.5 and many turns") << 359.5 + 360.0 * 1e6 << 359.5;
}

void AngleTest::fullCircleEdges() {
  QFETCH(double, degrees);
  QFETCH(double, expected);
  const double full = Angle::degrees(degrees).fullCircle().degrees();
  QVERIFY(full == expected); // not QCOMPARE, which is fuzzy
  QVERIFY(!std::signbit(full));
}

void AngleTest::fullCircleRandom() {
  Random random(2);
  for (int i = 0; i < 100000; ++i) {
    const Angle angle = Angle::degrees(random.between(-2000, 2000));
    const Angle full = angle.fullCircle();
    const std::string where = std::to_string(angle.degrees());
    VERIFY_AT(full.degrees() >= 0 && full.degrees() < 360, where);
    VERIFY_NEAR(turnBetween(full.degrees(), angle.degrees()), 0, 1e-12, where);
    VERIFY_AT(full.fullCircle().degrees() == full.degrees(), where);
  }
}

// By definition of the interval [-180, 180].
void AngleTest::signedTurn_data() {
  QTest::addColumn<double>("degrees");
  QTest::addColumn<double>("expected");
  QTest::newRow("190") << 190.0 << -170.0;
  QTest::newRow("-190") << -190.0 << 170.0;
  QTest::newRow("180") << 180.0 << 180.0;
  QTest::newRow("-180") << -180.0 << -180.0;
  QTest::newRow("360") << 360.0 << 0.0;
  QTest::newRow("359") << 359.0 << -1.0;
  QTest::newRow("721") << 721.0 << 1.0;
  QTest::newRow("-1e-20") << -1e-20 << -1e-20;
}

void AngleTest::signedTurn() {
  QFETCH(double, degrees);
  QFETCH(double, expected);
  QVERIFY(Angle::degrees(degrees).signedTurn().degrees() == expected);
}

void AngleTest::notANumber() {
  const Angle none = Angle::degrees(std::numeric_limits<double>::quiet_NaN());
  QVERIFY(std::isnan(none.fullCircle().degrees()));
  QVERIFY(std::isnan(none.signedTurn().degrees()));
}

QTEST_APPLESS_MAIN(AngleTest)
#include "angle_test.moc"
