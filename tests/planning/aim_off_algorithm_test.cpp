// SPDX-License-Identifier: GPL-2.0-or-later
#include "support/host_fixture.h"
#include "support/near.h"

#include <QFile>
#include <cmath>

using namespace brushline::test;

namespace {
const QString id = QStringLiteral("brushline:aimoff");
const QString crs = QStringLiteral("EPSG:32621");

Layer points(const char *name, const std::vector<std::pair<QString, QString>> &nameAndPlace,
             const QString &system = crs) {
  std::vector<Row> rows;
  for (const auto &[text, place] : nameAndPlace)
    rows.push_back({wkt(place), {text.isEmpty() ? QVariant() : QVariant(text), "hut"}});
  return layer(QString::fromLatin1(name), QStringLiteral("Point"), system,
               {field("name", FieldType::Text), field("to", FieldType::Text)}, rows);
}
Layer lines(const std::vector<std::pair<QString, QString>> &nameAndLine, const QString &system = crs,
            const QString &type = QStringLiteral("LineString")) {
  std::vector<Row> rows;
  for (const auto &[text, drawn] : nameAndLine)
    rows.push_back({wkt(drawn), {text.isEmpty() ? QVariant() : QVariant(text)}});
  return layer(QStringLiteral("trails"), type, system, {field("name", FieldType::Text)}, rows);
}
Layer trail() { return lines({{"Ridge Trail", "LINESTRING(595000 5401000,605000 5401000)"}}); }
Layer camp() { return points("starts", {{"Camp", "POINT(600000 5400000)"}}); }
Layer hut() { return points("huts", {{"hut", "POINT(600000 5401000)"}}); }

QVariantMap with(const Layer &starts, const Layer &trails, QVariantMap more = {}) {
  more.insert(QStringLiteral("STARTS"), valueOf(starts));
  more.insert(QStringLiteral("LINES"), valueOf(trails));
  if (!more.contains(QStringLiteral("DATE")))
    more.insert(QStringLiteral("DATE"), QStringLiteral("2026-06-01"));
  if (!more.contains(QStringLiteral("OUTPUT")))
    more.insert(QStringLiteral("OUTPUT"), QStringLiteral("memory:"));
  return more;
}
} // namespace

class AimOffAlgorithmTest : public QObject {
  Q_OBJECT
private slots:
  void legWithItsTurn() {
    const Layer starts = camp(), trails = trail(), huts = hut(),
                beyond = lines({{"Mill Road", "LINESTRING(595000 5401250,605000 5401250)"}});
    const Outcome outcome =
        run(id, with(starts, trails, {{"DESTINATIONS", valueOf(huts)}, {"CATCHING", valueOf(beyond)}, {"SIDE", 1}}));
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(outcome.rows().size(), size_t(1));
    const OutputRow &row = outcome.rows().front();
    QCOMPARE(row.text("route"), QStringLiteral("Camp"));
    QCOMPARE(row.text("from_name"), QStringLiteral("Camp"));
    QCOMPARE(row.text("to_name"), QStringLiteral("Ridge Trail"));
    QCOMPARE(row.text("line"), QStringLiteral("Ridge Trail"));
    QCOMPARE(row.text("dest_name"), QStringLiteral("hut"));
    QCOMPARE(row.text("side"), QStringLiteral("left"));
    QCOMPARE(row.text("turn"), QStringLiteral("right"));
    QVERIFY(row.number("side_prob") >= 0.95 && row.number("hit_prob") >= row.number("side_prob"));
    QVERIFY(std::abs(row.number("miss_prob") - (1 - row.number("hit_prob"))) < 1e-12);
    QCOMPARE(row.number("aim_brg"), row.number("true_brg"));
    QVERIFY(std::abs(std::remainder(row.number("dial") - row.number("mag_brg"), 360)) < 1e-6); // on the dial
    QCOMPARE(std::remainder(row.number("dial"), 2), 0.0);
    QVERIFY(std::abs(row.number("offset_m") - 1000 * std::tan(row.number("offset_deg") * std::acos(-1.0) / 180)) < 1);
    // The drawn leg ends on the trail, to the west of the hut by the way along the line (grid metres, scale 0.9997).
    const auto *drawn = row.geometry.constGet();
    const QgsPoint end = drawn->vertexAt(QgsVertexId(0, 0, 1));
    QVERIFY(std::abs(end.y() - 5401000) < 0.05);
    QVERIFY(std::abs(600000 - end.x() - row.number("along_line_m")) < 0.1);
    QCOMPARE(int(row.number("line_paces")), int(std::lround(row.number("along_line_m") * 1.3)));
    QVERIFY(row.number("line_min") > 0);
    QVERIFY(row.text("catch").contains(QStringLiteral("Mill Road")));
    QVERIFY(std::abs(row.number("catch_m") - 250) < 2);
    QVERIFY(row.number("stop_paces") > 1.15 * row.number("paces"));
    QVERIFY(row.null("warnings"));
    for (const QgsField &one : outcome.output().fields)
      QVERIFY2(one.name().size() <= 10 || one.name() == QLatin1String("along_line_m"), qPrintable(one.name()));
  }

