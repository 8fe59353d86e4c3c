// SPDX-License-Identifier: GPL-2.0-or-later
// Numbers in metres are reckoned by hand in the plane beside each case; what a piece keeps from obstacles is checked
// by distances between segments, which the code under test does not use.
#include "planning/detour.h"
#include "shared/local_plane.h"
#include "support/near.h"
#include "support/random.h"

#include <algorithm>
#include <cmath>

using namespace brushline;
using namespace brushline::test;

namespace {

Place place(double latitude, double longitude) { return {Angle::degrees(latitude), Angle::degrees(longitude)}; }

using Corners = std::vector<std::pair<double, double>>; // along, across (right positive), metres

//! A leg, and places about it by GeographicLib's direct geodesic.
struct Course {
  Place start = place(46.5, 8);
  double bearing = 70, length = 300;

  Place at(double along, double across) const {
    const TrueBearing departure(Angle::degrees(bearing));
    const Place foot = geodesicDestination(start, departure, Length::metres(along));
    const Place behind = geodesicDestination(start, departure, Length::metres(along - 1000));
    const Angle there = geodesicBetween(behind, foot).arrival.angle();
    return geodesicDestination(foot, TrueBearing(there + Angle::degrees(90)), Length::metres(across));
  }
  Place end() const { return at(length, 0); }
};

std::vector<Place> ring(const Course &course, Corners corners) {
  corners.push_back(corners.front());
  std::vector<Place> result;
  for (const auto &[along, across] : corners)
    result.push_back(course.at(along, across));
  return result;
}

Shape polygon(const Course &course, const std::vector<Corners> &rings, const std::string &name = {}) {
  Shape shape;
  shape.kind = ShapeKind::Polygon;
  shape.name = name;
  for (const Corners &corners : rings)
    shape.parts.push_back(ring(course, corners));
  return shape;
}

Corners box(double low, double high, double left, double right) {
  return {{low, left}, {high, left}, {high, right}, {low, right}};
}

DetourRule rule(double clearance, double most = 200) { return {Length::metres(clearance), Length::metres(most)}; }

DetouredLeg round(const Course &course, std::vector<Shape> shapes, const DetourRule &by) {
  return detourLeg(course.start, course.end(), Obstacles(std::move(shapes), Progress()), by, Progress());
}

std::string partsOf(const DetouredLeg &leg) {
  std::string words;
  for (const LegPiece &piece : leg.pieces)
    words += "AOPB"[static_cast<int>(piece.part)];
  return words;
}

// --- independent geometry ---

double cross(const PlanePoint &o, const PlanePoint &a, const PlanePoint &b) {
  return (a.east - o.east) * (b.north - o.north) - (a.north - o.north) * (b.east - o.east);
}

double pointToSegment(const PlanePoint &p, const PlanePoint &a, const PlanePoint &b) {
  const double x = b.east - a.east, y = b.north - a.north, squared = x * x + y * y;
  double t = squared > 0 ? ((p.east - a.east) * x + (p.north - a.north) * y) / squared : 0;
  t = std::min(1.0, std::max(0.0, t));
  return std::hypot(p.east - a.east - t * x, p.north - a.north - t * y);
}

double segmentToSegment(const PlanePoint &a, const PlanePoint &b, const PlanePoint &c, const PlanePoint &d) {
  if (cross(a, b, c) * cross(a, b, d) < 0 && cross(c, d, a) * cross(c, d, b) < 0)
    return 0;
  return std::min({pointToSegment(a, c, d), pointToSegment(b, c, d), pointToSegment(c, a, b), pointToSegment(d, a, b)});
}

// The least distance from a piece to any obstacle; 0 inside one.
double gapTo(const LegPiece &piece, const std::vector<Shape> &shapes) {
  const LocalPlane plane(piece.from);
  const PlanePoint from = plane.toPlane(piece.from), to = plane.toPlane(piece.to);
  double least = 1e9;
  for (const Shape &shape : shapes) {
    bool inside = false;
    for (const auto &part : shape.parts)
      for (size_t i = 1; i < part.size(); ++i) {
        const PlanePoint a = plane.toPlane(part[i - 1]), b = plane.toPlane(part[i]);
        least = std::min(least, segmentToSegment(from, to, a, b));
        if ((a.east > from.east) != (b.east > from.east) &&
            from.north < a.north + (b.north - a.north) * (from.east - a.east) / (b.east - a.east))
          inside = !inside;
      }
    if (inside)
      return 0;
  }
  return least;
}

// How deep a place lies within any obstacle; 0 outside.
double depthOf(const Place &place, const std::vector<Shape> &shapes) {
  const LocalPlane plane(place);
  double deepest = 0;
  for (const Shape &shape : shapes) {
    bool inside = false;
    double nearest = 1e9;
    for (const auto &part : shape.parts)
      for (size_t i = 1; i < part.size(); ++i) {
        const PlanePoint a = plane.toPlane(part[i - 1]), b = plane.toPlane(part[i]);
        nearest = std::min(nearest, pointToSegment({0, 0}, a, b));
        if ((a.east > 0) != (b.east > 0) && 0 < a.north + (b.north - a.north) * (0 - a.east) / (b.east - a.east))
          inside = !inside;
      }
    if (inside)
      deepest = std::max(deepest, nearest);
  }
  return deepest;
}

//! What holds for every leg: closing, right angles, lengths, order.
void verifyShape(const Course &course, const DetouredLeg &leg, const std::string &where) {
  VERIFY_AT(!leg.pieces.empty(), where);
  VERIFY_NEAR(leg.length.metres(), course.length, 1e-6, where);
  double counted = 0;
  Place at = course.start;
  double at_m = 0;
  for (const LegPiece &piece : leg.pieces) {
    VERIFY_NEAR(geodesicBetween(at, piece.from).length.metres(), 0, 1e-9, where);
    VERIFY_NEAR(piece.from_m, at_m, 0.001, where);
    const bool counts = piece.part == LegPart::Along || piece.part == LegPart::Past;
    VERIFY_NEAR(piece.to_m - piece.from_m, counts ? piece.geodesic.length.metres() : 0, 0.001, where);
    if (counts)
      counted += piece.geodesic.length.metres();
    at = piece.to;
    at_m = piece.to_m;
  }
  VERIFY_NEAR(geodesicBetween(at, course.end()).length.metres(), 0, 1e-6, where);
  VERIFY_NEAR(counted, course.length, 0.001, where);

  for (size_t i = 0; i < leg.pieces.size(); ++i) {
    if (leg.pieces[i].part != LegPart::Out)
      continue;
    VERIFY_AT(i + 2 < leg.pieces.size(), where);
    const LegPiece &out = leg.pieces[i], &past = leg.pieces[i + 1], &back = leg.pieces[i + 2];
    VERIFY_AT(past.part == LegPart::Past && back.part == LegPart::Back, where);
    const Detour &detour = leg.detours.at(*out.detour);
    const double quarter = detour.side == Side::Right ? 90 : -90;
    VERIFY_NEAR(out.geodesic.length.metres(), detour.out_m, 1e-6, where);
    // A way back to within 1 mm of the leg's end ends there.
    VERIFY_NEAR(back.geodesic.length.metres(), out.geodesic.length.metres(), 1e-4, where);
    VERIFY_NEAR(past.geodesic.length.metres(), detour.returns_m - detour.leaves_m, 0.001, where);
    // It returns to the leg's own line: the distance from the place that far along it.
    VERIFY_NEAR(geodesicBetween(back.to, course.at(detour.returns_m, 0)).length.metres(), 0, 0.001, where);
    // 15 nm over the shorter of two pieces; 1e-6 degrees at 1 m.
    // A parallel bends off the shortest line between its ends by out * past / 2 R^2 (7e-8 degrees at 200 by 500 m).
    const double bend = detour.out_m * past.geodesic.length.metres() / (2 * 6.3e6 * 6.3e6) * 180 / Angle::pi;
    const double allowed = 1e-6 * (1 + 1 / std::min(detour.out_m, past.geodesic.length.metres())) + bend;
    if (detour.leaves_m > 1) {
      const Angle arriving = geodesicBetween(course.start, out.from).arrival.angle();
      VERIFY_NEAR(turnBetween(out.geodesic.departure.degrees(), arriving.degrees() + quarter), 0,
                  allowed * (1 + 1 / detour.leaves_m), where);
    }
    VERIFY_NEAR(turnBetween(past.geodesic.departure.degrees(), out.geodesic.arrival.degrees() - quarter), 0, allowed,
                where);
    VERIFY_NEAR(turnBetween(back.geodesic.departure.degrees(), past.geodesic.arrival.degrees() - quarter), 0, allowed,
                where);
  }
}

} // namespace

