// SPDX-License-Identifier: GPL-2.0-or-later
#include "support/cancelled_run.h"
#include "support/host_fixture.h"
#include "support/near.h"
#include "support/random.h"

#include <GeographicLib/Geodesic.hpp>

#include <QDir>
#include <QFile>
#include <qgsapplication.h>
#include <qgscoordinatetransform.h>
#include <qgspoint.h>
#include <qgsprocessingalgorithm.h>
#include <qgsprocessingregistry.h>
#include <qgsproject.h>
#include <qgsvectorlayer.h>

#include <algorithm>
#include <cmath>

using namespace brushline;
using namespace brushline::test;

namespace {

const QString id = QStringLiteral("brushline:northlines");
const QString sampleExtent = QStringLiteral("631500,634500,5405500,5408500 [EPSG:32621]");

Outcome lines(QVariantMap parameters, const Surroundings &surroundings = {}) {
  for (const auto &[key, value] : std::initializer_list<std::pair<const char *, QVariant>>{
           {"EXTENT", sampleExtent}, {"DATE", "2026-11-25"}, {"OUTPUT", "memory:"}})
    if (!parameters.contains(QString::fromLatin1(key)))
      parameters[QString::fromLatin1(key)] = value;
  return run(id, parameters, surroundings);
}

struct Inverse {
  double metres, azimuth;
};
Inverse inverse(const QgsPointXY &from, const QgsPointXY &to) {
  double metres, azimuth, arrival;
  GeographicLib::Geodesic::WGS84().Inverse(from.y(), from.x(), to.y(), to.x(), metres, azimuth, arrival);
  return {metres, azimuth};
}

QgsCoordinateTransform toPlaces(const QString &crs) {
  return QgsCoordinateTransform(QgsCoordinateReferenceSystem(crs), QgsCoordinateReferenceSystem("EPSG:4326"),
                                QgsCoordinateTransformContext());
}

QgsPolylineXY lineOf(const OutputRow &row) { return row.geometry.asPolyline(); }

} // namespace

class NorthLinesAlgorithmTest : public QObject {
  Q_OBJECT
  QTemporaryDir mFolder;

private slots:
  void face() {
    const QgsProcessingAlgorithm *algorithm = QgsApplication::processingRegistry()->algorithmById(id);
    QVERIFY(algorithm);
    QCOMPARE(algorithm->displayName(), QString("Magnetic north lines"));
    QCOMPARE(algorithm->groupId(), QString("magnetics"));
    QStringList keys;
    for (const auto *definition : algorithm->parameterDefinitions())
      keys << definition->name();
    QCOMPARE(keys, QStringList({"EXTENT", "SPACING", "DATE", "DECLINATION", "FIELD_MODEL", "GRID_CRS", "KEEP_STYLE",
                                "OUTPUT"}));
    QCOMPARE(algorithm->parameterDefinition("SPACING")->defaultValue().toDouble(), 500.0);
  }

  void againstFieldAtPoints_data() {
    QTest::addColumn<QString>("extent");
    QTest::addColumn<QString>("grid");
    QTest::addColumn<double>("spacing");
    const auto row = [](const char *name, const char *extent, const char *grid, double spacing) {
      QTest::newRow(name) << QString(extent) << QString(grid) << spacing;
    };
    row("the sample", "631500,634500,5405500,5408500 [EPSG:32621]", "", 250);
    row("south, in Tasmania's UTM", "146.5,147.5,-43,-42 [EPSG:4326]", "", 5000);
    row("web map at 60 north", "1100000,1160000,8390000,8430000 [EPSG:3857]", "", 2000);
    row("polar stereographic at 80 north", "-25,-15,80,81 [EPSG:4326]", "EPSG:3413", 5000);
    row("the south pole itself", "-20000,20000,-20000,20000 [EPSG:3031]", "", 2000);
    row("equal area, not conformal", "-24,-20,64,66 [EPSG:4326]", "EPSG:3035", 5000);
    row("oblique, on another datum", "116,117,5,6 [EPSG:4326]", "EPSG:29873", 5000);
    row("old datum, counted from Paris in gon", "5,6,47,48 [EPSG:4326]", "EPSG:27572", 5000);
    row("axes south and west", "18.3,18.9,-34.2,-33.7 [EPSG:4326]", "EPSG:2048", 2500);
    row("across the 180th meridian", "179,181,-18,-17 [EPSG:4326]", "EPSG:32760", 10000);
  }

