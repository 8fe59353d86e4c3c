// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "planning/detour.h"
#include "shared/parameter_reader_host.h"

#include <memory>

namespace brushline {

//! The obstacles of a run and how they are kept away from.
struct DetourInput {
  DetourRule rule;
  std::unique_ptr<Obstacles> obstacles; //!< never null
};

namespace detour_parameters {

//! OBSTACLES, OBSTACLE_NAME, CLEARANCE, MAX_DETOUR.
Definitions definitions();
//! Throws for values that are of no use; reads no features.
void check(const ParameterReader &reader);
//! Throws Cancelled.
DetourInput read(const ParameterReader &reader, QgsProcessingFeedback *feedback);

} // namespace detour_parameters
} // namespace brushline
