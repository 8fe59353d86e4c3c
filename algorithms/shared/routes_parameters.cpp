// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/routes_parameters.h"

#include "quantities/progress.h"
#include "shared/base_algorithm.h"
#include "shared/grid_north.h"
#include "shared/place_reader_host.h"
#include "shared/source_features_host.h"

#include <QDateTime>
#include <QHash>
#include <qgsabstractgeometry.h>
#include <qgsexception.h>
#include <qgsgeometry.h>
#include <qgsgeometrycollection.h>
#include <qgslinestring.h>
#include <qgspoint.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <string_view>
#include <utility>

namespace brushline {

namespace {
struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::RoutesParameters)
};
const QString inputKey = QStringLiteral("INPUT"), routeKey = QStringLiteral("ROUTE_FIELD"),
              orderKey = QStringLiteral("ORDER_FIELD");

// The order of a point as a number; throws for what has no order.
double orderOf(const QVariant &value, const QString &where) {
  if (value.isNull())
    throw QgsProcessingException(
        Text::tr("%1: %2 has no value. Number the points of each route in the order they are walked.")
            .arg(orderKey, where));
  const auto order = routes_parameters::orderOf(value);
  if (!order)
    throw QgsProcessingException(
        Text::tr("%1: %2 has “%3”, which is no number. Number the points of each route in the order they are walked.")
            .arg(orderKey, where, value.toString()));
  return *order;
}
} // namespace

QString RouteInput::direction() const { return back ? QStringLiteral("back") : QStringLiteral("out"); }

QgsLineString *RouteInput::line(size_t from, size_t to) const {
  const auto pair = [&](const std::vector<double> &values) {
    return values.empty() ? QVector<double>() : QVector<double>{values[from], values[to]};
  };
  return new QgsLineString(pair(x), pair(y), pair(z), pair(m));
}

namespace routes_parameters {

std::optional<double> orderOf(const QVariant &value) {
  if (value.isNull())
    return std::nullopt;
  bool ok = false;
  double order = 0;
  if (value.type() == QVariant::Date || value.type() == QVariant::DateTime) {
    const QDateTime time = value.toDateTime();
    ok = time.isValid();
    order = double(time.toMSecsSinceEpoch());
  } else if (value.type() == QVariant::Time) {
    ok = value.toTime().isValid();
    order = value.toTime().msecsSinceStartOfDay();
  } else {
    order = value.toString().trimmed().toDouble(&ok); // "10" after "9", in every locale
  }
  if (!ok || !std::isfinite(order))
    return std::nullopt;
  return order;
}

Definitions definitions() {
  return {
      helped(new QgsProcessingParameterFeatureSource(inputKey, Text::tr("Routes (lines, or points in order)"),
                                                     QList<int>() << host::lineLayers << host::pointLayers),
             Text::tr("Planned routes. Lines: each feature is a route, each straight piece of it a leg. Points: give "
                      "the fields for route and order.")),
      helped(new QgsProcessingParameterField(routeKey, Text::tr("Field with the route's name"), QVariant(), inputKey,
                                             host::anyField, false, true),
             Text::tr("Names the routes. Points with the same value make one route. Without it lines are numbered from "
                      "1, and all points make one route. A line that it does not name is called # and its number.")),
      helped(
          new QgsProcessingParameterField(orderKey, Text::tr("Field with the order of points"), QVariant(), inputKey,
                                          host::anyField, false, true),
          Text::tr("For points only: numbers (also as text) or times in the order the points are walked, no two of a "
                   "route alike."))};
}

Definitions gridDefinitions() {
  return grid_parameters::definitions(
      {Text::tr("Grid of the map (for grid bearings)"),
       Text::tr("The projected system whose grid lines are printed on the map. Empty: the routes' own when it is "
                "projected, else the UTM zone of each route's first point.")});
}

void check(const ParameterReader &reader) {
  const auto source = reader.source(inputKey);
  if (!source)
    throw QgsProcessingException(Text::tr("%1: give a layer with routes.").arg(inputKey));
  if (source->featureCount() == 0 && !host::isPointType(source->wkbType()) && !host::isLineType(source->wkbType()))
    throw QgsProcessingException(
        Text::tr("%1: layer “%2” has no features. Give a layer with routes, as lines or points.")
            .arg(inputKey, source->sourceName()));
  const bool points = host::isPointType(source->wkbType());
  if (!points && !host::isLineType(source->wkbType()))
    throw QgsProcessingException(
        Text::tr("%1: layer “%2” has neither lines nor points.").arg(inputKey, source->sourceName()));
  if (!source->sourceCrs().isValid())
    throw QgsProcessingException(Text::tr("%1: layer “%2” has no coordinate reference system, so nobody can tell where "
                                          "its routes lie. Set it in the layer's properties.")
                                     .arg(inputKey, source->sourceName()));
  reader.fieldIndex(routeKey, *source);
  if (reader.fieldIndex(orderKey, *source) < 0 && points)
    throw QgsProcessingException(Text::tr("%1: layer “%2” has points, so the field with their order is needed.")
                                     .arg(orderKey, source->sourceName()));
  grid_parameters::read(reader);
}

} // namespace routes_parameters

