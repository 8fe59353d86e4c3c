// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/terrain_parameters.h"

namespace brushline::terrain_parameters {

namespace {
struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::TerrainParameters)
};
const QString demKey = QStringLiteral("DEM"), bandKey = QStringLiteral("DEM_BAND");
} // namespace

Definitions definitions() {
  return {
      helped(new QgsProcessingParameterRasterLayer(demKey, Text::tr("Terrain model (heights in metres)"), QVariant(),
                                                   true),
             Text::tr("Heights of the ground in metres, in any projection; below -1000 m or above 9000 m they count "
                      "as missing. Gives slope length, climb and drop, the slope's effect on paces and minutes, and "
                      "the height for the magnetic model.")),
      advanced(helped(new QgsProcessingParameterBand(bandKey, Text::tr("Band of the terrain model"), 1, demKey, true),
                      Text::tr("The band that holds the heights.")))};
}

std::optional<RasterInput> read(const ParameterReader &reader) {
  // What fills holes in a model whose file does not say so (-9999, -32768, 3e38) is no height of any ground.
  constexpr double lowest = -1000, highest = 9000; // metres
  std::optional<RasterInput> raster = RasterInput::read(reader, demKey, bandKey);
  if (raster)
    raster->setLimits(lowest, highest);
  return raster;
}

std::unique_ptr<Terrain> terrainOver(const std::optional<RasterInput> &raster) {
  return raster ? std::make_unique<Terrain>(raster->grid(), raster->project()) : nullptr;
}

} // namespace brushline::terrain_parameters
