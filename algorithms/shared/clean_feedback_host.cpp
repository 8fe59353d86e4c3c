// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/clean_feedback_host.h"

namespace brushline {

namespace {

// More than our own longest messages, with twenty names in them.
constexpr int longest = 10000, keptEnd = 1000;

// Source: Unicode, property Bidi_Control (from memory).
bool turnsDirection(QChar c) {
  const ushort code = c.unicode();
  return code == 0x061C || code == 0x200E || code == 0x200F || (code >= 0x202A && code <= 0x202E) ||
         (code >= 0x2066 && code <= 0x2069);
}

} // namespace

CleanFeedback::CleanFeedback(QgsProcessingFeedback *feedback) : QgsProcessingMultiStepFeedback(1, feedback) {
  if (feedback->isCanceled())
    cancel();
}

QString CleanFeedback::text(const QString &message) {
  QString kept = message;
  if (kept.size() > longest)
    kept = kept.left(longest - keptEnd) + QStringLiteral(" … ") + kept.right(keptEnd);
  QString clean;
  clean.reserve(kept.size());
  for (const QChar c : qAsConst(kept)) {
    if (turnsDirection(c))
      continue;
    const bool blank = c.category() == QChar::Other_Control || c.category() == QChar::Separator_Line ||
                       c.category() == QChar::Separator_Paragraph;
    clean += blank ? QLatin1Char(' ') : c;
  }
  return clean;
}

void CleanFeedback::setProgressText(const QString &message) {
  QgsProcessingMultiStepFeedback::setProgressText(text(message));
}
void CleanFeedback::reportError(const QString &error, bool fatalError) {
  QgsProcessingMultiStepFeedback::reportError(text(error), fatalError);
}
void CleanFeedback::pushWarning(const QString &warning) { QgsProcessingMultiStepFeedback::pushWarning(text(warning)); }
void CleanFeedback::pushInfo(const QString &info) { QgsProcessingMultiStepFeedback::pushInfo(text(info)); }
void CleanFeedback::pushDebugInfo(const QString &info) { QgsProcessingMultiStepFeedback::pushDebugInfo(text(info)); }

} // namespace brushline
