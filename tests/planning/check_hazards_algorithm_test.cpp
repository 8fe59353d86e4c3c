// SPDX-License-Identifier: GPL-2.0-or-later
// Distances are those of the built-in table (US Army FM 3-25.26, section 9-3, read in copies).
#include "support/cancelled_run.h"

#include <cmath>

using namespace brushline::test;

namespace {
const QString id = QStringLiteral("brushline:checkhazards");
const QString crs = QStringLiteral("EPSG:32621");

Layer routes() {
  return layer("routes", "LineString", crs, {field("route", FieldType::Text)},
               {{wkt("LINESTRING(600000 5400000,600300 5400000,600300 5400200)"), {"north loop"}}});
}
Layer lines(const QString &name, const std::vector<Row> &rows, const char *attribute = "kind") {
  return layer(name, "LineString", crs, {field(attribute, FieldType::Text)}, rows);
}
} // namespace

class CheckHazardsAlgorithmTest : public QObject {
  Q_OBJECT

private slots:
  void currentAndIron() {
    const Layer input = routes();
    const Layer wires = lines("wires", {{wkt("LINESTRING(600200 5399000,600200 5401000)"), {"high-tension line"}},
                                        {wkt("LINESTRING(600250 5400150,600350 5400150)"), {"Wire Fence"}},
                                        {wkt("LINESTRING(600000 5399000,600000 5401000)"), {"spell"}}});
    const Outcome outcome = run(id, {{"INPUT", valueOf(input)},
                                     {"ROUTE_FIELD", "route"},
                                     {"DISTURBANCES", valueOf(wires)},
                                     {"DATE", "2026-06-01"},
                                     {"OUTPUT", "memory:"}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    const auto &rows = outcome.rows();
    QCOMPARE(rows.size(), size_t(2));
    QCOMPARE(rows[0].text("hazard"), QString("high-tension line"));
    // 0.1 m: the grid's scale.
    QVERIFY(std::abs(rows[0].number("from_m") - 145) < 0.1 && std::abs(rows[0].number("to_m") - 255) < 0.1);
    QVERIFY(rows[0].text("advice").contains("145") && rows[0].text("advice").contains("255"));
    QVERIFY(std::abs(rows[0].geometry.length() - 110) < 0.1);
    QCOMPARE(rows[1].text("leg"), QString("2"));
    QVERIFY(std::abs(rows[1].number("from_m") - 140) < 0.1);
    QVERIFY2(outcome.warnings.join(' ').contains("spell"), "an unknown kind is told, not guessed");
    QCOMPARE(outcome.results.value("HAZARD_COUNT").toInt(), 2);
  }

  void aTableOfOnesOwn() {
    const Layer input = routes();
    const Layer wires = lines("wires", {{wkt("LINESTRING(600200 5399000,600200 5401000)"), {"spell"}}});
    const Layer own =
        table("own", {field("kind", FieldType::Text), field("distance_m", FieldType::Real)}, {{"Spell", 7}});
    QVariantMap given{{"INPUT", valueOf(input)},   {"ROUTE_FIELD", "route"}, {"DISTURBANCES", valueOf(wires)},
                      {"DISTANCES", valueOf(own)}, {"DATE", "2026-06-01"},   {"OUTPUT", "memory:"}};
    const Outcome outcome = run(id, given);
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(outcome.rows().size(), size_t(1));
    QVERIFY(std::abs(outcome.rows()[0].number("from_m") - 193) < 0.1);
    const Layer bad =
        table("bad", {field("kind", FieldType::Text), field("distance_m", FieldType::Real)}, {{"Spell", -7}});
    given["DISTANCES"] = valueOf(bad);
    const Outcome refused = run(id, given);
    QVERIFY(!refused.accepted);
    QVERIFY2(refused.refusal.contains("DISTANCES") && refused.refusal.contains("bad"), qPrintable(refused.refusal));
  }

  void hazardsSlopesAndZones() {
    QTemporaryDir folder;
    const QString terrain = folder.filePath("terrain.tif");
    // Level, and 45 degrees east of 600250.
    writeRaster(terrain, {crs, {599900, 5, 0, 5400600, 0, -5}, 200, 200, {}, {}, {}},
                [](double x, double, int) { return x > 600250 ? x - 600250 : 0; });
    const Layer input = routes();
    const Layer ponds =
        layer("ponds", "Polygon", crs, {field("name", FieldType::Text)},
              {{wkt("POLYGON((600100 5399990,600120 5399990,600120 5400010,600100 5400010,600100 5399990))"),
                {"Black Pond"}}});
    const Layer cliffs = lines("cliffs", {{wkt("LINESTRING(600305 5400100,600305 5400120)"), {QVariant()}}}, "name");
    const Outcome outcome = run(id, {{"INPUT", valueOf(input)},
                                     {"ROUTE_FIELD", "route"},
                                     {"HAZARDS", QVariantList{valueOf(ponds), valueOf(cliffs)}},
                                     {"DEM", terrain},
                                     {"DATE", "2026-06-01"},
                                     {"OUTPUT", "memory:"}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QStringList hazards = outcome.output().texts("hazard");
    QCOMPARE(hazards, (QStringList{"Black Pond", "slope", "slope", "cliffs"}));
    const auto &rows = outcome.rows();
    QVERIFY(std::abs(rows[0].number("from_m") - 90) < 0.1 && std::abs(rows[0].number("to_m") - 130) < 0.1);
    QVERIFY(std::abs(rows[1].number("from_m") - 250) < 8);
    QVERIFY(std::abs(rows[2].number("to_m") - 200) < 0.5); // leg 2 runs across the slope
    QCOMPARE(rows[2].number("limit"), 30.0);

    // Near the magnetic pole: WMM2025 test row 80 N 96 W has H = 2164 nT (caution), 89 N 121 W 1504 nT (blackout).
    const Layer north =
        layer("north", "LineString", "EPSG:4326", {field("route", FieldType::Text)},
              {{wkt("LINESTRING(-96 80,-96 80.001)"), {"c"}}, {wkt("LINESTRING(-121 89,-121 89.001)"), {"b"}}});
    const Outcome zones =
        run(id, {{"INPUT", valueOf(north)}, {"ROUTE_FIELD", "route"}, {"DATE", "2025-01-01"}, {"OUTPUT", "memory:"}});
    QVERIFY2(zones.ok, qPrintable(zones.said()));
    QCOMPARE(zones.output().texts("hazard"), (QStringList{"caution zone", "blackout zone"}));
  }

  // What was found goes into the legs' warnings; on the way back without metres, which count from the other end.
  void feedsTheWarningsOfLegs() {
    const Layer input = routes();
    const Layer wires = lines("wires", {{wkt("LINESTRING(600200 5399000,600200 5401000)"), {"high-tension line"}}});
    const Outcome found = run(id, {{"INPUT", valueOf(input)},
                                   {"ROUTE_FIELD", "route"},
                                   {"DISTURBANCES", valueOf(wires)},
                                   {"DATE", "2026-06-01"},
                                   {"OUTPUT", "memory:"}});
    QVERIFY(found.ok);
    std::vector<Row> rows;
    for (const OutputRow &row : found.rows())
      rows.push_back({row.geometry, {row["route"], row["leg"], row["hazard"], row["advice"]}});
    const Layer hazards = layer("hazards", "LineString", crs,
                                {field("route", FieldType::Text), field("leg", FieldType::Integer),
                                 field("hazard", FieldType::Text), field("advice", FieldType::Text)},
                                rows);
    QVariantMap given{
        {"INPUT", valueOf(input)},           {"ROUTE_FIELD", "route"}, {"DIRECTION", 2}, {"DATE", "2026-06-01"},
        {"HAZARDS_FOUND", valueOf(hazards)}, {"OUTPUT", "memory:"}};
    const Outcome legs = run("brushline:annotatelegs", given);
    QVERIFY2(legs.ok, qPrintable(legs.said()));
    QCOMPARE(legs.rows().size(), size_t(4)); // out 1, 2, back 1, 2
    QVERIFY(legs.rows()[0].text("warnings").contains("145"));
    QVERIFY(legs.rows()[1].null("warnings") && legs.rows()[2].null("warnings"));
    QVERIFY(legs.rows()[3].text("warnings").contains("high-tension line"));
    QVERIFY(!legs.rows()[3].text("warnings").contains("145"));
    given["HAZARDS_FOUND"] = valueOf(wires);
    const Outcome refused = run("brushline:annotatelegs", given);
    QVERIFY2(refused.refusal.contains("HAZARDS_FOUND") && refused.refusal.contains("checkhazards"),
             qPrintable(refused.refusal));
  }

  // Hazards are told to the legs they lie on, whichever way these were walked when they were checked. The cliff lies
  // beside A-B, 5 m off from 100 to 120 m, so within 10 m from 91 to 129 m: 8.7 m = sqrt(10^2 - 5^2) before and after.
  // From B, at 300 m, that is from 171 to 209 m. (All longer by 3 in 10 000: the grid's scale.)
  void warningsGoByTheDirection() {
    const QTemporaryDir folder;
    const Layer input = routes();
    const Layer cliffs = lines("cliffs", {{wkt("LINESTRING(600100 5400005,600120 5400005)"), {"Red Cliff"}}}, "name");
    const QString atAB = "From 91 to 129 m", atBA = "From 171 to 209 m", care = "Take care on this leg: Red Cliff.";
    // Given lines or annotated legs, and annotated again: the rows' warnings.
    const auto annotated = [&](const QVariant &legs, int direction, const QString &hazards, const QString &output) {
      QVariantMap given{{"INPUT", legs}, {"DIRECTION", direction}, {"DATE", "2026-06-01"}, {"OUTPUT", output}};
      if (legs.toString().isEmpty()) // no file's path, so the plain layer
        given["ROUTE_FIELD"] = "route";
      if (!hazards.isEmpty())
        given["HAZARDS_FOUND"] = hazards;
      const Outcome outcome = run("brushline:annotatelegs", given);
      if (!outcome.ok)
        throw std::runtime_error(outcome.said().toStdString());
      QStringList warnings;
      for (const OutputRow &row : outcome.rows())
        warnings << row.text("direction") + row.text("leg") + ' ' + row.text("warnings");
      return warnings;
    };
    const auto checked = [&](const QVariant &legs, const QString &output) {
      QVariantMap given{{"INPUT", legs},
                        {"HAZARDS", QVariantList{valueOf(cliffs)}},
                        {"DATE", "2026-06-01"},
                        {"OUTPUT", folder.filePath(output)}};
      if (legs.toString().isEmpty()) // no file's path, so the plain layer
        given["ROUTE_FIELD"] = "route";
      const Outcome outcome = run(id, given);
      if (!outcome.ok)
        throw std::runtime_error(outcome.said().toStdString());
      return outcome.output().texts("direction");
    };
    const QString back = folder.filePath("back.gpkg"), both = folder.filePath("both.gpkg");
    annotated(valueOf(input), 1, QString(), back);
    annotated(valueOf(input), 2, QString(), both);
    QCOMPARE(checked(valueOf(input), "found_plain.gpkg"), QStringList({"out"}));
    QCOMPARE(checked(back, "found_back.gpkg"), QStringList({"back"}));
    QCOMPARE(checked(both, "found_both.gpkg"), QStringList({"out", "back"}));

    // From the way back: A-B is named, without metres; B-C is not.
    QStringList told = annotated(valueOf(input), 0, folder.filePath("found_back.gpkg"), "memory:");
    QCOMPARE(told, QStringList({"out1 " + care, "out2 "}));
    told = annotated(valueOf(input), 1, folder.filePath("found_back.gpkg"), "memory:");
    QCOMPARE(told.size(), 2);
    QCOMPARE(told[0], QString("back1 "));
    QVERIFY2(told[1].contains(atBA) && !told[1].contains(care), qPrintable(told[1]));
    told = annotated(back, 0, folder.filePath("found_plain.gpkg"), "memory:");
    QCOMPARE(told, QStringList({"back1 ", "back2 " + care}));

    // From both ways: each its own metres, and the hazard once.
    for (const auto &[legs, direction] : {std::pair(valueOf(input), 2), {QVariant(both), 0}}) {
      told = annotated(legs, direction, folder.filePath("found_both.gpkg"), "memory:");
      QCOMPARE(told.size(), 4);
      QVERIFY2(told[0].contains(atAB) && !told[0].contains(care), qPrintable(told[0]));
      QVERIFY2(told[3].contains(atBA) && !told[3].contains(care), qPrintable(told[3]));
      QCOMPARE(told.mid(1, 2), QStringList({"out2 ", "back1 "}));
    }

    // From the plain route.
    told = annotated(valueOf(input), 2, folder.filePath("found_plain.gpkg"), "memory:");
    QCOMPARE(told.size(), 4);
    QVERIFY2(told[0].contains(atAB), qPrintable(told[0]));
    QCOMPARE(told.mid(1), QStringList({"out2 ", "back1 ", "back2 " + care}));
  }

  // What fits no leg is told: another name, another number, and a leg that lies elsewhere since.
  void hazardsOfOtherLegsAreTold() {
    const QTemporaryDir folder;
    const QString found = folder.filePath("found.gpkg");
    const Layer input = routes();
    const Layer cliffs = lines("cliffs", {{wkt("LINESTRING(600100 5400005,600120 5400005)"), {"Red Cliff"}}}, "name");
    const Outcome checked = run(id, {{"INPUT", valueOf(input)},
                                     {"ROUTE_FIELD", "route"},
                                     {"HAZARDS", QVariantList{valueOf(cliffs)}},
                                     {"DATE", "2026-06-01"},
                                     {"OUTPUT", found}});
    QVERIFY2(checked.ok, qPrintable(checked.said()));
    QCOMPARE(checked.rows().size(), size_t(1));
    const QString name = checked.rows()[0].text("route");
    const auto annotated = [&](const QString &route, const QString &line) {
      const Layer legs = layer("legs", "LineString", crs, {field("route", FieldType::Text)}, {{wkt(line), {route}}});
      const Outcome outcome = run("brushline:annotatelegs", {{"INPUT", valueOf(legs)},
                                                             {"ROUTE_FIELD", "route"},
                                                             {"DATE", "2026-06-01"},
                                                             {"HAZARDS_FOUND", found},
                                                             {"OUTPUT", "memory:"}});
      if (!outcome.ok)
        throw std::runtime_error(outcome.said().toStdString());
      QStringList told;
      for (const OutputRow &row : outcome.rows())
        told << (row.text("warnings").contains("Take care on this leg: Red Cliff.") ? "care"
                 : row.text("warnings").contains("Red Cliff")                       ? "warned"
                                                                                    : "");
      return told.join(',') + (outcome.warnings.join(' ').contains("HAZARDS_FOUND") ? " and told" : "");
    };
    QCOMPARE(annotated(name, "LINESTRING(600000 5400000,600300 5400000)"), QString("warned"));
    QCOMPARE(annotated("another", "LINESTRING(600000 5400000,600300 5400000)"), QString(" and told"));
    QCOMPARE(annotated(name, "LINESTRING(600000 5400000,600300 5400050)"), QString(" and told"));
    // A point put in before: the cliff lies on the second leg now, and its metres would be wrong.
    QCOMPARE(annotated(name, "LINESTRING(600000 5400000,600050 5400000,600300 5400000)"), QString(",care"));
    QCOMPARE(annotated(name, "LINESTRING(600000 5400000,600090 5400060,600300 5400000)"), QString(", and told"));
    // Shortened from either end, with a part of the dangerous stretch (91 to 129 m) left on it; turned round; split;
    // begun farther back.
    QCOMPARE(annotated(name, "LINESTRING(600110 5400000,600300 5400000)"), QString("care"));
    QCOMPARE(annotated(name, "LINESTRING(600000 5400000,600100 5400000)"), QString("care"));
    QCOMPARE(annotated(name, "LINESTRING(600300 5400000,600000 5400000)"), QString("care"));
    QCOMPARE(annotated(name, "LINESTRING(600000 5400000,600100 5400000,600300 5400000)"), QString("care,care"));
    QCOMPARE(annotated(name, "LINESTRING(599900 5400000,600300 5400000)"), QString("care"));
    QCOMPARE(annotated(name, "LINESTRING(600000 5400000,600400 5400000)"), QString("warned"));
    // Legs that end before it, or begin after it, are not warned.
    QCOMPARE(annotated(name, "LINESTRING(600000 5400000,600080 5400000,600080 5400200)"), QString(", and told"));
    QCOMPARE(annotated(name, "LINESTRING(600140 5400000,600300 5400000)"), QString(" and told"));
  }

  void nothingFoundSaysSo() {
    const Layer input = routes();
    const Outcome outcome =
        run(id, {{"INPUT", valueOf(input)}, {"ROUTE_FIELD", "route"}, {"DATE", "2026-06-01"}, {"OUTPUT", "memory:"}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QVERIFY(outcome.rows().empty());
    QVERIFY(outcome.infos.join(' ').contains("does not mean"));
  }

  // Many legs among many lines: soon after it is cancelled it ends, and no file is left.
  void cancelled() {
    const Layer input =
        layer("ways", "LineString", crs, {field("route", FieldType::Text)}, latticeOfLines("way", {0, 0}, {300, 200}));
    const Layer wires = lines("wires", latticeOfLines("wire fence", {0, 90}, {90, 0}));
    for (const double percent : {0.0, 30.0, 80.0}) {
      const double seconds = secondsAfterCancel(
          id, {{"INPUT", valueOf(input)}, {"DISTURBANCES", valueOf(wires)}, {"DATE", "2026-06-01"}}, percent);
      QVERIFY2(seconds < soon, qPrintable(QStringLiteral("%1 s at %2 %").arg(seconds).arg(percent)));
    }
  }

  void badInput() {
    const Layer input = routes();
    const Layer nameless = lines("wires", {{wkt("LINESTRING(0 0,1 1)"), {"x"}}}, "what");
    const Outcome outcome =
        run(id, {{"INPUT", valueOf(input)}, {"DISTURBANCES", valueOf(nameless)}, {"OUTPUT", "memory:"}});
    QVERIFY(!outcome.accepted);
    QVERIFY2(outcome.refusal.contains("KIND_FIELD"), qPrintable(outcome.refusal));
    const Outcome slope = run(id, {{"INPUT", valueOf(input)}, {"SLOPE_LIMIT", 0}, {"OUTPUT", "memory:"}});
    QVERIFY2(slope.refusal.contains("SLOPE_LIMIT"), qPrintable(slope.refusal));
  }
};

BRUSHLINE_HOST_TEST_MAIN(CheckHazardsAlgorithmTest)
#include "check_hazards_algorithm_test.moc"
