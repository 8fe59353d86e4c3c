// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/length.h"
#include "shared/terrain.h"

namespace brushline {

//! A profile in numbers.
struct ProfileSummary {
  Length slope_length; //!< along the ground
  Length climb;        //!< all rises added up
  Length drop;         //!< all falls added up, positive
  Length without_data; //!< horizontal length of the steps with an end that has no height
};

//! Adds up a profile. Steps without data count in without_data only.
ProfileSummary summarize(const Profile &profile);

//! The same profile walked the other way.
Profile reversed(const Profile &profile);

} // namespace brushline
