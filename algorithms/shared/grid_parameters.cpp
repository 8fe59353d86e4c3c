// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/grid_parameters.h"

#include "shared/grid_north.h"

#include <qgsexception.h>
#include <qgspointxy.h>

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

AreaOfUse::AreaOfUse(const QgsCoordinateReferenceSystem &crs) {
  const QgsRectangle area = crs.isValid() ? crs.bounds() : QgsRectangle();
  if (!area.isEmpty() && area.width() < 350)
    mArea = area.buffered(1);
}

bool AreaOfUse::holds(const Place &place) const {
  return mArea.isEmpty() ||
         mArea.contains(QgsPointXY(place.longitude.signedTurn().degrees(), place.latitude.degrees()));
}

void GridWatch::see(const Place &place, const std::function<QString()> &what) {
  if (mTold || mArea.holds(place))
    return;
  mTold = true;
  mFeedback->pushWarning(
      Text::tr("%1: %2 lies at latitude %3, longitude %4, outside the area that %5 is made for. Is it the "
               "grid of your map?")
          .arg(key(), what(), QString::number(place.latitude.degrees(), 'f', 4),
               QString::number(place.longitude.signedTurn().degrees(), 'f', 4), mName));
}

} // namespace brushline::grid_parameters
