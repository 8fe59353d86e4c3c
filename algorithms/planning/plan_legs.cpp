// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/plan_legs.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

namespace brushline {

namespace {
constexpr double never = std::numeric_limits<double>::infinity();
constexpr int stations = 32;                                     // of the first lattice
constexpr int coarseRows = 8;                                    // to each side of the middle
constexpr double rowsBeside[] = {0, -1, 1, -2, 2, -4, 4, -7, 7}; // in its spacings
constexpr size_t endNode = 0, startNode = 1;

double between(CellPosition a, CellPosition b) { return std::hypot(b.column - a.column, b.row - a.row); }
} // namespace

//! The search for the best sequence over some candidates. Costs are seconds from a node on to the end.
class LegPlanner::Search {
public:
  Search(const LegPlanner &planner, CellPosition start, CellPosition end, const std::vector<TurnPoint> &candidates,
         const Bound &bound)
      : mPlanner(planner), mBest(bound.cost) {
    const EffortGrid &grid = planner.mGrid;
    mLeastPerCell = double(grid.leastSlowness()) * double(planner.mPace.least()) * grid.cell().metres() * (1 - 1e-6);
    mNodes.push_back({end});
    mNodes.push_back({start});
    for (const TurnPoint &point : candidates)
      if (grid.contains(point.at))
        mNodes.push_back(point);
    for (const TurnPoint &node : mNodes) {
      const double straight = between(start, node.at) * mLeastPerCell;
      mLeast.push_back(bound.surface ? std::max(straight, bound.surface->leastSecondsTo(node.at) * (1 - bound.slack))
                                     : straight);
      mMost.push_back(bound.surface ? bound.surface->secondsTo(node.at) * (1 + bound.slack) : never);
    }
    mLeast[startNode] = mMost[startNode] = 0;
    mLegs.assign(mNodes.size() * mNodes.size(), {-1, false});
  }

  std::optional<LegPlan> run(const Progress &progress) {
    const size_t count = mNodes.size();
    const auto mostLegs = size_t(std::max(0, mPlanner.mRule.most_legs));
    std::vector<std::vector<double>> costs{std::vector<double>(count, never)};
    std::vector<std::vector<size_t>> onwards{std::vector<size_t>(count, endNode)};
    costs[0][endNode] = 0;
    for (size_t legs = 1; legs <= mostLegs; ++legs) {
      costs.push_back(costs.back());
      onwards.emplace_back(count, unchanged);
      bool better = false;
      for (size_t node = startNode; node < count; ++node) { // the start first: what it finds spares the others work
        progress.check();
        better = extend(node, legs, costs, onwards) || better;
      }
      mBest = std::min(mBest, costs[legs][startNode]);
      if (!better)
        break;
    }
    const size_t last = costs.size() - 1;
    if (!(costs[last][startNode] < never))
      return std::nullopt;

    LegPlan plan;
    plan.cost = Duration::seconds(costs[last][startNode]);
    size_t node = startNode, legs = last;
    double seconds = 0;
    for (;;) {
      plan.points.push_back(mNodes[node]);
      if (node == endNode)
        break;
      while (onwards[legs][node] == unchanged)
        --legs;
      const size_t next = onwards[legs][node];
      seconds += double(mLegs[node * count + next].seconds);
      node = next;
      --legs;
    }
    plan.walking = Duration::seconds(seconds);
    return plan;
  }

private:
  static constexpr size_t unchanged = size_t(-1);
  struct Leg {
    double seconds; // or more than that, when not exact; negative: not known
    bool exact;
  };

