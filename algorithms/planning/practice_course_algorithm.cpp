// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/practice_course_algorithm.h"

#include "planning/practice_course_writer_host.h"
#include "shared/compass_parameters.h"
#include "shared/kept_styles_host.h"
#include "shared/terrain_parameters.h"
#include "shared/walker_parameters.h"

#include <qgsexception.h>

#include <stdexcept>
#include <utility>

namespace brushline {

QString PracticeCourseAlgorithm::name() const { return QStringLiteral("practicecourse"); }
QString PracticeCourseAlgorithm::displayName() const { return tr("Lay out practice courses"); }
QString PracticeCourseAlgorithm::group() const { return tr("Planning"); }
QString PracticeCourseAlgorithm::groupId() const { return QStringLiteral("planning"); }
QStringList PracticeCourseAlgorithm::tags() const {
  return tr("practice,course,control,compass,pace,leg,garden,school,scouts,children,training,loop")
      .split(QLatin1Char(','));
}
QString PracticeCourseAlgorithm::shortDescription() const {
  return tr(
      "Lays out several compass courses in an area, different but equally hard, with controls that nobody takes for "
      "one another.");
}
QgsProcessingAlgorithm *PracticeCourseAlgorithm::createInstance() const { return new PracticeCourseAlgorithm(); }

void PracticeCourseAlgorithm::initAlgorithm(const QVariantMap &) {
  addParameters(practice_course_parameters::definitions());
  addParameters(practice_course_parameters::rareDefinitions());
  addParameters(date_and_field_parameters::definitions());
  addParameters(compass_parameters::definitions());
  addParameters(walker_parameters::definitions());
  addParameters(terrain_parameters::definitions());
  addParameters(cover_parameters::definitions());
  addParameters(cover_parameters::unknownDefinitions());
  addParameters(KeptStyles::definitions());
  addParameters(PracticeCourseWriter::definitions());
  for (QgsProcessingOutputDefinition *number : PracticeCourseWriter::numbers())
    addOutput(number);
}

void PracticeCourseAlgorithm::check(const ParameterReader &reader) const {
  practice_course_parameters::check(reader);
  date_and_field_parameters::read(reader);
  const Compass compass = compass_parameters::read(reader);
  walker_parameters::read(reader, compass.bearing_error, nullptr);
  cover_parameters::check(reader);
  cover_parameters::readUnknownSpeed(reader);
}

void PracticeCourseAlgorithm::prepare(const ParameterReader &reader, QgsProcessingFeedback *) {
  mTerrain = terrain_parameters::read(reader);
  mCover = cover_parameters::read(reader);
}

void PracticeCourseAlgorithm::readRest(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  mInput = practice_course_parameters::read(reader, feedback);
  mDateAndField = date_and_field_parameters::read(reader);
  cover_parameters::readPolygons(mCover, reader, feedback);
  AnnotateSettings &legs = mTools.legs;
  legs.field = mDateAndField.field.get();
  legs.compass = compass_parameters::read(reader);
  legs.walkers = walker_parameters::read(reader, legs.compass.bearing_error, feedback);
  legs.clear_sight = mCover.clear_sight;
  legs.spacing = mCover.spacing;
  legs.cover_table = mCover.table.get();
  const double unknownSpeed = cover_parameters::readUnknownSpeed(reader);
  mTools.close_unknown = !(unknownSpeed > 0);
  mTools.terrain = terrain_parameters::terrainOver(mTerrain);
  mTools.bare_terrain = terrain_parameters::terrainOver(mTerrain);
  mTools.slope_terrain = terrain_parameters::terrainOver(mTerrain);
  mTools.slope_limit = mInput.slope_limit;
  mTools.cover = mCover.source();
  mTools.spot_cover = mCover.source();
  mTools.cover_classes = mCover.map || mCover.codes;
  if (mTools.cover_classes && !mTools.close_unknown)
    legs.unknown_speed = unknownSpeed;
}

void PracticeCourseAlgorithm::checkWidth(const CourseGround &ground) const {
  const double width = metresBetween(ground.low(), ground.high()), least = mInput.setting.rule.window.least_m;
  if (width < least)
    throw QgsProcessingException(
        tr("AREA: layer “%1” is at most %2 m across, but the shortest leg is to be %3 m. Give a "
           "larger area or a smaller LEG_MIN.")
            .arg(mInput.area_name, QString::number(width, 'f', 1), plain(least)));
}

QVariantMap PracticeCourseAlgorithm::run(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  readRest(reader, feedback);
  const FeedbackProgress progress(feedback);
  std::optional<CourseGround> ground;
  try {
    ground.emplace(mInput.area, mInput.avoid, mInput.clearance, progress);
  } catch (const std::invalid_argument &error) {
    throw QgsProcessingException(tr("AREA: layer “%1” is of no use: %2. Draw one or more polygons, the widest 100 km.")
                                     .arg(mInput.area_name, QString::fromUtf8(error.what())));
  }
  checkWidth(*ground);
  mTools.ground = &*ground;
  CourseLegs legs(std::move(mTools));
  const PracticeCourses courses = layPracticeCourses(mInput.setting, *ground, legs, progress,
                                                     [&](double share) { feedback->setProgress(100 * share); });
  cover_parameters::report({legs.cover()}, feedback);
  PracticeCourseWriter writer(reader, mInput, courses, feedback);
  writer.tell();
  cover_parameters::report(writer.unknownCover(), feedback);
  return writer.write();
}

} // namespace brushline
