// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/progress.h"
#include "records/track.h"

namespace brushline {

/**
 * Takes out of a track what is no part of the walk.
 *
 * Times: the longest sequence of fixes whose times never run back keeps them; the others lose theirs, and all of them
 * when that leaves fewer than half.
 * Duplicates: fixes at the place (to 1 mm) and time of the one before.
 * Spikes: up to three fixes that could only be reached and left again faster than the rule's speed (4 sigma of the
 * fix's error allowed), while the way past them is slow enough. Without times: one fix, farther from both neighbours
 * than five times the usual step and 30 m. A jump from which the track does not come back is a gap, not a spike.
 * Stands: stretches of 20 s and more on which the mean place moves by less than 0.15 m/s, reckoned over 15 s or six
 * fixes to either side, whichever is longer. Shorter stands are not seen; begin and end are good to some 5 s.
 *
 * \param fixes in the order of the recording.
 * Degenerate: no fixes, nothing kept; one fix is kept.
 * Cost: n log n. \throws Cancelled
 * Source of the numbers: common practice, no source; the tests tell what they recover.
 */
CleanTrack cleanTrack(const std::vector<TrackFix> &fixes, const LocalPlane &plane, const TrackRule &rule,
                      const Progress &progress);

} // namespace brushline
