// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/leg_words_host.h"

#include "handouts/gpx_values.h"
#include "handouts/sheet_words_host.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace brushline {

namespace {

QString rounded(double value, int decimals) {
  const std::string digits = roundedNumber(value, decimals);
  return QString::fromLatin1(digits.data(), int(digits.size()));
}

// "078.4°"
QString bearing(double degrees) {
  QString text = rounded(degrees, 1);
  if (text == QLatin1String("360.0"))
    text = QStringLiteral("0.0");
  return text.rightJustified(5, QLatin1Char('0')) + QChar(0xB0);
}

// Appends a sentence.
void say(QString &text, const QString &sentence) {
  if (!text.isEmpty() && !sentence.isEmpty())
    text += QLatin1Char(' ');
  text += sentence;
}

// What each walker counts: "130 p" or, with their names, "Ann 130 p, Bo 150 p".
template <typename Counted, typename Paces>
QString counts(const std::vector<Counted> &counted, bool named, const QString &unit, Paces paces) {
  QString text;
  for (const Counted &each : counted) {
    const std::optional<long> count = paces(each);
    if (!count)
      continue;
    if (!text.isEmpty())
      text += QLatin1String(", ");
    if (named && !each.sheet->walker.isEmpty())
      text += each.sheet->walker + QLatin1Char(' ');
    text += QString::number(*count) + unit;
  }
  return text;
}

const QString shortPaces = QStringLiteral(" p");
std::optional<long> pacesOfLeg(const LegOnSheet &walked) { return walked.leg->paces; }
std::optional<long> pacesToMark(const CountedMark &counted) { return counted.mark->paces; }

} // namespace

LegWords::LegWords(std::optional<North> north) {
  if (north == North::Magnetic)
    mNorth = tr("magnetic north");
  else if (north == North::True)
    mNorth = tr("true north");
  else if (north == North::Grid)
    mNorth = tr("grid north");
}

QString LegWords::metres(double value) {
  if (std::abs(value) >= 9.95)
    return rounded(value, 0);
  QString text = rounded(value, 1);
  if (text.endsWith(QLatin1String(".0")))
    text.chop(2);
  return text;
}

QString LegWords::paces(long count) { return count == 1 ? tr("1 pace") : tr("%1 paces").arg(count); }

QString LegWords::shortLeg(const std::vector<LegOnSheet> &walked) {
  const SheetLeg &leg = *walked.front().leg;
  QString text;
  if (leg.in_pieces)
    text = (leg.piece->part == QLatin1String("out")    ? tr("out:", "a piece of a leg")
            : leg.piece->part == QLatin1String("past") ? tr("past:", "a piece of a leg")
            : leg.piece->part == QLatin1String("back") ? tr("back:", "a piece of a leg")
                                                       : tr("on:", "a piece of a leg")) +
           QLatin1Char(' ');
  text += leg.dial_text.isEmpty() ? tr("no compass") : leg.dial_text;
  text += QLatin1Char(' ') + counts(walked, walked.size() > 1, shortPaces, pacesOfLeg);
  if (std::any_of(walked.begin(), walked.end(), [](const LegOnSheet &each) { return !each.leg->warnings.isEmpty(); }))
    text += QLatin1String(" !");
  return text;
}

namespace {

// What differs from walker to walker.
struct Own {
  Q_DECLARE_TR_FUNCTIONS(brushline::LegWords)

public:
  static QString count(const SheetLeg &leg) {
    QString text = leg.paces ? LegWords::paces(*leg.paces) : QString();
    if (leg.minutes)
      text += (text.isEmpty() ? QString() : QStringLiteral(", ")) + tr("%1 minutes").arg(rounded(*leg.minutes, 1));
    return text;
  }

  static QString sight(const SheetLeg &leg) {
    QString text;
    if (leg.sight_m)
      text = tr("The shortest sight is %1 m.").arg(LegWords::metres(*leg.sight_m));
    if (leg.sightings)
      say(text, *leg.sightings == 1 ? tr("One sighting is enough.")
                : leg.spacing_m     ? tr("Take %1 sightings, most of them about %2 m apart.")
                                      .arg(*leg.sightings)
                                      .arg(LegWords::metres(*leg.spacing_m))
                                : tr("Take %1 sightings.").arg(*leg.sightings));
    return text;
  }

