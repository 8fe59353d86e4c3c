// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/duration.h"
#include "shared/terrain.h"
#include "shared/walker.h"

#include <optional>
#include <vector>

namespace brushline {

//! What the cover on a stretch does to steps and speed.
struct FootingStretch {
  double to_m;                        //!< its end from the line's start; it starts where the one before ends
  double pace_factor = 1;             //!< of the number of steps
  std::optional<double> speed_factor = 1.0; //!< of the speed; none: nobody walks there
};

/**
 * A walker's steps and time along a line, from its start to any place on it.
 */
class WalkLine {
public:
  /**
   * \param length horizontal, > 0.
   * \param profile of the same line, complete (no NaN); null: level ground.
   * \param footing in order, covering the line; empty: nothing slows.
   */
  WalkLine(Length length, const Profile *profile, const std::vector<FootingStretch> &footing, const Walker &walker);

  //! Single steps from the start to a place, metres from it (held within the line).
  double stepsTo(double at_m) const;
  //! Time from the start to a place; none when nobody walks some stretch before it.
  std::optional<Duration> timeTo(double at_m) const;

  double steps() const { return mNodes.back().steps; }
  std::optional<Duration> time() const;

private:
  struct Node {
    double at_m;
    double steps;
    double seconds; // NaN from the first stretch that nobody walks
  };
  double interpolated(double at_m, double Node::*value) const;

  std::vector<Node> mNodes;
};

} // namespace brushline
