// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "legs/leg_layer_host.h"
#include "planning/detour.h"
#include "shared/place_reader_host.h"
#include "shared/routes_parameters.h"
#include "shared/vector_output_host.h"

#include <QCoreApplication>
#include <qgscoordinatetransform.h>

#include <map>
#include <memory>
#include <string>
#include <vector>

namespace brushline {

/**
 * Annotates the pieces of legs with detours and writes them to OUTPUT: the table of annotated legs, a row for each
 * piece and walker, with what a detour adds. Begun with the first route.
 */
class DetourWriter {
  Q_DECLARE_TR_FUNCTIONS(brushline::DetourWriter)

public:
  //! \param settings of the annotation; Direction::Out. \param obstacles whose names are told; borrowed.
  DetourWriter(const ParameterReader &reader, const AnnotateSettings &settings, const QDate &date,
               const Obstacles &obstacles, const DetourRule &rule, const QgsCoordinateReferenceSystem &crs,
               QgsProcessingFeedback *feedback);

  //! OUTPUT.
  static Definitions definitions();

  //! \param legs at least one.
  void write(const RouteInput &route, const std::vector<RouteLeg> &legs);

  //! Ends the output and tells the counts. \returns the algorithm's results.
  QVariantMap finish();

private:
  //! Whether a leg's ends are turning points.
  struct Ends {
    bool leg_before, leg_after;
  };
  void begin();
  Route routeOf(const RouteInput &route, const std::vector<RouteLeg> &legs);
  GridPoint gridPoint(const std::string &grid, const Place &place);
  void turnDials(const DetouredLeg &way, AnnotatedLeg *annotated) const;
  void countPaces(const DetouredLeg &way, AnnotatedLeg *annotated) const;
  void writeLeg(const RouteInput &route, const RouteLeg &leg, const Ends &ends, const AnnotatedLeg *annotated);
  QString named(const std::vector<size_t> &obstacles) const;
  QString inWords(const NotPassed &what, const Ends &ends) const;
  QString inWords(Refusal refusal) const;

  const ParameterReader mReader;
  AnnotateSettings mSettings;
  LegAnnotator mAnnotator;
  LegLayer mLayer;
  const Obstacles &mObstacles;
  DetourRule mRule;
  QgsCoordinateReferenceSystem mCrs;
  FromPlaces mFromPlaces;
  QgsProcessingFeedback *mFeedback;
  std::map<std::string, QgsCoordinateTransform> mToGrids;
  std::unique_ptr<VectorOutput> mOutput;
  long mLegs = 0, mDetours = 0, mNotPassed = 0;
};

} // namespace brushline
