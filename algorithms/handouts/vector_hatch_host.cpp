// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/vector_hatch_host.h"

#include "quantities/angle.h"
#include "shared/compatibility_host.h"

#include <QPainter>
#include <QPainterPath>
#include <qgsfillsymbollayer.h>
#include <qgslinesymbol.h>
#include <qgsrenderer.h>
#include <qgsvectorlayer.h>

#include <cmath>
#include <memory>

namespace brushline {

namespace {

// A hatch: parallel lines in the polygon, in step with those of its neighbours.
class HatchLines final : public QgsFillSymbolLayer {
public:
  struct Pattern {
    double angle_degrees; // counter-clockwise from the right, as the host counts it
    double distance, offset;
    host::RenderUnit distance_unit, offset_unit;
    QgsMapUnitScale distance_scale, offset_scale;
  };
  HatchLines(const Pattern &pattern, QgsSymbol *line) : mPattern(pattern), mLine(line) {}

  QString layerType() const override { return QStringLiteral("BrushlineHatch"); }
  QgsSymbolLayer *clone() const override {
    auto *copy = new HatchLines(mPattern, mLine->clone());
    copy->setRenderingPass(renderingPass());
    return copy;
  }
  QVariantMap properties() const override { return {}; }
  void startRender(QgsSymbolRenderContext &context) override {
    mLine->startRender(context.renderContext(), context.fields());
  }
  void stopRender(QgsSymbolRenderContext &context) override { mLine->stopRender(context.renderContext()); }
  QgsSymbol *subSymbol() override { return mLine.get(); }

  void renderPolygon(const QPolygonF &points, const QVector<QPolygonF> *rings,
                     QgsSymbolRenderContext &context) override {
    QgsRenderContext &rendering = context.renderContext();
    QPainter *painter = rendering.painter();
    const double apart =
        rendering.convertToPainterUnits(mPattern.distance, mPattern.distance_unit, mPattern.distance_scale);
    if (!painter || !(apart > 0.5))
      return;
    const double offset = rendering.convertToPainterUnits(mPattern.offset, mPattern.offset_unit, mPattern.offset_scale);
    QPainterPath path;
    path.addPolygon(points);
    if (rings)
      for (const QPolygonF &ring : *rings)
        path.addPolygon(ring);
    const double turn = Angle::degrees(mPattern.angle_degrees).radians();
    const QPointF along(std::cos(turn), -std::sin(turn)), across(std::sin(turn), std::cos(turn));
    const QRectF box = points.boundingRect();
    const double reach = std::hypot(box.width(), box.height()) / 2 + apart;
    const QPointF middle = box.center();
    const double start = QPointF::dotProduct(middle, across) - offset;

    painter->save();
    painter->setClipPath(path, Qt::IntersectClip);
    for (double k = std::ceil((start - reach) / apart); k * apart <= start + reach; ++k) {
      const QPointF foot = middle + across * (k * apart - start);
      polyline(QVector<QPointF>{foot - along * reach, foot + along * reach}, context);
    }
    painter->restore();
  }

private:
  void polyline(const QPolygonF &line, QgsSymbolRenderContext &context) {
    static_cast<QgsLineSymbol *>(mLine.get())->renderPolyline(line, context.feature(), context.renderContext());
  }

  const Pattern mPattern;
  const std::unique_ptr<QgsSymbol> mLine;
};

} // namespace

void hatchWithLines(QgsMapLayer &layer) {
  if (host::hatchesAreLines)
    return;
  auto *vector = qobject_cast<QgsVectorLayer *>(&layer);
  if (!vector || !vector->renderer())
    return;
  QgsRenderContext context;
  for (QgsSymbol *symbol : vector->renderer()->symbols(context))
    for (int i = 0; symbol && i < symbol->symbolLayerCount(); ++i) {
      const auto *hatch = dynamic_cast<QgsLinePatternFillSymbolLayer *>(symbol->symbolLayer(i));
      if (!hatch || !hatch->enabled() || hatch->dataDefinedProperties().hasActiveProperties())
        continue;
      auto *given = const_cast<QgsLinePatternFillSymbolLayer *>(hatch)->subSymbol();
      if (!dynamic_cast<QgsLineSymbol *>(given))
        continue;
      auto *lines = new HatchLines({hatch->lineAngle(), hatch->distance(), hatch->offset(), hatch->distanceUnit(),
                                    hatch->offsetUnit(), hatch->distanceMapUnitScale(), hatch->offsetMapUnitScale()},
                                   given->clone());
      lines->setRenderingPass(hatch->renderingPass());
      symbol->changeSymbolLayer(i, lines);
    }
}

} // namespace brushline
