// SPDX-License-Identifier: GPL-2.0-or-later
// What exportgpx writes. Every file is held against the schema of GPX 1.1 by xmllint. Numbers are compared with those
// of the layer they come from; wordings are regression only. Longitudes and magvar: types longitudeType and degreesType
// of that schema.
#include "handouts/gpx_run.h"

#include "support/cancelled_run.h"
#include "support/comma_locale.h"
#include "support/near.h"
#include "support/random.h"

#include <QLocale>
#include <qgscoordinatetransform.h>

#include <algorithm>
#include <cmath>

using namespace brushline;
using namespace brushline::test;

namespace {

const QString degree = QChar(0xB0);

// Three legs in a row, places named at the start, after the first leg, and at the end.
std::vector<LegRow> threeLegs(const QString &route = "North loop", const Named &more = {}) {
  std::vector<LegRow> rows;
  for (int i = 1; i <= 3; ++i)
    rows.push_back({leg(route, i, more), stretch(i)});
  rows[0].values["from_name"] = "Camp";
  rows[0].values["to_name"] = "Split Boulder";
  rows[1].values["from_name"] = "Split Boulder";
  rows[2].values["to_name"] = "Lone Pine";
  return rows;
}

std::vector<LegRow> joined(std::vector<LegRow> a, const std::vector<LegRow> &b) {
  a.insert(a.end(), b.begin(), b.end());
  return a;
}

// A mark so many thousandths of a leg's length from its start.
LegRow markOn(const QString &route, int leg, int number, int thousandths, const Named &more = {}) {
  Named row{{"route", route},
            {"leg", leg},
            {"direction", "out"},
            {"mark", number},
            {"at_m", 0.073 * thousandths},
            {"paces", thousandths / 10},
            {"sight_m", 40.0},
            {"offset_m", 0.0}};
  for (auto one = more.begin(); one != more.end(); ++one)
    row[one.key()] = one.value();
  return {row, QStringLiteral("POINT(%1 48.8)").arg(-55.2 + 0.001 * (leg - 1 + thousandths / 1000.0), 0, 'f', 9)};
}

QgsVectorLayer *ogr(const QString &path, const QString &name) {
  QgsVectorLayer::LayerOptions options;
  options.skipCrsValidation = true;
  return new QgsVectorLayer(path + "|layername=" + name, name, "ogr", options);
}

class Epoch {
public:
  explicit Epoch(const char *seconds) { qputenv("SOURCE_DATE_EPOCH", seconds); }
  ~Epoch() { qunsetenv("SOURCE_DATE_EPOCH"); }
};

} // namespace

class ExportGpxAlgorithmTest : public QObject {
  Q_OBJECT

private slots:
  void init() { qunsetenv("SOURCE_DATE_EPOCH"); }

  void pointsAtStartsAndTheEnd() {
    const Layer legs = legsOf(threeLegs());
    const GpxRun run({{"INPUT", valueOf(legs)}});
    VERIFY_EXPORTED(run);
    QCOMPARE(run.outcome.results.value("OUTPUT").toString(), run.path);
    QCOMPARE(run.outcome.results.value("ROUTE_COUNT").toDouble(), 1.0);
    QCOMPARE(run.outcome.results.value("POINT_COUNT").toDouble(), 4.0);
    QCOMPARE(run.outcome.results.value("WAYPOINT_COUNT").toDouble(), 0.0);
    QCOMPARE(run.files(), QStringList("legs.gpx"));
    QVERIFY2(run.outcome.warnings.isEmpty(), qPrintable(run.warnings()));
    const Gpx gpx = run.gpx();
    QCOMPARE(gpx.root.namespaceURI(), QString("http://www.topografix.com/GPX/1/1"));
    QCOMPARE(gpx.root.attribute("version"), QString("1.1"));
    QVERIFY(gpx.root.attribute("creator").startsWith("Brushline "));
    QCOMPARE(texts(gpx.routes, "name"), QStringList("North loop"));
    const auto points = gpx.points();
    QCOMPARE(texts(points, "name"), QStringList({"Camp", "Split Boulder", "3", "Lone Pine"}));
    QCOMPARE(texts(points, "cmt"),
             QStringList({"108" + degree + " 100 p", "108" + degree + " 100 p", "108" + degree + " 100 p", "End"}));
    QCOMPARE(texts(points, "type"), QStringList({"leg", "leg", "leg", "end"}));
    QCOMPARE(texts(points, "magvar"), QStringList({"343", "343", "343", ""})); // 17 west
    for (size_t i = 0; i < points.size(); ++i) {
      QCOMPARE(points[i].attribute("lat"), QString("48.8"));
      VERIFY_NEAR(points[i].attribute("lon").toDouble(), -55.2 + 0.001 * double(i), 1e-12, std::to_string(i));
    }
    const QString words = text(points[0], "desc");
    for (const char *part : {"Leg 1 of 3, from Camp to Split Boulder.",
                             "Set the dial to 108\u00b0 (ESE). CAUTION: it is not certain from which north it counts.",
                             "Walk 73 m: 100 paces.", "sighted at 288\u00b0", "true 090.0\u00b0",
                             "magnetic 107.0\u00b0", "declination 17.0\u00b0 west"})
      QVERIFY2(words.contains(QString::fromUtf8(part)), qPrintable(words));
    QVERIFY(text(points[3], "desc").contains("ends here"));
    for (const char *caution : {"CAUTION", "cliffs", "back bearing"}) {
      QVERIFY(text(gpx.metadata, "desc").contains(caution));
      QVERIFY(text(gpx.routes[0], "desc").contains(caution));
    }
    QVERIFY(text(gpx.metadata, "desc").contains("tell someone where you go"));
  }

