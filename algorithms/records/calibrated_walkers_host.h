// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "records/pace_tries_host.h"
#include "shared/vector_output_host.h"

#include <QCoreApplication>

#include <memory>

namespace brushline {

/**
 * Writes walkers as the parameter WALKERS takes them (OUTPUT) and, on request, each try (TRIES). Begun when the first
 * walker has a number; without one finish() throws and no file is left.
 */
class CalibratedWalkers {
  Q_DECLARE_TR_FUNCTIONS(brushline::CalibratedWalkers)

public:
  CalibratedWalkers(const ParameterReader &reader, PaceKind kind, QgsProcessingFeedback *feedback);

  //! OUTPUT, TRIES.
  static Definitions definitions();

  //! Writes a walker, or tells why there is no number for them.
  void write(const WalkerTries &walker, const PaceCalibration &calibration);

  //! Ends the outputs and tells the counts. \returns the algorithm's results.
  QVariantMap finish();

private:
  static QgsFields fields();
  static QgsFields tryFields();
  QString inWords(NoPaces none, const PaceCalibration &calibration) const;
  QString inWords(TryFlag flag) const;
  QString note(const PaceCalibration &calibration) const;
  QStringList flagWords(const PaceCalibration &calibration) const;
  QStringList slopeWords(const PaceCalibration &calibration) const;
  void writeTries(const WalkerTries &walker, const PaceCalibration &calibration);

  const ParameterReader mReader;
  PaceKind mKind;
  QgsProcessingFeedback *mFeedback;
  std::unique_ptr<VectorOutput> mOutput, mTries; // mTries null: not asked for
  long mWritten = 0, mUsed = 0, mLeftOut = 0, mFlagged = 0, mTold = 0;
  QString mFirst; // why a walker was left out
};

} // namespace brushline
