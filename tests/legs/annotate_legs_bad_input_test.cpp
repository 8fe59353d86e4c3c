// SPDX-License-Identifier: GPL-2.0-or-later
// Bad input to annotatelegs: each is refused, or passed over and counted, in words that name the parameter, the layer
// and the feature, and say what to do; and no output is left behind by a run that was refused.
#include "legs/annotate_run.h"

#include "support/installed_models.h"

#include <QDir>
#include <QFileInfo>
#include <QRegularExpression>
#include <qgslinestring.h>

#include <cmath>
#include <limits>

using namespace brushline;
using namespace brushline::test;

class AnnotateLegsBadInputTest : public QObject {
  Q_OBJECT
private slots:
  void refused_data();
  void refused();
  void passedOver_data();
  void passedOver();
  void toldOfTwentyOnly();
  void unwritable_data();
  void unwritable();
  void inputFileIsSafe_data();
  void inputFileIsSafe();
  void twoOutputsInOneFile();
  void anotherTableOfTheInputFile();
  void oldOutputIsReplaced();
};

namespace {

constexpr double notANumber = std::numeric_limits<double>::quiet_NaN();
constexpr double infinite = std::numeric_limits<double>::infinity();

// Layers that the parameters point to live as long as the case.
struct Case {
  QVariantMap parameters;
  QStringList words; // that the message must hold
  size_t rows = 0;   // legs all the same
  std::shared_ptr<std::vector<Layer>> layers = std::make_shared<std::vector<Layer>>();
  std::shared_ptr<QTemporaryDir> folder;

  Case &with(const char *key, const QVariant &value) {
    parameters[key] = value;
    return *this;
  }
  Case &with(const char *key, Layer layer) {
    parameters[key] = valueOf(layer);
    layers->push_back(std::move(layer));
    return *this;
  }
  Case &raster(const char *key, const RasterShape &shape, const std::function<double(double, double, int)> &value) {
    if (!folder)
      folder = std::make_shared<QTemporaryDir>();
    const QString path = folder->filePath(QString(key).toLower() + ".tif");
    writeRaster(path, shape, value);
    parameters[key] = path;
    return *this;
  }
  Case &says(const QStringList &all) {
    words << all;
    return *this;
  }
  Case &keeps(size_t legs) {
    rows = legs;
    return *this;
  }
};

void row(const char *name, const Case &bad) { QTest::newRow(name) << bad; }

const QString goodText = "LINESTRING(400000 5300000, 400200 5300000, 400200 5300300)"; // two legs

Layer good() { return routesOf("EPSG:32621", {goodText}); }

// A good route, with something else the matter.
Case goodRoute() { return Case().with("INPUT", good()).keeps(2); }

// Two good legs beside a route that is not; with a field that names them.
Case beside(const QgsGeometry &bad, const QString &crs = "EPSG:32621", const QString &text = goodText) {
  return Case()
      .with("INPUT", layer("my routes", "LineString", crs, {field("name", FieldType::Text)},
                           {{wkt(text), {"good"}}, {bad, {"bad"}}}))
      .with("ROUTE_FIELD", "name")
      .keeps(2)
      .says({"INPUT", "my routes", "feature 2", "1 route(s) passed over in all"});
}

Case only(const QgsGeometry &bad, const QString &crs = "EPSG:32621") {
  return Case()
      .with("INPUT", layer("my routes", "LineString", crs, {}, {{bad, {}}}))
      .says({"INPUT", "my routes", "feature 1", "None of the 1 route(s) could be used"});
}

Layer pointsIn(const QVariantList &order, QVariant::Type type) {
  std::vector<Row> rows;
  for (int i = 0; i < order.size(); ++i)
    rows.push_back({wkt(QString("POINT(%1 5300000)").arg(400000 + 100 * i)), {"ridge", order[i]}});
  return layer("posts", "Point", "EPSG:32621", {field("way", FieldType::Text), QgsField("nr", type)}, rows);
}

// A route of points whose order is no good.
Case order(const QVariantList &values, QVariant::Type type) {
  return Case()
      .with("INPUT", pointsIn(values, type))
      .with("ROUTE_FIELD", "way")
      .with("ORDER_FIELD", "nr")
      .says({"ORDER_FIELD", "posts"});
}

const QList<QgsField> walkerFields = {field("walker", FieldType::Text),    field("paces_100m", FieldType::Text),
                                      field("pace_kind", FieldType::Text), field("pace_err", FieldType::Text),
                                      field("brg_err", FieldType::Text),   field("eye_m", FieldType::Text),
                                      field("speed_f", FieldType::Text)};

// A good walker and one with something in a column.
Case walkers(const char *column, const QVariant &value) {
  QVariantList good{"Ann", "130", "0", "5", "3", "1.6", "1"}, bad = good;
  bad[0] = "Ben";
  for (int i = 0; i < walkerFields.size(); ++i)
    if (walkerFields[i].name() == column)
      bad[i] = value;
  return goodRoute().with("WALKERS", table("crew", walkerFields, {good, bad})).says({"WALKERS", "crew"});
}

Layer standsOf(const std::vector<std::pair<QString, QVariant>> &stands) {
  std::vector<Row> rows;
  for (const auto &[text, cover] : stands)
    rows.push_back({wkt(text), {cover}});
  return layer("stands", "Polygon", "EPSG:32621", {field("class", FieldType::Text)}, rows);
}

const QString everywhere = "POLYGON((399000 5299000, 402000 5299000, 402000 5302000, 399000 5302000, 399000 5299000))";

Case coverTable(const char *column, const QVariant &value) {
  const QList<QgsField> fields = {field("class", FieldType::Text), field("sight_m", FieldType::Text),
                                  field("sight_bare", FieldType::Text), field("speed_f", FieldType::Text),
                                  field("pace_f", FieldType::Text)};
  QVariantList bad{"brush", "12", "18", "0.4", "1.2"};
  for (int i = 0; i < fields.size(); ++i)
    if (fields[i].name() == column)
      bad[i] = value;
  return goodRoute()
      .with("COVER", standsOf({{everywhere, "brush"}}))
      .with("COVER_TABLE", table("kinds", fields, {{"wood", "50", "60", "1", "1"}, bad}))
      .says({"COVER_TABLE", "kinds"});
}

RasterShape shape() { return {"EPSG:32621", {399500, 10, 0, 5300800, 0, -10}, 150, 150, {}, {}, {}, false, 1}; }
double level(double, double, int) { return 100; }

QStringList filesBelow(const QString &folder) { return QDir(folder).entryList(QDir::Files | QDir::NoDotAndDotDot); }

} // namespace

