// SPDX-License-Identifier: GPL-2.0-or-later
#include "records/walk_errors.h"
#include "support/near.h"

#include <QtTest>

#include <cmath>

using namespace brushline;

namespace {
WalkedErrors leg(size_t track, const std::string &walker, double bearing, double percent) {
  WalkedErrors result;
  result.track = track;
  result.walker = walker;
  result.bearing = LegError{bearing, 1};
  result.length = LegError{percent, 1};
  result.declination = 8;
  result.convergence = -1;
  result.paces = 260;
  result.meant_m = 200;
  return result;
}
} // namespace

class WalkErrorsTest : public QObject {
  Q_OBJECT
private slots:
  void nothing() { QVERIFY(groupErrors({}).empty()); }

  // Computed by hand: bearings 7, 8, 9 have the mean 8, se sqrt(2) / 2 = 0.7071, interval 3.04 (t 4.3027): declination
  // forgotten fits, and so does D - G = 9. Lengths -5, -6, -7: pace_scale 1 / 0.94 = 1.0638; 130 paces over 100 m were
  // meant, 138.3 are to be counted.
  void oneWalker() {
    const auto groups = groupErrors({leg(0, "Ann", 7, -5), leg(0, "Ann", 8, -6), leg(0, "Ann", 9, -7)});
    QCOMPARE(groups.size(), size_t(3)); // the track, Ann, all
    QVERIFY(groups[0].of == GroupOf::Track && groups[1].of == GroupOf::Walker && groups[2].of == GroupOf::All);
    for (const GroupErrors &group : groups) {
      QCOMPARE(group.legs, size_t(3));
      VERIFY_NEAR(group.bearing->mean, 8, 1e-9, "bearing");
      VERIFY_NEAR(*group.bearing->se, 0.70711, 1e-5, "bearing");
      QCOMPARE(group.mix_ups.size(), size_t(2));
      QVERIFY(group.mix_ups[0].mix_up == MixUp::TrueOnMagnetic && group.mix_ups[1].mix_up == MixUp::GridOnMagnetic);
      VERIFY_NEAR(*group.pace_scale, 1.0638, 1e-4, "scale");
      VERIFY_NEAR(*group.paces_100m, 138.3, 0.05, "paces");
    }
  }

  // Walkers' means are what the mean of all is taken of: 8 and -8, so 0 with se 8 sqrt(2).
  void allOfTwo() {
    const auto groups =
        groupErrors({leg(0, "Ann", 7, 0), leg(0, "Ann", 9, 0), leg(1, "Bo", -7, 0), leg(1, "Bo", -9, 0)});
    QCOMPARE(groups.size(), size_t(5));
    const GroupErrors &all = groups.back();
    QCOMPARE(all.legs, size_t(4));
    VERIFY_NEAR(all.bearing->mean, 0, 1e-9, "all");
    VERIFY_NEAR(*all.bearing->se, 8 * std::sqrt(2.), 1e-9, "all");
    QVERIFY(all.walker.empty() && all.mix_ups.empty() && !all.pace_scale);
    QCOMPARE(groups[2].walker, std::string("Ann"));
  }

  void whatIsNotKnown() {
    std::vector<WalkedErrors> legs{leg(0, "", 7, -5), leg(0, "", 8, -6), leg(0, "", 9, -7)};
    legs[1].declination.reset();
    for (WalkedErrors &each : legs)
      each.paces.reset();
    auto groups = groupErrors(legs);
    QCOMPARE(groups.size(), size_t(2)); // nobody is named
    QVERIFY(!groups[0].norths_known && groups[0].mix_ups.empty());
    QVERIFY(groups[0].pace_scale && !groups[0].paces_100m);
    legs[1].declination = 14; // another part of the world
    QVERIFY(!groupErrors(legs)[0].norths_known);
    for (WalkedErrors &each : legs)
      each.length.reset();
    groups = groupErrors(legs);
    QVERIFY(!groups[0].length && groups[0].length_legs == 0);
    groups = groupErrors({leg(0, "", 8, -6)});
    QVERIFY(!groups[0].bearing->se && groups[0].mix_ups.empty() && !groups[0].pace_scale);
  }
};

QTEST_GUILESS_MAIN(WalkErrorsTest)
#include "walk_errors_test.moc"
