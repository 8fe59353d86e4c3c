// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "records/turn_cutting.h"

namespace brushline {

//! A turn as the track alone shows it.
struct WalkedTurn {
  PlanePoint at;
  double place = 0;    //!< on the track: a fix's number, and the share of the way to the next
  bool seen = true;    //!< false: the walker went straight on without a stand, so nobody can tell where it was
  bool in_gap = false; //!< nothing was recorded about it; it lies where the straight lines meet
  std::optional<double> arrived_s, left_s; //!< none without times there, or when it was not seen
  double ee = 0, en = 0, nn = 0;           //!< variance of the place, square metres
};

/**
 * Where the walker turned: the point in which two straight lines meet, one through the fixes before the turn and one
 * through those after it (total least squares; fixes within 50 m, or twelve, and not beyond half the leg). The fix at
 * which the one line ends and the other begins is the one that leaves the least squares. So every fix counts, and those
 * at the turn itself, where the walker looks for the way, hardly.
 *
 * Where the lines meet at less than 15 degrees the turn is where a stand is, else not seen. At more than 150 degrees
 * (there and back) it is the farthest point, as lines through the fixes' distances, fix by fix, meet in it. At the
 * track's own ends it is the end fix, square onto the line. Where lines meet far from fixes and cut (4 sigma or 20 m,
 * or the longest step about the turn) it is the last fix of the line before, and not seen.
 *
 * Variance: the fixes' own, for either line; receivers err alike for minutes, so the number of fixes does not lessen
 * it. A turn not seen adds a fifth of the shorter leg along the way.
 *
 * \param cut index of a cut, 0 to the last.
 * Degenerate: a leg of two fixes is the line through them.
 */
WalkedTurn walkedTurn(const CleanTrack &track, const TrackCuts &cuts, size_t cut, double error_m);

} // namespace brushline
