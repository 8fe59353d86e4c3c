// SPDX-License-Identifier: GPL-2.0-or-later
#include "magnetics/algorithms.h"

#include "magnetics/field_at_points_algorithm.h"
#include "magnetics/north_lines_algorithm.h"

namespace brushline::magnetics {

QList<QgsProcessingAlgorithm *> algorithms() { return {new FieldAtPointsAlgorithm(), new NorthLinesAlgorithm()}; }

} // namespace brushline::magnetics
