// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/length.h"
#include "quantities/place.h"
#include "shared/parameter_reader_host.h"

#include <vector>

namespace brushline {

//! The candidates for marks of a run.
struct CandidateInput {
  std::vector<Place> places;
  std::vector<QString> names; //!< empty where a candidate has none
  Length offset;              //!< MAX_OFFSET
};

namespace candidates_parameters {

//! CANDIDATES, MARK_NAME, MAX_OFFSET.
Definitions definitions();
void check(const ParameterReader &reader);
CandidateInput read(const ParameterReader &reader, QgsProcessingFeedback *feedback);

} // namespace candidates_parameters
} // namespace brushline
