// SPDX-License-Identifier: GPL-2.0-or-later
// Against annotated legs, and by hand.
#include "planning/course_legs.h"
#include "planning/course_scene.h"
#include "support/grid_of.h"

#include <QtTest>

#include <cmath>
#include <limits>

using namespace brushline;
using namespace brushline::test;

namespace {

// Legs over ground whose heights are given by metres east and north of the scene's middle; cells of 5 m.
CourseLegs legsOver(const CourseGround &ground, const FieldSetting &field, const CourseScene &scene,
                    const Surface &heightAt, double limit) {
  const auto terrain = [&] {
    const GridShape shape{-500, 500, 5, 5, 200, 200};
    const LocalPlane plane(scene.middle);
    return std::make_unique<Terrain>(gridOf(shape, heightAt), [plane](std::vector<double> &x, std::vector<double> &y) {
      for (size_t i = 0; i < x.size(); ++i) {
        const PlanePoint point = plane.toPlane({Angle::degrees(y[i]), Angle::degrees(x[i])});
        x[i] = point.east;
        y[i] = point.north;
      }
    });
  };
  CourseLegs::Tools tools;
  tools.ground = &ground;
  tools.legs.field = &field;
  tools.legs.walkers = {Walker()};
  tools.terrain = terrain();
  tools.bare_terrain = terrain();
  tools.slope_terrain = terrain();
  tools.slope_limit = Angle::degrees(limit);
  return CourseLegs(std::move(tools));
}

} // namespace

class CourseLegsTest : public QObject {
  Q_OBJECT
private slots:
  // One hop of 30 m: the sighting's 3 degrees and a graduation of 2 degrees (2 / sqrt 12), 5 percent of the count; the
  // radius that holds 95 percent is sqrt(-2 ln 0.05) times the longer axis. Formulas as in drift.h; pace 0.78 m/s
  // level.
  void openGroundByHand() {
    const CourseScene scene;
    const CourseGround ground({scene.square(-100, -100, 100, 100)}, {}, Length(), Progress());
    PlainLegs plain(ground);
    const Place a = scene.at(0, 0), b = scene.at(30, 0);
    const CourseLeg leg = plain.legs.between(a, b, ground.toGround(a), ground.toGround(b), {15, 31}, Progress());
    QVERIFY(leg.bar == LegBar::None);
    VERIFY_NEAR(leg.length_m, 30, 0.0011, "length");
    const double degree = Angle::pi / 180, across = 30 * degree * std::sqrt(9 + 4.0 / 12), along = 1.5;
    const double seconds = 30 / (0.11 + 0.67 * std::exp(-4.0 / 1800));
    for (const LegEffort &effort : {leg.out, leg.back}) {
      VERIFY_NEAR(effort.across_m, across, 0.0006, "across");
      VERIFY_NEAR(effort.reach_m, std::max(across, along) * std::sqrt(-2 * std::log(0.05)), 0.0006, "reach");
      VERIFY_NEAR(effort.seconds, seconds, 0.001, "seconds");
      VERIFY_NEAR(effort.bare_seconds, effort.seconds, 0, "bare");
      VERIFY_NEAR(effort.climb_m, 0, 0, "climb");
    }
    const double farthest = plain.legs.farthestReach(30, Progress());
    QVERIFY(farthest >= leg.out.reach_m && farthest < leg.out.reach_m * 1.002);
  }

  void bars() {
    const CourseScene scene;
    const CourseGround ground({scene.square(0, 0, 200, 100)}, {scene.square(90, 0, 110, 50)}, Length(), Progress());
    PlainLegs plain(ground);
    const auto bar = [&](double x0, double y0, double x1, double y1) {
      const Place a = scene.at(x0, y0), b = scene.at(x1, y1);
      return plain.legs.between(a, b, ground.toGround(a), ground.toGround(b), {20, 150}, Progress()).bar;
    };
    QVERIFY(bar(10, 10, 10, 29.9) == LegBar::Length && bar(10, 10, 10, 30.1) == LegBar::None);
    QVERIFY(bar(10, 60, 160.1, 60) == LegBar::Length && bar(10, 60, 159.9, 60) == LegBar::None);
    QVERIFY(bar(10, 10, 10, 101) == LegBar::LeavesArea);
    QVERIFY(bar(80, 20, 120, 20) == LegBar::Avoided);
  }