  // At a thousand random points of the lines, the azimuth of the chord (host's transform, GeographicLib's geodesic)
  // against the declination that the algorithm for points gives there.
  void againstFieldAtPoints() {
    QFETCH(QString, extent);
    QFETCH(QString, grid);
    QFETCH(double, spacing);
    const Outcome drawn = lines({{"EXTENT", extent}, {"GRID_CRS", grid}, {"SPACING", spacing}});
    QVERIFY2(drawn.ok, qPrintable(drawn.said()));
    QVERIFY2(drawn.rows().size() >= 10, qPrintable(QString::number(drawn.rows().size())));
    const QString crs = drawn.output().crs;
    if (!grid.isEmpty())
      QCOMPARE(crs, grid);
    const QgsCoordinateTransform transform = toPlaces(crs);

    Random random(90);
    std::vector<Row> rows;
    std::vector<double> azimuths;
    while (rows.size() < 1000) {
      const QgsPolylineXY line = lineOf(drawn.rows()[size_t(random.between(0, double(drawn.rows().size())))]);
      const int i = 1 + int(random.between(0, line.size() - 1));
      const double t = random.between(0, 0.99);
      const QgsPointXY a = line.at(i - 1), b = line.at(i);
      const QgsPointXY here(a.x() + t * (b.x() - a.x()), a.y() + t * (b.y() - a.y()));
      const Inverse onward = inverse(transform.transform(here), transform.transform(b));
      if (onward.metres < 1) // too short for an azimuth
        continue;
      rows.push_back({QgsGeometry(new QgsPoint(here.x(), here.y())), {}});
      azimuths.push_back(onward.azimuth);
    }
    const Layer points = layer("points", "Point", crs, {}, rows);
    const Outcome field =
        run("brushline:fieldatpoints", {{"INPUT", valueOf(points)}, {"DATE", "2026-11-25"}, {"OUTPUT", "memory:"}});
    QVERIFY2(field.ok, qPrintable(field.said()));
    QCOMPARE(field.rows().size(), size_t(1000));
    double worst = 0;
    for (size_t i = 0; i < azimuths.size(); ++i) {
      const double off = turnBetween(azimuths[i], field.rows()[i].number("decl"));
      worst = std::max(worst, off);
      VERIFY_NEAR(off, 0, 0.01, extent.toStdString());
    }
    qInfo("%d lines, worst %.5f degrees; %s", int(drawn.rows().size()), worst, qPrintable(drawn.infos.join(' ')));
  }

