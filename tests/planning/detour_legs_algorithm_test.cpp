// SPDX-License-Identifier: GPL-2.0-or-later
#include "support/cancelled_run.h"
#include "support/host_fixture.h"
#include "support/near.h"
#include "support/random.h"

#include <cmath>

using namespace brushline::test;
using brushline::Angle;

namespace {
const QString id = QStringLiteral("brushline:detourlegs");
const QString crs = QStringLiteral("EPSG:32621");
// On easting 600000 of a UTM zone a metre on the ground is 0.9996 (1 + 100 km^2 / 2 R^2) m on the grid.
constexpr double scale = 0.9996 * (1 + 1e10 / (2 * 6.37e6 * 6.37e6));

Layer route(const QString &line = QStringLiteral("LINESTRING(600000 5400000,600300 5400000,600300 5400200)")) {
  return layer(QStringLiteral("routes"), QStringLiteral("LineString"), crs, {field("route", FieldType::Text)},
               {{wkt(line), {"north loop"}}});
}

Layer ponds(const std::vector<std::pair<QString, QString>> &nameAndPolygon, const QString &system = crs) {
  std::vector<Row> rows;
  for (const auto &[name, polygon] : nameAndPolygon)
    rows.push_back({wkt(polygon), {name.isEmpty() ? QVariant() : QVariant(name)}});
  return layer(QStringLiteral("ponds"), QStringLiteral("MultiPolygon"), system, {field("name", FieldType::Text)}, rows);
}

QString box(double west, double east, double south, double north) {
  return QStringLiteral("MULTIPOLYGON(((%1 %3,%2 %3,%2 %4,%1 %4,%1 %3)))")
      .arg(west, 0, 'f', 3)
      .arg(east, 0, 'f', 3)
      .arg(south, 0, 'f', 3)
      .arg(north, 0, 'f', 3);
}

Layer again(const Output &output) {
  QList<QgsField> fields;
  for (const QgsField &one : output.fields)
    fields << one;
  std::vector<Row> rows;
  for (const OutputRow &row : output.rows) {
    QVariantList values;
    for (const QgsField &one : fields)
      values << row.values.value(one.name());
    rows.push_back({row.geometry, values});
  }
  return layer(QStringLiteral("legs"), QStringLiteral("LineString"), crs, fields, rows);
}
} // namespace

