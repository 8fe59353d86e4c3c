// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "magnetics/field_setting.h"
#include "shared/grid_north.h"

#include <map>
#include <optional>
#include <string>

namespace brushline {

//! The magnetic field at a point, and where the grid's north lies there. None: there is no such value.
struct PointField {
  Declination declination;
  std::optional<Angle> declination_error;  //!< 1 sigma
  std::optional<Angle> declination_change; //!< in a year, east positive
  std::optional<Angle> inclination;        //!< positive downwards
  std::optional<double> horizontal_nt;
  std::optional<double> total_nt;
  std::optional<Convergence> convergence; //!< none where the grid does not reach
  std::optional<Angle> grid_magnetic;     //!< of magnetic north from grid north, east positive, [-180, 180] degrees
  CompassZone zone = CompassZone::Reliable;
};

//! The field at one point after another. One thread at a time.
class FieldAtPoints {
public:
  //! Which of the model's numbers are good. A model that stands on another day than the one asked for tells zones only.
  enum class ModelDay { Asked, Nearest };

  /**
   * \param grid as GridNorth reads it; empty: each point's own UTM zone, or UPS cap (standardGrid()).
   * \throws std::invalid_argument when that is not a projected coordinate system.
   */
  FieldAtPoints(const FieldSetting &field, const std::string &grid, ModelDay day = ModelDay::Asked);

  //! The heights the models are made for. Source: specification of the World Magnetic Model (MIL-PRF-89500B), from
  //! memory.
  static bool reaches(Length height);

  /**
   * \param place longitudes of any turn. \param height above the ellipsoid or the sea, within reaches().
   * Degenerate: at a pole, where every direction is north or south, declination and convergence are those of the given
   * longitude; at a magnetic pole, where the field is plumb, there is no change of declination.
   * Accuracy: that of FieldModel and GridNorth.
   */
  PointField at(const Place &place, Length height);

private:
  const GridNorth &gridAt(const Place &place);

  const FieldSetting &mField;
  std::string mGrid;
  ModelDay mDay;
  std::map<std::string, GridNorth> mGrids;
};

} // namespace brushline
