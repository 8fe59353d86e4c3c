// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/terrain_parameters.h"

#include <qgscoordinatetransform.h>
#include <qgsexception.h>
#include <qgsrasterdataprovider.h>
#include <qgsrasterlayer.h>

#include <limits>

namespace brushline {

namespace {
struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::TerrainParameters)
};
const QString demKey = QStringLiteral("DEM"), bandKey = QStringLiteral("DEM_BAND");
constexpr double nothing = std::numeric_limits<double>::quiet_NaN();

// Transforms in place; places that cannot be transformed become NaN.
void transformOrNan(const QgsCoordinateTransform &transform, std::vector<double> &x, std::vector<double> &y) {
  if (transform.isShortCircuited())
    return;
  std::vector<double> z(x.size(), 0);
  const std::vector<double> oldX = x, oldY = y;
  try {
    transform.transformCoords(int(x.size()), x.data(), y.data(), z.data());
    return;
  } catch (const QgsCsException &) {
    x = oldX;
    y = oldY;
  }
  for (size_t i = 0; i < x.size(); ++i) {
    double height = 0;
    try {
      transform.transformCoords(1, &x[i], &y[i], &height);
    } catch (const QgsCsException &) {
      x[i] = y[i] = nothing;
    }
  }
}
} // namespace

Terrain terrainOver(std::shared_ptr<QgsRasterDataProvider> provider, int band, const QgsCoordinateReferenceSystem &crs,
                    const QgsCoordinateTransformContext &transforms) {
  const QgsRectangle extent = provider->extent();
  GridShape shape;
  shape.left = extent.xMinimum();
  shape.top = extent.yMaximum();
  shape.columns = provider->xSize();
  shape.rows = provider->ySize();
  shape.cell_width = extent.width() / double(shape.columns);
  shape.cell_height = extent.height() / double(shape.rows);
  const auto readWindow = [provider, band, shape](const CellWindow &window) {
    const double left = shape.left + double(window.column) * shape.cell_width;
    const double top = shape.top - double(window.row) * shape.cell_height;
    const QgsRectangle rectangle(left, top - double(window.rows) * shape.cell_height,
                                 left + double(window.columns) * shape.cell_width, top);
    const std::unique_ptr<QgsRasterBlock> block(
        provider->block(band, rectangle, int(window.columns), int(window.rows)));
    if (!block || !block->isValid() || block->isEmpty())
      throw QgsProcessingException(
          Text::tr("%1: the raster could not be read near %2, %3: %4")
              .arg(demKey, plain(rectangle.center().x()), plain(rectangle.center().y()),
                   block ? block->error().summary() : QString()));
    std::vector<float> cells(size_t(window.columns * window.rows));
    for (size_t i = 0; i < cells.size(); ++i) {
      bool noData = false;
      const double value = block->valueAndNoData(qgssize(i), noData);
      cells[i] = noData ? std::numeric_limits<float>::quiet_NaN() : float(value);
    }
    return cells;
  };
  const QgsCoordinateTransform transform(QgsCoordinateReferenceSystem(QStringLiteral("EPSG:4326")), crs, transforms);
  return Terrain(HeightGrid(shape, readWindow), [transform](std::vector<double> &x, std::vector<double> &y) {
    transformOrNan(transform, x, y);
  });
}

namespace terrain_parameters {

Definitions definitions() {
  return {helped(new QgsProcessingParameterRasterLayer(demKey, Text::tr("Terrain model (heights in metres)"),
                                                       QVariant(), true),
                 Text::tr("Heights of the ground in metres, in any projection. Gives slope length, climb and drop, the "
                          "slope's effect on paces and minutes, and the height for the magnetic model.")),
          advanced(helped(new QgsProcessingParameterBand(bandKey, Text::tr("Band of the terrain model"), 1, demKey,
                                                         true),
                          Text::tr("The band that holds the heights.")))};
}

std::unique_ptr<Terrain> read(const ParameterReader &reader) {
  QgsRasterLayer *layer = reader.raster(demKey);
  if (!layer)
    return nullptr;
  const auto fail = [&](const QString &reason) {
    throw QgsProcessingException(Text::tr("%1: raster “%2” %3").arg(demKey, layer->name(), reason));
  };
  if (!layer->crs().isValid())
    fail(Text::tr("has no coordinate reference system. Set it in the layer's properties."));
  if (!layer->dataProvider() || !layer->dataProvider()->isValid())
    fail(Text::tr("cannot be read."));
  // The host's file provider opens its clones when they are first asked, and calls them invalid until then.
  std::shared_ptr<QgsRasterDataProvider> provider(layer->dataProvider()->clone());
  if (!(provider->capabilities() & QgsRasterInterface::Size) || provider->xSize() < 1 || provider->ySize() < 1)
    fail(Text::tr("has no cells of fixed size. Save it as a file first."));
  const int band =
      reader.given(bandKey)
          ? QgsProcessingParameters::parameterAsInt(reader.definition(bandKey), reader.parameters(), reader.context())
          : 1;
  if (band < 1 || band > provider->bandCount())
    fail(Text::tr("has bands 1 to %1; %2 asks for band %3.").arg(provider->bandCount()).arg(bandKey).arg(band));
  return std::make_unique<Terrain>(terrainOver(provider, band, layer->crs(), reader.context().transformContext()));
}

} // namespace terrain_parameters
} // namespace brushline
