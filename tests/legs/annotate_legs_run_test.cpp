// SPDX-License-Identifier: GPL-2.0-or-later
// Runs of annotatelegs: what must not change the result, how a run ends, and what it leaves behind.
#include "legs/annotate_run.h"

#include "support/cancelled_run.h"
#include "support/comma_locale.h"
#include "support/random.h"

#include <QFileInfo>
#include <qgsapplication.h>
#include <qgslinestring.h>
#include <qgsprocessingregistry.h>
#include <qgsprocessingutils.h>
#include <qgsproject.h>
#include <qgsrendercontext.h>
#include <qgsrenderer.h>
#include <qgsvectorlayerlabeling.h>

#include <cmath>

using namespace brushline;
using namespace brushline::test;

class AnnotateLegsRunTest : public QObject {
  Q_OBJECT
private slots:
  void noSettingOfTheHostMatters_data();
  void noSettingOfTheHostMatters();
  void noLocaleMatters();
  void namesInAnyScript();
  void selectedOnly();
  void inATaskOfTheHost();
  void threadsDoNotMatter_data();
  void threadsDoNotMatter();
  void batchesDoNotMatter();
  void styles();
  void noStyleWhenNotShown();
  void formats_data();
  void formats();
  void cancelledBeforehand();
  void cancelInTheMiddle_data();
  void cancelInTheMiddle();
  void cancelledFilesGo_data();
  void cancelledFilesGo();
  void progressGrows();
};

namespace {

constexpr double east = 400000, north = 5300000;

// Random routes of some 100 m legs within 3 km, in UTM zone 21.
QgsGeometry wandering(Random &random, int legs) {
  double x = east + random.between(0, 3000), y = north + random.between(0, 3000);
  QVector<double> xs{x}, ys{y};
  for (int i = 0; i < legs; ++i) {
    const double turn = random.between(0, 2 * Angle::pi), length = random.between(60, 140);
    x = std::clamp(x + length * std::sin(turn), east, east + 3000);
    y = std::clamp(y + length * std::cos(turn), north, north + 3000);
    xs << x;
    ys << y;
  }
  return QgsGeometry(new QgsLineString(xs, ys));
}

Layer manyRoutes(int routes, int legs, uint64_t seed) {
  Random random(seed);
  std::vector<Row> rows;
  for (int i = 0; i < routes; ++i)
    rows.push_back({wandering(random, legs), {}});
  return layer("routes", "LineString", "EPSG:32621", {}, rows);
}

// Everything at once: terrain, cover, sights, walkers, named points, both ways, all outputs.
struct Country {
  QTemporaryDir folder;
  Layer routes, cover, walkers, points;
  QString dem, sights;

  Country(int routeCount, int legs) {
    routes = manyRoutes(routeCount, legs, 71);
    Random random(72);
    std::vector<Row> stands;
    const QStringList classes = {"open ground", "brush", "thicket", "tall forest", "water", "heath"};
    for (int i = 0; i < 300; ++i) {
      const double x = east + random.between(-200, 3000), y = north + random.between(-200, 3000);
      stands.push_back(
          {QgsGeometry::fromRect(QgsRectangle(x, y, x + random.between(50, 400), y + random.between(50, 400))),
           {classes[int(random.between(0, classes.size()))]}});
    }
    cover = layer("stands", "Polygon", "EPSG:32621", {field("class", FieldType::Text)}, stands);
    walkers = table("walkers", {field("walker", FieldType::Text), field("paces_100m", FieldType::Real)},
                    {{"Ann", 120.0}, {"Ben", 160.0}});
    std::vector<Row> places;
    for (int i = 0; i < 200; ++i)
      places.push_back(
          {wkt(QString("POINT(%1 %2)").arg(east + random.between(0, 3000)).arg(north + random.between(0, 3000))),
           {QString("tree %1").arg(i)}});
    points = layer("places", "Point", "EPSG:32621", {field("name", FieldType::Text)}, places);
    dem = folder.filePath("hills.tif");
    sights = folder.filePath("sights.tif");
    const auto hills = [](double x, double y, int) { return 300 + 40 * std::sin(x / 170) * std::cos(y / 230); };
    writeRaster(dem, {"EPSG:32621", {east - 500, 10, 0, north + 3500, 0, -10}, 400, 400, {}, {}, {}, false, 1}, hills);
    writeRaster(sights, {"EPSG:32621", {east - 500, 100, 0, north + 3500, 0, -100}, 40, 40, -1.0, {}, {}, false, 1},
                [&](double, double, int) { return random.between(0, 1) < 0.3 ? random.between(8, 90) : -1.0; });
  }

