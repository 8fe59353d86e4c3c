// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/sheet_words_host.h"

#include "handouts/dial_norths_host.h"

#include <QRegularExpression>

#include <algorithm>
#include <cmath>

namespace brushline {

namespace {

QString rounded(double number) {
  return number > 0 && number < 0.5 ? QStringLiteral("<1") : QString::number(std::llround(number));
}

} // namespace

QString SheetWords::route(const LegSheet &sheet) {
  return sheet.route.isEmpty() ? tr("Route without a name") : sheet.route;
}

QString SheetWords::direction(const LegSheet &sheet) { return sheet.back ? tr("back") : tr("out"); }

QString SheetWords::whole(const LegSheet &sheet) {
  QStringList parts{route(sheet), sheet.walker, direction(sheet)};
  parts.removeAll(QString());
  return parts.join(QStringLiteral(" – "));
}

std::array<QString, 4> SheetWords::compassLetters() {
  return {tr("N", "compass"), tr("E", "compass"), tr("S", "compass"), tr("W", "compass")};
}

QString SheetWords::compassPoint(const SheetLeg &leg) {
  static const QRegularExpression isPoint(QStringLiteral("^[NESW]{1,3}$"));
  if (!isPoint.match(leg.compass_point).hasMatch())
    return leg.compass_point;
  const std::array<QString, 4> letters = compassLetters();
  QString point;
  for (const QChar letter : leg.compass_point)
    point += letters[size_t(QStringLiteral("NESW").indexOf(letter))];
  return point;
}

QString SheetWords::metres(const std::optional<double> &metres) {
  return metres ? tr("%1 m").arg(rounded(*metres)) : QString();
}

QString SheetWords::wholeMinutes(const std::optional<double> &minutes) {
  return minutes ? tr("%1 min").arg(rounded(*minutes)) : QString();
}

QString SheetWords::minutes(const std::optional<double> &minutes) {
  const QString plain = wholeMinutes(minutes);
  const long long all = std::llround(minutes.value_or(0));
  return all < 60 ? plain : tr("%1 (%2 h %3 min)").arg(plain).arg(all / 60).arg(all % 60);
}

QString SheetWords::legs(size_t count) { return count == 1 ? tr("1 leg") : tr("%1 legs").arg(count); }

QStringList SheetWords::part(const SheetLeg &leg) {
  QStringList words;
  if (!leg.in_pieces)
    return words;
  const SheetPiece &piece = *leg.piece;
  const bool first = piece.number == 1; // nobody walks along the leg yet, so there is nothing to turn from
  const QString obstacle = piece.obstacle.isEmpty() ? tr("what is in the way") : piece.obstacle;
  if (!first && piece.turn == QLatin1String("left"))
    words << tr("Turn left, a quarter turn.");
  else if (!first && piece.turn == QLatin1String("right"))
    words << tr("Turn right, a quarter turn.");
  if (piece.part == QLatin1String("along"))
    words << (first ? tr("Along the line.") : tr("On along the line."));
  else if (piece.part == QLatin1String("past"))
    words << tr("Past %1.").arg(obstacle);
  else if (piece.part == QLatin1String("back"))
    words << tr("Back to the line.");
  else if (first && piece.side == QLatin1String("left"))
    words << tr("Out to the left of the line, round %1.").arg(obstacle);
  else if (first && piece.side == QLatin1String("right"))
    words << tr("Out to the right of the line, round %1.").arg(obstacle);
  else
    words << tr("Out from the line, round %1.").arg(obstacle);
  return words;
}

QString SheetWords::count(const SheetLeg &leg) {
  if (!leg.in_pieces)
    return QString();
  if (leg.piece->part == QLatin1String("out") || leg.piece->part == QLatin1String("back"))
    return tr("These paces do not count for the leg.");
  if (!leg.paces || !leg.piece->run_paces || *leg.piece->run_paces < *leg.paces)
    return QString();
  const long from = *leg.piece->run_paces - *leg.paces;
  return from == 0 ? tr("Count from 0 to %1.").arg(*leg.piece->run_paces)
                   : tr("Count on from %1 to %2.").arg(from).arg(*leg.piece->run_paces);
}

QString SheetWords::paces(const std::optional<long> &paces) {
  if (!paces)
    return QString();
  return *paces == 1 ? tr("1 pace") : tr("%1 paces").arg(*paces);
}

QString SheetWords::days(const LegSheet &sheet) {
  QStringList days;
  bool unknown = false;
  for (const SheetLeg &leg : sheet.legs) {
    const QString day = leg.date.toString(Qt::ISODate);
    unknown = unknown || day.isEmpty();
    if (!day.isEmpty() && !days.contains(day))
      days << day;
  }
  if (unknown && !days.isEmpty())
    days << tr("a day that is not known");
  return days.join(QLatin1String(", "));
}

QString SheetWords::declination(const LegSheet &sheet) {
  std::optional<double> least, most;
  for (const SheetLeg &leg : sheet.legs)
    if (leg.declination) {
      least = std::min(least.value_or(*leg.declination), *leg.declination);
      most = std::max(most.value_or(*leg.declination), *leg.declination);
    }
  if (!least)
    return QString();
  const auto words = [](double east) {
    const QString degrees = QString::number(std::abs(east), 'f', 1);
    if (degrees == QLatin1String("0.0"))
      return tr("0.0°");
    return east < 0 ? tr("%1° west").arg(degrees) : tr("%1° east").arg(degrees);
  };
  const QString first = words(*least), last = words(*most);
  return first == last ? first : tr("%1 to %2").arg(first, last);
}

QString SheetWords::north(const LegSheet &sheet) {
  const bool dials =
      std::any_of(sheet.legs.begin(), sheet.legs.end(), [](const SheetLeg &leg) { return !leg.dial_text.isEmpty(); });
  if (!dials)
    return tr("There are no numbers for the dial on these legs.");
  const std::vector<North> norths = northsOf(sheet);
  if (norths.size() == 1)
    switch (norths.front()) {
    case North::Magnetic:
      return tr("The dial numbers are from magnetic north: set them as they stand, on a compass without correction for "
                "declination.");
    case North::True:
      return tr("The dial numbers are from true north: for a compass that is set to correct for this declination.");
    case North::Grid:
      return tr("The dial numbers are from grid north, that of the map’s grid lines: for a compass that is set to "
                "correct for the angle from grid north to magnetic north.");
    }
  QStringList names;
  for (const North north : norths)
    names << (north == North::Magnetic ? tr("magnetic north")
              : north == North::True   ? tr("true north")
                                       : tr("grid north"));
  if (names.isEmpty())
    return tr("These legs do not tell from which north the dial numbers are. Ask who made them before you use them.");
  return tr("These legs do not tell for certain from which north the dial numbers are: %1. Ask who made them.")
      .arg(names.join(tr(" or ", "between two norths")));
}

QString SheetWords::numbers(const std::vector<int> &rising) {
  QStringList ranges;
  for (size_t i = 0; i < rising.size();) {
    size_t end = i;
    while (end + 1 < rising.size() && rising[end + 1] == rising[end] + 1)
      ++end;
    ranges << (end == i ? QString::number(rising[i]) : QStringLiteral("%1–%2").arg(rising[i]).arg(rising[end]));
    i = end + 1;
  }
  return ranges.join(QLatin1String(", "));
}

} // namespace brushline
