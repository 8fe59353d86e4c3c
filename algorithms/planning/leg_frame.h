// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/bearing.h"
#include "quantities/length.h"
#include "quantities/place.h"
#include "shared/local_plane.h"

#include <GeographicLib/GeodesicLine.hpp>

#include <vector>

namespace brushline {

//! A place as one who walks a leg sees it, metres.
struct LegPoint {
  double along;  //!< on the leg's geodesic from its start to the foot of the perpendicular; negative: behind the start
  double across; //!< from there, square to the leg; to the right positive
};

/**
 * A leg's own coordinates: its geodesic is straight, and squares to it are geodesics. Any length of leg, anywhere on
 * the Earth.
 *
 * Accuracy: toPlace() as GeographicLib's geodesics (15 nm). toLeg() 0.02 mm for places up to 1 km off the leg, 1 mm up
 * to 5 km, 10 mm up to 10 km. Two places with the same across, which makes a parallel, are nearer to each other than
 * their feet by the share across^2 / 2 R^2 (1.2e-8 at 1 km).
 */
class LegFrame {
public:
  //! \param from, to apart by 1 mm or more and not at opposite ends of the Earth.
  LegFrame(const Place &from, const Place &to);

  double length() const { return mLength; } //!< metres

  //! \param station where the place is looked for first, and then where it was: start with 0, hand on from place to
  //! place.
  LegPoint toLeg(const Place &place, size_t &station) const;
  Place toPlace(const LegPoint &point) const;

private:
  // Planes along the leg, none of them far from what it is asked for.
  struct Station {
    double along;
    LocalPlane plane;
    double sine, cosine; // of the leg's bearing there
  };
  size_t stationNear(double along) const;

  GeographicLib::GeodesicLine mLine;
  double mLength;
  double mSpacing;
  std::vector<Station> mStations;
};

} // namespace brushline
