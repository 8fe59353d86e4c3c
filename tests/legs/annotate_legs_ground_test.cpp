// SPDX-License-Identifier: GPL-2.0-or-later
// What walkers, terrain and cover do to the legs of annotatelegs, in the host.
#include "legs/annotate_run.h"

#include "quantities/angle.h"

#include <QMap>
#include <QRegularExpression>
#include <qgscoordinatetransform.h>

#include <algorithm>
#include <cmath>
#include <limits>

using namespace brushline;
using namespace brushline::test;

class AnnotateLegsGroundTest : public QObject {
  Q_OBJECT
private slots:
  void twoWalkers();
  void missingColumnsTakeTheParameters();
  void everyColumnOfWalkers();
  void paceKind_data();
  void paceKind();
  void paceKindOfTheParameter_data();
  void paceKindOfTheParameter();
  void timeRule_data();
  void timeRule();

  void plane_data();
  void plane();
  void slopeRuleNone();
  void terrainElsewhere_data();
  void terrainElsewhere();
  void turnedTerrain();
  void bandOfTheTerrain();
  void partOfTheLegWithoutTerrain_data();
  void partOfTheLegWithoutTerrain();

  void withoutCover_data();
  void withoutCover();
  void throughBrush_data();
  void throughBrush();
  void beyondTheEnd();
  void sightWhateverTheSpacing_data();
  void sightWhateverTheSpacing();
  void farSight();
  void clearSight();
  void season();
  void footing();
  void water();
  void coverInAnotherProjection();
  void everyKindOfPolygon();
  void ownTable();
  void codes_data();
  void codes();
  void polygonsBeforeCodes();
  void sightsBeforeCover();
  void hiddenByTheGround();
  void blind();

  void marks();
  void marksOfTheWayBack();
  void drift();
  void driftAtNamedPoints();
};

namespace {

constexpr double missing = std::numeric_limits<double>::quiet_NaN();

// Legs of 300 m on the map, north and east, in UTM zone 21.
constexpr double east = 400000, north = 5300000;
Layer northLeg() { return routesOf("EPSG:32621", {"LINESTRING(400000 5300000, 400000 5300300)"}); }
Layer eastLeg() { return routesOf("EPSG:32621", {"LINESTRING(400000 5300000, 400300 5300000)"}); }

// A model of 10 m cells around both.
RasterShape terrainShape() {
  return {"EPSG:32621", {east - 500, 10, 0, north + 800, 0, -10}, 150, 150, {}, {}, {}, false, 1};
}

QString pathIn(const QTemporaryDir &folder, const char *name) { return folder.filePath(QString::fromLatin1(name)); }

// Polygons of cover along the east leg, from metre to metre of the map, 100 m to both sides.
struct Stand {
  double from, to;
  QVariant cover;
};
Layer coverOf(const std::vector<Stand> &stands, const QString &crs = "EPSG:32621") {
  std::vector<Row> rows;
  for (const Stand &stand : stands) {
    QgsGeometry box = QgsGeometry::fromRect(QgsRectangle(east + stand.from, north - 100, east + stand.to, north + 100));
    if (crs != "EPSG:32621")
      box.transform(QgsCoordinateTransform(QgsCoordinateReferenceSystem("EPSG:32621"),
                                           QgsCoordinateReferenceSystem(crs), QgsCoordinateTransformContext()));
    rows.push_back({box, {stand.cover}});
  }
  return layer("stands", "Polygon", crs, {field("class", FieldType::Text)}, rows);
}

// Sight and marks along a line, worked out here step by step: the sight ends where the exponents add up to -ln(chance).
struct Sights {
  std::vector<std::pair<double, double>> stretches; // their end and the distance at which half the marks are clear
  double chance = 0.5;

  double from(double at) const {
    double rest = -std::log(chance), here = at;
    for (const auto &[to, half] : stretches) {
      if (to <= here)
        continue;
      const double k = std::log(2.0) / half;
      if (k * (to - here) >= rest)
        return here + rest / k - at;
      rest -= k * (to - here);
      here = to;
    }
    return std::numeric_limits<double>::infinity();
  }
  double shortest(double length) const {
    double least = from(0);
    for (double at = 0; at <= length; at += 0.01)
      least = std::min(least, from(at));
    return least;
  }
  std::vector<double> marks(double length, double share = 0.8, double least = 5, double most = 400) const {
    std::vector<double> all;
    for (double at = 0; at < length - 1e-6;) {
      at = std::min(length, at + std::clamp(share * from(at), least, most));
      all.push_back(at);
    }
    return all;
  }
};

double median(std::vector<double> marks) {
  for (size_t i = marks.size(); i-- > 1;)
    marks[i] -= marks[i - 1];
  std::sort(marks.begin(), marks.end());
  const size_t middle = marks.size() / 2;
  return marks.size() % 2 ? marks[middle] : (marks[middle - 1] + marks[middle]) / 2;
}

// Sights of the built-in table, in metres: our own, see its head (common practice, no source).
constexpr double openGround = 300, brush = 12, thicket = 6, brushBare = 18;

} // namespace

// --- walkers ---------------------------------------------------------------------------------------------------------

void AnnotateLegsGroundTest::twoWalkers() {
  const Layer routes = routesOf("EPSG:32621", {"LINESTRING(400000 5300000, 400100 5300000, 400100 5300100)"});
  const Layer walkers = table("walkers", {field("walker", FieldType::Text), field("paces_100m", FieldType::Real)},
                              {{"Ann", 120.0}, {"Ben", 160.0}});
  const Outcome outcome = annotate({{"INPUT", valueOf(routes)}, {"WALKERS", valueOf(walkers)}});
  VERIFY_RAN(outcome);
  QCOMPARE(outcome.output().texts("walker"), QStringList({"Ann", "Ben", "Ann", "Ben"}));
  QCOMPARE(outcome.output().texts("leg"), QStringList({"1", "1", "2", "2"}));
  for (const OutputRow &row : outcome.rows()) {
    const double paces = (row.text("walker") == "Ann" ? 1.2 : 1.6) * row.number("dist_m");
    QCOMPARE(row["paces"].toInt(), int(std::lround(paces)));
  }
  // All but the walker's own numbers are the same.
  for (const char *name : {"true_brg", "dial", "dist_m", "drift_m", "walk_min", "marks"})
    QVERIFY2(outcome.rows()[0][name] == outcome.rows()[1][name], name);
  QVERIFY(outcome.rows()[0].geometry.equals(outcome.rows()[1].geometry));
  QCOMPARE(outcome.results.value("LEG_COUNT").toDouble(), 4.0);
}

// A column that is missing, or a cell that is empty, takes the parameter's value: as if there were no table.
void AnnotateLegsGroundTest::missingColumnsTakeTheParameters() {
  const Layer routes = northLeg();
  QVariantMap parameters{{"INPUT", valueOf(routes)}, {"PACES_PER_100M", 144}, {"PACE_KIND", 1}, {"PACE_ERROR", 9},
                         {"BEARING_ERROR", 7},       {"EYE_HEIGHT", 1.1},     {"TIME_RULE", 2}};
  const Outcome expected = annotate(parameters);
  VERIFY_RAN(expected);
  QVERIFY(expected.rows()[0].null("walker"));
  const OutputRow &plain = expected.rows()[0];
  const double metres = plain.number("dist_m"), degree = Angle::pi / 180;
  QCOMPARE(plain["paces"].toInt(), int(std::lround(1.44 * metres / 2)));
  VERIFY_NEAR(plain.number("along_m"), 0.09 * metres, 1e-9, "");
  const double common = 4 / 12.0 + plain.number("decl_err") * plain.number("decl_err");
  VERIFY_NEAR(plain.number("drift_m"), metres * degree * std::sqrt(49 + common), 1e-9, "one hop");
  const Layer bare = table("walkers", {field("walker", FieldType::Text)}, {{"Ann"}});
  const Layer empty = table("walkers",
                            {field("WALKER", FieldType::Text), field("paces_100m", FieldType::Real),
                             field("pace_kind", FieldType::Integer), field("pace_err", FieldType::Text),
                             field("brg_err", FieldType::Real), field("eye_m", FieldType::Text),
                             field("speed_f", FieldType::Real), field("shoe size", FieldType::Real)},
                            {{"Ann", QVariant(), QVariant(), "", QVariant(), "  ", QVariant(), 38.0}});
  for (const Layer *walkers : {&bare, &empty}) {
    parameters["WALKERS"] = valueOf(*walkers);
    const Outcome outcome = annotate(parameters);
    VERIFY_RAN(outcome);
    QCOMPARE(outcome.rows().size(), size_t(1));
    QCOMPARE(outcome.rows()[0].text("walker"), QString("Ann"));
    for (const char *name : {"paces", "walk_min", "drift_m", "along_m", "marks", "dial"})
      QVERIFY2(outcome.rows()[0][name] == expected.rows()[0][name], name);
  }
}