  // Best ways on from a node by one leg more; whether there is a better one than by fewer.
  bool extend(size_t node, size_t legs, std::vector<std::vector<double>> &costs,
              std::vector<std::vector<size_t>> &onwards) {
    const size_t count = mNodes.size();
    // Somebody has to come here from the start first.
    const double before = node == startNode ? 0 : mLeast[node] + mPlanner.turnSeconds(mNodes[node]);
    double &cost = costs[legs][node];
    mOrder.clear();
    for (size_t next = 0; next < count; ++next) {
      const double onward = costs[legs - 1][next];
      const bool news = legs == 1 ? next == endNode : onwards[legs - 1][next] != unchanged && next != endNode;
      if (!news || next == node || next == startNode || !(onward < never))
        continue;
      const double after = onward + (next == endNode ? 0 : mPlanner.turnSeconds(mNodes[next]));
      const double least = leastLeg(node, next) + after;
      if (least < std::min(cost, mBest - before))
        mOrder.push_back({least, next});
    }
    std::sort(mOrder.begin(), mOrder.end());
    bool better = false;
    for (const auto &[least, next] : mOrder) {
      const double limit = std::min(cost, mBest - before);
      if (!(least < limit))
        break;
      const double after = costs[legs - 1][next] + (next == endNode ? 0 : mPlanner.turnSeconds(mNodes[next]));
      const double total = legSeconds(node, next, limit - after) + after;
      if (total < limit) {
        cost = total;
        onwards[legs][node] = next;
        better = true;
        if (node == startNode)
          mBest = std::min(mBest, total);
      }
    }
    return better;
  }

  double leastLeg(size_t from, size_t to) const {
    const Leg &leg = mLegs[from * mNodes.size() + to];
    double least = std::max(leg.seconds, between(mNodes[from].at, mNodes[to].at) * mLeastPerCell);
    if (!leg.exact && mMost[from] < never)
      least = std::max(least, mLeast[to] - mMost[from]);
    return least;
  }

  double legSeconds(size_t from, size_t to, double budget) {
    Leg &leg = mLegs[from * mNodes.size() + to];
    if (leg.exact || leg.seconds >= budget)
      return leg.seconds;
    leg.seconds = mPlanner.mGrid.legSeconds(mNodes[from].at, mNodes[to].at, mPlanner.mPace, budget);
    leg.exact = leg.seconds < budget || leg.seconds == never;
    if (leg.seconds < budget && mPlanner.mAllowed && !mPlanner.mAllowed(mNodes[from].at, mNodes[to].at))
      leg.seconds = never;
    return leg.seconds;
  }

