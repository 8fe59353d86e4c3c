// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/grid_north.h"

#include "support/check_values.h"
#include "support/near.h"
#include "support/random.h"

#include <proj.h>

#include <limits>
#include <memory>
#include <set>
#include <stdexcept>
#include <utility>

using namespace brushline;
using namespace brushline::test;

class GridNorthTest : public QObject {
  Q_OBJECT
private slots:
  void checkValues();
  void publishedPoint();
  void againstProjFactors_data();
  void againstProjFactors();
  void otherMeridianAndUnit();
  void axesByName_data();
  void axesByName();
  void southAndWest();
  void anyTurnOfLongitude();
  void poles();
  void outOfReach();
  void bearingOfPoints();
  void bearingOfALineAtAPlace();
  void theShorterWayRound();
  void worldWidth_data();
  void worldWidth();
  void notProjected_data();
  void notProjected();
  void wrapped_data();
  void wrapped();
  void moved();
  void standardGrid_data();
  void standardGrid();
};

namespace {
Place place(double latitude, double longitude) { return {Angle::degrees(latitude), Angle::degrees(longitude)}; }
} // namespace

void GridNorthTest::checkValues() {
  const CheckValues values("shared/data/grid_convergence.csv");
  std::set<std::string> systems;
  for (const CheckRow &row : values.rows()) {
    const GridNorth grid(row.text("crs"));
    const double convergence = grid.at(place(row.number("lat_deg"), row.number("lon_deg"))).east.degrees();
    VERIFY_CHECK(values.checkTurn(row, "convergence_deg", convergence));
    systems.insert(row.text("crs"));
  }
  // The polar ones name northing before easting.
  QVERIFY(systems.count("EPSG:32661") && systems.count("EPSG:32761"));
  QVERIFY(systems.count("EPSG:2048")); // counts to the west and to the south
}

// The printed point of the example, and the ground the computed rows stand on: PROJ, which works out the grid here,
// sets the same coordinates and scale.
void GridNorthTest::publishedPoint() {
  const CheckValues values("shared/data/grid_convergence.csv");
  const std::unique_ptr<PJ_CONTEXT, decltype(&proj_context_destroy)> context(proj_context_create(),
                                                                             proj_context_destroy);
  int published = 0, computed = 0;
  for (const CheckRow &row : values.rows()) {
    if (!row.maybe("x_m"))
      continue;
    const std::unique_ptr<PJ, decltype(&proj_destroy)> system(proj_create(context.get(), row.text("crs").c_str()),
                                                              proj_destroy);
    QVERIFY(system);
    const std::unique_ptr<PJ, decltype(&proj_destroy)> places(proj_crs_get_geodetic_crs(context.get(), system.get()),
                                                              proj_destroy);
    const std::unique_ptr<PJ, decltype(&proj_destroy)> stated(
        proj_create_crs_to_crs_from_pj(context.get(), places.get(), system.get(), nullptr, nullptr), proj_destroy);
    QVERIFY(stated);
    const std::unique_ptr<PJ, decltype(&proj_destroy)> projection(
        proj_normalize_for_visualization(context.get(), stated.get()), proj_destroy);
    const double latitude = row.number("lat_deg"), longitude = row.number("lon_deg");
    const PJ_COORD at = proj_trans(projection.get(), PJ_FWD, proj_coord(longitude, latitude, 0, 0));
    const Place where = place(latitude, longitude);
    const double scale =
        proj_factors(system.get(), proj_coord(where.longitude.radians(), where.latitude.radians(), 0, 0))
            .meridional_scale;
    VERIFY_CHECK(values.check(row, "x_m", at.xy.x));
    VERIFY_CHECK(values.check(row, "y_m", at.xy.y));
    VERIFY_CHECK(values.check(row, "k", scale));
    ++computed;
    if (!row.maybe("published_x_m"))
      continue;
    VERIFY_CHECK(values.check(row, "published_x_m", at.xy.x));
    VERIFY_CHECK(values.check(row, "published_y_m", at.xy.y));
    VERIFY_CHECK(values.check(row, "published_k", scale));
    ++published;
  }
  QCOMPARE(published, 1);
  QVERIFY(computed > 10);
}