  static QString drift(const SheetLeg &leg) {
    if (!leg.drift_m || !leg.along_m)
      return QString();
    return tr("Two walks of three end less than %1 m to either side, and two of three less than %2 m short or far.")
        .arg(LegWords::metres(*leg.drift_m), LegWords::metres(*leg.along_m));
  }
};

} // namespace

QString LegWords::leg(const std::vector<LegOnSheet> &walked, int legs) const {
  const SheetLeg &leg = *walked.front().leg;
  const bool several = walked.size() > 1;
  QString text = tr("Leg %1 of %2").arg(leg.label()).arg(legs);
  if (!leg.from.isEmpty() && !leg.to.isEmpty())
    text += tr(", from %1 to %2").arg(leg.from, leg.to);
  else if (!leg.from.isEmpty())
    text += tr(", from %1").arg(leg.from);
  else if (!leg.to.isEmpty())
    text += tr(", to %1").arg(leg.to);
  text += QLatin1Char('.');

  const bool sameWarnings = std::all_of(walked.begin(), walked.end(),
                                        [&](const LegOnSheet &each) { return each.leg->warnings == leg.warnings; });
  for (const LegOnSheet &each : walked) {
    if (!each.leg->warnings.isEmpty())
      say(text, (sameWarnings ? tr("CAUTION: ") : tr("CAUTION for %1: ").arg(each.sheet->walker)) + each.leg->warnings);
    if (sameWarnings)
      break;
  }

  for (const QString &sentence : SheetWords::part(leg))
    say(text, sentence);
  if (leg.dial_text.isEmpty()) {
    say(text, tr("There is no number for the dial."));
  } else {
    say(text, tr("Set the dial to %1").arg(leg.dial_text));
    if (const QString point = SheetWords::compassPoint(leg); !point.isEmpty())
      text += QStringLiteral(" (%1)").arg(point);
    if (!mNorth.isEmpty())
      text += tr(", counted from %1").arg(mNorth);
    text += QLatin1Char('.');
    if (mNorth.isEmpty())
      say(text, tr("CAUTION: it is not certain from which north it counts. Ask who made these legs."));
  }
  const QString length = metres(leg.length_m.value_or(0));
  if (several) {
    say(text, tr("Walk %1 m.").arg(length));
    for (const LegOnSheet &each : walked) {
      QString own = Own::count(*each.leg) + QLatin1Char('.');
      say(own, SheetWords::count(*each.leg));
      say(own, Own::sight(*each.leg));
      say(own, Own::drift(*each.leg));
      say(text, each.sheet->walker.isEmpty() ? own : tr("%1: %2").arg(each.sheet->walker, own));
    }
  } else {
    say(text, tr("Walk %1 m: %2.").arg(length, Own::count(leg)));
    say(text, SheetWords::count(leg));
    say(text, Own::sight(leg));
  }
  if (leg.climb_m && leg.drop_m)
    say(text, tr("It climbs %1 m and drops %2 m.").arg(metres(*leg.climb_m), metres(*leg.drop_m)));
  if (!leg.cover.isEmpty())
    say(text, tr("Cover: %1.").arg(leg.cover));
  if (!leg.back_text.isEmpty())
    say(text, tr("From its end its start is sighted at %1.").arg(leg.back_text));
  if (!several)
    say(text, Own::drift(leg));

  QStringList bearings;
  if (leg.true_bearing)
    bearings << tr("true %1").arg(bearing(*leg.true_bearing));
  if (leg.grid_bearing)
    bearings << tr("grid %1").arg(bearing(*leg.grid_bearing));
  if (leg.magnetic_bearing)
    bearings << tr("magnetic %1").arg(bearing(*leg.magnetic_bearing));
  if (leg.declination)
    bearings << (*leg.declination < 0 ? tr("declination %1° west") : tr("declination %1° east"))
                    .arg(rounded(std::abs(*leg.declination), 1));
  if (!bearings.isEmpty())
    say(text, tr("Bearings: %1.").arg(bearings.join(QLatin1String(", "))));
  return text;
}

QString LegWords::shortMark(const CourseMark &mark) {
  const QString text = counts(mark.counted, mark.one_of_several, shortPaces, pacesToMark);
  const SheetMark &first = *mark.counted.front().mark;
  return text.isEmpty() && first.at_m ? metres(*first.at_m) + QLatin1String(" m") : text;
}

