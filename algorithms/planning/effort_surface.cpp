// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/effort_surface.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace brushline {

namespace {
constexpr float never = std::numeric_limits<float>::infinity();
constexpr int startRadius = 24; // cells
// Directions go round, so that the neighbours of one are the next and the one before; even ones are straight.
constexpr int columnOf[8] = {1, 1, 0, -1, -1, -1, 0, 1}, rowOf[8] = {0, 1, 1, 1, 0, -1, -1, -1};
constexpr uint8_t fromSource = 8, settled = 0x80, directionMask = 0x0f;
constexpr float diagonal = 1.41421356f;
constexpr size_t ahead = 6; // cells of a bucket; fetched before they are looked at
} // namespace

//! Cells to settle, by time.
struct EffortSurface::Ring {
  double width; // seconds
  float perSecond;
  uint32_t mask;
  int64_t current = 0;
  size_t waiting = 0;
  std::vector<std::vector<uint32_t>> buckets;

  Ring(double shortest, double longest) {
    constexpr double mostBuckets = 1 << 16;
    width = std::max(shortest, longest / (mostBuckets - 4));
    perSecond = float(1 / width);
    size_t count = 4;
    while (double(count) < longest / width + 4)
      count *= 2;
    mask = uint32_t(count - 1);
    buckets.resize(count);
  }
  int64_t bucketOf(float seconds) const { return int64_t(seconds * perSecond); }
  void push(uint32_t cell, float seconds) {
    // Never behind; what lies beyond the ring waits in its last bucket and is put in its place then.
    const int64_t bucket = std::clamp(bucketOf(seconds), current, current + int64_t(mask));
    buckets[size_t(bucket) & mask].push_back(cell);
    ++waiting;
  }
};

double EffortSurface::lineSeconds(CellPosition from, CellPosition to) const {
  const double seconds = mGrid.legSeconds(from, to, mPace);
  const auto stepped = [&](CellPosition at) { return mGrid.isOpen(int64_t(at.column), int64_t(at.row)); };
  if (seconds < never && mAllowed && !(stepped(from) && stepped(to)) && !mAllowed(from, to))
    return never;
  return seconds;
}

std::vector<std::pair<size_t, double>> EffortSurface::lastCells(CellPosition place) const {
  std::vector<std::pair<size_t, double>> cells;
  if (!mGrid.contains(place))
    return cells;
  const auto column = int64_t(place.column), row = int64_t(place.row);
  if (mGrid.isOpen(column, row))
    return {{mGrid.index(column, row), 0}};
  for (int k = 0; k < 8; ++k) {
    const CellPosition centre{double(column + columnOf[k]) + 0.5, double(row + rowOf[k]) + 0.5};
    if (const double seconds = lineSeconds(centre, place); seconds < never)
      cells.emplace_back(mGrid.index(column + columnOf[k], row + rowOf[k]), seconds);
  }
  return cells;
}

void EffortSurface::start(const std::vector<CellPosition> &sources) {
  mSources = sources;
  mStarts.clear();
  for (const CellPosition &source : sources) {
    if (!mGrid.contains(source))
      continue;
    const auto middleColumn = int64_t(source.column), middleRow = int64_t(source.row);
    for (int64_t row = std::max<int64_t>(0, middleRow - startRadius);
         row <= std::min(mGrid.rows() - 1, middleRow + startRadius); ++row)
      for (int64_t column = std::max<int64_t>(0, middleColumn - startRadius);
           column <= std::min(mGrid.columns() - 1, middleColumn + startRadius); ++column) {
        if (std::hypot(double(column - middleColumn), double(row - middleRow)) > startRadius + 0.5 ||
            !mGrid.isOpen(column, row))
          continue;
        const auto seconds = float(lineSeconds(source, {double(column) + 0.5, double(row) + 0.5}));
        const size_t cell = mGrid.index(column, row);
        if (seconds < mSeconds[cell]) {
          mSeconds[cell] = seconds;
          mFrom[cell] = fromSource;
          mStarts.emplace_back(seconds, uint32_t(cell));
        }
      }
  }
  std::sort(mStarts.begin(), mStarts.end());
}

template <bool Level> void EffortSurface::refine(size_t cell) {
  const int64_t stride = mGrid.stride();
  const int64_t step[8] = {1, 1 + stride, stride, stride - 1, -1, -1 - stride, -stride, 1 - stride};
  const int from = mFrom[cell];
  const size_t near = size_t(int64_t(cell) + step[from]), one = size_t(int64_t(cell) + step[(from + 1) & 7]),
               other = size_t(int64_t(cell) + step[(from + 7) & 7]);
  const bool straightFirst = (from & 1) == 0;
  const auto between = [&](size_t second) {
    refineBetween<Level>(cell, straightFirst ? near : second, straightFirst ? second : near);
  };
  if constexpr (Level) {
    between(mSeconds[one] < mSeconds[other] ? one : other);
  } else { // on a slope the quickest way need not come from the side that is reached sooner
    between(one);
    between(other);
  }
}

