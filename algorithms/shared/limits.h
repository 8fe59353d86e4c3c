// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <cmath>

namespace brushline {

//! The values a number may take, ends included, and the one it has when nobody says. The dialog and the checks
//! both take their bounds from here.
struct Limits {
  double least;
  double most;
  double usual;

  bool contains(double value) const { return std::isfinite(value) && value >= least && value <= most; }
};

} // namespace brushline
