// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/named_places.h"

#include "shared/geodesic.h"

#include <GeographicLib/NearestNeighbor.hpp>

#include <mutex>
#include <utility>

namespace brushline {

namespace {
struct GeodesicDistance {
  double operator()(const NamedPlace &a, const NamedPlace &b) const {
    return geodesicBetween(a.place, b.place).length.metres();
  }
};
} // namespace

struct NamedPlaces::Index {
  std::vector<NamedPlace> places;
  double reach;
  GeodesicDistance distance;
  GeographicLib::NearestNeighbor<double, NamedPlace, GeodesicDistance> tree;
  std::mutex searching; // the tree counts its searches

  Index(std::vector<NamedPlace> given, double metres)
      : places(std::move(given)), reach(metres), tree(places, distance) {}
};

NamedPlaces::NamedPlaces(std::vector<NamedPlace> places, Length reach)
    : mIndex(std::make_unique<Index>(std::move(places), reach.metres())) {}
NamedPlaces::~NamedPlaces() = default;
NamedPlaces::NamedPlaces(NamedPlaces &&) noexcept = default;
NamedPlaces &NamedPlaces::operator=(NamedPlaces &&) noexcept = default;

const NamedPlace *NamedPlaces::nearest(const Place &place) const {
  if (mIndex->places.empty())
    return nullptr;
  std::vector<int> found;
  const std::lock_guard<std::mutex> lock(mIndex->searching);
  mIndex->tree.Search(mIndex->places, mIndex->distance, NamedPlace{place, {}}, found, 1, mIndex->reach);
  return found.empty() ? nullptr : &mIndex->places[size_t(found.front())];
}

} // namespace brushline