template <bool Level> void EffortSurface::refineBetween(size_t cell, size_t straight, size_t slanting) {
  const uint8_t *codes = mGrid.codes();
  const float *slowness = mGrid.slowness();
  const float a = mSeconds[straight], b = mSeconds[slanting];
  const float difference = a - b;
  if (!(a < never && b < never) || (Level && !(difference > 0)))
    return;
  const float here = slowness[codes[cell]], fa = slowness[codes[straight]], fb = slowness[codes[slanting]];
  const auto metres = float(mGrid.cell().metres());
  if constexpr (Level) {
    const float half = 0.5f * metres * mPace.level();
    const float cost = half * (here + fa);
    // The least of a - s * difference + cost * sqrt(1 + s^2) over s, the place between the two neighbours.
    const float squared = cost * cost - difference * difference;
    if (!(squared > difference * difference)) // s < 1
      return;
    const float inverse = 1 / std::sqrt(squared), s = difference * inverse;
    const float seconds = a - s * difference + half * (here + fa + s * (fb - fa)) * (cost * inverse);
    if (seconds < mSeconds[cell])
      mSeconds[cell] = seconds;
  } else {
    const float *heights = mGrid.heights();
    const float height = heights[cell], ha = heights[straight], hb = heights[slanting];
    const auto over = [&](float s) {
      const float run = std::sqrt(1 + s * s) * metres;
      return a - s * difference +
             0.5f * run * (here + fa + s * (fb - fa)) * mPace.at((height - ha - s * (hb - ha)) / run);
    };
    const float start = over(0), end = over(1);
    const float cost = start - a, squared = cost * cost - difference * difference;
    float s = difference > 0 && squared > difference * difference ? difference / std::sqrt(squared) : 0.5f;
    s = std::clamp(s, 0.05f, 0.95f);
    const float middle = over(s);
    float best = middle;
    // The least of the parabola through the three.
    const float slopeStart = (middle - start) / s, slopeEnd = (end - middle) / (1 - s);
    const float curve = slopeEnd - slopeStart;
    if (curve > 0) {
      const float least = 0.5f * (s - slopeStart / curve);
      if (least > 0 && least < 1)
        best = std::min(best, over(least));
    }
    if (best < mSeconds[cell])
      mSeconds[cell] = best;
  }
}

template <bool Level>
void EffortSurface::settleAll(Ring &ring, const Goal *goal, const Progress &progress,
                              const std::function<void(size_t)> &told) {
  const int64_t stride = mGrid.stride();
  const int64_t step[8] = {1, 1 + stride, stride, stride - 1, -1, -1 - stride, -stride, 1 - stride};
  const uint8_t *codes = mGrid.codes();
  const float *heights = mGrid.heights(), *slowness = mGrid.slowness();
  const auto metres = float(mGrid.cell().metres());
  const float halfStraight = 0.5f * metres * (Level ? mPace.level() : 1.0f), halfSlanting = halfStraight * diagonal;
  const float perStraight = 1 / metres, perSlanting = 1 / (metres * diagonal);
  const auto goalCells = goal ? lastCells(goal->at) : std::vector<std::pair<size_t, double>>();
  float last = never; // seconds to go on to
  size_t nextStart = 0, count = 0;

  while (ring.waiting > 0 || nextStart < mStarts.size()) {
    while (nextStart < mStarts.size() && ring.bucketOf(mStarts[nextStart].first) <= ring.current) {
      ring.push(mStarts[nextStart].second, mStarts[nextStart].first);
      ++nextStart;
    }
    if (float(double(ring.current) * ring.width) > last)
      break;
    // Cells may join the bucket that is being emptied, so it is not held by reference.
    const size_t slot = size_t(ring.current) & ring.mask;
    for (size_t i = 0; i < ring.buckets[slot].size(); ++i) {
      const uint32_t cell = ring.buckets[slot][i];
      --ring.waiting;
      if (i + ahead < ring.buckets[slot].size()) {
        const auto soon = int64_t(ring.buckets[slot][i + ahead]);
        for (const int64_t near : {soon - stride, soon, soon + stride}) {
          __builtin_prefetch(mSeconds.data() + near);
          __builtin_prefetch(mFrom.data() + near);
          __builtin_prefetch(codes + near);
          if constexpr (!Level)
            __builtin_prefetch(heights + near);
        }
      }
      if (mFrom[cell] & settled)
        continue;
      if (const int64_t bucket = ring.bucketOf(mSeconds[cell]); bucket > ring.current) {
        ring.push(cell, mSeconds[cell]); // from beyond the ring
        continue;
      }
      if (mFrom[cell] < fromSource)
        refine<Level>(cell);
      mFrom[cell] |= settled;
      if ((++count & 0x3fff) == 0) {
        progress.check();
        if (told)
          told(count);
      }
      const float here = mSeconds[cell], slow = slowness[codes[cell]];
      const float height = Level ? 0 : heights[cell];
      for (const auto &[goalCell, seconds] : goalCells)
        if (cell == goalCell)
          last = std::min(last, here + float(seconds + goal->beyond.seconds()));
      float straightSlow[4];
      const auto reach = [&](size_t other, int direction, float otherSlow, bool straight) {
        float seconds = (straight ? halfStraight : halfSlanting) * (slow + otherSlow);
        if constexpr (!Level)
          seconds *= mPace.at((heights[other] - height) * (straight ? perStraight : perSlanting));
        seconds += here;
        if (seconds < mSeconds[other]) {
          mSeconds[other] = seconds;
          mFrom[other] = uint8_t((direction + 4) & 7); // not settled, or no more
          ring.push(uint32_t(other), seconds);
        }
      };
      for (int k = 0; k < 4; ++k) {
        const auto other = size_t(int64_t(cell) + step[2 * k]);
        straightSlow[k] = slowness[codes[other]];
        reach(other, 2 * k, straightSlow[k], true);
      }
      for (int k = 0; k < 4; ++k) {
        if (straightSlow[k] == never && straightSlow[(k + 1) & 3] == never)
          continue; // no way between two closed cells that touch at a corner
        const auto other = size_t(int64_t(cell) + step[2 * k + 1]);
        reach(other, 2 * k + 1, slowness[codes[other]], false);
      }
    }
    std::vector<uint32_t>().swap(ring.buckets[slot]);
    ++ring.current;
    if ((ring.current & 0xff) == 0)
      progress.check();
  }
  mSearchedTo = ring.waiting > 0 ? last : never;
}