Q_DECLARE_METATYPE(Case)

// --- refused ---------------------------------------------------------------------------------------------------------

void AnnotateLegsBadInputTest::refused_data() {
  QTest::addColumn<Case>("bad");

  // Routes: the layer.
  row("no input", Case().says({"INPUT"}));
  row("input that is not there", Case().with("INPUT", "nowhere/routes.gpkg").says({"INPUT", "nowhere/routes.gpkg"}));
  row("no coordinate system", Case()
                                  .with("INPUT", routesOf("", {goodText}))
                                  .says({"INPUT", "routes", "coordinate reference system", "Set it"}));
  row("polygons",
      Case().with("INPUT", standsOf({{everywhere, "brush"}})).says({"INPUT", "stands", "neither lines nor points"}));
  row("a table",
      Case().with("INPUT", table("crew", {field("walker", FieldType::Text)}, {{"Ann"}})).says({"INPUT", "crew"}));
  row("no such route field", goodRoute().with("ROUTE_FIELD", "rout").says({"ROUTE_FIELD", "routes", "rout"}));
  row("no such order field", goodRoute().with("ORDER_FIELD", "nr").says({"ORDER_FIELD", "routes", "nr"}));
  row("no such order field of points", Case()
                                           .with("INPUT", pointsIn({1, 2}, QVariant::Int))
                                           .with("ORDER_FIELD", "number")
                                           .says({"ORDER_FIELD", "posts", "number", "way, nr"}));
  row("points without an order field",
      Case().with("INPUT", pointsIn({1, 2}, QVariant::Int)).says({"ORDER_FIELD", "posts", "order"}));

  // Routes: nothing of use in them.
  row("only a route without geometry", only(QgsGeometry()).says({"no geometry"}));
  row("only an empty line", only(wkt("LINESTRING EMPTY")).says({"no geometry"}));
  row("only a point of a line", only(line({{400000, 5300000}, {400000, 5300000}})).says({"no two vertices apart"}));
  row("only one vertex", only(line({{400000, 5300000}})).says({"no two vertices apart"}));
  row("only NaN", only(line({{400000, 5300000}, {notANumber, 5300000}})).says({"not a number", "vertex 2"}));
  row("only infinite", only(line({{400000, infinite}, {400000, 5300000}})).says({"not a number", "vertex 1"}));
  row("only beyond the pole", only(line({{-57, 48}, {-57, 91}}), "EPSG:4326").says({"latitude", "91", "pole"}));
  row("only latitude and longitude the wrong way round",
      only(line({{48, -157}, {48.01, -157}}), "EPSG:4326").says({"latitude", "-157", "wrong way round"}));
  row("only coordinates that no system has",
      only(line({{1e30, 1e30}, {1e30, 2e30}})).says({"coordinate reference system"}));

  // Points.
  row("order: words", order({"1", "second", "3"}, QVariant::String).says({"feature 2", "second", "no number"}));
  row("order: empty text", order({"1", "", "3"}, QVariant::String).says({"feature 2"}));
  row("order: nothing", order({1, 2, QVariant()}, QVariant::Int).says({"feature 3", "no value"}));
  row("order: ties", order({1, 2, 2}, QVariant::Int).says({"features 2 and 3", "ridge"}));
  row("order: ties in other writing", order({"1", "1.0", "2"}, QVariant::String).says({"features 1 and 2"}));
  row("order: NaN", order({1.0, notANumber}, QVariant::Double).says({"feature 2"}));
  row("order: infinite", order({1.0, infinite}, QVariant::Double).says({"feature 2"}));
  row("order: 1,5", order({"1", "1,5"}, QVariant::String).says({"feature 2", "1,5"}));

  // The grid.
  row("grid in degrees", goodRoute().with("GRID_CRS", "EPSG:4326").says({"GRID_CRS", "EPSG:4326", "UTM"}));
  row("grid in space", goodRoute().with("GRID_CRS", "EPSG:4978").says({"GRID_CRS"}));
  row("grid that nobody knows", goodRoute().with("GRID_CRS", "EPSG:999999").says({"GRID_CRS"}));

  // Date and field.
  row("no date", goodRoute().with("DATE", "next Sunday").says({"DATE", "next Sunday", "year-month-day"}));
  row("a day that no calendar has", goodRoute().with("DATE", "2026-02-30").says({"DATE", "2026-02-30"}));
  row("before the model", goodRoute()
                              .with("DATE", "2024-12-31")
                              .says({"DATE", "2024-12-31", "2025", "2030", "DECLINATION", "FIELD_MODEL"}));
  row("after the model", goodRoute()
                             .with("DATE", "2031-06-01")
                             .says({"DATE", "2031-06-01", "2025", "2030", "DECLINATION", "FIELD_MODEL"}));
  row("declination 181", goodRoute().with("DECLINATION", 181).says({"DECLINATION", "181", "-180", "180"}));
  row("declination -500", goodRoute().with("DECLINATION", -500).says({"DECLINATION", "-500"}));
  row("declination NaN", goodRoute().with("DECLINATION", notANumber).says({"DECLINATION"}));
  row("declination infinite", goodRoute().with("DECLINATION", infinite).says({"DECLINATION"}));
  row("declination in words", goodRoute().with("DECLINATION", "17 W").says({"DECLINATION"}));
  row("unknown model", goodRoute().with("FIELD_MODEL", "wmm1875").says({"FIELD_MODEL", "wmm1875", "GeographicLib"}));
  row("model with a path", goodRoute().with("FIELD_MODEL", "../../wmm").says({"FIELD_MODEL", "../../wmm"}));

  // Compass.
  for (const auto &[name, value] : {std::pair("0", 0.0), std::pair("-2", -2.0), std::pair("NaN", notANumber)}) {
    row(qPrintable(QString("step ") + name), goodRoute().with("DIAL_STEP", value).says({"DIAL_STEP", "0.01"}));
    row(qPrintable(QString("sighting error ") + name),
        goodRoute().with("BEARING_ERROR", value).says({"BEARING_ERROR", "0.1", "45"}));
    row(qPrintable(QString("paces ") + name),
        goodRoute().with("PACES_PER_100M", value).says({"PACES_PER_100M", "20", "1000"}));
    row(qPrintable(QString("pace error ") + name),
        goodRoute().with("PACE_ERROR", value).says({"PACE_ERROR", "0.1", "50"}));
    row(qPrintable(QString("eyes ") + name), goodRoute().with("EYE_HEIGHT", value).says({"EYE_HEIGHT", "0.3", "3"}));
    row(qPrintable(QString("share of the sight ") + name),
        goodRoute().with("MARK_FRACTION", value).says({"MARK_FRACTION", "0.05", "1"}));
    row(qPrintable(QString("least spacing ") + name),
        goodRoute().with("SPACING_MIN", value).says({"SPACING_MIN", "0.5"}));
    row(qPrintable(QString("most spacing ") + name), goodRoute().with("SPACING_MAX", value).says({"SPACING_MAX", "1"}));
    row(qPrintable(QString("clear sight ") + name),
        goodRoute().with("CLEAR_SIGHT", value).says({"CLEAR_SIGHT", "0.01", "0.99"}));
  }
  row("clear sight 1", goodRoute().with("CLEAR_SIGHT", 1).says({"CLEAR_SIGHT", "0.99"}));
  row("share of the sight 1.1", goodRoute().with("MARK_FRACTION", 1.1).says({"MARK_FRACTION"}));
  row("step over an eighth of the circle",
      goodRoute().with("DIAL_STEP", 46).says({"DIAL_STEP", "46", "45", "graduation"}));
  row("step over an eighth of the circle in gon",
      goodRoute().with("DIAL_STEP", 51).with("DIAL_UNIT", 2).says({"DIAL_STEP", "51", "50"}));
  row("step over an eighth of the circle in mils",
      goodRoute().with("DIAL_STEP", 801).with("DIAL_UNIT", 1).says({"DIAL_STEP", "800"}));
  row("paces in words", goodRoute().with("PACES_PER_100M", "many").says({"PACES_PER_100M"}));
  row("paces with a comma", goodRoute().with("PACES_PER_100M", "62,5").says({"PACES_PER_100M"}));
  row("choice 3 of 3", goodRoute().with("NORTH", 3).says({"NORTH", "3", "0 to 2"}));
  row("choice -1", goodRoute().with("DIRECTION", -1).says({"DIRECTION", "-1"}));
  row("choice of season 2", goodRoute().with("SEASON", 2).says({"SEASON"}));
  row("choice of legend 9", goodRoute().with("COVER_LEGEND", 9).says({"COVER_LEGEND"}));
  row("choice in words", goodRoute().with("PACE_KIND", "both").says({"PACE_KIND"}));
  row("double paces of 100", goodRoute()
                                 .with("PACES_PER_100M", 100)
                                 .with("PACE_KIND", 1)
                                 .says({"PACES_PER_100M", "100", "two ways", "single steps"}));
  row("double paces of 90",
      goodRoute().with("PACES_PER_100M", 90).with("PACE_KIND", 1).says({"PACES_PER_100M", "90", "two ways"}));
  row("least spacing above the most",
      goodRoute().with("SPACING_MIN", 60).with("SPACING_MAX", 50).says({"SPACING_MIN", "60", "SPACING_MAX", "50"}));

  // Walkers.
  row("walkers without a name column",
      goodRoute()
          .with("WALKERS",
                table("crew", {field("who", FieldType::Text), field("paces_100m", FieldType::Real)}, {{"Ann", 120.0}}))
          .says({"WALKERS", "crew", "walker", "who, paces_100m"}));
  row("walkers without rows",
      goodRoute().with("WALKERS", table("crew", walkerFields, {})).says({"WALKERS", "crew", "no walkers"}));
  row("walkers with empty rows only",
      goodRoute()
          .with("WALKERS", table("crew", {field("walker", FieldType::Text)}, {{QVariant()}, {""}, {"  "}}))
          .says({"WALKERS", "crew", "no walkers"}));
  row("the same walker twice",
      goodRoute()
          .with("WALKERS", table("crew", {field("walker", FieldType::Text)}, {{"Ann"}, {"Ben"}, {" Ann "}}))
          .says({"WALKERS", "crew", "Ann", "twice", "feature 3"}));
  row("a walker with numbers and no name", walkers("walker", QVariant()).says({"feature 2", "no name"}));
  row("walkers that are not there", goodRoute().with("WALKERS", "nowhere.csv").says({"WALKERS", "nowhere.csv"}));
  const std::pair<const char *, const char *> columns[] = {
      {"paces_100m", "20"}, {"pace_err", "0.1"}, {"brg_err", "0.1"}, {"eye_m", "0.3"}, {"speed_f", "0.05"}};
  for (const auto &[column, least] : columns)
    for (const char *value : {"many", "-1", "0", "1,5", "nan", "inf", "1e99"})
      row(qPrintable(QString("walkers: %1 %2").arg(column, value)),
          walkers(column, value).says({"feature 2", column, value, least}));
  row("walkers: kind 2", walkers("pace_kind", "2").says({"feature 2", "pace_kind", "2"}));
  row("walkers: kind 0.5", walkers("pace_kind", "0.5").says({"feature 2", "pace_kind", "0.5"}));
  row("walkers: kind in words", walkers("pace_kind", "double").says({"feature 2", "pace_kind", "double"}));
  row("walkers: double paces of 100",
      goodRoute()
          .with("WALKERS", table("crew",
                                 {field("walker", FieldType::Text), field("paces_100m", FieldType::Real),
                                  field("pace_kind", FieldType::Integer)},
                                 {{"Ben", 100.0, 1}}))
          .says({"WALKERS", "crew", "Ben", "100", "two ways"}));
  row("walkers who take 100 double paces of the parameter",
      goodRoute()
          .with("PACES_PER_100M", 100)
          .with("PACE_KIND", 1)
          .with("WALKERS",
                table("crew", {field("walker", FieldType::Text), field("pace_kind", FieldType::Integer)}, {{"Ben", 0}}))
          .says({"PACES_PER_100M", "100", "two ways"}));

  // Named points.
  row("named points without a name field",
      goodRoute()
          .with("POINTS", layer("trees", "Point", "EPSG:32621", {field("kind", FieldType::Text)}, {}))
          .says({"POINT_NAME", "trees", "name"}));
  row("named points with another field asked for",
      goodRoute()
          .with("POINTS", layer("trees", "Point", "EPSG:32621", {field("name", FieldType::Text)}, {}))
          .with("POINT_NAME", "label")
          .says({"POINT_NAME", "trees", "label"}));
  row("named points without a coordinate system",
      goodRoute()
          .with("POINTS", layer("trees", "Point", "", {field("name", FieldType::Text)}, {}))
          .says({"POINTS", "trees", "coordinate reference system"}));
  row("reach -1", goodRoute().with("SNAP", -1).says({"SNAP", "-1", "0", "1000"}));
  row("reach NaN", goodRoute().with("SNAP", notANumber).says({"SNAP"}));

  // Terrain.
  row("terrain that is not there", goodRoute().with("DEM", "nowhere.tif").says({"DEM", "nowhere.tif"}));
  RasterShape nowhere = shape();
  nowhere.crs.clear();
  row("terrain without a coordinate system",
      goodRoute().raster("DEM", nowhere, level).says({"DEM", "coordinate reference system"}));
  row("a band that is not there", goodRoute().raster("DEM", shape(), level).with("DEM_BAND", 2).says({"DEM", "band"}));
  row("band 0", goodRoute().raster("DEM", shape(), level).with("DEM_BAND", QVariant(0)).says({"DEM", "band"}));

  // Cover.
  row("cover without a class field",
      goodRoute()
          .with("COVER", layer("stands", "Polygon", "EPSG:32621", {field("kind", FieldType::Text)}, {}))
          .says({"COVER_CLASS", "stands", "class"}));
  row("cover with another field asked for", goodRoute()
                                                .with("COVER", standsOf({{everywhere, "brush"}}))
                                                .with("COVER_CLASS", "kind")
                                                .says({"COVER_CLASS", "stands", "kind"}));
  row("cover without a coordinate system",
      goodRoute()
          .with("COVER", layer("stands", "Polygon", "", {field("class", FieldType::Text)}, {}))
          .says({"COVER", "stands", "coordinate reference system"}));
  row("no class in the table", goodRoute()
                                   .with("COVER", standsOf({{everywhere, "jungle"}, {everywhere, "Jungle 2"}}))
                                   .says({"COVER", "stands", "jungle", "COVER_TABLE", "COVER_LEGEND"}));
  row("cover table without classes",
      goodRoute()
          .with("COVER_TABLE", table("kinds", {field("sight_m", FieldType::Real)}, {{12.0}}))
          .says({"COVER_TABLE", "kinds", "class"}));
  row("cover table without sights",
      goodRoute()
          .with("COVER_TABLE", table("kinds", {field("class", FieldType::Text)}, {{"brush"}}))
          .says({"COVER_TABLE", "kinds", "sight_m"}));
  row("cover table without rows",
      goodRoute()
          .with("COVER_TABLE", table("kinds", {field("class", FieldType::Text), field("sight_m", FieldType::Real)}, {}))
          .says({"COVER_TABLE", "kinds", "no classes"}));
  for (const char *value : {"0", "-5", "far", "nan", "inf", "12,5"})
    row(qPrintable(QString("cover table: sight ") + value),
        coverTable("sight_m", value).says({"brush", "sight_m", value, "0.5"}));
  row("cover table: no sight", coverTable("sight_m", QVariant()).says({"brush", "sight_m"}));
  row("cover table: bare sight 0", coverTable("sight_bare", "0").says({"brush", "sight_bare", "0.5"}));
  row("cover table: speed -1", coverTable("speed_f", "-1").says({"brush", "speed_f", "-1"}));
  row("cover table: paces 0", coverTable("pace_f", "0").says({"brush", "pace_f"}));
  row("cover table: a class twice", coverTable("class", " Wood").says({"feature 2", "twice"}));
  row("cover table: no name", coverTable("class", "").says({"feature 2", "name"}));
  row("codes that are not there",
      goodRoute().with("COVER_RASTER", "nowhere.tif").says({"COVER_RASTER", "nowhere.tif"}));
  row("codes without a coordinate system",
      goodRoute().raster("COVER_RASTER", nowhere, level).says({"COVER_RASTER", "coordinate reference system"}));
  row("sights without a coordinate system",
      goodRoute().raster("SIGHT_RASTER", nowhere, level).says({"SIGHT_RASTER", "coordinate reference system"}));
}