//! Points by route, in the order the routes were first met.
struct RouteSource::Gathered {
  struct Point {
    double order, x, y, z, m;
    qint64 feature;
  };
  struct Group {
    QString name;
    std::vector<Point> points;
    QString skip_reason, skip_where; // not empty: nobody could walk it
  };
  std::vector<Group> groups;
  size_t next = 0;
  FromPlaces from_places; // into the input's system
};

RouteSource::RouteSource(const ParameterReader &reader, QgsProcessingFeedback *feedback)
    : mFeedback(feedback), mSource(reader.source(inputKey)), mTransforms(reader.context().transformContext()) {
  if (!mSource)
    throw QgsProcessingException(Text::tr("%1: give a layer with routes.").arg(inputKey));
  mToPlaces = QgsCoordinateTransform(mSource->sourceCrs(), wgs84(), mTransforms);
  QgsCoordinateReferenceSystem grid = grid_parameters::read(reader);
  if (!grid.isValid() && !mSource->sourceCrs().isGeographic()) {
    grid = mSource->sourceCrs();
    grid_parameters::check(grid);
  }
  mArea = std::make_unique<grid_parameters::AreaOfUse>(mSource->sourceCrs());
  mGridWatch = std::make_unique<grid_parameters::GridWatch>(grid, feedback);
  if (grid.isValid()) {
    mGrid = std::make_unique<Grid>(Grid{grid_parameters::definitionOf(grid), QgsCoordinateTransform()});
    // From the places, not from the layer's own system: between two that differ by the order of their axes alone, as
    // the polar EPSG:5041 and 32661, PROJ 9.1 swaps what is in the right order already.
    const bool own = grid == mSource->sourceCrs();
    mToGrid = QgsCoordinateTransform(own ? grid : wgs84(), grid, mTransforms);
  }
  mRouteField = reader.fieldIndex(routeKey, *mSource);
  mOrderField = reader.fieldIndex(orderKey, *mSource);
  mExpected = mSource->featureCount();

  const auto field = [this](const char *name) { return mSource->fields().lookupField(QString::fromLatin1(name)); };
  mAnnotated = (mRouteField < 0 || mRouteField == field("route")) && field("route") >= 0 && field("leg") >= 0 &&
               field("walker") >= 0 && field("direction") >= 0 && field("mark") < 0 && field("from_m") < 0 &&
               !host::isPointType(mSource->wkbType());
  QgsAttributeList wanted;
  if (mAnnotated)
    wanted << field("route") << field("leg") << field("walker") << field("direction");
  for (const int field : {mRouteField, mOrderField})
    if (field >= 0)
      wanted << field;
  QgsFeatureRequest request;
  request.setSubsetOfAttributes(wanted);
  mFeatures = SourceFeatures(inputKey, *mSource, mFeedback, request);
}

RouteSource::~RouteSource() = default;

QgsCoordinateReferenceSystem RouteSource::crs() const { return mSource->sourceCrs(); }