void AnnotateLegsGroundTest::everyColumnOfWalkers() {
  const Layer routes = northLeg();
  const Layer walkers =
      table("walkers",
            {field("walker", FieldType::Text), field("paces_100m", FieldType::Text),
             field("pace_kind", FieldType::Integer), field("pace_err", FieldType::Real),
             field("brg_err", FieldType::Real), field("eye_m", FieldType::Real), field("speed_f", FieldType::Real)},
            {{"usual", "130", 0, 5.0, 3.0, 1.6, 1.0}, {"other", "150.5", 1, 10.0, 6.0, 1.1, 0.5}});
  const Outcome outcome = annotate({{"INPUT", valueOf(routes)}, {"WALKERS", valueOf(walkers)}, {"DECLINATION", 0}});
  VERIFY_RAN(outcome);
  const OutputRow &usual = outcome.rows()[0], &other = outcome.rows()[1];
  const double metres = usual.number("dist_m"), degree = Angle::pi / 180;
  QCOMPARE(usual["paces"].toInt(), int(std::lround(1.3 * metres)));
  QCOMPARE(other["paces"].toInt(), int(std::lround(1.505 * metres / 2)));
  VERIFY_NEAR(usual.number("along_m"), 0.05 * metres, 1e-9, "");
  VERIFY_NEAR(other.number("along_m"), 0.10 * metres, 1e-9, "");
  VERIFY_NEAR(other.number("walk_min"), 2 * usual.number("walk_min"), 1e-9, "");
  // One hop; a map's declination has no error.
  VERIFY_NEAR(usual.number("drift_m"), metres * degree * std::sqrt(9 + 4 / 12.0), 1e-9, "");
  VERIFY_NEAR(other.number("drift_m"), metres * degree * std::sqrt(36 + 4 / 12.0), 1e-9, "");
}

void AnnotateLegsGroundTest::paceKind_data() {
  QTest::addColumn<double>("count");
  QTest::addColumn<int>("kind");
  QTest::addColumn<double>("perMetre");
  // FM 3-25.26: a pace is one step; forestry: every second one (both read second-hand).
  QTest::newRow("single steps") << 130.0 << 0 << 1.3;
  QTest::newRow("steps given, double paces counted") << 130.0 << 1 << 0.65;
  QTest::newRow("double paces given and counted") << 62.0 << 1 << 0.62;
  QTest::newRow("few single steps") << 70.0 << 0 << 0.7;
}

void AnnotateLegsGroundTest::paceKind() {
  QFETCH(double, count);
  QFETCH(int, kind);
  QFETCH(double, perMetre);
  const Layer routes = northLeg();
  const Outcome outcome = annotate({{"INPUT", valueOf(routes)}, {"PACES_PER_100M", count}, {"PACE_KIND", kind}});
  VERIFY_RAN(outcome);
  QCOMPARE(outcome.rows()[0]["paces"].toInt(), int(std::floor(perMetre * outcome.rows()[0].number("dist_m") + 0.5)));
}

void AnnotateLegsGroundTest::paceKindOfTheParameter_data() {
  QTest::addColumn<double>("count");
  QTest::addColumn<int>("kind");
  QTest::addColumn<double>("steps"); // single ones over a metre
  QTest::newRow("double paces given") << 62.0 << 1 << 1.24;
  QTest::newRow("steps given") << 130.0 << 1 << 1.3;
  QTest::newRow("single steps") << 130.0 << 0 << 1.3;
  QTest::newRow("few single steps") << 70.0 << 0 << 0.7;
}

// A count given by the parameter is of the parameter's kind, also for walkers who count another one.
void AnnotateLegsGroundTest::paceKindOfTheParameter() {
  QFETCH(double, count);
  QFETCH(int, kind);
  QFETCH(double, steps);
  const Layer routes = northLeg();
  const Layer walkers = table("walkers", {field("walker", FieldType::Text), field("pace_kind", FieldType::Integer)},
                              {{"single", 0}, {"double", 1}, {"as the parameter", QVariant()}});
  const Outcome outcome = annotate(
      {{"INPUT", valueOf(routes)}, {"PACES_PER_100M", count}, {"PACE_KIND", kind}, {"WALKERS", valueOf(walkers)}});
  VERIFY_RAN(outcome);
  const double single = steps * outcome.rows()[0].number("dist_m");
  QCOMPARE(outcome.rows()[0]["paces"].toInt(), int(std::floor(single + 0.5)));
  QCOMPARE(outcome.rows()[1]["paces"].toInt(), int(std::floor(single / 2 + 0.5)));
  QCOMPARE(outcome.rows()[2]["paces"].toInt(), int(std::floor((kind ? single / 2 : single) + 0.5)));
}

void AnnotateLegsGroundTest::timeRule_data() {
  QTest::addColumn<int>("rule");
  QTest::addColumn<double>("perMetre");
  QTest::newRow("off-trail speed") << 0 << 1 / (0.11 + 0.67 * std::exp(-4 / 1800.0)); // Irmischer and Clarke 2018
  QTest::newRow("hiking function off path") << 1 << 3.6 / (0.6 * 6 * std::exp(-3.5 * 0.05)); // Tobler 1993
  QTest::newRow("distance and climb") << 2 << 0.72; // Naismith, 12 minutes a kilometre
}

void AnnotateLegsGroundTest::timeRule() {
  QFETCH(int, rule);
  QFETCH(double, perMetre); // seconds on level ground
  const Layer routes = northLeg();
  const Outcome outcome = annotate({{"INPUT", valueOf(routes)}, {"TIME_RULE", rule}});
  VERIFY_RAN(outcome);
  VERIFY_NEAR(outcome.rows()[0].number("walk_min"), perMetre * outcome.rows()[0].number("dist_m") / 60, 1e-9, "");
}

// --- terrain ---------------------------------------------------------------------------------------------------------

void AnnotateLegsGroundTest::plane_data() {
  QTest::addColumn<double>("degrees");
  QTest::addColumn<double>("inches");
  // Moss 1917, paragraph 1887: inches along the slope; 30.4 on level ground.
  QTest::newRow("level") << 0.0 << 30.4;
  QTest::newRow("5 up") << 5.0 << 27.6;
  QTest::newRow("10 up") << 10.0 << 24.4;
  QTest::newRow("20 up") << 20.0 << 19.7;
  QTest::newRow("5 down") << -5.0 << 29.2;
  QTest::newRow("15 down") << -15.0 << 27.6;
  QTest::newRow("25 down") << -25.0 << 23.6;
}