class DetourTest : public QObject {
  Q_OBJECT
private slots:
  void nothingInTheWay() {
    const Course course;
    for (const auto &shapes : {std::vector<Shape>{}, std::vector<Shape>{polygon(course, {box(100, 140, 20, 60)})},
                               std::vector<Shape>{polygon(course, {box(100, 140, 5, 60)})}, // exactly the clearance off
                               std::vector<Shape>{polygon(course, {box(-60, -5, -20, 20)})},
                               std::vector<Shape>{polygon(course, {box(-30, -4, 4, 20)})}}) { // 5.7 m from the start
      const DetouredLeg leg = round(course, shapes, rule(5));
      QCOMPARE(partsOf(leg), std::string("A"));
      QVERIFY(leg.not_passed.empty());
      verifyShape(course, leg, "free");
    }
  }

  // A pond 40 m long and 40 m wide in the middle of the line, clearance 5: out 20 + 5, past 40 + 2 x 5, back 25; it
  // leaves at 100 - 5. Both sides are equal: the right is taken.
  void squarePond() {
    const Course course;
    const DetouredLeg leg = round(course, {polygon(course, {box(100, 140, -20, 20)}, "Tarn")}, rule(5));
    QCOMPARE(partsOf(leg), std::string("AOPBA"));
    const double metres[] = {95, 25, 50, 25, 155};
    const double counts[] = {95, 95, 145, 145, 300};
    for (size_t i = 0; i < 5; ++i) {
      VERIFY_NEAR(leg.pieces[i].geodesic.length.metres(), metres[i], 0.0001, "piece");
      VERIFY_NEAR(leg.pieces[i].to_m, counts[i], 0.0001, "count");
    }
    QVERIFY(leg.detours[0].side == Side::Right);
    QCOMPARE(leg.detours[0].obstacles, std::vector<size_t>{0});
    VERIFY_NEAR(turnBetween(leg.pieces[1].geodesic.departure.degrees(), course.bearing + 90), 0, 0.002,
                "out"); // meridians
    VERIFY_NEAR(turnBetween(leg.pieces[3].geodesic.departure.degrees(), course.bearing - 90), 0, 0.002,
                "back"); // converge
    verifyShape(course, leg, "square");
  }