  // Bearings, dial, paces, sight and drift are those that annotatelegs gives for the same leg.
  void sameAsAnnotatedLegs() {
    const Layer starts = camp(), trails = trail(), huts = hut();
    const Layer cover = layer(
        QStringLiteral("cover"), QStringLiteral("Polygon"), crs, {field("class", FieldType::Text)},
        {{wkt("POLYGON((599000 5400300,601000 5400300,601000 5400500,599000 5400500,599000 5400300))"), {"thicket"}},
         {wkt("POLYGON((599000 5399000,601000 5399000,601000 5400300,599000 5400300,599000 5399000))"),
          {"open forest"}}});
    const Layer walkers =
        table(QStringLiteral("walkers"), {field("walker", FieldType::Text), field("bearing_error", FieldType::Real)},
              {{"Ann", 3}, {"Bo", 6}});
    const QVariantMap group = {{"COVER", valueOf(cover)}, {"WALKERS", valueOf(walkers)}};
    QVariantMap more = group;
    more.insert("DESTINATIONS", valueOf(huts));
    const Outcome aimed = run(id, with(starts, trails, more));
    QVERIFY2(aimed.ok, qPrintable(aimed.said()));
    QCOMPARE(aimed.output().texts("walker"), (QStringList{"Ann", "Bo"}));
    for (size_t i = 0; i < 2; ++i) {
      const OutputRow &row = aimed.rows()[i];
      const Layer route = layer(QStringLiteral("routes"), QStringLiteral("LineString"), crs,
                                {field("route", FieldType::Text)}, {{row.geometry, {"Camp"}}});
      QVariantMap parameters = group;
      parameters.insert("INPUT", valueOf(route));
      parameters.insert("ROUTE_FIELD", "route");
      parameters.insert("DATE", "2026-06-01");
      parameters.insert("OUTPUT", "memory:");
      const Outcome annotated = run(QStringLiteral("brushline:annotatelegs"), parameters);
      QVERIFY2(annotated.ok, qPrintable(annotated.said()));
      const OutputRow &leg = annotated.rows()[i];
      QCOMPARE(leg.text("walker"), row.text("walker"));
      for (const char *same :
           {"dial_text", "compass_pt", "paces", "cover", "marks", "leg", "direction", "date", "warnings"})
        QCOMPARE(row.text(same), leg.text(same));
      for (const char *near : {"true_brg", "grid_brg", "mag_brg", "converg", "decl", "decl_err", "back_dial", "dist_m",
                               "walk_min", "sight_m", "spacing_m", "drift_m", "along_m"})
        QVERIFY2(std::abs(row.number(near) - leg.number(near)) < 1e-5, near);
    }
  }

  void dialCountsFromItsNorth_data() {
    QTest::addColumn<int>("north");
    QTest::addColumn<int>("unit");
    QTest::addColumn<double>("circle");
    QTest::addColumn<double>("step");
    const double circles[] = {360, 6400, 400};
    const std::vector<double> steps[] = {{0.5, 2, 5}, {10, 100}, {1, 5}};
    for (int north = 0; north < 3; ++north)
      for (int unit = 0; unit < 3; ++unit)
        for (const double step : steps[unit])
          QTest::addRow("north %d, circle of %g, step %g", north, circles[unit], step)
              << north << unit << circles[unit] << step;
  }

