// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/named_places.h"

#include "shared/geodesic.h"
#include "shared/space.h"
#include "shared/spatial_index.h"

#include <cmath>
#include <utility>

namespace brushline {

namespace {
using PlaceIndex = SpatialIndex<SpacePoint, size_t>;
} // namespace

struct NamedPlaces::Index {
  std::vector<NamedPlace> places;
  double reach;
  PlaceIndex points;
};

NamedPlaces::NamedPlaces(std::vector<NamedPlace> places, Length reach, const Progress &progress)
    : mIndex(std::make_unique<Index>()) {
  mIndex->places = std::move(places);
  mIndex->reach = reach.metres();
  std::vector<PlaceIndex::Entry> entries;
  entries.reserve(mIndex->places.size());
  for (size_t i = 0; i < mIndex->places.size(); ++i) {
    if (i % 65536 == 0)
      progress.check();
    entries.emplace_back(inSpace(mIndex->places[i].place), i);
  }
  mIndex->points = PlaceIndex(std::move(entries), progress);
}
NamedPlaces::~NamedPlaces() = default;
NamedPlaces::NamedPlaces(NamedPlaces &&) noexcept = default;
NamedPlaces &NamedPlaces::operator=(NamedPlaces &&) noexcept = default;

const NamedPlace *NamedPlaces::nearest(const Place &place) const {
  const SpacePoint at = inSpace(place);
  const NamedPlace *best = nullptr;
  double least = HUGE_VAL;
  for (const auto &entry : mIndex->points.meeting(grown(SpaceBox(at, at), mIndex->reach + spaceRounding))) {
    const NamedPlace &candidate = mIndex->places[entry.second];
    const double distance = geodesicBetween(place, candidate.place).length.metres();
    // Of equally near ones the first, in whatever order the index hands them out.
    if (distance <= mIndex->reach && (distance < least || (distance == least && &candidate < best))) {
      least = distance;
      best = &candidate;
    }
  }
  return best;
}

} // namespace brushline
