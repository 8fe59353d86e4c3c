// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/algorithms.h"

#include "handouts/export_gpx_algorithm.h"
#include "handouts/leg_cards_algorithm.h"
#include "handouts/leg_tables_algorithm.h"

namespace brushline::handouts {

QList<QgsProcessingAlgorithm *> algorithms() {
  return {new LegTablesAlgorithm(), new LegCardsAlgorithm(), new ExportGpxAlgorithm()};
}

} // namespace brushline::handouts
