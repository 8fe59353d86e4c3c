// SPDX-License-Identifier: GPL-2.0-or-later
// Courses over made-up spots and legs: every rule looked at anew, and small cases counted out.
#include "planning/course_plan.h"
#include "support/random.h"

#include <QtTest>

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <set>

using namespace brushline;
using namespace brushline::test;

namespace {

constexpr std::array<bool, measures> all{true, true, true, true, true};

// Spots with legs as long as they are apart, and efforts that differ both ways.
struct Field {
  CourseRule rule;
  CoursePlanner::Spots spots;
  std::set<std::pair<size_t, size_t>> barred;
  double reach = 1;
  bool hilly = true;
  std::map<std::pair<size_t, size_t>, CourseLeg> book;

  const CourseLeg &leg(size_t a, size_t b) {
    if (a > b)
      throw std::logic_error("asked from the higher to the lower");
    const auto [found, isNew] = book.try_emplace({a, b});
    CourseLeg &leg = found->second;
    if (!isNew)
      return leg;
    leg.length_m = metresBetween(spots.at[a], spots.at[b]);
    if (barred.count({a, b}))
      leg.bar = LegBar::Avoided;
    else if (leg.length_m < rule.window.least_m || leg.length_m > rule.window.most_m)
      leg.bar = LegBar::Length;
    const double rise = hilly ? double((a * 7 + b * 13) % 11) : 0;
    leg.out = {rise, leg.length_m + rise, leg.length_m, 0.05 * leg.length_m, reach};
    leg.back = {10 - rise, leg.length_m + 10 - rise, leg.length_m, 0.05 * leg.length_m, reach};
    return leg;
  }
  CourseSet plan() {
    if (spots.room_m.empty())
      spots.room_m.assign(spots.at.size(), std::numeric_limits<double>::infinity());
    CoursePlanner planner(
        rule, spots, [this](size_t a, size_t b) -> const CourseLeg & { return leg(a, b); }, all);
    return planner.plan(Progress(), [](double) {});
  }
  double turn(size_t a, size_t b, size_t c) const {
    const auto bearing = [&](size_t from, size_t to) {
      return std::atan2(double(spots.at[to].east - spots.at[from].east),
                        double(spots.at[to].north - spots.at[from].north));
    };
    return std::abs(std::remainder(bearing(b, c) - bearing(a, b), 2 * Angle::pi)) * 180 / Angle::pi;
  }
  std::set<std::pair<size_t, size_t>> legs(const Course &course) const {
    std::set<std::pair<size_t, size_t>> legs;
    for (size_t i = 1; i < course.spots.size(); ++i)
      legs.insert(std::minmax(course.spots[i - 1], course.spots[i]));
    return legs;
  }
  bool keepsRules(const Course &course, size_t start) {
    std::vector<size_t> path = course.spots;
    if (path.size() != size_t(rule.legs) + 1 || path.front() != start || (rule.closed && path.back() != start))
      return false;
    for (size_t i = 1; i < path.size(); ++i) {
      const size_t low = std::min(path[i - 1], path[i]), high = std::max(path[i - 1], path[i]);
      const CourseLeg &way = leg(low, high);
      if (way.bar != LegBar::None || (path[i - 1] == low ? way.out : way.back).reach_m > spots.room_m[path[i]])
        return false;
      if (i > 1 && turn(path[i - 2], path[i - 1], path[i]) < rule.least_turn.degrees() - 1e-7)
        return false;
    }
    if (rule.closed)
      path.pop_back();
    std::sort(path.begin(), path.end());
    for (size_t i = 1; i < path.size(); ++i)
      if (path[i] == path[i - 1] || std::count(spots.starts.begin(), spots.starts.end(), path[i]) > (path[i] == start))
        return false;
    return true;
  }
};

Field randomField(uint64_t seed, size_t count, double width) {
  Field field;
  Random random(seed);
  for (size_t i = 0; i < count; ++i)
    field.spots.at.push_back({int64_t(random.between(0, width) * 1000), int64_t(random.between(0, width) * 1000)});
  field.spots.at[0] = {int64_t(width * 500), int64_t(width * 500)};
  field.spots.starts = {0};
  field.rule.seed = seed;
  return field;
}

} // namespace

