// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "records/course_matching.h"
#include "shared/parameter_reader_host.h"

#include <QDate>
#include <QHash>
#include <qgscoordinatereferencesystem.h>

#include <optional>
#include <vector>

namespace brushline {

//! What is known of a planned leg besides its line.
struct PlannedLegInfo {
  int number = 0; //!< 0: a way between parts of a route
  bool back = false;
  double start_x = 0;                             //!< of its start, or end when turned round, as the input has it
  std::optional<double> declination, convergence; //!< degrees, east positive
  QDate date;                                     //!< the day its numbers are good for
  QHash<QString, double> paces;                   //!< by walker; an empty name where nobody is named
};

//! The courses of INPUT, each with its legs' information.
struct PlannedCourses {
  std::vector<PlannedCourse> courses;
  std::vector<std::vector<PlannedLegInfo>> info; //!< by course and leg
  QStringList routes;                            //!< names by PlannedCourse::route
  QStringList walkers;                           //!< named in the legs
  QgsCoordinateReferenceSystem crs;

  //! The route of that name, case and blanks aside.
  std::optional<size_t> routeCalled(const QString &name) const;
  QString walkerCalled(const QString &name) const; //!< empty: none
};

/**
 * Reads the legs that were meant to be walked: annotated ones with what they tell of norths, paces and day, or plain
 * routes. Each route can be walked out, back, and out and back; a direction that the legs do not have is made from the
 * other, with the legs numbered in the order walked and without paces.
 *
 * Throws QgsProcessingException when there is no leg, Cancelled.
 */
PlannedCourses readCourses(const ParameterReader &reader, QgsProcessingFeedback *feedback);

//! Throws for legs with detours, whose pieces no track can be held against, and for annotated legs with ROUTE_FIELD.
void checkCourses(const ParameterReader &reader);

} // namespace brushline
