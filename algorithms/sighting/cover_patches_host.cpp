// SPDX-License-Identifier: GPL-2.0-or-later
#include "sighting/cover_patches_host.h"

#include "quantities/progress.h"

#include <qgsabstractgeometry.h>
#include <qgscurvepolygon.h>
#include <qgsgeometry.h>
#include <qgsgeometrycollection.h>
#include <qgslinestring.h>

#include <algorithm>
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

// Whether a patch is surely valid: one ring, none of whose edges comes near another but its neighbours, and none of
// these folds back. Most polygons are like that, and it is told several times sooner than GEOS tells.
bool isPlainRing(const CoverPatch &patch) {
  constexpr size_t mostEdges = 64; // each is held against each
  if (patch.rings.size() != 1)
    return false;
  const std::vector<MapPoint> &ring = patch.rings.front();
  const size_t edges = ring.size() - 1;
  if (ring.size() < 4 || edges > mostEdges || ring.front().x != ring.back().x || ring.front().y != ring.back().y)
    return false;
  for (size_t i = 0; i < edges; ++i) {
    const MapPoint &a = ring[i], &b = ring[i + 1], &c = ring[i + 1 < edges ? i + 2 : 1];
    const double dot = (b.x - a.x) * (c.x - b.x) + (b.y - a.y) * (c.y - b.y);
    const double cross = (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x);
    if (!(dot > 0 || std::abs(cross) > 1e-6 * std::abs(dot)))
      return false;
    const auto [left, right] = std::minmax(a.x, b.x);
    const auto [bottom, top] = std::minmax(a.y, b.y);
    for (size_t k = i + 2; k < edges - (i == 0); ++k) {
      const MapPoint &p = ring[k], &q = ring[k + 1];
      const bool apart = std::max(p.x, q.x) < left || std::min(p.x, q.x) > right || std::max(p.y, q.y) < bottom ||
                         std::min(p.y, q.y) > top;
      if (!apart)
        return false;
    }
  }
  return true;
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
  QgsFeatureIterator features = source.getFeatures(request, host::skipValidityChecks);
  while (features.nextFeature(feature)) {
    if (feedback->isCanceled())
      throw Cancelled();
    const int cover = coverOf(feature);
    if (cover < 0)
      continue;
    CoverPatch patch = feature.hasGeometry() ? patchOf(feature.geometry().constGet(), cover) : CoverPatch{{}, cover};
    if (!isFinite(patch)) {
      ++unusable;
      continue;
    }
    if (!isPlainRing(patch) && !feature.geometry().isGeosValid())
      ++crossing;
    patches.push_back(std::move(patch));
  }
  if (unusable > 0)
    feedback->pushWarning(Text::tr("%1: %n polygon(s) of layer “%2” without a usable geometry passed over.", nullptr,
                                   unusable)
                              .arg(key, source.sourceName()));
  if (crossing > 0)
    feedback->pushWarning(Text::tr("%1: %n polygon(s) of layer “%2” are not valid (they cross or touch themselves). What "
                                   "is enclosed an odd number of times counts as inside. Mend them with “Fix geometries”.",
                                   nullptr, crossing)
                              .arg(key, source.sourceName()));
  return patches;
}

} // namespace brushline
