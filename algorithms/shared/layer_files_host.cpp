// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/layer_files_host.h"

#include "quantities/progress.h"
#include "shared/gdal_errors_host.h"
#include "shared/input_files_host.h"

#include <QFile>
#include <QFileInfo>
#include <gdal.h>
#include <ogr_api.h>
#include <qgsfeedback.h>
#include <qgsvectorfilewriter.h>
#include <sqlite3.h>

#include <algorithm>
#include <memory>

namespace brushline {

namespace {

QString pathOf(const QString &destination) { return destination.section(QLatin1Char('|'), 0, 0); }

QString endingOf(const QString &destination) { return QFileInfo(pathOf(destination)).suffix().toLower(); }

// A layer as GDAL has it.
struct OpenLayer {
  OpenLayer(const QString &destination, unsigned access)
      : data(GDALOpenEx(pathOf(destination).toUtf8().constData(), GDAL_OF_VECTOR | access, nullptr, nullptr, nullptr),
             &GDALClose) {
    if (!data)
      return;
    const QString name = destination.section(QLatin1String("layername="), 1, 1).section(QLatin1Char('|'), 0, 0);
    rows = name.isEmpty() ? GDALDatasetGetLayer(data.get(), 0)
                          : GDALDatasetGetLayerByName(data.get(), name.toUtf8().constData());
  }

  std::unique_ptr<void, decltype(&GDALClose)> data; // null: the file cannot be opened
  OGRLayerH rows = nullptr;                         // null: there is no such layer
};

// How a text file ends.
QByteArray endOf(const QString &path) {
  QFile file(path);
  return file.open(QIODevice::ReadOnly) && file.seek(std::max<qint64>(0, file.size() - 8)) ? file.readAll()
                                                                                           : QByteArray();
}

// Asked by SQLite again and again while it works, which ends with an error for anything but 0.
int isCancelled(void *feedback) { return static_cast<const QgsFeedback *>(feedback)->isCanceled() ? 1 : 0; }

QString quoted(const char *name) {
  return QLatin1Char('\'') + QString::fromUtf8(name).replace(QLatin1Char('\''), QLatin1String("''")) +
         QLatin1Char('\'');
}

} // namespace

void removeLayerFiles(const QString &destination) {
  const QString path = pathOf(destination), ending = endingOf(destination);
  if (!QFileInfo(path).isFile())
    return;
  if (ending == QLatin1String("shp")) {
    QgsVectorFileWriter::deleteShapeFile(path);
    return;
  }
  QFile::remove(path);
  for (const char *side : {"-wal", "-shm", "-journal"})
    QFile::remove(path + QLatin1String(side));
  if (ending == QLatin1String("csv"))
    QFile::remove(path + QLatin1Char('t')); // column types
}

std::optional<long> featuresIn(const QString &destination) {
  const QString path = pathOf(destination), ending = endingOf(destination);
  if (ending == QLatin1String("geojson")) // counting would read a large one into memory
    return endOf(path).trimmed().endsWith('}') ? std::nullopt : std::optional<long>(0);
  static const QStringList sure{QStringLiteral("gpkg"), QStringLiteral("shp"), QStringLiteral("fgb"),
                                QStringLiteral("csv")};
  if (!sure.contains(ending) || !QFileInfo(path).isFile())
    return std::nullopt;
  const OpenLayer layer(destination, GDAL_OF_READONLY);
  if (!layer.rows)
    return 0;
  const GIntBig count = OGR_L_GetFeatureCount(layer.rows, TRUE);
  if (ending == QLatin1String("fgb") && count > 0) { // its head tells
    const OGRFeatureH last = OGR_L_GetFeature(layer.rows, count - 1);
    OGR_F_Destroy(last);
    return last ? long(count) : 0;
  }
  if (ending == QLatin1String("csv") && !endOf(path).endsWith('\n'))
    return 0;
  return long(count);
}

bool isIndexLeftOut(const QString &given, host::WkbType type) {
  return type != host::noGeometry && !tableTarget(given) && endingOf(given) == QLatin1String("gpkg");
}

QStringList layerOptions(const QString &given, host::WkbType type) {
  const auto defaultsWithout = [](const char *driver, const QString &option) {
    QStringList options = QgsVectorFileWriter::defaultLayerOptions(QString::fromLatin1(driver));
    options.erase(
        std::remove_if(options.begin(), options.end(), [&](const QString &each) { return each.startsWith(option); }),
        options.end());
    return options;
  };
  if (isIndexLeftOut(given, type)) {
    const QString index = QStringLiteral("SPATIAL_INDEX=");
    return defaultsWithout("GPKG", index) << index + QLatin1String("NO");
  }
  if (!tableTarget(given) && endingOf(given) == QLatin1String("sqlite"))
    return defaultsWithout("SQLite", QStringLiteral("SRID=")); // by default it is empty, which GDAL takes for unknown
  return {};
}

QString makeIndex(const QString &destination, const QgsFeedback *feedback) {
  const auto checkCancel = [feedback] {
    if (feedback && feedback->isCanceled())
      throw Cancelled();
  };
  checkCancel();
  const GdalErrors errors;
  {
    const OpenLayer layer(destination, GDAL_OF_UPDATE);
    if (!layer.rows)
      return errors.firstOr(QFileInfo(pathOf(destination)).fileName());
    // GDAL hands out its connection for such: the making is one call that tells no progress.
    auto *connection = static_cast<sqlite3 *>(GDALGetInternalHandle(layer.data.get(), "SQLITE_HANDLE"));
    constexpr int steps = 1000; // of SQLite's machine, some microseconds
    if (connection && feedback)
      sqlite3_progress_handler(connection, steps, &isCancelled, const_cast<QgsFeedback *>(feedback));
    const QString sql = QStringLiteral("SELECT CreateSpatialIndex(%1, %2)")
                            .arg(quoted(OGR_L_GetName(layer.rows)), quoted(OGR_L_GetGeometryColumn(layer.rows)));
    if (const OGRLayerH answer = GDALDatasetExecuteSQL(layer.data.get(), sql.toUtf8().constData(), nullptr, nullptr))
      GDALDatasetReleaseResultSet(layer.data.get(), answer);
    if (connection)
      sqlite3_progress_handler(connection, 0, nullptr, nullptr);
  }
  checkCancel();
  return errors.firstOr(QString());
}

} // namespace brushline