  QVariantMap parameters() const {
    return {{"INPUT", valueOf(routes)},
            {"COVER", valueOf(cover)},
            {"WALKERS", valueOf(walkers)},
            {"POINTS", valueOf(points)},
            {"SNAP", 40},
            {"DEM", dem},
            {"SIGHT_RASTER", sights},
            {"DIRECTION", 2},
            {"MARKS", "TEMPORARY_OUTPUT"},
            {"DRIFT", "TEMPORARY_OUTPUT"}};
  }
};

bool same(const Outcome &a, const Outcome &b) {
  if (a.outputs.size() != b.outputs.size())
    return false;
  for (const auto &[key, output] : a.outputs)
    if (!output.sameBits(b.output(qPrintable(key))))
      return false;
  return a.results.value("LEG_COUNT") == b.results.value("LEG_COUNT");
}

// Holds the host to a number of threads for a while.
class Threads {
public:
  explicit Threads(int most) : mBefore(QgsApplication::maxThreads()) { QgsApplication::setMaxThreads(most); }
  ~Threads() { QgsApplication::setMaxThreads(mBefore); }

private:
  int mBefore;
};

} // namespace

// --- what must not matter --------------------------------------------------------------------------------------------

void AnnotateLegsRunTest::noSettingOfTheHostMatters_data() {
  QTest::addColumn<QString>("ellipsoid");
  QTest::addColumn<QString>("projectCrs");
  QTest::newRow("no ellipsoid, no project") << ""
                                            << "";
  QTest::newRow("WGS84") << "EPSG:7030"
                         << "";
  QTest::newRow("another ellipsoid") << "EPSG:7001"
                                     << ""; // Airy
  QTest::newRow("planar") << "NONE"
                          << "";
  QTest::newRow("project in degrees") << ""
                                      << "EPSG:4326";
  QTest::newRow("project on a web map") << "EPSG:7030"
                                        << "EPSG:3857";
  QTest::newRow("project in feet") << "NONE"
                                   << "EPSG:2225";
}

void AnnotateLegsRunTest::noSettingOfTheHostMatters() {
  QFETCH(QString, ellipsoid);
  QFETCH(QString, projectCrs);
  static const Outcome expected = [] { return annotate(Country(12, 10).parameters()); }();
  VERIFY_RAN(expected);
  const Country country(12, 10);
  QgsProject project;
  if (!projectCrs.isEmpty()) {
    project.setCrs(QgsCoordinateReferenceSystem(projectCrs));
    project.setEllipsoid(ellipsoid);
    project.setDistanceUnits(QgsUnitTypes::decodeDistanceUnit("feet"));
  }
  const Outcome outcome = annotate(country.parameters(), {[&](QgsProcessingContext &context) {
                                                            if (!projectCrs.isEmpty())
                                                              context.setProject(&project);
                                                            context.setEllipsoid(ellipsoid);
                                                          },
                                                          nullptr, false});
  VERIFY_RAN(outcome);
  QVERIFY(outcome.rows().size() == 12 * 10 * 2 * 2 && outcome.rows("MARKS").size() > outcome.rows().size());
  QVERIFY(same(outcome, expected));
}

