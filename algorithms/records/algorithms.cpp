// SPDX-License-Identifier: GPL-2.0-or-later
#include "records/algorithms.h"

#include <qgsprocessingalgorithm.h>

namespace brushline::records {

QList<QgsProcessingAlgorithm *> algorithms() { return {}; }

} // namespace brushline::records
