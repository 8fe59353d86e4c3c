// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/place.h"
#include "shared/parameter_reader_host.h"

#include <qgscoordinatereferencesystem.h>
#include <qgsrectangle.h>

#include <functional>
#include <string>

//! GRID_CRS: the projected system that a map's grid lines belong to.
namespace brushline::grid_parameters {

//! What people read; it differs with what an algorithm does with the grid.
struct Words {
  QString label;
  QString help;
};

const QString &key();
Definitions definitions(const Words &words);
//! Throws unless a system is projected, with a sentence that says what to give.
void check(const QgsCoordinateReferenceSystem &crs);
//! Checked; invalid when not given.
QgsCoordinateReferenceSystem read(const ParameterReader &reader);
//! As GridNorth reads it.
std::string definitionOf(const QgsCoordinateReferenceSystem &crs);

//! The area that a system is made for, and a degree around it.
class AreaOfUse {
public:
  explicit AreaOfUse(const QgsCoordinateReferenceSystem &crs);
  //! True where no area is known.
  bool holds(const Place &place) const;

private:
  QgsRectangle mArea; // degrees; empty: everywhere
};

//! Tells, once, when the grid that was given is made for another part of the world: its north would be of no use.
class GridWatch {
public:
  //! \param grid as read(); an invalid one is never told.
  GridWatch(const QgsCoordinateReferenceSystem &grid, QgsProcessingFeedback *feedback)
      : mName(grid.authid()), mArea(grid), mFeedback(feedback) {}
  //! \param what says in words what lies there; asked only when it is told.
  void see(const Place &place, const std::function<QString()> &what);

private:
  QString mName;
  AreaOfUse mArea;
  QgsProcessingFeedback *mFeedback;
  bool mTold = false;
};

} // namespace brushline::grid_parameters
