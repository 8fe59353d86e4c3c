// SPDX-License-Identifier: GPL-2.0-or-later
#include "magnetics/algorithms.h"

#include <qgsprocessingalgorithm.h>

namespace brushline::magnetics {

QList<QgsProcessingAlgorithm *> algorithms() { return {}; }

} // namespace brushline::magnetics
