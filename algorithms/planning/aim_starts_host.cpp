// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/aim_starts_host.h"

#include "quantities/progress.h"
#include "shared/geodesic.h"
#include "shared/grid_north.h"
#include "shared/place_reader_host.h"
#include "shared/raster_host.h"
#include "shared/source_features_host.h"

#include <qgsexception.h>
#include <qgsgeometry.h>

#include <cmath>

namespace brushline {

namespace {
const QString startsKey = QStringLiteral("STARTS"), nameKey = QStringLiteral("START_NAME"),
              pairKey = QStringLiteral("PAIR_FIELD");

// GRID_CRS, else that of the starts; not valid where each start has the grid of its place.
QgsCoordinateReferenceSystem gridGiven(const ParameterReader &reader, const QgsProcessingFeatureSource *source) {
  const QgsCoordinateReferenceSystem grid = grid_parameters::read(reader);
  return grid.isValid() || !source || source->sourceCrs().isGeographic() ? grid : source->sourceCrs();
}
} // namespace

AimStarts::AimStarts(const ParameterReader &reader, const AimInput &input, QgsProcessingFeedback *feedback)
    : mInput(input), mFeedback(feedback), mSource(reader.source(startsKey)),
      mTransforms(reader.context().transformContext()), mToPlaces(mSource->sourceCrs(), mTransforms),
      mGridWatch(grid_parameters::read(reader), feedback) {
  if (const QgsCoordinateReferenceSystem grid = gridGiven(reader, mSource.get()); grid.isValid())
    mGrid = std::make_unique<Grid>(Grid{grid_parameters::definitionOf(grid), projectInto(grid, mTransforms)});
  mNameField = aim_off_parameters::nameField(reader, nameKey, *mSource);
  mPairField = reader.fieldIndex(pairKey, *mSource);
  mExpected = mSource->featureCount();
  QgsAttributeList wanted;
  for (const int field : {mNameField, mPairField})
    if (field >= 0)
      wanted << field;
  QgsFeatureRequest request;
  request.setSubsetOfAttributes(wanted);
  mFeatures = SourceFeatures(startsKey, *mSource, mFeedback, request);
}

void AimStarts::check(const ParameterReader &reader) {
  if (const QgsCoordinateReferenceSystem grid = gridGiven(reader, reader.source(startsKey).get()); grid.isValid())
    grid_parameters::check(grid);
}

const AimStarts::Grid &AimStarts::gridOf(const Place &place) {
  if (mGrid)
    return *mGrid;
  const std::string definition = standardGrid(place);
  const auto found = mStandardGrids.find(definition);
  if (found != mStandardGrids.end())
    return found->second;
  const QgsCoordinateReferenceSystem crs(QString::fromStdString(definition));
  return mStandardGrids.emplace(definition, Grid{definition, projectInto(crs, mTransforms)}).first->second;
}

bool AimStarts::ready(AimStartInput &start, const QVariant &pair) {
  const auto place = mToPlaces(start.x, start.y);
  if (!place) {
    skip(start.where, tr("has no usable place."));
    return false;
  }
  start.start.place = *place;
  mGridWatch.see(*place, [&] { return start.where; });
  const Grid &grid = gridOf(start.start.place);
  start.start.grid = grid.definition;
  start.start.project = grid.project;
  std::vector<double> east{place->longitude.signedTurn().degrees()}, north{place->latitude.degrees()};
  grid.project(east, north);
  if (!std::isfinite(east[0]) || !std::isfinite(north[0])) {
    skip(start.where, tr("lies outside the grid %1: give another %2.")
                          .arg(QString::fromStdString(grid.definition).left(40), grid_parameters::key()));
    return false;
  }
  if (mPairField < 0)
    return true;
  const QString name = pair.isNull() ? QString() : pair.toString().trimmed();
  const auto found = name.isEmpty() ? mInput.by_name.constEnd() : mInput.by_name.constFind(name);
  if (found == mInput.by_name.constEnd()) {
    skip(start.where,
         name.isEmpty() ? tr("names no destination in its field “%1”.").arg(mSource->fields().at(mPairField).name())
         : mInput.beside.contains(name) ? tr("goes to “%1”, which lies on no line.").arg(name)
                                        : tr("goes to “%1”, which is not among the destinations.").arg(name));
    return false;
  }
  double least = HUGE_VAL;
  for (const size_t one : found.value()) {
    const double metres = geodesicBetween(start.start.place, (*mInput.destinations)[one].on.place).length.metres();
    if (metres < least) {
      least = metres;
      start.start.destination = one;
    }
  }
  return true;
}

bool AimStarts::next(AimStartInput &start) {
  QgsFeature feature;
  while (mWaiting.empty() && mFeatures.next(feature)) {
    ++mRead;
    AimStartInput like;
    like.where = tr("layer “%1”, feature %2").arg(mSource->sourceName(), QString::number(feature.id()));
    const QVariant name = mNameField >= 0 ? feature.attribute(mNameField) : QVariant();
    like.name = name.isNull() ? QString() : name.toString().trimmed();
    if (!feature.hasGeometry() || feature.geometry().isEmpty()) {
      ++mNumber;
      skip(like.where, tr("has no geometry."));
      continue;
    }
    const QVariant pair = mPairField >= 0 ? feature.attribute(mPairField) : QVariant();
    const QgsAbstractGeometry *geometry = feature.geometry().constGet();
    const bool several = geometry->nCoordinates() > 1;
    int point = 0;
    for (auto vertex = geometry->vertices_begin(); vertex != geometry->vertices_end(); ++vertex) {
      AimStartInput one = like;
      ++mNumber;
      ++point;
      one.route = like.name.isEmpty() ? QString::number(mNumber)
                  : several           ? like.name + QLatin1Char(' ') + QString::number(point)
                                      : like.name;
      one.x = (*vertex).x();
      one.y = (*vertex).y();
      if (ready(one, pair))
        mWaiting.push_back(std::move(one));
    }
  }
  if (mFeedback->isCanceled())
    throw Cancelled();
  if (mWaiting.empty())
    return false;
  start = std::move(mWaiting.front());
  mWaiting.pop_front();
  return true;
}

void AimStarts::skip(const QString &where, const QString &reason) {
  constexpr long toldEach = 20;
  const QString message = tr("%1: %2 %3 Passed over.").arg(startsKey, where, reason);
  if (mSkipped == 0)
    mFirstReason = message;
  if (++mSkipped <= toldEach)
    mFeedback->pushWarning(message);
}

QString AimStarts::reason(AimFailure failure) const {
  const QString reach = plain(mInput.rule.reach.metres());
  switch (failure) {
  case AimFailure::NoLine:
    return tr("meets no line within %1 m: give a greater REACH, or other lines.").arg(reach);
  case AimFailure::OnTheLine:
    return tr("lies on the line already, or within a metre of it.");
  case AimFailure::NoDestination:
    return tr("has no destination within %1 m: give a greater REACH.").arg(reach);
  case AimFailure::TooFar:
    return tr("lies farther than %1 m from its destination: give a greater REACH.").arg(reach);
  case AimFailure::NoAim:
    return tr(
        "has no bearing that meets the line where one turn leads to the destination: the line ends there or bends "
        "away, or another line lies in front of it. Try the other SIDE, or TELL_APART where one line cannot be taken "
        "for another.");
  case AimFailure::OffTheDial:
    return tr("has no aim that stands on the dial: the numbers on both sides of the best bearing miss the line. Give a "
              "finer DIAL_STEP if the compass has one, the other SIDE, or another start.");
  }
  return QString();
}

double AimStarts::fraction() const { return mExpected > 0 ? std::min(1.0, double(mRead) / double(mExpected)) : 0; }

void AimStarts::finish(long used) {
  if (mSkipped > 0 && used == 0)
    throw QgsProcessingException(tr("None of the %n start(s) could be used.", nullptr, int(mSkipped)) +
                                 QLatin1Char(' ') + mFirstReason);
  if (mSkipped > 0)
    mFeedback->pushWarning(tr("%n start(s) passed over in all.", nullptr, int(mSkipped)));
  else if (used == 0)
    mFeedback->pushWarning(
        tr("%1: layer “%2” has no features, so there are no legs.").arg(startsKey, mSource->sourceName()));
}

} // namespace brushline
