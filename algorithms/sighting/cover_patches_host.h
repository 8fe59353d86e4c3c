// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "shared/parameter_reader_host.h"
#include "sighting/cover_map.h"

#include <functional>
#include <vector>

namespace brushline {

/**
 * Reads polygons as patches of cover, in the layer's order.
 *
 * \param key of the layer's parameter, for messages. \param fields that coverOf looks at.
 * \param coverOf the class of a feature; negative ones are left out.
 *
 * Features without a usable geometry are passed over and told; polygons that cross themselves are kept by the even-odd
 * rule and told.
 */
std::vector<CoverPatch> readPatches(const QString &key, const QgsProcessingFeatureSource &source,
                                    const QgsAttributeList &fields,
                                    const std::function<int(const QgsFeature &)> &coverOf,
                                    QgsProcessingFeedback *feedback);

} // namespace brushline
