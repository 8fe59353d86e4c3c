// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "handouts/leg_sheets_host.h"
#include "handouts/possible_norths.h"

#include <optional>
#include <vector>

namespace brushline {

//! A leg's number for the dial with its bearings; one that the row does not tell is taken from its true bearing,
//! declination and convergence, where it tells those. A number that is only written out is NaN.
DialWithBearings dialOf(const SheetLeg &leg);

//! The norths that a sheet's numbers for the dial may be counted from. Dials in several units tell nothing.
std::vector<North> northsOf(const LegSheet &sheet);
//! The only one possible, if there is one: all that handouts may speak of as certain.
std::optional<North> northOf(const LegSheet &sheet);

//! Where the needle comes to lie on a leg's dial that is counted from a north, clockwise from its N; none: not known.
std::optional<Angle> needleOn(const SheetLeg &leg, North north);

} // namespace brushline
