// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "records/track.h"
#include "shared/parameter_reader_host.h"
#include "shared/place_reader_host.h"
#include "shared/source_features_host.h"

#include <QHash>
#include <qgscoordinatetransform.h>

#include <map>
#include <memory>
#include <vector>

class QgsAbstractGeometry;

namespace brushline {

//! A track as it was read.
struct TrackInput {
  QString name;             //!< from TRACK_FIELD, its GPX name, or its number
  QString where;            //!< for messages
  QString route, walker;    //!< empty: the layer does not say
  bool route_named = false; //!< route comes from a field for it; otherwise a name may be anything
  std::vector<TrackFix> fixes;
};

//! Names of a GPX file's tracks, by their number in its layer of points.
using TrackNames = QHash<QString, QString>;

namespace tracks_parameters {

//! TRACKS, TRACK_FIELD, TRACK_ORDER, TIME_FIELD, TRACK_ROUTE, TRACK_WALKER.
Definitions definitions();
//! TRACK_ERROR, MAX_SPEED.
Definitions ruleDefinitions();
//! Throws for values that are of no use; reads no features.
void check(const ParameterReader &reader);
TrackRule rule(const ParameterReader &reader);
//! When TRACKS is the layer track_points of a GPX file, the names from its layer tracks. Main thread.
TrackNames gpxNames(const ParameterReader &reader);

} // namespace tracks_parameters

/**
 * Reads the tracks of TRACKS: line features one by one, each part after the first following a gap; points gathered by
 * track and put in order. Points and lines without a usable place are passed over, counted and told.
 *
 * Times: a field for points; for lines the M values when they are seconds or milliseconds since 1970.
 */
class TrackSource {
  Q_DECLARE_TR_FUNCTIONS(brushline::TrackSource)

public:
  TrackSource(const ParameterReader &reader, TrackNames names, QgsProcessingFeedback *feedback);
  ~TrackSource();
  //! Reads the next track; false at the end. Throws Cancelled.
  bool next(TrackInput &track);
  //! Tells what was passed over.
  void finish();
  double fraction() const;

private:
  struct Points;
  bool nextLine(TrackInput &track);
  bool nextGathered(TrackInput &track);
  void gather();
  void addLine(TrackInput &track, const QgsAbstractGeometry &part);
  QString text(const QgsFeature &feature, int field) const;
  void nameTrack(TrackInput &track, const QgsFeature &feature) const;

  QgsProcessingFeedback *mFeedback;
  std::unique_ptr<QgsProcessingFeatureSource> mSource;
  ToPlaces mToPlaces;
  TrackNames mNames;
  int mTrack, mOrder, mTime, mRoute, mWalker, mSegment, mSegmentPoint;
  QList<int> mMergedFrom; // fields that tell which file a point came from
  SourceFeatures mFeatures;
  std::unique_ptr<Points> mPoints;
  bool mRouteNamed;
  long mRead = 0, mExpected = 0, mNumber = 0, mUnplaced = 0, mBadTimes = 0;
};

} // namespace brushline