  void gapsGetBothPoints() {
    auto rows = threeLegs();
    rows[1].wkt = "LINESTRING(-55.1985 48.8, -55.1975 48.8)";
    rows[1].values["warnings"] = "Starts 37 m from where the leg before ends.";
    rows.erase(rows.begin() + 2);
    const Layer legs = legsOf(rows);
    const GpxRun run({{"INPUT", valueOf(legs)}});
    VERIFY_EXPORTED(run);
    const auto points = run.gpx().points();
    QCOMPARE(texts(points, "name"), QStringList({"Camp", "Split Boulder", "Split Boulder", "End"}));
    QCOMPARE(texts(points, "type"), QStringList({"leg", "gap", "leg", "end"}));
    QCOMPARE(points[1].attribute("lon").toDouble(), -55.199);
    QCOMPARE(points[2].attribute("lon").toDouble(), -55.1985);
    // 0.0005 degrees on this parallel: 36.7 m (GeographicLib, geodesic on WGS84)
    QCOMPARE(text(points[1], "cmt"), QString("End of leg 1, then a gap of 37 m"));
    QVERIFY(text(points[1], "desc").contains("CAUTION: leg 2 starts 37 m away"));
    QVERIFY(text(points[1], "desc").contains("Neither bearing nor paces"));
    QCOMPARE(text(points[1], "magvar"), QString());
    QCOMPARE(run.outcome.results.value("POINT_COUNT").toDouble(), 4.0);
  }

  void lackingLegsAreTold() {
    auto rows = threeLegs();
    rows.erase(rows.begin() + 1);
    const Layer one = legsOf(rows);
    const GpxRun run({{"INPUT", valueOf(one)}});
    VERIFY_EXPORTED(run);
    QVERIFY2(text(run.gpx().routes[0], "desc").contains("CAUTION: leg 2 is not in this file."),
             qPrintable(text(run.gpx().routes[0], "desc")));
    QVERIFY2(run.warnings().contains("Route “North loop”: leg 2 is not in the file."), qPrintable(run.warnings()));

    // At the end too the file does not say that the route ends there.
    auto shortened = threeLegs();
    shortened.push_back({leg("North loop", 4, {{"paces", QVariant()}}), stretch(4)});
    const Layer lacking = legsOf(shortened);
    const GpxRun without({{"INPUT", valueOf(lacking)}});
    VERIFY_EXPORTED(without);
    const auto points = without.gpx().points();
    QVERIFY(text(points.back(), "desc").contains("Leg 3 ends here. CAUTION: leg 4 is not in this file."));
    QVERIFY(text(points[0], "desc").contains("Leg 1 of 4"));

    // With one route for both, who lacks a leg at the end is heeded too.
    auto both = joined(threeLegs("Loop", {{"walker", "Ann"}}), threeLegs("Loop", {{"walker", "Bo"}}));
    both.push_back({leg("Loop", 4, {{"walker", "Bo"}, {"paces", QVariant()}}), stretch(4)});
    both.push_back({leg("Loop", 5, {{"walker", "Bo"}, {"paces", QVariant()}}), stretch(5)});
    const Layer more = legsOf(both);
    const GpxRun together({{"INPUT", valueOf(more)}, {"ONE_ROUTE", true}});
    VERIFY_EXPORTED(together);
    QCOMPARE(together.gpx().routes.size(), size_t(1));
    QVERIFY2(text(together.gpx().routes[0], "desc").contains("CAUTION: legs 4–5 are not in this file."),
             qPrintable(text(together.gpx().routes[0], "desc")));
  }

  // What detourlegs makes: a point for each piece, with the layer's numbers, that says what to do.
  void legsWithDetours() {
    const Layer routes = layer("routes", "LineString", "EPSG:32621", {field("route", FieldType::Text)},
                               {{wkt("LINESTRING(600000 5400000,600300 5400000,600300 5400200)"), {QString("Loop")}}});
    const Layer ponds =
        layer("ponds", "Polygon", "EPSG:32621", {field("name", FieldType::Text)},
              {{wkt("POLYGON((600100 5399980,600140 5399980,600140 5400020,600100 5400020,600100 5399980))"),
                {QString("Tarn")}}});
    const Layer walkers = table("walkers", {field("walker", FieldType::Text), field("paces_100m", FieldType::Real)},
                                {{"Ann", 120.0}, {"Bo", 160.0}});
    const QTemporaryDir folder;
    const QString file = folder.filePath("legs.gpkg");
    const Outcome made = brushline::test::run("brushline:detourlegs", {{"INPUT", valueOf(routes)},
                                                                       {"ROUTE_FIELD", "route"},
                                                                       {"OBSTACLES", valueOf(ponds)},
                                                                       {"WALKERS", valueOf(walkers)},
                                                                       {"DATE", "2026-06-01"},
                                                                       {"OUTPUT", file}});
    QVERIFY2(made.ok, qPrintable(made.said()));
    const auto &rows = made.rows(); // piece by piece, Ann's and Bo's
    QCOMPARE(rows.size(), size_t(12));
    const GpxRun run({{"INPUT", file}});
    VERIFY_EXPORTED(run);
    QVERIFY2(run.outcome.warnings.isEmpty(), qPrintable(run.warnings()));
    const Gpx gpx = run.gpx();
    QCOMPARE(texts(gpx.routes, "name"), QStringList({"Ann: Loop", "Bo: Loop"}));
    const QStringList before{"on: ", "out: ", "past: ", "back: ", "on: ", ""};
    for (size_t walker = 0; walker < 2; ++walker) {
      const auto points = gpx.points(walker);
      QCOMPARE(texts(points, "name"), QStringList({"1a", "1b", "1c", "1d", "1e", "2", "End"}));
      for (size_t i = 0; i < 6; ++i) {
        const OutputRow &row = rows[2 * i + walker];
        QCOMPARE(text(points[i], "cmt"),
                 QStringLiteral("%1%2 %3 p").arg(before[int(i)], row.text("dial_text"), row.text("paces")));
        for (const char *name :
             {"leg", "dial", "back_dial", "dist_m", "paces", "true_brg", "piece", "run_paces", "count_m", "blocked_m"})
          QCOMPARE(own(points[i], name).toDouble(), row.number(name));
        for (const char *name : {"part", "turn", "side", "obstacle", "dial_text"})
          QCOMPARE(own(points[i], name), row.text(name));
      }
      const QString out = text(points[1], "desc"), past = text(points[2], "desc");
      QVERIFY2(
          out.startsWith("Leg 1b of 2. Turn right, a quarter turn. Out from the line, round Tarn. Set the dial to"),
          qPrintable(out));
      QVERIFY2(out.contains("These paces do not count for the leg."), qPrintable(out));
      QVERIFY2(past.contains(QStringLiteral("Count on from %1 to %2.")
                                 .arg(rows[walker].text("run_paces"), rows[4 + walker].text("run_paces"))),
               qPrintable(past));
      QVERIFY2(text(gpx.routes[walker], "desc").contains("Loop: 2 legs"), qPrintable(text(gpx.routes[walker], "desc")));
    }
    const std::unique_ptr<QgsVectorLayer> host(ogr(run.path, "route_points"));
    QVERIFY(host->isValid());
    const Output places = read(*host);
    QCOMPARE(places.rows.size(), size_t(14));
    for (size_t i = 0; i < 6; ++i) {
      QCOMPARE(places.rows[i].text("leg_part"), rows[2 * i].text("part"));
      QCOMPARE(places.rows[i].number("leg_run_paces"), rows[2 * i].number("run_paces"));
    }

    const GpxRun one({{"INPUT", file}, {"ONE_ROUTE", true}});
    VERIFY_EXPORTED(one);
    const QDomElement point = one.gpx().points()[2];
    QCOMPARE(own(point, "run_paces_1").toDouble(), rows[4].number("run_paces"));
    QCOMPARE(own(point, "run_paces_2").toDouble(), rows[5].number("run_paces"));
    QVERIFY2(
        text(point, "desc")
            .contains(
                QStringLiteral("Count on from %1 to %2.").arg(rows[1].text("run_paces"), rows[5].text("run_paces"))),
        qPrintable(text(point, "desc")));
  }