void EffortSurface::search(const std::vector<CellPosition> &sources, const Goal *goal, const Progress &progress,
                           const std::function<void(size_t)> &told) {
  // Bit by bit: filling a hundred million cells takes longer than a cancel may.
  mSeconds.clear();
  mFrom.clear();
  mSeconds.reserve(mGrid.framedCells());
  mFrom.reserve(mGrid.framedCells());
  while (mSeconds.size() < mGrid.framedCells()) {
    progress.check();
    const size_t more = std::min(mGrid.framedCells(), mSeconds.size() + (size_t(1) << 20));
    mSeconds.resize(more, never);
    mFrom.resize(more, 0);
  }
  start(sources);
  const double least = double(mGrid.leastSlowness()) * mGrid.cell().metres();
  const double most = double(mGrid.mostSlowness()) * mGrid.cell().metres() * diagonal;
  mSearchedTo = never;
  if (!(least < HUGE_VAL))
    return;
  // A refined time is never nearer than 0.7 of a step to those it comes from.
  if (mGrid.level()) {
    Ring ring(0.7 * least * double(mPace.level()), most * double(mPace.level()));
    settleAll<true>(ring, goal, progress, told);
  } else {
    Ring ring(0.7 * least * double(mPace.least()), most * double(mPace.most()));
    settleAll<false>(ring, goal, progress, told);
  }
}

double EffortSurface::secondsTo(CellPosition place) const {
  if (!mGrid.contains(place))
    return never;
  double best = never;
  const auto middleColumn = int64_t(place.column), middleRow = int64_t(place.row);
  for (int64_t row = std::max<int64_t>(0, middleRow - 1); row <= std::min(mGrid.rows() - 1, middleRow + 1); ++row)
    for (int64_t column = std::max<int64_t>(0, middleColumn - 1);
         column <= std::min(mGrid.columns() - 1, middleColumn + 1); ++column)
      if (const float to = secondsAt(column, row); to < never)
        best = std::min(best, double(to) + lineSeconds({double(column) + 0.5, double(row) + 0.5}, place));
  for (const CellPosition &source : mSources)
    if (std::hypot(source.column - place.column, source.row - place.row) < startRadius)
      best = std::min(best, lineSeconds(source, place));
  return best;
}

double EffortSurface::leastSecondsTo(CellPosition place) const {
  if (!mGrid.contains(place))
    return 0;
  // From the cell's centre by half a diagonal at the most.
  const double centre = std::min(secondsAt(int64_t(place.column), int64_t(place.row)), mSearchedTo);
  const double away =
      std::hypot(place.column - std::floor(place.column) - 0.5, place.row - std::floor(place.row) - 0.5);
  const double slow = double(mGrid.slowness()[mGrid.kindAt(int64_t(place.column), int64_t(place.row))]);
  return centre < never ? std::max(0.0, centre - away * mGrid.cell().metres() * double(mPace.level()) * slow * 1.5) : 0;
}