class DetourLegsAlgorithmTest : public QObject {
  Q_OBJECT
private slots:
  // A pond 40 m by 40 m on the grid about the first leg; clearance 5. By hand: out 20 / scale + 5, past 40 / scale
  // + 10.
  void squarePond() {
    const Layer routes = route(), obstacles = ponds({{"Tarn", box(600100, 600140, 5399980, 5400020)}});
    const Layer walkers =
        table(QStringLiteral("walkers"), {field("walker", FieldType::Text), field("paces_100m", FieldType::Real)},
              {{"Ann", 130}, {"Bo", 151}});
    const QVariantMap common = {{"INPUT", valueOf(routes)},
                                {"ROUTE_FIELD", "route"},
                                {"WALKERS", valueOf(walkers)},
                                {"DATE", "2026-06-01"},
                                {"OUTPUT", "memory:"}};
    QVariantMap parameters = common;
    parameters["OBSTACLES"] = valueOf(obstacles);
    const Outcome outcome = run(id, parameters);
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    const auto &rows = outcome.rows();
    QCOMPARE(rows.size(), size_t(12)); // five pieces and a free leg, two walkers
    QStringList parts, turns, sides, names;
    for (size_t i = 0; i < rows.size(); i += 2) {
      parts << rows[i].text("part");
      turns << rows[i].text("turn");
      sides << rows[i].text("side");
      names << rows[i].text("obstacle");
    }
    QCOMPARE(parts, (QStringList{"along", "out", "past", "back", "along", "along"}));
    // The leg bends south of the grid's straight line by nothing to speak of; both sides are equal to the millimetre,
    // so the right is taken.
    QCOMPARE(sides, (QStringList{"", "right", "right", "right", "", ""}));
    QCOMPARE(turns, (QStringList{"", "right", "left", "left", "right", ""}));
    QCOMPARE(names, (QStringList{"", "Tarn", "Tarn", "Tarn", "", ""}));
    const double metres[] = {100 / scale - 5, 20 / scale + 5, 40 / scale + 10, 20 / scale + 5, 160 / scale - 5};
    for (size_t i = 0; i < 5; ++i)
      VERIFY_NEAR(rows[2 * i].number("dist_m"), metres[i], 0.01, std::to_string(i));
    const double dial = rows[0].number("dial");
    const double turn[] = {0, 90, 0, -90, 0};
    for (size_t i = 0; i < 5; ++i) {
      VERIFY_NEAR(turnBetween(rows[2 * i].number("dial"), dial + turn[i]), 0, 1e-9, "dial");
      VERIFY_NEAR(turnBetween(rows[2 * i].number("back_dial"), dial + turn[i] + 180), 0, 1e-9, "back dial");
      VERIFY_NEAR(turnBetween(rows[2 * i].number("true_brg"), rows[0].number("true_brg") + turn[i]), 0, 0.01,
                  "bearing");
      QVERIFY(rows[2 * i].null("warnings"));
      QCOMPARE(rows[2 * i].number("blocked_m"), 0.0);
      QCOMPARE(rows[2 * i].number("piece"), double(i + 1));
    }

    const Outcome legs = run(QStringLiteral("brushline:annotatelegs"), common);
    QVERIFY2(legs.ok, qPrintable(legs.said()));
    QCOMPARE(dial, legs.rows()[0].number("dial")); // of the whole leg
    for (size_t w = 0; w < 2; ++w) {
      double paces = 0;
      for (size_t i = 0; i < 5; ++i) {
        const OutputRow &row = rows[2 * i + w];
        if (row.text("part") == QLatin1String("along") || row.text("part") == QLatin1String("past"))
          paces += row.number("paces");
        QCOMPARE(row.number("run_paces"), paces);
      }
      QCOMPARE(paces, legs.rows()[w].number("paces")); // the leg's own count
      QCOMPARE(rows[2 * 3 + w].number("paces"), rows[2 * 1 + w].number("paces"));
      // 130 and 151 steps to 100 m.
      QCOMPARE(rows[2 * 1 + w].number("paces"), std::round((w ? 1.51 : 1.3) * metres[1]));
      // The second leg is what it is without obstacles.
      for (const char *name : {"true_brg", "grid_brg", "mag_brg", "dial", "back_dial", "dist_m", "paces", "walk_min"})
        QCOMPARE(rows[10 + w].number(name), legs.rows()[2 + w].number(name));
    }
    VERIFY_NEAR(rows[8].number("count_m"), legs.rows()[0].number("dist_m"), 0.001, "count");
    QCOMPARE(outcome.results.value("DETOUR_COUNT").toDouble(), 1.0);
    QCOMPARE(outcome.results.value("NOT_PASSED").toDouble(), 0.0);
    for (size_t i = 1; i < 6; ++i) // piece to piece
      VERIFY_NEAR(rows[2 * i].geometry.vertexAt(0).distance(rows[2 * i - 2].geometry.vertexAt(1)), 0, 1e-9, "joined");
  }