  void unnamedEndsAndGaps() {
    auto rows = threeLegs("");
    for (LegRow &row : rows) {
      row.values["from_name"] = QVariant();
      row.values["to_name"] = QVariant();
    }
    rows.erase(rows.begin() + 1);
    const Layer legs = legsOf(rows);
    const GpxRun run({{"INPUT", valueOf(legs)}});
    VERIFY_EXPORTED(run);
    QCOMPARE(texts(run.gpx().points(), "name"), QStringList({"1", "1 end", "3", "End"}));
    QVERIFY(text(run.gpx().points()[0], "desc").startsWith("Leg 1 of 3."));
    QCOMPARE(texts(run.gpx().routes, "name"), QStringList("Legs"));
  }

  void magvar_data() {
    QTest::addColumn<QVariant>("decl");
    QTest::addColumn<QString>("magvar");
    QTest::newRow("west") << QVariant(-13.0) << "347";
    QTest::newRow("east") << QVariant(13.25) << "13.25";
    QTest::newRow("none") << QVariant(0.0) << "0";
    QTest::newRow("minus none") << QVariant(-0.0) << "0";
    QTest::newRow("a little west") << QVariant(-0.25) << "359.75";
    QTest::newRow("hardly west") << QVariant(-1e-9) << "0";
    QTest::newRow("opposite") << QVariant(180.0) << "180";
    QTest::newRow("opposite, west") << QVariant(-180.0) << "180";
    QTest::newRow("unknown") << QVariant() << "";
    QTest::newRow("not a number") << QVariant(std::nan("")) << "";
  }
  void magvar() {
    QFETCH(QVariant, decl);
    QFETCH(QString, magvar);
    const Layer legs = legsOf(threeLegs("a", {{"decl", decl}}));
    const GpxRun run({{"INPUT", valueOf(legs)}});
    VERIFY_EXPORTED(run);
    QCOMPARE(text(run.gpx().points()[0], "magvar"), magvar);
    if (magvar.isEmpty())
      QVERIFY(!text(run.gpx().points()[0], "desc").contains("declination"));
  }

  void placesAtTheEdges_data() {
    QTest::addColumn<QString>("line");
    QTest::addColumn<QStringList>("lon");
    QTest::addColumn<QStringList>("lat");
    QTest::addColumn<QStringList>("box"); // west, east
    QTest::newRow("ends on 180") << "LINESTRING(179.9 1, 180 1)" << QStringList({"179.9", "-180"})
                                 << QStringList({"1", "1"}) << QStringList({"-180", "179.9"});
    QTest::newRow("ends on -180") << "LINESTRING(-179.9 1, -180 1)" << QStringList({"-179.9", "-180"})
                                  << QStringList({"1", "1"}) << QStringList({"-180", "-179.9"});
    QTest::newRow("over 180") << "LINESTRING(179.5 1, 180.5 1)" << QStringList({"179.5", "-179.5"})
                              << QStringList({"1", "1"}) << QStringList({"-179.5", "179.5"});
    QTest::newRow("over -180") << "LINESTRING(-179.5 1, -180.5 1)" << QStringList({"-179.5", "179.5"})
                               << QStringList({"1", "1"}) << QStringList({"-179.5", "179.5"});
    QTest::newRow("rounds to 180") << "LINESTRING(179.9999999999 1, 179 1)" << QStringList({"-180", "179"})
                                   << QStringList({"1", "1"}) << QStringList({"-180", "179"});
    QTest::newRow("pole") << "LINESTRING(10 89.999, 10 90)" << QStringList({"10", "10"})
                          << QStringList({"89.999", "90"}) << QStringList({"10", "10"});
    QTest::newRow("other pole") << "LINESTRING(10 -90, -170 -89.999)" << QStringList({"10", "-170"})
                                << QStringList({"-90", "-89.999"}) << QStringList({"-170", "10"});
    QTest::newRow("nought") << "LINESTRING(0 0, -0.0000000001 0.000000001)" << QStringList({"0", "0"})
                            << QStringList({"0", "0.000000001"}) << QStringList({"0", "0"});
  }
  void placesAtTheEdges() {
    QFETCH(QString, line);
    QFETCH(QStringList, lon);
    QFETCH(QStringList, lat);
    QFETCH(QStringList, box);
    const Layer legs = legsOf({{leg("edge", 1), line}});
    const GpxRun run({{"INPUT", valueOf(legs)}});
    VERIFY_EXPORTED(run);
    const Gpx gpx = run.gpx();
    QStringList longitudes, latitudes;
    for (const QDomElement &point : gpx.points()) {
      longitudes << point.attribute("lon");
      latitudes << point.attribute("lat");
    }
    QCOMPARE(longitudes, lon);
    QCOMPARE(latitudes, lat);
    const QDomElement bounds = childrenOf(gpx.metadata, "bounds").at(0);
    QCOMPARE(QStringList({bounds.attribute("minlon"), bounds.attribute("maxlon")}), box);
    QCOMPARE(bounds.attribute("minlat").toDouble(), std::min(lat[0].toDouble(), lat[1].toDouble()));
    QCOMPARE(bounds.attribute("maxlat").toDouble(), std::max(lat[0].toDouble(), lat[1].toDouble()));
  }

