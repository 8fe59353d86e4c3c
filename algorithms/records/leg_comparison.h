// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/progress.h"
#include "records/track.h"
#include "records/turn_cutting.h"
#include "shared/geodesic.h"

#include <optional>
#include <vector>

namespace brushline {

//! A leg as it was planned.
struct PlannedLeg {
  Place from, to;
  GeodesicLeg geodesic;
  bool any_way = false; //!< from one part of a route to the next
};

//! Where on a planned leg's line a fix lies, as one who walks it sees it.
struct ProfilePoint {
  Place place;
  double at_m;                  //!< along the planned leg from its start; negative: behind it
  double cross_m;               //!< off its line, right positive
  std::optional<double> at_min; //!< since the walked leg began
};

//! How much of a leg a track holds.
enum class LegShare { Whole, Begun, None };

//! A leg as it was walked, against the plan. Nothing is told where the track does not show it.
struct WalkedLeg {
  LegShare share = LegShare::None;
  bool start_seen = true, end_seen = true; //!< false: no turn and no stand to be seen there
  bool gap_at_turn = false;                //!< nothing was recorded about one of its ends
  bool like = true;                        //!< false: so far off that it may not be this leg at all
  Place start, end;                        //!< where it was walked; of no meaning for None

  std::optional<double> walked_m; //!< straight between the walked turns
  std::optional<TrueBearing> walked;
  std::optional<double> brg_diff;  //!< walked minus meant, (-180, 180] degrees; right positive
  std::optional<double> dist_diff; //!< walked minus meant, metres
  std::optional<double> miss_m;    //!< from the planned end to the walked one
  std::optional<double> own_m;     //!< the same had the leg begun at its planned start: its own share of the miss
  std::optional<double> cross_m;   //!< farthest off the planned line, right positive
  std::optional<double> wander_m;  //!< root mean square off the straight walked line
  std::optional<double> minutes;   //!< from turn to turn, stands included; the first leg from when one walks off
  std::optional<double> stand_min; //!< of them, standing
  double brg_sigma = 0;            //!< of walked, degrees, by the fixes' error; of no meaning without it
  double length_sigma = 0;         //!< of walked_m, metres
  std::vector<ProfilePoint> profile;
};

/**
 * Compares a track that was cut into legs with the plan.
 *
 * Lengths and bearings are geodesic between the places of the turns (walkedTurn()); bearings are true, at each leg's
 * start. A begun leg (the track ends on it) has a bearing, but no error of length and no miss. A leg with an end that
 * was not seen has a bearing, but no length, miss and minutes. A leg is unlike when it turns off its bearing by 45
 * degrees more or less than the median of all (than the plan when there are less than three), or its length is less
 * than half or more than twice the meant one. cross_m and the profile take single fixes, as they were cleaned, so they
 * hold the receiver's noise; wander_m too.
 *
 * \param legs those the cuts were made with, as planned. \returns one for each.
 * Accuracy: bearings and lengths as GeographicLib's between the turns; cross_m and at_m within 1e-6 of themselves for
 * tracks of 10 km, 1e-4 for 100 km. \throws Cancelled
 */
std::vector<WalkedLeg> compareLegs(const CleanTrack &track, const TrackCuts &cuts, const std::vector<PlannedLeg> &legs,
                                   const LocalPlane &plane, double error_m, const Progress &progress);

//! The legs on a plane, as cutAtTurns() takes them.
std::vector<MeantLeg> onPlane(const std::vector<PlannedLeg> &legs, const LocalPlane &plane);

} // namespace brushline
