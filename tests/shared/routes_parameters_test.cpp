// SPDX-License-Identifier: GPL-2.0-or-later
// Annotated legs as routes: what one algorithm writes, the next reads as the same routes.
#include "support/host_fixture.h"

using namespace brushline::test;

namespace {
const QString crs = QStringLiteral("EPSG:32621");
const QString there = QStringLiteral("LINESTRING(600000 5400000,600300 5400000,600300 5400200,600150 5400350)");

Layer routes(const QStringList &texts, const QStringList &names) {
  std::vector<Row> rows;
  for (int i = 0; i < texts.size(); ++i)
    rows.push_back({wkt(texts.at(i)), {names.at(i)}});
  return layer(QStringLiteral("routes"), QStringLiteral("LineString"), crs, {field("route", FieldType::Text)}, rows);
}

Layer twoWalkers() {
  return table(QStringLiteral("walkers"), {field("walker", FieldType::Text), field("paces_100m", FieldType::Real)},
               {{"Ann", 130}, {"Bo", 151}});
}
} // namespace

class RoutesParametersTest : public QObject {
  Q_OBJECT
private slots:
  void annotatedAgain_data() {
    QTest::addColumn<int>("before"); // DIRECTION of the first run
    QTest::addColumn<int>("now");    // and of the second
    QTest::addColumn<int>("plain");  // of the run on the plain route that gives the same
    QTest::newRow("out") << 0 << 0 << 0;
    QTest::newRow("back stays back") << 1 << 0 << 1;
    QTest::newRow("both stay") << 2 << 0 << 2;
    QTest::newRow("turned round") << 0 << 1 << 1;
  }
  // Numbers, directions and what adds up along a route are those of the plain route, whatever the walkers.
  void annotatedAgain() {
    QFETCH(int, before);
    QFETCH(int, now);
    QFETCH(int, plain);
    const Layer input = routes({there}, {"north loop"}), walkers = twoWalkers();
    QVariantMap parameters{{"INPUT", valueOf(input)},     {"ROUTE_FIELD", "route"}, {"DIRECTION", before},
                           {"WALKERS", valueOf(walkers)}, {"DATE", "2026-06-15"},   {"OUTPUT", path("legs.gpkg")}};
    annotate(parameters);
    for (const QVariant &field : {QVariant(), QVariant("route")}) {
      const Output again = annotate({{"INPUT", path("legs.gpkg")},
                                     {"ROUTE_FIELD", field},
                                     {"DIRECTION", now},
                                     {"DATE", "2026-06-15"},
                                     {"DRIFT", path("drift.gpkg")},
                                     {"OUTPUT", path("again.gpkg")}})
                               .output();
      const Output expected = annotate({{"INPUT", valueOf(input)},
                                        {"ROUTE_FIELD", "route"},
                                        {"DIRECTION", plain},
                                        {"DATE", "2026-06-15"},
                                        {"OUTPUT", path("plain.gpkg")}})
                                  .output();
      QCOMPARE(again.texts("leg"), expected.texts("leg"));
      QCOMPARE(again.texts("direction"), expected.texts("direction"));
      QVERIFY(again.sameBits(expected));
    }
  }

  // The warning of the gap between two parts stays, and so do the numbers.
  void acrossAGap() {
    const Layer input = layer("routes", "MultiLineString", crs, {field("route", FieldType::Text)},
                              {{wkt("MULTILINESTRING((600000 5400000,600300 5400000),(600337 5400000,600500 5400100,"
                                    "600500 5400300))"),
                                {"ford"}}});
    const QVariantMap plain{{"INPUT", valueOf(input)}, {"ROUTE_FIELD", "route"}, {"DATE", "2026-06-15"}};
    QVariantMap first = plain, second = plain;
    first["OUTPUT"] = path("first.gpkg");
    const Output legs = annotate(first).output();
    QVERIFY(legs.rows[1].text("warnings").contains("37 m"));
    second["INPUT"] = path("first.gpkg");
    second["OUTPUT"] = path("second.gpkg");
    QVERIFY(annotate(second).output().sameBits(legs));
  }

