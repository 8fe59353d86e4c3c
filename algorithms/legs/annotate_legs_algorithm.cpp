// SPDX-License-Identifier: GPL-2.0-or-later
#include "legs/annotate_legs_algorithm.h"

#include "legs/leg_writer_host.h"
#include "shared/compass_parameters.h"
#include "shared/kept_styles_host.h"
#include "shared/named_places_parameters.h"
#include "shared/ordered_work.h"
#include "shared/routes_parameters.h"
#include "shared/terrain_parameters.h"
#include "shared/walker_parameters.h"

#include <utility>

namespace brushline {

namespace {

const QString directionKey = QStringLiteral("DIRECTION"), namedFoundKey = QStringLiteral("NAMED_FOUND");

// Routes that are worked out together, so that reading and writing go on beside the computing.
struct Batch {
  std::vector<RouteInput> routes;
  std::vector<std::vector<AnnotatedLeg>> legs;
  size_t vertices = 0;
};
constexpr size_t batchVertices = 4096;

} // namespace

QString AnnotateLegsAlgorithm::name() const { return QStringLiteral("annotatelegs"); }
QString AnnotateLegsAlgorithm::displayName() const { return tr("Annotate legs"); }
QString AnnotateLegsAlgorithm::group() const { return tr("Legs"); }
QString AnnotateLegsAlgorithm::groupId() const { return QStringLiteral("legs"); }
QStringList AnnotateLegsAlgorithm::tags() const {
  return tr("compass,bearing,azimuth,heading,magnetic,declination,variation,paces,pacing,step count,route,leg,back "
            "bearing,off trail,cross country,dead reckoning,navigation,walk,hike,course")
      .split(QLatin1Char(','));
}
QString AnnotateLegsAlgorithm::shortDescription() const {
  return tr("Turns planned routes into legs to walk by compass and pace count: the number for the dial today, paces, "
            "minutes and the way back.");
}
QgsProcessingAlgorithm *AnnotateLegsAlgorithm::createInstance() const { return new AnnotateLegsAlgorithm(); }

void AnnotateLegsAlgorithm::initAlgorithm(const QVariantMap &) {
  addParameters(routes_parameters::definitions());
  addParameters(named_places_parameters::definitions());
  const QStringList directions = {tr("Out, as drawn"), tr("Back, the other way"), tr("Both")};
  addParameters({helped(new QgsProcessingParameterEnum(directionKey, tr("Direction"), directions, false, 0),
                        tr("Legs as the route is drawn, the way home, or both."))});
  addParameters(date_and_field_parameters::definitions());
  addParameters(routes_parameters::gridDefinitions());
  addParameters(compass_parameters::definitions());
  addParameters(walker_parameters::definitions());
  addParameters(terrain_parameters::definitions());
  addParameters(cover_parameters::definitions());
  addParameters({advanced(
      helped(new QgsProcessingParameterBoolean(namedFoundKey, tr("Named points are found with certainty"), true),
             tr("Drift starts anew at every named point. Off: errors add up along the whole route.")))});
  addParameters(LegAdvice::definitions());
  addParameters(KeptStyles::definitions());
  addParameters(LegWriter::definitions());
  addOutput(new QgsProcessingOutputNumber(QStringLiteral("ROUTE_COUNT"), tr("Routes with legs")));
  addOutput(new QgsProcessingOutputNumber(QStringLiteral("LEG_COUNT"), tr("Legs written, one for each walker")));
}

void AnnotateLegsAlgorithm::check(const ParameterReader &reader) const {
  routes_parameters::check(reader);
  named_places_parameters::check(reader);
  reader.choice(directionKey, 3);
  date_and_field_parameters::read(reader);
  const Compass compass = compass_parameters::read(reader);
  walker_parameters::read(reader, compass.bearing_error, nullptr);
  cover_parameters::check(reader);
  LegAdvice::check(reader);
}

void AnnotateLegsAlgorithm::prepare(const ParameterReader &reader, QgsProcessingFeedback *) {
  mTerrain = terrain_parameters::read(reader);
  mCover = cover_parameters::read(reader);
}

void AnnotateLegsAlgorithm::readRest(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  mDateAndField = date_and_field_parameters::read(reader);
  mNames = named_places_parameters::read(reader, feedback);
  cover_parameters::readPolygons(mCover, reader, feedback);
  mSettings.field = mDateAndField.field.get();
  mSettings.compass = compass_parameters::read(reader);
  mSettings.walkers = walker_parameters::read(reader, mSettings.compass.bearing_error, feedback);
  mSettings.direction = static_cast<Direction>(reader.choice(directionKey, 3));
  mSettings.names = mNames.get();
  mSettings.named_found = reader.flag(namedFoundKey);
  mSettings.clear_sight = mCover.clear_sight;
  mSettings.spacing = mCover.spacing;
  mSettings.cover_table = mCover.table.get();
  mSettings.keep_marks = LegWriter::wantsMarks(reader);
  mAdvice = LegAdvice(reader, feedback);
  const size_t count = workers();
  for (size_t i = 0; i < count; ++i)
    mAnnotators.push_back(
        std::make_unique<LegAnnotator>(mSettings, terrain_parameters::terrainOver(mTerrain), mCover.source()));
}

QVariantMap AnnotateLegsAlgorithm::run(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  readRest(reader, feedback);
  RouteSource routes(reader, feedback);
  LegWriter writer(reader, LegLayer(mSettings.compass, mSettings.walkers, mDateAndField.date, mCover.table),
                   std::move(mAdvice), routes.legType(), routes.crs(), mSettings.walkers.size());
  const FeedbackProgress progress(feedback);
  const auto compute = [&](Batch batch, size_t worker) {
    for (const RouteInput &route : batch.routes)
      batch.legs.push_back(mAnnotators[worker]->annotate(route.route, progress));
    return batch;
  };
  const auto write = [&](Batch batch) {
    for (size_t i = 0; i < batch.routes.size(); ++i) {
      if (batch.legs[i].empty())
        routes.skip(batch.routes[i].where, tr("has no two vertices apart, so no leg."));
      else
        writer.write(batch.routes[i], std::move(batch.legs[i]), feedback);
    }
    feedback->setProgress(100 * routes.fraction());
  };
  OrderedWork<Batch, Batch> work(mAnnotators.size(), compute, write);
  Batch batch;
  RouteInput route;
  while (routes.next(route)) {
    batch.vertices += route.x.size();
    batch.routes.push_back(std::move(route));
    if (batch.vertices >= batchVertices)
      work.push(std::exchange(batch, Batch()));
  }
  work.push(std::move(batch));
  work.finish();

  routes.finish(writer.routes());
  std::vector<const CoverSource *> sources;
  for (const auto &annotator : mAnnotators)
    sources.push_back(annotator->cover());
  cover_parameters::report(sources, feedback);
  return writer.finish(feedback);
}

} // namespace brushline
