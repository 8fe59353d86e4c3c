// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "shared/parameter_reader_host.h"
#include "shared/walker.h"

#include <vector>

namespace brushline::walker_parameters {

Definitions definitions();

//! PACE_KIND alone, for what was counted.
QgsProcessingParameterDefinition *kindDefinition();
PaceKind readKind(const ParameterReader &reader);

/**
 * The walkers of a run: one from the parameters, or one a row of the table WALKERS.
 *
 * \param bearingError of the compass group, for rows without one.
 * \param feedback may be null; told of rows passed over.
 */
std::vector<Walker> read(const ParameterReader &reader, Angle bearingError, QgsProcessingFeedback *feedback);

} // namespace brushline::walker_parameters
