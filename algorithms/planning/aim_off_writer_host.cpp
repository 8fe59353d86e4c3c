// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/aim_off_writer_host.h"

#include <qgsgeometry.h>

#include <cmath>

namespace brushline {

namespace {
const QString outputKey = QStringLiteral("OUTPUT");

// The words of the fields; never translated.
QVariant sideWord(AimSide side) {
  return side == AimSide::Left    ? QStringLiteral("left")
         : side == AimSide::Right ? QStringLiteral("right")
                                  : QStringLiteral("centre");
}
QVariant turnWord(LineTurn turn) {
  return turn == LineTurn::Left    ? QVariant(QStringLiteral("left"))
         : turn == LineTurn::Right ? QVariant(QStringLiteral("right"))
                                   : QVariant();
}
// A share as people read it; never rounded up.
QString percent(double share) { return QString::number(std::floor(share * 1000) / 10); }
} // namespace

AimOffWriter::AimOffWriter(const ParameterReader &reader, std::vector<LegLayer> layers, const AimInput &input,
                           const QgsCoordinateReferenceSystem &crs)
    : mReader(reader), mLayers(std::move(layers)), mInput(input), mCrs(crs),
      mFromPlaces(crs, reader.context().transformContext()) {}

Definitions AimOffWriter::definitions() {
  return {new QgsProcessingParameterFeatureSink(outputKey, tr("Legs that aim off"), host::lineOutput)};
}

QgsFields AimOffWriter::fields() {
  using host::FieldType;
  return fieldsOf({{"line", FieldType::Text},
                   {"dest_name", FieldType::Text},
                   {"aim_brg", FieldType::Real},
                   {"side", FieldType::Text},
                   {"offset_m", FieldType::Real},
                   {"offset_deg", FieldType::Real},
                   {"turn", FieldType::Text},
                   {"along_line_m", FieldType::Real},
                   {"line_paces", FieldType::Integer},
                   {"line_min", FieldType::Real},
                   {"hit_prob", FieldType::Real},
                   {"side_prob", FieldType::Real},
                   {"miss_prob", FieldType::Real},
                   {"stop_m", FieldType::Real},
                   {"stop_paces", FieldType::Integer},
                   {"catch", FieldType::Text},
                   {"catch_m", FieldType::Real}},
                  LegLayer::fields());
}

void AimOffWriter::begin() {
  if (!mOutput)
    mOutput = std::make_unique<VectorOutput>(mReader, outputKey, fields(), host::lineString, mCrs);
}

QString AimOffWriter::inWords(const AimWarning &warning, const AimedLeg &aimed) const {
  switch (warning.remark) {
  case AimRemark::NotSure:
    return tr("Not sure: the chance that the line is met where one turns %1 is %2 %, less than asked for.")
        .arg(aimed.turn == LineTurn::Left ? tr("left") : tr("right"), percent(warning.share));
  case AimRemark::MayMiss:
    return tr("Not sure: the chance of meeting the line is %1 %, less than asked for.").arg(percent(warning.share));
  case AimRemark::OtherFirst: {
    const std::string &name = mInput.lines->shapes()[warning.line].name;
    return name.empty() ? tr("With a chance of %1 % another line is met first.").arg(percent(warning.share))
                        : tr("With a chance of %1 % another line is met first, most likely %2.")
                              .arg(percent(warning.share), QString::fromStdString(name));
  }
  case AimRemark::BesideTheLine:
    return tr("The destination lies %1 m beside the line.").arg(std::round(warning.metres));
  case AimRemark::FarAside:
    return tr("Aims more than 45 degrees beside the destination: look for a better way.");
  }
  return QString();
}

QgsGeometry AimOffWriter::lineOf(const AimStartInput &start, const AimedLeg &aimed) const {
  const QgsPointXY end = mFromPlaces(aimed.leg.end, start.x);
  if (!std::isfinite(end.x()) || !std::isfinite(end.y()))
    return QgsGeometry();
  return QgsGeometry::fromPolylineXY({QgsPointXY(start.x, start.y), end});
}

void AimOffWriter::write(const AimStartInput &start, const AimPlan &plan) {
  begin();
  static const int fromName = LegLayer::fields().lookupField(QStringLiteral("from_name")),
                   toName = LegLayer::fields().lookupField(QStringLiteral("to_name")),
                   warningsField = LegLayer::fields().lookupField(QStringLiteral("warnings"));
  ++mStarts;
  bool unsure = false;
  for (const AimedLeg &aimed : plan.legs) {
    const QVariant line = orNull(mInput.lines->shapes()[aimed.line].name);
    QgsAttributes row = mLayers[aimed.walker].row(start.route, aimed.leg, 0);
    row[fromName] = start.name.isEmpty() ? QVariant() : QVariant(start.name);
    row[toName] = line;
    QStringList words = row[warningsField].isNull() ? QStringList() : QStringList{row[warningsField].toString()};
    for (const AimWarning &warning : aimed.warnings) {
      words << inWords(warning, aimed);
      unsure = unsure || warning.remark == AimRemark::NotSure || warning.remark == AimRemark::MayMiss;
    }
    row[warningsField] = words.isEmpty() ? QVariant() : QVariant(words.join(QLatin1Char(' ')));

    QVariant catchText, catchMetres;
    if (aimed.catching) {
      const std::string &name = (*mInput.catching)[aimed.catching->shape].name;
      const QString metres = QString::number(std::round(aimed.catching->beyond_m));
      catchText = name.empty() ? tr("%1 m beyond").arg(metres)
                               : tr("%1, %2 m beyond").arg(QString::fromStdString(name), metres);
      catchMetres = aimed.catching->beyond_m;
    }
    row << line << (aimed.destination ? orNull((*mInput.destinations)[*aimed.destination].name) : QVariant())
        << aimed.leg.true_bearing.degrees() << sideWord(aimed.side) << orNull(aimed.offset_m)
        << (aimed.offset ? QVariant(aimed.offset->degrees()) : QVariant()) << turnWord(aimed.turn)
        << orNull(aimed.along_line_m) << (aimed.along_paces ? QVariant(int(*aimed.along_paces)) : QVariant())
        << (aimed.along_time ? QVariant(aimed.along_time->minutes()) : QVariant()) << aimed.hit
        << (aimed.destination ? QVariant(aimed.right) : QVariant()) << std::max(0.0, 1 - aimed.hit) << aimed.stop_m
        << int(aimed.stop_paces) << catchText << catchMetres;
    QgsFeature feature;
    feature.setGeometry(lineOf(start, aimed));
    feature.setAttributes(row);
    mOutput->add(feature);
    ++mRows;
  }
  mUnsure += unsure;
}

QVariantMap AimOffWriter::finish(long skipped, QgsProcessingFeedback *feedback) {
  begin();
  QVariantMap results{{QStringLiteral("START_COUNT"), double(mStarts)},
                      {QStringLiteral("LEG_COUNT"), double(mRows)},
                      {QStringLiteral("SKIPPED_COUNT"), double(skipped)}};
  results[outputKey] = mOutput->finish(QStringLiteral(":/brushline/styles/aimoff.qml"), feedback);
  if (mUnsure > 0)
    feedback->pushWarning(tr("%n start(s) have no aim as sure as asked for: see the field warnings, and do not send "
                             "anybody by these without looking at the map.",
                             nullptr, int(mUnsure)));
  feedback->pushInfo(tr("Starts: %1; leg rows written: %2.").arg(mStarts).arg(mRows));
  return results;
}

} // namespace brushline
