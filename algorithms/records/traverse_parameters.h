// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/place.h"
#include "shared/parameter_reader_host.h"

#include <QHash>
#include <qgscoordinatereferencesystem.h>

#include <optional>

namespace brushline {

//! What a route should end at. The numbers are those of the parameter CLOSE.
enum class CloseOn { Nothing = 0, Start = 1, End = 2 };

//! Where routes start and end.
struct TraverseEnds {
  CloseOn close = CloseOn::Nothing;
  bool adjust = false;
  QgsCoordinateReferenceSystem crs;    //!< of the starts
  std::optional<Place> start, end;     //!< of all routes
  QHash<QString, QList<Place>> starts; //!< by route, where there is no start of all

  //! Where a route starts; none, with the reason, when that is not known.
  std::optional<Place> startOf(const QString &route, QString &reason) const;
  //! Where a route that starts there should end; none for an open one.
  std::optional<Place> targetOf(const Place &start) const;
};

namespace traverse_parameters {

//! START, STARTS, START_NAME, END, CLOSE, ADJUST.
Definitions definitions();
//! Throws for values that are of no use; reads no features.
void check(const ParameterReader &reader);
//! Throws Cancelled.
TraverseEnds read(const ParameterReader &reader, QgsProcessingFeedback *feedback);

} // namespace traverse_parameters
} // namespace brushline