  // Quarter turns on the dial for every graduation that divides one, wherever the leg's bearing lies between two. 7
  // degrees divide none: there each piece has the reading nearest to its own bearing.
  void dialsTurnByQuarters() {
    const Layer obstacles = ponds({{"Tarn", box(600100, 600140, 5399940, 5400060)}});
    for (const auto &[unit, quarter, step] : {std::tuple(0, 90.0, 2.0), std::tuple(0, 90.0, 5.0), std::tuple(0, 90.0, 7.0),
                                              std::tuple(1, 1600.0, 20.0), std::tuple(2, 100.0, 1.0)})
      for (const int north : {0, 1, 2})
        for (double end = 5399990; end < 5400010; end += 1.7) {
          const Layer routes = route(QStringLiteral("LINESTRING(600000 5400000,600300 %1)").arg(end, 0, 'f', 2));
          const Outcome outcome = run(id, {{"INPUT", valueOf(routes)},
                                           {"OBSTACLES", valueOf(obstacles)},
                                           {"DIAL_UNIT", unit},
                                           {"DIAL_STEP", step},
                                           {"NORTH", north},
                                           {"DATE", "2026-06-01"},
                                           {"OUTPUT", "memory:"}});
          QVERIFY2(outcome.ok, qPrintable(outcome.said()));
          QCOMPARE(outcome.rows().size(), size_t(5));
          const double dial = outcome.rows()[0].number("dial"), circle = 4 * quarter;
          const bool divides = std::remainder(quarter, step) == 0;
          const double sign = outcome.rows()[1].text("turn") == QLatin1String("right") ? 1 : -1;
          const double expected[] = {dial, dial + sign * quarter, dial, dial - sign * quarter, dial};
          for (size_t i = 0; i < 5; ++i) {
            const OutputRow &piece = outcome.rows()[i];
            if (divides)
              VERIFY_NEAR(std::remainder(piece.number("dial") - expected[i], circle), 0, 1e-9, "dial");
            const double bearing = piece.number(north == 0 ? "mag_brg" : north == 1 ? "true_brg" : "grid_brg");
            const double off = std::remainder(piece.number("dial") - bearing / 90 * quarter, circle);
            // The readings of a circle that its graduation does not divide end with a shorter step.
            VERIFY_NEAR(off, 0, 0.55 * step + 1e-6, "the dial's own north");
            const double back = std::remainder(piece.number("back_dial") - bearing / 90 * quarter - 2 * quarter, circle);
            VERIFY_NEAR(back, 0, 0.55 * step + 1e-6, "the way back");
          }
        }
  }

  // Against GEOS on the grid: no piece that is not told as blocked comes nearer than the clearance.
  void strewnAgainstGeos() {
    Random random(5);
    std::vector<std::pair<QString, QString>> polygons;
    QgsGeometry all;
    for (int i = 0; i < 150; ++i) {
      const double x = 600000 + random.between(0, 2000), y = 5400000 + random.between(0, 2000);
      QStringList corners;
      const int n = int(random.between(3, 12));
      for (int c = 0; c <= n; ++c) {
        const double turn = 2 * Angle::pi * (c % n) / n, r = 5 + 45 * double((c % n) * 7919 % 13) / 13;
        corners
            << QStringLiteral("%1 %2").arg(x + r * std::cos(turn), 0, 'f', 6).arg(y + r * std::sin(turn), 0, 'f', 6);
      }
      const QString text = QStringLiteral("MULTIPOLYGON(((%1)))").arg(corners.join(QLatin1Char(',')));
      polygons.emplace_back(QStringLiteral("pond %1").arg(i), text);
    }
    const Layer obstacles = ponds(polygons);
    std::vector<Row> lines;
    for (int i = 0; i < 40; ++i) {
      std::vector<std::pair<double, double>> points;
      for (int p = 0; p < 6; ++p)
        points.emplace_back(600000 + random.between(0, 2000), 5400000 + random.between(0, 2000));
      lines.push_back({line(points), {QString::number(i)}});
    }
    const Layer routes =
        layer(QStringLiteral("routes"), QStringLiteral("LineString"), crs, {field("route", FieldType::Text)}, lines);
    const QVariantMap parameters = {
        {"INPUT", valueOf(routes)}, {"ROUTE_FIELD", "route"}, {"OBSTACLES", valueOf(obstacles)},
        {"CLEARANCE", 6},           {"DATE", "2026-06-01"},   {"OUTPUT", "memory:"}};
    const Outcome outcome = run(id, parameters);
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    int detours = 0, blocked = 0;
    for (const OutputRow &row : outcome.rows()) {
      detours += row.text("part") == QLatin1String("out");
      if (row.number("blocked_m") > 0) {
        ++blocked;
        QVERIFY2(row.text("warnings").contains(QStringLiteral("NOT PASSED")), qPrintable(row.text("warnings")));
        continue;
      }
      double least = 1e9;
      for (const auto &polygon : polygons)
        least = std::min(least, row.geometry.distance(wkt(polygon.second)));
      // 1 mm, and what the straight line on the grid bends off the shortest line: under 1 mm on 2 km.
      QVERIFY2(least > 6 * scale - 0.003, qPrintable(QStringLiteral("%1 m").arg(least)));
    }
    QVERIFY(detours > 100 && blocked > 5);
    QCOMPARE(outcome.results.value("DETOUR_COUNT").toInt(), detours);
    QVERIFY(outcome.output().sameBits(run(id, parameters).output()));
  }

