// SPDX-License-Identifier: GPL-2.0-or-later
#include "records/plot_writer_host.h"

#include "quantities/progress.h"

#include <qgsgeometry.h>
#include <qgsprocessingoutputs.h>

#include <algorithm>

namespace brushline {

namespace {
using host::FieldType;
const QString outputKey = QStringLiteral("OUTPUT"), closureKey = QStringLiteral("CLOSURE"),
              routesKey = QStringLiteral("ROUTE_COUNT"), legsKey = QStringLiteral("LEG_COUNT"),
              beyondKey = QStringLiteral("NOT_CLOSED");

// After the fields of annotated legs: what was read, and what the adjustment did to it.
const std::initializer_list<std::pair<const char *, FieldType>> readFields = {
    {"read_row", FieldType::Integer}, {"read_text", FieldType::Text},  {"read_brg", FieldType::Real},
    {"read_by", FieldType::Text},     {"read_paces", FieldType::Real}, {"read_m", FieldType::Real},
    {"adj_brg", FieldType::Real},     {"adj_m", FieldType::Real}};

QgsFields closureFields() {
  return fieldsOf({{"route", FieldType::Text},
                   {"legs", FieldType::Integer},
                   {"closes_on", FieldType::Text},
                   {"length_m", FieldType::Real},
                   {"miss_m", FieldType::Real},
                   {"miss_brg", FieldType::Real},
                   {"ratio", FieldType::Real},
                   {"allowed_m", FieldType::Real},
                   {"adjusted", FieldType::Integer},
                   {"hint", FieldType::Text}});
}
} // namespace

PlotWriter::PlotWriter(const ParameterReader &reader, const AnnotateSettings &settings, const QDate &date,
                       const TraverseEnds &ends, bool paced, QgsProcessingFeedback *feedback)
    : mReader(reader), mSettings(settings), mEnds(ends), mPaced(paced), mFeedback(feedback),
      mLayer(settings.compass, settings.walkers, date, nullptr), mWords(settings.compass, paced) {}

Definitions PlotWriter::definitions() {
  return {new QgsProcessingParameterFeatureSink(outputKey, tr("Plotted legs"), host::lineOutput),
          new QgsProcessingParameterFeatureSink(closureKey, tr("How the routes close (table)"), host::tableOutput,
                                                QVariant(), true, true)};
}

QList<QgsProcessingOutputDefinition *> PlotWriter::counts() {
  return {new QgsProcessingOutputNumber(routesKey, tr("Routes plotted")),
          new QgsProcessingOutputNumber(legsKey, tr("Legs written, one for each walker")),
          new QgsProcessingOutputNumber(beyondKey, tr("Routes that miss their end by more than errors allow"))};
}

void PlotWriter::begin() {
  if (mLegs)
    return;
  mLegs = std::make_unique<VectorOutput>(mReader, outputKey, fieldsOf(readFields, LegLayer::fields()), host::lineString,
                                         mEnds.crs);
  if (mReader.given(closureKey))
    mClosure = std::make_unique<VectorOutput>(mReader, closureKey, closureFields(), host::noGeometry,
                                              QgsCoordinateReferenceSystem());
}

QVariantList PlotWriter::readValues(const RecordedLeg &leg, const PlottedRoute &plotted, size_t number) const {
  const QVariant none;
  const std::string counted = leg.walker < 0 ? std::string() : mSettings.walkers[size_t(leg.walker)].name;
  const AnnotatedLeg &drawn = plotted.legs[number];
  return {int(leg.row),
          leg.text,
          leg.bearing.angle.degrees(),
          counted.empty() ? none : QVariant(QString::fromStdString(counted)),
          mPaced ? QVariant(leg.amount) : none,
          leg.length.metres(),
          mEnds.adjust
              ? QVariant((drawn.true_bearing.angle() - plotted.read.bearings[number].angle()).signedTurn().degrees())
              : none,
          mEnds.adjust ? QVariant(drawn.length.metres() - leg.length.metres()) : none};
}

void PlotWriter::write(const RecordedRoute &route, const PlottedRoute &plotted) {
  begin();
  ++mRoutes;
  const QString hint = mWords.hint(route, plotted), miss = mWords.warning(plotted, mEnds.adjust);
  for (size_t i = 0; i < plotted.legs.size(); ++i) {
    if (mFeedback->isCanceled())
      throw Cancelled();
    QStringList warnings;
    if (i == 0 && !miss.isEmpty())
      warnings << miss;
    if (ClosureWords::suspectLeg(plotted) == i)
      warnings << hint;
    const QgsGeometry line = QgsGeometry::fromPolylineXY(plotted.points.mid(int(i), 2));
    for (size_t walker = 0; walker < mSettings.walkers.size(); ++walker) {
      QgsAttributes row = mLayer.row(route.name, plotted.legs[i], walker);
      if (!warnings.isEmpty()) {
        const QString own = row.last().toString();
        row.last() = (own.isEmpty() ? warnings : warnings + QStringList{own}).join(QLatin1Char(' '));
      }
      for (const QVariant &value : readValues(route.legs[i], plotted, i))
        row << value;
      QgsFeature feature;
      feature.setGeometry(line);
      feature.setAttributes(row);
      mLegs->add(feature);
      ++mRows;
    }
  }
  writeClosure(route, plotted);
}

void PlotWriter::writeClosure(const RecordedRoute &route, const PlottedRoute &plotted) {
  const QVariant none;
  double walked = 0;
  for (const RecordedLeg &leg : route.legs)
    walked += leg.length.metres();
  QgsAttributes row = QVector<QVariant>{route.name, int(route.legs.size()), none, walked, none, none, none,
                                        none,       int(mEnds.adjust),      none};
  if (plotted.closed) {
    const Closure &closure = plotted.closed->closure;
    row[2] = mEnds.close == CloseOn::Start ? QStringLiteral("start") : QStringLiteral("end"); // never translated
    row[4] = closure.missed.metres();
    if (closure.ratio) {
      row[5] = closure.bearing.degrees();
      row[6] = *closure.ratio;
      row[7] = plotted.suspicion.allowed.metres();
    }
    if (const QString hint = mWords.hint(route, plotted); !hint.isEmpty())
      row[9] = hint;
    mBeyond += !plotted.suspicion.within;
    constexpr long toldEach = 20;
    if (!plotted.suspicion.within && mBeyond <= toldEach)
      mFeedback->pushWarning(mWords.summary(route, plotted));
    else if (mRoutes <= toldEach)
      mFeedback->pushInfo(mWords.summary(route, plotted));
  }
  if (mClosure) {
    QgsFeature feature;
    feature.setAttributes(row);
    mClosure->add(feature);
  }
}

QVariantMap PlotWriter::finish() {
  begin();
  QVariantMap results = VectorOutput::finishAll(
      {{mLegs.get(), QStringLiteral(":/brushline/styles/legs.qml")}, {mClosure.get(), QString()}}, mFeedback);
  results.insert(routesKey, double(mRoutes));
  results.insert(legsKey, double(mRows));
  results.insert(beyondKey, double(mBeyond));
  if (mBeyond > 0)
    mFeedback->pushWarning(
        tr("%n route(s) miss their end by more than errors allow: look for slips before anybody walks "
           "them.",
           nullptr, int(mBeyond)));
  mFeedback->pushInfo(tr("Routes: %1; leg rows written: %2.").arg(mRoutes).arg(mRows));
  return results;
}

} // namespace brushline
