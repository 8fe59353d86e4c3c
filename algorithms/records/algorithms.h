// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QList>

class QgsProcessingAlgorithm;

namespace brushline::records {

//! New instances of this subject's algorithms, for the provider to own.
QList<QgsProcessingAlgorithm *> algorithms();

} // namespace brushline::records
