// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "records/course_matching.h"
#include "records/walk_errors.h"

#include <QCoreApplication>
#include <QString>

namespace brushline {

//! What walked legs, tracks and groups have to be told in words.
class WalkWords {
  Q_DECLARE_TR_FUNCTIONS(brushline::WalkWords)

public:
  //! Why numbers of a leg are missing, or what to think of them; empty: nothing to say.
  static QString remark(const WalkedLeg &leg, TrackTimes times);
  //! The group's errors with what may lie behind them, in sentences.
  static QString hint(const GroupErrors &group);
  //! The group's errors in numbers.
  static QString numbers(const GroupErrors &group);
  //! Why a track belongs to no route.
  static QString reason(const TrackMatch &match, double tolerance_m);
  //! What was found in a track when it was cleaned; empty: nothing.
  static QString cleaned(const CleanTrack &track);

private:
  static QString inWords(const Explanation &explanation);
};

} // namespace brushline
