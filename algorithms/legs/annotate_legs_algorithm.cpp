// SPDX-License-Identifier: GPL-2.0-or-later
#include "legs/annotate_legs_algorithm.h"

#include "legs/leg_layer_host.h"
#include "shared/compass_parameters.h"
#include "shared/named_places_parameters.h"
#include "shared/routes_parameters.h"
#include "shared/terrain_parameters.h"
#include "shared/vector_output_host.h"
#include "shared/walker_parameters.h"

#include <qgsgeometry.h>
#include <qgslinestring.h>

#include <future>
#include <utility>

namespace brushline {

namespace {

const QString directionKey = QStringLiteral("DIRECTION"), outputKey = QStringLiteral("OUTPUT"),
              routeCountKey = QStringLiteral("ROUTE_COUNT"), legCountKey = QStringLiteral("LEG_COUNT");

// Routes that are worked out together, so that reading and writing go on beside the computing.
struct Batch {
  std::vector<RouteInput> routes;
  std::vector<std::vector<AnnotatedLeg>> legs;
  size_t vertices = 0;
};
constexpr size_t batchVertices = 4096;

Batch compute(Batch batch, LegAnnotator &annotator, const Progress &progress) {
  for (const RouteInput &route : batch.routes)
    batch.legs.push_back(annotator.annotate(route.route, progress));
  return batch;
}

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
  addParameter(new QgsProcessingParameterFeatureSink(outputKey, tr("Legs"), host::lineOutput));
  addOutput(new QgsProcessingOutputNumber(routeCountKey, tr("Routes with legs")));
  addOutput(new QgsProcessingOutputNumber(legCountKey, tr("Legs written, one for each walker")));
}

void AnnotateLegsAlgorithm::check(const ParameterReader &reader) const {
  routes_parameters::check(reader);
  named_places_parameters::check(reader);
  reader.choice(directionKey, 3);
  date_and_field_parameters::read(reader);
  const Compass compass = compass_parameters::read(reader);
  walker_parameters::read(reader, compass.bearing_error, nullptr);
}

void AnnotateLegsAlgorithm::prepare(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  check(reader);
  mDateAndField = date_and_field_parameters::read(reader);
  mTerrain = terrain_parameters::read(reader);
  mNames = named_places_parameters::read(reader, feedback);
  mSettings.field = mDateAndField.field.get();
  mSettings.compass = compass_parameters::read(reader);
  mSettings.walkers = walker_parameters::read(reader, mSettings.compass.bearing_error, feedback);
  mSettings.direction = static_cast<Direction>(reader.choice(directionKey, 3));
  mSettings.terrain = mTerrain.get();
  mSettings.names = mNames.get();
}

QVariantMap AnnotateLegsAlgorithm::run(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  RouteSource routes(reader, feedback);
  std::unique_ptr<VectorOutput> output;
  const auto openOutput = [&] {
    if (!output)
      output = std::make_unique<VectorOutput>(reader, outputKey, LegLayer::fields(), routes.legType(), routes.crs());
  };
  LegLayer layer(mSettings.compass, mSettings.walkers, mDateAndField.date);
  long routeCount = 0, legCount = 0;

  const auto write = [&](const Batch &batch) {
    for (size_t i = 0; i < batch.routes.size(); ++i) {
      const RouteInput &route = batch.routes[i];
      if (batch.legs[i].empty()) {
        routes.skip(route.where, tr("has no two vertices apart, so no leg."));
        continue;
      }
      openOutput();
      ++routeCount;
      const QVariant name(route.name);
      for (const AnnotatedLeg &leg : batch.legs[i]) {
        if (feedback->isCanceled())
          throw Cancelled();
        for (size_t walker = 0; walker < mSettings.walkers.size(); ++walker) {
          QgsFeature feature;
          feature.setGeometry(QgsGeometry(route.line(leg.from_source, leg.to_source)));
          feature.setAttributes(layer.row(name, leg, walker));
          output->add(feature);
          ++legCount;
        }
      }
    }
    feedback->setProgress(100 * routes.fraction());
  };

  // Reading and writing stay on this thread; one batch is computed beside them.
  LegAnnotator annotator(mSettings);
  const FeedbackProgress progress(feedback);
  std::future<Batch> computing;
  const auto startComputing = [&](Batch batch) {
    std::future<Batch> done = std::move(computing);
    std::optional<Batch> finished;
    if (done.valid())
      finished = done.get(); // the annotator serves one batch at a time
    computing = std::async(std::launch::async, [&annotator, &progress, batch = std::move(batch)]() mutable {
      return compute(std::move(batch), annotator, progress);
    });
    if (finished)
      write(*finished);
  };
  Batch batch;
  RouteInput route;
  while (routes.next(route)) {
    batch.vertices += route.x.size();
    batch.routes.push_back(std::move(route));
    if (batch.vertices >= batchVertices)
      startComputing(std::exchange(batch, Batch()));
  }
  startComputing(std::move(batch));
  write(computing.get());

  routes.finish(routeCount);
  openOutput();
  feedback->pushInfo(tr("%1 route(s), %2 leg row(s) written.").arg(routeCount).arg(legCount));
  return {{outputKey, output->finish(QStringLiteral(":/brushline/styles/legs.qml"))},
          {routeCountKey, double(routeCount)},
          {legCountKey, double(legCount)}};
}

} // namespace brushline
