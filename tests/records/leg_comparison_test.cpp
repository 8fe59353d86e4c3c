// SPDX-License-Identifier: GPL-2.0-or-later
// Numbers computed by hand in the plane beside each case; walks start at the plane's centre, where it is exact.
#include "records/leg_comparison.h"
#include "records/walk_by_chance.h"
#include "support/near.h"

using namespace brushline;
using namespace brushline::test;

namespace {
struct Site {
  Place origin;
  const char *name;
};
const Site sites[] = {{{Angle::degrees(47), Angle::degrees(11)}, "north east"},
                      {{Angle::degrees(-41), Angle::degrees(179.999)}, "south, across the 180th meridian"},
                      {{Angle::degrees(5), Angle::degrees(-75)}, "west"},
                      {{Angle::degrees(69), Angle::degrees(-179.9995)}, "far north"}};

std::vector<PlannedLeg> planned(const std::vector<XY> &plan, const Place &origin) {
  std::vector<PlannedLeg> legs;
  for (size_t i = 1; i < plan.size(); ++i) {
    const Place from = placeOf(plan[i - 1], origin), to = placeOf(plan[i], origin);
    legs.push_back({from, to, geodesicBetween(from, to), false});
  }
  return legs;
}

std::vector<WalkedLeg> compare(const CleanTrack &track, const std::vector<XY> &plan, const Place &origin) {
  const LocalPlane plane(origin);
  const auto legs = planned(plan, origin);
  const auto cuts = cutAtTurns(track, onPlane(legs, plane), {150, 4}, Progress());
  return cuts ? compareLegs(track, *cuts, legs, plane, 4, Progress()) : std::vector<WalkedLeg>();
}

XY polar(double degrees, double metres) {
  return {metres * std::sin(degrees * Angle::pi / 180), metres * std::cos(degrees * Angle::pi / 180)};
}

// How a leg was walked: degrees to the right of the meant bearing, and share of the meant length.
struct Walked {
  double turn = 0, share = 1;
};

// Legs of 100 m, north and east in turn, each walked in its way. "y" for one that is like its plan, else "n". Nothing
// need be found on the track: it is cut in its corners.
std::string likeness(const std::vector<Walked> &walked, bool begun = false, size_t anyWay = size_t(-1)) {
  const Place &origin = sites[0].origin;
  std::vector<XY> plan{{0, 0}}, way{{0, 0}};
  const auto onward = [](std::vector<XY> &line, const XY &step) {
    line.push_back({line.back()[0] + step[0], line.back()[1] + step[1]});
  };
  TrackCuts cuts;
  cuts.partial = begun;
  double metres = 0; // a fix each
  const auto cut = [&](bool atEnd) {
    const auto fix = size_t(std::lround(metres));
    cuts.cuts.push_back({{way.back()[0], way.back()[1]}, fix, fix, atEnd});
  };
  cut(true);
  for (size_t i = 0; i < walked.size(); ++i) {
    const double bearing = i % 2 == 0 ? 0 : 90;
    onward(plan, polar(bearing, 100));
    onward(way, polar(bearing + walked[i].turn, 100 * walked[i].share));
    metres += 100 * walked[i].share;
    cut(i + 1 == walked.size());
  }
  auto legs = planned(plan, origin);
  if (anyWay < legs.size())
    legs[anyWay].any_way = true;
  std::string text;
  for (const WalkedLeg &leg : compareLegs(trackOf(along(way, 1)), cuts, legs, LocalPlane(origin), 4, Progress()))
    text += leg.like ? 'y' : 'n';
  return text;
}
} // namespace