void GridNorthTest::againstProjFactors_data() {
  QTest::addColumn<QString>("crs");
  QTest::addColumn<double>("south");
  QTest::addColumn<double>("north");
  QTest::addColumn<double>("west");
  QTest::addColumn<double>("east");
  QTest::newRow("UTM 21 north") << "EPSG:32621" << 0.0 << 84.0 << -62.0 << -52.0;
  QTest::newRow("UTM 19 south") << "EPSG:32719" << -80.0 << 0.0 << -74.0 << -64.0;
  QTest::newRow("Great Britain") << "EPSG:27700" << 49.8 << 61.0 << -8.0 << 2.0;
  QTest::newRow("France, conic") << "EPSG:2154" << 41.0 << 51.5 << -9.0 << 10.0;
  QTest::newRow("web map") << "EPSG:3857" << -80.0 << 80.0 << -180.0 << 180.0;
  QTest::newRow("Arctic") << "EPSG:3413" << 60.0 << 89.9 << -180.0 << 180.0;
}

// PROJ's own factors on the coordinate system, which are slow: a few random places each.
void GridNorthTest::againstProjFactors() {
  QFETCH(QString, crs);
  QFETCH(double, south);
  QFETCH(double, north);
  QFETCH(double, west);
  QFETCH(double, east);
  const std::unique_ptr<PJ_CONTEXT, decltype(&proj_context_destroy)> context(proj_context_create(),
                                                                             proj_context_destroy);
  const std::unique_ptr<PJ, decltype(&proj_destroy)> system(proj_create(context.get(), crs.toUtf8().constData()),
                                                            proj_destroy);
  QVERIFY(system);
  const GridNorth grid(crs.toStdString());
  Random random(60);
  for (int i = 0; i < 15; ++i) {
    const Place p = place(random.between(south, north), random.between(west, east));
    const PJ_FACTORS factors =
        proj_factors(system.get(), proj_coord(p.longitude.radians(), p.latitude.radians(), 0, 0));
    QCOMPARE(proj_errno(system.get()), 0);
    const double expected = Angle::radians(factors.meridian_convergence).degrees();
    VERIFY_CHECK(checkOf("convergence",
                         crs.toStdString() + " " + std::to_string(p.latitude.degrees()) + " " +
                             std::to_string(p.longitude.degrees()),
                         turnedTo(grid.at(p).east.degrees(), expected), expected, 1e-7, "deg",
                         "computed with PROJ's proj_factors, at random places in six systems"));
  }
}

// France's old conic grid counts gon from Paris. The convergence of a conic with one standard parallel is
// sin(52 gon) (longitude - 2.5969213 gon from Greenwich), exactly; computed. The definition: EPSG, from memory.
void GridNorthTest::otherMeridianAndUnit() {
  const GridNorth grid("EPSG:27572");
  const double paris = 2.5969213 * 0.9;
  const double cone = std::sin(Angle::degrees(52 * 0.9).radians());
  for (const Place &p : {place(47, 5), place(47, paris), place(45.5, -1), place(48.5, 7.5)})
    VERIFY_CHECK(checkOf("convergence", std::to_string(p.longitude.degrees()), grid.at(p).east.degrees(),
                         cone * (p.longitude.degrees() - paris), 1e-7, "deg",
                         "the conic with one standard parallel of EPSG:27572, sin(52 gon) (longitude - 2.5969213 gon); "
                         "its definition in EPSG from memory"));
}

void GridNorthTest::axesByName_data() {
  QTest::addColumn<QString>("axes");
  QTest::addColumn<double>("x"); // what 300 m to the east and 400 m to the north are in the coordinates
  QTest::addColumn<double>("y");
  QTest::newRow("east, north") << "enu" << 300.0 << 400.0;
  QTest::newRow("north, east") << "neu" << 300.0 << 400.0; // the host and PROJ put east first
  QTest::newRow("west, south") << "wsu" << -300.0 << -400.0;
  QTest::newRow("west, north") << "wnu" << -300.0 << 400.0;
  QTest::newRow("east, south") << "esu" << 300.0 << -400.0;
  // They leave these in their order.
  QTest::newRow("south, west") << "swu" << -400.0 << -300.0;
  QTest::newRow("north, west") << "nwu" << 400.0 << -300.0;
  QTest::newRow("south, east") << "seu" << -400.0 << 300.0;
}