// A leg up or down a plane of even slope.
void AnnotateLegsGroundTest::plane() {
  QFETCH(double, degrees);
  QFETCH(double, inches);
  const QTemporaryDir folder;
  const Layer routes = northLeg();
  const double metres = annotate({{"INPUT", valueOf(routes)}}).rows().at(0).number("dist_m");
  const double tangent = std::tan(degrees * Angle::pi / 180), rise = metres * tangent;
  const QString dem = pathIn(folder, "plane.tif");
  writeRaster(dem, terrainShape(), [&](double, double y, int) { return 500 + (y - north) * rise / 300; });
  const Outcome outcome = annotate({{"INPUT", valueOf(routes)}, {"DEM", dem}});
  VERIFY_RAN(outcome);
  QVERIFY2(outcome.warnings.isEmpty(), qPrintable(outcome.said()));
  const OutputRow &leg = outcome.rows()[0];
  QVERIFY(leg.null("warnings"));
  VERIFY_NEAR(leg.number("dist_m"), metres, 1e-9, "the map's, not the slope's");
  VERIFY_NEAR(leg.number("slope_m"), std::hypot(metres, rise), 0.001, "");
  VERIFY_NEAR(leg.number("climb_m"), std::max(rise, 0.0), 0.001, "");
  VERIFY_NEAR(leg.number("drop_m"), std::max(-rise, 0.0), 0.001, "");
  const double steps = 1.3 * std::hypot(metres, rise) * 30.4 / inches;
  VERIFY_NEAR(double(leg["paces"].toInt()), steps, 0.51, "the table");
  // Irmischer and Clarke 2018, at the slope in percent.
  const double percent = 100 * tangent + 2;
  const double speed = 0.11 + 0.67 * std::exp(-percent * percent / 1800);
  VERIFY_NEAR(leg.number("walk_min"), metres / speed / 60, 0.001, "");
  // The way back: down what was up.
  const Outcome back = annotate({{"INPUT", valueOf(routes)}, {"DEM", dem}, {"DIRECTION", 1}});
  VERIFY_RAN(back);
  QVERIFY(back.rows()[0].number("climb_m") == leg.number("drop_m"));
  QVERIFY(back.rows()[0].number("drop_m") == leg.number("climb_m"));
}

void AnnotateLegsGroundTest::slopeRuleNone() {
  const QTemporaryDir folder;
  const Layer routes = northLeg();
  const QString dem = pathIn(folder, "plane.tif");
  writeRaster(dem, terrainShape(), [&](double, double y, int) { return (y - north) * 0.3; });
  const Outcome outcome = annotate({{"INPUT", valueOf(routes)}, {"DEM", dem}, {"SLOPE_RULE", 0}});
  VERIFY_RAN(outcome);
  const OutputRow &leg = outcome.rows()[0];
  QCOMPARE(leg["paces"].toInt(), int(std::lround(1.3 * leg.number("dist_m"))));
  VERIFY_NEAR(leg.number("climb_m"), 90, 0.01, "0.3 of 300 m");
}

void AnnotateLegsGroundTest::terrainElsewhere_data() {
  QTest::addColumn<QString>("crs");
  QTest::addColumn<double>("cell");
  QTest::addColumn<bool>("scaled");
  QTest::newRow("same system") << "EPSG:32621" << 10.0 << false;
  QTest::newRow("whole numbers with scale and offset") << "EPSG:32621" << 10.0 << true;
  QTest::newRow("next zone") << "EPSG:32622" << 10.0 << false;
  QTest::newRow("degrees") << "EPSG:4326" << 0.0001 << false;
  QTest::newRow("degrees, whole numbers with scale and offset") << "EPSG:4326" << 0.0001 << true;
  QTest::newRow("web map") << "EPSG:3857" << 15.0 << false;
}

// The same hill in another system: a plane that rises by 0.2 along both legs' grid.
void AnnotateLegsGroundTest::terrainElsewhere() {
  QFETCH(QString, crs);
  QFETCH(double, cell);
  QFETCH(bool, scaled);
  const QTemporaryDir folder;
  const QgsCoordinateReferenceSystem zone21("EPSG:32621"), other(crs);
  const QgsCoordinateTransform toZone(other, zone21, QgsCoordinateTransformContext());
  const QgsCoordinateTransform fromZone(zone21, other, QgsCoordinateTransformContext());
  const QgsRectangle box =
      fromZone.transformBoundingBox(QgsRectangle(east - 200, north - 200, east + 500, north + 500));
  RasterShape shape{crs,
                    {box.xMinimum(), cell, 0, box.yMaximum(), 0, -cell},
                    int(std::ceil(box.width() / cell)),
                    int(std::ceil(box.height() / cell)),
                    {},
                    {},
                    {},
                    scaled,
                    1};
  if (scaled) {
    shape.scale = 0.01;
    shape.offset = 100;
  }
  const QString dem = pathIn(folder, "hill.tif");
  writeRaster(dem, shape, [&](double x, double y, int) {
    const QgsPointXY at = toZone.transform(x, y);
    const double height = 300 + 0.2 * (at.x() - east) + 0.2 * (at.y() - north);
    return scaled ? std::round((height - 100) / 0.01) : height;
  });
  for (const bool northwards : {true, false}) {
    const Layer routes = northwards ? northLeg() : eastLeg();
    const Outcome outcome = annotate({{"INPUT", valueOf(routes)}, {"DEM", dem}});
    VERIFY_RAN(outcome);
    const OutputRow &leg = outcome.rows()[0];
    QVERIFY2(leg.null("warnings"), qPrintable(leg.text("warnings")));
    const double tolerance = scaled ? 0.15 : 0.01; // rounded to 0.01 m at each of some 30 steps; bilinear elsewhere
    VERIFY_NEAR(leg.number("climb_m") - leg.number("drop_m"), 60, scaled ? 0.02 : 0.01, crs.toStdString());
    VERIFY_NEAR(leg.number("climb_m"), 60, tolerance, crs.toStdString());
    VERIFY_NEAR(leg.number("slope_m"), std::hypot(leg.number("dist_m"), 60), tolerance, crs.toStdString());
  }
}

// A raster whose rows run at an angle: the host resamples it to the nearest cell.
void AnnotateLegsGroundTest::turnedTerrain() {
  const QTemporaryDir folder;
  const double turn = 30 * Angle::pi / 180, cell = 2;
  const double c = cell * std::cos(turn), s = cell * std::sin(turn);
  const RasterShape shape{"EPSG:32621", {east - 500, c, s, north + 200, s, -c}, 700, 700, {}, {}, {}, false, 1};
  const QString dem = pathIn(folder, "turned.tif");
  writeRaster(dem, shape, [&](double, double y, int) { return 300 + 0.2 * (y - north); });
  const Layer routes = northLeg();
  const Outcome outcome = annotate({{"INPUT", valueOf(routes)}, {"DEM", dem}});
  VERIFY_RAN(outcome);
  const OutputRow &leg = outcome.rows()[0];
  QVERIFY2(leg.null("warnings"), qPrintable(leg.text("warnings")));
  VERIFY_NEAR(leg.number("climb_m") - leg.number("drop_m"), 60, 2 * 0.2 * cell, "a cell at each end");
  // A model read with its rows straight would find 52 m (cos 30) or no heights at all.
}

void AnnotateLegsGroundTest::bandOfTheTerrain() {
  const QTemporaryDir folder;
  RasterShape shape = terrainShape();
  shape.bands = 3;
  const QString dem = pathIn(folder, "bands.tif");
  writeRaster(dem, shape, [&](double, double y, int band) { return 0.1 * band * (y - north); });
  const Layer routes = northLeg();
  for (const int band : {1, 2, 3}) {
    const Outcome outcome = annotate({{"INPUT", valueOf(routes)}, {"DEM", dem}, {"DEM_BAND", band}});
    VERIFY_RAN(outcome);
    VERIFY_NEAR(outcome.rows()[0].number("climb_m"), 30.0 * band, 0.01, "");
  }
  const Outcome usual = annotate({{"INPUT", valueOf(routes)}, {"DEM", dem}});
  VERIFY_RAN(usual);
  VERIFY_NEAR(usual.rows()[0].number("climb_m"), 30, 0.01, "");
  const Outcome fourth = annotate({{"INPUT", valueOf(routes)}, {"DEM", dem}, {"DEM_BAND", 4}});
  QVERIFY(!fourth.ok);
  for (const char *word : {"DEM", "bands 1 to 3", "4"})
    QVERIFY2(fourth.said().contains(word), qPrintable(fourth.said()));
}

