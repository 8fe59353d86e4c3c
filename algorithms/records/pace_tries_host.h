// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "records/pace_calibration.h"
#include "shared/parameter_reader_host.h"

#include <QStringList>

#include <vector>

namespace brushline {

//! One walker's tries, in the table's order.
struct WalkerTries {
  QString name;
  QStringList spellings; //!< other ones of the same name
  std::vector<PaceTry> tries;
  std::vector<qint64> features; //!< of each try
};

namespace pace_tries {

//! INPUT, WALKER_FIELD, DISTANCE_FIELD, COUNT_FIELD, SLOPE_FIELD.
Definitions definitions();
//! Throws for values that are of no use; reads no features.
void check(const ParameterReader &reader);

/**
 * The tries by walker, in the order in which walkers are first met. Names that differ in blanks, or in small and
 * capital letters, are one walker's.
 *
 * Rows that tell no try are passed over, counted and told; the first twenty each with its reason. Throws when none is
 * left, and Cancelled.
 */
std::vector<WalkerTries> read(const ParameterReader &reader, QgsProcessingFeedback *feedback);

} // namespace pace_tries
} // namespace brushline
