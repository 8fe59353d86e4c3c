// SPDX-License-Identifier: GPL-2.0-or-later
#include "sighting/footing.h"

#include <algorithm>

namespace brushline {

std::vector<FootingStretch> footingOf(const std::vector<CoverPiece> &pieces, const CoverTable &table, Length length) {
  std::vector<FootingStretch> footing;
  double before = 0;
  for (const CoverPiece &piece : pieces) {
    if (before >= length.metres())
      break;
    FootingStretch stretch{std::min(piece.to_m, length.metres())};
    if (piece.cover >= 0) {
      stretch.pace_factor = table.at(piece.cover).pace_factor;
      stretch.speed_factor = table.at(piece.cover).speed_factor;
    }
    footing.push_back(stretch);
    before = piece.to_m;
  }
  return footing;
}

} // namespace brushline