// Where people write 1,5 and 1.000.
void AnnotateLegsRunTest::noLocaleMatters() {
  const Country country(6, 6);
  const Outcome expected = annotate(country.parameters());
  VERIFY_RAN(expected);
  const QLocale before;
  QLocale::setDefault(QLocale(QLocale::German, QLocale::Germany));
  std::optional<Outcome> outcome;
  {
    const CommaLocale comma;
    outcome = annotate(country.parameters());
  }
  QLocale::setDefault(before);
  VERIFY_RAN(*outcome);
  QVERIFY(same(*outcome, expected));
}

// Names in any script come out as they went in, from memory and through files.
void AnnotateLegsRunTest::namesInAnyScript() {
  const QString route = QString::fromUtf8("Grüne Runde 山道"), walker = QString::fromUtf8("Zoë Ångström"),
                tree = QString::fromUtf8("дуб “alt”, 'n' eleven"), stand = QString::fromUtf8("Dickicht — Fichte");
  const QTemporaryDir folder;
  save(layer("routes", "LineString", "EPSG:32621", {field("name", FieldType::Text)},
             {{wkt("LINESTRING(400000 5300000, 400100 5300000)"), {route}}}),
       folder.filePath("routes.gpkg"));
  const Layer walkers = table("crew", {field("walker", FieldType::Text)}, {{walker}});
  const Layer points =
      layer("trees", "Point", "EPSG:32621", {field("name", FieldType::Text)}, {{wkt("POINT(400100 5300000)"), {tree}}});
  const Layer cover = layer("stands", "Polygon", "EPSG:32621", {field("class", FieldType::Text)},
                            {{QgsGeometry::fromRect(QgsRectangle(399000, 5299000, 402000, 5302000)), {stand}}});
  const Layer kinds =
      table("kinds", {field("class", FieldType::Text), field("sight_m", FieldType::Real)}, {{stand, 20.0}});
  for (const QString &output : {QString("TEMPORARY_OUTPUT"), folder.filePath("legs.gpkg"),
                                folder.filePath(QString::fromUtf8("Wege ü.geojson"))}) {
    const Outcome outcome = annotate({{"INPUT", folder.filePath("routes.gpkg")},
                                      {"ROUTE_FIELD", "name"},
                                      {"WALKERS", valueOf(walkers)},
                                      {"POINTS", valueOf(points)},
                                      {"COVER", valueOf(cover)},
                                      {"COVER_TABLE", valueOf(kinds)},
                                      {"OUTPUT", output}});
    VERIFY_RAN(outcome);
    const OutputRow &leg = outcome.rows().at(0);
    QCOMPARE(leg.text("route"), route);
    QCOMPARE(leg.text("walker"), walker);
    QCOMPARE(leg.text("to_name"), tree);
    QCOMPARE(leg.text("cover"), stand);
    QVERIFY(leg.text("dial_text").endsWith(QString::fromUtf8("°")));
  }
}

// The host's switch "selected features only".
void AnnotateLegsRunTest::selectedOnly() {
  const Layer routes = manyRoutes(5, 3, 77);
  routes->selectByIds({2, 4});
  const Outcome all = annotate({{"INPUT", valueOf(routes)}});
  const Outcome chosen =
      annotate({{"INPUT", QVariant::fromValue(QgsProcessingFeatureSourceDefinition(routes->id(), true))}},
               {[&](QgsProcessingContext &context) { context.temporaryLayerStore()->addMapLayer(routes.get(), false); },
                nullptr, false, false});
  VERIFY_RAN(all);
  VERIFY_RAN(chosen);
  QCOMPARE(all.results.value("ROUTE_COUNT").toDouble(), 5.0);
  QCOMPARE(chosen.results.value("ROUTE_COUNT").toDouble(), 2.0);
}

// As the desktop runs it: prepared here, worked out in a thread of the host's.
void AnnotateLegsRunTest::inATaskOfTheHost() {
  const Country country(12, 10);
  const Outcome here = annotate(country.parameters());
  const Outcome there = annotate(country.parameters(), {{}, nullptr, true, false});
  VERIFY_RAN(here);
  VERIFY_RAN(there);
  QVERIFY(same(here, there));
}