class LegComparisonTest : public QObject {
  Q_OBJECT
private slots:
  void asPlanned() {
    const std::vector<XY> plan{{0, 0}, {200, 0}, {200, 150}};
    for (const Site &site : sites) {
      const auto legs = compare(trackOf(along(plan, 2)), plan, site.origin);
      QCOMPARE(legs.size(), size_t(2));
      for (const WalkedLeg &leg : legs) {
        QVERIFY(leg.share == LegShare::Whole && leg.like);
        VERIFY_NEAR(*leg.brg_diff, 0, 1e-5, site.name);
        VERIFY_NEAR(*leg.dist_diff, 0, 1e-5, site.name);
        VERIFY_NEAR(*leg.miss_m, 0, 1e-5, site.name);
        VERIFY_NEAR(*leg.own_m, 0, 1e-5, site.name);
        VERIFY_NEAR(*leg.cross_m, 0, 1e-5, site.name);
        VERIFY_NEAR(*leg.wander_m, 0, 1e-5, site.name);
      }
      VERIFY_NEAR(*legs[0].minutes, 100. / 60, 0.01, site.name); // 2 m a second
      VERIFY_NEAR(*legs[1].minutes, 75. / 60, 0.01, site.name);
      QCOMPARE(*legs[0].stand_min, 0.);
    }
  }

  // The example of the help. Meant: 90 degrees, 200 m, then north 150 m. Walked: 98 degrees, 188 m, then 0 degrees,
  // 150 m. By hand: the end misses by 188 sin 8 = 26.164 to the right and 188 cos 8 - 200 = -13.830, so by 29.595; the
  // second leg has no error of its own and misses by the same. Farthest off the second leg's line: 13.830 to the left.
  void example() {
    const std::vector<XY> plan{{0, 0}, {200, 0}, {200, 150}};
    const XY turn = polar(98, 188);
    const std::vector<XY> way{{0, 0}, turn, {turn[0], turn[1] + 150}};
    for (const Site &site : sites) {
      const auto legs = compare(trackOf(along(way, 2)), plan, site.origin);
      QCOMPARE(legs.size(), size_t(2));
      VERIFY_NEAR(*legs[0].brg_diff, 8, 1e-4, site.name);
      VERIFY_NEAR(*legs[0].walked_m, 188, 1e-4, site.name);
      VERIFY_NEAR(legs[0].walked->degrees(), 98, 1e-4, site.name);
      VERIFY_NEAR(*legs[0].dist_diff, -12, 1e-4, site.name);
      VERIFY_NEAR(*legs[0].miss_m, 29.595, 1e-3, site.name);
      VERIFY_NEAR(*legs[0].own_m, 29.595, 1e-3, site.name);
      VERIFY_NEAR(*legs[0].cross_m, 26.164, 1e-3, site.name);
      // 13.8 m west of the planned start true north points 13.8 / 6.37e6 tan(latitude) elsewhere: 0.00032 at 69
      // degrees.
      VERIFY_NEAR(*legs[1].brg_diff, 0, 4e-4, site.name);
      VERIFY_NEAR(*legs[1].miss_m, 29.595, 1e-3, site.name);
      VERIFY_NEAR(*legs[1].own_m, 0, 1e-3, site.name);
      VERIFY_NEAR(*legs[1].cross_m, -13.830, 1e-3, site.name);
      // The profile runs along the planned leg: 188 cos 8 = 186.170 at its end.
      VERIFY_NEAR(legs[0].profile.front().at_m, 0, 1e-3, site.name);
      VERIFY_NEAR(legs[0].profile.back().at_m, 186.170, 1e-3, site.name);
      VERIFY_NEAR(legs[0].profile.back().cross_m, 26.164, 1e-3, site.name);
      // sqrt(2) 4 m across 188 m, as degrees: 1.724; at the turn of 98 degrees both coordinates count nearly alike.
      VERIFY_NEAR(legs[0].brg_sigma, 1.724, 0.02, site.name);
    }
  }

  // A bow to the right, as a triangle: 6 m off in the middle; rms sqrt(6^2 / 3) = 3.464.
  void bow() {
    const auto legs = compare(trackOf(along({{0, 0}, {100, -6}, {200, 0}, {200, 150}}, 0.5)),
                              {{0, 0}, {200, 0}, {200, 150}}, sites[0].origin);
    QCOMPARE(legs.size(), size_t(2));
    QVERIFY(*legs[0].cross_m > 5.5 && *legs[0].cross_m < 6.001); // the turn is where its lines meet
    VERIFY_NEAR(*legs[0].wander_m, 3.464, 0.5, "bow");
  }

