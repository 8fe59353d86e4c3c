// SPDX-License-Identifier: GPL-2.0-or-later
#include "records/route_plotter_host.h"

#include "shared/grid_parameters.h"
#include "shared/raster_host.h"

#include <algorithm>
#include <cmath>

namespace brushline {

RoutePlotter::RoutePlotter(const AnnotateSettings &settings, const TraverseEnds &ends,
                           const QgsCoordinateReferenceSystem &grid, const QgsCoordinateTransformContext &transforms)
    : mSettings(settings), mEnds(ends), mGrid(grid.isValid() ? grid_parameters::definitionOf(grid) : std::string()),
      mTransforms(transforms), mFromPlaces(ends.crs, transforms), mAnnotator(settings, nullptr, nullptr) {}

RoutePlotter::Grid &RoutePlotter::gridOf(const std::string &definition) {
  auto found = mGrids.find(definition);
  if (found == mGrids.end()) {
    QgsCoordinateReferenceSystem crs;
    crs.createFromString(QString::fromStdString(definition));
    found = mGrids.emplace(definition, Grid{GridNorth(definition), projectInto(crs, mTransforms)}).first;
  }
  return found->second;
}

// One sighting a leg, since nobody wrote down more.
LegErrors RoutePlotter::errorsOf(const RecordedLeg &leg, const Place &start) const {
  Angle sighting;
  double pacing = 0;
  for (size_t i = 0; i < mSettings.walkers.size(); ++i) // where nobody says who walked, the least careful
    if (leg.walker < 0 || leg.walker == int(i)) {
      const Walker &walker = mSettings.walkers[i];
      sighting = Angle::degrees(std::max(sighting.degrees(), walker.bearing_error.degrees()));
      pacing = std::max(pacing, walker.pace_error_percent / 100);
    }
  const Angle graduation = dialBearing(mSettings.compass.step, mSettings.compass.unit);
  const Angle coarse = Angle::degrees(std::max(graduation.degrees(), leg.bearing.coarseness.degrees()));
  const auto declination = mSettings.field->at(start, Length()).declination_error;
  return {sighting, roundingError(coarse), declination.value_or(Angle()), pacing};
}

Suspicion RoutePlotter::suspicionOf(const RecordedRoute &route, bool paced, const PlottedRoute &plotted,
                                    const Grid &grid, const Progress &progress) const {
  std::vector<SuspectLeg> suspects;
  const auto &points = plotted.closed->points;
  for (size_t i = 0; i < route.legs.size(); ++i) {
    const RecordedLeg &leg = route.legs[i];
    SuspectLeg suspect;
    suspect.step = {points[i + 1].east - points[i].east, points[i + 1].north - points[i].north};
    suspect.errors = errorsOf(leg, plotted.read.places[i]);
    suspect.squared_hops = leg.length.metres() * leg.length.metres();
    suspect.hundred = Length::metres(paced ? 100 * leg.length.metres() / leg.amount : 100);
    suspect.paced = paced;
    for (const Angle angle : leg.bearing.swapped)
      suspect.swapped.push_back((angle - leg.bearing.angle).signedTurn());
    suspects.push_back(std::move(suspect));
  }
  std::vector<CommonTurn> common;
  if (mEnds.close == CloseOn::End) {
    const Place &start = plotted.read.places.front();
    common =
        commonTurns(mSettings.compass.north, mSettings.field->at(start, Length()).declination, grid.north.at(start));
  }
  return suspect(suspects, plotted.closed->closure.miss, common, progress);
}

PlottedRoute RoutePlotter::plot(const RecordedRoute &route, bool paced, const Progress &progress) {
  PlottedRoute result;
  QString reason;
  const auto start = mEnds.startOf(route.name, reason);
  if (!start) {
    result.refusal = reason;
    return result;
  }
  const std::string definition = mGrid.empty() ? standardGrid(*start) : mGrid;
  Grid &grid = gridOf(definition);
  std::vector<ReadLeg> read;
  std::vector<Length> lengths;
  for (const RecordedLeg &leg : route.legs) {
    read.push_back({leg.bearing.angle, leg.length});
    lengths.push_back(leg.length);
  }
  result.read = plotLegs(*start, read, *mSettings.field, mSettings.compass.north, grid.north, progress);
  const size_t stopped = std::min(result.read.bearings.size(), route.legs.size() - 1);
  const QString at = tr("leg %1 (row %2)").arg(stopped + 1).arg(route.legs[stopped].row);
  if (result.read.stop == PlottedLegs::Stop::NoCompass)
    result.refusal = tr("no compass works where %1 starts, too near the magnetic pole.").arg(at);
  if (result.read.stop == PlottedLegs::Stop::NoGrid)
    result.refusal = tr("the grid %1 does not reach to where %2 starts: give another %3.")
                         .arg(QString::fromStdString(definition).left(40), at, grid_parameters::key());
  if (!result.refusal.isEmpty())
    return result;
  if (const auto target = mEnds.targetOf(*start)) {
    result.closed = closeTraverse(result.read.places, lengths, *target);
    result.suspicion = suspicionOf(route, paced, result, grid, progress);
  }

  const std::vector<Place> &places = mEnds.adjust ? result.closed->adjusted : result.read.places;
  // Longitudes go on from the start's, which may be of any turn.
  const auto startX = mEnds.crs.isGeographic() ? std::optional(start->longitude.degrees()) : std::nullopt;
  result.points = mFromPlaces(places, startX);
  std::vector<double> eastings, northings;
  for (const Place &place : places) {
    eastings.push_back(place.longitude.signedTurn().degrees());
    northings.push_back(place.latitude.degrees());
  }
  grid.project(eastings, northings);
  Route drawn;
  drawn.grid = definition;
  auto &vertices = drawn.parts.emplace_back();
  for (size_t i = 0; i < places.size(); ++i) {
    if (const QgsPointXY &point = result.points.at(int(i)); !std::isfinite(point.x()) || !std::isfinite(point.y())) {
      result.refusal = tr("it leads to where %1 does not reach.").arg(mEnds.crs.authid());
      return result;
    }
    if (!std::isfinite(eastings[i]) || !std::isfinite(northings[i])) {
      result.refusal = tr("it leads to where the grid %1 does not reach: give another %2.")
                           .arg(QString::fromStdString(definition).left(40), grid_parameters::key());
      return result;
    }
    vertices.push_back({places[i], {eastings[i], northings[i]}, i});
  }
  result.legs = mAnnotator.annotate(drawn, progress);
  if (result.legs.size() != route.legs.size())
    result.refusal = tr("spread over the legs, the miss of %1 m leaves one of them without length. Leave %2 off.")
                         .arg(QString::number(result.closed ? result.closed->closure.missed.metres() : 0, 'f', 1),
                              QStringLiteral("ADJUST"));
  return result;
}

} // namespace brushline
