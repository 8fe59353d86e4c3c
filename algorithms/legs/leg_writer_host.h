// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "legs/leg_advice_host.h"
#include "legs/leg_layer_host.h"
#include "shared/place_reader_host.h"
#include "shared/routes_parameters.h"
#include "shared/vector_output_host.h"

#include <memory>

namespace brushline {

/**
 * Writes annotated legs, and where asked for their marks and drift, to an algorithm's outputs OUTPUT, MARKS and DRIFT.
 * The outputs are begun with the first route, so that a run without any leaves nothing behind.
 */
class LegWriter {
  Q_DECLARE_TR_FUNCTIONS(brushline::LegWriter)

public:
  LegWriter(const ParameterReader &reader, LegLayer layer, LegAdvice advice, host::WkbType legType,
            const QgsCoordinateReferenceSystem &crs, size_t walkers);

  //! OUTPUT, MARKS, DRIFT.
  static Definitions definitions();
  static bool wantsMarks(const ParameterReader &reader);

  //! Writes the legs of a route. Throws Cancelled, and QgsProcessingException for what cannot be written.
  void write(const RouteInput &route, std::vector<AnnotatedLeg> legs, const QgsFeedback *feedback);

  //! Ends the outputs. \returns the algorithm's results, with ROUTE_COUNT and LEG_COUNT.
  QVariantMap finish(QgsProcessingFeedback *feedback);

  long routes() const { return mRoutes; }

private:
  void begin();
  //! \param start_x of the leg, as the input has it.
  void writeMarks(const QVariant &route, const AnnotatedLeg &leg, double start_x, size_t walker, long pacesBefore);
  void writeDrift(const QVariant &route, const AnnotatedLeg &leg, double start_x, size_t walker);
  FromPlaces mFromPlaces;

  const ParameterReader mReader;
  LegLayer mLayer;
  LegAdvice mAdvice;
  host::WkbType mLegType;
  QgsCoordinateReferenceSystem mCrs;
  size_t mWalkers;
  std::unique_ptr<VectorOutput> mLegs, mMarks, mDrift;
  long mRoutes = 0, mRows = 0, mOverlapping = 0, mWithoutHeights = 0;
};

} // namespace brushline
