// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/practice_course_parameters.h"

#include "planning/features_parameters.h"
#include "shared/parameter_checks_host.h"
#include "shared/place_reader_host.h"
#include "shared/shapes_reader_host.h"

#include <qgsexception.h>

namespace brushline::practice_course_parameters {

namespace {
struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::PracticeCourseParameters)
};
const QString areaKey = QStringLiteral("AREA"), startsKey = QStringLiteral("STARTS"),
              startNameKey = QStringLiteral("START_NAME"), sitesKey = QStringLiteral("SITES"),
              siteNameKey = QStringLiteral("SITE_NAME"), avoidKey = QStringLiteral("AVOID"),
              coursesKey = QStringLiteral("COURSES"), legsKey = QStringLiteral("LEGS"),
              leastKey = QStringLiteral("LEG_MIN"), mostKey = QStringLiteral("LEG_MAX"),
              turnKey = QStringLiteral("TURN_MIN"), closedKey = QStringLiteral("CLOSED"),
              seedKey = QStringLiteral("SEED"), clearanceKey = QStringLiteral("CLEARANCE"),
              slopeKey = QStringLiteral("SLOPE_LIMIT");
constexpr Limits clearanceLimits{0, 1000, 2}, slopeLimits{1, 89, 30};

QgsProcessingParameterDefinition *wholeDefinition(const QString &key, const QString &label, const Limits &limits) {
  return new QgsProcessingParameterNumber(key, label, host::integerNumber, limits.usual, false, limits.least,
                                          limits.most);
}

QgsProcessingParameterDefinition *nameDefinition(const QString &key, const QString &label, const QString &layer) {
  return helped(new QgsProcessingParameterField(key, label, QVariant(), layer, host::anyField, false, true),
                Text::tr("Empty: the field called “name”, if there is one."));
}

CourseRule ruleOf(const ParameterReader &reader) {
  CourseRule rule;
  rule.courses = wholeNumber(reader, coursesKey, CourseRule::coursesLimits);
  rule.legs = wholeNumber(reader, legsKey, CourseRule::legsLimits);
  rule.window = {reader.number(leastKey, CourseRule::leastLimits), reader.number(mostKey, CourseRule::mostLimits)};
  rule.least_turn = Angle::degrees(reader.number(turnKey, CourseRule::turnLimits));
  rule.closed = reader.flag(closedKey);
  rule.seed = uint64_t(wholeNumber(reader, seedKey, CourseRule::seedLimits));
  if (rule.window.least_m > rule.window.most_m)
    throw QgsProcessingException(
        Text::tr("%1 is %2 m and %3 is %4 m: the shortest leg cannot be longer than the longest.")
            .arg(leastKey, plain(rule.window.least_m), mostKey, plain(rule.window.most_m)));
  if (rule.closed && rule.legs < 3)
    throw QgsProcessingException(
        Text::tr("%1 is %2, but a course back to its start needs three legs or more. Give more, "
                 "or turn %3 off.")
            .arg(legsKey)
            .arg(rule.legs)
            .arg(closedKey));
  return rule;
}

std::unique_ptr<QgsProcessingFeatureSource> areaOf(const ParameterReader &reader) {
  auto area = reader.source(areaKey);
  if (!area)
    throw QgsProcessingException(Text::tr("%1: give a layer with the polygons that courses stay in.").arg(areaKey));
  checkPolygons(areaKey, *area);
  return area;
}

int nameField(const ParameterReader &reader, const QString &key, const QgsProcessingFeatureSource &source) {
  const int asked = reader.fieldIndex(key, source);
  return asked >= 0 ? asked : source.fields().lookupField(QStringLiteral("name"));
}

std::vector<NamedPlace> placesOf(const ParameterReader &reader, const QString &key, const QString &nameKey,
                                 const QgsProcessingFeatureSource &source, QgsProcessingFeedback *feedback) {
  std::vector<NamedPlace> places;
  readPlaces(key, source, nameField(reader, nameKey, source), reader.context().transformContext(), feedback,
             [&](const Place &place, const QString &name) {
               places.push_back({place, name.toStdString()});
             });
  return places;
}
} // namespace