// One projection, however its axes run: grid north and the bearing of a line are the same.
void GridNorthTest::axesByName() {
  QFETCH(QString, axes);
  QFETCH(double, x);
  QFETCH(double, y);
  const GridNorth grid("+proj=tmerc +lon_0=19 +axis=" + axes.toStdString() + " +ellps=WGS84 +type=crs");
  VERIFY_CHECK(checkOf("convergence by the names of the axes", axes.toStdString(),
                       grid.at(place(-33.9, 18.5)).east.degrees(), 0.278877500, 1e-6, "deg",
                       "computed with GeographicLib's TransverseMercatorExact (WGS 84, central meridian 19 E, scale "
                       "1), whatever the axes"));
  constexpr double angle = 36.86989764584402; // atan(3/4), computed
  VERIFY_NEAR(grid.bearing({1000, 2000}, {1000 + x, 2000 + y}).degrees(), angle, 1e-9, "there");
  VERIFY_NEAR(grid.bearing({1000 + x, 2000 + y}, {1000, 2000}).degrees(), 180 + angle, 1e-9, "and back");
}

// Krovak's systems that count south and west, from Greenwich and from Ferro, lie as those that count east and north.
// The convergence, towards the west, from the coordinates in kilometres: 0.008257 westing + 2.373 westing / southing
// degrees, good to about 0.01 (surveyors' textbooks, from memory).
void GridNorthTest::southAndWest() {
  const std::unique_ptr<PJ_CONTEXT, decltype(&proj_context_destroy)> context(proj_context_create(),
                                                                             proj_context_destroy);
  const std::unique_ptr<PJ, decltype(&proj_destroy)> krovak(
      proj_create_crs_to_crs(context.get(), "EPSG:4156", "EPSG:5513", nullptr), proj_destroy);
  QVERIFY(krovak);
  const GridNorth southWest("EPSG:5513"), eastNorth("EPSG:5514"), ferro("EPSG:2065"), ferroEastNorth("EPSG:5221");
  for (const Place &p : {place(50.09, 14.42), place(49.2, 16.6), place(48.7, 21.3)}) {
    const std::string where = std::to_string(p.longitude.degrees());
    const PJ_COORD at =
        proj_trans(krovak.get(), PJ_FWD, proj_coord(p.latitude.degrees(), p.longitude.degrees(), 0, HUGE_VAL));
    const double southing = at.xy.x / 1000, westing = at.xy.y / 1000;
    VERIFY_CHECK(checkOf("convergence", where, eastNorth.at(p).east.degrees(),
                         -(0.008257 * westing + 2.373 * westing / southing), 0.02, "deg",
                         "the surveyors' formula for Krovak's projection, 0.008257 Y + 2.373 Y / X; from memory"));
    VERIFY_NEAR(southWest.at(p).east.degrees(), eastNorth.at(p).east.degrees(), 1e-7, where);
    VERIFY_NEAR(ferro.at(p).east.degrees(), eastNorth.at(p).east.degrees(), 1e-6, where);
    VERIFY_NEAR(ferroEastNorth.at(p).east.degrees(), eastNorth.at(p).east.degrees(), 1e-6, where);
  }
}

void GridNorthTest::anyTurnOfLongitude() {
  const GridNorth grid("EPSG:32601");
  const double convergence = grid.at(place(52, -179.5)).east.degrees();
  VERIFY_NEAR(grid.at(place(52, 180.5)).east.degrees(), convergence, 1e-7, "180.5");
  VERIFY_NEAR(grid.at(place(52, -539.5)).east.degrees(), convergence, 1e-7, "-539.5");
  VERIFY_NEAR(grid.at(place(52, 180)).east.degrees(), grid.at(place(52, -180)).east.degrees(), 1e-7, "180");
}

// At a pole, that of the given longitude: for the polar grid the longitude itself, by its definition.
void GridNorthTest::poles() {
  const GridNorth north("EPSG:32661"), south("EPSG:32761");
  for (double longitude : {0.0, 33.0, -120.0, 179.0}) {
    VERIFY_NEAR(turnBetween(north.at(place(90, longitude)).east.degrees(), longitude), 0, 1e-6, "north");
    VERIFY_NEAR(turnBetween(south.at(place(-90, longitude)).east.degrees(), -longitude), 0, 1e-6, "south");
  }
  // Transverse Mercator too: longitude less the central meridian.
  VERIFY_NEAR(GridNorth("EPSG:32632").at(place(90, 12)).east.degrees(), 3, 1e-6, "UTM");
}

