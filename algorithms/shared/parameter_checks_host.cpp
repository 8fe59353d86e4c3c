// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/parameter_checks_host.h"

#include "shared/input_files_host.h"
#include "shared/place_reader_host.h"

#include <QSet>
#include <qgsexception.h>
#include <qgsprocessingutils.h>

#include <cmath>

namespace brushline {

namespace {
struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::ParameterChecks)
};

// Whether a layer's features may be of a kind: 0 points, 1 lines, 2 polygons; the host's names differ by version. An
// empty layer often has no type, and one of any type (3) may hold them.
bool mayHold(const QgsProcessingFeatureSource &source, int kind) {
  const int type = static_cast<int>(QgsWkbTypes::geometryType(source.wkbType()));
  return type == kind || type == 3 || source.featureCount() == 0;
}
} // namespace

int wholeNumber(const ParameterReader &reader, const QString &key, const Limits &limits) {
  const double value = reader.number(key, limits);
  if (value != std::floor(value))
    throw QgsProcessingException(
        Text::tr("%1 (%2) is %3: give a whole number.").arg(key, reader.definition(key)->description(), plain(value)));
  return int(value);
}

void checkPoints(const QString &key, const QgsProcessingFeatureSource &source) {
  if (!mayHold(source, 0))
    throw QgsProcessingException(
        Text::tr("%1: layer “%2” has no points. Give a layer with points.").arg(key, source.sourceName()));
  checkPlaces(key, source);
}

void checkPolygons(const QString &key, const QgsProcessingFeatureSource &source) {
  if (!mayHold(source, 2))
    throw QgsProcessingException(
        Text::tr("%1: layer “%2” has no polygons. Give a layer with polygons.").arg(key, source.sourceName()));
  checkPlaces(key, source);
}

void checkLayers(const ParameterReader &reader) {
  for (const QgsProcessingParameterDefinition *each : reader.definitions()) {
    const QString key = each->name();
    if (!reader.given(key))
      continue;
    if (each->type() == QgsProcessingParameterRasterLayer::typeName())
      reader.raster(key);
    if (each->type() != QgsProcessingParameterMultipleLayers::typeName())
      continue;
    const QVariant value = reader.parameters().value(key);
    if (value.type() != QVariant::List && value.type() != QVariant::StringList)
      continue;
    for (const QVariant &one : value.toList())
      if (one.type() == QVariant::String && !QgsProcessingUtils::mapLayerFromString(one.toString(), reader.context()))
        throw QgsProcessingException(
            Text::tr("%1 (%2): “%3” cannot be read. Give layers of the project or paths of files that the host reads.")
                .arg(key, each->description(), one.toString()));
  }
}

void checkOutputNames(const ParameterReader &reader) {
  static const QSet<QString> layers{QgsProcessingParameterFeatureSink::typeName(),
                                    QgsProcessingParameterRasterDestination::typeName()};
  for (const QgsProcessingParameterDefinition *each : reader.definitions()) {
    const QString name = each->name();
    if (!layers.contains(each->type()) || !reader.given(name) || tableTarget(reader.shown(name)) ||
        !reader.shown(name).contains(QLatin1Char('|')))
      continue;
    throw QgsProcessingException(
        Text::tr("%1 (%2): “%3” is no name for a file, since it has a “|”. Give one without; a layer of a GeoPackage "
                 "that is there is written to as ogr:dbname='%4' table=\"name\" (geom).")
            .arg(name, each->description(), reader.shown(name), reader.shown(name).section(QLatin1Char('|'), 0, 0)));
  }
}

} // namespace brushline
