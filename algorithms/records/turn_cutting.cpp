// SPDX-License-Identifier: GPL-2.0-or-later
#include "records/turn_cutting.h"

#include "quantities/angle.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace brushline {

namespace {
constexpr double never = std::numeric_limits<double>::infinity();
constexpr double found = 10;    // what a leg found is worth
constexpr double missing = 1;   // what one that is not costs
constexpr double notTheEnd = 4; // the track begins before the route, or goes on after it
constexpr double standAtTurn = -1;
constexpr double partLeg = 4;                          // the track ends on the leg
constexpr double knee = 1.5;                           // sigmas, beyond which costs grow evenly
constexpr double mostTurned = 75, mostPartTurned = 35; // degrees
constexpr double leastStretch = 0.35, mostStretch = 2.5;
constexpr double leastPart = 0.1, mostPart = 0.85;
constexpr double independent_m = 30; // from there on the track strays anew
constexpr double strayShare = 0.02;  // of a leg's length, besides the fixes' own error
constexpr double excessCost = 0.1;   // a metre
constexpr double noiseShare = 6;     // the radius of smoothing holds so many sigmas of the noise of running means
constexpr size_t mostPairs = 4000000, mostPairsEach = 40000; // in all, or for each leg when that is more
constexpr size_t mostBetween = 200;                          // nodes put into one gap

double distance(const PlanePoint &a, const PlanePoint &b) { return std::hypot(b.east - a.east, b.north - a.north); }
double bearing(const PlanePoint &a, const PlanePoint &b) {
  return Angle::radians(std::atan2(b.east - a.east, b.north - a.north)).degrees();
}

double longTailed(double sigmas) {
  const double x = std::abs(sigmas);
  return x <= knee ? x * x / 2 : knee * (x - knee / 2);
}

double medianOf(std::vector<double> values) {
  std::sort(values.begin(), values.end());
  const size_t half = values.size() / 2;
  return values.size() % 2 ? values[half] : (values[half - 1] + values[half]) / 2;
}

struct Node {
  PlanePoint at;
  size_t before, after; // fixes
  bool stand;
};

//! Smoothed track, with sums over its nodes so that any stretch's spread is known at once.
struct Nodes {
  std::vector<Node> all;
  struct Sums {
    double n, x, y, xx, xy, yy, way;
  };
  std::vector<Sums> sums; // up to and including a node

  void add(const Node &node, double weight) {
    // Coordinates from the first node, lest large squares cancel badly.
    const PlanePoint o = all.empty() ? node.at : all.front().at;
    const double x = node.at.east - o.east, y = node.at.north - o.north;
    Sums s = sums.empty() ? Sums{} : sums.back();
    const double way = all.empty() ? 0 : distance(all.back().at, node.at);
    sums.push_back({s.n + weight, s.x + weight * x, s.y + weight * y, s.xx + weight * x * x, s.xy + weight * x * y,
                    s.yy + weight * y * y, s.way + way});
    all.push_back(node);
  }