// A quarter of the Earth from its meridian, the transverse Mercator projection has no end.
void GridNorthTest::outOfReach() {
  const GridNorth grid("EPSG:32632");
  QVERIFY(std::isnan(grid.at(place(0, 99)).east.degrees()));
  QVERIFY(std::isfinite(grid.at(place(47, 9)).east.degrees())); // and the next answer is whole again
}

// By hand, on a grid that ends: clockwise from the grid's lines to the north; nothing where a number is missing.
void GridNorthTest::bearingOfPoints() {
  const GridNorth grid("EPSG:32632");
  constexpr double angle = 36.86989764584402; // atan(3/4), computed
  const GridPoint from{500000, 5000000};
  const auto to = [&](double east, double north) {
    return grid.bearing(from, {from.easting + east, from.northing + north}).degrees();
  };
  VERIFY_NEAR(to(300, 400), angle, 1e-9, "north east");
  VERIFY_NEAR(to(300, -400), 180 - angle, 1e-9, "south east");
  VERIFY_NEAR(to(-300, -400), 180 + angle, 1e-9, "south west");
  VERIFY_NEAR(to(-300, 400), 360 - angle, 1e-9, "north west");
  VERIFY_NEAR(to(3e7, 4e7), angle, 1e-9, "farther than the Earth is wide: no other way");
  const double gap = std::numeric_limits<double>::quiet_NaN();
  QVERIFY(std::isnan(grid.bearing({gap, 5000000}, from).degrees()));
  QVERIFY(std::isnan(grid.bearing({500000, gap}, from).degrees()));
  QVERIFY(std::isnan(grid.bearing(from, {gap, 5000100}).degrees()));
  QVERIFY(std::isnan(grid.bearing(from, {500100, gap}).degrees()));
  const GridNorth world("EPSG:3857");
  QVERIFY(std::isnan(world.bearing({gap, 0}, {0, 100}).degrees()));
  QVERIFY(std::isnan(world.bearing({0, 0}, {100, gap}).degrees()));
  QVERIFY(std::isnan(grid.at(place(gap, 9)).east.degrees()));
  QVERIFY(std::isnan(grid.at(place(47, gap)).east.degrees()));
}

// By hand: on a map that goes on round the Earth, 2 pi 6378137 wide, a line longer than half of it to the one side is
// shorter to the other.
void GridNorthTest::theShorterWayRound() {
  const double world = 2 * Angle::pi * 6378137;
  constexpr double angle = 36.86989764584402;          // atan(3/4), computed
  for (const char *crs : {"EPSG:3857", "EPSG:3832"}) { // cut at 180 degrees, and 150 degrees farther east
    const GridNorth grid(crs);
    const auto bearing = [&](double x, double toX, double toY) { return grid.bearing({x, 0}, {toX, toY}).degrees(); };
    const double edge = world / 2;
    VERIFY_NEAR(bearing(edge - 100, 200 - edge, 400), angle, 1e-6, crs);       // 300 m east over the edge
    VERIFY_NEAR(bearing(200 - edge, edge - 100, 400), 360 - angle, 1e-6, crs); // and back
    VERIFY_NEAR(bearing(edge - 100, 200 - edge, 0), 90, 1e-9, crs);
    VERIFY_NEAR(bearing(200 - edge, edge - 100, 0), 270, 1e-9, crs);
    VERIFY_NEAR(bearing(0, 0.49 * world, 0), 90, 1e-9, crs); // just less than half of it, and just more
    VERIFY_NEAR(bearing(0, 0.51 * world, 0), 270, 1e-9, crs);
    VERIFY_NEAR(bearing(0, -0.49 * world, 0), 270, 1e-9, crs);
    VERIFY_NEAR(bearing(0, -0.51 * world, 0), 90, 1e-9, crs);
    VERIFY_NEAR(bearing(0, 0.7 * world, 0.4 * world), 360 - angle, 1e-9, crs); // 0.3 west and 0.4 north
    VERIFY_NEAR(bearing(0, 2 * world + 300, 400), angle, 1e-6, crs);           // another turn
  }
}

