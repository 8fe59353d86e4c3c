// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/through_cover_algorithm.h"

#include "planning/planned_routes_host.h"
#include "planning/route_finder_host.h"
#include "shared/geodesic.h"
#include "shared/kept_styles_host.h"
#include "shared/named_places_parameters.h"
#include "shared/parameter_checks_host.h"
#include "shared/terrain_parameters.h"
#include "shared/walker_parameters.h"

#include <qgsexception.h>

#include <algorithm>
#include <cmath>

namespace brushline {

namespace {
const QString barriersKey = QStringLiteral("BARRIERS"), slopeKey = QStringLiteral("SLOPE_LIMIT"),
              turnKey = QStringLiteral("TURN_COST"), legsKey = QStringLiteral("MAX_LEGS"),
              cellKey = QStringLiteral("CELL"), marginKey = QStringLiteral("MARGIN"),
              effortKey = QStringLiteral("EFFORT");
constexpr Limits slopeLimits{1, 60, 30}, turnLimits{0, 120, 2}, legsLimits{1, 50, 8}, cellLimits{0, 10000, 0},
    marginLimits{0, 1e6, 0};
} // namespace

QString ThroughCoverAlgorithm::name() const { return QStringLiteral("throughcover"); }
QString ThroughCoverAlgorithm::displayName() const { return tr("Plan legs through cover"); }
QString ThroughCoverAlgorithm::group() const { return tr("Planning"); }
QString ThroughCoverAlgorithm::groupId() const { return QStringLiteral("planning"); }
QStringList ThroughCoverAlgorithm::tags() const {
  return tr("route,plan,leg,least,cost,path,time,slope,cover,barrier,compass,effort").split(QLatin1Char(','));
}
QString ThroughCoverAlgorithm::shortDescription() const {
  return tr("Plans the few straight compass legs that bring a walker soonest from start to end, by slope, cover and "
            "barriers.");
}
QgsProcessingAlgorithm *ThroughCoverAlgorithm::createInstance() const { return new ThroughCoverAlgorithm(); }

void ThroughCoverAlgorithm::initAlgorithm(const QVariantMap &) {
  addParameters(pairs_parameters::definitions());
  addParameters(
      {helped(new QgsProcessingParameterFeatureSource(barriersKey, tr("Barriers (lines or polygons)"),
                                                      QList<int>() << host::lineLayers << host::polygonLayers,
                                                      QVariant(), true),
              tr("What no leg may cross: cliffs, fences, streams, land that is out of bounds. A gap narrower than two "
                 "cells counts as closed.")),
       helped(numberDefinition(slopeKey, tr("Steepest ground (degrees)"), slopeLimits),
              tr("Ground steeper than this, in whatever direction, is not walked, also not across the slope. Needs a "
                 "terrain model.")),
       helped(numberDefinition(turnKey, tr("Worth of a change of bearing (minutes)"), turnLimits),
              tr("A further leg has to save more than this, in minutes. Half of it at a named point.")),
       helped(new QgsProcessingParameterNumber(legsKey, tr("Most legs"), host::integerNumber, legsLimits.usual, false,
                                               legsLimits.least, legsLimits.most),
              tr("A route has no more legs than this."))});
  addParameters(named_places_parameters::definitions());
  addParameters(walker_parameters::definitions());
  addParameters(terrain_parameters::definitions());
  addParameters(cover_parameters::definitions());
  addParameters(cover_parameters::unknownDefinitions());
  addParameters({advanced(helped(numberDefinition(cellKey, tr("Size of the cells (m)"), cellLimits),
                                 tr("In metres. 0: the terrain model's cells, or a size that suits the area."))),
                 advanced(helped(numberDefinition(marginKey, tr("Land looked at round the pairs (m)"), marginLimits),
                                 tr("How far round starts and ends ways are looked for, in metres. 0: half the longest "
                                    "pair's distance, at least 300 m.")))});
  addParameters(KeptStyles::definitions());
  addParameters(PlannedRoutes::outputs());
  addOutput(PlannedRoutes::minutesOutput());
}

void ThroughCoverAlgorithm::check(const ParameterReader &reader) const {
  pairs_parameters::check(reader);
  for (const auto &[key, limits] : {std::pair(slopeKey, slopeLimits), std::pair(turnKey, turnLimits),
                                    std::pair(cellKey, cellLimits), std::pair(marginKey, marginLimits)})
    reader.number(key, limits);
  cover_parameters::readUnknownSpeed(reader);
  wholeNumber(reader, legsKey, legsLimits);
  named_places_parameters::check(reader);
  walker_parameters::read(reader, Angle::degrees(3), nullptr);
  cover_parameters::check(reader);
}

void ThroughCoverAlgorithm::prepare(const ParameterReader &reader, QgsProcessingFeedback *) {
  mDem = terrain_parameters::read(reader);
  mCover = cover_parameters::read(reader);
}

void ThroughCoverAlgorithm::readRest(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  const auto walkers = walker_parameters::read(reader, Angle::degrees(3), feedback);
  mWalker = *std::min_element(walkers.begin(), walkers.end(),
                              [](const Walker &a, const Walker &b) { return a.speed_factor < b.speed_factor; });
  mRule = {Duration::minutes(reader.number(turnKey, turnLimits)), LegRule().share_at_place,
           wholeNumber(reader, legsKey, legsLimits)};
  cover_parameters::readPolygons(mCover, reader, feedback);
  mTerrain = terrain_parameters::terrainOver(mDem);
  mSource = mCover.source();
  mNames = named_places_parameters::read(reader, feedback);
  mPlaces = PlannedRoutes::turningPlaces(reader, feedback);
  mCrs = reader.source(QStringLiteral("STARTS"))->sourceCrs();
  mPairs = pairs_parameters::read(reader, feedback, [&](const QString &message) { skip(message, feedback); });
  mPairs.erase(std::remove_if(mPairs.begin(), mPairs.end(),
                              [&](const PlacePair &pair) {
                                const bool same = geodesicBetween(pair.start, pair.end).length < Length::metres(0.1);
                                if (same)
                                  skip(tr("%1: start and end are the same place.").arg(pair.name), feedback);
                                return same;
                              }),
               mPairs.end());
  if (mPairs.empty())
    return;
  mUnknownSpeed = cover_parameters::readUnknownSpeed(reader);
  const double steep = std::tan(Angle::degrees(reader.number(slopeKey, slopeLimits)).radians());
  mGround =
      std::make_unique<PlanGround>(reader,
                                   GroundInput{&mDem, &mCover, steep, mUnknownSpeed, reader.number(cellKey, cellLimits),
                                               reader.number(marginKey, marginLimits)},
                                   mPairs);
}

void ThroughCoverAlgorithm::skip(const QString &message, QgsProcessingFeedback *feedback) {
  constexpr int toldEach = 20;
  if (mSkipped++ == 0)
    mFirstReason = message;
  if (mSkipped <= toldEach)
    feedback->pushWarning(message + QLatin1Char(' ') + tr("Passed over."));
}

void ThroughCoverAlgorithm::dropRefused(QgsProcessingFeedback *feedback) {
  std::vector<PlacePair> usable;
  for (const PlacePair &pair : mPairs) {
    const QString start = mGround->refusal(pair.start), end = mGround->refusal(pair.end);
    if (!start.isEmpty())
      skip(tr("%1: the start %2.").arg(pair.name, start), feedback);
    else if (!end.isEmpty())
      skip(tr("%1: the end %2.").arg(pair.name, end), feedback);
    else
      usable.push_back(pair);
  }
  mPairs = std::move(usable);
}

QVariantMap ThroughCoverAlgorithm::run(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  readRest(reader, feedback);
  const FeedbackProgress progress(feedback);
  const PaceTable pace(mWalker);
  double done = 0, step = 0.3; // shares of the work: what is done, and the next step
  const auto told = [&](double share) { feedback->setProgress(100 * (done + step * std::min(share, 1.0))); };
  if (!mPairs.empty()) {
    mGround->fill(feedback, told);
    mGround->bar(reader, barriersKey, feedback);
    dropRefused(feedback);
  }
  const bool effort = reader.given(effortKey) && !mPairs.empty();
  done = step;
  step = (1 - done) / double(mPairs.size() + 1);
  QVariantMap results;
  if (!mPairs.empty()) {
    const bool classes = mCover.map || mCover.codes, open = mUnknownSpeed > 0;
    PlannedRoutes output(reader, mCrs, mNames.get(), classes && open ? mSource.get() : nullptr);
    RouteFinder finder({*mGround, pace, mRule, mPlaces,
                        [&](const Place &from, const Place &to) {
                          return PlannedRoutes::walkingTime(from, to, mWalker, mTerrain.get(), mSource.get(),
                                                            mCover.table.get(), classes && open ? mUnknownSpeed : 1);
                        },
                        mCrs, FromPlaces(mCrs, reader.context().transformContext())});
    for (const PlacePair &pair : mPairs) {
      const FoundRoute found = finder.find(pair, effort && mPairs.size() == 1, progress, told);
      if (found.reason.isEmpty())
        output.write(pair.name, found);
      else
        skip(QStringLiteral("%1: %2").arg(pair.name, found.reason), feedback);
      done += step;
    }
    if (output.count() > 0) {
      std::unique_ptr<RasterOutput> surface;
      if (effort)
        surface = finder.writeEffort(reader, effortKey, mPairs, feedback, told);
      results = output.finish(feedback);
      cover_parameters::report(output.unknownCover(), feedback);
      if (surface) // no more to be cancelled
        results.insert(effortKey, surface->finish(QStringLiteral(":/brushline/styles/effort.qml")));
    }
  }
  if (results.isEmpty())
    throw QgsProcessingException(tr("No route could be planned. %1").arg(mFirstReason));
  if (mSkipped > 0)
    feedback->pushWarning(tr("%n pair(s) or point(s) passed over in all.", nullptr, mSkipped));
  if (!mWalker.name.empty())
    feedback->pushInfo(tr("Planned for %1, the slowest of the walkers.").arg(QString::fromStdString(mWalker.name)));
  cover_parameters::report({mSource.get()}, feedback);
  return results;
}

} // namespace brushline
