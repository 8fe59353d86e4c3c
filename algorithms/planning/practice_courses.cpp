// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/practice_courses.h"

#include <algorithm>
#include <deque>
#include <limits>
#include <memory>
#include <tuple>
#include <utility>

namespace brushline {

namespace {
constexpr size_t levels = 3; // of how near together places may be
// Places scattered for each control asked for, and in all. Common practice, no source.
constexpr size_t spotsEach = 6, fewestSpots = 150, mostSpots = 500;
constexpr size_t startsLookedAt = 10;

struct Candidate {
  GroundPoint at;
  PracticeSpot spot;
};

// Those of use, in an order of their own; the others counted.
std::vector<Candidate> usable(const std::vector<NamedPlace> &places, bool starts, const CourseGround &ground,
                              CourseLegs &legs, SpotCounts &counts, const Progress &progress) {
  std::vector<Candidate> result;
  for (const NamedPlace &given : places) {
    progress.check();
    const GroundPoint at = ground.toGround(given.place);
    if (!ground.holds(at))
      ++counts.outside;
    else if (ground.avoids(at))
      ++counts.avoided;
    else if (legs.closedAt(given.place))
      ++counts.closed;
    else
      result.push_back({at, {given.place, given.name, starts, !starts}});
  }
  const auto byPlace = [](const Candidate &c) {
    return std::make_tuple(c.at.east, c.at.north, c.spot.name, c.spot.place.latitude.degrees(),
                           c.spot.place.longitude.degrees());
  };
  std::sort(result.begin(), result.end(),
            [&](const Candidate &a, const Candidate &b) { return byPlace(a) < byPlace(b); });
  if (starts) {
    const auto last =
        std::unique(result.begin(), result.end(), [](const Candidate &a, const Candidate &b) { return a.at == b.at; });
    counts.crowded += size_t(result.end() - last);
    result.erase(last, result.end());
    std::stable_sort(result.begin(), result.end(),
                     [](const Candidate &a, const Candidate &b) { return a.spot.name < b.spot.name; });
  }
  counts.usable = result.size();
  return result;
}

std::vector<GroundPoint> pointsOf(const std::vector<Candidate> &candidates) {
  std::vector<GroundPoint> points;
  for (const Candidate &each : candidates)
    points.push_back(each.at);
  return points;
}

// Legs between candidates, each worked out when first asked for.
class LegBook {
public:
  LegBook(std::vector<Candidate> candidates, CourseLegs &legs, const LegWindow &window, const Progress &progress)
      : mCandidates(std::move(candidates)), mLegs(legs), mWindow(window), mProgress(progress),
        mNumbers(mCandidates.size() * mCandidates.size(), -1) {}

