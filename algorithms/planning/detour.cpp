// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/detour.h"

#include "planning/leg_frame.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <tuple>
#include <utility>

namespace brushline {

namespace {

constexpr double slack = 0.001; // metres; what is not seen as an obstacle
constexpr Length mergedBelow = Length::metres(0.001);
constexpr int freeSteps = 64;      // of a search before it is hurried
constexpr double leastBetween = 1; // metres between two detours: less is no way to come back to the line

struct Interval {
  double low, high;
};

// An edge of an obstacle in the leg's coordinates.
struct Edge {
  LegPoint from, to;
  size_t shape;

  double least() const { return std::min(from.along, to.along); }
  double most() const { return std::max(from.along, to.along); }
};

// Which coordinate obstacles are projected on.
enum class Axis { Along, Across };

double distanceTo(const Edge &edge, double along) {
  const double dx = edge.to.along - edge.from.along, dy = edge.to.across - edge.from.across;
  const double squared = dx * dx + dy * dy;
  const double px = along - edge.from.along, py = -edge.from.across;
  const double share = squared > 0 ? std::min(std::max((px * dx + py * dy) / squared, 0.0), 1.0) : 0;
  return std::hypot(px - share * dx, py - share * dy);
}

// Part of an edge between two bounds of v, as an interval of u; false when there is none.
bool clip(double u0, double v0, double u1, double v1, const Interval &bounds, Interval &result) {
  if (v0 > v1) {
    std::swap(u0, u1);
    std::swap(v0, v1);
  }
  if (v1 < bounds.low || v0 > bounds.high)
    return false;
  const double du = u1 - u0, dv = v1 - v0;
  const double a = v0 < bounds.low ? u0 + du * (bounds.low - v0) / dv : u0;
  const double b = v1 > bounds.high ? u0 + du * (bounds.high - v0) / dv : u1;
  result = {std::min(a, b), std::max(a, b)};
  return true;
}

// Sorted, and what touches joined.
std::vector<Interval> joined(std::vector<Interval> all, double touching) {
  std::sort(all.begin(), all.end(),
            [](const Interval &a, const Interval &b) { return std::tie(a.low, a.high) < std::tie(b.low, b.high); });
  std::vector<Interval> result;
  for (const Interval &one : all) {
    if (!result.empty() && one.low <= result.back().high + touching)
      result.back().high = std::max(result.back().high, one.high);
    else
      result.push_back(one);
  }
  return result;
}

/**
 * The obstacles about a leg, and what they leave free of it.
 */
class Surroundings {
public:
  Surroundings(const Place &from, const Place &to, const Obstacles &obstacles, const DetourRule &rule,
               const Progress &progress)
      : mFrom(from), mTo(to), mFrame(from, to), mObstacles(obstacles), mProgress(progress),
        mClearance(rule.clearance.metres()), mMostOut(rule.most_out.metres()) {}

  DetouredLeg detoured();

private:
  struct Box {
    double leaves, returns, out;
  };
  struct Search {
    std::optional<Box> box;
    Refusal refusal = Refusal::TooFarOut;
  };

  void load(double reach);
  std::pair<const Edge *, const Edge *> edgesBetween(const Interval &along) const;
  bool inside(double along, double across) const {
    return !mObstacles.holding(mFrame.toPlace({along, across})).empty();
  }
  std::vector<Interval> blocked(Axis axis, double sign, const Interval &strip, const Interval &window) const;
  Interval component(const Interval &run, double sign, double out, const Interval &room) const;
  double levelOver(const Interval &sides, double sign, double out) const;
  Search search(const Interval &run, Side side, const Interval &room) const;
  EndState stateOf(const Place &end, double along) const;
  std::vector<size_t> obstaclesIn(const Interval &along, double sign, double out) const;
  std::vector<LegPiece> pieces(const std::vector<Detour> &detours) const;

