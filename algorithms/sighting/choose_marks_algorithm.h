// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "magnetics/date_and_field_parameters.h"
#include "shared/base_algorithm.h"
#include "shared/compass.h"
#include "shared/walker.h"
#include "sighting/candidates_parameters.h"
#include "sighting/choose_marks.h"
#include "sighting/cover_parameters.h"
#include "sighting/land.h"

#include <vector>

namespace brushline {

//! The wrapper of chooseMarks(): routes and candidates in, a chain of marks for each leg out.
class ChooseMarksAlgorithm final : public BaseAlgorithm {
  Q_DECLARE_TR_FUNCTIONS(brushline::ChooseMarksAlgorithm)

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

  DateAndField mDateAndField;
  Compass mCompass;
  std::vector<Walker> mWalkers;
  std::optional<RasterInput> mTerrain;
  CoverSetting mCover;
  std::vector<Land> mLands; //!< one for each thread
  CandidateInput mCandidates;
};

} // namespace brushline
