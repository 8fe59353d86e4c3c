// SPDX-License-Identifier: GPL-2.0-or-later
#include "sighting/sight_line.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace brushline {

namespace {
constexpr double infinite = std::numeric_limits<double>::infinity();

// By how much the slope has fallen at a profile's points, from its start up to each: what hides marks is ground that
// falls away. Where there is no data the ground goes on straight to where there is.
std::vector<double> slopeFallen(const Profile &profile) {
  const std::vector<double> &heights = profile.heights;
  std::vector<double> fallen(heights.size(), 0);
  size_t before = heights.size(), last = heights.size(); // of the points with data
  for (size_t i = 0; i < heights.size(); ++i) {
    if (std::isnan(heights[i]))
      continue;
    if (before < last) {
      const double here = (heights[last] - heights[before]) / double(last - before),
                   next = (heights[i] - heights[last]) / double(i - last);
      fallen[last] = std::max(0.0, here - next) / profile.step.metres();
    }
    before = last < heights.size() ? last : before;
    last = i;
  }
  for (size_t i = 1; i < fallen.size(); ++i)
    fallen[i] += fallen[i - 1];
  return fallen;
}
} // namespace

SightLine::SightLine(std::vector<SightStretch> stretches, std::optional<Profile> profile)
    : mStretches(std::move(stretches)), mProfile(std::move(profile)) {
  double start = 0, depth = 0;
  mDepths.reserve(mStretches.size());
  for (const SightStretch &stretch : mStretches) {
    depth += (stretch.to_m - start) * stretch.extinction;
    mDepths.push_back(depth);
    start = stretch.to_m;
  }
}

double SightLine::opticalDepth(double at_m) const {
  const auto found = std::lower_bound(mStretches.begin(), mStretches.end(), at_m,
                                      [](const SightStretch &stretch, double m) { return stretch.to_m < m; });
  if (found == mStretches.end())
    return mDepths.empty() ? 0 : mDepths.back();
  return mDepths[size_t(found - mStretches.begin())] - (found->to_m - at_m) * found->extinction;
}

double SightLine::placeOfDepth(double depth) const {
  const auto found = std::lower_bound(mDepths.begin(), mDepths.end(), depth);
  if (found == mDepths.end())
    return infinite;
  const SightStretch &stretch = mStretches[size_t(found - mDepths.begin())];
  return stretch.extinction > 0 ? stretch.to_m - (*found - depth) / stretch.extinction : stretch.to_m;
}

double SightLine::visibility(double from_m, double to_m) const {
  return std::exp(opticalDepth(from_m) - opticalDepth(to_m));
}

double SightLine::coverSight(double at_m, double exponent) const {
  return placeOfDepth(opticalDepth(at_m) + exponent) - at_m;
}

double SightLine::groundSight(double at_m, double farthest_m, const Looking &looking) const {
  if (!mProfile || mProfile->heights.size() < 2)
    return farthest_m;
  const double step = mProfile->step.metres();
  const std::vector<double> &heights = mProfile->heights;
  const double position = std::min(at_m / step, double(heights.size() - 1));
  const auto below = std::min(size_t(position), heights.size() - 2);
  const double ground = heights[below] + (position - double(below)) * (heights[below + 1] - heights[below]);
  if (std::isnan(ground))
    return farthest_m;
  const double eye = ground + looking.eye_height.metres();
  double steepest = -infinite;              // of the ground passed so far, seen from the eye
  double clearDistance = 0, clearAbove = 0; // of the last point whose mark is seen; how far it rises above that slope
  for (size_t i = below + 1; i < heights.size(); ++i) {
    const double distance = double(i) * step - at_m;
    if (distance <= 0 || std::isnan(heights[i]))
      continue;
    const double mark = heights[i] + looking.mark_height.metres() - eye;
    const double above = mark - steepest * distance;
    if (above < 0) {
      // Between the last clear point and this one the mark sinks out of sight; the ground there is straight.
      const double hidden = clearDistance + (distance - clearDistance) * clearAbove / (clearAbove - above);
      return std::min(hidden, farthest_m);
    }
    if (distance >= farthest_m)
      break;
    steepest = std::max(steepest, (heights[i] - eye) / distance);
    clearDistance = distance;
    clearAbove = mark - steepest * distance;
  }
  return farthest_m;
}

double SightLine::sightFrom(double at_m, const Looking &looking) const {
  return groundSight(at_m, coverSight(at_m, -std::log(looking.clear_probability)), looking);
}

double SightLine::shortestSight(double from_m, double to_m, const Looking &looking) const {
  const double exponent = -std::log(looking.clear_probability);
  double shortest = std::min(sightFrom(from_m, looking), sightFrom(to_m, looking));
  const auto look = [&](double at) {
    if (at > from_m && at < to_m)
      // No farther than matters.
      shortest = groundSight(at, std::min(shortest, coverSight(at, exponent)), looking);
  };
  for (const SightStretch &border : mStretches) {
    look(border.to_m); // the eye on a border
    // The point just seen on it. Beyond it may be open ground: rounding must not let the eye see over that.
    const double depth = opticalDepth(border.to_m) - exponent;
    const double at = depth > 0 ? placeOfDepth(depth) : 0;
    if (at > from_m && at < to_m)
      shortest = std::min(shortest, groundSight(at, border.to_m - at, looking));
  }
  if (mProfile && mProfile->step > Length())
    shortest = shortestGroundSight(from_m, to_m, shortest, looking); // the cover lets one see farther everywhere
  return shortest;
}

double SightLine::shortestGroundSight(double from_m, double to_m, double shortest, const Looking &looking) const {
  // From an eye e above the ground to a mark m above it, l metres off, the line of sight is e (1 - t) + m t above the
  // straight line between their grounds, at the share t of the way. Ground whose slope falls by f in all between them
  // rises above that by l f t (1 - t) at the most. So it hides nothing unless l f >= e / t + m / (1 - t), which is least
  // (sqrt e + sqrt m)^2.
  const double heights = std::sqrt(looking.eye_height.metres()) + std::sqrt(looking.mark_height.metres());
  const std::vector<double> fallen = slopeFallen(*mProfile);
  constexpr double closest = 1; // metres; before an edge one sees least from a few metres off
  const double step = mProfile->step.metres();
  const auto looks = int(std::ceil(step / closest));
  for (auto piece = size_t(std::max(0.0, std::floor(from_m / step))); piece + 1 < fallen.size(); ++piece) {
    const double start = double(piece) * step;
    if (start >= to_m)
      break;
    const double farthest = (start + step + shortest) / step;
    const size_t last = farthest < double(fallen.size() - 1) ? size_t(farthest) : fallen.size() - 1;
    if (const double fall = fallen[last] - fallen[piece]; !(fall > 0) || fall * shortest < heights * heights)
      continue;
    for (int i = 0; i < looks; ++i)
      if (const double at = start + step * i / looks; at > from_m && at < to_m)
        shortest = groundSight(at, shortest, looking);
  }
  return shortest;
}

bool groundLetsSee(const Profile &profile, Length eye_height, Length mark_height) {
  const std::vector<double> &heights = profile.heights;
  if (heights.size() < 3)
    return true;
  const double step = profile.step.metres();
  const double eye = heights.front() + eye_height.metres();
  const double slope = (heights.back() + mark_height.metres() - eye) / (step * double(heights.size() - 1));
  for (size_t i = 1; i + 1 < heights.size(); ++i)
    if ((heights[i] - eye) / (step * double(i)) > slope)
      return false;
  return true;
}

} // namespace brushline
