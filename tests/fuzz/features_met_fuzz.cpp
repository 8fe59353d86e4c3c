// SPDX-License-Identifier: GPL-2.0-or-later
// What a leg meets, what dangers it comes near, and how steep its ground is.
#include "fuzz_land.h"

#include "planning/features_met.h"
#include "planning/hazards.h"
#include "planning/leg_way.h"

using namespace brushline;

FUZZ(input) {
  fuzz::Land land(input, input.scaled(1, 5000));
  const Place from = land.place(), to = land.place();
  const GeodesicLeg leg = geodesicBetween(from, to);
  if (leg.length.metres() < 1e-3)
    return;
  const LegLine line(from, leg.departure, leg.length);
  std::vector<Shape> given = land.shapesNearAndFar(5);
  if (input.flag())
    given.emplace_back(); // no places, no shape
  const Shapes shapes(given);
  const auto terrain = land.terrain(land.heights());
  const double farthest = line.length_m() > 1 ? 3000 : line.length_m() * 1000; // terrain goes on by the leg's own steps
  const MeetRule rule{Length::metres(input.from({0.0, 10.0, 200.0})),
                      Length::metres(std::min(farthest, input.from({0.0, 100.0, 3000.0})))};

  std::optional<Profile> profile;
  if (input.flag()) {
    profile = terrain->profile(from, to, leg.length);
    if (profile->heights.size() > 1)
      terrain->lengthen(*profile, to, leg.arrival, rule.reach);
  }
  double before = 0;
  for (const FeatureMet &met : allMet(shapes, line, profile ? &*profile : nullptr, rule)) {
    PROMISED(met.shape == FeatureMet::noShape || met.shape < given.size());
    PROMISED(std::isfinite(met.at_m) && met.at_m >= before - 1e-6);
    PROMISED(std::abs(met.across_m) <= rule.width.metres() + 1e-3);
    PROMISED(met.role == MetRole::Beyond ? met.at_m >= line.length_m() - 2e-3 : met.at_m <= line.length_m() + 2e-3);
    PROMISED(met.at_m <= line.length_m() + rule.reach.metres() + 1e-2);
    before = met.at_m;
  }

  const double distance = input.from({0.0, 1.0, 30.0, 1000.0});
  const auto near = shapesNear(
      shapes, line,
      [&](size_t shape) { return shape % 3 == 2 ? std::nullopt : std::optional(Length::metres(distance)); },
      Length::metres(distance));
  for (const NearShape &each : near) {
    PROMISED(each.shape < given.size() && each.shape % 3 != 2);
    double at = -1;
    for (const LegStretch &stretch : each.stretches) {
      PROMISED(stretch.from_m >= 0 && stretch.from_m <= stretch.to_m && stretch.to_m <= line.length_m() + 1e-6);
      PROMISED(stretch.from_m > at);
      at = stretch.to_m;
    }
  }

  const Angle limit = Angle::degrees(input.between(0, 90));
  const SteepGround steep =
      steepGround(*terrain, line, Length::metres(std::max(line.length_m() / 500, input.scaled(0.5, 100))), limit);
  PROMISED(steep.steepest.degrees() >= 0 && steep.steepest.degrees() <= 90);
  PROMISED(steep.without_data_m >= 0 && steep.without_data_m <= line.length_m() * (1 + 1e-9));
  double at = -1;
  for (const LegStretch &stretch : steep.stretches) {
    PROMISED(stretch.from_m > at && stretch.from_m <= stretch.to_m && stretch.to_m <= line.length_m() * (1 + 1e-9));
    at = stretch.to_m;
  }

  const CoverTable &table = builtInCover(CoverLegend::Own);
  const auto cover = land.source(land.cover(int(table.classes().size())), table);
  const LegWay way(from, to, leg, rule.reach, input.flag() ? terrain.get() : nullptr, cover.get(), &table);
  const LegWay::Walked walked = way.walkedBy(fuzz::walker(input));
  const double half = walked.stepsTo(line.length_m() / 2), whole = walked.stepsTo(line.length_m());
  PROMISED(half > 0 && half <= whole && whole <= walked.stepsTo(line.length_m() + rule.reach.metres()));
  const auto time = walked.timeTo(line.length_m());
  PROMISED(!time || time->seconds() > 0);
}
