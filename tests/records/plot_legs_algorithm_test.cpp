// SPDX-License-Identifier: GPL-2.0-or-later
// The face of plotlegs in the host. What is plotted is held to annotatelegs, to a published loop and to geodesics.
#include "records/bearing_text.h"
#include "shared/compass.h"
#include "shared/geodesic.h"
#include "support/check_values.h"
#include "support/host_fixture.h"
#include "support/near.h"
#include "support/random.h"

#include <QTemporaryDir>

#include <cmath>
#include <limits>

using namespace brushline;
using namespace brushline::test;

namespace {
const QString id = QStringLiteral("brushline:plotlegs"), annotate = QStringLiteral("brushline:annotatelegs");
const QString start = QStringLiteral("632302,5407056 [EPSG:32621]");

const QList<QgsField> textFields{field("route", FieldType::Text), field("n", FieldType::Text),
                                 field("brg", FieldType::Text), field("count", FieldType::Text),
                                 field("who", FieldType::Text)};

Layer records(std::vector<QVariantList> rows) {
  for (QVariantList &row : rows)
    while (row.size() < textFields.size())
      row << QVariant();
  return table(QStringLiteral("notes"), textFields, rows);
}

QVariantMap parameters(const Layer &rows) {
  return {{"INPUT", valueOf(rows)},    {"ROUTE_FIELD", "route"}, {"ORDER_FIELD", "n"}, {"BEARING_FIELD", "brg"},
          {"DISTANCE_FIELD", "count"}, {"START", start},         {"NORTH", 1},         {"DATE", "2026-06-20"},
          {"OUTPUT", "memory:"},       {"CLOSURE", "memory:"}};
}

QVariantMap with(QVariantMap base, std::initializer_list<std::pair<const char *, QVariant>> more) {
  for (const auto &[key, value] : more)
    if (value.isValid())
      base[QLatin1String(key)] = value;
    else
      base.remove(QLatin1String(key));
  return base;
}

Place placeOf(const QgsGeometry &line, int vertex) { // of longitudes and latitudes
  const QgsPoint point = line.vertexAt(vertex);
  return {Angle::degrees(point.y()), Angle::degrees(point.x())};
}

double metresBetween(const QgsGeometry &a, int vertexA, const QgsGeometry &b, int vertexB) {
  return geodesicBetween(placeOf(a, vertexA), placeOf(b, vertexB)).length.metres();
}
} // namespace

class PlotLegsAlgorithmTest : public QObject {
  Q_OBJECT
private slots:
  // A square of 100 m on the ground, by hand: four legs, back where they started.
  void square() {
    const Layer rows =
        records({{"r", "1", "0", "100"}, {"r", "2", "90", "100"}, {"r", "3", "180", "100"}, {"r", "4", "270", "100"}});
    const Outcome outcome = run(id, with(parameters(rows), {{"CLOSE", 1}}));
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(outcome.rows().size(), size_t(4));
    QCOMPARE(outcome.output().crs, QStringLiteral("EPSG:32621"));
    QStringList names;
    for (const QgsField &one : outcome.output().fields)
      names << one.name();
    QCOMPARE(names.size(), 38);
    QCOMPARE(names.mid(0, 4), (QStringList{"route", "leg", "walker", "direction"}));
    QCOMPARE(names.mid(29), (QStringList{"warnings", "read_row", "read_text", "read_brg", "read_by", "read_paces",
                                         "read_m", "adj_brg", "adj_m"}));
    const double brg[] = {0, 90, 180, 270};
    for (size_t i = 0; i < 4; ++i) {
      const OutputRow &row = outcome.rows()[i];
      QCOMPARE(row.number("leg"), double(i + 1));
      VERIFY_NEAR(turnBetween(row.number("true_brg"), brg[i]), 0, 1e-6, "brg");
      VERIFY_NEAR(row.number("dist_m"), 100, 1e-6, "m");
      QCOMPARE(row.number("dial"), brg[i]);
      QCOMPARE(row.number("read_brg"), brg[i]);
      QCOMPARE(row.number("read_m"), 100.0);
      QVERIFY(row.null("read_paces") && row.null("adj_m") && row.null("adj_brg") && row.null("warnings"));
      QCOMPARE(row.text("read_text"), QString::number(brg[i]));
    }
    const OutputRow closure = outcome.rows("CLOSURE").at(0);
    QCOMPARE(outcome.rows("CLOSURE").size(), size_t(1));
    QCOMPARE(closure.text("route"), QStringLiteral("r"));
    QCOMPARE(closure.text("closes_on"), QStringLiteral("start"));
    QCOMPARE(closure.number("length_m"), 400.0);
    // The meridians draw together: 100 m at 49 north, by tan(49) 100 m / R = 1.8e-5 of 100 m twice.
    QVERIFY(closure.number("miss_m") < 0.005 && closure.number("miss_m") > 0.001);
    QVERIFY(closure.null("hint"));
    QCOMPARE(outcome.results.value("ROUTE_COUNT").toDouble(), 1.0);
    QCOMPARE(outcome.results.value("LEG_COUNT").toDouble(), 4.0);
    QCOMPARE(outcome.results.value("NOT_CLOSED").toDouble(), 0.0);
    // Open: no miss at all.
    const Outcome open = run(id, parameters(rows));
    const OutputRow none = open.rows("CLOSURE").at(0);
    QVERIFY(none.null("miss_m") && none.null("ratio") && none.null("closes_on") && none.null("hint"));
    QCOMPARE(none.number("length_m"), 400.0);
  }

