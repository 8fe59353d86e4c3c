// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "shared/terrain.h"
#include "sighting/cover_source.h"

#include <memory>

namespace brushline {

//! What one thread of several asks of the land; either is null where it is not given.
struct Land {
  std::unique_ptr<Terrain> terrain;
  std::unique_ptr<CoverSource> cover;
};

} // namespace brushline
