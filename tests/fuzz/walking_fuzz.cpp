// SPDX-License-Identifier: GPL-2.0-or-later
// Steps, time, sight, drift and marks along one line.
#include "fuzz_land.h"

#include "planning/aim_spread.h"
#include "planning/features_met.h"
#include "sighting/extinction.h"
#include "sighting/footing.h"
#include "walking/pacing.h"
#include "walking/walk_line.h"
#include "walking/walking_time.h"

using namespace brushline;
using fuzz::Input;

namespace {

Profile profileOf(Input &input, double length, bool gaps) {
  Profile profile;
  const size_t steps = 1 + input.upTo(30);
  profile.step = Length::metres(length / double(steps));
  for (size_t i = 0; i <= steps; ++i)
    profile.heights.push_back(gaps && input.upTo(7) == 0 ? std::numeric_limits<double>::quiet_NaN()
                                                         : input.between(-400, 8900));
  return profile;
}

void walk(Input &input, double length) {
  const Walker walker = fuzz::walker(input);
  const Profile profile = profileOf(input, length, false);
  std::vector<FootingStretch> footing;
  if (input.flag())
    for (double at = 0; at < length && footing.size() < 12;) {
      at = footing.size() == 11 ? length : std::min(length, at + length * input.between(1e-6, 1));
      FootingStretch stretch{at, input.between(CoverClass::paceLimits.least, CoverClass::paceLimits.most), {}};
      if (input.upTo(5) > 0)
        stretch.speed_factor = input.between(CoverClass::speedLimits.least, CoverClass::speedLimits.most);
      footing.push_back(stretch);
    }
  const WalkLine line(Length::metres(length), input.flag() ? &profile : nullptr, footing, walker);
  PROMISED(line.steps() > 0 && std::isfinite(line.steps()));
  double steps = 0, seconds = 0, at = 0;
  for (int i = 0; i < 8; ++i) {
    PROMISED(line.stepsTo(at) >= steps - 1e-9 && line.stepsTo(at) <= line.steps() * (1 + 1e-12));
    steps = line.stepsTo(at);
    if (const auto time = line.timeTo(at)) {
      PROMISED(time->seconds() >= seconds - 1e-9);
      seconds = time->seconds();
    }
    at += length * input.between(0, 0.3);
  }
  PROMISED(pacesCounted(line.steps(), walker.kind) >= 0);

  const double rise = input.between(-1, 1) * length * 3;
  PROMISED(stepsOver(Length::metres(length), Length::metres(rise), walker) > 0);
  PROMISED(walkingTime(Length::metres(length), Length::metres(rise), walker).seconds() > 0);
  const double slope = input.any();
  for (const double speed : {offTrailSpeed(slope), onTrailSpeed(slope), hikingSpeed(slope)})
    PROMISED(std::isnan(slope) || (speed >= 0 && speed < 2));
  const double ratio = stepLengthRatio(Angle::degrees(input.between(-90, 90)));
  PROMISED(ratio > 0 && ratio <= 1.2);
  const double count = input.between(Walker::countLimits.least, Walker::countLimits.most);
  if (const auto single = singleSteps(count, walker.kind))
    PROMISED(*single > 0 && *single <= 2 * Walker::countLimits.most);
  if (walker.steps_per_100m >= 90) {
    const auto again = singleSteps(countGiven(walker.steps_per_100m, walker.kind), walker.kind);
    PROMISED(again && *again == walker.steps_per_100m);
  }

  const Profile odd = profileOf(input, length, true);
  const ProfileSummary sum = summarize(odd), back = summarize(reversed(odd));
  PROMISED(sum.climb.metres() >= 0 && sum.drop.metres() >= 0 && sum.without_data.metres() >= 0);
  PROMISED(std::abs(sum.climb.metres() - back.drop.metres()) <= 1e-6);
  double before = 0;
  for (const FeatureMet &change : slopeBreaks(odd)) {
    PROMISED(change.shape == FeatureMet::noShape && change.at_m >= before && change.at_m <= length * (1 + 1e-9));
    before = change.at_m;
  }
}

void look(Input &input, double length) {
  std::vector<SightStretch> stretches;
  if (input.flag())
    for (double at = 0; at < length && stretches.size() < 12;) {
      at = stretches.size() == 11 ? length : std::min(length, at + length * input.between(1e-6, 1));
      stretches.push_back({at, input.flag() ? 0 : input.scaled(1e-6, 10)});
    }
  std::optional<Profile> profile;
  if (input.flag())
    profile = profileOf(input, length, true);
  const SightLine line(stretches, profile);
  const Looking looking{input.between(SpacingRule::clearLimits.least, SpacingRule::clearLimits.most),
                        Length::metres(input.between(0.3, 3)), Length::metres(input.between(0, 5))};
  for (int i = 0; i < 4; ++i) {
    const double from = length * input.between(0, 1), to = from + (length - from) * input.between(0, 1);
    PROMISED(line.sightFrom(from, looking) >= 0);
    PROMISED(fuzz::isShare(line.visibility(from, to)));
    PROMISED(line.shortestSight(from, to, looking) >= 0);
    PROMISED(line.shortestSight(from, to, looking) <= line.sightFrom(from, looking) * (1 + 1e-9) + 1e-9);
  }
  const SpacingRule rule = fuzz::spacing(input);
  const double leg = std::min(length, rule.least.metres() * 2000);
  const MarkChain chain = spaceMarks(line, Length::metres(leg), looking, rule);
  PROMISED(!chain.marks.empty() && chain.marks.back().at_m == leg);
  PROMISED(chain.medianHop() > 0 && chain.squaredHops() > 0 && chain.blind_m >= 0 && chain.blind_m <= leg * (1 + 1e-9));
  std::vector<double> marks;
  for (const SpacedMark &mark : chain.marks) {
    PROMISED(mark.at_m > (marks.empty() ? 0 : marks.back()));
    PROMISED(mark.at_m - (marks.empty() ? 0 : marks.back()) <= rule.most.metres() * (1 + 1e-9));
    marks.push_back(mark.at_m);
  }

  const LegErrors errors{Angle::degrees(input.between(0.1, 45)), roundingError(Angle::degrees(input.between(0, 90))),
                         Angle::degrees(input.between(0, 90)), input.between(0.001, 0.5)};
  const AimSpread spread(marks, errors);
  double last = spread.most();
  for (const double share : {1e-9, 0.1, 0.5, 1.0, 1.5, 100.0}) {
    PROMISED(spread.at(leg * share) > 0 && spread.at(leg * share) <= last * (1 + 1e-9));
  }
  RouteDrift drift;
  for (size_t count = input.upTo(6); count > 0; --count) {
    const DriftEllipse ellipse = drift.walk(TrueBearing(Angle::degrees(input.between(0, 360))), Length::metres(leg),
                                            chain.squaredHops(), errors);
    PROMISED(ellipse.semi_minor.metres() >= 0 && ellipse.semi_major.metres() >= ellipse.semi_minor.metres());
    PROMISED(ellipse.major_axis.degrees() >= 0 && ellipse.major_axis.degrees() < 180);
    PROMISED(ellipse.across.metres() <= ellipse.semi_major.metres() * (1 + 1e-9));
  }
  PROMISED(sigmasHolding(input.between(0, 0.999999)) >= 0);
  PROMISED(fuzz::isShare(shareBelow(input.finite())));
  PROMISED(standExtinction(input.between(0, 1e6), Length::metres(input.between(0, 5)), input.between(0, 5)) >= 0);
  PROMISED(clearDistance(extinctionOf(Length::metres(input.scaled(0.5, 1e4))), looking.clear_probability).metres() > 0);
}

} // namespace

FUZZ(input) {
  const double length = input.scaled(1e-3, 2e4);
  input.flag() ? walk(input, length) : look(input, length);
}
