// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "planning/aim_off_parameters.h"
#include "shared/grid_parameters.h"
#include "shared/place_reader_host.h"
#include "shared/source_features_host.h"

#include <qgscoordinatetransform.h>

#include <deque>
#include <map>

namespace brushline {

//! A start as it was read.
struct AimStartInput {
  QString name;        //!< empty: none
  QString route;       //!< its name, numbered where the feature has several points, else its number in all, from 1
  QString where;       //!< "layer “…”, feature …", for messages
  double x = 0, y = 0; //!< in the layer's system
  AimStart start;
};

/**
 * Reads the points of STARTS one by one, each with the grid it is annotated in and, where PAIR_FIELD says so, its
 * destination. Starts that are of no use are passed over, counted, and told; the first twenty each with its reason.
 */
class AimStarts {
  Q_DECLARE_TR_FUNCTIONS(brushline::AimStarts)

public:
  AimStarts(const ParameterReader &reader, const AimInput &input, QgsProcessingFeedback *feedback);

  //! Throws when GRID_CRS is no grid.
  static void check(const ParameterReader &reader);

  //! False at the end. Throws Cancelled.
  bool next(AimStartInput &start);
  //! Counts a start as passed over.
  void skip(const QString &where, const QString &reason);
  //! Why there is no aim, in words.
  QString reason(AimFailure failure) const;
  //! Tells how many were passed over; throws when that leaves none of several.
  void finish(long used);

  long skipped() const { return mSkipped; }
  const QgsCoordinateReferenceSystem crs() const { return mSource->sourceCrs(); }
  //! The share of the input read, 0 to 1.
  double fraction() const;

private:
  struct Grid {
    std::string definition;
    Project project;
  };
  bool ready(AimStartInput &start, const QVariant &pair);
  const Grid &gridOf(const Place &place);

  const AimInput &mInput;
  QgsProcessingFeedback *mFeedback;
  std::unique_ptr<QgsProcessingFeatureSource> mSource;
  QgsCoordinateTransformContext mTransforms;
  ToPlaces mToPlaces;
  grid_parameters::GridWatch mGridWatch;
  SourceFeatures mFeatures;
  std::unique_ptr<Grid> mGrid; // null: the UTM zone of each start
  std::map<std::string, Grid> mStandardGrids;
  std::deque<AimStartInput> mWaiting; // points of one feature
  int mNameField = -1, mPairField = -1;
  long mRead = 0, mNumber = 0, mSkipped = 0, mExpected = 0;
  QString mFirstReason;
};

} // namespace brushline
