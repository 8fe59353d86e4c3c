// SPDX-License-Identifier: GPL-2.0-or-later
#include "support/host_fixture.h"

#include <QFile>
#include <QRegularExpression>
#include <qgscoordinatetransform.h>
#include <qgsrasterdataprovider.h>
#include <qgsrasterlayer.h>
#include <qgsrasterrenderer.h>

#include <cmath>

using namespace brushline::test;

namespace {
const QString id = QStringLiteral("brushline:throughcover");
const QString crs = QStringLiteral("EPSG:32621");

Layer points(const QString &name, const std::vector<std::pair<QString, QString>> &keysAndPoints,
             const QString &system = crs) {
  std::vector<Row> rows;
  for (const auto &[key, point] : keysAndPoints)
    rows.push_back({wkt(point), {key.isEmpty() ? QVariant() : QVariant(key)}});
  return layer(name, QStringLiteral("Point"), system, {field("pair", FieldType::Text)}, rows);
}
Layer lines(const std::vector<QString> &all) {
  std::vector<Row> rows;
  for (const QString &each : all)
    rows.push_back({wkt(each), {}});
  return layer(QStringLiteral("fences"), QStringLiteral("LineString"), crs, {}, rows);
}
const QString west = QStringLiteral("POINT(600002 5400502)"), east = QStringLiteral("POINT(601002 5400502)");
QString sample(const char *name) {
  return QStringLiteral("%1/sample-project/sample.gpkg|layername=%2")
      .arg(QStringLiteral(BRUSHLINE_SOURCE_DIR), QLatin1String(name));
}
double sumOf(const std::vector<OutputRow> &rows, const char *field) {
  double sum = 0;
  for (const OutputRow &row : rows)
    sum += row.number(field);
  return sum;
}
} // namespace

class ThroughCoverAlgorithmTest : public QObject {
  Q_OBJECT
  QTemporaryDir mFolder;
  QString file(const char *name) const { return mFolder.filePath(QString::fromLatin1(name)); }
  QVariantMap given(const Layer &starts, const Layer &ends, const QVariantMap &more = {}) const {
    QVariantMap all{{"STARTS", valueOf(starts)}, {"ENDS", valueOf(ends)}, {"OUTPUT", "TEMPORARY_OUTPUT"}};
    for (auto it = more.begin(); it != more.end(); ++it)
      all.insert(it.key(), it.value());
    return all;
  }
  QString dem(const char *name, const std::function<double(double, double)> &height) const {
    RasterShape shape;
    shape.crs = crs;
    shape.transform = {599600, 10, 0, 5401000, 0, -10};
    shape.columns = 180;
    shape.rows = 100;
    shape.no_data = -9999;
    writeRaster(file(name), shape, [&](double x, double y, int) { return height(x, y); });
    return file(name);
  }

private slots:
  // Neither terrain nor cover: level and even, so the straight line at the formula's level speed,
  // 0.11 + 0.67 exp(-4/1800) m/s (Irmischer and Clarke 2018, as in walking_time.h).
  void levelAndEven() {
    const Layer a = points(QStringLiteral("a"), {{"", west}}), b = points(QStringLiteral("b"), {{"", east}});
    const Outcome outcome = run(id, given(a, b));
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(outcome.rows().size(), size_t(1));
    const OutputRow &row = outcome.rows()[0];
    QCOMPARE(row.number("legs"), 1.0);
    const double speed = 0.11 + 0.67 * std::exp(-4.0 / 1800);
    QVERIFY(std::abs(row.number("minutes") - row.number("length_m") / speed / 60) < 1e-6);
    QVERIFY(std::abs(row.number("direct_min") - row.number("minutes")) < 1e-9);
    QVERIFY(std::abs(outcome.results.value("MINUTES").toDouble() - row.number("minutes")) < 1e-9);
    QVERIFY(row.null("turns"));
  }

