// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/terrain.h"

#include "shared/geodesic.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace brushline {

Terrain::Terrain(HeightGrid grid, Project project) : mGrid(std::move(grid)), mProject(std::move(project)) {}

double Terrain::height(const Place &place) {
  mX.assign(1, place.longitude.degrees());
  mY.assign(1, place.latitude.degrees());
  mProject(mX, mY);
  return mGrid.height(mGrid.cellOf(mX[0], mY[0]));
}

Profile Terrain::profile(const Place &from, const Place &to, Length length) {
  constexpr double longestChord = 1000; // metres
  const size_t chords = size_t(std::max(1.0, std::ceil(length.metres() / longestChord)));
  mX.resize(chords + 1);
  mY.resize(chords + 1);
  const TrueBearing departure = chords > 1 ? geodesicBetween(from, to).departure : TrueBearing();
  for (size_t i = 0; i <= chords; ++i) {
    const Place place = i == 0        ? from
                        : i == chords ? to
                                      : geodesicDestination(from, departure,
                                                            Length::metres(length.metres() * double(i) / double(chords)));
    mX[i] = place.longitude.degrees();
    mY[i] = place.latitude.degrees();
  }
  mProject(mX, mY);

  // The whole line takes equal steps, as many as its longest chord needs.
  size_t stepsPerChord = 1;
  std::vector<CellPosition> corners(chords + 1);
  for (size_t i = 0; i <= chords; ++i)
    corners[i] = mGrid.cellOf(mX[i], mY[i]);
  for (size_t i = 0; i < chords; ++i) {
    const double cells = std::hypot(corners[i + 1].column - corners[i].column, corners[i + 1].row - corners[i].row);
    if (std::isfinite(cells))
      stepsPerChord = std::max(stepsPerChord, size_t(std::ceil(cells)));
  }

  Profile profile;
  if (length.metres() <= 0) {
    profile.heights.push_back(mGrid.height(corners[0]));
    return profile;
  }
  profile.step = Length::metres(length.metres() / double(chords * stepsPerChord));
  profile.heights.reserve(chords * stepsPerChord + 1);
  for (size_t i = 0; i < chords; ++i)
    for (size_t k = 0; k < stepsPerChord; ++k) {
      const double share = double(k) / double(stepsPerChord);
      profile.heights.push_back(
          mGrid.height({corners[i].column + share * (corners[i + 1].column - corners[i].column),
                        corners[i].row + share * (corners[i + 1].row - corners[i].row)}));
    }
  profile.heights.push_back(mGrid.height(corners[chords]));
  return profile;
}

} // namespace brushline