  void marksBecomeWaypoints() {
    const Layer legs = legsOf(threeLegs());
    const Layer marks =
        marksOf({markOn("North loop", 1, 1, 300), markOn("North loop", 1, 2, 600, {{"name", "old stump"}}),
                 markOn("North loop", 1, 3, 1000, {{"name", "Split Boulder"}}), markOn("North loop", 2, 2, 1000),
                 markOn("North loop", 2, 1, 500, {{"offset_m", -4.2}}),
                 markOn("North loop", 3, 1, 400, {{"paces", QVariant()}, {"offset_m", 3.0}}),
                 markOn("North loop", 9, 1, 400), markOn("South loop", 1, 1, 400)});
    const GpxRun run({{"INPUT", valueOf(legs)}, {"MARKS", valueOf(marks)}});
    VERIFY_EXPORTED(run);
    const auto waypoints = run.gpx().waypoints;
    QCOMPARE(texts(waypoints, "name"), QStringList({"1.1", "old stump", "2.1", "3.1"})); // none at an end
    QCOMPARE(texts(waypoints, "cmt"), QStringList({"30 p", "60 p", "50 p", "29 m"}));
    QCOMPARE(texts(waypoints, "type"), QStringList({"mark", "mark", "mark", "mark"}));
    QVERIFY(text(waypoints[2], "desc").contains("4.2 m to the left"));
    QVERIFY(text(waypoints[3], "desc").contains("3 m to the right"));
    QCOMPARE(text(waypoints[0], "desc"),
             QString("Mark 1 on leg 1 of North loop, 22 m from the leg's start. Paces from the leg's start: 30."));
    QCOMPARE(own(waypoints[1], "name"), QString("old stump"));
    QCOMPARE(own(waypoints[1], "leg"), QString("1"));
    QCOMPARE(own(waypoints[1], "mark"), QString("2"));
    QCOMPARE(own(waypoints[1], "at_m").toDouble(), 0.073 * 600);
    QCOMPARE(waypoints[0].attribute("lon").toDouble(), -55.1997);
    QCOMPARE(run.outcome.results.value("WAYPOINT_COUNT").toDouble(), 4.0);
    QVERIFY2(run.warnings().contains("2 mark(s) of layer “marks” belong to none of the legs"),
             qPrintable(run.warnings()));
    // Waypoints come before routes: the schema has seen to it.
  }

  void walkersGetARouteEach() {
    const auto of = [](const QString &walker, int paces) {
      return threeLegs("Loop", {{"walker", walker}, {"paces", paces}});
    };
    const Layer legs = legsOf(joined(of("Ann", 100), of("Bo", 150)));
    const Named ann{{"walker", "Ann"}}, bo{{"walker", "Bo"}, {"paces", 45}};
    const Layer marks =
        marksOf({markOn("Loop", 1, 1, 300, ann), markOn("Loop", 1, 1, 300, bo), markOn("Loop", 2, 1, 400, ann),
                 markOn("Loop", 2, 1, 500, bo), markOn("Loop", 2, 2, 700, bo)});
    const GpxRun run({{"INPUT", valueOf(legs)}, {"MARKS", valueOf(marks)}});
    VERIFY_EXPORTED(run);
    const Gpx gpx = run.gpx();
    QCOMPARE(texts(gpx.routes, "name"), QStringList({"Ann: Loop", "Bo: Loop"}));
    QCOMPARE(texts(gpx.routes, "number"), QStringList({"1", "2"}));
    QCOMPARE(texts(gpx.points(0), "cmt").at(0), "108" + degree + " 100 p");
    QCOMPARE(texts(gpx.points(1), "cmt").at(0), "108" + degree + " 150 p");
    QCOMPARE(own(gpx.routes[1], "walker"), QString("Bo"));
    // One place is one waypoint; nobody takes another's paces for their own.
    QCOMPARE(texts(gpx.waypoints, "name"), QStringList({"1.1", "2.1 Ann", "2.1 Bo", "2.2"}));
    QCOMPARE(texts(gpx.waypoints, "cmt"), QStringList({"Ann 30 p, Bo 45 p", "Ann 40 p", "Bo 45 p", "Bo 45 p"}));
    QCOMPARE(own(gpx.waypoints[0], "walker_2"), QString("Bo"));
    QCOMPARE(own(gpx.waypoints[0], "paces_2"), QString("45"));
    QCOMPARE(own(gpx.waypoints[0], "paces"), QString());
    QCOMPARE(own(gpx.waypoints[3], "walker"), QString("Bo"));
    QCOMPARE(own(gpx.waypoints[3], "paces"), QString("45"));
  }

  void oneRouteForAll() {
    const auto of = [](const QString &walker, const Named &more) {
      Named all{{"walker", walker}};
      for (auto one = more.begin(); one != more.end(); ++one)
        all[one.key()] = one.value();
      return threeLegs("Loop", all);
    };
    const auto rows = joined(of("Ann", {{"walk_min", 2.5}, {"warnings", "Mind the bog."}}),
                             of("Bo", {{"paces", 150}, {"sight_m", 12.3456789}, {"warnings", "Mind the bog. Blind."}}));
    const Layer legs = legsOf(rows);
    const GpxRun run({{"INPUT", valueOf(legs)}, {"ONE_ROUTE", true}});
    VERIFY_EXPORTED(run);
    QVERIFY2(run.outcome.warnings.isEmpty(), qPrintable(run.warnings()));
    const Gpx gpx = run.gpx();
    QCOMPARE(texts(gpx.routes, "name"), QStringList("Loop"));
    const auto points = gpx.points();
    QCOMPARE(points.size(), size_t(4));
    QCOMPARE(text(points[0], "cmt"), "108" + degree + " Ann 100 p, Bo 150 p !");
    const QString words = text(points[0], "desc");
    for (const char *part : {"CAUTION for Ann: Mind the bog.", "CAUTION for Bo: Mind the bog. Blind.",
                             "Ann: 100 paces, 2.5 minutes.", "Bo: 150 paces. The shortest sight is 12 m."})
      QVERIFY2(words.contains(part), qPrintable(words));
    QCOMPARE(own(points[0], "walker_1"), QString("Ann"));
    QCOMPARE(own(points[0], "paces_1"), QString("100"));
    QCOMPARE(own(points[0], "walk_min_1"), QString("2.5"));
    QCOMPARE(own(points[0], "paces_2"), QString("150"));
    QCOMPARE(own(points[0], "sight_m_2"), QString("12.3456789"));
    QCOMPARE(own(points[0], "warnings_2"), QString("Mind the bog. Blind."));
    QCOMPARE(own(points[0], "walk_min_2"), QString());
    QCOMPARE(own(points[0], "paces"), QString());
    QCOMPARE(own(gpx.routes[0], "walker_2"), QString("Bo"));
  }