void AnnotateLegsGroundTest::partOfTheLegWithoutTerrain_data() {
  QTest::addColumn<bool>("hole");
  QTest::newRow("no data on a stretch") << true;
  QTest::newRow("the model ends on the way") << false;
}

// The second leg has no heights on 100 m of its 300; the first has all of them.
void AnnotateLegsGroundTest::partOfTheLegWithoutTerrain() {
  QFETCH(bool, hole);
  const QTemporaryDir folder;
  RasterShape shape = terrainShape();
  shape.no_data = -9999;
  if (!hole)
    shape.transform[3] = north + 500; // the model's upper edge
  const QString dem = pathIn(folder, "part.tif");
  writeRaster(dem, shape, [&](double, double y, int) {
    return hole && y > north + 400 && y < north + 500 ? missing : 0.1 * (y - north);
  });
  const Layer routes = routesOf("EPSG:32621", {"LINESTRING(400000 5300000, 400000 5300300, 400000 5300600)"});
  const Outcome outcome = annotate({{"INPUT", valueOf(routes)}, {"DEM", dem}});
  VERIFY_RAN(outcome);
  const OutputRow &first = outcome.rows()[0], &second = outcome.rows()[1];
  QVERIFY(first.null("warnings"));
  VERIFY_NEAR(first.number("climb_m"), 30, 0.01, "");
  QVERIFY(second.null("slope_m") && second.null("climb_m") && second.null("drop_m"));
  QCOMPARE(second["paces"].toInt(), int(std::lround(1.3 * second.number("dist_m"))));
  const QRegularExpressionMatch told =
      QRegularExpression("No heights on (\\d+) m of this leg").match(second.text("warnings"));
  QVERIFY2(told.hasMatch(), qPrintable(second.text("warnings")));
  const double toldMetres = told.captured(1).toDouble();
  QVERIFY2(toldMetres >= 99 && toldMetres < 135,
           qPrintable(told.captured(0))); // with the neighbours' half cells and a step
}

// --- cover -----------------------------------------------------------------------------------------------------------

void AnnotateLegsGroundTest::withoutCover_data() {
  QTest::addColumn<double>("most");
  QTest::addColumn<int>("marks");
  QTest::newRow("usual") << 400.0 << 1;    // of 300 m
  QTest::newRow("hundreds") << 100.0 << 4; // the leg is a little longer on the ellipsoid than on the grid
  QTest::newRow("seven and a rest") << 40.0 << 8;
}

// Nothing is guessed: no sight, no spacing; marks lie SPACING_MAX apart.
void AnnotateLegsGroundTest::withoutCover() {
  QFETCH(double, most);
  QFETCH(int, marks);
  const Layer routes = eastLeg();
  const Outcome outcome = annotate({{"INPUT", valueOf(routes)}, {"SPACING_MAX", most}, {"MARKS", "TEMPORARY_OUTPUT"}});
  VERIFY_RAN(outcome);
  const OutputRow &leg = outcome.rows()[0];
  QVERIFY(leg.number("dist_m") > 300.05 && leg.number("dist_m") < 300.15); // scale 0.99972
  QVERIFY(leg.null("cover") && leg.null("sight_m") && leg.null("spacing_m") && leg.null("warnings"));
  QCOMPARE(leg["marks"].toInt(), marks);
  QCOMPARE(outcome.rows("MARKS").size(), size_t(marks));
  for (const OutputRow &mark : outcome.rows("MARKS"))
    QVERIFY(mark.null("sight_m"));
}

void AnnotateLegsGroundTest::throughBrush_data() {
  QTest::addColumn<double>("share");
  QTest::addColumn<double>("least");
  QTest::addColumn<double>("most");
  QTest::newRow("usual") << 0.8 << 5.0 << 400.0;
  QTest::newRow("half the sight") << 0.5 << 5.0 << 400.0;
  QTest::newRow("never over 50 m") << 0.8 << 5.0 << 50.0;
  QTest::newRow("never under 20 m") << 1.0 << 20.0 << 400.0;
}

// Open, then a wall of brush 60 m thick, then open again.
void AnnotateLegsGroundTest::throughBrush() {
  QFETCH(double, share);
  QFETCH(double, least);
  QFETCH(double, most);
  const Layer routes = eastLeg();
  const Layer cover = coverOf({{-10, 120, "open ground"}, {120, 180, "Brush "}, {180, 5000, "open ground"}});
  const Outcome outcome = annotate({{"INPUT", valueOf(routes)},
                                    {"COVER", valueOf(cover)},
                                    {"MARK_FRACTION", share},
                                    {"SPACING_MIN", least},
                                    {"SPACING_MAX", most}});
  VERIFY_RAN(outcome);
  QVERIFY2(outcome.warnings.isEmpty(), qPrintable(outcome.said()));
  const OutputRow &leg = outcome.rows()[0];
  const double metres = leg.number("dist_m"), scale = metres / 300; // metres of the ground for one of the map
  const Sights sights{{{120 * scale, openGround}, {180 * scale, brush}, {5000 * scale, openGround}}};
  const std::vector<double> marks = sights.marks(metres, share, least, most);
  QCOMPARE(leg.text("cover"), QString("open ground"));
  VERIFY_NEAR(leg.number("sight_m"), sights.shortest(metres), 0.01, "");
  VERIFY_NEAR(leg.number("sight_m"), 12, 1e-6, "in the brush");
  QCOMPARE(leg["marks"].toInt(), int(marks.size()));
  VERIFY_NEAR(leg.number("spacing_m"), median(marks), 0.02, "");
  QCOMPARE(leg.null("warnings"), least <= brush);
  // Errors of sightings add up hop by hop (common practice, no source).
  double squares = 0, before = 0;
  for (const double mark : marks) {
    squares += (mark - before) * (mark - before);
    before = mark;
  }
  const double degree = Angle::pi / 180, common = 4 / 12.0 + leg.number("decl_err") * leg.number("decl_err");
  VERIFY_NEAR(leg.number("drift_m"), degree * std::sqrt(9 * squares + common * metres * metres), 0.01, "");
}

// One sees over the leg's end; and there one looks on.
void AnnotateLegsGroundTest::beyondTheEnd() {
  const Layer routes = eastLeg();
  const Layer open = coverOf({{-10, 5000, "open ground"}});
  const Layer wall = coverOf({{-10, 300, "open ground"}, {300, 5000, "thicket"}});
  const QVariantMap parameters{{"INPUT", valueOf(routes)}, {"MARKS", "TEMPORARY_OUTPUT"}};
  QVariantMap a = parameters, b = parameters;
  a["COVER"] = valueOf(open);
  b["COVER"] = valueOf(wall);
  const Outcome clear = annotate(a), walled = annotate(b);
  VERIFY_RAN(clear);
  VERIFY_RAN(walled);
  VERIFY_NEAR(clear.rows()[0].number("sight_m"), 300, 1e-6, "open ground");
  VERIFY_NEAR(walled.rows()[0].number("sight_m"), thicket, 0.001, "at the end, into the thicket");
  // The second mark is sighted 240 m on, 60 m before the wall: (60/300 + x/6) ln 2 = ln 2.
  const double rest = walled.rows()[0].number("dist_m") - 240;
  VERIFY_NEAR(walled.rows("MARKS")[1].number("sight_m"), rest + (1 - rest / openGround) * thicket, 0.01, "");
  QCOMPARE(walled.rows()[0].text("cover"), QString("open ground"));
}

