// SPDX-License-Identifier: GPL-2.0-or-later
#include "records/plot_legs.h"

#include <cmath>

namespace brushline {

namespace {

// The geodesic whose ends lie in a bearing from each other on the grid: its picture on the grid is, halfway, as good as
// parallel to the straight line between them. A round leaves under a thousandth of the bend, and on a grid that does
// not keep angles some hundredths of what it turns them by (up to 2 degrees).
TrueBearing alongGrid(const Place &start, GridBearing bearing, Length length, const GridNorth &grid) {
  TrueBearing departure = toTrue(bearing, grid.at(start));
  for (int round = 0; round < 4; ++round) {
    const Place middle = geodesicDestination(start, departure, Length::metres(length.metres() / 2));
    const TrueBearing there = geodesicBetween(start, middle).arrival;
    const GridBearing chord = grid.bearing(middle, there);
    departure = TrueBearing(departure.angle() + (bearing.angle() - chord.angle()).signedTurn());
  }
  return departure;
}

} // namespace

PlottedLegs plotLegs(const Place &start, const std::vector<ReadLeg> &legs, const FieldSetting &field, North north,
                     const GridNorth &grid, const Progress &progress) {
  PlottedLegs result;
  result.places.push_back(start);
  for (const ReadLeg &leg : legs) {
    progress.check();
    const Place &here = result.places.back();
    const LocalField local = field.at(here, Length());
    if (local.zone == CompassZone::Blackout) {
      result.stop = PlottedLegs::Stop::NoCompass;
      return result;
    }
    TrueBearing bearing(leg.bearing);
    if (north == North::Magnetic)
      bearing = toTrue(MagneticBearing(leg.bearing), local.declination);
    else if (north == North::Grid)
      bearing = alongGrid(here, GridBearing(leg.bearing), leg.length, grid);
    if (!std::isfinite(bearing.degrees())) {
      result.stop = PlottedLegs::Stop::NoGrid;
      return result;
    }
    result.bearings.push_back(bearing);
    result.places.push_back(geodesicDestination(here, bearing, leg.length));
  }
  return result;
}

} // namespace brushline
