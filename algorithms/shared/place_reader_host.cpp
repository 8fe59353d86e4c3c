// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/place_reader_host.h"

#include "quantities/progress.h"

#include <qgscoordinatetransform.h>
#include <qgsexception.h>
#include <qgsfeatureiterator.h>
#include <qgsgeometry.h>

#include <cmath>

namespace brushline {

namespace {
struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::PlaceReader)
};
} // namespace

void checkPlaces(const QString &key, const QgsProcessingFeatureSource &source) {
  if (!source.sourceCrs().isValid())
    throw QgsProcessingException(
        Text::tr("%1: layer “%2” has no coordinate reference system. Set it in the layer's properties.")
            .arg(key, source.sourceName()));
}

void readPlaces(const QString &key, const QgsProcessingFeatureSource &source, int nameField,
                const QgsCoordinateTransformContext &transforms, QgsProcessingFeedback *feedback,
                const std::function<void(const Place &place, const QString &name)> &take) {
  const QgsCoordinateTransform toPlaces(source.sourceCrs(), QgsCoordinateReferenceSystem(QStringLiteral("EPSG:4326")),
                                        transforms);
  int passedOver = 0;
  QgsFeature feature;
  QgsFeatureRequest request;
  request.setSubsetOfAttributes(nameField >= 0 ? QgsAttributeList{nameField} : QgsAttributeList());
  QgsFeatureIterator features = source.getFeatures(request, host::skipValidityChecks);
  while (features.nextFeature(feature)) {
    if (feedback->isCanceled())
      throw Cancelled();
    if (!feature.hasGeometry() || feature.geometry().isEmpty()) {
      ++passedOver;
      continue;
    }
    const QVariant value = nameField >= 0 ? feature.attribute(nameField) : QVariant();
    const QString name = value.isNull() ? QString() : value.toString().trimmed();
    const QgsAbstractGeometry *geometry = feature.geometry().constGet();
    for (auto vertex = geometry->vertices_begin(); vertex != geometry->vertices_end(); ++vertex) {
      double x = (*vertex).x(), y = (*vertex).y(), z = 0;
      try {
        if (!toPlaces.isShortCircuited())
          toPlaces.transformCoords(1, &x, &y, &z);
      } catch (const QgsCsException &) {
        x = y = HUGE_VAL;
      }
      if (std::isfinite(x) && std::isfinite(y) && std::abs(y) <= 90)
        take({Angle::degrees(y), Angle::degrees(x)}, name);
      else
        ++passedOver;
    }
  }
  if (passedOver > 0)
    feedback->pushWarning(Text::tr("%1: %n point(s) of layer “%2” without a usable place passed over.", nullptr,
                                   passedOver)
                              .arg(key, source.sourceName()));
}

} // namespace brushline