// By the formulas of EPSG guidance note 7-2 for x (Mercator variants A and B, Pseudo-Mercator, Lambert cylindrical
// equal area, equidistant cylindrical): a turn is 2 pi times the radius of the parallel that is true to scale. The note
// and the parameters of the systems from memory.
void GridNorthTest::worldWidth_data() {
  QTest::addColumn<QString>("crs");
  QTest::addColumn<double>("width");
  const auto parallel = [](double a, double flattening, double latitude) {
    const double e2 = flattening * (2 - flattening), sine = std::sin(Angle::degrees(latitude).radians());
    return 2 * Angle::pi * a * std::sqrt((1 - sine * sine) / (1 - e2 * sine * sine));
  };
  const double a = 6378137, f = 1 / 298.257223563;
  const auto row = [](const char *crs, double width) { QTest::newRow(crs) << QString::fromLatin1(crs) << width; };
  row("EPSG:3857", parallel(a, 0, 0));
  row("EPSG:3395", parallel(a, f, 0));
  row("EPSG:3832", parallel(a, f, 0)); // about 150 east
  row("EPSG:3994", parallel(a, f, 41));
  row("EPSG:3388", parallel(6378245, 1 / 298.3, 42)); // on an old datum
  row("EPSG:6933", parallel(a, f, 30));
  row("EPSG:4087", parallel(a, f, 0));
  row("+proj=merc +lon_0=22.5 +x_0=3e7 +type=crs", parallel(a, f, 0)); // cut at a meridian that is asked
  for (const char *crs :
       {"EPSG:32601", "EPSG:32660", "EPSG:32760", "EPSG:2193", "EPSG:27700", "EPSG:2154", "EPSG:27572", "EPSG:3413",
        "EPSG:3031", "EPSG:32661", "EPSG:3035", "EPSG:29873", "EPSG:2048", "EPSG:8857"})
    row(crs, 0);
}

void GridNorthTest::worldWidth() {
  QFETCH(QString, crs);
  QFETCH(double, width);
  VERIFY_NEAR(GridNorth(crs.toStdString()).worldWidth(), width, 1e-6, crs.toStdString());
}

void GridNorthTest::notProjected_data() {
  QTest::addColumn<QString>("crs");
  for (const char *crs : {"EPSG:4326", "EPSG:4979", "EPSG:4978", "EPSG:5773", "EPSG:9518", "EPSG:999999", "", "garbage",
                          "+proj=utm +zone=32", "+proj=longlat +datum=WGS84 +type=crs"})
    QTest::newRow(*crs ? crs : "nothing") << QString::fromLatin1(crs);
}

void GridNorthTest::notProjected() {
  QFETCH(QString, crs);
  bool refused = false;
  try {
    const GridNorth grid(crs.toStdString());
  } catch (const std::invalid_argument &error) {
    refused = QString::fromUtf8(error.what()).contains(crs);
  }
  QVERIFY(refused);
}

// Compound and bound systems hold a projected one, and give its answer.
void GridNorthTest::wrapped_data() {
  QTest::addColumn<QString>("crs");
  QTest::addColumn<QString>("inner");
  QTest::newRow("compound") << "EPSG:7415"
                            << "EPSG:28992";
  QTest::newRow("compound by parts") << "EPSG:32632+5773"
                                     << "EPSG:32632";
  QTest::newRow("bound") << "+proj=tmerc +lon_0=9 +ellps=bessel +towgs84=598,73,418,0,0,0,0 +type=crs"
                         << "+proj=tmerc +lon_0=9 +ellps=bessel +type=crs";
  QTest::newRow("bound in a compound")
      << "+proj=tmerc +lon_0=9 +ellps=bessel +towgs84=598,73,418,0,0,0,0 +vunits=m +type=crs"
      << "+proj=tmerc +lon_0=9 +ellps=bessel +type=crs";
}

void GridNorthTest::wrapped() {
  QFETCH(QString, crs);
  QFETCH(QString, inner);
  const GridNorth outer(crs.toStdString()), plain(inner.toStdString());
  for (const Place &p : {place(52, 5), place(51, 7.5), place(47, 11)}) {
    QVERIFY(outer.at(p).east.degrees() == plain.at(p).east.degrees());
    QVERIFY(std::abs(plain.at(p).east.degrees()) > 0.1);
  }
}

void GridNorthTest::moved() {
  GridNorth first("EPSG:32632");
  const double convergence = first.at(place(47.5, 8)).east.degrees();
  GridNorth second(std::move(first));
  QVERIFY(second.at(place(47.5, 8)).east.degrees() == convergence);
  first = GridNorth("EPSG:32633");
  QVERIFY(first.at(place(47.5, 8)).east.degrees() < convergence);
}

