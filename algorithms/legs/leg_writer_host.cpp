// SPDX-License-Identifier: GPL-2.0-or-later
#include "legs/leg_writer_host.h"

#include "quantities/progress.h"
#include "shared/geodesic.h"

#include <qgsgeometry.h>
#include <qgslinestring.h>

#include <algorithm>
#include <cmath>

namespace brushline {

namespace {
const QString legsKey = QStringLiteral("OUTPUT"), marksKey = QStringLiteral("MARKS"),
              driftKey = QStringLiteral("DRIFT"), routeCountKey = QStringLiteral("ROUTE_COUNT"),
              legCountKey = QStringLiteral("LEG_COUNT");
} // namespace

LegWriter::LegWriter(const ParameterReader &reader, LegLayer layer, LegAdvice advice, host::WkbType legType,
                     const QgsCoordinateReferenceSystem &crs, size_t walkers)
    : mFromPlaces(crs, reader.context().transformContext()), mReader(reader), mLayer(std::move(layer)),
      mAdvice(std::move(advice)), mLegType(legType), mCrs(crs), mWalkers(walkers) {}

Definitions LegWriter::definitions() {
  return {new QgsProcessingParameterFeatureSink(legsKey, tr("Legs"), host::lineOutput),
          new QgsProcessingParameterFeatureSink(marksKey, tr("Marks"), host::pointOutput, QVariant(), true, false),
          new QgsProcessingParameterFeatureSink(driftKey, tr("Drift (where the walker may be, 95 %)"),
                                                host::polygonOutput, QVariant(), true, false)};
}

bool LegWriter::wantsMarks(const ParameterReader &reader) { return reader.given(marksKey); }

void LegWriter::begin() {
  if (mLegs)
    return;
  mLegs = std::make_unique<VectorOutput>(mReader, legsKey, LegLayer::fields(), mLegType, mCrs);
  if (mReader.given(marksKey))
    mMarks = std::make_unique<VectorOutput>(mReader, marksKey, LegLayer::markFields(), host::point, mCrs);
  if (mReader.given(driftKey))
    mDrift = std::make_unique<VectorOutput>(mReader, driftKey, LegLayer::driftFields(), host::polygon, mCrs);
}

void LegWriter::write(const RouteInput &route, std::vector<AnnotatedLeg> legs, const QgsFeedback *feedback) {
  begin();
  ++mRoutes;
  const QVariant name(route.name);
  std::vector<long> pacesBefore(mWalkers, 0);
  int last = 0; // of either way: both have as many legs
  for (const AnnotatedLeg &leg : legs)
    last = std::max(last, leg.number);
  for (AnnotatedLeg &leg : legs) {
    if (feedback->isCanceled())
      throw Cancelled();
    if (leg.number == 1)
      pacesBefore.assign(mWalkers, 0);
    if (leg.overlapping_cover)
      ++mOverlapping;
    mWithoutHeights += std::any_of(leg.warnings.begin(), leg.warnings.end(),
                                   [](const LegWarning &warning) { return warning.remark == LegRemark::NoTerrain; });
    // The other way counts from the other end. Legs that were annotated before keep their number, as long as nobody
    // turns round.
    const int opposite = last - leg.number + (leg.back ? route.first_leg : 1);
    if (!leg.back)
      leg.number += route.first_leg - 1;
    leg.back = leg.back != route.back;
    const QString advice = mAdvice.forLeg(route.name, leg, opposite);
    const double startX = route.x[leg.from_source];
    for (size_t walker = 0; walker < mWalkers; ++walker) {
      QgsFeature feature;
      feature.setGeometry(QgsGeometry(route.line(leg.from_source, leg.to_source)));
      QgsAttributes row = mLayer.row(name, leg, walker);
      if (!advice.isEmpty()) {
        QVariant &warnings = row.last();
        warnings = warnings.isNull() ? advice : warnings.toString() + QLatin1Char(' ') + advice;
      }
      feature.setAttributes(row);
      mLegs->add(feature);
      ++mRows;
      if (mMarks)
        writeMarks(name, leg, startX, walker, pacesBefore[walker]);
      if (mDrift)
        writeDrift(name, leg, startX, walker);
      pacesBefore[walker] += leg.by_walker[walker].paces;
    }
  }
}

void LegWriter::writeMarks(const QVariant &route, const AnnotatedLeg &leg, double start_x, size_t walker,
                           long pacesBefore) {
  const std::vector<LegMark> &marks = leg.by_walker[walker].marks;
  std::vector<Place> places;
  for (const LegMark &mark : marks)
    places.push_back(mark.at_m >= leg.length.metres()
                         ? leg.end
                         : geodesicDestination(leg.start, leg.true_bearing, Length::metres(mark.at_m)));
  const QgsPolylineXY points = mFromPlaces(places, start_x);
  for (size_t i = 0; i < marks.size(); ++i) {
    QgsFeature feature;
    feature.setGeometry(QgsGeometry::fromPointXY(points.at(int(i))));
    feature.setAttributes(mLayer.markRow(route, leg, walker, i, pacesBefore));
    mMarks->add(feature);
  }
}

void LegWriter::writeDrift(const QVariant &route, const AnnotatedLeg &leg, double start_x, size_t walker) {
  const QgsAttributes row = mLayer.driftRow(route, leg, walker);
  const double major = row.at(5).toDouble(), minor = row.at(6).toDouble();
  const Angle axis = Angle::degrees(row.at(7).toDouble());
  constexpr int corners = 72;
  std::vector<Place> places;
  for (int i = 0; i < corners; ++i) {
    const double turn = 2 * Angle::pi * i / corners;
    const double along = major * std::cos(turn), across = minor * std::sin(turn);
    places.push_back(geodesicDestination(leg.end, TrueBearing(axis + Angle::radians(std::atan2(across, along))),
                                         Length::metres(std::hypot(along, across))));
  }
  QgsPolylineXY ring = mFromPlaces(places, start_x);
  ring.append(ring.first());
  for (const QgsPointXY &point : ring)
    if (!std::isfinite(point.x()) || !std::isfinite(point.y()))
      return; // beyond the reach of the outputs' system
  QgsFeature feature;
  feature.setGeometry(QgsGeometry::fromPolygonXY({ring}));
  feature.setAttributes(row);
  mDrift->add(feature);
}

QVariantMap LegWriter::finish(QgsProcessingFeedback *feedback) {
  begin();
  QVariantMap results = VectorOutput::finishAll({{mLegs.get(), QStringLiteral(":/brushline/styles/legs.qml")},
                                                 {mMarks.get(), QStringLiteral(":/brushline/styles/marks.qml")},
                                                 {mDrift.get(), QStringLiteral(":/brushline/styles/drift.qml")}},
                                                feedback);
  results.insert(routeCountKey, double(mRoutes));
  results.insert(legCountKey, double(mRows));
  if (mOverlapping > 0)
    feedback->pushWarning(
        tr("%n leg(s) cross cover polygons that overlap: the first in the layer counts.", nullptr, int(mOverlapping)));
  if (mWithoutHeights > 0)
    feedback->pushWarning(tr("DEM: %n leg(s) lie on ground without heights, whole or in part; their paces and minutes "
                             "are those of level ground there. Does the terrain model reach so far?",
                             nullptr, int(mWithoutHeights)));
  mAdvice.finish(feedback);
  feedback->pushInfo(tr("Routes: %1; leg rows written: %2.").arg(mRoutes).arg(mRows));
  return results;
}

} // namespace brushline
