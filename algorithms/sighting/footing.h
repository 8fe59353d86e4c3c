// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "shared/geodesic.h"
#include "sighting/cover_source.h"
#include "sighting/cover_table.h"
#include "walking/walk_line.h"

#include <vector>

namespace brushline {

//! What the cover along a line does to steps and speed, up to a length of it; where the cover is not known nothing, but
//! for a speed factor.
std::vector<FootingStretch> footingOf(const std::vector<CoverPiece> &pieces, const CoverTable &table, Length length,
                                      double unknownSpeed = 1);

/**
 * A walker's single steps along a straight line, with all that is known of the land. Where a part of the terrain is not
 * known, those of level ground.
 * \param terrain, cover may be null. \param table of the cover; null only without cover.
 */
double stepsAlong(const Place &from, const GeodesicLeg &line, const Walker &walker, Terrain *terrain,
                  CoverSource *cover, const CoverTable *table);

} // namespace brushline