  void walkersWithOtherLegsStayApart() {
    auto rows = joined(threeLegs("Loop", {{"walker", "Ann"}}), threeLegs("Loop", {{"walker", "Bo"}, {"paces", 150}}));
    rows.pop_back(); // Bo lacks the last leg
    const auto third = threeLegs("Loop", {{"walker", "Cy"}, {"paces", 170}});
    const Layer legs = legsOf(joined(rows, third));
    const GpxRun run({{"INPUT", valueOf(legs)}, {"ONE_ROUTE", true}});
    VERIFY_EXPORTED(run);
    QCOMPARE(texts(run.gpx().routes, "name"), QStringList({"Ann, Cy: Loop", "Bo: Loop"}));
    QCOMPARE(run.gpx().points(0).size(), size_t(4));
    QCOMPARE(run.gpx().points(1).size(), size_t(3));
    QCOMPARE(texts(run.gpx().points(1), "cmt").at(0), "108" + degree + " 150 p");
    QVERIFY2(run.warnings().contains("ONE_ROUTE: the legs of route “Loop” are not the same"),
             qPrintable(run.warnings()));
  }

  void coursesGetLetters() {
    std::vector<LegRow> rows = threeLegs("Loop");
    for (int i = 1; i <= 3; ++i) // the way home
      rows.push_back(
          {leg("Loop", i, {{"direction", "back"}, {"dial", 288.0}, {"dial_text", QString::fromUtf8("288°")}}),
           QStringLiteral("LINESTRING(%1 48.8, %2 48.8)")
               .arg(-55.2 + 0.001 * (4 - i), 0, 'f', 6)
               .arg(-55.2 + 0.001 * (3 - i), 0, 'f', 6)});
    rows = joined(rows, {{leg("Spur", 1), stretch(1, 48.9)}});
    const Layer legs = legsOf(rows), marks = marksOf({markOn("Loop", 3, 1, 500)});
    const GpxRun run({{"INPUT", valueOf(legs)}, {"MARKS", valueOf(marks)}});
    VERIFY_EXPORTED(run);
    const Gpx gpx = run.gpx();
    QCOMPARE(texts(gpx.routes, "name"), QStringList({"A: Loop", "B back: Loop", "C: Spur"}));
    QCOMPARE(texts(gpx.points(0), "name"), QStringList({"Camp", "Split Boulder", "A3", "Lone Pine"}));
    QCOMPARE(texts(gpx.points(1), "name"), QStringList({"B1", "B2", "B3", "B end"}));
    QCOMPARE(texts(gpx.points(2), "name"), QStringList({"C1", "C end"}));
    QCOMPARE(texts(gpx.waypoints, "name"), QStringList("A3.1"));
    QCOMPARE(own(gpx.routes[1], "direction"), QString("back"));
    QCOMPARE(own(gpx.routes[2], "direction"), QString("out"));
    QVERIFY(text(gpx.routes[1], "desc").startsWith("Loop, walked back:"));
    // The way home starts where the way out ends.
    QCOMPARE(gpx.points(1)[0].attribute("lon"), gpx.points(0)[3].attribute("lon"));
    QCOMPARE(texts(gpx.points(1), "cmt").at(0), "288" + degree + " 100 p");
  }

  // A made-up name is that of one place only, whatever the file holds.
  void madeUpNamesAreDistinct() {
    Random random(11);
    std::vector<LegRow> rows;
    for (int route = 0; route < 30; ++route)
      for (int i = 1; i <= 12; ++i)
        // A step aside is 111 m, as parts of a route tell: a degree of a meridian is 111.04 km there (GeographicLib).
        rows.push_back(
            {leg(QString("r%1").arg(route), i,
                 {{"walker", route % 2 ? "Ann" : "Bo"}, {"warnings", "Starts 111 m from where the leg before ends."}}),
             stretch(i, 40 + 0.01 * route + (random.between(0, 1) < 0.2 ? 0.001 : 0))});
    const Layer legs = legsOf(rows);
    const GpxRun run({{"INPUT", valueOf(legs)}});
    VERIFY_EXPORTED(run);
    const Gpx gpx = run.gpx();
    QMap<QString, QString> places;
    for (size_t route = 0; route < gpx.routes.size(); ++route)
      for (const QDomElement &point : gpx.points(route)) {
        const QString name = text(point, "name"), place = point.attribute("lat") + ' ' + point.attribute("lon");
        QVERIFY2(!places.contains(name) || places[name] == place, qPrintable(name));
        places[name] = place;
        QVERIFY2(name.size() <= 12, qPrintable(name));
      }
    QVERIFY(places.size() > 360);
  }

  void unknownIsNotSpokenOf() {
    Named row{{"route", "r"}, {"leg", 1}, {"paces", 7}, {"dist_m", 5.0}};
    const Layer legs = legsOf({{row, stretch(1)}});
    const GpxRun run({{"INPUT", valueOf(legs)}});
    VERIFY_EXPORTED(run);
    const QDomElement point = run.gpx().points()[0];
    QCOMPARE(text(point, "cmt"), QString("no compass 7 p"));
    QCOMPARE(text(point, "desc"), QString("Leg 1 of 1. There is no number for the dial. Walk 5 m: 7 paces."));
    QCOMPARE(childrenOf(childrenOf(point, "extensions").at(0), "dial").size(), size_t(0));
    QCOMPARE(childrenOf(point, "magvar").size(), size_t(0));
    QStringList elements;
    for (QDomElement one = childrenOf(point, "extensions").at(0).firstChildElement(); !one.isNull();
         one = one.nextSiblingElement())
      elements << one.localName();
    QCOMPARE(elements, QStringList({"leg", "dist_m", "paces"}));
    QCOMPARE(childrenOf(run.gpx().points()[1], "extensions").size(), size_t(0));
  }

