// SPDX-License-Identifier: GPL-2.0-or-later
#include "records/tracks_parameters.h"

#include "quantities/progress.h"
#include "shared/place_reader_host.h"
#include "shared/source_features_host.h"

#include <QDateTime>
#include <qgsexception.h>
#include <qgsgeometry.h>
#include <qgsgeometrycollection.h>
#include <qgslinestring.h>
#include <qgsvectorlayer.h>

#include <algorithm>
#include <cmath>

namespace brushline {

namespace {
struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::TracksParameters)
};
const QString tracksKey = QStringLiteral("TRACKS"), trackKey = QStringLiteral("TRACK_FIELD"),
              orderKey = QStringLiteral("TRACK_ORDER"), timeKey = QStringLiteral("TIME_FIELD"),
              routeKey = QStringLiteral("TRACK_ROUTE"), walkerKey = QStringLiteral("TRACK_WALKER"),
              errorKey = QStringLiteral("TRACK_ERROR"), speedKey = QStringLiteral("MAX_SPEED");
// Seconds since 1970 that are times of a walk, 1980 to 2100; and the same in milliseconds.
constexpr double firstTime = 315532800, lastTime = 4102444800;

int fieldOr(const ParameterReader &reader, const QString &key, const QgsProcessingFeatureSource &source,
            std::initializer_list<const char *> usual) {
  int field = reader.fieldIndex(key, source);
  for (const char *name : usual)
    if (field < 0)
      field = source.fields().lookupField(QString::fromLatin1(name));
  return field;
}

std::optional<double> epoch(double value) {
  if (value >= firstTime && value <= lastTime)
    return value;
  if (value >= 1000 * firstTime && value <= 1000 * lastTime)
    return value / 1000;
  return std::nullopt;
}

std::optional<double> timeOf(const QVariant &value) {
  if (value.isNull())
    return std::nullopt;
  QDateTime time = value.toDateTime();
  if (value.type() == QVariant::String) {
    bool isNumber = false;
    const double number = value.toString().trimmed().toDouble(&isNumber);
    if (isNumber)
      return epoch(number);
    time = QDateTime::fromString(value.toString().trimmed().replace(QLatin1Char('/'), QLatin1Char('-')),
                                 Qt::ISODateWithMs);
  } else if (value.type() != QVariant::DateTime) {
    bool isNumber = false;
    const double number = value.toDouble(&isNumber);
    return isNumber ? epoch(number) : std::nullopt;
  }
  return time.isValid() ? epoch(double(time.toMSecsSinceEpoch()) / 1000) : std::nullopt;
}

std::optional<double> orderOf(const QVariant &value) {
  if (const auto time = value.type() == QVariant::DateTime ? timeOf(value) : std::nullopt)
    return time;
  bool ok = false;
  const double number = value.toString().trimmed().toDouble(&ok);
  return ok && std::isfinite(number) ? std::optional(number) : std::nullopt;
}
} // namespace