void AnnotateLegsRunTest::threadsDoNotMatter_data() {
  QTest::addColumn<int>("routes");
  QTest::addColumn<bool>("allOutputs");
  QTest::addColumn<QVector<int>>("threads");
  // Batches hold some 80 routes of 51 vertices: more of them than threads, so that threads take turns.
  QTest::newRow("legs") << 1000 << false << QVector<int>{1, 2, 8, 2};
  QTest::newRow("legs, marks and drift") << 400 << true << QVector<int>{1, 2, 3};
}

void AnnotateLegsRunTest::threadsDoNotMatter() {
  QFETCH(int, routes);
  QFETCH(bool, allOutputs);
  QFETCH(QVector<int>, threads);
  const Country country(routes, 50);
  QVariantMap parameters = country.parameters();
  parameters.remove("WALKERS");
  parameters["DIRECTION"] = 1;
  if (!allOutputs) {
    parameters.remove("MARKS");
    parameters.remove("DRIFT");
  }
  std::optional<Outcome> first;
  for (const int most : threads) {
    const Threads held(most);
    const Outcome outcome = annotate(parameters);
    VERIFY_RAN(outcome);
    QVERIFY(outcome.rows().size() > size_t(routes) * 49); // all but a few that end where they began, in a corner
    if (first)
      QVERIFY2(same(outcome, *first), qPrintable(QString::number(most)));
    else
      first = outcome;
  }
}

// A route's legs are the same alone and among others.
void AnnotateLegsRunTest::batchesDoNotMatter() {
  const Country country(9, 8);
  QVariantMap parameters = country.parameters();
  const Outcome all = annotate(parameters);
  VERIFY_RAN(all);
  std::vector<OutputRow> one;
  QgsFeature feature;
  QgsFeatureIterator features = country.routes->getFeatures();
  while (features.nextFeature(feature)) {
    const Layer alone = layer("routes", "LineString", "EPSG:32621", {}, {{feature.geometry(), {}}});
    parameters["INPUT"] = valueOf(alone);
    const Outcome outcome = annotate(parameters);
    VERIFY_RAN(outcome);
    one.insert(one.end(), outcome.rows().begin(), outcome.rows().end());
  }
  QCOMPARE(one.size(), all.rows().size());
  Output joined = all.output();
  joined.rows = one;
  for (size_t i = 0; i < one.size(); ++i)
    joined.rows[i].values["route"] = all.rows()[i]["route"]; // counted from 1 each time
  QVERIFY(joined.sameBits(all.output()));
}

// --- what the host shows ---------------------------------------------------------------------------------------------

// A layer that will be loaded gets our own look: symbols and, for legs and marks, labels.
void AnnotateLegsRunTest::styles() {
  const Country country(2, 4);
  QgsProject project;
  QVariantMap parameters = country.parameters();
  for (const char *key : {"OUTPUT", "MARKS", "DRIFT"})
    parameters[key] = QVariant::fromValue(QgsProcessingOutputLayerDefinition("TEMPORARY_OUTPUT", &project));
  parameters["DATE"] = QDate(2026, 6, 15);
  const std::unique_ptr<QgsProcessingAlgorithm> algorithm(
      QgsApplication::processingRegistry()->createAlgorithmById("brushline:annotatelegs"));
  QgsProcessingContext context;
  context.setProject(&project);
  Ear ear;
  bool ok = false;
  const QVariantMap results = algorithm->run(parameters, context, &ear, &ok);
  QVERIFY2(ok, qPrintable(ear.errors.join('\n')));
  QCOMPARE(context.layersToLoadOnCompletion().size(), 3);
  for (const char *key : {"OUTPUT", "MARKS", "DRIFT"}) {
    const QString id = results.value(key).toString();
    QVERIFY2(context.willLoadLayerOnCompletion(id), key);
    QgsProcessingLayerPostProcessorInterface *style = context.layerToLoadOnCompletionDetails(id).postProcessor();
    QVERIFY2(style, key);
    auto *layer = qobject_cast<QgsVectorLayer *>(QgsProcessingUtils::mapLayerFromString(id, context));
    QVERIFY2(layer, key);
    const QString plain = layer->renderer()->dump();
    QVERIFY2(!layer->labelsEnabled(), key);
    style->postProcessLayer(layer, context, &ear);
    QVERIFY2(ear.warnings.filter("style").isEmpty(), qPrintable(ear.warnings.join('\n')));
    QVERIFY2(layer->renderer() && layer->renderer()->dump() != plain, key);
    if (QString(key) != "DRIFT")
      QVERIFY2(layer->labelsEnabled() && layer->labeling(), key);
    // Every field that symbols and labels ask for is there.
    const QSet<QString> wanted = layer->renderer()->usedAttributes(QgsRenderContext());
    for (const QString &name : wanted)
      QVERIFY2(layer->fields().indexOf(name) >= 0, qPrintable(name));
  }
}

