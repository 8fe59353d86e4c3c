// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/place.h"
#include "shared/limits.h"
#include "shared/local_plane.h"

#include <optional>
#include <vector>

namespace brushline {

//! A place that a recorder wrote down.
struct TrackFix {
  Place place;                  //!< finite
  std::optional<double> time_s; //!< seconds since the start of 1970, UTC
  bool after_gap = false;       //!< the recording was broken off before it
};

//! How far a recorder is trusted.
struct TrackRule {
  double error_m = errorLimits.usual;    //!< of one fix, 1 sigma in each direction
  double most_speed = speedLimits.usual; //!< m/s; nobody walks faster

  //! 4 m: usual for receivers carried under trees; common practice, no source.
  static constexpr Limits errorLimits{0.1, 100, 4};
  //! 6 m/s: who runs in the woods is slower; common practice, no source.
  static constexpr Limits speedLimits{0.5, 100, 6};
};

//! A fix that was kept, or a stand: a stretch of fixes on which nobody walked, as their mean.
struct CleanFix {
  PlanePoint at;
  std::optional<double> arrived_s, left_s; //!< the same moment but for a stand
  bool after_gap = false;
  bool stand = false;
};

//! Whether a track has times.
enum class TrackTimes {
  Kept,      //!< of all fixes, or of those that run forward
  None,      //!< the recorder wrote none
  Backwards, //!< they mostly do not run forward, so none is used
};

//! A track without what is no part of the walk.
struct CleanTrack {
  std::vector<CleanFix> fixes;
  size_t duplicates = 0; //!< fixes left out: the same place at the same time
  size_t spikes = 0;     //!< fixes left out: nobody could have been there
  size_t lost_times = 0; //!< fixes whose time runs backwards, kept without it
  size_t stands = 0;
  TrackTimes times = TrackTimes::None;
};

} // namespace brushline
