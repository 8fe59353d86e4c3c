// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "magnetics/field_setting.h"
#include "shared/compass.h"

#include <optional>

namespace brushline {

/**
 * The number to set on a compass for a bearing, by the north the compass is set for.
 *
 * \param bearing, grid the same direction from true and from grid north. \param field where the compass is read.
 * \returns none where no compass works.
 */
std::optional<double> dialSetting(const Compass &compass, TrueBearing bearing, GridBearing grid,
                                  const LocalField &field);

} // namespace brushline
