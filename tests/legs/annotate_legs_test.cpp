// SPDX-License-Identifier: GPL-2.0-or-later
#include "legs/annotate_legs.h"

#include "magnetics/world_magnetic_model.h"
#include "sighting/extinction.h"
#include "support/check.h"
#include "support/near.h"
#include "support/random.h"

#include <GeographicLib/UTMUPS.hpp>
#include <geodesic.h>

#include <algorithm>
#include <limits>
#include <set>

using namespace brushline;
using namespace brushline::test;

class AnnotateLegsTest : public QObject {
  Q_OBJECT
private slots:
  void numbersAndWays();
  void lengths();
  void sameLengthBothWays();
  void drawnTheOtherWay();
  void backDialIsTheDialBack_data();
  void backDialIsTheDialBack();
  void backBearingTurnsWithTheMeridian();
  void walkedByItsOwnLegs();
  void bearingsByTheirDefinition();
  void gridBearingByHand();
  void dialByNorth();
  void duplicatesMerged();
  void nothingToWalk();
  void gaps();
  void names();
  void zones();
  void givenDeclinationInABlackout();
  void magneticPole();
  void terrainPlane();
  void terrainHeightReachesTheField();
  void terrainWithAHole();
  void twoWalkers();
  void noCover();
  void wood();
  void twoCovers();
  void marksCount();
  void partlyKnownCover();
  void lake();
  void thicket();
  void groundHides();
  void driftOfALeg();
  void driftStartsAnewAtNames();
  void sameWhateverCameBefore();
  void cancel();
  void notProjected();
  void badSettings();
  void antimeridian_data();
  void antimeridian();
  void acrossTheCutOfAGrid();
  void poles_data();
  void poles();
};

namespace {

Place place(double latitude, double longitude) { return {Angle::degrees(latitude), Angle::degrees(longitude)}; }

// A zone of UTM, or 0 for UPS.
struct StandardGrid {
  int zone;
  bool north;

  std::string crs() const { return "EPSG:" + std::to_string(GeographicLib::UTMUPS::EncodeEPSG(zone, north)); }

  RouteVertex vertex(const Place &p, size_t source) const {
    int foundZone;
    bool foundNorth;
    double x, y;
    GeographicLib::UTMUPS::Forward(p.latitude.degrees(), p.longitude.degrees(), foundZone, foundNorth, x, y, zone);
    if (foundNorth != north) { // carry on the other hemisphere's counting
      const double shift = GeographicLib::UTMUPS::UTMShift();
      y += north ? -shift : shift;
    }
    return {p, {x, y}, source};
  }

  double convergence(const Place &p) const {
    int foundZone;
    bool foundNorth;
    double x, y, gamma, k;
    GeographicLib::UTMUPS::Forward(p.latitude.degrees(), p.longitude.degrees(), foundZone, foundNorth, x, y, gamma, k,
                                   zone);
    return gamma;
  }

  Route route(const std::vector<std::vector<Place>> &parts) const {
    Route route{crs(), {}};
    size_t source = 100;
    for (const auto &part : parts) {
      route.parts.emplace_back();
      for (const Place &p : part)
        route.parts.back().push_back(vertex(p, source++));
    }
    return route;
  }
};

constexpr StandardGrid utm32{32, true};
constexpr double missing = std::numeric_limits<double>::quiet_NaN();

// From a place, a line by bearings and lengths.
std::vector<Place> lineFrom(Place start, const std::vector<std::pair<double, double>> &legs) {
  std::vector<Place> line{start};
  for (const auto &[bearing, metres] : legs)
    line.push_back(geodesicDestination(line.back(), TrueBearing(Angle::degrees(bearing)), Length::metres(metres)));
  return line;
}

FieldSetting fieldOf2026() { return FieldSetting(coefficientModel(worldMagneticModel2025(), DecimalYear(2026))); }

AnnotateSettings settingsWith(const FieldSetting &field, Direction direction = Direction::Out) {
  AnnotateSettings settings;
  settings.field = &field;
  settings.walkers.emplace_back();
  settings.direction = direction;
  return settings;
}

std::vector<AnnotatedLeg> annotate(const AnnotateSettings &settings, const Route &route,
                                   std::unique_ptr<Terrain> terrain = nullptr,
                                   std::unique_ptr<CoverSource> cover = nullptr) {
  return LegAnnotator(settings, std::move(terrain), std::move(cover)).annotate(route, Progress());
}

// The remarks of one kind.
std::vector<double> valuesOf(const AnnotatedLeg &leg, LegRemark remark) {
  std::vector<double> values;
  for (const LegWarning &warning : leg.warnings)
    if (warning.remark == remark)
      values.push_back(warning.metres);
  return values;
}

// A field made up by longitude: none to speak of from 10 on, weak from 9 on, declination 10 everywhere.
class Banded final : public FieldModel {
public:
  std::string name() const override { return "banded"; }
  FieldVector field(const Place &p, Length) const override {
    const double longitude = p.longitude.degrees();
    const double strength = longitude >= 10 ? 1000 : longitude >= 9 ? 4000 : 20000;
    const double declination = Angle::degrees(10).radians();
    return {strength * std::cos(declination), strength * std::sin(declination), 40000};
  }
  FieldVector changePerYear(const Place &, Length) const override { return {}; }
  std::optional<DeclinationErrorModel> declinationError() const override { return wmm2025Error; }
};

// A route of 40 random legs, 20 m to 3 km, within UTM zone 32.
Route wandering(uint64_t seed) {
  Random random(seed);
  std::vector<std::pair<double, double>> legs;
  for (int i = 0; i < 40; ++i)
    legs.emplace_back(random.between(0, 360), random.between(20, 3000));
  return utm32.route({lineFrom(place(random.between(46, 48), random.between(8, 10)), legs)});
}

// A terrain model in UTM zone 32, 10 m cells, whose heights are a function of easting and northing.
using Surface = std::function<double(double easting, double northing)>;
TiledGrid gridOf(Surface surface, double left, double top, int64_t columns, int64_t rows) {
  return TiledGrid({left, top, 10, 10, columns, rows}, [=](const CellWindow &window) {
    std::vector<float> cells;
    for (int64_t r = 0; r < window.rows; ++r)
      for (int64_t c = 0; c < window.columns; ++c)
        cells.push_back(
            float(surface(left + (double(window.column + c) + 0.5) * 10, top - (double(window.row + r) + 0.5) * 10)));
    return cells;
  });
}

void toUtm32(std::vector<double> &x, std::vector<double> &y) {
  for (size_t i = 0; i < x.size(); ++i) {
    GridPoint point{missing, missing};
    try {
      point = utm32.vertex(place(y[i], x[i]), 0).grid;
    } catch (const GeographicLib::GeographicErr &) { // too far from the zone
    }
    x[i] = point.easting;
    y[i] = point.northing;
  }
}

std::unique_ptr<Terrain> terrainOf(Surface surface, double left, double top, int64_t columns, int64_t rows) {
  return std::make_unique<Terrain>(gridOf(std::move(surface), left, top, columns, rows), toUtm32);
}

// Classes made up for the tests.
enum Cover { Wood, Lake, Thicket, Field };
CoverTable coverTable() {
  CoverTable table;
  const auto add = [&](const char *name, double sight, std::optional<double> speed, double pace) {
    CoverClass entry;
    entry.name = entry.label = name;
    entry.sight = Length::metres(sight);
    entry.speed_factor = speed;
    entry.pace_factor = pace;
    table.add(entry);
  };
  add("wood", 30, 0.5, 1.2);
  add("lake", 5000, std::nullopt, 1);
  add("thicket", 4, 0.25, 1.5);
  add("field", 5000, 1.0, 1);
  return table;
}

// Cover by a raster of codes: 100 and the class; around a point, 10 m cells.
std::unique_ptr<CoverSource> coverOf(Surface code, const GridPoint &around) {
  std::vector<double> extinctions;
  const CoverTable table = coverTable();
  for (const CoverClass &entry : table.classes())
    extinctions.push_back(extinctionOf(entry.sight));
  auto cover = std::make_unique<CoverSource>(extinctions);
  cover->setCodes(gridOf(std::move(code), around.easting - 5005, around.northing + 5000, 1001, 1000), toUtm32,
                  [](long found) { return found >= 100 && found < 104 ? int(found - 100) : -1; });
  return cover;
}

bool same(const LegForWalker &a, const LegForWalker &b) {
  return a.paces == b.paces && a.time.has_value() == b.time.has_value() &&
         (!a.time || a.time->seconds() == b.time->seconds()) && a.sight_m == b.sight_m && a.spacing_m == b.spacing_m &&
         a.sightings == b.sightings && a.marks.size() == b.marks.size() &&
         a.drift.across.metres() == b.drift.across.metres() && a.drift.along.metres() == b.drift.along.metres() &&
         a.drift.semi_major.metres() == b.drift.semi_major.metres() && a.warnings.size() == b.warnings.size();
}

bool same(const AnnotatedLeg &a, const AnnotatedLeg &b) {
  bool equal = a.number == b.number && a.back == b.back && a.from_source == b.from_source &&
               a.to_source == b.to_source && a.true_bearing.degrees() == b.true_bearing.degrees() &&
               a.grid_bearing.degrees() == b.grid_bearing.degrees() &&
               a.convergence.east.degrees() == b.convergence.east.degrees() && a.dial == b.dial &&
               a.back_dial == b.back_dial && a.length.metres() == b.length.metres() &&
               a.by_walker.size() == b.by_walker.size() && a.warnings.size() == b.warnings.size() &&
               a.field.declination.east.degrees() == b.field.declination.east.degrees();
  for (size_t i = 0; equal && i < a.by_walker.size(); ++i)
    equal = same(a.by_walker[i], b.by_walker[i]);
  return equal;
}

bool same(const std::vector<AnnotatedLeg> &a, const std::vector<AnnotatedLeg> &b) {
  return a.size() == b.size() && std::equal(a.begin(), a.end(), b.begin(),
                                            [](const AnnotatedLeg &x, const AnnotatedLeg &y) { return same(x, y); });
}

constexpr double tan5 = 0.08748866352592401; // computed
} // namespace

