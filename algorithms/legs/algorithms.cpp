// SPDX-License-Identifier: GPL-2.0-or-later
#include "legs/algorithms.h"

#include "legs/annotate_legs_algorithm.h"

namespace brushline::legs {

QList<QgsProcessingAlgorithm *> algorithms() { return {new AnnotateLegsAlgorithm()}; }

} // namespace brushline::legs
