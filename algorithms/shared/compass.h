// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/bearing.h"
#include "shared/limits.h"

#include <string>

namespace brushline {

//! What the dial of a compass is divided in. The numbers are those of the parameter DIAL_UNIT.
enum class DialUnit { Degrees = 0, Mils = 1, Gon = 2 };

//! The whole circle in a dial's unit: 360 degrees, 6400 mils, 400 gon.
double fullCircle(DialUnit unit);
//! The coarsest graduation that passes for one, in the unit: an eighth of the circle. Common practice, no source.
double coarsestStep(DialUnit unit);

//! A baseplate compass and how well it is read.
struct Compass {
  North north = North::Magnetic;          //!< the north its dial is set for
  DialUnit unit = DialUnit::Degrees;      //!< what its dial shows
  double step = stepLimits.usual;         //!< its graduation, in its unit
  Angle bearing_error = Angle::degrees(errorLimits.usual); //!< 1 sigma of one sighting

  static constexpr Limits stepLimits{0.01, 800, 2};
  static constexpr double coarsestShare = 1.0 / 8; //!< of the circle, that a graduation may be
  static constexpr Limits errorLimits{0.1, 45, 3};
};

/**
 * The number to set on the dial.
 *
 * \param bearing clockwise from the compass's own north, any turn.
 * \returns the nearest multiple of the step, in the dial's unit, 0 <= number < full circle. Halfway between two
 * graduations the greater is taken (common practice, no source). A full circle is 0. Where the step does not
 * divide the circle, the last graduation is nearer to the next 0 than a step.
 */
double dialReading(Angle bearing, const Compass &compass);

//! The bearing that a number on the dial stands for, clockwise from the compass's own north.
Angle dialBearing(double reading, DialUnit unit);

/**
 * A dial reading for people: "042°", "0747 mil", "047 gon"; with as many decimals as the step has (two at most).
 *
 * \returns UTF-8. The decimal sign is a point in every locale.
 */
std::string dialText(double reading, const Compass &compass);

/**
 * The nearest of the sixteen points of the compass: "N", "NNE", "NE", ... "NNW".
 *
 * \param bearing clockwise from any north, any turn. Each point covers 22.5 degrees around it; on the border the
 * point further clockwise is taken.
 */
const char *compassPoint(Angle bearing);

} // namespace brushline
