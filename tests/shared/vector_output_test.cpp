// SPDX-License-Identifier: GPL-2.0-or-later
// Check values: what is put in; no outside source.
#include "quantities/progress.h"
#include "shared/vector_output_host.h"
#include "support/has_spatial_index.h"
#include "support/host_fixture.h"
#include "support/idle_algorithm.h"

#include <QDir>
#include <qgsexception.h>

using namespace brushline;
using namespace brushline::test;

namespace {

// Two outputs into a folder, with some points each.
struct Outputs {
  explicit Outputs(const QString &ending)
      : parameters{{"FIRST", folder.filePath("first" + ending)}, {"SECOND", folder.filePath("second" + ending)}} {
    const QgsCoordinateReferenceSystem crs(QStringLiteral("EPSG:32633"));
    const ParameterReader reader(algorithm, parameters, context);
    const QgsFields fields = fieldsOf({{"number", FieldType::Integer}});
    first = std::make_unique<VectorOutput>(reader, QStringLiteral("FIRST"), fields, host::point, crs);
    second = std::make_unique<VectorOutput>(reader, QStringLiteral("SECOND"), fields, host::point, crs);
    QgsFeature feature(fields);
    for (int i = 0; i < 100; ++i) {
      feature.setGeometry(QgsGeometry::fromPointXY({i * 10.0, 0}));
      feature.setAttributes({i});
      first->add(feature);
      second->add(feature);
    }
  }
  QVariantMap finish(QgsProcessingFeedback *feedback = nullptr) {
    return VectorOutput::finishAll({{first.get(), QString()}, {nullptr, QString()}, {second.get(), QString()}},
                                   feedback);
  }
  // What is in the folder once the outputs are gone.
  QStringList left() {
    first.reset();
    second.reset();
    return QDir(folder.path()).entryList(QDir::Files | QDir::Hidden);
  }

  QTemporaryDir folder;
  IdleAlgorithm algorithm{Definitions{new QgsProcessingParameterFeatureSink("FIRST", "FIRST"),
                                      new QgsProcessingParameterFeatureSink("SECOND", "SECOND")}};
  QVariantMap parameters;
  QgsProcessingContext context;
  std::unique_ptr<VectorOutput> first, second;
};

} // namespace

class VectorOutputTest : public QObject {
  Q_OBJECT

private slots:
  void allStay_data();
  void allStay();
  void noneStaysAfterACancel();
  void noneStaysAfterAFailure();
  void noneStaysUnfinished();
  void cutTextsAreTold_data();
  void cutTextsAreTold();
};

void VectorOutputTest::allStay_data() {
  QTest::addColumn<QString>("ending");
  QTest::addColumn<int>("files");
  QTest::newRow("GeoPackage") << ".gpkg" << 2;
  QTest::newRow("GeoJSON") << ".geojson" << 2;
  QTest::newRow("shapefile") << ".shp" << 10; // each with .dbf, .shx, .prj and .cpg
  QTest::newRow("FlatGeobuf") << ".fgb" << 2;
  QTest::newRow("SQLite") << ".sqlite" << 2;
  QTest::newRow("GeoPackage by default") << "" << 2;
}

void VectorOutputTest::allStay() {
  QFETCH(QString, ending);
  QFETCH(int, files);
  Outputs outputs(ending);
  const QVariantMap results = outputs.finish();
  QCOMPARE(results.keys(), QStringList({"FIRST", "SECOND"}));
  for (const QVariant &path : results) {
    const QgsVectorLayer layer(path.toString(), QStringLiteral("written"), QStringLiteral("ogr"));
    QCOMPARE(int(layer.featureCount()), 100);
    QVERIFY(layer.crs().isValid());
    if (path.toString().contains(QLatin1String(".gpkg")))
      QVERIFY(hasSpatialIndex(path.toString()));
  }
  QCOMPARE(outputs.left().size(), files);
}

void VectorOutputTest::noneStaysAfterACancel() {
  Outputs outputs(QStringLiteral(".gpkg"));
  Ear ear;
  ear.cancel();
  QVERIFY_EXCEPTION_THROWN(outputs.finish(&ear), Cancelled);
  QCOMPARE(outputs.left(), QStringList());
}

void VectorOutputTest::noneStaysAfterAFailure() {
  Outputs outputs(QStringLiteral(".gpkg"));
  QVERIFY(QFile::remove(outputs.folder.filePath(QStringLiteral("second.gpkg"))));
  QVERIFY_EXCEPTION_THROWN(outputs.finish(), QgsProcessingException);
  QCOMPARE(outputs.left(), QStringList());
}

void VectorOutputTest::noneStaysUnfinished() {
  Outputs outputs(QStringLiteral(".gpkg"));
  QCOMPARE(outputs.left(), QStringList());
}

void VectorOutputTest::cutTextsAreTold_data() {
  QTest::addColumn<QString>("ending");
  QTest::addColumn<bool>("told");
  QTest::newRow("shapefile") << ".shp" << true;
  QTest::newRow("GeoPackage") << ".gpkg" << false;
}

// What is told to be cut is what is cut in the file, and nothing else.
void VectorOutputTest::cutTextsAreTold() {
  QFETCH(QString, ending);
  QFETCH(bool, told);
  const QTemporaryDir folder;
  const IdleAlgorithm algorithm{Definitions{new QgsProcessingParameterFeatureSink("FIRST", "FIRST")}};
  const QVariantMap parameters{{"FIRST", folder.filePath("first" + ending)}};
  QgsProcessingContext context;
  const ParameterReader reader(algorithm, parameters, context);
  const QgsFields fields = fieldsOf({{"number", FieldType::Integer}, {"warnings", FieldType::Text}});
  VectorOutput output(reader, QStringLiteral("FIRST"), fields, host::point,
                      QgsCoordinateReferenceSystem(QStringLiteral("EPSG:32633")));
  const QStringList texts{QString(254, 'x'), QString(255, 'x'), QString(127, QChar(0xe9)), QString(128, QChar(0xe9))};
  for (const QString &text : texts) {
    QgsFeature feature(fields);
    feature.setGeometry(QgsGeometry::fromPointXY({10, 0}));
    feature.setAttributes(QVector<QVariant>{1, text});
    output.add(feature);
  }
  Ear ear;
  const QString path = output.finish(QString(), &ear);
  int cut = 0;
  const QgsVectorLayer layer(path, QStringLiteral("written"), QStringLiteral("ogr"));
  const Output written = read(layer);
  QCOMPARE(written.rows.size(), size_t(4));
  for (size_t i = 0; i < 4; ++i)
    cut += written.rows[i].text("warnings") != texts[int(i)];
  QCOMPARE(cut, told ? 2 : 0); // an é takes two bytes
  QCOMPARE(ear.warnings.size(), told ? 1 : 0);
  if (told)
    QVERIFY2(ear.warnings[0].contains("2 feature(s)") && ear.warnings[0].contains("FIRST"),
             qPrintable(ear.warnings[0]));
}

BRUSHLINE_HOST_TEST_MAIN(VectorOutputTest)
#include "vector_output_test.moc"
