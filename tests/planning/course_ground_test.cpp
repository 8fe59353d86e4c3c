// SPDX-License-Identifier: GPL-2.0-or-later
// By hand, and random polygons against Boost.Geometry's own tests of what lies inside what and how far.
#include "planning/course_ground.h"
#include "planning/course_scene.h"

#include <boost/geometry.hpp>
#include <boost/geometry/geometries/linestring.hpp>
#include <boost/geometry/geometries/point_xy.hpp>
#include <boost/geometry/geometries/polygon.hpp>

#include <QtTest>

#include <cmath>
#include <stdexcept>

using namespace brushline;
using namespace brushline::test;
namespace bg = boost::geometry;

namespace {
using Flat = bg::model::d2::point_xy<double>;
using FlatPolygon = bg::model::polygon<Flat>;
using FlatLine = bg::model::linestring<Flat>;

CourseGround groundOf(const std::vector<Shape> &area, const std::vector<Shape> &avoid = {}, double clearance = 0) {
  return CourseGround(area, avoid, Length::metres(clearance), Progress());
}

// Where the ground's plane has a place of the scene.
struct On {
  const CourseGround &ground;
  CourseScene scene;
  GroundPoint operator()(double east, double north) const { return ground.toGround(scene.at(east, north)); }
};

// A star round a place: never crosses itself.
Outline star(Random &random, double east, double north, double most, int corners) {
  Outline outline;
  for (int i = 0; i < corners; ++i) {
    const double angle = 2 * Angle::pi * i / corners, radius = random.between(0.3, 1) * most;
    outline.push_back({east + radius * std::sin(angle), north + radius * std::cos(angle)});
  }
  return outline;
}
} // namespace

class CourseGroundTest : public QObject {
  Q_OBJECT
private slots:
  void byHand() {
    const CourseScene scene;
    // A square with a hole, one that touches it, one apart.
    const CourseGround ground = groundOf({scene.shape(ShapeKind::Polygon, {{{0, 0}, {100, 0}, {100, 100}, {0, 100}},
                                                                           {{40, 40}, {60, 40}, {60, 60}, {40, 60}}}),
                                          scene.square(100, 0, 200, 100), scene.square(210, 0, 300, 100)});
    const On on{ground, scene};
    QVERIFY(ground.holds(on(20, 20)) && ground.holds(on(150, 50)) && ground.holds(on(250, 50)));
    QVERIFY(!ground.holds(on(50, 50)) && !ground.holds(on(205, 50)) && !ground.holds(on(-1, 50)));
    QVERIFY(ground.leg(on(10, 10), on(190, 12)) == GroundLeg::Open);      // over the border between two polygons
    QVERIFY(ground.leg(on(10, 50), on(90, 50)) == GroundLeg::LeavesArea); // through the hole
    QVERIFY(ground.leg(on(10, 39), on(90, 39)) == GroundLeg::Open);
    QVERIFY(ground.leg(on(150, 50), on(250, 50)) == GroundLeg::LeavesArea);
    QVERIFY(ground.leg(on(10, 10), on(10, 101)) == GroundLeg::LeavesArea);
    QVERIFY(ground.leg(on(205, 10), on(206, 10)) == GroundLeg::LeavesArea); // wholly outside
  }

  void clearance() {
    const CourseScene scene;
    const std::vector<Shape> area{scene.square(0, 0, 100, 100)};
    const std::vector<Shape> avoid{scene.shape(ShapeKind::Line, {{{50, -20}, {50, 30}}}),
                                   scene.shape(ShapeKind::Point, {{{20, 80}}}), scene.square(70, 70, 90, 90)};
    const CourseGround touching = groundOf(area, avoid, 0), wide = groundOf(area, avoid, 5);
    const On on{touching, scene};
    QVERIFY(touching.leg(on(10, 20), on(90, 20)) == GroundLeg::Avoided);
    QVERIFY(touching.leg(on(10, 31), on(90, 31)) == GroundLeg::Open);
    QVERIFY(wide.leg(on(10, 34.99), on(90, 34.99)) == GroundLeg::Avoided);
    QVERIFY(wide.leg(on(10, 35.01), on(90, 35.01)) == GroundLeg::Open);
    QVERIFY(wide.leg(on(10, 84.99), on(60, 84.99)) == GroundLeg::Avoided &&
            wide.leg(on(10, 85.01), on(60, 85.01)) == GroundLeg::Open);
    QVERIFY(touching.leg(on(75, 75), on(85, 85)) == GroundLeg::Avoided); // wholly inside
    QVERIFY(touching.avoids(on(80, 80)) && !touching.avoids(on(69.9, 80)) && wide.avoids(on(65.1, 80)));
  }

