// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "records/tracks_parameters.h"
#include "shared/base_algorithm.h"

namespace brushline {

//! The wrapper of CourseMatcher: tracks and planned legs in, walked legs and their errors out.
class CompareTrackAlgorithm final : public BaseAlgorithm {
  Q_DECLARE_TR_FUNCTIONS(brushline::CompareTrackAlgorithm)

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
  TrackNames mNames;
};

} // namespace brushline
