// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/duration.h"
#include "quantities/length.h"
#include "shared/walker.h"

namespace brushline {

/**
 * Walking speed of one who finds their way off trails, in m/s over the ground as the map shows it.
 *
 * \param slope rise over run, uphill positive: 0.11 + 0.67 exp(-(100 slope + 2)^2 / 1800). Signed: fastest slightly
 * downhill; some libraries take its absolute value.
 * Source: Irmischer and Clarke, Cartography and Geographic Information Science 45 (2018), 177 (read second-hand).
 */
double offTrailSpeed(double slope);

//! As above on trails: 0.11 + exp(-(100 slope + 5)^2 / 1800) m/s.
double onTrailSpeed(double slope);

/**
 * The hiking function, in m/s over the ground as the map shows it: 6 exp(-3.5 |slope + 0.05|) km/h.
 * Source: Tobler 1993, Technical Report 93-1 (read second-hand).
 */
double hikingSpeed(double slope);

//! Tobler's factor for walking off the path.
constexpr double offPathFactor = 0.6;

/**
 * The time over a run and a rise by distance and climb: 0.72 s for a metre on the map, 6 s for a metre climbed; for a
 * metre descended 2 s less from 5 to 12 degrees and 2 s more beyond, nothing under 5 degrees.
 *
 * One manual of a general GIS takes 2 s off every descent down to 12 degrees; Langmuir's rule starts at 5, and so do we.
 * Source: Naismith 1892 and Langmuir as four coefficients (0.72, 6.0, 1.9998, -1.9998 s/m).
 */
Duration distanceAndClimbTime(Length run, Length rise);

//! The walker's time over a run and a rise of even slope, by their rule and speed factor.
Duration walkingTime(Length run, Length rise, const Walker &walker);

} // namespace brushline