  // The sample: round the wall of brush, and the minutes that annotated legs tell.
  void sampleAgreesWithAnnotatedLegs() {
    const QString terrain = QStringLiteral("%1/sample-project/terrain.tif").arg(QStringLiteral(BRUSHLINE_SOURCE_DIR));
    const QVariantMap ground{{"DEM", terrain}, {"COVER", sample("cover")}, {"COVER_CLASS", "class"}};
    QVariantMap all = ground;
    all.insert(QVariantMap{{"STARTS", sample("points") + "|subset=name = 'Camp'"},
                           {"ENDS", sample("points") + "|subset=name = 'Hunting Stand'"},
                           {"POINTS", sample("points")},
                           {"OUTPUT", file("plan.gpkg")}});
    const Outcome planned = run(id, all);
    QVERIFY2(planned.ok, qPrintable(planned.said()));
    const OutputRow &row = planned.rows()[0];
    QCOMPARE(row.text("route"), QStringLiteral("Camp to Hunting Stand"));
    QVariantMap legs = ground;
    legs.insert(QVariantMap{
        {"INPUT", file("plan.gpkg")}, {"ROUTE_FIELD", "route"}, {"DATE", "2026-11-25"}, {"OUTPUT", file("legs.gpkg")}});
    const Outcome annotated = run(QStringLiteral("brushline:annotatelegs"), legs);
    QVERIFY2(annotated.ok, qPrintable(annotated.said()));
    QCOMPARE(double(annotated.rows().size()), row.number("legs"));
    QVERIFY(std::abs(sumOf(annotated.rows(), "walk_min") - row.number("minutes")) < 1e-4);
    QVERIFY(row.number("minutes") < 0.85 * row.number("direct_min"));
  }

  void barriersAreGoneRound() {
    const Layer a = points(QStringLiteral("a"), {{"", west}}), b = points(QStringLiteral("b"), {{"", east}});
    const Layer fence = lines({QStringLiteral("LINESTRING(600500 5400300,600500 5400800)")});
    const Outcome outcome = run(id, given(a, b, {{"BARRIERS", valueOf(fence)}, {"EFFORT", file("effort.tif")}}));
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    const OutputRow &row = outcome.rows()[0];
    QVERIFY(row.null("direct_min"));
    QCOMPARE(row.number("legs"), 2.0);
    QVERIFY(!row.geometry.intersects(wkt(QStringLiteral("LINESTRING(600500 5400300,600500 5400800)"))));
    // The shortest way round its lower end.
    const double shortest = 2 * std::hypot(500, 202);
    QVERIFY2(row.number("length_m") < shortest * 1.006, qPrintable(QString::number(row.number("length_m"))));
    QgsRasterLayer effort(file("effort.tif"), QStringLiteral("effort"), QStringLiteral("gdal"));
    QVERIFY(effort.isValid());
    const double minutes = effort.dataProvider()->sample(QgsPointXY(601002, 5400502), 1);
    QVERIFY(std::abs(minutes / row.number("minutes") - 1) < 0.006);
    // By classes of minutes, as its file keeps them.
    QCOMPARE(effort.renderer()->type(), QStringLiteral("singlebandpseudocolor"));
    QCOMPARE(effort.renderer()->legendSymbologyItems().size(), 10);
    QCOMPARE(effort.renderer()->legendSymbologyItems()[1].first, QStringLiteral("5–10 min"));
  }

