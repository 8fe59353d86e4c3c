// SPDX-License-Identifier: GPL-2.0-or-later
#include "sighting/cover_parameters.h"

#include "shared/feedback_progress_host.h"
#include "shared/parameter_checks_host.h"
#include "shared/source_features_host.h"
#include "shared/terrain_parameters.h"
#include "sighting/cover_patches_host.h"
#include "sighting/extinction.h"

#include <QMap>
#include <qgsexception.h>

#include <algorithm>
#include <cmath>

namespace brushline {

namespace {
struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::CoverParameters)
};
const QString coverKey = QStringLiteral("COVER"), classKey = QStringLiteral("COVER_CLASS"),
              legendKey = QStringLiteral("COVER_LEGEND"), tableKey = QStringLiteral("COVER_TABLE"),
              codesKey = QStringLiteral("COVER_RASTER"), seasonKey = QStringLiteral("SEASON"),
              sightsKey = QStringLiteral("SIGHT_RASTER"), clearKey = QStringLiteral("CLEAR_SIGHT"),
              shareKey = QStringLiteral("MARK_FRACTION"), leastKey = QStringLiteral("SPACING_MIN"),
              mostKey = QStringLiteral("SPACING_MAX"), unknownKey = QStringLiteral("UNKNOWN_SPEED");
constexpr Limits unknownLimits{0, 3, 1};

// The field with the classes: the one asked for, else one called "class".
int classField(const ParameterReader &reader, const QgsProcessingFeatureSource &cover) {
  const int asked = reader.fieldIndex(classKey, cover);
  const int index = asked >= 0 ? asked : cover.fields().lookupField(QStringLiteral("class"));
  if (index < 0)
    throw QgsProcessingException(Text::tr("%1: layer “%2” has no field “class”: give the field that holds the classes.")
                                     .arg(classKey, cover.sourceName()));
  return index;
}

std::shared_ptr<const CoverTable> readTable(const ParameterReader &reader) {
  const auto source = reader.source(tableKey);
  if (!source) {
    const auto legend = static_cast<CoverLegend>(reader.choice(legendKey, 5));
    return std::shared_ptr<const CoverTable>(&builtInCover(legend), [](const CoverTable *) {});
  }
  const QgsFields fields = source->fields();
  const auto need = [&](const char *name) {
    const int index = fields.lookupField(QString::fromLatin1(name));
    if (index < 0)
      throw QgsProcessingException(
          Text::tr("%1: table “%2” has no column “%3”. It needs class and sight_m, and may have "
                   "sight_bare, speed_f, pace_f and note.")
              .arg(tableKey, source->sourceName(), QString::fromLatin1(name)));
    return index;
  };
  const int name = need("class"), sight = need("sight_m");
  const int bare = fields.lookupField(QStringLiteral("sight_bare")),
            speed = fields.lookupField(QStringLiteral("speed_f")), pace = fields.lookupField(QStringLiteral("pace_f"));
  auto table = std::make_shared<CoverTable>();
  QgsFeature row;
  SourceFeatures rows(tableKey, *source, nullptr);
  while (rows.next(row)) {
    const auto number = [&](int index, const Limits &limits) -> std::optional<double> {
      const QVariant value = index < 0 ? QVariant() : row.attribute(index);
      if (value.isNull() || value.toString().trimmed().isEmpty())
        return std::nullopt;
      bool ok = false;
      const double number = value.toDouble(&ok);
      if (!ok || !limits.contains(number))
        throw QgsProcessingException(
            Text::tr("%1: table “%2”, class “%3”: %4 is “%5”; give a number from %6 to %7, with a decimal point.")
                .arg(tableKey, source->sourceName(), row.attribute(name).toString(), fields.at(index).name(),
                     value.toString(), plain(limits.least), plain(limits.most)));
      return number;
    };
    CoverClass entry;
    entry.name = row.attribute(name).toString().trimmed().toStdString();
    entry.label = entry.name;
    const auto inLeaf = number(sight, CoverClass::sightLimits);
    if (entry.name.empty() && !inLeaf)
      continue; // an empty row of a spreadsheet
    if (!inLeaf)
      throw QgsProcessingException(Text::tr("%1: table “%2”, class “%3” has no sight_m. Give the distance in metres at "
                                            "which half the marks are still clear.")
                                       .arg(tableKey, source->sourceName(), row.attribute(name).toString()));
    entry.sight = Length::metres(*inLeaf);
    if (const auto metres = number(bare, CoverClass::sightLimits))
      entry.sight_bare = Length::metres(*metres);
    // 0, or empty as in the built-in tables: nobody walks there. A table without the column says nothing of it.
    const double factor = speed < 0 ? 1 : number(speed, {0, CoverClass::speedLimits.most, 1}).value_or(0);
    entry.speed_factor = factor > 0 ? std::optional(factor) : std::nullopt;
    entry.pace_factor = number(pace, CoverClass::paceLimits).value_or(1);
    try {
      table->add(entry);
    } catch (const std::invalid_argument &error) {
      throw QgsProcessingException(
          Text::tr("%1: table “%2”, feature %3: %4. Give each class one row with its name.")
              .arg(tableKey, source->sourceName(), QString::number(row.id()), QString::fromUtf8(error.what())));
    }
  }
  if (table->classes().empty())
    throw QgsProcessingException(Text::tr("%1: table “%2” has no classes.").arg(tableKey, source->sourceName()));
  return table;
}

