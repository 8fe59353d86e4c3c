// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/progress.h"
#include "records/track.h"

#include <optional>
#include <vector>

namespace brushline {

//! A leg that was meant to be walked, on the track's plane.
struct MeantLeg {
  PlanePoint from, to;
  bool any_way = false; //!< only a way from one part of the route to the next: nobody says how it is walked
};

struct CuttingRule {
  double tolerance_m = 150; //!< how far a walked turn may lie from the planned one
  double error_m = 4;       //!< of one fix, 1 sigma in each direction
};

//! Between two legs of a track, or at its ends.
struct TrackCut {
  PlanePoint near;      //!< on the smoothed track; the turn lies within about `blur_m`
  size_t before, after; //!< fixes: the same, or those of a gap that it lies in
  bool at_end;          //!< nothing of the track lies beyond
};

//! A track cut into legs.
struct TrackCuts {
  size_t first_leg = 0;       //!< the first one walked
  std::vector<TrackCut> cuts; //!< one more than the legs walked
  bool partial = false;       //!< the track ends on the last of them
  double score = 0;           //!< the greater the better it fits; comparable among routes
  double blur_m = 0;          //!< the smoothing
};

/**
 * Cuts a track where its walker turned: legs in their order, each as straight as can be and as near as can be to
 * the meant bearing and length.
 *
 * The track is smoothed to nodes (means of fixes within 2 sigma, less where legs are short) and the best sequence of
 * nodes is found by dynamic programming: a cut for each turn, not farther from the planned one than the tolerance.
 * A leg costs, in natural logarithms of odds: for its bearing (sigma 15 degrees) and its length (sigma a fifth), both
 * with long tails; for the spread about its straight line (one independent place in 30 m); for the way walked beyond
 * the straight line (a tenth each metre). Legs beyond 75 degrees off or half as long again as twice the meant length
 * are none (begun legs: 35 degrees). A stand at a turn speaks for it, and so does the track's own end for the route's.
 * Legs may be missing at either end, and the last one may be partial.
 *
 * A walker whose compass is off turns elsewhere than planned, all legs being turned and stretched alike: so all is
 * done twice, the second time against the plan turned and stretched by the medians found the first time, with sigmas
 * of 8 degrees and an eighth.
 *
 * Only which fixes belong to which leg comes out of this; where exactly a turn lies is walkedTurn()'s task, and the
 * plan has no say in it.
 *
 * \param legs at least one, those not any_way at least 1 mm long.
 * \returns nothing when no leg can be found.
 * Degenerate: fewer than two fixes give nothing.
 * Cost: the sum over turns of the pairs of nodes within the tolerance of the two ends of a leg; smoothing is doubled
 * until that is below 4 million, or 40 000 for each leg.
 * \throws Cancelled
 * Source of the numbers: common practice, no source; the tests tell what they recover.
 */
std::optional<TrackCuts> cutAtTurns(const CleanTrack &track, const std::vector<MeantLeg> &legs, const CuttingRule &rule,
                                    const Progress &progress);

} // namespace brushline
