// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "sighting/cover_source.h"
#include "sighting/cover_table.h"
#include "walking/walk_line.h"

#include <vector>

namespace brushline {

//! What the cover along a line does to steps and speed, up to a length of it; nothing where the cover is not known.
std::vector<FootingStretch> footingOf(const std::vector<CoverPiece> &pieces, const CoverTable &table, Length length);

} // namespace brushline
