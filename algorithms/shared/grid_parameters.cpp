// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/grid_parameters.h"

#include "shared/grid_north.h"

#include <qgsexception.h>

#include <stdexcept>

namespace brushline::grid_parameters {

namespace {
struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::GridParameters)
};
} // namespace

const QString &key() {
  static const QString gridKey = QStringLiteral("GRID_CRS");
  return gridKey;
}

Definitions definitions(const Words &words) {
  return {helped(new QgsProcessingParameterCrs(key(), words.label, QVariant(), true), words.help)};
}

void check(const QgsCoordinateReferenceSystem &crs) {
  if (crs.isGeographic())
    throw QgsProcessingException(Text::tr("%1: %2 counts in degrees; a grid is projected. Give a UTM zone or the "
                                          "national grid of your map.")
                                     .arg(key(), crs.authid()));
  try {
    GridNorth grid(definitionOf(crs));
  } catch (const std::invalid_argument &) {
    throw QgsProcessingException(
        Text::tr("%1: %2 is not a projected coordinate reference system. Give a UTM zone or the national grid of your "
                 "map.")
            .arg(key(), crs.authid()));
  }
}

QgsCoordinateReferenceSystem read(const ParameterReader &reader) {
  const QgsCoordinateReferenceSystem crs = reader.crs(key());
  if (crs.isValid())
    check(crs);
  return crs;
}

std::string definitionOf(const QgsCoordinateReferenceSystem &crs) {
  return (crs.authid().startsWith(QLatin1String("EPSG:")) ? crs.authid() : host::wkt(crs)).toStdString();
}

} // namespace brushline::grid_parameters
