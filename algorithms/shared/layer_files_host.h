// SPDX-License-Identifier: GPL-2.0-or-later
// The files of output layers, beneath the host's writers. A destination is what those return: the file's path, and
// "|layername=" with the layer's name where the file has several.
#pragma once

#include "shared/compatibility_host.h"

#include <QString>
#include <QStringList>

#include <optional>

class QgsFeedback;

namespace brushline {

//! Removes a file that was begun, with the side files of its format.
void removeLayerFiles(const QString &destination);

//! How many features a file holds, where the format is one that gives back what was put in; 0: it cannot be read to its
//! end.
std::optional<long> featuresIn(const QString &destination);

/**
 * Whether a layer is written without its spatial index, which makeIndex() makes afterwards: GDAL makes it while it
 * closes the file, even one that is thrown away, in which time (some 10 microseconds a feature) nobody can cancel.
 * False where there is none to leave out: other formats, tables without geometry, layers put into a file that is there.
 *
 * \param given as the user gave the destination.
 */
bool isIndexLeftOut(const QString &given, host::WkbType type);

/**
 * What the host's writer is to be told about a layer, where its defaults do not serve: that no index is to be made, and
 * that the coordinate system of a .sqlite is to be kept. Empty: the defaults do.
 *
 * \param given as the user gave the destination.
 */
QStringList layerOptions(const QString &given, host::WkbType type);

/**
 * Makes the spatial index of a layer that was written without.
 *
 * \param feedback may be null. \returns what went wrong; empty: nothing. Throws Cancelled some milliseconds after a
 * cancel; the file is to be thrown away then, since newer GDAL may leave an index without all features.
 */
QString makeIndex(const QString &destination, const QgsFeedback *feedback);

} // namespace brushline
