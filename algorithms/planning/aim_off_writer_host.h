// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "legs/leg_layer_host.h"
#include "planning/aim_starts_host.h"
#include "shared/place_reader_host.h"
#include "shared/vector_output_host.h"

namespace brushline {

//! Writes aimed legs to OUTPUT: annotated legs with further fields. Begun with the first one.
class AimOffWriter {
  Q_DECLARE_TR_FUNCTIONS(brushline::AimOffWriter)

public:
  //! \param layers one a walker. \param input borrowed.
  AimOffWriter(const ParameterReader &reader, std::vector<LegLayer> layers, const AimInput &input,
               const QgsCoordinateReferenceSystem &crs);

  //! OUTPUT.
  static Definitions definitions();
  static QgsFields fields();

  void write(const AimStartInput &start, const AimPlan &plan);
  //! Ends the output. \returns the algorithm's results.
  QVariantMap finish(long skipped, QgsProcessingFeedback *feedback);
  long starts() const { return mStarts; }

private:
  void begin();
  QString inWords(const AimWarning &warning, const AimedLeg &aimed) const;
  QgsGeometry lineOf(const AimStartInput &start, const AimedLeg &aimed) const;

  const ParameterReader mReader;
  std::vector<LegLayer> mLayers;
  const AimInput &mInput;
  QgsCoordinateReferenceSystem mCrs;
  FromPlaces mFromPlaces;
  std::unique_ptr<VectorOutput> mOutput;
  long mStarts = 0, mRows = 0, mUnsure = 0;
};

} // namespace brushline
