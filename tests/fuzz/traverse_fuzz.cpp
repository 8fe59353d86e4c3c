// SPDX-License-Identifier: GPL-2.0-or-later
// Legs that were read in the field, plotted, closed and suspected.
#include "fuzz_land.h"

#include "records/blunders.h"
#include "records/compass_rule.h"
#include "records/plot_legs.h"

#include <stdexcept>

using namespace brushline;
using fuzz::Input;

namespace {

void checkClosure(const Closure &closure) {
  PROMISED(closure.missed.metres() >= 0 && fuzz::isBearing(closure.bearing.degrees()));
  PROMISED(!closure.ratio || (*closure.ratio >= 0 && std::isfinite(*closure.ratio)));
}

void plot(Input &input) {
  fuzz::Land land(input, input.scaled(1, 10000));
  const North north = input.from({North::Magnetic, North::True, North::Grid});
  std::vector<ReadLeg> legs;
  std::vector<Length> lengths;
  for (size_t count = input.upTo(8); count > 0; --count) {
    legs.push_back({Angle::degrees(input.between(0, 360)), Length::metres(input.scaled(0.1, 100000))});
    lengths.push_back(legs.back().length);
  }
  const GridNorth grid(land.grid());
  const PlottedLegs plotted = plotLegs(land.place(), legs, fuzz::field(input), north, grid, fuzz::Patience(100));
  PROMISED(plotted.places.size() == plotted.bearings.size() + 1 && plotted.bearings.size() <= legs.size());
  PROMISED((plotted.bearings.size() == legs.size()) == (plotted.stop == PlottedLegs::Stop::None));
  for (const Place &place : plotted.places)
    PROMISED(fuzz::isFinite(place));
  for (size_t i = 0; i < plotted.bearings.size(); ++i) {
    PROMISED(fuzz::isBearing(plotted.bearings[i].degrees()));
    PROMISED(std::abs(geodesicBetween(plotted.places[i], plotted.places[i + 1]).length.metres() -
                      legs[i].length.metres()) <= 1e-6 * (1 + legs[i].length.metres()));
  }
  if (plotted.stop != PlottedLegs::Stop::None || legs.empty())
    return;
  const Place target = input.flag() ? plotted.places.front() : land.place();
  const PlacedClosure closed = closeTraverse(plotted.places, lengths, target);
  checkClosure(closed.closure);
  PROMISED(closed.adjusted.size() == plotted.places.size());
  PROMISED(geodesicBetween(closed.adjusted.back(), target).length.metres() <= 1e-6);
  for (const Place &place : closed.adjusted)
    PROMISED(fuzz::isFinite(place));
}

void blunders(Input &input) {
  const auto metre = [&] { return input.flag() ? (double(input.upTo(8)) - 4) * 100 : input.between(-1e5, 1e5); };
  std::vector<SuspectLeg> legs;
  std::vector<PlanePoint> points{{0, 0}};
  std::vector<Length> lengths;
  for (size_t count = 1 + input.upTo(9); count > 0; --count) {
    SuspectLeg leg;
    leg.step = {metre(), metre()};
    const double length = std::hypot(leg.step.east, leg.step.north);
    if (length < 0.1)
      leg.step = {0, 0.1};
    leg.errors = {Angle::degrees(input.between(0.1, 45)), Angle::degrees(input.between(0, 100)),
                  Angle::degrees(input.between(0, 100)), input.between(0.001, 0.5)};
    leg.squared_hops = length * length / double(1 + input.upTo(50));
    leg.paced = input.flag();
    leg.hundred = Length::metres(leg.paced ? input.between(5, 500) : 100);
    for (size_t swapped = input.upTo(3); swapped > 0; --swapped)
      leg.swapped.push_back(Angle::degrees(input.between(-180, 180)));
    legs.push_back(std::move(leg));
    lengths.push_back(Length::metres(std::max(0.1, length)));
    points.push_back({points.back().east + legs.back().step.east, points.back().north + legs.back().step.north});
  }
  const PlanePoint miss{metre(), metre()};
  std::vector<CommonTurn> common;
  if (input.flag())
    common = commonTurns(input.from({North::Magnetic, North::True, North::Grid}),
                         {Angle::degrees(input.between(-180, 180))}, {Angle::degrees(input.between(-180, 180))});
  const Suspicion found = suspect(legs, miss, common, fuzz::Patience(1000));
  PROMISED(found.allowed.metres() >= 0 && std::isfinite(found.allowed.metres()));
  PROMISED(!found.within || found.hints.empty());
  for (const BlunderHint &hint : found.hints) {
    PROMISED(!hint.leg || *hint.leg < legs.size());
    PROMISED(hint.stretch > 0 && std::isfinite(hint.stretch) && std::isfinite(hint.turn.degrees()));
    PROMISED(hint.left.metres() >= 0 && std::isfinite(hint.left.metres()));
  }
  Length walked;
  for (const Length &length : lengths)
    walked = walked + length;
  checkClosure(closureOf(walked, miss));
  if (input.flag())
    lengths.pop_back();
  try {
    const std::vector<PlanePoint> adjusted = compassRule(points, lengths, miss);
    PROMISED(lengths.size() + 1 == points.size() && adjusted.size() == points.size());
    PROMISED(adjusted.front().east == 0 && adjusted.front().north == 0);
    PROMISED(std::abs(adjusted.back().east - miss.east) <= 1e-6 &&
             std::abs(adjusted.back().north - miss.north) <= 1e-6);
  } catch (const std::invalid_argument &) {
    PROMISED(lengths.size() + 1 != points.size());
  }
}

} // namespace

FUZZ(input) {
  try {
    input.flag() ? plot(input) : blunders(input);
  } catch (const Cancelled &) {
  }
}