// Out and back, each way counted from 1.
void AnnotateLegsTest::numbersAndWays() {
  const FieldSetting field = fieldOf2026();
  const Route route = utm32.route({lineFrom(place(47, 8), {{10, 100}, {80, 200}, {200, 300}})}); // sources 100 to 103
  const auto out = annotate(settingsWith(field, Direction::Out), route);
  const auto back = annotate(settingsWith(field, Direction::Back), route);
  const auto both = annotate(settingsWith(field, Direction::Both), route);
  QCOMPARE(out.size(), size_t(3));
  QCOMPARE(back.size(), size_t(3));
  QCOMPARE(both.size(), size_t(6));
  for (size_t i = 0; i < 3; ++i) {
    QVERIFY(out[i].number == int(i) + 1 && !out[i].back);
    QVERIFY(out[i].from_source == 100 + i && out[i].to_source == 101 + i);
    QVERIFY(back[i].number == int(i) + 1 && back[i].back);
    QVERIFY(back[i].from_source == 103 - i && back[i].to_source == 102 - i);
    QVERIFY(same(both[i], out[i]) && same(both[3 + i], back[i]));
    QVERIFY(out[i].by_walker.size() == 1 && out[i].warnings.empty() && !out[i].profile && !out[i].from && !out[i].to);
  }
}

// Against PROJ's own geodesic routines, WGS84; bearings as far as 15 nm tell them on legs of 20 m and more.
void AnnotateLegsTest::lengths() {
  geod_geodesic wgs84;
  geod_init(&wgs84, 6378137, 1 / 298.257223563);
  const FieldSetting field = fieldOf2026();
  const Route route = wandering(80);
  const auto legs = annotate(settingsWith(field), route);
  QCOMPARE(legs.size(), size_t(40));
  for (size_t i = 0; i < legs.size(); ++i) {
    const Place &a = route.parts[0][i].place, &b = route.parts[0][i + 1].place;
    double metres, bearing;
    geod_inverse(&wgs84, a.latitude.degrees(), a.longitude.degrees(), b.latitude.degrees(), b.longitude.degrees(),
                 &metres, &bearing, nullptr);
    const std::string source =
        "computed with PROJ's geod_inverse (another program, the same algorithm as ours), legs of a random route";
    VERIFY_CHECK(
        checkOf("dist_m of annotatelegs", std::to_string(i), legs[i].length.metres(), metres, 30e-9, "m", source));
    VERIFY_CHECK(checkOf("true_brg of annotatelegs", std::to_string(i), legs[i].true_bearing.degrees(),
                         turnedTo(bearing, legs[i].true_bearing.degrees()), 1e-7, "deg", source));
  }
}

void AnnotateLegsTest::sameLengthBothWays() {
  const FieldSetting field = fieldOf2026();
  const auto legs = annotate(settingsWith(field, Direction::Both), wandering(81));
  QCOMPARE(legs.size(), size_t(80));
  for (size_t i = 0; i < 40; ++i) {
    QVERIFY(legs[i].length.metres() == legs[79 - i].length.metres());
    QVERIFY(legs[i].by_walker[0].paces == legs[79 - i].by_walker[0].paces);
    QVERIFY(legs[i].from_source == legs[79 - i].to_source && legs[i].to_source == legs[79 - i].from_source);
  }
}

// Walking a route back is walking it drawn the other way.
void AnnotateLegsTest::drawnTheOtherWay() {
  const FieldSetting field = fieldOf2026();
  const Route route = wandering(82);
  Route turned = route;
  std::reverse(turned.parts[0].begin(), turned.parts[0].end());
  const auto back = annotate(settingsWith(field, Direction::Back), route);
  const auto out = annotate(settingsWith(field, Direction::Out), turned);
  QCOMPARE(back.size(), out.size());
  for (size_t i = 0; i < out.size(); ++i) {
    const std::string where = std::to_string(i);
    VERIFY_AT(back[i].from_source == out[i].from_source && back[i].to_source == out[i].to_source, where);
    VERIFY_NEAR(back[i].length.metres(), out[i].length.metres(), 30e-9, where);
    VERIFY_NEAR(turnBetween(back[i].true_bearing.degrees(), out[i].true_bearing.degrees()), 0, 1e-7, where);
    VERIFY_NEAR(turnBetween(back[i].grid_bearing.degrees(), out[i].grid_bearing.degrees()), 0, 1e-9, where);
    VERIFY_AT(back[i].dial == out[i].dial && back[i].back_dial == out[i].back_dial, where);
  }
}

void AnnotateLegsTest::backDialIsTheDialBack_data() {
  QTest::addColumn<int>("north");
  QTest::addColumn<int>("unit");
  QTest::addColumn<double>("step");
  for (int north : {0, 1, 2}) {
    QTest::addRow("north %d, degrees", north) << north << 0 << 2.0;
    QTest::addRow("north %d, mils", north) << north << 1 << 1.0;
    QTest::addRow("north %d, gon", north) << north << 2 << 0.5;
  }
}

void AnnotateLegsTest::backDialIsTheDialBack() {
  QFETCH(int, north);
  QFETCH(int, unit);
  QFETCH(double, step);
  const FieldSetting field = fieldOf2026();
  AnnotateSettings settings = settingsWith(field, Direction::Both);
  settings.compass.north = North(north);
  settings.compass.unit = DialUnit(unit);
  settings.compass.step = step;
  const auto legs = annotate(settings, wandering(83));
  const size_t n = legs.size() / 2;
  QCOMPARE(n, size_t(40));
  for (size_t i = 0; i < n; ++i) {
    const AnnotatedLeg &out = legs[i], &back = legs[2 * n - 1 - i];
    QVERIFY(out.dial && out.back_dial && back.dial && back.back_dial);
    QVERIFY(*out.back_dial == *back.dial && *out.dial == *back.back_dial);
    QVERIFY(*out.dial != *out.back_dial);
  }
}

