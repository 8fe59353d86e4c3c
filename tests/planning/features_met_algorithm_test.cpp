// SPDX-License-Identifier: GPL-2.0-or-later
// Crossings are held against GEOS and geodesics; paces against annotatelegs.
#include "quantities/place.h"
#include "shared/geodesic.h"
#include "support/cancelled_run.h"
#include "support/random.h"

#include <qgscoordinatetransform.h>
#include <qgsproject.h>

#include <algorithm>
#include <cmath>

using namespace brushline;
using namespace brushline::test;

namespace {
const QString id = QStringLiteral("brushline:featuresmet");
const QString crs = QStringLiteral("EPSG:32621");

Layer routes(const QString &text = QStringLiteral("LINESTRING(600000 5400000,600300 5400000,600300 5400200)")) {
  return layer(QStringLiteral("routes"), QStringLiteral("LineString"), crs, {field("route", FieldType::Text)},
               {{wkt(text), {"north loop"}}});
}
Layer streams(const std::vector<Row> &rows, const QString &system = crs) {
  return layer(QStringLiteral("streams"), QStringLiteral("LineString"), system, {field("name", FieldType::Text)}, rows);
}
QVariantMap parameters(const Layer &input, const Layer &features) {
  return {{"INPUT", valueOf(input)},
          {"ROUTE_FIELD", "route"},
          {"FEATURES", QVariantList{valueOf(features)}},
          {"OUTPUT", "memory:"}};
}
Place placeOf(const QgsGeometry &point, const QString &system) {
  const QgsCoordinateTransform transform(QgsCoordinateReferenceSystem(system),
                                         QgsCoordinateReferenceSystem(QStringLiteral("EPSG:4326")),
                                         QgsCoordinateTransformContext());
  const QgsPointXY at = transform.transform(point.asPoint());
  return {Angle::degrees(at.y()), Angle::degrees(at.x())};
}
} // namespace

class FeaturesMetAlgorithmTest : public QObject {
  Q_OBJECT

private slots:
  void rowsInOrder() {
    const Layer input = routes();
    const Layer features = streams({{wkt("LINESTRING(600120 5399900,600120 5400100)"), {"Brook"}},
                                    {wkt("LINESTRING(600250 5400100,600350 5400100)"), {QVariant()}},
                                    {wkt("LINESTRING(600200 5400240,600400 5400240)"), {"Trail"}},
                                    {QgsGeometry(), {"Nowhere"}}});
    const Outcome outcome = run(id, parameters(input, features));
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    const auto &rows = outcome.rows();
    QCOMPARE(rows.size(), size_t(3));
    QCOMPARE(outcome.output().texts("feature"), (QStringList{"Brook", "streams", "Trail"}));
    QCOMPARE(outcome.output().texts("role"), (QStringList{"crossed", "crossed", "beyond"}));
    QCOMPARE(outcome.output().texts("leg"), (QStringList{"1", "2", "2"}));
    QCOMPARE(outcome.output().texts("direction"), (QStringList{"out", "out", "out"}));
    // In the zone's projection the ground is 1/0.99972 of the grid here.
    QVERIFY(std::abs(rows[0].number("at_m") - 120) < 0.1);
    QCOMPARE(int(rows[0].number("paces")), 156); // 130 over 100 m
    QVERIFY(std::abs(rows[2].number("at_m") - 240) < 0.2);
    QVERIFY(outcome.warnings.join(' ').contains("streams"));
    QCOMPARE(outcome.results.value("MET_COUNT").toInt(), 3);
  }

