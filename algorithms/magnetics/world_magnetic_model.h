// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "magnetics/field_model.h"

#include <string>
#include <vector>

namespace brushline {

//! The coefficients of a World Magnetic Model, Schmidt semi-normalised, in the column order GeographicLib wants
//! (order outer, degree inner; C with the zero of degree 0, S from order 1).
struct FieldCoefficients {
  std::string name;
  double epoch = 0;     //!< decimal year of c and s
  double radius_m = 0;  //!< the reference sphere
  int degree = 0;
  ModelYears years{0, 0};
  std::vector<double> c, s;               //!< nT at the epoch
  std::vector<double> c_change, s_change; //!< nT a year
};

/**
 * Reads coefficients from text: "#" starts a comment; then "key value" lines (epoch, name, radius_m, degree, min_year,
 * max_year; others are passed over) and rows "n m g h gdot hdot", n = 1..degree, m = 0..n, each exactly once.
 *
 * \throws std::invalid_argument that names the line when a number is missing, out of range or followed by other words,
 * or when a key or a row is given twice; and when rows or keys are lacking.
 */
FieldCoefficients parseCoefficients(const std::string &text);

//! The built-in World Magnetic Model 2025 (NOAA/NCEI and BGS; doi 10.25923/prbc-s316).
const FieldCoefficients &worldMagneticModel2025();

/**
 * The model of some coefficients on one day, summed by GeographicLib on the WGS84 ellipsoid.
 *
 * Accuracy: the published test values of WMM2025 to 0.001 nT and 0.005 degrees (their last digit).
 * \throws YearOutsideModel when the day is not between the coefficients' years.
 */
std::unique_ptr<FieldModel> coefficientModel(const FieldCoefficients &coefficients, DecimalYear year);

} // namespace brushline