  // A minute's stand at the turn counts for the leg that begins there, one on the way for its own; one at the start
  // not.
  void standsAndMinutes() {
    const std::vector<XY> plan{{0, 0}, {200, 0}, {200, 150}};
    CleanTrack track = trackOf(along(plan, 2));
    double later = 0;
    for (size_t i = 0; i < track.fixes.size(); ++i) {
      CleanFix &fix = track.fixes[i];
      *fix.arrived_s += later;
      if (i == 0 || i == 40 || i == 100) {
        later += i == 0 ? 600 : 60;
        fix.stand = true;
      }
      *fix.left_s += later;
    }
    const auto legs = compare(track, plan, sites[0].origin);
    QCOMPARE(legs.size(), size_t(2));
    VERIFY_NEAR(*legs[0].minutes, 100. / 60 + 1, 0.02, "first");
    VERIFY_NEAR(*legs[0].stand_min, 1, 1e-9, "first");
    VERIFY_NEAR(*legs[1].minutes, 75. / 60 + 1, 0.02, "second");
    VERIFY_NEAR(*legs[1].stand_min, 1, 1e-9, "second");

    // Where one is at which minute, by 2 m a second: the first leg runs from when one walks off, after the stand at the
    // start, and its stand of a minute lies 80 m on; the second from the arrival at the turn, with its stand there.
    QCOMPARE(legs[0].profile.size(), size_t(101));
    for (const ProfilePoint &point : legs[0].profile)
      VERIFY_NEAR(*point.at_min, point.at_m / 120 + (point.at_m > 81 ? 1 : 0), 1e-6, std::to_string(point.at_m));
    VERIFY_NEAR(legs[0].profile.back().at_m, 200, 1e-4, "end");
    VERIFY_NEAR(*legs[0].profile.back().at_min, *legs[0].minutes, 1e-12, "end");
    QCOMPARE(legs[1].profile.size(), size_t(76));
    for (const ProfilePoint &point : legs[1].profile)
      VERIFY_NEAR(*point.at_min, point.at_m / 120 + (point.at_m > 1 ? 1 : 0), 1e-6, std::to_string(point.at_m));
    VERIFY_NEAR(legs[1].profile.back().at_m, 150, 1e-4, "end");
    VERIFY_NEAR(*legs[1].profile.back().at_min, *legs[1].minutes, 1e-12, "end");
  }

  // 45 degrees and twice or half the length, by hand, each with a degree or a metre to spare.
  void like() {
    const auto turned = [](const std::vector<double> &turns) {
      std::vector<Walked> walked;
      for (const double turn : turns)
        walked.push_back({turn, 1});
      return likeness(walked);
    };
    // One or two legs are held against the plan.
    QCOMPARE(turned({44}), std::string("y"));
    QCOMPARE(turned({46}), std::string("n"));
    QCOMPARE(turned({-44}), std::string("y"));
    QCOMPARE(turned({-46}), std::string("n"));
    QCOMPARE(turned({46, 46}), std::string("nn"));
    QCOMPARE(turned({46, 0}), std::string("ny"));
    // From three on a turn that they have in common is the compass's.
    QCOMPARE(turned({60, 60, 60}), std::string("yyy"));
    QCOMPARE(turned({60, 60, 104}), std::string("yyy"));
    QCOMPARE(turned({60, 60, 106}), std::string("yyn"));
    QCOMPARE(turned({60, 60, 16}), std::string("yyy"));
    QCOMPARE(turned({60, 60, 14}), std::string("yyn"));
    QCOMPARE(turned({0, 46, 0}), std::string("yny"));
    QCOMPARE(turned({170, 170, -146}), std::string("yyy")); // 44 apart, across south
    QCOMPARE(turned({170, 170, -144}), std::string("yyn"));
    QCOMPARE(turned({178, -178, 176, -176, 0}), std::string("yyyyn")); // the needle's wrong end, but for once
    // Lengths, by themselves.
    QCOMPARE(likeness({{0, 1.99}, {0, 0.51}}), std::string("yy"));
    QCOMPARE(likeness({{0, 2.01}, {0, 1}}), std::string("ny"));
    QCOMPARE(likeness({{0, 1}, {0, 0.49}, {0, 1}}), std::string("yny"));
    // A leg that was only begun has no length yet, but a bearing.
    QCOMPARE(likeness({{0, 1}, {0, 0.3}}, true), std::string("yy"));
    QCOMPARE(likeness({{0, 1}, {0, 0.3}}), std::string("yn"));
    QCOMPARE(likeness({{0, 1}, {46, 0.3}}, true), std::string("yn"));
    // Nobody says how the way to the next part of a route is walked; it has no say in what the others have in common.
    QCOMPARE(likeness({{0, 1}, {50, 2.5}, {0, 1}}, false, 1), std::string("yyy"));
    QCOMPARE(likeness({{46, 1}, {46, 1}, {46, 1}}, false, 1), std::string("nyn"));
  }

