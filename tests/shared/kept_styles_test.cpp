// SPDX-License-Identifier: GPL-2.0-or-later
// The look of results is kept in their files.
#include "support/host_fixture.h"

#include <QFile>
#include <qgsexpressioncontextutils.h>

using namespace brushline::test;

namespace {
const QString id = QStringLiteral("brushline:annotatelegs");

Layer routes() {
  return layer(QStringLiteral("routes"), QStringLiteral("LineString"), QStringLiteral("EPSG:32633"), {},
               {{wkt(QStringLiteral("LINESTRING(500000 5400000,500400 5400300)")), {}}});
}
// Opened as somebody else would, with nothing of ours at hand. Our legs have labels, the host's own lines have none.
bool looksLikeOurs(const QString &path) { return QgsVectorLayer(path, QStringLiteral("legs"), "ogr").labelsEnabled(); }
} // namespace

class KeptStylesTest : public QObject {
  Q_OBJECT
  QTemporaryDir mFolder;

private slots:
  void inItsFile_data() {
    QTest::addColumn<QString>("file");
    for (const char *file : {"legs.gpkg", "legs.shp", "legs.fgb", "legs.geojson", "läufe 日.gpkg"})
      QTest::newRow(file) << QString::fromUtf8(file);
  }
  void inItsFile() {
    QFETCH(QString, file);
    const QString path = mFolder.filePath(file);
    const Layer input = routes();
    const Outcome outcome = run(id, {{"INPUT", valueOf(input)}, {"OUTPUT", path}, {"DATE", "2026-06-20"}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QVERIFY2(outcome.warnings.isEmpty(), qPrintable(outcome.said()));
    QVERIFY(looksLikeOurs(path));
    // The GeoPackage holds it itself.
    const QString side = path.left(path.lastIndexOf(QLatin1Char('.'))) + QStringLiteral(".qml");
    QCOMPARE(QFile::exists(side), !file.endsWith(QLatin1String(".gpkg")));
    QFile::remove(side);
  }

  // A model's next step, or the desktop, goes on with the layer in the run's context.
  void staysReadable() {
    const Layer input = routes();
    const QString file = mFolder.filePath(QStringLiteral("others.gpkg"));
    save(input, file);
    for (const QString &output : {mFolder.filePath(QStringLiteral("read.gpkg")),
                                  QStringLiteral("ogr:dbname='%1' table=\"legs\" (geom)").arg(file)}) {
      const Outcome outcome = run(id, {{"INPUT", valueOf(input)}, {"OUTPUT", output}, {"DATE", "2026-06-20"}});
      QVERIFY2(outcome.ok && outcome.warnings.isEmpty(), qPrintable(outcome.said()));
      QCOMPARE(outcome.rows().size(), size_t(1)); // as many as the layer counts, see run()
    }
  }

  void onlyWhenWanted() {
    const Layer input = routes();
    for (const char *file : {"plain.gpkg", "plain.fgb"}) {
      const QString path = mFolder.filePath(QLatin1String(file));
      const Outcome outcome =
          run(id, {{"INPUT", valueOf(input)}, {"OUTPUT", path}, {"DATE", "2026-06-20"}, {"KEEP_STYLE", false}});
      QVERIFY2(outcome.ok, qPrintable(outcome.said()));
      QVERIFY(!looksLikeOurs(path));
    }
    QVERIFY(!QFile::exists(mFolder.filePath(QStringLiteral("plain.qml"))));
  }

  // Marks and drift beside the legs: each its own.
  void eachLayerItsOwn() {
    const Layer input = routes();
    const QString marks = mFolder.filePath(QStringLiteral("marks.gpkg")),
                  legs = mFolder.filePath(QStringLiteral("a.gpkg"));
    const Outcome outcome =
        run(id, {{"INPUT", valueOf(input)}, {"OUTPUT", legs}, {"MARKS", marks}, {"DATE", "2026-06-20"}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QVERIFY(looksLikeOurs(legs));
    QVERIFY(looksLikeOurs(marks));
  }

  // Legs for several walkers wear the labels of the first, by a variable of the layer that goes with the look.
  void whoseLabels_data() {
    QTest::addColumn<QString>("file");
    for (const char *file : {"whose.gpkg", "whose.geojson", "whose.shp"})
      QTest::newRow(file) << QString::fromUtf8(file);
  }
  void whoseLabels() {
    QFETCH(QString, file);
    const Layer input = routes();
    const auto wornBy = [&](const std::vector<QVariantList> &people) {
      const QString path = mFolder.filePath(QString::number(people.size()) + file);
      const Layer walkers = table(QStringLiteral("walkers"),
                                  {field("walker", FieldType::Text), field("paces_100m", FieldType::Real)}, people);
      const Outcome outcome =
          run(id, {{"INPUT", valueOf(input)}, {"WALKERS", valueOf(walkers)}, {"OUTPUT", path}, {"DATE", "2026-06-20"}});
      if (!outcome.ok)
        return outcome.said();
      const QgsVectorLayer layer(path, QStringLiteral("legs"), "ogr");
      std::unique_ptr<QgsExpressionContextScope> scope(QgsExpressionContextUtils::layerScope(&layer));
      return scope->hasVariable("brushline_walker") ? scope->variable("brushline_walker").toString() : "no variable";
    };
    QCOMPARE(wornBy({{"Ŋ <Ada>", 120}, {"Bo", 140}}), QString("Ŋ <Ada>"));
    QCOMPARE(wornBy({{"Bo", 140}}), QString());
  }

  void memoryIsLeftAlone() {
    const Layer input = routes();
    const Outcome outcome =
        run(id, {{"INPUT", valueOf(input)}, {"OUTPUT", "TEMPORARY_OUTPUT"}, {"DATE", "2026-06-20"}});
    QVERIFY2(outcome.ok && outcome.warnings.isEmpty(), qPrintable(outcome.said()));
  }
};

BRUSHLINE_HOST_TEST_MAIN(KeptStylesTest)
#include "kept_styles_test.moc"
