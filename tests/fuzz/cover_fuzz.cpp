// SPDX-License-Identifier: GPL-2.0-or-later
// Patches of cover, lines through them and through rasters, rows over them.
#include "fuzz_land.h"

#include "sighting/footing.h"
#include "sighting/plain_ring.h"
#include "sighting/sight_surface.h"

using namespace brushline;
using fuzz::Input;

namespace {

double coordinate(Input &input) { return input.upTo(3) > 0 ? double(input.upTo(8)) : input.between(-1e7, 1e7); }
MapPoint point(Input &input) {
  const double x = coordinate(input);
  return {x, coordinate(input)};
}

void map(Input &input) {
  std::vector<CoverPatch> patches;
  for (size_t count = input.upTo(8); count > 0; --count) {
    CoverPatch patch{{}, int(input.upTo(3))};
    for (size_t rings = input.upTo(3); rings > 0; --rings) {
      auto &ring = patch.rings.emplace_back();
      for (size_t points = input.upTo(8); points > 0; --points)
        ring.push_back(point(input));
      if (!ring.empty() && input.flag())
        ring.push_back(ring.front());
      isPlainRing(ring);
    }
    patches.push_back(std::move(patch));
  }
  const CoverMap map(std::move(patches));
  for (int i = 0; i < 4; ++i) {
    double at = 0;
    int before = -2;
    bool both = false;
    for (const CoverStretch &stretch : map.along(point(input), point(input))) {
      PROMISED(stretch.to > at || (at == 0 && stretch.to == 1));
      PROMISED(stretch.to <= 1 && stretch.cover >= -1 && stretch.cover <= 3);
      PROMISED(stretch.cover != before || stretch.overlapping != both);
      at = stretch.to;
      before = stretch.cover;
      both = stretch.overlapping;
    }
    PROMISED(at == 1);
  }
  std::vector<double> row(input.upTo(40));
  extinctionRow(map, {0.5, 0.1, 1e-9, 2}, point(input), input.scaled(1e-3, 1e4), row);
  for (const double extinction : row)
    PROMISED(std::isnan(extinction) || (extinction > 0 && extinction <= 2));
  sightsFromExtinctions(row, input.between(0.01, 0.99));
  for (const double sight : row)
    PROMISED(std::isnan(sight) || sight > 0);
}

void source(Input &input) {
  fuzz::Land land(input, input.scaled(1, 5000));
  const CoverTable &table = builtInCover(CoverLegend::Own);
  const auto source = land.source(land.cover(int(table.classes().size())), table);
  const Length length = Length::metres(input.scaled(1e-3, 1e4));
  const Place from = land.place();
  const TrueBearing bearing(Angle::degrees(input.between(0, 360)));
  const LookBeyond beyond{Length::metres(input.between(0, 5000)), Length::metres(input.between(0, 5000)),
                          input.between(0, 10)};
  const double farthest = std::max(beyond.unknown.metres(), beyond.farthest.metres());
  for (const auto &pieces : {source->along(from, bearing, length), source->along(from, bearing, length, beyond)}) {
    PROMISED(!pieces.empty());
    double at = 0;
    for (const CoverPiece &piece : pieces) {
      PROMISED(piece.to_m > at && piece.cover >= -1 && piece.cover < int(table.classes().size()));
      PROMISED(!piece.extinction || (*piece.extinction >= 0 && std::isfinite(*piece.extinction)));
      at = piece.to_m;
    }
    PROMISED(at >= length.metres() * (1 - 1e-12) && at <= length.metres() + farthest + 1e-6);
    double end = 0;
    for (const FootingStretch &stretch : footingOf(pieces, table, length)) {
      PROMISED(stretch.to_m > end && stretch.to_m <= length.metres() * (1 + 1e-12));
      PROMISED(stretch.pace_factor > 0 && (!stretch.speed_factor || *stretch.speed_factor > 0));
      end = stretch.to_m;
    }
  }
}

} // namespace

FUZZ(input) { input.flag() ? map(input) : source(input); }