  // The handbook's rule in a case of our own: 300 m, after 100 out 40, past 80, back 40, go on from 180. In paces of
  // one metre; the thicket is 70 m long, lies from 35 m on the right to 90 m on the left, clearance 5.
  void workedExample() {
    const Course course;
    const DetouredLeg leg = round(course, {polygon(course, {box(105, 175, -90, 35)})}, rule(5));
    const double metres[] = {100, 40, 80, 40, 120};
    for (size_t i = 0; i < 5; ++i)
      VERIFY_NEAR(leg.pieces[i].geodesic.length.metres(), metres[i], 0.0001, "piece");
    VERIFY_NEAR(leg.pieces[3].to_m, 180, 0.0001, "count");
  }

  void shorterSide() {
    const Course course;
    DetouredLeg leg = round(course, {polygon(course, {box(100, 140, -10, 30)})}, rule(5));
    QVERIFY(leg.detours[0].side == Side::Left);
    VERIFY_NEAR(leg.detours[0].out_m, 15, 0.0001, "left");
    leg = round(course, {polygon(course, {box(100, 140, -30, 10)})}, rule(5));
    QVERIFY(leg.detours[0].side == Side::Right);
    // Beside the line but too near: 2 m to the right, so to the left it takes 5 - 2 = 3 m.
    leg = round(course, {polygon(course, {box(100, 140, 2, 10)})}, rule(5));
    QVERIFY(leg.detours[0].side == Side::Left);
    VERIFY_NEAR(leg.detours[0].out_m, 3, 0.0001, "beside");
    // On the shorter side the way is barred by another: a wall from 12 to 250 m. Round both is too far.
    leg =
        round(course, {polygon(course, {box(100, 140, -10, 30)}), polygon(course, {box(90, 150, -250, -12)})}, rule(5));
    QVERIFY(leg.detours[0].side == Side::Right);
    VERIFY_NEAR(leg.detours[0].out_m, 35, 0.0001, "barred");
  }

