// SPDX-License-Identifier: GPL-2.0-or-later
#include "records/algorithms.h"

#include "records/calibrate_paces_algorithm.h"
#include "records/compare_track_algorithm.h"
#include "records/plot_legs_algorithm.h"

namespace brushline::records {

QList<QgsProcessingAlgorithm *> algorithms() {
  return {new PlotLegsAlgorithm(), new CalibratePacesAlgorithm(), new CompareTrackAlgorithm()};
}

} // namespace brushline::records
