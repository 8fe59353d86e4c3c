// SPDX-License-Identifier: GPL-2.0-or-later
// A garden and a forest over a hundred seeds: every rule measured anew, on the ellipsoid.
#include "planning/course_scene.h"
#include "planning/practice_courses.h"

#include <QElapsedTimer>
#include <QtTest>

#include <algorithm>
#include <cmath>
#include <cstring>
#include <set>

using namespace brushline;
using namespace brushline::test;

namespace {

struct Land {
  CourseScene scene;
  std::vector<Shape> area, avoid;
  double clearance = 2;
  PracticeSetting setting;

  PracticeCourses lay() const {
    const CourseGround ground(area, avoid, Length::metres(clearance), Progress());
    PlainLegs plain(ground);
    return layPracticeCourses(setting, ground, plain.legs, Progress(), [](double) {});
  }
};

Land garden() {
  Land land;
  land.area = {land.scene.square(0, 0, 50, 50)};
  land.avoid = {land.scene.square(30, 30, 36, 38)};
  land.setting.rule.window = {15, 30};
  land.setting.starts = {land.scene.named(10, 10, "Gate")};
  return land;
}

Land forest() {
  Land land;
  land.area = {land.scene.shape(ShapeKind::Polygon, {{{0, 0}, {1500, -100}, {1600, 1000}, {700, 1300}, {-100, 900}},
                                                     {{700, 500}, {850, 500}, {800, 620}}}),
               land.scene.square(1550, 200, 1900, 800)};
  land.avoid = {land.scene.shape(ShapeKind::Line, {{{300, 600}, {350, 900}}})};
  land.clearance = 10;
  land.setting.rule.window = {200, 400};
  land.setting.starts = {land.scene.named(600, 400, "Camp"), land.scene.named(1200, 700, "Hut")};
  return land;
}

double turned(const Place &a, const Place &b, const Place &c) {
  return turnBetween(geodesicBetween(a, b).arrival.degrees(), geodesicBetween(b, c).departure.degrees());
}

// What is wrong with courses; empty: nothing.
std::string wrong(const Land &land, const PracticeCourses &made) {
  const CourseRule &rule = land.setting.rule;
  if (made.failure)
    return "failed";
  if (int(made.set.courses.size()) != rule.courses)
    return "number of courses";
  std::set<size_t> used;
  for (const Course &course : made.set.courses) {
    if (course.spots.size() != size_t(rule.legs) + 1)
      return "number of legs";
    if (rule.closed && course.spots.front() != course.spots.back())
      return "not closed";
    for (size_t i = 1; i < course.spots.size(); ++i) {
      const Place &a = made.spots[course.spots[i - 1]].place, &b = made.spots[course.spots[i]].place;
      const double metres = geodesicBetween(a, b).length.metres();
      if (metres < rule.window.least_m || metres > rule.window.most_m)
        return "length " + std::to_string(metres);
      if (i > 1) {
        const double turn = turned(made.spots[course.spots[i - 2]].place, a, b);
        if (turn < rule.least_turn.degrees() - 1e-3) // the plane turns by less
          return "turn " + std::to_string(turn);
      }
    }
    used.insert(course.spots.begin(), course.spots.end());
  }
  // The reach of each leg, by the formulas of drift.h for one hop.
  int compared = 0;
  const double degree = Angle::pi / 180;
  for (const Course &course : made.set.courses)
    for (size_t i = 1; i < course.spots.size(); ++i) {
      const Place &end = made.spots[course.spots[i]].place;
      const double metres = geodesicBetween(made.spots[course.spots[i - 1]].place, end).length.metres();
      const double reach = std::sqrt(-2 * std::log(0.05)) * metres * std::max(0.05, degree * std::sqrt(9 + 4.0 / 12));
      for (const size_t other : used) {
        if (other == course.spots[i] || (made.spots[other].is_start && made.spots[course.spots[i]].is_start))
          continue;
        ++compared;
        if (geodesicBetween(end, made.spots[other].place).length.metres() < reach - 0.002)
          return "controls too near";
      }
    }
  if (compared == 0)
    return "nothing compared";
  return std::string();
}

bool sameBits(const PracticeCourses &a, const PracticeCourses &b) {
  if (a.set.courses.size() != b.set.courses.size())
    return false;
  for (size_t i = 0; i < a.set.courses.size(); ++i) {
    const Course &one = a.set.courses[i], &other = b.set.courses[i];
    if (one.spots.size() != other.spots.size() ||
        std::memcmp(one.measure.data(), other.measure.data(), sizeof one.measure) != 0)
      return false;
    for (size_t k = 0; k < one.spots.size(); ++k) {
      const PracticeSpot &p = a.spots[one.spots[k]], &q = b.spots[other.spots[k]];
      if (p.name != q.name || std::memcmp(&p.place, &q.place, sizeof p.place) != 0)
        return false;
    }
  }
  return true;
}

} // namespace

