// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "legs/annotate_legs.h"
#include "records/blunders.h"
#include "records/plot_legs.h"
#include "records/records_parameters.h"
#include "records/traverse_parameters.h"
#include "shared/place_reader_host.h"

#include <QCoreApplication>
#include <qgscoordinatetransformcontext.h>

#include <map>

namespace brushline {

//! A route from the records, laid on the ground.
struct PlottedRoute {
  PlottedLegs read;                    //!< as the records say
  std::optional<PlacedClosure> closed; //!< none for an open route
  Suspicion suspicion;                 //!< of a closed one
  std::vector<AnnotatedLeg> legs;      //!< as they are drawn, adjusted where that was asked for
  QgsPolylineXY points;                //!< their ends, in the starts' system
  QString refusal;                     //!< not empty: why the route cannot be plotted
};

/**
 * Plots routes: lays their legs, closes and adjusts them, looks for blunders, annotates what is drawn. One thread.
 */
class RoutePlotter {
  Q_DECLARE_TR_FUNCTIONS(brushline::RoutePlotter)

public:
  //! \param grid a projected system, or an invalid one: the UTM zone of each start. The references must stay.
  RoutePlotter(const AnnotateSettings &settings, const TraverseEnds &ends, const QgsCoordinateReferenceSystem &grid,
               const QgsCoordinateTransformContext &transforms);

  //! Throws Cancelled.
  PlottedRoute plot(const RecordedRoute &route, bool paced, const Progress &progress);

private:
  //! A grid, and the way from places to its coordinates.
  struct Grid {
    GridNorth north;
    Project project;
  };
  Grid &gridOf(const std::string &definition);
  Suspicion suspicionOf(const RecordedRoute &route, bool paced, const PlottedRoute &plotted, const Grid &grid,
                        const Progress &progress) const;
  LegErrors errorsOf(const RecordedLeg &leg, const Place &start) const;

  const AnnotateSettings &mSettings;
  const TraverseEnds &mEnds;
  std::string mGrid; // empty: the UTM zone of each start
  QgsCoordinateTransformContext mTransforms;
  FromPlaces mFromPlaces; // into the starts' system
  LegAnnotator mAnnotator;
  std::map<std::string, Grid> mGrids;
};

} // namespace brushline