  // A second pond where the way past the first would be: from 28 to 50 m on both sides, 130 to 200 m along. Past it at
  // 55 m; its ends decide where the detour returns.
  void obstaclesAreTakenTogether() {
    const Course course;
    const std::vector<Shape> shapes = {polygon(course, {box(100, 140, -20, 20)}),
                                       polygon(course, {box(130, 200, 28, 50)}),
                                       polygon(course, {box(130, 200, -60, -28)})};
    const DetouredLeg leg = round(course, shapes, rule(5));
    QCOMPARE(leg.detours.size(), size_t(1));
    VERIFY_NEAR(leg.detours[0].leaves_m, 95, 0.0001, "leaves");
    VERIFY_NEAR(leg.detours[0].returns_m, 205, 0.0001, "returns");
    VERIFY_NEAR(leg.detours[0].out_m, 55, 0.0001, "out");
    QVERIFY(leg.detours[0].side == Side::Right);
    QCOMPARE(leg.detours[0].obstacles, (std::vector<size_t>{0, 1}));
    for (const LegPiece &piece : leg.pieces)
      QVERIFY(gapTo(piece, shapes) >= 5 - 0.001);
  }

  // Two ponds with 30 m between them are two detours; with 8 m between them, less than twice the clearance, one; with
  // 10.5 m there is only half a metre to come back to the line: one.
  void twoInARow() {
    const Course course;
    for (const auto &[between, detours] : {std::pair(30.0, 2u), std::pair(8.0, 1u), std::pair(10.5, 1u)}) {
      const DetouredLeg leg = round(
          course, {polygon(course, {box(100, 120, -10, 10)}), polygon(course, {box(120 + between, 160, -10, 10)})},
          rule(5));
      QCOMPARE(leg.detours.size(), size_t(detours));
      VERIFY_NEAR(leg.detours.back().returns_m, 165, 0.0001, "returns");
      verifyShape(course, leg, "two");
    }
  }

  // A U open towards the walker: into it leads no way out; the detour leaves before its arms at 80 - 5.
  void concave() {
    const Course course;
    const Corners u = {{80, -30}, {150, -30}, {150, 30}, {80, 30}, {80, 20}, {140, 20}, {140, -20}, {80, -20}};
    const std::vector<Shape> shapes = {polygon(course, {u})};
    const DetouredLeg leg = round(course, shapes, rule(5));
    QCOMPARE(leg.detours.size(), size_t(1));
    VERIFY_NEAR(leg.detours[0].leaves_m, 75, 0.0001, "leaves");
    VERIFY_NEAR(leg.detours[0].returns_m, 155, 0.0001, "returns");
    VERIFY_NEAR(leg.detours[0].out_m, 35, 0.0001, "out");
  }

  // A comb: three teeth across the line joined by a back 60 m to the left: one polygon crossed three times. On the
  // right each tooth ends at 10 m.
  void crossedSeveralTimes() {
    const Course course;
    const Corners comb = {{50, -60}, {210, -60}, {210, 10},  {190, 10}, {190, -50}, {140, -50},
                          {140, 10}, {120, 10},  {120, -50}, {70, -50}, {70, 10},   {50, 10}};
    const DetouredLeg leg = round(course, {polygon(course, {comb})}, rule(5));
    QCOMPARE(partsOf(leg), std::string("AOPBAOPBAOPBA"));
    for (const Detour &detour : leg.detours) {
      QVERIFY(detour.side == Side::Right);
      VERIFY_NEAR(detour.out_m, 15, 0.0001, "out");
    }
    verifyShape(course, leg, "comb");
  }

  // A lake about the whole leg with an island in it: the leg on the island is free; one that leaves it is not.
  void holes() {
    Course course;
    const std::vector<Shape> shapes = {polygon(course, {box(-500, 900, -500, 500), box(-50, 350, -50, 50)})};
    DetouredLeg leg = round(course, shapes, rule(5));
    QCOMPARE(partsOf(leg), std::string("A"));
    QVERIFY(leg.not_passed.empty());
    course.length = 400;
    leg = round(course, shapes, rule(5));
    QCOMPARE(partsOf(leg), std::string("A"));
    QCOMPARE(leg.not_passed.size(), size_t(1));
    VERIFY_NEAR(leg.not_passed[0].from_m, 345, 0.001, "shore");
    VERIFY_NEAR(leg.not_passed[0].to_m, 400, 0.001, "end");
    QVERIFY(leg.not_passed[0].end == EndState::Inside && leg.not_passed[0].start == EndState::Clear);
    // No edge is anywhere near.
    Course inside;
    inside.start = course.at(600, 200);
    inside.length = 100;
    leg = round(inside, shapes, rule(5));
    QCOMPARE(leg.not_passed.size(), size_t(1));
    QVERIFY(leg.not_passed[0].start == EndState::Inside && leg.not_passed[0].end == EndState::Inside);
    QCOMPARE(leg.not_passed[0].obstacles, std::vector<size_t>{0});
    VERIFY_NEAR(leg.not_passed[0].to_m - leg.not_passed[0].from_m, 100, 0.001, "all of it");
  }