  // Planes that rise to the east: a leg of 100 m up 10 degrees climbs 100 tan 10 and nothing on the way back.
  void steepGroundAndClimb() {
    const CourseScene scene;
    const CourseGround ground({scene.square(-200, -200, 200, 200)}, {}, Length(), Progress());
    const FieldSetting field(coefficientModel(worldMagneticModel2025(), DecimalYear(2026)), Declination{Angle()});
    const Place a = scene.at(0, 0), east = scene.at(100, 0), north = scene.at(0, 100);
    const auto leg = [&](double slope, double limit, const Place &to) {
      const double rise = std::tan(slope * Angle::pi / 180);
      CourseLegs legs = legsOver(ground, field, scene, [=](double x, double) { return 500 + x * rise; }, limit);
      return legs.between(a, to, ground.toGround(a), ground.toGround(to), {20, 150}, Progress());
    };
    QVERIFY(leg(45, 30, east).bar == LegBar::Steep);
    QVERIFY(leg(45, 30, north).bar == LegBar::Steep); // across the slope too
    QVERIFY(leg(45, 46, east).bar == LegBar::None);
    const CourseLeg gentle = leg(10, 30, east);
    QVERIFY(gentle.bar == LegBar::None);
    VERIFY_NEAR(gentle.out.climb_m, 100 * std::tan(10 * Angle::pi / 180), 0.002, "climb");
    VERIFY_NEAR(gentle.back.climb_m, 0, 0, "climb back");
    QVERIFY(leg(10, 9, east).bar == LegBar::Steep);
  }

  // Heights are lacking under the leg, or only beside it, where the slope is looked up a cell of 5 m away.
  void missingHeights() {
    const CourseScene scene;
    const CourseGround ground({scene.square(-200, -200, 200, 200)}, {}, Length(), Progress());
    const FieldSetting field(coefficientModel(worldMagneticModel2025(), DecimalYear(2026)), Declination{Angle()});
    const auto hole = [](double x, double y) {
      return x > 40 && x < 60 && y > 0 && y < 20 ? std::numeric_limits<double>::quiet_NaN() : 500;
    };
    CourseLegs legs = legsOver(ground, field, scene, hole, 30);
    const auto bar = [&](double north) {
      const Place a = scene.at(0, north), b = scene.at(100, north);
      return legs.between(a, b, ground.toGround(a), ground.toGround(b), {20, 150}, Progress()).bar;
    };
    QVERIFY(bar(10) == LegBar::NoHeight);
    QVERIFY(bar(-4) == LegBar::NoHeight); // 4 m beside the hole: the leg itself has all its heights
    QVERIFY(bar(-20) == LegBar::None);
    QVERIFY(legs.closedAt(scene.at(50, 10)) && !legs.closedAt(scene.at(50, -20)));
  }

