// SPDX-License-Identifier: GPL-2.0-or-later
// Check values: what is put in; no outside source.
#include "support/host_fixture.h"

#include <QDir>
#include <QFile>

using namespace brushline::test;

class ParameterChecksTest : public QObject {
  Q_OBJECT

private slots:
  // The host takes what follows a “|" for a layer's name: the run would fail, and what is cleared away then would be
  // the file that was there before.
  void noLayerOfAFileThatIsThere_data();
  void noLayerOfAFileThatIsThere();
};

void ParameterChecksTest::noLayerOfAFileThatIsThere_data() {
  QTest::addColumn<QString>("algorithm");
  QTest::addColumn<QString>("file");
  QTest::newRow("layer") << "brushline:annotatelegs"
                         << "there.gpkg";
  QTest::newRow("raster") << "brushline:sightsurface"
                          << "there.tif";
}

void ParameterChecksTest::noLayerOfAFileThatIsThere() {
  QFETCH(QString, algorithm);
  QFETCH(QString, file);
  const QTemporaryDir folder;
  QFile there(folder.filePath(file));
  QVERIFY(there.open(QIODevice::ReadWrite) && there.write("of old") > 0 && there.flush());
  const Layer routes = layer(QStringLiteral("routes"), QStringLiteral("LineString"), QStringLiteral("EPSG:32633"), {},
                             {{wkt(QStringLiteral("LINESTRING(500000 5400000,500400 5400300)")), {}}});
  const Layer cover = layer(
      QStringLiteral("cover"), QStringLiteral("Polygon"), QStringLiteral("EPSG:32633"),
      {field("class", FieldType::Text)},
      {{wkt(QStringLiteral("POLYGON((500000 5400000,500040 5400000,500040 5400040,500000 5400000))")), {"Thicket"}}});
  QVariantMap parameters{{"OUTPUT", there.fileName() + QStringLiteral("|layername=other")}};
  if (algorithm.endsWith(QLatin1String("legs")))
    parameters.insert({{"INPUT", valueOf(routes)}, {"DATE", "2026-06-20"}});
  else
    parameters.insert({{"COVER", valueOf(cover)}, {"CELL", 10}});
  const Outcome outcome = run(algorithm, parameters);
  QVERIFY(!outcome.accepted);
  for (const char *word : {"OUTPUT", "layername=other", "no name for a file", "ogr:dbname='"})
    QVERIFY2(outcome.refusal.contains(QString::fromUtf8(word)), qPrintable(outcome.refusal));
  QVERIFY(there.seek(0));
  QCOMPARE(there.readAll(), QByteArray("of old"));
  QCOMPARE(QDir(folder.path()).entryList(QDir::Files | QDir::Hidden), QStringList(file));
}

BRUSHLINE_HOST_TEST_MAIN(ParameterChecksTest)
#include "parameter_checks_test.moc"
