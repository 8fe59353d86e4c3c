// SPDX-License-Identifier: GPL-2.0-or-later
// Held against geodesics (GeographicLib).
#include "shared/geodesic.h"
#include "shared/space.h"
#include "support/near.h"
#include "support/random.h"

#include <boost/geometry/algorithms/covered_by.hpp>
#include <boost/geometry/strategies/strategies.hpp>

#include <QtTest>

#include <cmath>

using namespace brushline;

namespace {
double apart(const SpacePoint &a, const SpacePoint &b) {
  return std::hypot(a.get<0>() - b.get<0>(), a.get<1>() - b.get<1>(), a.get<2>() - b.get<2>());
}
} // namespace

class SpaceTest : public QObject {
  Q_OBJECT

private slots:
  // What lies within a reach by the geodesic lies in the box grown by it, at the poles and across the 180th meridian.
  void withinReachIsWithinTheBox() {
    test::Random random(31);
    for (double latitude : {-90.0, -46.0, 0.0, 60.0, 90.0})
      for (double longitude : {-180.0, 0.0, 179.9999})
        for (int i = 0; i < 50; ++i) {
          const Place centre{Angle::degrees(latitude), Angle::degrees(longitude)};
          const double reach = random.between(0, 5000);
          const Place place = geodesicDestination(centre, TrueBearing(Angle::degrees(random.between(0, 360))),
                                                  Length::metres(reach));
          const SpacePoint at = inSpace(centre);
          QVERIFY(boost::geometry::covered_by(inSpace(place), grown(SpaceBox(at, at), reach + spaceRounding)));
        }
  }

  // The middle of a geodesic is never farther from the middle of the straight line than the bulge says, nor much less.
  void bulgeIsEnough() {
    test::Random random(32);
    for (int i = 0; i < 200; ++i) {
      const Place from{Angle::degrees(random.between(-90, 90)), Angle::degrees(random.between(-180, 180))};
      const TrueBearing bearing(Angle::degrees(random.between(0, 360)));
      const double length = random.between(10, 300000);
      const SpacePoint a = inSpace(from), b = inSpace(geodesicDestination(from, bearing, Length::metres(length)));
      const SpacePoint middle((a.get<0>() + b.get<0>()) / 2, (a.get<1>() + b.get<1>()) / 2,
                              (a.get<2>() + b.get<2>()) / 2);
      const double rise = apart(middle, inSpace(geodesicDestination(from, bearing, Length::metres(length / 2))));
      VERIFY_AT(rise <= bulge(a, b) + spaceRounding, std::to_string(length));
      VERIFY_AT(rise > 0.9 * bulge(a, b) - spaceRounding, std::to_string(length));
    }
    const SpacePoint a = inSpace({Angle::degrees(0), Angle::degrees(0)}), b = inSpace({Angle::degrees(0), Angle::degrees(10)});
    QVERIFY(bulge(a, b) > 1.2e7); // everywhere
  }
};

QTEST_APPLESS_MAIN(SpaceTest)
#include "space_test.moc"
