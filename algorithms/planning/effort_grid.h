// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "planning/large_pages.h"
#include "quantities/length.h"
#include "quantities/progress.h"
#include "shared/tiled_grid.h"
#include "shared/walker.h"

#include <cstdint>
#include <limits>
#include <optional>
#include <string>
#include <unordered_map>
#include <utility>
#include <vector>

namespace brushline {

/**
 * A walker's seconds a metre by the signed slope along the walk, as a table: exp() a cell would be most of the work.
 * Between the table's slopes linear, beyond a slope of 2 (63 degrees) as at its end. Off by under 0.05 percent
 * (most at the bend of the hiking function).
 */
class PaceTable {
public:
  explicit PaceTable(const Walker &walker);

  //! Seconds a metre over the map; \param slope rise over run, uphill positive; NaN gives NaN.
  float at(float slope) const {
    const float x = (slope + range) * scale;
    if (!(x > 0))
      return x <= 0 ? mSeconds.front() : slope;
    if (x >= float(entries - 1))
      return mSeconds.back();
    const auto i = size_t(x);
    return mSeconds[i] + (x - float(i)) * (mSeconds[i + 1] - mSeconds[i]);
  }
  float level() const { return at(0); }
  float least() const { return mLeast; }
  float most() const { return mMost; }

private:
  static constexpr float range = 2;
  static constexpr int entries = 4097;
  static constexpr float scale = float(entries - 1) / (2 * range);
  std::vector<float> mSeconds;
  float mLeast, mMost;
};

//! What a cell's ground is like.
struct GroundKind {
  std::string name;                   //!< for people
  std::optional<double> speed_factor; //!< of the speed of the walker's rule; none: nobody walks there
};

/**
 * Ground in square cells: a kind each, and a height unless it is level. Rows run from the top down; places are counted
 * in cells, see CellPosition. A frame of cells that nobody walks lies around, so that searches need not ask for the
 * edge. Lines that may not be crossed close the cells whose middle (either middle line) they cross, so that neither
 * straight nor diagonal steps get through, and are kept to be tested exactly against legs.
 */
class EffortGrid {
public:
  static constexpr int edge = 0, noHeight = 1, steep = 2, barrier = 3; //!< kinds that are always there
  static constexpr int mostKinds = 255;

  //! \param columns, rows at least 1. \param level: no heights. All cells are of the kind edge at first.
  //! \throws std::invalid_argument for other numbers, Cancelled.
  EffortGrid(int64_t columns, int64_t rows, Length cell, bool level, const Progress &progress = Progress());

  //! Bytes that a grid and the search over it take, a cell.
  static constexpr double bytesPerCell(bool level) { return level ? 6 : 10; }

  //! A new kind's number; the same for one that is there already. \throws std::length_error beyond mostKinds.
  int addKind(const GroundKind &kind);
  const std::vector<GroundKind> &kinds() const { return mKinds; }

  void setKind(int64_t column, int64_t row, int kind) { mCodes[index(column, row)] = uint8_t(kind); }
  int kindAt(int64_t column, int64_t row) const { return mCodes[index(column, row)]; }
  bool isOpen(int64_t column, int64_t row) const { return mSlowness[mCodes[index(column, row)]] < closed; }
  //! Opens a closed cell for legs alone, which are tested exactly against barrier lines: one stands beside a fence.
  //! Searches do not step over it.
  void openForLegs(int64_t column, int64_t row, int kind) { mOpenForLegs[index(column, row)] = uint8_t(kind); }
  void setHeight(int64_t column, int64_t row, float metres) { mHeights[index(column, row)] = metres; }
  bool contains(CellPosition at) const {
    return at.column >= 0 && at.row >= 0 && at.column < double(mColumns) && at.row < double(mRows);
  }

  //! Closes a row's open cells without height, and those whose ground is steeper than a limit in whatever direction
  //! (central differences; one-sided beside cells without height). Once the row and its neighbours have their heights.
  void closeSteep(int64_t row, double mostSlope);

  //! A line that may not be crossed, in cells. What is steep or without height stays so.
  void addBarrierLine(const std::vector<CellPosition> &line);
  //! Closes what lies inside rings by the even-odd rule; their lines are to be added too.
  void closeInside(const std::vector<std::vector<CellPosition>> &rings);
  //! After the last line; before legs are asked for.
  void finishBarriers();
  //! Whether a line from one place to another touches a barrier line. Places must lie on the grid.
  bool crossesBarrier(CellPosition from, CellPosition to) const;

  /**
   * Seconds of a straight leg, integrated piece by piece of cell along it; slopes over steps of a cell at most, from
   * heights bilinear between cell centres, as annotated legs reckon them.
   *
   * \param budget stops at more than this, and returns what it was then.
   * \returns infinite when it passes closed ground or a barrier line, or leaves the grid; 0 for equal places.
   */
  double legSeconds(CellPosition from, CellPosition to, const PaceTable &pace,
                    double budget = std::numeric_limits<double>::infinity()) const;

  int64_t columns() const { return mColumns; }
  int64_t rows() const { return mRows; }
  Length cell() const { return Length::metres(mCell); }
  bool level() const { return mHeights.empty(); }

  // For searches: everything with its frame, row by row.
  static constexpr float closed = std::numeric_limits<float>::infinity();
  size_t index(int64_t column, int64_t row) const { return size_t((row + 1) * mStride + column + 1); }
  int64_t stride() const { return mStride; }
  size_t framedCells() const { return mCodes.size(); }
  const uint8_t *codes() const { return mCodes.data(); }
  const float *heights() const { return mHeights.data(); }
  const float *slowness() const { return mSlowness; } //!< by kind; 1 over the speed factor, or closed
  float leastSlowness() const;
  float mostSlowness() const;

private:
  struct Segment {
    CellPosition from, to;
  };
  float slownessForLegs(size_t cell) const;
  void closeByBarrier(size_t cell);
  double heightAt(double column, double row) const;
  bool touchesSegments(size_t cell, CellPosition from, CellPosition to) const;

  int64_t mColumns, mRows, mStride;
  double mCell;
  LargeVector<uint8_t> mCodes;
  LargeVector<float> mHeights;
  std::vector<GroundKind> mKinds;
  float mSlowness[256];
  std::vector<Segment> mSegments;
  std::vector<std::pair<uint32_t, uint32_t>> mSegmentsOf; // cell, segment; sorted
  std::vector<bool> mTouched;
  std::unordered_map<size_t, uint8_t> mOpenForLegs; // cell, kind
};

} // namespace brushline
