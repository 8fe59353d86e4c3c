// SPDX-License-Identifier: GPL-2.0-or-later
#include "magnetics/north_lines_algorithm.h"

#include "shared/grid_parameters.h"
#include "shared/place_reader_host.h"
#include "shared/vector_output_host.h"

#include <qgsexception.h>
#include <qgslinestring.h>

#include <cmath>

namespace brushline {

namespace {
using host::FieldType;
const QString outputKey = QStringLiteral("OUTPUT");

QgsFields ownFields() {
  return fieldsOf({{"line", FieldType::Integer},
                   {"decl", FieldType::Real},
                   {"date", FieldType::Date},
                   {"spacing_m", FieldType::Real},
                   {"label", FieldType::Text},
                   {"zone", FieldType::Text}});
}

QgsGeometry geometryOf(const NorthLine &line) {
  QVector<double> x, y;
  for (const ProjectedPoint &point : line.points) {
    x << point.x;
    y << point.y;
  }
  return QgsGeometry(new QgsLineString(x, y));
}
} // namespace

QString NorthLinesAlgorithm::name() const { return QStringLiteral("northlines"); }
QString NorthLinesAlgorithm::displayName() const { return tr("Magnetic north lines"); }
QString NorthLinesAlgorithm::group() const { return tr("Magnetics"); }
QString NorthLinesAlgorithm::groupId() const { return QStringLiteral("magnetics"); }
QStringList NorthLinesAlgorithm::tags() const {
  return tr("magnetic,north,lines,meridian,declination,variation,compass,map,grid,baseplate").split(QLatin1Char(','));
}
QString NorthLinesAlgorithm::shortDescription() const {
  return tr("Draws lines towards magnetic north over a map, at an even distance on the ground, so that bearings can be "
            "taken off the map without any sum.");
}
QgsProcessingAlgorithm *NorthLinesAlgorithm::createInstance() const { return new NorthLinesAlgorithm(); }

void NorthLinesAlgorithm::initAlgorithm(const QVariantMap &) {
  addParameters(north_lines_parameters::definitions());
  addParameters(date_and_field_parameters::definitions());
  addParameters(north_lines_parameters::gridDefinitions());
  addParameters(KeptStyles::definitions());
  addParameter(new QgsProcessingParameterFeatureSink(outputKey, tr("Magnetic north lines"), host::lineOutput));
}

void NorthLinesAlgorithm::check(const ParameterReader &reader) const {
  north_lines_parameters::read(reader);
  date_and_field_parameters::read(reader);
}

void NorthLinesAlgorithm::prepare(const ParameterReader &reader, QgsProcessingFeedback *) {
  mSetting = north_lines_parameters::read(reader);
  mDateAndField = date_and_field_parameters::read(reader);
}

QString NorthLinesAlgorithm::labelOf(const NorthLine &line) const {
  const double rounded = std::round(std::abs(line.declination.east.degrees()) * 10) / 10;
  const QString number = QString::number(rounded, 'f', 1);
  const QString angle = rounded == 0                          ? tr("%1°").arg(number)
                        : line.declination.east.degrees() < 0 ? tr("%1° W").arg(number)
                                                              : tr("%1° E").arg(number);
  return tr("%1, %2, %3 m").arg(angle, mDateAndField.date.toString(Qt::ISODate), plain(mSetting.spacing.metres()));
}

QVariantMap NorthLinesAlgorithm::run(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  VectorOutput output(reader, outputKey, ownFields(), host::lineString, mSetting.grid);
  const QgsPointXY middle = mSetting.extent.center();
  if (const auto place = ToPlaces(mSetting.grid, reader.context().transformContext())(middle.x(), middle.y()))
    grid_parameters::GridWatch(mSetting.grid, feedback).see(*place, [] { return tr("the middle of EXTENT"); });
  const FeedbackProgress progress(feedback);
  const auto write = [&](const NorthLine &line) {
    QgsFeature feature;
    feature.setGeometry(geometryOf(line));
    feature.setAttributes(QVector<QVariant>{line.number, line.declination.east.degrees(), mDateAndField.date,
                                            mSetting.spacing.metres(), labelOf(line),
                                            QString::fromLatin1(zoneWord(line.zone))});
    output.add(feature);
    feedback->setProgress(100 * line.done);
  };
  try {
    report(northLines(*mDateAndField.field, mSetting.area(reader.context().transformContext()), mSetting.spacing,
                      progress, write),
           feedback);
  } catch (const TooManyLines &error) {
    throw QgsProcessingException(north_lines_parameters::tooMany(mSetting, error.count));
  } catch (const AreaOutOfReach &) {
    throw QgsProcessingException(north_lines_parameters::outOfReach(mSetting));
  }
  return {{outputKey, output.finish(QStringLiteral(":/brushline/styles/north_lines.qml"), feedback)}};
}

void NorthLinesAlgorithm::report(const NorthLinesReport &report, QgsProcessingFeedback *feedback) const {
  feedback->pushInfo(tr("%n line(s) in %1; model %2, day %3.", nullptr, report.lines)
                         .arg(mSetting.grid.authid(), QString::fromStdString(mDateAndField.field->model().name()),
                              mDateAndField.date.toString(Qt::ISODate)));
  if (report.blackout)
    feedback->pushWarning(
        report.lines == 0
            ? tr("No line: in this extent the field along the ground is under 2000 nT, so that no compass can be used.")
            : tr("In part of the extent the field along the ground is under 2000 nT, so that no compass can be used: "
                 "lines "
                 "end at its border."));
  if (report.edge)
    feedback->pushWarning(
        tr("Part of the extent lies where %1 does not reach; there are no lines.").arg(mSetting.grid.authid()));
  if (report.most_spacing_m > 0)
    feedback->pushInfo(
        tr("On the ground neighbouring lines lie %1 to %2 m apart within the extent.")
            .arg(QString::number(report.least_spacing_m, 'f', 1), QString::number(report.most_spacing_m, 'f', 1)));
  if (report.caution)
    feedback->pushWarning(tr("In part of the extent the field along the ground is under 6000 nT (zone “caution”): the "
                             "needle is slow and easily drawn off."));
  if (!mDateAndField.model_of_day)
    feedback->pushInfo(tr("%1 is outside the years of the model, which only tells where compasses fail.")
                           .arg(mDateAndField.date.toString(Qt::ISODate)));
}

} // namespace brushline