  //! The mean square of the distances of the nodes between two others from the line through those, square metres.
  double spread(size_t i, size_t j, double length) const {
    const Sums &a = sums[i], &b = sums[j];
    const double n = b.n - a.n;
    if (n <= 0 || length <= 0)
      return 0;
    const PlanePoint &o = all.front().at, &from = all[i].at, &to = all[j].at;
    const double nx = (to.north - from.north) / length, ny = -(to.east - from.east) / length;
    const double c = nx * (from.east - o.east) + ny * (from.north - o.north);
    const double squares = nx * nx * (b.xx - a.xx) + 2 * nx * ny * (b.xy - a.xy) + ny * ny * (b.yy - a.yy) -
                           2 * c * (nx * (b.x - a.x) + ny * (b.y - a.y)) + n * c * c;
    return std::max(0.0, squares / n);
  }
};

// Fixes that err anew each second make a way of many metres where nobody walked: running means, over as many fixes as
// that noise takes, but over no more than the radius of the way.
std::vector<CleanFix> steadied(const std::vector<CleanFix> &fixes, double radius) {
  constexpr size_t lag = 8, widest = 60;
  std::vector<double> bends, steps;
  for (size_t i = 1; i + 1 < fixes.size(); ++i) {
    const PlanePoint &a = fixes[i - 1].at, &b = fixes[i].at, &c = fixes[i + 1].at;
    bends.push_back(std::abs(a.east - 2 * b.east + c.east));
    bends.push_back(std::abs(a.north - 2 * b.north + c.north));
    if (i + lag <= fixes.size())
      steps.push_back(distance(a, fixes[i - 1 + lag].at) / double(lag));
  }
  if (bends.empty() || steps.empty())
    return fixes;
  const double noise = medianOf(std::move(bends)) / (std::sqrt(6.0) * 0.6745); // of a normal second difference
  const double step = medianOf(std::move(steps));
  const double wanted = std::pow(noiseShare * noise / radius, 2);
  const size_t reach = size_t(std::min({wanted, radius / std::max(step, 1e-9), double(widest)}) / 2); // to either side
  std::vector<CleanFix> result = fixes;
  size_t first = 0; // of a stretch without stand and gap
  while (first < fixes.size()) {
    size_t end = first + 1;
    while (end < fixes.size() && !fixes[first].stand && !fixes[end].stand && !fixes[end].after_gap)
      ++end;
    std::vector<PlanePoint> sums{{0, 0}};
    for (size_t i = first; i < end; ++i)
      sums.push_back({sums.back().east + fixes[i].at.east - fixes[first].at.east,
                      sums.back().north + fixes[i].at.north - fixes[first].at.north});
    for (size_t i = 0; i < end - first; ++i) {
      const size_t by = std::min({reach, i, end - first - 1 - i});
      const PlanePoint &low = sums[i - by], &high = sums[i + by + 1];
      const double n = double(2 * by + 1);
      result[first + i].at = {fixes[first].at.east + (high.east - low.east) / n,
                              fixes[first].at.north + (high.north - low.north) / n};
    }
    first = end;
  }
  return result;
}

Nodes smooth(const CleanTrack &track, double radius, const Progress &progress) {
  Nodes nodes;
  const std::vector<CleanFix> fixes = steadied(track.fixes, radius);
  const auto put = [&](const Node &node) {
    if (!nodes.all.empty()) {
      const Node last = nodes.all.back();
      const double gap = distance(last.at, node.at);
      const size_t count = gap > 3 * radius ? std::min(mostBetween, size_t(gap / (2 * radius))) : 0;
      for (size_t k = 1; k <= count; ++k) {
        const double t = double(k) / double(count + 1);
        nodes.add(
            {{last.at.east + t * (node.at.east - last.at.east), last.at.north + t * (node.at.north - last.at.north)},
             last.after,
             node.before,
             false},
            0);
      }
    }
    nodes.add(node, 1);
  };
  for (size_t i = 0; i < fixes.size();) {
    progress.check();
    if (fixes[i].stand) {
      put({fixes[i].at, i, i, true});
      ++i;
      continue;
    }
    PlanePoint mean = fixes[i].at;
    double n = 1;
    size_t next = i + 1;
    const auto within = [&](size_t k) {
      return k < fixes.size() && !fixes[k].stand && !fixes[k].after_gap && distance(mean, fixes[k].at) <= radius;
    };
    // One fix outside ends nothing: noise does that.
    for (; within(next) || (next < fixes.size() && !fixes[next].stand && !fixes[next].after_gap && within(next + 1));
         ++next) {
      ++n;
      mean.east += (fixes[next].at.east - mean.east) / n;
      mean.north += (fixes[next].at.north - mean.north) / n;
    }
    // The track's own ends are nodes too, where the mean of fixes would cut them off.
    if (i == 0 && n > 1)
      put({fixes.front().at, 0, 0, false});
    put({mean, i, next - 1, false});
    if (next == fixes.size() && n > 1)
      put({fixes.back().at, next - 1, next - 1, false});
    i = next;
  }
  return nodes;
}

//! The plan, turned and stretched.
struct Meant {
  double turned = 0, stretched = 1; // degrees; by how much
  double sigma_brg = 15, sigma_len = 0.2;
};

class Cutter {
public:
  Cutter(const Nodes &nodes, const std::vector<MeantLeg> &legs, const CuttingRule &rule, const Progress &progress)
      : mNodes(nodes), mLegs(legs), mRule(rule), mProgress(progress), mCandidates(legs.size() + 1) {
    for (const MeantLeg &leg : legs)
      mDirections.push_back({distance(leg.from, leg.to), bearing(leg.from, leg.to)});
    for (size_t k = 0; k <= legs.size(); ++k) {
      const PlanePoint arrive = k > 0 ? legs[k - 1].to : legs[0].from;
      for (size_t i = 0; i < nodes.all.size(); ++i)
        if (distance(nodes.all[i].at, arrive) <= rule.tolerance_m)
          mCandidates[k].push_back(i);
    }
  }

