// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/duration.h"
#include "shared/geodesic.h"
#include "shared/named_places.h"
#include "shared/terrain.h"
#include "shared/vector_output_host.h"
#include "shared/walker.h"
#include "sighting/cover_parameters.h"

#include <qgspointxy.h>

#include <optional>
#include <vector>

namespace brushline {

//! What came of a pair.
struct FoundRoute {
  QString reason;                 //!< why there is no route; empty: there is one
  std::vector<Place> places;      //!< start, turns, end
  std::vector<QgsPointXY> points; //!< the same in the output's system
  std::vector<bool> at_place;     //!< whether it turns at a recognisable place
  Duration walking;
  std::optional<Duration> straight; //!< of the straight line; none: it is barred
};

//! The planned routes, written.
class PlannedRoutes {
  Q_DECLARE_TR_FUNCTIONS(brushline::PlannedRoutes)

public:
  //! OUTPUT, EFFORT and MINUTES.
  static Definitions outputs();
  //! The number MINUTES.
  static QgsProcessingOutputDefinition *minutesOutput();
  //! The places of POINTS that have a name.
  static std::vector<Place> turningPlaces(const ParameterReader &reader, QgsProcessingFeedback *feedback);
  //! The time of a leg as annotated legs tell it; none across what nobody walks and where heights are lacking.
  //! \param unknownSpeed speed factor where the cover is not known, > 0.
  static std::optional<Duration> walkingTime(const Place &from, const Place &to, const Walker &walker, Terrain *terrain,
                                             CoverSource *cover, const CoverTable *table, double unknownSpeed);

  //! \param cover whose gaps under the legs are counted; null: they are not. Borrowed.
  PlannedRoutes(const ParameterReader &reader, const QgsCoordinateReferenceSystem &crs, const NamedPlaces *names,
                CoverSource *cover);
  void write(const QString &route, const FoundRoute &found);
  int count() const { return mCount; }
  const UnknownCover &unknownCover() const { return mUnknownCover; }
  QVariantMap finish(QgsProcessingFeedback *feedback);

private:
  //! Metres of a leg on which no class of cover is known.
  double withoutCover(const Place &from, const GeodesicLeg &leg);

  VectorOutput mOutput;
  const NamedPlaces *mNames;
  CoverSource *mCover;
  UnknownCover mUnknownCover;
  double mMinutes = 0;
  int mCount = 0;
};

} // namespace brushline
