// SPDX-License-Identifier: GPL-2.0-or-later
#include "magnetics/north_lines_parameters.h"

#include "shared/grid_north.h"
#include "shared/grid_parameters.h"
#include "shared/place_reader_host.h"
#include "shared/raster_host.h"

#include <qgscoordinatetransform.h>
#include <qgsexception.h>
#include <qgsproject.h>

#include <cmath>

namespace brushline {

namespace {
struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::NorthLinesParameters)
};
const QString extentKey = QStringLiteral("EXTENT"), spacingKey = QStringLiteral("SPACING");
constexpr Limits spacingLimits{1, 1000000, 500};

// The host would turn 179 to -179 into -179 to 179, nearly all the world.
void refuseReversed(const ParameterReader &reader) {
  const QStringList parts = reader.shown(extentKey).section(QLatin1Char('['), 0, 0).split(QLatin1Char(','));
  if (parts.size() != 4)
    return;
  bool numbers = true;
  double value[4];
  for (int i = 0; i < 4; ++i) {
    bool isNumber = false;
    value[i] = parts.at(i).trimmed().toDouble(&isNumber);
    numbers = numbers && isNumber;
  }
  if (numbers && (value[0] > value[1] || value[2] > value[3]))
    throw QgsProcessingException(
        Text::tr("%1 is “%2”: give the least x, the most x, the least y, the most y, in this order. Across the 180th "
                 "meridian count the longitudes on, like 179,181,-18,-16 [EPSG:4326].")
            .arg(extentKey, reader.shown(extentKey)));
}

QgsCoordinateReferenceSystem gridFor(const ParameterReader &reader, const QgsCoordinateReferenceSystem &own,
                                     const QgsRectangle &extent) {
  if (const QgsCoordinateReferenceSystem given = grid_parameters::read(reader); given.isValid())
    return given;
  const QgsProject *project = reader.context().project();
  for (const QgsCoordinateReferenceSystem &crs : {own, project ? project->crs() : QgsCoordinateReferenceSystem()})
    if (crs.isValid() && !crs.isGeographic()) {
      grid_parameters::check(crs);
      return crs;
    }
  const auto middle = ToPlaces(own, reader.context().transformContext())(extent.center().x(), extent.center().y());
  if (!middle)
    throw QgsProcessingException(
        Text::tr("%1: its middle (%2, %3 in %4) is no place on the Earth.")
            .arg(extentKey, plain(extent.center().x()), plain(extent.center().y()), own.authid()));
  return QgsCoordinateReferenceSystem(QString::fromStdString(standardGrid(*middle)));
}

// The box that holds an extent in a grid. Where a grid that goes on round the Earth is cut, the box goes on as well.
QgsRectangle boxIn(const QgsCoordinateReferenceSystem &grid, const QgsCoordinateReferenceSystem &own,
                   const QgsRectangle &extent, const QgsCoordinateTransformContext &transforms) {
  const QgsRectangle box = QgsCoordinateTransform(own, grid, transforms).transformBoundingBox(extent);
  const FromPlaces map(grid, transforms);
  if (map.worldWidth() == 0 || box.width() < map.worldWidth() / 2)
    return box;
  constexpr int count = 21; // the middle, first, and so many by so many places
  std::vector<double> x{extent.center().x()}, y{extent.center().y()};
  for (int i = 0; i < count; ++i)
    for (int j = 0; j < count; ++j) {
      x.push_back(extent.xMinimum() + extent.width() * i / (count - 1));
      y.push_back(extent.yMinimum() + extent.height() * j / (count - 1));
    }
  projectBetween(own, grid, transforms)(x, y);
  QgsRectangle whole;
  for (const double each : x)
    if (std::isfinite(each))
      whole.combineExtentWith(map.beside(each, x.front()), box.center().y());
  whole.setYMinimum(box.yMinimum());
  whole.setYMaximum(box.yMaximum());
  return whole;
}
} // namespace

NorthLinesArea NorthLinesSetting::area(const QgsCoordinateTransformContext &transforms) const {
  return {extent.xMinimum(),
          extent.yMinimum(),
          extent.xMaximum(),
          extent.yMaximum(),
          projectInto(grid, transforms),
          projectBetween(grid, wgs84(), transforms)};
}

namespace north_lines_parameters {

Definitions definitions() {
  return {
      helped(new QgsProcessingParameterExtent(extentKey, Text::tr("Extent of the map")),
             Text::tr("The lines are cut at a rectangle of the grid that holds this extent. Across the 180th meridian "
                      "count the longitudes on, like 179,181,-18,-16 [EPSG:4326].")),
      helped(numberDefinition(spacingKey, Text::tr("Distance between the lines (m on the ground)"), spacingLimits),
             Text::tr("In metres on the ground, whatever the scale of the map, square to the lines through the middle "
                      "of the extent. Elsewhere they draw together or spread as magnetic north does."))};
}

Definitions gridDefinitions() {
  return grid_parameters::definitions(
      {Text::tr("Grid of the map (the lines are made in it)"),
       Text::tr(
           "A projected system. Empty: that of the extent, else of the project, when it is projected; else the UTM "
           "zone of the extent's middle.")});
}

NorthLinesSetting read(const ParameterReader &reader) {
  NorthLinesSetting setting;
  setting.spacing = Length::metres(reader.number(spacingKey, spacingLimits));
  if (!reader.given(extentKey))
    throw QgsProcessingException(Text::tr("%1: give the extent of your map.").arg(extentKey));
  refuseReversed(reader);
  const QgsProcessingParameterDefinition *definition = reader.definition(extentKey);
  const QgsRectangle given =
      QgsProcessingParameters::parameterAsExtent(definition, reader.parameters(), reader.context());
  if (!given.isFinite() || given.isEmpty())
    throw QgsProcessingException(
        Text::tr("%1 is empty or no extent. Give an area, like 631500,634500,5405500,5408500 [EPSG:32621].")
            .arg(extentKey));
  const QgsCoordinateReferenceSystem own =
      QgsProcessingParameters::parameterAsExtentCrs(definition, reader.parameters(), reader.context());
  if (!own.isValid())
    throw QgsProcessingException(Text::tr("%1 tells no coordinate reference system. Write it behind the numbers, like "
                                          "631500,634500,5405500,5408500 [EPSG:32621].")
                                     .arg(extentKey));
  setting.grid = gridFor(reader, own, given);
  setting.extent = given;
  if (own != setting.grid) {
    try {
      setting.extent = boxIn(setting.grid, own, given, reader.context().transformContext());
    } catch (const QgsCsException &) {
      setting.extent = QgsRectangle();
    }
    if (!setting.extent.isFinite() || setting.extent.isEmpty())
      throw QgsProcessingException(outOfReach(setting));
  }
  return setting;
}

QString tooMany(const NorthLinesSetting &setting, double count) {
  return Text::tr("%1 of %2 m over this extent makes about %3 lines; at most %4 are drawn. Give a wider spacing or a "
                  "smaller extent.")
      .arg(spacingKey, plain(setting.spacing.metres()), QString::number(count, 'f', 0))
      .arg(mostNorthLines);
}

QString outOfReach(const NorthLinesSetting &setting) {
  return Text::tr("%1 lies where %2 does not reach. Give a %3 that is made for this part of the world.")
      .arg(extentKey, setting.grid.authid(), grid_parameters::key());
}

} // namespace north_lines_parameters
} // namespace brushline
