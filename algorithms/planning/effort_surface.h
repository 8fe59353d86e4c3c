// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "planning/effort_grid.h"
#include "quantities/duration.h"
#include "quantities/progress.h"

#include <functional>
#include <map>
#include <utility>
#include <vector>

namespace brushline {

/**
 * The least time from one or several places to every cell of a grid.
 *
 * Cells are settled in order of their time, from a ring of buckets no wider than the shortest step, so that no heap is
 * needed (Dial's ordering). A step to one of the eight neighbours takes the mean of the two cells' times; as eight
 * directions alone make a way up to 8 percent too long, a cell that comes up for settling is first reached once more
 * from between the two neighbours it is reached from soonest (the least over the edge between them, whose times are
 * taken to change evenly). Round each source (24 cells) straight lines are timed exactly. Into and out of a cell that
 * is open for legs alone only straight lines lead.
 *
 * Accuracy: on even ground within 0.5 percent of the straight line's time in every direction, never above the time
 * by eight neighbours. Times are single precision.
 */
class EffortSurface {
public:
  //! Whether a straight line may be walked, beyond what the grid says.
  using Allowed = std::function<bool(CellPosition from, CellPosition to)>;

  //! \param grid, pace are borrowed. \param allowed asked of the lines that begin or end in a cell that is open for
  //! legs alone; may be null.
  EffortSurface(const EffortGrid &grid, const PaceTable &pace, Allowed allowed = nullptr)
      : mGrid(grid), mPace(pace), mAllowed(std::move(allowed)) {}

  //! How far a search goes.
  struct Goal {
    CellPosition at;
    Duration beyond; //!< it goes on until all cells are settled that are reached by so much later than the goal
  };

  /**
   * Searches from places on the grid. Those on closed cells lead nowhere.
   * \param goal null: everything that can be reached.
   * \param told may be null; called now and then with the number of cells settled.
   * \throws Cancelled
   */
  void search(const std::vector<CellPosition> &sources, const Goal *goal, const Progress &progress,
              const std::function<void(size_t settled)> &told = nullptr);

  //! Seconds to a cell's centre; infinite where nothing leads or the search did not go.
  float secondsAt(int64_t column, int64_t row) const { return mSeconds[mGrid.index(column, row)]; }
  //! Seconds to a place, by the cells around it; infinite as above.
  double secondsTo(CellPosition place) const;
  //! No way to a place takes less (but for the surface's own accuracy); as far as the search went where it did not go.
  double leastSecondsTo(CellPosition place) const;
  //! The least-time way from a source to a place, a point every cell or so; empty when nothing leads there.
  std::vector<CellPosition> wayTo(CellPosition place) const;

  //! What lies round the cells reached: how many closed cells of each kind touch them, and how far the nearest is from
  //! a place.
  struct Enclosure {
    size_t cells = 0;              //!< reached
    std::map<int, size_t> borders; //!< by kind
    std::map<int, double> nearest_cells;
  };
  Enclosure enclosure(CellPosition seenFrom, const Progress &progress = Progress()) const;

private:
  struct Ring;
  template <bool Level>
  void settleAll(Ring &ring, const Goal *goal, const Progress &progress, const std::function<void(size_t)> &told);
  template <bool Level> void refine(size_t cell);
  template <bool Level> void refineBetween(size_t cell, size_t straight, size_t slanting);
  void start(const std::vector<CellPosition> &sources);
  //! Seconds of a straight line from or to a source or place.
  double lineSeconds(CellPosition from, CellPosition to) const;
  //! The cells a place is reached from last, with the seconds from there: its own, or those around that see it where
  //! none steps into its own.
  std::vector<std::pair<size_t, double>> lastCells(CellPosition place) const;

  const EffortGrid &mGrid;
  const PaceTable &mPace;
  Allowed mAllowed;
  LargeVector<float> mSeconds;
  LargeVector<uint8_t> mFrom; // the direction of the neighbour a cell is reached from; its top bit once settled
  std::vector<std::pair<float, uint32_t>> mStarts; // by time
  std::vector<CellPosition> mSources;
  float mSearchedTo = 0; // seconds; all that is reached sooner is settled
};

} // namespace brushline