void AnnotateLegsBadInputTest::refused() {
  QFETCH(Case, bad);
  const InstalledModels none; // whatever is installed on this machine
  const QTemporaryDir folder;
  for (const char *key : {"OUTPUT", "MARKS", "DRIFT"})
    bad.parameters[key] = folder.filePath(QString(key) + ".gpkg");
  const Outcome outcome = annotate(bad.parameters);
  const QString said = outcome.said();
  QVERIFY2(!outcome.ok, qPrintable("it ran: " + said));
  for (const QString &word : bad.words)
    QVERIFY2(said.contains(word), qPrintable(word + " is missing in: " + said));
  QVERIFY2(!said.contains(QRegularExpression("%\\d|%n")), qPrintable(said));
  QCOMPARE(filesBelow(folder.path()), QStringList());
}

// --- passed over -----------------------------------------------------------------------------------------------------

void AnnotateLegsBadInputTest::passedOver_data() {
  QTest::addColumn<Case>("bad");
  row("a layer without features",
      Case().with("INPUT", routesOf("EPSG:4326", {})).says({"INPUT", "routes", "no features"}));
  row("points, none", Case()
                          .with("INPUT", pointsIn({}, QVariant::Int))
                          .with("ORDER_FIELD", "nr")
                          .says({"INPUT", "posts", "no features"}));
  row("no geometry", beside(QgsGeometry()).says({"no geometry"}));
  row("empty", beside(wkt("LINESTRING EMPTY")).says({"no geometry"}));
  row("like a point",
      beside(line({{400000, 5300000}, {400000, 5300000}, {400000.0001, 5300000}})).says({"no two vertices apart"}));
  row("one vertex", beside(line({{400000, 5300000}})).says({"no two vertices apart"}));
  row("NaN", beside(line({{400000, 5300000}, {400100, notANumber}})).says({"not a number", "vertex 2"}));
  row("infinite", beside(line({{-infinite, 5300000}, {400100, 5300000}})).says({"not a number", "vertex 1"}));
  row("far off the projection", beside(line({{1e12, 5300000}, {1e12, 5300100}})).says({"coordinate reference system"}));
  row("beyond the pole",
      beside(line({{-57, 90.5}, {-57, 89}}), "EPSG:4326", "LINESTRING(-57 48, -57 48.01, -57.01 48.01)")
          .says({"latitude", "90.5"}));
  row("beyond the pole on another datum",
      beside(line({{-57, 95}, {-57, 89}}), "EPSG:4269", "LINESTRING(-57 48, -57 48.01, -57.01 48.01)"));
  row("degrees labelled as UTM",
      Case()
          .with("INPUT", layer("my routes", "LineString", "EPSG:32621", {},
                               {{line({{-57.9, 48.4}, {-57.8, 48.4}, {-57.8, 48.5}}), {}}}))
          .keeps(2)
          .says({"INPUT", "my routes", "feature 1", "outside the area", "EPSG:32621", "latitude", "longitude"}));
  row("UTM labelled as degrees",
      only(line({{400000, 5300000}, {400100, 5300000}}), "EPSG:4326").says({"latitude", "5300000"}));
  row("a part without length",
      Case()
          .with("INPUT", routesOf("EPSG:32621",
                                  {"MULTILINESTRING((400000 5300000, 400100 5300000), (400100 5300000, 400100 "
                                   "5300000), (400100 5300000, 400100 5300100))"},
                                  "MultiLineString"))
          .keeps(2));
  row("points: one without a place", [] {
    std::vector<Row> rows;
    for (int i = 0; i < 3; ++i)
      for (const char *way : {"good", "bad"})
        rows.push_back(
            {QString(way) == "bad" && i == 1 ? QgsGeometry() : wkt(QString("POINT(%1 5300000)").arg(400000 + 100 * i)),
             {way, i}});
    return Case()
        .with("INPUT", layer("posts", "Point", "EPSG:32621",
                             {field("way", FieldType::Text), field("nr", FieldType::Integer)}, rows))
        .with("ROUTE_FIELD", "way")
        .with("ORDER_FIELD", "nr")
        .keeps(2)
        .says({"INPUT", "posts", "feature 4", "bad", "not complete", "1 route(s) passed over"});
  }());
  row("outside the grid", Case()
                              .with("INPUT", layer("my routes", "LineString", "EPSG:4326", {},
                                                   {{wkt("LINESTRING(-57 48, -57 48.01, -57.01 48.01)"), {}},
                                                    {wkt("LINESTRING(-57 -89.9, -57 -90)"), {}}}))
                              .with("GRID_CRS", "EPSG:2154")
                              .keeps(2)
                              .says({"INPUT", "my routes", "feature 2", "EPSG:2154", "GRID_CRS"}));

  row("walkers: empty rows",
      goodRoute()
          .with("WALKERS", table("crew", {field("walker", FieldType::Text), field("paces_100m", FieldType::Real)},
                                 {{QVariant(), QVariant()}, {"Ann", 120.0}, {"  ", QVariant()}}))
          .says({"WALKERS", "crew", "2 empty row(s)"}));
  row("named points: none",
      goodRoute().with("POINTS", layer("trees", "Point", "EPSG:32621", {field("name", FieldType::Text)}, {})));
  row("named points: nowhere",
      goodRoute()
          .with("POINTS", layer("trees", "Point", "EPSG:4326", {field("name", FieldType::Text)},
                                {{wkt("POINT(-57 91)"), {"a"}}, {QgsGeometry(), {"b"}}}))
          .says({"POINTS", "trees", "2 point(s)"}));

  RasterShape elsewhere = shape();
  elsewhere.transform[0] += 50000;
  row("terrain somewhere else",
      goodRoute().raster("DEM", elsewhere, level).says({"No heights on 200 m", "level ground"}));
  RasterShape holed = shape();
  holed.no_data = -9999;
  row("terrain without data",
      goodRoute().raster("DEM", holed, [](double, double, int) { return notANumber; }).says({"No heights on 200 m"}));

  row("terrain: infinite heights",
      goodRoute()
          .raster("DEM", shape(), [](double x, double, int) { return x > 400050 && x < 400100 ? infinite : 100; })
          .says({"No heights on"}));
  row("terrain: heights that are no numbers",
      goodRoute()
          .raster("DEM", shape(), [](double x, double, int) { return x > 400050 && x < 400100 ? notANumber : 100; })
          .says({"No heights on"}));
  for (const double hole : {-9999.0, -32768.0, -3.4e38, 65535.0})
    row(qPrintable(QStringLiteral("terrain: holes of %1 that the file does not tell of").arg(hole)),
        goodRoute()
            .raster("DEM", shape(), [hole](double x, double, int) { return x > 400050 && x < 400100 ? hole : 100; })
            .says({"No heights on"}));
  row("sights without end", goodRoute().raster("SIGHT_RASTER", shape(), [](double, double, int) { return infinite; }));

  row("cover: classes that the table lacks",
      goodRoute()
          .with("COVER", standsOf({{everywhere, "jungle"}, {everywhere, QVariant()}, {everywhere, "brush"}}))
          .says({"COVER", "stands", "jungle", "COVER_TABLE"}));
  row("cover: no geometry",
      goodRoute()
          .with("COVER", standsOf({{"", "brush"}, {"POLYGON EMPTY", "brush"}, {everywhere, "heath"}}))
          .says({"COVER", "stands", "2 polygon(s)"}));
  row("cover: gaps",
      goodRoute()
          .with("COVER",
                standsOf({{"POLYGON((399900 5299900, 400100 5299900, 400100 5300100, 399900 5300100, 399900 5299900))",
                           "heath"}}))
          .says({"cover of 100 m of this leg is not known"}));
  row("cover: overlapping", goodRoute()
                                .with("COVER", standsOf({{everywhere, "heath"}, {everywhere, "brush"}}))
                                .says({"2 leg(s)", "overlap", "first"}));
  row("cover: crosses itself",
      goodRoute()
          .with("COVER",
                standsOf({{"POLYGON((399900 5299900, 400500 5300100, 400500 5299900, 399900 5300100, 399900 5299900))",
                           "brush"}}))
          .says({"is not known"}));
  row("sights of 0", goodRoute()
                         .raster("SIGHT_RASTER", shape(), [](double, double, int) { return 0; })
                         .says({"SIGHT_RASTER", "0 or less"}));
  row("sights below 0", goodRoute()
                            .raster("SIGHT_RASTER", shape(), [](double, double, int) { return -3; })
                            .says({"SIGHT_RASTER", "0 or less"}));
  row("codes that the table lacks",
      goodRoute()
          .raster("COVER_RASTER", shape(), [](double x, double, int) { return x < 400100 ? 10 : 777; })
          .with("COVER_LEGEND", 1)
          .says({"COVER_RASTER", "777", "COVER_TABLE"}));
}

