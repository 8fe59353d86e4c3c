// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/aim_off.h"

#include "magnetics/world_magnetic_model.h"
#include "planning/walker_by_chance.h"
#include "support/check_values.h"
#include "support/near.h"

#include <GeographicLib/UTMUPS.hpp>

#include <limits>
#include <stdexcept>

using namespace brushline;
using namespace brushline::test;

namespace {

constexpr double degree = Angle::pi / 180;

// A country of its own, laid out in metres east and north of a place.
struct Country {
  Place origin{Angle::degrees(47), Angle::degrees(9)};

  Place at(double east, double north) const {
    return geodesicDestination(origin, TrueBearing(Angle::radians(std::atan2(east, north))),
                               Length::metres(std::hypot(east, north)));
  }
  Shape line(const std::string &name, const std::vector<std::vector<std::pair<double, double>>> &parts,
             ShapeKind kind = ShapeKind::Line) const {
    Shape shape;
    shape.kind = kind;
    shape.name = name;
    for (const auto &part : parts) {
      shape.parts.emplace_back();
      for (const auto &[east, north] : part)
        shape.parts.back().push_back(at(east, north));
    }
    return shape;
  }
};

// The standard grid around a place, kept up beyond its edge.
Project gridAround(const Place &place) {
  int zone;
  bool north;
  double x, y;
  GeographicLib::UTMUPS::Forward(place.latitude.degrees(), place.longitude.degrees(), zone, north, x, y);
  return [zone, north](std::vector<double> &east, std::vector<double> &up) {
    for (size_t i = 0; i < east.size(); ++i) {
      int found;
      bool foundNorth;
      double e, n;
      GeographicLib::UTMUPS::Forward(up[i], east[i], found, foundNorth, e, n, zone);
      if (foundNorth != north)
        n += north ? -GeographicLib::UTMUPS::UTMShift() : GeographicLib::UTMUPS::UTMShift();
      east[i] = e;
      up[i] = n;
    }
  };
}

// The terrain model's cells are a hundredth of a degree, filled by a function of longitude and latitude.
std::unique_ptr<Terrain> slope(const Place &around, double perDegreeEast) {
  const double left = around.longitude.degrees() - 1, top = around.latitude.degrees() + 1;
  TiledGrid grid({left, top, 0.01, 0.01, 200, 200}, [=](const CellWindow &window) {
    std::vector<float> values;
    for (int64_t row = 0; row < window.rows; ++row)
      for (int64_t column = 0; column < window.columns; ++column)
        values.push_back(float(500 + perDegreeEast * 0.01 * double(window.column + column)));
    return values;
  });
  return std::make_unique<Terrain>(std::move(grid), [](std::vector<double> &, std::vector<double> &) {});
}

// One run of the planner, with everything it borrows.
struct Trial {
  Country country;
  FieldSetting field{coefficientModel(worldMagneticModel2025(), DecimalYear(2026)), Declination{Angle()}};
  AnnotateSettings legs;
  AimRule rule;
  std::vector<Shape> lines, catching;
  std::vector<std::pair<double, double>> destinations;
  double slope_east = 0; // metres a degree; 0: no terrain

  Trial() {
    legs.field = &field;
    legs.walkers.emplace_back();
    legs.compass.north = North::True;
    legs.compass.step = 0.01;
    legs.spacing.most = Length::metres(50);
    rule.whole_dial = false;
  }
  Trial(const Trial &) = delete;