class CoursePlanTest : public QObject {
  Q_OBJECT
private slots:
  void rulesKept_data() {
    QTest::addColumn<int>("courses");
    QTest::addColumn<int>("legs");
    QTest::addColumn<bool>("closed");
    QTest::addColumn<int>("starts");
    for (const int courses : {2, 5, 20})
      for (const int legs : {3, 6, 10})
        for (const bool closed : {false, true})
          for (const int starts : {1, 3})
            QTest::addRow("%d courses of %d legs, closed %d, %d starts", courses, legs, closed, starts)
                << courses << legs << closed << starts;
  }
  void rulesKept() {
    QFETCH(int, courses);
    QFETCH(int, legs);
    QFETCH(bool, closed);
    QFETCH(int, starts);
    for (uint64_t seed = 1; seed <= 2; ++seed) {
      Field field = randomField(seed, 150, 1000);
      field.rule.courses = courses;
      field.rule.legs = legs;
      field.rule.closed = closed;
      for (size_t i = 1; i < size_t(starts); ++i)
        field.spots.starts.push_back(i);
      Random random(seed);
      for (size_t i = 0; i < field.spots.at.size(); ++i)
        field.spots.room_m.push_back(random.between(0, 10)); // below the reach: nothing leads there
      field.spots.room_m[0] = field.spots.room_m[1] = field.spots.room_m[2] = 10;
      for (int i = 0; i < 2000; ++i) {
        const auto a = size_t(random.between(0, 150)), b = size_t(random.between(0, 150));
        field.barred.insert({std::min(a, b), std::max(a, b)});
      }
      const CourseSet set = field.plan();
      QCOMPARE(int(set.courses.size()), courses);
      std::map<std::pair<size_t, size_t>, int> uses;
      std::set<std::set<std::pair<size_t, size_t>>> different;
      for (size_t i = 0; i < set.courses.size(); ++i) {
        QVERIFY(field.keepsRules(set.courses[i], field.spots.starts[i % size_t(starts)]));
        different.insert(field.legs(set.courses[i]));
        for (const auto &leg : field.legs(set.courses[i]))
          ++uses[leg];
      }
      QCOMPARE(different.size(), set.courses.size());
      int shared = 0;
      for (const auto &[leg, count] : uses)
        shared += count > 1;
      QCOMPARE(set.shared_legs, shared);
      for (const Course &course : set.courses) {
        int own = 0;
        double length = 0;
        for (size_t i = 1; i < course.spots.size(); ++i) {
          own += uses[std::minmax(course.spots[i - 1], course.spots[i])] > 1;
          length += metresBetween(field.spots.at[course.spots[i - 1]], field.spots.at[course.spots[i]]);
        }
        QCOMPARE(course.shared, own);
        QVERIFY(std::abs(course.measure[size_t(Measure::Length)] - length) < 1e-6);
      }
      // 150 spots give far more courses of six legs than are asked for: nothing need be amiss. (Of three legs there are
      // not many round a start.)
      if (courses <= 5 && legs >= 6) {
        QCOMPARE(set.shared_legs, 0);
        QVERIFY2(set.worstSpread() <= 0.1, qPrintable(QString::number(set.worstSpread())));
        for (const Course &course : set.courses)
          QCOMPARE(course.crossings, 0);
      }
    }
  }

  // Few spots, all within reach: every course there is, is found, and no more.
  void countedOut_data() {
    QTest::addColumn<bool>("closed");
    QTest::addColumn<int>("legs");
    QTest::newRow("closed 3") << true << 3;
    QTest::newRow("closed 4") << true << 4;
    QTest::newRow("open 2") << false << 2;
    QTest::newRow("open 3") << false << 3;
  }
  void countedOut() {
    QFETCH(bool, closed);
    QFETCH(int, legs);
    for (uint64_t seed = 1; seed <= 10; ++seed) {
      Field field = randomField(seed, 6, 400);
      field.rule.closed = closed;
      field.rule.legs = legs;
      field.rule.courses = 200;
      field.rule.window = {2, 1000};
      field.rule.least_turn = Angle::degrees(50);
      std::set<std::set<std::pair<size_t, size_t>>> there;
      std::vector<size_t> order{1, 2, 3, 4, 5};
      do {
        Course course;
        course.spots = {0};
        for (int i = 0; i < field.rule.controls(); ++i)
          course.spots.push_back(order[size_t(i)]);
        if (closed)
          course.spots.push_back(0);
        field.spots.room_m.assign(6, 100);
        if (field.keepsRules(course, 0))
          there.insert(field.legs(course));
      } while (std::next_permutation(order.begin(), order.end()));
      const CourseSet set = field.plan();
      std::set<std::set<std::pair<size_t, size_t>>> found;
      for (const Course &course : set.courses) {
        QVERIFY(field.keepsRules(course, 0));
        found.insert(field.legs(course));
      }
      QCOMPARE(found.size(), set.courses.size());
      QVERIFY2(found == there, qPrintable(QStringLiteral("%1 of %2").arg(found.size()).arg(there.size())));
    }
  }

