// SPDX-License-Identifier: GPL-2.0-or-later
// Lines that are aimed at: nets, what is seen from a place, aims beside destinations.
#include "fuzz_land.h"

#include "planning/aim_off.h"

using namespace brushline;
using fuzz::Input;

namespace {

void fan(Input &input) {
  std::vector<FanEdge> edges;
  const auto point = [&]() -> PlanePoint {
    const auto one = [&] { return input.upTo(2) > 0 ? double(input.upTo(6)) - 3 : input.between(-5000, 5000); };
    const double east = one();
    return {east, one()};
  };
  for (size_t count = input.upTo(20); count > 0; --count)
    edges.push_back({point(), point()});
  const LineFan fan(edges);
  double before = 0;
  for (const FanPiece &piece : fan.pieces()) {
    PROMISED(piece.from >= before - 1e-12 && piece.to > piece.from && piece.to <= 2 * Angle::pi + 1e-12);
    PROMISED(piece.edge < edges.size() && piece.from_m >= 0 && piece.to_m >= 0);
    before = piece.to;
  }
  const LegErrors errors{Angle::degrees(input.between(0.1, 45)), Angle::degrees(input.between(0, 10)),
                         Angle::degrees(input.between(0, 30)), 0.05};
  const AimSpread spread({input.scaled(0.5, 5000)}, errors);
  for (int i = 0; i < 3; ++i) {
    const double bearing = input.between(0, 2 * Angle::pi);
    if (const auto met = fan.met(bearing))
      PROMISED(met->edge < edges.size() && met->metres >= 0 && std::isfinite(met->metres));
    double sum = 0;
    fan.chances(bearing, spread, input.scaled(1, 1e5), [&](size_t edge, double chance) {
      PROMISED(edge < edges.size() && chance > 0 && chance <= 1 + 1e-12);
      sum += chance;
    });
    PROMISED(sum <= 1 + 1e-9);
  }
}

void plan(Input &input) {
  fuzz::Land land(input, input.scaled(10, 5000));
  std::vector<Shape> shapes;
  for (size_t count = input.upTo(4); count > 0; --count)
    shapes.push_back(land.shape(input.flag() ? ShapeKind::Line : ShapeKind::Polygon, 2, 6));
  const LineNet net(shapes);
  const Length reach = Length::metres(input.scaled(1, 20000));
  std::vector<AimDestination> destinations;
  for (const Place &place : land.line(0, 4)) {
    const auto on = net.nearest(place, reach);
    if (!on)
      continue;
    PROMISED(on->away_m >= 0 && on->away_m <= reach.metres() && fuzz::isFinite(on->place));
    PROMISED(on->along_m >= 0 && on->along_m <= net.length(on->line, on->part) * (1 + 1e-9));
    destinations.push_back({*on, "x"});
  }
  if (destinations.size() > 1 && destinations[0].on.line == destinations[1].on.line &&
      destinations[0].on.part == destinations[1].on.part) {
    const OnLine &a = destinations[0].on, &b = destinations[1].on;
    PROMISED(std::abs(net.way(a.line, a.part, a.along_m, b.along_m)) <= net.length(a.line, a.part) * (1 + 1e-9));
    PROMISED(net.walk(a, b).size() >= 2);
  }
  const AimDestinations goals(destinations);
  const Shapes catching(land.shapesNearAndFar(2));

  AnnotateSettings legs;
  legs.field = &fuzz::field(input);
  legs.compass = fuzz::compass(input);
  legs.walkers.push_back(fuzz::walker(input));
  if (input.flag())
    legs.walkers.push_back(fuzz::walker(input));
  legs.spacing = fuzz::spacing(input);
  legs.spacing.most = Length::metres(std::max(20.0, legs.spacing.most.metres()));
  AimRule rule;
  rule.side = input.from({AimSide::Choose, AimSide::Left, AimSide::Right});
  rule.confidence = input.between(0.501, 0.999);
  rule.reach = reach;
  rule.tell_apart = input.flag();
  rule.whole_dial = input.flag();
  const auto heights = land.heights();
  const bool ground = input.flag();
  std::vector<std::unique_ptr<LegAnnotator>> annotators;
  for (size_t i = 0; i < legs.walkers.size(); ++i)
    annotators.push_back(std::make_unique<LegAnnotator>(AimPlanner::annotatorSettings(legs, i),
                                                        ground ? land.terrain(heights) : nullptr, nullptr));
  AimPlanner planner({&net, destinations.empty() ? nullptr : &goals, input.flag() ? &catching : nullptr, rule, legs},
                     std::move(annotators), ground ? land.terrain(heights) : nullptr);
  AimStart start{land.place(), {}, land.grid(), land.project()};
  if (!destinations.empty() && input.flag())
    start.destination = input.upTo(destinations.size() - 1);
  try {
    const AimPlan plan = planner.plan(start, fuzz::Patience(500));
    PROMISED(plan.legs.size() == (plan.failure ? 0 : legs.walkers.size()));
    for (const AimedLeg &aimed : plan.legs) {
      fuzz::checkLeg(aimed.leg, legs.compass, 1);
      PROMISED(aimed.line < net.shapes().size());
      PROMISED(fuzz::isShare(aimed.hit) && fuzz::isShare(aimed.right) && fuzz::isShare(aimed.wrong));
      PROMISED(aimed.right + aimed.wrong <= 1 + 1e-9 && aimed.right <= aimed.hit + 1e-9);
      PROMISED(std::isfinite(aimed.stop_m) && aimed.stop_m > 0 && aimed.stop_paces >= 0);
      PROMISED(!aimed.along_line_m || (std::isfinite(*aimed.along_line_m) && *aimed.along_line_m >= 0));
      PROMISED(!aimed.offset || std::abs(aimed.offset->degrees()) <= 90);
      PROMISED(!aimed.offset_m || std::isfinite(*aimed.offset_m));
      PROMISED(aimed.destination.has_value() == (aimed.turn != LineTurn::None));
      PROMISED(!aimed.catching || aimed.catching->beyond_m >= 0);
    }
  } catch (const Cancelled &) {
  }
}

} // namespace

FUZZ(input) { input.flag() ? fan(input) : plan(input); }
