// SPDX-License-Identifier: GPL-2.0-or-later
// Turns put together from straight pieces, so that where they are is known without reckoning.
#include "records/walk_by_chance.h"
#include "records/walked_turn.h"
#include "support/near.h"

using namespace brushline;
using namespace brushline::test;

namespace {
std::vector<WalkedTurn> turns(const CleanTrack &track, const std::vector<XY> &plan, double error = 4) {
  const auto cuts = cutAtTurns(track, meantOf(plan), {150, error}, Progress());
  std::vector<WalkedTurn> result;
  for (size_t i = 0; cuts && i < cuts->cuts.size(); ++i)
    result.push_back(walkedTurn(track, *cuts, i, error));
  return result;
}

void verifyAt(const WalkedTurn &turn, const XY &at, double within, const std::string &where) {
  VERIFY_NEAR(turn.at.east, at[0], within, where);
  VERIFY_NEAR(turn.at.north, at[1], within, where);
}
} // namespace

class WalkedTurnTest : public QObject {
  Q_OBJECT
private slots:
  // Points that do not fall on the turns: exact all the same, for turns of any angle, and in time as well (1 s a
  // point).
  void exact() {
    for (const double degrees : {-140., -90., -40., -20., 20., 45., 90., 120., 145.}) {
      const double b = degrees * Angle::pi / 180; // from north
      const std::vector<XY> plan{{0, 0}, {0, 200}, {150 * std::sin(b), 200 + 150 * std::cos(b)}};
      const std::string where = std::to_string(degrees);
      const auto found = turns(trackOf(along(plan, 3, 1)), plan);
      QCOMPARE(found.size(), size_t(3));
      verifyAt(found[1], plan[1], 1e-6, where);
      QVERIFY(found[1].seen && !found[1].in_gap);
      // The first point is 1 m on; 199 m to the turn take 66.33 steps, of which the one across it is cut short.
      VERIFY_NEAR(*found[1].arrived_s, 199. / 3, 0.7, where);
      verifyAt(found[0], {0, 1}, 1e-6, where);
    }
  }

  void thereAndBack() {
    const std::vector<XY> plan{{0, 0}, {0, 120}, {0, 0}};
    const auto found = turns(trackOf(along(plan, 3, 1)), plan);
    QCOMPARE(found.size(), size_t(3));
    verifyAt(found[1], {0, 120}, 1e-6, "there and back");
    QVERIFY(found[1].seen);
  }

  // 30 m to either side are missing.
  void inAGap() {
    const std::vector<XY> plan{{0, 0}, {0, 200}, {150, 200}};
    CleanTrack track;
    bool gap = false;
    for (const XY &p : along(plan, 2)) {
      if (std::hypot(p[0], p[1] - 200) < 30) {
        gap = true;
        continue;
      }
      const double time = double(track.fixes.size());
      track.fixes.push_back({{p[0], p[1]}, time, time, gap, false});
      gap = false;
    }
    const auto found = turns(track, plan);
    QCOMPARE(found.size(), size_t(3));
    verifyAt(found[1], {0, 200}, 1e-6, "gap");
    QVERIFY(found[1].in_gap && found[1].seen);
  }

  // Straight on: seen by a stand only.
  void straightOn() {
    const std::vector<XY> plan{{0, 0}, {0, 100}, {10, 200}};
    CleanTrack track = trackOf(along(plan, 2));
    auto found = turns(track, plan);
    QCOMPARE(found.size(), size_t(3));
    QVERIFY(!found[1].seen && !found[1].arrived_s);
    QVERIFY(found[1].nn > 100); // along: a fifth of 100 m, squared, or nearly
    VERIFY_NEAR(found[1].ee, 16, 8, "across");
    for (CleanFix &fix : track.fixes)
      if (fix.at.east == 0 && fix.at.north == 96) {
        fix.stand = true;
        *fix.left_s += 60;
      }
    found = turns(track, plan);
    QVERIFY(found[1].seen);
    verifyAt(found[1], {0, 96}, 1e-9, "stand");
    VERIFY_NEAR(*found[1].arrived_s, 48, 1e-9, "stand");
    VERIFY_NEAR(*found[1].left_s, 108, 1e-9, "stand");
  }

  // By hand: two lines at a right angle tell both coordinates with the fixes' variance; at 30 degrees the place along
  // the bisector has 16 / (2 sin^2 15) = 119.4 and across it 16 / (2 cos^2 15) = 8.57.
  void variance() {
    auto found = turns(trackOf(along({{0, 0}, {0, 200}, {150, 200}}, 3, 1)), {{0, 0}, {0, 200}, {150, 200}});
    VERIFY_NEAR(found[1].ee, 16, 1e-6, "right angle");
    VERIFY_NEAR(found[1].nn, 16, 1e-6, "right angle");
    VERIFY_NEAR(found[1].en, 0, 1e-6, "right angle");
    const std::vector<XY> plan{{0, 0}, {0, 200}, {75, 200 + 150 * std::cos(Angle::pi / 6)}};
    found = turns(trackOf(along(plan, 3, 1)), plan);
    const double s = std::sin(Angle::pi / 12), c = std::cos(Angle::pi / 12); // the bisector: 15 degrees from north
    const auto in = [&](double e, double n) {
      return e * e * found[1].ee + 2 * e * n * found[1].en + n * n * found[1].nn;
    };
    VERIFY_NEAR(in(s, c), 119.4, 0.05, "along");
    VERIFY_NEAR(in(c, -s), 8.57, 0.01, "across");
  }

  // With 4 m of noise each second the turn is found to 2 m (root mean square of each coordinate), without bias.
  void throughNoise() {
    const std::vector<XY> plan{{0, 0}, {0, 200}, {150, 200}};
    double squares = 0, east = 0, north = 0;
    constexpr int walks = 400;
    for (int seed = 1; seed <= walks; ++seed) {
      WalkByChance chance(seed);
      WalkByChance::Errors errors;
      errors.fix = 4;
      errors.speed = 1;
      CleanTrack track;
      const auto walk = chance.walk(plan, errors);
      for (size_t i = 0; i < walk.fixes.size(); ++i)
        track.fixes.push_back({{walk.fixes[i][0], walk.fixes[i][1]}, walk.times[i], walk.times[i], false, false});
      const auto found = turns(track, plan);
      QCOMPARE(found.size(), size_t(3));
      const double e = found[1].at.east, n = found[1].at.north - 200;
      squares += e * e + n * n;
      east += e / walks;
      north += n / walks;
    }
    const double rms = std::sqrt(squares / walks / 2);
    QVERIFY2(rms < 2, qPrintable(QString::number(rms)));
    VERIFY_NEAR(east, 0, 0.3, "bias");
    VERIFY_NEAR(north, 0, 0.3, "bias");
  }
};

QTEST_GUILESS_MAIN(WalkedTurnTest)
#include "walked_turn_test.moc"
