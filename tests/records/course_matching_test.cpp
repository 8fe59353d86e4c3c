// SPDX-License-Identifier: GPL-2.0-or-later
// Walks by chance (walk_by_chance.h: legs' own errors, zigzag from mark to mark, a receiver's noise) against the plan.
#include "records/common_error.h"
#include "records/course_matching.h"
#include "records/walk_by_chance.h"
#include "support/near.h"

#include <algorithm>

using namespace brushline;
using namespace brushline::test;

namespace {
const Place origin{Angle::degrees(-41), Angle::degrees(179.999)};
const std::vector<XY> plan{{0, 0}, {180, 60}, {260, 240}, {100, 330}, {60, 180}, {-120, 150}, {-60, 20}};

PlannedCourse course(const std::vector<XY> &turns, size_t route, XY moved = {0, 0}) {
  PlannedCourse result{route, {}};
  for (size_t i = 1; i < turns.size(); ++i) {
    const Place from = placeOf({turns[i - 1][0] + moved[0], turns[i - 1][1] + moved[1]}, origin),
                to = placeOf({turns[i][0] + moved[0], turns[i][1] + moved[1]}, origin);
    result.legs.push_back({from, to, geodesicBetween(from, to), false});
  }
  return result;
}

std::vector<XY> backwards(std::vector<XY> turns) {
  std::reverse(turns.begin(), turns.end());
  return turns;
}

WalkByChance::Errors usual() {
  WalkByChance::Errors errors;
  errors.common_brg = 5;
  errors.common_dist = -0.06;
  errors.leg_brg = 2;
  errors.leg_dist = 0.04;
  errors.hop_brg = 3;
  errors.fix = 4;
  return errors;
}

TrackMatch match(const CourseMatcher &matcher, const std::vector<TrackFix> &fixes, std::optional<size_t> only = {}) {
  return matcher.match(fixes, only, Progress());
}

//! What comes out of many walks.
struct Recovered {
  int walks = 0, unmatched = 0, brg_held = 0, dist_held = 0, legs = 0, unseen = 0;
  double brg = 0, brg2 = 0, dist = 0, dist2 = 0; // sums of the errors of the means, and of their squares
};

Recovered recover(const WalkByChance::Errors &errors, int walks) {
  const CourseMatcher matcher({course(plan, 0), course(backwards(plan), 0)}, TrackRule(), 150);
  Recovered result;
  for (int seed = 1; seed <= walks; ++seed) {
    const auto found = match(matcher, fixesOf(WalkByChance(seed).walk(plan, errors), origin));
    if (!found.course || *found.course != 0) {
      ++result.unmatched;
      continue;
    }
    std::vector<LegError> bearings, lengths;
    for (size_t i = 0; i < found.legs.size(); ++i) {
      const WalkedLeg &leg = found.legs[i];
      const double metres = matcher.course(0).legs[i].geodesic.length.metres();
      ++result.legs;
      if (leg.brg_diff)
        bearings.push_back({*leg.brg_diff, leg.brg_sigma});
      if (leg.dist_diff)
        lengths.push_back({100 * *leg.dist_diff / metres, 100 * leg.length_sigma / metres});
      else
        ++result.unseen;
    }
    const auto bearing = commonError(bearings), length = commonError(lengths);
    ++result.walks;
    const double b = bearing->mean - errors.common_brg, d = length->mean - 100 * errors.common_dist;
    result.brg_held += std::abs(b) <= *bearing->half_width ? 1 : 0;
    result.dist_held += std::abs(d) <= *length->half_width ? 1 : 0;
    result.brg += b, result.brg2 += b * b;
    result.dist += d, result.dist2 += d * d;
  }
  return result;
}
} // namespace