  void aStretchKeepsItsNumbers() {
    const Layer input = routes({there}, {"north loop"});
    annotate({{"INPUT", valueOf(input)}, {"ROUTE_FIELD", "route"}, {"OUTPUT", path("legs.gpkg")}});
    const Outcome outcome =
        annotate({{"INPUT", path("legs.gpkg") + "|subset=leg > 1"}, {"OUTPUT", path("again.gpkg")}});
    QCOMPARE(outcome.output().texts("leg"), (QStringList{"2", "3"}));
    QCOMPARE(outcome.results.value("ROUTE_COUNT").toInt(), 1);
  }

  // Legs that do not follow one another are routes of their own, and whoever sorted the layer is told.
  void outOfOrder_data() {
    QTest::addColumn<QStringList>("order"); // "leg walker line direction"
    QTest::addColumn<int>("routes");
    QTest::addColumn<QString>("told"); // empty: nothing
    const QString two = "2 Ann B out", three = "3 Ann C out";
    QTest::newRow("in order") << QStringList{"1 Ann A out", two, three} << 1 << "";
    QTest::newRow("by walker") << QStringList{"1 Ann A out", two, three, "1 Bo A out", "2 Bo B out"} << 1 << "";
    QTest::newRow("out and back") << QStringList{"1 Ann A out", two, "1 Ann B back", "2 Ann A back"} << 2 << "";
    QTest::newRow("two routes") << QStringList{"1 Ann A out", two, "1 Ann C out"} << 2 << "";
    QTest::newRow("a stretch") << QStringList{two, three} << 1 << "";
    QTest::newRow("pieces") << QStringList{"1 Ann A out", "1 Ann B out", "2 Ann C out"} << 2 << "";
    QTest::newRow("backwards") << QStringList{three, two, "1 Ann A out"} << 3 << "1 leg(s)";
    QTest::newRow("one is missing") << QStringList{"1 Ann A out", three} << 2 << "leg 3 of route “loop” after leg 1";
    QTest::newRow("shuffled") << QStringList{two, "1 Ann A out", three, "2 Ann C out"} << 4 << "2 leg(s)";
  }
  void outOfOrder() {
    QFETCH(QStringList, order);
    QFETCH(int, routes);
    QFETCH(QString, told);
    const QMap<QString, QString> lines{{"A", "LINESTRING(600000 5400000,600300 5400000)"},
                                       {"B", "LINESTRING(600300 5400000,600300 5400200)"},
                                       {"C", "LINESTRING(600300 5400200,600150 5400350)"}};
    std::vector<Row> rows;
    for (const QString &each : order) {
      const QStringList cells = each.split(' ');
      rows.push_back({wkt(lines[cells[2]]), {"loop", cells[0].toInt(), cells[1], cells[3]}});
    }
    const Layer legs = layer("legs", "LineString", crs,
                             {field("route", FieldType::Text), field("leg", FieldType::Integer),
                              field("walker", FieldType::Text), field("direction", FieldType::Text)},
                             rows);
    const Outcome outcome = annotate({{"INPUT", valueOf(legs)}, {"OUTPUT", path("ordered.gpkg")}});
    QCOMPARE(outcome.results.value("ROUTE_COUNT").toInt(), routes);
    QCOMPARE(outcome.warnings.filter("do not follow").size(), told.isEmpty() ? 0 : 1);
    QVERIFY2(outcome.said().contains(told), qPrintable(outcome.said()));
  }

  // Two routes with one name: the second's legs are looked at too.
  void oneNameTwice() {
    const QString elsewhere = "LINESTRING(610000 5400000,610300 5400000)";
    const Layer input = routes({there, elsewhere}, {"loop", "loop"});
    annotate({{"INPUT", valueOf(input)}, {"ROUTE_FIELD", "route"}, {"OUTPUT", path("legs.gpkg")}});
    const Layer wires = layer("wires", "LineString", crs, {field("kind", FieldType::Text)},
                              {{wkt("LINESTRING(610100 5399900,610100 5400100)"), {"wire fence"}}});
    QCOMPARE(hazardsOn(path("legs.gpkg"), wires, "DISTURBANCES").size(), size_t(1));
  }