// The back bearing is 180 degrees from the bearing, but for the turn of the meridian from one end to the other:
// difference of longitudes times the sine of the middle latitude, good to a millionth of it on such legs (computed).
void AnnotateLegsTest::backBearingTurnsWithTheMeridian() {
  const FieldSetting field = fieldOf2026();
  const Route route = wandering(84);
  const auto legs = annotate(settingsWith(field, Direction::Both), route);
  double greatest = 0;
  for (size_t i = 0; i < 40; ++i) {
    const Place &a = route.parts[0][i].place, &b = route.parts[0][i + 1].place;
    const double turn =
        (b.longitude - a.longitude).degrees() * std::sin((a.latitude.radians() + b.latitude.radians()) / 2);
    const double back = legs[79 - i].true_bearing.degrees();
    VERIFY_NEAR(turnBetween(back, legs[i].true_bearing.degrees() + 180 + turn), 0, 2e-7, std::to_string(i));
    greatest = std::max(greatest, std::abs(turn));
  }
  QVERIFY(greatest > 0.01); // leaving the turn out would show
}

// Off by its bearings and lengths, and back where it began.
void AnnotateLegsTest::walkedByItsOwnLegs() {
  const FieldSetting field = fieldOf2026();
  for (const Place &start : {place(47, 8.5), place(60.2, 11.9), place(1, 6.1)}) {
    auto corners = lineFrom(start, {{17, 700}, {107, 700}, {197, 700}});
    corners.push_back(start);
    const auto legs = annotate(settingsWith(field, Direction::Both), utm32.route({corners}));
    QCOMPARE(legs.size(), size_t(8));
    Place byTrue = start, byMagnetic = start;
    for (size_t i = 0; i < legs.size(); ++i) {
      byTrue = geodesicDestination(byTrue, legs[i].true_bearing, legs[i].length);
      byMagnetic =
          geodesicDestination(byMagnetic, toTrue(*legs[i].magnetic_bearing, legs[i].field.declination), legs[i].length);
      if (i == 3 || i == 7) { // round once, and round again the other way
        QVERIFY(geodesicBetween(byTrue, start).length.metres() < 0.001);
        QVERIFY(geodesicBetween(byMagnetic, start).length.metres() < 0.001);
      } else {
        QVERIFY(geodesicBetween(byTrue, start).length.metres() > 600);
      }
    }
  }
}

void AnnotateLegsTest::bearingsByTheirDefinition() {
  const FieldSetting field = fieldOf2026();
  const Route route = wandering(85);
  const auto legs = annotate(settingsWith(field, Direction::Both), route);
  for (const AnnotatedLeg &leg : legs) {
    const std::string where = std::to_string(leg.number);
    const Place &start = route.parts[0][leg.from_source - 100].place;
    // Declination at the leg's start, height 0.
    const double declination = field.at(start, Length()).declination.east.degrees();
    VERIFY_NEAR(leg.field.declination.east.degrees(), declination, 0, where);
    VERIFY_AT(leg.magnetic_bearing && leg.field.declination_error, where);
    VERIFY_NEAR(turnBetween(leg.magnetic_bearing->degrees(), leg.true_bearing.degrees() - declination), 0, 1e-12,
                where);
    // GeographicLib's own convergence.
    VERIFY_CHECK(checkOf("converg of annotatelegs", where, leg.convergence.east.degrees(), utm32.convergence(start),
                         1e-6, "deg", "computed with GeographicLib's UTMUPS, legs of a random route"));
    // A straight line on the grid and the geodesic part by half an arc-to-chord correction of a few seconds.
    VERIFY_NEAR(turnBetween(leg.grid_bearing.degrees(), leg.true_bearing.degrees() - leg.convergence.east.degrees()), 0,
                0.002, where);
  }
}

// From the grid coordinates alone; computed by hand (3, 4, 5).
void AnnotateLegsTest::gridBearingByHand() {
  const FieldSetting field = fieldOf2026();
  Route route = utm32.route({lineFrom(place(47, 9), {{37, 500}, {143, 500}, {233, 500}, {323, 500}})});
  const GridPoint corners[] = {
      {500000, 5200000}, {500300, 5200400}, {500700, 5200100}, {500400, 5199700}, {500000, 5200000}};
  for (size_t i = 0; i < 5; ++i)
    route.parts[0][i].grid = corners[i];
  const auto legs = annotate(settingsWith(field), route);
  const double angle = std::atan2(3, 4) * 180 / Angle::pi;
  const double expected[] = {angle, 90 + angle, 180 + angle, 270 + angle};
  for (size_t i = 0; i < 4; ++i)
    VERIFY_NEAR(legs.at(i).grid_bearing.degrees(), expected[i], 1e-9, std::to_string(i));
}

void AnnotateLegsTest::dialByNorth() {
  const FieldSetting field = fieldOf2026();
  const Route route = wandering(86);
  int differ = 0;
  for (North north : {North::Magnetic, North::True, North::Grid}) {
    AnnotateSettings settings = settingsWith(field, Direction::Both);
    settings.compass.north = north;
    settings.compass.step = 0.5;
    for (const AnnotatedLeg &leg : annotate(settings, route)) {
      const double magnetic = dialReading(leg.magnetic_bearing->angle(), settings.compass);
      const double expected = north == North::Magnetic ? magnetic
                              : north == North::True   ? dialReading(leg.true_bearing.angle(), settings.compass)
                                                       : dialReading(leg.grid_bearing.angle(), settings.compass);
      QVERIFY(leg.dial && *leg.dial == expected);
      differ += north != North::Magnetic && magnetic != expected;
    }
  }
  QVERIFY(differ > 100); // the norths are not one
}

void AnnotateLegsTest::duplicatesMerged() {
  const FieldSetting field = fieldOf2026();
  const auto line =
      lineFrom(place(47, 8), {{0, 0.0009}, {30, 500}, {0, 0}, {0, 0}, {60, 400}, {90, 0.0011}, {90, 0.0009}});
  const auto legs = annotate(settingsWith(field, Direction::Both), utm32.route({line})); // sources 100 to 107
  QCOMPARE(legs.size(), size_t(6));
  const size_t ends[] = {100, 102, 105, 106};
  for (size_t i = 0; i < 3; ++i) {
    QVERIFY(legs[i].from_source == ends[i] && legs[i].to_source == ends[i + 1]);
    QVERIFY(legs[5 - i].from_source == ends[i + 1] && legs[5 - i].to_source == ends[i]);
    QVERIFY(legs[i].warnings.empty());
  }
  VERIFY_NEAR(legs[0].length.metres(), 500, 0.002, "from the first of the two");
  VERIFY_NEAR(legs[1].length.metres(), 400, 0.002, "second");
  VERIFY_NEAR(legs[2].length.metres(), 0.0011, 1e-6, "1.1 mm are a leg");
}

void AnnotateLegsTest::nothingToWalk() {
  const FieldSetting field = fieldOf2026();
  const Place a = place(47, 8), b = place(47.01, 8);
  for (Direction direction : {Direction::Out, Direction::Back, Direction::Both}) {
    const AnnotateSettings settings = settingsWith(field, direction);
    QVERIFY(annotate(settings, utm32.route({})).empty());
    QVERIFY(annotate(settings, utm32.route({{}})).empty());
    QVERIFY(annotate(settings, utm32.route({{a}})).empty());
    QVERIFY(annotate(settings, utm32.route({{a, a, a}})).empty());
    QVERIFY(annotate(settings, utm32.route({{a}, {}, {b}})).empty());
    QVERIFY(!annotate(settings, utm32.route({{a}, {}, {a, b}})).empty());
  }
}

