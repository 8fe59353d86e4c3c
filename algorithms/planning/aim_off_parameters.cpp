// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/aim_off_parameters.h"

#include "shared/feedback_progress_host.h"
#include "shared/parameter_checks_host.h"
#include "shared/place_reader_host.h"
#include "shared/shapes_reader_host.h"

#include <qgsexception.h>

namespace brushline::aim_off_parameters {

namespace {
struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::AimOffParameters)
};
const QString startsKey = QStringLiteral("STARTS"), startNameKey = QStringLiteral("START_NAME"),
              linesKey = QStringLiteral("LINES"), lineNameKey = QStringLiteral("LINE_NAME"),
              destinationsKey = QStringLiteral("DESTINATIONS"), destinationNameKey = QStringLiteral("DEST_NAME"),
              pairKey = QStringLiteral("PAIR_FIELD"), snapKey = QStringLiteral("SNAP_DEST"),
              sideKey = QStringLiteral("SIDE"), confidenceKey = QStringLiteral("CONFIDENCE"),
              reachKey = QStringLiteral("REACH"), catchingKey = QStringLiteral("CATCHING"),
              catchNameKey = QStringLiteral("CATCH_NAME"), tellApartKey = QStringLiteral("TELL_APART"),
              wholeDialKey = QStringLiteral("WHOLE_DIAL");
constexpr Limits snapLimits{0, 1000, 20};
constexpr Limits confidenceLimits{0.5, 1, 0.95};

QgsProcessingParameterDefinition *nameDefinition(const QString &key, const QString &label, const QString &layer) {
  return helped(new QgsProcessingParameterField(key, label, QVariant(), layer, host::anyField, false, true),
                Text::tr("Empty: the field called “name”, if there is one."));
}

std::unique_ptr<QgsProcessingFeatureSource> needed(const ParameterReader &reader, const QString &key,
                                                   const QString &what) {
  auto source = reader.source(key);
  if (!source)
    throw QgsProcessingException(Text::tr("%1: give a layer with %2.").arg(key, what));
  checkPlaces(key, *source);
  return source;
}

AimRule ruleOf(const ParameterReader &reader) {
  AimRule rule;
  rule.side = static_cast<AimSide>(reader.choice(sideKey, 3));
  rule.confidence = reader.number(confidenceKey, confidenceLimits);
  if (rule.confidence <= confidenceLimits.least || rule.confidence >= confidenceLimits.most)
    throw QgsProcessingException(Text::tr("%1: %2 cannot be had. Give a chance between 0.5 and 1, for example 0.95.")
                                     .arg(confidenceKey, plain(rule.confidence)));
  rule.reach = Length::metres(reader.number(reachKey, AimRule::reachLimits));
  rule.tell_apart = reader.flag(tellApartKey);
  rule.whole_dial = reader.flag(wholeDialKey);
  return rule;
}
} // namespace

int nameField(const ParameterReader &reader, const QString &key, const QgsProcessingFeatureSource &source) {
  const int asked = reader.fieldIndex(key, source);
  return asked >= 0 ? asked : source.fields().lookupField(QStringLiteral("name"));
}

Definitions definitions() {
  const auto points = QList<int>() << host::pointLayers;
  const QStringList sides = {Text::tr("Whichever is better"), Text::tr("Left of the destination"),
                             Text::tr("Right of the destination")};
  return {
      helped(new QgsProcessingParameterFeatureSource(startsKey, Text::tr("Starts (points)"), points),
             Text::tr("Where one sets out, one leg from each.")),
      nameDefinition(startNameKey, Text::tr("Field with the start's name"), startsKey),
      helped(
          new QgsProcessingParameterFeatureSource(linesKey, Text::tr("Lines to meet (trails, streams, power lines)"),
                                                  QList<int>() << host::lineLayers),
          Text::tr("What one cannot cross without noticing. Lines of one name are one line. Give only lines that are "
                   "as plain on the ground as on the map.")),
      nameDefinition(lineNameKey, Text::tr("Field with the line's name"), linesKey),
      helped(new QgsProcessingParameterFeatureSource(destinationsKey, Text::tr("Destinations on the lines (points)"),
                                                     points, QVariant(), true),
             Text::tr("Where one wants to come to. Each start goes to the nearest one, or to that of its own name. "
                      "Empty: the surest bearing to meet any line.")),
      nameDefinition(destinationNameKey, Text::tr("Field with the destination's name"), destinationsKey),
      helped(
          new QgsProcessingParameterField(pairKey, Text::tr("Field of the starts that names their destination"),
                                          QVariant(), startsKey, host::anyField, false, true),
          Text::tr("Its value is looked up among the destinations' names; of several alike the nearest counts. Empty: "
                   "the nearest destination.")),
      helped(new QgsProcessingParameterEnum(sideKey, Text::tr("Aim to which side"), sides, false, 0),
             Text::tr("Left and right as seen when facing the destination. Whichever is better: the side that is sure, "
                      "of two sure ones the shorter way in all.")),
      helped(numberDefinition(confidenceKey, Text::tr("Chance that the turn is the right one"), confidenceLimits),
             Text::tr("Between 0.5 and 1: 0.95 aims off so far that nineteen of twenty walks meet the line on the "
                      "intended side.")),
      helped(new QgsProcessingParameterFeatureSource(catchingKey, Text::tr("What catches one beyond the line"),
                                                     QList<int>() << host::lineLayers << host::polygonLayers,
                                                     QVariant(), true),
             Text::tr("Roads, streams, lakes beyond: what tells that one has crossed the line without noticing.")),
      nameDefinition(catchNameKey, Text::tr("Field with its name"), catchingKey)};
}

