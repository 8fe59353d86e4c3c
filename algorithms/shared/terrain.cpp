// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/terrain.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace brushline {

Terrain::Terrain(TiledGrid grid, Project project) : mGrid(std::move(grid)), mProject(std::move(project)) {}

double Terrain::height(const Place &place) {
  std::vector<double> x{place.longitude.signedTurn().degrees()}, y{place.latitude.degrees()};
  mProject(x, y);
  return mGrid.interpolated(mGrid.cellOf(x[0], y[0]));
}

Profile Terrain::profile(const Place &from, const Place &to, Length length) {
  return profileOver(chordsAlong(from, to, length, mProject), length);
}

Profile Terrain::profile(const Place &from, TrueBearing departure, Length length) {
  return profileOver(chordsAlong(from, departure, length, mProject), length);
}

Profile Terrain::profileOver(const std::vector<GeodesicChord> &chords, Length length) {
  Profile profile;
  if (length.metres() <= 0) {
    profile.heights.push_back(mGrid.interpolated(mGrid.cellOf(chords[0].x0, chords[0].y0)));
    return profile;
  }
  struct Ends {
    CellPosition start, end;
  };
  std::vector<Ends> ends;
  double finest = 0; // cells a metre, where the line crosses them most densely
  for (const GeodesicChord &chord : chords) {
    ends.push_back({mGrid.cellOf(chord.x0, chord.y0), mGrid.cellOf(chord.x1, chord.y1)});
    const double cells =
        std::hypot(ends.back().end.column - ends.back().start.column, ends.back().end.row - ends.back().start.row);
    if (std::isfinite(cells) && chord.end_m - chord.start_m > 1e-3)
      finest = std::max(finest, cells / (chord.end_m - chord.start_m));
  }
  // A line of n cells takes n steps, also when rounding makes it a hair longer.
  const auto steps = size_t(std::max(1.0, std::ceil(length.metres() * finest * (1 - 1e-12))));
  profile.step = Length::metres(length.metres() / double(steps));
  profile.heights.reserve(steps + 1);
  size_t i = 0;
  for (size_t k = 0; k <= steps; ++k) {
    const double at = k == steps ? length.metres() : length.metres() * double(k) / double(steps);
    while (i + 1 < chords.size() && at >= chords[i].end_m)
      ++i;
    const double span = chords[i].end_m - chords[i].start_m;
    const double share = span > 0 ? std::min(1.0, (at - chords[i].start_m) / span) : 0;
    const CellPosition &start = ends[i].start, &end = ends[i].end;
    profile.heights.push_back(mGrid.interpolated(
        {start.column + share * (end.column - start.column), start.row + share * (end.row - start.row)}));
  }
  return profile;
}

} // namespace brushline