void AnnotateLegsTest::gaps() {
  const FieldSetting field = fieldOf2026();
  const auto first = lineFrom(place(47, 8), {{30, 500}, {60, 400}});
  const auto second = lineFrom(lineFrom(first.back(), {{90, 50}}).back(), {{30, 300}, {40, 200}});
  const auto third = lineFrom(second.back(), {{100, 100}}); // joined
  // A single vertex is no part to walk, and leaves one gap where it lay.
  const auto legs =
      annotate(settingsWith(field, Direction::Both), utm32.route({first, {place(47.1, 8.1)}, second, third}));
  QCOMPARE(legs.size(), size_t(10));
  for (size_t i = 0; i < 10; ++i) {
    const auto found = valuesOf(legs[i], LegRemark::GapBefore);
    // Out: before the third leg. Back: before the fourth, since the last of the first part comes after the gap then.
    if (i == 2 || i == 8) {
      QCOMPARE(found.size(), size_t(1));
      VERIFY_NEAR(found[0], 50, 1e-6, std::to_string(i));
    } else {
      QVERIFY(found.empty());
    }
  }
  QVERIFY(legs[2].from_source == 104 && legs[8].from_source == 102);
}

void AnnotateLegsTest::names() {
  const FieldSetting field = fieldOf2026();
  const auto line = lineFrom(place(47, 8), {{30, 500}, {60, 400}});
  const NamedPlaces places({{line[0], "hut"}, {lineFrom(line[2], {{0, 20}}).back(), "ford"}}, Length::metres(30));
  AnnotateSettings settings = settingsWith(field, Direction::Both);
  settings.names = &places;
  const auto legs = annotate(settings, utm32.route({line}));
  QCOMPARE(legs.size(), size_t(4));
  QVERIFY(legs[0].from && legs[0].from->name == "hut" && !legs[0].to);
  QVERIFY(legs[1].to && legs[1].to->name == "ford" && !legs[1].from);
  QVERIFY(legs[2].from && legs[2].from->name == "ford" && !legs[2].to);
  QVERIFY(legs[3].to && legs[3].to->name == "hut" && !legs[3].from);
}

// A reading needs a compass that works at its own end; the remark tells of the worse end.
void AnnotateLegsTest::zones() {
  const FieldSetting field(std::make_unique<Banded>());
  const auto one = [&](double from, double to, North north) {
    AnnotateSettings settings = settingsWith(field);
    settings.compass.north = north;
    settings.compass.step = 1;
    return annotate(settings, utm32.route({{place(47, from), place(47, to)}})).at(0);
  };
  const auto remarks = [](const AnnotatedLeg &leg) {
    return std::make_pair(valuesOf(leg, LegRemark::CompassBlackout).size(),
                          valuesOf(leg, LegRemark::CompassCaution).size());
  };
  const std::pair<size_t, size_t> none(0, 0), blackout(1, 0), caution(0, 1);
  for (North north : {North::Magnetic, North::True, North::Grid}) {
    const AnnotatedLeg good = one(8.5, 8.51, north);
    QVERIFY(good.magnetic_bearing && good.dial && good.back_dial && remarks(good) == none);
    QVERIFY(good.field.zone == CompassZone::Reliable);
    const AnnotatedLeg weakEnd = one(8.995, 9.005, north);
    QVERIFY(weakEnd.magnetic_bearing && weakEnd.dial && weakEnd.back_dial && remarks(weakEnd) == caution);
    const AnnotatedLeg weakStart = one(9.005, 8.995, north);
    QVERIFY(weakStart.magnetic_bearing && weakStart.dial && weakStart.back_dial && remarks(weakStart) == caution);
    QVERIFY(weakStart.field.zone == CompassZone::Caution);
    const AnnotatedLeg deadEnd = one(9.995, 10.005, north);
    QVERIFY(deadEnd.magnetic_bearing && deadEnd.dial && !deadEnd.back_dial && remarks(deadEnd) == blackout);
    const AnnotatedLeg deadStart = one(10.005, 9.995, north);
    QVERIFY(!deadStart.magnetic_bearing && !deadStart.dial && deadStart.back_dial && remarks(deadStart) == blackout);
    const AnnotatedLeg dead = one(10.1, 10.11, north);
    QVERIFY(!dead.magnetic_bearing && !dead.dial && !dead.back_dial && remarks(dead) == blackout);
    QVERIFY(dead.field.zone == CompassZone::Blackout);
    // What needs no compass is there all the same.
    QVERIFY(dead.length.metres() > 700 && dead.by_walker[0].paces > 900 && dead.grid_bearing.degrees() > 80);
  }
  // Eastwards at 47 north: true 90, but for the geodesic's own turn, so magnetic 80.
  QVERIFY(*one(8.5, 8.51, North::Magnetic).dial == 80 && *one(8.5, 8.51, North::Magnetic).back_dial == 260);
  QVERIFY(*one(8.5, 8.51, North::True).dial == 90 && *one(8.5, 8.51, North::True).back_dial == 270);
}

// A declination read off a map makes no compass work.
void AnnotateLegsTest::givenDeclinationInABlackout() {
  const FieldSetting field(std::make_unique<Banded>(), Declination{Angle::degrees(-5)});
  const auto dead = annotate(settingsWith(field), utm32.route({{place(47, 10.1), place(47, 10.2)}})).at(0);
  QVERIFY(!dead.magnetic_bearing && !dead.dial && !dead.back_dial);
  const auto good = annotate(settingsWith(field), utm32.route({{place(47, 8.1), place(47, 8.11)}})).at(0);
  VERIFY_NEAR(turnBetween(good.magnetic_bearing->degrees(), good.true_bearing.degrees() + 5), 0, 1e-12, "map");
  QVERIFY(!good.field.declination_error);
}

// 89 N 121 W is in the blackout, 80 N 96 W in the caution zone: test values of WMM2025, see field_zones.csv.
void AnnotateLegsTest::magneticPole() {
  const FieldSetting field = fieldOf2026();
  const auto dead =
      annotate(settingsWith(field), StandardGrid{0, true}.route({lineFrom(place(89, -121), {{45, 1000}})})).at(0);
  QVERIFY(!dead.magnetic_bearing && !dead.dial && !dead.back_dial);
  QVERIFY(valuesOf(dead, LegRemark::CompassBlackout) == std::vector<double>{0});
  VERIFY_NEAR(dead.length.metres(), 1000, 1e-6, "length");
  VERIFY_NEAR(dead.true_bearing.degrees(), 45, 1e-6, "true bearing");
  VERIFY_NEAR(turnBetween(dead.grid_bearing.degrees(), 45 + 121), 0, 0.01, "polar grid"); // convergence = longitude
  const auto weak =
      annotate(settingsWith(field), StandardGrid{16, true}.route({lineFrom(place(80, -96), {{45, 1000}})})).at(0);
  QVERIFY(weak.magnetic_bearing && weak.dial && weak.back_dial);
  QVERIFY(valuesOf(weak, LegRemark::CompassCaution) == std::vector<double>{0});
}

// Due north on the central meridian, 1000 m at 5 degrees. By hand: rise 87.489 m, 1003.820 m along the slope;
// Moss's table at 5 degrees: 27.6 in up, 29.2 in down, of 30.4. 130 steps to 100 m: 1003.820 x 1.3 x 30.4 / 27.6 =
// 1437.3 up, 1358.6 down. Off-trail speed at a slope of 0.087489: 0.11 + 0.67 exp(-10.7489^2 / 1800) = 0.73835 m/s.
void AnnotateLegsTest::terrainPlane() {
  const Place start = place(47, 9);
  const Route route = utm32.route({lineFrom(start, {{0, 1000}})});
  const GridPoint foot = route.parts[0][0].grid;
  constexpr double scale = 0.9996; // of UTM on its central meridian, by definition
  auto terrain = terrainOf([&](double, double northing) { return 10 + (northing - foot.northing) * tan5 / scale; },
                           foot.easting - 1000, foot.northing + 2000, 200, 300);
  const FieldSetting field = fieldOf2026();
  AnnotateSettings settings = settingsWith(field, Direction::Both);
  settings.walkers.emplace_back();
  settings.walkers[1].kind = PaceKind::Double;
  settings.walkers.emplace_back();
  settings.walkers[2].slope_rule = SlopeRule::None;
  const auto legs = annotate(settings, route, std::move(terrain));
  QCOMPARE(legs.size(), size_t(2));
  const AnnotatedLeg &up = legs[0], &down = legs[1];
  QVERIFY(up.profile && down.profile && up.warnings.empty() && down.warnings.empty());
  VERIFY_NEAR(up.length.metres(), 1000, 1e-6, "the map's length");
  VERIFY_NEAR(up.profile->climb.metres(), 87.489, 0.001, "climb");
  VERIFY_NEAR(up.profile->drop.metres(), 0, 1e-9, "no drop");
  VERIFY_NEAR(up.profile->slope_length.metres(), 1003.820, 0.001, "along the slope");
  VERIFY_NEAR(down.profile->drop.metres(), 87.489, 0.001, "drop");
  VERIFY_NEAR(down.profile->climb.metres(), 0, 1e-9, "no climb");
  VERIFY_NEAR(down.profile->slope_length.metres(), 1003.820, 0.001, "along the slope");
  QCOMPARE(up.by_walker[0].paces, 1437L);
  QCOMPARE(down.by_walker[0].paces, 1359L);
  QCOMPARE(up.by_walker[1].paces, 719L);
  QCOMPARE(down.by_walker[1].paces, 679L);
  QCOMPARE(up.by_walker[2].paces, 1300L);
  QCOMPARE(down.by_walker[2].paces, 1300L);
  VERIFY_NEAR(up.by_walker[0].time->seconds(), 1000 / 0.73835, 0.1, "time up");
  QVERIFY(down.by_walker[0].time->seconds() < up.by_walker[0].time->seconds());
}

