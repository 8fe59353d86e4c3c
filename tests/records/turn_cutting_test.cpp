// SPDX-License-Identifier: GPL-2.0-or-later
// Where tracks are cut; turns are known because the walks are made here.
#include "records/turn_cutting.h"
#include "records/walk_by_chance.h"
#include "support/near.h"
#include "support/work.h"

using namespace brushline;
using namespace brushline::test;

namespace {
const std::vector<XY> plan{{0, 0}, {200, 0}, {200, 150}, {50, 150}};

constexpr double within = 20; // metres; a node stands for 16 m of track

std::optional<TrackCuts> cut(const std::vector<XY> &track, const std::vector<XY> &of = plan, double tolerance = 150) {
  return cutAtTurns(trackOf(track), meantOf(of), {tolerance, 4}, Progress());
}

void verifyCuts(const std::optional<TrackCuts> &cuts, const std::vector<XY> &turns, size_t first, double allowed) {
  QVERIFY(cuts.has_value());
  QCOMPARE(cuts->first_leg, first);
  QCOMPARE(cuts->cuts.size(), turns.size());
  for (size_t i = 0; i < turns.size(); ++i)
    VERIFY_NEAR(std::hypot(cuts->cuts[i].near.east - turns[i][0], cuts->cuts[i].near.north - turns[i][1]), 0, allowed,
                "cut " + std::to_string(i));
}

std::vector<XY> turned(const std::vector<XY> &points, double degrees, double stretch = 1) {
  const double c = std::cos(degrees * Angle::pi / 180), s = std::sin(degrees * Angle::pi / 180);
  std::vector<XY> result;
  for (const XY &p : points) // clockwise, as bearings grow
    result.push_back({stretch * (c * p[0] + s * p[1]), stretch * (c * p[1] - s * p[0])});
  return result;
}
} // namespace

class TurnCuttingTest : public QObject {
  Q_OBJECT
private slots:
  void asPlanned() {
    verifyCuts(cut(along(plan, 1)), plan, 0, within);
    verifyCuts(cut(along(plan, 12)), plan, 0, within);
    verifyCuts(cut(plan), plan, 0, 0.001); // a drawn line with no more than its corners
    QVERIFY(!cut(along(plan, 1))->partial && cut(along(plan, 1))->cuts.back().at_end);
  }

  // All legs turned alike and stretched alike end somewhere else than planned; they are cut where they turn.
  void turnedAndStretched() {
    for (const double degrees : {-30., -15., -5., 5., 15., 30.})
      for (const double stretch : {0.75, 1., 1.25})
        verifyCuts(cut(along(turned(plan, degrees, stretch), 1)), turned(plan, degrees, stretch), 0, within);
  }

  void zigzag() {
    std::vector<XY> way{{0, 0}};
    for (int i = 1; i < 10; ++i)
      way.push_back({20. * i, i % 2 ? 3. : -3.});
    way.push_back({200, 0});
    for (int i = 1; i < 7; ++i)
      way.push_back({200. + (i % 2 ? 4. : -4.), 21. * i});
    way.push_back({200, 150});
    way.push_back({50, 150});
    verifyCuts(cut(along(way, 1)), plan, 0, within);
  }

  // Sideways round a thicket, and back to the line.
  void roundAThicket() {
    verifyCuts(cut(along({{0, 0}, {80, 0}, {80, -25}, {120, -25}, {120, 0}, {200, 0}, {200, 150}, {50, 150}}, 1)), plan,
               0, within);
  }

  void beginsBeforeAndGoesOn() {
    const auto cuts = cut(along({{-20, -300}, {0, 0}, {200, 0}, {200, 150}, {50, 150}, {-60, 400}}, 1));
    verifyCuts(cuts, plan, 0, within);
    QVERIFY(!cuts->cuts.front().at_end && !cuts->cuts.back().at_end);
  }

