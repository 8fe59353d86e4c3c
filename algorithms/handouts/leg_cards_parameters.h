// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "handouts/card_printer_host.h"
#include "handouts/sheet_plan.h"
#include "shared/parameter_reader_host.h"

#include <QString>

namespace brushline {

//! What leg cards are to look like.
struct CardSetting {
  PaperSize paper;                //!< as it is held
  std::optional<PaperSize> sheet; //!< several cards on one
  int per_sheet = 0;              //!< 0: as many as it holds
  double scale = 0;               //!< 1 : scale; 0: what fits
  QString title;
  bool pictures = false; //!< of dials
  bool index = true;
};

namespace leg_cards_parameters {

//! LAYERS, PAPER, ORIENTATION, SCALE, TITLE, DIAGRAMS, SHEET, CARDS_PER_SHEET, INDEX.
Definitions definitions();
//! Throws for values that are of no use, and for layers that cannot be read.
CardSetting read(const ParameterReader &reader);
//! Copies of the layers, the first on top; tells of those that have nothing to draw. Main thread.
CardPrinter::Layers layers(const ParameterReader &reader, QgsProcessingFeedback *feedback);

} // namespace leg_cards_parameters

} // namespace brushline
