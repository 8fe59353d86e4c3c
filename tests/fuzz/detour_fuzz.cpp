// SPDX-License-Identifier: GPL-2.0-or-later
// Rings that nobody walks through, and right-angled ways round them.
#include "fuzz_land.h"

#include "planning/detour.h"

using namespace brushline;

FUZZ(input) {
  fuzz::Land land(input, input.scaled(10, 5000));
  try {
    const std::vector<Shape> given = land.shapesNearAndFar(5);
    const Obstacles obstacles(given, fuzz::Patience(10000));
    PROMISED(obstacles.outlines().size() == given.size());
    for (const size_t each : obstacles.holding(land.place()))
      PROMISED(each < given.size() && given[each].kind == ShapeKind::Polygon);

    const DetourRule rule{Length::metres(input.from({0.0, 5.0, 50.0, 1000.0})), Length::metres(input.scaled(1, 10000))};
    for (const RouteLeg &leg : detourRoute(land.route(2, 4), obstacles, rule, fuzz::Patience(2000))) {
      const DetouredLeg &way = leg.way;
      PROMISED(way.length.metres() > 0 && !way.pieces.empty());
      PROMISED(geodesicBetween(way.pieces.front().from, leg.from.place).length.metres() < 1e-3);
      PROMISED(geodesicBetween(way.pieces.back().to, leg.to.place).length.metres() < 1e-3);
      for (size_t i = 0; i < way.pieces.size(); ++i) {
        const LegPiece &piece = way.pieces[i];
        PROMISED(fuzz::isFinite(piece.from) && fuzz::isFinite(piece.to));
        PROMISED(fuzz::isBearing(piece.geodesic.departure.degrees()) && piece.geodesic.length.metres() >= 0);
        PROMISED(piece.from_m <= piece.to_m + 1e-6);
        PROMISED((piece.part == LegPart::Along) == !piece.detour);
        PROMISED(i == 0 || geodesicBetween(way.pieces[i - 1].to, piece.from).length.metres() < 1e-3);
      }
      double at = 0;
      for (const Detour &detour : way.detours) {
        PROMISED(detour.leaves_m >= at - 1e-6 && detour.returns_m > detour.leaves_m);
        PROMISED(detour.returns_m <= way.length.metres() + 1e-6);
        PROMISED(detour.out_m > 0 && detour.out_m <= rule.most_out.metres() + 1e-6);
        PROMISED(!detour.obstacles.empty());
        at = detour.returns_m;
      }
      for (const NotPassed &stretch : way.not_passed)
        PROMISED(stretch.from_m <= stretch.to_m && !stretch.obstacles.empty());
    }
  } catch (const Cancelled &) {
  }
}