  void notPassedIsSaid() {
    // A wall too wide; a pond on the turning point.
    const Layer routes = route(), obstacles = ponds({{"Long Wall", box(600100, 600110, 5399700, 5400300)},
                                                     {QString(), box(600290, 600310, 5399990, 5400010)}});
    const Outcome outcome = run(id, {{"INPUT", valueOf(routes)},
                                     {"ROUTE_FIELD", "route"},
                                     {"OBSTACLES", valueOf(obstacles)},
                                     {"MAX_DETOUR", 200},
                                     {"DATE", "2026-06-01"},
                                     {"OUTPUT", "memory:"}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    const auto &rows = outcome.rows();
    QCOMPARE(outcome.output().texts("part"), (QStringList{"along", "along"}));
    const QString first = rows[0].text("warnings"), second = rows[1].text("warnings");
    for (const char *word :
         {"NOT PASSED: Long Wall, from 95 m to 115 m", "On both sides the way out would be longer than 200 m",
          "NOT PASSED: obstacle 2", "ends inside it: move the turning point"})
      QVERIFY2(first.contains(QLatin1String(word)), qPrintable(first));
    QVERIFY2(second.contains(QLatin1String("starts inside it: move the turning point")), qPrintable(second));
    VERIFY_NEAR(rows[0].number("blocked_m"), 10 / scale + 10 + 10 / scale + 5, 0.01, "blocked");
    QCOMPARE(outcome.results.value("NOT_PASSED").toDouble(), 3.0);
    const QString said = outcome.warnings.join(QLatin1Char(' '));
    QVERIFY2(said.contains(QStringLiteral("Route “north loop”, leg 1")) && said.contains(QLatin1String("leg 2")) &&
                 said.contains(QLatin1String("NOT gone round")),
             qPrintable(said));
  }

  void annotatedLegsAndPoints() {
    const Layer routes = route(), obstacles = ponds({{"Tarn", box(600100, 600140, 5399980, 5400020)}});
    const Layer walkers = table(QStringLiteral("walkers"), {field("walker", FieldType::Text)}, {{"Ann"}, {"Bo"}});
    const Outcome legs = run(QStringLiteral("brushline:annotatelegs"), {{"INPUT", valueOf(routes)},
                                                                        {"ROUTE_FIELD", "route"},
                                                                        {"WALKERS", valueOf(walkers)},
                                                                        {"DIRECTION", 2},
                                                                        {"DATE", "2026-06-01"},
                                                                        {"OUTPUT", "memory:"}});
    QVERIFY2(legs.ok, qPrintable(legs.said()));
    const Layer annotated = again(legs.output());
    const Outcome outcome = run(id, {{"INPUT", valueOf(annotated)},
                                     {"OBSTACLES", valueOf(obstacles)},
                                     {"DATE", "2026-06-01"},
                                     {"OUTPUT", "memory:"}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(outcome.output().texts("leg"), (QStringList{"1", "1", "1", "1", "1", "2", "1", "2", "2", "2", "2", "2"}));
    QCOMPARE(outcome.output().texts("direction"),
             (QStringList{"out", "out", "out", "out", "out", "out", "back", "back", "back", "back", "back", "back"}));
    QCOMPARE(outcome.rows()[0].text("route"), QStringLiteral("north loop"));

    const Layer points = layer(
        QStringLiteral("stops"), QStringLiteral("Point"), crs, {field("n", FieldType::Integer)},
        {{wkt(QStringLiteral("POINT(600300 5400000)")), {2}}, {wkt(QStringLiteral("POINT(600000 5400000)")), {1}}});
    const Layer names = layer(QStringLiteral("names"), QStringLiteral("Point"), crs, {field("name", FieldType::Text)},
                              {{wkt(QStringLiteral("POINT(600000 5400000)")), {"Camp"}},
                               {wkt(QStringLiteral("POINT(600095 5400000)")), {"Stump"}}});
    const Outcome gathered = run(id, {{"INPUT", valueOf(points)},
                                      {"ORDER_FIELD", "n"},
                                      {"OBSTACLES", valueOf(obstacles)},
                                      {"POINTS", valueOf(names)},
                                      {"DATE", "2026-06-01"},
                                      {"OUTPUT", "memory:"}});
    QVERIFY2(gathered.ok, qPrintable(gathered.said()));
    QCOMPARE(gathered.rows().size(), size_t(5));
    QCOMPARE(gathered.rows()[0].text("from_name"), QStringLiteral("Camp"));
    QVERIFY(gathered.rows()[0].null("to_name") && gathered.rows()[1].null("from_name"));
  }

  // Geographic coordinates across the 180th meridian, 40 degrees south, in a Z layer; obstacles in another system.
  void acrossTheDateLine() {
    const Layer routes = layer(QStringLiteral("routes"), QStringLiteral("LineStringZ"), QStringLiteral("EPSG:4326"), {},
                               {{wkt(QStringLiteral("LINESTRING Z(179.998 -40 5,180.002 -40 6)")), {}}});
    const Layer obstacles =
        ponds({{"Tarn", "MULTIPOLYGON(((179.9998 -40.0001,180.0002 -40.0001,180.0002 -39.9998,179.9998 "
                        "-39.9998,179.9998 -40.0001)))"}},
              QStringLiteral("EPSG:4326"));
    const Outcome outcome = run(
        id,
        {{"INPUT", valueOf(routes)}, {"OBSTACLES", valueOf(obstacles)}, {"DATE", "2026-06-01"}, {"OUTPUT", "memory:"}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(outcome.output().texts("part"), (QStringList{"along", "out", "past", "back", "along"}));
    QCOMPARE(outcome.rows()[1].text("side"), QStringLiteral("right")); // walking east, the south side is nearer
    for (const OutputRow &row : outcome.rows())
      QVERIFY(row.geometry.length() < 0.003); // degrees
  }

  void refusals() {
    const Layer routes = route(), obstacles = ponds({{"Tarn", box(600100, 600140, 5399980, 5400020)}});
    const Layer nowhere = ponds({{"Tarn", box(600100, 600140, 5399980, 5400020)}}, QString());
    const QVariantMap good = {{"INPUT", valueOf(routes)}, {"OBSTACLES", valueOf(obstacles)}, {"OUTPUT", "memory:"}};
    const auto with = [&](const QString &key, const QVariant &value) {
      QVariantMap parameters = good;
      parameters[key] = value;
      return parameters;
    };
    const std::vector<std::pair<QVariantMap, QStringList>> cases = {
        {{{"INPUT", valueOf(routes)}, {"OUTPUT", "memory:"}}, {"OBSTACLES"}},
        {with("OBSTACLES", valueOf(nowhere)), {"OBSTACLES", "ponds", "coordinate reference system"}},
        {with("OBSTACLES", valueOf(routes)), {"OBSTACLES", "routes", "polygons"}},
        {with("OBSTACLE_NAME", "nick"), {"OBSTACLE_NAME", "nick"}},
        {with("CLEARANCE", -1), {"CLEARANCE"}},
        {with("MAX_DETOUR", 0), {"MAX_DETOUR"}},
        {with("MAX_DETOUR", 1e9), {"MAX_DETOUR"}},
    };
    for (const auto &[parameters, words] : cases) {
      const Outcome outcome = run(id, parameters);
      QVERIFY2(!outcome.ok, qPrintable(words.join(QLatin1Char(' '))));
      for (const QString &word : words)
        QVERIFY2(outcome.said().contains(word), qPrintable(word + QStringLiteral(" in: ") + outcome.said()));
    }
  }

  void poorInput() {
    const Layer routes = layer(QStringLiteral("routes"), QStringLiteral("LineString"), crs, {},
                               {{QgsGeometry(), {}},
                                {wkt(QStringLiteral("LINESTRING(600000 5400000,600000 5400000)")), {}},
                                {wkt(QStringLiteral("LINESTRING(600000 5400000,600300 5400000)")), {}}});
    const Layer obstacles = ponds({{"Bow", "MULTIPOLYGON(((600100 5399980,600140 5400020,600140 5399980,600100 5400020,"
                                           "600100 5399980)))"},
                                   {"Nothing", QString()}});
    const Outcome outcome = run(
        id,
        {{"INPUT", valueOf(routes)}, {"OBSTACLES", valueOf(obstacles)}, {"DATE", "2026-06-01"}, {"OUTPUT", "memory:"}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(outcome.rows().size(), size_t(5));
    const QString said = outcome.warnings.join(QLatin1Char(' '));
    for (const char *word : {"cross themselves", "usable geometry", "2 route"})
      QVERIFY2(said.contains(QLatin1String(word)), qPrintable(said));
    const Layer none = ponds({});
    const Layer whole = route();
    const Outcome free = run(id, {{"INPUT", valueOf(whole)}, {"OBSTACLES", valueOf(none)}, {"OUTPUT", "memory:"}});
    QVERIFY2(free.ok, qPrintable(free.said()));
    QCOMPARE(free.output().texts("part"), (QStringList{"along", "along"}));
    QVERIFY2(free.warnings.join(QLatin1Char(' ')).contains(QLatin1String("nothing is gone round")),
             qPrintable(free.said()));
  }

  // Within a tenth of a second, and no file is left; of three tries the fastest counts, since other programs run too.
  void cancelledInTheMiddle() {
    Random random(8);
    std::vector<std::pair<QString, QString>> polygons;
    for (int i = 0; i < 3000; ++i) {
      const double x = 600000 + random.between(0, 6000), y = 5400000 + random.between(0, 6000);
      polygons.emplace_back(QString(), box(x, x + random.between(2, 60), y, y + random.between(2, 60)));
    }
    std::vector<std::pair<double, double>> points;
    for (int i = 0; i < 30000; ++i)
      points.emplace_back(600000 + random.between(0, 6000), 5400000 + random.between(0, 6000));
    const Layer obstacles = ponds(polygons);
    const Layer routes = layer(QStringLiteral("routes"), QStringLiteral("LineString"), crs, {}, {{line(points), {}}});
    const QTemporaryDir folder;
    const QString file = folder.filePath(QStringLiteral("out.geojson"));
    double fastest = 1e9;
    for (int tries = 0; tries < 3 && fastest > soon; ++tries) {
      Ear ear;
      CancelAfter finger(ear, 0.7);
      const Outcome outcome = run(id, {{"INPUT", valueOf(routes)}, {"OBSTACLES", valueOf(obstacles)}, {"OUTPUT", file}}, {{}, &ear, false, false});
      const std::optional<double> seconds = finger.over();
      QVERIFY(outcome.outputs.empty());
      QVERIFY2(seconds, "too small an input: done before it was cancelled");
      fastest = std::min(fastest, *seconds);
      QCOMPARE(QDir(folder.path()).entryList(QDir::Files), QStringList());
    }
    QVERIFY2(fastest < soon, qPrintable(QString::number(fastest)));
  }

  void cancelledBeforehand() {
    Ear ear;
    ear.cancel();
    const Layer routes = route(), obstacles = ponds({{"Tarn", box(600100, 600140, 5399980, 5400020)}});
    Surroundings surroundings;
    surroundings.ear = &ear;
    const Outcome outcome =
        run(id, {{"INPUT", valueOf(routes)}, {"OBSTACLES", valueOf(obstacles)}, {"OUTPUT", "memory:"}}, surroundings);
    QVERIFY(outcome.outputs.empty());
  }
};

BRUSHLINE_HOST_TEST_MAIN(DetourLegsAlgorithmTest)
#include "detour_legs_algorithm_test.moc"
