// SPDX-License-Identifier: GPL-2.0-or-later
#include "support/full_disk.h"
#include "support/host_fixture.h"
#include "support/random.h"

#include <QDir>
#include <QFile>
#include <qgsrasterdataprovider.h>
#include <qgsrasterlayer.h>
#include <qgsrasterrenderer.h>

#include <cmath>

using namespace brushline::test;

namespace {
const QString id = QStringLiteral("brushline:sightsurface");
const QString crs = QStringLiteral("EPSG:32621");

Layer cover(const std::vector<std::pair<QString, QString>> &classAndPolygon, const QString &system = crs) {
  std::vector<Row> rows;
  for (const auto &[name, polygon] : classAndPolygon)
    rows.push_back({wkt(polygon), {name}});
  return layer(QStringLiteral("cover"), QStringLiteral("Polygon"), system, {field("class", FieldType::Text)}, rows);
}

//! Square cells from 600000, 5400100 on to the right and down.
RasterShape cells(double side, int columns, int rows) {
  RasterShape shape;
  shape.crs = crs;
  shape.transform = {600000, side, 0, 5400100, 0, -side};
  shape.columns = columns;
  shape.rows = rows;
  return shape;
}

//! The value of a raster file at a place; NaN without data.
double at(const QString &path, double x, double y) {
  QgsRasterLayer raster(path, QStringLiteral("sight"), QStringLiteral("gdal"));
  if (!raster.isValid())
    qFatal("no raster: %s", qPrintable(path));
  bool ok = false;
  const double value = raster.dataProvider()->sample(QgsPointXY(x, y), 1, &ok);
  return ok ? value : std::nan("");
}

const QString westPatch =
    QStringLiteral("POLYGON((600000 5400000,600100 5400000,600100 5400100,600000 5400100,600000 5400000))");
const QString eastPatch =
    QStringLiteral("POLYGON((600100 5400000,600200 5400000,600200 5400100,600100 5400100,600100 5400000))");
} // namespace

