// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/aim_spread.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace brushline {

AimSpread::AimSpread(const std::vector<double> &marks, const LegErrors &errors) {
  if (marks.empty() || !(marks.front() > 0))
    throw std::invalid_argument("a walk has hops");
  const double sighting = errors.sighting.radians(), setting = errors.setting.radians(),
               declination = errors.declination.radians();
  mRandom = sighting * sighting;
  mCommon = setting * setting + declination * declination;
  mNodes.reserve(marks.size() + 1);
  mNodes.push_back({0, 0});
  for (const double mark : marks) {
    const double hop = mark - mNodes.back().at_m;
    mNodes.push_back({mark, mNodes.back().squared + hop * hop});
  }
}

double AimSpread::at(double metres) const {
  const Node &end = mNodes.back();
  double squared;
  if (metres >= end.at_m) {
    squared = end.squared * (metres / end.at_m);
  } else {
    const auto next = std::upper_bound(mNodes.begin(), mNodes.end(), metres,
                                       [](double value, const Node &node) { return value < node.at_m; });
    const Node &before = *(next - 1);
    squared = before.squared + (metres - before.at_m) * (metres - before.at_m);
  }
  return std::sqrt(mRandom * squared / (metres * metres) + mCommon);
}

double shareBelow(double sigmas) { return std::erfc(-sigmas / std::sqrt(2.0)) / 2; }

} // namespace brushline
