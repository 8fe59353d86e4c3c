// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/course_spots.h"

#include <algorithm>
#include <map>
#include <utility>

namespace brushline {

namespace {
constexpr size_t dartsEach = 30; // Common practice, no source.

// Points in square cells, to find those near another one.
class Cells {
public:
  explicit Cells(double apart) : mApart(apart), mSize(std::max<int64_t>(1, int64_t(std::ceil(apart * 1000)))) {}

  bool hasRoom(const GroundPoint &point) const {
    const auto [column, row] = cellOf(point);
    for (int64_t x = column - 1; x <= column + 1; ++x)
      for (int64_t y = row - 1; y <= row + 1; ++y)
        if (const auto found = mPoints.find({x, y}); found != mPoints.end())
          for (const GroundPoint &other : found->second)
            if (other == point || metresBetween(other, point) <= mApart)
              return false;
    return true;
  }
  void add(const GroundPoint &point) { mPoints[cellOf(point)].push_back(point); }

private:
  std::pair<int64_t, int64_t> cellOf(const GroundPoint &point) const {
    const auto down = [&](int64_t value) { return value >= 0 ? value / mSize : -((-value + mSize - 1) / mSize); };
    return {down(point.east), down(point.north)};
  }

  double mApart;
  int64_t mSize;
  std::map<std::pair<int64_t, int64_t>, std::vector<GroundPoint>> mPoints;
};
} // namespace

std::vector<size_t> spotsApart(const std::vector<GroundPoint> &spots, const std::vector<GroundPoint> &fixed,
                               double apart, CourseRandom &random) {
  Cells cells(apart);
  for (const GroundPoint &point : fixed)
    cells.add(point);
  std::vector<size_t> order(spots.size()), chosen;
  for (size_t i = 0; i < order.size(); ++i)
    order[i] = i;
  random.shuffle(order);
  for (const size_t i : order)
    if (cells.hasRoom(spots[i])) {
      cells.add(spots[i]);
      chosen.push_back(i);
    }
  std::sort(chosen.begin(), chosen.end());
  return chosen;
}

std::vector<GroundPoint> scatteredSpots(const CourseGround &ground, const std::vector<GroundPoint> &fixed, double apart,
                                        size_t most, const std::function<bool(const GroundPoint &)> &allowed,
                                        CourseRandom &random, const Progress &progress) {
  const GroundPoint low = ground.low(), high = ground.high();
  Cells cells(apart);
  for (const GroundPoint &point : fixed)
    cells.add(point);
  std::vector<GroundPoint> spots;
  for (size_t dart = 0; dart < dartsEach * most && spots.size() < most; ++dart) {
    if (dart % 64 == 0)
      progress.check();
    const int64_t east = low.east + int64_t(random.below(uint64_t(high.east - low.east + 1)));
    const int64_t north = low.north + int64_t(random.below(uint64_t(high.north - low.north + 1)));
    const GroundPoint point{east, north};
    if (cells.hasRoom(point) && ground.holds(point) && !ground.avoids(point) && (!allowed || allowed(point))) {
      cells.add(point);
      spots.push_back(point);
    }
  }
  return spots;
}

} // namespace brushline
