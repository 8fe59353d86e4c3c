// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/effort_grid.h"

#include "walking/walking_time.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace brushline {

PaceTable::PaceTable(const Walker &walker) : mSeconds(size_t(entries)) {
  constexpr Length metre = Length::metres(1);
  for (int i = 0; i < entries; ++i)
    mSeconds[size_t(i)] =
        float(walkingTime(metre, Length::metres(double(i) / double(scale) - double(range)), walker).seconds());
  const auto ends = std::minmax_element(mSeconds.begin(), mSeconds.end());
  mLeast = *ends.first;
  mMost = *ends.second;
}

EffortGrid::EffortGrid(int64_t columns, int64_t rows, Length cell, bool level, const Progress &progress)
    : mColumns(columns), mRows(rows), mStride(columns + 2), mCell(cell.metres()) {
  if (columns < 1 || rows < 1 || !(mCell > 0) || (columns + 2) * (rows + 2) > int64_t(UINT32_MAX))
    throw std::invalid_argument("a grid of effort needs cells, and no more than 2^32");
  const auto cells = size_t((columns + 2) * (rows + 2));
  // Bit by bit: filling a hundred million cells takes longer than a cancel may.
  mCodes.reserve(cells);
  mHeights.reserve(level ? 0 : cells);
  while (mCodes.size() < cells) {
    progress.check();
    mCodes.resize(std::min(cells, mCodes.size() + (size_t(1) << 20)), uint8_t(edge));
    if (!level)
      mHeights.resize(mCodes.size(), std::numeric_limits<float>::quiet_NaN());
  }
  std::fill(std::begin(mSlowness), std::end(mSlowness), closed);
  mKinds = {{"edge", std::nullopt}, {"no height", std::nullopt}, {"steep", std::nullopt}, {"barrier", std::nullopt}};
}

int EffortGrid::addKind(const GroundKind &kind) {
  for (size_t i = 0; i < mKinds.size(); ++i)
    if (mKinds[i].name == kind.name && mKinds[i].speed_factor == kind.speed_factor)
      return int(i);
  if (int(mKinds.size()) >= mostKinds)
    throw std::length_error("more than 250 kinds of ground");
  if (kind.speed_factor && *kind.speed_factor > 0)
    mSlowness[mKinds.size()] = float(1 / *kind.speed_factor);
  mKinds.push_back(kind);
  return int(mKinds.size()) - 1;
}

float EffortGrid::leastSlowness() const { return *std::min_element(mSlowness, mSlowness + mKinds.size()); }

float EffortGrid::mostSlowness() const {
  float most = 0;
  for (size_t i = 0; i < mKinds.size(); ++i)
    if (mSlowness[i] < closed)
      most = std::max(most, mSlowness[i]);
  return most;
}

void EffortGrid::closeSteep(int64_t row, double mostSlope) {
  for (int64_t column = 0; column < mColumns; ++column) {
    const size_t at = index(column, row);
    if (!(mSlowness[mCodes[at]] < closed))
      continue;
    const float here = mHeights[at];
    if (std::isnan(here)) {
      mCodes[at] = uint8_t(noHeight);
      continue;
    }
    const auto difference = [&](size_t before, size_t after) {
      const float a = mHeights[before], b = mHeights[after];
      if (!std::isnan(a) && !std::isnan(b))
        return double(b - a) / (2 * mCell);
      return std::isnan(a) ? (std::isnan(b) ? 0.0 : double(b - here) / mCell) : double(here - a) / mCell;
    };
    const auto stride = size_t(mStride);
    if (std::hypot(difference(at - 1, at + 1), difference(at - stride, at + stride)) > mostSlope)
      mCodes[at] = uint8_t(steep);
  }
}

