// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "magnetics/field_setting.h"
#include "quantities/progress.h"
#include "shared/geodesic.h"
#include "shared/grid_north.h"

#include <vector>

namespace brushline {

//! A leg as it was read in the field.
struct ReadLeg {
  Angle bearing; //!< clockwise from the north of the compass, at the leg's start
  Length length; //!< horizontal
};

//! Legs laid one after the other from a start.
struct PlottedLegs {
  enum class Stop {
    None,
    NoCompass, //!< too near the magnetic pole
    NoGrid,    //!< beyond the reach of the grid
  };
  std::vector<Place> places;         //!< the start and the end of each leg
  std::vector<TrueBearing> bearings; //!< of each leg, at its start
  Stop stop = Stop::None;            //!< why the leg after the last of these could not be laid
};

/**
 * Lays legs as geodesics of the WGS84 ellipsoid, each with its bearing at its start.
 *
 * Magnetic: true = reading + declination at the leg's start, height 0. Grid: the straight line on the map has the
 * bearing that was read; it differs from reading + convergence at the start by what a geodesic bends on the grid
 * (0.001 degrees on 2 km in the outer part of a UTM zone, growing with the length).
 *
 * \param start longitude any turn. \param north of the compass. \param grid for North::Grid.
 * \returns longitudes as geodesics give them, in [-180, 180]. Where no compass works at the start of a leg, whatever
 * its north, the rest is not laid. \throws Cancelled Accuracy: places 15 nm a leg. Grid bearings, for legs up to 10 km
 * in a UTM zone: 1e-6 degrees.
 */
PlottedLegs plotLegs(const Place &start, const std::vector<ReadLeg> &legs, const FieldSetting &field, North north,
                     const GridNorth &grid, const Progress &progress);

} // namespace brushline
