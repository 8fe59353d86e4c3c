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
    // One in ten is 5.711 degrees. By the table of Moss 1917 a step of 30.4 inches on the level is 27.6 long at 5
    // degrees and 24.4 at 10: 27.145 here, so 0.89293 of it. 300 m of the map are 301.496 m of the slope, and 1.3 steps
    // a metre over 0.89293 make 438.94.
    VERIFY_NEAR(walked.stepsTo(300), 438.94, 0.01, "uphill steps are shorter");
    // Irmischer and Clarke's 0.11 + 0.67 exp(-(10 + 2)^2 / 1800) m/s: 0.72849.
    VERIFY_NEAR(walked.timeTo(300)->seconds(), 300 / 0.72849, 0.01, "time uphill");
    // Of the leg and the 200 m beyond, by steps of no more than a cell: it rises by a tenth all the way.
    const auto &heights = way.profile()->heights;
    const double step = way.profile()->step.metres(), run = double(heights.size() - 1) * step;
    QVERIFY(step <= 10 + 1e-9 && run >= 500 - 1e-6 && run < 500 + step);
    VERIFY_NEAR(heights.back() - heights.front(), run / 10, 1e-4, "rise");

    // Down the same slope to the start: between 29.2 inches at 5 degrees and 28.3 at 10 it is 29.072, 0.95632 of the
    // level step, and the steps are 409.85. The speed is 0.11 + 0.67 exp(-(-10 + 2)^2 / 1800) m/s: 0.75660.
    const LegWay back(to, from, geodesicBetween(to, from), Length::metres(200), terrain.get(), nullptr, nullptr);
    VERIFY_NEAR(back.walkedBy(Walker()).stepsTo(300), 409.85, 0.01, "downhill");
    VERIFY_NEAR(back.walkedBy(Walker()).timeTo(300)->seconds(), 300 / 0.75660, 0.01, "time downhill");
  }
};

QTEST_APPLESS_MAIN(LegWayTest)
#include "leg_way_test.moc"