  void dialsOfAllKinds_data() {
    QTest::addColumn<Named>("values");
    QTest::addColumn<QString>("comment");
    QTest::addColumn<QString>("words");
    const Named grid{{"grid_brg", 92.0}, {"converg", -2.0}};
    const auto with = [&](const Named &more) {
      Named all = grid;
      for (auto one = more.begin(); one != more.end(); ++one)
        all[one.key()] = one.value();
      return all;
    };
    // 107 degrees are 107 / 360 * 6400 = 1902.2 mils and 118.9 gon.
    QTest::newRow("mils") << with({{"dial", 1900.0}, {"dial_text", "1900 mil"}, {"back_dial", 5100.0}})
                          << "1900 mil 100 p"
                          << "Set the dial to 1900 mil (ESE), counted from magnetic north.";
    QTest::newRow("gon") << with({{"dial", 119.0}, {"dial_text", "119 gon"}, {"back_dial", 319.0}}) << "119 gon 100 p"
                         << "Set the dial to 119 gon (ESE), counted from magnetic north.";
    QTest::newRow("true") << with({{"dial", 90.0}, {"dial_text", "090" + degree}, {"back_dial", 271.0}})
                          << "090" + degree + " 100 p"
                          << "counted from true north.";
    QTest::newRow("grid") << with({{"dial", 92.0}, {"dial_text", "092" + degree}, {"back_dial", 271.0}})
                          << "092" + degree + " 100 p"
                          << "counted from grid north.";
    QTest::newRow("not told") << Named{{"dial", 90.0}, {"dial_text", "090" + degree}, {"back_dial", 270.0}}
                              << "090" + degree + " 100 p"
                              << "Set the dial to 090" + degree +
                                     " (ESE). CAUTION: it is not certain from which north it counts. Ask who made "
                                     "these legs. Walk";
  }
  void dialsOfAllKinds() {
    QFETCH(Named, values);
    QFETCH(QString, comment);
    QFETCH(QString, words);
    const Layer legs = legsOf({{leg("r", 1, values), stretch(1)}});
    const GpxRun run({{"INPUT", valueOf(legs)}});
    VERIFY_EXPORTED(run);
    QCOMPARE(text(run.gpx().points()[0], "cmt"), comment);
    QVERIFY2(text(run.gpx().points()[0], "desc").contains(words), qPrintable(text(run.gpx().points()[0], "desc")));
    // The route says the same.
    const QString route = text(run.gpx().routes[0], "desc");
    QVERIFY2(words.contains("counted from")
                 ? route.contains("The dial counts from" + words.section("counted from", 1))
                 : route.contains("magnetic north or true north or grid north. Ask who made them."),
             qPrintable(route));
  }

  void warningsComeFirst() {
    const Layer legs = legsOf(threeLegs("r", {{"warnings", "Crosses 12 m of water, which cannot be walked."}}));
    const GpxRun run({{"INPUT", valueOf(legs)}});
    VERIFY_EXPORTED(run);
    const QDomElement point = run.gpx().points()[2];
    QCOMPARE(text(point, "cmt"), "108" + degree + " 100 p !");
    QVERIFY2(text(point, "desc").startsWith("Leg 3 of 3, to Lone Pine. CAUTION: Crosses 12 m of water"),
             qPrintable(text(point, "desc")));
    QCOMPARE(own(point, "warnings"), QString("Crosses 12 m of water, which cannot be walked."));
  }

  void titleAndTime() {
    const Layer legs = legsOf(threeLegs());
    const QDateTime before = QDateTime::currentDateTimeUtc().addSecs(-1);
    const GpxRun plainRun({{"INPUT", valueOf(legs)}}),
        titled({{"INPUT", valueOf(legs)}, {"TITLE", "Week <1> & \"2\""}});
    VERIFY_EXPORTED(plainRun);
    VERIFY_EXPORTED(titled);
    QCOMPARE(text(plainRun.gpx().metadata, "name"), QString("North loop"));
    QCOMPARE(text(titled.gpx().metadata, "name"), QString("Week <1> & \"2\""));
    const QDateTime time = QDateTime::fromString(text(titled.gpx().metadata, "time"), Qt::ISODate);
    QCOMPARE(time.timeSpec(), Qt::UTC);
    QVERIFY(time >= before && time <= QDateTime::currentDateTimeUtc());
    const Epoch epoch("1781971200"); // 2026-06-20T16:00:00Z, by date -u -d @1781971200
    const GpxRun fixed({{"INPUT", valueOf(legs)}});
    VERIFY_EXPORTED(fixed);
    QCOMPARE(text(fixed.gpx().metadata, "time"), QString("2026-06-20T16:00:00Z"));
    for (const char *bad : {"yesterday", "-5", "1.5", "99999999999999"}) {
      const Epoch wrong(bad);
      const GpxRun refused({{"INPUT", valueOf(legs)}});
      QVERIFY(!refused.outcome.ok);
      QVERIFY2(refused.outcome.said().contains("SOURCE_DATE_EPOCH"), qPrintable(refused.outcome.said()));
      QVERIFY(refused.files().isEmpty());
    }
  }

  void sameBytesEveryTime() {
    const Epoch epoch("1781971200");
    const Layer legs = legsOf(joined(threeLegs("a"), threeLegs("b"))), marks = marksOf({markOn("a", 1, 1, 300)});
    const QVariantMap parameters{{"INPUT", valueOf(legs)}, {"MARKS", valueOf(marks)}};
    const GpxRun once(parameters);
    VERIFY_EXPORTED(once);
    Surroundings task;
    task.in_task = true;
    const GpxRun again(parameters, task);
    VERIFY_EXPORTED(again);
    QCOMPARE(again.bytes(), once.bytes());
    const QLocale before;
    QLocale::setDefault(QLocale(QLocale::German, QLocale::Germany));
    {
      const CommaLocale comma;
      const GpxRun inGerman(parameters);
      VERIFY_EXPORTED(inGerman);
      QCOMPARE(inGerman.bytes(), once.bytes());
    }
    QLocale::setDefault(before);
  }