// The field is asked at the terrain's height: at 4000 m it is not that at 0.
void AnnotateLegsTest::terrainHeightReachesTheField() {
  const Route route = utm32.route({lineFrom(place(47, 9), {{20, 800}})});
  const GridPoint foot = route.parts[0][0].grid;
  auto terrain = terrainOf([](double, double) { return 4000; }, foot.easting - 2000, foot.northing + 2000, 400, 400);
  const FieldSetting field = fieldOf2026();
  AnnotateSettings settings = settingsWith(field, Direction::Both);
  for (const AnnotatedLeg &leg : annotate(settings, route, std::move(terrain))) {
    const Place &start = route.parts[0][leg.from_source - 100].place;
    QVERIFY(leg.field.declination.east.degrees() == field.at(start, Length::metres(4000)).declination.east.degrees());
    QVERIFY(leg.field.declination.east.degrees() != field.at(start, Length()).declination.east.degrees());
  }
}

// A strip without data across the middle leg; the last leg lies outside the model.
void AnnotateLegsTest::terrainWithAHole() {
  const Route route = utm32.route({lineFrom(place(47, 9), {{0, 500}, {0, 500}, {0, 400}, {0, 2000}})});
  const GridPoint foot = route.parts[0][0].grid;
  auto terrain = terrainOf(
      [&](double, double northing) {
        const double along = northing - foot.northing;
        return along > 700 && along < 800 ? missing : 100 + along * 0.1;
      },
      foot.easting - 1000, foot.northing + 1500, 200, 200);
  const FieldSetting field = fieldOf2026();
  AnnotateSettings settings = settingsWith(field, Direction::Both);
  const auto legs = annotate(settings, route, std::move(terrain));
  QCOMPARE(legs.size(), size_t(8));
  for (size_t i = 0; i < 8; ++i) {
    const size_t stretch = i < 4 ? i : 7 - i;
    const auto without = valuesOf(legs[i], LegRemark::NoTerrain);
    if (stretch == 0 || stretch == 2) {
      QVERIFY(without.empty() && legs[i].profile);
      QVERIFY(legs[i].by_walker[0].paces > long(std::lround(legs[i].length.metres() * 1.3)));
      continue;
    }
    QCOMPARE(without.size(), size_t(1));
    QVERIFY(!legs[i].profile);
    // The count on level ground.
    QCOMPARE(legs[i].by_walker[0].paces, std::lround(legs[i].length.metres() * 1.3));
    VERIFY_NEAR(legs[i].by_walker[0].time->seconds(), legs[i].length.metres() / 0.77851, 0.1,
                "level, walking_speed.csv");
    // 100 m of strip and the cells at its edges; of the last leg, 100 m are inside.
    VERIFY_NEAR(without[0], stretch == 1 ? 115 : 1900, 20, std::to_string(i));
    QVERIFY(std::isfinite(legs[i].field.declination.east.degrees()) && legs[i].dial);
  }
}

// In the walkers' order, each by their own count, pace and speed. Computed by hand: 1000 m level.
void AnnotateLegsTest::twoWalkers() {
  const FieldSetting field = fieldOf2026();
  AnnotateSettings settings = settingsWith(field);
  settings.walkers[0].steps_per_100m = 150;
  settings.walkers[0].time_rule = TimeRule::DistanceAndClimb;
  settings.walkers.emplace_back();
  settings.walkers[1].steps_per_100m = 116;
  settings.walkers[1].kind = PaceKind::Double;
  settings.walkers[1].time_rule = TimeRule::DistanceAndClimb;
  settings.walkers[1].speed_factor = 2;
  const auto leg = annotate(settings, utm32.route({lineFrom(place(47, 9), {{123, 1000}})})).at(0);
  QCOMPARE(leg.by_walker.size(), size_t(2));
  QCOMPARE(leg.by_walker[0].paces, 1500L);
  QCOMPARE(leg.by_walker[1].paces, 580L);
  VERIFY_NEAR(leg.by_walker[0].time->seconds(), 720, 1e-6, "0.72 s/m");
  VERIFY_NEAR(leg.by_walker[1].time->seconds(), 360, 1e-6, "twice as fast");
}

// Nothing is known to hide marks: they lie the most spacing apart, and nothing is said of sight.
void AnnotateLegsTest::noCover() {
  const FieldSetting field = fieldOf2026();
  const CoverTable table = coverTable();
  AnnotateSettings settings = settingsWith(field);
  settings.keep_marks = true;
  settings.cover_table = &table;
  const Route route = utm32.route({lineFrom(place(47, 9), {{0, 1000}})});
  for (bool unknown : {false, true}) {
    std::unique_ptr<CoverSource> cover;
    if (unknown)
      cover = coverOf([](double, double) { return 7; }, route.parts[0][0].grid); // a code the table does not have
    const auto leg = annotate(settings, route, nullptr, std::move(cover)).at(0);
    const LegForWalker &walker = leg.by_walker[0];
    QVERIFY(!walker.sight_m && !walker.spacing_m && leg.cover == -1 && walker.warnings.empty());
    QCOMPARE(walker.paces, 1300L);
    QCOMPARE(walker.sightings, 3L);
    QCOMPARE(walker.marks.size(), size_t(3));
    const double at[] = {400, 800, 1000}; // the usual most spacing
    for (size_t i = 0; i < 3; ++i) {
      VERIFY_NEAR(walker.marks[i].at_m, at[i], 1e-6, std::to_string(i));
      QVERIFY(!walker.marks[i].sight_m && walker.marks[i].paces == std::lround(1.3 * at[i]));
    }
    const auto without = valuesOf(leg, LegRemark::NoCover);
    QCOMPARE(without.size(), size_t(unknown ? 1 : 0));
    if (unknown)
      VERIFY_NEAR(without[0], 1000, 1e-6, "all of it");
  }
}