namespace tracks_parameters {

Definitions definitions() {
  const auto field = [](const QString &key, const QString &label, const QString &help) {
    return advanced(
        helped(new QgsProcessingParameterField(key, label, QVariant(), tracksKey, host::anyField, false, true), help));
  };
  return {
      helped(new QgsProcessingParameterFeatureSource(tracksKey, Text::tr("Walked tracks (lines or points)"),
                                                     QList<int>() << host::lineLayers << host::pointLayers),
             Text::tr("What a recorder wrote. Of a GPX file take the layer track_points, which has times; tracks has "
                      "none.")),
      field(trackKey, Text::tr("Field with the track's name"),
            Text::tr("Points with the same value make one track. Empty: track_fid of a GPX file, else track; for lines "
                     "name.")),
      field(orderKey, Text::tr("Field with the order of a track's points"),
            Text::tr("Numbers or times. Empty: the numbers of a GPX file, else the time, else the layer's order.")),
      field(timeKey, Text::tr("Field with the time of points"),
            Text::tr("Date and time, or seconds or milliseconds since 1970. Empty: the field called time, if there is "
                     "one. Lines have their times as M values in seconds or milliseconds since 1970, or none.")),
      field(routeKey, Text::tr("Field with the route that a track is a walk of"),
            Text::tr("Empty: the field called route; else a track whose name is that of a route is a walk of it, and "
                     "others belong to the route they fit best.")),
      field(walkerKey, Text::tr("Field with the name of who walked a track"),
            Text::tr("Empty: the field called walker; else a track whose name is that of a walker of the legs is "
                     "theirs."))};
}

Definitions ruleDefinitions() {
  return {advanced(helped(
              numberDefinition(errorKey, Text::tr("Error of a track's points (m, one sigma)"), TrackRule::errorLimits),
              Text::tr("How far recorded points lie from the truth, in each direction. Under dense trees 4 "
                       "to 10 m."))),
          advanced(helped(numberDefinition(speedKey, Text::tr("Fastest anybody walks (m/s)"), TrackRule::speedLimits),
                          Text::tr("Points that could only be reached faster are spikes, and left out.")))};
}

void check(const ParameterReader &reader) {
  const auto source = reader.source(tracksKey);
  if (!source)
    throw QgsProcessingException(Text::tr("%1: give a layer with tracks.").arg(tracksKey));
  checkPlaces(tracksKey, *source);
  if (!host::isPointType(source->wkbType()) && !host::isLineType(source->wkbType()))
    throw QgsProcessingException(Text::tr("%1: layer “%2” has neither lines nor points. Of a GPX file take the layer "
                                          "track_points.")
                                     .arg(tracksKey, source->sourceName()));
  for (const QString &key : {trackKey, orderKey, timeKey, routeKey, walkerKey})
    reader.fieldIndex(key, *source);
  rule(reader);
}

TrackRule rule(const ParameterReader &reader) {
  return {reader.number(errorKey, TrackRule::errorLimits), reader.number(speedKey, TrackRule::speedLimits)};
}

TrackNames gpxNames(const ParameterReader &reader) {
  TrackNames names;
  const auto *points = QgsProcessingParameters::parameterAsVectorLayer(reader.definition(tracksKey),
                                                                       reader.parameters(), reader.context());
  const QString layerName = QStringLiteral("layername=track_points");
  if (!points || !points->source().contains(layerName))
    return names;
  const QString path = points->source().section(QLatin1Char('|'), 0, 0);
  QgsVectorLayer tracks(path + QStringLiteral("|layername=tracks"), QStringLiteral("tracks"), QStringLiteral("ogr"));
  const int name = tracks.isValid() ? tracks.fields().lookupField(QStringLiteral("name")) : -1;
  if (name < 0)
    return names;
  QgsFeature feature;
  QgsFeatureIterator features = tracks.getFeatures();
  while (features.nextFeature(feature))
    if (const QString text = feature.attribute(name).toString().trimmed(); !text.isEmpty())
      names.insert(QString::number(feature.id()), text);
  return names;
}

} // namespace tracks_parameters

//! Points by track, in the order the tracks were first met.
struct TrackSource::Points {
  struct Fix {
    double segment = 0;
    std::optional<double> order;
    TrackFix fix;
  };
  struct Group {
    TrackInput track;
    std::vector<Fix> fixes;
    size_t unordered = 0;
  };
  std::vector<Group> groups;
  size_t next = 0;
};

