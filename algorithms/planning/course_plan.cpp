// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/course_plan.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <utility>

namespace brushline {

namespace {
constexpr size_t poolSize = 1600;   // walks to choose from, over all starts
constexpr size_t leastPool = 150;   // for each start
constexpr size_t mostSteps = 600;   // of growing one walk, before it is given up
constexpr size_t freshWalks = 80;   // grown for a course to be replaced
constexpr int mostRounds = 10;      // of replacing
constexpr size_t mostCentres = 250; // walks that may be aimed at
// A measure within this share of the aim is within balanceShare of any other that is: (1 + w) / (1 - w) = 1.1.
constexpr double window = balanceShare / (2 + balanceShare);

// What is wrong with a course counts as: one for a shared leg, one for a crossing, one for being out of balance and one
// more for each 5 percent of that; a control passed by, or one that another course has too, little. Common practice, no
// source.
constexpr double perUnbalanced = 1, perExcess = 20, perPass = 0.1, perSharedSpot = 0.02;
constexpr int passRounds = 3; // of replacing for the sake of what is passed only

constexpr double doubleBackCosine = 0.9659258262890683; // 15 degrees

using Legs = std::vector<std::pair<size_t, size_t>>;

Legs legsOf(const Course &course) {
  Legs legs;
  for (size_t i = 1; i < course.spots.size(); ++i)
    legs.push_back(std::minmax(course.spots[i - 1], course.spots[i]));
  std::sort(legs.begin(), legs.end());
  return legs;
}

double floorOf(size_t measure, int legs) { return Measure(measure) == Measure::Climb ? climbFloor * legs : 0; }

// Cosine of the angle at b between the ways to a and to c.
double cosineAt(const GroundPoint &a, const GroundPoint &b, const GroundPoint &c) {
  const double ax = double(a.east - b.east), ay = double(a.north - b.north);
  const double cx = double(c.east - b.east), cy = double(c.north - b.north);
  return (ax * cx + ay * cy) / std::sqrt((ax * ax + ay * ay) * (cx * cx + cy * cy));
}
} // namespace

double CourseSet::worstSpread() const {
  double worst = 0;
  for (const MeasureSpread &spread : spreads)
    worst = std::max(worst, spread.spread);
  return worst;
}

std::array<MeasureSpread, measures> spreadsOf(const std::vector<Course> &courses, int legs,
                                              const std::array<bool, measures> &counts) {
  std::array<MeasureSpread, measures> spreads;
  for (size_t m = 0; m < measures; ++m) {
    MeasureSpread &spread = spreads[m];
    spread.counts = counts[m] && !courses.empty();
    if (!spread.counts)
      continue;
    spread.least = spread.most = courses.front().measure[m];
    for (const Course &course : courses) {
      spread.least = std::min(spread.least, course.measure[m]);
      spread.most = std::max(spread.most, course.measure[m]);
    }
    const double base = std::max(spread.least, floorOf(m, legs));
    spread.spread = base > 0 ? (spread.most - spread.least) / base : 0;
  }
  return spreads;
}

CoursePlanner::CoursePlanner(const CourseRule &rule, Spots spots, LegBetween between,
                             const std::array<bool, measures> &counts)
    : mRule(rule), mSpots(std::move(spots)), mBetween(std::move(between)), mCounts(counts),
      mTurnCosine(std::round(std::cos(rule.least_turn.radians()) * 1e12) / 1e12), mIsStart(mSpots.at.size(), false),
      mUses(mSpots.at.size() * mSpots.at.size(), 0), mSpotUses(mSpots.at.size(), 0), mSpotPassed(mSpots.at.size(), 0),
      mPassedNumber(mUses.size(), -1), mRandom(rule.seed) {
  for (const size_t start : mSpots.starts)
    mIsStart[start] = true;
  mNeighbours.resize(mSpots.at.size());
  for (size_t a = 0; a < mSpots.at.size(); ++a) {
    std::vector<size_t> &near = mNeighbours[a];
    for (size_t b = 0; b < mSpots.at.size(); ++b) {
      const double metres = metresBetween(mSpots.at[a], mSpots.at[b]);
      // The plane is off by less than this; the leg itself is measured on the ellipsoid.
      if (a != b && !mIsStart[b] && metres > mRule.window.least_m * 0.999 - 0.01 &&
          metres < mRule.window.most_m * 1.001 + 0.01)
        near.push_back(b);
    }
    mRandom.shuffle(near);
    if (!mIsStart[a] && near.size() > mostNeighbours)
      near.resize(mostNeighbours);
  }
}

bool CoursePlanner::open(size_t from, size_t to) const {
  const CourseLeg &way = leg(from, to);
  return way.bar == LegBar::None && (from < to ? way.out : way.back).reach_m <= mSpots.room_m[to];
}

bool CoursePlanner::turnsEnough(size_t a, size_t b, size_t c) const {
  // The turn is what the angle at b lacks to 180 degrees, so its cosine has the other sign.
  return -cosineAt(mSpots.at[a], mSpots.at[b], mSpots.at[c]) <= mTurnCosine;
}

bool CoursePlanner::doublesBack(size_t a, size_t b, size_t c) const {
  return cosineAt(mSpots.at[a], mSpots.at[b], mSpots.at[c]) > doubleBackCosine;
}

int CoursePlanner::crossingsWith(const std::vector<size_t> &path, size_t next) const {
  const size_t last = path.size() - 1;
  int count = last > 0 && doublesBack(path[last - 1], path[last], next);
  const bool closes = next == path.front();
  if (closes && last > 1 && doublesBack(path[last], next, path[1]))
    ++count;
  for (size_t i = closes ? 2 : 1; i < last; ++i)
    count += stretchesMeet(mSpots.at[path[i - 1]], mSpots.at[path[i]], mSpots.at[path[last]], mSpots.at[next]);
  return count;
}

Course CoursePlanner::measured(std::vector<size_t> path) const {
  Course course;
  double bare = 0, across = 0;
  std::vector<size_t> grown{path.front()};
  for (size_t i = 1; i < path.size(); ++i) {
    const CourseLeg &way = leg(path[i - 1], path[i]);
    const LegEffort &effort = path[i - 1] < path[i] ? way.out : way.back;
    course.measure[size_t(Measure::Length)] += way.length_m;
    course.measure[size_t(Measure::Climb)] += effort.climb_m;
    course.measure[size_t(Measure::Time)] += effort.seconds;
    bare += effort.bare_seconds;
    across += effort.across_m;
    course.crossings += crossingsWith(grown, path[i]);
    grown.push_back(path[i]);
  }
  course.measure[size_t(Measure::Cover)] = bare > 0 ? course.measure[size_t(Measure::Time)] / bare : 1;
  course.measure[size_t(Measure::Drift)] = across / double(path.size() - 1);
  course.spots = std::move(path);
  return course;
}

double CoursePlanner::excessIn(size_t m, const Course &course) const {
  const double scale = std::max(mTarget[m], floorOf(m, mRule.legs));
  return mCounts[m] && scale > 0 ? std::max(0.0, std::abs(course.measure[m] - mTarget[m]) / scale - window) : 0;
}

bool CoursePlanner::isBalanced(const Course &course) const {
  for (size_t m = 0; m < measures; ++m)
    if (excessIn(m, course) > 0)
      return false;
  return true;
}

double CoursePlanner::excess(const Course &course) const {
  double sum = 0;
  for (size_t m = 0; m < measures; ++m)
    sum += excessIn(m, course);
  return sum;
}

//! A walk being grown.
struct CoursePlanner::Walk {
  std::vector<size_t> path;
  std::vector<bool> visited;
  bool fresh_legs, may_cross;
  size_t steps = 0;
};

bool CoursePlanner::grow(Walk &walk) {
  const auto legs = size_t(mRule.legs), done = walk.path.size() - 1;
  if (done == legs)
    return true;
  const size_t here = walk.path.back(), start = walk.path.front();
  const auto mayGo = [&](size_t from, size_t to) {
    if (walk.fresh_legs && uses(from, to) > 0)
      return false;
    if (walk.path.size() > 1 && !turnsEnough(walk.path[walk.path.size() - 2], from, to))
      return false;
    return (walk.may_cross || crossingsWith(walk.path, to) == 0) && open(from, to);
  };
  if (mRule.closed && done + 1 == legs) {
    if (!mayGo(here, start))
      return false;
    walk.path.push_back(start);
    return true;
  }
  std::vector<size_t> next = mNeighbours[here];
  const double left = double(legs - done - 1) * mRule.window.most_m * 1.001 + 0.01;
  for (size_t i = 0; i < next.size(); ++i) {
    std::swap(next[i], next[i + mRandom.below(next.size() - i)]);
    const size_t to = next[i];
    if (++walk.steps > mostSteps)
      return false;
    if (walk.visited[to])
      continue;
    if (mRule.closed) {
      const double home = metresBetween(mSpots.at[to], mSpots.at[start]);
      if (home > left || (done + 2 == legs && home < mRule.window.least_m * 0.999 - 0.01))
        continue;
    }
    if (!mayGo(here, to))
      continue;
    walk.path.push_back(to);
    walk.visited[to] = true;
    if (grow(walk))
      return true;
    walk.path.pop_back();
    walk.visited[to] = false;
  }
  return false;
}

std::optional<Course> CoursePlanner::tryWalk(size_t start, bool freshLegs, bool mayCross) {
  Walk walk{{start}, std::vector<bool>(mSpots.at.size(), false), freshLegs, mayCross};
  if (!grow(walk))
    return std::nullopt;
  return measured(std::move(walk.path));
}

std::vector<Course> CoursePlanner::pool(size_t start, size_t count, const Progress &progress) {
  std::vector<Course> courses;
  std::set<Legs> seen;
  // Those that cross their own ground only where there are too few others.
  for (const bool mayCross : {false, true}) {
    if (courses.size() >= leastPool)
      break;
    for (size_t tries = 0; tries < 2 * count && courses.size() < count; ++tries) {
      if (courses.empty() && tries >= leastPool)
        break; // nothing will come of it
      progress.check();
      if (auto course = tryWalk(start, false, mayCross); course && seen.insert(legsOf(*course)).second)
        courses.push_back(std::move(*course));
    }
  }
  return courses;
}

void CoursePlanner::aim(const std::vector<std::vector<Course>> &pools, const Progress &progress) {
  // What comes over its own ground is not to be aimed at where there are enough others.
  const auto straightforward = [](const Course &course) { return course.crossings == 0; };
  std::ptrdiff_t others = 0;
  for (const auto &pool : pools)
    others += std::count_if(pool.begin(), pool.end(), straightforward);
  const bool all = others < mRule.courses;
  std::vector<std::vector<const Course *>> counted;
  std::vector<const Course *> centres;
  for (const auto &pool : pools) {
    std::vector<const Course *> these;
    for (const Course &course : pool)
      if (all || straightforward(course))
        these.push_back(&course);
    centres.insert(centres.end(), these.begin(), these.end());
    if (!these.empty())
      counted.push_back(std::move(these));
  }
  mRandom.shuffle(centres);
  centres.resize(std::min(centres.size(), mostCentres));
  std::pair<size_t, size_t> most; // fewest for a start, all
  const Course *best = nullptr;
  for (const Course *centre : centres) {
    progress.check();
    mTarget = centre->measure;
    std::pair<size_t, size_t> found{SIZE_MAX, 0};
    for (const auto &these : counted) {
      size_t near = 0;
      for (const Course *course : these)
        near += isBalanced(*course);
      found = {std::min(found.first, near), found.second + near};
    }
    if (!best || found > most) {
      most = found;
      best = centre;
    }
  }
  if (best)
    mTarget = best->measure;
}

void CoursePlanner::use(const Course &course, int by) {
  for (const auto &[a, b] : legsOf(course))
    uses(a, b) = uint16_t(uses(a, b) + by);
  for (size_t i = 1; i < course.spots.size(); ++i)
    mSpotUses[course.spots[i]] = uint16_t(mSpotUses[course.spots[i]] + by);
  for (size_t i = 1; i < course.spots.size(); ++i)
    for (const size_t spot : passedBy(course.spots[i - 1], course.spots[i]))
      mSpotPassed[spot] = uint16_t(mSpotPassed[spot] + by);
  if (by > 0)
    mTaken.insert(legsOf(course));
  else
    mTaken.erase(legsOf(course));
}

int CoursePlanner::sharedBy(const Course &course) {
  int count = 0;
  for (size_t i = 1; i < course.spots.size(); ++i)
    count += uses(course.spots[i - 1], course.spots[i]) > 0;
  return count;
}

const std::vector<size_t> &CoursePlanner::passedBy(size_t from, size_t to) {
  int32_t &number = mPassedNumber[from * mSpots.at.size() + to];
  if (number >= 0)
    return mPassed[size_t(number)];
  number = int32_t(mPassed.size());
  std::vector<size_t> &passed = mPassed.emplace_back();
  const CourseLeg &way = leg(from, to);
  const double drift = (from < to ? way.out : way.back).across_m * 2000; // twice, at the end; in proportion before
  const GroundPoint &a = mSpots.at[from], &b = mSpots.at[to];
  const double dx = double(b.east - a.east), dy = double(b.north - a.north), squared = dx * dx + dy * dy;
  for (size_t i = 0; i < mSpots.at.size(); ++i) {
    if (i == from || i == to || mIsStart[i])
      continue;
    const double x = double(mSpots.at[i].east - a.east), y = double(mSpots.at[i].north - a.north);
    const double share = (x * dx + y * dy) / squared;
    if (share > 0 && share < 1 && std::abs(x * dy - y * dx) / std::sqrt(squared) < drift * share)
      passed.push_back(i);
  }
  return passed;
}

int CoursePlanner::passesOf(const Course &course, bool others) {
  int count = 0;
  for (size_t i = 1; i < course.spots.size(); ++i)
    for (const size_t spot : passedBy(course.spots[i - 1], course.spots[i]))
      count += mSpotUses[spot] > 0 || std::count(course.spots.begin(), course.spots.end(), spot) > 0;
  if (others)
    for (const size_t spot : course.spots)
      count += mSpotPassed[spot];
  return count;
}

double CoursePlanner::faultOf(const Course &course) {
  const double over = excess(course);
  return sharedBy(course) + course.crossings + (over > 0 ? perUnbalanced : 0) + perExcess * over;
}

double CoursePlanner::costOf(const Course &course) {
  int spots = 0;
  for (size_t i = 1; i < course.spots.size(); ++i)
    spots += !mIsStart[course.spots[i]] && mSpotUses[course.spots[i]] > 0;
  return faultOf(course) + perPass * passesOf(course, true) + perSharedSpot * spots;
}

bool CoursePlanner::isTaken(const Course &course) const { return mTaken.count(legsOf(course)) > 0; }

CourseSet CoursePlanner::plan(const Progress &progress, const std::function<void(double)> &told) {
  CourseSet set;
  const size_t starts = mSpots.starts.size();
  if (starts == 0)
    return set;
  const size_t used = std::min(starts, size_t(mRule.courses));
  std::vector<std::vector<Course>> pools;
  for (size_t i = 0; i < used; ++i) {
    pools.push_back(pool(mSpots.starts[i], std::max(leastPool, poolSize / used), progress));
    told(0.5 * double(i + 1) / double(used));
  }
  aim(pools, progress);

  std::vector<std::optional<Course>> chosen(size_t(mRule.courses));
  const auto best = [&](size_t slot, std::optional<Course> now) {
    double cost = now ? costOf(*now) : HUGE_VAL;
    const auto offer = [&](const Course &course) {
      if (const double other = costOf(course); other < cost && !isTaken(course)) {
        cost = other;
        now = course;
      }
    };
    const size_t start = mSpots.starts[slot % starts];
    for (const Course &course : pools[slot % starts])
      offer(course);
    if (!now && pools[slot % starts].empty())
      return now;
    for (size_t i = 0; i < freshWalks && !(now && faultOf(*now) == 0 && passesOf(*now, true) == 0); ++i) {
      progress.check();
      if (const auto course = tryWalk(start, true, false))
        offer(*course);
    }
    return now;
  };
  for (int round = 0; round <= mostRounds; ++round) {
    bool changed = false;
    for (size_t slot = 0; slot < chosen.size(); ++slot) {
      progress.check();
      std::optional<Course> before = chosen[slot];
      if (before) {
        use(*before, -1);
        if (round > 0 && faultOf(*before) == 0 && (round > passRounds || passesOf(*before, true) == 0)) {
          use(*before, 1);
          continue;
        }
      }
      chosen[slot] = best(slot, before);
      if (chosen[slot])
        use(*chosen[slot], 1);
      changed = changed || (chosen[slot] && (!before || before->spots != chosen[slot]->spots));
      told(0.5 + 0.5 * (round + double(slot + 1) / double(chosen.size())) / (mostRounds + 1));
    }
    if (!changed)
      break;
  }

  for (auto &course : chosen)
    if (course)
      set.courses.push_back(std::move(*course));
  for (Course &course : set.courses) {
    use(course, -1);
    course.shared = sharedBy(course);
    course.passes = passesOf(course, false);
    set.fault += faultOf(course);
    use(course, 1);
  }
  for (const uint16_t count : mUses)
    set.shared_legs += count > 1;
  set.spreads = spreadsOf(set.courses, mRule.legs, mCounts);
  for (const MeasureSpread &spread : set.spreads)
    set.fault += perExcess * std::max(0.0, spread.spread - balanceShare);
  return set;
}

} // namespace brushline
