// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/terrain.h"

#include "shared/geodesic.h"
#include "support/grid_of.h"
#include "support/near.h"
#include "support/random.h"

#include <GeographicLib/UTMUPS.hpp>

#include <algorithm>
#include <limits>

using namespace brushline;
using namespace brushline::test;

class TerrainTest : public QObject {
  Q_OBJECT
private slots:
  void heightOnAPlane();
  void profileOnAPlane();
  void noStepLongerThanACell();
  void shortLeg();
  void longLineFollowsTheGeodesic();
  void strayAtLatitude80();
  void zeroLength();
  void outside();
  void unprojectable();
  void besideAPole();
  void lengthened();
  void antimeridian_data();
  void antimeridian();
};

namespace {
constexpr double missing = std::numeric_limits<double>::quiet_NaN();

Place place(double latitude, double longitude) { return {Angle::degrees(latitude), Angle::degrees(longitude)}; }

void asDegrees(std::vector<double> &, std::vector<double> &) {}

void toUtm32(std::vector<double> &x, std::vector<double> &y) {
  for (size_t i = 0; i < x.size(); ++i) {
    int zone;
    bool north;
    double easting, northing;
    GeographicLib::UTMUPS::Forward(y[i], x[i], zone, north, easting, northing, 32);
    x[i] = easting;
    y[i] = northing;
  }
}

// 10 m cells in UTM zone 32, 20 km by 20 km round 9.4 E, 47 N.
constexpr GridShape utmShape{520000, 5215000, 10, 10, 2000, 2000};
double utmPlane(double x, double y) { return 500 + 0.05 * (x - 520000) + 0.1 * (y - 5195000); }
constexpr double floatHeight = 2e-4; // heights of 3000 m are kept as float: half of 2.4e-4
} // namespace

void TerrainTest::heightOnAPlane() {
  Terrain terrain(gridOf(utmShape, utmPlane), toUtm32);
  Random random(40);
  for (int i = 0; i < 200; ++i) {
    const Place p = place(random.between(46.93, 47.06), random.between(9.29, 9.5));
    std::vector<double> x{p.longitude.degrees()}, y{p.latitude.degrees()};
    toUtm32(x, y);
    VERIFY_NEAR(terrain.height(p), utmPlane(x[0], y[0]), floatHeight,
                std::to_string(x[0]) + " " + std::to_string(y[0]));
  }
}

// Every height of the profile lies where its step says.
void TerrainTest::profileOnAPlane() {
  Terrain terrain(gridOf(utmShape, utmPlane), toUtm32);
  Random random(41);
  for (int i = 0; i < 20; ++i) {
    const Place from = place(random.between(46.96, 47.04), random.between(9.32, 9.45));
    const TrueBearing bearing(Angle::degrees(random.between(0, 360)));
    const Length length = Length::metres(random.between(1, 3500));
    const Place to = geodesicDestination(from, bearing, length);
    const Profile profile = terrain.profile(from, to, length);
    VERIFY_NEAR(profile.step.metres() * double(profile.heights.size() - 1), length.metres(), 1e-9, "length");
    for (size_t k = 0; k < profile.heights.size(); ++k) {
      const Place p = geodesicDestination(from, bearing, Length::metres(profile.step.metres() * double(k)));
      std::vector<double> x{p.longitude.degrees()}, y{p.latitude.degrees()};
      toUtm32(x, y);
      // 1 mm on the ground: the scale of UTM changes along a chord of 1 km.
      VERIFY_NEAR(profile.heights[k], utmPlane(x[0], y[0]), floatHeight + 0.1e-3, std::to_string(k));
    }
  }
}

// As many equal steps as cells are needed; at most one more for each chord of 1 km, and one.
void TerrainTest::noStepLongerThanACell() {
  Terrain terrain(gridOf(utmShape, utmPlane), toUtm32);
  Random random(42);
  for (int i = 0; i < 50; ++i) {
    const Place from = place(random.between(46.96, 47.04), random.between(9.32, 9.45));
    const Length length = Length::metres(random.between(5, 3000));
    const Place to = geodesicDestination(from, TrueBearing(Angle::degrees(random.between(0, 360))), length);
    const Profile profile = terrain.profile(from, to, length);
    std::vector<double> x{from.longitude.degrees(), to.longitude.degrees()};
    std::vector<double> y{from.latitude.degrees(), to.latitude.degrees()};
    toUtm32(x, y);
    const double cells = std::hypot(x[1] - x[0], y[1] - y[0]) / 10;
    const double steps = double(profile.heights.size() - 1);
    VERIFY_AT(steps >= cells - 1e-6, std::to_string(cells));
    VERIFY_AT(steps <= cells + 5, std::to_string(cells));
  }
}