  AimPlan plan(const Progress &progress = Progress()) {
    const LineNet net(lines);
    std::vector<AimDestination> on;
    for (const auto &[east, north] : destinations)
      on.push_back({*net.nearest(country.at(east, north), Length::metres(50)), ""});
    const AimDestinations goals(on);
    const Shapes beyond(catching);
    std::vector<std::unique_ptr<LegAnnotator>> annotators;
    for (size_t i = 0; i < legs.walkers.size(); ++i)
      annotators.push_back(std::make_unique<LegAnnotator>(AimPlanner::annotatorSettings(legs, i), terrain(), nullptr));
    AimPlanner planner({&net, on.empty() ? nullptr : &goals, catching.empty() ? nullptr : &beyond, rule, legs},
                       std::move(annotators), terrain());
    return planner.plan({country.origin, std::nullopt, standardGrid(country.origin), gridAround(country.origin)},
                        progress);
  }
  AimedLeg aimed() {
    AimPlan plan = this->plan();
    if (plan.legs.size() != 1)
      throw std::runtime_error("no leg");
    return plan.legs.front();
  }

private:
  std::unique_ptr<Terrain> terrain() const { return slope_east != 0 ? slope(country.origin, slope_east) : nullptr; }
};

std::vector<std::pair<double, double>> straightTrail(double north) { return {{-20000, north}, {20000, north}}; }
bool said(const AimedLeg &aimed, AimRemark remark) {
  for (const AimWarning &warning : aimed.warnings)
    if (warning.remark == remark)
      return true;
  return false;
}

} // namespace

class AimOffTest : public QObject {
  Q_OBJECT
private slots:
  // A straight trail square to the way, 1000 m off: 20 hops of 50 m at 3 degrees drift 11.708 m (sigma / sqrt n), and
  // one walk of twenty is off by more than z = 1.6449 of them to one side (table of the normal distribution): 19.26 m.
  void straightTrailByHand() {
    for (const AimSide side : {AimSide::Left, AimSide::Right}) {
      Trial trial;
      trial.lines = {trial.country.line("trail", {straightTrail(1000)})};
      trial.destinations = {{0, 1000}};
      trial.rule.side = side;
      const AimedLeg aimed = trial.aimed();
      VERIFY_NEAR(aimed.leg.by_walker[0].drift.across.metres(), 11.708, 0.02, "drift");
      VERIFY_NEAR(*aimed.offset_m, 1.6449 * 11.708, 0.02, "offset");
      VERIFY_NEAR(*aimed.along_line_m, *aimed.offset_m, 0.02, "along");
      VERIFY_NEAR(aimed.right, 0.95, 1e-4, "sure");
      VERIFY_NEAR(aimed.hit, 1, 1e-6, "hit");
      VERIFY_NEAR(aimed.wrong, 0.05, 1e-4, "wrong");
      QCOMPARE(aimed.side, side);
      QCOMPARE(aimed.turn, side == AimSide::Left ? LineTurn::Right : LineTurn::Left);
      VERIFY_NEAR(aimed.leg.true_bearing.angle().signedTurn().degrees(),
                  (side == AimSide::Left ? -1 : 1) * std::atan(*aimed.offset_m / 1000) / degree, 1e-3, "bearing");
      QVERIFY(aimed.warnings.empty());
      // 130 steps over 100 m (FM 3-25.26); paces 5 % short of three sigmas: not before 1.15 times the leg's own.
      QCOMPARE(*aimed.along_paces, std::lround(*aimed.along_line_m * 1.3));
      QVERIFY(aimed.stop_m > 1.15 * aimed.leg.length.metres() && aimed.stop_m < 1.16 * aimed.leg.length.metres());
      VERIFY_NEAR(double(aimed.stop_paces), aimed.stop_m * 1.3, 1.5, "paces to stop");
    }
  }

  // The common error of 3 degrees: 1000 m sin 3 deg = 52.336 m to the side (trigonometry), times 1.6449.
  void commonErrorByHand() {
    Trial trial;
    trial.lines = {trial.country.line("trail", {straightTrail(1000)})};
    trial.destinations = {{0, 1000}};
    trial.legs.walkers[0].bearing_error = Angle::degrees(0.001);
    trial.legs.compass.step = 3 * std::sqrt(12.0); // its rounding errs by 3 degrees, one sigma
    const AimedLeg aimed = trial.aimed();
    VERIFY_NEAR(*aimed.offset_m, 1000 * std::tan(1.6449 * 3 * degree), 0.1, "offset by the angle");
    VERIFY_NEAR(*aimed.offset_m, 1.6449 * 52.336, 0.4, "offset by the sideways error");
  }