  void noLayerIsChangedAndNothingElseWritten() {
    const Layer legs = legsOf(threeLegs());
    const GpxRun run({{"INPUT", valueOf(legs)}, {"OUTPUT", QgsProcessing::TEMPORARY_OUTPUT}});
    QVERIFY2(run.outcome.ok, qPrintable(run.outcome.said()));
    const QString path = run.outcome.results.value("OUTPUT").toString();
    QVERIFY2(path.endsWith(".gpx"), qPrintable(path));
    QVERIFY(QFile::exists(path));
    QCOMPARE(againstSchema(path), QString());
  }

  // Real legs, both ways, for two walkers: each number in the file is the layer's, bit for bit, and so it is when the
  // host reads the file.
  void numbersAreThoseOfTheLayer();
  void theHostReadsItBack();

  // Wherever it is in its work, a cancelled run ends within a tenth of a second and leaves no file.
  void cancelLeavesNothing() {
    std::vector<LegRow> rows;
    for (int i = 1; i <= 30000; ++i)
      rows.push_back({leg("long", i), stretch(i % 1000)});
    const Layer legs = legsOf(rows);
    const CancelTimes times = cancelAt({0.1, 0.25, 0.4, 0.6, 0.75, 0.9}, [&](Ear &ear) -> std::optional<double> {
      const GpxRun run({{"INPUT", valueOf(legs)}}, {{}, &ear, false, false});
      if (run.outcome.results.contains("OUTPUT"))
        return run.outcome.seconds;
      if (!run.files().isEmpty())
        throw std::runtime_error("left " + run.files().join(' ').toStdString());
      return std::nullopt;
    });
    QVERIFY2(times.slowest < soon, qPrintable(QString("%1 s after being cancelled").arg(times.slowest)));
    QVERIFY2(times.moments >= 3, qPrintable(QString::number(times.moments)));
  }

  void cancelledBeforehand() {
    Ear ear;
    ear.cancel();
    Surroundings surroundings;
    surroundings.ear = &ear;
    const Layer legs = legsOf(threeLegs()), marks = marksOf({markOn("North loop", 1, 1, 300)});
    const GpxRun run({{"INPUT", valueOf(legs)}, {"MARKS", valueOf(marks)}}, surroundings);
    QVERIFY(run.files().isEmpty());
    QVERIFY(!run.outcome.results.contains("OUTPUT"));
  }

  void progressGrows() {
    std::vector<LegRow> rows;
    for (int i = 1; i <= 5000; ++i)
      rows.push_back({leg("long", i), stretch(i % 1000)});
    const Layer legs = legsOf(rows);
    Ear ear;
    std::vector<double> seen;
    QVERIFY(connect(&ear, &QgsFeedback::progressChanged, &ear, [&](double progress) { seen.push_back(progress); }));
    Surroundings surroundings;
    surroundings.ear = &ear;
    const GpxRun run({{"INPUT", valueOf(legs)}}, surroundings);
    VERIFY_EXPORTED(run);
    QVERIFY(seen.size() >= 5 && std::is_sorted(seen.begin(), seen.end()) && seen.back() <= 100);
  }

private:
  // Annotated legs and marks of random routes, as files.
  struct Made {
    QTemporaryDir folder;
    QString legs, marks;
    Output rows, markRows;
  };
  static void make(Made &made) {
    Random random(5);
    std::vector<Row> routes;
    for (int i = 0; i < 4; ++i) {
      std::vector<std::pair<double, double>> points{{600000, 5400000}};
      while (points.size() < 8)
        points.push_back(
            {points.back().first + random.between(-200, 200), points.back().second + random.between(-200, 200)});
      routes.push_back({line(points), {QString("Route %1").arg(i)}});
    }
    const Layer input = layer("routes", "LineString", "EPSG:32621", {field("route", FieldType::Text)}, routes);
    const Layer walkers = table("walkers", {field("walker", FieldType::Text), field("paces_100m", FieldType::Real)},
                                {{"Ann", 120.0}, {"Bo", 160.0}});
    const Layer cover = layer(
        "cover", "Polygon", "EPSG:32621", {field("class", FieldType::Text)},
        {{wkt("POLYGON((599000 5399000,600100 5399000,600100 5402000,599000 5402000,599000 5399000))"), {"thicket"}}});
    made.legs = made.folder.filePath("legs.gpkg");
    made.marks = made.folder.filePath("marks.gpkg");
    const Outcome outcome = run("brushline:annotatelegs", {{"INPUT", valueOf(input)},
                                                           {"ROUTE_FIELD", "route"},
                                                           {"WALKERS", valueOf(walkers)},
                                                           {"COVER", valueOf(cover)},
                                                           {"DIRECTION", 2},
                                                           {"DATE", QDate(2026, 6, 15)},
                                                           {"OUTPUT", made.legs},
                                                           {"MARKS", made.marks}});
    if (!outcome.ok)
      throw std::runtime_error(outcome.said().toStdString());
    made.rows = outcome.output();
    made.markRows = outcome.output("MARKS");
  }
  static QString keyOf(const QString &route, const QString &walker, const QString &direction, const QString &leg) {
    return QStringList({route, walker, direction, leg}).join('|');
  }
};

namespace {
const QStringList numberFields = {"true_brg",  "grid_brg",  "mag_brg", "converg", "decl",    "decl_err", "dial",
                                  "back_dial", "dist_m",    "slope_m", "climb_m", "drop_m",  "paces",    "walk_min",
                                  "sight_m",   "spacing_m", "marks",   "drift_m", "along_m", "leg"};
const QStringList textFields = {"from_name", "to_name", "dial_text", "compass_pt", "cover", "warnings"};
} // namespace

