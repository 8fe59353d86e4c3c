// SPDX-License-Identifier: GPL-2.0-or-later
// Check values: properties that follow from how a number for the dial is found (shared/compass.h); no outside source.
#include "handouts/possible_norths.h"
#include "shared/compass.h"
#include "support/random.h"

#include <QtTest>

#include <algorithm>
#include <limits>

using namespace brushline;

namespace {

// A leg by its true bearing, with the number that a compass for that north shows.
DialWithBearings leg(double true_, double declination, double convergence, const Compass &compass) {
  DialWithBearings result;
  result.true_ = Angle::degrees(true_);
  result.magnetic = Angle::degrees(true_ - declination).fullCircle();
  result.grid = Angle::degrees(true_ - convergence).fullCircle();
  const Angle bearing = compass.north == North::True   ? *result.true_
                        : compass.north == North::Grid ? *result.grid
                                                       : *result.magnetic;
  result.dial = dialReading(bearing, compass);
  result.back_dial = dialReading(bearing + Angle::degrees(180), compass);
  return result;
}

std::vector<DialWithBearings> legs(const std::vector<double> &bearings, const Compass &compass,
                                   double declination = -17, double convergence = 1.4) {
  std::vector<DialWithBearings> result;
  for (const double bearing : bearings)
    result.push_back(leg(bearing, declination, convergence, compass));
  return result;
}

} // namespace

class PossibleNorthsTest : public QObject {
  Q_OBJECT

private slots:
  void farApart() {
    for (const North north : {North::Magnetic, North::True, North::Grid}) {
      Compass compass;
      compass.north = north;
      // Numbers for the dial with no common graduation but the compass's own, 2 degrees.
      const auto possible = possibleNorths(legs({78.4, 101.4, 86.3, 83.5, 359.3, 0.9}, compass), 360);
      QVERIFY(std::find(possible.begin(), possible.end(), north) != possible.end());
      if (north == North::Magnetic)
        QCOMPARE(possible.size(), size_t(1)); // 17 and 18 degrees from the others
    }
  }

  void tooCloseToTell() {
    const Compass compass; // magnetic, in steps of 2 degrees
    // Declination half a degree: by one leg nobody can tell magnetic from true north, 10 degrees away grid north is
    // out.
    DialWithBearings one = leg(40.1, 0.5, 10, compass);
    one.dial = 38;
    one.magnetic = Angle::degrees(38.4);
    one.true_ = Angle::degrees(38.9);
    one.grid = Angle::degrees(60);
    QCOMPARE(possibleNorths({one}, 360), (std::vector<North>{North::Magnetic, North::True}));
  }

  void onOneLegFarNorthsAreTold() {
    const Compass compass;
    // 96 and 276: the coarsest graduation that divides them is 12, half of it 6 degrees.
    QCOMPARE(possibleNorths(legs({78.45}, compass, -17.02, 1.36), 360), (std::vector<North>{North::Magnetic}));
  }

  void unknownBearings() {
    const Compass compass;
    auto some = legs({78.4, 101.4}, compass);
    some[1].magnetic.reset(); // the first leg's tells enough
    QCOMPARE(possibleNorths(some, 360), (std::vector<North>{North::Magnetic}));
    for (DialWithBearings &each : some)
      each.grid.reset(); // whoever made the legs may have counted from there
    QCOMPARE(possibleNorths(some, 360), (std::vector<North>{North::Magnetic, North::Grid}));
  }

  void nothingAndZeros() {
    QVERIFY(possibleNorths({}, 360).empty());
    DialWithBearings zero;
    zero.magnetic = Angle::degrees(359.5);
    zero.true_ = Angle::degrees(342); // 18 from it: less than half of 45
    zero.grid = Angle::degrees(337);
    QCOMPARE(possibleNorths({zero}, 360), (std::vector<North>{North::Magnetic, North::True}));
  }

  // A dial may be divided in eighths of the circle.
  void coarseGraduations() {
    const std::vector<North> all{North::Magnetic, North::True, North::Grid};
    Compass compass;
    compass.step = 45;
    // From magnetic north 60 degrees, on the dial 45: it is nearer to the bearings from the other norths.
    QCOMPARE(possibleNorths(legs({43}, compass, -17, 2), 360), all);
    QCOMPARE(possibleNorths(legs({35}, compass, -25, 2), 360), all);
  }