// By hand: sight 30 m, of which the usual 0.8 are used: marks 24 m apart, 42 of them. A fifth more steps, half the
// speed.
void AnnotateLegsTest::wood() {
  const FieldSetting field = fieldOf2026();
  const CoverTable table = coverTable();
  AnnotateSettings settings = settingsWith(field, Direction::Both);
  settings.keep_marks = true;
  settings.cover_table = &table;
  settings.walkers[0].time_rule = TimeRule::DistanceAndClimb;
  const Route route = utm32.route({lineFrom(place(47, 9), {{0, 1000}})});
  const auto all = [](double, double) { return 100 + Wood; };
  for (const AnnotatedLeg &leg : annotate(settings, route, nullptr, coverOf(all, route.parts[0][0].grid))) {
    const LegForWalker &walker = leg.by_walker[0];
    QVERIFY(leg.cover == Wood && !leg.overlapping_cover && leg.warnings.empty() && walker.warnings.empty());
    VERIFY_NEAR(walker.sight_m.value_or(0), 30, 1e-6, "sight");
    VERIFY_NEAR(walker.spacing_m.value_or(0), 24, 1e-6, "spacing");
    QCOMPARE(walker.sightings, 42L);
    QCOMPARE(walker.paces, 1560L);
    VERIFY_NEAR(walker.time->seconds(), 1440, 1e-6, "time");
    QCOMPARE(walker.marks.size(), size_t(42));
    for (size_t i = 0; i < 42; ++i) {
      VERIFY_NEAR(walker.marks[i].at_m, std::min(1000.0, 24.0 * double(i + 1)), 1e-6, std::to_string(i));
      VERIFY_NEAR(walker.marks[i].sight_m.value_or(0), 30, 1e-6, std::to_string(i));
      VERIFY_AT(walker.marks[i].paces == std::lround(1.56 * walker.marks[i].at_m), std::to_string(i));
    }
  }
  // A quarter of the marks clear: twice as far.
  settings.clear_sight = 0.25;
  const auto far = annotate(settings, route, nullptr, coverOf(all, route.parts[0][0].grid)).at(0);
  VERIFY_NEAR(far.by_walker[0].sight_m.value_or(0), 60, 1e-6, "a quarter");
  // Marks are not kept unasked.
  settings.keep_marks = false;
  const auto bare = annotate(settings, route, nullptr, coverOf(all, route.parts[0][0].grid)).at(0);
  QVERIFY(bare.by_walker[0].marks.empty() && bare.by_walker[0].sightings == far.by_walker[0].sightings);
}

// 420 m of wood and 580 m of field, but for the cells at the border: the class with the longest share, whichever end
// comes first. By hand: steps 420 x 1.56 + 580 x 1.3, seconds 0.72 x (840 + 580); 30 m of sight in the wood.
void AnnotateLegsTest::twoCovers() {
  const FieldSetting field = fieldOf2026();
  const CoverTable table = coverTable();
  AnnotateSettings settings = settingsWith(field, Direction::Both);
  settings.keep_marks = true;
  settings.cover_table = &table;
  settings.walkers[0].time_rule = TimeRule::DistanceAndClimb;
  const Route route = utm32.route({lineFrom(place(47, 9), {{0, 1000}})});
  const GridPoint foot = route.parts[0][0].grid;
  for (const auto &[wood, longest] : {std::make_pair(420.0, Field), std::make_pair(580.0, Wood)}) {
    const double inWood = wood;
    const auto code = [&](double, double northing) { return 100 + (northing - foot.northing < inWood ? Wood : Field); };
    const auto legs = annotate(settings, route, nullptr, coverOf(code, foot));
    QCOMPARE(legs.size(), size_t(2));
    for (const AnnotatedLeg &leg : legs) {
      const LegForWalker &walker = leg.by_walker[0];
      QVERIFY(leg.cover == longest && leg.warnings.empty() && walker.warnings.empty() && !leg.overlapping_cover);
      VERIFY_NEAR(double(walker.paces), inWood * 1.56 + (1000 - inWood) * 1.3, 0.26 * 6, "steps, to a cell");
      VERIFY_NEAR(walker.time->seconds(), 0.72 * (1000 + inWood), 0.72 * 6, "time");
      VERIFY_NEAR(walker.sight_m.value_or(0), 30, 1e-6, "the wood's sight");
      QCOMPARE(size_t(walker.sightings), walker.marks.size());
      // The hops: 24 m in the wood, out of it or into it more, the most spacing in the field.
      VERIFY_AT(walker.spacing_m.value_or(0) >= 24 - 1e-6 && *walker.spacing_m < 60, "spacing");
      double farthest = 0, before = 0;
      for (const LegMark &mark : walker.marks) {
        farthest = std::max(farthest, mark.at_m - before);
        before = mark.at_m;
      }
      QVERIFY(farthest > 200 && farthest <= 400 + 1e-6); // from the wood's edge or to it, the most spacing at the most
    }
    // The way does not change the count, but where the marks lie.
    QVERIFY(std::abs(legs[0].by_walker[0].paces - legs[1].by_walker[0].paces) <= 1);
    QVERIFY(legs[0].by_walker[0].marks.front().at_m < 30 && legs[1].by_walker[0].marks.front().at_m > 300);
  }
}

// Over rough ground and through cover of all kinds: counts grow from mark to mark, the last mark's is the leg's, and
// the last mark lies at its end.
void AnnotateLegsTest::marksCount() {
  const FieldSetting field = fieldOf2026();
  const CoverTable table = coverTable();
  const Route route = wandering(91);
  AnnotateSettings settings = settingsWith(field, Direction::Both);
  settings.keep_marks = true;
  settings.cover_table = &table;
  settings.walkers.emplace_back();
  settings.walkers[1].kind = PaceKind::Double;
  settings.walkers[1].eye_height = Length::metres(1.1);
  const auto legs =
      annotate(settings, route,
               terrainOf([](double e, double n) { return 500 + 100 * std::sin(e / 700) * std::cos(n / 500); }, 400000,
                         5400000, 30000, 40000),
               coverOf([](double e, double n) { return 100 + std::fmod(std::floor(e / 50) + std::floor(n / 70), 4); },
                       route.parts[0][0].grid));
  QCOMPARE(legs.size(), size_t(80));
  size_t most = 0;
  for (const AnnotatedLeg &leg : legs)
    for (const LegForWalker &walker : leg.by_walker) {
      QVERIFY(!walker.marks.empty() && size_t(walker.sightings) == walker.marks.size());
      long count = 0;
      double at = 0;
      for (const LegMark &mark : walker.marks) {
        QVERIFY(mark.at_m > at && mark.paces >= count);
        at = mark.at_m;
        count = mark.paces;
      }
      QVERIFY(at == leg.length.metres());
      QCOMPARE(count, walker.paces);
      most = std::max(most, walker.marks.size());
    }
  QVERIFY(most > 30);
}

// The first 600 m wood, then a raster without data: steps by hand, 600 x 1.56 + 400 x 1.3.
void AnnotateLegsTest::partlyKnownCover() {
  const FieldSetting field = fieldOf2026();
  const CoverTable table = coverTable();
  AnnotateSettings settings = settingsWith(field, Direction::Both);
  settings.cover_table = &table;
  const Route route = utm32.route({lineFrom(place(47, 9), {{0, 1000}})});
  const GridPoint foot = route.parts[0][0].grid;
  const auto code = [&](double, double northing) { return northing - foot.northing < 600 ? 100.0 + Wood : missing; };
  for (const AnnotatedLeg &leg : annotate(settings, route, nullptr, coverOf(code, foot))) {
    const auto without = valuesOf(leg, LegRemark::NoCover);
    QCOMPARE(without.size(), size_t(1));
    VERIFY_NEAR(without[0], 400, 6, "to the cell"); // and the scale of the grid
    QVERIFY(leg.cover == Wood && leg.by_walker[0].sight_m);
    VERIFY_NEAR(double(leg.by_walker[0].paces), 600 * 1.56 + 400 * 1.3, 3, "steps");
  }
}

// 200 m of water: a remark, and no time; the count is there all the same.
void AnnotateLegsTest::lake() {
  const FieldSetting field = fieldOf2026();
  const CoverTable table = coverTable();
  AnnotateSettings settings = settingsWith(field, Direction::Both);
  settings.cover_table = &table;
  const Route route = utm32.route({lineFrom(place(47, 9), {{0, 1000}})});
  const GridPoint foot = route.parts[0][0].grid;
  const auto code = [&](double, double northing) {
    return 100 + (northing - foot.northing > 400 && northing - foot.northing < 600 ? Lake : Field);
  };
  for (const AnnotatedLeg &leg : annotate(settings, route, nullptr, coverOf(code, foot))) {
    QCOMPARE(leg.warnings.size(), size_t(1));
    QVERIFY(leg.warnings[0].remark == LegRemark::NotWalked && leg.warnings[0].cover == Lake);
    VERIFY_NEAR(leg.warnings[0].metres, 200, 11, "to the cells");
    QVERIFY(leg.cover == Field && !leg.by_walker[0].time);
    QCOMPARE(leg.by_walker[0].paces, 1300L);
  }
}

