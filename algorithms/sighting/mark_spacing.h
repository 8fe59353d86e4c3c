// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "shared/limits.h"
#include "sighting/sight_line.h"

#include <vector>

namespace brushline {

//! How far apart marks are set.
struct SpacingRule {
  double sight_share = shareLimits.usual;       //!< the share of the sight distance that is used
  Length least = Length::metres(leastLimits.usual);
  Length most = Length::metres(mostLimits.usual);

  //! CLEAR_SIGHT.
  static constexpr Limits clearLimits{0.01, 0.99, 0.5};
  static constexpr Limits shareLimits{0.05, 1, 0.8};
  static constexpr Limits leastLimits{0.5, 1000, 5};
  static constexpr Limits mostLimits{1, 5000, 400};
};

//! A mark to sight and walk to.
struct SpacedMark {
  double at_m;    //!< from the leg's start
  double sight_m; //!< the sight distance at the place it is sighted from; infinite where nothing hides marks
};

//! The marks of a leg, the last one at its end.
struct MarkChain {
  std::vector<SpacedMark> marks;
  double blind_m = 0; //!< length of the hops on which not even the least spacing can be seen

  //! The middle of the hops' lengths (of the two middle ones the mean), metres.
  double medianHop() const;
  //! Sum of the squares of the hops' lengths, square metres.
  double squaredHops() const;
};

/**
 * Marks from a leg's start to its end: the next one lies at the rule's share of the sight distance, but no nearer than
 * its least and no farther than its most spacing.
 *
 * \param line of the leg, or longer. \param length of the leg, > 0.
 */
MarkChain spaceMarks(const SightLine &line, Length length, const Looking &looking, const SpacingRule &rule);

} // namespace brushline
