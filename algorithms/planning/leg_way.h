// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "shared/geodesic.h"
#include "shared/terrain.h"
#include "shared/walker.h"
#include "sighting/cover_source.h"
#include "sighting/cover_table.h"
#include "walking/walk_line.h"

#include <optional>

namespace brushline {

/**
 * The ground of a leg and on beyond its end, as it is walked: with the terrain and the cover where they are given, the
 * same way annotated legs are counted.
 */
class LegWay {
public:
  //! A walker's count and time from the leg's start, to any place on it or beyond its end.
  class Walked {
  public:
    double stepsTo(double at_m) const;
    std::optional<Duration> timeTo(double at_m) const;

  private:
    friend class LegWay;
    Walked(WalkLine on, std::optional<WalkLine> beyond, double length)
        : mOn(std::move(on)), mBeyond(std::move(beyond)), mLength(length) {}
    WalkLine mOn;
    std::optional<WalkLine> mBeyond;
    double mLength;
  };

  //! \param beyond how far past the end; may be 0. \param terrain, cover may be null; table may not where cover is given.
  LegWay(const Place &from, const Place &to, const GeodesicLeg &leg, Length beyond, Terrain *terrain, CoverSource *cover,
         const CoverTable *table);

  Walked walkedBy(const Walker &walker) const;

  //! Of the leg and beyond its end; none without terrain. May have gaps.
  const std::optional<Profile> &profile() const { return mWhole; }

private:
  Length mLength, mBeyond;
  std::optional<Profile> mWhole;
  std::optional<Profile> mOnProfile, mBeyondProfile; // complete
  std::vector<FootingStretch> mOnFooting, mBeyondFooting;
};

} // namespace brushline
