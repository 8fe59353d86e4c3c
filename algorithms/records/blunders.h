// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/progress.h"
#include "records/compass_rule.h"
#include "sighting/drift.h"

#include <optional>
#include <vector>

namespace brushline {

//! What people do wrong once when they write down a route.
enum class Slip {
  Reversed,       //!< the bearing back was noted
  DigitsSwapped,  //!< two digits of the bearing
  HundredTooMany, //!< paces (or metres) counted
  HundredTooFew,
  DoubledCount, //!< single steps noted for double paces
  HalvedCount,  //!< double paces noted for single steps
  LengthWrong,  //!< by any amount
  // Of all legs; a route that ends where it starts closes in spite of them.
  AllDoubled,
  AllHalved,
  TrueReadings,     //!< counted from true north already
  MagneticReadings, //!< counted from magnetic north
  WrongWayRound,    //!< declination, or the angle between grid and magnetic north, turned the wrong way
};

//! A leg that was laid, and what may be wrong with it.
struct SuspectLeg {
  PlanePoint step;            //!< from its start to its end
  LegErrors errors;           //!< the declination's too
  double squared_hops = 0;    //!< as for RouteDrift
  Length hundred;             //!< of a hundred paces, or of 100 m
  bool paced = true;          //!< the count may be of the other kind of paces
  std::vector<Angle> swapped; //!< turns, clockwise, from the bearing read to those with swapped digits
};

//! A turn of all legs that a slip amounts to.
struct CommonTurn {
  Slip slip;
  Angle clockwise; //!< from the bearings read to those meant
};

//! A slip that would account for a miss.
struct BlunderHint {
  Slip slip;
  std::optional<size_t> leg; //!< none: all legs
  double stretch = 1;        //!< the leg's length, as a share of what was read
  Angle turn;                //!< the leg's bearing, clockwise from what was read
  Length left;               //!< of the miss, once mended
};

//! What a miss says.
struct Suspicion {
  Length allowed; //!< what the errors allow in the direction of the miss
  bool within = true;
  std::vector<BlunderHint> hints; //!< likeliest first; none within what is allowed
};

/**
 * Which single slips would account for a miss.
 *
 * A miss is within what the errors allow when it lies in the ellipse that holds 95 % of the walks without blunders
 * (RouteDrift). Beyond it, each slip of each leg is tried alone: it is a hint when the miss that is left, with the leg
 * mended, lies in the ellipse of the mended route. First come the named slips, the one that leaves the least miss in
 * the measure of the errors in front; then a length that is wrong by any amount, for legs along the miss that no named
 * slip of length serves.
 *
 * \param legs in order, at least one. \param miss from where the route should end to where it does.
 * \param common what may be wrong with all legs; empty for a route that should end at its start, which shows none of
 * them: then double and half counts throughout are not tried either.
 * \throws Cancelled
 * Source: common practice of traversing, no source; error ellipse: standard error propagation.
 */
Suspicion suspect(const std::vector<SuspectLeg> &legs, const PlanePoint &miss, const std::vector<CommonTurn> &common,
                  const Progress &progress);

//! The turns that all readings of a compass may need. \param convergence for North::Grid.
std::vector<CommonTurn> commonTurns(North north, Declination declination, Convergence convergence);

} // namespace brushline
