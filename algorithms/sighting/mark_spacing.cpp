// SPDX-License-Identifier: GPL-2.0-or-later
#include "sighting/mark_spacing.h"

#include <algorithm>

namespace brushline {

double MarkChain::medianHop() const {
  std::vector<double> hops;
  double before = 0;
  for (const SpacedMark &mark : marks) {
    hops.push_back(mark.at_m - before);
    before = mark.at_m;
  }
  if (hops.empty())
    return 0;
  std::sort(hops.begin(), hops.end());
  const size_t middle = hops.size() / 2;
  return hops.size() % 2 ? hops[middle] : (hops[middle - 1] + hops[middle]) / 2;
}

double MarkChain::squaredHops() const {
  double sum = 0, before = 0;
  for (const SpacedMark &mark : marks) {
    sum += (mark.at_m - before) * (mark.at_m - before);
    before = mark.at_m;
  }
  return sum;
}

MarkChain spaceMarks(const SightLine &line, Length length, const Looking &looking, const SpacingRule &rule) {
  MarkChain chain;
  const double end = length.metres();
  // A rest shorter than this is rounding, no hop of its own.
  constexpr double rest = 1e-6;
  for (double at = 0; at < end;) {
    const double sight = line.sightFrom(at, looking);
    const double hop = std::clamp(rule.sight_share * sight, rule.least.metres(), rule.most.metres());
    const double next = at + hop >= end - rest ? end : at + hop;
    if (sight < std::min(rule.least.metres(), next - at))
      chain.blind_m += next - at;
    chain.marks.push_back({next, sight});
    at = next;
  }
  return chain;
}

} // namespace brushline