SpacingRule readSpacing(const ParameterReader &reader) {
  SpacingRule rule;
  rule.sight_share = reader.number(shareKey, SpacingRule::shareLimits);
  rule.least = Length::metres(reader.number(leastKey, SpacingRule::leastLimits));
  rule.most = Length::metres(reader.number(mostKey, SpacingRule::mostLimits));
  if (rule.least > rule.most)
    throw QgsProcessingException(Text::tr("%1 (%2 m) is more than %3 (%4 m): give a least spacing below the most.")
                                     .arg(leastKey, plain(rule.least.metres()), mostKey, plain(rule.most.metres())));
  return rule;
}

std::shared_ptr<const CoverMap> mapOf(const ParameterReader &reader, const QgsProcessingFeatureSource &source,
                                      const CoverTable &table, QgsProcessingFeedback *feedback) {
  const int field = classField(reader, source);
  QMap<QString, int> unknown;
  std::vector<CoverPatch> patches = readPatches(
      coverKey, source, {field},
      [&](const QgsFeature &feature) {
        const QVariant value = feature.attribute(field);
        const int cover = value.isNull() ? -1 : table.find(value.toString().toStdString());
        if (cover < 0)
          ++unknown[value.toString()];
        return cover;
      },
      feedback);
  if (!unknown.isEmpty()) {
    QStringList names;
    for (auto it = unknown.cbegin(); it != unknown.cend(); ++it)
      names << QStringLiteral("“%1” (%2)").arg(it.key(), QString::number(it.value()));
    const QString message =
        Text::tr("%1: layer “%2” has classes that the cover table lacks: %3. These polygons are passed over, and what "
                 "else is given of the cover there counts. Give them in %4, or choose the %5 they belong to.")
            .arg(coverKey, source.sourceName(), names.join(QLatin1String(", ")), tableKey, legendKey);
    if (patches.empty())
      throw QgsProcessingException(message);
    feedback->pushWarning(message);
  }
  return std::make_shared<CoverMap>(std::move(patches), FeedbackProgress(feedback));
}
} // namespace

std::vector<Land> CoverSetting::lands(size_t threads, const std::optional<RasterInput> &terrain) const {
  std::vector<Land> all;
  for (size_t i = 0; i < threads; ++i)
    all.push_back({terrain_parameters::terrainOver(terrain), source()});
  return all;
}