void AnnotateLegsRunTest::noStyleWhenNotShown() {
  const Country country(1, 2);
  QVariantMap parameters = country.parameters();
  int shown = -1;
  const std::unique_ptr<QgsProcessingAlgorithm> algorithm(
      QgsApplication::processingRegistry()->createAlgorithmById("brushline:annotatelegs"));
  parameters["OUTPUT"] = "TEMPORARY_OUTPUT";
  QgsProcessingContext context;
  Ear ear;
  bool ok = false;
  algorithm->run(parameters, context, &ear, &ok);
  shown = context.layersToLoadOnCompletion().size();
  QVERIFY(ok);
  QCOMPARE(shown, 0);
}

// --- files -----------------------------------------------------------------------------------------------------------

void AnnotateLegsRunTest::formats_data() {
  QTest::addColumn<QString>("ending");
  QTest::addColumn<double>("tolerance");
  QTest::addColumn<bool>("shapes");
  QTest::newRow("GeoPackage") << "gpkg" << 0.0 << true;
  QTest::newRow("FlatGeobuf") << "fgb" << 0.0 << true;
  QTest::newRow("GeoJSON") << "geojson" << 1e-6 << true;
  QTest::newRow("Shapefile") << "shp" << 1e-6 << true;
  QTest::newRow("CSV") << "csv" << 1e-6 << false;
}

// Every format keeps all columns under their names.
void AnnotateLegsRunTest::formats() {
  QFETCH(QString, ending);
  QFETCH(double, tolerance);
  QFETCH(bool, shapes);
  const Country country(3, 4);
  QVariantMap parameters = country.parameters();
  const Outcome expected = annotate(parameters);
  VERIFY_RAN(expected);
  const QTemporaryDir folder;
  for (const char *key : {"OUTPUT", "MARKS", "DRIFT"})
    parameters[key] = folder.filePath(QString(key).toLower() + "." + ending);
  const Outcome outcome = annotate(parameters);
  VERIFY_RAN(outcome);
  for (const char *key : {"OUTPUT", "MARKS", "DRIFT"}) {
    QVERIFY(QFile::exists(parameters[key].toString()));
    QCOMPARE(outcome.results.value(key), parameters[key]);
    const Output &made = outcome.output(key), &memory = expected.output(key);
    QCOMPARE(made.rows.size(), memory.rows.size());
    for (const QgsField &each : memory.fields)
      QVERIFY2(made.fields.indexOf(each.name()) >= 0, qPrintable(each.name()));
    // In the order of the run, but for FlatGeobuf, which sorts by place.
    if (ending == "fgb")
      continue;
    for (size_t i = 0; i < made.rows.size(); ++i) {
      QCOMPARE(!made.rows[i].geometry.isNull(), shapes);
      for (const QgsField &each : memory.fields) {
        const QByteArray name = each.name().toUtf8();
        const QVariant is = made.rows[i][name], should = memory.rows[i][name];
        const std::string where = ending.toStdString() + ", " + key + ", " + name.toStdString();
        if (should.isNull())
          VERIFY_AT(is.isNull() || is.toString().isEmpty(), where);
        else if (int(should.type()) == int(QVariant::Double))
          VERIFY_NEAR(is.toDouble(), should.toDouble(), tolerance * (1 + std::abs(should.toDouble())), where);
        else if (int(should.type()) == int(QVariant::Date))
          VERIFY_AT(is.toDate() == should.toDate() || is.toString().startsWith("2026-06-15") ||
                        is.toString().startsWith("2026/06/15"),
                    where);
        else
          VERIFY_AT(should.toString().startsWith(is.toString()) &&
                        is.toString().size() >= std::min(80, should.toString().size()),
                    where + ": " + is.toString().toStdString());
      }
    }
  }
}