  void moreConfidenceMoreOffset() {
    double before = 0;
    // Quantiles of the standard normal table.
    for (const auto &[confidence, z] : {std::pair(0.51, 0.02507), {0.8, 0.8416}, {0.9, 1.2816}, {0.99, 2.3263}}) {
      Trial trial;
      trial.lines = {trial.country.line("trail", {straightTrail(600)})};
      trial.destinations = {{0, 600}};
      trial.rule.confidence = confidence;
      const AimedLeg aimed = trial.aimed();
      VERIFY_NEAR(*aimed.offset_m, z * 600 * 3 * degree / std::sqrt(12.0), 0.02, std::to_string(confidence));
      QVERIFY(*aimed.offset_m > before);
      before = *aimed.offset_m;
    }
  }

  // A dial in steps of 1 and 10 degrees: the aim is the next number beside the destination, and the offset at 1000 m is
  // the tangent of the table.
  void offsetOfDegrees() {
    const CheckValues values("planning/data/deliberate_offset.csv");
    std::map<double, double> ours; // offset by the angle
    for (const CheckRow &row : values.rows()) {
      if (row.text("rule") != "tangent")
        continue;
      Trial trial;
      const double leg = row.number("leg_m");
      trial.lines = {trial.country.line("trail", {straightTrail(leg)})};
      trial.destinations = {{0, leg}};
      trial.rule.whole_dial = true;
      trial.rule.side = AimSide::Right;
      trial.legs.compass.step = row.number("angle_deg");
      trial.legs.walkers[0].bearing_error = Angle::degrees(0.1);
      const AimedLeg aimed = trial.aimed();
      QCOMPARE(*aimed.leg.dial, row.number("angle_deg"));
      VERIFY_CHECK(values.check(row, "offset_m", *aimed.offset_m));
      QVERIFY(aimed.right >= 0.95);
      ours[row.number("angle_deg")] = *aimed.offset_m;
    }
    QCOMPARE(ours.size(), size_t(2));

    // The other rules of the table are told apart from it at 10 degrees, and none is further than 8 percent from
    // another, as the file says. The rules computed for a metre's sake: R sin, and R / 60 a degree.
    int others = 0;
    for (const CheckRow &row : values.rows()) {
      const std::string rule = row.text("rule");
      if (rule == "tangent")
        continue;
      const double offset = row.number("offset_m"), angle = row.number("angle_deg"), leg = row.number("leg_m");
      if (rule == "sine")
        VERIFY_CHECK(values.check(row, "offset_m", leg * std::sin(Angle::degrees(angle).radians())));
      if (rule == "one_in_sixty")
        VERIFY_CHECK(values.check(row, "offset_m", leg * angle / 60));
      if (angle == 10)
        QVERIFY2(std::abs(offset - ours.at(angle)) > 1, rule.c_str());
      QVERIFY2(std::abs(offset / ours.at(angle) - 1) < 0.06, rule.c_str());
      ++others;
    }
    QCOMPARE(others, 6);
  }

  // The help's example: 11.7 m by chance and 1000 m * 2 deg / sqrt(12) = 10.1 m by the dial, in all 15.45 m (root of
  // the squares); 2 degrees are 34.92 m (tangent), and Phi(34.907 / 15.45) = 0.988 (normal table, by hand).
  void exampleOfTheHelp() {
    Trial trial;
    trial.lines = {trial.country.line("trail", {straightTrail(1000)})};
    trial.destinations = {{0, 1000}};
    trial.rule.side = AimSide::Left;
    trial.legs.compass.step = 2;
    VERIFY_NEAR(*trial.aimed().offset_m, 25.4, 0.05, "exact");
    trial.rule.whole_dial = true;
    const AimedLeg aimed = trial.aimed();
    QCOMPARE(*aimed.leg.dial, 358.0);
    VERIFY_NEAR(*aimed.offset_m, 34.92, 0.01, "on the dial");
    VERIFY_NEAR(aimed.right, 0.988, 0.0005, "chance");
    QCOMPARE(aimed.turn, LineTurn::Right);
  }

