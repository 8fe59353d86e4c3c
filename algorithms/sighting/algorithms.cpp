// SPDX-License-Identifier: GPL-2.0-or-later
#include "sighting/algorithms.h"

#include "sighting/choose_marks_algorithm.h"
#include "sighting/sight_surface_algorithm.h"

namespace brushline::sighting {

QList<QgsProcessingAlgorithm *> algorithms() { return {new SightSurfaceAlgorithm(), new ChooseMarksAlgorithm()}; }

} // namespace brushline::sighting
