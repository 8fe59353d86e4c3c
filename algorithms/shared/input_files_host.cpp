// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/input_files_host.h"

#include <QDir>
#include <QFileInfo>
#include <QRegularExpression>
#include <qgsdataprovider.h>
#include <qgsdatasourceuri.h>
#include <qgsexception.h>
#include <qgsproviderregistry.h>
#include <qgsrasterlayer.h>
#include <qgsvectorfilewriter.h>
#include <qgsvectorlayer.h>

#include <algorithm>

namespace brushline {

QString onePath(const QString &path) {
  if (path.isEmpty())
    return QString();
  const QFileInfo file(path);
  if (file.exists())
    return file.canonicalFilePath();
  const QString folder = file.absoluteDir().canonicalPath();
  return folder.isEmpty() ? QDir::cleanPath(file.absoluteFilePath()) : folder + QLatin1Char('/') + file.fileName();
}

namespace {

// A file or database, and the layer in it where one is named.
struct FilePlace {
  QString file; // empty: neither
  QString layer;

  // Whether writing the one changes the other.
  bool meets(const FilePlace &other) const {
    return !file.isEmpty() && file == other.file && (layer.isEmpty() || other.layer.isEmpty() || layer == other.layer);
  }
};

const QLatin1String POSTGRES("postgres");

// A table of a server. All names of this machine are one; those of others are compared as they are written.
FilePlace tableOf(const QgsDataSourceUri &uri) {
  static const QSet<QString> here{QString(), QStringLiteral("localhost"), QStringLiteral("127.0.0.1"),
                                  QStringLiteral("::1")};
  const QString host = here.contains(uri.host()) || uri.host().startsWith(QLatin1Char('/')) ? QString() : uri.host();
  const QString port = uri.port().isEmpty() ? QStringLiteral("5432") : uri.port();
  const QString schema = uri.schema().isEmpty() ? QStringLiteral("public") : uri.schema();
  return {QStringList{POSTGRES, uri.service(), host, port, uri.database()}.join(QLatin1Char(' ')),
          schema + QLatin1Char('.') + uri.table()};
}

// Where a layer is read from.
FilePlace sourceOf(const QgsMapLayer &layer) {
  if (layer.dataProvider()->name() == POSTGRES)
    return tableOf(QgsDataSourceUri(layer.source()));
  const QVariantMap parts = QgsProviderRegistry::instance()->decodeUri(layer.dataProvider()->name(), layer.source());
  return {onePath(parts.value(QStringLiteral("path")).toString()), parts.value(QStringLiteral("layerName")).toString()};
}

// The layers that an input parameter stands for.
QList<const QgsMapLayer *> layersOf(const ParameterReader &reader, const QgsProcessingParameterDefinition &definition) {
  QList<const QgsMapLayer *> layers;
  if (definition.type() == QgsProcessingParameterFeatureSource::typeName())
    layers << QgsProcessingParameters::parameterAsVectorLayer(&definition, reader.parameters(), reader.context());
  else if (definition.type() == QgsProcessingParameterRasterLayer::typeName())
    layers << QgsProcessingParameters::parameterAsRasterLayer(&definition, reader.parameters(), reader.context());
  else if (definition.type() == QgsProcessingParameterMultipleLayers::typeName())
    for (const QgsMapLayer *layer :
         QgsProcessingParameters::parameterAsLayerList(&definition, reader.parameters(), reader.context()))
      layers << layer;
  layers.erase(std::remove_if(layers.begin(), layers.end(),
                              [](const QgsMapLayer *layer) { return !layer || !layer->dataProvider(); }),
               layers.end());
  return layers;
}

// Where the host writes an output to.
FilePlace targetOf(const ParameterReader &reader, const QString &key) {
  const QString destination = reader.shown(key);
  if (destination == QgsProcessing::TEMPORARY_OUTPUT)
    return {};
  if (const auto table = tableTarget(destination)) {
    if (table->provider == POSTGRES)
      return tableOf(table->uri);
    return {onePath(table->uri.database()), table->uri.table()};
  }
  static const QRegularExpression elsewhere(QStringLiteral("^[a-zA-Z]{2,}:"));
  if (destination.contains(elsewhere))
    return {};
  QString path = destination.section(QLatin1Char('|'), 0, 0);
  if (reader.definition(key)->type() == QgsProcessingParameterFeatureSink::typeName() &&
      QgsVectorFileWriter::driverForExtension(QFileInfo(path).suffix()).isEmpty())
    path += QLatin1String(".gpkg"); // as the host does for an ending it does not know
  return {onePath(path), QString()};
}

} // namespace

std::optional<TableTarget> tableTarget(const QString &destination) {
  static const QRegularExpression database(QStringLiteral("^(ogr|postgis|postgres|spatialite):(?://)?(.*)$"));
  const QRegularExpressionMatch match = database.match(destination);
  if (!match.hasMatch())
    return std::nullopt;
  const QString provider = match.captured(1) == QLatin1String("postgis") ? QString(POSTGRES) : match.captured(1);
  return TableTarget{provider, QgsDataSourceUri(match.captured(2))};
}

QSet<QString> inputFiles(const ParameterReader &reader) {
  QSet<QString> files;
  for (const QgsProcessingParameterDefinition *definition : reader.definitions())
    if (!definition->isDestination() && reader.given(definition->name()))
      for (const QgsMapLayer *layer : layersOf(reader, *definition))
        if (const QString file = sourceOf(*layer).file; !file.isEmpty())
          files << file;
  return files;
}

void refuseInputFile(const ParameterReader &reader, const QString &key) {
  const FilePlace target = targetOf(reader, key);
  for (const QgsProcessingParameterDefinition *definition : reader.definitions()) {
    const QString &other = definition->name();
    if (other == key || !reader.given(other))
      continue;
    if (definition->isDestination()) {
      if (target.meets(targetOf(reader, other)))
        throw QgsProcessingException(
            QCoreApplication::translate("brushline::InputFiles",
                                        "%1: “%2” is given for %3 too. Give each a file or table of its own.")
                .arg(key, reader.shown(key), other));
      continue;
    }
    for (const QgsMapLayer *layer : layersOf(reader, *definition))
      if (target.meets(sourceOf(*layer)))
        throw QgsProcessingException(
            QCoreApplication::translate("brushline::InputFiles",
                                        "%1: “%2” is the file or table that %3 is read from. Give another.")
                .arg(key, reader.shown(key), other));
  }
}

} // namespace brushline