void AnnotateLegsGroundTest::sightWhateverTheSpacing_data() {
  QTest::addColumn<int>("length");
  QTest::addColumn<double>("border");
  QTest::addColumn<QString>("before");
  QTest::addColumn<QString>("after");
  QTest::addColumn<double>("sight");
  QTest::newRow("short leg") << 30 << 5000.0 << "tall forest"
                             << "" << 55.0; // of the built-in table
  // From the leg's end, 30 m of open ground and (1 - 30/300) 6 m of thicket.
  QTest::newRow("thicket beyond the end") << 400 << 430.0 << "open ground"
                                          << "thicket" << 35.4;
}

// The most spacing tells where marks lie, not how far one sees.
void AnnotateLegsGroundTest::sightWhateverTheSpacing() {
  QFETCH(int, length);
  QFETCH(double, border);
  QFETCH(QString, before);
  QFETCH(QString, after);
  QFETCH(double, sight);
  const Layer routes =
      routesOf("EPSG:32621", {QStringLiteral("LINESTRING(400000 5300000, %1 5300000)").arg(int(east) + length)});
  std::vector<Stand> stands{{-10, border, before}};
  if (!after.isEmpty())
    stands.push_back({border, 5000, after});
  const Layer cover = coverOf(stands);
  for (const double most : {10.0, 20.0, 400.0, 2000.0}) {
    const Outcome outcome = annotate({{"INPUT", valueOf(routes)}, {"COVER", valueOf(cover)}, {"SPACING_MAX", most}});
    VERIFY_RAN(outcome);
    VERIFY_NEAR(outcome.rows()[0].number("sight_m"), sight, 0.02, std::to_string(most));
  }
}

// Sight that reaches farther beyond the end than marks ever lie apart.
void AnnotateLegsGroundTest::farSight() {
  const QTemporaryDir folder;
  RasterShape shape = terrainShape();
  shape.columns = 300; // to 2500 m
  const QString sights = pathIn(folder, "sights.tif");
  writeRaster(sights, shape, [](double, double, int) { return 800; });
  const Layer routes = routesOf("EPSG:32621", {"LINESTRING(400000 5300000, 400290 5300000)"});
  for (const double most : {10.0, 400.0}) {
    const Outcome outcome = annotate({{"INPUT", valueOf(routes)}, {"SIGHT_RASTER", sights}, {"SPACING_MAX", most}});
    VERIFY_RAN(outcome);
    VERIFY_NEAR(outcome.rows()[0].number("sight_m"), 800, 1e-6, std::to_string(most));
  }
  // Where the raster ends before that, nothing is known to hide marks.
  shape.columns = 120; // to 700 m
  const QString shorter = pathIn(folder, "shorter.tif");
  writeRaster(shorter, shape, [](double, double, int) { return 800; });
  const Outcome ends = annotate({{"INPUT", valueOf(routes)}, {"SIGHT_RASTER", shorter}});
  VERIFY_RAN(ends);
  QVERIFY(ends.rows()[0].null("sight_m"));
}

// A surer sight is a shorter one: -ln(p) / k.
void AnnotateLegsGroundTest::clearSight() {
  const Layer routes = eastLeg();
  const Layer cover = coverOf({{-10, 5000, "brush"}});
  for (const double chance : {0.1, 0.5, 0.9}) {
    const Outcome outcome = annotate({{"INPUT", valueOf(routes)}, {"COVER", valueOf(cover)}, {"CLEAR_SIGHT", chance}});
    VERIFY_RAN(outcome);
    const double sight = brush * std::log(chance) / std::log(0.5);
    VERIFY_NEAR(outcome.rows()[0].number("sight_m"), sight, 1e-6, "");
    VERIFY_NEAR(outcome.rows()[0].number("spacing_m"), std::max(0.8 * sight, 5.0), 1e-6, "");
  }
}

void AnnotateLegsGroundTest::season() {
  const Layer routes = eastLeg();
  const Layer cover = coverOf({{-10, 5000, "brush"}});
  const Outcome leaf = annotate({{"INPUT", valueOf(routes)}, {"COVER", valueOf(cover)}, {"SEASON", 0}});
  const Outcome bare = annotate({{"INPUT", valueOf(routes)}, {"COVER", valueOf(cover)}, {"SEASON", 1}});
  VERIFY_RAN(leaf);
  VERIFY_RAN(bare);
  VERIFY_NEAR(leaf.rows()[0].number("sight_m"), brush, 1e-6, "");
  VERIFY_NEAR(bare.rows()[0].number("sight_m"), brushBare, 1e-6, "");
  QVERIFY(bare.rows()[0]["marks"].toInt() < leaf.rows()[0]["marks"].toInt());
}

// Factors of brush in the built-in table: 1.28 of the paces, 0.37 of the speed (see its head).
void AnnotateLegsGroundTest::footing() {
  const Layer routes = eastLeg();
  const Layer cover = coverOf({{-10, 150, "tall forest"}, {150, 5000, "brush"}});
  const Outcome plain = annotate({{"INPUT", valueOf(routes)}});
  const Outcome outcome = annotate({{"INPUT", valueOf(routes)}, {"COVER", valueOf(cover)}, {"PACES_PER_100M", 130}});
  VERIFY_RAN(plain);
  VERIFY_RAN(outcome);
  const double metres = plain.rows()[0].number("dist_m");
  VERIFY_NEAR(double(outcome.rows()[0]["paces"].toInt()), 1.3 * metres * (1.05 + 1.28) / 2, 0.6, "");
  VERIFY_NEAR(outcome.rows()[0].number("walk_min"), plain.rows()[0].number("walk_min") * (1 + 1 / 0.37) / 2, 0.01, "");
}

void AnnotateLegsGroundTest::water() {
  const Layer routes = eastLeg();
  const Layer cover = coverOf({{-10, 100, "heath"}, {100, 140, "water"}, {140, 5000, "heath"}});
  const Outcome outcome = annotate({{"INPUT", valueOf(routes)}, {"COVER", valueOf(cover)}});
  VERIFY_RAN(outcome);
  const OutputRow &leg = outcome.rows()[0];
  QCOMPARE(leg.text("cover"), QString("heath"));
  QVERIFY(leg.null("walk_min"));
  QVERIFY(!leg.null("paces"));
  QVERIFY2(leg.text("warnings").contains("Crosses 40 m of lake, pond or river, which cannot be walked"),
           qPrintable(leg.text("warnings")));
}

void AnnotateLegsGroundTest::coverInAnotherProjection() {
  const Layer routes = eastLeg();
  const std::vector<Stand> stands = {{-10, 120, "open ground"}, {120, 180, "brush"}, {180, 5000, "open ground"}};
  const Layer own = coverOf(stands);
  const Outcome expected = annotate({{"INPUT", valueOf(routes)}, {"COVER", valueOf(own)}});
  VERIFY_RAN(expected);
  for (const char *crs : {"EPSG:4326", "EPSG:32622", "EPSG:3857"}) {
    const Layer other = coverOf(stands, crs);
    const Outcome outcome = annotate({{"INPUT", valueOf(routes)}, {"COVER", valueOf(other)}});
    VERIFY_RAN(outcome);
    QCOMPARE(outcome.rows()[0]["marks"].toInt(), expected.rows()[0]["marks"].toInt());
    VERIFY_NEAR(outcome.rows()[0].number("sight_m"), expected.rows()[0].number("sight_m"), 1e-6, crs);
    VERIFY_NEAR(outcome.rows()[0].number("drift_m"), expected.rows()[0].number("drift_m"), 0.01, crs);
  }
}

