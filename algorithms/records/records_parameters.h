// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "records/bearing_text.h"
#include "shared/parameter_reader_host.h"
#include "shared/walker.h"

#include <QString>

#include <vector>

namespace brushline {

//! A leg as a row of the table has it.
struct RecordedLeg {
  double order = 0;
  long row = 0; //!< of the table, from 1
  QString text; //!< the bearing, as it stands there
  WrittenBearing bearing;
  double amount = 0; //!< paces of the walker's kind, or metres
  Length length;
  int walker = -1; //!< who counted, among the run's; -1: nobody says
};

//! A route's rows, in order.
struct RecordedRoute {
  QString name;
  std::vector<RecordedLeg> legs;
  QString fault; //!< not empty: why the route cannot be plotted
};

//! The table of bearings and paces.
struct FieldRecords {
  std::vector<RecordedRoute> routes; //!< in the order in which they are first met
  bool paced = true;                 //!< counted in paces, not measured in metres
};

namespace records_parameters {

//! INPUT, ROUTE_FIELD, ORDER_FIELD, BEARING_FIELD, PACES_FIELD, DISTANCE_FIELD, WALKER_FIELD.
Definitions definitions();
//! Throws for values that are of no use; reads no rows.
void check(const ParameterReader &reader, const std::vector<Walker> &walkers);

/**
 * Reads the table. A row that cannot be read makes its whole route useless, since a leg left out would lead elsewhere;
 * empty rows are passed over and told.
 *
 * \param unit of the dial, for bearings without one.
 * \throws QgsProcessingException for a row that names no route; Cancelled.
 */
FieldRecords read(const ParameterReader &reader, const std::vector<Walker> &walkers, DialUnit unit,
                  QgsProcessingFeedback *feedback);

} // namespace records_parameters
} // namespace brushline