void ExportGpxAlgorithmTest::numbersAreThoseOfTheLayer() {
  Made made;
  make(made);
  const GpxRun run({{"INPUT", made.legs}, {"MARKS", made.marks}});
  VERIFY_EXPORTED(run);
  const Gpx gpx = run.gpx();
  QCOMPARE(gpx.routes.size(), size_t(16)); // four routes, two walkers, two ways
  QMap<QString, const OutputRow *> byKey;
  for (const OutputRow &row : made.rows.rows)
    byKey[keyOf(row.text("route"), row.text("walker"), row.text("direction"), row.text("leg"))] = &row;
  const QgsCoordinateTransform toPlaces(QgsCoordinateReferenceSystem("EPSG:32621"),
                                        QgsCoordinateReferenceSystem("EPSG:4326"), QgsCoordinateTransformContext());
  size_t legs = 0;
  for (size_t i = 0; i < gpx.routes.size(); ++i) {
    const QString route = own(gpx.routes[i], "route"), walker = own(gpx.routes[i], "walker"),
                  direction = own(gpx.routes[i], "direction");
    const auto points = gpx.points(i);
    for (size_t k = 0; k < points.size(); ++k) {
      const bool last = k + 1 == points.size();
      const QString number = own(points[last ? k - 1 : k], "leg");
      const OutputRow *row = byKey.value(keyOf(route, walker, direction, number));
      QVERIFY(row);
      const QgsPoint vertex = row->geometry.vertexAt(last ? 1 : 0);
      const QgsPointXY place = toPlaces.transform(vertex.x(), vertex.y());
      VERIFY_NEAR(points[k].attribute("lon").toDouble(), place.x(), 0.6e-9, number.toStdString());
      VERIFY_NEAR(points[k].attribute("lat").toDouble(), place.y(), 0.6e-9, number.toStdString());
      if (last)
        continue;
      ++legs;
      for (const QString &field : numberFields) {
        const QString written = own(points[k], field);
        const QVariant expected = row->values[field];
        QVERIFY2(written.isEmpty() == expected.isNull(), qPrintable(field));
        if (!expected.isNull())
          QCOMPARE(written.toDouble(), expected.toDouble());
      }
      for (const QString &field : textFields)
        QCOMPARE(own(points[k], field), row->values[field].toString());
      QCOMPARE(own(points[k], "date"), QString("2026-06-15"));
      VERIFY_NEAR(std::remainder(text(points[k], "magvar").toDouble() - row->number("decl"), 360), 0, 0.51e-6,
                  "magvar");
      QVERIFY(text(points[k], "cmt").startsWith(QString("%1 %2 p").arg(row->text("dial_text"), row->text("paces"))));
    }
  }
  QCOMPARE(legs, made.rows.rows.size());

  // Every mark that is no leg's end is there once for each walker, with its own paces.
  QMap<QString, double> paces;
  for (const QDomElement &waypoint : gpx.waypoints)
    for (const char *suffix : {"", "_1", "_2"})
      if (const QString walker = own(waypoint, QString("walker") + suffix); !walker.isEmpty()) {
        const QString key = keyOf(own(waypoint, "route"), walker, own(waypoint, "direction"), own(waypoint, "leg")) +
                            '|' + own(waypoint, "mark");
        QVERIFY2(!paces.contains(key), qPrintable(key));
        paces[key] = own(waypoint, QString("paces") + suffix).toDouble();
        const QString comment = text(waypoint, "cmt");
        QVERIFY2(comment.contains(QString("%1 %2 p").arg(walker).arg(paces[key])), qPrintable(comment));
      }
  long expected = 0;
  for (const OutputRow &row : made.markRows.rows) {
    const QString key = keyOf(row.text("route"), row.text("walker"), row.text("direction"), row.text("leg"));
    const bool atEnd = std::abs(row.number("at_m") - byKey.value(key)->number("dist_m")) < 0.05;
    QCOMPARE(paces.contains(key + '|' + row.text("mark")), !atEnd);
    if (!atEnd)
      QCOMPARE(paces[key + '|' + row.text("mark")], row.number("paces"));
    expected += !atEnd;
  }
  QCOMPARE(long(paces.size()), expected);
  QVERIFY(expected > 100);
  QCOMPARE(run.outcome.results.value("WAYPOINT_COUNT").toDouble(), double(gpx.waypoints.size()));
}

void ExportGpxAlgorithmTest::theHostReadsItBack() {
  Made made;
  make(made);
  const GpxRun run({{"INPUT", made.legs}, {"MARKS", made.marks}});
  VERIFY_EXPORTED(run);
  const std::unique_ptr<QgsVectorLayer> routes(ogr(run.path, "routes")), points(ogr(run.path, "route_points")),
      waypoints(ogr(run.path, "waypoints"));
  QVERIFY(routes->isValid() && points->isValid() && waypoints->isValid());
  QCOMPARE(routes->crs().authid(), QString("EPSG:4326"));
  const Output lines = read(*routes), places = read(*points), marks = read(*waypoints);
  QCOMPARE(double(lines.rows.size()), run.outcome.results.value("ROUTE_COUNT").toDouble());
  QCOMPARE(double(places.rows.size()), run.outcome.results.value("POINT_COUNT").toDouble());
  QCOMPARE(double(marks.rows.size()), run.outcome.results.value("WAYPOINT_COUNT").toDouble());
  QMap<QString, const OutputRow *> byKey;
  for (const OutputRow &row : made.rows.rows)
    byKey[keyOf(row.text("route"), row.text("walker"), row.text("direction"), row.text("leg"))] = &row;
  size_t legs = 0;
  for (const OutputRow &place : places.rows) {
    if (place.null("leg_leg"))
      continue;
    const OutputRow &route = lines.rows.at(size_t(place.number("route_fid")));
    const OutputRow *row = byKey.value(
        keyOf(route.text("leg_route"), route.text("leg_walker"), route.text("leg_direction"), place.text("leg_leg")));
    QVERIFY(row);
    ++legs;
    for (const QString &field : numberFields)
      if (!row->values[field].isNull())
        QCOMPARE(place.number(qPrintable("leg_" + field)), row->values[field].toDouble());
    QCOMPARE(place.text("leg_dial_text"), row->text("dial_text"));
    QVERIFY(std::abs(std::remainder(place.number("magvar") - row->number("decl"), 360)) < 1e-6);
  }
  QCOMPARE(legs, made.rows.rows.size());
  for (const OutputRow &mark : marks.rows)
    QVERIFY(mark.text("cmt").endsWith(" p") && !mark.null("leg_at_m"));
  // The line of a route runs through its points.
  QCOMPARE(lines.rows[0].geometry.constGet()->nCoordinates(), 8);
}

BRUSHLINE_HOST_TEST_MAIN(ExportGpxAlgorithmTest)
#include "export_gpx_algorithm_test.moc"