Definitions definitions() {
  const auto points = QList<int>() << host::pointLayers;
  return Definitions{
             helped(
                 new QgsProcessingParameterFeatureSource(areaKey, Text::tr("Area that courses stay in (polygons)"),
                                                         QList<int>() << host::polygonLayers),
                 Text::tr("Every leg lies wholly inside. Holes are out of bounds; polygons that touch are one area.")),
             helped(new QgsProcessingParameterFeatureSource(startsKey, Text::tr("Starts (points)"), points, QVariant(),
                                                            true),
                    Text::tr("Where groups set out. Courses are dealt to the starts in turn, by their names; several "
                             "may share one. Empty: one is chosen, a site where sites are given.")),
             nameDefinition(startNameKey, Text::tr("Field with the start's name"), startsKey),
             helped(new QgsProcessingParameterFeatureSource(sitesKey, Text::tr("Sites for controls (points)"), points,
                                                            QVariant(), true),
                    Text::tr("Boulders, stumps, gate posts: what can be known for certain on reaching it. Empty: "
                             "controls stand anywhere, and a marker has to be hung up at each.")),
             nameDefinition(siteNameKey, Text::tr("Field with the site's name"), sitesKey)} +
         features_parameters::definitions(
             avoidKey, Text::tr("Ground to keep away from"),
             Text::tr("Ponds, cliffs, roads, flower beds: layers of polygons, lines or points that no leg meets."),
             true) +
         Definitions{
             helped(wholeDefinition(coursesKey, Text::tr("Courses"), CourseRule::coursesLimits),
                    Text::tr("How many different courses, one for each group.")),
             helped(wholeDefinition(legsKey, Text::tr("Legs of a course"), CourseRule::legsLimits),
                    Text::tr("Each course has so many; back to its start, three or more.")),
             helped(numberDefinition(leastKey, Text::tr("Shortest leg (m)"), CourseRule::leastLimits),
                    Text::tr("In metres on the map. In a garden 15, in a forest 200.")),
             helped(numberDefinition(mostKey, Text::tr("Longest leg (m)"), CourseRule::mostLimits),
                    Text::tr("In metres on the map. In a garden 30, in a forest 400.")),
             helped(numberDefinition(turnKey, Text::tr("Least turn at a control (degrees)"), CourseRule::turnLimits),
                    Text::tr("The bearing changes by at least this many degrees, so that nobody walks on without "
                             "setting the dial anew.")),
             helped(new QgsProcessingParameterBoolean(closedKey, Text::tr("Back to the start"), true),
                    Text::tr("The last leg leads back to the start. Off: a course ends at its last control.")),
             helped(wholeDefinition(seedKey, Text::tr("Seed"), CourseRule::seedLimits),
                    Text::tr("The same seed gives the same courses again, another one gives others."))};
}

Definitions rareDefinitions() {
  return {
      helped(numberDefinition(clearanceKey, Text::tr("Room to what is kept away from (m)"), clearanceLimits),
             Text::tr("No leg comes nearer to it than this, in metres. Walkers drift: give more at water and cliffs.")),
      helped(numberDefinition(slopeKey, Text::tr("Steepest ground (degrees)"), slopeLimits),
             Text::tr("No leg leads over ground steeper than this, in whatever direction it falls. Needs a terrain "
                      "model."))};
}

void check(const ParameterReader &reader) {
  areaOf(reader);
  ruleOf(reader);
  for (const auto &[key, nameKey] : {std::pair(startsKey, startNameKey), std::pair(sitesKey, siteNameKey)})
    if (const auto source = reader.source(key)) {
      checkPoints(key, *source);
      reader.fieldIndex(nameKey, *source);
    }
  features_parameters::check(reader, avoidKey);
  reader.number(clearanceKey, clearanceLimits);
  reader.number(slopeKey, slopeLimits);
}

PracticeInput read(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  PracticeInput input;
  input.setting.rule = ruleOf(reader);
  input.clearance = Length::metres(reader.number(clearanceKey, clearanceLimits));
  input.slope_limit = Angle::degrees(reader.number(slopeKey, slopeLimits));
  const auto area = areaOf(reader);
  input.crs = area->sourceCrs();
  input.middle_x = area->sourceExtent().center().x();
  const double halfWorld = FromPlaces(input.crs, reader.context().transformContext()).worldWidth() / 2;
  if (halfWorld > 0 && !(area->sourceExtent().width() < halfWorld)) // on both sides of the 180th meridian
    input.middle_x += halfWorld;
  input.area_name = area->sourceName();
  addShapes(input.area, areaKey, *area, -1, 0, reader.context().transformContext(), feedback);
  if (input.area.empty())
    throw QgsProcessingException(Text::tr("%1: layer “%2” has no polygons. Draw the area that courses are to stay in.")
                                     .arg(areaKey, input.area_name));
  if (const int crossing = invalidShapes(areaKey, *area, feedback); crossing > 0)
    feedback->pushWarning(
        Text::tr("%1: %n polygon(s) of layer “%2” are not valid (they cross or touch themselves). What "
                 "is enclosed an odd number of times counts as inside. Mend them with “Fix geometries”.",
                 nullptr, crossing)
            .arg(areaKey, input.area_name));
  input.avoid = features_parameters::read(reader, avoidKey, QString(), feedback).shapes;
  if (const auto starts = reader.source(startsKey)) {
    input.setting.starts = placesOf(reader, startsKey, startNameKey, *starts, feedback);
    if (input.setting.starts.empty())
      throw QgsProcessingException(
          Text::tr("%1: layer “%2” has no points. Give at least one start, or leave %1 empty and "
                   "one is chosen.")
              .arg(startsKey, starts->sourceName()));
  }
  if (const auto sites = reader.source(sitesKey))
    input.setting.sites = placesOf(reader, sitesKey, siteNameKey, *sites, feedback);
  return input;
}

} // namespace brushline::practice_course_parameters