  const CourseLeg &between(size_t a, size_t b) {
    int32_t &number = mNumbers[a * mCandidates.size() + b];
    if (number < 0) {
      number = int32_t(mBook.size());
      const Candidate &from = mCandidates[a], &to = mCandidates[b];
      mBook.push_back(mLegs.between(from.spot.place, to.spot.place, from.at, to.at, mWindow, mProgress));
    }
    return mBook[size_t(number)];
  }
  const std::vector<Candidate> &candidates() const { return mCandidates; }
  const std::deque<CourseLeg> &all() const { return mBook; }

private:
  std::vector<Candidate> mCandidates;
  CourseLegs &mLegs;
  LegWindow mWindow;
  const Progress &mProgress;
  std::vector<int32_t> mNumbers;
  std::deque<CourseLeg> mBook;
};

// The candidate with the most open legs, of those with the most others in the window; moved to the front.
void pickStart(std::vector<Candidate> &candidates, CourseLegs &legs, const LegWindow &window,
               const Progress &progress) {
  std::vector<std::pair<size_t, size_t>> byDegree; // others in the window, own number; most first
  const auto inWindow = [&](const Candidate &a, const Candidate &b) {
    const double metres = metresBetween(a.at, b.at);
    return metres >= window.least_m && metres <= window.most_m;
  };
  for (size_t i = 0; i < candidates.size(); ++i) {
    size_t degree = 0;
    for (const Candidate &other : candidates)
      degree += inWindow(candidates[i], other);
    byDegree.emplace_back(candidates.size() - degree, i);
  }
  std::sort(byDegree.begin(), byDegree.end());
  byDegree.resize(std::min(byDegree.size(), startsLookedAt));
  size_t best = byDegree.front().second, most = 0;
  for (const auto &[degree, i] : byDegree) {
    size_t open = 0;
    for (const Candidate &other : candidates)
      if (inWindow(candidates[i], other))
        open += legs.between(candidates[i].spot.place, other.spot.place, candidates[i].at, other.at, window, progress)
                    .bar == LegBar::None;
    if (open > most) {
      most = open;
      best = i;
    }
  }
  std::rotate(candidates.begin(), candidates.begin() + std::ptrdiff_t(best),
              candidates.begin() + std::ptrdiff_t(best) + 1);
  candidates.front().spot.is_start = true;
}

// Metres to the nearest other one; starts do not count beside starts.
std::vector<double> roomOf(const std::vector<Candidate> &candidates) {
  std::vector<double> room(candidates.size(), std::numeric_limits<double>::infinity());
  for (size_t a = 0; a < candidates.size(); ++a)
    for (size_t b = 0; b < a; ++b)
      if (!candidates[a].spot.is_start || !candidates[b].spot.is_start) {
        const double metres = metresBetween(candidates[a].at, candidates[b].at);
        room[a] = std::min(room[a], metres);
        room[b] = std::min(room[b], metres);
      }
  return room;
}

void finish(PracticeCourses &result, const std::shared_ptr<LegBook> &book) {
  const std::vector<Candidate> &candidates = book->candidates();
  result.effort = [book](size_t from, size_t to) {
    return from < to ? book->between(from, to).out : book->between(to, from).back;
  };
  result.spots.clear();
  for (const Candidate &each : candidates)
    result.spots.push_back(each.spot);
  result.reach_m.assign(candidates.size(), 0);
  std::vector<Candidate> used;
  std::vector<bool> isUsed(candidates.size(), false);
  for (const Course &course : result.set.courses)
    for (size_t i = 0; i < course.spots.size(); ++i) {
      isUsed[course.spots[i]] = true;
      if (i > 0) {
        double &reach = result.reach_m[course.spots[i]];
        reach = std::max(reach, result.effort(course.spots[i - 1], course.spots[i]).reach_m);
      }
    }
  for (size_t i = 0; i < candidates.size(); ++i)
    if (isUsed[i])
      used.push_back(candidates[i]);
  const std::vector<double> room = roomOf(used);
  result.apart_m.assign(candidates.size(), std::numeric_limits<double>::infinity());
  for (size_t i = 0, k = 0; i < candidates.size(); ++i)
    if (isUsed[i])
      result.apart_m[i] = room[k++];
}
} // namespace

PracticeCourses layPracticeCourses(const PracticeSetting &setting, const CourseGround &ground, CourseLegs &legs,
                                   const Progress &progress, const std::function<void(double)> &told) {
  PracticeCourses best;
  const CourseRule &rule = setting.rule;
  const std::vector<Candidate> starts = usable(setting.starts, true, ground, legs, best.starts, progress);
  if (!setting.starts.empty() && starts.empty()) {
    best.failure = CourseFailure::NoStart;
    return best;
  }
  std::vector<Candidate> sites;
  if (setting.sites) {
    sites = usable(*setting.sites, false, ground, legs, best.sites, progress);
    if (sites.size() > mostSites) {
      best.sites.surplus = sites.size() - mostSites;
      CourseRandom random(rule.seed);
      random.shuffle(sites);
      sites.resize(mostSites);
      std::sort(sites.begin(), sites.end(), [](const Candidate &a, const Candidate &b) { return a.at < b.at; });
    }
  }
  const size_t needed = size_t(rule.controls()) + starts.empty();
  const auto asked = size_t(rule.courses) * size_t(rule.controls());
  const std::array<bool, measures> counts{true, legs.hasTerrain(), true, legs.hasCover(), true};

  best.failure = CourseFailure::FewSpots;
  const SpotCounts startCounts = best.starts, siteCounts = best.sites;
  double before = std::numeric_limits<double>::infinity();
  for (size_t level = 0; level < levels; ++level) {
    const double share = 1 - double(level) / double(levels - 1); // 1: the longest leg, 0: the shortest
    const double apart =
        legs.farthestReach(rule.window.least_m + share * (rule.window.most_m - rule.window.least_m), progress);
    if (apart >= before)
      continue; // all legs alike
    before = apart;
    PracticeCourses result;
    result.starts = startCounts;
    result.sites = siteCounts;
    result.spacing_m = apart;
    CourseRandom random(rule.seed * levels + level);
    std::vector<Candidate> candidates = starts;
    if (setting.sites) {
      for (const size_t i : spotsApart(pointsOf(sites), pointsOf(starts), apart, random))
        candidates.push_back(sites[i]);
      result.sites.crowded = sites.size() + starts.size() - candidates.size();
      result.sites.usable = candidates.size() - starts.size();
    } else {
      const size_t most = std::max(fewestSpots, std::min(mostSpots, spotsEach * asked));
      const auto allowed = [&](const GroundPoint &point) { return !legs.closedAt(ground.toPlace(point)); };
      for (const GroundPoint &at : scatteredSpots(ground, pointsOf(starts), apart, most, allowed, random, progress))
        candidates.push_back({at, {ground.toPlace(at), std::string(), false, false}});
      result.sites.usable = candidates.size() - starts.size();
    }
    if (candidates.size() - starts.size() < needed) {
      if (best.failure == CourseFailure::FewSpots)
        best.sites = result.sites;
      best.spacing_m = apart;
      continue;
    }
    if (starts.empty())
      pickStart(candidates, legs, rule.window, progress);

    CoursePlanner::Spots spots;
    spots.at = pointsOf(candidates);
    for (size_t i = 0; i < std::max<size_t>(1, starts.size()); ++i)
      spots.starts.push_back(i);
    spots.room_m = roomOf(candidates);
    const auto book = std::make_shared<LegBook>(std::move(candidates), legs, rule.window, progress);
    CoursePlanner planner(
        rule, std::move(spots), [&](size_t a, size_t b) -> const CourseLeg & { return book->between(a, b); }, counts);
    result.set = planner.plan(progress, [&](double done) { told((double(level) + done) / double(levels)); });
    for (const CourseLeg &leg : book->all()) {
      ++result.legs_tried;
      ++result.barred[size_t(leg.bar)];
    }
    if (result.set.courses.empty())
      result.failure = CourseFailure::NoCourse;
    else
      finish(result, book);
    const auto rank = [&](const PracticeCourses &each) {
      return std::make_pair(size_t(rule.courses) - each.set.courses.size(), each.set.fault);
    };
    if (best.failure == CourseFailure::FewSpots || rank(result) < rank(best))
      best = std::move(result);
    if (best.set.courses.size() == size_t(rule.courses) && best.set.fault <= 0)
      break;
  }
  return best;
}

} // namespace brushline