  size_t pairs() const {
    size_t sum = 0;
    for (size_t k = 1; k < mCandidates.size(); ++k)
      sum += mCandidates[k - 1].size() * mCandidates[k].size();
    return sum;
  }

  struct Path {
    size_t first_leg = 0;
    std::vector<size_t> nodes;
    bool partial = false;
    double score = 0;
  };

  std::optional<Path> best(const Meant &meant) const {
    const size_t count = mLegs.size(), last = mNodes.all.size() - 1;
    struct State {
      double cost;
      size_t from; // index among the candidates before; none: the track starts here
    };
    constexpr size_t none = std::numeric_limits<size_t>::max();
    std::vector<std::vector<State>> states(count + 1);
    double least = 0; // nothing found
    size_t endTurn = none, endFrom = none;
    bool endPartial = false;
    for (size_t k = 0; k <= count; ++k) {
      const auto &here = mCandidates[k];
      states[k].resize(here.size());
      for (size_t j = 0; j < here.size(); ++j) {
        mProgress.check();
        State best{startCost(k, here[j]), none};
        if (k > 0) {
          const auto &before = mCandidates[k - 1];
          for (size_t i = 0; i < before.size() && before[i] <= here[j]; ++i) {
            const double cost = states[k - 1][i].cost;
            if (cost - found >= best.cost)
              continue;
            const double all = cost + legCost(k - 1, before[i], here[j], meant, best.cost - cost);
            if (all < best.cost)
              best = {all, i};
          }
          if (best.from != none && here[j] != last && mNodes.all[here[j]].stand && !mLegs[k - 1].any_way)
            best.cost += standAtTurn;
        }
        states[k][j] = best;
        const double all = best.cost + missing * double(count - k) + (here[j] == last ? 0 : notTheEnd);
        if (best.from != none && !mLegs[k - 1].any_way && all < least)
          least = all, endTurn = k, endFrom = j, endPartial = false;
      }
      if (k < count && !mLegs[k].any_way) // the track may end on leg k
        for (size_t i = 0; i < here.size(); ++i) {
          const double all = states[k][i].cost + partCost(k, here[i], last, meant) + missing * double(count - k - 1);
          if (all < least)
            least = all, endTurn = k, endFrom = i, endPartial = true;
        }
    }
    if (endTurn == none)
      return std::nullopt;
    Path path;
    path.score = -least;
    path.partial = endPartial;
    if (endPartial)
      path.nodes.push_back(last);
    size_t k = endTurn;
    for (size_t j = endFrom;; j = states[k--][j].from) {
      path.nodes.push_back(mCandidates[k][j]);
      if (states[k][j].from == none)
        break;
    }
    path.first_leg = k;
    std::reverse(path.nodes.begin(), path.nodes.end());
    return path;
  }

  //! Turned and stretched as a path's legs are.
  std::optional<Meant> meantBy(const Path &path) const {
    std::vector<double> turns, stretches;
    const size_t whole = path.nodes.size() - 1 - (path.partial ? 1 : 0);
    for (size_t i = 0; i < whole; ++i) {
      const MeantLeg &leg = mLegs[path.first_leg + i];
      if (leg.any_way)
        continue;
      const PlanePoint &a = mNodes.all[path.nodes[i]].at, &b = mNodes.all[path.nodes[i + 1]].at;
      const auto &[length, direction] = mDirections[path.first_leg + i];
      turns.push_back(std::remainder(bearing(a, b) - direction, 360));
      stretches.push_back(std::log(distance(a, b) / length));
    }
    if (turns.size() < 2)
      return std::nullopt;
    Meant meant;
    meant.turned = medianOf(turns);
    meant.stretched = std::exp(medianOf(stretches));
    meant.sigma_brg = 8;
    meant.sigma_len = 0.125;
    return meant;
  }

private:
  double startCost(size_t turn, size_t node) const {
    if (turn == mLegs.size() || mLegs[turn].any_way)
      return never;
    // One starts where the route starts, as well as one finds it.
    const double off = distance(mNodes.all[node].at, mLegs[turn].from) / (mRule.tolerance_m / 4);
    return longTailed(off) + missing * double(turn) + (node == 0 ? 0 : notTheEnd);
  }