  // Too near to an end, but beyond it: as small as that, none of its edges comes alongside the leg.
  void behindAnEnd() {
    const Course course;
    for (const Corners &corners : {box(303, 305, -1, 1), box(-5, -3, -1, 1)}) {
      const DetouredLeg leg = round(course, {polygon(course, {corners})}, rule(5));
      QCOMPARE(leg.not_passed.size(), size_t(1));
      QCOMPARE(leg.not_passed[0].obstacles, std::vector<size_t>{0});
    }
  }

  void endsInTheWay() {
    const Course course;
    struct Case {
      Corners corners;
      EndState start, end;
      double from, to;
    };
    const Case cases[] = {
        {box(-20, 20, -20, 20), EndState::Inside, EndState::Clear, 0, 25},
        {box(3, 20, -20, 20), EndState::Near, EndState::Clear, 0, 25},
        {box(-20, -3, -20, 20), EndState::Near, EndState::Clear, 0, 2},
        {box(280, 320, -20, 20), EndState::Clear, EndState::Inside, 275, 300},
        {box(280, 297, -20, 20), EndState::Clear, EndState::Near, 275, 300},
        {box(304, 320, -20, 20), EndState::Clear, EndState::Near, 299, 300},
    };
    for (const Case &one : cases) {
      const DetouredLeg leg = round(course, {polygon(course, {one.corners})}, rule(5));
      const std::string where = std::to_string(one.corners[0].first);
      VERIFY_AT(partsOf(leg) == "A", where);
      VERIFY_AT(leg.not_passed.size() == 1, where);
      VERIFY_AT(leg.not_passed[0].start == one.start && leg.not_passed[0].end == one.end, where);
      VERIFY_NEAR(leg.not_passed[0].from_m, one.from, 0.001, where);
      VERIFY_NEAR(leg.not_passed[0].to_m, one.to, 0.001, where);
      verifyShape(course, leg, where);
    }
    // Just room enough: the pond begins the clearance after the start and ends it before the end.
    const DetouredLeg leg = round(course, {polygon(course, {box(5, 295, -20, 20)})}, rule(5));
    QCOMPARE(partsOf(leg), std::string("OPB"));
    verifyShape(course, leg, "whole leg");
    // Free ends, but an arm of the pond reaches back past the start on both sides.
    const Corners u = {{-50, -30}, {150, -30}, {150, 30}, {-50, 30}, {-50, 20}, {140, 20}, {140, -20}, {-50, -20}};
    const DetouredLeg caught = round(course, {polygon(course, {u})}, rule(5));
    QCOMPARE(caught.not_passed.size(), size_t(1));
    QVERIFY(caught.not_passed[0].left == Refusal::NoRoomBefore && caught.not_passed[0].right == Refusal::NoRoomBefore);
    QVERIFY(caught.not_passed[0].start == EndState::Clear);
  }

  void tooFarOut() {
    const Course course;
    const std::vector<Shape> shapes = {polygon(course, {box(100, 140, -300, 195.5)})};
    DetouredLeg leg = round(course, shapes, rule(5, 200));
    QCOMPARE(partsOf(leg), std::string("A"));
    QCOMPARE(leg.not_passed.size(), size_t(1));
    QVERIFY(leg.not_passed[0].left == Refusal::TooFarOut && leg.not_passed[0].right == Refusal::TooFarOut);
    VERIFY_NEAR(leg.not_passed[0].from_m, 95, 0.001, "from");
    VERIFY_NEAR(leg.not_passed[0].to_m, 145, 0.001, "to");
    leg = round(course, shapes, rule(5, 200.5));
    VERIFY_NEAR(leg.detours.at(0).out_m, 200.5, 0.0001, "just");
    // What comes after it is gone round all the same.
    leg = round(course, {shapes[0], polygon(course, {box(200, 220, -10, 10)})}, rule(5, 200));
    QCOMPARE(leg.not_passed.size(), size_t(1));
    QCOMPARE(leg.detours.size(), size_t(1));
    verifyShape(course, leg, "after");
  }