class CourseMatchingTest : public QObject {
  Q_OBJECT
private slots:
  void recovery_data() {
    QTest::addColumn<double>("common_brg");
    QTest::addColumn<double>("common_dist");
    QTest::addColumn<double>("memory_s");
    QTest::addColumn<double>("every_s");
    QTest::addColumn<double>("stand_s");
    QTest::newRow("each second") << 5. << -0.06 << 0. << 1. << 0.;
    QTest::newRow("errors that last a minute") << 5. << -0.06 << 60. << 1. << 0.;
    QTest::newRow("every ten seconds") << 5. << -0.06 << 0. << 10. << 0.;
    QTest::newRow("stands at turns") << 5. << -0.06 << 0. << 1. << 30.;
    QTest::newRow("twenty degrees off") << 20. << 0. << 0. << 1. << 0.;
    QTest::newRow("far too long, to the left") << -15. << 0.2 << 0. << 1. << 0.;
  }
  // The errors put in come out: the mean over 400 walks is off by no more than three of its own sigmas and 0.05 (a
  // bias of 0.2 m of a leg is known), and the intervals hold them 95 times of 100 (400 walks: sigma 1.1 of 100).
  void recovery() {
    QFETCH(double, common_brg);
    QFETCH(double, common_dist);
    QFETCH(double, memory_s);
    QFETCH(double, every_s);
    QFETCH(double, stand_s);
    WalkByChance::Errors errors = usual();
    errors.common_brg = common_brg;
    errors.common_dist = common_dist;
    errors.fix_memory_s = memory_s;
    errors.every_s = every_s;
    errors.stand_s = stand_s;
    constexpr int walks = 400;
    const Recovered found = recover(errors, walks);
    QVERIFY2(found.unmatched <= walks / 100, qPrintable(QString::number(found.unmatched)));
    QVERIFY2(found.unseen <= found.legs / 50, qPrintable(QString::number(found.unseen)));
    const double n = found.walks, brg = found.brg / n, dist = found.dist / n;
    VERIFY_NEAR(brg, 0, 3 * std::sqrt(found.brg2 / n / n) + 0.05, "bearing");
    VERIFY_NEAR(dist, 0, 3 * std::sqrt(found.dist2 / n / n) + 0.05, "length");
    VERIFY_NEAR(found.brg_held / n, 0.95, 0.035, "bearing's interval");
    VERIFY_NEAR(found.dist_held / n, 0.95, 0.035, "length's interval");
    // Legs scatter by 2 degrees and 4 %, over six legs: 0.82 and 1.63 at best.
    QVERIFY(std::sqrt(found.brg2 / n) < 1.4 && std::sqrt(found.dist2 / n) < 2.5);
  }

  // Without any noise the errors put in come out as they are.
  void exact() {
    WalkByChance::Errors errors;
    errors.common_brg = 5;
    errors.common_dist = -0.06;
    const CourseMatcher matcher({course(plan, 0)}, TrackRule(), 150);
    const auto found = match(matcher, fixesOf(WalkByChance(1).walk(plan, errors), origin));
    QVERIFY(found.course.has_value());
    for (size_t i = 0; i < found.legs.size(); ++i) {
      VERIFY_NEAR(*found.legs[i].brg_diff, 5, 1e-3, std::to_string(i));
      VERIFY_NEAR(*found.legs[i].dist_diff / matcher.course(0).legs[i].geodesic.length.metres(), -0.06, 1e-5,
                  std::to_string(i));
    }
  }

  void directions() {
    std::vector<XY> both = plan;
    for (size_t i = plan.size() - 1; i-- > 0;)
      both.push_back(plan[i]);
    const CourseMatcher matcher({course(plan, 0), course(backwards(plan), 0), course(both, 0)}, TrackRule(), 150);
    for (int seed = 1; seed <= 20; ++seed) {
      QCOMPARE(match(matcher, fixesOf(WalkByChance(seed).walk(plan, usual()), origin)).course,
               std::optional<size_t>(0));
      QCOMPARE(match(matcher, fixesOf(WalkByChance(seed).walk(backwards(plan), usual()), origin)).course,
               std::optional<size_t>(1));
      WalkByChance::Errors errors = usual();
      errors.common_brg = errors.common_dist = 0;
      QCOMPARE(match(matcher, fixesOf(WalkByChance(seed).walk(both, errors), origin)).course, std::optional<size_t>(2));
    }
  }

