// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <qgsprocessingfeedback.h>

namespace brushline {

/**
 * Hands messages on to the host's log without what a name in them could do there: colour or clear a terminal, turn the
 * direction of what comes after it, begin a line that looks like the host's own, or bury the rest. Progress goes
 * through as it is, and cancelling in both directions. Lives within one phase of a run, on its thread.
 */
class CleanFeedback final : public QgsProcessingMultiStepFeedback {
public:
  explicit CleanFeedback(QgsProcessingFeedback *feedback);

  //! A message with blanks for its control signs and ends of lines, without signs that turn the direction; where it is
  //! very long, its middle is left out, since what to do stands at the end.
  static QString text(const QString &message);

  void setProgressText(const QString &message) override;
  void reportError(const QString &error, bool fatalError) override;
  void pushWarning(const QString &warning) override;
  void pushInfo(const QString &info) override;
  void pushDebugInfo(const QString &info) override;
};

} // namespace brushline
