// SPDX-License-Identifier: GPL-2.0-or-later
#include "records/compare_track_algorithm.h"

#include "records/planned_courses_host.h"
#include "records/walk_words_host.h"
#include "records/walked_legs_host.h"
#include "shared/kept_styles_host.h"
#include "shared/ordered_work.h"
#include "shared/routes_parameters.h"

#include <QDateTime>
#include <qgsexception.h>

#include <cmath>

namespace brushline {

namespace {
const QString toleranceKey = QStringLiteral("TOLERANCE"), daysKey = QStringLiteral("MAX_DAYS"),
              tracksKey = QStringLiteral("TRACKS"), trackCountKey = QStringLiteral("TRACK_COUNT"),
              matchedCountKey = QStringLiteral("MATCHED_COUNT");
// A walker five degrees off is 100 m from a planned turn after 1200 m.
constexpr Limits toleranceLimits{5, 10000, 150};
// Declination changes by a fifth of a degree in a year at most places; a year off is mostly a clock that was not set.
constexpr Limits daysLimits{0, 40000, 366};

// The day of a track, by its first time.
QDate dayOf(const TrackInput &track) {
  for (const TrackFix &fix : track.fixes)
    if (fix.time_s)
      return QDateTime::fromMSecsSinceEpoch(qint64(*fix.time_s * 1000), Qt::UTC).date();
  return QDate();
}

// A track that is held against the plan.
struct Compared {
  TrackInput track;
  std::optional<size_t> only; // the route that it is said to be; nothing: any
  TrackMatch match;

