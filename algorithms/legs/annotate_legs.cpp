// SPDX-License-Identifier: GPL-2.0-or-later
#include "legs/annotate_legs.h"

#include "walking/pacing.h"
#include "walking/walking_time.h"

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

GridBearing gridBearing(const GridPoint &from, const GridPoint &to) {
  return GridBearing(Angle::radians(std::atan2(to.easting - from.easting, to.northing - from.northing)));
}

Length heightOr0(double height) { return Length::metres(std::isnan(height) ? 0 : height); }

// The number for the dial, by the north that the compass is set for; none where no compass works.
std::optional<double> dialFor(const Compass &compass, TrueBearing trueBearing, GridBearing grid,
                              const LocalField &field) {
  if (field.zone == CompassZone::Blackout)
    return std::nullopt;
  switch (compass.north) {
  case North::Magnetic:
    return dialReading(toMagnetic(trueBearing, field.declination).angle(), compass);
  case North::True:
    return dialReading(trueBearing.angle(), compass);
  case North::Grid:
    return dialReading(grid.angle(), compass);
  }
  return std::nullopt;
}

} // namespace

LegAnnotator::LegAnnotator(AnnotateSettings settings) : mSettings(std::move(settings)) {
  if (!mSettings.field || mSettings.walkers.empty())
    throw std::invalid_argument("legs need a magnetic field and a walker");
}

const GridNorth &LegAnnotator::gridNorth(const std::string &grid) {
  auto found = mGrids.find(grid);
  if (found == mGrids.end())
    found = mGrids.emplace(grid, GridNorth(grid)).first;
  return found->second;
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
    if (!mSettings.terrain)
      break;
    progress.check();
    stretch.profile = mSettings.terrain->profile(stations[stretch.from].vertex->place,
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
    leg.grid_bearing = gridBearing(start.vertex->grid, end.vertex->grid);
    leg.convergence = start.convergence;
    leg.field = start.field;
    if (start.field.zone != CompassZone::Blackout)
      leg.magnetic_bearing = toMagnetic(departure, start.field.declination);
    leg.dial = dialFor(mSettings.compass, departure, leg.grid_bearing, start.field);
    leg.back_dial = dialFor(mSettings.compass, arrival.reversed(), leg.grid_bearing.reversed(), end.field);
    leg.length = stretch.geodesic.length;

    if (const double gap = back ? stretch.gap_after : stretch.gap_before; gap >= mergedBelow.metres())
      leg.warnings.push_back({LegRemark::GapBefore, gap});
    const CompassZone zone = std::max(start.field.zone, end.field.zone);
    if (zone == CompassZone::Blackout)
      leg.warnings.push_back({LegRemark::CompassBlackout, 0});
    else if (zone == CompassZone::Caution)
      leg.warnings.push_back({LegRemark::CompassCaution, 0});

    std::optional<Profile> profile;
    if (stretch.profile) {
      profile = back ? reversed(*stretch.profile) : *stretch.profile;
      const ProfileSummary summary = summarize(*profile);
      if (summary.without_data > Length()) {
        leg.warnings.push_back({LegRemark::NoTerrain, summary.without_data.metres()});
        profile.reset();
      } else {
        leg.profile = summary;
      }
    }
    for (const Walker &walker : mSettings.walkers) {
      const double steps = profile ? stepsOver(*profile, walker) : stepsOver(leg.length, walker);
      const Duration time = profile ? walkingTime(*profile, walker) : walkingTime(leg.length, walker);
      leg.by_walker.push_back({pacesCounted(steps, walker.kind), time});
    }
    legs.push_back(std::move(leg));
  };
  const auto checkEvery = [&](size_t i) {
    if (i % 256 == 0)
      progress.check();
  };
  if (mSettings.direction != Direction::Back)
    for (size_t i = 0; i < stretches.size(); ++i) {
      checkEvery(i);
      addLeg(stretches[i], int(i + 1), false);
    }
  if (mSettings.direction != Direction::Out)
    for (size_t i = stretches.size(); i-- > 0;) {
      checkEvery(i);
      addLeg(stretches[i], int(stretches.size() - i), true);
    }
  return legs;
}

} // namespace brushline
