// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "shared/parameter_reader_host.h"

#include <qgscoordinatereferencesystem.h>

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

} // namespace brushline::grid_parameters