// A round stand, drawn as a curve, with a hole; and one of two parts.
void AnnotateLegsGroundTest::everyKindOfPolygon() {
  const Layer routes = eastLeg();
  const auto sightsIn = [&](const QString &type, const QString &text) {
    QgsGeometry geometry = wkt(text);
    geometry.translate(east, north);
    const Layer cover = layer("stands", type, "EPSG:32621", {field("class", FieldType::Text)}, {{geometry, {"brush"}}});
    return annotate({{"INPUT", valueOf(routes)}, {"COVER", valueOf(cover)}});
  };
  const QRegularExpression unknown("cover of (\\d+) m");
  const std::vector<std::pair<QString, QString>> shapes = {
      {"CurvePolygon", "CURVEPOLYGON(CIRCULARSTRING(0 0, 100 100, 200 0, 100 -100, 0 0))"},
      {"CurvePolygonZ", "CURVEPOLYGONZ(CIRCULARSTRINGZ(0 0 1, 100 100 1, 200 0 1, 100 -100 1, 0 0 1))"},
      {"MultiSurface", "MULTISURFACE(CURVEPOLYGON(CIRCULARSTRING(0 0, 100 100, 200 0, 100 -100, 0 0)))"},
      {"Polygon", "POLYGON((0 -10, 250 -10, 250 10, 0 10, 0 -10), (100 -5, 150 -5, 150 5, 100 5, 100 -5))"},
      {"MultiPolygon",
       "MULTIPOLYGON(((0 -10, 150 -10, 150 10, 0 10, 0 -10)), ((200 -5, 250 -5, 250 5, 200 5, 200 -5)))"},
      {"MultiPolygonZM", "MULTIPOLYGONZM(((0 -10 1 2, 200 -10 1 2, 200 10 1 2, 0 10 1 2, 0 -10 1 2)))"}};
  for (const auto &[type, text] : shapes) { // 200 m of the leg's 300 each
    const Outcome outcome = sightsIn(type, text);
    VERIFY_RAN(outcome);
    const QRegularExpressionMatch told = unknown.match(outcome.rows()[0].text("warnings"));
    QVERIFY2(told.hasMatch(), qPrintable(type + outcome.rows()[0].text("warnings")));
    QVERIFY2(told.captured(1) == "100", qPrintable(type + told.captured(0)));
    QCOMPARE(outcome.rows()[0].text("cover"), QString("brush"));
  }
}

void AnnotateLegsGroundTest::ownTable() {
  const Layer routes = eastLeg();
  const auto coverOf = [](int kind) {
    return layer("stands", "Polygon", "EPSG:32621", {field("kind", FieldType::Integer)},
                 {{QgsGeometry::fromRect(QgsRectangle(east - 10, north - 10, east + 5000, north + 10)), {kind}}});
  };
  const Layer cover = coverOf(7), barred = coverOf(8);
  const Layer own =
      table("classes",
            {field("class", FieldType::Text), field("sight_m", FieldType::Text), field("sight_bare", FieldType::Real),
             field("speed_f", FieldType::Real), field("pace_f", FieldType::Real), field("note", FieldType::Text)},
            {{"7", "33.5", 44.0, 0.5, 1.2, "ours"},
             {"8", "20", QVariant(), QVariant(), QVariant(), ""},
             {QVariant(), QVariant(), QVariant(), QVariant(), QVariant(), QVariant()}});
  QVariantMap parameters{
      {"INPUT", valueOf(routes)}, {"COVER", valueOf(cover)}, {"COVER_CLASS", "kind"}, {"COVER_TABLE", valueOf(own)}};
  const Outcome outcome = annotate(parameters);
  parameters["SEASON"] = 1;
  const Outcome bare = annotate(parameters);
  VERIFY_RAN(outcome);
  VERIFY_RAN(bare);
  const OutputRow &leg = outcome.rows()[0];
  QCOMPARE(leg.text("cover"), QString("7"));
  VERIFY_NEAR(leg.number("sight_m"), 33.5, 1e-6, "");
  VERIFY_NEAR(bare.rows()[0].number("sight_m"), 44, 1e-6, "");
  VERIFY_NEAR(double(leg["paces"].toInt()), 1.3 * 1.2 * leg.number("dist_m"), 0.51, "");
  // No speed means what it means in the built-in tables: nobody walks there.
  parameters["COVER"] = valueOf(barred);
  const Outcome water = annotate(parameters);
  VERIFY_RAN(water);
  QVERIFY(water.rows()[0].null("walk_min"));
  QVERIFY2(water.rows()[0].text("warnings").contains("8"), qPrintable(water.rows()[0].text("warnings")));
  // A table without the column says nothing of speeds.
  const Layer sights =
      table("sights", {field("class", FieldType::Text), field("sight_m", FieldType::Real)}, {{"8", 20.0}});
  parameters["COVER_TABLE"] = valueOf(sights);
  const Outcome dry = annotate(parameters);
  VERIFY_RAN(dry);
  QVERIFY(!dry.rows()[0].null("walk_min"));

  const Outcome plain = annotate({{"INPUT", valueOf(routes)}});
  VERIFY_RAN(plain);
  VERIFY_NEAR(leg.number("walk_min"), 2 * plain.rows()[0].number("walk_min"), 1e-6, "");
}

void AnnotateLegsGroundTest::codes_data() {
  QTest::addColumn<int>("legend");
  QTest::addColumn<int>("code");
  QTest::addColumn<QString>("cover");
  QTest::addColumn<double>("sight"); // of the built-in tables: common practice, no source
  QTest::newRow("ESA WorldCover, trees") << 1 << 10 << "10" << 40.0;
  QTest::newRow("ESA WorldCover, shrubs") << 1 << 20 << "20" << 25.0;
}

void AnnotateLegsGroundTest::codes() {
  QFETCH(int, legend);
  QFETCH(int, code);
  QFETCH(QString, cover);
  QFETCH(double, sight);
  const QTemporaryDir folder;
  RasterShape shape = terrainShape();
  shape.whole_numbers = true;
  shape.no_data = 0;
  const QString codes = pathIn(folder, "codes.tif");
  writeRaster(codes, shape, [&](double, double, int) { return code; });
  const Layer routes = eastLeg();
  const Outcome outcome = annotate({{"INPUT", valueOf(routes)}, {"COVER_RASTER", codes}, {"COVER_LEGEND", legend}});
  VERIFY_RAN(outcome);
  QVERIFY2(outcome.warnings.isEmpty(), qPrintable(outcome.said()));
  QCOMPARE(outcome.rows()[0].text("cover"), cover);
  VERIFY_NEAR(outcome.rows()[0].number("sight_m"), sight, 1e-6, "");

  // The same codes in degrees.
  const QgsCoordinateTransform toDegrees(QgsCoordinateReferenceSystem("EPSG:32621"),
                                         QgsCoordinateReferenceSystem("EPSG:4326"), QgsCoordinateTransformContext());
  const QgsRectangle box =
      toDegrees.transformBoundingBox(QgsRectangle(east - 100, north - 100, east + 1000, north + 100));
  const RasterShape inDegrees{"EPSG:4326",
                              {box.xMinimum(), 1e-4, 0, box.yMaximum(), 0, -1e-4},
                              int(box.width() / 1e-4) + 1,
                              int(box.height() / 1e-4) + 1,
                              0.0,
                              {},
                              {},
                              true,
                              1};
  const QString other = pathIn(folder, "degrees.tif");
  writeRaster(other, inDegrees, [&](double, double, int) { return code; });
  const Outcome same = annotate({{"INPUT", valueOf(routes)}, {"COVER_RASTER", other}, {"COVER_LEGEND", legend}});
  VERIFY_RAN(same);
  QCOMPARE(same.rows()[0].text("cover"), cover);
  VERIFY_NEAR(same.rows()[0].number("sight_m"), sight, 1e-6, "");
}

