// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "planning/features_parameters.h"
#include "planning/separation_table.h"
#include "quantities/angle.h"

#include <memory>

namespace brushline {

//! What legs are checked against.
struct HazardSetting {
  FeaturesInput disturbances; //!< iron and current; Shape::name is the kind
  FeaturesInput hazards;      //!< cliffs, water, what else
  SeparationTable separation;
  Length margin;     //!< from hazards
  Angle slope_limit; //!< of the ground
};

namespace hazard_parameters {

//! DISTURBANCES, KIND_FIELD, DISTANCES, HAZARDS, FEATURE_NAME, MARGIN, SLOPE_LIMIT.
Definitions definitions();
void check(const ParameterReader &reader);
//! Disturbances of kinds that the table lacks are dropped, counted and told.
HazardSetting read(const ParameterReader &reader, QgsProcessingFeedback *feedback);

} // namespace hazard_parameters
} // namespace brushline