  // The reported place lies at_m from the leg's start by the geodesic, and on the feature.
  void placesAgainstGeosAndGeodesics() {
    Random random(11);
    std::vector<Row> rows;
    for (int i = 0; i < 60; ++i)
      rows.push_back({line({{600000 + random.between(-500, 3000), 5400000 + random.between(-500, 3000)},
                            {600000 + random.between(-500, 3000), 5400000 + random.between(-500, 3000)}}),
                      {QString::number(i)}});
    const Layer features = streams(rows);
    const Layer input = routes("LINESTRING(600100 5400200,602200 5401500)");
    QVariantMap given = parameters(input, features);
    given["WIDTH"] = 0;
    given["REACH"] = 0;
    const Outcome outcome = run(id, given);
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    const QgsGeometry leg = wkt("LINESTRING(600100 5400200,602200 5401500)");
    QStringList expected;
    for (const Row &row : rows)
      if (row.geometry.intersects(leg))
        expected << row.values[0].toString();
    QStringList found = outcome.output().texts("feature");
    std::sort(found.begin(), found.end());
    std::sort(expected.begin(), expected.end());
    QCOMPARE(found, expected);
    QVERIFY(found.size() > 10);
    const Place start = placeOf(wkt("POINT(600100 5400200)"), crs);
    double before = 0;
    for (const OutputRow &row : outcome.rows()) {
      QVERIFY(row.number("at_m") >= before);
      before = row.number("at_m");
      QVERIFY(std::abs(geodesicBetween(start, placeOf(row.geometry, crs)).length.metres() - before) < 0.01);
      // A geodesic of 2.5 km strays from the grid's straight line by up to 5 cm, and an edge of 3 km likewise.
      const int index = row.text("feature").toInt();
      QVERIFY(rows[size_t(index)].geometry.distance(row.geometry) < 0.3);
    }
  }

  void pacesAsAnnotated() {
    QTemporaryDir folder;
    const QString terrain = folder.filePath("terrain.tif");
    writeRaster(terrain, {crs, {599900, 5, 0, 5400600, 0, -5}, 200, 200, {}, {}, {}},
                [](double x, double y, int) { return 0.12 * (x - 599900) + 5 * std::sin(y / 40); });
    const Layer input = routes();
    const Layer cover = layer("cover", "Polygon", crs, {field("class", FieldType::Text)},
                              {{wkt("POLYGON((600100 5399900,600200 5399900,600200 5400300,600100 5400300,600100 "
                                    "5399900))"),
                                {"brush"}}});
    const Layer walkers = table("walkers", {field("walker", FieldType::Text), field("paces_100m", FieldType::Real)},
                                {{"Ada", 120}, {"Bo", 170}});
    // Something at each leg's end.
    const Layer features = streams({{wkt("LINESTRING(600300 5399990,600300 5400010)"), {"corner"}},
                                    {wkt("LINESTRING(600290 5400200,600310 5400200)"), {"end"}}});
    QVariantMap given = parameters(input, features);
    given["DEM"] = terrain;
    given["COVER"] = valueOf(cover);
    given["WALKERS"] = valueOf(walkers);
    const Outcome met = run(id, given);
    QVERIFY2(met.ok, qPrintable(met.said()));
    const Outcome legs = run("brushline:annotatelegs", {{"INPUT", valueOf(input)},
                                                        {"ROUTE_FIELD", "route"},
                                                        {"DEM", terrain},
                                                        {"COVER", valueOf(cover)},
                                                        {"WALKERS", valueOf(walkers)},
                                                        {"DATE", "2026-06-01"},
                                                        {"OUTPUT", "memory:"}});
    QVERIFY2(legs.ok, qPrintable(legs.said()));
    int compared = 0;
    for (const OutputRow &row : met.rows())
      for (const OutputRow &leg : legs.rows())
        if (row.text("leg") == leg.text("leg") && row.text("walker") == leg.text("walker") &&
            row.text("event") != "ground rises" && std::abs(row.number("at_m") - leg.number("dist_m")) < 1e-3) {
          QCOMPARE(int(row.number("paces")), int(leg.number("paces")));
          QVERIFY(std::abs(row.number("at_min") - leg.number("walk_min")) < 1e-4); // a millimetre is 2e-5 min
          ++compared;
        }
    QVERIFY(compared >= 4);
  }

