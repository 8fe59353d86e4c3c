// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/walker.h"

#include "support/near.h"

using namespace brushline;

class WalkerTest : public QObject {
  Q_OBJECT
private slots:
  void usualWithinLimits();
  void singleStepsOfSinglePaces();
  void singleStepsOfDoublePaces_data();
  void singleStepsOfDoublePaces();
  void givenIsReadBack();
};

void WalkerTest::usualWithinLimits() {
  const Walker walker;
  QVERIFY(Walker::countLimits.contains(walker.steps_per_100m));
  QVERIFY(Walker::paceErrorLimits.contains(walker.pace_error_percent));
  QVERIFY(Walker::eyeLimits.contains(walker.eye_height.metres()));
  QVERIFY(Walker::speedLimits.contains(walker.speed_factor));
  QVERIFY(walker.steps_per_100m == 130); // 30-inch pace of FM 3-25.26, read second-hand
}

void WalkerTest::singleStepsOfSinglePaces() {
  for (double count : {20.0, 65.0, 89.9, 90.0, 100.0, 110.0, 130.0, 1000.0}) {
    const auto steps = singleSteps(count, PaceKind::Single);
    QVERIFY(steps && *steps == count);
  }
}

// The bounds 90 and 110: common practice, no source.
void WalkerTest::singleStepsOfDoublePaces_data() {
  QTest::addColumn<double>("count");
  QTest::addColumn<double>("steps"); // 0: no answer
  QTest::newRow("double paces already") << 65.0 << 130.0;
  QTest::newRow("least") << 20.0 << 40.0;
  QTest::newRow("just under 90") << std::nextafter(90.0, 0.0) << 2 * std::nextafter(90.0, 0.0);
  QTest::newRow("90") << 90.0 << 0.0;
  QTest::newRow("100") << 100.0 << 0.0;
  QTest::newRow("110") << 110.0 << 0.0;
  QTest::newRow("just over 110") << std::nextafter(110.0, 200.0) << std::nextafter(110.0, 200.0);
  QTest::newRow("single steps") << 130.0 << 130.0;
  QTest::newRow("most") << 1000.0 << 1000.0;
}

void WalkerTest::singleStepsOfDoublePaces() {
  QFETCH(double, count);
  QFETCH(double, steps);
  const auto result = singleSteps(count, PaceKind::Double);
  QCOMPARE(result.has_value(), steps > 0);
  if (result)
    QVERIFY(*result == steps);
}

// The same bits: halving and doubling lose none. 40 double paces' steps: fewer have no count within the limits.
void WalkerTest::givenIsReadBack() {
  for (double steps = 40; steps <= 1000; steps += 0.7)
    for (const PaceKind kind : {PaceKind::Single, PaceKind::Double}) {
      const double given = countGiven(steps, kind);
      QVERIFY(Walker::countLimits.contains(given));
      const auto read = singleSteps(given, kind);
      QVERIFY2(read && *read == steps, qPrintable(QString::number(steps)));
    }
  QVERIFY(countGiven(130, PaceKind::Double) == 130 && countGiven(100, PaceKind::Double) == 50);
  QVERIFY(countGiven(110, PaceKind::Double) == 55 && countGiven(100, PaceKind::Single) == 100);
}

QTEST_APPLESS_MAIN(WalkerTest)
#include "walker_test.moc"