  // Numbers that quarters of the circle divide may be of a dial in eighths.
  void squaresAreNotTold() {
    const std::vector<North> all{North::Magnetic, North::True, North::Grid};
    Compass compass; // in steps of 2 degrees
    compass.north = North::True;
    QCOMPARE(possibleNorths(legs({90}, compass, -17), 360), all);
    QCOMPARE(possibleNorths(legs({0, 90, 180, 270}, compass, -17), 360), all);
    QCOMPARE(possibleNorths(legs({0, 90, 180, 270, 52}, compass, -17, 4), 360), (std::vector<North>{North::True}));
  }

  void numbersBackTellToo() {
    DialWithBearings one;
    one.dial = 90;
    one.magnetic = Angle::degrees(90.4);
    one.true_ = Angle::degrees(73.4);
    one.grid = Angle::degrees(60);
    QCOMPARE(possibleNorths({one}, 360), (std::vector<North>{North::Magnetic, North::True}));
    one.back_dial = 271; // a graduation of 1
    QCOMPARE(possibleNorths({one}, 360), (std::vector<North>{North::Magnetic}));
  }

  void numbersThatFitNoNorth() {
    DialWithBearings odd;
    odd.dial = 200;
    odd.magnetic = Angle::degrees(20);
    odd.true_ = Angle::degrees(37);
    odd.grid = Angle::degrees(39);
    QVERIFY(possibleNorths({odd}, 360).empty());
  }

  void numbersOnNoDial() {
    constexpr double infinite = std::numeric_limits<double>::infinity();
    for (const double number : {-1.0, 361.0, 1e300, -1e300, infinite, std::numeric_limits<double>::quiet_NaN()}) {
      auto some = legs({78.4, 101.4}, Compass());
      QVERIFY(!possibleNorths(some, 360).empty());
      some[1].dial = number;
      QVERIFY2(possibleNorths(some, 360).empty(), qPrintable(QString::number(number)));
      some = legs({78.4, 101.4}, Compass());
      some[1].back_dial = number;
      QVERIFY2(possibleNorths(some, 360).empty(), qPrintable(QString::number(number)));
    }
  }

  // The right north is never lost, so a single answer is never wrong.
  void rightOneIsAlwaysAmongThem() {
    test::Random random(20261125);
    int told = 0;
    const struct {
      DialUnit unit;
      std::vector<double> steps;
    } dials[] = {{DialUnit::Degrees, {0.25, 1, 2, 2.5, 5, 7, 10, 22.5, 45}},
                 {DialUnit::Mils, {10, 20, 25, 50, 100, 400, 800}},
                 {DialUnit::Gon, {0.5, 1, 2, 5, 10, 25, 50}}};
    for (int i = 0; i < 20000; ++i) {
      const auto &dial = dials[int(random.between(0, 2.999))];
      Compass compass;
      compass.north = North(int(random.between(0, 2.999)));
      compass.unit = dial.unit;
      compass.step = dial.steps[size_t(random.between(0, double(dial.steps.size()) - 0.001))];
      std::vector<double> bearings;
      for (int n = int(random.between(1, 9)); n > 0; --n)
        bearings.push_back(random.between(0, 360));
      const auto possible = possibleNorths(legs(bearings, compass, random.between(-40, 40), random.between(-5, 5)),
                                           fullCircle(compass.unit));
      QVERIFY2(std::find(possible.begin(), possible.end(), compass.north) != possible.end(),
               qPrintable(QStringLiteral("%1: north %2, step %3, %4 legs")
                              .arg(i)
                              .arg(int(compass.north))
                              .arg(compass.step)
                              .arg(bearings.size())));
      told += possible.size() == 1;
    }
    QVERIFY2(told > 6000, qPrintable(QString::number(told))); // and often enough there is one; regression only
  }
};

QTEST_GUILESS_MAIN(PossibleNorthsTest)
#include "possible_norths_test.moc"
