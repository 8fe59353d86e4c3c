// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "shared/parameter_reader_host.h"
#include "shared/raster_host.h"
#include "shared/terrain.h"

#include <memory>

namespace brushline::terrain_parameters {

Definitions definitions();

//! The terrain model's raster, if one is given. Main thread.
std::optional<RasterInput> read(const ParameterReader &reader);

//! A terrain model over a raster, for one thread of several; null without a raster.
std::unique_ptr<Terrain> terrainOver(const std::optional<RasterInput> &raster);

} // namespace brushline::terrain_parameters