void AnnotateLegsBadInputTest::passedOver() {
  QFETCH(Case, bad);
  const Outcome outcome = annotate(bad.parameters);
  QString said = outcome.said();
  if (bad.rows == 0 && !outcome.ok) {
    // Nothing was left to write.
    for (const QString &word : bad.words)
      QVERIFY2(said.contains(word), qPrintable(word + " is missing in: " + said));
    return;
  }
  if (!outcome.ok && Qgis::versionInt() >= 34400 && QTest::currentDataTag() == QByteArray("infinite")) {
    // That host does not open such a layer.
    QVERIFY2(said.contains("INPUT") && said.contains("not a number"), qPrintable(said));
    return;
  }
  VERIFY_RAN(outcome);
  QCOMPARE(outcome.rows().size(), bad.rows);
  for (const OutputRow &leg : outcome.rows()) {
    said += "\n" + leg.text("warnings");
    QCOMPARE(leg.text("route") == "bad", false);
    for (const char *name :
         {"true_brg", "grid_brg", "mag_brg", "dist_m", "dial", "drift_m", "along_m", "converg", "walk_min"})
      QVERIFY2(std::isfinite(leg.number(name)), name);
    for (const char *name : {"slope_m", "climb_m", "drop_m", "sight_m", "spacing_m"})
      QVERIFY2(leg.null(name) || std::isfinite(leg.number(name)), name);
    QVERIFY(leg["paces"].toInt() >= 0);
  }
  for (const QString &word : bad.words)
    QVERIFY2(said.contains(word), qPrintable(word + " is missing in: " + said));
  QVERIFY2(!said.contains(QRegularExpression("%\\d|%n")), qPrintable(said));
}

