// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/planned_routes_host.h"

#include "shared/place_reader_host.h"
#include "sighting/footing.h"
#include "walking/profile_summary.h"
#include "walking/walk_line.h"

#include <qgsgeometry.h>
#include <qgslinestring.h>
#include <qgsprocessingoutputs.h>

namespace brushline {

namespace {
const QString outputKey = QStringLiteral("OUTPUT"), effortKey = QStringLiteral("EFFORT"),
              minutesKey = QStringLiteral("MINUTES"), pointsKey = QStringLiteral("POINTS"),
              pointNameKey = QStringLiteral("POINT_NAME");

QgsFields fields() {
  using host::FieldType;
  return fieldsOf({{"route", FieldType::Text},
                   {"minutes", FieldType::Real},
                   {"legs", FieldType::Integer},
                   {"length_m", FieldType::Real},
                   {"turns", FieldType::Text},
                   {"direct_min", FieldType::Real}});
}
} // namespace

Definitions PlannedRoutes::outputs() {
  return {helped(new QgsProcessingParameterFeatureSink(outputKey, tr("Planned routes"), host::lineOutput),
                 tr("A line for each pair, a vertex at each turn; Annotate legs takes it as it is.")),
          helped(new QgsProcessingParameterRasterDestination(effortKey, tr("Least minutes from the start"), QVariant(),
                                                             true, false),
                 tr("Minutes from the start to every cell, by the quickest way; of several starts the soonest."))};
}

QgsProcessingOutputDefinition *PlannedRoutes::minutesOutput() {
  return new QgsProcessingOutputNumber(minutesKey, tr("Minutes of walking, all routes together"));
}

std::vector<Place> PlannedRoutes::turningPlaces(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  std::vector<Place> places;
  const auto source = reader.source(pointsKey);
  if (!source)
    return places;
  const int asked = reader.fieldIndex(pointNameKey, *source);
  QgsProcessingFeedback silent(false); // reading their names has told what was passed over
  readPlaces(pointsKey, *source, asked >= 0 ? asked : source->fields().lookupField(QStringLiteral("name")),
             reader.context().transformContext(), feedback->isCanceled() ? feedback : &silent,
             [&](const Place &place, const QString &name) {
               if (!name.isEmpty())
                 places.push_back(place);
             });
  return places;
}

std::optional<Duration> PlannedRoutes::walkingTime(const Place &from, const Place &to, const Walker &walker,
                                                   Terrain *terrain, CoverSource *cover, const CoverTable *table,
                                                   double unknownSpeed) {
  const GeodesicLeg leg = geodesicBetween(from, to);
  if (!(leg.length > Length()))
    return Duration();
  std::optional<Profile> profile;
  if (terrain) {
    profile = terrain->profile(from, to, leg.length);
    if (summarize(*profile).without_data > Length())
      return std::nullopt;
  }
  std::vector<FootingStretch> footing;
  if (cover)
    footing = footingOf(cover->along(from, leg.departure, leg.length), *table, leg.length, unknownSpeed);
  return WalkLine(leg.length, profile ? &*profile : nullptr, footing, walker).time();
}

PlannedRoutes::PlannedRoutes(const ParameterReader &reader, const QgsCoordinateReferenceSystem &crs,
                             const NamedPlaces *names, CoverSource *cover)
    : mOutput(reader, outputKey, fields(), host::lineString, crs), mNames(names), mCover(cover) {}

double PlannedRoutes::withoutCover(const Place &from, const GeodesicLeg &leg) {
  double metres = 0, before = 0;
  if (mCover && leg.length > Length())
    for (const CoverPiece &piece : mCover->along(from, leg.departure, leg.length)) {
      metres += piece.cover < 0 ? piece.to_m - before : 0;
      before = piece.to_m;
    }
  return metres;
}

void PlannedRoutes::write(const QString &route, const FoundRoute &found) {
  QVector<double> x, y;
  QStringList turns;
  double length = 0;
  for (size_t i = 0; i < found.points.size(); ++i) {
    x << found.points[i].x();
    y << found.points[i].y();
    if (i > 0) {
      const GeodesicLeg leg = geodesicBetween(found.places[i - 1], found.places[i]);
      length += leg.length.metres();
      mUnknownCover.add(withoutCover(found.places[i - 1], leg));
    }
    const bool turn = i > 0 && i + 1 < found.points.size();
    if (const NamedPlace *name = turn && mNames ? mNames->nearest(found.places[i]) : nullptr)
      turns << QString::fromStdString(name->name);
  }
  const double minutes = found.walking.minutes();
  QgsFeature feature(fields());
  feature.setGeometry(QgsGeometry(new QgsLineString(x, y)));
  feature.setAttribute(0, route);
  feature.setAttribute(1, minutes);
  feature.setAttribute(2, int(found.points.size()) - 1);
  feature.setAttribute(3, length);
  if (!turns.isEmpty())
    feature.setAttribute(4, turns.join(QLatin1String(", ")));
  if (found.straight)
    feature.setAttribute(5, found.straight->minutes());
  mOutput.add(feature);
  mMinutes += minutes;
  ++mCount;
}

QVariantMap PlannedRoutes::finish(QgsProcessingFeedback *feedback) {
  return {{outputKey, mOutput.finish(QStringLiteral(":/brushline/styles/planned_routes.qml"), feedback)},
          {minutesKey, mMinutes}};
}

} // namespace brushline