  const LegPlanner &mPlanner;
  double mBest;
  double mLeastPerCell;
  std::vector<TurnPoint> mNodes;
  std::vector<double> mLeast, mMost; // seconds from the start to a node, by any way; of the soonest way
  std::vector<Leg> mLegs;
  std::vector<std::pair<double, size_t>> mOrder;
};

std::optional<LegPlan> LegPlanner::bestOf(CellPosition start, CellPosition end,
                                          const std::vector<TurnPoint> &candidates, const Bound &bound,
                                          const Progress &progress) const {
  if (!mGrid.contains(start) || !mGrid.contains(end))
    return std::nullopt;
  return Search(*this, start, end, candidates, bound).run(progress);
}

std::vector<CellPosition> LegPlanner::pulledTight(const std::vector<CellPosition> &way,
                                                  const Progress &progress) const {
  std::vector<CellPosition> bends;
  if (way.empty())
    return bends;
  const auto open = [&](size_t a, size_t b) {
    progress.check();
    return mGrid.legSeconds(way[a], way[b], mPace) < never && (!mAllowed || mAllowed(way[a], way[b]));
  };
  bends.push_back(way.front());
  for (size_t at = 0; at + 1 < way.size();) {
    size_t reach = 1; // as far as is known to be open
    while (at + 2 * reach < way.size() && open(at, at + 2 * reach))
      reach *= 2;
    size_t low = at + reach, high = std::min(at + 2 * reach, way.size());
    while (high - low > 1) {
      const size_t middle = (low + high) / 2;
      (open(at, middle) ? low : high) = middle;
    }
    at = low;
    bends.push_back(way[at]);
  }
  return bends;
}

namespace {

// The places of a lattice along a way: stations at even distances, and rows to both sides of them.
std::vector<TurnPoint> latticeAlong(const std::vector<CellPosition> &way, double &spacing) {
  std::vector<TurnPoint> lattice;
  double length = 0;
  for (size_t i = 1; i < way.size(); ++i)
    length += between(way[i - 1], way[i]);
  spacing = std::max(1.0, length / stations);
  double next = spacing, gone = 0;
  for (size_t i = 1; i < way.size(); ++i) {
    const double step = between(way[i - 1], way[i]);
    for (; step > 0 && gone + step >= next && next < length - 1e-9; next += spacing) {
      const double share = (next - gone) / step;
      const CellPosition at{way[i - 1].column + share * (way[i].column - way[i - 1].column),
                            way[i - 1].row + share * (way[i].row - way[i - 1].row)};
      // Across the way as it runs over the spacing around, not cell by cell.
      const auto reach = size_t(spacing);
      const CellPosition &a = way[i > reach ? i - reach : 0], &b = way[std::min(i + reach, way.size() - 1)];
      const double run = between(a, b);
      if (!(run > 0))
        continue;
      for (const double row : rowsBeside)
        lattice.push_back({{at.column - row * spacing * (b.row - a.row) / run,
                            at.row + row * spacing * (b.column - a.column) / run}});
    }
    gone += step;
  }
  return lattice;
}

// The points of a way that lie farther than a tolerance from the straight lines between those kept.
void keepBends(const std::vector<CellPosition> &way, size_t first, size_t last, double tolerance,
               std::vector<TurnPoint> &bends) {
  std::vector<std::pair<size_t, size_t>> open{{first, last}};
  while (!open.empty()) {
    const auto [a, b] = open.back();
    open.pop_back();
    double farthest = tolerance;
    size_t bend = a;
    const double run = between(way[a], way[b]);
    for (size_t i = a + 1; i < b; ++i) {
      const double away = run > 0 ? std::abs((way[b].column - way[a].column) * (way[i].row - way[a].row) -
                                             (way[b].row - way[a].row) * (way[i].column - way[a].column)) /
                                        run
                                  : between(way[a], way[i]);
      if (away > farthest) {
        farthest = away;
        bend = i;
      }
    }
    if (bend == a)
      continue;
    bends.push_back({way[bend]});
    open.push_back({a, bend});
    open.push_back({bend, b});
  }
}

} // namespace

std::optional<LegPlan> LegPlanner::plan(const EffortSurface &surface, CellPosition start, CellPosition end,
                                        const std::vector<TurnPoint> &places, const Progress &progress) const {
  const std::vector<CellPosition> way = surface.wayTo(end);
  if (way.size() < 2)
    return std::nullopt;
  Bound bound;
  bound.surface = &surface;

  // 1. The way's own bends: always open, unless they are too many.
  std::vector<TurnPoint> candidates;
  const std::vector<CellPosition> bends = pulledTight(way, progress);
  for (size_t i = 1; i + 1 < bends.size(); ++i)
    candidates.push_back({bends[i]});
  for (double tolerance = 2;; tolerance *= 2) {
    std::vector<TurnPoint> kept;
    keepBends(way, 0, way.size() - 1, tolerance, kept);
    if (kept.size() > size_t(2 * stations))
      continue;
    candidates.insert(candidates.end(), kept.begin(), kept.end());
    break;
  }
  candidates.insert(candidates.end(), places.begin(), places.end());
  std::optional<LegPlan> best = bestOf(start, end, candidates, bound, progress);
  const auto better = [&](const std::vector<TurnPoint> &over) {
    bound.cost = best ? best->cost.seconds() : never;
    auto found = bestOf(start, end, over, bound, progress);
    if (!found || !(found->cost.seconds() < bound.cost))
      return;
    best = std::move(found);
  };

  // 2. The corridor, and a coarse lattice over all the land between, in case few legs do better far from the quickest
  // way; of that only what the time left lets one turn at.
  double spacing = 1;
  const double apart = between(start, end), wide = apart / coarseRows;
  const double fastest = double(mGrid.leastSlowness()) * double(mPace.least()) * mGrid.cell().metres();
  for (int row = -coarseRows; row <= coarseRows; ++row)
    for (int column = -coarseRows; column <= coarseRows; ++column) {
      const CellPosition at{(start.column + end.column) / 2 + column * wide * 0.7,
                            (start.row + end.row) / 2 + row * wide * 0.7};
      if (mGrid.contains(at) && mGrid.isOpen(int64_t(at.column), int64_t(at.row)) &&
          (!best || surface.leastSecondsTo(at) + between(at, end) * fastest < best->cost.seconds()))
        candidates.push_back({at});
    }
  for (const TurnPoint &point : latticeAlong(way, spacing))
    if (mGrid.contains(point.at) && mGrid.isOpen(int64_t(point.at.column), int64_t(point.at.row)))
      candidates.push_back(point);
  better(candidates);
  if (!best)
    return std::nullopt;

  // 3. Round the turns found: once all together, since legs fewer and longer may then do, and then one by one.
  constexpr int around = 2; // lattice points to each side
  std::vector<TurnPoint> near = places;
  for (size_t i = 1; i + 1 < best->points.size(); ++i)
    for (int row = -around; row <= around; ++row)
      for (int column = -around; column <= around; ++column) {
        TurnPoint point = best->points[i];
        point.at = {point.at.column + column * spacing / 3, point.at.row + row * spacing / 3};
        if (row != 0 || column != 0)
          point.place = TurnPoint::nameless;
        if (mGrid.contains(point.at) && mGrid.isOpen(int64_t(point.at.column), int64_t(point.at.row)))
          near.push_back(point);
      }
  for (const double step : {spacing, spacing / 3})
    shiftTurns(*best, places, step, progress);
  for (size_t i = 1; i + 1 < best->points.size(); ++i)
    near.push_back(best->points[i]);
  better(near);
  do {
    spacing /= 3;
    shiftTurns(*best, places, spacing, progress);
  } while (spacing > 0.45);
  return best;
}

void LegPlanner::shiftTurns(LegPlan &plan, const std::vector<TurnPoint> &places, double spacing,
                            const Progress &progress) const {
  constexpr int around = 2, mostRounds = 8; // lattice points to each side; rounds over all turns
  std::vector<TurnPoint> &points = plan.points;
  const auto seconds = [&](CellPosition from, CellPosition to, double budget) {
    progress.check();
    const double walked = budget > 0 ? mGrid.legSeconds(from, to, mPace, budget) : never;
    return walked < budget && mAllowed && !mAllowed(from, to) ? never : walked;
  };
  for (int round = 0; round < mostRounds; ++round) {
    bool moved = false;
    for (size_t i = 1; i + 1 < points.size(); ++i) {
      const CellPosition before = points[i - 1].at, after = points[i + 1].at;
      double cost = seconds(before, points[i].at, never) + seconds(points[i].at, after, never) + turnSeconds(points[i]);
      if (seconds(before, after, cost) < cost) { // no turn at all
        points.erase(points.begin() + long(i));
        moved = true;
        --i;
        continue;
      }
      const CellPosition middle = points[i].at;
      const auto consider = [&](const TurnPoint &other) {
        if (!mGrid.contains(other.at) || !mGrid.isOpen(int64_t(other.at.column), int64_t(other.at.row)))
          return;
        const double turn = turnSeconds(other);
        const double first = seconds(before, other.at, cost - turn);
        const double total = first + turn < cost ? first + turn + seconds(other.at, after, cost - turn - first) : never;
        if (!(total < cost * (1 - 1e-9)))
          return;
        cost = total;
        points[i] = other;
        moved = true;
      };
      for (const TurnPoint &place : places)
        if (between(place.at, middle) <= 3 * spacing)
          consider(place);
      for (int row = -around; row <= around; ++row)
        for (int column = -around; column <= around; ++column)
          if (row != 0 || column != 0)
            consider({{middle.column + column * spacing, middle.row + row * spacing}});
    }
    if (!moved)
      break;
  }
  double walking = 0, turns = 0;
  for (size_t i = 1; i < points.size(); ++i) {
    walking += seconds(points[i - 1].at, points[i].at, never);
    turns += i + 1 < points.size() ? turnSeconds(points[i]) : 0;
  }
  plan.walking = Duration::seconds(walking);
  plan.cost = Duration::seconds(walking + turns);
}

} // namespace brushline