host::WkbType RouteSource::legType() const {
  host::WkbType type = host::lineString;
  if (QgsWkbTypes::hasZ(mSource->wkbType()))
    type = QgsWkbTypes::addZ(type);
  if (QgsWkbTypes::hasM(mSource->wkbType()))
    type = QgsWkbTypes::addM(type);
  return type;
}

double RouteSource::fraction() const { return mExpected > 0 ? std::min(1.0, double(mRead) / double(mExpected)) : 0; }

QString RouteSource::where(qint64 feature) const {
  return tr("layer “%1”, feature %2").arg(mSource->sourceName(), QString::number(feature));
}

QString RouteSource::nameOf(const QgsFeature &feature) const {
  const QVariant value = mRouteField >= 0 ? feature.attribute(mRouteField) : QVariant();
  return value.isNull() ? QString() : value.toString().trimmed();
}

void RouteSource::eachLeg(const std::function<void(const LegInput &)> &take) {
  const FeedbackProgress progress(mFeedback);
  long used = 0;
  RouteInput route;
  while (next(route)) {
    int number = route.first_leg - 1;
    for (const auto &part : route.route.parts)
      for (size_t i = 1; i < part.size(); ++i) {
        const GeodesicLeg line = geodesicBetween(part[i - 1].place, part[i].place);
        if (line.length < Length::metres(0.001))
          continue;
        progress.check();
        take({route, ++number, part[i - 1].place, part[i].place, line, route.x[part[i - 1].source]});
      }
    if (number >= route.first_leg)
      ++used;
    else
      skip(route.where, tr("has no two vertices apart, so no leg."));
    mFeedback->setProgress(100 * fraction());
  }
  finish(used);
}

void RouteSource::skip(const QString &where, const QString &reason) {
  constexpr long toldEach = 20;
  const QString message = tr("%1: %2 %3 Passed over.").arg(inputKey, where, reason);
  if (mSkipped == 0)
    mFirstReason = message;
  if (++mSkipped <= toldEach)
    mFeedback->pushWarning(message);
}

void RouteSource::finish(long used) {
  if (mLeaps > 0)
    mFeedback->pushWarning(tr("%1: %n leg(s) do not follow the one before them in the layer (first: %2). Each begins a "
                              "route of its own, with drift, minutes and places from there. Sort the layer by route, "
                              "walker, direction and leg if that is not meant.",
                              nullptr, int(mLeaps))
                               .arg(inputKey, mFirstLeap));
  if (mSkipped > 0 && used == 0)
    throw QgsProcessingException(tr("None of the %n route(s) could be used.", nullptr, int(mSkipped)) +
                                 QLatin1Char(' ') + mFirstReason);
  if (mSkipped > 0)
    mFeedback->pushWarning(tr("%n route(s) passed over in all.", nullptr, int(mSkipped)));
  else if (used == 0)
    mFeedback->pushWarning(
        tr("%1: layer “%2” has no features, so there are no legs.").arg(inputKey, mSource->sourceName()));
}

const RouteSource::Grid &RouteSource::standardGridOf(double longitude, double latitude) {
  const std::string definition = standardGrid({Angle::degrees(latitude), Angle::degrees(longitude)});
  const auto found = mStandardGrids.find(definition);
  if (found != mStandardGrids.end())
    return found->second;
  const QgsCoordinateReferenceSystem crs(QString::fromStdString(definition));
  return mStandardGrids.emplace(definition, Grid{definition, QgsCoordinateTransform(wgs84(), crs, mTransforms)})
      .first->second;
}