  // Eight spots in a ring, triangles from its middle: four without a common leg are there, a fifth is not.
  void sharesOnlyWhatItMust() {
    Field field;
    field.spots.at = {{0, 0}};
    field.spots.starts = {0};
    for (int i = 0; i < 8; ++i)
      field.spots.at.push_back(
          {int64_t(100000 * std::cos(i * Angle::pi / 4)), int64_t(100000 * std::sin(i * Angle::pi / 4))});
    field.hilly = false;
    field.rule.legs = 3;
    field.rule.window = {70, 150};
    field.rule.courses = 4;
    const CourseSet four = field.plan();
    QCOMPARE(four.courses.size(), size_t(4));
    QCOMPARE(four.shared_legs, 0);
    field.rule.courses = 5;
    const CourseSet five = field.plan();
    QCOMPARE(five.courses.size(), size_t(5));
    QVERIFY(five.shared_legs > 0 && five.fault > 0);
  }

  // A bow tie is all there is: it is taken, and told.
  void crossesWhenItCannotBeHelped() {
    Field field;
    field.spots.at = {{0, 0}, {100000, 100000}, {100000, 0}, {0, 100000}};
    field.spots.starts = {0};
    field.rule.legs = 4;
    field.rule.courses = 1;
    field.rule.window = {90, 150};
    field.barred = {{0, 2}}; // 0-1, 1-2, 2-3, 3-0 only crosses
    const CourseSet set = field.plan();
    QCOMPARE(set.courses.size(), size_t(1));
    QCOMPARE(set.courses[0].crossings, 1);
    field.barred.clear();
    field.book.clear();
    QCOMPARE(field.plan().courses[0].crossings, 0);
  }

  // A leg of 200 m with a drift of 10 m at its end: halfway twice the drift is 10 m.
  void passesBy() {
    for (const int64_t beside : {9900, 10100}) {
      Field field;
      field.spots.at = {{0, 0}, {200000, 0}, {100000, beside}};
      field.spots.starts = {0};
      field.rule.closed = false;
      field.rule.legs = 2;
      field.rule.courses = 1;
      field.rule.window = {90, 210};
      field.barred = {{0, 2}};
      const CourseSet set = field.plan();
      QCOMPARE(set.courses.size(), size_t(1));
      QCOMPARE(set.courses[0].passes, beside < 10000 ? 1 : 0);
    }
  }

  void spreads() {
    Course a, b;
    a.measure = {100, 2, 60, 1, 4};
    b.measure = {112, 5, 66, 1.2, 4.2};
    const auto spreads = spreadsOf({a, b}, 6, {true, true, true, false, true});
    QVERIFY(std::abs(spreads[0].spread - 0.12) < 1e-12);
    QVERIFY(std::abs(spreads[1].spread - 3.0 / 30) < 1e-12); // 6 legs of 5 m at least
    QVERIFY(std::abs(spreads[2].spread - 0.1) < 1e-12);
    QVERIFY(!spreads[3].counts && spreads[3].spread == 0);
    QVERIFY(std::abs(spreads[4].spread - 0.05) < 1e-12);
  }

  void nothingThere() {
    Field field = randomField(1, 40, 1000);
    field.rule.window = {5000, 6000};
    QVERIFY(field.plan().courses.empty());
    field.spots.starts.clear();
    QVERIFY(field.plan().courses.empty());
  }

  void cancelled() {
    struct Stop : Progress {
      mutable int asked = 0;
      bool cancelled() const override { return ++asked > 50; }
    } stop;
    Field field = randomField(1, 150, 1000);
    field.spots.room_m.assign(150, 100);
    CoursePlanner planner(
        field.rule, field.spots, [&](size_t a, size_t b) -> const CourseLeg & { return field.leg(a, b); }, all);
    QVERIFY_EXCEPTION_THROWN(planner.plan(stop, [](double) {}), Cancelled);
  }
};

QTEST_GUILESS_MAIN(CoursePlanTest)
#include "course_plan_test.moc"
