// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/leg_way.h"
#include "support/near.h"
#include "walking/walking_time.h"

#include <QtTest>

#include <cmath>

using namespace brushline;

namespace {
Place place(double latitude, double longitude) { return {Angle::degrees(latitude), Angle::degrees(longitude)}; }

// A slope that rises to the east by one in ten, in a plane of metres round (0, 0).
std::unique_ptr<Terrain> slope() {
  const GridShape shape{-1000, 1000, 10, 10, 400, 200};
  return std::make_unique<Terrain>(TiledGrid(shape,
                                             [](const CellWindow &window) {
                                               std::vector<float> cells;
                                               for (int64_t r = 0; r < window.rows; ++r)
                                                 for (int64_t c = 0; c < window.columns; ++c)
                                                   cells.push_back(float(window.column + c));
                                               return cells;
                                             }),
                                   [](std::vector<double> &x, std::vector<double> &y) {
                                     for (size_t i = 0; i < x.size(); ++i) {
                                       x[i] *= 111319.49;
                                       y[i] *= 110574.28;
                                     }
                                   });
}
} // namespace

class LegWayTest : public QObject {
  Q_OBJECT

private slots:
  void levelGroundByHand() {
    const Place from = place(0, 0);
    const Place to = geodesicDestination(from, TrueBearing(Angle::degrees(90)), Length::metres(300));
    const LegWay way(from, to, geodesicBetween(from, to), Length::metres(200), nullptr, nullptr, nullptr);
    Walker walker;
    walker.steps_per_100m = 130;
    const auto walked = way.walkedBy(walker);
    // 130 steps over 100 m: 1.3 a metre.
    VERIFY_NEAR(walked.stepsTo(0), 0, 1e-9, "start");
    VERIFY_NEAR(walked.stepsTo(120), 156, 1e-6, "on the leg");
    VERIFY_NEAR(walked.stepsTo(300), 390, 1e-6, "end");
    VERIFY_NEAR(walked.stepsTo(340), 442, 1e-6, "beyond");
    // Off-trail speed on level ground 0.77851 m/s: Irmischer and Clarke 2018, as its formula gives at slope 0.
    VERIFY_NEAR(walked.timeTo(340)->seconds(), 340 / 0.77851, 0.01, "time");
    QVERIFY(!way.profile());
  }

  // On a plane all goes on beyond the end as before it.
  void aSlopeGoesOn() {
    const Place from = place(0, 0);
    const Place to = geodesicDestination(from, TrueBearing(Angle::degrees(90)), Length::metres(300));
    const auto terrain = slope();
    const LegWay way(from, to, geodesicBetween(from, to), Length::metres(200), terrain.get(), nullptr, nullptr);
    const auto walked = way.walkedBy(Walker());
    VERIFY_NEAR(walked.stepsTo(450) / walked.stepsTo(300), 1.5, 1e-4, "steps");
    VERIFY_NEAR(walked.timeTo(450)->seconds() / walked.timeTo(300)->seconds(), 1.5, 1e-4, "time");
    QVERIFY(walked.stepsTo(300) > 390 * 1.05); // uphill steps are shorter
    QVERIFY(double(way.profile()->heights.size() - 1) * way.profile()->step.metres() >= 499);
  }
};

QTEST_APPLESS_MAIN(LegWayTest)
#include "leg_way_test.moc"