bool RouteSource::place(RouteInput &route, const std::vector<size_t> &partSizes) {
  const size_t count = route.x.size();
  for (size_t i = 0; i < count; ++i)
    if (!std::isfinite(route.x[i]) || !std::isfinite(route.y[i])) {
      skip(route.where, tr("has a coordinate that is not a number (vertex %1).").arg(i + 1));
      return false;
    }

  std::vector<double> longitudes = route.x, latitudes = route.y, zero(count, 0);
  const QString badTransform = tr("cannot be transformed from %1 to %2: is the layer's coordinate reference system the "
                                  "right one?");
  try {
    mToPlaces.transformCoords(int(count), longitudes.data(), latitudes.data(), zero.data());
  } catch (const QgsCsException &) {
    skip(route.where, badTransform.arg(mSource->sourceCrs().authid(), tr("latitude and longitude")));
    return false;
  }
  for (size_t i = 0; i < count; ++i) {
    if (!std::isfinite(latitudes[i]) || !std::isfinite(longitudes[i])) {
      skip(route.where, badTransform.arg(mSource->sourceCrs().authid(), tr("latitude and longitude")));
      return false;
    }
    if (std::abs(latitudes[i]) > 90) {
      skip(route.where, tr("has a latitude of %1 degrees, beyond the pole: are latitude and longitude the wrong way "
                           "round?")
                            .arg(plain(latitudes[i])));
      return false;
    }
  }

  std::vector<double> eastings, northings;
  const Grid *grid = mGrid.get();
  const QgsCoordinateTransform *toGrid = &mToGrid;
  if (!grid) {
    grid = &standardGridOf(longitudes[0], latitudes[0]);
    toGrid = &grid->from_places;
  }
  eastings = toGrid->isShortCircuited() ? route.x : longitudes;
  northings = toGrid->isShortCircuited() ? route.y : latitudes;
  if (!toGrid->isShortCircuited()) {
    zero.assign(count, 0);
    try {
      toGrid->transformCoords(int(count), eastings.data(), northings.data(), zero.data());
    } catch (const QgsCsException &) {
      eastings.assign(1, std::numeric_limits<double>::quiet_NaN());
    }
    for (const double value : eastings)
      if (!std::isfinite(value)) {
        skip(route.where, tr("lies outside the grid %1: give another %2.")
                              .arg(QString::fromStdString(grid->definition).left(40), grid_parameters::key()));
        return false;
      }
  }
  const Place first{Angle::degrees(latitudes[0]), Angle::degrees(longitudes[0])};
  if (!mToldOutside && !mArea->holds(first)) {
    mToldOutside = true;
    mFeedback->pushWarning(tr("%1: %2 lies at latitude %3, longitude %4, outside the area that %5 is made for. Is the "
                              "layer's coordinate reference system the right one?")
                               .arg(inputKey, route.where, QString::number(latitudes[0], 'f', 4),
                                    QString::number(longitudes[0], 'f', 4), mSource->sourceCrs().authid()));
  }
  if (!mToldOutside)
    mGridWatch->see(first, [&] { return route.where; });

  route.route.grid = grid->definition;
  route.route.parts.clear();
  size_t i = 0;
  for (const size_t size : partSizes) {
    auto &part = route.route.parts.emplace_back();
    part.reserve(size);
    for (const size_t end = i + size; i < end; ++i)
      part.push_back({{Angle::degrees(latitudes[i]), Angle::degrees(longitudes[i])}, {eastings[i], northings[i]}, i});
  }
  return true;
}

bool RouteSource::next(RouteInput &route) {
  return host::isPointType(mSource->wkbType()) ? nextGathered(route) : nextLine(route);
}

bool RouteSource::takeAnnotated(const QgsFeature &feature, RouteInput &route) {
  route.name = feature.attribute(QStringLiteral("route")).toString().trimmed();
  route.first_leg = std::max(1, feature.attribute(QStringLiteral("leg")).toInt());
  const QString direction = feature.attribute(QStringLiteral("direction")).toString();
  route.back = direction == QLatin1String("back");
  // Other lines of the same leg are pieces of a detour, aims of other walkers, or legs of another route of this name.
  const QString walker = feature.attribute(QStringLiteral("walker")).toString();
  const QByteArray line = feature.geometry().asWkb();
  const QString key =
      QStringLiteral("%1\n%2\n%3\n%4")
          .arg(QString::number(route.first_leg), direction,
               QString::number(std::hash<std::string_view>()({line.constData(), size_t(line.size())})), route.name);
  const auto first = mWalkers.find(key);
  if (first != mWalkers.end())
    return first.value() == walker;
  mWalkers.insert(key, walker);
  return true;
}