  void whatIsNotKnown() {
    const std::vector<XY> plan{{0, 0}, {200, 0}, {200, 150}, {50, 150}};
    CleanTrack track = trackOf(along({{0, 0}, {200, 0}, {200, 60}}, 2)); // ends on the second leg
    for (CleanFix &fix : track.fixes)
      fix.arrived_s = fix.left_s = std::nullopt;
    const auto legs = compare(track, plan, sites[0].origin);
    QCOMPARE(legs.size(), size_t(3));
    QVERIFY(legs[0].share == LegShare::Whole && legs[1].share == LegShare::Begun && legs[2].share == LegShare::None);
    QVERIFY(legs[0].walked_m && !legs[0].minutes && !legs[0].stand_min);
    QVERIFY(!legs[0].profile.empty() && !legs[1].profile.empty());
    for (const auto *leg : {&legs[0], &legs[1]})
      for (const ProfilePoint &point : leg->profile)
        QVERIFY(!point.at_min);
    QVERIFY(legs[1].walked && legs[1].brg_diff && !legs[1].dist_diff && !legs[1].miss_m && !legs[1].own_m);
    VERIFY_NEAR(*legs[1].walked_m, 60, 1e-5, "begun");
    QVERIFY(!legs[2].walked && !legs[2].walked_m && !legs[2].cross_m && !legs[2].brg_diff && legs[2].profile.empty());

    // Straight on at the turn.
    const std::vector<XY> straight{{0, 0}, {0, 100}, {10, 200}};
    const auto two = compare(trackOf(along(straight, 2)), straight, sites[0].origin);
    QCOMPARE(two.size(), size_t(2));
    QVERIFY(!two[0].end_seen && two[0].start_seen && !two[1].start_seen);
    for (const WalkedLeg &leg : two)
      QVERIFY(leg.brg_diff && !leg.walked_m && !leg.dist_diff && !leg.miss_m && !leg.minutes);
    // Minutes run from where the first leg began, to no end; the second one's beginning was not seen.
    VERIFY_NEAR(*two[0].profile[5].at_min, 5. / 60, 1e-9, "sixth fix");
    QVERIFY(!two[0].profile.back().at_min);
    QVERIFY(!two[1].profile.empty());
    for (const ProfilePoint &point : two[1].profile)
      QVERIFY(!point.at_min);
  }

  // A difference across north is a small one.
  void acrossNorth() {
    const std::vector<XY> plan{{0, 0}, polar(358, 200), polar(358, 400)};
    const std::vector<XY> walked{{0, 0}, polar(3, 200)};
    const auto legs = compare(trackOf(along(walked, 2)), {plan[0], plan[1]}, sites[0].origin);
    QCOMPARE(legs.size(), size_t(1));
    VERIFY_NEAR(*legs[0].brg_diff, 5, 1e-4, "across north");
  }
};

QTEST_GUILESS_MAIN(LegComparisonTest)
#include "leg_comparison_test.moc"
