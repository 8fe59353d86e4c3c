// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "records/route_plotter_host.h"
#include "shared/compass.h"

#include <QCoreApplication>

namespace brushline {

//! Says in words how a route closes and where a blunder may sit.
class ClosureWords {
  Q_DECLARE_TR_FUNCTIONS(brushline::ClosureWords)

public:
  ClosureWords(const Compass &compass, bool paced) : mCompass(compass), mPaced(paced) {}

  //! For the table: what may be wrong; empty within what the errors allow.
  QString hint(const RecordedRoute &route, const PlottedRoute &plotted) const;
  //! For the warnings of the route's first leg; empty within what the errors allow.
  QString warning(const PlottedRoute &plotted, bool adjusted) const;
  //! For the log.
  QString summary(const RecordedRoute &route, const PlottedRoute &plotted) const;
  //! The leg that the likeliest slip is in.
  static std::optional<size_t> suspectLeg(const PlottedRoute &plotted);

private:
  QString slip(const RecordedRoute &route, const BlunderHint &hint) const;
  QString amount(const RecordedLeg &leg, double stretch) const;

  Compass mCompass;
  bool mPaced;
};

} // namespace brushline