  // Clearance 0: corners and edges may be touched; what is crossed is gone round at its very edge.
  void touching() {
    const Course course;
    for (const Corners &corners : {Corners{{100, 0}, {120, 30}, {80, 30}}, box(100, 140, 0, 30), box(100, 140, -30, 0),
                                   box(-40, 0, -10, 10), box(300, 340, -10, 10)}) {
      const DetouredLeg leg = round(course, {polygon(course, {corners})}, rule(0));
      QCOMPARE(partsOf(leg), std::string("A"));
      QVERIFY(leg.not_passed.empty());
    }
    DetouredLeg leg = round(course, {polygon(course, {box(100, 140, -20, 20)})}, rule(0));
    const double metres[] = {100, 20, 40, 20, 160};
    for (size_t i = 0; i < 5; ++i)
      VERIFY_NEAR(leg.pieces[i].geodesic.length.metres(), metres[i], 0.0001, "piece");
    // Two ponds that share an edge on the line leave no way between them.
    leg = round(course, {polygon(course, {box(100, 140, 0, 30)}), polygon(course, {box(100, 140, -20, 0)})}, rule(0));
    QCOMPARE(leg.detours.size(), size_t(1));
    QVERIFY(leg.detours[0].side == Side::Left);
    VERIFY_NEAR(leg.detours[0].out_m, 20, 0.0001, "shared edge");
    // A slanting wall, followed to its end: from 100 m at 5 m right up to 60 m at 40 m left.
    leg = round(course, {polygon(course, {{{100, 5}, {60, -40}, {61, -40}, {101, 5}}})}, rule(0));
    QCOMPARE(leg.detours.size(), size_t(1));
    QVERIFY(leg.detours[0].side == Side::Right);
    VERIFY_NEAR(leg.detours[0].out_m, 5, 0.001, "wall");
    VERIFY_NEAR(leg.detours[0].returns_m, 101, 0.05, "wall");
  }

  void badShapes() {
    const Course course;
    const Corners bowtie = {{100, -20}, {140, 20}, {140, -20}, {100, 20}};
    DetouredLeg leg = round(course, {polygon(course, {bowtie})}, rule(5));
    QCOMPARE(leg.detours.size(), size_t(1));
    VERIFY_NEAR(leg.detours[0].out_m, 25, 0.0001, "bow tie");
    // A polygon without area is in the way all the same; repeated places do no harm.
    leg = round(course, {polygon(course, {{{100, -20}, {100, 20}}})}, rule(5));
    VERIFY_NEAR(leg.detours.at(0).returns_m, 105, 0.0001, "fence");
    leg = round(course, {polygon(course, {{{100, -20}, {100, -20}, {140, -20}, {140, 20}, {140, 20}, {100, 20}}})},
                rule(5));
    VERIFY_NEAR(leg.detours.at(0).out_m, 25, 0.0001, "repeated");
    // The same pond twice.
    leg =
        round(course, {polygon(course, {box(100, 140, -20, 20)}), polygon(course, {box(100, 140, -20, 20)})}, rule(5));
    VERIFY_NEAR(leg.detours.at(0).out_m, 25, 0.0001, "twice");
    QCOMPARE(leg.detours[0].obstacles.size(), size_t(2));
    leg = round(course, {polygon(course, {{{100, 0}}})}, rule(5)); // a single place, closed
    QCOMPARE(leg.detours.size(), size_t(1));
  }

