// SPDX-License-Identifier: GPL-2.0-or-later
#include "quantities/decimal_year.h"
#include "support/check_values.h"
#include "support/host_fixture.h"
#include "support/installed_models.h"
#include "support/near.h"
#include "support/random.h"

#include <QDir>
#include <QElapsedTimer>
#include <qgsapplication.h>
#include <qgspoint.h>
#include <qgsprocessingalgorithm.h>
#include <qgsprocessingregistry.h>
#include <qgsvectorlayer.h>

#include <algorithm>
#include <cmath>
#include <set>

using namespace brushline;
using namespace brushline::test;

namespace {

const QString id = QStringLiteral("brushline:fieldatpoints");
const QStringList newFields = {"decl", "decl_err", "incl", "h_nt", "f_nt", "decl_year", "converg", "grid_mag", "zone"};

Layer points(const QString &crs, const std::vector<QString> &texts, const QString &type = QStringLiteral("Point")) {
  std::vector<Row> rows;
  for (const QString &text : texts)
    rows.push_back({wkt(text), {int(rows.size()) + 1}});
  return layer(QStringLiteral("my points"), type, crs, {field("nr", FieldType::Integer)}, rows);
}

Outcome at(const Layer &points, QVariantMap parameters = {}, const Surroundings &surroundings = {}) {
  for (const auto &[key, value] : std::initializer_list<std::pair<const char *, QVariant>>{
           {"INPUT", valueOf(points)}, {"DATE", "2026-06-20"}, {"OUTPUT", "memory:"}})
    if (!parameters.contains(QString::fromLatin1(key)))
      parameters[QString::fromLatin1(key)] = value;
  return run(id, parameters, surroundings);
}

bool allNull(const OutputRow &row) {
  return std::all_of(newFields.begin(), newFields.end(),
                     [&](const QString &name) { return row.null(name.toLatin1().constData()); });
}

} // namespace

class FieldAtPointsAlgorithmTest : public QObject {
  Q_OBJECT
  QTemporaryDir mFolder;

private slots:
  void face() {
    const QgsProcessingAlgorithm *algorithm = QgsApplication::processingRegistry()->algorithmById(id);
    QVERIFY(algorithm);
    QCOMPARE(algorithm->displayName(), QString("Magnetic field at points"));
    QCOMPARE(algorithm->groupId(), QString("magnetics"));
    QStringList keys;
    for (const auto *definition : algorithm->parameterDefinitions())
      keys << definition->name();
    QCOMPARE(keys, QStringList({"INPUT", "DATE", "DECLINATION", "FIELD_MODEL", "GRID_CRS", "KEEP_STYLE", "OUTPUT"}));
  }

  // The published test values of the model, by way of a layer of points with heights. Of the rows those whose moment is
  // the start of a year, since days are all one can give.
  void publishedValues() {
    const CheckValues values("magnetics/data/wmm2025_test_values.csv");
    std::set<int> years;
    int seen = 0;
    for (const CheckRow &row : values.rows())
      if (row.number("year") == std::floor(row.number("year")))
        years.insert(int(row.number("year")));
    for (const int year : years) {
      std::vector<const CheckRow *> expected;
      std::vector<QString> texts;
      for (const CheckRow &row : values.rows())
        if (row.number("year") == year) {
          expected.push_back(&row);
          texts.push_back(QStringLiteral("POINT Z(%1 %2 %3)")
                              .arg(row.number("lon_deg"))
                              .arg(row.number("lat_deg"))
                              .arg(row.number("height_km") * 1000));
        }
      const Layer layer = points(QStringLiteral("EPSG:4326"), texts, QStringLiteral("PointZ"));
      const Outcome outcome = at(layer, {{"DATE", QDate(year, 1, 1)}});
      QVERIFY2(outcome.ok, qPrintable(outcome.said()));
      QCOMPARE(outcome.rows().size(), expected.size());
      for (size_t i = 0; i < expected.size(); ++i) {
        const CheckRow &row = *expected[i];
        const OutputRow &found = outcome.rows()[i];
        const std::string where = "line " + std::to_string(row.line());
        VERIFY_NEAR(turnBetween(found.number("decl"), row.number("d_deg")), 0, values.tolerance("d_deg"), where);
        VERIFY_NEAR(found.number("incl"), row.number("i_deg"), values.tolerance("i_deg"), where);
        VERIFY_NEAR(found.number("h_nt"), row.number("h_nt"), values.tolerance("h_nt"), where);
        VERIFY_NEAR(found.number("f_nt"), row.number("f_nt"), values.tolerance("f_nt"), where);
        VERIFY_NEAR(found.number("decl_year"), row.number("ddot_deg_yr"), values.tolerance("ddot_deg_yr"), where);
        const double h = row.number("h_nt");
        QCOMPARE(found.text("zone"), QString(h < 2000 ? "blackout" : h < 6000 ? "caution" : "reliable"));
        VERIFY_NEAR(found.number("decl_err"), std::hypot(0.26, 5417 / h), 1e-6, where); // wmm_error.csv
        ++seen;
      }
    }
    QCOMPARE(seen, 50);
  }

