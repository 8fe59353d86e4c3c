// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/course_scene.h"
#include "planning/course_spots.h"

#include <QtTest>

#include <algorithm>

using namespace brushline;
using namespace brushline::test;

namespace {
bool apart(const std::vector<GroundPoint> &points, double metres) {
  for (size_t a = 0; a < points.size(); ++a)
    for (size_t b = 0; b < a; ++b)
      if (metresBetween(points[a], points[b]) <= metres)
        return false;
  return true;
}
} // namespace

class CourseSpotsTest : public QObject {
  Q_OBJECT
private slots:
  // The 10000th number of a default generator is 9981545732273789042 (ISO/IEC 14882:2017, 29.6.5 [rand.predef]); its
  // default seed is 5489.
  void generatorOfTheStandard() {
    CourseRandom random(5489);
    for (int i = 1; i < 10000; ++i)
      random.below(2);
    QCOMPARE(random.below(10000000000000000000ull), 9981545732273789042ull);
  }

  void spotsApartAsManyAsHaveRoom() {
    for (uint64_t seed = 0; seed < 50; ++seed) {
      Random place(seed);
      std::vector<GroundPoint> spots, fixed{{0, 0}, {20000, -20000}};
      for (int i = 0; i < 300; ++i)
        spots.push_back({int64_t(place.between(-50000, 50000)), int64_t(place.between(-50000, 50000))});
      spots.push_back(spots.front()); // twice the same
      CourseRandom random(seed), again(seed);
      const double metres = seed % 5 == 0 ? 0 : 7.5;
      const std::vector<size_t> chosen = spotsApart(spots, fixed, metres, random);
      QVERIFY(chosen == spotsApart(spots, fixed, metres, again));
      std::vector<GroundPoint> all = fixed;
      for (const size_t i : chosen)
        all.push_back(spots[i]);
      QVERIFY(apart(all, metres));
      for (const GroundPoint &spot : spots) // none could be added
        QVERIFY(std::any_of(all.begin(), all.end(),
                            [&](const GroundPoint &other) { return metresBetween(spot, other) <= metres; }));
    }
  }

  void scattered() {
    const CourseScene scene;
    const CourseGround ground({scene.shape(ShapeKind::Polygon, {{{0, 0}, {60, 0}, {0, 60}}})},
                              {scene.square(0, 0, 10, 10)}, Length::metres(2), Progress());
    for (uint64_t seed = 0; seed < 50; ++seed) {
      CourseRandom random(seed), again(seed);
      const std::vector<GroundPoint> fixed{ground.toGround(scene.at(25, 25))};
      const auto allowed = [](const GroundPoint &point) { return point.east % 2 == 0; };
      std::vector<GroundPoint> spots = scatteredSpots(ground, fixed, 4, 500, allowed, random, Progress());
      QVERIFY(spots == scatteredSpots(ground, fixed, 4, 500, allowed, again, Progress()));
      // A disc sample fills some 0.69 of the densest (pi / sqrt 12) / (pi d^2 / 4) packing; far fewer would be a fault.
      QVERIFY2(spots.size() > 45, qPrintable(QString::number(spots.size())));
      for (const GroundPoint &spot : spots)
        QVERIFY(ground.holds(spot) && !ground.avoids(spot) && spot.east % 2 == 0);
      spots.push_back(fixed.front());
      QVERIFY(apart(spots, 4));
    }
    CourseRandom random(1);
    QCOMPARE(scatteredSpots(ground, {}, 4, 7, nullptr, random, Progress()).size(), size_t(7));
  }
};

QTEST_GUILESS_MAIN(CourseSpotsTest)
#include "course_spots_test.moc"