  // Without the length.
  double wayCost(size_t leg, size_t i, size_t j, double length, const Meant &meant, double most = mostTurned) const {
    const double off =
        std::remainder(bearing(mNodes.all[i].at, mNodes.all[j].at) - mDirections[leg].bearing - meant.turned, 360);
    if (std::abs(off) > most)
      return never;
    const double stray = mRule.error_m * mRule.error_m + std::pow(strayShare * length, 2);
    const double excess = mNodes.sums[j].way - mNodes.sums[i].way - length;
    return longTailed(off / meant.sigma_brg) +
           length / independent_m * std::log1p(mNodes.spread(i, j, length) / (2 * stray)) +
           excessCost * std::max(0.0, excess);
  }

  // Or never, when it is not less than a bound.
  double legCost(size_t leg, size_t i, size_t j, const Meant &meant, double bound) const {
    if (mLegs[leg].any_way)
      return 0;
    const double length = distance(mNodes.all[i].at, mNodes.all[j].at);
    const double wanted = mDirections[leg].length * meant.stretched;
    if (!(length >= leastStretch * wanted && length <= mostStretch * wanted))
      return never;
    const double stretch = longTailed(std::log(length / wanted) / meant.sigma_len);
    return stretch - found < bound ? stretch + wayCost(leg, i, j, length, meant) - found : never;
  }

  double partCost(size_t leg, size_t i, size_t last, const Meant &meant) const {
    const double length = distance(mNodes.all[i].at, mNodes.all[last].at);
    const double wanted = mDirections[leg].length * meant.stretched;
    if (i >= last || !(length >= std::max(leastPart * wanted, 3 * mRule.error_m) && length <= mostPart * wanted))
      return never;
    return partLeg + wayCost(leg, i, last, length, meant, mostPartTurned) - found;
  }

  const Nodes &mNodes;
  const std::vector<MeantLeg> &mLegs;
  const CuttingRule &mRule;
  const Progress &mProgress;
  struct Direction {
    double length, bearing; // metres, degrees on the plane
  };
  std::vector<Direction> mDirections;           // by leg
  std::vector<std::vector<size_t>> mCandidates; // nodes, by turn
};
} // namespace

std::optional<TrackCuts> cutAtTurns(const CleanTrack &track, const std::vector<MeantLeg> &legs, const CuttingRule &rule,
                                    const Progress &progress) {
  if (track.fixes.size() < 2)
    return std::nullopt;
  double shortest = never;
  for (const MeantLeg &leg : legs)
    if (!leg.any_way)
      shortest = std::min(shortest, distance(leg.from, leg.to));
  double radius = std::min(2 * rule.error_m, std::max(1.0, shortest / 8));
  for (;; radius *= 2) {
    const Nodes nodes = smooth(track, radius, progress);
    if (nodes.all.size() < 2)
      return std::nullopt;
    const Cutter cutter(nodes, legs, rule, progress);
    if (cutter.pairs() > std::max(mostPairs, mostPairsEach * legs.size()) && radius < rule.tolerance_m)
      continue;
    auto path = cutter.best({});
    if (!path)
      return std::nullopt;
    if (const auto meant = cutter.meantBy(*path))
      if (auto again = cutter.best(*meant))
        path = std::move(again);
    TrackCuts result;
    result.first_leg = path->first_leg;
    result.partial = path->partial;
    result.score = path->score;
    result.blur_m = radius;
    for (const size_t node : path->nodes) {
      const Node &at = nodes.all[node];
      result.cuts.push_back({at.at, at.before, at.after, node == 0 || node + 1 == nodes.all.size()});
    }
    return result;
  }
}

} // namespace brushline
