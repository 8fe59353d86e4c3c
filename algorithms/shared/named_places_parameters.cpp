// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/named_places_parameters.h"

#include "quantities/progress.h"

#include <qgscoordinatetransform.h>
#include <qgsexception.h>
#include <qgsfeatureiterator.h>
#include <qgsgeometry.h>

#include <cmath>

namespace brushline::named_places_parameters {

namespace {
struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::NamedPlacesParameters)
};
const QString pointsKey = QStringLiteral("POINTS"), nameKey = QStringLiteral("POINT_NAME"),
              snapKey = QStringLiteral("SNAP");
constexpr Limits snapLimits{0, 1000, 10};

// The field with the names: the one asked for, else one called "name".
int nameField(const ParameterReader &reader, const QgsProcessingFeatureSource &points) {
  const int asked = reader.fieldIndex(nameKey, points);
  const int index = asked >= 0 ? asked : points.fields().lookupField(QStringLiteral("name"));
  if (index < 0)
    throw QgsProcessingException(Text::tr("%1: layer “%2” has no field “name”: give the field that holds the names.")
                                     .arg(nameKey, points.sourceName()));
  return index;
}
} // namespace

Definitions definitions() {
  auto snap = new QgsProcessingParameterNumber(snapKey, Text::tr("Reach of a named point (m)"), host::doubleNumber,
                                               snapLimits.usual, false, snapLimits.least, snapLimits.most);
  return {helped(new QgsProcessingParameterFeatureSource(pointsKey, Text::tr("Named points"),
                                                         QList<int>() << host::pointLayers, QVariant(), true),
                 Text::tr("Camp, lone pine, boulder: legs that start or end at one of these say so.")),
          helped(new QgsProcessingParameterField(nameKey, Text::tr("Field with the point's name"), QVariant(),
                                                 pointsKey, host::anyField, false, true),
                 Text::tr("Empty: the field called “name”.")),
          advanced(helped(snap, Text::tr("A leg's end takes the name of the nearest named point that is no farther than "
                                         "this, in metres.")))};
}

void check(const ParameterReader &reader) {
  reader.number(snapKey, snapLimits);
  const auto points = reader.source(pointsKey);
  if (!points)
    return;
  if (!points->sourceCrs().isValid())
    throw QgsProcessingException(
        Text::tr("%1: layer “%2” has no coordinate reference system. Set it in the layer's properties.")
            .arg(pointsKey, points->sourceName()));
  nameField(reader, *points);
}

std::unique_ptr<NamedPlaces> read(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  const auto points = reader.source(pointsKey);
  if (!points)
    return nullptr;
  const int field = nameField(reader, *points);
  const QgsCoordinateTransform toPlaces(points->sourceCrs(), QgsCoordinateReferenceSystem(QStringLiteral("EPSG:4326")),
                                        reader.context().transformContext());
  std::vector<NamedPlace> places;
  int passedOver = 0;
  QgsFeature feature;
  QgsFeatureRequest request;
  request.setSubsetOfAttributes({field});
  QgsFeatureIterator features = points->getFeatures(request, host::skipValidityChecks);
  while (features.nextFeature(feature)) {
    if (feedback->isCanceled())
      throw Cancelled();
    const QString name = feature.attribute(field).toString().trimmed();
    if (name.isEmpty() || !feature.hasGeometry() || feature.geometry().isEmpty()) {
      ++passedOver;
      continue;
    }
    const QgsAbstractGeometry *geometry = feature.geometry().constGet();
    for (auto vertex = geometry->vertices_begin(); vertex != geometry->vertices_end(); ++vertex) {
      QgsPointXY place((*vertex).x(), (*vertex).y());
      try {
        place = toPlaces.transform(place);
      } catch (const QgsCsException &) {
        place = QgsPointXY(INFINITY, INFINITY);
      }
      if (!std::isfinite(place.x()) || !std::isfinite(place.y()) || std::abs(place.y()) > 90) {
        ++passedOver;
        continue;
      }
      places.push_back({{Angle::degrees(place.y()), Angle::degrees(place.x())}, name.toStdString()});
    }
  }
  if (passedOver > 0)
    feedback->pushWarning(
        Text::tr("%1: %n point(s) of layer “%2” without a name or a place passed over.", nullptr, passedOver)
            .arg(pointsKey, points->sourceName()));
  return std::make_unique<NamedPlaces>(std::move(places), Length::metres(reader.number(snapKey, snapLimits)));
}

} // namespace brushline::named_places_parameters
