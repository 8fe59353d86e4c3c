// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/length.h"
#include "quantities/place.h"
#include "quantities/progress.h"

#include <memory>
#include <string>
#include <vector>

namespace brushline {

//! A place with the name people know it by.
struct NamedPlace {
  Place place;
  std::string name;
};

/**
 * Finds the named place nearest to another, by geodesic distance (so across the antimeridian and at the poles too).
 * Safe to ask from several threads.
 */
class NamedPlaces {
public:
  //! \param places any number, none included; \param reach the farthest distance (metres, >= 0) that still counts.
  //! Throws Cancelled.
  NamedPlaces(std::vector<NamedPlace> places, Length reach, const Progress &progress = Progress());
  ~NamedPlaces();
  NamedPlaces(NamedPlaces &&) noexcept;
  NamedPlaces &operator=(NamedPlaces &&) noexcept;

  //! The nearest named place within reach, or null. Of several equally near ones, the first.
  const NamedPlace *nearest(const Place &place) const;

private:
  struct Index;
  std::unique_ptr<Index> mIndex;
};

} // namespace brushline