  // The dial's own number leads there: its rounding takes nothing from the chance.
  void wholeDial() {
    for (const AimSide side : {AimSide::Left, AimSide::Right})
      for (double turned = 0; turned < 4; turned += 0.37) {
        Trial trial;
        trial.lines = {trial.country.line("trail", {{{-3000, 700}, {3000, 700 + 900 * turned}}})};
        trial.destinations = {{100 * turned, 700 + 900 * turned * (3000 + 100 * turned) / 6000}};
        trial.rule.whole_dial = true;
        trial.rule.side = side;
        trial.legs.compass.step = 2;
        const AimedLeg whole = trial.aimed();
        VERIFY_NEAR(turnBetween(whole.leg.true_bearing.degrees(), *whole.leg.dial), 0, 1e-6, std::to_string(turned));
        QVERIFY(whole.right >= 0.95);
        trial.rule.whole_dial = false;
        const AimedLeg exact = trial.aimed();
        QVERIFY(whole.offset->degrees() >= exact.offset->degrees() - 0.01);
        QVERIFY(whole.offset->degrees() <= exact.offset->degrees() + 2.01);
      }
  }

  // A trail from 5 m to 30 m beside the way north, 1000 m off, seen from 0.29 to 1.72 degrees (tangent): of a dial in 2
  // degrees neither 0 nor 2 meets it, so there is no aim; in half degrees there is, and its chances are the number's.
  // The trail bends round in front of the hut, so that one turns right on either side of the straight way, 1.3 degrees.
  // To the left of the hut the next number is 0; 2 is nearer, and leads to the right of it.
  void dialKeepsToTheSide() {
    Trial trial;
    trial.lines = {trial.country.line("trail", {{{-2000, 500}, {100, 500}, {100, 1000}, {-2000, 1000}}})};
    trial.destinations = {{1000 * std::tan(1.3 * degree), 1000}};
    trial.rule.whole_dial = true;
    trial.legs.compass.step = 2;
    for (const AimSide side : {AimSide::Left, AimSide::Choose}) {
      trial.rule.side = side;
      const AimedLeg aimed = trial.aimed();
      QCOMPARE(aimed.side, AimSide::Left);
      QCOMPARE(aimed.turn, LineTurn::Right);
      VERIFY_NEAR(aimed.leg.true_bearing.angle().signedTurn().degrees(), 0, 1e-3, "bearing");
      VERIFY_NEAR(aimed.offset->degrees(), 1.3, 1e-3, "offset");
    }
  }

  void noNumberOfTheDialMeetsTheLine() {
    Trial trial;
    trial.lines = {trial.country.line("trail", {{{5, 1000}, {30, 1000}}})};
    trial.destinations = {{5, 1000}};
    trial.rule.side = AimSide::Right;
    trial.rule.whole_dial = true;
    trial.legs.compass.step = 2;
    const AimPlan off = trial.plan();
    QVERIFY(off.failure == AimFailure::OffTheDial);
    QVERIFY(off.legs.empty());
    trial.destinations.clear();
    QVERIFY(trial.plan().failure == AimFailure::OffTheDial);
    trial.destinations = {{5, 1000}};
    trial.rule.whole_dial = false;
    const double exact = trial.aimed().leg.true_bearing.degrees();
    QVERIFY(exact > 0.29 && exact < 1.72);
    trial.rule.whole_dial = true;
    trial.legs.compass.step = 0.5;
    const AimedLeg half = trial.aimed();
    VERIFY_NEAR(half.leg.true_bearing.degrees(), *half.leg.dial, 1e-6, "on the dial");
    QVERIFY(*half.leg.dial > 0.29 && *half.leg.dial < 1.72);

    // 13 m of trail to the left are less than 25 m to the right, but 0 on the dial meets them. With the example's 15.45
    // m: Phi(5 / 15.45) - Phi(-8 / 15.45) = 0.627 - 0.302 (normal table, by hand).
    trial.lines = {trial.country.line("trail", {{{-8, 1000}, {30, 1000}}})};
    trial.rule.side = AimSide::Choose;
    trial.legs.compass.step = 2;
    const AimedLeg left = trial.aimed();
    QCOMPARE(left.side, AimSide::Left);
    QCOMPARE(left.turn, LineTurn::Right);
    QCOMPARE(std::remainder(*left.leg.dial, 360), 0.0);
    VERIFY_NEAR(left.right, 0.325, 0.003, "chance");
    QVERIFY(said(left, AimRemark::NotSure));
    trial.rule.side = AimSide::Right;
    QVERIFY(trial.plan().failure == AimFailure::OffTheDial);
  }

