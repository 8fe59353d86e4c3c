// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "legs/annotate_legs.h"
#include "magnetics/date_and_field_parameters.h"
#include "planning/detour_parameters.h"
#include "shared/base_algorithm.h"

namespace brushline {

//! The wrapper of detourRoute(): routes and obstacles in, legs with right-angled detours out.
class DetourLegsAlgorithm final : public BaseAlgorithm {
  Q_DECLARE_TR_FUNCTIONS(brushline::DetourLegsAlgorithm)

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

private:
  void readSettings(const ParameterReader &reader, QgsProcessingFeedback *feedback);

  AnnotateSettings mSettings; // points into the members below
  DateAndField mDateAndField;
  std::unique_ptr<NamedPlaces> mNames;
};

} // namespace brushline
