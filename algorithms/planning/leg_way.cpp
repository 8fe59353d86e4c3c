// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/leg_way.h"

#include "sighting/footing.h"

#include <algorithm>
#include <cmath>

namespace brushline {

namespace {
bool isComplete(const Profile &profile) {
  return std::none_of(profile.heights.begin(), profile.heights.end(), [](double height) { return std::isnan(height); });
}

const Profile *orNull(const std::optional<Profile> &profile) { return profile ? &*profile : nullptr; }
} // namespace

LegWay::LegWay(const Place &from, const Place &to, const GeodesicLeg &leg, Length beyond, Terrain *terrain,
               CoverSource *cover, const CoverTable *table)
    : mLength(leg.length), mBeyond(beyond) {
  if (terrain) {
    Profile on = terrain->profile(from, to, leg.length);
    mWhole = on;
    if (isComplete(on))
      mOnProfile = std::move(on);
    if (beyond > Length()) {
      Profile past = terrain->profile(to, leg.arrival, beyond);
      // The whole goes on by the leg's own steps.
      terrain->lengthen(*mWhole, to, leg.arrival, beyond);
      if (isComplete(past))
        mBeyondProfile = std::move(past);
    }
  }
  if (cover) {
    mOnFooting = footingOf(cover->along(from, leg.departure, leg.length), *table, leg.length);
    if (beyond > Length())
      mBeyondFooting = footingOf(cover->along(to, leg.arrival, beyond), *table, beyond);
  }
}

LegWay::Walked LegWay::walkedBy(const Walker &walker) const {
  std::optional<WalkLine> past;
  if (mBeyond > Length())
    past.emplace(mBeyond, orNull(mBeyondProfile), mBeyondFooting, walker);
  return {WalkLine(mLength, orNull(mOnProfile), mOnFooting, walker), std::move(past), mLength.metres()};
}

double LegWay::Walked::stepsTo(double at_m) const {
  if (at_m <= mLength || !mBeyond)
    return mOn.stepsTo(at_m);
  return mOn.steps() + mBeyond->stepsTo(at_m - mLength);
}

std::optional<Duration> LegWay::Walked::timeTo(double at_m) const {
  if (at_m <= mLength || !mBeyond)
    return mOn.timeTo(at_m);
  const auto on = mOn.time(), past = mBeyond->timeTo(at_m - mLength);
  if (!on || !past)
    return std::nullopt;
  return Duration::seconds(on->seconds() + past->seconds());
}

} // namespace brushline
