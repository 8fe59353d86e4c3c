// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/progress.h"

#include <qgsfeedback.h>

namespace brushline {

//! Lets the core hear the host's cancel button.
class FeedbackProgress final : public Progress {
public:
  explicit FeedbackProgress(const QgsFeedback *feedback) : mFeedback(feedback) {}
  bool cancelled() const override { return mFeedback && mFeedback->isCanceled(); }

private:
  const QgsFeedback *mFeedback;
};

} // namespace brushline