  // 500 m on the ground from line to line, square to them through the middle, on a map whose metres are half as long.
  void groundSpacingOnAWebMap() {
    const Outcome outcome = lines({{"EXTENT", "1110000,1130000,8390000,8410000 [EPSG:3857]"}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(outcome.output().crs, QString("EPSG:3857"));
    const QgsCoordinateTransform transform = toPlaces("EPSG:3857");
    // Each line where it crosses the row of the middle; nearly north, so across is nearly square.
    double before = std::nan(""), beforeX = 0, decl = 0;
    int gaps = 0;
    for (const OutputRow &row : outcome.rows()) {
      const QgsPolylineXY line = lineOf(row);
      double x = std::nan("");
      for (int i = 1; i < line.size(); ++i)
        if (line[i - 1].y() <= 8400000 && line[i].y() > 8400000)
          x = line[i - 1].x() +
              (8400000 - line[i - 1].y()) / (line[i].y() - line[i - 1].y()) * (line[i].x() - line[i - 1].x());
      if (std::isfinite(before) && std::isfinite(x)) {
        const Inverse gap =
            inverse(transform.transform(QgsPointXY(beforeX, 8400000)), transform.transform(QgsPointXY(x, 8400000)));
        decl = row.number("decl");
        // Square to the lines: the gap along the row times the cosine of the declination.
        VERIFY_NEAR(gap.metres * std::cos(decl * Angle::pi / 180), 500, 0.5, std::to_string(row.number("line")));
        QVERIFY(x - beforeX > 950);
        ++gaps;
      }
      before = beforeX = x;
    }
    QVERIFY(gaps >= 18);
  }

  void fieldsAndForm() {
    const Outcome outcome = lines({});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(outcome.output().fields.names(), QStringList({"line", "decl", "date", "spacing_m", "label", "zone"}));
    QCOMPARE(outcome.rows().size(), size_t(7));
    int number = 0;
    for (const OutputRow &row : outcome.rows()) {
      QCOMPARE(int(row.number("line")), ++number);
      QCOMPARE(row["date"].toDate(), QDate(2026, 11, 25));
      QCOMPARE(row.number("spacing_m"), 500.0);
      QCOMPARE(row.text("label"), QString::fromUtf8("17.0° W, 2026-11-25, 500 m"));
      QCOMPARE(row.text("zone"), QString("reliable"));
      const QgsPolylineXY line = lineOf(row);
      QVERIFY(line.last().y() > line.first().y());
      for (const QgsPointXY &point : line)
        QVERIFY(point.x() >= 631500 && point.x() <= 634500 && point.y() >= 5405500 && point.y() <= 5408500);
    }
    QVERIFY2(outcome.infos.join(' ').contains("500.1 m apart"), qPrintable(outcome.infos.join(' ')));
    const Outcome east = lines({{"DECLINATION", 3.26}, {"SPACING", 1000}});
    QCOMPARE(east.rows()[0].text("label"), QString::fromUtf8("3.3° E, 2026-11-25, 1000 m"));
    const Outcome none = lines({{"DECLINATION", -0.04}});
    QCOMPARE(none.rows()[0].text("label"), QString::fromUtf8("0.0°, 2026-11-25, 500 m"));
    const Outcome old = lines({{"DECLINATION", -24}, {"DATE", "1980-06-01"}});
    QVERIFY2(old.ok, qPrintable(old.said()));
    QVERIFY(old.infos.join(' ').contains("1980-06-01 is outside"));
  }

  // The grid: the one given, the extent's own, the project's, the UTM zone of the middle.
  void whichGrid() {
    const QString degrees = "-55.22,-55.18,48.78,48.82 [EPSG:4326]";
    QCOMPARE(lines({}).output().crs, QString("EPSG:32621"));
    QCOMPARE(lines({{"EXTENT", degrees}}).output().crs, QString("EPSG:32621"));
    QCOMPARE(lines({{"GRID_CRS", "EPSG:32620"}}).output().crs, QString("EPSG:32620"));
    QVERIFY2(lines({}).warnings.isEmpty(), qPrintable(lines({}).said()));
    const QString said = lines({{"GRID_CRS", "EPSG:32619"}}).said();
    QVERIFY2(said.contains("GRID_CRS: the middle of EXTENT") && said.contains("made for"), qPrintable(said));
    QCOMPARE(lines({{"EXTENT", "10,11,85,85.1 [EPSG:4326]"}}).output().crs, QString("EPSG:32661"));
    QgsProject project;
    project.setCrs(QgsCoordinateReferenceSystem("EPSG:3857"));
    Surroundings surroundings;
    surroundings.context = [&](QgsProcessingContext &context) { context.setProject(&project); };
    QCOMPARE(lines({{"EXTENT", degrees}}, surroundings).output().crs, QString("EPSG:3857"));
    QCOMPARE(lines({}, surroundings).output().crs, QString("EPSG:32621"));
    // Without a system behind the numbers they are the project's.
    const Outcome bare = lines({{"EXTENT", "1110000,1130000,8390000,8410000"}}, surroundings);
    QVERIFY2(bare.ok, qPrintable(bare.said()));
    QCOMPARE(bare.output().crs, QString("EPSG:3857"));
    QVERIFY(bare.rows().size() > 15);
    // An extent in another system is widened to the grid's rectangle.
    const Outcome wide = lines({{"EXTENT", degrees}, {"SPACING", 100}});
    const QgsCoordinateTransform transform = toPlaces("EPSG:32621");
    double south = 90, north = -90;
    for (const OutputRow &row : wide.rows())
      for (const QgsPointXY &point : lineOf(row)) {
        south = std::min(south, transform.transform(point).y());
        north = std::max(north, transform.transform(point).y());
      }
    QVERIFY(south < 48.78 && south > 48.77 && north > 48.82 && north < 48.83);
    // A layer as extent.
    const Layer area = layer("area", "Polygon", "EPSG:32621", {},
                             {{wkt("POLYGON((632000 5406000,633000 5406000,633000 5407000,632000 5406000))"), {}}});
    project.addMapLayer(area.get(), false, false);
    const Outcome layered = lines({{"EXTENT", area->id()}}, surroundings);
    project.takeMapLayer(area.get());
    QVERIFY2(layered.ok, qPrintable(layered.said()));
    QCOMPARE(layered.output().crs, QString("EPSG:32621"));
  }

  void refusals_data() {
    QTest::addColumn<QVariantMap>("parameters");
    QTest::addColumn<QStringList>("words");
    const auto row = [](const char *name, const QVariantMap &parameters, const QStringList &words) {
      QTest::newRow(name) << parameters << words;
    };
    row("grid in degrees", {{"GRID_CRS", "EPSG:4326"}}, {"GRID_CRS", "EPSG:4326", "UTM"});
    row("grid in space", {{"GRID_CRS", "EPSG:4978"}}, {"GRID_CRS"});
    row("spacing 0", {{"SPACING", 0}}, {"SPACING", "1000000"});
    row("spacing below 0", {{"SPACING", -500}}, {"SPACING", "-500"});
    row("spacing no number", {{"SPACING", std::nan("")}}, {"SPACING"});
    row("spacing in words", {{"SPACING", "wide"}}, {"SPACING", "wide"});
    row("empty extent", {{"EXTENT", "5,5,1,2 [EPSG:32621]"}}, {"EXTENT", "empty"});
    row("extent no numbers", {{"EXTENT", "nan,1,2,3 [EPSG:32621]"}}, {"EXTENT"});
    row("no extent", {{"EXTENT", QVariant()}}, {"EXTENT"});
    row("extent in words", {{"EXTENT", "here"}}, {"EXTENT"});
    row("reversed extent", {{"EXTENT", "179,-179,-18,-16 [EPSG:4326]"}}, {"EXTENT", "179,181"});
    row("extent without a system", {{"EXTENT", "1,2,3,4"}}, {"EXTENT", "[EPSG:32621]"});
    row("too many lines", {{"EXTENT", "400000,600000,5000000,5200000 [EPSG:32621]"}, {"SPACING", 5}},
        {"SPACING", "10000", "lines", "wider"});
    row("the whole world in metres", {{"EXTENT", "-180,180,-80,80 [EPSG:4326]"}, {"GRID_CRS", "EPSG:3857"}},
        {"SPACING", "lines"});
    row("out of the grid's reach", {{"EXTENT", "99,100,0,1 [EPSG:4326]"}, {"GRID_CRS", "EPSG:32632"}},
        {"EXTENT", "EPSG:32632", "GRID_CRS"});
    row("beyond the map", {{"EXTENT", "9e9,9.1e9,9e9,9.1e9 [EPSG:3035]"}}, {"EXTENT", "EPSG:3035"});
    row("beyond the poles", {{"EXTENT", "10,11,95,96 [EPSG:4326]"}}, {"EXTENT"});
    row("day after the model", {{"DATE", "2040-01-01"}}, {"DATE", "2040-01-01", "DECLINATION", "FIELD_MODEL"});
    row("no such folder", {{"OUTPUT", "/proc/none/a.gpkg"}}, {"OUTPUT"});
  }
  void refusals() {
    QFETCH(QVariantMap, parameters);
    QFETCH(QStringList, words);
    if (!parameters.contains("OUTPUT"))
      parameters["OUTPUT"] = mFolder.filePath("refused.gpkg");
    const Outcome outcome = lines(parameters);
    QVERIFY(!outcome.ok);
    for (const QString &word : words)
      QVERIFY2(outcome.said().contains(word), qPrintable(word + " in: " + outcome.said()));
    QVERIFY(!QFile::exists(mFolder.filePath("refused.gpkg")));
  }

  void weakField() {
    const Outcome none = lines({{"EXTENT", "130,140,85.8,86.2 [EPSG:4326]"}, {"GRID_CRS", "EPSG:3413"}});
    QVERIFY2(none.ok, qPrintable(none.said()));
    QVERIFY(none.rows().empty());
    QVERIFY2(none.said().contains("No line"), qPrintable(none.said()));
    const Outcome part =
        lines({{"EXTENT", "100,180,74,86 [EPSG:4326]"}, {"GRID_CRS", "EPSG:3413"}, {"SPACING", 50000}});
    QVERIFY2(part.ok, qPrintable(part.said()));
    QVERIFY(part.rows().size() > 10);
    QVERIFY(part.said().contains("under 2000 nT") && part.said().contains("under 6000 nT"));
    QVERIFY(part.output().texts("zone").contains("caution"));
  }

  void style() {
    const Layer made = layer("lines", "LineString", "EPSG:32621", {field("label", FieldType::Text)}, {});
    bool ok = false;
    const QString message = made->loadNamedStyle(QStringLiteral(":/brushline/styles/north_lines.qml"), ok);
    QVERIFY2(ok, qPrintable(message));
    QVERIFY(made->labelsEnabled());
  }

  void sameInATaskAndInFiles() {
    const Outcome memory = lines({});
    Surroundings task;
    task.in_task = true;
    const Outcome again = lines({}, task);
    QVERIFY(again.ok && again.output().sameBits(memory.output()));
    const Outcome file = lines({{"OUTPUT", mFolder.filePath("lines.gpkg")}});
    QVERIFY(file.ok);
    QCOMPARE(file.rows().size(), memory.rows().size());
    QCOMPARE(file.output().texts("label"), memory.output().texts("label"));
  }

  // A cancelled run ends within a tenth of a second and leaves no file; of three tries the fastest counts, since other
  // programs run on the machine too.
  void cancel() {
    const QVariantMap big = {{"EXTENT", "300000,700000,5000000,5400000 [EPSG:32621]"}, {"SPACING", 100}};
    for (const double moment : {0.02, 0.5}) { // seconds after the start
      double fastest = HUGE_VAL;
      for (int i = 0; i < 3; ++i) {
        const QTemporaryDir folder;
        QVariantMap parameters = big;
        parameters["OUTPUT"] = folder.filePath("c.geojson");
        Ear ear;
        CancelAfter finger(ear, moment);
        const Outcome outcome = lines(parameters, {{}, &ear, false, true});
        const std::optional<double> seconds = finger.over();
        QVERIFY2(seconds, "too small an input: done before it was cancelled");
        fastest = std::min(fastest, *seconds);
        QVERIFY(!outcome.results.contains("OUTPUT"));
        QVERIFY(QDir(folder.path()).entryList(QDir::Files).isEmpty());
      }
      QVERIFY2(fastest < soon, qPrintable(QString::number(fastest)));
    }
  }
};

BRUSHLINE_HOST_TEST_MAIN(NorthLinesAlgorithmTest)
#include "north_lines_algorithm_test.moc"
