// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "shared/parameter_reader_host.h"

#include <qgsdatasourceuri.h>

#include <QSet>
#include <QString>

#include <optional>

namespace brushline {

//! The one path of a file, whether or not it is there yet; empty for an empty one.
QString onePath(const QString &path);

//! The files that the inputs' layers are read from, each as onePath() has it. Main thread.
QSet<QString> inputFiles(const ParameterReader &reader);

//! A table of a database that stays, as an output.
struct TableTarget {
  QString provider; //!< the host's key
  QgsDataSourceUri uri;
};

//! What the host takes a destination such as ogr:dbname='a.gpkg' table="legs" for; none for a plain file.
std::optional<TableTarget> tableTarget(const QString &destination);

//! Throws QgsProcessingException when an output would be written over the file or table of an input or of another
//! output. Main thread.
void refuseInputFile(const ParameterReader &reader, const QString &key);

} // namespace brushline
