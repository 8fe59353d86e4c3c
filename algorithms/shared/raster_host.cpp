// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/raster_host.h"

#include "shared/place_reader_host.h"

#include <qgscoordinatetransform.h>
#include <qgserror.h>
#include <qgsexception.h>
#include <qgsrasterdataprovider.h>
#include <qgsrasterlayer.h>

#include <algorithm>
#include <limits>

namespace brushline {

namespace {
struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::RasterInput)
};
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

QString reasonOf(const QgsError &error) {
  return error.isEmpty() ? Text::tr("the host gives no reason") : error.summary();
}

Project projectBetween(const QgsCoordinateReferenceSystem &from, const QgsCoordinateReferenceSystem &to,
                       const QgsCoordinateTransformContext &transforms) {
  const QgsCoordinateTransform transform(from, to, transforms);
  return [transform](std::vector<double> &x, std::vector<double> &y) { transformOrNan(transform, x, y); };
}

Project projectInto(const QgsCoordinateReferenceSystem &crs, const QgsCoordinateTransformContext &transforms) {
  return projectBetween(wgs84(), crs, transforms);
}

std::optional<RasterInput> RasterInput::read(const ParameterReader &reader, const QString &key,
                                             const QString &bandKey) {
  QgsRasterLayer *layer = reader.raster(key);
  if (!layer)
    return std::nullopt;
  const auto fail = [&](const QString &reason) {
    throw QgsProcessingException(Text::tr("%1: raster “%2” %3").arg(key, layer->name(), reason));
  };
  if (!layer->crs().isValid())
    fail(Text::tr("has no coordinate reference system. Set it in the layer's properties."));
  if (!layer->dataProvider() || !layer->dataProvider()->isValid())
    fail(Text::tr("cannot be read."));
  // The host's file provider opens its clones when they are first asked, and calls them invalid until then.
  std::shared_ptr<QgsRasterDataProvider> provider(layer->dataProvider()->clone());
  if (!(provider->capabilities() & host::fixedSize) || provider->xSize() < 1 || provider->ySize() < 1)
    fail(Text::tr("has no cells of fixed size. Save it as a file first."));
  const bool asked = !bandKey.isEmpty() && reader.given(bandKey);
  const QVariant value = asked ? reader.parameters().value(bandKey) : QVariant(1);
  bool isNumber = true;
  if (value.type() == QVariant::String) // the host would take words for the first
    value.toInt(&isNumber);
  const int band =
      asked ? QgsProcessingParameters::parameterAsInt(reader.definition(bandKey), reader.parameters(), reader.context())
            : 1;
  if (!isNumber || band < 1 || band > provider->bandCount())
    fail(
        Text::tr("has bands 1 to %1; %2 asks for band %3.")
            .arg(QString::number(provider->bandCount()), bandKey, isNumber ? QString::number(band) : value.toString()));
  return RasterInput(key, provider, band, layer->crs(), reader.context().transformContext());
}

RasterInput::RasterInput(const QString &key, std::shared_ptr<QgsRasterDataProvider> provider, int band,
                         const QgsCoordinateReferenceSystem &crs, const QgsCoordinateTransformContext &transforms)
    : mKey(key), mProvider(std::move(provider)), mBand(band), mCrs(crs), mTransforms(transforms),
      mTiles(std::make_shared<TileStore>(256)) {} // of 256 KiB

Project RasterInput::projectFrom(const QgsCoordinateReferenceSystem &crs) const {
  return projectBetween(crs, mCrs, mTransforms);
}

QgsRectangle RasterInput::extent() const { return mProvider->extent(); }

TiledGrid RasterInput::grid() const {
  const std::shared_ptr<QgsRasterDataProvider> provider(mProvider->clone());
  provider->enableProviderResampling(false); // a layer may be drawn smoothed; its values are not
  const QgsRectangle extent = provider->extent();
  GridShape shape;
  shape.left = extent.xMinimum();
  shape.top = extent.yMaximum();
  shape.columns = provider->xSize();
  shape.rows = provider->ySize();
  shape.cell_width = extent.width() / double(shape.columns);
  shape.cell_height = extent.height() / double(shape.rows);
  const auto readWindow = [key = mKey, band = mBand, least = mLeast, most = mMost, provider,
                           shape](const CellWindow &window) {
    // A hair inside the window: the host's file provider also reads the column and row that begin at its borders, and
    // with them up to three more blocks of the file.
    constexpr double hair = 1e-6; // cells
    const auto x = [&](double column) { return shape.left + column * shape.cell_width; };
    const auto y = [&](double row) { return shape.top - row * shape.cell_height; };
    const QgsRectangle rectangle(x(double(window.column) + hair), y(double(window.row + window.rows) - hair),
                                 x(double(window.column + window.columns) - hair), y(double(window.row) + hair));
    const std::unique_ptr<QgsRasterBlock> block(
        provider->block(band, rectangle, int(window.columns), int(window.rows)));
    if (!block || !block->isValid() || block->isEmpty())
      throw QgsProcessingException(
          Text::tr("%1: raster “%2” could not be read near %3, %4 (%5). Is its file whole? Copy it anew from where it "
                   "came.")
              .arg(key, provider->dataSourceUri(), plain(rectangle.center().x()), plain(rectangle.center().y()),
                   block ? reasonOf(block->error()) : QString()));
    std::vector<float> cells(size_t(window.columns * window.rows));
    for (size_t i = 0; i < cells.size(); ++i) {
      bool noData = false;
      const double value = block->valueAndNoData(qgssize(i), noData);
      cells[i] = noData || !(value >= least && value <= most) ? std::numeric_limits<float>::quiet_NaN() : float(value);
    }
    return cells;
  };
  return TiledGrid(shape, readWindow, mTiles);
}

} // namespace brushline