  void someLegsOnly() {
    const std::vector<XY> two{{0, 0}, {200, 0}, {200, 150}};
    verifyCuts(cut(along(two, 1)), two, 0, within);
    // 40 m of the third leg: begun.
    const auto begun = cut(along({{0, 0}, {200, 0}, {200, 150}, {160, 150}}, 1));
    verifyCuts(begun, {{0, 0}, {200, 0}, {200, 150}, {160, 150}}, 0, within);
    QVERIFY(begun->partial);
    // The recorder was switched on late.
    verifyCuts(cut(along({{200, 0}, {200, 150}, {50, 150}}, 1)), {{200, 0}, {200, 150}, {50, 150}}, 1, within);
  }

  // No turn was recorded: 40 m about it are missing.
  void gapAtTheTurn() {
    std::vector<XY> way;
    for (const XY &p : along(plan, 1))
      if (std::hypot(p[0] - 200, p[1]) > 20)
        way.push_back(p);
    verifyCuts(cut(way), plan, 0, 25);
  }

  void thereAndBack() {
    const std::vector<XY> out{{0, 0}, {0, 120}, {0, 0}};
    for (const double length : {100., 120., 140.}) {
      const std::vector<XY> walked{{0, 0}, {0, length}, {0, 0}};
      verifyCuts(cut(along(walked, 1), out), walked, 0, within);
    }
  }

  void partsOfARoute() {
    std::vector<MeantLeg> legs{{{0, 0}, {200, 0}, false}, {{200, 0}, {260, 80}, true}, {{260, 80}, {260, 250}, false}};
    const auto cuts =
        cutAtTurns(trackOf(along({{0, 0}, {200, 0}, {150, 60}, {260, 80}, {260, 250}}, 1)), legs, {150, 4}, Progress());
    verifyCuts(cuts, {{0, 0}, {200, 0}, {260, 80}, {260, 250}}, 0, within);
  }

  void notThisRoute() {
    QVERIFY(!cut(along({{1000, 0}, {1200, 0}, {1200, 150}}, 1)));
    QVERIFY(!cut(along({{50, 150}, {200, 150}, {200, 0}, {0, 0}}, 1))); // the other way round
    QVERIFY(!cut({{0, 0}}));
    QVERIFY(!cut({}));
    std::vector<XY> off; // all of it 60 m off
    for (const XY &p : along(plan, 1))
      off.push_back({p[0], p[1] - 60});
    QVERIFY(!cut(off, plan, 40));
    QVERIFY(cut(off, plan, 100));
  }

  // A day of standing about with noise, then the walk, in less than three seconds of work.
  void longTracks() {
    WalkByChance chance(9);
    std::vector<XY> way;
    for (int i = 0; i < 90000; ++i)
      way.push_back({4 * chance.normal(), 4 * chance.normal()});
    for (const XY &p : along(plan, 0.05))
      way.push_back({p[0] + 4 * chance.normal(), p[1] + 4 * chance.normal()});
    std::optional<TrackCuts> cuts;
    const double seconds = secondsOfWork([&] { cuts = cut(way); });
    verifyCuts(cuts, plan, 0, 40);
    QVERIFY2(seconds < 3 * slower, qPrintable(QString::number(seconds)));
  }

  // Up and down for hours between the first two turns, then the walk: smoothing is doubled until the pairs of nodes
  // are few enough.
  void pairsAreBounded() {
    std::vector<XY> laps;
    for (int i = 0; i < 400; ++i) {
      laps.push_back({100, 10});
      laps.push_back({100, -90});
    }
    std::vector<XY> way = along(laps, 2);
    for (const XY &p : along(plan, 1))
      way.push_back(p);
    const auto cuts = cut(way);
    QVERIFY(cuts && cuts->blur_m > 8);
    verifyCuts(cuts, plan, 0, 2 * cuts->blur_m);
  }

  void cancelled() {
    struct Stop : Progress {
      bool cancelled() const override { return true; }
    };
    QVERIFY_EXCEPTION_THROWN(cutAtTurns(trackOf(plan), meantOf(plan), {}, Stop()), Cancelled);
  }
};

QTEST_GUILESS_MAIN(TurnCuttingTest)
#include "turn_cutting_test.moc"
