// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "planning/practice_course_parameters.h"
#include "shared/place_reader_host.h"
#include "shared/vector_output_host.h"
#include "sighting/cover_parameters.h"

#include <set>
#include <vector>

namespace brushline {

//! Tells what became of practice courses, and writes them: OUTPUT and CONTROLS.
class PracticeCourseWriter {
  Q_DECLARE_TR_FUNCTIONS(brushline::PracticeCourseWriter)

public:
  //! OUTPUT and CONTROLS.
  static Definitions definitions();
  //! COURSE_COUNT, CONTROL_COUNT, SHARED_LEGS and BALANCE.
  static QList<QgsProcessingOutputDefinition *> numbers();

  PracticeCourseWriter(const ParameterReader &reader, const PracticeInput &input, const PracticeCourses &courses,
                       QgsProcessingFeedback *feedback);

  //! Throws QgsProcessingException, with the reason, when there are none.
  void tell() const;
  //! What the legs of all courses have of ground without known cover, shared legs once.
  UnknownCover unknownCover() const;
  QVariantMap write();

private:
  struct Names; // of a spot
  void tellSpots() const;
  QString failure() const;
  QString barred() const;
  QString note(const Course &course) const;
  void nameSpots();
  QString routeName(size_t course) const;
  std::vector<double> meansOf() const;
  void writeControls(VectorOutput &output, size_t course);

  const ParameterReader mReader;
  const PracticeInput &mInput;
  const PracticeCourses &mCourses;
  QgsProcessingFeedback *mFeedback;
  FromPlaces mFromPlaces;
  QVariant labelOf(size_t spot);

  QStringList mNames, mLetters; // by spot
  std::set<size_t> mLabelled;
};

} // namespace brushline
