// SPDX-License-Identifier: GPL-2.0-or-later
#include "records/closure_words_host.h"

#include <algorithm>
#include <cmath>

namespace brushline {

namespace {
// Metres as people say them: two digits and more.
QString metres(Length length) {
  const double value = length.metres();
  return QString::number(value, 'f', value < 100 ? 1 : 0);
}

QString reading(Angle bearing, Compass compass) {
  compass.step = std::min(compass.step, 1.0); // a swapped digit shows in the last
  return QString::fromStdString(dialText(dialReading(bearing, compass), compass));
}
} // namespace

QString ClosureWords::amount(const RecordedLeg &leg, double stretch) const {
  const double length = leg.length.metres() * stretch, count = leg.amount * stretch;
  if (!mPaced)
    return tr("%1 m").arg(QString::number(length, 'f', 1));
  return tr("%1 paces (%2 m)").arg(plain(std::round(10 * count) / 10), QString::number(length, 'f', 1));
}

QString ClosureWords::slip(const RecordedRoute &route, const BlunderHint &hint) const {
  switch (hint.slip) {
  case Slip::TrueReadings:
    return tr("All bearings may be counted from true north already.");
  case Slip::MagneticReadings:
    return tr("All bearings may be counted from magnetic north.");
  case Slip::WrongWayRound:
    return tr("The declination may have been turned the wrong way round on all bearings.");
  case Slip::AllDoubled:
    return tr("All legs may be half as long: counted in the other kind of paces.");
  case Slip::AllHalved:
    return tr("All legs may be twice as long: counted in the other kind of paces.");
  default:
    break;
  }
  const size_t i = *hint.leg;
  const RecordedLeg &leg = route.legs[i];
  const QString number = tr("Leg %1 (row %2)").arg(i + 1).arg(leg.row);
  const QString read = amount(leg, 1), meant = amount(leg, hint.stretch);
  const QString turned = reading(leg.bearing.angle + hint.turn, mCompass);
  switch (hint.slip) {
  case Slip::Reversed:
    return tr("%1 may have its back bearing noted: “%2” for %3.").arg(number, leg.text, turned);
  case Slip::DigitsSwapped:
    return tr("%1 may have two digits of its bearing swapped: “%2” for %3.").arg(number, leg.text, turned);
  case Slip::HundredTooMany:
    return (mPaced ? tr("%1 may have a hundred paces too many: %2 for %3.")
                   : tr("%1 may have a hundred metres too many: %2 for %3."))
        .arg(number, read, meant);
  case Slip::HundredTooFew:
    return (mPaced ? tr("%1 may have a hundred paces too few: %2 for %3.")
                   : tr("%1 may have a hundred metres too few: %2 for %3."))
        .arg(number, read, meant);
  case Slip::DoubledCount:
  case Slip::HalvedCount:
    return tr("%1 may be counted in the other kind of paces: %2 for %3.").arg(number, read, meant);
  default:
    return tr("%1 may be wrong in its length: %2 for %3.").arg(number, read, meant);
  }
}

QString ClosureWords::hint(const RecordedRoute &route, const PlottedRoute &plotted) const {
  const Suspicion &suspicion = plotted.suspicion;
  if (!plotted.closed || suspicion.within)
    return QString();
  const QString allowed = tr("The errors allow %1 m.").arg(metres(suspicion.allowed));
  if (suspicion.hints.empty())
    return allowed + QLatin1Char(' ') + tr("No single slip accounts for more: look for two, or measure again.");
  const BlunderHint &best = suspicion.hints.front();
  const int others = int(suspicion.hints.size()) - 1;
  return QStringList{allowed, slip(route, best), tr("Then it would miss by %1 m.").arg(metres(best.left)),
                     others > 0 ? tr("%n other slip(s) would account for it too.", nullptr, others)
                                : tr("No other single slip would account for it.")}
      .join(QLatin1Char(' '));
}

QString ClosureWords::warning(const PlottedRoute &plotted, bool adjusted) const {
  if (!plotted.closed || plotted.suspicion.within)
    return QString();
  const QString miss = tr("This route misses its end by %1 m, more than its errors allow (%2 m): do not walk it before "
                          "the slip is found.")
                           .arg(metres(plotted.closed->closure.missed), metres(plotted.suspicion.allowed));
  return adjusted ? miss + QLatin1Char(' ') + tr("Spreading the miss over the legs has only hidden it.") : miss;
}

std::optional<size_t> ClosureWords::suspectLeg(const PlottedRoute &plotted) {
  return plotted.suspicion.hints.empty() ? std::nullopt : plotted.suspicion.hints.front().leg;
}

QString ClosureWords::summary(const RecordedRoute &route, const PlottedRoute &plotted) const {
  const Closure &closure = plotted.closed->closure;
  QStringList words{tr("Route “%1”: %n leg(s), %2 m; misses its end by %3 m", nullptr, int(route.legs.size()))
                        .arg(route.name, metres(closure.walked), metres(closure.missed))};
  if (closure.ratio)
    words[0] += tr(" towards %1° true, 1 in %2")
                    .arg(int(std::lround(closure.bearing.degrees())) % 360, 3, 10, QLatin1Char('0'))
                    .arg(QString::number(*closure.ratio, 'f', 0));
  words[0] += QLatin1Char('.');
  const QString more = hint(route, plotted);
  if (!more.isEmpty())
    words << more;
  return words.join(QLatin1Char(' '));
}

} // namespace brushline