bool RouteSource::Line::goesOnWith(const Line &next) const {
  const RouteInput &after = next.route;
  return next.parts.size() == 1 && after.name == route.name && after.back == route.back &&
         after.z.empty() == route.z.empty() && after.m.empty() == route.m.empty() && after.first_leg == lastLeg() + 1;
}

void RouteSource::Line::join(const Line &next) {
  const bool meets = next.route.x.front() == route.x.back() && next.route.y.front() == route.y.back();
  const auto append = [meets](std::vector<double> &to, const std::vector<double> &from) {
    if (!from.empty())
      to.insert(to.end(), from.begin() + (meets ? 1 : 0), from.end());
  };
  append(route.x, next.route.x);
  append(route.y, next.route.y);
  append(route.z, next.route.z);
  append(route.m, next.route.m);
  if (meets)
    parts.back() += next.parts.front() - 1;
  else
    parts.push_back(next.parts.front());
}

// The same leg again is a piece of a detour or another walker's; leg 1 begins another route of the name.
void RouteSource::seeOrder(const Line &line, const Line &next) {
  const RouteInput &before = line.route, &after = next.route;
  if (after.name != before.name || after.back != before.back || after.first_leg == 1 ||
      after.first_leg == line.lastLeg() || after.first_leg == line.lastLeg() + 1)
    return;
  if (mLeaps++ == 0)
    mFirstLeap = tr("%1, leg %2 of route “%3” after leg %4")
                     .arg(after.where, QString::number(after.first_leg), after.name, QString::number(line.lastLeg()));
}

bool RouteSource::nextLine(RouteInput &route) {
  for (;;) {
    std::optional<Line> line = mAhead ? std::exchange(mAhead, std::nullopt) : nextFeature();
    if (!line)
      return false;
    if (mAnnotated)
      while ((mAhead = nextFeature()) && line->goesOnWith(*mAhead))
        line->join(*mAhead);
    if (mAhead)
      seeOrder(*line, *mAhead);
    route = std::move(line->route);
    if (place(route, line->parts))
      return true;
  }
}

std::optional<RouteSource::Line> RouteSource::nextFeature() {
  QgsFeature feature;
  while (mFeatures.next(feature)) {
    ++mRead;
    ++mNumber;
    Line result;
    RouteInput &route = result.route;
    route.where = where(feature.id());
    route.name = nameOf(feature);
    if (mAnnotated && !takeAnnotated(feature, route))
      continue;
    if (route.name.isEmpty()) // among routes with names, "2" might be one of them
      route.name = QLatin1String(mAnnotated || mRouteField >= 0 ? "#" : "") + QString::number(mNumber);
    if (!feature.hasGeometry() || feature.geometry().isEmpty()) {
      skip(route.where, tr("has no geometry."));
      continue;
    }
    const QgsAbstractGeometry *geometry = feature.geometry().constGet();
    std::unique_ptr<QgsAbstractGeometry> straight;
    if (QgsWkbTypes::isCurvedType(geometry->wkbType())) { // also one whose pieces are all straight
      straight.reset(geometry->segmentize());
      geometry = straight.get();
    }
    const auto addPart = [&](const QgsAbstractGeometry *part) {
      const auto *line = qgsgeometry_cast<const QgsLineString *>(part);
      if (!line || line->isEmpty())
        return;
      const int count = line->numPoints();
      const auto append = [count](std::vector<double> &to, const double *from) {
        if (from)
          to.insert(to.end(), from, from + count);
      };
      append(route.x, line->xData());
      append(route.y, line->yData());
      append(route.z, line->is3D() ? line->zData() : nullptr);
      append(route.m, line->isMeasure() ? line->mData() : nullptr);
      result.parts.push_back(size_t(count));
    };
    if (const auto *collection = qgsgeometry_cast<const QgsGeometryCollection *>(geometry))
      for (int i = 0; i < collection->numGeometries(); ++i)
        addPart(collection->geometryN(i));
    else
      addPart(geometry);
    if (result.parts.empty()) {
      skip(route.where, tr("has no line in it."));
      continue;
    }
    return result;
  }
  return std::nullopt;
}

