// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/algorithms.h"

#include <qgsprocessingalgorithm.h>

namespace brushline::planning {

QList<QgsProcessingAlgorithm *> algorithms() { return {}; }

} // namespace brushline::planning
