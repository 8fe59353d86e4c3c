// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/aim_off_algorithm.h"

#include "planning/aim_off_writer_host.h"
#include "shared/compass_parameters.h"
#include "shared/kept_styles_host.h"
#include "shared/ordered_work.h"
#include "shared/routes_parameters.h"
#include "shared/terrain_parameters.h"
#include "shared/walker_parameters.h"

#include <utility>

namespace brushline {

namespace {

// Starts that are worked out together, so that reading and writing go on beside the computing.
struct Batch {
  std::vector<AimStartInput> starts;
  std::vector<AimPlan> plans;
};
constexpr size_t batchStarts = 64;

} // namespace

QString AimOffAlgorithm::name() const { return QStringLiteral("aimoff"); }
QString AimOffAlgorithm::displayName() const { return tr("Aim off to a line feature"); }
QString AimOffAlgorithm::group() const { return tr("Planning"); }
QString AimOffAlgorithm::groupId() const { return QStringLiteral("planning"); }
QStringList AimOffAlgorithm::tags() const {
  return tr("aiming off,deliberate offset,handrail,catching feature,trail,stream,compass,bearing,drift,leg,off trail")
      .split(QLatin1Char(','));
}
QString AimOffAlgorithm::shortDescription() const {
  return tr(
      "Legs that aim to one side of a destination on a trail or stream, so that on meeting it one knows which way "
      "to turn.");
}
QgsProcessingAlgorithm *AimOffAlgorithm::createInstance() const { return new AimOffAlgorithm(); }

void AimOffAlgorithm::initAlgorithm(const QVariantMap &) {
  addParameters(aim_off_parameters::definitions());
  addParameters(aim_off_parameters::rareDefinitions());
  addParameters(date_and_field_parameters::definitions());
  addParameters(routes_parameters::gridDefinitions());
  addParameters(compass_parameters::definitions());
  addParameters(walker_parameters::definitions());
  addParameters(terrain_parameters::definitions());
  addParameters(cover_parameters::definitions());
  addParameters(KeptStyles::definitions());
  addParameters(AimOffWriter::definitions());
  addOutput(new QgsProcessingOutputNumber(QStringLiteral("START_COUNT"), tr("Starts with legs")));
  addOutput(new QgsProcessingOutputNumber(QStringLiteral("LEG_COUNT"), tr("Legs written, one for each walker")));
  addOutput(new QgsProcessingOutputNumber(QStringLiteral("SKIPPED_COUNT"), tr("Starts passed over")));
}

void AimOffAlgorithm::check(const ParameterReader &reader) const {
  aim_off_parameters::check(reader);
  AimStarts::check(reader);
  date_and_field_parameters::read(reader);
  const Compass compass = compass_parameters::read(reader);
  walker_parameters::read(reader, compass.bearing_error, nullptr);
  cover_parameters::check(reader);
}

void AimOffAlgorithm::prepare(const ParameterReader &reader, QgsProcessingFeedback *) {
  mTerrain = terrain_parameters::read(reader);
  mCover = cover_parameters::read(reader);
}

void AimOffAlgorithm::readRest(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  mDateAndField = date_and_field_parameters::read(reader);
  mInput = aim_off_parameters::read(reader, feedback);
  cover_parameters::readPolygons(mCover, reader, feedback);
  mSettings.field = mDateAndField.field.get();
  mSettings.compass = compass_parameters::read(reader);
  mSettings.walkers = walker_parameters::read(reader, mSettings.compass.bearing_error, feedback);
  mSettings.clear_sight = mCover.clear_sight;
  mSettings.spacing = mCover.spacing;
  mSettings.cover_table = mCover.table.get();
  const size_t count = workers();
  for (size_t i = 0; i < count; ++i) {
    std::vector<std::unique_ptr<LegAnnotator>> annotators;
    for (size_t walker = 0; walker < mSettings.walkers.size(); ++walker)
      annotators.push_back(std::make_unique<LegAnnotator>(AimPlanner::annotatorSettings(mSettings, walker),
                                                          terrain_parameters::terrainOver(mTerrain), mCover.source()));
    mPlanners.push_back(std::make_unique<AimPlanner>(AimPlanner::Setting{mInput.lines.get(), mInput.destinations.get(),
                                                                         mInput.catching.get(), mInput.rule, mSettings},
                                                     std::move(annotators), terrain_parameters::terrainOver(mTerrain)));
  }
}

QVariantMap AimOffAlgorithm::run(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  readRest(reader, feedback);
  AimStarts starts(reader, mInput, feedback);
  std::vector<LegLayer> layers;
  for (const Walker &walker : mSettings.walkers)
    layers.emplace_back(mSettings.compass, std::vector<Walker>{walker}, mDateAndField.date, mCover.table);
  AimOffWriter writer(reader, std::move(layers), mInput, starts.crs());
  const FeedbackProgress progress(feedback);
  const auto compute = [&](Batch batch, size_t worker) {
    for (const AimStartInput &start : batch.starts)
      batch.plans.push_back(mPlanners[worker]->plan(start.start, progress));
    return batch;
  };
  const auto write = [&](Batch batch) {
    for (size_t i = 0; i < batch.starts.size(); ++i) {
      if (feedback->isCanceled())
        throw Cancelled();
      if (batch.plans[i].failure)
        starts.skip(batch.starts[i].where, starts.reason(*batch.plans[i].failure));
      else
        writer.write(batch.starts[i], batch.plans[i]);
    }
    feedback->setProgress(100 * starts.fraction());
  };
  OrderedWork<Batch, Batch> work(mPlanners.size(), compute, write);
  Batch batch;
  AimStartInput start;
  while (starts.next(start)) {
    batch.starts.push_back(std::move(start));
    if (batch.starts.size() >= batchStarts)
      work.push(std::exchange(batch, Batch()));
  }
  work.push(std::move(batch));
  work.finish();

  starts.finish(writer.starts());
  std::vector<const CoverSource *> sources;
  for (const auto &planner : mPlanners)
    for (const auto &annotator : planner->annotators())
      sources.push_back(annotator->cover());
  cover_parameters::report(sources, feedback);
  return writer.finish(starts.skipped(), feedback);
}

} // namespace brushline