  // A stream of 2 m in cells of 20 m, wherever in them it runs: gone round to a ford far off, not planned across and
  // then found out. As codes, and as polygons.
  void narrowWaterIsSeen_data() {
    QTest::addColumn<bool>("codes");
    QTest::addColumn<double>("x");
    for (const bool codes : {false, true})
      for (const double x : {600502.0, 600508.0, 600516.0})
        QTest::addRow("%s at %.0f", codes ? "codes" : "polygons", x) << codes << x;
  }
  void narrowWaterIsSeen() {
    QFETCH(bool, codes);
    QFETCH(double, x);
    const Layer a = points(QStringLiteral("a"), {{"", west}}), b = points(QStringLiteral("b"), {{"", east}});
    QVariantMap cover{{"CELL", 20}, {"MARGIN", 1800}};
    const Layer stream = layer(
        QStringLiteral("cover"), QStringLiteral("Polygon"), crs, {field("class", FieldType::Text)},
        {{wkt(QStringLiteral("POLYGON((%1 5399100,%2 5399100,%2 5403000,%1 5403000,%1 5399100))").arg(x).arg(x + 2)),
          {"water"}},
         {wkt(QStringLiteral("POLYGON((%1 5398000,%2 5398000,%2 5399000,%1 5399000,%1 5398000))").arg(x).arg(x + 2)),
          {"water"}}});
    if (codes) {
      RasterShape shape;
      shape.crs = crs;
      shape.transform = {598000, 2, 0, 5402400, 0, -2};
      shape.columns = 2500;
      shape.rows = 2200;
      shape.no_data = 0;
      shape.whole_numbers = true;
      // ESA WorldCover: 30 is grassland, 80 permanent water.
      writeRaster(file("stream.tif"), shape, [&](double cx, double cy, int) {
        return cx > x && cx < x + 2 && (cy > 5399100 || cy < 5399000) ? 80.0 : 30.0;
      });
      cover.insert(QVariantMap{{"COVER_RASTER", file("stream.tif")}, {"COVER_LEGEND", 1}});
    } else {
      cover.insert(QVariantMap{{"COVER", valueOf(stream)}});
    }
    const Outcome outcome = run(id, given(a, b, cover));
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    const OutputRow &row = outcome.rows()[0];
    QCOMPARE(row.number("legs"), 2.0);
    for (const char *part : {"LINESTRING(%1 5399100,%1 5403000)", "LINESTRING(%1 5398000,%1 5399000)"})
      QVERIFY(!row.geometry.intersects(wkt(QString::fromLatin1(part).arg(x + 1))));
    // The shortest way keeps below the corner of the last cell that the stream closes: a cell lower at most, and lower
    // by what a leg of this slope sinks over half a cell.
    const double below = 1402 + 20 + 10 * 1402 / 500.0;
    const double shortest = std::hypot(x - 600002, below) + std::hypot(601002 - x, below);
    QVERIFY2(row.number("length_m") < shortest * 1.001, qPrintable(QString::number(row.number("length_m"))));
  }

  void saysWhatEncloses() {
    const QString slope = dem("cliff.tif", [](double x, double) {
      return x < 600500 ? 0.0 : x > 600540 ? 100.0 : (x - 600500) * 2.5;
    });
    const Layer a = points(QStringLiteral("a"), {{"", west}}), b = points(QStringLiteral("b"), {{"", east}});
    const Outcome steep = run(id, given(a, b, {{"DEM", slope}}));
    QVERIFY(!steep.ok);
    QVERIFY2(steep.said().contains(QStringLiteral("enclosed by ground steeper than 30°")), qPrintable(steep.said()));
    QVERIFY2(steep.said().contains(QLatin1String("enclosed")), qPrintable(steep.said()));
    const Layer pen = lines(
        {QStringLiteral("LINESTRING(599900 5400400,600100 5400400,600100 5400600,599900 5400600,599900 5400400)")});
    const Outcome fenced = run(id, given(a, b, {{"BARRIERS", valueOf(pen)}}));
    QVERIFY(!fenced.ok);
    QVERIFY2(fenced.said().contains(QLatin1String("the start is enclosed by barriers")), qPrintable(fenced.said()));
  }

  // A map of the cover that draws a thicket alone, between two places on blank land: a route round it, at the speed of
  // land without a map, and the run tells how far nobody has looked: all of it. Nobody is sent there with a factor of
  // 0, and half as fast with one half.
  void onlyTheThicketIsDrawn() {
    const Layer a = points(QStringLiteral("a"), {{"", west}}), b = points(QStringLiteral("b"), {{"", east}});
    const QString drawn =
        QStringLiteral("POLYGON((600400 5400402,600600 5400402,600600 5400602,600400 5400602,600400 5400402))");
    const Layer cover = layer(QStringLiteral("cover"), QStringLiteral("Polygon"), crs,
                              {field("class", FieldType::Text)}, {{wkt(drawn), {"thicket"}}});
    const double speed = 0.11 + 0.67 * std::exp(-4.0 / 1800); // as in levelAndEven()
    QVariantMap more{{"COVER", valueOf(cover)}};
    for (const double factor : {1.0, 0.5}) {
      if (factor < 1)
        more.insert("UNKNOWN_SPEED", factor);
      const Outcome outcome = run(id, given(a, b, more));
      QVERIFY2(outcome.ok, qPrintable(outcome.said()));
      const OutputRow &row = outcome.rows()[0];
      QVERIFY(row.geometry.intersection(wkt(drawn)).length() < 5);
      const double metres = row.number("length_m");
      QVERIFY2(metres < 1.006 * 2 * std::hypot(500, 100 * 500 / 398.0), qPrintable(QString::number(metres)));
      QVERIFY(std::abs(row.number("minutes") * 60 * factor * speed / metres - 1) < 0.03);
      const QString said = outcome.warnings.join(QLatin1Char('\n'));
      const auto told =
          QRegularExpression("(\\d+) leg\\(s\\) lead over ground without known cover, (\\d+) m in all").match(said);
      QVERIFY2(told.hasMatch() && said.contains("UNKNOWN_SPEED=0"), qPrintable(said));
      QCOMPARE(told.captured(1).toDouble(), row.number("legs"));
      QVERIFY2(std::abs(told.captured(2).toDouble() - metres) < 6, qPrintable(said));
    }
    more.insert("UNKNOWN_SPEED", 0);
    const Outcome closed = run(id, given(a, b, more));
    QVERIFY(!closed.ok);
    QVERIFY2(closed.said().contains("lies on ground without known cover"), qPrintable(closed.said()));
    QVERIFY2(!closed.said().contains("UNKNOWN_SPEED=0"), qPrintable(closed.said()));
  }