  // Snyder's example and the rest, with the grid given.
  void publishedConvergences() {
    const CheckValues values("shared/data/grid_convergence.csv");
    for (const CheckRow &row : values.rows()) {
      const QString crs = QString::fromStdString(row.text("crs"));
      QgsCoordinateReferenceSystem grid(crs);
      if (!grid.isValid())
        grid.createFromProj(crs);
      QVERIFY2(grid.isValid(), qPrintable(crs));
      // On the WGS84 ellipsoid: so a place on that of 1866 is the same by its numbers.
      const Layer layer = points(
          QStringLiteral("EPSG:4326"),
          {QStringLiteral("POINT(%1 %2)").arg(row.number("lon_deg"), 0, 'f', 9).arg(row.number("lat_deg"), 0, 'f', 9)});
      const Outcome outcome = at(layer, {{"GRID_CRS", QVariant::fromValue(grid)}});
      QVERIFY2(outcome.ok, qPrintable(outcome.said()));
      const OutputRow &found = outcome.rows()[0];
      const std::string where = "line " + std::to_string(row.line());
      VERIFY_NEAR(turnBetween(found.number("converg"), row.number("convergence_deg")), 0,
                  values.tolerance("convergence_deg"), where);
      VERIFY_NEAR(turnBetween(found.number("grid_mag"), found.number("decl") - found.number("converg")), 0, 1e-12,
                  where);
    }
  }

  // Rows and fields of the input stay as they are; the grid is the input's own.
  void keepsTheInput() {
    const Layer own =
        layer(QStringLiteral("own"), QStringLiteral("PointZM"), QStringLiteral("EPSG:32621"),
              {field("name", FieldType::Text), field("since", FieldType::Date), field("w", FieldType::Real)},
              {{wkt("POINT ZM(632320 5407060 310 7)"), {"Camp", QDate(2026, 5, 1), 0.1}},
               {wkt("POINT ZM(633762 5407202 320 8)"), {"Stand", QVariant(), QVariant()}}});
    const Outcome outcome = at(own);
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(outcome.output().fields.names(), QStringList({"name", "since", "w"}) + newFields);
    QCOMPARE(outcome.output().crs, QString("EPSG:32621"));
    QVERIFY(outcome.output().type == own->wkbType());
    const auto *camp = qgsgeometry_cast<const QgsPoint *>(outcome.rows()[0].geometry.constGet());
    QVERIFY(camp && *camp == QgsPoint(632320, 5407060, 310, 7));
    QCOMPARE(outcome.rows()[0].text("name"), QString("Camp"));
    QCOMPARE(outcome.rows()[0]["since"].toDate(), QDate(2026, 5, 1));
    QVERIFY(outcome.rows()[1].null("since") && outcome.rows()[1].null("w"));
    QVERIFY(outcome.warnings.isEmpty());
    // Grid north of UTM 21 lies 1.356 degrees east there; by formula, tan c = tan(lon - lon0) sin(lat), to a hair.
    VERIFY_NEAR(outcome.rows()[0].number("converg"), 1.356, 0.001, "converg");
    const Outcome flat = at(points("EPSG:32621", {"POINT(632320 5407060)"}));
    QVERIFY(flat.rows()[0].number("f_nt") > outcome.rows()[0].number("f_nt")); // 310 m lower
    QVERIFY(flat.infos.join(' ').contains("without a height"));
  }

