// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/bearing.h"

#include <optional>
#include <vector>

namespace brushline {

/**
 * Ways to mix up norths. With declination D, convergence G (both east positive), a compass whose dial counts from a
 * north at true bearing N leads one who sets the number s along the true bearing s + N; the error is s + N less the
 * true bearing T.
 */
enum class MixUp {
  TrueOnMagnetic,       //!< the true number on a plain compass (declination forgotten): T + D - T = D
  MagneticWrongWay,     //!< declination applied the wrong way round: (T + D) + D - T = 2 D
  MagneticOnTrue,       //!< the magnetic number on a compass already set off for declination: (T - D) - T = -D
  GridOnTrue,           //!< the grid number on a compass set off for true north: (T - G) - T = -G
  TrueOnGrid,           //!< the true number on a compass set off for grid north: T + G - T = G
  GridOnMagnetic,       //!< the grid number on a plain compass (grid magnetic angle forgotten): (T - G) + D - T = D - G
  GridMagneticWrongWay, //!< grid magnetic angle applied the wrong way round: (T - G) + (D - G) + D - T = 2 (D - G)
  MagneticOnGrid,       //!< the magnetic number on a compass set off for grid north: (T - D) + G - T = G - D
};

//! The error that a mix-up makes: walked less meant, right positive.
Angle errorOf(MixUp mixUp, Declination declination, Convergence convergence);

//! A mix-up that would explain an error.
struct Explanation {
  MixUp mix_up;
  Angle error; //!< that it makes
};

/**
 * The mix-ups that explain a common error of bearings.
 *
 * One does when it lies within the interval about the error, which has at least a degree to either side (a dial's
 * half graduation); when the error is not nought within its interval; and when the mix-up makes an error that the
 * interval's width tells from none at all. Those with convergence are left out without it.
 *
 * \param half_width of the interval about the error that holds the true one 95 times of 100.
 * \returns nearest first; several where they cannot be told apart, none where nothing fits.
 */
std::vector<Explanation> explain(Angle error, Angle half_width, Declination declination,
                                 std::optional<Convergence> convergence);

} // namespace brushline