  void annotatedLegsKeepTheirNumbers() {
    const Layer input = routes();
    const Outcome legs =
        run("brushline:annotatelegs",
            {{"INPUT", valueOf(input)}, {"ROUTE_FIELD", "route"}, {"DATE", "2026-06-01"}, {"OUTPUT", "memory:"}});
    QVERIFY(legs.ok);
    std::vector<Row> rows;
    for (const OutputRow &row : legs.rows())
      rows.push_back({row.geometry, {row["route"], row["leg"], row["walker"], row["direction"]}});
    const Layer annotated = layer("legs", "LineString", crs,
                                  {field("route", FieldType::Text), field("leg", FieldType::Integer),
                                   field("walker", FieldType::Text), field("direction", FieldType::Text)},
                                  rows);
    const Layer features = streams({{wkt("LINESTRING(600250 5400100,600350 5400100)"), {"Brook"}}});
    QVariantMap given = parameters(annotated, features);
    given.remove("ROUTE_FIELD");
    const Outcome outcome = run(id, given);
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(outcome.output().texts("leg"), QStringList{"2"});
    QCOMPARE(outcome.output().texts("route"), QStringList{"north loop"});
  }

  // At 40 m on the second leg out is at 60 m on the first leg back.
  void theWayBackIsToldAsSuch() {
    const QTemporaryDir folder;
    const Layer input = routes("LINESTRING(600000 5400000,600000 5400100,600100 5400100)");
    const QString legs = folder.filePath("legs.gpkg");
    const Outcome annotated = run("brushline:annotatelegs",
                                  {{"INPUT", valueOf(input)},
                                   {"ROUTE_FIELD", "route"},
                                   {"DIRECTION", 2},
                                   {"DATE", "2026-06-01"},
                                   {"OUTPUT", legs}},
                                  {nullptr, nullptr, false, true});
    QVERIFY2(annotated.ok, qPrintable(annotated.said()));
    const Layer features = streams({{wkt("LINESTRING(600040 5400050,600040 5400150)"), {"Brook"}}});
    const Outcome outcome =
        run(id, {{"INPUT", legs}, {"FEATURES", QVariantList{valueOf(features)}}, {"OUTPUT", "memory:"}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(outcome.output().texts("direction"), (QStringList{"out", "back"}));
    QCOMPARE(outcome.output().texts("leg"), (QStringList{"2", "1"}));
    QVERIFY(std::abs(outcome.rows()[0].number("at_m") - 40) < 0.1);
    QVERIFY(std::abs(outcome.rows()[1].number("at_m") - 60) < 0.1);
  }

  void nothingMetIsAnEmptyLayer() {
    const Layer input = routes(), features = streams({{wkt("LINESTRING(0 0,1 1)"), {"Elsewhere"}}});
    const Outcome outcome = run(id, parameters(input, features));
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QVERIFY(outcome.rows().empty());
  }

  // Many legs among many lines: soon after it is cancelled it ends, and no file is left.
  void cancelled() {
    const Layer input =
        layer("ways", "LineString", crs, {field("route", FieldType::Text)}, latticeOfLines("way", {0, 0}, {300, 200}));
    const Layer features = streams(latticeOfLines("Brook", {0, 90}, {90, 0}));
    for (const double percent : {0.0, 30.0, 80.0}) {
      const double seconds = secondsAfterCancel(id, parameters(input, features), percent);
      QVERIFY2(seconds < soon, qPrintable(QStringLiteral("%1 s at %2 %").arg(seconds).arg(percent)));
    }
  }

  void badInput() {
    const Layer input = routes();
    const Layer lost = streams({{wkt("LINESTRING(0 0,1 1)"), {"x"}}}, QString());
    const Outcome outcome = run(id, parameters(input, lost));
    QVERIFY(!outcome.accepted);
    QVERIFY2(outcome.refusal.contains("FEATURES") && outcome.refusal.contains("streams"), qPrintable(outcome.refusal));
    const Layer plain = table("plain", {field("name", FieldType::Text)}, {{"x"}});
    QVERIFY(!run(id, parameters(input, plain)).accepted);
    QVariantMap far = parameters(input, input);
    far["REACH"] = 1e9;
    QVERIFY(run(id, far).refusal.contains("REACH"));
  }
};

BRUSHLINE_HOST_TEST_MAIN(FeaturesMetAlgorithmTest)
#include "features_met_algorithm_test.moc"
