// SPDX-License-Identifier: GPL-2.0-or-later
#include "walking/pacing.h"

#include <array>
#include <cmath>

namespace brushline {

namespace {
// Moss 1917, paragraph 1887: inches along the slope, at 0, 5, ... 30 degrees.
constexpr std::array<double, 7> upInches = {30.4, 27.6, 24.4, 22.1, 19.7, 17.8, 15.0};
constexpr std::array<double, 7> downInches = {30.4, 29.2, 28.3, 27.6, 26.4, 23.6, 19.7};
constexpr double tableStep = 5; // degrees
} // namespace

double stepLengthRatio(Angle slope) {
  const auto &inches = slope.degrees() >= 0 ? upInches : downInches;
  const double position = std::abs(slope.degrees()) / tableStep;
  if (!(position < double(inches.size() - 1)))
    return inches.back() / inches.front();
  const auto i = size_t(position);
  return (inches[i] + (position - double(i)) * (inches[i + 1] - inches[i])) / inches.front();
}

double stepsOver(Length run, Length rise, const Walker &walker) {
  double level = run.metres(); // the level distance that takes as many steps
  if (walker.slope_rule == SlopeRule::SlopeTable && rise.metres() != 0)
    // Not hypot and atan2, which take three times as long; run is not negative.
    level = std::sqrt(run.metres() * run.metres() + rise.metres() * rise.metres()) /
            stepLengthRatio(Angle::radians(std::atan(rise.metres() / run.metres())));
  return level / 100 * walker.steps_per_100m;
}

long pacesCounted(double singleSteps, PaceKind kind) {
  return long(std::floor((kind == PaceKind::Double ? singleSteps / 2 : singleSteps) + 0.5));
}

} // namespace brushline