QString LegWords::mark(const CourseMark &mark) {
  const SheetMark &first = *mark.counted.front().mark;
  const LegSheet &sheet = *mark.counted.front().sheet;
  QString text = tr("Mark %1 on leg %2").arg(first.number).arg(mark.leg->number);
  if (!sheet.route.isEmpty())
    text += (sheet.back ? tr(" of %1, walked back") : tr(" of %1")).arg(sheet.route);
  if (first.at_m)
    text += tr(", %1 m from the leg's start").arg(metres(*first.at_m));
  text += QLatin1Char('.');
  const QString counted = counts(mark.counted, mark.one_of_several, QString(), pacesToMark);
  if (!counted.isEmpty())
    say(text, tr("Paces from the leg's start: %1.").arg(counted));
  if (first.offset_m && std::abs(*first.offset_m) >= 0.05)
    say(text, (*first.offset_m < 0 ? tr("It stands %1 m to the left of the line.")
                                   : tr("It stands %1 m to the right of the line."))
                  .arg(metres(std::abs(*first.offset_m))));
  return text;
}

std::vector<int> LegWords::missing(const std::vector<const LegSheet *> &walked) {
  std::set<int> numbers;
  for (const LegSheet *sheet : walked)
    numbers.insert(sheet->missing.begin(), sheet->missing.end());
  return {numbers.begin(), numbers.end()};
}

QString LegWords::shortRoute(const std::vector<const LegSheet *> &walked) {
  const LegSheet &sheet = *walked.front();
  QStringList parts{sheet.legCount() == 1 ? tr("1 leg") : tr("%1 legs").arg(sheet.legCount())};
  if (const auto length = sheet.length_m())
    parts << rounded(*length, 0) + QLatin1String(" m");
  if (walked.size() == 1) {
    if (const auto count = sheet.paces())
      parts << QString::number(*count) + QLatin1String(" p");
    if (const auto minutes = sheet.minutes())
      parts << rounded(std::ceil(*minutes), 0) + QLatin1String(" min");
  }
  return parts.join(QLatin1Char(' '));
}

QString LegWords::lacking(const std::vector<int> &legs) {
  return (legs.size() == 1 ? tr("CAUTION: leg %1 is not in this file. Do not walk on past it by these numbers.")
                           : tr("CAUTION: legs %1 are not in this file. Do not walk on past them by these numbers."))
      .arg(SheetWords::numbers(legs));
}

QString LegWords::route(const std::vector<const LegSheet *> &walked) const {
  const LegSheet &sheet = *walked.front();
  QString text = sheet.route.isEmpty() ? tr("Legs") : sheet.route;
  if (sheet.back)
    text += tr(", walked back");
  text += QLatin1String(": ") + (sheet.legCount() == 1 ? tr("1 leg") : tr("%1 legs").arg(sheet.legCount()));
  if (const auto length = sheet.length_m())
    text += tr(", %1 m").arg(rounded(*length, 0));
  text += QLatin1Char('.');
  if (const std::vector<int> legs = missing(walked); !legs.empty())
    say(text, lacking(legs));
  for (const LegSheet *each : walked) {
    QStringList own;
    if (const auto count = each->paces())
      own << paces(*count);
    if (const auto minutes = each->minutes())
      own << tr("%1 minutes on the move").arg(rounded(std::ceil(*minutes), 0));
    if (!own.isEmpty())
      say(text, (each->walker.isEmpty() ? QString() : each->walker + QLatin1String(": ")) +
                    own.join(QLatin1String(", ")) + QLatin1Char('.'));
  }
  if (const QString days = SheetWords::days(sheet); !days.isEmpty())
    say(text, tr("Worked out for %1.").arg(days));
  say(text, mNorth.isEmpty() ? SheetWords::north(sheet) : tr("The dial counts from %1.").arg(mNorth));
  say(text,
      tr("A point's comment is the leg that starts there: number for the dial, then paces (p); a “!” says that its "
         "description holds a warning."));
  say(text,
      tr("CAUTION: the lines are straight and know nothing of cliffs, water, thickets or whose land it is. Look at "
         "the map first, and check each leg by its back bearing."));
  return text;
}

} // namespace brushline