  void byChance_data() {
    QTest::addColumn<int>("side");
    QTest::addColumn<QString>("trail");
    QTest::addColumn<double>("east");
    QTest::addColumn<double>("north");
    QTest::newRow("straight") << 1 << "-9000 900,9000 900" << 0.0 << 900.0;
    QTest::newRow("oblique") << 2 << "-3000 -1000,500 1000,4000 3000" << 500.0 << 1000.0;
    QTest::newRow("oblique, other side") << 1 << "-3000 -1000,500 1000,4000 3000" << 500.0 << 1000.0;
    QTest::newRow("ends soon") << 1 << "-40 900,0 900,9000 900" << 0.0 << 900.0;
    QTest::newRow("bends") << 0 << "-900 1500,-60 850,-20 790,10 800,80 840,200 700,900 500" << 10.0 << 800.0;
  }
  // 200 000 walks by someone who has no part in the planning: both chances to within a hundredth.
  void byChance() {
    QFETCH(int, side);
    QFETCH(QString, trail);
    QFETCH(double, east);
    QFETCH(double, north);
    std::vector<std::pair<double, double>> points;
    for (const QString &text : trail.split(QLatin1Char(',')))
      points.emplace_back(text.section(QLatin1Char(' '), 0, 0).toDouble(),
                          text.section(QLatin1Char(' '), 1, 1).toDouble());
    Trial trial;
    trial.lines = {trial.country.line("trail", {points})};
    trial.destinations = {{east, north}};
    trial.rule.side = static_cast<AimSide>(side);
    trial.rule.whole_dial = true;
    trial.legs.compass.step = 2;
    const AimedLeg aimed = trial.aimed();

    std::vector<WalkerByChance::Stretch> stretches;
    for (size_t i = 1; i < points.size(); ++i)
      stretches.push_back({{points[i - 1].first, points[i - 1].second}, {points[i].first, points[i].second}});
    // Rounding to 2 degrees: 2 / sqrt(12) (uniform distribution).
    WalkerByChance walker(stretches, {2 / std::sqrt(12.0) * degree, 3 * degree}, 99);
    int met = 0, right = 0;
    constexpr int walks = 200000;
    const double length = aimed.leg.length.metres(), hop = length / std::ceil(length / 50 - 1e-9);
    for (int i = 0; i < walks; ++i) {
      const auto hit = walker.walk(aimed.leg.true_bearing.angle().radians(), {hop}, 1.5 * length);
      if (!hit)
        continue;
      ++met;
      const double beside = hit->second[0] - east; // the destination lies to the west of it when positive
      right += aimed.side == AimSide::Right ? beside > 0 : beside < 0; // these trails run from west to east
    }
    VERIFY_NEAR(aimed.hit, double(met) / walks, 0.01, "hit");
    VERIFY_NEAR(aimed.right, double(right) / walks, 0.01, "right turn");
    QVERIFY(aimed.right <= aimed.hit + 1e-12);
  }

  void choosesTheShorterWay() {
    Trial trial; // the trail comes nearer to the east
    trial.lines = {trial.country.line("trail", {{{-3000, 2500}, {0, 1000}, {3000, -500}}})};
    trial.destinations = {{0, 1000}};
    QCOMPARE(trial.aimed().side, AimSide::Right);
    trial.lines = {trial.country.line("trail", {{{-3000, -500}, {0, 1000}, {3000, 2500}}})};
    QCOMPARE(trial.aimed().side, AimSide::Left);
  }

  void downhillOfTwoAlike() {
    Trial trial;
    trial.lines = {trial.country.line("trail", {straightTrail(1000)})};
    trial.destinations = {{0, 1000}};
    trial.slope_east = 2000; // higher to the east: from there one walks down to the west
    const AimedLeg down = trial.aimed();
    QCOMPARE(down.side, AimSide::Right);
    QVERIFY(down.leg.profile);
    trial.slope_east = -2000;
    QCOMPARE(trial.aimed().side, AimSide::Left);
  }

