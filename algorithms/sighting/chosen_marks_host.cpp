// SPDX-License-Identifier: GPL-2.0-or-later
#include "sighting/chosen_marks_host.h"

#include "magnetics/dial_setting.h"
#include "walking/pacing.h"

#include <qgsgeometry.h>

namespace brushline {

namespace {
using host::FieldType;
const QString marksKey = QStringLiteral("OUTPUT"), sightingsKey = QStringLiteral("SIGHTINGS"),
              gapsKey = QStringLiteral("GAPS");

} // namespace

ChosenMarksWriter::ChosenMarksWriter(const ParameterReader &reader, const Setting &setting,
                                     const QgsCoordinateReferenceSystem &crs)
    : mReader(reader), mSetting(setting), mCrs(crs), mFromPlaces(crs, reader.context().transformContext()) {}

Definitions ChosenMarksWriter::definitions() {
  return {new QgsProcessingParameterFeatureSink(marksKey, tr("Marks"), host::pointOutput),
          new QgsProcessingParameterFeatureSink(sightingsKey, tr("Sightings (from mark to mark)"), host::lineOutput,
                                                QVariant(), true, true),
          new QgsProcessingParameterFeatureSink(gapsKey, tr("Gaps (no candidate serves)"), host::lineOutput, QVariant(),
                                                true, true)};
}

void ChosenMarksWriter::begin() {
  if (mMarks)
    return;
  mMarks = std::make_unique<VectorOutput>(mReader, marksKey,
                                          fieldsOf({{"route", FieldType::Text},
                                                    {"leg", FieldType::Integer},
                                                    {"walker", FieldType::Text},
                                                    {"direction", FieldType::Text},
                                                    {"mark", FieldType::Integer},
                                                    {"name", FieldType::Text},
                                                    {"at_m", FieldType::Real},
                                                    {"paces", FieldType::Integer},
                                                    {"sight_m", FieldType::Real},
                                                    {"offset_m", FieldType::Real},
                                                    {"candidate", FieldType::Integer}}),
                                          host::point, mCrs);
  if (mReader.given(sightingsKey))
    mSightings = std::make_unique<VectorOutput>(mReader, sightingsKey,
                                                fieldsOf({{"route", FieldType::Text},
                                                          {"leg", FieldType::Integer},
                                                          {"walker", FieldType::Text},
                                                          {"direction", FieldType::Text},
                                                          {"mark", FieldType::Integer},
                                                          {"from_name", FieldType::Text},
                                                          {"to_name", FieldType::Text},
                                                          {"true_brg", FieldType::Real},
                                                          {"mag_brg", FieldType::Real},
                                                          {"dial", FieldType::Real},
                                                          {"dial_text", FieldType::Text},
                                                          {"dist_m", FieldType::Real},
                                                          {"paces", FieldType::Integer},
                                                          {"sight_m", FieldType::Real}}),
                                                host::lineString, mCrs);
  if (mReader.given(gapsKey))
    mGaps = std::make_unique<VectorOutput>(mReader, gapsKey,
                                           fieldsOf({{"route", FieldType::Text},
                                                     {"leg", FieldType::Integer},
                                                     {"walker", FieldType::Text},
                                                     {"direction", FieldType::Text},
                                                     {"from_m", FieldType::Real},
                                                     {"to_m", FieldType::Real},
                                                     {"marks", FieldType::Integer}}),
                                           host::lineString, mCrs);
}

QVariant ChosenMarksWriter::nameOf(const ChosenMark &mark) const {
  if (mark.candidate == ChosenMark::spaced)
    return QVariant();
  const QString &name = (*mSetting.names)[mark.candidate];
  return name.isEmpty() ? QVariant() : QVariant(name);
}

void ChosenMarksWriter::write(const Leg &leg, const Walker &walker, const std::vector<ChosenMark> &marks,
                              const std::vector<double> &steps_to_marks) {
  begin();
  const QVariant walkerName = orNull(walker.name);
  double steps = 0, before_m = 0, gap_m = 0;
  Place from = leg.start, gapFrom = leg.start;
  QVariant fromName;
  int gapMarks = 0;
  for (size_t i = 0; i < marks.size(); ++i) {
    const ChosenMark &mark = marks[i];
    const bool last = i + 1 == marks.size();
    const double hopSteps = steps_to_marks[i];
    steps += hopSteps;
    const QVariant name = nameOf(mark);
    QgsFeature feature;
    feature.setGeometry(QgsGeometry::fromPointXY(mFromPlaces(mark.place, leg.start_x)));
    const bool spaced = mark.candidate == ChosenMark::spaced;
    if (mark.sight_m < mark.from_last.length.metres() * (1 - 1e-9))
      ++mUnseenCount;
    feature.setAttributes(QVector<QVariant>{leg.route, leg.number, walkerName, leg.direction, int(i + 1), name,
                                            mark.along_m, int(pacesCounted(steps, walker.kind)), orNull(mark.sight_m),
                                            mark.offset_m, spaced ? 0 : 1});
    mMarks->add(feature);
    ++mMarkCount;
    if (mSightings)
      writeSighting(leg, walkerName, int(i + 1), from, fromName, mark, pacesCounted(hopSteps, walker.kind));

    // A gap runs from the last candidate before spaced marks to the first one after them.
    if (spaced && !last) {
      ++mSpacedCount;
      if (gapMarks++ == 0) {
        gap_m = before_m;
        gapFrom = from;
      }
    } else if (gapMarks > 0) {
      writeGap(leg, walkerName, gapFrom, gap_m, mark, gapMarks);
      gapMarks = 0;
    }
    from = mark.place;
    fromName = name;
    before_m = mark.along_m;
  }
}

void ChosenMarksWriter::writeSighting(const Leg &leg, const QVariant &walkerName, int number, const Place &from,
                                      const QVariant &fromName, const ChosenMark &mark, long paces) {
  auto grid = mGrids.find(leg.grid);
  if (grid == mGrids.end())
    grid = mGrids.emplace(leg.grid, GridNorth(leg.grid)).first;
  const TrueBearing bearing = mark.from_last.departure;
  const LocalField field = mSetting.field->at(from, Length());
  const std::optional<double> dial =
      dialSetting(mSetting.compass, bearing, toGrid(bearing, grid->second.at(from)), field);
  const bool compassWorks = field.zone != CompassZone::Blackout;
  QgsFeature feature;
  feature.setGeometry(QgsGeometry::fromPolylineXY(mFromPlaces({from, mark.place}, leg.start_x)));
  feature.setAttributes(QVector<QVariant>{
      leg.route, leg.number, walkerName, leg.direction, number, fromName, nameOf(mark), bearing.degrees(),
      compassWorks ? QVariant(toMagnetic(bearing, field.declination).degrees()) : QVariant(), orNull(dial),
      dial ? QVariant(QString::fromStdString(dialText(*dial, mSetting.compass))) : QVariant(),
      mark.from_last.length.metres(), int(paces), orNull(mark.sight_m)});
  mSightings->add(feature);
}

void ChosenMarksWriter::writeGap(const Leg &leg, const QVariant &walkerName, const Place &from, double from_m,
                                 const ChosenMark &last, int marks) {
  ++mGapCount;
  if (!mGaps)
    return;
  QgsFeature feature;
  feature.setGeometry(QgsGeometry::fromPolylineXY(mFromPlaces({from, last.place}, leg.start_x)));
  feature.setAttributes(
      QVector<QVariant>{leg.route, leg.number, walkerName, leg.direction, from_m, last.along_m, marks});
  mGaps->add(feature);
}

QVariantMap ChosenMarksWriter::finish(QgsProcessingFeedback *feedback) {
  begin();
  QVariantMap results = VectorOutput::finishAll({{mMarks.get(), QStringLiteral(":/brushline/styles/chosen_marks.qml")},
                                                 {mSightings.get(), QStringLiteral(":/brushline/styles/sightings.qml")},
                                                 {mGaps.get(), QStringLiteral(":/brushline/styles/gaps.qml")}},
                                                feedback);
  feedback->pushInfo(tr("%n mark(s) written.", nullptr, int(mMarkCount)));
  if (mGapCount > 0)
    feedback->pushWarning(
        tr("%n gap(s) that no candidate serves. Marks put on the line there: %1.", nullptr, int(mGapCount))
            .arg(mSpacedCount));
  if (mUnseenCount > 0)
    feedback->pushWarning(
        tr("%n mark(s) cannot be seen from the one before: sight_m is shorter than the way there. Go from "
           "hand to hand there, or give a smaller SPACING_MIN.",
           nullptr, int(mUnseenCount)));
  return results;
}

} // namespace brushline
