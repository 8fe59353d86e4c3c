// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "shared/parameter_reader_host.h"
#include "shared/shapes.h"

#include <QStringList>

namespace brushline {

//! Features of several layers.
struct FeaturesInput {
  std::vector<Shape> shapes; //!< Shape::source counts the layers
  QStringList layers;        //!< their names
};

namespace features_parameters {

//! \param key of a parameter that takes several vector layers.
Definitions definitions(const QString &key, const QString &label, const QString &help, bool optional);
//! FEATURE_NAME.
Definitions nameDefinitions();
//! Throws when layers cannot be read or have no coordinate system. Main thread.
void check(const ParameterReader &reader, const QString &key);
//! \param nameField the field with names, taken from each layer that has it. Throws Cancelled.
FeaturesInput read(const ParameterReader &reader, const QString &key, const QString &nameField,
                   QgsProcessingFeedback *feedback);
QString nameField(const ParameterReader &reader);

} // namespace features_parameters
} // namespace brushline