  // Even-odd, so that a ring that crosses itself is of use; the order of polygons does not matter.
  void crossedRing() {
    const CourseScene scene;
    const CourseGround ground = groundOf({scene.shape(ShapeKind::Polygon, {{{0, 0}, {100, 100}, {100, 0}, {0, 100}}})});
    const On on{ground, scene};
    QVERIFY(ground.holds(on(10, 50)) && ground.holds(on(90, 50)) && !ground.holds(on(50, 10)));
    QVERIFY(ground.leg(on(10, 50), on(90, 50.001)) == GroundLeg::Open);
    QVERIFY(ground.leg(on(10, 45), on(90, 45)) == GroundLeg::LeavesArea);
  }

  void againstBoost() {
    Random random(11);
    int inside = 0, near = 0, tried = 0;
    for (int round = 0; round < 60; ++round) {
      CourseScene scene;
      if (round % 3 == 1)
        scene.middle = {Angle::degrees(-17), Angle::degrees(180)};
      if (round % 3 == 2)
        scene.middle = {Angle::degrees(-43.4), Angle::degrees(-71.2)};
      const Outline outer = star(random, 0, 0, 300, 17), hole = star(random, 20, 0, 60, 9),
                    pond = star(random, -80, 60, 40, 8);
      const double clearance = round % 2 == 0 ? 0 : 7;
      const CourseGround ground = groundOf({scene.shape(ShapeKind::Polygon, {outer, hole})},
                                           {scene.shape(ShapeKind::Polygon, {pond})}, clearance);
      const auto flat = [&](const Place &place) {
        const GroundPoint at = ground.toGround(place);
        return Flat(double(at.east) / 1000, double(at.north) / 1000);
      };
      const auto ring = [&](const Outline &outline, auto &to) {
        for (const auto &[east, north] : outline)
          bg::append(to, flat(scene.at(east, north)));
      };
      FlatPolygon area, wet;
      area.inners().resize(1);
      ring(outer, area.outer());
      ring(hole, area.inners()[0]); // never reaches over the edge: 80 m at most, of 88
      ring(pond, wet.outer());
      bg::correct(area);
      bg::correct(wet);
      for (int i = 0; i < 100; ++i) {
        const Place from = scene.at(random.between(-300, 300), random.between(-300, 300)),
                    to = scene.at(random.between(-300, 300), random.between(-300, 300));
        const Flat a = flat(from), b = flat(to);
        const FlatLine line{a, b};
        const bool held = bg::covered_by(line, area);
        const double distance = bg::distance(line, wet);
        const GroundLeg got = ground.leg(ground.toGround(from), ground.toGround(to));
        QCOMPARE(ground.holds(ground.toGround(from)), bg::within(a, area));
        QCOMPARE(got == GroundLeg::LeavesArea, !held);
        if (held)
          QCOMPARE(got == GroundLeg::Avoided, clearance > 0 ? distance < clearance : distance <= 0);
        ++tried;
        inside += held;
        near += got == GroundLeg::Avoided;
      }
    }
    QVERIFY2(tried > 3000 && inside > 200 && near > 30,
             qPrintable(QStringLiteral("%1 %2 %3").arg(tried).arg(inside).arg(near)));
  }

  void planeKeepsLengths() {
    const CourseScene scene;
    const CourseGround ground = groundOf({scene.square(-2000, -2000, 2000, 2000)});
    Random random(5);
    for (int i = 0; i < 200; ++i) {
      const Place a = scene.at(random.between(-2000, 2000), random.between(-2000, 2000)),
                  b = scene.at(random.between(-2000, 2000), random.between(-2000, 2000));
      VERIFY_NEAR(metresBetween(ground.toGround(a), ground.toGround(b)), geodesicBetween(a, b).length.metres(), 0.002,
                  "plane");
      VERIFY_NEAR(geodesicBetween(a, ground.toPlace(ground.toGround(a))).length.metres(), 0, 0.00071, "rounding");
    }
  }

  void refused() {
    const CourseScene scene;
    QVERIFY_EXCEPTION_THROWN(groundOf({}), std::invalid_argument);
    QVERIFY_EXCEPTION_THROWN(groundOf({scene.shape(ShapeKind::Line, {{{0, 0}, {10, 10}}})}), std::invalid_argument);
    QVERIFY_EXCEPTION_THROWN(groundOf({scene.shape(ShapeKind::Polygon, {{{0, 0}, {10, 0}, {20, 0}}})}),
                             std::invalid_argument);
    QVERIFY_EXCEPTION_THROWN(groundOf({scene.square(0, 0, 200000, 100)}), std::invalid_argument);
    // What is avoided may reach round the Earth.
    Shape belt;
    belt.kind = ShapeKind::Line;
    belt.parts = {{scene.at(50, 50), {Angle::degrees(-40), Angle::degrees(120)}}};
    const CourseGround ground = groundOf({scene.square(0, 0, 100, 100)}, {belt});
    const On on{ground, scene};
    QVERIFY(ground.leg(on(10, 10), on(10, 20)) == GroundLeg::Open ||
            ground.leg(on(10, 10), on(10, 20)) == GroundLeg::Avoided);
    QVERIFY(ground.avoids(on(50, 50)));
  }
};

QTEST_GUILESS_MAIN(CourseGroundTest)
#include "course_ground_test.moc"
