// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QString>
#include <qgsvectorlayer.h>

namespace brushline::test {

//! Whether a layer file has a spatial index, by the host's own judgement.
inline bool hasSpatialIndex(const QString &path) {
  const QgsVectorLayer layer(path, QStringLiteral("indexed"), QStringLiteral("ogr"));
  return static_cast<int>(layer.hasSpatialIndex()) == 2; // present; its name differs by the host's version
}

} // namespace brushline::test
