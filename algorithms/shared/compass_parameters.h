// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "shared/compass.h"
#include "shared/parameter_reader_host.h"

namespace brushline::compass_parameters {

Definitions definitions();
Compass read(const ParameterReader &reader);

} // namespace brushline::compass_parameters
