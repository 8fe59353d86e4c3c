// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "handouts/drawing.h"

#include <vector>

namespace brushline {

struct PaperSize {
  double width, height; //!< millimetres
  PaperSize turned() const { return {height, width}; }
};

//! How cards lie on a larger sheet.
struct SheetPlan {
  PaperSize sheet;         //!< as it is held: upright or across
  std::vector<Area> cards; //!< their places, row by row
};

/**
 * As many cards as a sheet holds, edge to edge in rows and columns in its middle, so that few straight cuts part them.
 * The sheet is taken upright or across, whichever holds more.
 *
 * \param most cards on a sheet; 0: as many as it holds. Paper that is a millimetre short still counts, since halves of
 * sheets are rounded.
 * \returns no cards when not even one has room.
 */
SheetPlan planSheet(PaperSize sheet, PaperSize card, int most);

//! Lines to cut along, dashed, from edge to edge of the sheet.
Drawing cuttingLines(const SheetPlan &plan);

} // namespace brushline
