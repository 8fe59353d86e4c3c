// SPDX-License-Identifier: GPL-2.0-or-later
#include "legs/leg_advice_host.h"
#include "shared/geodesic.h"
#include "shared/source_features_host.h"

#include <QStringList>
#include <qgsexception.h>
#include <qgsfeatureiterator.h>
#include <qgsgeometry.h>

#include <algorithm>
#include <cmath>

namespace brushline {

namespace {
const QString foundKey = QStringLiteral("HAZARDS_FOUND");
constexpr const char *wanted[] = {"route", "leg", "hazard", "advice"};

QString keyOf(const QString &route, int number, bool back) {
  return route + QLatin1Char('\n') + QString::number(number) + QLatin1String(back ? "\nback" : "\nout");
}

// Whether a place lies on a leg, or so near it that only rounding parts them.
bool liesOn(const AnnotatedLeg &leg, const Place &place) {
  constexpr double slack_m = 5;
  const GeodesicLeg to = geodesicBetween(leg.start, place);
  const double turn = (to.departure.angle() - leg.true_bearing.angle()).radians(), metres = to.length.metres();
  const double along = metres * std::cos(turn);
  return std::abs(metres * std::sin(turn)) <= slack_m && along >= -slack_m && along <= leg.length.metres() + slack_m;
}
} // namespace

Definitions LegAdvice::definitions() {
  return {
      advanced(helped(new QgsProcessingParameterFeatureSource(foundKey, tr("Hazards found on these routes"),
                                                              QList<int>() << host::anyTable, QVariant(), true),
                      tr("The output of “Check legs for hazards” for the same routes: its advice goes into the field "
                         "warnings.")))};
}

void LegAdvice::check(const ParameterReader &reader) {
  const auto source = reader.source(foundKey);
  if (!source)
    return;
  for (const char *name : wanted)
    if (source->fields().lookupField(QString::fromLatin1(name)) < 0)
      throw QgsProcessingException(tr("%1: layer “%2” lacks the field %3. Give the output of “Check legs for hazards” "
                                      "(brushline:checkhazards).")
                                       .arg(foundKey, source->sourceName(), QString::fromLatin1(name)));
}

LegAdvice::LegAdvice(const ParameterReader &reader, const QgsFeedback *feedback) {
  const auto source = reader.source(foundKey);
  if (!source)
    return;
  int index[4];
  for (int i = 0; i < 4; ++i)
    index[i] = source->fields().lookupField(QString::fromLatin1(wanted[i]));
  const int direction = source->fields().lookupField(QStringLiteral("direction")); // without it: all are out
  mLayer = source->sourceName();
  const ToPlaces toPlaces(source->sourceCrs(), reader.context().transformContext());
  SourceFeatures features(foundKey, *source, feedback);
  QgsFeature feature;
  while (features.next(feature)) {
    const bool back = direction >= 0 && feature.attribute(direction).toString() == QLatin1String("back");
    Found found{feature.attribute(index[2]).toString(), feature.attribute(index[3]).toString(), {}, false};
    if (feature.hasGeometry()) {
      const QgsAbstractGeometry &line = *feature.geometry().constGet();
      for (auto vertex = line.vertices_begin(); vertex != line.vertices_end(); ++vertex)
        if (const auto place = toPlaces((*vertex).x(), (*vertex).y()))
          found.ends.push_back(*place);
    }
    mFound[keyOf(feature.attribute(index[0]).toString(), feature.attribute(index[1]).toInt(), back)].append(found);
  }
}

std::vector<const LegAdvice::Found *> LegAdvice::onLeg(const QString &key, const AnnotatedLeg &leg) {
  std::vector<const Found *> result;
  const auto found = mFound.find(key);
  if (found != mFound.end())
    for (Found &each : *found)
      if (std::all_of(each.ends.begin(), each.ends.end(), [&](const Place &end) { return liesOn(leg, end); })) {
        each.told = true;
        result.push_back(&each);
      }
  return result;
}

QString LegAdvice::forLeg(const QString &route, const AnnotatedLeg &leg, int opposite) {
  if (mFound.isEmpty())
    return QString();
  QStringList words, told;
  const std::vector<const Found *> thisWay = onLeg(keyOf(route, leg.number, leg.back), leg),
                                   otherWay = onLeg(keyOf(route, opposite, !leg.back), leg);
  for (const Found *each : thisWay)
    if (!each->advice.isEmpty()) {
      told << each->hazard;
      if (!words.contains(each->advice))
        words << each->advice;
    }
  for (const Found *each : otherWay)
    if (!told.contains(each->hazard)) {
      told << each->hazard;
      words << tr("Take care on this leg: %1.").arg(each->hazard);
    }
  return words.join(QLatin1Char(' '));
}

void LegAdvice::finish(QgsProcessingFeedback *feedback) const {
  long strangers = 0;
  for (const QVector<Found> &found : mFound)
    strangers += std::count_if(found.begin(), found.end(), [](const Found &each) { return !each.told; });
  if (strangers > 0)
    feedback->pushWarning(tr("%1: %n hazard(s) of layer “%2” lie on none of these legs, so no leg warns of them. Check "
                             "these very legs for hazards, with the same names of routes, and annotate them again.",
                             nullptr, int(strangers))
                              .arg(foundKey, mLayer));
}

} // namespace brushline
