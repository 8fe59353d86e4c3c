// SPDX-License-Identifier: GPL-2.0-or-later
#include "walking/profile_summary.h"

#include <cmath>

namespace brushline {

ProfileSummary summarize(const Profile &profile) {
  double slopeLength = 0, climb = 0, drop = 0, withoutData = 0;
  const double run = profile.step.metres();
  for (size_t i = 1; i < profile.heights.size(); ++i) {
    const double rise = profile.heights[i] - profile.heights[i - 1];
    if (std::isnan(rise)) {
      withoutData += run;
      continue;
    }
    slopeLength += std::hypot(run, rise);
    (rise > 0 ? climb : drop) += std::abs(rise);
  }
  return {Length::metres(slopeLength), Length::metres(climb), Length::metres(drop), Length::metres(withoutData)};
}

Profile reversed(const Profile &profile) {
  return {profile.step, std::vector<double>(profile.heights.rbegin(), profile.heights.rend())};
}

} // namespace brushline
