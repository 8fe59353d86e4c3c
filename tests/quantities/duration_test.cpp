// SPDX-License-Identifier: GPL-2.0-or-later
#include "quantities/duration.h"

#include <QtTest>

#include <type_traits>

using namespace brushline;

static_assert(!std::is_convertible_v<double, Duration>, "a bare number is neither seconds nor minutes");

class DurationTest : public QObject {
  Q_OBJECT
private slots:
  void units();
};

// By definition: 60 seconds to a minute.
void DurationTest::units() {
  QVERIFY(Duration().seconds() == 0);
  QVERIFY(Duration::minutes(1.5).seconds() == 90);
  QVERIFY(Duration::seconds(90).minutes() == 1.5);
  QVERIFY((Duration::seconds(30) + Duration::minutes(1)).seconds() == 90);
}

QTEST_APPLESS_MAIN(DurationTest)
#include "duration_test.moc"
