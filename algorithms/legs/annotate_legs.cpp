// SPDX-License-Identifier: GPL-2.0-or-later
#include "legs/annotate_legs.h"

#include "magnetics/dial_setting.h"
#include "sighting/footing.h"
#include "walking/pacing.h"
#include "walking/walk_line.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>
#include <utility>

namespace brushline {

namespace {

constexpr Length mergedBelow = Length::metres(0.001);

// What is known of a vertex, whichever way it is passed.
struct Station {
  const RouteVertex *vertex;
  LocalField field;
  Convergence convergence;
  const NamedPlace *name = nullptr;
};

// A stretch between two stations, as the route is drawn.
struct Stretch {
  size_t from, to; // stations
  GeodesicLeg geodesic;
  std::optional<Profile> profile;
  double gap_before = 0; // metres to the end of the stretch before
  double gap_after = 0;  // metres to the start of the stretch after
};

Length heightOr0(double height) { return Length::metres(std::isnan(height) ? 0 : height); }

} // namespace

LegAnnotator::LegAnnotator(AnnotateSettings settings, std::unique_ptr<Terrain> terrain,
                           std::unique_ptr<CoverSource> cover)
    : mSettings(std::move(settings)), mTerrain(std::move(terrain)), mCover(std::move(cover)) {
  if (!mSettings.field || mSettings.walkers.empty() || (mCover && !mSettings.cover_table))
    throw std::invalid_argument("legs need a magnetic field, a walker, and a table for their cover");
}

//! The ground of a leg and beyond, as it is walked and seen over.
struct LegAnnotator::Ground {
  std::optional<Profile> profile;       // of the leg; complete
  std::vector<FootingStretch> footing;  // of the leg
  std::optional<SightLine> sight;       // of the leg and beyond; none without known cover
};

const GridNorth &LegAnnotator::gridNorth(const std::string &grid) {
  auto found = mGrids.find(grid);
  if (found == mGrids.end())
    found = mGrids.emplace(grid, GridNorth(grid)).first;
  return found->second;
}

LegAnnotator::Ground LegAnnotator::groundOf(AnnotatedLeg &leg, TrueBearing arrival, std::optional<Profile> profile) {
  Ground ground;
  if (profile) {
    const ProfileSummary summary = summarize(*profile);
    if (summary.without_data > Length())
      leg.warnings.push_back({LegRemark::NoTerrain, summary.without_data.metres()});
    else
      leg.profile = summary;
  }
  const auto keepProfile = [&] {
    if (leg.profile)
      ground.profile = std::move(profile);
  };
  if (!mCover) {
    keepProfile();
    return ground;
  }

  // Nobody sees farther than the cover lets one. Where none is known, nobody needs to see farther than the most spacing
  // asks for; the usual one at the least, so that a small spacing leaves the sight distance as it is.
  constexpr double usually = SpacingRule::mostLimits.usual / SpacingRule::shareLimits.usual;
  const SpacingRule &spacing = mSettings.spacing;
  const LookBeyond beyond{Length::metres(std::max(spacing.most.metres() / spacing.sight_share, usually)),
                          Length::metres(CoverClass::sightLimits.most), -std::log(mSettings.clear_sight)};
  const std::vector<CoverPiece> pieces = mCover->along(leg.start, leg.true_bearing, leg.length, beyond);
  ground.footing = footingOf(pieces, *mSettings.cover_table, leg.length, mSettings.unknown_speed);
  std::map<int, double> metresOf; // of the leg, by class
  std::vector<SightStretch> stretches;
  double before = 0;
  for (const CoverPiece &piece : pieces) {
    const double here = std::min(piece.to_m, leg.length.metres()) - before;
    if (here > 0) {
      metresOf[piece.extinction ? piece.cover : -2] += here;
      leg.overlapping_cover = leg.overlapping_cover || piece.overlapping;
    }
    stretches.push_back({piece.to_m, piece.extinction.value_or(0)});
    before = piece.to_m;
  }
  double longest = 0, unknown = 0;
  for (const auto &[cover, metres] : metresOf) {
    if (cover == -2)
      unknown += metres;
    if (cover >= 0 && metres > longest) {
      longest = metres;
      leg.cover = cover;
    }
    if (cover >= 0 && !mSettings.cover_table->at(cover).speed_factor)
      leg.warnings.push_back({LegRemark::NotWalked, metres, 0, cover});
  }
  if (unknown > 0)
    leg.warnings.push_back({LegRemark::NoCover, unknown});
  if (unknown < leg.length.metres() * (1 - 1e-9)) {
    ground.sight.emplace(std::move(stretches));
    if (profile) {
      const double seen = ground.sight->sightFrom(leg.length.metres(), {mSettings.clear_sight});
      Profile seenOver = *profile;
      const double looked = ground.sight->length() - leg.length.metres();
      mTerrain->lengthen(seenOver, leg.end, arrival, Length::metres(std::min(looked, seen)));
      ground.sight->setProfile(std::move(seenOver));
    }
  }
  keepProfile();
  return ground;
}

LegForWalker LegAnnotator::walk(const AnnotatedLeg &leg, const Ground &ground, const Walker &walker,
                                RouteDrift &drift) const {
  LegForWalker result;
  const WalkLine line(leg.length, ground.profile ? &*ground.profile : nullptr, ground.footing, walker);
  result.paces = pacesCounted(line.steps(), walker.kind);
  result.time = line.time();

  static const SightLine open({});
  const Looking looking{mSettings.clear_sight, walker.eye_height};
  const MarkChain chain = spaceMarks(ground.sight ? *ground.sight : open, leg.length, looking, mSettings.spacing);
  result.sightings = long(chain.marks.size());
  if (ground.sight) {
    const double shortest = ground.sight->shortestSight(0, leg.length.metres(), looking);
    if (std::isfinite(shortest))
      result.sight_m = shortest;
    result.spacing_m = chain.medianHop();
    if (chain.blind_m > 0)
      result.warnings.push_back({LegRemark::Blind, chain.blind_m,
                                 pacesCounted(line.steps() * chain.blind_m / leg.length.metres(), walker.kind)});
  }
  if (mSettings.keep_marks)
    for (const SpacedMark &mark : chain.marks)
      result.marks.push_back({mark.at_m, pacesCounted(line.stepsTo(mark.at_m), walker.kind),
                              std::isfinite(mark.sight_m) ? std::optional(mark.sight_m) : std::nullopt});

  const Angle graduation = dialBearing(mSettings.compass.step, mSettings.compass.unit);
  const LegErrors errors{walker.bearing_error, roundingError(graduation),
                         leg.field.declination_error.value_or(Angle()), walker.pace_error_percent / 100};
  if (leg.from && mSettings.named_found)
    drift.restart();
  result.drift = drift.walk(leg.true_bearing, leg.length, chain.squaredHops(), errors);
  return result;
}

std::vector<AnnotatedLeg> LegAnnotator::annotate(const Route &route, const Progress &progress) {
  const GridNorth &grid = gridNorth(route.grid);

  // 1. Stations and stretches, as the route is drawn.
  std::vector<Station> stations;
  std::vector<Stretch> stretches;
  for (const auto &part : route.parts) {
    const size_t firstStretch = stretches.size();
    const RouteVertex *last = nullptr;
    for (const RouteVertex &vertex : part) {
      if (!last) {
        last = &vertex;
        continue;
      }
      const GeodesicLeg geodesic = geodesicBetween(last->place, vertex.place);
      if (geodesic.length < mergedBelow)
        continue;
      double gap = 0;
      if (stretches.size() == firstStretch) { // the part's first
        if (!stretches.empty()) {
          gap = geodesicBetween(stations.back().vertex->place, last->place).length.metres();
          stretches.back().gap_after = gap;
        }
        stations.push_back({last, {}, {}});
      }
      stretches.push_back({stations.size() - 1, stations.size(), geodesic, std::nullopt, gap, 0});
      stations.push_back({&vertex, {}, {}});
      last = &vertex;
    }
  }

  // 2. What the terrain, the field and the grid say there.
  for (Stretch &stretch : stretches) {
    if (!mTerrain)
      break;
    progress.check();
    stretch.profile = mTerrain->profile(stations[stretch.from].vertex->place,
                                                 stations[stretch.to].vertex->place, stretch.geodesic.length);
  }
  std::vector<Length> heights(stations.size());
  for (const Stretch &stretch : stretches) {
    if (!stretch.profile)
      break;
    heights[stretch.from] = heightOr0(stretch.profile->heights.front());
    heights[stretch.to] = heightOr0(stretch.profile->heights.back());
  }
  for (size_t i = 0; i < stations.size(); ++i) {
    if (i % 256 == 0)
      progress.check();
    const Place &place = stations[i].vertex->place;
    stations[i].field = mSettings.field->at(place, heights[i]);
    stations[i].convergence = grid.at(place);
    stations[i].name = mSettings.names ? mSettings.names->nearest(place) : nullptr;
  }

  // 3. Legs, in the order walked.
  std::vector<AnnotatedLeg> legs;
  const bool both = mSettings.direction == Direction::Both;
  legs.reserve(stretches.size() * (both ? 2 : 1));
  std::vector<RouteDrift> drifts(mSettings.walkers.size());
  const auto addLeg = [&](const Stretch &stretch, int number, bool back) {
    const Station &start = stations[back ? stretch.to : stretch.from];
    const Station &end = stations[back ? stretch.from : stretch.to];
    const TrueBearing departure = back ? stretch.geodesic.arrival.reversed() : stretch.geodesic.departure;
    const TrueBearing arrival = back ? stretch.geodesic.departure.reversed() : stretch.geodesic.arrival;

    AnnotatedLeg leg;
    leg.number = number;
    leg.back = back;
    leg.from_source = start.vertex->source;
    leg.to_source = end.vertex->source;
    leg.from = start.name;
    leg.to = end.name;
    leg.true_bearing = departure;
    leg.grid_bearing = grid.bearing(start.vertex->grid, end.vertex->grid);
    leg.convergence = start.convergence;
    leg.field = start.field;
    if (start.field.zone != CompassZone::Blackout)
      leg.magnetic_bearing = toMagnetic(departure, start.field.declination);
    leg.dial = dialSetting(mSettings.compass, departure, leg.grid_bearing, start.field);
    leg.back_dial = dialSetting(mSettings.compass, arrival.reversed(), leg.grid_bearing.reversed(), end.field);
    leg.length = stretch.geodesic.length;
    leg.start = start.vertex->place;
    leg.end = end.vertex->place;

    if (const double gap = back ? stretch.gap_after : stretch.gap_before; gap >= mergedBelow.metres())
      leg.warnings.push_back({LegRemark::GapBefore, gap});
    const CompassZone zone = std::max(start.field.zone, end.field.zone);
    if (zone == CompassZone::Blackout)
      leg.warnings.push_back({LegRemark::CompassBlackout});
    else if (zone == CompassZone::Caution)
      leg.warnings.push_back({LegRemark::CompassCaution});

    std::optional<Profile> profile;
    if (stretch.profile)
      profile = back ? reversed(*stretch.profile) : *stretch.profile;
    const Ground ground = groundOf(leg, arrival, std::move(profile));
    for (size_t i = 0; i < mSettings.walkers.size(); ++i)
      leg.by_walker.push_back(walk(leg, ground, mSettings.walkers[i], drifts[i]));
    legs.push_back(std::move(leg));
  };
  const auto checkEvery = [&](size_t i) {
    if (i % 16 == 0)
      progress.check();
  };
  if (mSettings.direction != Direction::Back)
    for (size_t i = 0; i < stretches.size(); ++i) {
      checkEvery(i);
      addLeg(stretches[i], int(i + 1), false);
    }
  drifts.assign(drifts.size(), RouteDrift());
  if (mSettings.direction != Direction::Out)
    for (size_t i = stretches.size(); i-- > 0;) {
      checkEvery(i);
      addLeg(stretches[i], int(stretches.size() - i), true);
    }
  return legs;
}

} // namespace brushline
