// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "shared/parameter_reader_host.h"
#include "shared/terrain.h"

#include <memory>

class QgsRasterDataProvider;

namespace brushline {

namespace terrain_parameters {

Definitions definitions();

//! The terrain model of a run, or null when none is given. Call on the main thread; use from one thread at a time.
std::unique_ptr<Terrain> read(const ParameterReader &reader);

} // namespace terrain_parameters

//! A terrain model over a band of a raster provider, read by tiles. The provider is the terrain's own.
Terrain terrainOver(std::shared_ptr<QgsRasterDataProvider> provider, int band, const QgsCoordinateReferenceSystem &crs,
                    const QgsCoordinateTransformContext &transforms);

} // namespace brushline
