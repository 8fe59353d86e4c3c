// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "shared/parameter_reader_host.h"

#include <QSet>
#include <QString>

namespace brushline {

//! The one path of a file, whether or not it is there yet; empty for an empty one.
QString onePath(const QString &path);

//! The files that the inputs' layers are read from, each as onePath() has it. Main thread.
QSet<QString> inputFiles(const ParameterReader &reader);

//! Throws QgsProcessingException when an output would be written over the file of an input or of another output. Main
//! thread.
void refuseInputFile(const ParameterReader &reader, const QString &key);

} // namespace brushline