  void destinationAtTheEnd() {
    Trial trial;
    trial.lines = {trial.country.line("trail", {{{0, 1000}, {5000, 1000}}})};
    trial.destinations = {{0, 1000}};
    const AimedLeg aimed = trial.aimed();
    QCOMPARE(aimed.side, AimSide::Right);
    VERIFY_NEAR(aimed.right, 0.95, 1e-4, "sure");
    VERIFY_NEAR(aimed.hit, 0.95, 1e-4, "the rest passes the end");
    trial.rule.side = AimSide::Left;
    const AimPlan plan = trial.plan();
    QVERIFY(plan.failure == AimFailure::NoAim);
    QVERIFY(plan.legs.empty());
  }

  // A trail so short on the side asked for that no aim is sure: the best is told with what it is worth.
  void notSure() {
    Trial trial;
    trial.lines = {trial.country.line("trail", {{{-20, 1000}, {3000, 1000}}})};
    trial.destinations = {{0, 1000}};
    trial.rule.side = AimSide::Left;
    const AimedLeg aimed = trial.aimed();
    QVERIFY(said(aimed, AimRemark::NotSure));
    // 20 m wide, aimed at its middle: Phi(10 / 11.708) - Phi(-10 / 11.708) = 0.607 (normal table, by hand).
    VERIFY_NEAR(aimed.right, 0.607, 0.002, "the best there is");
    VERIFY_NEAR(*aimed.offset_m, 10, 0.3, "the middle");
    trial.rule.side = AimSide::Choose;
    QCOMPARE(trial.aimed().side, AimSide::Right);
    QVERIFY(trial.aimed().warnings.empty());
  }

  void anotherLineInFront() {
    Trial trial;
    trial.lines = {trial.country.line("trail", {straightTrail(1000)}),
                   trial.country.line("ditch", {straightTrail(500)})};
    trial.destinations = {{0, 1000}};
    QVERIFY(trial.plan().failure == AimFailure::NoAim);
    trial.rule.tell_apart = true;
    QVERIFY(trial.aimed().right > 0.9499);
    // One that hides a part only makes it less sure, and is named.
    trial.rule.tell_apart = false;
    trial.rule.side = AimSide::Right;
    trial.lines[1] = trial.country.line("ditch", {{{-2000, 500}, {-4, 500}}});
    const AimedLeg aimed = trial.aimed();
    QVERIFY(aimed.right >= 0.9499);
    QVERIFY(said(aimed, AimRemark::OtherFirst));
    QCOMPARE(aimed.warnings.front().line, size_t(1));
  }

  void piecesOfTheSameTrail() {
    Trial trial;
    trial.lines = {trial.country.line("trail", {{{-20000, 1000}, {-5, 1000}}}),
                   trial.country.line("trail", {{{20000, 1000}, {-5, 1000}}})};
    trial.destinations = {{0, 1000}};
    VERIFY_NEAR(*trial.aimed().offset_m, 1.6449 * 11.708, 0.02, "as if drawn in one");
    // With a gap the far piece leads nowhere.
    trial.lines[0] = trial.country.line("trail", {{{-20000, 1000}, {-6, 1000}}});
    trial.rule.side = AimSide::Left;
    const AimedLeg aimed = trial.aimed();
    QVERIFY(said(aimed, AimRemark::NotSure));
    QVERIFY(aimed.hit > 0.9 && aimed.right < 0.3);
  }

  void crossesItself() {
    Trial trial; // a loop beyond the destination
    trial.lines = {
        trial.country.line("trail", {{{-3000, 800}, {200, 800}, {300, 1000}, {100, 1000}, {150, 700}, {3000, 650}}})};
    trial.destinations = {{0, 800}};
    const AimedLeg aimed = trial.aimed();
    QVERIFY(aimed.right >= 0.9499);
    trial.rule.side = AimSide::Right;
    const AimedLeg right = trial.aimed();
    QCOMPARE(right.turn, LineTurn::Left);
    QVERIFY(*right.along_line_m < 40);
  }