// A thousand bad routes are counted, and twenty of them named.
void AnnotateLegsBadInputTest::toldOfTwentyOnly() {
  std::vector<Row> rows(1000, {QgsGeometry(), {}});
  rows.push_back({wkt(goodText), {}});
  const Layer routes = layer("my routes", "LineString", "EPSG:32621", {}, rows);
  const Outcome outcome = annotate({{"INPUT", valueOf(routes)}});
  VERIFY_RAN(outcome);
  QCOMPARE(outcome.rows().size(), size_t(2));
  QCOMPARE(outcome.warnings.size(), 21);
  QVERIFY2(outcome.warnings.last().contains("1000 route(s)"), qPrintable(outcome.warnings.last()));
}

// --- outputs ---------------------------------------------------------------------------------------------------------

void AnnotateLegsBadInputTest::unwritable_data() {
  QTest::addColumn<QString>("key");
  QTest::addColumn<QString>("path"); // @: the temporary folder
  for (const char *key : {"OUTPUT", "MARKS", "DRIFT"}) {
    const auto row = [key](const char *name, const QString &path) {
      QTest::addRow("%s %s", key, name) << QString(key) << path;
    };
    row("below a file", "@/file/legs.gpkg");
    row("in the system's own folder", "/proc/brushline/legs.gpkg");
    row("in a folder that is not there", "@/nowhere/at all/legs.gpkg");
    row("without an ending, below a file", "@/file/legs");
  }
}