  // The published loop, end to end, on the equator where the meridians are parallel; feet are as good as metres.
  void publishedLoop_data() {
    QTest::addColumn<int>("north");
    QTest::newRow("true") << 1;
    QTest::newRow("grid") << 2;
  }
  void publishedLoop() {
    QFETCH(int, north);
    const CheckValues loop("records/data/compass_rule_loop.csv"), closed("records/data/compass_rule_closure.csv");
    std::vector<QVariantList> notes;
    int n = 0;
    for (const CheckRow &row : loop.rows())
      notes.push_back({"loop", QString::number(++n), QString::fromStdString(row.text("bearing")),
                       QString::fromStdString(row.text("length_ft"))});
    const Layer rows = records(notes);
    // Grid: a projection that is as good as flat there.
    const QString grid = QStringLiteral("PROJ:+proj=tmerc +lat_0=0 +lon_0=31 +k=1 +datum=WGS84 +units=m +type=crs");
    const QVariantMap common = with(parameters(rows), {{"CLOSE", 1},
                                                       {"START", "31,0 [EPSG:4326]"},
                                                       {"NORTH", north},
                                                       {"GRID_CRS", north == 2 ? QVariant(grid) : QVariant()}});
    const Outcome plain = run(id, common), adjusted = run(id, with(common, {{"ADJUST", true}}));
    QVERIFY2(plain.ok, qPrintable(plain.said()));
    QVERIFY2(adjusted.ok, qPrintable(adjusted.said()));
    if (north == 2) { // of another part of the world
      const QString said = run(id, with(common, {{"GRID_CRS", "EPSG:32631"}})).said();
      QVERIFY2(said.contains("GRID_CRS: Route “loop” lies") && said.contains("made for"), qPrintable(said));
    }
    const Place a{Angle::degrees(0), Angle::degrees(31)};
    const auto tolerance = [&](const char *column) { return loop.tolerance(column); };
    for (size_t i = 0; i < loop.rows().size(); ++i) {
      const CheckRow &row = loop.rows()[i];
      const std::string &at = row.text("course");
      const auto part = [](const OutputRow &leg, bool north) {
        const double turn = Angle::degrees(leg.number("true_brg")).radians();
        return leg.number("dist_m") * (north ? std::cos(turn) : std::sin(turn));
      };
      const OutputRow &leg = plain.rows()[i], &mended = adjusted.rows()[i];
      VERIFY_NEAR(leg.number("read_brg"), row.number("bearing_deg"), 5.1e-7, at);
      VERIFY_NEAR(part(leg, true), row.number("lat_ft"), tolerance("lat_ft"), at);
      VERIFY_NEAR(part(leg, false), row.number("dep_ft"), tolerance("dep_ft"), at);
      VERIFY_NEAR(part(mended, true), row.number("adj_lat_ft"), tolerance("adj_lat_ft"), at);
      VERIFY_NEAR(part(mended, false), row.number("adj_dep_ft"), tolerance("adj_dep_ft"), at);
      VERIFY_NEAR(mended.number("dist_m"), row.number("adj_length_ft"), tolerance("adj_length_ft"), at);
      VERIFY_NEAR(turnBetween(mended.number("true_brg"), row.number("adj_bearing_deg")), 0,
                  tolerance("adj_bearing_deg"), at);
      VERIFY_NEAR(mended.number("adj_m"), mended.number("dist_m") - row.number("length_ft"), 1e-9, at);
      VERIFY_NEAR(mended.number("adj_brg"), row.number("adj_bearing_deg") - row.number("bearing_deg"), 1e-5, at);
      // Where the leg ends: A is 500 north, 2000 east.
      const GeodesicLeg there = geodesicBetween(a, placeOf(mended.geometry, 1));
      VERIFY_NEAR(500 + there.length.metres() * std::cos(there.departure.angle().radians()), row.number("end_north_ft"),
                  tolerance("end_north_ft"), at);
      VERIFY_NEAR(2000 + there.length.metres() * std::sin(there.departure.angle().radians()), row.number("end_east_ft"),
                  tolerance("end_east_ft"), at);
    }
    const CheckRow &expected = closed.rows().front();
    const auto closure = [&](const char *column, const char *field) {
      VERIFY_NEAR(plain.rows("CLOSURE").at(0).number(field), expected.number(column), closed.tolerance(column), column);
    };
    closure("perimeter_ft", "length_m");
    closure("misclosure_ft", "miss_m");
    closure("misclosure_bearing_deg", "miss_brg");
    closure("ratio", "ratio");
    QCOMPARE(adjusted.rows("CLOSURE").at(0).number("miss_m"), plain.rows("CLOSURE").at(0).number("miss_m"));
    QCOMPARE(adjusted.rows("CLOSURE").at(0).number("adjusted"), 1.0);
    QCOMPARE(adjusted.rows()[3].geometry.vertexAt(1), adjusted.rows()[0].geometry.vertexAt(0));
  }

