// SPDX-License-Identifier: GPL-2.0-or-later
// Ground in cells, least times over it, and sequences of legs.
#include "fuzz_land.h"

#include "planning/plan_legs.h"

#include <stdexcept>

using namespace brushline;

namespace {

CellPosition cell(fuzz::Input &input, const EffortGrid &grid, double beyond) {
  const double columns = double(grid.columns()), rows = double(grid.rows());
  const auto one = [&](double most) {
    return input.flag() ? double(input.upTo(size_t(most))) / 2
                        : input.between(-beyond, most - (beyond > 0 ? -beyond : 1e-9));
  };
  const double column = one(columns);
  return {column, one(rows)};
}

void checkPlan(const LegPlan &plan, const EffortGrid &grid, const PaceTable &pace, const LegRule &rule,
               CellPosition start, CellPosition end) {
  PROMISED(plan.points.size() >= 2 && plan.points.size() <= size_t(rule.most_legs) + 1);
  PROMISED(plan.points.front().at.column == start.column && plan.points.front().at.row == start.row);
  PROMISED(plan.points.back().at.column == end.column && plan.points.back().at.row == end.row);
  double walking = 0, turns = 0;
  for (size_t i = 1; i < plan.points.size(); ++i) {
    walking += grid.legSeconds(plan.points[i - 1].at, plan.points[i].at, pace);
    if (i + 1 < plan.points.size())
      turns += rule.turn.seconds() * (plan.points[i].place >= 0 ? rule.share_at_place : 1);
  }
  PROMISED(std::isfinite(walking));
  PROMISED(std::abs(walking - plan.walking.seconds()) <= 1e-6 * (1 + walking));
  PROMISED(std::abs(walking + turns - plan.cost.seconds()) <= 1e-6 * (1 + walking + turns));
}

} // namespace

FUZZ(input) {
  const bool level = input.flag();
  EffortGrid grid(int64_t(1 + input.upTo(31)), int64_t(1 + input.upTo(31)), Length::metres(input.scaled(0.1, 1000)),
                  level);
  std::vector<int> kinds{EffortGrid::barrier};
  for (size_t count = 1 + input.upTo(4); count > 0; --count) {
    std::optional<double> speed;
    if (input.upTo(5) > 0)
      speed = input.between(CoverClass::speedLimits.least, CoverClass::speedLimits.most);
    kinds.push_back(grid.addKind({std::to_string(count), speed}));
  }
  const size_t period = 1 + input.upTo(12), closed = input.upTo(8);
  std::vector<float> heights{0};
  for (size_t count = input.upTo(10); count > 0; --count)
    heights.push_back(input.upTo(7) == 0 ? std::numeric_limits<float>::quiet_NaN() : float(input.between(-100, 4000)));
  for (int64_t row = 0; row < grid.rows(); ++row)
    for (int64_t column = 0; column < grid.columns(); ++column) {
      const size_t at = size_t(row) * 13 + size_t(column) * 7;
      grid.setKind(column, row,
                   closed > 0 && at % (closed * 5) == 1 ? kinds[0] : kinds[1 + at / period % (kinds.size() - 1)]);
      if (!level)
        grid.setHeight(column, row, heights[at % heights.size()]);
    }
  if (!level && input.flag()) {
    const double steepest = input.between(0, 3);
    for (int64_t row = 0; row < grid.rows(); ++row)
      grid.closeSteep(row, steepest);
  }
  for (size_t count = input.upTo(4); count > 0; --count) {
    std::vector<CellPosition> line;
    for (size_t points = input.upTo(6); points > 0; --points)
      line.push_back(cell(input, grid, 50));
    grid.addBarrierLine(line);
    if (line.size() > 2 && input.flag()) {
      line.push_back(line.front());
      grid.addBarrierLine(line);
      grid.closeInside({line});
    }
  }
  grid.finishBarriers();

  const PaceTable pace(fuzz::walker(input));
  const CellPosition start = cell(input, grid, 0), end = cell(input, grid, 0);
  if (!grid.contains(start) || !grid.contains(end))
    return;
  const double straight = grid.legSeconds(start, end, pace);
  PROMISED(straight >= 0);
  const bool same = start.column == end.column && start.row == end.row;
  PROMISED(same || !grid.crossesBarrier(start, end) || std::isinf(straight));
  grid.legSeconds(start, cell(input, grid, 50), pace, input.scaled(1e-3, 1e6));

  EffortSurface surface(grid, pace);
  const LegRule rule{Duration::seconds(input.between(0, 600)), input.between(0, 1), 1 + int(input.upTo(7))};
  std::vector<TurnPoint> places;
  for (size_t count = input.upTo(6); count > 0; --count)
    places.push_back({cell(input, grid, 0), input.flag() ? int(count) : TurnPoint::nameless});
  places.erase(
      std::remove_if(places.begin(), places.end(), [&](const TurnPoint &point) { return !grid.contains(point.at); }),
      places.end());
  try {
    const EffortSurface::Goal goal{end, Duration::seconds(input.between(0, 3600))};
    surface.search({start}, input.flag() ? &goal : nullptr, fuzz::Patience(1000));
    PROMISED(surface.secondsTo(end) >= 0 && surface.leastSecondsTo(end) >= 0);
    const std::vector<CellPosition> way = surface.wayTo(end);
    for (const CellPosition &at : way)
      PROMISED(grid.contains(at));
    surface.enclosure(start);
    const LegPlanner planner(grid, pace, rule);
    if (!way.empty())
      for (const CellPosition &at : planner.pulledTight(way, fuzz::Patience(1000)))
        PROMISED(grid.contains(at));
    if (const auto plan = planner.bestOf(start, end, places, {}, fuzz::Patience(1000))) {
      checkPlan(*plan, grid, pace, rule, start, end);
      PROMISED(plan->cost.seconds() <= straight * (1 + 1e-9) + 1e-9);
    } else {
      PROMISED(std::isinf(straight));
    }
    if (const auto plan = planner.plan(surface, start, end, places, fuzz::Patience(300)))
      checkPlan(*plan, grid, pace, rule, start, end);
  } catch (const Cancelled &) {
  }
}
