// SPDX-License-Identifier: GPL-2.0-or-later
#include "sighting/cover_source.h"

#include "sighting/extinction.h"

#include <cmath>
#include <utility>

namespace brushline {

namespace {

// A line cut into pieces with a value each.
template <typename Value> struct Cut {
  double to_m;
  Value value;
};

template <typename Value> void append(std::vector<Cut<Value>> &cuts, double to, Value value) {
  if (!cuts.empty() && cuts.back().value == value)
    cuts.back().to_m = to;
  else if (to > (cuts.empty() ? 0 : cuts.back().to_m))
    cuts.push_back({to, value});
}

struct Patch {
  int cover;
  bool overlapping;
  bool operator==(const Patch &other) const { return cover == other.cover && overlapping == other.overlapping; }
};

double alongChord(const GeodesicChord &chord, double share) {
  return share >= 1 ? chord.end_m : chord.start_m + share * (chord.end_m - chord.start_m);
}

bool isFinite(const GeodesicChord &chord) {
  return std::isfinite(chord.x0) && std::isfinite(chord.y0) && std::isfinite(chord.x1) && std::isfinite(chord.y1);
}

// The values of a raster's cells along a line; what() turns a cell's value (NaN: no data) into what is kept.
template <typename Value, typename What>
std::vector<Cut<Value>> cellsAlong(TiledGrid &grid, const std::vector<GeodesicChord> &chords, What what) {
  std::vector<Cut<Value>> cuts;
  for (const GeodesicChord &chord : chords)
    for (const CellRun &run : grid.along(grid.cellOf(chord.x0, chord.y0), grid.cellOf(chord.x1, chord.y1)))
      append(cuts, alongChord(chord, run.to), what(run.value));
  return cuts;
}

} // namespace

void CoverSource::setPatches(std::shared_ptr<const CoverMap> map, Project project) {
  mMap = std::move(map);
  mMapProject = std::move(project);
}

void CoverSource::setCodes(TiledGrid codes, Project project, std::function<int(long)> classOf) {
  mCodes = Raster{std::move(codes), std::move(project)};
  mClassOf = std::move(classOf);
}

void CoverSource::setSights(TiledGrid sights, Project project) {
  mSights = Raster{std::move(sights), std::move(project)};
}

std::vector<CoverPiece> CoverSource::along(const Place &from, TrueBearing departure, Length length) {
  std::vector<Cut<Patch>> patches;
  if (mMap)
    for (const GeodesicChord &chord : chordsAlong(from, departure, length, mMapProject)) {
      if (!isFinite(chord)) {
        append(patches, chord.end_m, Patch{-1, false});
        continue;
      }
      for (const CoverStretch &stretch : mMap->along({chord.x0, chord.y0}, {chord.x1, chord.y1}))
        append(patches, alongChord(chord, stretch.to), Patch{stretch.cover, stretch.overlapping});
    }
  std::vector<Cut<int>> codes;
  if (mCodes)
    codes = cellsAlong<int>(mCodes->grid, chordsAlong(from, departure, length, mCodes->project), [this](double value) {
      if (std::isnan(value))
        return -1;
      const int found = mClassOf(std::lround(value));
      if (found < 0)
        mUnknownCodes.insert(std::lround(value));
      return found;
    });
  std::vector<Cut<double>> sights; // extinction; negative: none
  if (mSights)
    sights =
        cellsAlong<double>(mSights->grid, chordsAlong(from, departure, length, mSights->project), [this](double value) {
          if (value <= 0)
            mBadSights = true;
          return value > 0 ? extinctionOf(Length::metres(value)) : -1.0;
        });

  // What rounding leaves where borders of several layers fall together; a sliver of water must not bar a way.
  constexpr double sliver = 1e-6;
  std::vector<CoverPiece> pieces;
  size_t p = 0, c = 0, s = 0;
  for (double at = 0; at < length.metres();) {
    double to = length.metres();
    const auto current = [&](const auto &cuts, size_t &i) {
      while (i < cuts.size() && cuts[i].to_m <= at)
        ++i;
      if (i < cuts.size())
        to = std::min(to, cuts[i].to_m);
      return i < cuts.size();
    };
    const bool hasPatch = current(patches, p), hasCode = current(codes, c), hasSight = current(sights, s);
    CoverPiece piece{to, hasPatch ? patches[p].value.cover : -1, std::nullopt, hasPatch && patches[p].value.overlapping};
    if (piece.cover < 0 && hasCode)
      piece.cover = codes[c].value;
    if (hasSight && sights[s].value >= 0)
      piece.extinction = sights[s].value;
    else if (piece.cover >= 0)
      piece.extinction = mExtinctions[size_t(piece.cover)];
    const bool same = !pieces.empty() && pieces.back().cover == piece.cover &&
                      pieces.back().extinction == piece.extinction && pieces.back().overlapping == piece.overlapping;
    if (same || (to - at <= sliver && !pieces.empty()))
      pieces.back().to_m = to;
    else if (to - at > sliver || to >= length.metres())
      pieces.push_back(piece);
    at = to;
  }
  return pieces;
}

} // namespace brushline
