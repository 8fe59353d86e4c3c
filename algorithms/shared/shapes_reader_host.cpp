// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/shapes_reader_host.h"

#include "quantities/progress.h"
#include "shared/place_reader_host.h"
#include "shared/source_features_host.h"

#include <qgscoordinatetransform.h>
#include <qgscurve.h>
#include <qgscurvepolygon.h>
#include <qgsexception.h>
#include <qgsfeatureiterator.h>
#include <qgsgeometry.h>
#include <qgsgeometrycollection.h>
#include <qgslinestring.h>
#include <qgspoint.h>

#include <cmath>
#include <memory>

namespace brushline {

namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::ShapesReader)
};

class Reader {
public:
  Reader(const QgsProcessingFeatureSource &source, const QgsCoordinateTransformContext &transforms)
      : mToPlaces(source.sourceCrs(), wgs84(), transforms) {}

  //! Adds what a geometry is made of, a shape for each of its kinds; false when nothing of it is of use.
  bool add(const QgsAbstractGeometry *geometry, const Shape &like, std::vector<Shape> &shapes) {
    Shape points = like, lines = like, polygons = like;
    points.kind = ShapeKind::Point;
    lines.kind = ShapeKind::Line;
    polygons.kind = ShapeKind::Polygon;
    const bool whole = gather(geometry, points, lines, polygons);
    bool any = false;
    for (Shape *shape : {&points, &lines, &polygons})
      if (!shape->parts.empty()) {
        shapes.push_back(std::move(*shape));
        any = true;
      }
    return whole && any;
  }

private:
  bool gather(const QgsAbstractGeometry *geometry, Shape &points, Shape &lines, Shape &polygons) {
    if (!geometry || geometry->isEmpty())
      return true;
    if (const auto *collection = qgsgeometry_cast<const QgsGeometryCollection *>(geometry)) {
      bool whole = true;
      for (int i = 0; i < collection->numGeometries(); ++i)
        whole = gather(collection->geometryN(i), points, lines, polygons) && whole;
      return whole;
    }
    if (const auto *point = qgsgeometry_cast<const QgsPoint *>(geometry)) {
      std::vector<double> x{point->x()}, y{point->y()};
      return append(x, y, points);
    }
    if (const auto *polygon = qgsgeometry_cast<const QgsCurvePolygon *>(geometry)) {
      bool whole = ring(polygon->exteriorRing(), polygons);
      for (int i = 0; i < polygon->numInteriorRings(); ++i)
        whole = ring(polygon->interiorRing(i), polygons) && whole;
      return whole;
    }
    if (const auto *curve = qgsgeometry_cast<const QgsCurve *>(geometry))
      return line(curve, lines, false);
    return false;
  }

  bool ring(const QgsCurve *curve, Shape &polygons) {
    return !curve || curve->isEmpty() || line(curve, polygons, true);
  }

  bool line(const QgsCurve *curve, Shape &shape, bool close) {
    const std::unique_ptr<QgsLineString> line(curve->curveToLine());
    std::vector<double> x, y;
    for (int i = 0; i < line->numPoints(); ++i) {
      x.push_back(line->xAt(i));
      y.push_back(line->yAt(i));
    }
    if (x.size() < 2)
      return false;
    if (close && (x.front() != x.back() || y.front() != y.back())) {
      x.push_back(x.front());
      y.push_back(y.front());
    }
    return append(x, y, shape);
  }

  // Half a line would be another line: one coordinate of no use spoils the part.
  bool append(std::vector<double> &x, std::vector<double> &y, Shape &shape) {
    for (size_t i = 0; i < x.size(); ++i)
      if (!std::isfinite(x[i]) || !std::isfinite(y[i]))
        return false;
    std::vector<double> z(x.size(), 0);
    try {
      if (!mToPlaces.isShortCircuited())
        mToPlaces.transformCoords(int(x.size()), x.data(), y.data(), z.data());
    } catch (const QgsCsException &) {
      return false;
    }
    std::vector<Place> part;
    for (size_t i = 0; i < x.size(); ++i) {
      if (!std::isfinite(x[i]) || !std::isfinite(y[i]) || std::abs(y[i]) > 90)
        return false;
      part.push_back({Angle::degrees(y[i]), Angle::degrees(x[i])});
    }
    shape.parts.push_back(std::move(part));
    return true;
  }

  QgsCoordinateTransform mToPlaces;
};

} // namespace

void addShapes(std::vector<Shape> &shapes, const QString &key, const QgsProcessingFeatureSource &source, int nameField,
               size_t sourceNumber, const QgsCoordinateTransformContext &transforms, QgsProcessingFeedback *feedback) {
  checkPlaces(key, source);
  Reader reader(source, transforms);
  QgsFeatureRequest request;
  request.setSubsetOfAttributes(nameField >= 0 ? QgsAttributeList{nameField} : QgsAttributeList());
  SourceFeatures features(key, source, feedback, request);
  QgsFeature feature;
  int spoiled = 0;
  while (features.next(feature)) {
    Shape shape;
    const QVariant name = nameField >= 0 ? feature.attribute(nameField) : QVariant();
    shape.name = name.isNull() ? std::string() : name.toString().trimmed().toStdString();
    shape.source = sourceNumber;
    shape.feature = feature.id();
    if (!feature.hasGeometry() || !reader.add(feature.geometry().constGet(), shape, shapes))
      ++spoiled;
  }
  if (spoiled > 0)
    feedback->pushWarning(
        Text::tr("%1: %n feature(s) of layer “%2” are without a usable geometry, whole or in part; passed over.",
                 nullptr, spoiled)
            .arg(key, source.sourceName()));
}

int invalidShapes(const QString &key, const QgsProcessingFeatureSource &source, const QgsFeedback *feedback) {
  QgsFeatureRequest request;
  request.setSubsetOfAttributes(QgsAttributeList());
  SourceFeatures features(key, source, feedback, request);
  QgsFeature feature;
  int count = 0;
  while (features.next(feature)) {
    if (feature.hasGeometry() && !feature.geometry().isEmpty() && !feature.geometry().isGeosValid())
      ++count;
  }
  return count;
}

} // namespace brushline