  // Ponds strewn about, on all latitudes, with parts and holes: every piece that is not told as blocked keeps the
  // clearance, by distances in a plane about the piece.
  void strewn() {
    Random random(2026);
    int detours = 0, notPassed = 0, left = 0;
    for (int i = 0; i < 600; ++i) {
      Course course;
      course.start = i % 10 == 0   ? place(random.between(-70, 70), random.between(179.99, 180.01))
                     : i % 10 == 1 ? place(random.between(86, 89.999), random.between(-180, 180))
                                   : random.place();
      course.bearing = random.between(0, 360);
      course.length = random.between(20, 1500);
      std::vector<Shape> shapes;
      const int count = int(random.between(0, 12));
      for (int s = 0; s < count; ++s) {
        std::vector<Corners> rings;
        for (int part = 0, parts = int(random.between(1, 2.5)); part < parts; ++part) {
          const double along = random.between(-50, course.length + 50), across = random.between(-80, 80);
          const double radius = std::exp(random.between(0, 4.5));
          Corners corners, hole;
          const int n = int(random.between(3, 14));
          for (int c = 0; c < n; ++c) {
            const double turn = 2 * Angle::pi * c / n, r = radius * random.between(0.3, 1);
            corners.emplace_back(along + r * std::cos(turn), across + r * std::sin(turn));
            hole.emplace_back(along + 0.1 * radius * std::cos(turn), across + 0.1 * radius * std::sin(turn));
          }
          rings.push_back(corners);
          if (random.between(0, 1) < 0.2)
            rings.push_back(hole);
        }
        shapes.push_back(polygon(course, rings));
      }
      const double clearance = i % 4 == 0 ? 0 : random.between(0.1, 12);
      const std::string where = "course " + std::to_string(i);
      const DetouredLeg leg = round(course, shapes, rule(clearance));
      verifyShape(course, leg, where);
      const DetouredLeg again = round(course, shapes, rule(clearance));
      VERIFY_AT(again.pieces.size() == leg.pieces.size() && again.not_passed.size() == leg.not_passed.size(), where);
      for (size_t p = 0; p < leg.pieces.size(); ++p)
        VERIFY_AT(again.pieces[p].to_m == leg.pieces[p].to_m &&
                      again.pieces[p].geodesic.length.metres() == leg.pieces[p].geodesic.length.metres(),
                  where);
      for (const LegPiece &piece : leg.pieces) {
        bool told = false;
        for (const NotPassed &one : leg.not_passed)
          told = told || (piece.part == LegPart::Along && one.to_m > piece.from_m && one.from_m < piece.to_m);
        if (!told && clearance > 0)
          VERIFY_NEAR(std::min(gapTo(piece, shapes), clearance), clearance, 0.002, where);
        for (double share = 0.003; !told && clearance == 0 && share < 1; share += 0.0501) {
          const Place on = geodesicDestination(piece.from, piece.geodesic.departure,
                                               Length::metres(piece.geodesic.length.metres() * share));
          VERIFY_NEAR(depthOf(on, shapes), 0, 0.002, where);
        }
      }
      for (const Detour &detour : leg.detours) {
        VERIFY_AT(!detour.obstacles.empty() && detour.out_m > 0.001 && detour.out_m <= 200.001, where);
        left += detour.side == Side::Left;
      }
      detours += int(leg.detours.size());
      notPassed += int(leg.not_passed.size());
    }
    QVERIFY(detours > 400 && notPassed > 40 && left > detours / 3);
  }

  // No shorter way out than the one found: against trying every decimetre on each side, with boxes about the pieces
  // held against the obstacles' own boxes (all obstacles here are boxes, so this is exact).
  void shortestOut() {
    Random random(77);
    int compared = 0, tried = 0;
    for (int i = 0; i < 300; ++i) {
      Course course;
      course.bearing = random.between(0, 360);
      std::vector<std::array<double, 4>> boxes;
      std::vector<Shape> shapes;
      for (int b = 0; b < 6; ++b) {
        const double low = std::round(random.between(40, 230)), left = std::round(random.between(-60, 40));
        const std::array<double, 4> one{low, low + std::round(random.between(2, 40)), left,
                                        left + std::round(random.between(2, 50))};
        boxes.push_back(one);
        shapes.push_back(polygon(course, {box(one[0], one[1], one[2], one[3])}));
      }
      const DetouredLeg leg = round(course, shapes, rule(4, 150));
      if (leg.detours.empty())
        continue;
      const Detour &first = leg.detours[0];
      const auto free = [&](double x0, double x1, double y0, double y1) { // the clearance included
        for (const auto &one : boxes)
          if (one[0] < x1 + 4 - 1e-3 && one[1] > x0 - 4 + 1e-3 && one[2] < y1 + 4 - 1e-3 && one[3] > y0 - 4 + 1e-3)
            return false;
        return true;
      };
      // The first place where the line is blocked.
      double blocked = 0;
      while (blocked < 300 && free(blocked, blocked, 0, 0))
        blocked += 0.5;
      const std::string where = "course " + std::to_string(i);
      VERIFY_AT(blocked < 300 && first.leaves_m <= blocked, where);
      if (leg.detours.size() > 1 || !leg.not_passed.empty())
        continue; // detours in a row decide together
      ++compared;
      double best = 1e9;
      for (const double sign : {1.0, -1.0})
        for (double out = 0; out < first.out_m - 0.5; out += 0.5) { // all corners lie on whole metres
          ++tried;
          // The turns nearest to the blocked place.
          const auto side = [&](double x) { return free(x, x, std::min(0.0, sign * out), std::max(0.0, sign * out)); };
          double leaves = blocked, returns = blocked;
          while (leaves >= 0 && !side(leaves))
            leaves -= 0.5;
          while (returns <= 300 && !side(returns))
            returns += 0.5;
          if (leaves >= 0 && returns <= 300 && free(leaves, returns, sign * out, sign * out))
            best = std::min(best, out);
        }
      VERIFY_AT(best > first.out_m, where);
    }
    QVERIFY2(compared > 100 && tried > 5000,
             qPrintable(QStringLiteral("%1 detours against %2 ways out").arg(compared).arg(tried)));
  }

