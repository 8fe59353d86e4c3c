// SPDX-License-Identifier: GPL-2.0-or-later
// Places on the Earth, what lies near them, and rasters under them.
#include "fuzz_land.h"

#include "magnetics/field_at_points.h"
#include "planning/leg_line.h"
#include "sighting/choose_marks.h"

#include <stdexcept>

using namespace brushline;
using fuzz::Input;
using fuzz::Land;

namespace {

void near(Input &input) {
  Land land(input, input.scaled(1, 2e6));
  const std::vector<Shape> given = land.shapes(6);
  const Shapes shapes(given);
  PROMISED(shapes.size() == given.size());
  const Length reach = Length::metres(input.scaled(0.01, 1e5));
  for (const ShapeStretch &stretch : shapes.near(land.place(), land.place(), reach)) {
    PROMISED(stretch.shape < given.size() && stretch.part < given[stretch.shape].parts.size());
    PROMISED(stretch.first <= stretch.last && stretch.last < given[stretch.shape].parts[stretch.part].size());
  }
  std::vector<NamedPlace> named;
  for (const Place &place : land.line(0, 8))
    named.push_back({place, "x"});
  const Place asked = land.place();
  double least = std::numeric_limits<double>::infinity();
  for (const NamedPlace &each : named)
    least = std::min(least, geodesicBetween(asked, each.place).length.metres());
  const NamedPlaces places(named, reach);
  const NamedPlace *found = places.nearest(asked);
  PROMISED(bool(found) == (least <= reach.metres()));
  PROMISED(!found || geodesicBetween(asked, found->place).length.metres() == least);
}

void lines(Input &input) {
  Land land(input, input.scaled(1, 1e5));
  const Place from = land.place(), to = land.place();
  const GeodesicLeg leg = geodesicBetween(from, to);
  PROMISED(fuzz::isBearing(leg.departure.degrees()) && fuzz::isBearing(leg.arrival.degrees()));
  double at = 0;
  const std::vector<GeodesicChord> chords = chordsAlong(from, to, leg.length, land.project());
  PROMISED(!chords.empty());
  for (const GeodesicChord &chord : chords) {
    PROMISED(chord.start_m == at && chord.end_m >= at && chord.end_m - at <= 1000 + 1e-6);
    at = chord.end_m;
  }
  PROMISED(at == leg.length.metres());
  auto terrain = land.terrain(land.heights());
  if (leg.length.metres() < 2e4) {
    Profile profile = terrain->profile(from, to, leg.length);
    PROMISED(!profile.heights.empty());
    if (profile.heights.size() > 1) {
      PROMISED(std::abs(profile.step.metres() * double(profile.heights.size() - 1) - leg.length.metres()) <=
               1e-6 * leg.length.metres());
      const size_t before = profile.heights.size();
      terrain->lengthen(profile, to, leg.arrival,
                        Length::metres(input.between(0, std::min(1000.0, 1000 * leg.length.metres()))));
      PROMISED(profile.heights.size() >= before);
    }
  }
  if (leg.length.metres() >= 1e-3 && leg.length.metres() < 1e5) {
    const LegLine line(from, leg.departure, leg.length);
    const LegPoint point = line.at(land.place());
    PROMISED(std::isfinite(point.along) && std::isfinite(point.across));
    PROMISED(fuzz::isFinite(line.placeOff(point)));
  }
  FieldAtPoints field(fuzz::field(input), input.flag() ? "" : land.grid());
  const Place anywhere{Angle::degrees(input.between(-90, 90)), Angle::degrees(input.between(-540, 540))};
  const PointField here = field.at(anywhere, Length::metres(input.between(-1000, 850000)));
  PROMISED(std::abs(here.declination.east.degrees()) <= 180);
  PROMISED(!here.inclination || std::abs(here.inclination->degrees()) <= 90);
  PROMISED(!here.convergence || std::abs(here.convergence->east.degrees()) <= 180);
  PROMISED(!here.grid_magnetic || std::abs(here.grid_magnetic->degrees()) <= 180);
  PROMISED(!here.declination_change || std::isfinite(here.declination_change->degrees()));
}

void rasters(Input &input) {
  const int64_t columns = 1 + int64_t(input.upTo(600)), rows = 1 + int64_t(input.upTo(600));
  const size_t modulus = 1 + input.upTo(20);
  TiledGrid grid(
      {input.between(-1e7, 1e7), input.between(-1e7, 1e7), input.scaled(1e-6, 1e5), input.scaled(1e-6, 1e5), columns,
       rows},
      [modulus](const CellWindow &window) {
        std::vector<float> cells;
        for (int64_t i = 0; i < window.columns * window.rows; ++i)
          cells.push_back(size_t(i) % modulus == 3 ? std::numeric_limits<float>::quiet_NaN()
                                                   : float(size_t(i) % modulus));
        return cells;
      },
      1 + input.upTo(2));
  for (int i = 0; i < 3; ++i) {
    const auto position = [&]() -> CellPosition {
      if (input.flag())
        return {input.between(-10, double(columns) + 10), input.between(-10, double(rows) + 10)};
      return grid.cellOf(input.any(), input.any());
    };
    const CellPosition from = position(), to = position();
    const double smooth = grid.interpolated(from), near = grid.nearest(from);
    PROMISED(std::isnan(smooth) || (smooth >= 0 && smooth < 21));
    PROMISED(std::isnan(near) || (near >= 0 && near < 21));
    double at = 0;
    for (const CellRun &run : grid.along(from, to)) {
      PROMISED(run.to > at && run.to <= 1);
      at = run.to;
    }
    PROMISED(at == 1);
  }
}

void marks(Input &input) {
  Land land(input, input.scaled(10, 3000));
  const std::vector<Place> trees = land.line(0, 40);
  const MarkCandidates candidates(trees);
  const Place start = land.place(), end = land.place();
  const GeodesicLeg leg = geodesicBetween(start, end);
  if (leg.length.metres() < 1e-3)
    return;
  ChoiceRule rule{{input.between(0.01, 0.99)},
                  fuzz::spacing(input),
                  Length::metres(input.between(0, 200)),
                  Angle::degrees(input.between(0.1, 45))};
  for (const MarkCandidates::Near &near : candidates.alongLeg(start, leg.departure, leg.length, rule.offset)) {
    PROMISED(near.candidate < trees.size());
    PROMISED(near.along_m >= 0 && near.along_m <= leg.length.metres() &&
             std::abs(near.offset_m) <= rule.offset.metres());
  }
  if (leg.length.metres() > 500 * rule.spacing.least.metres())
    return;
  const CoverTable &table = builtInCover(CoverLegend::Own);
  const auto cover = land.source(land.cover(int(table.classes().size())), table);
  const auto terrain = land.terrain(land.heights());
  try {
    const auto chain = chooseMarks(start, end, candidates, rule, input.flag() ? terrain.get() : nullptr,
                                   input.flag() ? cover.get() : nullptr, fuzz::Patience(2000));
    PROMISED(!chain.empty() && chain.back().candidate == ChosenMark::spaced && chain.back().offset_m == 0);
    double at = 0;
    for (const ChosenMark &mark : chain) {
      PROMISED(mark.along_m > at && mark.along_m <= leg.length.metres() * (1 + 1e-9));
      PROMISED(fuzz::isBearing(mark.from_last.departure.degrees()));
      at = mark.along_m;
    }
  } catch (const Cancelled &) {
  }
}

} // namespace

FUZZ(input) {
  switch (input.upTo(3)) {
  case 0:
    return near(input);
  case 1:
    return lines(input);
  case 2:
    return rasters(input);
  default:
    marks(input);
  }
}