std::vector<CellPosition> EffortSurface::wayTo(CellPosition place) const {
  std::vector<CellPosition> way;
  if (!(secondsTo(place) < never))
    return way;
  const int64_t stride = mGrid.stride();
  const auto cellOf = [&](CellPosition at) { return mGrid.index(int64_t(at.column), int64_t(at.row)); };
  const auto nearestSource = [&](CellPosition at) {
    CellPosition best = mSources.front();
    double least = HUGE_VAL;
    for (const CellPosition &source : mSources)
      if (const double seconds = lineSeconds(source, at); seconds < least) {
        least = seconds;
        best = source;
      }
    return best;
  };
  way.push_back(place);
  CellPosition at = place;
  // The cell of the place may itself never have been reached: go to the neighbour or the source it is reached from.
  if (!(mSeconds[cellOf(at)] < never)) {
    double best = never;
    CellPosition next = at;
    for (int k = 0; k < 8; ++k) {
      const CellPosition centre{std::floor(place.column) + columnOf[k] + 0.5, std::floor(place.row) + rowOf[k] + 0.5};
      if (!mGrid.contains(centre) || !(mSeconds[cellOf(centre)] < never))
        continue;
      const double seconds = double(mSeconds[cellOf(centre)]) + lineSeconds(centre, place);
      if (seconds < best) {
        best = seconds;
        next = centre;
      }
    }
    const CellPosition source = nearestSource(place);
    if (std::hypot(source.column - place.column, source.row - place.row) < startRadius &&
        lineSeconds(source, place) <= best)
      return {source, place};
    at = next;
    if (best < never)
      way.push_back(at);
  }
  const size_t mostSteps = 8 * mGrid.framedCells();
  for (size_t i = 0; i < mostSteps && mSeconds[cellOf(at)] < never; ++i) {
    const size_t cell = cellOf(at);
    const int from = mFrom[cell] & directionMask;
    if (from == fromSource) {
      const CellPosition centre{std::floor(at.column) + 0.5, std::floor(at.row) + 0.5};
      const CellPosition source = nearestSource(at);
      if (!(lineSeconds(source, at) < never))
        way.push_back(centre); // from there it is open
      way.push_back(nearestSource(way.back()));
      break;
    }
    const float here = mSeconds[cell];
    const auto pull = [&](size_t before, size_t after) { // towards the sooner neighbour
      const float less = std::min(mSeconds[before], mSeconds[after]);
      if (!(less < here))
        return 0.0;
      return mSeconds[before] < mSeconds[after] ? -double(here - less) : double(here - less);
    };
    double columns = pull(cell - 1, cell + 1), rows = pull(cell - size_t(stride), cell + size_t(stride));
    const double length = std::hypot(columns, rows);
    CellPosition next = length > 0 ? CellPosition{at.column + columns / length, at.row + rows / length} : at;
    const bool falls = mGrid.contains(next) && cellOf(next) != cell && mSeconds[cellOf(next)] < here &&
                       mGrid.legSeconds(at, next, mPace) < never;
    if (!falls) { // from centre to centre there is always a way
      const CellPosition centre{std::floor(at.column) + 0.5, std::floor(at.row) + 0.5};
      const bool centred = at.column == centre.column && at.row == centre.row;
      next = centred ? CellPosition{centre.column + columnOf[from], centre.row + rowOf[from]} : centre;
    }
    at = next;
    way.push_back(at);
  }
  std::reverse(way.begin(), way.end());
  return way;
}

EffortSurface::Enclosure EffortSurface::enclosure(CellPosition seenFrom, const Progress &progress) const {
  Enclosure result;
  const uint8_t *codes = mGrid.codes();
  const float *slowness = mGrid.slowness();
  for (int64_t row = 0; row < mGrid.rows(); ++row) {
    progress.check();
    for (int64_t column = 0; column < mGrid.columns(); ++column) {
      const size_t cell = mGrid.index(column, row);
      if (!(mSeconds[cell] < never))
        continue;
      ++result.cells;
      for (int k = 0; k < 8; k += 2) {
        const size_t other = size_t(int64_t(cell) + columnOf[k] + rowOf[k] * mGrid.stride());
        if (slowness[codes[other]] < never)
          continue;
        ++result.borders[codes[other]];
        const double away = std::hypot(double(column) + 0.5 + columnOf[k] - seenFrom.column,
                                       double(row) + 0.5 + rowOf[k] - seenFrom.row);
        auto found = result.nearest_cells.emplace(codes[other], away).first;
        found->second = std::min(found->second, away);
      }
    }
  }
  return result;
}

} // namespace brushline
