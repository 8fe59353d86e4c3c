// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "magnetics/date_and_field_parameters.h"
#include "planning/practice_course_parameters.h"
#include "shared/base_algorithm.h"
#include "sighting/cover_parameters.h"

namespace brushline {

//! The wrapper of layPracticeCourses(): an area and what courses are to be like in, courses and their controls out.
class PracticeCourseAlgorithm final : public BaseAlgorithm {
  Q_DECLARE_TR_FUNCTIONS(brushline::PracticeCourseAlgorithm)

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
  //! Throws when no leg has room in the area at all.
  void checkWidth(const CourseGround &ground) const;

  PracticeInput mInput;
  DateAndField mDateAndField; // mTools points into these
  std::optional<RasterInput> mTerrain;
  CoverSetting mCover;
  CourseLegs::Tools mTools;
};

} // namespace brushline