  // A start in a cell that a fence crosses, 2 m from it, does not open the fence: what lies behind is out of reach, and
  // that is the reason told.
  void startsBesideAFence() {
    const Layer fence = lines({QStringLiteral("LINESTRING(590000 5400504,610000 5400504)")});
    const Layer a = points(QStringLiteral("a"), {{"", west}}), b = points(QStringLiteral("b"), {{"", east}}),
                behind = points(QStringLiteral("behind"), {{"", "POINT(600502 5400702)"}});
    const QVariantMap more{{"BARRIERS", valueOf(fence)}, {"CELL", 10}, {"EFFORT", file("fenced.tif")}};
    const Outcome along = run(id, given(a, b, more));
    QVERIFY2(along.ok, qPrintable(along.said()));
    QgsRasterLayer effort(file("fenced.tif"), QStringLiteral("effort"), QStringLiteral("gdal"));
    QVERIFY(effort.isValid());
    const auto minutes = [&](double x, double y) { return effort.dataProvider()->sample(QgsPointXY(x, y), 1); };
    QVERIFY(minutes(600502, 5400402) > 0);
    QVERIFY(!(minutes(600502, 5400602) >= 0));
    const Outcome across = run(id, given(a, behind, more));
    QVERIFY(!across.ok);
    QVERIFY2(across.said().contains(QLatin1String("enclosed by barriers")), qPrintable(across.said()));
    QVERIFY2(!across.said().contains(QLatin1String("MAX_LEGS")), qPrintable(across.said()));
  }