// Nothing is written, also not to the outputs that could be.
void AnnotateLegsBadInputTest::unwritable() {
  QFETCH(QString, key);
  QFETCH(QString, path);
  const QTemporaryDir folder, others;
  QFile file(folder.filePath("file"));
  QVERIFY(file.open(QIODevice::WriteOnly) && file.write("precious") == 8);
  file.close();
  const Layer routes = good();
  QVariantMap parameters{{"INPUT", valueOf(routes)}};
  for (const char *each : {"OUTPUT", "MARKS", "DRIFT"})
    parameters[each] = others.filePath(QString(each) + ".gpkg");
  parameters[key] = QString(path).replace("@", folder.path());
  const Outcome outcome = annotate(parameters);
  const QString said = outcome.said();
  QVERIFY2(!outcome.ok, qPrintable("it ran: " + said));
  QVERIFY2(said.contains(key), qPrintable(said));
  QVERIFY2(said.contains(parameters[key].toString()), qPrintable(said));
  QCOMPARE(filesBelow(others.path()), QStringList());
  QCOMPARE(filesBelow(folder.path()), QStringList({"file"}));
  QVERIFY(file.open(QIODevice::ReadOnly));
  QCOMPARE(file.readAll(), QByteArray("precious"));
}

void AnnotateLegsBadInputTest::inputFileIsSafe_data() {
  QTest::addColumn<QString>("ending");
  QTest::addColumn<QString>("input"); // @: the file
  QTest::addColumn<QString>("output");
  QTest::addColumn<QString>("key");
  QTest::addColumn<QString>("inputKey");
  const auto row = [](const char *name, const char *ending, const char *input, const char *output,
                      const char *key = "OUTPUT", const char *inputKey = "INPUT") {
    QTest::newRow(name) << QString(ending) << QString(input) << QString(output) << QString(key) << QString(inputKey);
  };
  for (const char *ending : {"gpkg", "fgb", "geojson", "shp"})
    row(ending, ending, "@", "@");
  row("by the layer in it", "gpkg", "@|layername=routes", "@");
  row("by a way about", "gpkg", "@", "%/../%name/routes.gpkg");
  row("as a table of the same file", "gpkg", "@", "ogr:dbname='@' table=\"routes\" (geom)");
  row("without its ending, which the host puts there", "gpkg", "@", "%/routes");
  row("marks", "gpkg", "@", "@", "MARKS");
  row("drift", "geojson", "@", "@", "DRIFT");
  row("the walkers' table", "csv", "@", "@", "OUTPUT", "WALKERS");
  row("the named points", "gpkg", "@", "@", "MARKS", "POINTS");
}

