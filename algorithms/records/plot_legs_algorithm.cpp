// SPDX-License-Identifier: GPL-2.0-or-later
#include "records/plot_legs_algorithm.h"

#include "records/plot_writer_host.h"
#include "shared/compass_parameters.h"
#include "shared/grid_parameters.h"
#include "shared/kept_styles_host.h"
#include "shared/walker_parameters.h"

#include <qgsexception.h>

namespace brushline {

QString PlotLegsAlgorithm::name() const { return QStringLiteral("plotlegs"); }
QString PlotLegsAlgorithm::displayName() const { return tr("Plot legs from bearings and paces"); }
QString PlotLegsAlgorithm::group() const { return tr("Records"); }
QString PlotLegsAlgorithm::groupId() const { return QStringLiteral("records"); }
QStringList PlotLegsAlgorithm::tags() const {
  return tr("bearing,azimuth,pace,traverse,closure,misclosure,compass rule,Bowditch,survey,sketch map,field notes,"
            "dead reckoning,compass,course,leg")
      .split(QLatin1Char(','));
}
QString PlotLegsAlgorithm::shortDescription() const {
  return tr(
      "Draws bearings and paces that were written down in the field as legs on the map, tells how the route closes "
      "and which leg may hold a slip.");
}
QgsProcessingAlgorithm *PlotLegsAlgorithm::createInstance() const { return new PlotLegsAlgorithm(); }

void PlotLegsAlgorithm::initAlgorithm(const QVariantMap &) {
  addParameters(records_parameters::definitions());
  addParameters(traverse_parameters::definitions());
  addParameters(date_and_field_parameters::definitions());
  addParameters(grid_parameters::definitions(
      {tr("Grid of the map (for grid bearings)"),
       tr("The projected system whose grid lines are printed on the map. Empty: the starts' own when it is projected, "
          "else the UTM zone of each route's start.")}));
  addParameters(compass_parameters::definitions());
  addParameters(walker_parameters::definitions());
  addParameters(KeptStyles::definitions());
  addParameters(PlotWriter::definitions());
  for (QgsProcessingOutputDefinition *count : PlotWriter::counts())
    addOutput(count);
}

void PlotLegsAlgorithm::check(const ParameterReader &reader) const {
  date_and_field_parameters::read(reader);
  const Compass compass = compass_parameters::read(reader);
  const auto walkers = walker_parameters::read(reader, compass.bearing_error, nullptr);
  records_parameters::check(reader, walkers);
  traverse_parameters::check(reader);
  grid_parameters::read(reader);
}

void PlotLegsAlgorithm::prepare(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  mDateAndField = date_and_field_parameters::read(reader);
  mSettings.field = mDateAndField.field.get();
  mSettings.compass = compass_parameters::read(reader);
  mSettings.walkers = walker_parameters::read(reader, mSettings.compass.bearing_error, feedback);
}

void PlotLegsAlgorithm::skip(const QString &message, QgsProcessingFeedback *feedback) {
  constexpr int toldEach = 20;
  if (mSkipped++ == 0)
    mFirstReason = message;
  if (mSkipped <= toldEach)
    feedback->pushWarning(message + QLatin1Char(' ') + tr("The route is passed over."));
}

QVariantMap PlotLegsAlgorithm::run(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  const TraverseEnds ends = traverse_parameters::read(reader, feedback);
  const FieldRecords records = records_parameters::read(reader, mSettings.walkers, mSettings.compass.unit, feedback);
  QgsCoordinateReferenceSystem grid = grid_parameters::read(reader);
  grid_parameters::GridWatch watch(grid, feedback);
  if (!grid.isValid() && !ends.crs.isGeographic()) {
    grid = ends.crs;
    grid_parameters::check(grid);
  }
  RoutePlotter plotter(mSettings, ends, grid, reader.context().transformContext());
  PlotWriter writer(reader, mSettings, mDateAndField.date, ends, records.paced, feedback);
  const FeedbackProgress progress(feedback);
  size_t done = 0;
  for (const RecordedRoute &route : records.routes) {
    progress.check();
    if (!route.fault.isEmpty()) {
      skip(route.fault, feedback);
    } else if (const PlottedRoute plotted = plotter.plot(route, records.paced, progress); plotted.refusal.isEmpty()) {
      watch.see(plotted.read.places.front(), [&] { return tr("Route “%1”").arg(route.name); });
      writer.write(route, plotted);
    } else {
      skip(tr("Route “%1”: %2").arg(route.name, plotted.refusal), feedback);
    }
    feedback->setProgress(100.0 * double(++done) / double(records.routes.size()));
  }
  if (mSkipped > 0 && writer.routes() == 0)
    throw QgsProcessingException(tr("None of the %n route(s) could be plotted.", nullptr, mSkipped) + QLatin1Char(' ') +
                                 mFirstReason);
  if (mSkipped > 0)
    feedback->pushWarning(tr("%n route(s) passed over in all.", nullptr, mSkipped));
  return writer.finish();
}

} // namespace brushline
