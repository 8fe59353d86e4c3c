// SPDX-License-Identifier: GPL-2.0-or-later
#include "records/calibrate_paces_algorithm.h"

#include "records/calibrated_walkers_host.h"
#include "shared/walker_parameters.h"

namespace brushline {

QString CalibratePacesAlgorithm::name() const { return QStringLiteral("calibratepaces"); }
QString CalibratePacesAlgorithm::displayName() const { return tr("Calibrate paces"); }
QString CalibratePacesAlgorithm::group() const { return tr("Records"); }
QString CalibratePacesAlgorithm::groupId() const { return QStringLiteral("records"); }
QStringList CalibratePacesAlgorithm::tags() const {
  return tr("pace,paces,count,step,stride,calibrate,walker,walkers,measure,distance").split(QLatin1Char(','));
}
QString CalibratePacesAlgorithm::shortDescription() const {
  return tr("Makes a table of walkers, with their paces over 100 m and how sure they are, from counts over known "
            "distances.");
}
QgsProcessingAlgorithm *CalibratePacesAlgorithm::createInstance() const { return new CalibratePacesAlgorithm(); }

void CalibratePacesAlgorithm::initAlgorithm(const QVariantMap &) {
  addParameters(pace_tries::definitions());
  addParameter(walker_parameters::kindDefinition());
  addParameters(CalibratedWalkers::definitions());
  addOutput(new QgsProcessingOutputNumber(QStringLiteral("WALKER_COUNT"), tr("Walkers")));
  addOutput(new QgsProcessingOutputNumber(QStringLiteral("TRIES_USED"), tr("Tries used")));
}

void CalibratePacesAlgorithm::check(const ParameterReader &reader) const {
  pace_tries::check(reader);
  walker_parameters::readKind(reader);
}

void CalibratePacesAlgorithm::prepare(const ParameterReader &, QgsProcessingFeedback *) {}

QVariantMap CalibratePacesAlgorithm::run(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  const PaceKind kind = walker_parameters::readKind(reader);
  const auto walkers = pace_tries::read(reader, feedback);
  const FeedbackProgress progress(feedback);
  CalibratedWalkers output(reader, kind, feedback);
  for (size_t i = 0; i < walkers.size(); ++i) {
    progress.check();
    output.write(walkers[i], calibratePaces(walkers[i].tries, kind));
    feedback->setProgress(50 + 50 * double(i + 1) / double(walkers.size()));
  }
  return output.finish();
}

} // namespace brushline