  // Terrain models whose units are not metres on the ground: the cells are as long as theirs are on the ground, and so
  // a bank of 20 m over one of them is seen. By hand: Mercator stretches by 1 / cos(60) = 2 both ways, equidistant
  // cylindrical that much to the east only; a US survey foot is 1200/3937 m (EPSG 9003).
  void cellsAreMeasuredOnTheGround_data() {
    QTest::addColumn<QString>("system");
    QTest::addColumn<double>("longitude");
    QTest::addColumn<double>("latitude");
    QTest::addColumn<double>("cell");
    QTest::addColumn<double>("metres");
    QTest::newRow("feet") << "EPSG:2264" << -79.0 << 35.5 << 30.0 << 30 * 1200.0 / 3937;
    QTest::newRow("Mercator") << "EPSG:3857" << 15.0 << 60.0 << 20.0 << 10.0;
    QTest::newRow("one way only") << "EPSG:4087" << 15.0 << 60.0 << 20.0 << 10.0;
    QTest::newRow("degrees") << "EPSG:4326" << 15.0 << 60.0 << 20 / 111320.0 << 10.0;
  }
  void cellsAreMeasuredOnTheGround() {
    QFETCH(QString, system);
    QFETCH(double, longitude);
    QFETCH(double, latitude);
    QFETCH(double, cell);
    QFETCH(double, metres);
    const QString degrees = QStringLiteral("EPSG:4326");
    const QgsCoordinateReferenceSystem from(degrees), to(system);
    const QgsCoordinateTransform toDem(from, to, QgsCoordinateTransformContext());
    const QgsPointXY middle = toDem.transform(longitude, latitude);
    RasterShape shape;
    shape.crs = system;
    shape.transform = {middle.x() - 150 * cell, cell, 0, middle.y() + 150 * cell, 0, -cell};
    shape.columns = shape.rows = 300;
    shape.no_data = -9999;
    writeRaster(file("flat.tif"), shape, [](double, double, int) { return 5.0; });
    writeRaster(file("bank.tif"), shape, [&](double, double y, int) { return y < middle.y() ? 5.0 : 25.0; });
    const auto at = [&](double north) {
      return QStringLiteral("POINT(%1 %2)").arg(longitude, 0, 'f', 6).arg(latitude + north, 0, 'f', 6);
    };
    const Layer a = points(QStringLiteral("a"), {{"", at(-0.0018)}}, degrees),
                b = points(QStringLiteral("b"), {{"", at(0.0018)}}, degrees);
    const Outcome flat = run(id, given(a, b, {{"DEM", file("flat.tif")}, {"EFFORT", file("flat effort.tif")}}));
    QVERIFY2(flat.ok, qPrintable(flat.said()));
    const QgsRasterLayer effort(file("flat effort.tif"), QStringLiteral("effort"), QStringLiteral("gdal"));
    QVERIFY(effort.isValid());
    QVERIFY2(effort.crs().authid().startsWith(QLatin1String("EPSG:326")), qPrintable(effort.crs().authid()));
    QVERIFY2(std::abs(effort.rasterUnitsPerPixelX() - metres) < 0.06,
             qPrintable(QString::number(effort.rasterUnitsPerPixelX())));
    const Outcome bank = run(id, given(a, b, {{"DEM", file("bank.tif")}}));
    QVERIFY(!bank.ok);
    QVERIFY2(bank.said().contains(QStringLiteral("enclosed by ground steeper than 30°")), qPrintable(bank.said()));
  }

  // One bad pair does not stop the others; each is told with its reason.
  void badPairsArePassedOver() {
    const Layer starts = points(QStringLiteral("s"), {{"good", west},
                                                      {"same", west},
                                                      {"water", west},
                                                      {"alone", west},
                                                      {"twice", west},
                                                      {"twice", east},
                                                      {"", west},
                                                      {"outside", west},
                                                      {"hole", west}});
    const Layer ends = points(QStringLiteral("e"), {{"good", east},
                                                    {"same", west},
                                                    {"water", "POINT(600502 5400752)"},
                                                    {"twice", east},
                                                    {"nobody", east},
                                                    {"outside", "POINT(650000 5400502)"},
                                                    {"hole", "POINT(600702 5400102)"}});
    const Layer pond = layer(
        QStringLiteral("cover"), QStringLiteral("Polygon"), crs, {field("class", FieldType::Text)},
        {{wkt(QStringLiteral("POLYGON((600400 5400700,600600 5400700,600600 5400800,600400 5400800,600400 5400700))")),
          {"water"}},
         {wkt(QStringLiteral("POLYGON((599000 5400000,602000 5400000,602000 5401000,599000 5401000,599000 5400000),"
                             "(600400 5400700,600600 5400700,600600 5400800,600400 5400800,600400 5400700))")),
          {"open woods"}}});
    const QString heights = dem(
        "hole.tif", [](double x, double y) { return x > 600650 && x < 600750 && y < 5400200 ? std::nan("") : 5.0; });
    const Outcome outcome =
        run(id, given(starts, ends, {{"PAIR_FIELD", "pair"}, {"COVER", valueOf(pond)}, {"DEM", heights}}));
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(outcome.output().texts("route"), QStringList{"good"});
    for (const char *reason :
         {"same place", "lies in lake, pond or river", "no end of that name", "has the same", "no start of that name",
          "has nothing in its field", "outside the terrain model", "without a height", "passed over in all"})
      QVERIFY2(outcome.said().contains(QString::fromUtf8(reason)),
               qPrintable(QLatin1String(reason) + QStringLiteral(": ") + outcome.said()));
  }

