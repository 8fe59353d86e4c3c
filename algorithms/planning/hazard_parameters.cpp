// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/hazard_parameters.h"

#include "shared/place_reader_host.h"
#include "shared/shapes_reader_host.h"
#include "shared/source_features_host.h"

#include <QMap>
#include <qgsexception.h>
#include <qgsfeatureiterator.h>

#include <algorithm>

namespace brushline::hazard_parameters {

namespace {
struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::HazardParameters)
};
const QString disturbancesKey = QStringLiteral("DISTURBANCES"), kindKey = QStringLiteral("KIND_FIELD"),
              distancesKey = QStringLiteral("DISTANCES"), hazardsKey = QStringLiteral("HAZARDS"),
              marginKey = QStringLiteral("MARGIN"), slopeKey = QStringLiteral("SLOPE_LIMIT");
constexpr Limits marginLimits{0, 1000, 10}, slopeLimits{1, 89, 30};

SeparationTable readTable(const ParameterReader &reader) {
  const auto source = reader.source(distancesKey);
  if (!source)
    return builtInSeparation();
  const int kind = source->fields().lookupField(QStringLiteral("kind")),
            distance = source->fields().lookupField(QStringLiteral("distance_m"));
  if (kind < 0 || distance < 0)
    throw QgsProcessingException(Text::tr("%1: table “%2” needs the columns kind and distance_m (metres).")
                                     .arg(distancesKey, source->sourceName()));
  SeparationTable table;
  SourceFeatures rows(distancesKey, *source, nullptr);
  QgsFeature row;
  while (rows.next(row)) {
    const QVariant name = row.attribute(kind), metres = row.attribute(distance);
    if (name.toString().trimmed().isEmpty() && metres.isNull())
      continue; // an empty row of a spreadsheet
    bool isNumber = false;
    const double value = metres.toDouble(&isNumber);
    try {
      if (!isNumber || metres.isNull())
        throw std::invalid_argument(Text::tr("distance_m is “%1”, no number").arg(metres.toString()).toStdString());
      table.add(name.toString().toStdString(), Length::metres(value));
    } catch (const std::invalid_argument &error) {
      throw QgsProcessingException(
          Text::tr("%1: table “%2”, feature %3: %4. Give each kind one row with its distance in "
                   "metres.")
              .arg(distancesKey, source->sourceName(), QString::number(row.id()), QString::fromUtf8(error.what())));
    }
  }
  if (table.empty())
    throw QgsProcessingException(Text::tr("%1: table “%2” has no rows.").arg(distancesKey, source->sourceName()));
  return table;
}

int kindField(const ParameterReader &reader, const QgsProcessingFeatureSource &source) {
  int field = reader.fieldIndex(kindKey, source);
  if (field < 0)
    field = source.fields().lookupField(QStringLiteral("kind"));
  if (field < 0)
    throw QgsProcessingException(
        Text::tr("%1: layer “%2” has no field “kind”; name the field that tells what its features are.")
            .arg(kindKey, source.sourceName()));
  return field;
}
} // namespace

Definitions definitions() {
  return Definitions{
             helped(new QgsProcessingParameterFeatureSource(disturbancesKey, Text::tr("Iron and current"),
                                                            QList<int>() << host::anyTable, QVariant(), true),
                    Text::tr("Power lines, fences, vehicles: what draws the needle off.")),
             helped(new QgsProcessingParameterField(kindKey, Text::tr("Field with the kind"), QVariant(),
                                                    disturbancesKey, host::anyField, false, true),
                    Text::tr("Empty: the field called “kind”.")),
             advanced(helped(new QgsProcessingParameterFeatureSource(distancesKey, Text::tr("Table of distances"),
                                                                     QList<int>() << host::anyTable, QVariant(), true),
                             Text::tr("Columns kind and distance_m: how far the compass must be from each kind, in "
                                      "metres. Empty: the built-in table, which the help prints.")))} +
         features_parameters::definitions(
             hazardsKey, Text::tr("Hazards"),
             Text::tr("Cliffs, water, bogs, mine works: layers of points, lines or areas."), true) +
         features_parameters::nameDefinitions() +
         Definitions{
             helped(numberDefinition(marginKey, Text::tr("Margin round hazards (m)"), marginLimits),
                    Text::tr("A leg that comes nearer than this to a hazard is told; in metres.")),
             helped(numberDefinition(slopeKey, Text::tr("Steepest ground (degrees)"), slopeLimits),
                    Text::tr("Ground steeper than this is told, whichever way it falls; needs a terrain model."))};
}

void check(const ParameterReader &reader) {
  readTable(reader);
  if (const auto source = reader.source(disturbancesKey)) {
    checkPlaces(disturbancesKey, *source);
    kindField(reader, *source);
  }
  features_parameters::check(reader, hazardsKey);
  reader.number(marginKey, marginLimits);
  reader.number(slopeKey, slopeLimits);
}

HazardSetting read(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  HazardSetting setting;
  setting.separation = readTable(reader);
  setting.margin = Length::metres(reader.number(marginKey, marginLimits));
  setting.slope_limit = Angle::degrees(reader.number(slopeKey, slopeLimits));
  if (const auto source = reader.source(disturbancesKey)) {
    std::vector<Shape> &shapes = setting.disturbances.shapes;
    addShapes(shapes, disturbancesKey, *source, kindField(reader, *source), 0, reader.context().transformContext(),
              feedback);
    setting.disturbances.layers << source->sourceName();
    QMap<QString, int> unknown;
    shapes.erase(std::remove_if(shapes.begin(), shapes.end(),
                                [&](const Shape &shape) {
                                  if (setting.separation.distance(shape.name))
                                    return false;
                                  ++unknown[QString::fromStdString(shape.name)];
                                  return true;
                                }),
                 shapes.end());
    QStringList names;
    for (auto it = unknown.cbegin(); it != unknown.cend(); ++it)
      names << QStringLiteral("“%1” (%2)").arg(it.key(), QString::number(it.value()));
    if (!names.isEmpty())
      feedback->pushWarning(
          Text::tr("%1: layer “%2” has kinds for which no distance is known: %3. They are not checked. "
                   "Give their distances in %4.")
              .arg(disturbancesKey, source->sourceName(), names.join(QLatin1String(", ")), distancesKey));
  }
  setting.hazards = features_parameters::read(reader, hazardsKey, features_parameters::nameField(reader), feedback);
  return setting;
}

} // namespace brushline::hazard_parameters
