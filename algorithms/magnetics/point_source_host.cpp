// SPDX-License-Identifier: GPL-2.0-or-later
#include "magnetics/point_source_host.h"

#include "quantities/progress.h"
#include "shared/place_reader_host.h"

#include <qgsexception.h>
#include <qgsgeometry.h>
#include <qgsgeometrycollection.h>
#include <qgspoint.h>

#include <algorithm>
#include <cmath>

namespace brushline {

PointSource::PointSource(const ParameterReader &reader, const QString &key) : mKey(key), mSource(reader.source(key)) {
  if (!mSource)
    throw QgsProcessingException(tr("%1: give a layer with points.").arg(key));
  if (!host::isPointType(mSource->wkbType()))
    throw QgsProcessingException(
        tr("%1: layer “%2” has no points. Give a layer with points.").arg(key, mSource->sourceName()));
  checkPlaces(key, *mSource);
  mToPlaces = ToPlaces(mSource->sourceCrs(), reader.context().transformContext());
  mExpected = mSource->featureCount();
}

double PointSource::fraction() const { return mExpected > 0 ? std::min(1.0, double(mRead) / double(mExpected)) : 0; }

void PointSource::locate(PointInput &point) const {
  point.place.reset();
  point.height.reset();
  const auto *at = qgsgeometry_cast<const QgsPoint *>(point.feature.geometry().constGet());
  if (!at || at->isEmpty())
    return;
  if (!std::isfinite(at->x()) || !std::isfinite(at->y())) { // a GeoPackage that holds one has no extent
    point.feature.clearGeometry();
    return;
  }
  point.place = mToPlaces(at->x(), at->y());
  if (point.place && at->is3D() && std::isfinite(at->z()))
    point.height = Length::metres(at->z());
}

bool PointSource::next(PointInput &point, const QgsFeedback *feedback) {
  if (feedback->isCanceled())
    throw Cancelled();
  if (!mBegun) {
    mFeatures = SourceFeatures(mKey, *mSource, feedback);
    mBegun = true;
  }
  while (mPart >= mParts) {
    if (!mFeatures.next(mFeature))
      return false;
    ++mRead;
    mPart = 0;
    const auto *collection = mFeature.hasGeometry()
                                 ? qgsgeometry_cast<const QgsGeometryCollection *>(mFeature.geometry().constGet())
                                 : nullptr;
    mParts = collection ? collection->numGeometries() : 1;
    if (mParts == 0) { // an empty one keeps its row
      mFeature.clearGeometry();
      mParts = 1;
    }
  }
  point.feature = mFeature;
  const auto *collection = mFeature.hasGeometry()
                               ? qgsgeometry_cast<const QgsGeometryCollection *>(mFeature.geometry().constGet())
                               : nullptr;
  if (collection)
    point.feature.setGeometry(QgsGeometry(collection->geometryN(mPart)->clone()));
  ++mPart;
  locate(point);
  return true;
}

} // namespace brushline