  // Legs of tens of kilometres: the detour closes as exactly, and the pond is kept clear.
  void longLegs() {
    for (const double latitude : {-65.0, 0.0, 46.5, 80.0}) {
      Course course;
      course.start = place(latitude, 179.9);
      course.length = 60000;
      std::vector<Shape> shapes;
      for (const double along : {1000.0, 29990.0, 59000.0})
        shapes.push_back(polygon(course, {box(along, along + 40, -20, 20)}));
      const DetouredLeg leg = round(course, shapes, rule(5));
      const std::string where = "latitude " + std::to_string(latitude);
      VERIFY_AT(leg.detours.size() == 3, where);
      verifyShape(course, leg, where);
      for (const Detour &detour : leg.detours) {
        VERIFY_NEAR(detour.out_m, 25, 0.001, where);
        VERIFY_NEAR(detour.returns_m - detour.leaves_m, 50, 0.001, where);
      }
      for (const LegPiece &piece : leg.pieces)
        if (piece.part != LegPart::Along)
          VERIFY_NEAR(std::min(gapTo(piece, shapes), 5.0), 5, 0.001, where);
    }
    // A lake of 8 km by 6 km.
    Course course;
    course.length = 20000;
    const std::vector<Shape> lake = {polygon(course, {box(6000, 14000, -2500, 3500)})};
    const DetouredLeg leg = round(course, lake, rule(10, 5000));
    QCOMPARE(leg.detours.size(), size_t(1));
    VERIFY_NEAR(leg.detours[0].out_m, 2510, 0.05, "lake"); // its edge is a geodesic between corners, not a parallel
    verifyShape(course, leg, "lake");
  }

  void routes() {
    const Course course;
    Route route;
    const auto vertex = [&](double along, double across, size_t source) {
      return RouteVertex{course.at(along, across), {0, 0}, source};
    };
    route.parts = {{vertex(0, 0, 0), vertex(0.0005, 0, 1), vertex(300, 0, 2), vertex(300, 200, 3)},
                   {vertex(400, 0, 4)},
                   {vertex(500, 0, 5), vertex(600, 0, 6)}};
    const Obstacles obstacles({polygon(course, {box(100, 140, -20, 20)})}, Progress());
    const auto legs = detourRoute(route, obstacles, rule(5), Progress());
    QCOMPARE(legs.size(), size_t(3));
    QCOMPARE(partsOf(legs[0].way), std::string("AOPBA"));
    QCOMPARE(legs[0].from.source, size_t(0));
    QCOMPARE(legs[0].to.source, size_t(2));
    QCOMPARE(legs[2].part, size_t(2));
    QVERIFY(detourRoute(Route(), obstacles, rule(5), Progress()).empty());
  }

  void cancels() {
    struct Stop final : Progress {
      bool cancelled() const override { return true; }
    } stop;
    const Course course;
    const Obstacles obstacles({polygon(course, {box(100, 140, -20, 20)})}, Progress());
    QVERIFY_EXCEPTION_THROWN(detourLeg(course.start, course.end(), obstacles, rule(5), stop), Cancelled);
  }
};

QTEST_GUILESS_MAIN(DetourTest)
#include "detour_test.moc"
