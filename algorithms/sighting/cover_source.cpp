// SPDX-License-Identifier: GPL-2.0-or-later
#include "sighting/cover_source.h"

#include "sighting/extinction.h"

#include <algorithm>
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

bool isFinite(const GeodesicChord &chord) {
  return std::isfinite(chord.x0) && std::isfinite(chord.y0) && std::isfinite(chord.x1) && std::isfinite(chord.y1);
}

// Calls work(chord) for what lies between two places of the line, cut to these.
template <typename Work>
void eachBetween(const std::vector<GeodesicChord> &chords, double from_m, double to_m, Work work) {
  for (GeodesicChord chord : chords) {
    if (chord.end_m <= from_m || chord.start_m >= to_m)
      continue;
    const double span = chord.end_m - chord.start_m, dx = chord.x1 - chord.x0, dy = chord.y1 - chord.y0;
    if (chord.end_m > to_m) {
      const double share = (to_m - chord.start_m) / span;
      chord.x1 = chord.x0 + share * dx;
      chord.y1 = chord.y0 + share * dy;
      chord.end_m = to_m;
    }
    if (chord.start_m < from_m) {
      const double share = (from_m - chord.start_m) / span;
      chord.x0 += share * dx;
      chord.y0 += share * dy;
      chord.start_m = from_m;
    }
    work(chord);
  }
}

double alongChord(const GeodesicChord &chord, double share) {
  return share >= 1 ? chord.end_m : chord.start_m + share * (chord.end_m - chord.start_m);
}

// The values of a raster's cells along a line; what() turns a cell's value (NaN: no data) into what is kept.
template <typename Value, typename What>
std::vector<Cut<Value>> cellsBetween(TiledGrid &grid, const std::vector<GeodesicChord> &chords, double from_m,
                                     double to_m, What what) {
  std::vector<Cut<Value>> cuts;
  eachBetween(chords, from_m, to_m, [&](const GeodesicChord &chord) {
    for (const CellRun &run : grid.along(grid.cellOf(chord.x0, chord.y0), grid.cellOf(chord.x1, chord.y1)))
      append(cuts, alongChord(chord, run.to), what(run.value));
  });
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

struct CoverSource::Chords {
  std::vector<GeodesicChord> patches, codes, sights;
};

std::vector<CoverPiece> CoverSource::along(const Place &from, TrueBearing departure, Length length,
                                           const LookBeyond &beyond) {
  constexpr double firstLook = 160; // metres beyond the end; most covers hide all that lies farther
  Chords chords;
  const auto reachTo = [&](double metres) {
    const Length reach = Length::metres(metres);
    if (mMap)
      chords.patches = chordsAlong(from, departure, reach, mMapProject);
    if (mCodes)
      chords.codes = chordsAlong(from, departure, reach, mCodes->project);
    if (mSights)
      chords.sights = chordsAlong(from, departure, reach, mSights->project);
  };

  std::vector<CoverPiece> pieces;
  const double end = length.metres(), unknown = (length + beyond.unknown).metres();
  double known = 0, depth = 0; // up to where; of what lies beyond the end
  reachTo(unknown);
  for (double look = firstLook; known < end || depth < beyond.depth; look *= 2) {
    double to = std::min(unknown, end + look);
    if (known >= unknown) { // few lines come here: most cover hides all by then
      to = end + std::min(look, beyond.farthest.metres());
      if (to <= known || !pieces.back().extinction)
        break;
      reachTo(to);
    }
    addPieces(chords, known, to, pieces);
    known = to;
    depth = 0;
    for (auto piece = pieces.rbegin(); piece != pieces.rend() && piece->to_m > end; ++piece) {
      const double start = piece + 1 == pieces.rend() ? 0 : (piece + 1)->to_m;
      depth += piece->extinction.value_or(0) * (piece->to_m - std::max(start, end));
    }
  }
  return pieces;
}

void CoverSource::addPieces(const Chords &chords, double from_m, double to_m, std::vector<CoverPiece> &pieces) {
  std::vector<Cut<Patch>> patches;
  if (mMap)
    eachBetween(chords.patches, from_m, to_m, [&](const GeodesicChord &chord) {
      if (!isFinite(chord)) {
        append(patches, chord.end_m, Patch{-1, false});
        return;
      }
      for (const CoverStretch &stretch : mMap->along({chord.x0, chord.y0}, {chord.x1, chord.y1}))
        append(patches, alongChord(chord, stretch.to), Patch{stretch.cover, stretch.overlapping});
    });
  std::vector<Cut<int>> codes;
  if (mCodes)
    codes = cellsBetween<int>(mCodes->grid, chords.codes, from_m, to_m, [this](double value) {
      if (std::isnan(value))
        return -1;
      const int found = mClassOf(std::lround(value));
      if (found < 0)
        mUnknownCodes.insert(std::lround(value));
      return found;
    });
  std::vector<Cut<double>> sights; // extinction; negative: none
  if (mSights)
    sights = cellsBetween<double>(mSights->grid, chords.sights, from_m, to_m, [this](double value) {
      if (value <= 0)
        mBadSights = true;
      return value > 0 ? extinctionOf(Length::metres(value)) : -1.0;
    });

  // What rounding leaves where borders of several layers fall together; a sliver of water must not bar a way.
  constexpr double sliver = 1e-6;
  size_t p = 0, c = 0, s = 0;
  for (double at = from_m; at < to_m;) {
    double to = to_m;
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
    else if (to - at > sliver || to >= to_m)
      pieces.push_back(piece);
    at = to;
  }
}

} // namespace brushline