  // The three norths lie far apart here: magnetic north 18 degrees west of true north, as given, and grid north 1.02
  // east of it (1.36 degrees from the zone's meridian times the sine of 48.7, by hand; 1.01 and 1.03 on 600 m to
  // either side). The drawn leg tells its grid bearing by plane trigonometry, and so where a dial has to stand.
  void dialCountsFromItsNorth() {
    QFETCH(int, north);
    QFETCH(int, unit);
    QFETCH(double, circle);
    QFETCH(double, step);
    const Layer starts = points("starts", {{"Camp", "POINT(600000 5400000)"},
                                           {"Spring", "POINT(599400 5400300)"},
                                           {"Rock", "POINT(600700 5401900)"}}),
                trails = trail(), huts = hut();
    const Outcome outcome = run(id, with(starts, trails,
                                         {{"DESTINATIONS", valueOf(huts)},
                                          {"DECLINATION", -18},
                                          {"NORTH", north},
                                          {"DIAL_UNIT", unit},
                                          {"DIAL_STEP", step}}));
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(outcome.output().texts("route"), (QStringList{"Camp", "Spring", "Rock"}));
    const char *const bearings[] = {"mag_brg", "true_brg", "grid_brg"};
    for (const OutputRow &row : outcome.rows()) {
      const std::string where = row.text("route").toStdString();
      const auto *drawn = row.geometry.constGet();
      const QgsPoint from = drawn->vertexAt(QgsVertexId(0, 0, 0)), to = drawn->vertexAt(QgsVertexId(0, 0, 1));
      const double grid = std::atan2(to.x() - from.x(), to.y() - from.y()) * 180 / std::acos(-1.0);
      const double fromNorth[] = {grid + 1.02 + 18, grid + 1.02, grid};
      for (int i = 0; i < 3; ++i)
        VERIFY_NEAR(turnBetween(row.number(bearings[i]), fromNorth[i]), 0, 0.015, where + " " + bearings[i]);
      VERIFY_NEAR(row.number("decl"), -18, 0, where);
      // An aim stands on the dial: a number of its graduation, and all of the bearing from its own north.
      const double dial = row.number("dial");
      VERIFY_AT(dial >= 0 && dial < circle, where);
      VERIFY_NEAR(dial, step * std::round(dial / step), 1e-9, where);
      VERIFY_NEAR(std::remainder(dial - row.number(bearings[north]) * circle / 360, circle), 0, 1e-5 * circle / 360,
                  where);
      VERIFY_NEAR(std::remainder(dial - fromNorth[north] * circle / 360, circle), 0, 0.015 * circle / 360, where);
      // The way back is half a circle on; meridians turn by 0.01 degrees on 1 km.
      VERIFY_NEAR(std::remainder(row.number("back_dial") - dial - circle / 2, circle), 0, 1e-9, where);
      QCOMPARE(row.text("dial_text"), step < 1
                                          ? QStringLiteral("%1°").arg(dial, 5, 'f', 1, QLatin1Char('0'))
                                          : QStringLiteral("%1%2")
                                                .arg(int(std::lround(dial)), unit == 1 ? 4 : 3, 10, QLatin1Char('0'))
                                                .arg(QStringList{"°", " mil", " gon"}[unit]));
    }
  }

  void theOnlyReadingByHand_data() {
    QTest::addColumn<int>("north");
    QTest::addColumn<int>("unit");
    QTest::addColumn<double>("step");
    QTest::addColumn<double>("dial");
    // Bearings that meet the trail to the left of the hut, from grid north 24.5 to 29.8 degrees; from true north 1.02
    // more, from magnetic north 18 more again.
    QTest::newRow("magnetic, 43.52 to 48.82 degrees") << 0 << 0 << 5.0 << 45.0;
    QTest::newRow("true, 25.52 to 30.82 degrees") << 1 << 0 << 5.0 << 30.0;
    QTest::newRow("grid, 24.5 to 29.8 degrees") << 2 << 0 << 5.0 << 25.0;
    QTest::newRow("magnetic, 774 to 868 mils") << 0 << 1 << 100.0 << 800.0;
    QTest::newRow("true, 454 to 548 mils") << 1 << 1 << 80.0 << 480.0;
    QTest::newRow("grid, 436 to 530 mils") << 2 << 1 << 100.0 << 500.0;
    QTest::newRow("magnetic, 48.4 to 54.2 gon") << 0 << 2 << 5.0 << 50.0;
    QTest::newRow("true, 28.4 to 34.2 gon") << 1 << 2 << 4.0 << 32.0;
    QTest::newRow("grid, 27.2 to 33.1 gon") << 2 << 2 << 5.0 << 30.0;
  }

