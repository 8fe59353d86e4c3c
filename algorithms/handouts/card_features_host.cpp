// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/card_features_host.h"

#include "quantities/progress.h"
#include "shared/source_features_host.h"

#include <QSet>
#include <qgsexception.h>
#include <qgsfeatureiterator.h>

#include <algorithm>
#include <cmath>

namespace brushline {

namespace {

const QString featuresKey = QStringLiteral("FEATURES");

QString keyOf(const QString &route, int leg, const QString &direction) {
  return route + QLatin1Char('\n') + QString::number(leg) + QLatin1Char('\n') + direction;
}
QString keyOf(const LegSheet &sheet, int leg) {
  return keyOf(sheet.given_name, leg, sheet.back ? QStringLiteral("back") : QStringLiteral("out"));
}

QString textAt(const QgsFeature &feature, int field) {
  return field < 0 || feature.attribute(field).isNull() ? QString() : feature.attribute(field).toString().trimmed();
}

} // namespace

Definitions CardFeatures::definitions() {
  return {helped(new QgsProcessingParameterFeatureSource(featuresKey, tr("What the legs meet (points)"),
                                                         QList<int>() << host::pointLayers, QVariant(), true),
                 tr("Streams, trails and the like that legs cross or pass, with the fields route, leg, feature, at_m "
                    "and role: each is told on its leg's row, with the paces at which it comes."))};
}

void CardFeatures::check(const ParameterReader &reader) {
  if (!reader.given(featuresKey))
    return;
  const auto source = reader.source(featuresKey);
  QStringList lacking;
  for (const char *name : {"route", "leg", "feature", "at_m"})
    if (source->fields().lookupField(QString::fromLatin1(name)) < 0)
      lacking << QString::fromLatin1(name);
  if (!lacking.isEmpty())
    throw QgsProcessingException(
        tr("%1: layer “%2” lacks these fields: %3. It needs the fields route, leg, feature (what "
           "is met) and at_m (metres from the leg's start).")
            .arg(featuresKey, source->sourceName(), lacking.join(QLatin1String(", "))));
}

CardFeatures::CardFeatures(const ParameterReader &reader, const std::vector<LegSheet> &sheets,
                           QgsProcessingFeedback *feedback) {
  if (!reader.given(featuresKey))
    return;
  // Two routes of one name cannot be told apart by it, nor where one of them lacks the leg on its sheet.
  QSet<QString> legs, several;
  QHash<QString, int> copies;
  for (const LegSheet &sheet : sheets) {
    const auto see = [&](int leg) {
      const QString key = keyOf(sheet, leg);
      if (copies.value(key, sheet.copy) != sheet.copy)
        several.insert(key);
      copies.insert(key, sheet.copy);
      return key;
    };
    for (const int leg : sheet.missing)
      see(leg);
    for (const SheetLeg &leg : sheet.legs)
      if (const QString key = see(leg.number); !leg.in_pieces) // from whose start metres count is not known of pieces
        legs.insert(key);
  }
  legs -= several;
  const auto source = reader.source(featuresKey);
  const auto field = [&](const char *name) { return source->fields().lookupField(QString::fromLatin1(name)); };
  const int route = field("route"), leg = field("leg"), name = field("feature"), at = field("at_m"),
            role = field("role"), event = field("event"), walker = field("walker"), direction = field("direction");
  long strangers = 0;
  QgsFeature feature;
  SourceFeatures features(featuresKey, *source, feedback);
  while (features.next(feature)) {
    bool hasLeg = false, hasAt = false;
    const QString way = textAt(feature, direction);
    const QString key = keyOf(textAt(feature, route), feature.attribute(leg).toInt(&hasLeg),
                              way.isEmpty() ? QStringLiteral("out") : way);
    const double metres = feature.attribute(at).toDouble(&hasAt);
    const MetFeature met{metres, textAt(feature, name), textAt(feature, role), textAt(feature, event)};
    if (!hasLeg || !hasAt || !std::isfinite(metres) || feature.attribute(at).isNull() ||
        (met.name.isEmpty() && met.role.isEmpty()) || !legs.contains(key)) {
      ++strangers;
      continue;
    }
    mRows[key].push_back({textAt(feature, walker), met});
  }
  for (std::vector<Row> &rows : mRows)
    std::stable_sort(rows.begin(), rows.end(),
                     [](const Row &a, const Row &b) { return a.feature.at_m < b.feature.at_m; });
  if (strangers > 0)
    feedback->pushWarning(
        tr("%1: %n row(s) of layer “%2” belong to none of the legs or to several, or say neither what is met nor "
           "where; passed over.",
           nullptr, int(strangers))
            .arg(featuresKey, source->sourceName()));
}

std::vector<std::vector<MetFeature>> CardFeatures::of(const LegSheet &sheet) const {
  std::vector<std::vector<MetFeature>> result;
  for (const SheetLeg &leg : sheet.legs) {
    std::vector<MetFeature> met;
    if (const auto rows = mRows.constFind(keyOf(sheet, leg.number)); rows != mRows.constEnd())
      for (const Row &row : *rows)
        if (row.walker.isEmpty() || row.walker == sheet.walker)
          met.push_back(row.feature);
    result.push_back(std::move(met));
  }
  return result;
}

} // namespace brushline
