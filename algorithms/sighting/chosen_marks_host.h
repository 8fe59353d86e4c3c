// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "magnetics/field_setting.h"
#include "shared/compass.h"
#include "shared/grid_north.h"
#include "shared/place_reader_host.h"
#include "shared/vector_output_host.h"
#include "shared/walker.h"
#include "sighting/choose_marks.h"

#include <map>
#include <memory>
#include <string>
#include <vector>

namespace brushline {

//! Writes chains of marks to the outputs OUTPUT, SIGHTINGS and GAPS; begun with the first leg.
class ChosenMarksWriter {
  Q_DECLARE_TR_FUNCTIONS(brushline::ChosenMarksWriter)

public:
  //! What the numbers are worked out with; borrowed.
  struct Setting {
    const FieldSetting *field;
    Compass compass;
    const std::vector<QString> *names; //!< of the candidates
  };
  //! Of which leg the marks are.
  struct Leg {
    QString route;
    int number;
    QString direction;
    std::string grid; //!< as GridNorth reads it
    Place start;
    double start_x; //!< as the input has it
  };

  ChosenMarksWriter(const ParameterReader &reader, const Setting &setting, const QgsCoordinateReferenceSystem &crs);

  //! OUTPUT, SIGHTINGS, GAPS.
  static Definitions definitions();

  //! \param steps_to_marks single steps, from the mark before each.
  void write(const Leg &leg, const Walker &walker, const std::vector<ChosenMark> &marks,
             const std::vector<double> &steps_to_marks);

  //! Ends the outputs and tells the counts. \returns the algorithm's results.
  QVariantMap finish(QgsProcessingFeedback *feedback);

private:
  void begin();
  QVariant nameOf(const ChosenMark &mark) const;
  void writeSighting(const Leg &leg, const QVariant &walkerName, int number, const Place &from,
                     const QVariant &fromName, const ChosenMark &mark, long paces);
  void writeGap(const Leg &leg, const QVariant &walkerName, const Place &from, double from_m, const ChosenMark &last,
                int marks);

  const ParameterReader mReader;
  Setting mSetting;
  QgsCoordinateReferenceSystem mCrs;
  FromPlaces mFromPlaces;
  std::unique_ptr<VectorOutput> mMarks, mSightings, mGaps;
  std::map<std::string, GridNorth> mGrids;
  long mMarkCount = 0, mSpacedCount = 0, mUnseenCount = 0, mGapCount = 0;
};

} // namespace brushline