  // Each piece of a detour is looked at, once for all walkers.
  void piecesOfADetour() {
    const Layer input = routes({"LINESTRING(600000 5400000,600300 5400000)"}, {"north loop"}), walkers = twoWalkers();
    const Layer pond = layer(
        "ponds", "Polygon", crs, {field("name", FieldType::Text)},
        {{wkt("POLYGON((600100 5399980,600150 5399980,600150 5400020,600100 5400020,600100 5399980))"), {"Tarn"}}});
    const Outcome detour = run("brushline:detourlegs", {{"INPUT", valueOf(input)},
                                                        {"ROUTE_FIELD", "route"},
                                                        {"OBSTACLES", valueOf(pond)},
                                                        {"WALKERS", valueOf(walkers)},
                                                        {"DATE", "2026-06-15"},
                                                        {"OUTPUT", path("detour.gpkg")}});
    QVERIFY2(detour.ok, qPrintable(detour.said()));
    QCOMPARE(detour.rows().size(), size_t(10)); // five pieces, two walkers
    // Beside the piece that goes past the pond, on whichever side that is.
    std::vector<Row> fences;
    for (const char *text : {"LINESTRING(600120 5400025,600130 5400025)", "LINESTRING(600120 5399975,600130 5399975)"})
      fences.push_back({wkt(text), {"wire fence"}});
    const Layer wires = layer("wires", "LineString", crs, {field("kind", FieldType::Text)}, fences);
    const std::vector<OutputRow> found = hazardsOn(path("detour.gpkg"), wires, "DISTURBANCES");
    QVERIFY(!found.empty());
    QCOMPARE(found.front().text("leg"), QString("1"));
  }

  // An aim is a line of each walker's own.
  void linesOfTheirOwn() {
    const QList<QgsField> fields{field("route", FieldType::Text), field("leg", FieldType::Integer),
                                 field("walker", FieldType::Text), field("direction", FieldType::Text)};
    const Layer legs = layer("legs", "LineString", crs, fields,
                             {{wkt("LINESTRING(600000 5400000,600300 5400000)"), {"aim", 1, "Ann", "out"}},
                              {wkt("LINESTRING(600000 5400000,600000 5400300)"), {"aim", 1, "Bo", "out"}},
                              {wkt("LINESTRING(600000 5400000,600000 5400300)"), {"aim", 1, "Cy", "out"}}});
    const Layer wires = layer("wires", "LineString", crs, {field("kind", FieldType::Text)},
                              {{wkt("LINESTRING(599900 5400200,600100 5400200)"), {"wire fence"}}});
    save(legs, path("aims.gpkg"));
    QCOMPARE(hazardsOn(path("aims.gpkg"), wires, "DISTURBANCES").size(), size_t(1));
  }

private:
  QString path(const QString &file) const { return mFolder.filePath(file); }

  static Outcome annotate(const QVariantMap &parameters) {
    Outcome outcome = run("brushline:annotatelegs", parameters);
    if (!outcome.ok)
      throw std::runtime_error(outcome.said().toStdString());
    return outcome;
  }

  std::vector<OutputRow> hazardsOn(const QString &legs, const Layer &things, const char *key) const {
    const Outcome outcome =
        run("brushline:checkhazards",
            {{"INPUT", legs}, {key, valueOf(things)}, {"DATE", "2026-06-15"}, {"OUTPUT", path("hazards.gpkg")}});
    if (!outcome.ok)
      throw std::runtime_error(outcome.said().toStdString());
    return outcome.rows();
  }

  QTemporaryDir mFolder;
};

BRUSHLINE_HOST_TEST_MAIN(RoutesParametersTest)
#include "routes_parameters_test.moc"