namespace {

// Calls visit(column, row) for every cell that a straight line touches.
template <typename Visit> void eachCellTouched(CellPosition from, CellPosition to, Visit visit) {
  constexpr double hair = 1e-9; // what lies on a border touches the cells on both sides
  const auto lowRow = int64_t(std::floor(std::min(from.row, to.row) - hair)),
             highRow = int64_t(std::floor(std::max(from.row, to.row) + hair));
  const double drow = to.row - from.row, dcolumn = to.column - from.column;
  for (int64_t row = lowRow; row <= highRow; ++row) {
    double first = from.column, last = to.column;
    if (std::abs(drow) > 0) {
      const double a = std::clamp((double(row) - from.row) / drow, 0.0, 1.0);
      const double b = std::clamp((double(row + 1) - from.row) / drow, 0.0, 1.0);
      first = from.column + a * dcolumn;
      last = from.column + b * dcolumn;
    }
    const auto low = int64_t(std::floor(std::min(first, last) - hair));
    const auto high = int64_t(std::floor(std::max(first, last) + hair));
    for (int64_t column = low; column <= high; ++column)
      visit(column, row);
  }
}

double turnOf(CellPosition a, CellPosition b, CellPosition c) {
  return (b.column - a.column) * (c.row - a.row) - (b.row - a.row) * (c.column - a.column);
}

bool within(CellPosition a, CellPosition b, CellPosition p) {
  return std::min(a.column, b.column) <= p.column && p.column <= std::max(a.column, b.column) &&
         std::min(a.row, b.row) <= p.row && p.row <= std::max(a.row, b.row);
}

// Whether two closed pieces of line have a point in common.
bool meet(CellPosition a, CellPosition b, CellPosition p, CellPosition q) {
  const double p1 = turnOf(a, b, p), q1 = turnOf(a, b, q), a1 = turnOf(p, q, a), b1 = turnOf(p, q, b);
  if (((p1 > 0 && q1 < 0) || (p1 < 0 && q1 > 0)) && ((a1 > 0 && b1 < 0) || (a1 < 0 && b1 > 0)))
    return true;
  return (p1 == 0 && within(a, b, p)) || (q1 == 0 && within(a, b, q)) || (a1 == 0 && within(p, q, a)) ||
         (b1 == 0 && within(p, q, b));
}

// Cuts a line to a box; false when nothing is left.
bool cutToBox(CellPosition &from, CellPosition &to, double columns, double rows) {
  double low = 0, high = 1;
  const double dcolumn = to.column - from.column, drow = to.row - from.row;
  const auto cut = [&](double start, double delta, double most) {
    if (delta == 0) {
      if (start < 0 || start > most)
        high = -1;
      return;
    }
    const double a = -start / delta, b = (most - start) / delta;
    low = std::max(low, std::min(a, b));
    high = std::min(high, std::max(a, b));
  };
  cut(from.column, dcolumn, columns);
  cut(from.row, drow, rows);
  if (!(low <= high))
    return false;
  const CellPosition start = from;
  if (high < 1)
    to = {start.column + high * dcolumn, start.row + high * drow};
  if (low > 0)
    from = {start.column + low * dcolumn, start.row + low * drow};
  return true;
}

} // namespace

float EffortGrid::slownessForLegs(size_t cell) const {
  const float slowness = mSlowness[mCodes[cell]];
  if (slowness < closed || mOpenForLegs.empty())
    return slowness;
  const auto found = mOpenForLegs.find(cell);
  return found == mOpenForLegs.end() ? slowness : mSlowness[found->second];
}

void EffortGrid::closeByBarrier(size_t cell) {
  if (mCodes[cell] != noHeight && mCodes[cell] != steep)
    mCodes[cell] = uint8_t(barrier);
}

