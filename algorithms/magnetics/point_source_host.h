// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/length.h"
#include "quantities/place.h"
#include "shared/parameter_reader_host.h"
#include "shared/place_reader_host.h"
#include "shared/source_features_host.h"

#include <qgscoordinatetransform.h>
#include <qgsfeature.h>

#include <memory>
#include <optional>

namespace brushline {

//! A point as it was read.
struct PointInput {
  QgsFeature feature;           //!< with the point's own geometry, or none
  std::optional<Place> place;   //!< none for a row without a usable place
  std::optional<Length> height; //!< its Z; none without
};

/**
 * Reads the points of a layer in its order, all of its rows; a multipoint gives a row for each of its points.
 */
class PointSource {
  Q_DECLARE_TR_FUNCTIONS(brushline::PointSource)

public:
  //! Throws for a layer that has no points or no coordinate system.
  PointSource(const ParameterReader &reader, const QString &key);

  //! False at the end. Throws Cancelled.
  bool next(PointInput &point, const QgsFeedback *feedback);

  QgsFields fields() const { return mSource->fields(); }
  QgsCoordinateReferenceSystem crs() const { return mSource->sourceCrs(); }
  QString name() const { return mSource->sourceName(); }
  //! Single points of the layer's dimensions.
  host::WkbType type() const { return QgsWkbTypes::singleType(mSource->wkbType()); }
  //! Whether one row may become several.
  bool splits() const { return QgsWkbTypes::isMultiType(mSource->wkbType()); }
  //! The share of the layer read, 0 to 1.
  double fraction() const;

private:
  void locate(PointInput &point) const;

  QString mKey;
  std::unique_ptr<QgsProcessingFeatureSource> mSource;
  ToPlaces mToPlaces;
  SourceFeatures mFeatures;
  QgsFeature mFeature; // the one whose points are being given
  int mPart = 0, mParts = 0;
  bool mBegun = false;
  long mRead = 0, mExpected = 0;
};

} // namespace brushline
