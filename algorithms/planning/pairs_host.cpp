// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/pairs_host.h"

#include "quantities/progress.h"
#include "shared/parameter_checks_host.h"
#include "shared/place_reader_host.h"
#include "shared/source_features_host.h"

#include <QHash>
#include <qgscoordinatetransform.h>
#include <qgsexception.h>
#include <qgsfeatureiterator.h>
#include <qgsgeometry.h>

#include <cmath>

namespace brushline::pairs_parameters {

namespace {
struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::PairsParameters)
};
const QString startsKey = QStringLiteral("STARTS"), endsKey = QStringLiteral("ENDS"),
              pairKey = QStringLiteral("PAIR_FIELD");

// One end of a pair, as read.
struct End {
  QString key, name, where;
  Place place;
  double x = 0; // in its layer's system
};

QString nameOfField(const ParameterReader &reader) { return reader.given(pairKey) ? reader.text(pairKey) : QString(); }

int fieldOf(const ParameterReader &reader, const QString &key, const QgsProcessingFeatureSource &source) {
  const QString name = nameOfField(reader);
  if (name.isEmpty())
    return -1;
  const int index = source.fields().lookupField(name);
  if (index < 0)
    throw QgsProcessingException(Text::tr("%1: layer “%2” of %3 has no field “%4”. Both layers need it to be paired by "
                                          "it; without %1 they are paired by their order.")
                                     .arg(pairKey, source.sourceName(), key, name));
  return index;
}

std::vector<End> readEnds(const ParameterReader &reader, const QString &key, QgsProcessingFeedback *feedback,
                          const std::function<void(const QString &)> &skip) {
  const auto source = reader.source(key);
  const int field = fieldOf(reader, key, *source), nameField = source->fields().lookupField(QStringLiteral("name"));
  const ToPlaces toPlaces(source->sourceCrs(), reader.context().transformContext());
  std::vector<End> ends;
  QgsFeature feature;
  SourceFeatures features(key, *source, feedback);
  while (features.next(feature)) {
    End end;
    end.where = Text::tr("%1: layer “%2”, feature %3").arg(key, source->sourceName(), QString::number(feature.id()));
    const QVariant value = field >= 0 ? feature.attribute(field) : QVariant();
    end.key = value.isNull() ? QString() : value.toString().trimmed();
    end.name = nameField >= 0 ? feature.attribute(nameField).toString().trimmed() : QString();
    std::optional<Place> place;
    const int points = feature.hasGeometry() ? feature.geometry().constGet()->nCoordinates() : 0;
    if (points > 1) {
      skip(Text::tr("%1 has %2 points, but a pair has one start and one end. Split it with “Multipart to singleparts”.")
               .arg(end.where, QString::number(points)));
      end.where.clear(); // the order of the others stays
      ends.push_back(end);
      continue;
    }
    if (feature.hasGeometry() && !feature.geometry().isEmpty()) {
      const QgsPointXY point(*feature.geometry().vertices_begin());
      place = toPlaces(point.x(), point.y());
      end.x = point.x();
    }
    if (!place) {
      skip(Text::tr("%1 has no usable place.").arg(end.where));
      end.where.clear(); // the order of the others stays
    }
    end.place = place.value_or(Place());
    ends.push_back(end);
  }
  return ends;
}

QString joined(const End &start, const End &end, size_t number) {
  if (!start.key.isEmpty())
    return start.key;
  if (!start.name.isEmpty() && !end.name.isEmpty())
    return Text::tr("%1 to %2").arg(start.name, end.name);
  return QString::number(number);
}
} // namespace

Definitions definitions() {
  return {helped(new QgsProcessingParameterFeatureSource(startsKey, Text::tr("Starts (points)"),
                                                         QList<int>() << host::pointLayers),
                 Text::tr("Where the routes begin.")),
          helped(new QgsProcessingParameterFeatureSource(endsKey, Text::tr("Ends (points)"),
                                                         QList<int>() << host::pointLayers),
                 Text::tr("Where they lead, an end for each start.")),
          helped(new QgsProcessingParameterField(pairKey, Text::tr("Field that pairs them"), QVariant(), startsKey,
                                                 host::anyField, false, true),
                 Text::tr("A field that both layers have: a start and an end with the same value belong together. "
                          "Empty: the first start and the first end, the second and the second."))};
}

void check(const ParameterReader &reader) {
  for (const QString &key : {startsKey, endsKey}) {
    const auto source = reader.source(key);
    if (!source)
      throw QgsProcessingException(Text::tr("%1: give a layer with points.").arg(key));
    checkPoints(key, *source);
    fieldOf(reader, key, *source);
    if (source->featureCount() == 0)
      throw QgsProcessingException(
          Text::tr("%1: layer “%2” has no points. Give at least one.").arg(key, source->sourceName()));
  }
}

std::vector<PlacePair> read(const ParameterReader &reader, QgsProcessingFeedback *feedback,
                            const std::function<void(const QString &message)> &skip) {
  const std::vector<End> starts = readEnds(reader, startsKey, feedback, skip);
  const std::vector<End> ends = readEnds(reader, endsKey, feedback, skip);
  std::vector<PlacePair> pairs;
  const auto add = [&](const End &start, const End &end) {
    if (!start.where.isEmpty() && !end.where.isEmpty())
      pairs.push_back({joined(start, end, pairs.size() + 1), start.place, end.place, start.x});
  };
  if (nameOfField(reader).isEmpty()) {
    for (size_t i = 0; i < std::max(starts.size(), ends.size()); ++i)
      if (i < starts.size() && i < ends.size())
        add(starts[i], ends[i]);
      else if (const End &lone = i < starts.size() ? starts[i] : ends[i]; !lone.where.isEmpty())
        skip(Text::tr("%1 has no partner: there are %2 starts and %3 ends.")
                 .arg(lone.where, QString::number(starts.size()), QString::number(ends.size())));
    return pairs;
  }
  const auto byKey = [&](const std::vector<End> &all) {
    QHash<QString, std::vector<const End *>> found;
    for (const End &end : all)
      if (end.key.isEmpty()) {
        if (!end.where.isEmpty())
          skip(Text::tr("%1 has nothing in its field “%2”, so it has no partner.").arg(end.where, nameOfField(reader)));
      } else {
        found[end.key].push_back(&end);
      }
    return found;
  };
  const auto startsByKey = byKey(starts), endsByKey = byKey(ends);
  const auto doubled = [&](const std::vector<const End *> &all) {
    if (all.size() > 1)
      skip(Text::tr("%1 has the same “%2” (%3) as another. Give each pair a value of its own.")
               .arg(all[1]->where, nameOfField(reader), all[1]->key));
    return all.size() > 1;
  };
  for (const End &start : starts) {
    const auto &same = startsByKey[start.key];
    if (start.key.isEmpty() || same.front() != &start || doubled(same))
      continue;
    const auto partners = endsByKey[start.key];
    if (partners.empty())
      skip(Text::tr("%1 (%2) has no end of that name.").arg(start.where, start.key));
    else if (!doubled(partners))
      add(start, *partners.front());
  }
  for (const End &end : ends)
    if (!end.key.isEmpty() && !startsByKey.contains(end.key))
      skip(Text::tr("%1 (%2) has no start of that name.").arg(end.where, end.key));
  return pairs;
}

} // namespace brushline::pairs_parameters