// --- cancelling ------------------------------------------------------------------------------------------------------

void AnnotateLegsRunTest::cancelledBeforehand() {
  const Country country(2, 3);
  const QTemporaryDir folder;
  QVariantMap parameters = country.parameters();
  for (const char *key : {"OUTPUT", "MARKS", "DRIFT"})
    parameters[key] = folder.filePath(QString(key) + ".gpkg");
  Ear ear;
  ear.cancel();
  annotate(parameters, {{}, &ear, false, false});
  QCOMPARE(QDir(folder.path()).entryList(QDir::Files), QStringList());
}

void AnnotateLegsRunTest::cancelInTheMiddle_data() {
  QTest::addColumn<QString>("job");
  QTest::newRow("many routes") << "routes";
  QTest::newRow("one route of many legs") << "long";
  QTest::newRow("one route of many legs, with terrain and cover") << "ground";
  QTest::newRow("many points") << "points";
  QTest::newRow("many polygons of cover") << "polygons";
  QTest::newRow("many named points") << "names";
}

// On big inputs a cancelled run ends within a tenth of a second and leaves no file. In a format that has nothing left to
// do when it is closed: FlatGeobuf's writer sorts all it was given before the file can go, whoever calls it.
void AnnotateLegsRunTest::cancelInTheMiddle() {
  QFETCH(QString, job);
  const QTemporaryDir folder;
  Random random(73);
  Layer routes, other;
  const Country country(1, 1);
  QVariantMap parameters;
  if (job == "routes") {
    routes = manyRoutes(700, 50, 74);
  } else if (job == "long") {
    routes = layer("routes", "LineString", "EPSG:32621", {}, {{wandering(random, 40000), {}}});
  } else if (job == "ground") {
    routes = layer("routes", "LineString", "EPSG:32621", {}, {{wandering(random, 20000), {}}});
    parameters = country.parameters();
    for (const char *key : {"WALKERS", "MARKS", "DRIFT", "DIRECTION"}) // working out, not writing
      parameters.remove(key);
  } else if (job == "points") {
    std::vector<Row> rows;
    for (int i = 0; i < 40000; ++i)
      rows.push_back({QgsGeometry(new QgsPoint(east + random.between(0, 3000), north + random.between(0, 3000))), {i}});
    routes = layer("points", "Point", "EPSG:32621", {field("nr", FieldType::Integer)}, rows);
    parameters["ORDER_FIELD"] = "nr";
  } else if (job == "polygons") {
    routes = manyRoutes(1, 5, 74);
    std::vector<Row> rows;
    for (int i = 0; i < 200000; ++i) {
      const double x = east + random.between(0, 3000), y = north + random.between(0, 3000);
      rows.push_back({QgsGeometry::fromRect(QgsRectangle(x, y, x + 5, y + 5)), {"brush"}});
    }
    other = layer("stands", "Polygon", "EPSG:32621", {field("class", FieldType::Text)}, rows);
    parameters["COVER"] = valueOf(other);
  } else {
    routes = manyRoutes(1, 5, 74);
    std::vector<Row> rows;
    for (int i = 0; i < 200000; ++i)
      rows.push_back({QgsGeometry(new QgsPoint(east + random.between(0, 3000), north + random.between(0, 3000))),
                      {QString::number(i)}});
    other = layer("places", "Point", "EPSG:32621", {field("name", FieldType::Text)}, rows);
    parameters["POINTS"] = valueOf(other);
  }
  parameters["INPUT"] = valueOf(routes);
  for (const char *key : {"OUTPUT", "MARKS", "DRIFT"})
    if (parameters.contains(key) || QString(key) == "OUTPUT")
      parameters[key] = folder.filePath(QString(key) + ".geojson");

  const CancelTimes times = cancelAt({0.15, 0.5, 0.8}, [&](Ear &ear) -> std::optional<double> {
    const Outcome outcome = annotate(parameters, {{}, &ear, false, true});
    const bool through = outcome.results.contains("LEG_COUNT");
    const QStringList files = QDir(folder.path()).entryList(QDir::Files);
    if (!through && (!files.isEmpty() || outcome.results.contains("OUTPUT")))
      throw std::runtime_error("left " + files.join(' ').toStdString());
    for (const QString &file : files)
      QFile::remove(folder.filePath(file));
    return through ? std::optional(outcome.seconds) : std::nullopt;
  });
  QVERIFY2(times.moments > 0, "never cancelled in the middle");
  qInfo("%s: %.0f ms in all; %.0f ms after being cancelled", qPrintable(job), 1000 * times.whole, 1000 * times.slowest);
  QVERIFY2(times.slowest < soon, qPrintable(QString("%1 s after being cancelled").arg(times.slowest)));
}

