// SPDX-License-Identifier: GPL-2.0-or-later
#include "records/track_cleaning.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace brushline {

namespace {
constexpr double same_m = 0.001;
constexpr size_t longestSpike = 3;  // fixes
constexpr double leastSpike_m = 30; // without times
constexpr double usualSteps = 5;
constexpr double standSpeed = 0.15; // m/s
constexpr double leastStand_s = 20;
constexpr double window_s = 15;
constexpr double windowFixes = 6;
constexpr double edgeShare = 0.35; // of the window, by which a stand is seen too short at either end (0.7 m/s)

double between(const CleanFix &a, const CleanFix &b) {
  return std::hypot(b.at.east - a.at.east, b.at.north - a.at.north);
}

double median(std::vector<double> values) {
  if (values.empty())
    return 0;
  const auto middle = values.begin() + std::ptrdiff_t(values.size() / 2);
  std::nth_element(values.begin(), middle, values.end());
  return *middle;
}

// Takes the times from fixes outside the longest sequence that never runs back (patience sorting).
void dropBackwards(CleanTrack &track) {
  std::vector<size_t> timed;
  for (size_t i = 0; i < track.fixes.size(); ++i)
    if (track.fixes[i].arrived_s)
      timed.push_back(i);
  if (timed.empty())
    return;
  const auto time = [&](size_t i) { return *track.fixes[i].arrived_s; };
  std::vector<size_t> ends; // the fix that ends the best sequence of each length
  constexpr size_t none = std::numeric_limits<size_t>::max();
  std::vector<size_t> before(track.fixes.size(), none);
  for (const size_t i : timed) {
    const auto at = std::upper_bound(ends.begin(), ends.end(), time(i),
                                     [&](double value, size_t end) { return value < time(end); });
    if (at != ends.begin())
      before[i] = *(at - 1);
    if (at == ends.end())
      ends.push_back(i);
    else
      *at = i;
  }
  std::vector<bool> kept(track.fixes.size(), false);
  for (size_t i = ends.back(); i != none; i = before[i])
    kept[i] = true;
  track.lost_times = timed.size() - ends.size();
  const bool useless = 2 * ends.size() < timed.size();
  track.times = useless ? TrackTimes::Backwards : TrackTimes::Kept;
  for (const size_t i : timed)
    if (useless || !kept[i])
      track.fixes[i].arrived_s = track.fixes[i].left_s = std::nullopt;
}

void dropDuplicates(CleanTrack &track) {
  std::vector<CleanFix> kept;
  kept.reserve(track.fixes.size());
  bool gap = false;
  for (CleanFix &fix : track.fixes) {
    gap = gap || fix.after_gap;
    if (!kept.empty() && between(kept.back(), fix) < same_m && kept.back().arrived_s == fix.arrived_s) {
      ++track.duplicates;
      continue;
    }
    fix.after_gap = gap;
    gap = false;
    kept.push_back(fix);
  }
  track.fixes = std::move(kept);
}

// What nobody can have walked in one step.
class Jumps {
public:
  Jumps(const std::vector<CleanFix> &fixes, const TrackRule &rule) : mFixes(fixes), mRule(rule) {
    std::vector<double> steps;
    for (size_t i = 1; i < fixes.size(); ++i)
      if (!fixes[i].after_gap)
        steps.push_back(between(fixes[i - 1], fixes[i]));
    mFar = std::max({leastSpike_m, 8 * rule.error_m, usualSteps * median(std::move(steps))});
  }
  bool timed(size_t a, size_t b) const { return mFixes[a].arrived_s && mFixes[b].arrived_s; }
  bool operator()(size_t a, size_t b) const {
    const double way = between(mFixes[a], mFixes[b]);
    if (timed(a, b))
      return way > mRule.most_speed * std::abs(*mFixes[b].arrived_s - *mFixes[a].arrived_s) + 4 * mRule.error_m;
    return !mFixes[b].after_gap && way > mFar;
  }

private:
  const std::vector<CleanFix> &mFixes;
  const TrackRule &mRule;
  double mFar;
};

void dropSpikes(CleanTrack &track, const TrackRule &rule, const Progress &progress) {
  const std::vector<CleanFix> &fixes = track.fixes;
  const size_t n = fixes.size();
  if (n < 3)
    return;
  const Jumps jump(fixes, rule);
  std::vector<size_t> kept;
  size_t i = 1;
  if (jump.timed(0, 1) && jump(0, 1) && !jump(1, 2) && (n < 4 || !jump(2, 3)))
    i = 2, kept.push_back(1);
  else
    kept.push_back(0);
  while (i < n) {
    if (i % 4096 == 0)
      progress.check();
    const size_t before = kept.back();
    size_t off = 0; // how many fixes lie out there
    if (jump(before, i)) {
      const size_t most = jump.timed(before, i) ? longestSpike : 1;
      for (size_t k = 1; k <= most && i + k < n && off == 0; ++k)
        if (!jump(before, i + k) && jump(i + k - 1, i + k))
          off = k;
      if (i + 1 == n && jump.timed(before, i))
        off = 1;
    }
    i += off;
    if (i < n)
      kept.push_back(i++);
  }
  std::vector<CleanFix> left;
  left.reserve(kept.size());
  size_t from = 0;
  for (const size_t each : kept) {
    left.push_back(fixes[each]);
    for (; from < each; ++from) // a gap before a spike is one before what follows
      left.back().after_gap = left.back().after_gap || fixes[from].after_gap;
    ++from;
  }
  track.spikes = n - kept.size();
  track.fixes = std::move(left);
}

// Sums over timed fixes, to have the mean of any stretch at once.
struct Means {
  struct Mean {
    double east, north, time;
  };
  std::vector<Mean> sums{{0, 0, 0}};
  Mean of(size_t first, size_t end) const {
    const double n = double(end - first);
    return {(sums[end].east - sums[first].east) / n, (sums[end].north - sums[first].north) / n,
            (sums[end].time - sums[first].time) / n};
  }
};

// The stretches of timed fixes [first, last] on which nobody walked.
struct Stretch {
  size_t first, last;
  double arrived, left;
};
std::vector<Stretch> standsAmong(const std::vector<CleanFix> &fixes, const std::vector<size_t> &timed) {
  std::vector<Stretch> stands;
  const size_t n = timed.size();
  if (n < 2)
    return stands;
  const double start = *fixes[timed[0]].arrived_s;
  const auto time = [&](size_t i) { return *fixes[timed[i]].arrived_s - start; };
  Means means;
  std::vector<double> steps;
  for (size_t i = 0; i < n; ++i) {
    const auto &last = means.sums.back();
    means.sums.push_back(
        {last.east + fixes[timed[i]].at.east, last.north + fixes[timed[i]].at.north, last.time + time(i)});
    if (i > 0)
      steps.push_back(time(i) - time(i - 1));
  }
  const double window = std::max(window_s, windowFixes * median(std::move(steps)));
  size_t low = 0, high = 0;
  for (size_t i = 0; i + 1 < n; ++i) { // from fix i to i + 1
    while (time(low) < time(i) - window)
      ++low;
    high = std::max(high, i + 1);
    while (high + 1 < n && time(high + 1) <= time(i + 1) + window)
      ++high;
    const auto a = means.of(low, i + 1), b = means.of(i + 1, high + 1);
    if (!(b.time > a.time && std::hypot(b.east - a.east, b.north - a.north) < standSpeed * (b.time - a.time)))
      continue;
    const double edge = time(i + 1) - time(i) < window ? edgeShare * window : 0;
    const double arrived = std::max(time(i) - edge, 0.0), left = std::min(time(i + 1) + edge, time(n - 1));
    if (!stands.empty() && stands.back().left >= arrived)
      stands.back().left = std::max(stands.back().left, left);
    else
      stands.push_back({0, 0, arrived, left});
  }
  size_t i = 0;
  for (Stretch &stand : stands) {
    while (time(i) < stand.arrived)
      ++i;
    stand.first = i;
    while (i + 1 < n && time(i + 1) <= stand.left)
      ++i;
    stand.last = i;
    stand.arrived = std::min(stand.arrived, time(stand.first)) + start;
    stand.left = std::max(stand.left, time(stand.last)) + start;
  }
  return stands;
}

void gatherStands(CleanTrack &track) {
  std::vector<size_t> timed;
  for (size_t i = 0; i < track.fixes.size(); ++i)
    if (track.fixes[i].arrived_s)
      timed.push_back(i);
  std::vector<CleanFix> kept;
  size_t next = 0; // the first fix not dealt with yet
  for (const Stretch &stretch : standsAmong(track.fixes, timed)) {
    if (stretch.left - stretch.arrived < leastStand_s)
      continue;
    const size_t first = timed[stretch.first], last = timed[stretch.last];
    if (first < next)
      continue;
    kept.insert(kept.end(), track.fixes.begin() + std::ptrdiff_t(next), track.fixes.begin() + std::ptrdiff_t(first));
    CleanFix stand = track.fixes[first];
    stand.stand = true;
    stand.arrived_s = stretch.arrived;
    stand.left_s = stretch.left;
    stand.at = {0, 0};
    for (size_t i = first; i <= last; ++i) {
      stand.at.east += track.fixes[i].at.east / double(last - first + 1);
      stand.at.north += track.fixes[i].at.north / double(last - first + 1);
    }
    kept.push_back(stand);
    ++track.stands;
    next = last + 1;
  }
  kept.insert(kept.end(), track.fixes.begin() + std::ptrdiff_t(next), track.fixes.end());
  track.fixes = std::move(kept);
}
} // namespace

CleanTrack cleanTrack(const std::vector<TrackFix> &fixes, const LocalPlane &plane, const TrackRule &rule,
                      const Progress &progress) {
  CleanTrack track;
  track.fixes.reserve(fixes.size());
  for (size_t i = 0; i < fixes.size(); ++i) {
    if (i % 4096 == 0)
      progress.check();
    track.fixes.push_back({plane.toPlane(fixes[i].place), fixes[i].time_s, fixes[i].time_s, fixes[i].after_gap, false});
  }
  dropBackwards(track);
  dropDuplicates(track);
  dropSpikes(track, rule, progress);
  progress.check();
  gatherStands(track);
  return track;
}

} // namespace brushline