  bool unknown() const { return track.route_named && !only; } // said to be of a route that is not among the legs
};
} // namespace

QString CompareTrackAlgorithm::name() const { return QStringLiteral("comparetrack"); }
QString CompareTrackAlgorithm::displayName() const { return tr("Compare a walked track"); }
QString CompareTrackAlgorithm::group() const { return tr("Records"); }
QString CompareTrackAlgorithm::groupId() const { return QStringLiteral("records"); }
QStringList CompareTrackAlgorithm::tags() const {
  return tr("GPX,GPS,track,log,error,bearing,declination,pace,drift,cross-track,leg,route").split(QLatin1Char(','));
}
QString CompareTrackAlgorithm::shortDescription() const {
  return tr("Cuts a recorded track where its walker turned, holds each leg against the plan, and tells what all legs "
            "have in common: a compass that is off, a pace that is too long.");
}
QgsProcessingAlgorithm *CompareTrackAlgorithm::createInstance() const { return new CompareTrackAlgorithm(); }

void CompareTrackAlgorithm::initAlgorithm(const QVariantMap &) {
  addParameters(tracks_parameters::definitions());
  addParameters(routes_parameters::definitions());
  addParameters({helped(numberDefinition(toleranceKey, tr("Farthest from a planned turn (m)"), toleranceLimits),
                        tr("A walked turn lies within it of the planned one, and so does some part of a track that is "
                           "a walk of a route. Larger for long routes and large errors."))});
  addParameters(tracks_parameters::ruleDefinitions());
  addParameters(
      {advanced(helped(numberDefinition(daysKey, tr("Most days between a track and the day of its legs"), daysLimits),
                       tr("A track of another time is refused: its clock was wrong, or the numbers of the "
                          "legs were not made for it.")))});
  addParameters(KeptStyles::definitions());
  addParameters(WalkedLegsWriter::definitions());
  addOutput(new QgsProcessingOutputNumber(trackCountKey, tr("Tracks read")));
  addOutput(new QgsProcessingOutputNumber(matchedCountKey, tr("Tracks compared")));
}

void CompareTrackAlgorithm::check(const ParameterReader &reader) const {
  routes_parameters::check(reader);
  checkCourses(reader);
  tracks_parameters::check(reader);
  reader.number(toleranceKey, toleranceLimits);
  reader.number(daysKey, daysLimits);
}

void CompareTrackAlgorithm::prepare(const ParameterReader &reader, QgsProcessingFeedback *) {
  mNames = tracks_parameters::gpxNames(reader);
}

QVariantMap CompareTrackAlgorithm::run(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  const double tolerance = reader.number(toleranceKey, toleranceLimits), days = reader.number(daysKey, daysLimits);
  const PlannedCourses planned = readCourses(reader, feedback);
  const CourseMatcher matcher(planned.courses, tracks_parameters::rule(reader), tolerance);
  const FeedbackProgress progress(feedback);
  TrackSource tracks(reader, mNames, feedback);
  WalkedLegsWriter writer(reader, planned, feedback);
  constexpr long toldEach = 20;
  long read = 0, refused = 0, remarks = 0;
  QString firstReason;
  const auto refuse = [&](const TrackInput &track, const QString &reason) {
    const QString message = tr("%1: track “%2” (%3) %4 Left out.").arg(tracksKey, track.name, track.where, reason);
    if (refused == 0)
      firstReason = message;
    if (++refused <= toldEach)
      feedback->pushWarning(message);
  };
  const auto remark = [&](const QString &words) {
    if (++remarks <= toldEach)
      feedback->pushInfo(words);
  };

  const auto take = [&](const Compared &compared) {
    const TrackInput &track = compared.track;
    const TrackMatch &match = compared.match;
    if (compared.unknown()) {
      refuse(track, tr("is said to be of route “%1”, which is not among the legs.").arg(track.route));
      return;
    }
    if (!match.course) {
      refuse(track, WalkWords::reason(match, tolerance));
      return;
    }
    const QDate day = dayOf(track), meant = planned.info[*match.course].front().date;
    if (day.isValid() && meant.isValid() && std::abs(double(meant.daysTo(day))) > days) {
      refuse(track, tr("was recorded on %1, but its legs are made for %2. Was its clock set? If both are right, give a "
                       "larger %3.")
                        .arg(day.toString(Qt::ISODate), meant.toString(Qt::ISODate), daysKey));
      return;
    }
    if (const QString cleaned = WalkWords::cleaned(match.track); !cleaned.isEmpty())
      remark(tr("Track “%1”: left out %2.").arg(track.name, cleaned));
    if (match.rival)
      feedback->pushWarning(tr("Track “%1” fits route “%2” as well as “%3”; taken for the latter. Name its route to be "
                               "sure.")
                                .arg(track.name, planned.routes.at(int(matcher.course(*match.rival).route)),
                                     planned.routes.at(int(matcher.course(*match.course).route))));
    const QString walker = track.walker.isEmpty()                         ? planned.walkerCalled(track.name)
                           : planned.walkerCalled(track.walker).isEmpty() ? track.walker
                                                                          : planned.walkerCalled(track.walker);
    writer.write(track, match, walker);
  };
  OrderedWork<Compared, Compared> work(
      workers(),
      [&](Compared compared, size_t) {
        if (!compared.unknown())
          compared.match = matcher.match(compared.track.fixes, compared.only, progress);
        return compared;
      },
      take);
  for (TrackInput track; tracks.next(track); ++read) {
    feedback->setProgress(100 * tracks.fraction());
    const auto only = planned.routeCalled(track.route_named ? track.route : track.name);
    work.push({std::move(track), only, {}});
  }
  work.finish();
  tracks.finish();
  if (read == 0)
    throw QgsProcessingException(tr("%1: there is no track in layer “%2”. Of a GPX file take the layer track_points.")
                                     .arg(tracksKey, reader.source(tracksKey)->sourceName()));
  if (refused == read)
    throw QgsProcessingException(tr("No track could be compared.") + QLatin1Char(' ') + firstReason);
  if (refused > toldEach)
    feedback->pushWarning(tr("%n track(s) left out in all.", nullptr, int(refused)));
  QVariantMap results = writer.finish();
  results.insert(trackCountKey, double(read));
  results.insert(matchedCountKey, double(read - refused));
  return results;
}

} // namespace brushline