  void gridOfTheMap() {
    const Layer degrees = points("EPSG:4326", {"POINT(-55.2 48.8)", "POINT(147 -42)", "POINT(10 86)"});
    const Outcome zones = at(degrees);
    QVERIFY(zones.ok);
    for (size_t i = 0; i < 3; ++i) {
      const Layer one = points("EPSG:4326", {QString(degrees->getFeature(qint64(i) + 1).geometry().asWkt(6))});
      const Outcome given = at(one, {{"GRID_CRS", QStringList({"EPSG:32621", "EPSG:32755", "EPSG:32661"})[int(i)]}});
      QVERIFY2(given.ok, qPrintable(given.said()));
      QVERIFY(zones.rows()[i].number("converg") == given.rows()[0].number("converg"));
    }
    // Where the grid does not reach: empty, and told.
    const Layer far = points("EPSG:4326", {"POINT(99 0)", "POINT(9 47)"});
    const Outcome outcome = at(far, {{"GRID_CRS", "EPSG:32632"}});
    QVERIFY(outcome.rows()[0].null("converg") && outcome.rows()[0].null("grid_mag"));
    QVERIFY(!outcome.rows()[0].null("decl") && !outcome.rows()[1].null("converg"));
    QVERIFY2(outcome.said().contains("GRID_CRS: 1 point"), qPrintable(outcome.said()));
    // Where it reaches, but is not made for: told once, with the first.
    const Layer abroad = points("EPSG:4326", {"POINT(9 47)", "POINT(-3 51)", "POINT(-3 52)"});
    const QString said = at(abroad, {{"GRID_CRS", "EPSG:32632"}}).said();
    QVERIFY2(said.contains("GRID_CRS: row 2 of layer") && said.count("outside the area that EPSG:32632") == 1,
             qPrintable(said));
    QCOMPARE(at(points("EPSG:4326", {"POINT(9 47)", "POINT(5.5 47)"}), {{"GRID_CRS", "EPSG:32632"}}).said(), QString());
  }

  // Fields of the same names, in any case of letters, stay where they are.
  void fieldsOfTheSameNames() {
    const Layer own =
        layer(QStringLiteral("own"), QStringLiteral("Point"), QStringLiteral("EPSG:4326"),
              {field("decl", FieldType::Text), field("ZONE", FieldType::Integer), field("x", FieldType::Real)},
              {{wkt("POINT(-55.2 48.8)"), {"seen", 7, 1.5}}});
    const Outcome outcome = at(own);
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    const OutputRow &row = outcome.rows()[0];
    QCOMPARE(row.text("decl"), QString("seen"));
    QCOMPARE(row["ZONE"].toInt(), 7);
    QCOMPARE(row.number("x"), 1.5);
    QVERIFY(row.number("decl_2") < -16 && row.number("decl_2") > -18);
    QCOMPARE(row.text("zone_2"), QString("reliable"));
    QVERIFY(row.number("decl_err") < 1);
    QVERIFY2(outcome.said().contains("decl as decl_2") && outcome.said().contains("zone as zone_2"),
             qPrintable(outcome.said()));
  }

