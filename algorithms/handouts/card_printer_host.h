// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "handouts/drawing_host.h"
#include "handouts/sheet_plan.h"

#include <QByteArray>
#include <QStringList>
#include <QTemporaryDir>
#include <qgscoordinatereferencesystem.h>
#include <qgscoordinatetransformcontext.h>
#include <qgsmaplayer.h>
#include <qgsproject.h>
#include <qgsrectangle.h>

#include <memory>
#include <optional>
#include <vector>

class QgsPrintLayout;

namespace brushline {

//! A map in its place on a page.
struct PrintedMap {
  Area area;
  QgsRectangle extent; //!< as wide over high as the area
  QgsCoordinateReferenceSystem crs;
  // Where names of the map keep off, on the card.
  std::vector<Area> taken;
  std::vector<std::pair<Spot, Spot>> lines;
};

//! A card's page, from its own corner; its drawing lies over the map.
struct PrintedCard {
  Drawing drawing;
  std::optional<PrintedMap> map;
};

//! A page of paper with cards in their places.
struct PrintedSheet {
  PaperSize paper;
  struct Placed {
    Spot corner;
    PaperSize size;
    PrintedCard card;
  };
  std::vector<Placed> cards;
  Drawing over; //!< cutting lines
};

//! Makes PDF files with the host's layout engine: vectors and text, no pictures but those of rasters. Main thread.
class CardPrinter {
  Q_DECLARE_TR_FUNCTIONS(brushline::CardPrinter)

public:
  using Layers = std::vector<std::unique_ptr<QgsMapLayer>>;

  //! \param layers for the maps, the first on top.
  CardPrinter(Layers layers, const QgsCoordinateTransformContext &transforms, const HandoutFonts &fonts);

  //! Throws QgsProcessingException when the host makes no whole file of it.
  QByteArray pdf(const std::vector<PrintedSheet> &sheets);

  //! What the host said of layers that could not be drawn, each once; since the last time it was asked.
  QStringList takeErrors();

private:
  QgsLayoutItem *alongLine(QgsPrintLayout &layout, Spot from, Spot to, Spot corner, int page) const;

  Layers mLayers;
  const HandoutFonts &mFonts;
  QTemporaryDir mFolder;
  QgsProject mProject;
  QStringList mErrors;
};

} // namespace brushline