  void unpairedByOrder() {
    const Layer starts = points(QStringLiteral("s"), {{"", west}, {"", west}}),
                ends = points(QStringLiteral("e"), {{"", east}});
    const Outcome outcome = run(id, given(starts, ends));
    QVERIFY(outcome.ok);
    QCOMPARE(outcome.rows().size(), size_t(1));
    QVERIFY2(outcome.said().contains(QLatin1String("has no partner")), qPrintable(outcome.said()));
  }

  // Of several points in one feature none is taken for the start.
  void severalPointsInOneFeature() {
    const Layer starts = layer(QStringLiteral("s"), QStringLiteral("MultiPoint"), crs, {field("pair", FieldType::Text)},
                               {{wkt("MULTIPOINT((600002 5400502),(600102 5400502))"), {"a"}},
                                {wkt("MULTIPOINT((600002 5400502))"), {"b"}}}),
                ends = points(QStringLiteral("e"), {{"a", east}, {"b", east}});
    const Outcome outcome = run(id, given(starts, ends, {{"PAIR_FIELD", "pair"}}));
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(outcome.output().texts("route"), QStringList{"b"});
    QVERIFY2(outcome.said().contains("feature 1 has 2 points"), qPrintable(outcome.said()));
  }

  void refused() {
    const Layer starts = points(QStringLiteral("s"), {{"", west}}), ends = points(QStringLiteral("e"), {{"", east}}),
                none = points(QStringLiteral("none"), {}),
                nowhere = points(QStringLiteral("nowhere"), {{"", west}}, QString());
    const Layer other = layer(QStringLiteral("other"), QStringLiteral("Point"), crs, {field("x", FieldType::Text)},
                              {{wkt(east), {"1"}}});
    const auto says = [&](const QVariantMap &parameters, const char *words) {
      const Outcome outcome = run(id, parameters);
      return !outcome.ok && outcome.said().contains(QString::fromUtf8(words));
    };
    QVERIFY(says(given(none, ends), "has no points"));
    QVERIFY(says(given(nowhere, ends), "has no coordinate reference system"));
    QVERIFY(says(given(starts, other, {{"PAIR_FIELD", "pair"}}), "has no field “pair”"));
    QVERIFY(says(given(starts, ends, {{"CELL", 0.05}}), "Give CELL at least"));
    QVERIFY(says(given(starts, ends, {{"CELL", 0.05}}), "MB"));
    QVERIFY(says(given(starts, ends, {{"SLOPE_LIMIT", 80}}), "SLOPE_LIMIT"));
    QVERIFY(says(given(starts, starts), "same place"));
    const Layer fence = lines({QStringLiteral("LINESTRING(600500 5400300,600500 5400800)")});
    QVERIFY(says(given(starts, ends, {{"BARRIERS", valueOf(fence)}, {"MAX_LEGS", 1}}), "MAX_LEGS"));
  }

  void cancelledLeavesNothing() {
    const Layer a = points(QStringLiteral("a"), {{"", west}}), b = points(QStringLiteral("b"), {{"", east}});
    Ear ear;
    QObject::connect(&ear, &QgsFeedback::progressChanged, &ear, [&](double) { ear.cancel(); });
    Surroundings surroundings;
    surroundings.ear = &ear;
    surroundings.leave_outputs = true;
    run(id, given(a, b, {{"OUTPUT", file("never.gpkg")}, {"CELL", 1}}), surroundings);
    QVERIFY(!QFile::exists(file("never.gpkg")));
  }

  void theSlowestWalkerDecides() {
    const Layer a = points(QStringLiteral("a"), {{"", west}}), b = points(QStringLiteral("b"), {{"", east}});
    const Layer walkers =
        table(QStringLiteral("w"), {field("walker", FieldType::Text), field("speed_f", FieldType::Real)},
              {{"Quick", 1.2}, {"Small", 0.5}});
    const Outcome alone = run(id, given(a, b)), all = run(id, given(a, b, {{"WALKERS", valueOf(walkers)}}));
    QVERIFY2(all.ok, qPrintable(all.said()));
    QVERIFY(std::abs(all.rows()[0].number("minutes") - 2 * alone.rows()[0].number("minutes")) < 1e-6);
    QVERIFY(all.infos.join(QLatin1Char(' ')).contains(QLatin1String("Small")));
  }
};

BRUSHLINE_HOST_TEST_MAIN(ThroughCoverAlgorithmTest)
#include "through_cover_algorithm_test.moc"
