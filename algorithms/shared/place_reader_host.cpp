// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/place_reader_host.h"

#include "quantities/progress.h"
#include "shared/grid_north.h"
#include "shared/grid_parameters.h"
#include "shared/raster_host.h"
#include "shared/source_features_host.h"

#include <qgscoordinatetransform.h>
#include <qgsexception.h>
#include <qgsfeatureiterator.h>
#include <qgsgeometry.h>

#include <cmath>
#include <stdexcept>

namespace brushline {

namespace {
struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::PlaceReader)
};

double worldWidthIn(const QgsCoordinateReferenceSystem &crs) {
  if (crs.isGeographic())
    return 360;
  try {
    return GridNorth(grid_parameters::definitionOf(crs)).worldWidth();
  } catch (const std::invalid_argument &) { // neither geographic nor projected
    return 0;
  }
}
} // namespace

const QgsCoordinateReferenceSystem &wgs84() {
  static const QgsCoordinateReferenceSystem crs(QStringLiteral("EPSG:4326"));
  return crs;
}

std::optional<Place> ToPlaces::operator()(double x, double y) const {
  double z = 0;
  if (!std::isfinite(x) || !std::isfinite(y))
    return std::nullopt;
  try {
    if (!mTransform.isShortCircuited())
      mTransform.transformCoords(1, &x, &y, &z);
  } catch (const QgsCsException &) {
    return std::nullopt;
  }
  if (!(std::abs(x) <= 720) || !(std::abs(y) <= 90))
    return std::nullopt;
  return Place{Angle::degrees(y), Angle::degrees(x)};
}

FromPlaces::FromPlaces(const QgsCoordinateReferenceSystem &to, const QgsCoordinateTransformContext &transforms)
    : mProject(projectInto(to, transforms)), mWorldWidth(worldWidthIn(to)) {}

double FromPlaces::beside(double x, double near_x) const {
  // Half a world off, as beyond a pole, is left as it is.
  const double worlds = mWorldWidth > 0 ? std::rint((x - near_x) / mWorldWidth) : 0;
  return worlds == 0 ? x : x - worlds * mWorldWidth;
}

QgsPointXY FromPlaces::operator()(const Place &place, double near_x) const {
  return (*this)(std::vector<Place>{place}, near_x).front();
}

QgsPolylineXY FromPlaces::operator()(const std::vector<Place> &places, std::optional<double> near_x) const {
  std::vector<double> x, y;
  for (const Place &place : places) {
    x.push_back(place.longitude.signedTurn().degrees());
    y.push_back(place.latitude.degrees());
  }
  mProject(x, y);
  QgsPolylineXY points;
  for (size_t i = 0; i < x.size(); ++i) {
    const double here = beside(x[i], near_x.value_or(x[i]));
    points.append(QgsPointXY(here, y[i]));
    if (std::isfinite(here))
      near_x = here;
  }
  return points;
}

QgsGeometry FromPlaces::point(const Place &place, double near_x) const {
  const QgsPointXY at = (*this)(place, near_x);
  return std::isfinite(at.x()) && std::isfinite(at.y()) ? QgsGeometry::fromPointXY(at) : QgsGeometry();
}

QgsGeometry FromPlaces::line(const std::vector<Place> &places, double near_x) const {
  const QgsPolylineXY points = (*this)(places, near_x);
  for (const QgsPointXY &at : points)
    if (!std::isfinite(at.x()) || !std::isfinite(at.y()))
      return QgsGeometry();
  return QgsGeometry::fromPolylineXY(points);
}

void checkPlaces(const QString &key, const QgsProcessingFeatureSource &source) {
  if (!source.sourceCrs().isValid())
    throw QgsProcessingException(
        Text::tr("%1: layer “%2” has no coordinate reference system. Set it in the layer's properties.")
            .arg(key, source.sourceName()));
}

void readPlaces(const QString &key, const QgsProcessingFeatureSource &source, int nameField,
                const QgsCoordinateTransformContext &transforms, QgsProcessingFeedback *feedback,
                const std::function<void(const Place &place, const QString &name)> &take) {
  const ToPlaces toPlaces(source.sourceCrs(), transforms);
  int passedOver = 0;
  QgsFeature feature;
  QgsFeatureRequest request;
  request.setSubsetOfAttributes(nameField >= 0 ? QgsAttributeList{nameField} : QgsAttributeList());
  SourceFeatures features(key, source, feedback, request);
  while (features.next(feature)) {
    if (!feature.hasGeometry() || feature.geometry().isEmpty()) {
      ++passedOver;
      continue;
    }
    const QVariant value = nameField >= 0 ? feature.attribute(nameField) : QVariant();
    const QString name = value.isNull() ? QString() : value.toString().trimmed();
    const QgsAbstractGeometry *geometry = feature.geometry().constGet();
    for (auto vertex = geometry->vertices_begin(); vertex != geometry->vertices_end(); ++vertex)
      if (const auto place = toPlaces((*vertex).x(), (*vertex).y()))
        take(*place, name);
      else
        ++passedOver;
  }
  if (passedOver > 0)
    feedback->pushWarning(
        Text::tr("%1: %n point(s) of layer “%2” without a usable place passed over.", nullptr, passedOver)
            .arg(key, source.sourceName()));
}

} // namespace brushline
