// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/raster_output_host.h"

#include <QFile>
#include <QFileInfo>
#include <QUuid>
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
} // namespace

RasterOutput::RasterOutput(const ParameterReader &reader, const QString &key, const QgsRectangle &extent, int columns,
                           int rows, const QgsCoordinateReferenceSystem &crs)
    : mKey(key), mColumns(columns) {
  mDestination = QgsProcessingParameters::parameterAsOutputLayer(reader.definition(key), reader.parameters(),
                                                                 reader.context());
  const QFileInfo file(mDestination);
  mPart = QStringLiteral("%1/.%2-%3.%4")
              .arg(file.path(), file.completeBaseName(), QUuid::createUuid().toString(QUuid::Id128).left(8), file.suffix());
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
  throw QgsProcessingException(tr("%1: “%2” could not be written (%3). Is the disk full?").arg(mKey, mDestination, reason));
}

void RasterOutput::writeRows(int firstRow, const std::vector<double> &values) {
  QgsRasterBlock block(host::float32, mColumns, int(values.size()) / mColumns);
  for (size_t i = 0; i < values.size(); ++i)
    block.setValue(qgssize(i), std::isfinite(values[i]) ? values[i] : noData);
  if (!mProvider->writeBlock(&block, 1, 0, firstRow))
    fail(mProvider->error().summary());
  while (GDALGetCacheUsed64() > mostCached && GDALFlushCacheBlock()) {
  }
}

QString RasterOutput::finish() {
  mProvider->setEditable(false);
  mProvider.reset(); // closes the file
  if (QFile::exists(mDestination) && !QFile::remove(mDestination))
    fail(tr("the file of that name cannot be replaced"));
  if (!QFile::rename(mPart, mDestination))
    fail(tr("it cannot be given its name"));
  mFinished = true;
  return mDestination;
}

} // namespace brushline
