// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "magnetics/date_and_field_parameters.h"
#include "planning/aim_off_parameters.h"
#include "shared/base_algorithm.h"
#include "sighting/cover_parameters.h"

namespace brushline {

//! The wrapper of AimPlanner: starts and lines in, legs that aim off out.
class AimOffAlgorithm final : public BaseAlgorithm {
  Q_DECLARE_TR_FUNCTIONS(brushline::AimOffAlgorithm)

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
  //! What is read from features, and what is made of it.
  void readRest(const ParameterReader &reader, QgsProcessingFeedback *feedback);

  AimInput mInput;
  AnnotateSettings mSettings; // points into the members below
  DateAndField mDateAndField;
  std::optional<RasterInput> mTerrain;
  CoverSetting mCover;
  std::vector<std::unique_ptr<AimPlanner>> mPlanners; // one a thread
};

} // namespace brushline