std::unique_ptr<CoverSource> CoverSetting::source() const {
  if (!given())
    return nullptr;
  std::vector<double> extinctions;
  for (const CoverClass &cover : table->classes())
    extinctions.push_back(extinctionOf(cover.sightIn(season)));
  auto source = std::make_unique<CoverSource>(std::move(extinctions));
  if (map)
    source->setPatches(map, map_project);
  if (codes)
    source->setCodes(codes->grid(), codes->project(),
                     [table = table](long code) { return table->find(std::to_string(code)); });
  if (sights)
    source->setSights(sights->grid(), sights->project());
  return source;
}

namespace cover_parameters {

Definitions coverDefinitions() {
  const QStringList legends = {Text::tr("Brushline's own names"), Text::tr("ESA WorldCover codes"),
                               Text::tr("CORINE level 3 codes"), Text::tr("NLCD codes"),
                               Text::tr("Orienteering map symbol numbers (ISOM 2017-2)")};
  const QStringList seasons = {Text::tr("In leaf"), Text::tr("Bare")};
  return {
      helped(new QgsProcessingParameterFeatureSource(coverKey, Text::tr("Cover (polygons)"),
                                                     QList<int>() << host::polygonLayers, QVariant(), true),
             Text::tr("What stands on the ground: open, wood, brush, thicket. Where polygons overlap, the first in the "
                      "layer counts.")),
      helped(new QgsProcessingParameterField(classKey, Text::tr("Field with the class of cover"), QVariant(), coverKey,
                                             host::anyField, false, true),
             Text::tr("Empty: the field called “class”.")),
      helped(new QgsProcessingParameterRasterLayer(codesKey, Text::tr("Cover raster (class codes)"), QVariant(), true),
             Text::tr("Land cover as whole numbers, looked up in the cover table; used where no polygon lies.")),
      helped(new QgsProcessingParameterEnum(legendKey, Text::tr("Names or codes of the classes"), legends, false, 0),
             Text::tr("The built-in table that the classes are looked up in, unless a table of your own is given.")),
      helped(new QgsProcessingParameterFeatureSource(tableKey, Text::tr("Cover table of your own"),
                                                     QList<int>() << host::anyTable, QVariant(), true),
             Text::tr("Columns: class, sight_m (metres at which half the marks are still clear), and if you like "
                      "sight_bare (the same when the leaves are off), speed_f (1 is the speed off trails, 0 or empty "
                      "where nobody walks), pace_f (of the number of paces), note. Measure your own: walk away from a "
                      "mark until half of it is gone.")),
      helped(new QgsProcessingParameterEnum(seasonKey, Text::tr("Season"), seasons, false, 0),
             Text::tr("Whether the leaves are out. Bare uses sight_bare where the table has it.")),
      advanced(helped(
          new QgsProcessingParameterRasterLayer(sightsKey, Text::tr("Sight distance raster (m)"), QVariant(), true),
          Text::tr("Metres at which half the marks are still clear. Takes precedence over the cover where "
                   "it has data."))),
      advanced(helped(
          numberDefinition(clearKey, Text::tr("Chance of a clear sight that a mark needs"), SpacingRule::clearLimits),
          Text::tr("A mark is used up to the distance at which it is clear with this probability; 0.5 is the "
                   "table's own sight distance.")))};
}

Definitions definitions() {
  Definitions all = coverDefinitions();
  all << advanced(
      helped(numberDefinition(shareKey, Text::tr("Share of the sight distance used"), SpacingRule::shareLimits),
             Text::tr("The next mark lies at this share of the sight distance.")));
  all << advanced(
      helped(numberDefinition(leastKey, Text::tr("Least spacing of marks (m)"), SpacingRule::leastLimits),
             Text::tr("Marks lie no nearer together than this, in metres, even where it cannot be seen; the "
                      "leg's warnings then say so.")));
  all << advanced(helped(numberDefinition(mostKey, Text::tr("Most spacing of marks (m)"), SpacingRule::mostLimits),
                         Text::tr("Marks lie no farther apart than this, in metres.")));
  return all;
}

Definitions unknownDefinitions() {
  // Optional, so that models made before there was such a parameter hold.
  return {advanced(helped(
      new QgsProcessingParameterNumber(unknownKey, Text::tr("Speed factor where no cover is known"), host::doubleNumber,
                                       unknownLimits.usual, true, unknownLimits.least, unknownLimits.most),
      Text::tr("Where a cover is given but says nothing. 1: as without a map of the cover; nobody has looked there "
               "whether there is water or thicket. 0: nobody is sent there.")))};
}

double readUnknownSpeed(const ParameterReader &reader) {
  return reader.maybeNumber(unknownKey, unknownLimits).value_or(unknownLimits.usual);
}

double readClearSight(const ParameterReader &reader) { return reader.number(clearKey, SpacingRule::clearLimits); }

void check(const ParameterReader &reader) {
  reader.choice(seasonKey, 2);
  readClearSight(reader);
  if (reader.has(shareKey))
    readSpacing(reader);
  readTable(reader);
  if (const auto cover = reader.source(coverKey)) {
    checkPolygons(coverKey, *cover);
    if (!reader.has(QStringLiteral("STEMS_FIELD")) || !reader.given(QStringLiteral("STEMS_FIELD")))
      classField(reader, *cover);
  }
}

CoverSetting read(const ParameterReader &reader) {
  CoverSetting setting;
  setting.season = static_cast<Season>(reader.choice(seasonKey, 2));
  setting.clear_sight = readClearSight(reader);
  if (reader.has(shareKey))
    setting.spacing = readSpacing(reader);
  setting.table = readTable(reader);
  setting.codes = RasterInput::read(reader, codesKey, QString());
  setting.sights = RasterInput::read(reader, sightsKey, QString());
  return setting;
}

void readPolygons(CoverSetting &setting, const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  const auto cover = reader.source(coverKey);
  if (!cover)
    return;
  setting.map = mapOf(reader, *cover, *setting.table, feedback);
  setting.map_project = projectInto(cover->sourceCrs(), reader.context().transformContext());
}

void report(const std::vector<const CoverSource *> &sources, QgsProcessingFeedback *feedback) {
  std::set<long> codes;
  bool badSights = false;
  for (const CoverSource *source : sources) {
    if (!source)
      continue;
    codes.insert(source->unknownCodes().begin(), source->unknownCodes().end());
    badSights = badSights || source->metBadSights();
  }
  report(codes, badSights, feedback);
}

void report(const std::set<long> &unknownCodes, bool badSights, QgsProcessingFeedback *feedback) {
  if (!unknownCodes.empty()) {
    QStringList words;
    for (const long code : unknownCodes)
      words << QString::number(code);
    feedback->pushWarning(
        Text::tr("%1: codes that the cover table lacks: %2. Nothing is known of the cover there. Give "
                 "them in %3, or choose the %4 they belong to.")
            .arg(codesKey, words.join(QLatin1String(", ")), tableKey, legendKey));
  }
  if (badSights)
    feedback->pushWarning(
        Text::tr("%1: has values of 0 or less; they were taken for places without data.").arg(sightsKey));
}

void report(const std::vector<Land> &lands, QgsProcessingFeedback *feedback) {
  std::vector<const CoverSource *> sources;
  for (const Land &land : lands)
    sources.push_back(land.cover.get());
  report(sources, feedback);
}

void report(const UnknownCover &unknown, QgsProcessingFeedback *feedback) {
  if (unknown.legs > 0)
    feedback->pushWarning(
        Text::tr("%n leg(s) lead over ground without known cover, %1 m in all: nobody has looked whether "
                 "there is water or thicket. Look at it before anybody walks there; with %2=0 no leg "
                 "leads over such ground.",
                 nullptr, unknown.legs)
            .arg(QString::number(std::max(1L, std::lround(unknown.metres))), unknownKey));
}

} // namespace cover_parameters
} // namespace brushline
