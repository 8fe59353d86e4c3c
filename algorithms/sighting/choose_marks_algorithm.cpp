// SPDX-License-Identifier: GPL-2.0-or-later
#include "sighting/choose_marks_algorithm.h"

#include "shared/compass_parameters.h"
#include "shared/grid_north.h"
#include "shared/kept_styles_host.h"
#include "shared/ordered_work.h"
#include "shared/routes_parameters.h"
#include "shared/terrain_parameters.h"
#include "shared/walker_parameters.h"
#include "sighting/candidates_parameters.h"
#include "sighting/chosen_marks_host.h"
#include "sighting/footing.h"

#include <qgsexception.h>

namespace brushline {

namespace {
struct Chain {
  std::vector<ChosenMark> marks;
  std::vector<double> steps_to_marks; // from the one before
};
// The marks along a leg, for each walker in turn.
struct LegChains {
  ChosenMarksWriter::Leg leg;
  Place end;
  std::vector<Chain> by_walker;
};
} // namespace

QString ChooseMarksAlgorithm::name() const { return QStringLiteral("choosemarks"); }
QString ChooseMarksAlgorithm::displayName() const { return tr("Choose marks to leapfrog between"); }
QString ChooseMarksAlgorithm::group() const { return tr("Sighting"); }
QString ChooseMarksAlgorithm::groupId() const { return QStringLiteral("sighting"); }
QStringList ChooseMarksAlgorithm::tags() const {
  return tr("mark,tree,boulder,leapfrog,sighting,bearing,compass,leg,route,landmark").split(QLatin1Char(','));
}
QString ChooseMarksAlgorithm::shortDescription() const {
  return tr("Chooses, from trees, boulders and stumps, the chain of marks that leads along each leg, each visible from "
            "the one before.");
}
QgsProcessingAlgorithm *ChooseMarksAlgorithm::createInstance() const { return new ChooseMarksAlgorithm(); }

void ChooseMarksAlgorithm::initAlgorithm(const QVariantMap &) {
  addParameters(routes_parameters::definitions());
  addParameters(candidates_parameters::definitions());
  addParameters(date_and_field_parameters::definitions());
  addParameters(routes_parameters::gridDefinitions());
  addParameters(compass_parameters::definitions());
  addParameters(walker_parameters::definitions());
  addParameters(terrain_parameters::definitions());
  addParameters(cover_parameters::definitions());
  addParameters(KeptStyles::definitions());
  addParameters(ChosenMarksWriter::definitions());
}

void ChooseMarksAlgorithm::check(const ParameterReader &reader) const {
  routes_parameters::check(reader);
  candidates_parameters::check(reader);
  date_and_field_parameters::read(reader);
  const Compass compass = compass_parameters::read(reader);
  walker_parameters::read(reader, compass.bearing_error, nullptr);
  cover_parameters::check(reader);
}

void ChooseMarksAlgorithm::prepare(const ParameterReader &reader, QgsProcessingFeedback *) {
  mTerrain = terrain_parameters::read(reader);
  mCover = cover_parameters::read(reader);
}

void ChooseMarksAlgorithm::readRest(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  mDateAndField = date_and_field_parameters::read(reader);
  mCompass = compass_parameters::read(reader);
  mWalkers = walker_parameters::read(reader, mCompass.bearing_error, feedback);
  cover_parameters::readPolygons(mCover, reader, feedback);
  mLands = mCover.lands(workers(), mTerrain);
  mCandidates = candidates_parameters::read(reader, feedback);
}

QVariantMap ChooseMarksAlgorithm::run(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  readRest(reader, feedback);
  RouteSource routes(reader, feedback);
  const FeedbackProgress progress(feedback);
  const MarkCandidates candidates(mCandidates.places, progress);
  ChosenMarksWriter writer(reader, {mDateAndField.field.get(), mCompass, &mCandidates.names}, routes.crs());
  const auto compute = [&](LegChains leg, size_t worker) {
    const Land &land = mLands[worker];
    for (const Walker &walker : mWalkers) {
      const ChoiceRule rule{
          {mCover.clear_sight, walker.eye_height}, mCover.spacing, mCandidates.offset, walker.bearing_error};
      Chain chain{chooseMarks(leg.leg.start, leg.end, candidates, rule, land.terrain.get(), land.cover.get(), progress),
                  {}};
      Place from = leg.leg.start;
      for (const ChosenMark &mark : chain.marks) {
        chain.steps_to_marks.push_back(
            stepsAlong(from, mark.from_last, walker, land.terrain.get(), land.cover.get(), mCover.table.get()));
        from = mark.place;
      }
      leg.by_walker.push_back(std::move(chain));
    }
    return leg;
  };
  const auto write = [&](const LegChains &leg) {
    for (size_t i = 0; i < mWalkers.size(); ++i)
      writer.write(leg.leg, mWalkers[i], leg.by_walker[i].marks, leg.by_walker[i].steps_to_marks);
  };
  OrderedWork<LegChains, LegChains> work(mLands.size(), compute, write);
  routes.eachLeg([&](const LegInput &leg) {
    work.push({{leg.route.name, leg.number, leg.route.direction(), leg.route.route.grid, leg.from, leg.start_x},
               leg.to,
               {}});
  });
  work.finish();
  cover_parameters::report(mLands, feedback);
  return writer.finish(feedback);
}

} // namespace brushline
