// SPDX-License-Identifier: GPL-2.0-or-later
#include "records/walk_errors.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>

namespace brushline {

namespace {
using Legs = std::vector<const WalkedErrors *>;
using Field = std::optional<LegError> WalkedErrors::*;
constexpr double sameNorth = 2; // degrees

std::vector<LegError> errorsOf(const Legs &legs, Field field) {
  std::vector<LegError> errors;
  for (const WalkedErrors *leg : legs)
    if (leg->*field)
      errors.push_back(*(leg->*field));
  return errors;
}

// The mean of an angle over legs; none where one does not know it, or where it differs.
std::optional<Angle> meanAngle(const Legs &legs, std::optional<double> WalkedErrors::*field) {
  double sum = 0, least = std::numeric_limits<double>::infinity(), most = -least;
  for (const WalkedErrors *leg : legs) {
    if (!(leg->*field))
      return std::nullopt;
    sum += *(leg->*field);
    least = std::min(least, *(leg->*field));
    most = std::max(most, *(leg->*field));
  }
  return legs.empty() || most - least > sameNorth ? std::nullopt
                                                  : std::optional(Angle::degrees(sum / double(legs.size())));
}

// Means of parts as the errors of a whole: legs of one walker err alike.
std::optional<CommonError> ofParts(const std::vector<Legs> &parts, Field field) {
  std::vector<LegError> means;
  size_t legs = 0;
  for (const Legs &part : parts)
    if (const auto mean = commonError(errorsOf(part, field))) {
      constexpr double least = 1e-6; // a part without scatter
      const double alone = mean->legs == 1 ? errorsOf(part, field).front().sigma : 0;
      means.push_back({mean->mean, std::max(mean->se.value_or(alone), least)});
      legs += mean->legs;
    }
  auto whole = commonError(means);
  if (whole)
    whole->legs = legs;
  return whole;
}

void explainErrors(GroupErrors &group, const Legs &legs) {
  if (group.bearing && group.bearing->half_width) {
    Legs sighted;
    std::copy_if(legs.begin(), legs.end(), std::back_inserter(sighted),
                 [](const WalkedErrors *leg) { return leg->bearing.has_value(); });
    const auto declination = meanAngle(sighted, &WalkedErrors::declination);
    const auto convergence = meanAngle(sighted, &WalkedErrors::convergence);
    group.norths_known = declination.has_value();
    if (declination)
      group.mix_ups =
          explain(Angle::degrees(group.bearing->mean), Angle::degrees(*group.bearing->half_width),
                  Declination{*declination}, convergence ? std::optional(Convergence{*convergence}) : std::nullopt);
  }
  if (!group.length || !group.length->half_width || std::abs(group.length->mean) <= *group.length->half_width)
    return;
  group.pace_scale = 1 / (1 + group.length->mean / 100);
  double paces = 0, metres = 0;
  for (const WalkedErrors *leg : legs)
    if (leg->paces && leg->length) {
      paces += *leg->paces;
      metres += leg->meant_m;
    }
  if (metres > 0)
    group.paces_100m = 100 * paces / metres * *group.pace_scale;
}

GroupErrors groupOf(GroupOf of, const Legs &legs) {
  GroupErrors group;
  group.of = of;
  group.track = legs.front()->track;
  group.walker = legs.front()->walker;
  group.bearing = commonError(errorsOf(legs, &WalkedErrors::bearing));
  group.length = commonError(errorsOf(legs, &WalkedErrors::length));
  return group;
}
} // namespace

std::vector<GroupErrors> groupErrors(const std::vector<WalkedErrors> &legs) {
  std::map<size_t, Legs> byTrack;
  std::map<std::string, Legs> byWalker;
  std::vector<Legs> parts; // named walkers, and tracks of nobody
  Legs all;
  for (const WalkedErrors &leg : legs) {
    byTrack[leg.track].push_back(&leg);
    if (!leg.walker.empty())
      byWalker[leg.walker].push_back(&leg);
    all.push_back(&leg);
  }
  std::vector<GroupErrors> groups;
  const auto add = [&](GroupErrors group, const Legs &of) {
    if (!group.bearing && !group.length)
      return;
    group.legs = group.bearing ? group.bearing->legs : 0;
    group.length_legs = group.length ? group.length->legs : 0;
    explainErrors(group, of);
    groups.push_back(std::move(group));
  };
  for (const auto &[track, of] : byTrack) {
    add(groupOf(GroupOf::Track, of), of);
    if (of.front()->walker.empty())
      parts.push_back(of);
  }
  for (const auto &[walker, of] : byWalker) {
    add(groupOf(GroupOf::Walker, of), of);
    parts.push_back(of);
  }
  if (!all.empty()) {
    GroupErrors whole = groupOf(GroupOf::All, all);
    if (parts.size() > 1) {
      whole.walker.clear();
      whole.bearing = ofParts(parts, &WalkedErrors::bearing);
      whole.length = ofParts(parts, &WalkedErrors::length);
    }
    add(std::move(whole), all);
  }
  return groups;
}

} // namespace brushline
