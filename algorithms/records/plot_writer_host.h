// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "legs/leg_layer_host.h"
#include "records/closure_words_host.h"
#include "shared/vector_output_host.h"

#include <memory>

namespace brushline {

/**
 * Writes plotted legs and how their routes close to OUTPUT and CLOSURE. The outputs are begun with the first route, so
 * that a run without any leaves nothing behind.
 */
class PlotWriter {
  Q_DECLARE_TR_FUNCTIONS(brushline::PlotWriter)

public:
  //! The references must stay.
  PlotWriter(const ParameterReader &reader, const AnnotateSettings &settings, const QDate &date,
             const TraverseEnds &ends, bool paced, QgsProcessingFeedback *feedback);

  //! OUTPUT, CLOSURE.
  static Definitions definitions();
  static QList<QgsProcessingOutputDefinition *> counts();

  void write(const RecordedRoute &route, const PlottedRoute &plotted);
  //! Ends the outputs. \returns the algorithm's results.
  QVariantMap finish();
  long routes() const { return mRoutes; }

private:
  void begin();
  QVariantList readValues(const RecordedLeg &leg, const PlottedRoute &plotted, size_t number) const;
  void writeClosure(const RecordedRoute &route, const PlottedRoute &plotted);

  const ParameterReader mReader;
  const AnnotateSettings &mSettings;
  const TraverseEnds &mEnds;
  bool mPaced;
  QgsProcessingFeedback *mFeedback;
  LegLayer mLayer;
  ClosureWords mWords;
  std::unique_ptr<VectorOutput> mLegs, mClosure;
  long mRoutes = 0, mRows = 0, mBeyond = 0;
};

} // namespace brushline
