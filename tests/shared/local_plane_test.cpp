// SPDX-License-Identifier: GPL-2.0-or-later
// Held against geodesics, which GeographicLib works out by other means.
#include "shared/geodesic.h"
#include "shared/local_plane.h"
#include "support/near.h"
#include "support/random.h"

#include <QtTest>

#include <cmath>

using namespace brushline;

class LocalPlaneTest : public QObject {
  Q_OBJECT

private slots:
  void distancesAndBearingsFromTheCentre() {
    test::Random random(3);
    for (double latitude : {-90.0, -89.9999, -45.0, 0.0, 51.0, 89.9999, 90.0})
      for (double longitude : {-180.0, 0.0, 179.999}) {
        const Place centre{Angle::degrees(latitude), Angle::degrees(longitude)};
        const LocalPlane plane(centre);
        for (int i = 0; i < 20; ++i) {
          const double metres = random.between(0.01, 20000), bearing = random.between(0, 360);
          const Place place = geodesicDestination(centre, TrueBearing(Angle::degrees(bearing)), Length::metres(metres));
          const PlanePoint point = plane.toPlane(place);
          VERIFY_NEAR(std::hypot(point.east, point.north), metres, 1e-6, std::to_string(latitude));
          if (std::abs(latitude) < 90) // at a pole every way is one from the other pole
            VERIFY_NEAR(std::hypot(point.east - metres * std::sin(bearing * M_PI / 180),
                                   point.north - metres * std::cos(bearing * M_PI / 180)),
                        0, 1e-5, std::to_string(latitude));
          VERIFY_NEAR(geodesicBetween(plane.toPlace(point), place).length.metres(), 0, 1e-6, "and back");
        }
      }
  }

  // The error the header states.
  void lengthsElsewhere() {
    test::Random random(4);
    const Place centre{Angle::degrees(48), Angle::degrees(-60)};
    const LocalPlane plane(centre);
    for (double reach : {1000.0, 100000.0})
      for (int i = 0; i < 200; ++i) {
        const PlanePoint a{random.between(-reach, reach) * 0.7, random.between(-reach, reach) * 0.7},
            b{random.between(-reach, reach) * 0.7, random.between(-reach, reach) * 0.7};
        const double flat = std::hypot(a.east - b.east, a.north - b.north);
        const double real = geodesicBetween(plane.toPlace(a), plane.toPlace(b)).length.metres();
        const double allowed = reach * reach / 6 / 6.356e6 / 6.356e6 * flat + 1e-6;
        VERIFY_AT(flat - real < allowed && flat - real > -1e-6, std::to_string(flat) + " " + std::to_string(real));
      }
  }
};

QTEST_APPLESS_MAIN(LocalPlaneTest)
#include "local_plane_test.moc"