void EffortGrid::addBarrierLine(const std::vector<CellPosition> &line) {
  const auto close = [&](double column, double row) {
    const auto c = int64_t(std::floor(column)), r = int64_t(std::floor(row));
    if (c >= 0 && r >= 0 && c < mColumns && r < mRows)
      closeByBarrier(index(c, r));
  };
  for (size_t i = 1; i < line.size(); ++i) {
    CellPosition a = line[i - 1], b = line[i];
    if (!std::isfinite(a.column + a.row + b.column + b.row) || !cutToBox(a, b, double(mColumns), double(mRows)))
      continue;
    const auto segment = uint32_t(mSegments.size());
    mSegments.push_back({line[i - 1], line[i]});
    eachCellTouched(a, b, [&](int64_t column, int64_t row) {
      if (column >= 0 && row >= 0 && column < mColumns && row < mRows)
        mSegmentsOf.push_back({uint32_t(index(column, row)), segment});
    });
    // The middle lines of cells that are crossed, ends included.
    const auto middles = [](double from, double to) {
      return std::pair(int64_t(std::ceil(std::min(from, to) - 0.5)), int64_t(std::floor(std::max(from, to) - 0.5)));
    };
    const auto [firstRow, lastRow] = middles(a.row, b.row);
    for (int64_t row = firstRow; row <= lastRow; ++row)
      close(b.row == a.row ? a.column
                           : a.column + (double(row) + 0.5 - a.row) / (b.row - a.row) * (b.column - a.column),
            double(row) + 0.5);
    const auto [firstColumn, lastColumn] = middles(a.column, b.column);
    for (int64_t column = firstColumn; column <= lastColumn; ++column)
      close(double(column) + 0.5,
            b.column == a.column ? a.row
                                 : a.row + (double(column) + 0.5 - a.column) / (b.column - a.column) * (b.row - a.row));
  }
}

void EffortGrid::closeInside(const std::vector<std::vector<CellPosition>> &rings) {
  double top = HUGE_VAL, bottom = -HUGE_VAL;
  for (const auto &ring : rings)
    for (const CellPosition &point : ring) {
      top = std::min(top, point.row);
      bottom = std::max(bottom, point.row);
    }
  std::vector<double> crossings;
  for (auto row = int64_t(std::max(0.0, std::floor(top))); row < mRows && double(row) <= bottom; ++row) {
    const double y = double(row) + 0.5;
    crossings.clear();
    for (const auto &ring : rings)
      for (size_t i = 0; i < ring.size(); ++i) {
        const CellPosition &a = ring[i], &b = ring[(i + 1) % ring.size()];
        if ((a.row > y) != (b.row > y))
          crossings.push_back(a.column + (y - a.row) / (b.row - a.row) * (b.column - a.column));
      }
    std::sort(crossings.begin(), crossings.end());
    for (size_t i = 0; i + 1 < crossings.size(); i += 2) {
      const auto first = int64_t(std::ceil(std::max(0.0, crossings[i] - 0.5)));
      const double last = std::min(double(mColumns) - 1, crossings[i + 1] - 0.5);
      for (int64_t column = first; double(column) <= last; ++column)
        closeByBarrier(index(column, row));
    }
  }
}

void EffortGrid::finishBarriers() {
  std::sort(mSegmentsOf.begin(), mSegmentsOf.end());
  mSegmentsOf.erase(std::unique(mSegmentsOf.begin(), mSegmentsOf.end()), mSegmentsOf.end());
  if (mSegmentsOf.empty())
    return;
  mTouched.assign(mCodes.size(), false);
  for (const auto &[cell, segment] : mSegmentsOf)
    mTouched[cell] = true;
}

bool EffortGrid::touchesSegments(size_t cell, CellPosition from, CellPosition to) const {
  auto found = std::lower_bound(mSegmentsOf.begin(), mSegmentsOf.end(), std::pair(uint32_t(cell), uint32_t(0)));
  for (; found != mSegmentsOf.end() && found->first == cell; ++found)
    if (meet(from, to, mSegments[found->second].from, mSegments[found->second].to))
      return true;
  return false;
}

bool EffortGrid::crossesBarrier(CellPosition from, CellPosition to) const {
  bool crosses = false;
  if (!mTouched.empty())
    eachCellTouched(from, to, [&](int64_t column, int64_t row) {
      if (!crosses && column >= 0 && row >= 0 && column < mColumns && row < mRows && mTouched[index(column, row)])
        crosses = touchesSegments(index(column, row), from, to);
    });
  return crosses;
}