TrackSource::TrackSource(const ParameterReader &reader, TrackNames names, QgsProcessingFeedback *feedback)
    : mFeedback(feedback), mSource(reader.source(tracksKey)), mNames(std::move(names)) {
  const auto own = [this](const char *name) { return mSource->fields().lookupField(QString::fromLatin1(name)); };
  mToPlaces = ToPlaces(mSource->sourceCrs(), reader.context().transformContext());
  const bool points = host::isPointType(mSource->wkbType());
  mTrack = points ? fieldOr(reader, trackKey, *mSource, {"track_fid", "track"})
                  : fieldOr(reader, trackKey, *mSource, {"name"});
  mTime = fieldOr(reader, timeKey, *mSource, {"time"});
  mRoute = fieldOr(reader, routeKey, *mSource, {"route"});
  mWalker = fieldOr(reader, walkerKey, *mSource, {"walker"});
  mRouteNamed = mRoute >= 0;
  mSegment = own("track_seg_id");
  mSegmentPoint = own("track_seg_point_id");
  mOrder = reader.fieldIndex(orderKey, *mSource);
  if (reader.fieldIndex(trackKey, *mSource) < 0 && points && own("track_fid") >= 0)
    for (const char *name : {"layer", "path"}) // written by the host when files are merged; numbers come again in each
      if (own(name) >= 0)
        mMergedFrom << own(name);
  if (points && mOrder < 0 && mSegmentPoint < 0) {
    mOrder = mTime;
    if (mTime < 0)
      feedback->pushWarning(tr("%1: layer “%2” has neither numbers nor times, so its points are taken in the layer's "
                               "order. Give %3 if that is not the order they were recorded in.")
                                .arg(tracksKey, mSource->sourceName(), orderKey));
  }
  mExpected = mSource->featureCount();
  mFeatures = SourceFeatures(tracksKey, *mSource, mFeedback);
}

TrackSource::~TrackSource() = default;

double TrackSource::fraction() const {
  if (mPoints)
    return mPoints->groups.empty() ? 1 : double(mPoints->next) / double(mPoints->groups.size());
  return mExpected > 0 ? std::min(1.0, double(mRead) / double(mExpected)) : 0;
}

QString TrackSource::text(const QgsFeature &feature, int field) const {
  const QVariant value = field >= 0 ? feature.attribute(field) : QVariant();
  return value.isNull() ? QString() : value.toString().trimmed();
}

void TrackSource::nameTrack(TrackInput &track, const QgsFeature &feature) const {
  track.route = text(feature, mRoute);
  track.route_named = mRouteNamed && !track.route.isEmpty();
  track.walker = text(feature, mWalker);
}

void TrackSource::addLine(TrackInput &track, const QgsAbstractGeometry &part) {
  const auto *line = qgsgeometry_cast<const QgsLineString *>(&part);
  if (!line)
    return;
  bool first = true;
  for (int i = 0; i < line->numPoints(); ++i) {
    const auto place = mToPlaces(line->xAt(i), line->yAt(i));
    if (!place) {
      ++mUnplaced;
      continue;
    }
    track.fixes.push_back(
        {*place, line->isMeasure() ? epoch(line->mAt(i)) : std::nullopt, first && !track.fixes.empty()});
    first = false;
  }
}

bool TrackSource::nextLine(TrackInput &track) {
  QgsFeature feature;
  if (!mFeatures.next(feature))
    return false;
  ++mRead;
  track = TrackInput();
  track.name = text(feature, mTrack);
  if (track.name.isEmpty())
    track.name = QString::number(++mNumber);
  track.where = tr("layer “%1”, feature %2").arg(mSource->sourceName(), QString::number(feature.id()));
  nameTrack(track, feature);
  if (!feature.hasGeometry() || feature.geometry().isEmpty())
    return true;
  std::unique_ptr<QgsAbstractGeometry> straight;
  const QgsAbstractGeometry *geometry = feature.geometry().constGet();
  if (QgsWkbTypes::isCurvedType(geometry->wkbType())) {
    straight.reset(geometry->segmentize());
    geometry = straight.get();
  }
  if (const auto *collection = qgsgeometry_cast<const QgsGeometryCollection *>(geometry))
    for (int i = 0; i < collection->numGeometries(); ++i)
      addLine(track, *collection->geometryN(i));
  else
    addLine(track, *geometry);
  return true;
}

