// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/raster_output_host.h"

#include "shared/gdal_errors_host.h"
#include "shared/kept_styles_host.h"
#include "shared/raster_host.h"
#include "shared/unfinished_files_host.h"

#include <QFile>
#include <QFileInfo>
#include <gdal.h>
#include <qgsexception.h>
#include <qgsrasterblock.h>
#include <qgsrasterdataprovider.h>
#include <qgsrasterfilewriter.h>

#include <cmath>

namespace brushline {

namespace {
constexpr double noData = -9999;
// GDAL keeps what is written in memory until its cache is full: a twentieth of the machine's memory.
constexpr GIntBig mostCached = 8 * 1024 * 1024;

// Whether a raster can be read at its end. GDAL does not tell when the last of a file was not written.
bool endsWell(const QString &path) {
  GDALDatasetH data =
      GDALOpenEx(path.toUtf8().constData(), GDAL_OF_RASTER | GDAL_OF_READONLY, nullptr, nullptr, nullptr);
  if (!data)
    return false;
  const int columns = GDALGetRasterXSize(data);
  std::vector<float> last(size_t(columns), 0.0F);
  const CPLErr read = GDALRasterIO(GDALGetRasterBand(data, 1), GF_Read, 0, GDALGetRasterYSize(data) - 1, columns, 1,
                                   last.data(), columns, 1, GDT_Float32, 0, 0);
  GDALClose(data);
  return read == CE_None;
}
} // namespace

RasterOutput::RasterOutput(const ParameterReader &reader, const QString &key, const QgsRectangle &extent, int columns,
                           int rows, const QgsCoordinateReferenceSystem &crs)
    : mContext(reader.context()), mStyles(reader.styles()), mKey(key), mColumns(columns) {
  mDestination =
      QgsProcessingParameters::parameterAsOutputLayer(reader.definition(key), reader.parameters(), reader.context());
  const QFileInfo file(mDestination);
  removeUnfinished(file.path());
  mPart = unfinishedFile(file.path(), file.suffix());
  QgsRasterFileWriter writer(mPart);
  writer.setOutputProviderKey(QStringLiteral("gdal"));
  writer.setOutputFormat(QgsRasterFileWriter::driverForExtension(file.suffix()));
  if (file.suffix().startsWith(QLatin1String("tif"), Qt::CaseInsensitive))
    host::setCreationOptions(writer, {QStringLiteral("COMPRESS=DEFLATE"), QStringLiteral("BIGTIFF=IF_SAFER")});
  mProvider.reset(writer.createOneBandRaster(host::float32, columns, rows, extent, crs));
  if (!mProvider || !mProvider->isValid())
    throw QgsProcessingException(tr("%1 (%2): “%3” cannot be written. Is its folder there, may it be written to, and "
                                    "does the host know the format by that ending?")
                                     .arg(key, reader.definition(key)->description(), mDestination));
  mProvider->setNoDataValue(1, noData);
  mProvider->setEditable(true);
}

RasterOutput::~RasterOutput() {
  if (mFinished)
    return;
  mProvider.reset();
  QFile::remove(mPart);
  QFile::remove(mPart + QStringLiteral(".aux.xml"));
}

void RasterOutput::fail(const QString &reason) const {
  throw QgsProcessingException(tr("%1: “%2” could not be written whole (%3), so it was left out. Is the disk full?")
                                   .arg(mKey, mDestination, reason));
}

void RasterOutput::writeRows(int firstRow, const std::vector<double> &values) {
  QgsRasterBlock block(host::float32, mColumns, int(values.size()) / mColumns);
  for (size_t i = 0; i < values.size(); ++i)
    block.setValue(qgssize(i), std::isfinite(values[i]) ? values[i] : noData);
  const GdalErrors errors;
  const bool written = mProvider->writeBlock(&block, 1, 0, firstRow);
  while (written && !errors.any() && GDALGetCacheUsed64() > mostCached && GDALFlushCacheBlock()) {
  }
  if (!written || errors.any())
    fail(errors.firstOr(reasonOf(mProvider->error())));
}

QString RasterOutput::finish(const QString &styleResource) {
  const GdalErrors errors;
  mProvider->setEditable(false);
  mProvider.reset(); // closes the file
  if (errors.any() || !endsWell(mPart))
    fail(errors.firstOr(tr("its end is missing")));
  if (const QString reason = moveOver(mPart, mDestination); !reason.isEmpty())
    fail(reason);
  mFinished = true;
  mStyles->give(mContext, mDestination, {styleResource, std::nullopt});
  return mDestination;
}

} // namespace brushline