void RouteSource::gatherPoints() {
  if (mOrderField < 0)
    throw QgsProcessingException(
        tr("%1: layer “%2” has points, so the field with their order is needed.").arg(orderKey, mSource->sourceName()));
  mGathered = std::make_unique<Gathered>(Gathered{{}, 0, FromPlaces(crs(), mTransforms)});
  QHash<QString, size_t> byName;
  QgsFeature feature;
  while (mFeatures.next(feature)) {
    ++mRead;
    const QString at = where(feature.id());
    QString name = nameOf(feature);
    if (name.isEmpty()) {
      if (mRouteField >= 0) {
        skip(at, tr("names no route in its field “%1”.").arg(mSource->fields().at(mRouteField).name()));
        continue;
      }
      name = QStringLiteral("1");
    }
    if (!byName.contains(name)) {
      byName.insert(name, mGathered->groups.size());
      mGathered->groups.push_back({name, {}, {}, {}});
    }
    Gathered::Group &group = mGathered->groups[byName.value(name)];
    const double order = orderOf(feature.attribute(mOrderField), at);
    const QgsAbstractGeometry *geometry = feature.hasGeometry() ? feature.geometry().constGet() : nullptr;
    if (const auto *collection = qgsgeometry_cast<const QgsGeometryCollection *>(geometry);
        collection && collection->numGeometries() == 1)
      geometry = collection->geometryN(0);
    const auto *point = qgsgeometry_cast<const QgsPoint *>(geometry);
    if (!point || point->isEmpty()) {
      // A route with a point left out is another route, perhaps over a cliff.
      group.skip_where = at;
      group.skip_reason = tr("has no single point, so route “%1” is not complete.").arg(name);
      continue;
    }
    group.points.push_back({order, point->x(), point->y(), point->z(), point->m(), feature.id()});
  }
}

bool RouteSource::nextGathered(RouteInput &route) {
  if (!mGathered)
    gatherPoints();
  const bool hasZ = QgsWkbTypes::hasZ(mSource->wkbType());
  const bool hasM = QgsWkbTypes::hasM(mSource->wkbType());
  while (mGathered->next < mGathered->groups.size()) {
    if (mFeedback->isCanceled())
      throw Cancelled();
    Gathered::Group group = std::move(mGathered->groups[mGathered->next++]);
    if (!group.skip_reason.isEmpty()) {
      skip(group.skip_where, group.skip_reason);
      continue;
    }
    std::sort(group.points.begin(), group.points.end(),
              [](const Gathered::Point &a, const Gathered::Point &b) { return a.order < b.order; });
    for (size_t i = 1; i < group.points.size(); ++i)
      if (group.points[i].order == group.points[i - 1].order)
        throw QgsProcessingException(
            tr("%1: features %2 and %3 of layer “%4” have the same value in route “%5”, so their order is not known. "
               "Give each point of a route its own number.")
                .arg(orderKey)
                .arg(std::min(group.points[i - 1].feature, group.points[i].feature))
                .arg(std::max(group.points[i - 1].feature, group.points[i].feature))
                .arg(mSource->sourceName(), group.name));
    route = RouteInput();
    route.name = group.name;
    route.where = tr("layer “%1”, route “%2”").arg(mSource->sourceName(), group.name);
    for (const Gathered::Point &point : group.points) {
      route.x.push_back(point.x);
      route.y.push_back(point.y);
      if (hasZ)
        route.z.push_back(point.z);
      if (hasM)
        route.m.push_back(point.m);
    }
    if (!place(route, {route.x.size()}))
      continue;
    // A line that somebody drew stays as it is; this one is drawn here.
    for (size_t i = 1; i < route.x.size(); ++i)
      route.x[i] = mGathered->from_places.beside(route.x[i], route.x[i - 1]);
    return true;
  }
  return false;
}

} // namespace brushline
