// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/card_printer_host.h"

#include "quantities/angle.h"
#include "shared/compatibility_host.h"

#include <QFile>
#include <qgsexception.h>
#include <qgslayoutexporter.h>
#include <qgslayoutitemmap.h>
#include <qgslayoutitempage.h>
#include <qgslayoutpagecollection.h>
#include <qgsprintlayout.h>

#include <algorithm>
#include <cmath>

namespace brushline {

namespace {

constexpr double dotsPerInch = 300; // of rasters; lines and text have none

void place(QgsLayoutItem &item, const Area &area, int page) {
  item.attemptResize(QgsLayoutSize(area.width, area.height));
  item.attemptMove(QgsLayoutPoint(area.left, area.top), true, false, page);
}

} // namespace

CardPrinter::CardPrinter(Layers layers, const QgsCoordinateTransformContext &transforms, const HandoutFonts &fonts)
    : mLayers(std::move(layers)), mFonts(fonts) {
  mProject.setTransformContext(transforms);
}

// An empty item that lies on a line. It ends short of the line's ends: the host draws no name for a point below it.
QgsLayoutItem *CardPrinter::alongLine(QgsPrintLayout &layout, Spot from, Spot to, Spot corner, int page) const {
  constexpr double width = 0.6, ends = 1;
  const double x = to.x - from.x, y = to.y - from.y, length = std::max(0.1, std::hypot(x, y) - 2 * ends);
  auto *item = new DrawingItem(&layout, {}, mFonts);
  layout.addLayoutItem(item);
  place(*item, {corner.x + (from.x + to.x) / 2 - length / 2, corner.y + (from.y + to.y) / 2 - width / 2, length, width},
        page);
  item->rotateItem(Angle::radians(std::atan2(y, x)).degrees(), item->mapToScene(item->rect().center()));
  return item;
}

QByteArray CardPrinter::pdf(const std::vector<PrintedSheet> &sheets) {
  QList<QgsMapLayer *> layers;
  for (const auto &layer : mLayers)
    layers << layer.get();
  QgsPrintLayout layout(&mProject);
  std::vector<QgsLayoutItemMap *> maps;
  const auto add = [&](QgsLayoutItem *item, const Area &area, int page) {
    layout.addLayoutItem(item);
    place(*item, area, page);
  };
  for (size_t i = 0; i < sheets.size(); ++i) {
    const PrintedSheet &sheet = sheets[i];
    auto *page = new QgsLayoutItemPage(&layout);
    page->setPageSize(QgsLayoutSize(sheet.paper.width, sheet.paper.height));
    layout.pageCollection()->addPage(page);
    for (const PrintedSheet::Placed &placed : sheet.cards) {
      if (placed.card.map) {
        Area area = placed.card.map->area;
        area.left += placed.corner.x;
        area.top += placed.corner.y;
        auto *map = new QgsLayoutItemMap(&layout);
        add(map, area, int(i));
        map->setKeepLayerSet(true);
        map->setLayers(layers);
        map->setCrs(placed.card.map->crs);
        map->setExtent(placed.card.map->extent);
        map->setDrawAnnotations(false);
        maps.push_back(map);
        for (const Area &taken : placed.card.map->taken) {
          auto *item = new DrawingItem(&layout, {}, mFonts);
          add(item, {taken.left + placed.corner.x, taken.top + placed.corner.y, taken.width, taken.height}, int(i));
          map->addLabelBlockingItem(item);
        }
        for (const auto &[from, to] : placed.card.map->lines)
          map->addLabelBlockingItem(alongLine(layout, from, to, placed.corner, int(i)));
      }
      add(new DrawingItem(&layout, placed.card.drawing, mFonts),
          {placed.corner.x, placed.corner.y, placed.size.width, placed.size.height}, int(i));
    }
    if (!sheet.over.parts.empty())
      add(new DrawingItem(&layout, sheet.over, mFonts), {0, 0, sheet.paper.width, sheet.paper.height}, int(i));
  }

  QgsLayoutExporter::PdfExportSettings settings;
  settings.dpi = dotsPerInch;
  settings.forceVectorOutput = true;
  settings.appendGeoreference = false; // a card is no map file, and it would be written twice
  settings.exportMetadata = false;
  settings.textRenderFormat = host::textAsText;
  const QString path = mFolder.filePath(QStringLiteral("card.pdf"));
  const auto result = QgsLayoutExporter(&layout).exportToPdf(path, settings);
  for (const QgsLayoutItemMap *map : maps)
    for (const auto &error : map->renderingErrors()) {
      QString name = error.layerID;
      for (const auto &layer : mLayers)
        if (layer->id() == error.layerID)
          name = layer->name();
      const QString text = tr("Layer “%1” could not be drawn: %2").arg(name, error.message);
      if (!mErrors.contains(text))
        mErrors << text;
    }
  QFile file(path);
  QByteArray content;
  if (mFolder.isValid() && result == QgsLayoutExporter::Success && file.open(QIODevice::ReadOnly))
    content = file.readAll();
  file.remove();
  // Qt writes on when the disk is full and says nothing.
  if (!content.startsWith("%PDF") || !content.right(32).contains("%%EOF"))
    throw QgsProcessingException(
        tr("A card could not be made in the temporary folder “%1”. Is its disk full?").arg(mFolder.path()));
  return content;
}

QStringList CardPrinter::takeErrors() {
  QStringList errors;
  errors.swap(mErrors);
  return errors;
}

} // namespace brushline
