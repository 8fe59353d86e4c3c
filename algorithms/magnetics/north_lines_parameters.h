// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "magnetics/north_lines.h"
#include "quantities/length.h"
#include "shared/parameter_reader_host.h"

#include <qgscoordinatereferencesystem.h>
#include <qgsrectangle.h>

namespace brushline {

//! Where magnetic north lines are drawn, and how far apart.
struct NorthLinesSetting {
  QgsCoordinateReferenceSystem grid; //!< projected
  QgsRectangle extent;               //!< in its units
  Length spacing;

  NorthLinesArea area(const QgsCoordinateTransformContext &transforms) const;
};

namespace north_lines_parameters {

//! EXTENT, SPACING.
Definitions definitions();
//! GRID_CRS.
Definitions gridDefinitions();
//! Throws for values that are of no use.
NorthLinesSetting read(const ParameterReader &reader);
//! The refusal of more lines than anybody can use.
QString tooMany(const NorthLinesSetting &setting, double count);
//! The refusal of an area that the grid does not reach.
QString outOfReach(const NorthLinesSetting &setting);

} // namespace north_lines_parameters
} // namespace brushline