// An output in the place of an input would destroy it before it is read.
void AnnotateLegsBadInputTest::inputFileIsSafe() {
  QFETCH(QString, ending);
  QFETCH(QString, input);
  QFETCH(QString, output);
  QFETCH(QString, key);
  QFETCH(QString, inputKey);
  const QTemporaryDir folder;
  const QString path = folder.filePath("routes." + ending);
  const Layer routes = good();
  if (inputKey == "INPUT") {
    save(routes, path);
  } else if (inputKey == "POINTS") {
    save(layer("routes", "Point", "EPSG:32621", {field("name", FieldType::Text)},
               {{wkt("POINT(400000 5300000)"), {"camp"}}}),
         path);
  } else {
    save(table("routes", {field("walker", FieldType::Text)}, {{"Ann"}}), path);
  }
  QFile file(path);
  QVERIFY(file.open(QIODevice::ReadOnly));
  const QByteArray before = file.readAll();
  file.close();
  QVariantMap parameters{{"INPUT", valueOf(routes)}};
  parameters[inputKey] = input.replace("@", path);
  parameters[key] =
      output.replace("@", path).replace("%name", QFileInfo(folder.path()).fileName()).replace("%", folder.path());
  const Outcome outcome = annotate(parameters);
  const QString said = outcome.said();
  QVERIFY2(!outcome.ok, "it ran");
  for (const QString &word : {key, inputKey, QString("routes")})
    QVERIFY2(said.contains(word), qPrintable(said));
  QVERIFY(file.open(QIODevice::ReadOnly));
  QVERIFY(file.readAll() == before);
}

