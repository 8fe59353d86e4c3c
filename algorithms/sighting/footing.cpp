// SPDX-License-Identifier: GPL-2.0-or-later
#include "sighting/footing.h"

#include "walking/profile_summary.h"

#include <algorithm>

namespace brushline {

std::vector<FootingStretch> footingOf(const std::vector<CoverPiece> &pieces, const CoverTable &table, Length length,
                                      double unknownSpeed) {
  std::vector<FootingStretch> footing;
  double before = 0;
  for (const CoverPiece &piece : pieces) {
    if (before >= length.metres())
      break;
    FootingStretch stretch{std::min(piece.to_m, length.metres()), 1, unknownSpeed};
    if (piece.cover >= 0) {
      stretch.pace_factor = table.at(piece.cover).pace_factor;
      stretch.speed_factor = table.at(piece.cover).speed_factor;
    }
    footing.push_back(stretch);
    before = piece.to_m;
  }
  return footing;
}

double stepsAlong(const Place &from, const GeodesicLeg &line, const Walker &walker, Terrain *terrain,
                  CoverSource *cover, const CoverTable *table) {
  if (!(line.length > Length()))
    return 0;
  std::vector<FootingStretch> footing;
  if (cover)
    footing = footingOf(cover->along(from, line.departure, line.length), *table, line.length);
  std::optional<Profile> profile;
  if (terrain)
    profile = terrain->profile(from, line.departure, line.length);
  const bool complete = profile && !(summarize(*profile).without_data > Length());
  return WalkLine(line.length, complete ? &*profile : nullptr, footing, walker).steps();
}

} // namespace brushline
