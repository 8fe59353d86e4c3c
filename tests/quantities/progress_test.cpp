// SPDX-License-Identifier: GPL-2.0-or-later
#include "quantities/progress.h"

#include <QtTest>

using namespace brushline;

namespace {
struct Switch : Progress {
  bool stop = false;
  bool cancelled() const override { return stop; }
};
} // namespace

class ProgressTest : public QObject {
  Q_OBJECT
private slots:
  void neverByItself();
  void throwsWhenCancelled();
};

void ProgressTest::neverByItself() {
  const Progress progress;
  QVERIFY(!progress.cancelled());
  progress.check(); // an exception fails the test
}

void ProgressTest::throwsWhenCancelled() {
  Switch progress;
  progress.check();
  progress.stop = true;
  QVERIFY_EXCEPTION_THROWN(progress.check(), Cancelled);
  try {
    progress.check();
  } catch (const std::exception &error) { // one catch for all is enough
    QCOMPARE(error.what(), "cancelled");
  }
  progress.stop = false;
  progress.check();
}

QTEST_APPLESS_MAIN(ProgressTest)
#include "progress_test.moc"