  // A trail that begins a little to the left of the hut: of a coarse dial one number alone leads to it. The trail runs
  // 1000 m north of the camp: its end 1000 tan 24.5 = 455.73 m to the east, the hut 1000 tan 29.8 = 572.71 m.
  void theOnlyReadingByHand() {
    QFETCH(int, north);
    QFETCH(int, unit);
    QFETCH(double, step);
    QFETCH(double, dial);
    const Layer starts = camp(), huts = points("huts", {{"hut", "POINT(600572.71 5401000)"}}),
                trails = lines({{"Ridge Trail", "LINESTRING(600455.73 5401000,605000 5401000)"}});
    const Outcome outcome = run(id, with(starts, trails,
                                         {{"DESTINATIONS", valueOf(huts)},
                                          {"SIDE", 1},
                                          {"DECLINATION", -18},
                                          {"NORTH", north},
                                          {"DIAL_UNIT", unit},
                                          {"DIAL_STEP", step}}));
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(outcome.rows().size(), size_t(1));
    QCOMPARE(outcome.rows().front().number("dial"), dial);
  }

  void withoutDestinations() {
    const Layer starts = camp(), trails = trail();
    const Outcome outcome = run(id, with(starts, trails));
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    const OutputRow &row = outcome.rows().front();
    QCOMPARE(row.text("side"), QStringLiteral("centre"));
    for (const char *empty : {"turn", "offset_m", "offset_deg", "along_line_m", "line_paces", "line_min", "side_prob",
                              "dest_name", "catch", "catch_m"})
      QVERIFY2(row.null(empty), empty);
    QVERIFY(row.number("hit_prob") > 0.999);
    QVERIFY(row.number("dist_m") < 1001);
  }

  void pairsAndWhatIsPassedOver() {
    const Layer starts = layer(QStringLiteral("starts"), QStringLiteral("MultiPoint"), crs,
                               {field("name", FieldType::Text), field("to", FieldType::Text)},
                               {{wkt("MULTIPOINT((600000 5400000))"), {"A", "far hut"}},
                                {wkt("MULTIPOINT((600000 5400000))"), {"B", "off hut"}},
                                {wkt("MULTIPOINT((600000 5400000))"), {"C", "no hut"}},
                                {wkt("MULTIPOINT((600000 5400000))"), {"D", QVariant()}},
                                {wkt("MULTIPOINT((600000 5401000.3))"), {"E", "hut"}},
                                {QgsGeometry(), {"F", "hut"}},
                                {wkt("MULTIPOINT((600000 5380000))"), {"G", "hut"}}});
    const Layer trails = trail();
    const Layer huts = points(
        "huts",
        {{"hut", "POINT(600010 5401000)"}, {"far hut", "POINT(600800 5401015)"}, {"off hut", "POINT(600000 5400900)"}});
    const Outcome outcome = run(id, with(starts, trails, {{"DESTINATIONS", valueOf(huts)}, {"PAIR_FIELD", "to"}}));
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(outcome.output().texts("route"), QStringList{"A"});
    QCOMPARE(outcome.rows().front().text("dest_name"), QStringLiteral("far hut"));
    QVERIFY(outcome.rows().front().text("warnings").contains(QStringLiteral("15 m beside")));
    QCOMPARE(outcome.results.value("SKIPPED_COUNT").toInt(), 6);
    const QString told = outcome.warnings.join(QLatin1Char('\n'));
    for (const char *word : {"off hut”, which lies on no line", "no hut”, which is not among", "names no destination",
                             "lies on the line already", "has no geometry", "farther than 3000 m from its destination",
                             "6 start(s) passed over", "1 destination(s)"})
      QVERIFY2(told.contains(QString::fromUtf8(word)), qPrintable(QString::fromUtf8(word) + " in: " + told));
  }