// Two outputs cannot be one file; the second would wipe out the first.
void AnnotateLegsBadInputTest::twoOutputsInOneFile() {
  const Layer routes = good();
  for (const bool there : {false, true})
    for (const char *name : {"legs.gpkg", "legs.fgb", "legs.geojson", "legs"}) {
      const QTemporaryDir folder;
      const QString path = folder.filePath(name), about = folder.path() + "/./" + name;
      if (there) { // from a run before
        VERIFY_RAN(annotate({{"INPUT", valueOf(routes)}, {"OUTPUT", path}}));
      }
      const QStringList before = filesBelow(folder.path());
      const Outcome outcome = annotate({{"INPUT", valueOf(routes)}, {"OUTPUT", path}, {"MARKS", about}});
      QVERIFY2(!outcome.ok, name);
      for (const char *key : {"OUTPUT", "MARKS"})
        QVERIFY2(outcome.said().contains(key), qPrintable(outcome.said()));
      QCOMPARE(filesBelow(folder.path()), before);
    }
}

// Neighbours in one database are no harm: the host writes a table of its own, beside the one it reads.
void AnnotateLegsBadInputTest::anotherTableOfTheInputFile() {
  const QTemporaryDir folder;
  const QString path = folder.filePath("routes.gpkg");
  save(good(), path);
  const Outcome outcome = annotate(
      {{"INPUT", path + "|layername=routes"}, {"OUTPUT", QString("ogr:dbname='%1' table=\"legs\" (geom)").arg(path)}});
  VERIFY_RAN(outcome);
  QCOMPARE(outcome.rows().size(), size_t(2));
  const QgsVectorLayer still(path + "|layername=routes", "routes", "ogr");
  QVERIFY(still.isValid());
  QCOMPARE(read(still).rows.size(), size_t(1));
}

// What a run made before is replaced by the next, as the host's own algorithms do.
void AnnotateLegsBadInputTest::oldOutputIsReplaced() {
  const Layer routes = good();
  for (const char *ending : {"gpkg", "fgb", "geojson", "shp", "csv"}) {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QString("legs.") + ending);
    const Outcome once = annotate({{"INPUT", valueOf(routes)}, {"OUTPUT", path}, {"DIRECTION", 2}});
    VERIFY_RAN(once);
    QCOMPARE(once.rows().size(), size_t(4));
    const Outcome twice = annotate({{"INPUT", valueOf(routes)}, {"OUTPUT", path}});
    VERIFY_RAN(twice);
    QCOMPARE(twice.rows().size(), size_t(2));
  }
}

BRUSHLINE_HOST_TEST_MAIN(AnnotateLegsBadInputTest)
#include "annotate_legs_bad_input_test.moc"
