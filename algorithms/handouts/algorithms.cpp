// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/algorithms.h"

#include <qgsprocessingalgorithm.h>

namespace brushline::handouts {

QList<QgsProcessingAlgorithm *> algorithms() { return {}; }

} // namespace brushline::handouts