void TrackSource::gather() {
  mPoints = std::make_unique<Points>();
  QHash<QString, size_t> byKey;
  QgsFeature feature;
  while (mFeatures.next(feature)) {
    const QString name = text(feature, mTrack);
    QString key = name;
    for (const int field : mMergedFrom)
      key += QLatin1Char('\n') + text(feature, field);
    if (!byKey.contains(key)) {
      byKey.insert(key, mPoints->groups.size());
      Points::Group group;
      group.track.name = mNames.value(name, name);
      if (!mMergedFrom.isEmpty())
        group.track.name = text(feature, mMergedFrom.first()) + QLatin1Char(' ') + name;
      if (group.track.name.isEmpty())
        group.track.name = QStringLiteral("1");
      group.track.where = tr("layer “%1”").arg(mSource->sourceName());
      nameTrack(group.track, feature);
      mPoints->groups.push_back(std::move(group));
    }
    Points::Group &group = mPoints->groups[byKey.value(key)];
    const QgsAbstractGeometry *geometry = feature.hasGeometry() ? feature.geometry().constGet() : nullptr;
    std::optional<Place> place;
    if (geometry && !geometry->isEmpty())
      if (const QgsPoint at = *geometry->vertices_begin(); geometry->nCoordinates() == 1)
        place = mToPlaces(at.x(), at.y());
    if (!place) {
      ++mUnplaced;
      continue;
    }
    Points::Fix fix;
    fix.fix.place = *place;
    if (mTime >= 0) {
      fix.fix.time_s = timeOf(feature.attribute(mTime));
      mBadTimes += !fix.fix.time_s && !feature.attribute(mTime).isNull() ? 1 : 0;
    }
    if (mSegment >= 0)
      fix.segment = orderOf(feature.attribute(mSegment)).value_or(0);
    const int order = mOrder >= 0 ? mOrder : mSegmentPoint;
    fix.order = order < 0        ? std::optional(double(group.fixes.size()))
                : order == mTime ? fix.fix.time_s
                                 : orderOf(feature.attribute(order));
    group.unordered += fix.order ? 0 : 1;
    group.fixes.push_back(fix);
  }
}

bool TrackSource::nextGathered(TrackInput &track) {
  if (!mPoints)
    gather();
  if (mPoints->next >= mPoints->groups.size())
    return false;
  Points::Group group = std::move(mPoints->groups[mPoints->next++]);
  track = std::move(group.track);
  if (group.unordered > 0) {
    mFeedback->pushWarning(tr("%1: %n point(s) of track “%2” have no number or time that tells their order; they are "
                              "passed over.",
                              nullptr, int(group.unordered))
                               .arg(tracksKey, track.name));
    group.fixes.erase(
        std::remove_if(group.fixes.begin(), group.fixes.end(), [](const Points::Fix &fix) { return !fix.order; }),
        group.fixes.end());
  }
  const bool segmentsFirst = mOrder < 0; // the numbers of a GPX file start anew in each segment
  std::stable_sort(group.fixes.begin(), group.fixes.end(), [&](const Points::Fix &a, const Points::Fix &b) {
    return segmentsFirst && a.segment != b.segment ? a.segment < b.segment : *a.order < *b.order;
  });
  for (size_t i = 0; i < group.fixes.size(); ++i) {
    track.fixes.push_back(group.fixes[i].fix);
    track.fixes.back().after_gap = i > 0 && group.fixes[i].segment != group.fixes[i - 1].segment;
  }
  return true;
}

bool TrackSource::next(TrackInput &track) {
  if (mFeedback->isCanceled())
    throw Cancelled();
  return host::isPointType(mSource->wkbType()) ? nextGathered(track) : nextLine(track);
}

void TrackSource::finish() {
  if (mUnplaced > 0)
    mFeedback->pushWarning(
        tr("%1: %n point(s) of layer “%2” without a usable place passed over.", nullptr, int(mUnplaced))
            .arg(tracksKey, mSource->sourceName()));
  if (mBadTimes > 0)
    mFeedback->pushWarning(
        tr("%1: %n point(s) of layer “%2” have a time that cannot be read; they are taken without it.", nullptr,
           int(mBadTimes))
            .arg(timeKey, mSource->sourceName()));
}

} // namespace brushline
