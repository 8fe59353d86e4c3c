// SPDX-License-Identifier: GPL-2.0-or-later
#include "records/walk_words_host.h"

#include <QStringList>

#include <cmath>

namespace brushline {

namespace {
QString one(double value) { return QString::number(value, 'f', 1); }
QString sided(double value) { return (value > 0 ? QStringLiteral("+") : QString()) + one(value); }
bool apart(const std::optional<CommonError> &error) {
  return error && error->half_width && std::abs(error->mean) > *error->half_width;
}
} // namespace

QString WalkWords::remark(const WalkedLeg &leg, TrackTimes times) {
  if (leg.share == LegShare::None)
    return tr("The track does not hold this leg.");
  QStringList words;
  if (leg.share == LegShare::Begun)
    words << tr("The track ends on this leg: no error of length, no miss.");
  if (!leg.start_seen || !leg.end_seen)
    words << (leg.start_seen ? tr("Its end cannot be seen in the track (no turn, no stand): length, miss and minutes "
                                  "are not known.")
              : leg.end_seen ? tr("Its start cannot be seen in the track (no turn, no stand): length, miss and minutes "
                                  "are not known.")
                             : tr("Neither end can be seen in the track (no turn, no stand): length, miss and minutes "
                                  "are not known."));
  if (leg.gap_at_turn)
    words << tr("Nothing was recorded about one of its ends; it is put where the straight lines meet.");
  if (!leg.like)
    words << tr("So far off that it may not be this leg: left out of the common errors.");
  if (!leg.minutes && leg.start_seen && leg.end_seen)
    words << (times == TrackTimes::Backwards ? tr("The track's times run backwards: no minutes.")
              : times == TrackTimes::None    ? tr("The track has no times: no minutes.")
                                             : tr("No usable times at its ends: no minutes."));
  return words.join(QLatin1Char(' '));
}

QString WalkWords::inWords(const Explanation &explanation) {
  const QString error = sided(explanation.error.degrees());
  switch (explanation.mix_up) {
  case MixUp::TrueOnMagnetic:
    return tr("declination forgotten, the true bearing set on a compass that is not set off for it (makes %1°)")
        .arg(error);
  case MixUp::MagneticWrongWay:
    return tr("declination applied the wrong way round (makes %1°)").arg(error);
  case MixUp::MagneticOnTrue:
    return tr("the magnetic bearing set on a compass that is already set off for declination (makes %1°)").arg(error);
  case MixUp::GridOnTrue:
    return tr("the grid bearing set on a compass set off for true north (makes %1°)").arg(error);
  case MixUp::TrueOnGrid:
    return tr("the true bearing set on a compass set off for grid north (makes %1°)").arg(error);
  case MixUp::GridOnMagnetic:
    return tr("the grid bearing set on a compass that is not set off, grid magnetic angle forgotten (makes %1°)")
        .arg(error);
  case MixUp::GridMagneticWrongWay:
    return tr("grid magnetic angle applied the wrong way round (makes %1°)").arg(error);
  case MixUp::MagneticOnGrid:
    return tr("the magnetic bearing set on a compass set off for grid north (makes %1°)").arg(error);
  }
  return QString();
}

QString WalkWords::hint(const GroupErrors &group) {
  QStringList words;
  if (group.bearing) {
    if (!group.bearing->half_width) {
      words << tr("One leg tells nothing of a common error of bearing.");
    } else if (!apart(group.bearing)) {
      words << tr("No common error of bearing to be seen (within %1°).").arg(one(*group.bearing->half_width));
    } else {
      const QString size = one(std::abs(group.bearing->mean)), within = one(*group.bearing->half_width);
      words << (group.bearing->mean > 0
                    ? tr("Walks %1° (give or take %2°) to the right of the bearing.").arg(size, within)
                    : tr("Walks %1° (give or take %2°) to the left of the bearing.").arg(size, within));
      QStringList causes;
      for (const Explanation &each : group.mix_ups)
        causes << inWords(each);
      if (!causes.isEmpty())
        words << tr("Possible cause: %1. Look at the compass.").arg(causes.join(tr("; or ")));
      else if (group.norths_known)
        words << tr("No mix-up of norths explains it: see how the compass is held, and compare it with another one.");
      else
        words << tr("Give annotated legs (with declination) to have it held against mix-ups of norths.");
    }
  }
  if (group.length) {
    if (!group.length->half_width) {
      words << tr("One leg tells nothing of a common error of length.");
    } else if (!apart(group.length)) {
      words << tr("No common error of length to be seen (within %1 %).").arg(one(*group.length->half_width));
    } else {
      const QString size = one(std::abs(group.length->mean)), within = one(*group.length->half_width);
      words << (group.length->mean > 0 ? tr("Walks %1 % (give or take %2 %) too far.").arg(size, within)
                                       : tr("Walks %1 % (give or take %2 %) too short.").arg(size, within));
      if (group.of != GroupOf::All && group.paces_100m)
        words << tr("If legs were ended by the count of paces, reckon with %1 over 100 m instead of %2.")
                     .arg(QString::number(std::lround(*group.paces_100m)),
                          QString::number(std::lround(*group.paces_100m / *group.pace_scale)));
      else if (group.of != GroupOf::All && group.pace_scale)
        words << tr("If legs were ended by the count of paces, multiply the count by %1.")
                     .arg(QString::number(*group.pace_scale, 'f', 3));
    }
  }
  return words.join(QLatin1Char(' '));
}

QString WalkWords::numbers(const GroupErrors &group) {
  const auto told = [](const std::optional<CommonError> &error, const QString &unit) {
    if (!error)
      return tr("not known");
    return error->se ? tr("%1 %2 (standard error %3, %4 legs)")
                           .arg(sided(error->mean), unit, QString::number(*error->se, 'f', 2))
                           .arg(error->legs)
                     : tr("%1 %2 (one leg)").arg(sided(error->mean), unit);
  };
  return tr("bearing %1, length %2.")
      .arg(told(group.bearing, QStringLiteral("°")), told(group.length, QStringLiteral("%")));
}

QString WalkWords::reason(const TrackMatch &match, double tolerance_m) {
  switch (match.reason) {
  case NoMatch::TooFewFixes:
    return tr("has fewer than two usable points apart.");
  case NoMatch::Elsewhere:
    return tr("lies in another place: no planned turn is within %1 m of it; from its start to the nearest planned one "
              "are %2 m.")
        .arg(QString::number(std::round(tolerance_m)), QString::number(std::round(match.nearest_m)));
  case NoMatch::Unlike:
    return tr("is like none of the routes near it: no leg can be recognised in it. If it is a walk of one of them, "
              "give a larger TOLERANCE than %1 m.")
        .arg(std::round(tolerance_m));
  }
  return QString();
}

QString WalkWords::cleaned(const CleanTrack &track) {
  QStringList words;
  if (track.duplicates > 0)
    words << tr("%n double point(s)", nullptr, int(track.duplicates));
  if (track.spikes > 0)
    words << tr("%n spike(s)", nullptr, int(track.spikes));
  if (track.times == TrackTimes::Backwards)
    words << tr("times that run backwards, so none is used");
  else if (track.lost_times > 0)
    words << tr("%n time(s) that run backwards", nullptr, int(track.lost_times));
  return words.join(QStringLiteral(", "));
}

} // namespace brushline
