// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/place.h"
#include "shared/parameter_reader_host.h"

#include <functional>
#include <vector>

namespace brushline {

//! A start and its end.
struct PlacePair {
  QString name; //!< of the pair: its key, or "start to end" by their names, or its number
  Place start, end;
  double start_x; //!< in the system of the starts
};

/**
 * Starts and ends, paired by a field that both layers have or, without it, by their order.
 */
namespace pairs_parameters {

//! STARTS, ENDS, PAIR_FIELD.
Definitions definitions();
//! Throws for layers that are of no use; reads no features.
void check(const ParameterReader &reader);
//! \param skip told of every feature or pair that is passed over, and why. Throws Cancelled.
std::vector<PlacePair> read(const ParameterReader &reader, QgsProcessingFeedback *feedback,
                            const std::function<void(const QString &message)> &skip);

} // namespace pairs_parameters
} // namespace brushline