  void loopRoundTheStart() {
    Trial trial;
    trial.lines = {trial.country.line("loop", {{{-500, -500}, {500, -500}, {500, 500}, {-500, 500}, {-500, -500}}})};
    trial.destinations = {{0, 500}};
    for (const AimSide side : {AimSide::Left, AimSide::Right}) {
      trial.rule.side = side;
      const AimedLeg aimed = trial.aimed();
      QVERIFY(aimed.right >= 0.9499);
      VERIFY_NEAR(aimed.hit, 1, 1e-9, "it is all round");
      QCOMPARE(aimed.turn, side == AimSide::Left ? LineTurn::Right : LineTurn::Left);
      QVERIFY(*aimed.along_line_m < 30);
    }
    trial.destinations.clear();
    const AimedLeg any = trial.aimed();
    VERIFY_NEAR(any.leg.length.metres(), 500, 0.1, "the nearest side");
    QCOMPARE(any.turn, LineTurn::None);
    QCOMPARE(any.side, AimSide::Choose);
    QVERIFY(!any.offset_m && !any.along_line_m);
  }

  // A fence of 100 m at 500 m: its middle, Phi(50 / s) - Phi(-50 / s) with s = 500 m * 3 deg / sqrt(10) = 8.28 m, is
  // all but certain; so is a wide range, of which the shortest way counts. A fence of 16 m is met at its middle.
  void surestWithoutDestinations() {
    Trial trial;
    trial.lines = {trial.country.line("fence", {{{40, 500}, {140, 620}}})};
    const AimedLeg wide = trial.aimed();
    QVERIFY(wide.hit >= 0.9985);
    QVERIFY(wide.leg.length.metres() < std::hypot(90, 560));
    trial.lines = {trial.country.line("fence", {{{-8, 500}, {8, 500}}})};
    const AimedLeg narrow = trial.aimed();
    VERIFY_NEAR(narrow.leg.true_bearing.angle().signedTurn().degrees(), 0, 0.1, "the middle");
    // Phi(8 / 8.279) - Phi(-8 / 8.279) = 0.666 (normal table, by hand).
    VERIFY_NEAR(narrow.hit, 0.666, 0.003, "chance");
    QVERIFY(said(narrow, AimRemark::MayMiss));
    // Of two lines the surer one, though it is farther.
    trial.lines.push_back(trial.country.line("road", {{{-3000, -900}, {3000, -900}}}));
    QCOMPARE(trial.aimed().line, size_t(1));
    trial.rule.tell_apart = true;
    QCOMPARE(trial.aimed().line, size_t(1));
  }

  void catching() {
    Trial trial;
    trial.lines = {trial.country.line("trail", {straightTrail(1000)})};
    trial.destinations = {{0, 1000}};
    trial.catching = {
        trial.country.line("near side", {straightTrail(900)}),
        trial.country.line("lake", {{{-500, 1400}, {500, 1400}, {0, 2000}, {-500, 1400}}}, ShapeKind::Polygon),
        trial.country.line("road", {straightTrail(1200)})};
    const AimedLeg aimed = trial.aimed();
    QVERIFY(aimed.catching);
    QCOMPARE(aimed.catching->shape, size_t(2));
    VERIFY_NEAR(aimed.catching->beyond_m, 200 / std::cos(aimed.offset->radians()), 0.1, "200 m square to the trail");
    trial.catching.pop_back();
    QCOMPARE(trial.aimed().catching->shape, size_t(1));
    trial.rule.reach = Length::metres(1300);
    QVERIFY(!trial.aimed().catching);
  }

  void failures() {
    Trial trial;
    trial.lines = {trial.country.line("trail", {straightTrail(1000)})};
    trial.rule.reach = Length::metres(900);
    QVERIFY(trial.plan().failure == AimFailure::NoLine);
    trial.destinations = {{0, 1000}};
    QVERIFY(trial.plan().failure == AimFailure::NoDestination);
    trial.rule.reach = Length::metres(3000);
    trial.lines = {trial.country.line("trail", {{{-500, 0.4}, {500, 0.4}, {500, 1000}, {0, 1000}}})};
    QVERIFY(trial.plan().failure == AimFailure::OnTheLine);
    trial.destinations.clear();
    QVERIFY(trial.plan().failure == AimFailure::OnTheLine);
    for (const double confidence : {0.0, 0.5, 1.0, std::numeric_limits<double>::quiet_NaN()}) {
      trial.rule.confidence = confidence;
      QVERIFY_EXCEPTION_THROWN(trial.plan(), std::invalid_argument);
    }
  }

