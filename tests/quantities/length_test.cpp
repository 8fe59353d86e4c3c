// SPDX-License-Identifier: GPL-2.0-or-later
#include "quantities/length.h"

#include <QtTest>

#include <cmath>
#include <type_traits>

using namespace brushline;

static_assert(!std::is_convertible_v<double, Length>, "a bare number has no unit");

class LengthTest : public QObject {
  Q_OBJECT
private slots:
  void arithmeticAndOrder();
};

// Computed by hand.
void LengthTest::arithmeticAndOrder() {
  const Length two = Length::metres(2), three = Length::metres(3);
  QVERIFY(Length().metres() == 0);
  QVERIFY((two + three).metres() == 5);
  QVERIFY((two - three).metres() == -1);
  QVERIFY(two < three && three > two && !(two < two) && !(two > two));
  const Length none = Length::metres(std::nan(""));
  QVERIFY(!(none < two) && !(none > two));
}

QTEST_APPLESS_MAIN(LengthTest)
#include "length_test.moc"
