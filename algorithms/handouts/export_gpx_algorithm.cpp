// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/export_gpx_algorithm.h"

#include <QDateTime>
#include <QRegularExpression>
#include <qgsexception.h>
#include <qgsprocessingoutputs.h>
#include <qgsprocessingprovider.h>

namespace brushline {

namespace {
const QString outputKey = QStringLiteral("OUTPUT"), titleKey = QStringLiteral("TITLE"),
              oneRouteKey = QStringLiteral("ONE_ROUTE"), routeCountKey = QStringLiteral("ROUTE_COUNT"),
              pointCountKey = QStringLiteral("POINT_COUNT"), waypointCountKey = QStringLiteral("WAYPOINT_COUNT");

// The day and time of writing; the one that the environment sets where outputs shall be the same in every run.
QString timeOfWriting() {
  QDateTime time = QDateTime::currentDateTimeUtc();
  const QString set = qEnvironmentVariable("SOURCE_DATE_EPOCH").trimmed();
  if (!set.isEmpty()) {
    static const QRegularExpression seconds(QStringLiteral("^[0-9]{1,11}$")); // up to the year 5138
    if (!seconds.match(set).hasMatch())
      throw QgsProcessingException(
          QCoreApplication::translate("brushline::ExportGpxAlgorithm",
                                      "The environment variable SOURCE_DATE_EPOCH is “%1”, which "
                                      "is no count of seconds since 1970. Correct or unset it.")
              .arg(set));
    time = QDateTime::fromSecsSinceEpoch(set.toLongLong(), Qt::UTC);
  }
  return time.toString(QStringLiteral("yyyy-MM-ddTHH:mm:ssZ"));
}
} // namespace

QString ExportGpxAlgorithm::name() const { return QStringLiteral("exportgpx"); }
QString ExportGpxAlgorithm::displayName() const { return tr("Export legs to GPX"); }
QString ExportGpxAlgorithm::group() const { return tr("Handouts"); }
QString ExportGpxAlgorithm::groupId() const { return QStringLiteral("handouts"); }
QStringList ExportGpxAlgorithm::tags() const {
  return tr("gpx,gps,receiver,handheld,route,waypoint,leg,bearing,paces,compass,export,phone").split(QLatin1Char(','));
}
QString ExportGpxAlgorithm::shortDescription() const {
  return tr("Writes annotated legs as routes, and their marks as waypoints, for a GPS receiver or a phone: each point "
            "tells the number for the dial and the paces of the leg that starts there.");
}
QgsProcessingAlgorithm *ExportGpxAlgorithm::createInstance() const { return new ExportGpxAlgorithm(); }

void ExportGpxAlgorithm::initAlgorithm(const QVariantMap &) {
  addParameters(leg_sheets::legsDefinitions());
  addParameters(leg_sheets::marksDefinitions());
  addParameters(
      {helped(new QgsProcessingParameterString(titleKey, tr("Title"), QVariant(), false, true),
              tr("The file's name for itself. Empty: the route's name, if there is one route.")),
       advanced(helped(new QgsProcessingParameterBoolean(oneRouteKey, tr("One route for all walkers"), false),
                       tr("Off: a route for each walker. On: one for all, whose points tell everybody's paces."))),
       helped(new QgsProcessingParameterFileDestination(outputKey, tr("GPX file"), tr("GPX files (*.gpx)")),
              tr("Appears whole or not at all."))});
  addParameters(HandoutFiles::replaceDefinitions());
  addOutput(new QgsProcessingOutputNumber(routeCountKey, tr("Routes")));
  addOutput(new QgsProcessingOutputNumber(pointCountKey, tr("Points of routes")));
  addOutput(new QgsProcessingOutputNumber(waypointCountKey, tr("Waypoints (marks)")));
}

void ExportGpxAlgorithm::check(const ParameterReader &reader) const { leg_sheets::check(reader); }

void ExportGpxAlgorithm::prepare(const ParameterReader &reader, QgsProcessingFeedback *) {
  mFiles = std::make_unique<HandoutFiles>(reader);
  mPath = QgsProcessingParameters::parameterAsFileOutput(reader.definition(outputKey), reader.parameters(),
                                                         reader.context());
  mFiles->checkFree(mPath);
  const QString version = provider() ? provider()->versionInfo() : QString();
  mSettings = {QStringLiteral("Brushline %1").arg(version).trimmed(), reader.text(titleKey), timeOfWriting(),
               reader.flag(oneRouteKey)};
}

QVariantMap ExportGpxAlgorithm::run(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  if (!mPath.endsWith(QLatin1String(".gpx"), Qt::CaseInsensitive))
    feedback->pushWarning(
        tr("%1: “%2” does not end in .gpx; receivers look at the ending and may pass it over.").arg(outputKey, mPath));
  const auto file = mFiles->begin(mPath);
  std::vector<LegSheet> sheets = leg_sheets::read(reader, feedback);
  makeFitForXml(sheets, mSettings.title, feedback);
  const GpxCounts counts = writeGpx(*file, sheets, mSettings, feedback);
  mFiles->commit(*file);
  mFiles->report(feedback);
  feedback->pushInfo(tr("Routes: %1; points in them: %2; waypoints: %3.")
                         .arg(counts.routes)
                         .arg(counts.points)
                         .arg(counts.waypoints));
  return {{outputKey, mPath},
          {routeCountKey, double(counts.routes)},
          {pointCountKey, double(counts.points)},
          {waypointCountKey, double(counts.waypoints)}};
}

} // namespace brushline