// Sight 4 m, of which 3.2 are used: not even the least spacing, 5 m, can be seen. The count: 1.3 x 1.5 to the metre.
void AnnotateLegsTest::thicket() {
  const FieldSetting field = fieldOf2026();
  const CoverTable table = coverTable();
  AnnotateSettings settings = settingsWith(field);
  settings.cover_table = &table;
  const Route route = utm32.route({lineFrom(place(47, 9), {{0, 1000}})});
  const auto leg =
      annotate(settings, route, nullptr, coverOf([](double, double) { return 100 + Thicket; }, route.parts[0][0].grid))
          .at(0);
  const LegForWalker &walker = leg.by_walker[0];
  QCOMPARE(walker.warnings.size(), size_t(1));
  QVERIFY(walker.warnings[0].remark == LegRemark::Blind);
  VERIFY_NEAR(walker.warnings[0].metres, 1000, 1e-6, "all of it");
  QCOMPARE(walker.warnings[0].paces, 1950L);
  QCOMPARE(walker.paces, 1950L);
  QCOMPARE(walker.sightings, 200L);
  VERIFY_NEAR(walker.spacing_m.value_or(0), 5, 1e-6, "spacing");
}

// A crest between slopes of a tenth. By hand: from x before it a mark is hidden beyond y, 1.6 y + 1.0 x = 0.2 x y; the
// least x + y is 25.7 m. The profile has a place every 10 m.
void AnnotateLegsTest::groundHides() {
  const FieldSetting field = fieldOf2026();
  const CoverTable table = coverTable();
  AnnotateSettings settings = settingsWith(field, Direction::Both);
  settings.cover_table = &table;
  const Route route = utm32.route({lineFrom(place(47, 9), {{0, 1000}})});
  const GridPoint foot = route.parts[0][0].grid;
  const auto tent = [&](double, double northing) { return 500 - 0.1 * std::abs(northing - foot.northing - 500); };
  const auto open = [](double, double) { return 100 + Field; };
  const auto flat = annotate(settings, route, nullptr, coverOf(open, foot));
  const auto hill = annotate(settings, route, terrainOf(tent, foot.easting - 5005, foot.northing + 5005, 1001, 1001),
                             coverOf(open, foot));
  for (size_t i = 0; i < 2; ++i) {
    QVERIFY(!flat.at(i).by_walker[0].sight_m || *flat.at(i).by_walker[0].sight_m > 1000);
    const double sight = hill.at(i).by_walker[0].sight_m.value_or(0);
    QVERIFY2(sight > 20 && sight < 36, qPrintable(QString::number(sight)));
    QVERIFY(hill.at(i).by_walker[0].sightings > flat.at(i).by_walker[0].sightings);
  }
}

// 1000 m with marks at 400, 800 and 1000 m. By drift.h: across by chance sigma sqrt(2 x 400^2 + 200^2), in common the
// dial's step / sqrt(12) and the declination's error over 1000 m; along the share of the count.
void AnnotateLegsTest::driftOfALeg() {
  const FieldSetting field = fieldOf2026();
  AnnotateSettings settings = settingsWith(field);
  settings.compass.step = 5;
  settings.walkers[0].bearing_error = Angle::degrees(4);
  settings.walkers[0].pace_error_percent = 7;
  const Route route = utm32.route({lineFrom(place(47, 9), {{123, 1000}})});
  const auto leg = annotate(settings, route).at(0);
  const double radian = Angle::pi / 180;
  const double chance = 4 * radian * 600;
  const double dial = 5 / std::sqrt(12.0) * radian * 1000;
  const double declination = leg.field.declination_error->radians() * 1000;
  QVERIFY(declination > 4); // 0.26 degrees at the least
  const DriftEllipse &drift = leg.by_walker[0].drift;
  VERIFY_NEAR(drift.across.metres(), std::sqrt(chance * chance + dial * dial + declination * declination), 1e-6,
              "across");
  VERIFY_NEAR(drift.along.metres(), 70, 1e-6, "along");
  // A declination read off a map is taken as it is; a dial in mils has its own graduation.
  const FieldSetting map(coefficientModel(worldMagneticModel2025(), DecimalYear(2026)), Declination{Angle::degrees(3)});
  settings.field = &map;
  settings.compass.unit = DialUnit::Mils;
  settings.compass.step = 20;
  const double mils = 20 * 360 / 6400.0 / std::sqrt(12.0) * radian * 1000;
  VERIFY_NEAR(annotate(settings, route).at(0).by_walker[0].drift.across.metres(), std::hypot(chance, mils), 1e-6,
              "map");
}

// Drift builds up from leg to leg, starts anew at a named place that is found with certainty, and on the way back.
void AnnotateLegsTest::driftStartsAnewAtNames() {
  const FieldSetting field = fieldOf2026();
  const auto line = lineFrom(place(47, 8), {{30, 700}, {60, 800}, {90, 900}});
  const NamedPlaces places({{line[1], "hut"}}, Length::metres(30));
  const auto alongOf = [&](bool named, bool found, Direction direction) {
    AnnotateSettings settings = settingsWith(field, direction);
    settings.names = named ? &places : nullptr;
    settings.named_found = found;
    std::vector<double> spread;
    for (const AnnotatedLeg &leg : annotate(settings, utm32.route({line})))
      spread.push_back(leg.by_walker[0].drift.semi_major.metres());
    return spread;
  };
  const auto fresh = [&](size_t i) {
    return annotate(settingsWith(field), utm32.route({{line[i], line[i + 1]}}))
        .at(0)
        .by_walker[0]
        .drift.semi_major.metres();
  };
  const auto unnamed = alongOf(false, true, Direction::Out);
  VERIFY_NEAR(unnamed[0], fresh(0), 1e-9, "first leg");
  QVERIFY(unnamed[1] > fresh(1) + 5 && unnamed[2] > fresh(2) + 5);
  const auto named = alongOf(true, true, Direction::Out);
  VERIFY_NEAR(named[0], fresh(0), 1e-9, "first leg");
  VERIFY_NEAR(named[1], fresh(1), 1e-9, "from the hut");
  QVERIFY(named[2] > fresh(2) + 5 && named[2] < unnamed[2] - 1);
  QVERIFY(alongOf(true, false, Direction::Out) == unnamed); // named, but not sure to be found
  const auto both = alongOf(false, true, Direction::Both), back = alongOf(false, true, Direction::Back);
  QCOMPARE(both.size(), size_t(6));
  QVERIFY(std::equal(back.begin(), back.end(), both.begin() + 3));
  VERIFY_NEAR(both[3], fresh(2), 0.001, "the first leg of the way back"); // its start is another place for the field
  QVERIFY(both[4] > fresh(1) + 5);
}

void AnnotateLegsTest::sameWhateverCameBefore() {
  const FieldSetting field = fieldOf2026();
  const auto terrain = [] {
    return terrainOf([](double e, double n) { return 500 + 100 * std::sin(e / 700) * std::cos(n / 500); }, 400000,
                     5400000, 30000, 40000);
  };
  const CoverTable table = coverTable();
  const Route a = wandering(87), b = wandering(88);
  const Route south = StandardGrid{33, false}.route({lineFrom(place(-33.9, 17.5), {{10, 500}, {100, 500}})});
  const auto cover = [&] {
    return coverOf([](double e, double n) { return 100 + std::fmod(std::floor(e / 50) + std::floor(n / 70), 4); },
                   a.parts[0][0].grid);
  };
  AnnotateSettings settings = settingsWith(field, Direction::Both);
  settings.cover_table = &table;
  LegAnnotator annotator(settings, terrain(), cover());
  const auto first = annotator.annotate(a, Progress());
  const auto other = annotator.annotate(b, Progress());
  const auto third = annotator.annotate(south, Progress());
  QVERIFY(same(annotator.annotate(a, Progress()), first));
  QVERIFY(same(annotate(settings, b, terrain(), cover()), other));
  QVERIFY(same(annotate(settings, south, terrain(), cover()), third));
  QVERIFY(!same(first, other));
}

