// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/bearing.h"

namespace brushline {

//! The Earth's magnetic field at a place, in nanotesla along the local directions of the WGS84 ellipsoid.
struct FieldVector {
  double north = 0;
  double east = 0;
  double down = 0;

  //! Strength along the ground, nT.
  double horizontal() const;
  //! Whole strength, nT.
  double total() const;
  //! The bearing of magnetic north from true north, [-180, 180] degrees. Degenerate: 0 where there is no horizontal part.
  Declination declination() const;
  //! The field's dip below the ground, [-90, 90] degrees, positive downwards.
  Angle inclination() const;
};

//! How the declination changes in a year, at a field and its change (nT a year); east positive. NaN where the field
//! has no horizontal part.
Angle declinationChange(const FieldVector &field, const FieldVector &changePerYear);

//! How far a compass can be trusted.
enum class CompassZone {
  Reliable,
  Caution,  //!< under 6000 nT along the ground: the needle is slow and easily drawn off
  Blackout, //!< under 2000 nT: it cannot be used
};

//! Bounds of the zones, nT along the ground. Source: WMM2025 technical report, section 1.8 (read second-hand).
constexpr double blackoutBelow = 2000;
constexpr double cautionBelow = 6000;

CompassZone compassZone(double horizontal_nt);

//! The zone as a word in tables, the same in every language: "reliable", "caution", "blackout".
const char *zoneWord(CompassZone zone);

/**
 * The 1-sigma error of the model's declination: sqrt(a^2 + (b / H)^2) degrees.
 *
 * It is the global error, the rocks' own field on average included; near iron-bearing rock it can be many times more.
 * Source: WMM2025 technical report (doi 10.25923/prbc-s316), section 3.4, equation 43: a = 0.26, b = 5417 nT.
 */
struct DeclinationErrorModel {
  double floor_degrees;
  double per_horizontal;

  //! \param horizontal_nt strength along the ground, > 0; at 0 the error is infinite.
  Angle at(double horizontal_nt) const;
};

constexpr DeclinationErrorModel wmm2025Error{0.26, 5417};
constexpr DeclinationErrorModel wmm2020Error{0.26, 5625}; // as quoted by users of the older report

} // namespace brushline
