// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "planning/effort_surface.h"
#include "quantities/duration.h"
#include "quantities/progress.h"

#include <functional>
#include <optional>
#include <vector>

namespace brushline {

//! A place where a route may turn.
struct TurnPoint {
  static constexpr int nameless = -1;
  CellPosition at;
  int place = nameless; //!< the number of the recognisable place it is
};

//! What legs cost beside their walking, and how many there may be.
struct LegRule {
  Duration turn;               //!< what a change of bearing is worth
  double share_at_place = 0.5; //!< of it, for one at a recognisable place. Common practice, no source.
  int most_legs = 8;
};

//! A route of straight legs.
struct LegPlan {
  std::vector<TurnPoint> points; //!< from the start to the end
  Duration walking;              //!< over the grid
  Duration cost;                 //!< walking and what the turns are worth
};

/**
 * Finds the sequence of straight legs with the least cost: the time of walking them plus what their turns are worth.
 */
class LegPlanner {
public:
  //! Whether a leg may be walked, beyond what the grid says. May be null.
  using Allowed = std::function<bool(CellPosition from, CellPosition to)>;

  //! \param grid, pace are borrowed.
  LegPlanner(const EffortGrid &grid, const PaceTable &pace, const LegRule &rule, Allowed allowed = nullptr)
      : mGrid(grid), mPace(pace), mRule(rule), mAllowed(std::move(allowed)) {}

  //! What the search for the best sequence may take for granted.
  struct Bound {
    const EffortSurface *surface = nullptr; //!< least times from the start; null: straight lines at the best pace
    double slack = 0.01; //!< how far a surface's time may lie above a straight leg's: they go through cells differently
    double cost = std::numeric_limits<double>::infinity(); //!< seconds; only something better is wanted
  };

  /**
   * The best of all sequences of at most most_legs legs over some candidates: by number of legs, the best way on from
   * each candidate to the end (dynamic programming). A leg is timed only when the bound lets it be part of something
   * better; so exact but for the surface's slack (with a null surface exact).
   * Of equally good ones the first found, always the same.
   * \returns nothing when no sequence is open, or none is better than the bound. \throws Cancelled
   */
  std::optional<LegPlan> bestOf(CellPosition start, CellPosition end, const std::vector<TurnPoint> &candidates,
                                const Bound &bound, const Progress &progress) const;

  /**
   * A plan from the start of a surface to an end. First over a lattice in a corridor round the least-time way (32
   * stations, four rows to each side), a coarse one over all the land between, the way's own bends and the recognisable
   * places. Then turn by turn over ever
   * finer lattices round the turns found (a third of the spacing each time, down to under half a cell), as long as that
   * betters it.
   *
   * So it is the best of what the lattice can tell apart, with its turns moved to where they serve best one by one; not
   * the best of all. A quite different sequence, better by less than the lattice's spacing costs, can be missed.
   * Against the best over the centres of all cells, on small random maps, a plan was mostly cheaper, seldom more than 2
   * percent dearer, and by up to a fifth where a quarter was closed in small patches; there now and then none was found
   * (see the tests).
   *
   * \param surface searched from the start until beyond the end.
   * \returns nothing when no way of that many legs is found. \throws Cancelled
   */
  std::optional<LegPlan> plan(const EffortSurface &surface, CellPosition start, CellPosition end,
                              const std::vector<TurnPoint> &places, const Progress &progress) const;

  //! The bends of a way pulled tight, its ends included: each as far along as is seen in a straight open line.
  std::vector<CellPosition> pulledTight(const std::vector<CellPosition> &way, const Progress &progress) const;

private:
  class Search;
  //! Moves turns one by one over a small lattice, or to a place near by, or drops them, as long as that is better.
  void shiftTurns(LegPlan &plan, const std::vector<TurnPoint> &places, double spacing, const Progress &progress) const;
  double turnSeconds(const TurnPoint &point) const {
    return mRule.turn.seconds() * (point.place >= 0 ? mRule.share_at_place : 1);
  }

  const EffortGrid &mGrid;
  const PaceTable &mPace;
  LegRule mRule;
  Allowed mAllowed;
};

} // namespace brushline