  Place mFrom, mTo;
  LegFrame mFrame;
  const Obstacles &mObstacles;
  const Progress &mProgress;
  double mClearance, mMostOut;
  std::vector<Edge> mEdges; // by least()
  double mLongestEdge = 0;  // along
};

// Fills mEdges with all that may come within reach of the leg.
void Surroundings::load(double reach) {
  std::vector<ShapeStretch> stretches;
  const double length = mFrame.length();
  const double pieces = std::max(1.0, std::ceil(length / 2000)); // one box round a long leg would hold half the map
  Place before = mFrom;
  for (double i = 1; i <= pieces; ++i) {
    mProgress.check();
    const Place here = i < pieces ? mFrame.toPlace({length * i / pieces, 0}) : mTo;
    const auto found = mObstacles.outlines().near(before, here, Length::metres(reach));
    stretches.insert(stretches.end(), found.begin(), found.end());
    before = here;
  }
  const auto key = [](const ShapeStretch &s) { return std::tie(s.shape, s.part, s.first); };
  std::sort(stretches.begin(), stretches.end(), [&](const auto &a, const auto &b) { return key(a) < key(b); });
  stretches.erase(
      std::unique(stretches.begin(), stretches.end(), [&](const auto &a, const auto &b) { return key(a) == key(b); }),
      stretches.end());

  mEdges.clear();
  mLongestEdge = 0;
  size_t station = 0, done = 0;
  for (const ShapeStretch &stretch : stretches) {
    const std::vector<Place> &ring = mObstacles.outlines()[stretch.shape].parts[stretch.part];
    LegPoint last = mFrame.toLeg(ring[stretch.first], station);
    for (size_t i = stretch.first + 1; i <= stretch.last; ++i) {
      const LegPoint point = mFrame.toLeg(ring[i], station);
      mEdges.push_back({last, point, stretch.shape});
      mLongestEdge = std::max(mLongestEdge, std::abs(point.along - last.along));
      last = point;
      if (++done % 1024 == 0)
        mProgress.check();
    }
  }
  std::stable_sort(mEdges.begin(), mEdges.end(), [](const Edge &a, const Edge &b) { return a.least() < b.least(); });
}

// Among the edges, a run that has all those between two bounds.
std::pair<const Edge *, const Edge *> Surroundings::edgesBetween(const Interval &along) const {
  const Edge *first = mEdges.data(), *last = first + mEdges.size();
  const auto before = [](const Edge &edge, double value) { return edge.least() < value; };
  const auto after = [](double value, const Edge &edge) { return value < edge.least(); };
  return {std::lower_bound(first, last, along.low - mLongestEdge, before),
          std::upper_bound(first, last, along.high, after)};
}

/**
 * Where on one axis a square of the clearance about a place on it, drawn out over the strip, meets an obstacle.
 *
 * \param sign of across: the right side is +1. \param strip of the other coordinate, the clearance included.
 * \param window of this one that is looked at; obstacles are cut off there.
 * \returns sorted intervals that overlap by no more than the slack; the places between them and their ends are free.
 */
std::vector<Interval> Surroundings::blocked(Axis axis, double sign, const Interval &strip,
                                            const Interval &window) const {
  // With no clearance the leg's own strip has no width: edges then only part what is inside from what is not.
  const double middle = (strip.low + strip.high) / 2;
  const bool thin = strip.high - strip.low <= 2 * slack;
  const Interval bounds =
      thin ? Interval{middle - slack, middle + slack} : Interval{strip.low + slack, strip.high - slack};
  const auto isInside = [&](double u, double v) {
    return axis == Axis::Along ? inside(u, sign * v) : inside(v, sign * u);
  };

  std::vector<Interval> found;
  const auto [first, last] = edgesBetween(axis == Axis::Along ? window : strip);
  size_t done = 0;
  for (const Edge *edge = first; edge != last; ++edge) {
    if (++done % 4096 == 0)
      mProgress.check();
    const double y0 = sign * edge->from.across, y1 = sign * edge->to.across;
    Interval part;
    const bool meets = axis == Axis::Along ? clip(edge->from.along, y0, edge->to.along, y1, bounds, part)
                                           : clip(y0, edge->from.along, y1, edge->to.along, bounds, part);
    if (meets && part.low <= window.high && part.high >= window.low)
      found.push_back({std::max(part.low, window.low), std::min(part.high, window.high)});
  }
  const std::vector<Interval> edges = joined(std::move(found), 2 * slack);

  std::vector<Interval> solid;
  double before = window.low;
  const auto gap = [&](double to) {
    if (to - before > 2 * slack && isInside((before + to) / 2, middle))
      solid.push_back({before, to});
  };
  for (size_t i = 0; i < edges.size(); ++i) {
    if (i % 64 == 0)
      mProgress.check();
    gap(edges[i].low);
    before = edges[i].high;
    const double centre = (edges[i].low + edges[i].high) / 2;
    // Two obstacles that meet under one's feet leave no way between them.
    if (!thin || (edges[i].high - edges[i].low > 2 * slack && isInside(centre, middle - 5 * slack) &&
                  isInside(centre, middle + 5 * slack)))
      solid.push_back(edges[i]);
  }
  gap(window.high);

  std::vector<Interval> result = joined(std::move(solid), 2 * slack);
  for (Interval &one : result)
    one = {one.low - mClearance, one.high + mClearance};
  result = joined(std::move(result), -2 * slack);
  result.erase(
      std::remove_if(result.begin(), result.end(), [](const Interval &one) { return one.high - one.low <= 2 * slack; }),
      result.end());
  return result;
}

// Where ways so far out cannot be, about a stretch of the leg that is blocked.
Interval Surroundings::component(const Interval &run, double sign, double out, const Interval &room) const {
  const Interval most{room.low - mClearance - 1, room.high + mClearance + 1};
  for (double reach = 100 + mMostOut + 2 * mClearance;; reach *= 4) {
    const Interval window{std::max(most.low, run.low - reach), std::min(most.high, run.high + reach)};
    Interval result = run;
    for (const Interval &one : blocked(Axis::Along, sign, {-mClearance, out + mClearance}, window))
      if (one.low < run.high - slack && one.high > run.low + slack)
        result = {std::min(result.low, one.low), std::max(result.high, one.high)};
    const bool wholeLow = window.low == most.low || result.low - mClearance > window.low;
    const bool wholeHigh = window.high == most.high || result.high + mClearance < window.high;
    if (wholeLow && wholeHigh)
      return result;
  }
}

// The first way out, from one on, at which nothing lies in the way between two turns.
double Surroundings::levelOver(const Interval &sides, double sign, double out) const {
  const Interval strip{sides.low - mClearance, sides.high + mClearance};
  for (const Interval &one : blocked(Axis::Across, sign, strip, {-mClearance - 1, mMostOut + mClearance + 1}))
    if (one.low + slack < out && out < one.high - slack)
      out = one.high;
  return out;
}

Surroundings::Search Surroundings::search(const Interval &run, Side side, const Interval &room) const {
  const double sign = side == Side::Right ? 1 : -1;
  Search result;
  double out = 0;
  // The farther out, the more is in the way of out and back, and so of past: from below, the first fit is the least.
  for (int step = 0;; ++step) {
    mProgress.check();
    const Interval sides = component(run, sign, out, room);
    if (sides.low < room.low - slack || sides.high > room.high + slack) {
      result.refusal = sides.low < room.low - slack ? Refusal::NoRoomBefore : Refusal::NoRoomAfter;
      return result;
    }
    const double next = levelOver(sides, sign, out);
    if (next > mMostOut + slack)
      return result;
    if (next == out) {
      result.box = Box{std::max(sides.low, room.low), std::min(sides.high, room.high), out};
      return result;
    }
    // A slanting wall may be followed in ever smaller steps.
    out = step < freeSteps ? next : std::max(next, out + mMostOut / 1000);
  }
}

EndState Surroundings::stateOf(const Place &end, double along) const {
  double distance = std::numeric_limits<double>::infinity();
  for (const Edge &edge : mEdges)
    distance = std::min(distance, distanceTo(edge, along));
  if (distance > slack && !mObstacles.holding(end).empty())
    return EndState::Inside;
  return distance < mClearance - slack ? EndState::Near : EndState::Clear;
}

// In the order they are met.
std::vector<size_t> Surroundings::obstaclesIn(const Interval &along, double sign, double out) const {
  std::vector<std::pair<double, size_t>> found;
  const double low = std::min(-mClearance, out - mClearance), high = std::max(mClearance, out + mClearance);
  const Interval bounds = high - low > 4 * slack ? Interval{low + slack, high - slack} : Interval{-slack, slack};
  const auto [first, last] = edgesBetween({along.low - mClearance, along.high + mClearance});
  for (const Edge *edge = first; edge != last; ++edge) {
    Interval part;
    if (clip(edge->from.along, sign * edge->from.across, edge->to.along, sign * edge->to.across, bounds, part) &&
        part.low - mClearance < along.high - slack && part.high + mClearance > along.low + slack)
      found.emplace_back(std::max(part.low, along.low), edge->shape);
  }
  for (const double place : {along.low, (along.low + along.high) / 2, along.high})
    for (const size_t shape : mObstacles.holding(mFrame.toPlace({place, 0})))
      found.emplace_back(place, shape);
  std::sort(found.begin(), found.end());
  std::vector<size_t> result;
  for (const auto &[place, shape] : found)
    if (std::find(result.begin(), result.end(), shape) == result.end())
      result.push_back(shape);
  return result;
}

std::vector<LegPiece> Surroundings::pieces(const std::vector<Detour> &detours) const {
  std::vector<LegPiece> result;
  Place at = mFrom;
  double at_m = 0;
  const auto add = [&](LegPart part, const Place &to, double to_m, std::optional<size_t> detour) {
    result.push_back({part, at, to, geodesicBetween(at, to), at_m, to_m, detour});
    at = to;
    at_m = to_m;
  };
  const double length = mFrame.length();
  const auto onLine = [&](double along) {
    if (along < slack)
      return mFrom;
    return along > length - slack ? mTo : mFrame.toPlace({along, 0});
  };
  for (size_t i = 0; i < detours.size(); ++i) {
    const Detour &detour = detours[i];
    const double across = detour.side == Side::Right ? detour.out_m : -detour.out_m;
    if (detour.leaves_m - at_m >= slack)
      add(LegPart::Along, onLine(detour.leaves_m), detour.leaves_m, std::nullopt);
    at_m = detour.leaves_m;
    add(LegPart::Out, mFrame.toPlace({detour.leaves_m, across}), at_m, i);
    add(LegPart::Past, mFrame.toPlace({detour.returns_m, across}), detour.returns_m, i);
    add(LegPart::Back, onLine(detour.returns_m), at_m, i);
  }
  if (length - at_m >= slack)
    add(LegPart::Along, mTo, length, std::nullopt);
  return result;
}

DetouredLeg Surroundings::detoured() {
  DetouredLeg leg;
  const double length = mFrame.length();
  leg.length = Length::metres(length);

  // 1. Most legs meet nothing.
  load(mClearance + 1);
  const EndState start = stateOf(mFrom, 0);
  const EndState end = stateOf(mTo, length);
  std::vector<Interval> runs;
  if (!mEdges.empty() || start != EndState::Clear) {
    // What lies beside an end and behind it is in nobody's way unless it is too near.
    const Interval window{start == EndState::Clear ? 0 : -mClearance - 1,
                          end == EndState::Clear ? length : length + mClearance + 1};
    for (const Interval &one : blocked(Axis::Along, 1, {-mClearance, mClearance}, window))
      if (one.high > slack && one.low < length - slack)
        runs.push_back(one);
  }
  if (runs.empty()) {
    leg.pieces = pieces({});
    return leg;
  }

  // 2. Round each, or not.
  load(mMostOut + 2 * mClearance + 2);
  struct Passed {
    Interval run, room;
    Detour detour;
  };
  std::vector<Passed> passed;
  double done = 0;          // metres of the leg dealt with
  Interval room{0, length}; // where the next detour may leave and return
  const auto tryRound = [&](const Interval &run, const Interval &room, NotPassed &why) {
    const Search left = search(run, Side::Left, room), right = search(run, Side::Right, room);
    why.left = left.refusal;
    why.right = right.refusal;
    std::optional<Detour> detour;
    if (left.box && (!right.box || left.box->out < right.box->out - slack))
      detour = Detour{left.box->leaves, left.box->returns, left.box->out, Side::Left, {}};
    else if (right.box)
      detour = Detour{right.box->leaves, right.box->returns, right.box->out, Side::Right, {}};
    if (detour)
      detour->obstacles =
          obstaclesIn({detour->leaves_m, detour->returns_m}, detour->side == Side::Right ? 1 : -1, detour->out_m);
    return detour;
  };
  for (const Interval &run : runs) {
    if (run.high <= done + slack)
      continue; // the way round one before has passed it too
    NotPassed not_passed{std::max(run.low, 0.0), std::min(run.high, length), {}};
    std::optional<Detour> detour = tryRound(run, room, not_passed);
    Interval wider = room;
    // No room behind the box before: one box round both.
    size_t kept = passed.size();
    Interval both = run;
    while (!detour && kept > 0 && passed[kept - 1].detour.returns_m + leastBetween == wider.low &&
           (not_passed.left == Refusal::NoRoomBefore || not_passed.right == Refusal::NoRoomBefore)) {
      --kept;
      both.low = passed[kept].run.low;
      wider.low = passed[kept].room.low;
      NotPassed ignored{};
      detour = tryRound(both, wider, ignored);
    }
    if (detour) {
      passed.resize(kept);
      done = detour->returns_m;
      room.low = done + leastBetween;
      passed.push_back({both, wider, std::move(*detour)});
      continue;
    }
    not_passed.obstacles = obstaclesIn({not_passed.from_m, not_passed.to_m}, 1, 0);
    if (run.low < slack)
      not_passed.start = start;
    if (run.high > length - slack)
      not_passed.end = end;
    done = room.low = not_passed.to_m;
    leg.not_passed.push_back(std::move(not_passed));
  }
  for (Passed &one : passed)
    leg.detours.push_back(std::move(one.detour));
  leg.pieces = pieces(leg.detours);
  return leg;
}

} // namespace

DetouredLeg detourLeg(const Place &from, const Place &to, const Obstacles &obstacles, const DetourRule &rule,
                      const Progress &progress) {
  return Surroundings(from, to, obstacles, rule, progress).detoured();
}

std::vector<RouteLeg> detourRoute(const Route &route, const Obstacles &obstacles, const DetourRule &rule,
                                  const Progress &progress) {
  std::vector<RouteLeg> legs;
  for (size_t part = 0; part < route.parts.size(); ++part) {
    const RouteVertex *last = nullptr;
    for (const RouteVertex &vertex : route.parts[part]) {
      progress.check();
      if (!last) {
        last = &vertex;
        continue;
      }
      if (geodesicBetween(last->place, vertex.place).length < mergedBelow)
        continue;
      legs.push_back({part, *last, vertex, detourLeg(last->place, vertex.place, obstacles, rule, progress)});
      last = &vertex;
    }
  }
  return legs;
}

} // namespace brushline
