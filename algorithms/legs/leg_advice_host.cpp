// SPDX-License-Identifier: GPL-2.0-or-later
#include "legs/leg_advice_host.h"

#include "shared/feedback_progress_host.h"
#include "shared/geodesic.h"
#include "shared/source_features_host.h"

#include <QStringList>
#include <qgsexception.h>
#include <qgsfeatureiterator.h>
#include <qgsgeometry.h>

#include <algorithm>
#include <cmath>
#include <utility>

namespace brushline {

namespace {
const QString foundKey = QStringLiteral("HAZARDS_FOUND");
constexpr const char *wanted[] = {"route", "leg", "hazard", "advice"};

QString keyOf(const QString &route, int number, bool back) {
  return route + QLatin1Char('\n') + QString::number(number) + QLatin1String(back ? "\nback" : "\nout");
}

constexpr double slack_m = 5; // what rounding and the systems between may put beside a leg

// A place as one sees it who walks a leg: metres along it and beside it.
struct SeenPlace {
  double along, beside;
};
SeenPlace seenFrom(const AnnotatedLeg &leg, const Place &place) {
  const GeodesicLeg to = geodesicBetween(leg.start, place);
  const double turn = (to.departure.angle() - leg.true_bearing.angle()).radians(), metres = to.length.metres();
  return {metres * std::cos(turn), std::abs(metres * std::sin(turn))};
}

enum class Lies { Elsewhere, Partly, Wholly }; // wholly: and begins where it was found to, counted from this start

Lies whereOn(const AnnotatedLeg &leg, const std::vector<Place> &stretch, const std::optional<double> &from_m) {
  constexpr double least_m = 1; // of a stretch that goes on from another leg
  const double length = leg.length.metres();
  double first = HUGE_VAL, last = -HUGE_VAL;
  for (const Place &place : stretch) {
    const SeenPlace at = seenFrom(leg, place);
    if (at.beside > slack_m)
      return Lies::Elsewhere;
    first = std::min(first, at.along);
    last = std::max(last, at.along);
  }
  const double begins = seenFrom(leg, stretch.front()).along;
  if (first >= -slack_m && last <= length + slack_m && begins - first <= slack_m &&
      std::abs(begins - from_m.value_or(begins)) <= slack_m)
    return Lies::Wholly;
  const double shared = std::min(last, length) - std::max(first, 0.0);
  return shared >= std::min(least_m, last - first) ? Lies::Partly : Lies::Elsewhere;
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
  const int fromField = source->fields().lookupField(QStringLiteral("from_m"));
  mLayer = source->sourceName();
  const ToPlaces toPlaces(source->sourceCrs(), reader.context().transformContext());
  SourceFeatures features(foundKey, *source, feedback);
  QgsFeature feature;
  std::vector<Shape> stretches;
  while (features.next(feature)) {
    const bool back = direction >= 0 && feature.attribute(direction).toString() == QLatin1String("back");
    const QString route = feature.attribute(index[0]).toString();
    bool hasFrom = false;
    const double from = fromField >= 0 ? feature.attribute(fromField).toDouble(&hasFrom) : 0;
    const Found found{route,
                      keyOf(route, feature.attribute(index[1]).toInt(), back),
                      feature.attribute(index[2]).toString(),
                      feature.attribute(index[3]).toString(),
                      hasFrom ? std::optional(from) : std::nullopt,
                      false};
    std::vector<Place> places;
    if (feature.hasGeometry()) {
      const QgsAbstractGeometry &line = *feature.geometry().constGet();
      for (auto vertex = line.vertices_begin(); vertex != line.vertices_end(); ++vertex)
        if (const auto place = toPlaces((*vertex).x(), (*vertex).y()))
          places.push_back(*place);
    }
    if (places.empty()) {
      mRows[found.key].push_back(mFound.size());
    } else {
      Shape &stretch = stretches.emplace_back();
      stretch.parts.push_back(std::move(places));
      stretch.feature = static_cast<long long>(mFound.size());
    }
    mFound.push_back(found);
  }
  mStretches = std::make_unique<Shapes>(std::move(stretches), FeedbackProgress(feedback));
}

QString LegAdvice::forLeg(const QString &route, const AnnotatedLeg &leg, int opposite) {
  if (mFound.empty())
    return QString();
  const QString key = keyOf(route, leg.number, leg.back);
  std::vector<size_t> onThis = mRows.value(key), besides = mRows.value(keyOf(route, opposite, !leg.back));
  size_t before = mStretches->size();
  for (const ShapeStretch &near : mStretches->near(leg.start, leg.end, Length::metres(slack_m))) {
    if (near.shape == std::exchange(before, near.shape))
      continue;
    const Shape &stretch = (*mStretches)[near.shape];
    const auto index = size_t(stretch.feature);
    if (mFound[index].route != route)
      continue;
    const Lies lies = whereOn(leg, stretch.parts.front(), mFound[index].from_m);
    if (lies == Lies::Wholly && mFound[index].key == key)
      onThis.push_back(index);
    else if (lies != Lies::Elsewhere)
      besides.push_back(index);
  }
  QStringList words, told;
  for (const size_t index : onThis) {
    Found &each = mFound[index];
    each.told = true;
    if (each.advice.isEmpty())
      continue;
    told << each.hazard;
    if (!words.contains(each.advice))
      words << each.advice;
  }
  for (const size_t index : besides) {
    Found &each = mFound[index];
    each.told = true;
    if (!told.contains(each.hazard)) {
      told << each.hazard;
      words << tr("Take care on this leg: %1.").arg(each.hazard);
    }
  }
  return words.join(QLatin1Char(' '));
}

void LegAdvice::finish(QgsProcessingFeedback *feedback) const {
  const auto strangers = std::count_if(mFound.begin(), mFound.end(), [](const Found &each) { return !each.told; });
  if (strangers > 0)
    feedback->pushWarning(tr("%1: %n hazard(s) of layer “%2” lie on none of these legs, so no leg warns of them. Check "
                             "these very legs for hazards, with the same names of routes, and annotate them again.",
                             nullptr, int(strangers))
                              .arg(foundKey, mLayer));
}

} // namespace brushline
