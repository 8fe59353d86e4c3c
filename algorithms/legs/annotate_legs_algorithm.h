// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "legs/annotate_legs.h"
#include "legs/leg_advice_host.h"
#include "magnetics/date_and_field_parameters.h"
#include "shared/base_algorithm.h"
#include "sighting/cover_parameters.h"

namespace brushline {

//! The wrapper of LegAnnotator: routes in, annotated legs out.
class AnnotateLegsAlgorithm final : public BaseAlgorithm {
  Q_DECLARE_TR_FUNCTIONS(brushline::AnnotateLegsAlgorithm)

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

  AnnotateSettings mSettings; // points into the members below
  DateAndField mDateAndField;
  std::optional<RasterInput> mTerrain;
  CoverSetting mCover;
  LegAdvice mAdvice;
  std::unique_ptr<NamedPlaces> mNames;
  std::vector<std::unique_ptr<LegAnnotator>> mAnnotators; // one a thread
};

} // namespace brushline
