// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/terrain.h"

#include "shared/geodesic.h"

#include <algorithm>
#include <cmath>
#include <optional>
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
  std::optional<TrueBearing> departure; // not needed for a single chord
  std::optional<size_t> leap;
  // The cells under places at equal distances along the geodesic; notes the step that crosses the 180th meridian.
  const auto cellsBetween = [&](double start, double end, size_t steps) {
    mX.resize(steps + 1);
    mY.resize(steps + 1);
    leap.reset();
    for (size_t i = 0; i <= steps; ++i) {
      const double metres = i == steps ? end : start + (end - start) * double(i) / double(steps);
      Place place = metres <= 0 ? from : to;
      if (metres > 0 && metres < length.metres()) {
        if (!departure)
          departure = geodesicBetween(from, to).departure;
        place = geodesicDestination(from, *departure, Length::metres(metres));
      }
      mX[i] = place.longitude.degrees();
      mY[i] = place.latitude.degrees();
      if (i > 0 && std::abs(mX[i] - mX[i - 1]) > 180)
        leap = i - 1;
    }
    mProject(mX, mY);
    std::vector<CellPosition> cells(steps + 1);
    for (size_t i = 0; i <= steps; ++i)
      cells[i] = mGrid.cellOf(mX[i], mY[i]);
    return cells;
  };
  const auto apart = [](const CellPosition &a, const CellPosition &b) {
    const double cells = std::hypot(b.column - a.column, b.row - a.row);
    return std::isfinite(cells) ? cells : 0;
  };

  const std::vector<CellPosition> corners = cellsBetween(0, length.metres(), chords);
  Profile profile;
  if (length.metres() <= 0) {
    profile.heights.push_back(mGrid.height(corners[0]));
    return profile;
  }

  // The whole line takes equal steps, as many as its longest chord needs.
  double longest = 1; // in cells
  const std::optional<size_t> leapChord = leap;
  for (size_t i = 0; i < chords; ++i)
    if (i != leapChord)
      longest = std::max(longest, apart(corners[i], corners[i + 1]));
  // A model in degrees is left at one edge there and entered at the other: that chord's places are found one by one.
  const double chord = length.metres() / double(chords);
  const double leapStart = chord * double(leapChord.value_or(0));
  if (leapChord) {
    constexpr size_t parts = 8;
    const std::vector<CellPosition> ends = cellsBetween(leapStart, leapStart + chord, parts);
    for (size_t i = 0; i < parts; ++i)
      if (i != leap)
        longest = std::max(longest, double(parts) * apart(ends[i], ends[i + 1]));
  }
  const auto stepsPerChord = size_t(std::ceil(longest));
  std::vector<CellPosition> leaping;
  if (leapChord)
    leaping = cellsBetween(leapStart, leapStart + chord, stepsPerChord);

  profile.step = Length::metres(length.metres() / double(chords * stepsPerChord));
  profile.heights.reserve(chords * stepsPerChord + 1);
  for (size_t i = 0; i < chords; ++i)
    for (size_t k = 0; k < stepsPerChord; ++k) {
      const double share = double(k) / double(stepsPerChord);
      const CellPosition straight{corners[i].column + share * (corners[i + 1].column - corners[i].column),
                                  corners[i].row + share * (corners[i + 1].row - corners[i].row)};
      profile.heights.push_back(mGrid.height(i == leapChord ? leaping[k] : straight));
    }
  profile.heights.push_back(mGrid.height(corners[chords]));
  return profile;
}

} // namespace brushline
