// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/terrain.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace brushline {

namespace {
constexpr double shortestStep = 0.01; // metres; no model is finer, but beside a pole the cells of one in degrees are
} // namespace

Terrain::Terrain(TiledGrid grid, Project project) : mGrid(std::move(grid)), mProject(std::move(project)) {}

double Terrain::height(const Place &place) { return heights({place}).front(); }

std::vector<double> Terrain::heights(const std::vector<Place> &places) {
  std::vector<double> x, y, heights;
  for (const Place &place : places) {
    x.push_back(place.longitude.signedTurn().degrees());
    y.push_back(place.latitude.degrees());
  }
  mProject(x, y);
  heights.reserve(places.size());
  for (size_t i = 0; i < places.size(); ++i)
    heights.push_back(mGrid.interpolated(mGrid.cellOf(x[i], y[i])));
  return heights;
}

Profile Terrain::profile(const Place &from, const Place &to, Length length) {
  return profileOver(chordsAlong(from, to, length, mProject), length);
}

Profile Terrain::profile(const Place &from, TrueBearing departure, Length length) {
  return profileOver(chordsAlong(from, departure, length, mProject), length);
}

void Terrain::lengthen(Profile &profile, const Place &end, TrueBearing onward, Length by) {
  const double step = profile.step.metres();
  if (!(step > 0) || !(by.metres() > 0))
    return;
  const auto steps = size_t(std::ceil(by.metres() / step));
  const std::vector<GeodesicChord> chords = chordsAlong(end, onward, Length::metres(step * double(steps)), mProject);
  std::vector<double> heights = heightsOver(chords, Length::metres(step * double(steps)), steps);
  profile.heights.insert(profile.heights.end(), heights.begin() + 1, heights.end());
}

Profile Terrain::profileOver(const std::vector<GeodesicChord> &chords, Length length) {
  Profile profile;
  if (length.metres() <= 0) {
    profile.heights.push_back(mGrid.interpolated(mGrid.cellOf(chords[0].x0, chords[0].y0)));
    return profile;
  }
  double finest = 0; // cells a metre, where the line crosses them most densely
  for (const GeodesicChord &chord : chords) {
    const CellPosition start = mGrid.cellOf(chord.x0, chord.y0), end = mGrid.cellOf(chord.x1, chord.y1);
    const double cells = std::hypot(end.column - start.column, end.row - start.row);
    if (std::isfinite(cells) && chord.end_m - chord.start_m > 1e-3)
      finest = std::max(finest, cells / (chord.end_m - chord.start_m));
  }
  finest = std::min(finest, 1 / shortestStep);
  // A line of n cells takes n steps, also when rounding makes it a hair longer.
  const auto steps = size_t(std::max(1.0, std::ceil(length.metres() * finest * (1 - 1e-12))));
  profile.step = Length::metres(length.metres() / double(steps));
  profile.heights = heightsOver(chords, length, steps);
  return profile;
}

std::vector<double> Terrain::heightsOver(const std::vector<GeodesicChord> &chords, Length length, size_t steps) {
  std::vector<double> heights;
  heights.reserve(steps + 1);
  size_t k = 0;
  for (size_t i = 0; i < chords.size(); ++i) {
    const GeodesicChord &chord = chords[i];
    const CellPosition start = mGrid.cellOf(chord.x0, chord.y0), end = mGrid.cellOf(chord.x1, chord.y1);
    const double columns = end.column - start.column, rows = end.row - start.row;
    const double span = chord.end_m - chord.start_m;
    for (; k <= steps; ++k) {
      const double at = k == steps ? length.metres() : length.metres() * double(k) / double(steps);
      if (at >= chord.end_m && i + 1 < chords.size())
        break;
      const double share = span > 0 ? std::min(1.0, (at - chord.start_m) / span) : 0;
      heights.push_back(mGrid.interpolated({start.column + share * columns, start.row + share * rows}));
    }
  }
  return heights;
}

} // namespace brushline