  void severalStartsOfOneName() {
    const Layer starts =
        layer(QStringLiteral("starts"), QStringLiteral("MultiPoint"), crs, {field("name", FieldType::Text)},
              {{wkt("MULTIPOINT((600000 5400000),(600100 5400000))"), {"Camp"}},
               {wkt("MULTIPOINT((600200 5400000))"), {"Spring"}},
               {wkt("MULTIPOINT((600300 5400000),(600400 5400000))"), {QVariant()}}});
    const Layer trails = trail();
    const Outcome outcome = run(id, with(starts, trails));
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(outcome.output().texts("route"), (QStringList{"Camp 1", "Camp 2", "Spring", "4", "5"}));
    QCOMPARE(outcome.output().texts("from_name"), (QStringList{"Camp", "Camp", "Spring", "", ""}));
  }

  void shortTrailIsNotClaimedToBeSure() {
    const Layer starts = camp(), huts = hut();
    const Layer trails = lines({{"Short Path", "LINESTRING(599985 5401000,600015 5401000)"}});
    QVariantMap more{{"DESTINATIONS", valueOf(huts)}, {"SIDE", 2}, {"DIAL_STEP", 0.5}, {"NORTH", 1}};
    const Outcome outcome = run(id, with(starts, trails, more));
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    const OutputRow &row = outcome.rows().front();
    QVERIFY(row.number("side_prob") < 0.6);
    // The hut lies 1.02 degrees from true north (the convergence: 1.36 degrees from the zone's meridian times the sine
    // of 48.7, by hand), the path's end at 1.88: of a dial in 2 degrees neither 0 nor 2 meets it.
    more.insert("DIAL_STEP", 2);
    const Outcome off = run(id, with(starts, trails, more));
    QVERIFY(!off.ok);
    QVERIFY2(off.said().contains("no aim that stands on the dial") && off.said().contains("DIAL_STEP"),
             qPrintable(off.said()));
    QVERIFY(row.text("warnings").contains(QStringLiteral("Not sure")));
    QVERIFY(outcome.warnings.join(QLatin1Char(' ')).contains(QStringLiteral("1 start(s) have no aim as sure")));
  }

  void acrossTheAntimeridianAndAtThePole() {
    const QString degrees = QStringLiteral("EPSG:4326");
    const Layer starts = points("starts", {{"east", "POINT(179.9999 -17)"}, {"pole", "POINT(0 90)"}}, degrees);
    const Layer trails = lines({{"coast", "LINESTRING(-179.995 -17.05,-179.995 -17.01,-179.994 -16.95)"},
                                {"ice road", "LINESTRING(0 89.995,40 89.995,80 89.995)"}},
                               degrees);
    const Layer huts = points("huts", {{"hut", "POINT(-179.995 -17.001)"}, {"depot", "POINT(40 89.995)"}}, degrees);
    const Outcome outcome = run(id, with(starts, trails, {{"DESTINATIONS", valueOf(huts)}, {"SNAP_DEST", 100}}));
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(outcome.rows().size(), size_t(2));
    const OutputRow &east = outcome.rows()[0], &pole = outcome.rows()[1];
    QVERIFY(east.geometry.boundingBox().width() < 0.02); // the short way
    QVERIFY(east.number("true_brg") > 60 && east.number("true_brg") < 120);
    QVERIFY(std::isfinite(pole.number("true_brg")));
    QVERIFY(pole.number("dist_m") < 1000);
  }

  void severalPartsAndLinesOfNoUse() {
    const Layer starts = camp(), huts = hut();
    const Layer trails =
        lines({{"Ridge Trail", "MULTILINESTRING((595000 5401000,599990 5401000),(599990 5401000,605000 5401000))"},
               {"dot", "MULTILINESTRING((600000 5400500,600000 5400500))"},
               {QString(), QString()}},
              crs, QStringLiteral("MultiLineString"));
    const Outcome outcome = run(id, with(starts, trails, {{"DESTINATIONS", valueOf(huts)}, {"SIDE", 1}}));
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QVERIFY(outcome.rows().front().number("side_prob") >= 0.95);
  }

