// SPDX-License-Identifier: GPL-2.0-or-later
// A layer whose reading breaks off is not taken for a short one.
#include "shared/compatibility_host.h"
#include "shared/feedback_progress_host.h"
#include "shared/source_features_host.h"
#include "support/host_fixture.h"

#include <qgsapplication.h>
#include <qgsexception.h>
#include <qgsfeatureiterator.h>
#include <qgsmessagelog.h>

#include <cpl_error.h>

#include <functional>
#include <thread>

using namespace brushline;

namespace {
using Trouble = std::function<void(int row)>; // called before each row, and before the end with the number of rows

void toLog(const char *text, Qgis::MessageLevel level = Qgis::Warning) {
  QgsMessageLog::logMessage(QString::fromLatin1(text), QStringLiteral("Server"), level, false);
}

class TroubledIterator : public QgsAbstractFeatureIterator {
public:
  TroubledIterator(const QgsFeatureRequest &request, int rows, Trouble trouble)
      : QgsAbstractFeatureIterator(request), mRows(rows), mTrouble(std::move(trouble)) {}
  bool rewind() override { return false; }
  bool close() override { return true; }

protected:
  bool fetchFeature(QgsFeature &feature) override {
    mTrouble(mRow);
    if (mRow >= mRows)
      return false;
    feature.setId(mRow++);
    feature.setValid(true);
    return true;
  }

private:
  int mRow = 0, mRows;
  Trouble mTrouble;
};

// Three rows, or none, and what the test wants to go wrong.
class TroubledSource : public QgsFeatureSource {
public:
  TroubledSource(int rows, Trouble trouble) : mRows(rows), mTrouble(std::move(trouble)) {}
  QgsFeatureIterator getFeatures(const QgsFeatureRequest &request) const override {
    mTrouble(-1);
    return QgsFeatureIterator(new TroubledIterator(request, mRows, mTrouble));
  }
  QString sourceName() const override { return QStringLiteral("far away"); }
  QgsCoordinateReferenceSystem sourceCrs() const override { return {}; }
  QgsFields fields() const override { return {}; }
  long long featureCount() const override { return mRows; }
  host::WkbType wkbType() const override { return host::noGeometry; }

private:
  int mRows;
  Trouble mTrouble;
};

// How many rows came; what was thrown.
struct Reading {
  int rows = 0;
  QString error;
};
Reading read(
    int rows, const Trouble &trouble, const std::function<void()> &between = [] {}) {
  QgsProcessingContext context;
  QgsProcessingFeatureSource source(new TroubledSource(rows, trouble), context, true);
  Reading reading;
  try {
    SourceFeatures features(QStringLiteral("INPUT"), source, nullptr);
    between();
    QgsFeature feature;
    while (features.next(feature)) {
      ++reading.rows;
      between();
    }
    if (features.next(feature))
      reading.error = QStringLiteral("it went on after the end");
  } catch (const QgsProcessingException &error) {
    reading.error = error.what();
  }
  return reading;
}

void deadLine(bool gdal) {
  if (gdal)
    CPLError(CE_Failure, CPLE_AppDefined, "the line is dead");
  else
    toLog("the line is dead", Qgis::Critical);
}

void bothMouths() {
  QTest::addColumn<bool>("gdal");
  QTest::newRow("told to the log") << false;
  QTest::newRow("told to GDAL") << true;
}
} // namespace

class SourceFeaturesTest : public QObject {
  Q_OBJECT

private slots:
  void allIsWell() {
    for (const int rows : {0, 3}) {
      const Reading reading = read(rows, [](int) {});
      QCOMPARE(reading.rows, rows);
      QCOMPARE(reading.error, QString());
    }
  }

  void nothingAsked() {
    SourceFeatures features;
    QgsFeature feature;
    QVERIFY(!features.next(feature));
  }

  void brokenInTheMiddle_data() { bothMouths(); }
  void brokenInTheMiddle() {
    QFETCH(bool, gdal);
    const Reading reading = read(3, [&](int row) {
      if (row == 3)
        deadLine(gdal);
    });
    QCOMPARE(reading.rows, 3);
    for (const char *word : {"INPUT", "far away", "broke off", "the line is dead"})
      QVERIFY2(reading.error.contains(QLatin1String(word)), qPrintable(reading.error));
  }

  void brokenFromTheStart_data() { bothMouths(); }
  void brokenFromTheStart() {
    QFETCH(bool, gdal);
    const Reading reading = read(0, [&](int row) {
      if (row == -1)
        deadLine(gdal);
    });
    QCOMPARE(reading.rows, 0);
    QVERIFY2(reading.error.contains(QLatin1String("broke off")), qPrintable(reading.error));
  }

  // A provider may try again; what it then gives is whole.
  void gotOver_data() { bothMouths(); }
  void gotOver() {
    QFETCH(bool, gdal);
    const Reading reading = read(3, [&](int row) {
      if (row < 3)
        deadLine(gdal);
    });
    QCOMPARE(reading.rows, 3);
    QCOMPARE(reading.error, QString());
  }

  // What happens between two rows, in other threads, or is no more than news, is not the layer's.
  void notOfTheReading() {
    Reading reading = read(
        3, [](int) {},
        [] {
          deadLine(false);
          deadLine(true);
        });
    QCOMPARE(reading.error, QString());
    reading = read(3, [](int) {
      std::thread([] { deadLine(false); }).join();
      toLog("all is well", Qgis::Info);
      CPLError(CE_Warning, CPLE_AppDefined, "not so bad");
    });
    QCOMPARE(reading.error, QString());
  }

  // The host ends the reading then, as if the layer were at its end.
  void cancelled() {
    QgsProcessingContext context;
    for (const int after : {0, 2, 3}) {
      QgsFeedback feedback;
      QgsProcessingFeatureSource source(new TroubledSource(3, [](int) {}), context, true);
      SourceFeatures features(QStringLiteral("INPUT"), source, &feedback);
      QgsFeature feature;
      for (int row = 0; row < after; ++row)
        QVERIFY(features.next(feature));
      feedback.cancel();
      QVERIFY_EXCEPTION_THROWN(features.next(feature), Cancelled);
    }
  }

  // Begun in one thread and read in another, as the host does it.
  void inAnotherThread() {
    QgsProcessingContext context;
    QgsProcessingFeatureSource source(new TroubledSource(3,
                                                         [](int row) {
                                                           if (row == 3)
                                                             deadLine(false);
                                                         }),
                                      context, true);
    SourceFeatures features(QStringLiteral("INPUT"), source, nullptr);
    bool threw = false;
    std::thread([&] {
      QgsFeature feature;
      try {
        while (features.next(feature)) {
        }
      } catch (const QgsProcessingException &) {
        threw = true;
      }
    }).join();
    QVERIFY(threw);
  }
};

BRUSHLINE_HOST_TEST_MAIN(SourceFeaturesTest)
#include "source_features_test.moc"