class PracticeCoursesTest : public QObject {
  Q_OBJECT
private slots:
  void hundredSeeds_data() {
    QTest::addColumn<bool>("isGarden");
    QTest::newRow("garden") << true;
    QTest::newRow("forest") << false;
  }
  void hundredSeeds() {
    QFETCH(bool, isGarden);
    Land land = isGarden ? garden() : forest();
    QElapsedTimer timer;
    timer.start();
    std::set<std::vector<size_t>> different;
    double worst = 0;
    int crossings = 0, shared = 0;
    for (uint64_t seed = 0; seed < 100; ++seed) {
      land.setting.rule.seed = seed;
      land.setting.rule.closed = seed % 3 != 0;
      const PracticeCourses made = land.lay();
      const std::string fault = wrong(land, made);
      QVERIFY2(fault.empty(), fault.c_str());
      QCOMPARE(int(made.set.courses.size()), land.setting.rule.courses);
      different.insert(made.set.courses[0].spots);
      worst = std::max(worst, made.set.worstSpread());
      shared += made.set.shared_legs;
      for (const Course &course : made.set.courses)
        crossings += course.crossings;
    }
    QVERIFY2(worst <= 0.1, qPrintable(QString::number(worst)));
    QCOMPARE(crossings, 0);
    QCOMPARE(shared, 0);
    QVERIFY(different.size() > 95);
    qInfo("%.0f ms a run, worst spread %.3f", double(timer.elapsed()) / 100, worst);
  }

  void manyCourses() {
    for (const int courses : {2, 7, 20})
      for (const bool isGarden : {true, false}) {
        Land land = isGarden ? garden() : forest();
        land.setting.rule.courses = courses;
        const PracticeCourses made = land.lay();
        const std::string fault = wrong(land, made);
        QVERIFY2(fault.empty(), fault.c_str());
        QCOMPARE(int(made.set.courses.size()), courses);
        QVERIFY2(made.set.worstSpread() <= 0.1,
                 qPrintable(QStringLiteral("%1 of %2").arg(made.set.worstSpread()).arg(courses)));
        qInfo("%s, %d courses: %d legs shared, spread %.3f", isGarden ? "garden" : "forest", courses,
              made.set.shared_legs, made.set.worstSpread());
      }
  }

  // Sites, starts, polygons and what is avoided in another order, the same bits; another seed, other courses.
  void orderDoesNotMatter() {
    for (const bool withSites : {false, true}) {
      Land land = forest();
      Random random(9);
      if (withSites) {
        land.setting.sites.emplace();
        for (int i = 0; i < 120; ++i)
          land.setting.sites->push_back(
              land.scene.named(random.between(-50, 1900), random.between(-100, 1300), std::to_string(i).c_str()));
      }
      const PracticeCourses made = land.lay(), again = land.lay();
      QVERIFY(!made.failure && sameBits(made, again));
      Land other = land;
      std::reverse(other.area.begin(), other.area.end());
      std::reverse(other.setting.starts.begin(), other.setting.starts.end());
      std::rotate(other.area.back().parts[0].begin(), other.area.back().parts[0].begin() + 2,
                  other.area.back().parts[0].end() - 1);
      other.area.back().parts[0].back() = other.area.back().parts[0].front();
      if (withSites) {
        std::reverse(other.setting.sites->begin(), other.setting.sites->end());
        std::swap((*other.setting.sites)[3], (*other.setting.sites)[77]);
        QVERIFY(made.sites.outside > 0);
        for (const Course &course : made.set.courses)
          for (size_t i = 1; i + 1 < course.spots.size(); ++i)
            QVERIFY(made.spots[course.spots[i]].is_site);
      }
      QVERIFY(sameBits(made, other.lay()));
      other.setting.rule.seed = 2;
      QVERIFY(!sameBits(made, other.lay()));
    }
  }

  // Stands of sites so near together that the longest leg's reach leaves too few: shorter legs lead there.
  void nearerForShorterLegs() {
    Land land;
    land.area = {land.scene.square(0, 0, 400, 400)};
    land.setting.rule.window = {60, 300};
    land.setting.rule.legs = 5;
    land.setting.rule.courses = 2;
    land.setting.starts = {land.scene.named(20, 20, "Gate")};
    land.setting.sites.emplace();
    for (int i = 0; i < 4; ++i)
      for (int k = 0; k < 2; ++k)
        land.setting.sites->push_back(land.scene.named(60 + 90 * i, 120 + 35 * k + 60 * (i % 2), "Stone"));
    const PracticeCourses made = land.lay();
    const std::string fault = wrong(land, made);
    QVERIFY2(fault.empty(), fault.c_str());
  }

