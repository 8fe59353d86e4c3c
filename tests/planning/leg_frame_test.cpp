// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/leg_frame.h"
#include "shared/geodesic.h"
#include "support/near.h"
#include "support/random.h"

using namespace brushline;
using namespace brushline::test;

namespace {
Place place(double latitude, double longitude) { return {Angle::degrees(latitude), Angle::degrees(longitude)}; }
} // namespace

class LegFrameTest : public QObject {
  Q_OBJECT
private slots:
  // Expected places by GeographicLib's direct geodesic: along the leg, then square to it.
  void againstGeodesics() {
    Random random(11);
    for (int i = 0; i < 400; ++i) {
      const Place start = random.place();
      const TrueBearing bearing(Angle::degrees(random.between(0, 360)));
      const double length = std::pow(10, random.between(0, 5)); // 1 m to 100 km
      const LegFrame frame(start, geodesicDestination(start, bearing, Length::metres(length)));
      const std::string where = "leg " + std::to_string(i);
      VERIFY_NEAR(frame.length(), length, 1e-7, where);
      size_t station = 0;
      for (int j = 0; j < 10; ++j) {
        const double along = random.between(-100, length + 100), across = random.between(-1000, 1000);
        const Place foot = geodesicDestination(start, bearing, Length::metres(along));
        // The leg's bearing at the foot, taken from a point 1 km further back on the same geodesic.
        const Place behind = geodesicDestination(start, bearing, Length::metres(along - 1000));
        const Angle there = geodesicBetween(behind, foot).arrival.angle();
        const Place expected =
            geodesicDestination(foot, TrueBearing(there + Angle::degrees(90)), Length::metres(across));
        VERIFY_NEAR(geodesicBetween(frame.toPlace({along, across}), expected).length.metres(), 0,
                    1e-6 + 3e-8 * 1100 / length, where); // ends that are off by 15 nm turn a short leg
        const LegPoint point = frame.toLeg(expected, station);
        VERIFY_NEAR(point.along, along, 2e-5 + 3e-8 * 1100 / length, where);
        VERIFY_NEAR(point.across, across, 2e-5 + 3e-8 * 1100 / length, where);
      }
    }
  }

  void farOff() {
    const LegFrame frame(place(50, 7), place(50.1, 7.1));
    size_t station = 99; // out of range: mended
    for (const double across : {-5000.0, 5000.0, 10000.0}) {
      const LegPoint point = frame.toLeg(frame.toPlace({4321, across}), station);
      const double allowed = std::abs(across) > 6000 ? 0.01 : 0.001;
      VERIFY_NEAR(point.along, 4321, allowed, "far off");
      VERIFY_NEAR(point.across, across, allowed, "far off");
    }
  }

  void acrossTheDateLine() {
    const LegFrame frame(place(-17, 179.999), place(-17, -179.999));
    size_t station = 0;
    const LegPoint point = frame.toLeg(place(-17, -180), station);
    VERIFY_NEAR(point.along, frame.length() / 2, 1e-6, "date line");
  }
};

QTEST_GUILESS_MAIN(LegFrameTest)
#include "leg_frame_test.moc"