  // Cover: a class slows by its factor, water is not walked, unknown ground is walked as without cover unless it is
  // closed; numbers as annotated legs have them.
  void cover() {
    const CourseScene scene;
    const CourseGround ground({scene.square(0, 0, 300, 300)}, {}, Length(), Progress());
    const CoverTable &table = builtInCover(CoverLegend::Own);
    const int thicket = table.find("thicket"), water = table.find("water");
    QVERIFY(thicket >= 0 && water >= 0 && !table.at(water).speed_factor);
    const auto patch = [&](double w, double s, double e, double n, int cover) {
      CoverPatch made{{{}}, cover};
      for (const auto &[x, y] : Outline{{w, s}, {e, s}, {e, n}, {w, n}}) {
        const Place place = scene.at(x, y);
        made.rings[0].push_back({place.longitude.degrees(), place.latitude.degrees()});
      }
      return made;
    };
    const auto map = std::make_shared<CoverMap>(
        std::vector<CoverPatch>{patch(-1, -1, 100, 301, thicket), patch(100, -1, 200, 301, water)});
    const auto source = [&] {
      std::vector<double> extinctions;
      for (const CoverClass &each : table.classes())
        extinctions.push_back(std::log(2.0) / each.sight.metres());
      auto made = std::make_unique<CoverSource>(extinctions);
      made->setPatches(map, [](std::vector<double> &, std::vector<double> &) {});
      return made;
    };
    FieldSetting field(coefficientModel(worldMagneticModel2025(), DecimalYear(2026)), Declination{Angle()});
    Walker quick, slow;
    slow.speed_factor = 0.5;
    slow.bearing_error = Angle::degrees(6);
    const auto tools = [&](bool closeUnknown) {
      CourseLegs::Tools tools;
      tools.ground = &ground;
      tools.legs.field = &field;
      tools.legs.walkers = {quick, slow};
      tools.legs.cover_table = &table;
      tools.cover = source();
      tools.spot_cover = source();
      tools.cover_classes = true;
      tools.close_unknown = closeUnknown;
      return tools;
    };
    const AnnotateSettings same = tools(true).legs;
    CourseLegs legs(tools(true)), over(tools(false));
    const auto between = [&](double x0, double y0, double x1, double y1) {
      const Place a = scene.at(x0, y0), b = scene.at(x1, y1);
      return legs.between(a, b, ground.toGround(a), ground.toGround(b), {20, 250}, Progress());
    };
    const CourseLeg open = between(10, 10, 40, 200);
    QVERIFY(open.bar == LegBar::None);
    VERIFY_NEAR(open.out.seconds / open.out.bare_seconds, 1 / *table.at(thicket).speed_factor, 1e-4, "slowed");
    QVERIFY(between(90, 10, 110, 40).bar == LegBar::NotWalked);
    QVERIFY(between(220, 10, 220, 40).bar == LegBar::NoCover);
    const Place from = scene.at(220, 10), to = scene.at(220, 40);
    const CourseLeg blank = over.between(from, to, ground.toGround(from), ground.toGround(to), {20, 250}, Progress());
    QVERIFY(blank.bar == LegBar::None);
    VERIFY_NEAR(blank.out.unknown_m, 30, 0.0011, "all of it");
    VERIFY_NEAR(blank.out.seconds, blank.out.bare_seconds, 0.0011, "as without cover");
    VERIFY_NEAR(open.out.unknown_m, 0, 0, "all is known");
    QVERIFY(over.closedAt(scene.at(150, 10)) && !over.closedAt(scene.at(250, 10)));
    QVERIFY(legs.closedAt(scene.at(150, 10)) && legs.closedAt(scene.at(250, 10)) && !legs.closedAt(scene.at(50, 10)));

    LegAnnotator annotator(same, nullptr, source());
    const Place a = scene.at(10, 10), b = scene.at(40, 200);
    const auto annotated = annotator.annotate({"EPSG:32621", {{{a, {0, 0}, 0}, {b, {0, 0}, 1}}}}, Progress());
    VERIFY_NEAR(open.out.across_m, annotated[0].by_walker[1].drift.across.metres(), 0.0006, "across");
    VERIFY_NEAR(open.out.seconds, annotated[0].by_walker[1].time->seconds(), 0.0006, "seconds");
    QVERIFY(open.out.reach_m <= legs.farthestReach(open.length_m, Progress()));
  }
};

QTEST_GUILESS_MAIN(CourseLegsTest)
#include "course_legs_test.moc"
