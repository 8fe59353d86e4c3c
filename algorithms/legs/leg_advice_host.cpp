// SPDX-License-Identifier: GPL-2.0-or-later
#include "legs/leg_advice_host.h"
#include "shared/source_features_host.h"

#include <QStringList>
#include <qgsexception.h>
#include <qgsfeatureiterator.h>

namespace brushline {

namespace {
const QString foundKey = QStringLiteral("HAZARDS_FOUND");
constexpr const char *wanted[] = {"route", "leg", "hazard", "advice"};

QString keyOf(const QString &route, int number, bool back) {
  return route + QLatin1Char('\n') + QString::number(number) + QLatin1String(back ? "\nback" : "\nout");
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
  SourceFeatures features(foundKey, *source, feedback);
  QgsFeature feature;
  while (features.next(feature)) {
    const bool back = direction >= 0 && feature.attribute(direction).toString() == QLatin1String("back");
    mFound[keyOf(feature.attribute(index[0]).toString(), feature.attribute(index[1]).toInt(), back)].append(
        {feature.attribute(index[2]).toString(), feature.attribute(index[3]).toString()});
  }
}

QString LegAdvice::forLeg(const QString &route, int number, bool back, int opposite) const {
  if (mFound.isEmpty())
    return QString();
  QStringList words, told;
  const QVector<Found> thisWay = mFound.value(keyOf(route, number, back)),
                       otherWay = mFound.value(keyOf(route, opposite, !back));
  for (const Found &each : thisWay)
    if (!each.advice.isEmpty()) {
      told << each.hazard;
      if (!words.contains(each.advice))
        words << each.advice;
    }
  for (const Found &each : otherWay)
    if (!told.contains(each.hazard)) {
      told << each.hazard;
      words << tr("Take care on this leg: %1.").arg(each.hazard);
    }
  return words.join(QLatin1Char(' '));
}

} // namespace brushline
