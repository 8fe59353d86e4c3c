// SPDX-License-Identifier: GPL-2.0-or-later
#include "support/host_fixture.h"

#include <cmath>

using namespace brushline::test;

namespace {
const QString id = QStringLiteral("brushline:choosemarks");
const QString crs = QStringLiteral("EPSG:32621");

Layer route() {
  return layer(QStringLiteral("routes"), QStringLiteral("LineString"), crs, {field("route", FieldType::Text)},
               {{wkt(QStringLiteral("LINESTRING(600000 5400000,600100 5400000,600100 5400060)")), {"north loop"}}});
}

Layer trees(const std::vector<std::pair<QString, QString>> &nameAndPoint, const QString &system = crs) {
  std::vector<Row> rows;
  for (const auto &[name, point] : nameAndPoint)
    rows.push_back({wkt(point), {name.isEmpty() ? QVariant() : QVariant(name)}});
  return layer(QStringLiteral("trees"), QStringLiteral("Point"), system, {field("name", FieldType::Text)}, rows);
}

Layer thicket() {
  return layer(QStringLiteral("cover"), QStringLiteral("Polygon"), crs, {field("class", FieldType::Text)},
               {{wkt(QStringLiteral("POLYGON((600040 5399900,600060 5399900,600060 5400200,600040 5400200,600040 5399900))")),
                 {"thicket"}}});
}
} // namespace

