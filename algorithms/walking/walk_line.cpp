// SPDX-License-Identifier: GPL-2.0-or-later
#include "walking/walk_line.h"

#include "walking/pacing.h"
#include "walking/walking_time.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace brushline {

WalkLine::WalkLine(Length length, const Profile *profile, const std::vector<FootingStretch> &footing,
                   const Walker &walker) {
  const double end = length.metres();
  const bool sloped = profile && profile->heights.size() > 1;
  const double step = sloped ? profile->step.metres() : end;
  const size_t steps = sloped ? profile->heights.size() - 1 : 1;
  constexpr Length metre = Length::metres(1); // steps and time grow with the way as long as the slope is the same
  static const FootingStretch plain{std::numeric_limits<double>::infinity(), 1, 1.0};
  size_t stretch = 0;
  mNodes.reserve(steps + footing.size() + 1);
  mNodes.push_back({0, 0, 0});
  // From border to border, of the profile's steps and of the footing alike.
  for (size_t i = 0; i < steps; ++i) {
    const double stepEnd = i + 1 == steps ? end : step * double(i + 1);
    const Length rise = Length::metres(sloped ? (profile->heights[i + 1] - profile->heights[i]) / step : 0); // a metre
    const double stepsPerMetre = stepsOver(metre, rise, walker);
    const double secondsPerMetre = walkingTime(metre, rise, walker).seconds();
    while (mNodes.back().at_m < stepEnd) {
      const Node before = mNodes.back();
      while (stretch < footing.size() && footing[stretch].to_m <= before.at_m)
        ++stretch;
      const FootingStretch &here = stretch < footing.size() ? footing[stretch] : plain;
      const double at = std::min(stepEnd, here.to_m);
      const double run = at - before.at_m;
      const double seconds = here.speed_factor ? run * secondsPerMetre / *here.speed_factor
                                               : std::numeric_limits<double>::quiet_NaN();
      mNodes.push_back({at, before.steps + run * stepsPerMetre * here.pace_factor, before.seconds + seconds});
    }
  }
}

double WalkLine::interpolated(double at_m, double Node::*value) const {
  const auto after = std::lower_bound(mNodes.begin(), mNodes.end(), at_m,
                                      [](const Node &node, double m) { return node.at_m < m; });
  if (after == mNodes.begin())
    return mNodes.front().*value;
  if (after == mNodes.end())
    return mNodes.back().*value;
  const Node &before = *(after - 1);
  const double share = (at_m - before.at_m) / (after->at_m - before.at_m);
  return before.*value + share * ((*after).*value - before.*value);
}

double WalkLine::stepsTo(double at_m) const { return interpolated(at_m, &Node::steps); }

std::optional<Duration> WalkLine::timeTo(double at_m) const {
  const double seconds = interpolated(at_m, &Node::seconds);
  return std::isnan(seconds) ? std::nullopt : std::optional(Duration::seconds(seconds));
}

std::optional<Duration> WalkLine::time() const { return timeTo(mNodes.back().at_m); }

} // namespace brushline
