// SPDX-License-Identifier: GPL-2.0-or-later
// Check values: what is put in; no outside source. That the index is one of the format's is the host's own judgement.
#include "quantities/progress.h"
#include "shared/layer_files_host.h"
#include "support/cancelled_run.h"
#include "support/has_spatial_index.h"
#include "support/host_fixture.h"

#include <QDir>
#include <QElapsedTimer>
#include <qgsproject.h>
#include <qgsvectordataprovider.h>
#include <qgsvectorfilewriter.h>

#include <algorithm>
#include <optional>

using namespace brushline;
using namespace brushline::test;

namespace {

constexpr int many = 60000; // some tenths of a second for the index

// Writes points on a lattice without an index, the last without a geometry.
void writeWithoutIndex(const QString &path, const QString &name, int points) {
  QgsVectorFileWriter::SaveVectorOptions options;
  options.driverName = QStringLiteral("GPKG");
  options.layerName = name;
  options.layerOptions = layerOptions(path, host::point);
  const std::unique_ptr<QgsVectorFileWriter> writer(
      QgsVectorFileWriter::create(path, {}, host::point, QgsCoordinateReferenceSystem(QStringLiteral("EPSG:32633")),
                                  QgsProject::instance()->transformContext(), options));
  QgsFeature feature;
  for (int i = 0; i < points; ++i) {
    feature.setGeometry(i + 1 == points ? QgsGeometry() : QgsGeometry::fromPointXY({i % 300 * 10.0, i / 300 * 10.0}));
    QVERIFY(writer->addFeature(feature, QgsFeatureSink::FastInsert));
  }
}

} // namespace

class LayerFilesTest : public QObject {
  Q_OBJECT

private slots:
  void leavesTheIndexOut_data();
  void leavesTheIndexOut();
  void makesTheIndex_data();
  void makesTheIndex();
  void hearsACancelBefore();
  void hearsACancelBetween();
  void tellsWhatFails();
};

void LayerFilesTest::leavesTheIndexOut_data() {
  QTest::addColumn<QString>("given");
  QTest::addColumn<bool>("table");
  QTest::addColumn<bool>("left_out");
  QTest::newRow("GeoPackage") << "/there/legs.gpkg" << false << true;
  QTest::newRow("its ending in capitals") << "/there/legs.GPKG" << false << true;
  QTest::newRow("its table") << "/there/legs.gpkg" << true << false;
  QTest::newRow("into one") << "ogr:dbname='/there/legs.gpkg' table=\"legs\" (geom)" << false << false;
  QTest::newRow("shapefile") << "/there/legs.shp" << false << false;
  QTest::newRow("memory") << "memory:legs" << false << false;
  QTest::newRow("SQLite, which has none") << "/there/legs.sqlite" << false << false;
  QTest::newRow("no ending") << "/there/legs" << false << false;
}

void LayerFilesTest::leavesTheIndexOut() {
  QFETCH(QString, given);
  QFETCH(bool, table);
  QFETCH(bool, left_out);
  const host::WkbType type = table ? host::noGeometry : host::point;
  QCOMPARE(isIndexLeftOut(given, type), left_out);
  const QStringList options = layerOptions(given, type);
  QVERIFY(!options.contains(QStringLiteral("SPATIAL_INDEX=YES")));
  if (left_out)
    QVERIFY(options.contains(QStringLiteral("SPATIAL_INDEX=NO")));
  else if (given.endsWith(QLatin1String(".sqlite")))
    QVERIFY(!options.isEmpty() && options.filter(QStringLiteral("SRID")).isEmpty()); // see layerOptions()
  else
    QVERIFY(options.isEmpty());
}

void LayerFilesTest::makesTheIndex_data() {
  QTest::addColumn<QString>("name");
  QTest::newRow("plain") << "legs";
  QTest::newRow("quotation marks") << "Mia's \"legs\"";
}

void LayerFilesTest::makesTheIndex() {
  QFETCH(QString, name);
  const QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("points.gpkg"));
  writeWithoutIndex(path, name, 1000);
  QVERIFY(!hasSpatialIndex(path));
  const QgsFeedback nobody;
  QCOMPARE(makeIndex(path + QStringLiteral("|layername=") + name, &nobody), QString());
  QVERIFY(hasSpatialIndex(path));
  QCOMPARE(featuresIn(path), std::optional<long>(1000));
  const QgsVectorLayer layer(path, QStringLiteral("written"), QStringLiteral("ogr"));
  QgsFeatureIterator some = layer.getFeatures(QgsFeatureRequest(QgsRectangle(-1, -1, 11, 11)));
  QgsFeature each;
  int found = 0;
  while (some.nextFeature(each))
    ++found;
  QCOMPARE(found, 4);
}

void LayerFilesTest::hearsACancelBefore() {
  const QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("points.gpkg"));
  writeWithoutIndex(path, QStringLiteral("points"), many);
  QgsFeedback feedback;
  feedback.cancel();
  QVERIFY_EXCEPTION_THROWN(makeIndex(path, &feedback), Cancelled);
  QVERIFY(!hasSpatialIndex(path));
  QCOMPARE(featuresIn(path), std::optional<long>(many));
  QVERIFY(!QFile::exists(path + QStringLiteral("-journal")));
}

void LayerFilesTest::hearsACancelBetween() {
  const QTemporaryDir folder;
  const QString bare = folder.filePath(QStringLiteral("bare.gpkg"));
  const QString path = folder.filePath(QStringLiteral("points.gpkg"));
  writeWithoutIndex(bare, QStringLiteral("points"), many);
  QVERIFY(QFile::copy(bare, path));
  QElapsedTimer since;
  since.start();
  QCOMPARE(makeIndex(path, nullptr), QString());
  const double quarter = double(since.nsecsElapsed()) * 1e-9 / 4;
  double least = 1e9; // seconds; of several tries, since other programs run on the machine too
  for (int attempt = 0; attempt < 4; ++attempt) {
    QVERIFY(QFile::remove(path) && QFile::copy(bare, path));
    QgsFeedback feedback;
    CancelAfter finger(feedback, quarter);
    bool cancelled = false;
    try {
      makeIndex(path, &feedback);
    } catch (const Cancelled &) {
      cancelled = true;
    }
    const std::optional<double> seconds = finger.over();
    if (cancelled) // before it was done
      least = std::min(least, seconds.value());
    QVERIFY(!QFile::exists(path + QStringLiteral("-journal")));
  }
  QVERIFY2(least < soon, qPrintable(QString::number(least)));
}

void LayerFilesTest::tellsWhatFails() {
  const QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("points.gpkg"));
  QVERIFY(!makeIndex(path, nullptr).isEmpty()); // nothing there
  writeWithoutIndex(path, QStringLiteral("points"), 3);
  QVERIFY(!makeIndex(path + QStringLiteral("|layername=others"), nullptr).isEmpty());
  QCOMPARE(makeIndex(path, nullptr), QString());
  const QString twice = makeIndex(path, nullptr);
  QVERIFY2(twice.startsWith(QLatin1String("GDAL: ")), qPrintable(twice));
}

BRUSHLINE_HOST_TEST_MAIN(LayerFilesTest)
#include "layer_files_test.moc"