Definitions rareDefinitions() {
  return {helped(numberDefinition(reachKey, Text::tr("How far to look for lines (m)"), AimRule::reachLimits),
                 Text::tr("From the start, in metres. Destinations, lines and what catches count within it only.")),
          advanced(helped(
              numberDefinition(snapKey, Text::tr("Farthest a destination may lie from its line (m)"), snapLimits),
              Text::tr("A destination is taken to the nearest place on a line; one that lies farther away, "
                       "in metres, is passed over."))),
          advanced(helped(
              new QgsProcessingParameterBoolean(tellApartKey, Text::tr("Walkers can tell the lines apart"), false),
              Text::tr("Off: one who meets another line first takes it for the right one, and counts as "
                       "having missed. On: other lines are crossed without harm."))),
          advanced(helped(
              new QgsProcessingParameterBoolean(wholeDialKey, Text::tr("Aim by whole graduations of the dial"), true),
              Text::tr("The aim is one that the dial can show, the next one farther from the destination. "
                       "Off: exact, and the dial rounds it.")))};
}

void check(const ParameterReader &reader) {
  const auto starts = needed(reader, startsKey, Text::tr("starts"));
  checkPoints(startsKey, *starts);
  const auto lines = needed(reader, linesKey, Text::tr("lines"));
  reader.fieldIndex(startNameKey, *starts);
  reader.fieldIndex(lineNameKey, *lines);
  ruleOf(reader);
  reader.number(snapKey, snapLimits);
  const bool paired = reader.fieldIndex(pairKey, *starts) >= 0;
  if (const auto destinations = reader.source(destinationsKey)) {
    checkPoints(destinationsKey, *destinations);
    if (nameField(reader, destinationNameKey, *destinations) < 0 && paired)
      throw QgsProcessingException(Text::tr("%1: layer “%2” has no field “name”: give the field with the names that %3 "
                                            "refers to.")
                                       .arg(destinationNameKey, destinations->sourceName(), pairKey));
  } else if (paired) {
    throw QgsProcessingException(Text::tr("%1 refers to destinations: give %2 too.").arg(pairKey, destinationsKey));
  }
  if (const auto catching = reader.source(catchingKey)) {
    checkPlaces(catchingKey, *catching);
    reader.fieldIndex(catchNameKey, *catching);
  }
}

AimInput read(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  AimInput input;
  input.rule = ruleOf(reader);
  const auto transforms = reader.context().transformContext();
  const auto shapesOf = [&](const QString &key, const QString &nameKey, const QgsProcessingFeatureSource &source) {
    std::vector<Shape> shapes;
    addShapes(shapes, key, source, nameField(reader, nameKey, source), 0, transforms, feedback);
    return shapes;
  };
  const auto lines = needed(reader, linesKey, Text::tr("lines"));
  input.lines = std::make_unique<LineNet>(shapesOf(linesKey, lineNameKey, *lines), FeedbackProgress(feedback));
  if (input.lines->shapes().size() == 0)
    throw QgsProcessingException(Text::tr("%1: layer “%2” has no line of any length, so there is nothing to meet.")
                                     .arg(linesKey, lines->sourceName()));
  if (const auto catching = reader.source(catchingKey))
    input.catching =
        std::make_unique<Shapes>(shapesOf(catchingKey, catchNameKey, *catching), FeedbackProgress(feedback));

  const auto destinations = reader.source(destinationsKey);
  if (!destinations)
    return input;
  const Length snap = Length::metres(reader.number(snapKey, snapLimits));
  std::vector<AimDestination> on;
  int beside = 0;
  readPlaces(destinationsKey, *destinations, nameField(reader, destinationNameKey, *destinations), transforms, feedback,
             [&](const Place &place, const QString &name) {
               if (const auto found = input.lines->nearest(place, snap)) {
                 input.by_name[name].push_back(on.size());
                 on.push_back({*found, name.toStdString()});
               } else {
                 input.beside.insert(name);
                 ++beside;
               }
             });
  if (beside > 0)
    feedback->pushWarning(Text::tr("%1: %n destination(s) of layer “%2” lie farther than %3 m from every line; passed "
                                   "over. Move them onto a line, or give a greater %4.",
                                   nullptr, beside)
                              .arg(destinationsKey, destinations->sourceName(), plain(snap.metres()), snapKey));
  if (on.empty())
    throw QgsProcessingException(
        Text::tr("%1: no destination of layer “%2” lies within %3 m of a line, so there is nowhere to aim. Move them "
                 "onto a line, give a greater %4, or leave %1 empty.")
            .arg(destinationsKey, destinations->sourceName(), plain(snap.metres()), snapKey));
  input.destinations = std::make_unique<AimDestinations>(std::move(on));
  return input;
}

} // namespace brushline::aim_off_parameters
