// SPDX-License-Identifier: GPL-2.0-or-later
#include "sighting/choose_marks_algorithm.h"

#include "shared/compass_parameters.h"
#include "shared/grid_north.h"
#include "shared/kept_styles_host.h"
#include "shared/routes_parameters.h"
#include "shared/terrain_parameters.h"
#include "shared/walker_parameters.h"
#include "sighting/candidates_parameters.h"
#include "sighting/chosen_marks_host.h"

#include <qgsexception.h>

namespace brushline {

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

void ChooseMarksAlgorithm::prepare(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  mDateAndField = date_and_field_parameters::read(reader);
  mCompass = compass_parameters::read(reader);
  mWalkers = walker_parameters::read(reader, mCompass.bearing_error, feedback);
  mCover = cover_parameters::read(reader, feedback);
  mTerrain = terrain_parameters::terrainOver(terrain_parameters::read(reader));
  mSource = mCover.source();
  mCandidates = candidates_parameters::read(reader, feedback);
}

QVariantMap ChooseMarksAlgorithm::run(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  RouteSource routes(reader, feedback);
  const FeedbackProgress progress(feedback);
  const MarkCandidates candidates(mCandidates.places, progress);
  ChosenMarksWriter writer(
      reader,
      {mDateAndField.field.get(), mCompass, mTerrain.get(), mSource.get(), mCover.table.get(), &mCandidates.names},
      routes.crs());
  routes.eachLeg([&](const LegInput &leg) {
    for (const Walker &walker : mWalkers) {
      const ChoiceRule rule{
          {mCover.clear_sight, walker.eye_height}, mCover.spacing, mCandidates.offset, walker.bearing_error};
      writer.write({leg.route.name, leg.number, leg.route.route.grid, leg.from}, walker,
                   chooseMarks(leg.from, leg.to, candidates, rule, mTerrain.get(), mSource.get(), progress));
    }
  });
  if (mSource)
    cover_parameters::report({mSource.get()}, feedback);
  return writer.finish(feedback);
}

} // namespace brushline
