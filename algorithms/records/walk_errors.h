// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "records/common_error.h"
#include "records/north_mix_up.h"

#include <optional>
#include <string>
#include <vector>

namespace brushline {

//! One walked leg's errors, with what explains them.
struct WalkedErrors {
  size_t track;
  std::string walker;                             //!< empty: nobody is named
  std::optional<LegError> bearing;                //!< degrees, walked minus meant, right positive
  std::optional<LegError> length;                 //!< percent of the meant length, walked minus meant
  std::optional<double> declination, convergence; //!< degrees, east positive
  std::optional<double> paces;                    //!< that were to be counted
  double meant_m = 0;
};

enum class GroupOf { Track, Walker, All };

//! What the legs of a track, of a walker, or all of them have in common.
struct GroupErrors {
  GroupOf of = GroupOf::All;
  size_t track = 0;   //!< of GroupOf::Track
  std::string walker; //!< empty: nobody is named, or several
  size_t legs = 0, length_legs = 0;
  std::optional<CommonError> bearing, length;
  bool norths_known = false;        //!< declination is known, and the same within 2 degrees
  std::vector<Explanation> mix_ups; //!< that explain the bearing error
  std::optional<double> pace_scale; //!< by which to multiply the count for 100 m
  std::optional<double> paces_100m; //!< that count, where the legs tell paces
};

/**
 * The common errors of each track, of each named walker, and of all.
 *
 * For all, the walkers' means (the tracks', where nobody is named) are the errors that commonError() takes, since legs
 * of one walker err alike; with one walker only, the legs are. pace_scale is 1 / (1 + error) and is given only where
 * the error of length is not nought within its interval. \returns tracks by number, walkers by name, all; without
 * groups that have neither error. Degenerate: no legs, none.
 */
std::vector<GroupErrors> groupErrors(const std::vector<WalkedErrors> &legs);

} // namespace brushline
