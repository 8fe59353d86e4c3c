// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "shared/compatibility_host.h"
#include "shared/geodesic.h"
#include "shared/grid_parameters.h"
#include "shared/parameter_reader_host.h"
#include "shared/route.h"
#include "shared/source_features_host.h"

#include <QHash>
#include <qgscoordinatetransform.h>

#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

class QgsLineString;

namespace brushline {

//! A planned route as it was read, with its own coordinates beside those the core works with.
struct RouteInput {
  QString name;      //!< from ROUTE_FIELD, else its number in the input, from 1
  QString where;     //!< "layer “…”, feature …", for messages
  int first_leg = 1; //!< the number of its first leg; an annotated leg keeps its own
  bool back = false; //!< an annotated leg of the way back
  Route route;
  std::vector<double> x, y, z, m; //!< in the input's system, by RouteVertex::source; z, m empty where it has none

  //! "out" or "back", as annotated legs tell it.
  QString direction() const;
  //! The straight line between two vertices, in the input's system and dimensions.
  QgsLineString *line(size_t from, size_t to) const;
};

//! A leg of a route, as planned: from one vertex to the next that is not the same place.
struct LegInput {
  const RouteInput &route;
  int number;
  const Place &from, &to;
  GeodesicLeg line; //!< between them
  double start_x;   //!< as the input has it
};

namespace routes_parameters {

//! INPUT, ROUTE_FIELD, ORDER_FIELD.
Definitions definitions();
//! GRID_CRS.
Definitions gridDefinitions();
//! Throws for values that are of no use; reads no features.
void check(const ParameterReader &reader);

/**
 * What orders points or rows: a number (also as text, with a point in every locale: 10 comes after 9), a day or a time.
 *
 * \returns none for anything else, nor for NULL.
 */
std::optional<double> orderOf(const QVariant &value);

} // namespace routes_parameters

/**
 * Reads the routes of INPUT one by one: a line feature each (nothing kept of those before), or points gathered by
 * ROUTE_FIELD and put in order by ORDER_FIELD (all kept). Annotated legs (lines with the fields route, leg, walker and
 * direction) keep their route's name, their number and their direction: those that follow one another in the layer are
 * one route again, in parts where they do not meet; a leg that does not follow the one before begins another, and is
 * told. Of rows that are one line for several walkers the first is taken;
 * for that a few bytes are kept of each. Sightings and gaps of chosen marks have these fields too, but are no legs.
 *
 * Routes that nobody could walk (no geometry, coordinates that are no numbers or cannot be transformed) are passed
 * over, counted, and told to the feedback; the first twenty each with its reason.
 */
class RouteSource {
  Q_DECLARE_TR_FUNCTIONS(brushline::RouteSource)

public:
  RouteSource(const ParameterReader &reader, QgsProcessingFeedback *feedback);
  ~RouteSource();

  //! Reads the next route; false at the end. Throws Cancelled, and QgsProcessingException for points without order.
  bool next(RouteInput &route);

  //! Takes the legs of all routes one by one, tells the progress, and ends with finish(). Throws as next() does.
  void eachLeg(const std::function<void(const LegInput &)> &take);
  //! Counts a route as passed over.
  void skip(const QString &where, const QString &reason);
  //! Tells how many were passed over; throws when that leaves none of several.
  void finish(long used);

  QgsCoordinateReferenceSystem crs() const;
  //! Line strings of the input's dimensions.
  host::WkbType legType() const;
  //! The share of the input read, 0 to 1.
  double fraction() const;

private:
  struct Gathered;
  bool nextLine(RouteInput &route);
  bool nextGathered(RouteInput &route);
  void gatherPoints();
  //! Fills route.route from parts of counts vertices in x, y; false when it was passed over.
  bool place(RouteInput &route, const std::vector<size_t> &partSizes);
  QString where(qint64 feature) const;
  QString nameOf(const QgsFeature &feature) const;
  //! A line feature as it is read, its place on the Earth not known yet.
  struct Line {
    RouteInput route;
    std::vector<size_t> parts; // their vertices
    //! The annotated leg after this one, or after the last of those it was joined of.
    bool goesOnWith(const Line &next) const;
    void join(const Line &next);
    int lastLeg() const { return route.first_leg + int(route.x.size() - parts.size()) - 1; }
  };
  void seeOrder(const Line &line, const Line &next);
  //! The next feature that has a line; those without are passed over.
  std::optional<Line> nextFeature();
  //! Takes name and number from an annotated leg; false when its line has come before, for another walker.
  bool takeAnnotated(const QgsFeature &feature, RouteInput &route);

  struct Grid {
    std::string definition; // for the core
    QgsCoordinateTransform from_places;
  };
  const Grid &standardGridOf(double longitude, double latitude);

  QgsProcessingFeedback *mFeedback;
  std::unique_ptr<QgsProcessingFeatureSource> mSource;
  QgsCoordinateTransformContext mTransforms;
  QgsCoordinateTransform mToPlaces;
  std::unique_ptr<Grid> mGrid; // null: the UTM zone of each route's first point
  QgsCoordinateTransform mToGrid;
  std::map<std::string, Grid> mStandardGrids;
  int mRouteField = -1, mOrderField = -1;
  SourceFeatures mFeatures;
  long mRead = 0, mNumber = 0, mSkipped = 0, mExpected = 0, mLeaps = 0;
  QString mFirstReason, mFirstLeap;
  std::unique_ptr<grid_parameters::AreaOfUse> mArea; // of the input's system
  std::unique_ptr<grid_parameters::GridWatch> mGridWatch;
  bool mToldOutside = false;
  std::unique_ptr<Gathered> mGathered;
  bool mAnnotated = false;
  QHash<QString, QString> mWalkers; // whose row of an annotated leg and its line came first
  std::optional<Line> mAhead;       // the annotated leg after those that were joined
};

} // namespace brushline