  void refusals() {
    const Layer starts = camp(), trails = trail(), huts = hut(), none = points("none", {}),
                nowhere = points("nowhere", {{"x", "POINT(1 1)"}}, QString()),
                off = points("off", {{"x", "POINT(600000 5400900)"}}), noTrails = lines({}),
                degrees = points("starts", {{"Camp", "POINT(-55 48)"}}, QStringLiteral("EPSG:4326")),
                farAway = points("far", {{"x", "POINT(600000 5300000)"}});
    const std::vector<std::pair<QVariantMap, QStringList>> cases = {
        {with(starts, trails, {{"CONFIDENCE", 1}}), {"CONFIDENCE", "0.95"}},
        {with(starts, trails, {{"CONFIDENCE", 0.5}}), {"CONFIDENCE"}},
        {with(starts, trails, {{"CONFIDENCE", 0}}), {"CONFIDENCE"}},
        {with(starts, trails, {{"REACH", 0}}), {"REACH"}},
        {with(starts, trails, {{"SIDE", 3}}), {"SIDE"}},
        {with(nowhere, trails), {"STARTS", "nowhere", "coordinate reference system"}},
        {with(starts, noTrails), {"LINES", "trails"}},
        {with(starts, trails, {{"DESTINATIONS", valueOf(off)}}), {"DESTINATIONS", "off", "20 m", "SNAP_DEST"}},
        {with(starts, trails, {{"DESTINATIONS", valueOf(none)}}), {"DESTINATIONS", "none"}},
        {with(starts, trails, {{"PAIR_FIELD", "to"}}), {"PAIR_FIELD", "DESTINATIONS"}},
        {with(starts, trails, {{"LINE_NAME", "nick"}}), {"LINE_NAME", "nick"}},
        {with(farAway, trails), {"None of the 1 start", "REACH"}},
        {with(starts, trails, {{"GRID_CRS", "EPSG:4326"}}), {"GRID_CRS", "EPSG:4326"}},
        {with(starts, trails, {{"OUTPUT", "/nowhere/at/all.gpkg"}}), {"OUTPUT"}},
    };
    for (const auto &[parameters, words] : cases) {
      const Outcome outcome = run(id, parameters);
      QVERIFY2(!outcome.ok, qPrintable(words.join(QLatin1Char(' '))));
      for (const QString &word : words)
        QVERIFY2(outcome.said().contains(word), qPrintable(word + QStringLiteral(" in: ") + outcome.said()));
    }
    const Outcome abroad = run(id, with(starts, trails, {{"GRID_CRS", "EPSG:32618"}}));
    QVERIFY2(abroad.ok && abroad.said().contains("outside the area that EPSG:32618 is made for"),
             qPrintable(abroad.said()));
    const Outcome empty = run(id, with(none, trails));
    QVERIFY2(empty.ok, qPrintable(empty.said()));
    QVERIFY(empty.rows().empty());
    QVERIFY(empty.said().contains(QStringLiteral("no features")));
  }

  // 3 000 starts, several threads: cancelled soon, nothing left; and the same rows each time.
  void manyStarts() {
    std::vector<std::pair<QString, QString>> all;
    for (int i = 0; i < 3000; ++i)
      all.emplace_back(QString::number(i),
                       QStringLiteral("POINT(%1 %2)").arg(600000 + i % 60 * 20).arg(5400000 + i / 60 * 15));
    const Layer starts = points("starts", all), trails = trail(), huts = hut();
    const QVariantMap parameters = with(starts, trails, {{"DESTINATIONS", valueOf(huts)}});
    const Outcome whole = run(id, parameters), again = run(id, parameters);
    QVERIFY2(whole.ok && again.ok, qPrintable(whole.said()));
    QCOMPARE(whole.rows().size(), size_t(3000));
    QVERIFY(whole.output().sameBits(again.output()));

    const QString path = QTemporaryDir().path() + QStringLiteral("-aim.gpkg");
    Ear ear;
    QObject::connect(&ear, &QgsFeedback::progressChanged, &ear, [&ear](double progress) {
      if (progress > 5)
        ear.cancel();
    });
    Surroundings surroundings;
    surroundings.ear = &ear;
    QVariantMap toFile = parameters;
    toFile.insert("OUTPUT", path);
    const Outcome cancelled = run(id, toFile, surroundings);
    QVERIFY(cancelled.seconds < std::max(0.5 * whole.seconds, 0.15));
    QVERIFY(!QFile::exists(path));
  }
};

BRUSHLINE_HOST_TEST_MAIN(AimOffAlgorithmTest)
#include "aim_off_algorithm_test.moc"