void AnnotateLegsRunTest::cancelledFilesGo_data() {
  QTest::addColumn<QString>("ending");
  for (const char *ending : {"gpkg", "fgb", "shp", "geojson", "csv", "sqlite"})
    QTest::newRow(ending) << QString(ending);
}

// Cancelled once writing has begun: no file of any format stays, and none of others is touched.
void AnnotateLegsRunTest::cancelledFilesGo() {
  QFETCH(QString, ending);
  const QTemporaryDir folder;
  const QString bystander = folder.filePath("OUTPUT_of_others." + ending);
  QFile file(bystander);
  QVERIFY(file.open(QIODevice::WriteOnly) && file.write("x") == 1);
  file.close();
  const Layer routes = manyRoutes(1500, 20, 75);
  QVariantMap parameters{{"INPUT", valueOf(routes)}};
  for (const char *key : {"OUTPUT", "MARKS", "DRIFT"})
    parameters[key] = folder.filePath(QString(key) + "." + ending);
  Ear ear;
  bool begun = false;
  connect(&ear, &QgsFeedback::progressChanged, [&](double progress) {
    if (progress < 30)
      return;
    begun = begun || QFile::exists(parameters["OUTPUT"].toString());
    ear.cancel();
  });
  const Outcome outcome = annotate(parameters, {{}, &ear, false, false});
  QVERIFY(ear.isCanceled());
  QVERIFY(begun || ending == "fgb"); // whose writer makes the file when it is closed
  QVERIFY(!outcome.results.contains("OUTPUT"));
  QCOMPARE(QDir(folder.path()).entryList(QDir::Files), QStringList({QFileInfo(bystander).fileName()}));
  QVERIFY2(outcome.infos.join(' ').contains("Cancelled"), qPrintable(outcome.infos.join(' ')));
}

void AnnotateLegsRunTest::progressGrows() {
  const Layer routes = manyRoutes(2000, 20, 76);
  Ear ear;
  QVector<double> told;
  connect(&ear, &QgsFeedback::progressChanged, [&](double progress) { told << progress; });
  const Outcome outcome = annotate({{"INPUT", valueOf(routes)}}, {{}, &ear, false, false});
  VERIFY_RAN(outcome);
  QVERIFY(told.size() >= 5);
  for (int i = 1; i < told.size(); ++i)
    QVERIFY(told[i] >= told[i - 1] && told[i] <= 100);
  QVERIFY(told.last() > 99);
}

BRUSHLINE_HOST_TEST_MAIN(AnnotateLegsRunTest)
#include "annotate_legs_run_test.moc"