  // Across the 180th meridian, at the pole and far south: the same numbers as elsewhere.
  void anywhere_data() {
    QTest::addColumn<double>("latitude");
    QTest::addColumn<double>("longitude");
    QTest::newRow("antimeridian") << 62.0 << 179.999;
    QTest::newRow("antimeridian, west") << -17.0 << -179.9999;
    QTest::newRow("near the pole") << 89.9999 << 30.0;
    QTest::newRow("pole") << 90.0 << 0.0;
    QTest::newRow("far south") << -84.0 << 100.0;
  }
  void anywhere() {
    QFETCH(double, latitude);
    QFETCH(double, longitude);
    Trial trial;
    trial.country.origin = {Angle::degrees(latitude), Angle::degrees(longitude)};
    std::vector<std::pair<double, double>> trail; // in steps: a straight line here is no straight line on the Earth
    for (double east = -2000; east <= 2000; east += 40)
      trail.emplace_back(east, 1000);
    trial.lines = {trial.country.line("trail", {trail})};
    trial.destinations = {{0, 1000}};
    trial.rule.side = AimSide::Right;
    const AimedLeg aimed = trial.aimed();
    VERIFY_NEAR(*aimed.offset_m, 1.6449 * 11.708, 0.02, "offset");
    VERIFY_NEAR(*aimed.along_line_m, *aimed.offset_m, 0.02, "along");
    QCOMPARE(aimed.turn, LineTurn::Left);
  }

  void noDialInABlackout() {
    Trial trial; // beside the magnetic pole; a compass set for true north needs none
    trial.legs.compass.north = North::Magnetic;
    trial.country.origin = {Angle::degrees(85.7), Angle::degrees(139)};
    trial.lines = {trial.country.line("trail", {straightTrail(1000)})};
    trial.destinations = {{0, 1000}};
    trial.rule.whole_dial = true;
    const AimedLeg aimed = trial.aimed();
    QVERIFY(!aimed.leg.dial);
    QVERIFY(!aimed.leg.warnings.empty());
  }

  void eachWalkerTheirOwnOffset() {
    Trial trial;
    trial.lines = {trial.country.line("trail", {straightTrail(1000)})};
    trial.destinations = {{0, 1000}};
    trial.legs.walkers.emplace_back();
    trial.legs.walkers[1].bearing_error = Angle::degrees(6);
    trial.legs.walkers[1].steps_per_100m = 200;
    const AimPlan plan = trial.plan();
    QCOMPARE(plan.legs.size(), size_t(2));
    VERIFY_NEAR(*plan.legs[1].offset_m, 2 * *plan.legs[0].offset_m, 0.05, "twice the error");
    QVERIFY(plan.legs[1].stop_paces > plan.legs[0].stop_paces);
    QCOMPARE(plan.legs[1].walker, size_t(1));
  }

  void nearestDestination() {
    Trial trial;
    trial.lines = {trial.country.line("trail", {straightTrail(1000)})};
    trial.destinations = {{-900, 1000}, {300, 1000}, {301, 1000}};
    QCOMPARE(*trial.aimed().destination, size_t(1));
  }

  void cancel() {
    struct Countdown : Progress {
      mutable int left;
      explicit Countdown(int checks) : left(checks) {}
      bool cancelled() const override { return left-- <= 0; }
    };
    Trial trial;
    trial.lines = {trial.country.line("trail", {straightTrail(1000)})};
    trial.destinations = {{0, 1000}};
    int checks = 0;
    for (bool finished = false; !finished; ++checks) {
      QVERIFY(checks < 1000);
      try {
        finished = !trial.plan(Countdown(checks)).legs.empty();
      } catch (const Cancelled &) {
      }
    }
    QVERIFY(checks > 3);
  }
};

QTEST_GUILESS_MAIN(AimOffTest)
#include "aim_off_test.moc"
