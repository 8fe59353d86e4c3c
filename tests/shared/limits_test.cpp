// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/limits.h"

#include <QtTest>

#include <limits>

using namespace brushline;

class LimitsTest : public QObject {
  Q_OBJECT
private slots:
  void endsIncluded();
};

// By definition.
void LimitsTest::endsIncluded() {
  constexpr Limits limits{1, 3, 2};
  QVERIFY(limits.contains(1) && limits.contains(3) && limits.contains(2));
  QVERIFY(!limits.contains(std::nextafter(1.0, 0.0)) && !limits.contains(std::nextafter(3.0, 4.0)));
  QVERIFY(!limits.contains(std::numeric_limits<double>::quiet_NaN()));
  constexpr double infinity = std::numeric_limits<double>::infinity();
  const Limits open{-infinity, infinity, 0};
  QVERIFY(open.contains(-1e308) && !open.contains(infinity) && !open.contains(-infinity));
}

QTEST_APPLESS_MAIN(LimitsTest)
#include "limits_test.moc"