// The zones of UTM and UPS: DMA TM 8358.2, from memory.
void GridNorthTest::standardGrid_data() {
  QTest::addColumn<double>("latitude");
  QTest::addColumn<double>("longitude");
  QTest::addColumn<QString>("crs");
  const auto row = [](const char *name, double latitude, double longitude, const char *crs) {
    QTest::newRow(name) << latitude << longitude << QString::fromLatin1(crs);
  };
  row("Alps", 47, 8, "EPSG:32632");
  row("the zone's western edge is its own", 47, 6, "EPSG:32632");
  row("just west of it", 47, 5.999999, "EPSG:32631");
  row("equator is north", 0, 10, "EPSG:32632");
  row("south", -33.9, 18.4, "EPSG:32734");
  row("just south of the equator", -1e-9, 10, "EPSG:32732");
  row("west coast of Norway", 60.4, 5.3, "EPSG:32632");
  row("Norway 32V, western edge", 60, 3, "EPSG:32632");
  row("west of 32V", 60, 2.999999, "EPSG:32631");
  row("south of 32V", 55.999999, 5, "EPSG:32631");
  row("32V, southern edge", 56, 5, "EPSG:32632");
  row("north of 32V", 64, 5, "EPSG:32631");
  row("Svalbard 31", 78, 8.999999, "EPSG:32631");
  row("Svalbard 33", 78, 9, "EPSG:32633");
  row("Svalbard 33, eastern part", 78, 20.999999, "EPSG:32633");
  row("Svalbard 35", 78, 21, "EPSG:32635");
  row("Svalbard 37", 78, 33, "EPSG:32637");
  row("Svalbard 37, eastern part", 78, 41.999999, "EPSG:32637");
  row("east of Svalbard", 78, 42, "EPSG:32638");
  row("south of Svalbard", 71.999999, 10, "EPSG:32632");
  row("83.9 north", 83.9, 10, "EPSG:32633");
  row("from 84 north", 84, 10, "EPSG:32661");
  row("north pole", 90, 0, "EPSG:32661");
  row("80 south", -80, 10, "EPSG:32732");
  row("beyond 80 south", -80.000001, 10, "EPSG:32761");
  row("south pole", -90, 0, "EPSG:32761");
  row("antimeridian", 52, 180, "EPSG:32601");
  row("antimeridian from the west", 52, -180, "EPSG:32601");
  row("just west of it", 52, 179.999999, "EPSG:32660");
  row("another turn", -45, 540, "EPSG:32701");
}

void GridNorthTest::standardGrid() {
  QFETCH(double, latitude);
  QFETCH(double, longitude);
  QFETCH(QString, crs);
  VERIFY_CHECK(checkOf("standard grid", QTest::currentDataTag(), brushline::standardGrid(place(latitude, longitude)),
                       crs.toStdString(), "the zones of UTM and UPS, DMA TM 8358.2; from memory"));
  const GridNorth grid(crs.toStdString()); // and it exists
  QVERIFY(std::isfinite(grid.at(place(latitude, longitude)).east.degrees()));
}

// UTM keeps angles. On the web map tan(bearing) grows by M / N, the radii of curvature along and across the meridian.
void GridNorthTest::bearingOfALineAtAPlace() {
  const GridNorth utm("EPSG:32632"), web("EPSG:3857");
  constexpr double e2 = 0.00669437999014; // WGS 84
  for (double latitude = -75; latitude <= 75; latitude += 25)
    for (double way = 3; way < 360; way += 17) {
      const Place here = place(latitude, 11);
      const TrueBearing bearing(Angle::degrees(way));
      const double sine = std::sin(here.latitude.radians());
      const double north = 1 - e2 * sine * sine; // N / M * (1 - e2)
      const double onWeb = Angle::radians(std::atan2(std::sin(Angle::degrees(way).radians()) * (1 - e2) / north,
                                                     std::cos(Angle::degrees(way).radians())))
                               .degrees();
      const double onUtm = toGrid(bearing, utm.at(here)).degrees();
      VERIFY_NEAR(std::remainder(utm.bearing(here, bearing).degrees() - onUtm, 360), 0, 1e-7, "UTM");
      VERIFY_NEAR(std::remainder(web.bearing(here, bearing).degrees() - onWeb, 360), 0, 1e-7, "web map");
    }
  QVERIFY(std::isnan(GridNorth("EPSG:3035").bearing(place(-52, -170), TrueBearing(Angle())).degrees()));
}

QTEST_APPLESS_MAIN(GridNorthTest)
#include "grid_north_test.moc"
