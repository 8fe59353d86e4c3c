// SPDX-License-Identifier: GPL-2.0-or-later
// No outside check values: the dials are made from a known north, which has to be found again.
#include "handouts/dial_north.h"

#include "support/random.h"

#include <QtTest>

#include <cmath>
#include <vector>

using namespace brushline;

namespace {

// A leg's numbers, its dial read by that north.
DialReading reading(double bearing, double declination, double convergence, const Compass &compass) {
  const Angle truth = Angle::degrees(bearing).fullCircle(),
              magnetic = Angle::degrees(bearing - declination).fullCircle(),
              grid = Angle::degrees(bearing - convergence).fullCircle();
  const Angle own = compass.north == North::Magnetic ? magnetic : compass.north == North::True ? truth : grid;
  return {dialReading(own, compass), dialReading(own + Angle::degrees(180), compass), magnetic.degrees(),
          truth.degrees(), grid.degrees()};
}

Compass compassOf(North north, DialUnit unit, double step) {
  Compass compass;
  compass.north = north;
  compass.unit = unit;
  compass.step = step;
  return compass;
}

const std::vector<North> norths = {North::Magnetic, North::True, North::Grid};

} // namespace

class DialNorthTest : public QObject {
  Q_OBJECT
private slots:
  void foundWhereNorthsAreFarApart() {
    for (const North north : norths)
      for (const auto &[unit, step] : {std::pair(DialUnit::Degrees, 2.0), std::pair(DialUnit::Degrees, 0.5),
                                       std::pair(DialUnit::Mils, 20.0), std::pair(DialUnit::Gon, 1.0)}) {
        DialNorth found;
        test::Random random(3);
        for (int i = 0; i < 20; ++i)
          found.add(reading(random.between(0, 360), -17, 4, compassOf(north, unit, step)), unit);
        QVERIFY(found.north() == north);
      }
  }

  // Found by the fuzzer: a table may hold what is on no dial.
  void numbersThatAreOnNoDial() {
    const Compass compass = compassOf(North::Magnetic, DialUnit::Degrees, 2);
    for (const double odd : {std::nan(""), HUGE_VAL, -1e300, -2.0, 361.0}) {
      DialNorth found;
      test::Random random(3);
      for (int i = 0; i < 20; ++i)
        found.add(reading(random.between(0, 360), -17, 4, compass), DialUnit::Degrees);
      QVERIFY(found.north() == North::Magnetic);
      DialNorth back = found;
      found.add({odd, {}, 1.0, 2.0, 3.0}, DialUnit::Degrees);
      QVERIFY(!found.north());
      back.add({2, odd, 1.0, 2.0, 3.0}, DialUnit::Degrees);
      QVERIFY(!back.north());
    }
  }

  void neverTheWrongOne() {
    test::Random random(4);
    long known = 0, all = 0;
    for (int i = 0; i < 3000; ++i) {
      const North north = norths[size_t(random.between(0, 3))];
      const double steps[] = {0.1, 0.5, 1, 2, 5, 10, 45};
      const Compass compass = compassOf(north, DialUnit::Degrees, steps[size_t(random.between(0, 7))]);
      const double declination = random.between(-30, 30), convergence = random.between(-4, 4);
      DialNorth found;
      const int legs = int(random.between(1, 9));
      for (int leg = 0; leg < legs; ++leg)
        found.add(reading(random.between(0, 360), declination, convergence, compass), compass.unit);
      const auto answer = found.north();
      QVERIFY(!answer || *answer == north);
      known += answer.has_value();
      ++all;
    }
    QVERIFY2(known > all / 3, qPrintable(QString::number(known))); // regression only: it is of some use
  }

  void notToldApart() {
    DialNorth near;
    for (const double bearing : {10.2, 99.7, 231.4})
      near.add(reading(bearing, 0.2, 0.1, compassOf(North::Magnetic, DialUnit::Degrees, 2)), DialUnit::Degrees);
    QVERIFY(!near.north());
    QVERIFY(!DialNorth().north()); // no legs
    DialNorth zeros;
    zeros.add({0, std::nullopt, 0.4, 17.4, 1.0}, DialUnit::Degrees);
    QVERIFY(!zeros.north());
    DialNorth nonsense;
    nonsense.add({91, 271, 10.0, 20.0, 30.0}, DialUnit::Degrees);
    QVERIFY(!nonsense.north());
  }

  void mixedCompasses() {
    DialNorth mixed;
    for (const double bearing : {10.2, 99.7, 231.4}) {
      mixed.add(reading(bearing, -17, 4, compassOf(North::Magnetic, DialUnit::Degrees, 2)), DialUnit::Degrees);
      QVERIFY(mixed.north() == North::Magnetic || bearing < 100);
    }
    DialNorth other = mixed;
    other.add(reading(50, -17, 4, compassOf(North::True, DialUnit::Degrees, 2)), DialUnit::Degrees);
    QVERIFY(!other.north());
    mixed.add(reading(50, -17, 4, compassOf(North::Magnetic, DialUnit::Mils, 20)), DialUnit::Mils);
    QVERIFY(!mixed.north());
  }

  void unknownBearingsExcludeNothing() {
    DialNorth found;
    found.add({96, 276, 95.5, std::nullopt, std::nullopt}, DialUnit::Degrees);
    found.add({118, 298, 118.4, std::nullopt, std::nullopt}, DialUnit::Degrees);
    QVERIFY(!found.north());
  }
};

QTEST_APPLESS_MAIN(DialNorthTest)
#include "dial_north_test.moc"
