// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "planning/practice_courses.h"
#include "shared/parameter_reader_host.h"

#include <qgscoordinatereferencesystem.h>

namespace brushline {

//! What practice courses are laid out from, read once for a run.
struct PracticeInput {
  PracticeSetting setting;
  std::vector<Shape> area, avoid;
  Length clearance;
  Angle slope_limit;
  QgsCoordinateReferenceSystem crs; //!< of the area; that of the outputs too
  double middle_x = 0;              //!< of the area, as its layer has it
  QString area_name;                //!< of the layer
};

namespace practice_course_parameters {

//! AREA to SEED.
Definitions definitions();
//! CLEARANCE and SLOPE_LIMIT.
Definitions rareDefinitions();
//! Throws for values that are of no use; reads no features.
void check(const ParameterReader &reader);
//! Throws Cancelled.
PracticeInput read(const ParameterReader &reader, QgsProcessingFeedback *feedback);

} // namespace practice_course_parameters
} // namespace brushline