  // annotatelegs of random routes all over the Earth, and back from its numbers: the routes.
  void backFromAnnotatedLegs_data() {
    QTest::addColumn<int>("north");
    QTest::addColumn<bool>("exact");
    QTest::addColumn<int>("count");
    QTest::newRow("magnetic, exact") << 0 << true << 10000;
    QTest::newRow("true, exact") << 1 << true << 1000;
    QTest::newRow("grid, exact") << 2 << true << 1000;
    QTest::newRow("magnetic, paces") << 0 << false << 10000;
    QTest::newRow("true, paces") << 1 << false << 1000;
    QTest::newRow("grid, paces") << 2 << false << 1000;
  }
  void backFromAnnotatedLegs() {
    QFETCH(int, north);
    QFETCH(bool, exact);
    QFETCH(int, count);
    Random random(2026 + uint64_t(north));
    std::vector<Row> lines, starts;
    for (int i = 0; i < count; ++i) {
      Place at = random.place();
      if (i % 10 == 0) // about the 180th meridian
        at.longitude = Angle::degrees(i % 20 ? random.between(179.98, 180) : random.between(-180, -179.98));
      if (i % 10 == 1) // to both poles
        at.latitude = Angle::degrees((i % 20 == 1 ? 1 : -1) * random.between(75, 89));
      std::vector<std::pair<double, double>> points{{at.longitude.degrees(), at.latitude.degrees()}};
      const int legs = 1 + int(random.between(0, 8));
      for (int k = 0; k < legs; ++k) {
        const Place next = geodesicDestination(at, TrueBearing(Angle::degrees(random.between(0, 360))),
                                               Length::metres(random.between(5, 600)));
        points.emplace_back(points.back().first + (next.longitude - at.longitude).signedTurn().degrees(),
                            next.latitude.degrees());
        at = next;
      }
      lines.push_back({line(points), {QString::number(i)}});
      starts.push_back(
          {wkt(QStringLiteral("POINT(%1 %2)").arg(points[0].first, 0, 'f', 15).arg(points[0].second, 0, 'f', 15)),
           {QString::number(i)}});
    }
    const QString degrees = QStringLiteral("EPSG:4326");
    const QList<QgsField> named{field("route", FieldType::Text)};
    const Layer routes = layer(QStringLiteral("routes"), QStringLiteral("LineString"), degrees, named, lines);
    const Layer points = layer(QStringLiteral("starts"), QStringLiteral("Point"), degrees, named, starts);
    const double step = exact ? 0.01 : 2;
    const QVariantMap setting{{"NORTH", north}, {"DIAL_STEP", step}, {"DATE", "2026-06-20"}, {"OUTPUT", "memory:"}};
    const Outcome annotated = run(annotate, with(setting, {{"INPUT", valueOf(routes)}, {"ROUTE_FIELD", "route"}}));
    QVERIFY2(annotated.ok, qPrintable(annotated.said()));
    std::vector<QVariantList> notes;
    QSet<QString> dead; // where no compass works
    for (const OutputRow &row : annotated.rows()) {
      if (row.null("dial"))
        dead << row.text("route");
      notes.push_back({row["route"], row["leg"], row["dial"], row[exact ? "dist_m" : "paces"]});
    }
    const Layer rows = table(QStringLiteral("notes"),
                             {field("route", FieldType::Text), field("n", FieldType::Integer),
                              field("brg", FieldType::Real), field("count", FieldType::Real)},
                             notes);
    const Outcome outcome = run(id, with(setting, {{"INPUT", valueOf(rows)},
                                                   {"ROUTE_FIELD", "route"},
                                                   {"ORDER_FIELD", "n"},
                                                   {"BEARING_FIELD", "brg"},
                                                   {exact ? "DISTANCE_FIELD" : "PACES_FIELD", "count"},
                                                   {"STARTS", valueOf(points)}}));
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QVERIFY(dead.size() < count / 20);
    QCOMPARE(outcome.results.value("ROUTE_COUNT").toInt(), count - int(dead.size()));

    size_t k = 0;
    double allowed = 0, worst = 0;
    for (const OutputRow &leg : annotated.rows()) {
      if (dead.contains(leg.text("route")))
        continue;
      const OutputRow &back = outcome.rows().at(k++);
      const std::string at = leg.text("route").toStdString() + "/" + leg.text("leg").toStdString();
      QCOMPARE(back.text("route"), leg.text("route"));
      QCOMPARE(back.text("leg"), leg.text("leg"));
      // Half a graduation and half a pace (130 to 100 m), and what has come together before.
      const double metres = exact ? leg.number("dist_m") : back.number("read_m");
      const double pace = exact ? 0 : 0.5 * 100 / 130;
      if (leg.number("leg") == 1)
        allowed = 0;
      VERIFY_NEAR(back.number("read_m"), leg.number("dist_m"), pace + 1e-9, at);
      // The north turns by less than 0.02 degrees over what the start is off by here, near a pole by more.
      const double off = allowed,
                   polar = off / 6.37e6 * 57.3 /
                           std::cos(Angle::degrees(
                                        std::min(89.9, std::abs(placeOf(leg.geometry, 0).latitude.degrees()) + 0.05))
                                        .radians());
      const double turn = step / 2 + 30 * polar + 1e-6;
      VERIFY_NEAR(turnBetween(back.number("true_brg"), leg.number("true_brg")), 0, turn, at);
      allowed +=
          pace + 2 * std::max(metres, leg.number("dist_m")) * std::sin(Angle::degrees(turn).radians() / 2) + 1e-6;
      const double miss = metresBetween(back.geometry, 1, leg.geometry, 1);
      VERIFY_NEAR(miss, 0, allowed, at);
      worst = std::max(worst, miss);
      if (exact)
        VERIFY_NEAR(miss, 0, 0.09 * leg.number("leg") + 1e-4, at); // 600 m by 0.005 degrees is 0.052 m
      // What is plotted as read sets the same dial, with the same paces.
      if (!exact && leg.number("leg") == 1) {
        QCOMPARE(back.number("dial"), leg.number("dial"));
        QCOMPARE(back.number("paces"), leg.number("paces"));
      }
    }
    QCOMPARE(k, outcome.rows().size());
    qInfo("%d routes, worst %.4f m", count, worst);
  }

