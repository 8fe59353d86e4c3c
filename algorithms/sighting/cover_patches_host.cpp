// SPDX-License-Identifier: GPL-2.0-or-later
#include "sighting/cover_patches_host.h"

#include "quantities/progress.h"
#include "shared/source_features_host.h"
#include "sighting/plain_ring.h"

#include <qgsabstractgeometry.h>
#include <qgscurvepolygon.h>
#include <qgsgeometry.h>
#include <qgsgeometrycollection.h>
#include <qgslinestring.h>

#include <cmath>
#include <memory>

namespace brushline {

namespace {
struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::CoverPatches)
};

void addRing(const QgsCurve *ring, CoverPatch &patch) {
  if (!ring)
    return;
  const auto *line = qgsgeometry_cast<const QgsLineString *>(ring);
  std::unique_ptr<QgsLineString> straight;
  if (!line) {
    straight.reset(ring->curveToLine());
    line = straight.get();
  }
  std::vector<MapPoint> points(size_t(line->numPoints()));
  for (int i = 0; i < line->numPoints(); ++i)
    points[size_t(i)] = {line->xAt(i), line->yAt(i)};
  patch.rings.push_back(std::move(points));
}

// The polygons of a geometry, as one patch.
CoverPatch patchOf(const QgsAbstractGeometry *geometry, int cover) {
  CoverPatch patch{{}, cover};
  const auto add = [&](const QgsAbstractGeometry *part) {
    if (const auto *polygon = qgsgeometry_cast<const QgsCurvePolygon *>(part)) {
      addRing(polygon->exteriorRing(), patch);
      for (int i = 0; i < polygon->numInteriorRings(); ++i)
        addRing(polygon->interiorRing(i), patch);
    }
  };
  if (const auto *collection = qgsgeometry_cast<const QgsGeometryCollection *>(geometry))
    for (int i = 0; i < collection->numGeometries(); ++i)
      add(collection->geometryN(i));
  else
    add(geometry);
  return patch;
}

bool isFinite(const CoverPatch &patch) {
  for (const auto &ring : patch.rings)
    for (const MapPoint &point : ring)
      if (!std::isfinite(point.x) || !std::isfinite(point.y))
        return false;
  return !patch.rings.empty();
}

} // namespace

std::vector<CoverPatch> readPatches(const QString &key, const QgsProcessingFeatureSource &source,
                                    const QgsAttributeList &fields,
                                    const std::function<int(const QgsFeature &)> &coverOf,
                                    QgsProcessingFeedback *feedback) {
  std::vector<CoverPatch> patches;
  int unusable = 0, crossing = 0;
  QgsFeature feature;
  QgsFeatureRequest request;
  request.setSubsetOfAttributes(fields);
  SourceFeatures features(key, source, feedback, request);
  while (features.next(feature)) {
    const int cover = coverOf(feature);
    if (cover < 0)
      continue;
    CoverPatch patch = feature.hasGeometry() ? patchOf(feature.geometry().constGet(), cover) : CoverPatch{{}, cover};
    if (!isFinite(patch)) {
      ++unusable;
      continue;
    }
    const bool surelyValid = patch.rings.size() == 1 && isPlainRing(patch.rings.front());
    if (!surelyValid && !feature.geometry().isGeosValid())
      ++crossing;
    patches.push_back(std::move(patch));
  }
  if (unusable > 0)
    feedback->pushWarning(
        Text::tr("%1: %n polygon(s) of layer “%2” without a usable geometry passed over.", nullptr, unusable)
            .arg(key, source.sourceName()));
  if (crossing > 0)
    feedback->pushWarning(
        Text::tr("%1: %n polygon(s) of layer “%2” are not valid (they cross or touch themselves). What "
                 "is enclosed an odd number of times counts as inside. Mend them with “Fix geometries”.",
                 nullptr, crossing)
            .arg(key, source.sourceName()));
  return patches;
}

} // namespace brushline
