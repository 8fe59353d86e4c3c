// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/leg_cards_parameters.h"

#include "handouts/vector_hatch_host.h"
#include "shared/parameter_checks_host.h"

#include <QPainter>
#include <qgsexception.h>
#include <qgsvectorlayer.h>

#include <vector>

namespace brushline::leg_cards_parameters {

namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::LegCardsParameters)
};
const QString layersKey = QStringLiteral("LAYERS"), paperKey = QStringLiteral("PAPER"),
              orientationKey = QStringLiteral("ORIENTATION"), scaleKey = QStringLiteral("SCALE"),
              titleKey = QStringLiteral("TITLE"), diagramsKey = QStringLiteral("DIAGRAMS"),
              sheetKey = QStringLiteral("SHEET"), perSheetKey = QStringLiteral("CARDS_PER_SHEET"),
              indexKey = QStringLiteral("INDEX");
constexpr Limits scaleLimits{0, 1e8, 0};
constexpr int mostPerSheet = 16;

// Upright. ISO 216; letter is 8.5 by 11 inches.
constexpr PaperSize a3{297, 420}, a4{210, 297}, a5{148, 210}, a6{105, 148}, letter{215.9, 279.4},
    halfLetter{139.7, 215.9};
constexpr PaperSize papers[] = {a6, a5, a4, letter, halfLetter};
constexpr PaperSize sheets[] = {a4, letter, a3}; // after "none"

// The layers of the parameter, as the host finds them; those it does not find are null.
struct Wanted {
  QString shown;
  QgsMapLayer *layer;
};
std::vector<Wanted> wanted(const ParameterReader &reader) {
  const QVariant value = reader.parameters().value(layersKey);
  if (!value.isValid() || value.isNull())
    return {};
  const auto *definition = reader.definition(layersKey);
  std::vector<Wanted> result;
  const QVariantList values =
      value.canConvert<QVariantList>() && value.type() != QVariant::String ? value.toList() : QVariantList{value};
  for (const QVariant &one : values) {
    if (one.toString().isEmpty() && !one.value<QObject *>())
      continue;
    const auto found =
        QgsProcessingParameters::parameterAsLayerList(definition, QVariant(QVariantList{one}), reader.context());
    QgsMapLayer *layer = found.isEmpty() ? nullptr : found.first();
    result.push_back({layer ? layer->name() : one.toString(), layer});
  }
  return result;
}

} // namespace

Definitions definitions() {
  const QStringList paperNames = {Text::tr("A6"), Text::tr("A5"), Text::tr("A4"), Text::tr("Letter"),
                                  Text::tr("Half letter")};
  const QStringList sheetNames = {Text::tr("One card a page"), Text::tr("A4"), Text::tr("Letter"), Text::tr("A3")};
  const QStringList ways = {Text::tr("Portrait"), Text::tr("Landscape")};
  return {
      helped(new QgsProcessingParameterMultipleLayers(layersKey, Text::tr("Layers for the map"), host::anyMapLayer,
                                                      QVariant(), true),
             Text::tr("Drawn on the map in their own styles, the first on top. The course is drawn over them.")),
      helped(new QgsProcessingParameterEnum(paperKey, Text::tr("Paper of a card"), paperNames, false, 1),
             Text::tr("A6 fits a trouser pocket, A5 a map case; A4 and letter are for the leader.")),
      helped(new QgsProcessingParameterEnum(orientationKey, Text::tr("How a card is held"), ways, false, 0),
             Text::tr("Portrait has the legs above the map, landscape beside it.")),
      helped(numberDefinition(scaleKey, Text::tr("Scale of the map (10000 is 1:10 000; 0: what fits)"), scaleLimits),
             Text::tr("True on paper when printed at 100 %. Where the course has no room at this scale, the largest "
                      "round one that fits is taken, and the card says so.")),
      helped(new QgsProcessingParameterString(titleKey, Text::tr("Title"), QVariant(), false, true),
             Text::tr("Stands above the route's name on each card. Empty: the route's name is the title.")),
      helped(new QgsProcessingParameterBoolean(diagramsKey, Text::tr("Draw the dial of each leg"), false),
             Text::tr("A small picture of the dial as it is to be set, for those who are new to it.")),
      advanced(helped(
          new QgsProcessingParameterEnum(sheetKey, Text::tr("Several cards on a sheet of"), sheetNames, false, 0),
          Text::tr("The cards of all walkers of a route in one file, side by side with lines to cut "
                   "along."))),
      advanced(helped(new QgsProcessingParameterNumber(perSheetKey, Text::tr("Cards on a sheet (0: as many as fit)"),
                                                       host::integerNumber, 0, false, 0, mostPerSheet),
                      Text::tr("With a sheet only."))),
      advanced(helped(new QgsProcessingParameterBoolean(indexKey, Text::tr("List the files in cards.html"), true),
                      Text::tr("A page that lists the cards, to open them from.")))};
}

CardSetting read(const ParameterReader &reader) {
  CardSetting setting;
  setting.paper = papers[reader.choice(paperKey, 5)];
  if (reader.choice(orientationKey, 2) == 1)
    setting.paper = setting.paper.turned();
  setting.scale = reader.number(scaleKey, scaleLimits);
  if (setting.scale > 0 && setting.scale < 1)
    throw QgsProcessingException(Text::tr("%1 is %2: give the number after the colon, for example 10000 for 1:10 000, "
                                          "or 0 for what fits.")
                                     .arg(scaleKey, plain(setting.scale)));
  setting.title = reader.text(titleKey).trimmed();
  setting.pictures = reader.flag(diagramsKey);
  setting.index = reader.flag(indexKey);
  if (const int sheet = reader.choice(sheetKey, 4); sheet > 0) {
    setting.sheet = sheets[sheet - 1];
    setting.per_sheet = wholeNumber(reader, perSheetKey, {0, mostPerSheet, 0});
    if (planSheet(*setting.sheet, setting.paper, setting.per_sheet).cards.empty())
      throw QgsProcessingException(
          Text::tr("%1: a sheet of this paper does not hold a single card of the paper %2. Give a larger sheet or a "
                   "smaller card.")
              .arg(sheetKey, paperKey));
  }
  for (const Wanted &each : wanted(reader))
    if (!each.layer || !each.layer->isValid())
      throw QgsProcessingException(
          Text::tr("%1: the layer “%2” cannot be read. Mend its source, or leave it out.").arg(layersKey, each.shown));
  return setting;
}

CardPrinter::Layers layers(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  CardPrinter::Layers result;
  for (const Wanted &each : wanted(reader)) {
    const auto *vector = qobject_cast<const QgsVectorLayer *>(each.layer);
    if (vector && !vector->isSpatial()) {
      feedback->pushWarning(Text::tr("%1: “%2” is a table without geometry, so nothing of it is on the maps.")
                                .arg(layersKey, each.shown));
      continue;
    }
    if (!each.layer->crs().isValid())
      feedback->pushWarning(Text::tr("%1: layer “%2” has no coordinate reference system, so it may lie in the wrong "
                                     "place on the maps. Set it in the layer's properties.")
                                .arg(layersKey, each.shown));
    if (each.layer->blendMode() != QPainter::CompositionMode_SourceOver)
      feedback->pushInfo(
          Text::tr("%1: layer “%2” is blended with those below it on the screen. On the cards, which are "
                   "drawn as vectors, it hides them.")
              .arg(layersKey, each.shown));
    result.emplace_back(each.layer->clone());
    hatchWithLines(*result.back());
  }
  return result;
}

} // namespace brushline::leg_cards_parameters
