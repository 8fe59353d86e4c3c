// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/detour_legs_algorithm.h"

#include "planning/detour_writer_host.h"
#include "shared/compass_parameters.h"
#include "shared/kept_styles_host.h"
#include "shared/named_places_parameters.h"
#include "shared/routes_parameters.h"
#include "shared/walker_parameters.h"

namespace brushline {

QString DetourLegsAlgorithm::name() const { return QStringLiteral("detourlegs"); }
QString DetourLegsAlgorithm::displayName() const { return tr("Detour round obstacles"); }
QString DetourLegsAlgorithm::group() const { return tr("Planning"); }
QString DetourLegsAlgorithm::groupId() const { return QStringLiteral("planning"); }
QStringList DetourLegsAlgorithm::tags() const {
  return tr("obstacle,detour,bypass,box,right angle,pond,thicket,leg,route,compass,paces").split(QLatin1Char(','));
}
QString DetourLegsAlgorithm::shortDescription() const {
  return tr(
      "Leads legs round ponds and thickets on three sides at right angles, with dial and paces for each piece and "
      "the count to go on with.");
}
QgsProcessingAlgorithm *DetourLegsAlgorithm::createInstance() const { return new DetourLegsAlgorithm(); }

void DetourLegsAlgorithm::initAlgorithm(const QVariantMap &) {
  addParameters(routes_parameters::definitions());
  addParameters(detour_parameters::definitions());
  addParameters(named_places_parameters::definitions());
  addParameters(date_and_field_parameters::definitions());
  addParameters(routes_parameters::gridDefinitions());
  addParameters(compass_parameters::definitions());
  addParameters(walker_parameters::definitions());
  addParameters(KeptStyles::definitions());
  addParameters(DetourWriter::definitions());
  addOutput(new QgsProcessingOutputNumber(QStringLiteral("DETOUR_COUNT"), tr("Detours")));
  addOutput(new QgsProcessingOutputNumber(QStringLiteral("NOT_PASSED"), tr("Obstacles in the way, not gone round")));
}

void DetourLegsAlgorithm::check(const ParameterReader &reader) const {
  routes_parameters::check(reader);
  detour_parameters::check(reader);
  named_places_parameters::check(reader);
  date_and_field_parameters::read(reader);
  const Compass compass = compass_parameters::read(reader);
  walker_parameters::read(reader, compass.bearing_error, nullptr);
}

void DetourLegsAlgorithm::prepare(const ParameterReader &, QgsProcessingFeedback *) {}

void DetourLegsAlgorithm::readSettings(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  mDateAndField = date_and_field_parameters::read(reader);
  mNames = named_places_parameters::read(reader, feedback);
  mSettings.field = mDateAndField.field.get();
  mSettings.compass = compass_parameters::read(reader);
  mSettings.walkers = walker_parameters::read(reader, mSettings.compass.bearing_error, feedback);
  mSettings.names = mNames.get();
}

QVariantMap DetourLegsAlgorithm::run(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  readSettings(reader, feedback);
  const DetourInput input = detour_parameters::read(reader, feedback);
  RouteSource routes(reader, feedback);
  DetourWriter writer(reader, mSettings, mDateAndField.date, *input.obstacles, input.rule, routes.crs(), feedback);
  const FeedbackProgress progress(feedback);
  long used = 0;
  RouteInput route;
  while (routes.next(route)) {
    const std::vector<RouteLeg> legs = detourRoute(route.route, *input.obstacles, input.rule, progress);
    if (legs.empty()) {
      routes.skip(route.where, tr("has no two vertices apart, so no leg."));
    } else {
      writer.write(route, legs);
      ++used;
    }
    feedback->setProgress(100 * routes.fraction());
  }
  routes.finish(used);
  return writer.finish();
}

} // namespace brushline
