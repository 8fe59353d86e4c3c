// SPDX-License-Identifier: GPL-2.0-or-later
#include "magnetics/field_at_points.h"

#include <cmath>

namespace brushline {

namespace {
constexpr Length lowest = Length::metres(-1000), highest = Length::metres(850000);

std::optional<Angle> ifFinite(Angle angle) {
  return std::isfinite(angle.degrees()) ? std::optional<Angle>(angle) : std::nullopt;
}
} // namespace

FieldAtPoints::FieldAtPoints(const FieldSetting &field, const std::string &grid, ModelDay day)
    : mField(field), mGrid(grid), mDay(day) {
  if (!grid.empty())
    mGrids.emplace(grid, GridNorth(grid));
}

bool FieldAtPoints::reaches(Length height) {
  return height.metres() >= lowest.metres() && height.metres() <= highest.metres();
}

const GridNorth &FieldAtPoints::gridAt(const Place &place) {
  if (!mGrid.empty())
    return mGrids.begin()->second;
  const std::string standard = standardGrid(place);
  const auto found = mGrids.find(standard);
  return found != mGrids.end() ? found->second : mGrids.emplace(standard, GridNorth(standard)).first->second;
}

PointField FieldAtPoints::at(const Place &place, Length height) {
  const FieldVector field = mField.model().field(place, height);
  const LocalField local = mField.of(field);
  PointField result;
  result.zone = local.zone;
  result.declination = local.declination;
  if (local.declination_error)
    result.declination_error = ifFinite(*local.declination_error);
  if (mDay == ModelDay::Asked) {
    result.declination_change = ifFinite(declinationChange(field, mField.model().changePerYear(place, height)));
    result.inclination = field.inclination();
    result.horizontal_nt = field.horizontal();
    result.total_nt = field.total();
  }
  const Convergence convergence = gridAt(place).at(place);
  if (std::isfinite(convergence.east.degrees())) {
    result.convergence = convergence;
    result.grid_magnetic = (local.declination.east - convergence.east).signedTurn();
  }
  return result;
}

} // namespace brushline