// Shorter than a cell: one step.
void TerrainTest::shortLeg() {
  Terrain terrain(gridOf(utmShape, utmPlane), toUtm32);
  const Place from = place(47, 9.4);
  const Place to = geodesicDestination(from, TrueBearing(Angle::degrees(30)), Length::metres(2));
  const Profile profile = terrain.profile(from, to, Length::metres(2));
  QCOMPARE(profile.heights.size(), size_t(2));
  QVERIFY(profile.step.metres() == 2);
  VERIFY_NEAR(profile.heights[0], terrain.height(from), 1e-9, "start");
  VERIFY_NEAR(profile.heights[1], terrain.height(to), 1e-9, "end");
}

// 400 km to the east at 70 north, heights that tell the latitude: the geodesic bulges north by 0.07 degrees.
void TerrainTest::longLineFollowsTheGeodesic() {
  const GridShape shape{0, 90, 0.1, 0.1, 3600, 300};
  Terrain terrain(gridOf(shape, [](double, double y) { return (y - 70) * 100; }), asDegrees);
  const Place from = place(70, 20), to = place(70, 30);
  const GeodesicLeg leg = geodesicBetween(from, to);
  const Profile profile = terrain.profile(from, to, leg.length);
  double greatest = 0;
  for (size_t k = 0; k < profile.heights.size(); ++k) {
    const Place p = geodesicDestination(from, leg.departure, Length::metres(profile.step.metres() * double(k)));
    VERIFY_NEAR(profile.heights[k], (p.latitude.degrees() - 70) * 100, floatHeight, std::to_string(k));
    greatest = std::max(greatest, profile.heights[k]);
  }
  QVERIFY(greatest > 6); // L^2 tan(latitude) / 8 R: the straight line in degrees would stay at 0
}

// chordsAlong(): L^2 tan(latitude) / 8 R, under 0.12 m at 80 degrees, L = 1 km.
void TerrainTest::strayAtLatitude80() {
  const GridShape shape{0, 85, 0.001, 0.001, 100000, 10000};
  constexpr double metresPerDegree = 111000;
  Terrain terrain(gridOf(shape, [](double, double y) { return (y - 80) * metresPerDegree; }), asDegrees);
  for (double kilometres : {1.0, 5.0}) {
    const Place from = place(80, 20);
    const Length length = Length::metres(kilometres * 1000);
    const Place to = geodesicDestination(from, TrueBearing(Angle::degrees(90)), length);
    const Profile profile = terrain.profile(from, to, length);
    double stray = 0;
    for (size_t k = 0; k < profile.heights.size(); ++k) {
      const Place p =
          geodesicDestination(from, TrueBearing(Angle::degrees(90)), Length::metres(profile.step.metres() * double(k)));
      stray = std::max(stray, std::abs(profile.heights[k] - (p.latitude.degrees() - 80) * metresPerDegree));
    }
    QVERIFY2(stray < 0.12 && stray > 0.05, qPrintable(QString::number(stray)));
  }
}

void TerrainTest::zeroLength() {
  Terrain terrain(gridOf(utmShape, utmPlane), toUtm32);
  const Place p = place(47, 9.4);
  const Profile profile = terrain.profile(p, p, Length());
  QCOMPARE(profile.heights.size(), size_t(1));
  QVERIFY(profile.heights[0] == terrain.height(p));
}

void TerrainTest::outside() {
  const GridShape shape{8, 48, 0.001, 0.001, 100, 100}; // 8.0 to 8.1 E, 47.9 to 48.0 N
  Terrain terrain(gridOf(shape, [](double, double) { return 100; }), asDegrees);
  QVERIFY(std::isnan(terrain.height(place(47.95, 8.2))));
  QVERIFY(std::isnan(terrain.height(place(48.01, 8.05))));
  QVERIFY(terrain.height(place(47.95, 8.05)) == 100);
  const Place from = place(47.95, 8.05), to = place(47.95, 8.15);
  const Profile profile = terrain.profile(from, to, geodesicBetween(from, to).length);
  const auto without =
      size_t(std::count_if(profile.heights.begin(), profile.heights.end(), [](double h) { return std::isnan(h); }));
  QVERIFY(profile.heights.front() == 100 && std::isnan(profile.heights.back()));
  VERIFY_NEAR(double(without) / double(profile.heights.size()), 0.5, 0.02, "half of the line lies outside");
}

// A place that cannot be turned is one without height, and does not make the steps endless.
void TerrainTest::unprojectable() {
  Terrain terrain(gridOf(utmShape, utmPlane), [](std::vector<double> &x, std::vector<double> &y) {
    toUtm32(x, y);
    x.back() = y.back() = missing;
  });
  QVERIFY(std::isnan(terrain.height(place(47, 9.4))));
  const Place from = place(47, 9.4), to = place(47.02, 9.4);
  const Profile profile = terrain.profile(from, to, geodesicBetween(from, to).length);
  QVERIFY(profile.heights.size() > 200 && profile.heights.size() < 300); // 2224 m in cells of 10 m
  QVERIFY(std::isfinite(profile.heights.front()) && std::isnan(profile.heights.back()));
}

