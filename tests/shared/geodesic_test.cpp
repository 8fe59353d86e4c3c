// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/geodesic.h"

#include "support/check.h"
#include "support/near.h"
#include "support/random.h"

#include <geodesic.h>

using namespace brushline;
using namespace brushline::test;

class GeodesicTest : public QObject {
  Q_OBJECT
private slots:
  void byDefinition();
  void randomPairs_data();
  void randomPairs();
  void samePlace();
  void badLatitude();
};

namespace {
constexpr double equatorRadius = 6378137, flattening = 1 / 298.257223563; // WGS84, by definition

Place place(double latitude, double longitude) { return {Angle::degrees(latitude), Angle::degrees(longitude)}; }

// Two programs, each good to 15 nm (Karney 2013).
constexpr double lengthTolerance = 2 * 15e-9;
const std::string projGeodesics = "computed with PROJ's geod_geninverse (another program, the same algorithm as ours), "
                                  "2000 random pairs of five kinds";
} // namespace

void GeodesicTest::byDefinition() {
  // Along the equator a geodesic is an arc of the circle of the equator's radius (up to 179.39 degrees): computed.
  const GeodesicLeg equator = geodesicBetween(place(0, 179.5), place(0, -179.5));
  VERIFY_NEAR(equator.length.metres(), equatorRadius * Angle::pi / 180, lengthTolerance, "equator");
  VERIFY_NEAR(equator.departure.degrees(), 90, 1e-12, "equator");
  VERIFY_NEAR(equator.arrival.degrees(), 90, 1e-12, "equator");
  // The quarter meridian by the series in the third flattening n: a / (1 + n) (1 + n^2/4 + n^4/64 + ...) pi / 2,
  // computed.
  const double n = flattening / (2 - flattening);
  const double quarter = equatorRadius / (1 + n) * (1 + n * n / 4 + n * n * n * n / 64) * Angle::pi / 2;
  const GeodesicLeg meridian = geodesicBetween(place(0, 7), place(90, 7));
  VERIFY_NEAR(meridian.length.metres(), quarter, lengthTolerance, "meridian");
  VERIFY_NEAR(turnBetween(meridian.departure.degrees(), 0), 0, 1e-12, "meridian");
  VERIFY_CHECK(checkOf("quarter meridian", "WGS84", meridian.length.metres(), 10001965.7293, 5e-5, "m",
                       "the quarter meridian of WGS84; from memory"));
  const Place pole = geodesicDestination(place(0, 7), TrueBearing(Angle::degrees(0)), Length::metres(quarter));
  VERIFY_NEAR(pole.latitude.degrees(), 90, 1e-12, "destination at the pole");
  const Place back = geodesicDestination(place(0, 7), TrueBearing(Angle::degrees(180)), Length::metres(-quarter / 2));
  VERIFY_NEAR(back.longitude.degrees(), 7, 1e-12, "a negative distance leads the other way");
  QVERIFY(back.latitude.degrees() > 45 && back.latitude.degrees() < 46);
}

void GeodesicTest::randomPairs_data() {
  QTest::addColumn<int>("kind");
  QTest::newRow("the whole globe") << 0;
  QTest::newRow("legs up to 5 km") << 1;
  QTest::newRow("nearly antipodal") << 2;
  QTest::newRow("near a pole") << 3;
  QTest::newRow("across the antimeridian") << 4;
}