  // Forty routes on one site, much alike and 60 m apart: each walk is put to its own.
  void amongMany() {
    std::vector<PlannedCourse> courses;
    std::vector<std::vector<XY>> turns;
    for (size_t r = 0; r < 40; ++r) {
      std::vector<XY> own;
      WalkByChance chance(1000 + r);
      for (const XY &p : plan)
        own.push_back({p[0] + 60 * double(r % 8) + 80 * (chance.uniform() - 0.5),
                       p[1] + 60 * double(r / 8) + 80 * (chance.uniform() - 0.5)});
      turns.push_back(own);
      courses.push_back(course(own, r));
    }
    const CourseMatcher matcher(courses, TrackRule(), 150);
    WalkByChance::Errors errors = usual();
    errors.common_brg = 2;
    errors.common_dist = 0;
    size_t right = 0;
    for (size_t r = 0; r < 40; ++r) {
      const auto found = match(matcher, fixesOf(WalkByChance(r).walk(turns[r], errors), origin));
      QVERIFY(found.course.has_value());
      right += *found.course == r ? 1 : 0;
      QCOMPARE(match(matcher, fixesOf(WalkByChance(r).walk(turns[r], errors), origin), r).course,
               std::optional<size_t>(r));
    }
    QVERIFY2(right >= 39, qPrintable(QString::number(right)));
  }

  void rivals() {
    const CourseMatcher matcher({course(plan, 0), course(plan, 1)}, TrackRule(), 150);
    const auto found = match(matcher, fixesOf(WalkByChance(1).walk(plan, usual()), origin));
    QVERIFY(found.course && found.rival && *found.course != *found.rival);
  }

  void refusals() {
    const CourseMatcher matcher({course(plan, 0)}, TrackRule(), 150);
    QVERIFY(match(matcher, {}).reason == NoMatch::TooFewFixes);
    const Place here = placeOf(plan[0], origin);
    QVERIFY(match(matcher, {{here, 1, false}, {here, 1, false}}).reason == NoMatch::TooFewFixes);
    std::vector<XY> far;
    for (const XY &p : plan)
      far.push_back({p[0] + 5000, p[1]});
    const auto elsewhere = match(matcher, fixesOf(WalkByChance(1).walk(far, usual()), origin));
    QVERIFY(!elsewhere.course && elsewhere.reason == NoMatch::Elsewhere);
    VERIFY_NEAR(elsewhere.nearest_m, 5000, 20, "far");
    QVERIFY(match(matcher, {{here, {}, false}, {{Angle::degrees(41), Angle::degrees(0)}, {}, false}}).course ==
            std::nullopt);
    // Round and round the place in small circles.
    std::vector<XY> circles;
    for (int i = 0; i < 2000; ++i)
      circles.push_back({25 * std::cos(i * 0.05), 25 * std::sin(i * 0.05)});
    std::vector<TrackFix> fixes;
    for (const XY &p : circles)
      fixes.push_back({placeOf(p, origin), double(fixes.size()), false});
    const auto unlike = match(matcher, fixes);
    QVERIFY(!unlike.course && unlike.reason == NoMatch::Unlike);
  }

  void twoPoints() {
    const CourseMatcher one({course({plan[0], plan[1]}, 0)}, TrackRule(), 150);
    const std::vector<TrackFix> fixes{{placeOf({3, 0}, origin), {}, false}, {placeOf({180, 62}, origin), {}, false}};
    const auto found = match(one, fixes);
    QVERIFY(found.course.has_value());
    VERIFY_NEAR(*found.legs[0].walked_m, std::hypot(177, 62), 1e-3, "two points");
    const CourseMatcher many({course(plan, 0)}, TrackRule(), 150);
    const auto first = match(many, fixes);
    if (first.course) { // the first leg and no more
      QVERIFY(first.legs[0].share == LegShare::Whole);
      for (size_t i = 1; i < first.legs.size(); ++i)
        QVERIFY(first.legs[i].share == LegShare::None);
    }
  }

  // 500 routes of one shape, 20 m apart.
  void amongManyAlike() {
    std::vector<PlannedCourse> courses;
    for (size_t r = 0; r < 500; ++r)
      courses.push_back(course(plan, r, {20. * double(r % 25), 20. * double(r / 25)}));
    const CourseMatcher matcher(courses, TrackRule(), 150);
    for (int seed = 0; seed < 20; ++seed)
      QVERIFY(match(matcher, fixesOf(WalkByChance(seed).walk(plan, usual()), origin)).course.has_value());
  }
};

QTEST_GUILESS_MAIN(CourseMatchingTest)
#include "course_matching_test.moc"
