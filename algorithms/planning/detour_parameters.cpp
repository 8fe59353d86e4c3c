// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/detour_parameters.h"

#include "shared/base_algorithm.h"
#include "shared/place_reader_host.h"
#include "shared/shapes_reader_host.h"

#include <qgsexception.h>

namespace brushline::detour_parameters {

namespace {
struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::DetourParameters)
};
const QString obstaclesKey = QStringLiteral("OBSTACLES"), nameKey = QStringLiteral("OBSTACLE_NAME"),
              clearanceKey = QStringLiteral("CLEARANCE"), mostKey = QStringLiteral("MAX_DETOUR");

int nameField(const ParameterReader &reader, const QgsProcessingFeatureSource &source) {
  const int given = reader.fieldIndex(nameKey, source);
  return given >= 0 ? given : source.fields().lookupField(QStringLiteral("name"));
}

// What is inside a polygon that crosses itself nobody can tell.
void tellInvalid(const QgsProcessingFeatureSource &source, QgsProcessingFeedback *feedback) {
  const int count = invalidShapes(obstaclesKey, source, feedback);
  if (count > 0)
    feedback->pushWarning(
        Text::tr(
            "%1: %n polygon(s) of layer “%2” cross themselves or have parts that overlap, so what is inside them is "
            "not certain and a leg may lead through. Mend the layer with “Fix geometries” first.",
            nullptr, count)
            .arg(obstaclesKey, source.sourceName()));
}
} // namespace

Definitions definitions() {
  return {helped(new QgsProcessingParameterFeatureSource(obstaclesKey, Text::tr("Obstacles (polygons)"),
                                                         QList<int>() << host::polygonLayers),
                 Text::tr("Ponds, thickets, fenced land: what nobody walks through.")),
          helped(new QgsProcessingParameterField(nameKey, Text::tr("Field with the obstacle's name"), QVariant(),
                                                 obstaclesKey, host::anyField, false, true),
                 Text::tr("Empty: the field called “name”, if there is one.")),
          helped(numberDefinition(clearanceKey, Text::tr("Clearance from obstacles (m)"), DetourRule::clearanceLimits),
                 Text::tr("How far every piece keeps away from them. With 0 it may touch them.")),
          helped(numberDefinition(mostKey, Text::tr("Farthest out (m)"), DetourRule::mostOutLimits),
                 Text::tr("An obstacle that takes a longer way out on both sides is not gone round, but told."))};
}

void check(const ParameterReader &reader) {
  reader.number(clearanceKey, DetourRule::clearanceLimits);
  reader.number(mostKey, DetourRule::mostOutLimits);
  const auto source = reader.source(obstaclesKey);
  if (!source)
    throw QgsProcessingException(Text::tr("%1: give a layer with polygons.").arg(obstaclesKey));
  checkPlaces(obstaclesKey, *source);
  if (const auto type = QgsWkbTypes::geometryType(source->wkbType());
      source->featureCount() != 0 && static_cast<int>(type) != 2 && static_cast<int>(type) != 3)
    throw QgsProcessingException(Text::tr("%1: layer “%2” has no polygons. Buffer lines or points first.")
                                     .arg(obstaclesKey, source->sourceName()));
  reader.fieldIndex(nameKey, *source);
}

DetourInput read(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  DetourInput result;
  result.rule.clearance = Length::metres(reader.number(clearanceKey, DetourRule::clearanceLimits));
  result.rule.most_out = Length::metres(reader.number(mostKey, DetourRule::mostOutLimits));
  const auto source = reader.source(obstaclesKey);
  std::vector<Shape> shapes;
  addShapes(shapes, obstaclesKey, *source, nameField(reader, *source), 0, reader.context().transformContext(),
            feedback);
  if (shapes.empty())
    feedback->pushWarning(
        Text::tr("%1: layer “%2” has no polygons, so nothing is gone round.").arg(obstaclesKey, source->sourceName()));
  tellInvalid(*source, feedback);
  result.obstacles = std::make_unique<Obstacles>(std::move(shapes), FeedbackProgress(feedback));
  return result;
}

} // namespace brushline::detour_parameters
