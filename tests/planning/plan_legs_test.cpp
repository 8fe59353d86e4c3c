// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/plan_legs.h"
#include "support/near.h"
#include "support/random.h"

#include <algorithm>
#include <cmath>

using namespace brushline;

namespace {
const Walker walker;
const Progress progress;

//! Patches of ground, some of it closed; open in two corners.
EffortGrid patches(test::Random &random, int side, int patch, double closedShare, bool level = true) {
  EffortGrid grid(side, side, Length::metres(5), level);
  const int kinds[] = {grid.addKind({"a", 1.0}), grid.addKind({"b", 0.3}), grid.addKind({"c", 1.4}),
                       grid.addKind({"d", 0.7})};
  const int across = side / patch + 1;
  std::vector<int> of(size_t(across * across));
  for (int &kind : of)
    kind = random.between(0, 1) < closedShare ? int(EffortGrid::barrier) : kinds[int(random.between(0, 4))];
  of.front() = kinds[0];
  for (int row = 0; row < side; ++row)
    for (int column = 0; column < side; ++column) {
      const bool corner = row > side - patch && column > side - patch;
      grid.setKind(column, row, corner ? kinds[0] : of[size_t((row / patch) * across + column / patch)]);
      if (!level)
        grid.setHeight(column, row, float(8 * std::sin(column * 0.1) * std::cos(row * 0.13)));
    }
  return grid;
}

//! The least cost of all sequences, by trying each: what bestOf() must equal.
double bruteForce(const EffortGrid &grid, const PaceTable &pace, const LegRule &rule, CellPosition at, CellPosition end,
                  const std::vector<TurnPoint> &candidates, std::vector<bool> &used, int legsLeft) {
  double best = grid.legSeconds(at, end, pace);
  for (size_t i = 0; legsLeft > 1 && i < candidates.size(); ++i) {
    if (used[i])
      continue;
    const double leg = grid.legSeconds(at, candidates[i].at, pace);
    if (!std::isfinite(leg))
      continue;
    used[i] = true;
    best = std::min(best, leg + rule.turn.seconds() * (candidates[i].place >= 0 ? rule.share_at_place : 1) +
                              bruteForce(grid, pace, rule, candidates[i].at, end, candidates, used, legsLeft - 1));
    used[i] = false;
  }
  return best;
}

double costOf(const LegPlan &plan, const EffortGrid &grid, const PaceTable &pace, const LegRule &rule) {
  double cost = 0;
  for (size_t i = 1; i < plan.points.size(); ++i) {
    cost += grid.legSeconds(plan.points[i - 1].at, plan.points[i].at, pace);
    if (i + 1 < plan.points.size())
      cost += rule.turn.seconds() * (plan.points[i].place >= 0 ? rule.share_at_place : 1);
  }
  return cost;
}
} // namespace

class PlanLegsTest : public QObject {
  Q_OBJECT
private slots:
  void bestOfEqualsBruteForce() {
    test::Random random(11);
    const PaceTable pace(walker);
    int open = 0, turned = 0;
    for (int map = 0; map < 120; ++map) {
      const EffortGrid grid = patches(random, 40, 1 + map % 9, 0.15, map % 2 == 0);
      const LegRule rule{Duration::seconds(random.between(0, 40)), 0.5, 1 + map % 5};
      std::vector<TurnPoint> candidates;
      for (int i = 0; i < 7; ++i)
        candidates.push_back({{random.between(0, 40), random.between(0, 40)}, i % 3 == 0 ? i : TurnPoint::nameless});
      const CellPosition start{0.7, 0.6}, end{39.2, 39.5};
      std::vector<bool> used(candidates.size(), false);
      const double expected = bruteForce(grid, pace, rule, start, end, candidates, used, rule.most_legs);
      const auto plan = LegPlanner(grid, pace, rule).bestOf(start, end, candidates, {}, progress);
      QCOMPARE(plan.has_value(), std::isfinite(expected));
      if (!plan)
        continue;
      ++open;
      turned += plan->points.size() > 2;
      VERIFY_NEAR(plan->cost.seconds(), expected, 1e-9 * expected, std::to_string(map));
      VERIFY_NEAR(costOf(*plan, grid, pace, rule), expected, 1e-6 * expected, std::to_string(map));
      QVERIFY(int(plan->points.size()) - 1 <= rule.most_legs);
      // The surface's bound leaves the same, on ground in patches of a few cells and more.
      if (map % 9 >= 4) {
        EffortSurface surface(grid, pace);
        surface.search({start}, nullptr, progress);
        LegPlanner::Bound bound;
        bound.surface = &surface;
        const auto bounded = LegPlanner(grid, pace, rule).bestOf(start, end, candidates, bound, progress);
        VERIFY_AT(bounded.has_value(), std::to_string(map));
        VERIFY_NEAR(bounded->cost.seconds(), expected, 1e-9 * expected, std::to_string(map));
      }
    }
    QVERIFY(open > 40 && turned > 15);
  }

