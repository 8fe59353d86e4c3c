// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/named_places.h"

#include "shared/geodesic.h"

#include <GeographicLib/Geocentric.hpp>

#include <boost/geometry/geometries/box.hpp>
#include <boost/geometry/geometries/point.hpp>
#include <boost/geometry/index/rtree.hpp>
#include <boost/geometry/strategies/strategies.hpp>

#include <array>
#include <cmath>
#include <iterator>
#include <utility>

namespace brushline {

namespace {
namespace bg = boost::geometry;
// Straight through space: no edge at the 180th meridian and none at the poles. A chord is never longer than the
// geodesic, so a box of the reach's size holds all that is within it.
using SpacePoint = bg::model::point<double, 3, bg::cs::cartesian>;
using SpaceBox = bg::model::box<SpacePoint>;
using Entry = std::pair<SpacePoint, size_t>;

std::array<double, 3> inSpace(const Place &place) {
  std::array<double, 3> at;
  GeographicLib::Geocentric::WGS84().Forward(place.latitude.degrees(), place.longitude.degrees(), 0, at[0], at[1], at[2]);
  return at;
}
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
    const auto at = inSpace(mIndex->places[i].place);
    entries.emplace_back(SpacePoint(at[0], at[1], at[2]), i);
  }
  mIndex->tree = decltype(mIndex->tree)(entries.begin(), entries.end());
}
NamedPlaces::~NamedPlaces() = default;
NamedPlaces::NamedPlaces(NamedPlaces &&) noexcept = default;
NamedPlaces &NamedPlaces::operator=(NamedPlaces &&) noexcept = default;

const NamedPlace *NamedPlaces::nearest(const Place &place) const {
  const auto at = inSpace(place);
  const double half = mIndex->reach + 1e-6; // for the coordinates' rounding
  std::vector<Entry> near;
  mIndex->tree.query(bg::index::intersects(SpaceBox({at[0] - half, at[1] - half, at[2] - half},
                                                    {at[0] + half, at[1] + half, at[2] + half})),
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
