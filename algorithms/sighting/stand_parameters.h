// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "shared/parameter_reader_host.h"
#include "sighting/cover_map.h"

#include <memory>
#include <vector>

namespace brushline {

//! Forest stands as a map; the class of a patch is the index of its extinction.
struct StandMap {
  std::shared_ptr<const CoverMap> map;
  std::vector<double> extinctions; //!< 1/m
};

namespace stand_parameters {

//! STEMS_FIELD, DIAMETER_FIELD, UNDERSTOREY_FIELD of the layer COVER.
Definitions definitions();
bool given(const ParameterReader &reader);
void check(const ParameterReader &reader);
StandMap read(const ParameterReader &reader, QgsProcessingFeedback *feedback);

} // namespace stand_parameters
} // namespace brushline