  void straightOnEvenGround() {
    test::Random random(5);
    EffortGrid grid(200, 200, Length::metres(5), true);
    const int kind = grid.addKind({"open", 0.8});
    for (int row = 0; row < 200; ++row)
      for (int column = 0; column < 200; ++column)
        grid.setKind(column, row, kind);
    const PaceTable pace(walker);
    for (int i = 0; i < 20; ++i) {
      const CellPosition start{random.between(0, 200), random.between(0, 200)},
          end{random.between(0, 200), random.between(0, 200)};
      EffortSurface surface(grid, pace);
      surface.search({start}, nullptr, progress);
      const auto plan = LegPlanner(grid, pace, {Duration(), 0.5, 8}).plan(surface, start, end, {}, progress);
      QVERIFY(plan);
      VERIFY_NEAR(plan->walking.seconds(), grid.legSeconds(start, end, pace), 1e-6 * plan->walking.seconds(),
                  std::to_string(i));
    }
  }

  // Snell's law, by the turning point of a plan of two legs. Computed here: the least over the border.
  void refraction() {
    EffortGrid grid(300, 300, Length::metres(2), true);
    const int fast = grid.addKind({"fast", 1.0}), slow = grid.addKind({"slow", 0.5});
    for (int row = 0; row < 300; ++row)
      for (int column = 0; column < 300; ++column)
        grid.setKind(column, row, column < 150 ? fast : slow);
    const PaceTable pace(walker);
    const CellPosition start{10.5, 20.5}, end{290.5, 280.5};
    double best = HUGE_VAL;
    for (double y = 0; y <= 300; y += 0.01)
      best =
          std::min(best, std::hypot(150 - start.column, y - start.row) + 2 * std::hypot(end.column - 150, end.row - y));
    EffortSurface surface(grid, pace);
    surface.search({start}, nullptr, progress);
    const auto plan = LegPlanner(grid, pace, {Duration::seconds(5), 0.5, 4}).plan(surface, start, end, {}, progress);
    QVERIFY(plan);
    QCOMPARE(plan->points.size(), size_t(3));
    VERIFY_NEAR(plan->walking.seconds() / (best * 2 * double(pace.level())), 1, 0.001, "time");
    const CellPosition turn = plan->points[1].at;
    const double in = (turn.row - start.row) / std::hypot(turn.column - start.column, turn.row - start.row);
    const double out = (end.row - turn.row) / std::hypot(end.column - turn.column, end.row - turn.row);
    VERIFY_NEAR(in / out, 2, 0.02, "ratio of the sines");
  }