class ChooseMarksAlgorithmTest : public QObject {
  Q_OBJECT
private slots:
  void chainWithSightingsAndGaps() {
    const Layer routes = route(), cover = thicket();
    const Layer candidates = trees({{"lone pine", "POINT(600030 5400004)"},
                                    {"stump", "POINT(600080 5399996)"},
                                    {"far boulder", "POINT(600080 5400040)"},
                                    {QString(), "POINT(600101 5400030)"}});
    const Outcome outcome = run(id, {{"INPUT", valueOf(routes)},
                                     {"ROUTE_FIELD", "route"},
                                     {"CANDIDATES", valueOf(candidates)},
                                     {"MAX_OFFSET", 10},
                                     {"COVER", valueOf(cover)},
                                     {"DATE", "2026-06-01"},
                                     {"OUTPUT", "memory:"},
                                     {"SIGHTINGS", "memory:"},
                                     {"GAPS", "memory:"}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    const auto &marks = outcome.rows();
    for (const char *name : {"route", "leg", "walker", "mark", "name", "at_m", "paces", "sight_m", "offset_m"})
      QVERIFY2(outcome.output().fields.lookupField(QString::fromLatin1(name)) >= 0, name);
    QCOMPARE(marks.front().text("name"), QStringLiteral("lone pine"));
    QVERIFY(std::abs(marks.front().number("at_m") - 30) < 0.1);
    QVERIFY(std::abs(marks.front().number("offset_m") + 4) < 0.1); // 4 m to the left of a leg that runs east
    int leg = 0, mark = 0, spaced = 0;
    double paces = 0;
    for (const OutputRow &row : marks) {
      if (row.number("leg") != leg) {
        leg = int(row.number("leg"));
        mark = 0;
        paces = 0;
      }
      QCOMPARE(int(row.number("mark")), ++mark);
      QVERIFY(row.number("paces") > paces);
      paces = row.number("paces");
      spaced += row.number("candidate") == 0;
      QVERIFY(row.text("name") != QStringLiteral("far boulder"));
      QCOMPARE(row.text("route"), QStringLiteral("north loop"));
    }
    QCOMPARE(leg, 2);
    QVERIFY(spaced > 4); // through 20 m of thicket, and the two ends

    const auto &sightings = outcome.rows("SIGHTINGS");
    QCOMPARE(sightings.size(), marks.size());
    double metres = 0;
    for (size_t i = 0; i < sightings.size(); ++i) {
      QCOMPARE(sightings[i].number("mark"), marks[i].number("mark"));
      QVERIFY(std::abs(sightings[i].geometry.length() - sightings[i].number("dist_m")) < 0.1);
      metres += sightings[i].number("dist_m");
      QVERIFY(std::remainder(sightings[i].number("dial"), 2) == 0);
    }
    QVERIFY(metres > 160 && metres < 185);
    // East from the start and a little to the left of it; declination there about 17 west: the leg's dial is near 107.
    QVERIFY(sightings.front().number("true_brg") < 91.5 && sightings.front().number("true_brg") > 80);
    QVERIFY(std::abs(sightings.front().number("mag_brg") - sightings.front().number("true_brg") - 17) < 1);

    const auto &gaps = outcome.rows("GAPS");
    QCOMPARE(gaps.size(), size_t(1));
    QVERIFY(gaps.front().number("from_m") >= 29 && gaps.front().number("to_m") <= 101);
    QVERIFY(outcome.said().contains(QStringLiteral("gap")));
  }

  void annotatedLegsAreTakenOnce() {
    const Layer routes = route();
    const Layer candidates = trees({{"lone pine", "POINT(600030 5400004)"}});
    const Layer walkers = table(QStringLiteral("walkers"), {field("walker", FieldType::Text)}, {{"Ann"}, {"Bo"}});
    const Outcome legs = run(QStringLiteral("brushline:annotatelegs"), {{"INPUT", valueOf(routes)},
                                                                         {"ROUTE_FIELD", "route"},
                                                                         {"WALKERS", valueOf(walkers)},
                                                                         {"DATE", "2026-06-01"},
                                                                         {"OUTPUT", "memory:"}});
    QVERIFY2(legs.ok, qPrintable(legs.said()));
    QCOMPARE(legs.rows().size(), size_t(4));
    QList<QgsField> fields;
    for (const QgsField &one : legs.output().fields)
      fields << one;
    std::vector<Row> rows;
    for (const OutputRow &row : legs.rows()) {
      QVariantList values;
      for (const QgsField &one : fields)
        values << row.values.value(one.name());
      rows.push_back({row.geometry, values});
    }
    const Layer annotated = layer(QStringLiteral("legs"), QStringLiteral("LineString"), crs, fields, rows);
    const Outcome outcome = run(id, {{"INPUT", valueOf(annotated)},
                                     {"CANDIDATES", valueOf(candidates)},
                                     {"DATE", "2026-06-01"},
                                     {"OUTPUT", "memory:"}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(outcome.output().texts("leg"), (QStringList{"1", "1", "2"})); // the pine, the end; the second leg's end
    QCOMPARE(outcome.rows().front().text("route"), QStringLiteral("north loop"));
  }

  // The pine lies 2 m to the left of the first leg out, and to the right of the second leg back.
  void theWayBackIsToldAsSuch() {
    const QTemporaryDir folder;
    const QString legs = folder.filePath("legs.gpkg"), sightings = folder.filePath("sightings.gpkg");
    const Layer routes = layer(QStringLiteral("routes"), QStringLiteral("LineString"), crs, {},
                               {{wkt("LINESTRING(600000 5400000,600100 5400000,600100 5400100)"), {}}});
    const Layer candidates = trees({{"pine", "POINT(600050 5400002)"}});
    const Outcome annotated =
        run("brushline:annotatelegs",
            {{"INPUT", valueOf(routes)}, {"DIRECTION", 2}, {"DATE", "2026-06-01"}, {"OUTPUT", legs}},
            {nullptr, nullptr, false, true});
    QVERIFY2(annotated.ok, qPrintable(annotated.said()));
    const Outcome outcome = run(id, {{"INPUT", legs},
                                     {"CANDIDATES", valueOf(candidates)},
                                     {"SPACING_MAX", 60},
                                     {"DATE", "2026-06-01"},
                                     {"OUTPUT", "memory:"},
                                     {"SIGHTINGS", sightings},
                                     {"GAPS", "memory:"}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QStringList pines;
    for (const OutputRow &row : outcome.rows())
      if (row.text("name") == "pine")
        pines << QStringLiteral("%1%2 %3 %4")
                     .arg(row.text("direction"), row.text("leg"))
                     .arg(std::lround(row.number("at_m")))
                     .arg(std::lround(row.number("offset_m")));
    QCOMPARE(pines, QStringList({"out1 50 -2", "back2 50 2"}));
    QCOMPARE(outcome.output("SIGHTINGS").texts("direction"), outcome.output().texts("direction"));
    QCOMPARE(outcome.output("GAPS").texts("leg"), QStringList({"2", "1"}));
    QCOMPARE(outcome.output("GAPS").texts("direction"), QStringList({"out", "back"}));

    // Sightings have the fields of annotated legs, but are routes like others.
    const Outcome again =
        run("brushline:annotatelegs", {{"INPUT", sightings}, {"DATE", "2026-06-01"}, {"OUTPUT", "memory:"}});
    QVERIFY2(again.ok, qPrintable(again.said()));
    QCOMPARE(again.rows().size(), outcome.rows("SIGHTINGS").size());
    for (size_t i = 0; i < again.rows().size(); ++i) {
      QCOMPARE(again.rows()[i].text("route"), QString::number(i + 1));
      QCOMPARE(again.rows()[i].text("leg"), QString("1"));
    }
  }

  // A sighting is dialled and counted like a leg from mark to mark, whatever the compass.
  void sightingsAreDialledAsLegs() {
    const QTemporaryDir folder;
    const Layer routes = route();
    const Layer candidates = trees({{"lone pine", "POINT(600030 5400004)"}, {"stump", "POINT(600080 5399996)"}});
    for (const int north : {0, 1, 2})
      for (const auto &[unit, step] : {std::pair(0, 2.0), std::pair(1, 20.0), std::pair(2, 1.0)}) {
        const QString sightings = folder.filePath(QStringLiteral("sightings %1 %2.gpkg").arg(north).arg(unit));
        const QVariantMap compass = {{"NORTH", north},
                                     {"DIAL_UNIT", unit},
                                     {"DIAL_STEP", step},
                                     {"PACES_PER_100M", 140},
                                     {"DATE", "2026-06-01"},
                                     {"OUTPUT", "memory:"}};
        QVariantMap parameters = compass;
        parameters["INPUT"] = valueOf(routes);
        parameters["CANDIDATES"] = valueOf(candidates);
        parameters["SPACING_MAX"] = 40;
        parameters["SIGHTINGS"] = sightings;
        const Outcome outcome = run(id, parameters);
        QVERIFY2(outcome.ok, qPrintable(outcome.said()));
        parameters = compass;
        parameters["INPUT"] = sightings;
        const Outcome legs = run(QStringLiteral("brushline:annotatelegs"), parameters);
        QVERIFY2(legs.ok, qPrintable(legs.said()));
        const auto &sighted = outcome.rows("SIGHTINGS");
        QVERIFY(sighted.size() > 3);
        QCOMPARE(legs.rows().size(), sighted.size());
        for (size_t i = 0; i < sighted.size(); ++i) {
          QCOMPARE(sighted[i].number("dial"), legs.rows()[i].number("dial"));
          QCOMPARE(sighted[i].number("paces"), std::round(1.4 * sighted[i].number("dist_m")));
          for (const char *name : {"true_brg", "mag_brg", "dist_m"})
            QVERIFY(std::abs(sighted[i].number(name) - legs.rows()[i].number(name)) < 1e-5);
        }
      }
  }

  // A thicket lets one see 3 m, and marks are to be 5 m apart at the least: none of those in it is seen from the last.
  void unseenMarksAreTold() {
    const Layer routes = route(), cover = thicket(), candidates = trees({{"lone pine", "POINT(600030 5400004)"}});
    const Layer dense = table(QStringLiteral("dense"),
                              {field("class", FieldType::Text), field("sight_m", FieldType::Real)}, {{"thicket", 3}});
    QVariantMap parameters = {{"INPUT", valueOf(routes)}, {"CANDIDATES", valueOf(candidates)},
                              {"COVER", valueOf(cover)},  {"COVER_TABLE", valueOf(dense)},
                              {"SPACING_MIN", 5},         {"DATE", "2026-06-01"},
                              {"OUTPUT", "memory:"},      {"SIGHTINGS", "memory:"}};
    const Outcome outcome = run(id, parameters);
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    int unseen = 0;
    for (const OutputRow &row : outcome.rows("SIGHTINGS"))
      unseen += !row.null("sight_m") && row.number("sight_m") < row.number("dist_m");
    QVERIFY(unseen > 2);
    QVERIFY2(outcome.said().contains(QStringLiteral("%1 mark(s) cannot be seen").arg(unseen)) ||
                 outcome.said().contains(QStringLiteral("%1 marks cannot be seen").arg(unseen)),
             qPrintable(outcome.said()));
    parameters["SPACING_MIN"] = 1;
    const Outcome seen = run(id, parameters);
    QVERIFY2(seen.ok, qPrintable(seen.said()));
    QVERIFY2(!seen.said().contains(QStringLiteral("cannot be seen")), qPrintable(seen.said()));
  }

  void refusals() {
    const Layer routes = route(), candidates = trees({{"lone pine", "POINT(600030 5400004)"}});
    const Layer nowhere = trees({{"lone pine", "POINT(600030 5400004)"}}, QString());
    const std::vector<std::pair<QVariantMap, QStringList>> cases = {
        {{{"INPUT", valueOf(routes)}, {"OUTPUT", "memory:"}}, {"CANDIDATES"}},
        {{{"INPUT", valueOf(routes)}, {"CANDIDATES", valueOf(nowhere)}, {"OUTPUT", "memory:"}},
         {"CANDIDATES", "trees", "coordinate reference system"}},
        {{{"INPUT", valueOf(routes)}, {"CANDIDATES", valueOf(candidates)}, {"MARK_NAME", "nick"}, {"OUTPUT", "memory:"}},
         {"MARK_NAME", "nick", "name"}},
        {{{"INPUT", valueOf(routes)}, {"CANDIDATES", valueOf(candidates)}, {"MAX_OFFSET", -1}, {"OUTPUT", "memory:"}},
         {"MAX_OFFSET"}},
    };
    for (const auto &[parameters, words] : cases) {
      const Outcome outcome = run(id, parameters);
      QVERIFY2(!outcome.ok, qPrintable(words.join(QLatin1Char(' '))));
      for (const QString &word : words)
        QVERIFY2(outcome.said().contains(word), qPrintable(word + QStringLiteral(" in: ") + outcome.said()));
    }
  }

  void candidatesWithoutPlacesAreCounted() {
    const Layer routes = route();
    const Layer candidates = layer(QStringLiteral("trees"), QStringLiteral("Point"), crs, {field("name", FieldType::Text)},
                                   {{QgsGeometry(), {"ghost"}}, {wkt(QStringLiteral("POINT(600030 5400004)")), {"pine"}}});
    const Outcome outcome = run(id, {{"INPUT", valueOf(routes)}, {"CANDIDATES", valueOf(candidates)}, {"OUTPUT", "memory:"}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QVERIFY(outcome.warnings.join(QLatin1Char(' ')).contains(QStringLiteral("1 point")));
    QVERIFY(outcome.output().texts("name").contains(QStringLiteral("pine")));
  }
};

BRUSHLINE_HOST_TEST_MAIN(ChooseMarksAlgorithmTest)
#include "choose_marks_algorithm_test.moc"
