// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/named_places.h"

#include "shared/geodesic.h"
#include "shared/space.h"

#include <boost/geometry/index/rtree.hpp>
#include <boost/geometry/strategies/strategies.hpp>

#include <cmath>
#include <iterator>
#include <utility>

namespace brushline {

namespace {
namespace bg = boost::geometry;
using Entry = std::pair<SpacePoint, size_t>;
} // namespace

struct NamedPlaces::Index {
  std::vector<NamedPlace> places;
  double reach;
  bg::index::rtree<Entry, bg::index::quadratic<16>> tree;
};

NamedPlaces::NamedPlaces(std::vector<NamedPlace> places, Length reach) : mIndex(std::make_unique<Index>()) {
  mIndex->places = std::move(places);
  mIndex->reach = reach.metres();
  std::vector<Entry> entries;
  entries.reserve(mIndex->places.size());
  for (size_t i = 0; i < mIndex->places.size(); ++i) {
    entries.emplace_back(inSpace(mIndex->places[i].place), i);
  }
  mIndex->tree = decltype(mIndex->tree)(entries.begin(), entries.end());
}
NamedPlaces::~NamedPlaces() = default;
NamedPlaces::NamedPlaces(NamedPlaces &&) noexcept = default;
NamedPlaces &NamedPlaces::operator=(NamedPlaces &&) noexcept = default;

const NamedPlace *NamedPlaces::nearest(const Place &place) const {
  const SpacePoint at = inSpace(place);
  std::vector<Entry> near;
  mIndex->tree.query(bg::index::intersects(grown(SpaceBox(at, at), mIndex->reach + spaceRounding)),
                     std::back_inserter(near));
  const NamedPlace *best = nullptr;
  double least = HUGE_VAL;
  for (const Entry &entry : near) {
    const NamedPlace &candidate = mIndex->places[entry.second];
    const double distance = geodesicBetween(place, candidate.place).length.metres();
    // Of equally near ones the first, in whatever order the tree hands them out.
    if (distance <= mIndex->reach && (distance < least || (distance == least && &candidate < best))) {
      least = distance;
      best = &candidate;
    }
  }
  return best;
}

} // namespace brushline
