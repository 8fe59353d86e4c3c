// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "shared/named_places.h"
#include "shared/parameter_reader_host.h"

#include <memory>

namespace brushline::named_places_parameters {

//! POINTS, POINT_NAME, SNAP.
Definitions definitions();
//! Throws for values that are of no use; reads no features.
void check(const ParameterReader &reader);
//! The named points, or null when no layer is given. Points without place or name are passed over and counted.
std::unique_ptr<NamedPlaces> read(const ParameterReader &reader, QgsProcessingFeedback *feedback);

} // namespace brushline::named_places_parameters
