// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/algorithms.h"

#include "planning/aim_off_algorithm.h"
#include "planning/check_hazards_algorithm.h"
#include "planning/detour_legs_algorithm.h"
#include "planning/features_met_algorithm.h"
#include "planning/practice_course_algorithm.h"
#include "planning/through_cover_algorithm.h"

namespace brushline::planning {

QList<QgsProcessingAlgorithm *> algorithms() {
  return {new ThroughCoverAlgorithm(), new AimOffAlgorithm(), new DetourLegsAlgorithm(), new FeaturesMetAlgorithm(),
          new CheckHazardsAlgorithm(), new PracticeCourseAlgorithm()};
}

} // namespace brushline::planning
