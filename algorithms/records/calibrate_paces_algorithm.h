// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "shared/base_algorithm.h"

#include <QCoreApplication>

namespace brushline {

//! The wrapper of calibratePaces(): counts over known distances in, a table of walkers out.
class CalibratePacesAlgorithm final : public BaseAlgorithm {
  Q_DECLARE_TR_FUNCTIONS(brushline::CalibratePacesAlgorithm)

public:
  QString name() const override;
  QString displayName() const override;
  QString group() const override;
  QString groupId() const override;
  QStringList tags() const override;
  QString shortDescription() const override;
  QgsProcessingAlgorithm *createInstance() const override;
  void initAlgorithm(const QVariantMap &configuration) override;

protected:
  void check(const ParameterReader &reader) const override;
  void prepare(const ParameterReader &reader, QgsProcessingFeedback *feedback) override;
  QVariantMap run(const ParameterReader &reader, QgsProcessingFeedback *feedback) override;
};

} // namespace brushline