class SightSurfaceAlgorithmTest : public QObject {
  Q_OBJECT
  QTemporaryDir mFolder;
  QString file(const char *name) const { return mFolder.filePath(QString::fromLatin1(name)); }

private slots:
  void classesOfPolygons() {
    const Layer land = cover({{QStringLiteral("Thicket"), westPatch}, {QStringLiteral("open ground"), eastPatch}});
    const Outcome outcome = run(id, {{"COVER", valueOf(land)}, {"CELL", 10}, {"OUTPUT", file("a.tif")}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QgsRasterLayer raster(file("a.tif"));
    QCOMPARE(raster.width(), 20);
    QCOMPARE(raster.height(), 10);
    QCOMPARE(raster.crs().authid(), crs);
    QCOMPARE(at(file("a.tif"), 600055, 5400055), 6.0); // the built-in table: regression only
    QCOMPARE(at(file("a.tif"), 600155, 5400055), 300.0);
  }

  // As somebody else opens it: by classes of sight, not in greys that say nothing.
  void itsLookIsKept() {
    const Layer land = cover({{QStringLiteral("Thicket"), westPatch}, {QStringLiteral("open ground"), eastPatch}});
    for (const bool keep : {true, false}) {
      const QString path = file(keep ? "dressed.tif" : "plain.tif");
      const Outcome outcome = run(id, {{"COVER", valueOf(land)}, {"CELL", 10}, {"OUTPUT", path}, {"KEEP_STYLE", keep}});
      QVERIFY2(outcome.ok && outcome.warnings.isEmpty(), qPrintable(outcome.said()));
      const QgsRasterLayer raster(path, QStringLiteral("sight"), QStringLiteral("gdal"));
      QCOMPARE(raster.renderer()->type() == QLatin1String("singlebandpseudocolor"), keep);
      if (!keep)
        continue;
      const QList<QPair<QString, QColor>> legend = raster.renderer()->legendSymbologyItems();
      QCOMPARE(legend.size(), 7);
      QCOMPARE(legend.front().first, QStringLiteral("0–5 m"));
      QCOMPARE(legend.back().first, QStringLiteral("> 160 m"));
      const std::unique_ptr<QgsRasterBlock> drawn(raster.renderer()->block(1, raster.extent(), 20, 10));
      QCOMPARE(QColor(drawn->color(5, 5)), legend[1].second);  // 6 m
      QCOMPARE(QColor(drawn->color(5, 15)), legend[6].second); // 300 m
    }
  }

  void clearSightAndSeason() {
    const Layer land = cover({{QStringLiteral("mixed forest"), westPatch}});
    const Outcome outcome = run(
        id, {{"COVER", valueOf(land)}, {"CELL", 10}, {"SEASON", 1}, {"CLEAR_SIGHT", 0.25}, {"OUTPUT", file("b.tif")}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    // A quarter is clear at twice the half distance, by the exponential law.
    QVERIFY(std::abs(at(file("b.tif"), 600055, 5400055) - 2 * 42) < 1e-3);
    QCOMPARE(outcome.warnings.filter("SIGHT_RASTER").size(), 1); // it is none
  }

  // 500 stems per hectare of 0.25 m: 55.452 m (Poisson stand, computed).
  void stands() {
    const QList<QgsField> fields = {field("n", FieldType::Real), field("d", FieldType::Real),
                                    field("u", FieldType::Real)};
    const Layer land = layer(QStringLiteral("stands"), QStringLiteral("Polygon"), crs, fields,
                             {{wkt(westPatch), {500, 0.25, QVariant()}}, {wkt(eastPatch), {500, 0.25, 0.05}}});
    const Outcome outcome = run(id, {{"COVER", valueOf(land)},
                                     {"STEMS_FIELD", "n"},
                                     {"DIAMETER_FIELD", "d"},
                                     {"UNDERSTOREY_FIELD", "u"},
                                     {"CELL", 5},
                                     {"OUTPUT", file("c.tif")}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QVERIFY(std::abs(at(file("c.tif"), 600052.5, 5400052.5) - 55.452) < 0.001);
    QVERIFY(std::abs(at(file("c.tif"), 600152.5, 5400052.5) - std::log(2.0) / 0.0625) < 0.001);
  }

  // New York's plane counts in US feet: 1000 of them are 304.8 m, so 61 cells of 5 m.
  void cellsAreInMetresOnMapsInFeet() {
    const Layer land =
        cover({{QStringLiteral("brush"), QStringLiteral("POLYGON((1000000 200000,1001000 200000,"
                                                        "1001000 201000,1000000 201000,1000000 200000))")}},
              QStringLiteral("EPSG:2263"));
    const Outcome outcome = run(id, {{"COVER", valueOf(land)}, {"CELL", 5}, {"OUTPUT", file("feet.tif")}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QVERIFY2(outcome.infos.join(' ').contains("61 columns and 61 rows"), qPrintable(outcome.said()));
  }

  // Bare ground and ground of which nothing is known are not the same.
  void bareStandsAreSeenFarOver() {
    const QList<QgsField> fields = {field("n", FieldType::Real), field("d", FieldType::Real)};
    const Layer land = layer(QStringLiteral("stands"), QStringLiteral("Polygon"), crs, fields,
                             {{wkt(westPatch), {0, 0}}, {wkt(eastPatch), {500, 0.25}}});
    const Outcome outcome = run(id, {{"COVER", valueOf(land)},
                                     {"STEMS_FIELD", "n"},
                                     {"DIAMETER_FIELD", "d"},
                                     {"CELL", 5},
                                     {"OUTPUT", file("bare.tif")}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(at(file("bare.tif"), 600052.5, 5400052.5), 10000.0);
  }

  // Neither a wrong legend nor a wrong field may give an empty surface without a word.
  void nothingKnownIsTold() {
    writeRaster(file("cover.tif"), cells(10, 30, 10), [](double, double, int) { return 10.0; });
    QVariantMap parameters = {{"COVER_RASTER", file("cover.tif")}, {"CELL", 10}, {"OUTPUT", file("empty.tif")}};
    const Outcome outcome = run(id, parameters);
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    const QString warnings = outcome.warnings.join(' ');
    QVERIFY2(warnings.contains("COVER_RASTER") && warnings.contains(": 10.") && warnings.contains("empty"),
             qPrintable(warnings));
    parameters["COVER_LEGEND"] = 1;
    parameters["OUTPUT"] = file("full.tif");
    const Outcome known = run(id, parameters);
    QVERIFY2(known.ok && known.warnings.isEmpty(), qPrintable(known.said()));

    const Layer land = layer(QStringLiteral("stands"), QStringLiteral("Polygon"), crs, {field("u", FieldType::Real)},
                             {{wkt(westPatch), {0.05}}});
    const Outcome lacking = run(
        id, {{"COVER", valueOf(land)}, {"UNDERSTOREY_FIELD", "u"}, {"CELL", 5}, {"OUTPUT", file("understorey.tif")}});
    QVERIFY2(!lacking.accepted && lacking.refusal.contains("STEMS_FIELD"), qPrintable(lacking.said()));
  }

  void measuredSightsComeFirstThenPolygonsThenCodes() {
    const RasterShape shape = cells(10, 30, 10);
    writeRaster(file("codes.tif"), shape, [](double, double, int) { return 10.0; }); // tree cover
    writeRaster(file("sights.tif"), shape, [](double x, double, int) {
      return x < 600050 ? 77.0 : x < 600060 ? 0.0 : std::nan("");
    });
    const Layer land = cover({{QStringLiteral("brush"), westPatch}});
    const QVariantMap common = {{"COVER_RASTER", file("codes.tif")},
                                {"SIGHT_RASTER", file("sights.tif")},
                                {"EXTENT", "600000,600300,5400000,5400100 [EPSG:32621]"},
                                {"CELL", 10}};
    QVariantMap parameters = common;
    parameters.insert({{"COVER", valueOf(land)}, {"OUTPUT", file("d.tif")}});
    const Outcome own = run(id, parameters);
    QVERIFY2(own.ok, qPrintable(own.said()));
    QVERIFY(std::abs(at(file("d.tif"), 600045, 5400055) - 77) < 1e-3); // measured
    // A sight of 0 is no data; brush: regression only.
    QVERIFY(std::abs(at(file("d.tif"), 600055, 5400055) - 12) < 1e-3);
    QVERIFY(std::isnan(at(file("d.tif"), 600205, 5400055))); // 10 is none of our own names
    parameters = common;
    parameters.insert({{"COVER_LEGEND", 1}, {"OUTPUT", file("e.tif")}});
    const Outcome codes = run(id, parameters);
    QVERIFY2(codes.ok, qPrintable(codes.said()));
    QVERIFY(at(file("e.tif"), 600205, 5400055) > 5);
  }

  void unknownCoverIsNoData() {
    const Layer land = cover({{QStringLiteral("heath"), westPatch}});
    const Outcome outcome = run(id, {{"COVER", valueOf(land)},
                                     {"EXTENT", "600000,600300,5400000,5400100 [EPSG:32621]"},
                                     {"CELL", 10},
                                     {"OUTPUT", file("f.tif")}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QVERIFY(std::isnan(at(file("f.tif"), 600205, 5400055)));
  }

  void refusals() {
    const Layer land = cover({{QStringLiteral("heath"), westPatch}});
    const Layer degrees =
        cover({{QStringLiteral("heath"), QStringLiteral("POLYGON((0 0,1 0,1 1,0 0))")}}, QStringLiteral("EPSG:4326"));
    const Layer odd = cover({{QStringLiteral("moon dust"), westPatch}});
    const Layer minus =
        layer(QStringLiteral("stands"), QStringLiteral("Polygon"), crs,
              {field("n", FieldType::Real), field("d", FieldType::Real)}, {{wkt(westPatch), {-5, 0.2}}});
    const QVariant out = file("none.tif");
    const std::vector<std::pair<QVariantMap, QStringList>> cases = {
        {{{"OUTPUT", out}}, {"COVER"}},
        {{{"COVER", valueOf(land)}, {"CELL", 0}, {"OUTPUT", out}}, {"CELL"}},
        {{{"COVER", valueOf(land)}, {"CLEAR_SIGHT", 1}, {"OUTPUT", out}}, {"CLEAR_SIGHT", "0.99"}},
        {{{"COVER", valueOf(degrees)}, {"OUTPUT", out}}, {"CELL", "degrees"}},
        {{{"COVER", valueOf(odd)}, {"OUTPUT", out}}, {"COVER", "moon dust", "COVER_TABLE"}},
        {{{"COVER", valueOf(minus)}, {"STEMS_FIELD", "n"}, {"DIAMETER_FIELD", "d"}, {"OUTPUT", out}},
         {"feature 1", "-5"}},
        {{{"COVER", valueOf(minus)}, {"STEMS_FIELD", "n"}, {"OUTPUT", out}}, {"DIAMETER_FIELD"}},
        {{{"COVER", valueOf(land)}, {"CELL", 0.01}, {"EXTENT", "0,900000,0,900000 [EPSG:32621]"}, {"OUTPUT", out}},
         {"CELL", "cells"}},
        {{{"COVER", valueOf(land)}, {"OUTPUT", "/proc/none/a.tif"}}, {"OUTPUT"}},
    };
    for (const auto &[parameters, words] : cases) {
      const Outcome outcome = run(id, parameters);
      QVERIFY2(!outcome.ok, qPrintable(words.join(QLatin1Char(' '))));
      for (const QString &word : words)
        QVERIFY2(outcome.said().contains(word), qPrintable(word + QStringLiteral(" in: ") + outcome.said()));
      QVERIFY(!QFile::exists(out.toString()));
    }
    QVERIFY(QDir(mFolder.path()).entryList({QStringLiteral(".*.tif")}, QDir::Files | QDir::Hidden).isEmpty());
  }

#ifdef Q_OS_UNIX
  // At the beginning, while rows are still being made, and at the end.
  void aFullDiskLeavesNoHalfFile() {
    const RasterShape shape = cells(1, 3000, 1000);
    Random random(7);
    writeRaster(file("rough.tif"), shape, [&random](double, double, int) { return random.between(1, 100); });
    const QVariantMap parameters{{"SIGHT_RASTER", file("rough.tif")}, {"CELL", 1}, {"OUTPUT", file("h.tif")}};
    const Outcome whole = run(id, parameters);
    QVERIFY2(whole.ok, qPrintable(whole.said()));
    const qint64 size = QFileInfo(file("h.tif")).size();
    QVERIFY(QFile::remove(file("h.tif")));
    for (const qint64 limit : {qint64(100000), size / 2, size - 1}) {
      const Outcome outcome = [&] {
        const FullDisk full{rlim_t(limit)};
        return run(id, parameters);
      }();
      QVERIFY(!outcome.ok);
      for (const char *word : {"OUTPUT", "h.tif", "could not be written whole", "Is the disk full?"})
        QVERIFY2(outcome.said().contains(word), qPrintable(outcome.said()));
      QVERIFY(!QFile::exists(file("h.tif")));
      QVERIFY(QDir(mFolder.path()).entryList({QStringLiteral(".*")}, QDir::Files | QDir::Hidden).isEmpty());
    }
  }
#endif

  void cancelLeavesNothing() {
    const Layer land = cover({{QStringLiteral("heath"), westPatch}});
    Ear ear;
    ear.cancel();
    Surroundings cancelled;
    cancelled.ear = &ear;
    run(id, {{"COVER", valueOf(land)}, {"CELL", 0.1}, {"OUTPUT", file("g.tif")}}, cancelled);
    QVERIFY(!QFile::exists(file("g.tif")));
  }
};

BRUSHLINE_HOST_TEST_MAIN(SightSurfaceAlgorithmTest)
#include "sight_surface_algorithm_test.moc"