  void startsAreChosenAndDealt() {
    Land land = forest();
    land.setting.rule.courses = 5;
    PracticeCourses made = land.lay();
    QStringList names;
    for (const Course &course : made.set.courses)
      names << QString::fromStdString(made.spots[course.spots[0]].name);
    QCOMPARE(names, (QStringList{"Camp", "Hut", "Camp", "Hut", "Camp"}));
    land.setting.starts.clear();
    made = land.lay();
    QCOMPARE(wrong(land, made), std::string());
    for (const Course &course : made.set.courses)
      QVERIFY(made.spots[course.spots[0]].is_start && course.spots[0] == made.set.courses[0].spots[0]);
    land.setting.starts = {land.scene.named(-500, 0, "Far"), land.scene.named(760, 520, "Hole"),
                           land.scene.named(325, 750, "Stream"), land.scene.named(600, 400, "Camp"),
                           land.scene.named(600, 400, "Camp")};
    made = land.lay();
    QCOMPARE(made.starts.outside, size_t(2));
    QCOMPARE(made.starts.avoided, size_t(1));
    QCOMPARE(made.starts.crowded, size_t(1));
    QCOMPARE(made.starts.usable, size_t(1));
    QCOMPARE(wrong(land, made), std::string());
  }

  void whatCannotBe() {
    Land land = garden();
    land.setting.starts = {land.scene.named(-10, 10)};
    QVERIFY(land.lay().failure == CourseFailure::NoStart);
    land = garden();
    land.setting.sites.emplace();
    for (int i = 0; i < 4; ++i)
      land.setting.sites->push_back(land.scene.named(12 + 9 * i, 25));
    const PracticeCourses few = land.lay();
    QVERIFY(few.failure == CourseFailure::FewSpots);
    QCOMPARE(few.sites.usable, size_t(4));
    land = garden();
    land.setting.rule.window = {49, 70}; // from corner to corner at most
    land.setting.rule.legs = 20;
    const PracticeCourses none = land.lay();
    QVERIFY(none.failure == CourseFailure::NoCourse);
    QVERIFY(none.legs_tried > 0);
    // Two lawns that do not touch: courses stay on the start's own.
    land = garden();
    land.area.push_back(land.scene.square(55, 0, 105, 50));
    const PracticeCourses one = land.lay();
    QCOMPARE(wrong(land, one), std::string());
    for (const Course &course : one.set.courses)
      for (const size_t spot : course.spots)
        QVERIFY(LocalPlane(land.scene.middle).toPlane(one.spots[spot].place).east < 50.01);
  }

  void everywhere() {
    for (const auto &[latitude, longitude] :
         {std::pair(-41.3, 174.0), std::pair(-17.0, 180.0), std::pair(64.1, -179.9999), std::pair(0.0, 0.0),
          std::pair(-89.9999, 30.0), std::pair(-33.5, -70.6)}) {
      Land land = garden();
      land.scene.middle = {Angle::degrees(latitude), Angle::degrees(longitude)};
      land.area = {land.scene.square(0, 0, 50, 50)};
      land.avoid = {land.scene.square(30, 30, 36, 38)};
      land.setting.starts = {land.scene.named(10, 10, "Gate")};
      const PracticeCourses made = land.lay();
      const std::string fault = wrong(land, made);
      QVERIFY2(fault.empty() && made.set.fault <= 0, (fault + " at " + std::to_string(latitude)).c_str());
    }
  }

  // 40 courses of 10 legs over 500 sites.
  void large() {
    Land land = forest();
    land.setting.rule.courses = 40;
    land.setting.rule.legs = 10;
    land.setting.rule.window = {100, 250};
    land.setting.sites.emplace();
    Random random(3);
    while (land.setting.sites->size() < 500)
      land.setting.sites->push_back(land.scene.named(random.between(-100, 1900), random.between(-100, 1300)));
    QElapsedTimer timer;
    timer.start();
    const PracticeCourses made = land.lay();
    qInfo("%lld ms, %zu courses, %d legs shared, spread %.3f, %zu sites usable", timer.elapsed(),
          made.set.courses.size(), made.set.shared_legs, made.set.worstSpread(), made.sites.usable);
    const std::string fault = wrong(land, made);
    QVERIFY2(fault.empty(), fault.c_str());
    QCOMPARE(made.set.courses.size(), size_t(40));
    QVERIFY(made.set.worstSpread() <= 0.1);
  }
};

QTEST_GUILESS_MAIN(PracticeCoursesTest)
#include "practice_courses_test.moc"