  // A row for each point of a multipoint, also into a file that keeps a key of its own.
  void multipoints() {
    const Layer own = layer(QStringLiteral("own"), QStringLiteral("MultiPoint"), QStringLiteral("EPSG:4326"),
                            {field("fid", FieldType::Integer), field("name", FieldType::Text)},
                            {{wkt("MULTIPOINT((-55.2 48.8),(-55 49))"), {4, "two"}},
                             {QgsGeometry(), {5, "none"}},
                             {wkt("MULTIPOINT((10 60))"), {6, "one"}},
                             {wkt("MULTIPOINT EMPTY"), {7, "empty"}}});
    for (const QString &target :
         {QString("memory:"), mFolder.filePath("multi.gpkg"), mFolder.filePath("multi.geojson")}) {
      const Outcome outcome = at(own, {{"OUTPUT", target}});
      QVERIFY2(outcome.ok, qPrintable(target + outcome.said()));
      QCOMPARE(outcome.output().texts("name"), QStringList({"two", "two", "none", "one", "empty"}));
      QVERIFY(host::isPointType(outcome.output().type) && !QgsWkbTypes::isMultiType(outcome.output().type));
      QVERIFY(outcome.rows()[0].number("decl") != outcome.rows()[1].number("decl"));
      QVERIFY(allNull(outcome.rows()[2]) && allNull(outcome.rows()[4]));
      QVERIFY2(outcome.said().contains("2 row(s)"), qPrintable(outcome.said()));
    }
    // Single points keep their key.
    const Layer single =
        layer(QStringLiteral("own"), QStringLiteral("Point"), QStringLiteral("EPSG:4326"),
              {field("fid", FieldType::Integer)}, {{wkt("POINT(1 1)"), {40}}, {wkt("POINT(2 2)"), {7}}});
    const Outcome outcome = at(single, {{"OUTPUT", mFolder.filePath("single.gpkg")}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QStringList keys = outcome.output().texts("fid");
    keys.sort();
    QCOMPARE(keys, QStringList({"40", "7"}));
  }

  // Every row comes out; those without a place or a height of use are empty, and counted.
  void rowsWithoutAValue() {
    const double nan = std::nan("");
    const Layer own = layer(QStringLiteral("own"), QStringLiteral("PointZ"), QStringLiteral("EPSG:4326"),
                            {field("nr", FieldType::Integer)},
                            {{QgsGeometry(), {1}},
                             {QgsGeometry(new QgsPoint()), {2}},
                             {QgsGeometry(new QgsPoint(nan, 48, 0)), {3}},
                             {QgsGeometry(new QgsPoint(10, HUGE_VAL, 0)), {4}},
                             {QgsGeometry(new QgsPoint(48, 91, 0)), {5}},
                             {QgsGeometry(new QgsPoint(632320, 5407060, 0)), {6}},
                             {QgsGeometry(new QgsPoint(10, 48, -9999)), {7}},
                             {QgsGeometry(new QgsPoint(10, 48, nan)), {8}},
                             {QgsGeometry(new QgsPoint(370, 48, 500)), {9}},
                             {QgsGeometry(new QgsPoint(10, 48, 500)), {10}}});
    const Outcome outcome = at(own);
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(outcome.output().texts("nr"), QStringList({"1", "2", "3", "4", "5", "6", "7", "8", "9", "10"}));
    for (size_t i = 0; i < 7; ++i)
      QVERIFY2(allNull(outcome.rows()[i]), qPrintable(QString::number(i + 1)));
    QVERIFY(!allNull(outcome.rows()[7]));
    VERIFY_NEAR(outcome.rows()[8].number("decl"), outcome.rows()[9].number("decl"), 1e-9, "another turn");
    QVERIFY2(outcome.said().contains("6 row(s)"), qPrintable(outcome.said()));
    QVERIFY2(outcome.said().contains("1 row(s)") && outcome.said().contains("-1000"), qPrintable(outcome.said()));
    QVERIFY2(outcome.infos.join(' ').contains("1 point(s) without a height"), qPrintable(outcome.infos.join(' ')));

    // A system that a point cannot be turned from.
    const Layer outside = points("EPSG:3035", {"POINT(9e9 9e9)", "POINT(4321000 3210000)"});
    const Outcome turned = at(outside);
    QVERIFY(allNull(turned.rows()[0]) && !allNull(turned.rows()[1]));

    const Outcome none = at(points("EPSG:4326", {}));
    QVERIFY(none.ok && none.rows().empty());
    QVERIFY(none.said().contains("has no features"));
  }

  void declinationOffAMap() {
    const Layer own = points("EPSG:32621", {"POINT(632320 5407060)"});
    const Outcome model = at(own), outcome = at(own, {{"DECLINATION", -17.5}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    const OutputRow &row = outcome.rows()[0];
    QCOMPARE(row.number("decl"), -17.5);
    QVERIFY(row.null("decl_err"));
    for (const char *name : {"incl", "h_nt", "f_nt", "decl_year", "converg", "zone"})
      QCOMPARE(row[name], model.rows()[0][name]);
    QCOMPARE(row.number("grid_mag"), -17.5 - row.number("converg"));
    QVERIFY(outcome.infos.join(' ').contains("decl_err is empty"));

    // A day the model does not know: what is the model's is empty.
    const Outcome old = at(own, {{"DECLINATION", -20}, {"DATE", "1990-01-01"}});
    QVERIFY2(old.ok, qPrintable(old.said()));
    for (const char *name : {"decl_err", "incl", "h_nt", "f_nt", "decl_year"})
      QVERIFY(old.rows()[0].null(name));
    QCOMPARE(old.rows()[0].number("decl"), -20.0);
    QCOMPARE(old.rows()[0].text("zone"), QString("reliable"));
    QVERIFY2(old.said().contains("1990-01-01"), qPrintable(old.said()));
  }

  void weakField() {
    const Layer own = points("EPSG:4326", {"POINT(139 86)", "POINT(-96 80)", "POINT(10 47)"});
    const Outcome outcome = at(own);
    QCOMPARE(outcome.output().texts("zone"), QStringList({"blackout", "caution", "reliable"}));
    QVERIFY(outcome.said().contains("1 point(s) where the field along the ground is under 2000"));
    QVERIFY(outcome.said().contains("1 point(s) where the field along the ground is under 6000"));
  }

  void installedModel() {
    const InstalledModels installed;
    FieldCoefficients older = worldMagneticModel2025();
    older.name = "older";
    older.epoch = 1990;
    older.years = {1990, 2000};
    installed.write("older", older);
    const Layer own = points("EPSG:4326", {"POINT(10 47)"});
    const Outcome outcome = at(own, {{"FIELD_MODEL", "older"}, {"DATE", "1990-01-01"}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    const Outcome built =
        at(own, {{"DATE", "2025-01-01"}}); // the same coefficients at the same distance from the epoch
    VERIFY_NEAR(outcome.rows()[0].number("decl"), built.rows()[0].number("decl"), 1e-9, "decl");
    VERIFY_NEAR(outcome.rows()[0].number("decl_year"), built.rows()[0].number("decl_year"), 1e-9, "decl_year");
    QVERIFY(outcome.rows()[0].null("decl_err"));
    QVERIFY(outcome.infos.join(' ').contains("no error of this model"));
    // A day that it does not reach, with a map's declination: as with the built-in one.
    const Outcome beyond = at(own, {{"FIELD_MODEL", "older"}, {"DATE", "2026-06-15"}, {"DECLINATION", 3.5}});
    QVERIFY2(beyond.ok, qPrintable(beyond.said()));
    QCOMPARE(beyond.rows()[0].number("decl"), 3.5);
    for (const char *name : {"decl_err", "incl", "h_nt", "f_nt", "decl_year"})
      QVERIFY2(beyond.rows()[0].null(name), name);
    QCOMPARE(beyond.rows()[0].text("zone"), QString("reliable"));
    QVERIFY2(beyond.said().contains("2026-06-15"), qPrintable(beyond.said()));
  }

  void refusals_data() {
    QTest::addColumn<QVariantMap>("parameters");
    QTest::addColumn<QStringList>("words");
    const auto row = [](const char *name, const QVariantMap &parameters, const QStringList &words) {
      QTest::newRow(name) << parameters << words;
    };
    row("day before the model", {{"DATE", "2020-01-01"}}, {"DATE", "2020-01-01", "DECLINATION", "FIELD_MODEL"});
    row("no day", {{"DATE", "soon"}}, {"DATE", "soon"});
    row("declination of a turn", {{"DECLINATION", 200}}, {"DECLINATION", "180"});
    row("grid in degrees", {{"GRID_CRS", "EPSG:4326"}}, {"GRID_CRS", "UTM"});
    row("grid that nobody knows", {{"GRID_CRS", "EPSG:999999"}}, {"GRID_CRS"});
    row("no such model", {{"FIELD_MODEL", "none2000"}}, {"FIELD_MODEL", "none2000"});
    row("no such layer", {{"INPUT", "nowhere"}}, {"INPUT", "nowhere"});
    row("no layer", {{"INPUT", QVariant()}}, {"INPUT"});
    row("no such folder", {{"OUTPUT", "/proc/none/a.gpkg"}}, {"OUTPUT"});
  }
  void refusals() {
    QFETCH(QVariantMap, parameters);
    QFETCH(QStringList, words);
    const Outcome outcome = at(points("EPSG:4326", {"POINT(10 47)"}), parameters);
    QVERIFY(!outcome.ok);
    for (const QString &word : words)
      QVERIFY2(outcome.said().contains(word), qPrintable(word + " in: " + outcome.said()));
  }

  void refusedLayers() {
    const Layer nowhere = points(QString(), {"POINT(10 47)"});
    QVERIFY(at(nowhere).said().contains("coordinate reference system"));
    const Layer lines = layer("ways", "LineString", "EPSG:4326", {}, {{wkt("LINESTRING(0 0,1 1)"), {}}});
    QVERIFY(at(lines).said().contains("has no points"));
    const Layer none = table("words", {field("a", FieldType::Text)}, {{"b"}});
    QVERIFY(at(none).said().contains("has no points"));
    // Not over its own input.
    const QString path = mFolder.filePath("own.gpkg");
    save(points("EPSG:4326", {"POINT(10 47)"}), path);
    const Outcome outcome = run(id, {{"INPUT", path}, {"OUTPUT", path}});
    QVERIFY(!outcome.ok && outcome.said().contains("INPUT"));
  }

  void style() {
    const Layer made = points("EPSG:4326", {"POINT(10 47)"});
    bool ok = false;
    const QString message = made->loadNamedStyle(QStringLiteral(":/brushline/styles/field_at_points.qml"), ok);
    QVERIFY2(ok, qPrintable(message));
    QVERIFY(made->labelsEnabled());
  }

  // 100 000 points: how long it takes is told, not judged; the same numbers come in a thread of the host's.
  void manyPointsAndCancel() {
    Random random(80);
    std::vector<Row> rows;
    for (int i = 0; i < 100000; ++i)
      rows.push_back({QgsGeometry(new QgsPoint(random.between(5e5, 7e5), random.between(5.3e6, 5.5e6))), {i}});
    const Layer many = layer("many", "Point", "EPSG:32621", {field("nr", FieldType::Integer)}, rows);
    const Outcome outcome = at(many, {{"OUTPUT", mFolder.filePath("many.gpkg")}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(outcome.rows().size(), size_t(100000));
    qInfo("100 000 points in %.2f s", outcome.seconds);
    Surroundings task;
    task.in_task = true;
    const Outcome again = at(many, {{"OUTPUT", mFolder.filePath("again.gpkg")}}, task);
    QVERIFY(again.ok && again.output().sameBits(outcome.output()));

    double fastest = HUGE_VAL; // of three, since other programs run here too
    for (int i = 0; i < 3; ++i) {
      Ear ear;
      QElapsedTimer since;
      QObject::connect(&ear, &QgsFeedback::progressChanged, &ear, [&](double progress) {
        if (progress > 30 && !ear.isCanceled()) {
          since.start();
          ear.cancel();
        }
      });
      Surroundings cancelled;
      cancelled.ear = &ear;
      cancelled.leave_outputs = true;
      const QTemporaryDir folder;
      at(many, {{"OUTPUT", folder.filePath("c.csv")}}, cancelled);
      QVERIFY(since.isValid());
      fastest = std::min(fastest, double(since.nsecsElapsed()) * 1e-9);
      QVERIFY(QDir(folder.path()).entryList(QDir::Files).isEmpty());
    }
    QVERIFY2(fastest < soon, qPrintable(QString::number(fastest)));
  }
};

BRUSHLINE_HOST_TEST_MAIN(FieldAtPointsAlgorithmTest)
#include "field_at_points_algorithm_test.moc"