  // Against the best over all cells as turning places; how far the corridor's lattice falls short.
  void nearTheBestOverAllCells() {
    test::Random random(23);
    const PaceTable pace(walker);
    double worst = 0;
    int compared = 0;
    for (int map = 0; map < 12; ++map) {
      const EffortGrid grid = patches(random, 30, 6, 0.1);
      const LegRule rule{Duration::seconds(20), 0.5, 5};
      const CellPosition start{0.7, 0.6}, end{29.2, 29.5};
      EffortSurface surface(grid, pace);
      surface.search({start}, nullptr, progress);
      const auto plan = LegPlanner(grid, pace, rule).plan(surface, start, end, {}, progress);
      std::vector<TurnPoint> cells;
      for (int row = 0; row < 30; ++row)
        for (int column = 0; column < 30; ++column)
          if (grid.isOpen(column, row))
            cells.push_back({{column + 0.5, row + 0.5}});
      const auto best = LegPlanner(grid, pace, rule).bestOf(start, end, cells, {}, progress);
      if (!best)
        continue;
      VERIFY_AT(plan.has_value(), std::to_string(map));
      ++compared;
      worst = std::max(worst, plan->cost.seconds() / best->cost.seconds() - 1);
    }
    qInfo("at most %.2f percent dearer than the best over all cells, %d maps", 100 * worst, compared);
    QVERIFY(compared >= 8);
    QVERIFY(worst < 0.02);
  }

  // The same where much is closed in small patches: few ways are left, and the lattice misses some of them.
  void nearTheBestOnBrokenGround() {
    test::Random random(24);
    const PaceTable pace(walker);
    double worst = 0;
    int compared = 0, dearer = 0, missed = 0;
    for (int map = 0; map < 200; ++map) {
      const int side = int(random.between(8, 17)), patch = int(random.between(1, 6));
      const EffortGrid grid = patches(random, side, patch, 0.25);
      const LegRule rule{Duration::seconds(random.between(0, 60)), 0.5, int(random.between(2, 6))};
      const CellPosition start{0.7, 0.6}, end{side - 0.8, side - 0.5};
      if (!grid.isOpen(side - 1, side - 1))
        continue;
      EffortSurface surface(grid, pace);
      surface.search({start}, nullptr, progress);
      std::vector<TurnPoint> cells;
      for (int row = 0; row < side; ++row)
        for (int column = 0; column < side; ++column)
          if (grid.isOpen(column, row))
            cells.push_back({{column + 0.5, row + 0.5}});
      const auto best = LegPlanner(grid, pace, rule).bestOf(start, end, cells, {}, progress);
      if (!best)
        continue;
      ++compared;
      const auto plan = LegPlanner(grid, pace, rule).plan(surface, start, end, {}, progress);
      missed += !plan;
      if (!plan)
        continue;
      const double more = plan->cost.seconds() / best->cost.seconds() - 1;
      dearer += more > 0.02;
      worst = std::max(worst, more);
    }
    qInfo("%d of %d maps more than 2 percent dearer, at most %.2f; no plan on %d", dearer, compared, 100 * worst,
          missed);
    QVERIFY(compared >= 80);
    QVERIFY(worst < 0.2);
    QVERIFY(dearer * 10 <= compared && missed * 50 <= compared);
  }

  void monotoneAndTheSameAgain() {
    test::Random random(31);
    const PaceTable pace(walker);
    for (int map = 0; map < 15; ++map) {
      const EffortGrid grid = patches(random, 60, 10, 0.1);
      const CellPosition start{0.7, 0.6}, end{59.2, 59.5};
      EffortSurface surface(grid, pace);
      surface.search({start}, nullptr, progress);
      std::vector<TurnPoint> candidates;
      for (int i = 0; i < 80; ++i)
        candidates.push_back({{random.between(0, 60), random.between(0, 60)}});
      double before = HUGE_VAL;
      for (int legs = 1; legs <= 6; ++legs) { // more legs never cost more
        const auto plan =
            LegPlanner(grid, pace, {Duration::seconds(10), 0.5, legs}).bestOf(start, end, candidates, {}, progress);
        QVERIFY(!(plan ? plan->cost.seconds() > before : std::isfinite(before)));
        before = plan ? plan->cost.seconds() : before;
      }
      double walking = 0;
      size_t turns = 1000;
      for (const double turn : {0.0, 5.0, 20.0, 60.0, 300.0}) { // dearer turns: fewer of them, and more walking
        const auto plan =
            LegPlanner(grid, pace, {Duration::seconds(turn), 0.5, 8}).bestOf(start, end, candidates, {}, progress);
        if (!plan)
          continue;
        QVERIFY(plan->walking.seconds() >= walking * (1 - 1e-9));
        QVERIFY(plan->points.size() <= turns);
        walking = plan->walking.seconds();
        turns = plan->points.size();
      }
      const LegPlanner planner(grid, pace, {Duration::seconds(10), 0.5, 8});
      const auto one = planner.plan(surface, start, end, candidates, progress),
                 other = planner.plan(surface, start, end, candidates, progress);
      QCOMPARE(one.has_value(), other.has_value());
      for (size_t i = 0; one && i < one->points.size(); ++i) {
        QCOMPARE(one->points[i].at.column, other->points[i].at.column);
        QCOMPARE(one->points[i].at.row, other->points[i].at.row);
      }
    }
  }