// Stopped at any check: Cancelled, and the next run is whole.
void AnnotateLegsTest::cancel() {
  struct Countdown : Progress {
    mutable int left;
    explicit Countdown(int checks) : left(checks) {}
    bool cancelled() const override { return left-- <= 0; }
  };
  const FieldSetting field = fieldOf2026();
  auto terrain = terrainOf([](double, double) { return 100; }, 400000, 5400000, 30000, 40000);
  AnnotateSettings settings = settingsWith(field, Direction::Both);
  const Route route = wandering(89);
  LegAnnotator annotator(settings, std::move(terrain), nullptr);
  const auto whole = annotator.annotate(route, Progress());
  int checks = 0;
  for (bool finished = false; !finished; ++checks) {
    QVERIFY(checks < 1000);
    try {
      const Countdown progress(checks);
      QVERIFY(same(annotator.annotate(route, progress), whole));
      finished = true;
    } catch (const Cancelled &) {
    }
  }
  QVERIFY2(checks > 40, qPrintable(QString::number(checks))); // asked for each of the 40 profiles, and later
  // Without terrain too.
  QVERIFY_EXCEPTION_THROWN(LegAnnotator(settings, nullptr, nullptr).annotate(route, Countdown(0)), Cancelled);
}

void AnnotateLegsTest::notProjected() {
  const FieldSetting field = fieldOf2026();
  for (const char *crs : {"EPSG:4326", "garbage", ""}) {
    Route route = wandering(90);
    route.grid = crs;
    QVERIFY_EXCEPTION_THROWN(annotate(settingsWith(field), route), std::invalid_argument);
    route.parts.clear();
    QVERIFY_EXCEPTION_THROWN(annotate(settingsWith(field), route), std::invalid_argument);
  }
}

void AnnotateLegsTest::badSettings() {
  const auto make = [](const AnnotateSettings &settings) { const LegAnnotator annotator(settings, nullptr, nullptr); };
  const FieldSetting field = fieldOf2026();
  AnnotateSettings settings = settingsWith(field);
  make(settings);
  settings.walkers.clear();
  QVERIFY_EXCEPTION_THROWN(make(settings), std::invalid_argument);
  settings = settingsWith(field);
  settings.field = nullptr;
  QVERIFY_EXCEPTION_THROWN(make(settings), std::invalid_argument);
  // Cover without a table.
  const auto cover = [&](const CoverTable *table) {
    AnnotateSettings with = settingsWith(field);
    with.cover_table = table;
    const LegAnnotator annotator(with, nullptr, std::make_unique<CoverSource>(std::vector<double>{}));
  };
  const CoverTable table = coverTable();
  cover(&table);
  QVERIFY_EXCEPTION_THROWN(cover(nullptr), std::invalid_argument);
}

void AnnotateLegsTest::antimeridian_data() {
  QTest::addColumn<int>("zone");
  QTest::addColumn<bool>("north");
  QTest::addColumn<double>("latitude");
  QTest::newRow("from the east, zone 1") << 1 << true << 52.0;
  QTest::newRow("from the west, zone 60") << 60 << true << 65.0;
  QTest::newRow("south, zone 60") << 60 << false << -17.0;
}

void AnnotateLegsTest::antimeridian() {
  QFETCH(int, zone);
  QFETCH(bool, north);
  QFETCH(double, latitude);
  const StandardGrid grid{zone, north};
  // 2 km to the east across the line, and back; its longitude given in three ways.
  const Place start = place(latitude, 179.99);
  const Place across = geodesicDestination(start, TrueBearing(Angle::degrees(90)), Length::metres(2000));
  const FieldSetting field = fieldOf2026();
  for (double turn : {0.0, 360.0, -360.0}) {
    const Place far = place(across.latitude.degrees(), across.longitude.degrees() + turn);
    const auto legs = annotate(settingsWith(field, Direction::Both), grid.route({{start, far, start}}));
    QCOMPARE(legs.size(), size_t(4));
    for (const AnnotatedLeg &leg : legs) {
      VERIFY_NEAR(leg.length.metres(), 2000, 1e-6, std::to_string(turn));
      VERIFY_AT(std::isfinite(leg.convergence.east.degrees()) && std::isfinite(leg.field.declination.east.degrees()),
                std::to_string(turn));
      VERIFY_NEAR(turnBetween(leg.grid_bearing.degrees(), leg.true_bearing.degrees() - leg.convergence.east.degrees()),
                  0, 0.01, std::to_string(turn));
      VERIFY_AT(leg.dial && leg.back_dial && leg.by_walker[0].paces == 2600, std::to_string(turn));
    }
    VERIFY_NEAR(legs[0].true_bearing.degrees(), 90, 1e-6, std::to_string(turn));
    VERIFY_NEAR(legs[1].true_bearing.degrees(), 270, 0.1, std::to_string(turn));
  }
}

// Due east over the meridian that Web Mercator is cut at: 90 from its north, by its definition.
void AnnotateLegsTest::acrossTheCutOfAGrid() {
  const FieldSetting field = fieldOf2026();
  AnnotateSettings settings = settingsWith(field, Direction::Both);
  settings.compass.north = North::Grid;
  Route route;
  route.grid = "EPSG:3857";
  route.parts = {
      {{place(-17, 179.99), {20036395.1, -1920825.0}, 0}, {place(-17, -179.99), {-20036395.1, -1920825.0}, 1}}};
  const auto legs = annotate(settings, route);
  QCOMPARE(legs.size(), size_t(2));
  for (const AnnotatedLeg &leg : legs) {
    VERIFY_NEAR(leg.grid_bearing.degrees(), leg.back ? 270 : 90, 1e-9, "");
    QCOMPARE(*leg.dial, leg.back ? 270.0 : 90.0);
  }
}

void AnnotateLegsTest::poles_data() {
  QTest::addColumn<bool>("north");
  QTest::newRow("north pole") << true;
  QTest::newRow("south pole") << false;
}

// 1 km to the pole, 1 km on over it, and past it at 100 m.
void AnnotateLegsTest::poles() {
  QFETCH(bool, north);
  const double side = north ? 1 : -1;
  const TrueBearing toThePole(Angle::degrees(north ? 0 : 180));
  const Place pole = place(side * 90, 40);
  const Place from = geodesicDestination(pole, TrueBearing(Angle::degrees(north ? 180 : 0)), Length::metres(1000));
  const Place over = geodesicDestination(from, toThePole, Length::metres(2000));
  const Place past =
      geodesicDestination(over, TrueBearing(toThePole.angle() + Angle::degrees(5.739)), Length::metres(2000));
  const FieldSetting field = fieldOf2026();
  const auto legs =
      annotate(settingsWith(field, Direction::Both), StandardGrid{0, north}.route({{from, pole, over, past}}));
  QCOMPARE(legs.size(), size_t(6));
  const double expected[] = {1000, 1000, 2000, 2000, 1000, 1000};
  for (size_t i = 0; i < 6; ++i) {
    const AnnotatedLeg &leg = legs[i];
    VERIFY_NEAR(leg.length.metres(), expected[i], 1e-6, std::to_string(i));
    VERIFY_AT(std::isfinite(leg.true_bearing.degrees()) && std::isfinite(leg.field.declination.east.degrees()),
              std::to_string(i));
    // On the polar grid the bearings agree, whatever the meridian does.
    VERIFY_NEAR(turnBetween(leg.grid_bearing.degrees(), leg.true_bearing.degrees() - leg.convergence.east.degrees()), 0,
                0.001, std::to_string(i));
    // The north pole lies in the blackout zone, the south pole does not: see field_zones.csv and wmm2025_poles.csv.
    VERIFY_AT(leg.dial.has_value() == !north && leg.back_dial.has_value() == !north, std::to_string(i));
    VERIFY_AT(valuesOf(leg, LegRemark::CompassBlackout).size() == (north ? 1u : 0u), std::to_string(i));
  }
}

QTEST_APPLESS_MAIN(AnnotateLegsTest)
#include "annotate_legs_test.moc"