// Codes count where no polygon lies; codes that no table knows are told.
void AnnotateLegsGroundTest::polygonsBeforeCodes() {
  const QTemporaryDir folder;
  RasterShape shape = terrainShape();
  shape.whole_numbers = true;
  const QString codes = pathIn(folder, "codes.tif");
  writeRaster(codes, shape, [&](double x, double, int) { return x < east + 200 ? 20 : 77; });
  const Layer routes = eastLeg();
  const Layer cover = coverOf({{-10, 90, "10"}});
  const Outcome outcome =
      annotate({{"INPUT", valueOf(routes)}, {"COVER", valueOf(cover)}, {"COVER_RASTER", codes}, {"COVER_LEGEND", 1}});
  VERIFY_RAN(outcome);
  const OutputRow &leg = outcome.rows()[0];
  QCOMPARE(leg.text("cover"), QString("20")); // 110 m of shrubs, 90 m of trees
  VERIFY_NEAR(leg.number("sight_m"), 25, 1e-6, "shrubs");
  QVERIFY2(leg.text("warnings").contains("cover of 100 m"), qPrintable(leg.text("warnings")));
  for (const char *word : {"COVER_RASTER", "77", "COVER_TABLE", "COVER_LEGEND"})
    QVERIFY2(outcome.said().contains(word), qPrintable(outcome.said()));
}

// A raster of sight distances counts where it has data, whatever the cover's class; its class still tells the footing.
void AnnotateLegsGroundTest::sightsBeforeCover() {
  const QTemporaryDir folder;
  RasterShape shape = terrainShape();
  shape.no_data = -1;
  const QString sights = pathIn(folder, "sights.tif");
  writeRaster(sights, shape, [&](double x, double, int) { return x < east + 150 ? 50.0 : missing; });
  const Layer routes = eastLeg();
  const Layer cover = coverOf({{-10, 5000, "brush"}});
  const Outcome outcome = annotate(
      {{"INPUT", valueOf(routes)}, {"COVER", valueOf(cover)}, {"SIGHT_RASTER", sights}, {"MARKS", "TEMPORARY_OUTPUT"}});
  VERIFY_RAN(outcome);
  const OutputRow &leg = outcome.rows()[0];
  const double scale = leg.number("dist_m") / 300;
  const Sights expected{{{150 * scale, 50}, {5000 * scale, brush}}};
  QCOMPARE(leg.text("cover"), QString("brush"));
  VERIFY_NEAR(leg.number("sight_m"), brush, 1e-6, "where the raster ends");
  const std::vector<double> marks = expected.marks(leg.number("dist_m"));
  QCOMPARE(leg["marks"].toInt(), int(marks.size()));
  for (size_t i = 0; i < marks.size(); ++i)
    VERIFY_NEAR(outcome.rows("MARKS")[i].number("at_m"), marks[i], 0.02, "");
  VERIFY_NEAR(double(leg["paces"].toInt()), 1.3 * 1.28 * leg.number("dist_m"), 0.51, "brush");

  // Alone it is cover enough for sight; the class stays unknown.
  const Outcome alone = annotate({{"INPUT", valueOf(routes)}, {"SIGHT_RASTER", sights}});
  VERIFY_RAN(alone);
  QVERIFY(alone.rows()[0].null("cover"));
  VERIFY_NEAR(alone.rows()[0].number("sight_m"), 50, 1e-6, "");
  QVERIFY2(alone.rows()[0].text("warnings").contains("cover of 150 m"), qPrintable(alone.rows()[0].text("warnings")));
}

// A dam across the leg hides marks behind it from a low eye.
void AnnotateLegsGroundTest::hiddenByTheGround() {
  const QTemporaryDir folder;
  const QString dem = pathIn(folder, "dam.tif");
  RasterShape shape = terrainShape();
  shape.columns = 400;
  writeRaster(dem, shape, [&](double x, double, int) { return std::abs(x - east - 205) < 10 ? 4.0 : 0.0; });
  const Layer routes = eastLeg();
  const Layer cover = coverOf({{-10, 5000, "open ground"}});
  QVariantMap parameters{{"INPUT", valueOf(routes)}, {"COVER", valueOf(cover)}, {"MARKS", "TEMPORARY_OUTPUT"}};
  const Outcome level = annotate(parameters);
  parameters["DEM"] = dem;
  const Outcome dammed = annotate(parameters);
  VERIFY_RAN(level);
  VERIFY_RAN(dammed);
  VERIFY_NEAR(level.rows("MARKS")[0].number("sight_m"), 300, 1e-6, "open ground");
  const double sight = dammed.rows("MARKS")[0].number("sight_m");
  QVERIFY2(sight > 190 && sight < 230, qPrintable(QString::number(sight))); // up to the crown and no farther
  QVERIFY(dammed.rows()[0].number("sight_m") <= sight);
}

void AnnotateLegsGroundTest::blind() {
  const Layer routes = eastLeg();
  const Layer cover = coverOf({{-10, 200, "open ground"}, {200, 260, "thicket"}, {260, 5000, "open ground"}});
  const Outcome outcome = annotate({{"INPUT", valueOf(routes)}, {"COVER", valueOf(cover)}, {"SPACING_MIN", 10}});
  VERIFY_RAN(outcome);
  const QRegularExpressionMatch told =
      QRegularExpression("On (\\d+) m \\((\\d+) paces\\) not even the next mark can be seen")
          .match(outcome.rows()[0].text("warnings"));
  QVERIFY2(told.hasMatch(), qPrintable(outcome.rows()[0].text("warnings")));
  VERIFY_NEAR(told.captured(1).toDouble(), 60, 12, "a hop more or less");
  QVERIFY(told.captured(2).toDouble() > 1.2 * told.captured(1).toDouble());
  const Outcome seen = annotate({{"INPUT", valueOf(routes)}, {"COVER", valueOf(cover)}, {"SPACING_MIN", 5}});
  VERIFY_RAN(seen);
  QVERIFY2(seen.rows()[0].null("warnings"), qPrintable(seen.rows()[0].text("warnings")));
}

// --- marks and drift -------------------------------------------------------------------------------------------------

