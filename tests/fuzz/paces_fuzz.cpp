// SPDX-License-Identifier: GPL-2.0-or-later
// Paces from tries, and what walks have in common.
#include "fuzz_land.h"

#include "records/pace_calibration.h"
#include "records/walk_errors.h"

using namespace brushline;
using fuzz::Input;

namespace {

void checkCommon(const CommonError &common) {
  PROMISED(common.legs > 0 && std::isfinite(common.mean));
  PROMISED(common.scatter >= 0 && std::isfinite(common.scatter));
  PROMISED(!common.se || common.legs > 1);
  PROMISED(common.half_width.has_value() == common.se.has_value());
  PROMISED(!common.se || (*common.se >= 0 && std::isfinite(*common.se)));
  PROMISED(!common.half_width || (*common.half_width >= *common.se && std::isfinite(*common.half_width)));
}

LegError error(Input &input) {
  switch (input.upTo(2)) {
  case 0:
    return {double(input.upTo(4)) - 2, 1};
  case 1:
    return {input.between(-180, 180), input.scaled(1e-6, 1e3)};
  default:
    return {input.between(-1e6, 1e6), input.scaled(1e-12, 1e6)};
  }
}

void tries(Input &input) {
  const PaceKind kind = input.from({PaceKind::Single, PaceKind::Double});
  std::vector<PaceTry> tries;
  const bool usual = input.flag();
  for (size_t count = input.upTo(16); count > 0; --count) {
    if (usual) {
      const double metres = input.from({100.0, 50.0, 400.0, 87.5});
      tries.push_back({std::round(metres * input.between(0.5, 2.2)), Length::metres(metres),
                       Angle::degrees(input.from({0.0, 5.0, -5.0, 15.0, -20.0, 31.0}))});
    } else {
      tries.push_back(
          {input.scaled(1e-3, 1e6), Length::metres(input.scaled(1e-3, 1e6)), Angle::degrees(input.between(-90, 90))});
    }
    if (tries.back().count <= 0)
      tries.back().count = 1;
  }
  const PaceCalibration made = calibratePaces(tries, kind);
  PROMISED(made.tries.size() == tries.size() && made.used <= tries.size() && made.flagged <= tries.size() &&
           made.sloped <= made.used);
  for (const JudgedTry &each : made.tries)
    PROMISED(each.steps_per_100m > 0 && std::isfinite(each.steps_per_100m) && std::isfinite(each.residual_percent));
  if (made.none)
    return;
  PROMISED(made.used > 0 && made.paced.metres() > 0);
  PROMISED(made.steps_per_100m > 0 && made.steps_per_100m <= 1000);
  PROMISED(!made.spread || (*made.spread > 0 && std::isfinite(*made.spread)));
  PROMISED(!made.interval || (made.interval->low <= made.steps_per_100m && made.interval->high >= made.steps_per_100m));
  PROMISED(!made.pace_error_percent || *made.pace_error_percent >= Walker::paceErrorLimits.least);
  PROMISED(!made.slope || std::isfinite(made.slope->factor));
  PROMISED(!made.slope || !made.slope->interval || made.slope->interval->low <= made.slope->interval->high);
  PROMISED((made.used > 1) == made.interval.has_value());
}

void walks(Input &input) {
  std::vector<LegError> errors;
  for (size_t count = input.upTo(12); count > 0; --count)
    errors.push_back(error(input));
  const auto common = commonError(errors);
  PROMISED(common.has_value() == !errors.empty());
  if (common)
    checkCommon(*common);

  std::vector<WalkedErrors> legs;
  for (size_t count = input.upTo(14); count > 0; --count) {
    WalkedErrors leg;
    leg.track = legs.empty() ? 0 : legs.back().track + input.upTo(1);
    leg.walker = legs.empty() || legs.back().track != leg.track ? input.from({"", "Ana", "Ben"}) : legs.back().walker;
    if (input.upTo(3) > 0)
      leg.bearing = LegError{input.between(-180, 180), input.scaled(1e-3, 90)};
    if (input.upTo(3) > 0)
      leg.length = LegError{input.between(-99, 1000), input.scaled(1e-3, 100)};
    if (input.flag())
      leg.declination = input.between(-180, 180);
    if (input.flag())
      leg.convergence = input.between(-180, 180);
    if (input.flag())
      leg.paces = input.between(0, 1e5);
    leg.meant_m = input.scaled(1e-3, 1e5);
    legs.push_back(leg);
  }
  for (const GroupErrors &group : groupErrors(legs)) {
    PROMISED(group.bearing || group.length);
    PROMISED(group.legs <= legs.size() && group.length_legs <= legs.size());
    for (const auto &each : {group.bearing, group.length})
      if (each)
        checkCommon(*each);
    PROMISED(!group.pace_scale || (*group.pace_scale > 0 && std::isfinite(*group.pace_scale)));
    PROMISED(!group.paces_100m || (*group.paces_100m >= 0 && std::isfinite(*group.paces_100m)));
    PROMISED(group.mix_ups.empty() || group.norths_known);
  }
}

} // namespace

FUZZ(input) { input.flag() ? tries(input) : walks(input); }
