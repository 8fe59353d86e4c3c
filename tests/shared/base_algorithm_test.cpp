// SPDX-License-Identifier: GPL-2.0-or-later
#include "support/host_fixture.h"

#include <qgsapplication.h>
#include <qgsprocessingalgorithm.h>
#include <qgsprocessingregistry.h>

using namespace brushline::test;

class BaseAlgorithmTest : public QObject {
  Q_OBJECT

  Layer mRoute, mPoint, mOther, mArea, mWalkers;
  QVariant mRoutes, mPoints, mOthers, mAreas, mWalkerTable;

private slots:
  void initTestCase() {
    const QString utm = QStringLiteral("EPSG:32621");
    const QList<QgsField> named{field("name", FieldType::Text), field("class", FieldType::Text)};
    const auto one = [&](const char *type, const char *text) {
      return layer(QStringLiteral("one"), type, utm, named, {{wkt(text), {"Camp", "brush"}}});
    };
    mRoute = one("LineString", "LINESTRING(632000 5406000, 632300 5406100)");
    mPoint = one("Point", "POINT(632010 5406010)");
    mOther = one("Point", "POINT(632200 5406100)");
    mArea = one("Polygon", "POLYGON((631000 5405000, 633000 5405000, 633000 5407000, 631000 5407000, 631000 5405000))");
    mWalkers = table("walkers", {field("walker", FieldType::Text)}, {{"Ressa"}});
    mRoutes = valueOf(mRoute);
    mPoints = valueOf(mPoint);
    mOthers = valueOf(mOther);
    mAreas = valueOf(mArea);
    mWalkerTable = valueOf(mWalkers);
  }

  // The desktop's window waits while an algorithm is prepared, and its cancel button does nothing. Reading of features
  // hears the cancel of a run at once, so a preparation that ends well after a cancel has read none.
  void preparationReadsNoFeatures_data() {
    QTest::addColumn<QVariantMap>("parameters");
    const QVariantMap ground{{"COVER", mAreas}, {"COVER_CLASS", "class"}, {"WALKERS", mWalkerTable}};
    const auto add = [&ground](const char *algorithm, QVariantMap parameters) {
      QVariantMap all = ground;
      for (auto it = parameters.cbegin(); it != parameters.cend(); ++it)
        all.insert(it.key(), it.value());
      QTest::newRow(algorithm) << all;
    };
    add("annotatelegs", {{"INPUT", mRoutes}, {"POINTS", mPoints}});
    add("aimoff", {{"STARTS", mPoints}, {"LINES", mRoutes}, {"DESTINATIONS", mOthers}});
    add("checkhazards", {{"INPUT", mRoutes}, {"HAZARDS", QVariantList{mAreas}}});
    add("choosemarks", {{"INPUT", mRoutes}, {"CANDIDATES", mPoints}});
    add("comparetrack", {{"INPUT", mRoutes}, {"TRACKS", mRoutes}});
    add("detourlegs", {{"INPUT", mRoutes}, {"OBSTACLES", mAreas}, {"POINTS", mPoints}});
    add("featuresmet", {{"INPUT", mRoutes}, {"FEATURES", QVariantList{mPoints, mAreas}}});
    add("practicecourse", {{"AREA", mAreas}, {"STARTS", mPoints}, {"SITES", mOthers}});
    add("sightsurface", {{"COVER", mAreas}, {"CELL", 20}});
    add("throughcover", {{"STARTS", mPoints}, {"ENDS", mOthers}, {"POINTS", mPoints}});
  }
  void preparationReadsNoFeatures() {
    QFETCH(QVariantMap, parameters);
    const QTemporaryDir folder;
    const std::unique_ptr<QgsProcessingAlgorithm> algorithm(QgsApplication::processingRegistry()->createAlgorithmById(
        QStringLiteral("brushline:") + QTest::currentDataTag()));
    QVERIFY(algorithm);
    for (auto it = parameters.begin(); it != parameters.end();)
      it = algorithm->parameterDefinition(it.key()) ? std::next(it) : parameters.erase(it);
    for (const QgsProcessingParameterDefinition *definition : algorithm->destinationParameterDefinitions()) {
      const bool raster = definition->type() == QLatin1String("rasterDestination");
      parameters.insert(definition->name(), folder.filePath(definition->name()) + (raster ? ".tif" : ".gpkg"));
    }
    QgsProcessingContext context;
    Ear ear;
    ear.cancel();
    QVERIFY2(algorithm->prepare(parameters, context, &ear), qPrintable(ear.errors.join('\n')));
    QVERIFY(algorithm->runPrepared(parameters, context, &ear).isEmpty()); // reads, and hears it
    QVERIFY2(ear.errors.isEmpty(), qPrintable(ear.errors.join('\n')));
    QVERIFY(QDir(folder.path()).entryList(QDir::Files).isEmpty());
  }
};

BRUSHLINE_HOST_TEST_MAIN(BaseAlgorithmTest)
#include "base_algorithm_test.moc"