  // The output is annotated legs: what was plotted goes on as any.
  void goesOn() {
    const Layer rows = records({{"a", "1", "042", "100"}, {"a", "2", "130", "80"}, {"b", "1", "8", "55"}});
    QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("legs.gpkg"));
    const Outcome plotted = run(id, with(parameters(rows), {{"OUTPUT", file}}));
    QVERIFY2(plotted.ok, qPrintable(plotted.said()));
    const Outcome tables = run(QStringLiteral("brushline:legtables"),
                               {{"INPUT", file}, {"FOLDER", folder.filePath(QStringLiteral("tables"))}, {"FORMAT", 2}});
    QVERIFY2(tables.ok, qPrintable(tables.said()));
    QCOMPARE(tables.results.value("FILE_COUNT").toDouble(), 5.0);
    const Outcome gpx = run(QStringLiteral("brushline:exportgpx"),
                            {{"INPUT", file}, {"OUTPUT", folder.filePath(QStringLiteral("legs.gpx"))}});
    QVERIFY2(gpx.ok, qPrintable(gpx.said()));
    const Outcome again = run(annotate, {{"INPUT", file}, {"NORTH", 1}, {"DATE", "2026-06-20"}, {"OUTPUT", "memory:"}});
    QVERIFY2(again.ok, qPrintable(again.said()));
    for (size_t i = 0; i < 3; ++i)
      for (const char *name : {"true_brg", "grid_brg", "dial", "dist_m"})
        VERIFY_NEAR(again.rows()[i].number(name), plotted.rows()[i].number(name), 1e-6, name);
  }

  // Bearings as people write them; who counted decides how long a pace is.
  void handwriting() {
    const Layer rows = records({{"r", "1", "042", "41", "Wenna"},
                                {"r", "2", "N 42,5 E", "62,5 paces", "Wenna"},
                                {"r", "3", "ne", "20", "Aud"},
                                {"r", "4", "S68-05-35W", "100", "Aud"},
                                {"r", "5", "0800 mil", "100", "Wenna"}});
    const Layer walkers = table(QStringLiteral("walkers"),
                                {field("walker", FieldType::Text), field("paces_100m", FieldType::Real),
                                 field("pace_kind", FieldType::Integer)},
                                {{"Wenna", 200, 0}, {"Aud", 125, 1}});
    const QVariantMap given = with(
        parameters(rows), {{"DISTANCE_FIELD", QVariant()}, {"PACES_FIELD", "count"}, {"WALKERS", valueOf(walkers)}});
    const Outcome outcome = run(id, with(given, {{"WALKER_FIELD", "who"}}));
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(outcome.rows().size(), size_t(10)); // each leg for both
    const double bearings[] = {42, 42.5, 45, 180 + 68 + 5 / 60.0 + 35 / 3600.0, 45};
    const double metres[] = {20.5, 31.25, 32, 160, 50};
    const double paces[] = {41, 62.5, 20, 100, 100};
    for (size_t i = 0; i < 5; ++i)
      for (size_t w = 0; w < 2; ++w) {
        const OutputRow &row = outcome.rows()[2 * i + w];
        const std::string at = std::to_string(i);
        QCOMPARE(row.text("walker"), w ? QStringLiteral("Aud") : QStringLiteral("Wenna"));
        VERIFY_NEAR(row.number("read_brg"), bearings[i], 1e-9, at);
        // A geodesic is good to 15 nm, at both ends: 1e-7 degrees on 20 m.
        VERIFY_NEAR(turnBetween(row.number("true_brg"), bearings[i]), 0, 1e-7, at);
        VERIFY_NEAR(row.number("dist_m"), metres[i], 1e-6, at);
        VERIFY_NEAR(row.number("read_m"), metres[i], 1e-9, at);
        QCOMPARE(row.number("read_paces"), paces[i]);
        QCOMPARE(row.text("read_by"), i == 2 || i == 3 ? QStringLiteral("Aud") : QStringLiteral("Wenna"));
        QCOMPARE(row.number("paces"), std::floor(metres[i] * (w ? 0.625 : 2) + 0.5));
      }
    const Outcome nobody = run(id, given);
    QVERIFY(!nobody.accepted);
    QVERIFY2(nobody.refusal.contains(QStringLiteral("WALKER_FIELD")), qPrintable(nobody.refusal));
    // Metres need no walker.
    QVERIFY(run(id, with(given, {{"PACES_FIELD", QVariant()}, {"DISTANCE_FIELD", "n"}})).ok);
  }

  // Bearings of a dial in mils or gon, as numbers.
  void units() {
    const Layer rows =
        table(QStringLiteral("notes"), {field("brg", FieldType::Integer), field("m", FieldType::Real)}, {{400, 50.5}});
    const QVariantMap given{
        {"INPUT", valueOf(rows)}, {"BEARING_FIELD", "brg"}, {"DISTANCE_FIELD", "m"}, {"START", start}, {"NORTH", 1},
        {"OUTPUT", "memory:"}};
    const auto bearing = [&](int unit) {
      const Outcome outcome = run(id, with(given, {{"DIAL_UNIT", unit}}));
      return outcome.ok ? outcome.rows()[0].number("true_brg") : -1;
    };
    VERIFY_NEAR(bearing(1), 22.5, 1e-9, "mils");
    VERIFY_NEAR(bearing(2), 0, 1e-9, "gon");
    QVERIFY(!run(id, given).ok); // 400 degrees

    // In a field of numbers the point is that of decimals, whatever their number.
    for (const double value : {1.5, 1.25, 1.125, 1.0625}) {
      const Layer small = table(QStringLiteral("notes"), {field("brg", FieldType::Real), field("m", FieldType::Real)},
                                {{value, value}});
      const Outcome outcome = run(id, with(given, {{"INPUT", valueOf(small)}, {"DIAL_UNIT", 1}}));
      QVERIFY2(outcome.ok, qPrintable(outcome.said()));
      QCOMPARE(outcome.rows()[0].number("read_m"), value);
      QCOMPARE(outcome.rows()[0].text("read_text"), QString::number(value));
    }
  }

  // A row that cannot be read takes its route with it; the others are plotted.
  void badRows_data() {
    QTest::addColumn<QVariantList>("row");
    QTest::addColumn<QString>("word");
    const auto row = [](const char *name, QVariantList values, const char *word) {
      QTest::newRow(name) << values << QString::fromUtf8(word);
    };
    row("word", {"bad", "2", "forty", "50"}, "“forty”");
    row("no bearing", {"bad", "2", "", "50"}, "has no bearing");
    row("null bearing", {"bad", "2", QVariant(), "50"}, "has no bearing");
    row("full circle", {"bad", "2", "361", "50"}, "more than a full circle");
    row("negative", {"bad", "2", "-5", "50"}, "clockwise from 0");
    row("thousands", {"bad", "2", "1,600", "50"}, "thousands");
    row("thousands with a point", {"bad", "2", "42", "1.250"}, "thousands");
    row("quarter", {"bad", "2", "N 95 E", "50"}, "90 degrees at most");
    row("minutes", {"bad", "2", "N 5-61-00 E", "50"}, "below 60");
    row("no distance", {"bad", "2", "42", ""}, "has no distance");
    row("null distance", {"bad", "2", "42", QVariant()}, "has no distance");
    row("zero", {"bad", "2", "42", "0"}, "distance “0”");
    row("below zero", {"bad", "2", "42", "-3"}, "distance “-3”");
    row("words", {"bad", "2", "42", "far"}, "distance “far”");
    row("not a number", {"bad", "2", "42", "nan"}, "distance “nan”");
    row("hair", {"bad", "2", "42", "0.01"}, "0.1 to 100000 m");
    row("too long", {"bad", "2", "42", "101 km"}, "0.1 to 100000 m");
    row("no order", {"bad", "", "42", "50"}, "has no order");
    row("order in words", {"bad", "second", "42", "50"}, "order “second”");
    row("same order", {"bad", "1.0", "42", "50"}, "rows 1 and 3 have the same order");
  }
  void badRows() {
    QFETCH(QVariantList, row);
    QFETCH(QString, word);
    const Layer rows = records({{"bad", "1", "10", "50"}, {"good", "1", "20", "50"}, row, {"bad", "3", "30", "50"}});
    const Outcome outcome = run(id, parameters(rows));
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(outcome.output().texts("route"), QStringList{"good"});
    const QString said = outcome.warnings.join(QLatin1Char(' '));
    QVERIFY2(said.contains(word), qPrintable(said));
    QVERIFY2(said.contains(QStringLiteral("notes")) && said.contains(QStringLiteral("3")) &&
                 said.contains(QStringLiteral("“bad”")) && said.contains(QStringLiteral("1 route(s) passed over")),
             qPrintable(said));
    // Alone it leaves nothing, not even a file.
    QTemporaryDir folder;
    const Layer alone = records({{"bad", "1", "10", "50"}, row});
    if (word.startsWith(QLatin1String("rows")))
      return;
    const QString file = folder.filePath(QStringLiteral("legs.gpkg"));
    const Outcome none = run(id, with(parameters(alone), {{"OUTPUT", file}}));
    QVERIFY(!none.ok);
    QVERIFY2(none.said().contains(word), qPrintable(none.said()));
    QVERIFY(!QFile::exists(file));
  }

  void notNumbers() {
    const double nan = std::numeric_limits<double>::quiet_NaN(), inf = std::numeric_limits<double>::infinity();
    for (const auto &[bearing, metres] : {std::pair(nan, 50.0), std::pair(42.0, nan), std::pair(inf, 50.0),
                                          std::pair(42.0, inf), std::pair(1e300, 50.0), std::pair(42.0, 1e300)}) {
      const Layer rows = table(QStringLiteral("notes"), {field("brg", FieldType::Real), field("m", FieldType::Real)},
                               {{bearing, metres}});
      const Outcome outcome = run(id, {{"INPUT", valueOf(rows)},
                                       {"BEARING_FIELD", "brg"},
                                       {"DISTANCE_FIELD", "m"},
                                       {"START", start},
                                       {"OUTPUT", "memory:"}});
      QVERIFY2(!outcome.ok && outcome.errors.join(QLatin1Char(' ')).contains(QStringLiteral("None of the 1")),
               qPrintable(outcome.said()));
    }
  }

  void unnamedAndEmptyRows() {
    const Layer blank = records({{"r", "1", "10", "50"}, {QVariant(), "", " ", QVariant()}, {"r", "2", "20", "50"}});
    const Outcome outcome = run(id, parameters(blank));
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(outcome.rows().size(), size_t(2));
    QVERIFY(outcome.warnings.join(QLatin1Char(' ')).contains(QStringLiteral("1 empty row")));
    const Layer unnamed = records({{"r", "1", "10", "50"}, {"", "2", "20", "50"}});
    const Outcome refused = run(id, parameters(unnamed));
    QVERIFY(!refused.ok);
    QVERIFY2(refused.said().contains(QStringLiteral("row 2 names no route")), qPrintable(refused.said()));
    const Layer nothing = records({});
    const Outcome none = run(id, parameters(nothing));
    QVERIFY2(none.ok && none.rows().empty(), qPrintable(none.said()));
    QVERIFY(none.warnings.join(QLatin1Char(' ')).contains(QStringLiteral("no rows")));
  }

  // Routes whose rows lie mixed, in an order that is text, as numbers, or as the rows stand.
  void orders() {
    const Layer mixed = records({{"a", "10", "30", "50"},
                                 {"b", "2", "200", "50"},
                                 {"a", "9", "20", "50"},
                                 {"b", "1", "100", "50"},
                                 {"a", "1.5", "10", "50"}});
    const Outcome outcome = run(id, parameters(mixed));
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(outcome.output().texts("route"), (QStringList{"a", "a", "a", "b", "b"}));
    QCOMPARE(outcome.output().texts("read_text"), (QStringList{"10", "20", "30", "100", "200"}));
    QCOMPARE(outcome.output().texts("read_row"), (QStringList{"5", "3", "1", "4", "2"}));
    QCOMPARE(outcome.output().texts("leg"), (QStringList{"1", "2", "3", "1", "2"}));
    const Outcome rows = run(id, with(parameters(mixed), {{"ORDER_FIELD", QVariant()}}));
    QCOMPARE(rows.output().texts("read_text"), (QStringList{"30", "20", "10", "200", "100"}));
    const Outcome one = run(id, with(parameters(mixed), {{"ORDER_FIELD", QVariant()}, {"ROUTE_FIELD", QVariant()}}));
    QCOMPARE(one.rows().size(), size_t(5));
    QCOMPARE(one.rows()[4].number("leg"), 5.0);
    for (size_t i = 1; i < 5; ++i)
      QCOMPARE(one.rows()[i].geometry.vertexAt(0), one.rows()[i - 1].geometry.vertexAt(1));
  }

  void starts() {
    const Layer rows = records({{"a", "1", "10", "50"}, {"b", "1", "20", "50"}, {"c", "1", "30", "50"}});
    const auto points = [](const std::vector<Row> &all) {
      return layer(QStringLiteral("posts"), QStringLiteral("Point"), QStringLiteral("EPSG:32621"),
                   {field("name", FieldType::Text)}, all);
    };
    const Layer posts = points({{wkt("POINT(632000 5407000)"), {"a"}},
                                {wkt("POINT(632100 5407000)"), {"b"}},
                                {wkt("POINT(632200 5407000)"), {"b"}},
                                {wkt("POINT(632300 5407000)"), {QVariant()}}});
    const Outcome outcome = run(id, with(parameters(rows), {{"START", QVariant()}, {"STARTS", valueOf(posts)}}));
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(outcome.output().texts("route"), QStringList{"a"});
    VERIFY_NEAR(outcome.rows()[0].geometry.vertexAt(0).x(), 632000, 1e-6, "x");
    const QString said = outcome.warnings.join(QLatin1Char(' '));
    for (const char *word :
         {"Route “b”: STARTS has 2 points of that name", "Route “c”: STARTS has no point of that name",
          "1 point(s) of layer “posts” without a name", "2 route(s) passed over"})
      QVERIFY2(said.contains(QString::fromUtf8(word)), qPrintable(said));
  }

  void parametersRefused_data() {
    QTest::addColumn<QString>("key");
    QTest::addColumn<QVariant>("value");
    QTest::addColumn<QString>("word");
    const auto row = [](const char *name, const char *key, const QVariant &value, const char *word) {
      QTest::newRow(name) << QString::fromLatin1(key) << value << QString::fromUtf8(word);
    };
    row("no start", "START", QVariant(), "START or STARTS");
    row("start without system", "START", "1,2", "coordinate reference system");
    row("start beyond the pole", "START", "1,95 [EPSG:4326]", "no place on the Earth");
    row("start in words", "START", "here,there [EPSG:32621]", "START");
    row("close on nothing known", "CLOSE", 2, "END is needed");
    row("adjust an open route", "ADJUST", true, "open route");
    row("both amounts", "PACES_FIELD", "n", "both given");
    row("no amount", "DISTANCE_FIELD", QVariant(), "PACES_FIELD or DISTANCE_FIELD");
    row("no such field", "BEARING_FIELD", "azimuth", "azimuth");
    row("choice", "CLOSE", 3, "0 to 2");
    row("grid in degrees", "GRID_CRS", "EPSG:4326", "projected");
  }
  void parametersRefused() {
    QFETCH(QString, key);
    QFETCH(QVariant, value);
    QFETCH(QString, word);
    const Layer rows = records({{"a", "1", "10", "50"}});
    QVariantMap given = parameters(rows);
    given[key] = value;
    if (!value.isValid())
      given.remove(key);
    const Outcome outcome = run(id, given);
    QVERIFY(!outcome.accepted);
    QVERIFY2(outcome.refusal.contains(word), qPrintable(outcome.refusal));
  }

  void oneLegAndHundreds() {
    std::vector<QVariantList> notes{{"one", "1", "77", "12.5"}};
    for (int i = 0; i < 700; ++i)
      notes.push_back({"many", QString::number(i), QString::number((i * 37) % 360), "20"});
    const Layer rows = records(notes);
    const Outcome outcome = run(id, with(parameters(rows), {{"CLOSE", 1}}));
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(outcome.rows().size(), size_t(701));
    QVERIFY2(outcome.seconds < 5, qPrintable(QString::number(outcome.seconds)));
    VERIFY_NEAR(outcome.rows("CLOSURE").at(0).number("miss_m"), 12.5, 1e-6, "one");
    VERIFY_NEAR(outcome.rows("CLOSURE").at(0).number("ratio"), 1, 1e-6, "one");
    VERIFY_NEAR(outcome.rows("CLOSURE").at(0).number("miss_brg"), 77, 1e-4, "one");
    QCOMPARE(outcome.rows("CLOSURE").at(1).number("legs"), 700.0);
    // A route of one leg cannot be spread back to its start.
    const Layer one = records({{"one", "1", "77", "12.5"}});
    const Outcome spread = run(id, with(parameters(one), {{"CLOSE", 1}, {"ADJUST", true}}));
    QVERIFY(!spread.ok && spread.said().contains(QStringLiteral("without length")));
  }

  // Slips put in by hand, found and said, and nothing mended.
  void blunders() {
    const QVariantMap sure{{"BEARING_ERROR", 1}, {"PACE_ERROR", 1}, {"DIAL_STEP", 1}};
    // A triangle that closes to a metre: 042 for 310 m, 150 for 260 m, 269 for 338 m (reckoned in the plane).
    const auto closure = [&](const std::vector<QVariantList> &notes, const QVariantMap &more) {
      const Layer rows = records(notes);
      QVariantMap given = with(parameters(rows), {{"CLOSE", 1}});
      for (const QVariantMap &each : {sure, more})
        for (auto value = each.begin(); value != each.end(); ++value)
          given[value.key()] = value.value();
      return run(id, given);
    };
    const auto hintOf = [](const Outcome &outcome) { return outcome.rows("CLOSURE").at(0).text("hint"); };
    const std::vector<QVariantList> right{{"r", "1", "042", "310"}, {"r", "2", "150", "260"}, {"r", "3", "269", "338"}};
    const Outcome good = closure(right, {});
    QVERIFY2(good.ok, qPrintable(good.said()));
    QVERIFY2(good.rows("CLOSURE").at(0).null("hint"), qPrintable(hintOf(good)));
    QVERIFY(good.rows("CLOSURE").at(0).number("miss_m") < 6);

    auto notes = right;
    notes[0][2] = "024";
    const Outcome swapped = closure(notes, {});
    QVERIFY2(
        hintOf(swapped).contains(QStringLiteral("Leg 1 (row 1) may have two digits of its bearing swapped: “024” for "
                                                "042°.")),
        qPrintable(hintOf(swapped)));
    QCOMPARE(swapped.results.value("NOT_CLOSED").toDouble(), 1.0);
    QVERIFY2(swapped.rows()[0].text("warnings").contains(QStringLiteral("more than its errors allow")) &&
                 swapped.rows()[0].text("warnings").contains(QStringLiteral("swapped")),
             qPrintable(swapped.rows()[0].text("warnings")));
    VERIFY_NEAR(swapped.rows()[0].number("true_brg"), 24, 1e-6, "not mended");

    notes = right;
    notes[1][2] = "330";
    const Outcome reversed = closure(notes, {});
    QVERIFY2(
        hintOf(reversed).contains(QStringLiteral("Leg 2 (row 2) may have its back bearing noted: “330” for 150°.")),
        qPrintable(hintOf(reversed)));
    QVERIFY(reversed.rows()[1].text("warnings").contains(QStringLiteral("back bearing")));

    notes = right;
    notes[2][3] = "438";
    const Outcome longer = closure(notes, {});
    QVERIFY2(hintOf(longer).contains(
                 QStringLiteral("Leg 3 (row 3) may have a hundred metres too many: 438.0 m for 338.0 m.")),
             qPrintable(hintOf(longer)));

    notes = right;
    notes[2][3] = "395";
    const Outcome wrong = closure(notes, {});
    QVERIFY2(hintOf(wrong).contains(QStringLiteral("Leg 3 (row 3) may be wrong in its length: 395.0 m for 3")),
             qPrintable(hintOf(wrong)));

    // Spread over the legs, the slip is still told.
    const Outcome spread = closure(notes, {{"ADJUST", true}});
    QVERIFY2(spread.rows()[0].text("warnings").contains(QStringLiteral("only hidden it")),
             qPrintable(spread.rows()[0].text("warnings")));
  }

  // Each walker's row has what is said of the route, and its own warnings once. Near the magnetic pole the needle is
  // weak (80 N 96 W, of the test values of WMM2025: H under 6000 nT); a leg of 400 m does not come back to its start.
  void warningsOfSeveralWalkers() {
    const Layer rows = records({{"r", "1", "10", "400"}});
    const Layer walkers =
        table(QStringLiteral("walkers"), {field("walker", FieldType::Text)}, {{"Wenna"}, {"Aud"}, {"Tam"}});
    const Outcome outcome =
        run(id, with(parameters(rows), {{"START", "-96,80 [EPSG:4326]"}, {"CLOSE", 1}, {"WALKERS", valueOf(walkers)}}));
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(outcome.rows().size(), size_t(3));
    for (const OutputRow &row : outcome.rows()) {
      const QString text = row.text("warnings");
      QVERIFY2(text.startsWith(QStringLiteral("This route misses its end by 400 m")), qPrintable(text));
      QVERIFY2(text.count(QStringLiteral("The needle is weak here")) == 1, qPrintable(text));
      QCOMPARE(text, outcome.rows()[0].text("warnings"));
    }
  }

  // A declination forgotten shows with an end point only.
  void declinationForgotten() {
    const Place from{Angle::degrees(48.8), Angle::degrees(-55)};
    const std::pair<double, double> legs[] = {{42, 310}, {128, 260}, {95, 190}, {20, 220}};
    Place at = from;
    std::vector<QVariantList> notes;
    int n = 0;
    for (const auto &[bearing, metres] : legs) {
      at = geodesicDestination(at, TrueBearing(Angle::degrees(bearing)), Length::metres(metres));
      notes.push_back({"r", QString::number(++n), QString::number(bearing), QString::number(metres)});
    }
    const Layer rows = records(notes);
    const auto point = [](const Place &place) {
      return QStringLiteral("%1,%2 [EPSG:4326]")
          .arg(place.longitude.degrees(), 0, 'f', 12)
          .arg(place.latitude.degrees(), 0, 'f', 12);
    };
    const QVariantMap given = with(parameters(rows), {{"START", point(from)}, {"END", point(at)}, {"CLOSE", 2}});
    const Outcome right = run(id, given); // true bearings, as they are
    QVERIFY2(right.ok, qPrintable(right.said()));
    VERIFY_NEAR(right.rows("CLOSURE").at(0).number("miss_m"), 0, 1e-6, "miss");
    QVERIFY(right.rows("CLOSURE").at(0).null("hint"));
    QCOMPARE(right.rows("CLOSURE").at(0).text("closes_on"), QStringLiteral("end"));
    const Outcome forgotten = run(id, with(given, {{"NORTH", 0}}));
    const QString hint = forgotten.rows("CLOSURE").at(0).text("hint");
    QVERIFY2(hint.contains(QStringLiteral("All bearings may be counted from true north already.")), qPrintable(hint));
    const Outcome unused = run(id, with(given, {{"CLOSE", 0}}));
    QVERIFY(unused.warnings.join(QLatin1Char(' ')).contains(QStringLiteral("END is given but not used")));
  }

  void noCompass() {
    const Layer rows = records({{"north", "1", "10", "50"}, {"north", "2", "10", "50"}});
    for (const int north : {0, 1, 2}) {
      const Outcome outcome = run(id, with(parameters(rows), {{"START", "-140,86 [EPSG:4326]"}, {"NORTH", north}}));
      QVERIFY2(!outcome.ok && outcome.said().contains(QStringLiteral("no compass works where leg 1 (row 1) starts")),
               qPrintable(outcome.said()));
    }
    const Outcome south = run(id, with(parameters(rows), {{"START", "0,-90 [EPSG:4326]"}}));
    QVERIFY2(south.ok, qPrintable(south.said()));
    VERIFY_NEAR(south.rows()[0].number("dist_m"), 50, 1e-6, "pole");
  }

  // Across the 180th meridian longitudes go on.
  void antimeridian() {
    const Layer rows = records({{"r", "1", "90", "500"}, {"r", "2", "90", "500"}});
    for (const auto &[point, east] :
         {std::pair("179.999,10 [EPSG:4326]", 180.0), std::pair("-180.001,10 [EPSG:4326]", -180.0)}) {
      const Outcome outcome = run(id, with(parameters(rows), {{"START", point}}));
      QVERIFY2(outcome.ok, qPrintable(outcome.said()));
      const QgsGeometry &first = outcome.rows()[0].geometry, &second = outcome.rows()[1].geometry;
      QVERIFY(first.vertexAt(1).x() > east && first.vertexAt(1).x() < east + 0.01);
      QVERIFY(second.vertexAt(1).x() > first.vertexAt(1).x());
      VERIFY_NEAR(outcome.rows()[1].number("dist_m"), 500, 1e-6, point);
    }
  }

  void cancels() {
    std::vector<QVariantList> notes;
    for (int i = 0; i < 2000; ++i)
      notes.push_back({QString::number(i), "1", "77", "12.5"});
    const Layer rows = records(notes);
    Ear ear;
    ear.cancel();
    QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("legs.gpkg"));
    const Outcome outcome = run(id, with(parameters(rows), {{"OUTPUT", file}}), {{}, &ear, false, true});
    QVERIFY2(outcome.results.isEmpty() && outcome.outputs.empty(), qPrintable(outcome.said()));
    QVERIFY(!QFile::exists(file));
  }
};

BRUSHLINE_HOST_TEST_MAIN(PlotLegsAlgorithmTest)
#include "plot_legs_algorithm_test.moc"