void AnnotateLegsGroundTest::marks() {
  const Layer routes = routesOf("EPSG:32621", {"LINESTRING(400000 5300000, 400300 5300000, 400300 5300050)"});
  const Layer cover = coverOf({{-10, 120, "open ground"}, {120, 180, "brush"}, {180, 5000, "mixed forest"}});
  const Layer walkers = table("walkers", {field("walker", FieldType::Text), field("paces_100m", FieldType::Real)},
                              {{"Ann", 120.0}, {"Ben", 160.0}});
  const Layer points = layer("places", "Point", "EPSG:32621", {field("name", FieldType::Text)},
                             {{wkt("POINT(400300 5300000)"), {"stump"}}});
  const Outcome outcome = annotate({{"INPUT", valueOf(routes)},
                                    {"COVER", valueOf(cover)},
                                    {"WALKERS", valueOf(walkers)},
                                    {"POINTS", valueOf(points)},
                                    {"MARKS", "TEMPORARY_OUTPUT"}});
  VERIFY_RAN(outcome);
  const Output &marks = outcome.output("MARKS");
  QCOMPARE(QgsWkbTypes::displayString(marks.type), QString("Point"));
  QCOMPARE(marks.crs, QString("EPSG:32621"));
  for (const auto &[name, type] :
       {std::pair("route", QVariant::String), std::pair("leg", QVariant::Int), std::pair("walker", QVariant::String),
        std::pair("mark", QVariant::Int), std::pair("name", QVariant::String), std::pair("at_m", QVariant::Double),
        std::pair("paces", QVariant::Int), std::pair("sight_m", QVariant::Double),
        std::pair("offset_m", QVariant::Double)}) {
    const int index = marks.fields.indexOf(name);
    QVERIFY2(index >= 0, name);
    QVERIFY2(int(marks.fields.at(index).type()) == int(type), name);
  }
  for (const QgsField &each : marks.fields)
    QVERIFY2(each.name().size() <= 10, qPrintable(each.name()));

  size_t all = 0;
  QMap<QString, int> counted; // by walker, on the legs before
  for (const OutputRow &leg : outcome.rows()) {
    const QgsPointXY from = leg.geometry.vertexAt(0), to = leg.geometry.vertexAt(1);
    std::vector<const OutputRow *> own;
    for (const OutputRow &mark : marks.rows)
      if (mark.text("walker") == leg.text("walker") && mark["leg"] == leg["leg"])
        own.push_back(&mark);
    const std::string where = leg.text("walker").toStdString() + ", leg " + leg.text("leg").toStdString();
    VERIFY_AT(int(own.size()) == leg["marks"].toInt(), where);
    all += own.size();
    double before = 0;
    int paces = 0;
    for (size_t i = 0; i < own.size(); ++i) {
      const OutputRow &mark = *own[i];
      VERIFY_AT(mark["mark"].toInt() == int(i + 1), where);
      VERIFY_AT(mark.number("at_m") > before && mark["paces"].toInt() >= paces, where);
      before = mark.number("at_m");
      paces = mark["paces"].toInt();
      VERIFY_AT(mark.number("offset_m") == 0, where);
      VERIFY_AT(mark["run_paces"].toInt() == counted.value(leg.text("walker")) + paces, where);
      // On the leg's line, as far along it as told.
      const double share = before / leg.number("dist_m");
      const QgsPointXY at = mark.geometry.asPoint();
      VERIFY_NEAR(at.x(), from.x() + share * (to.x() - from.x()), 0.01, where);
      VERIFY_NEAR(at.y(), from.y() + share * (to.y() - from.y()), 0.01, where);
      const bool last = i + 1 == own.size();
      VERIFY_AT(mark.text("name") == (last && leg["leg"].toInt() == 1 ? "stump" : ""), where);
    }
    VERIFY_NEAR(before, leg.number("dist_m"), 1e-9, where);
    VERIFY_AT(paces == leg["paces"].toInt(), where);
    counted[leg.text("walker")] += paces;
  }
  QCOMPARE(all, marks.rows.size());
  QVERIFY(all > 20);
}

void AnnotateLegsGroundTest::marksOfTheWayBack() {
  const Layer routes = eastLeg();
  const Layer cover = coverOf({{-10, 120, "open ground"}, {120, 180, "brush"}, {180, 310, "open ground"}});
  const Outcome outcome = annotate(
      {{"INPUT", valueOf(routes)}, {"COVER", valueOf(cover)}, {"DIRECTION", 1}, {"MARKS", "TEMPORARY_OUTPUT"}});
  VERIFY_RAN(outcome);
  const OutputRow &leg = outcome.rows()[0];
  const double metres = leg.number("dist_m"), scale = metres / 300;
  const Sights sights{{{120 * scale, openGround}, {180 * scale, brush}, {310 * scale, openGround}}};
  const std::vector<double> expected = sights.marks(metres);
  QCOMPARE(outcome.rows("MARKS").size(), expected.size());
  for (size_t i = 0; i < expected.size(); ++i) {
    VERIFY_NEAR(outcome.rows("MARKS")[i].number("at_m"), expected[i], 0.02, "");
    VERIFY_NEAR(outcome.rows("MARKS")[i].geometry.asPoint().x(), east + 300 - expected[i] / scale, 0.02, "");
  }
}

void AnnotateLegsGroundTest::drift() {
  const Layer routes = routesOf("EPSG:32621", {"LINESTRING(400000 5300000, 400300 5300000, 400300 5300400)"});
  const Layer walkers = table("walkers", {field("walker", FieldType::Text), field("brg_err", FieldType::Real)},
                              {{"Ann", 2.0}, {"Ben", 8.0}});
  const Outcome outcome =
      annotate({{"INPUT", valueOf(routes)}, {"WALKERS", valueOf(walkers)}, {"DRIFT", "TEMPORARY_OUTPUT"}});
  VERIFY_RAN(outcome);
  const Output &drift = outcome.output("DRIFT");
  QCOMPARE(QgsWkbTypes::displayString(drift.type), QString("Polygon"));
  QCOMPARE(drift.crs, QString("EPSG:32621"));
  QCOMPARE(drift.rows.size(), outcome.rows().size());
  for (size_t i = 0; i < drift.rows.size(); ++i) {
    const OutputRow &ellipse = drift.rows[i], &leg = outcome.rows()[i];
    const std::string where = "row " + std::to_string(i);
    for (const char *name : {"route", "leg", "walker"})
      VERIFY_AT(ellipse[name] == leg[name], where + " " + name);
    VERIFY_AT(ellipse.geometry.isGeosValid(), where);
    const QgsGeometry end = QgsGeometry::fromPointXY(leg.geometry.vertexAt(1));
    VERIFY_AT(ellipse.geometry.contains(end), where);
    VERIFY_NEAR(ellipse.geometry.centroid().distance(end), 0, 0.05, where);
    VERIFY_AT(!ellipse.geometry.contains(QgsGeometry::fromPointXY(leg.geometry.vertexAt(0))), where);
    // The area of an ellipse that holds 95 percent: pi * 5.9915 * sigma * sigma (chi-square, 2 degrees of freedom),
    // for the first leg, where across and along are its axes; 72 corners have 0.9987 of it.
    if (leg["leg"].toInt() == 1) {
      const double area = Angle::pi * 5.991464547 * leg.number("drift_m") * leg.number("along_m"); // computed
      VERIFY_NEAR(ellipse.geometry.area() / area, 0.9987 * 0.99972 * 0.99972, 0.001, where);       // the grid's scale
    }
  }
  // Ben sights less well.
  QVERIFY(drift.rows[1].geometry.area() > 2 * drift.rows[0].geometry.area());
  // Errors add up: the second leg ends in a wider ellipse than one of its length alone would.
  QVERIFY(drift.rows[2].geometry.area() > 1.5 * drift.rows[0].geometry.area());
}

// Where a named point is met errors start anew, unless one is not sure to find it.
void AnnotateLegsGroundTest::driftAtNamedPoints() {
  const Layer routes = routesOf("EPSG:32621", {"LINESTRING(400000 5300000, 400300 5300000, 400300 5300400)"});
  const Layer second = routesOf("EPSG:32621", {"LINESTRING(400300 5300000, 400300 5300400)"});
  const Layer points = layer("places", "Point", "EPSG:32621", {field("name", FieldType::Text)},
                             {{wkt("POINT(400300 5300000)"), {"stump"}}});
  const Outcome unnamed = annotate({{"INPUT", valueOf(routes)}});
  const Outcome named = annotate({{"INPUT", valueOf(routes)}, {"POINTS", valueOf(points)}});
  const Outcome unsure = annotate({{"INPUT", valueOf(routes)}, {"POINTS", valueOf(points)}, {"NAMED_FOUND", false}});
  const Outcome alone = annotate({{"INPUT", valueOf(second)}});
  for (const Outcome *each : {&unnamed, &named, &unsure, &alone})
    VERIFY_RAN(*each);
  VERIFY_NEAR(named.rows()[1].number("drift_m"), alone.rows()[0].number("drift_m"), 1e-9, "anew");
  VERIFY_NEAR(named.rows()[1].number("along_m"), alone.rows()[0].number("along_m"), 1e-9, "anew");
  QVERIFY(unsure.rows()[1].number("drift_m") == unnamed.rows()[1].number("drift_m"));
  QVERIFY(unnamed.rows()[1].number("drift_m") > 1.05 * alone.rows()[0].number("drift_m"));
  QCOMPARE(unsure.rows()[1].text("from_name"), QString("stump"));
}

BRUSHLINE_HOST_TEST_MAIN(AnnotateLegsGroundTest)
#include "annotate_legs_ground_test.moc"
