// SPDX-License-Identifier: GPL-2.0-or-later
#include "records/north_mix_up.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace brushline {

namespace {
constexpr double least = 1; // degrees: half the usual graduation of a dial
} // namespace

Angle errorOf(MixUp mixUp, Declination declination, Convergence convergence) {
  const Angle d = declination.east, g = convergence.east;
  switch (mixUp) {
  case MixUp::TrueOnMagnetic:
    return d;
  case MixUp::MagneticWrongWay:
    return d + d;
  case MixUp::MagneticOnTrue:
    return -d;
  case MixUp::GridOnTrue:
    return -g;
  case MixUp::TrueOnGrid:
    return g;
  case MixUp::GridOnMagnetic:
    return d - g;
  case MixUp::GridMagneticWrongWay:
    return (d - g) + (d - g);
  case MixUp::MagneticOnGrid:
    return g - d;
  }
  throw std::invalid_argument("no such mix-up");
}

std::vector<Explanation> explain(Angle error, Angle half_width, Declination declination,
                                 std::optional<Convergence> convergence) {
  const double within = std::max(half_width.degrees(), least);
  std::vector<Explanation> found;
  if (!(std::abs(error.signedTurn().degrees()) > within))
    return found;
  const auto off = [&](Angle made) { return std::abs((error - made).signedTurn().degrees()); };
  for (const MixUp mixUp :
       {MixUp::TrueOnMagnetic, MixUp::MagneticWrongWay, MixUp::MagneticOnTrue, MixUp::GridOnTrue, MixUp::TrueOnGrid,
        MixUp::GridOnMagnetic, MixUp::GridMagneticWrongWay, MixUp::MagneticOnGrid}) {
    const bool grid =
        mixUp != MixUp::TrueOnMagnetic && mixUp != MixUp::MagneticWrongWay && mixUp != MixUp::MagneticOnTrue;
    if (grid && !convergence)
      continue;
    const Angle made = errorOf(mixUp, declination, convergence.value_or(Convergence{}));
    if (std::abs(made.signedTurn().degrees()) > within && off(made) <= within)
      found.push_back({mixUp, made});
  }
  std::stable_sort(found.begin(), found.end(),
                   [&](const Explanation &a, const Explanation &b) { return off(a.error) < off(b.error); });
  return found;
}

} // namespace brushline