double EffortGrid::heightAt(double column, double row) const {
  const double c = std::clamp(column - 0.5, 0.0, double(mColumns - 1));
  const double r = std::clamp(row - 0.5, 0.0, double(mRows - 1));
  const auto left = std::min(int64_t(c), std::max<int64_t>(mColumns - 2, 0));
  const auto top = std::min(int64_t(r), std::max<int64_t>(mRows - 2, 0));
  const double x = c - double(left), y = r - double(top);
  const float *cell = mHeights.data() + index(left, top);
  // A cell of no weight may be without height.
  const double upper = x > 0 ? cell[0] + x * (cell[1] - cell[0]) : cell[0];
  if (!(y > 0))
    return upper;
  const float *below = cell + mStride;
  const double lower = x > 0 ? below[0] + x * (below[1] - below[0]) : below[0];
  return upper + y * (lower - upper);
}

double EffortGrid::legSeconds(CellPosition from, CellPosition to, const PaceTable &pace, double budget) const {
  if (!contains(from) || !contains(to))
    return closed;
  const double dcolumn = to.column - from.column, drow = to.row - from.row;
  const double cells = std::hypot(dcolumn, drow), metres = cells * mCell;
  if (!(cells > 0))
    return 0;
  const auto firstCell = [](double at, double delta) {
    const double cell = std::floor(at);
    return int64_t(delta < 0 && cell == at ? cell - 1 : cell);
  };
  const int64_t column = firstCell(from.column, dcolumn), row = firstCell(from.row, drow);
  const int64_t columnStep = dcolumn < 0 ? -1 : 1, rowStep = (drow < 0 ? -1 : 1) * mStride;
  const auto border = [](double at, double delta, int64_t cell) {
    return delta == 0 ? HUGE_VAL : (double(cell + (delta > 0)) - at) / delta;
  };
  double nextColumn = border(from.column, dcolumn, column), nextRow = border(from.row, drow, row);
  const double acrossColumn = std::abs(1 / dcolumn), acrossRow = std::abs(1 / drow);
  auto cell = int64_t(index(std::max<int64_t>(column, -1), std::max<int64_t>(row, -1)));
  const bool sloped = !level();
  const double step = 1 / std::max(1.0, std::ceil(cells * (1 - 1e-12)));
  double nextStep = sloped ? 0 : HUGE_VAL, height = sloped ? heightAt(from.column, from.row) : 0;
  int64_t steps = 0;
  double secondsPerLeg = double(pace.level()) * metres; // at the slope here, without the cover
  double seconds = 0, at = 0;
  constexpr double sliver = 1e-10;
  for (;;) {
    if (at >= nextStep - sliver && at < 1) {
      nextStep = ++steps * step;
      const double next = heightAt(from.column + nextStep * dcolumn, from.row + nextStep * drow);
      secondsPerLeg = double(pace.at(float((next - height) / (step * metres)))) * metres;
      height = next;
    }
    const double end = std::min({nextColumn, nextRow, nextStep, 1.0});
    if (end - at > sliver) {
      const float slowness = slownessForLegs(size_t(cell));
      if (!(slowness < closed))
        return closed;
      if (!mTouched.empty() && mTouched[size_t(cell)] && touchesSegments(size_t(cell), from, to))
        return closed;
      seconds += (end - at) * double(slowness) * secondsPerLeg;
      at = end;
      if (seconds > budget)
        return seconds;
    }
    if (end >= 1 - sliver)
      break;
    const bool leavesColumn = nextColumn <= end + sliver, leavesRow = nextRow <= end + sliver;
    if (leavesColumn && leavesRow && !(slownessForLegs(size_t(cell + columnStep)) < closed) &&
        !(slownessForLegs(size_t(cell + rowStep)) < closed))
      return closed; // between two closed cells that touch at a corner
    if (leavesColumn) {
      cell += columnStep;
      nextColumn += acrossColumn;
    }
    if (leavesRow) {
      cell += rowStep;
      nextRow += acrossRow;
    }
  }
  return std::isnan(seconds) ? double(closed) : seconds;
}

} // namespace brushline