// Against PROJ's own geodesic routines, 2000 pairs of each kind.
void GeodesicTest::randomPairs() {
  QFETCH(int, kind);
  geod_geodesic wgs84;
  geod_init(&wgs84, equatorRadius, flattening);
  Random random(10 + uint64_t(kind));
  int conditioned = 0;
  for (int i = 0; i < 2000; ++i) {
    Place from = random.place(), to = random.place();
    const double lat = from.latitude.degrees(), lon = from.longitude.degrees();
    switch (kind) {
    case 1: {
      double lat2, lon2;
      geod_direct(&wgs84, lat, lon, random.between(-180, 180), random.between(0.01, 5000), &lat2, &lon2, nullptr);
      to = place(lat2, lon2);
      break;
    }
    case 2:
      to = place(std::max(-90.0, std::min(90.0, -lat + random.between(-0.5, 0.5))),
                 lon + 180 + random.between(-0.5, 0.5));
      break;
    case 3: {
      const double side = i % 2 ? 1 : -1;
      from = i % 10 == 0 ? place(side * 90, lon) : place(side * random.between(89.9, 90), lon);
      to = place(side * random.between(89.9, 90), random.between(-180, 180));
      break;
    }
    case 4:
      from = place(lat, random.between(179.9, 180));
      to = place(lat + std::min(0.1, 90 - std::abs(lat)) * random.between(-1, 1),
                 i % 2 ? random.between(-180, -179.9) : random.between(180, 180.1));
      break;
    default:
      break;
    }
    const double lat1 = from.latitude.degrees(), lon1 = from.longitude.degrees();
    const double lat2 = to.latitude.degrees(), lon2 = to.longitude.degrees();
    const std::string where =
        std::to_string(lat1) + " " + std::to_string(lon1) + " to " + std::to_string(lat2) + " " + std::to_string(lon2);
    double length, azimuth1, azimuth2, reduced;
    geod_geninverse(&wgs84, lat1, lon1, lat2, lon2, &length, &azimuth1, &azimuth2, &reduced, nullptr, nullptr, nullptr);
    const GeodesicLeg leg = geodesicBetween(from, to);
    VERIFY_CHECK(checkOf("length", where, leg.length.metres(), length, lengthTolerance, "m", projGeodesics));
    VERIFY_AT(leg.departure.degrees() >= 0 && leg.departure.degrees() < 360, where);
    VERIFY_AT(leg.arrival.degrees() >= 0 && leg.arrival.degrees() < 360, where);
    // The reduced length tells how far the end moves when the bearing turns; where it is small, bearings are not held
    // by the ends (nearly antipodal places), and the walk below is the check.
    if (std::abs(reduced) > 1e3) {
      VERIFY_CHECK(checkOf("bearing at the start", where, leg.departure.degrees(),
                           turnedTo(azimuth1, leg.departure.degrees()), 1e-9, "deg", projGeodesics));
      VERIFY_CHECK(checkOf("bearing at the end", where, leg.arrival.degrees(),
                           turnedTo(azimuth2, leg.arrival.degrees()), 1e-9, "deg", projGeodesics));
      ++conditioned;
    }
    const double walkTolerance = lengthTolerance + 20e-9; // and the rounding of the bearing over the Earth's radius
    double lat3, lon3, miss;
    geod_direct(&wgs84, lat1, lon1, leg.departure.degrees(), leg.length.metres(), &lat3, &lon3, nullptr);
    geod_inverse(&wgs84, lat2, lon2, lat3, lon3, &miss, nullptr, nullptr);
    VERIFY_NEAR(miss, 0, walkTolerance, where);
    const Place reached = geodesicDestination(from, leg.departure, leg.length);
    geod_inverse(&wgs84, lat3, lon3, reached.latitude.degrees(), reached.longitude.degrees(), &miss, nullptr, nullptr);
    VERIFY_NEAR(miss, 0, lengthTolerance, where);
  }
  QVERIFY(conditioned > 1000);
}

void GeodesicTest::samePlace() {
  for (const Place &p : {place(0, 0), place(47, 8), place(-33, 180), place(90, 12), place(-90, 0)}) {
    const GeodesicLeg leg = geodesicBetween(p, p);
    QVERIFY(leg.length.metres() == 0);
    QVERIFY(std::isfinite(leg.departure.degrees()) && std::isfinite(leg.arrival.degrees()));
  }
  QVERIFY(geodesicBetween(place(10, 180), place(10, -180)).length.metres() == 0);
  QVERIFY(geodesicBetween(place(10, 5), place(10, 725)).length.metres() == 0);
  // At a pole all longitudes are one place; its latitude's cosine rounds to nothing.
  VERIFY_NEAR(geodesicBetween(place(90, 0), place(90, 123)).length.metres(), 0, lengthTolerance, "pole");
}

void GeodesicTest::badLatitude() {
  QVERIFY(std::isnan(geodesicBetween(place(91, 0), place(0, 0)).length.metres()));
  QVERIFY(std::isnan(geodesicBetween(place(0, 0), place(-90.001, 0)).departure.degrees()));
}

QTEST_APPLESS_MAIN(GeodesicTest)
#include "geodesic_test.moc"
