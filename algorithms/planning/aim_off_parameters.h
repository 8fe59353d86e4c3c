// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "planning/aim_off.h"
#include "shared/parameter_reader_host.h"

#include <QHash>
#include <QSet>

namespace brushline {

//! What aiming off reads once for a run.
struct AimInput {
  AimRule rule;
  std::unique_ptr<LineNet> lines;
  std::unique_ptr<AimDestinations> destinations; //!< null: none are given
  QHash<QString, std::vector<size_t>> by_name;   //!< destinations
  QSet<QString> beside;                          //!< names of destinations that lie on no line
  std::unique_ptr<Shapes> catching;              //!< null: none are given
};

namespace aim_off_parameters {

//! STARTS to CATCH_NAME.
Definitions definitions();
//! REACH and what is seldom needed.
Definitions rareDefinitions();
//! Throws for values that are of no use; reads no features.
void check(const ParameterReader &reader);
//! Reads lines, destinations and what catches. Throws Cancelled.
AimInput read(const ParameterReader &reader, QgsProcessingFeedback *feedback);

//! The index of the field that names a layer's features: the one asked for, else "name" where there is one, else -1.
int nameField(const ParameterReader &reader, const QString &key, const QgsProcessingFeatureSource &source);

} // namespace aim_off_parameters
} // namespace brushline
