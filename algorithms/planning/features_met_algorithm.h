// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "planning/features_met.h"
#include "planning/features_parameters.h"
#include "shared/base_algorithm.h"
#include "shared/vector_output_host.h"
#include "shared/walker.h"
#include "sighting/cover_parameters.h"

namespace brushline {

//! The wrapper of featuresMet(): routes and features in, what is met along the legs out.
class FeaturesMetAlgorithm final : public BaseAlgorithm {
  Q_DECLARE_TR_FUNCTIONS(brushline::FeaturesMetAlgorithm)

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
  static QgsFields fields();
  struct MetLeg;
  void compute(MetLeg &leg, const Shapes &shapes, const Land &land) const;
  QVariant nameOf(const FeatureMet &met, const Shapes &shapes) const;

  MeetRule mRule;
  FeaturesInput mFeatures;
  std::vector<Walker> mWalkers;
  std::optional<RasterInput> mTerrain;
  CoverSetting mCover;
  std::vector<Land> mLands; //!< one for each thread
};

} // namespace brushline