// Beside a pole a line crosses half of a model in degrees within a millimetre.
void TerrainTest::besideAPole() {
  const GridShape shape{-180, 90, 1.0 / 3600, 1.0 / 3600, 1296000, 648000};
  Terrain terrain(gridOf(shape, [](double, double) { return 2800.0; }), asDegrees);
  const Place from = place(90 - 1e-7, 90); // 1.1 cm from the pole
  const GeodesicLeg leg = geodesicBetween(from, place(90 - 1e-7, -80));
  Profile profile = terrain.profile(from, leg.departure, Length::metres(2));
  QVERIFY(profile.heights.size() <= 201);
  VERIFY_NEAR(profile.step.metres() * double(profile.heights.size() - 1), 2, 1e-9, "length");
  for (const double height : profile.heights)
    QCOMPARE(height, 2800.0);
}

void TerrainTest::antimeridian_data() {
  QTest::addColumn<double>("lengthMetres");
  QTest::addColumn<double>("before"); // metres walked before the antimeridian
  QTest::newRow("one chord") << 800.0 << 300.0;
  QTest::newRow("several") << 9500.0 << 3210.0;
  QTest::newRow("at once") << 2500.0 << 0.5;
}

// A model in degrees from -180 to 180: a leg across its seam must not run round the world.
void TerrainTest::antimeridian() {
  QFETCH(double, lengthMetres);
  QFETCH(double, before);
  const GridShape shape{-180, 1, 0.001, 0.001, 360000, 2000}; // cells of 111 m
  Terrain terrain(gridOf(shape, [](double x, double) { return (180 - std::abs(x)) * 1000; }), asDegrees);
  for (int turn : {0, 1, -2})
    for (bool west : {false, true}) {
      const double sign = west ? -1 : 1;
      const Place from = place(0.5, sign * (180 - before / 111320) + turn * 360);
      VERIFY_NEAR(terrain.height(from), std::max(0.5, before / 111.32), 1e-3, "start");
      const TrueBearing bearing(Angle::degrees(west ? 270 : 90));
      const Length length = Length::metres(lengthMetres);
      const Profile profile = terrain.profile(from, geodesicDestination(from, bearing, length), length);
      const double cells = lengthMetres / 111.32;
      VERIFY_AT(double(profile.heights.size() - 1) < cells + 15, std::to_string(profile.heights.size()));
      VERIFY_AT(double(profile.heights.size() - 1) > cells - 1, std::to_string(profile.heights.size()));
      for (size_t k = 0; k < profile.heights.size(); ++k) {
        const Place p = geodesicDestination(from, bearing, Length::metres(profile.step.metres() * double(k)));
        // In the half cells at the seam the border's height, 0.5, reaches outwards.
        const double expected = std::max(0.5, (180 - std::abs(p.longitude.degrees())) * 1000);
        VERIFY_NEAR(profile.heights[k], expected, 1e-3,
                    std::to_string(k) + " of " + std::to_string(profile.heights.size()));
      }
    }
}

// On beyond the end by the same steps, over the same ground: what one asks for there is what one gets.
void TerrainTest::lengthened() {
  Terrain terrain(gridOf(utmShape, utmPlane), toUtm32);
  const Place from = place(47, 9.4);
  for (double metres : {7.0, 300.0, 2400.0})
    for (double more : {0.0, 1.0, 250.0, 3000.0}) {
      const TrueBearing bearing(Angle::degrees(33));
      const Length length = Length::metres(metres);
      const Place to = geodesicDestination(from, bearing, length);
      Profile profile = terrain.profile(from, to, length);
      const Profile before = profile;
      const GeodesicLeg leg = geodesicBetween(from, to);
      terrain.lengthen(profile, to, leg.arrival, Length::metres(more));
      QVERIFY(profile.step.metres() == before.step.metres());
      QVERIFY(std::equal(before.heights.begin(), before.heights.end(), profile.heights.begin()));
      const double reached = profile.step.metres() * double(profile.heights.size() - 1);
      QVERIFY(reached >= metres + more - 1e-6 && reached < metres + more + profile.step.metres());
      for (size_t k = 0; k < profile.heights.size(); ++k) {
        const Place p = geodesicDestination(from, bearing, Length::metres(profile.step.metres() * double(k)));
        // A chord of 1 km strays by 2 mm here, on a plane that rises by less than a metre a metre.
        VERIFY_NEAR(profile.heights[k], terrain.height(p), 5e-3, std::to_string(metres) + " " + std::to_string(k));
      }
    }
}

QTEST_APPLESS_MAIN(TerrainTest)
#include "terrain_test.moc"