  void legsNeverCrossBarriers() {
    test::Random random(41);
    const PaceTable pace(walker);
    int planned = 0;
    for (int map = 0; map < 30; ++map) {
      EffortGrid grid = patches(random, 60, 15, 0);
      std::vector<std::vector<CellPosition>> lines;
      for (int i = 0; i < 8; ++i) {
        lines.push_back(
            {{random.between(5, 55), random.between(5, 55)}, {random.between(5, 55), random.between(5, 55)}});
        grid.addBarrierLine(lines.back());
      }
      grid.finishBarriers();
      const CellPosition start{0.7, 0.6}, end{59.2, 59.5};
      EffortSurface surface(grid, pace);
      surface.search({start}, nullptr, progress);
      const auto plan = LegPlanner(grid, pace, {Duration::seconds(5), 0.5, 12}).plan(surface, start, end, {}, progress);
      if (!plan)
        continue;
      ++planned;
      for (size_t i = 1; i < plan->points.size(); ++i)
        for (const auto &line : lines) {
          const auto side = [](CellPosition u, CellPosition v, CellPosition w) {
            return (v.column - u.column) * (w.row - u.row) - (v.row - u.row) * (w.column - u.column) > 0;
          };
          const CellPosition a = plan->points[i - 1].at, b = plan->points[i].at;
          QVERIFY(
              !(side(a, b, line[0]) != side(a, b, line[1]) && side(line[0], line[1], a) != side(line[0], line[1], b)));
        }
    }
    QVERIFY(planned > 20);
  }

  void turnsAtPlacesAndWhatIsForbidden() {
    EffortGrid grid(60, 60, Length::metres(5), true);
    const int kind = grid.addKind({"open", 1.0});
    for (int row = 0; row < 60; ++row)
      for (int column = 0; column < 60; ++column)
        grid.setKind(column, row, row < 40 && column == 30 ? int(EffortGrid::barrier) : kind);
    const PaceTable pace(walker);
    const CellPosition start{10.5, 20.5}, end{50.5, 20.5};
    EffortSurface surface(grid, pace);
    surface.search({start}, nullptr, progress);
    const LegRule rule{Duration::minutes(2), 0.5, 8};
    const TurnPoint pine{{30.5, 41.5}, 3};
    const auto plan = LegPlanner(grid, pace, rule).plan(surface, start, end, {pine}, progress);
    QVERIFY(plan);
    QCOMPARE(plan->points.size(), size_t(3));
    QCOMPARE(plan->points[1].place, 3);
    const auto forbidden = LegPlanner(grid, pace, rule, [](CellPosition, CellPosition) { return false; });
    QVERIFY(!forbidden.plan(surface, start, end, {pine}, progress));
    QVERIFY(!LegPlanner(grid, pace, {Duration(), 0.5, 1}).plan(surface, start, end, {}, progress)); // needs two legs
    QVERIFY(!LegPlanner(grid, pace, rule).bestOf({-1, 2}, end, {}, {}, progress));
  }

  void cancelled() {
    struct Stop : Progress {
      bool cancelled() const override { return true; }
    };
    test::Random random(2);
    const EffortGrid grid = patches(random, 40, 8, 0);
    const PaceTable pace(walker);
    QVERIFY_EXCEPTION_THROWN(LegPlanner(grid, pace, {}).bestOf({1, 1}, {39, 39}, {}, {}, Stop()), Cancelled);
  }
};

QTEST_GUILESS_MAIN(PlanLegsTest)
#include "plan_legs_test.moc"
