// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/card_words_host.h"

#include "handouts/cautions_host.h"
#include "handouts/courses_host.h"
#include "handouts/dial_norths_host.h"
#include "handouts/leg_words_host.h"
#include "handouts/sheet_words_host.h"

#include <QRegularExpression>
#include <qgsstringutils.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace brushline::card_words {

namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::LegCards)
};

QString whole(double value) { return QString::number(std::lround(value)); }

QString wholeMinutes(double minutes) { return minutes > 0 && minutes < 0.5 ? QStringLiteral("<1") : whole(minutes); }

QString minutesText(double minutes) {
  if (minutes < 0.5)
    return Text::tr("%1 min").arg(wholeMinutes(minutes));
  const long all = std::lround(minutes);
  return all < 100 ? Text::tr("%1 min").arg(all)
                   : Text::tr("%1 h %2 min").arg(all / 60).arg(all % 60, 2, 10, QLatin1Char('0'));
}

// A dial's number and unit: "096°" is 096 and °, "1707 mil" is 1707 and " mil".
struct DialNumber {
  QString number, unit;
  std::optional<double> circle; // of the unit; none for one we do not know
};
DialNumber dialNumber(const QString &text) {
  static const QRegularExpression pattern(QStringLiteral("^([0-9.]+)(.*)$"));
  const QRegularExpressionMatch match = pattern.match(text);
  if (!match.hasMatch())
    return {text, QString(), std::nullopt};
  DialNumber result{match.captured(1), match.captured(2), std::nullopt};
  const QString unit = result.unit.trimmed();
  if (unit == QString(QChar(0x00B0)))
    result.circle = 360;
  else if (unit == QLatin1String("mil"))
    result.circle = 6400;
  else if (unit == QLatin1String("gon"))
    result.circle = 400;
  return result;
}

QString eastOrWest(double declination) {
  const QString number = QString::number(std::abs(declination), 'f', 1);
  if (number == QLatin1String("0.0"))
    return QStringLiteral("0.0°");
  return declination > 0 ? Text::tr("%1° E").arg(number) : Text::tr("%1° W").arg(number);
}

// What a thing is called beside what is told of it: a long name must not push that off the row.
QString nameBeside(const QString &name) {
  constexpr int longest = 40; // letters
  return QgsStringUtils::truncateMiddleOfString(name, longest);
}

bool hasOneDay(const LegSheet &sheet) {
  return std::all_of(sheet.legs.begin(), sheet.legs.end(),
                     [&sheet](const SheetLeg &leg) { return leg.date == sheet.date(); });
}

// Whether the first leg of the route, and the last one that is known of, are among the sheet's.
bool hasStart(const LegSheet &sheet) { return sheet.legs.front().number == 1; }
bool hasEnd(const LegSheet &sheet) { return sheet.missing.empty() || sheet.missing.back() < sheet.legs.back().number; }

QString missingWords(const std::vector<int> &numbers) {
  if (numbers.size() == 1)
    return Text::tr("Leg %1 is not on this card. Do not walk on past it by these numbers.").arg(numbers.front());
  return Text::tr("Legs %1 are not on this card. Do not walk on past them by these numbers.")
      .arg(SheetWords::numbers(numbers));
}

QStringList notesOf(const LegSheet &sheet) {
  QStringList notes;
  if (!sheet.missing.empty())
    notes << missingWords(sheet.missing);
  if (!hasOneDay(sheet))
    notes << Text::tr("The legs are not all for the same day, but for %1.").arg(SheetWords::days(sheet));
  double least = INFINITY, most = -INFINITY, error = 0;
  for (const SheetLeg &leg : sheet.legs)
    if (leg.declination) {
      least = std::min(least, *leg.declination);
      most = std::max(most, *leg.declination);
      error = std::max(error, leg.declination_error.value_or(0));
    }
  QString declination;
  if (least <= most) {
    declination = eastOrWest(least);
    if (eastOrWest(least) != eastOrWest(most))
      declination = Text::tr("%1 to %2").arg(declination, eastOrWest(most));
    if (error > 0)
      declination += QStringLiteral(" ± %1°").arg(error, 0, 'f', 1);
    const QString days = SheetWords::days(sheet);
    notes << Text::tr("Declination %1 on %2.")
                 .arg(declination, days.isEmpty() ? Text::tr("a day that is not told") : days);
  } else {
    notes << Text::tr("The declination is not known.");
  }
  const bool any =
      std::any_of(sheet.legs.begin(), sheet.legs.end(), [](const SheetLeg &leg) { return !leg.dial_text.isEmpty(); });
  if (!any) {
    notes.last() += QLatin1Char(' ') + Text::tr("No compass can be used here.");
  } else if (const auto north = northOf(sheet)) {
    notes.last() += QLatin1Char(' ');
    if (*north == North::Magnetic)
      notes.last() += Text::tr("It is in the dial numbers already: set them as printed on a plain compass.");
    else if (*north == North::True)
      notes.last() +=
          Text::tr("The dial numbers count from true north: for a compass that is set off for declination.");
    else
      notes.last() += Text::tr("The dial numbers count from grid north: not for a plain compass in the forest.");
  } else {
    notes << SheetWords::north(sheet);
  }
  if (!sheet.walker.isEmpty())
    notes << Text::tr("The paces are those of %1, nobody else's.").arg(nameBeside(sheet.walker));
  return notes;
}

// What is met and how: "crosses Spring Rill". The words of role and event are those that “Features met along legs”
// writes; a change of the ground says by its name what happens. A thing without a name is met all the same.
QString metWords(const MetFeature &met) {
  const auto said = [&met](const char *word) { return met.event == QLatin1String(word); };
  const QString name = nameBeside(met.name.isEmpty() ? Text::tr("something") : met.name);
  if (met.role == QLatin1String("beyond"))
    return Text::tr("gone too far: %1").arg(name);
  if (met.role == QLatin1String("left"))
    return Text::tr("%1 to the left").arg(name);
  if (met.role == QLatin1String("right"))
    return Text::tr("%1 to the right").arg(name);
  if (met.role != QLatin1String("crossed"))
    return nameBeside((met.role + QLatin1Char(' ') + met.name).trimmed());
  if (said("ground rises") || said("ground falls") || said("ground levels"))
    return name;
  if (said("touched"))
    return Text::tr("comes to %1").arg(name);
  if (said("along"))
    return Text::tr("goes along %1").arg(name);
  if (said("into"))
    return Text::tr("enters %1").arg(name);
  if (said("out of"))
    return Text::tr("leaves %1").arg(name);
  return Text::tr("crosses %1").arg(name);
}

// Lines on a leg's row.
QStringList detailsOf(const SheetLeg &leg, const std::vector<MetFeature> &met) {
  QStringList details = SheetWords::part(leg);
  if (const QString count = SheetWords::count(leg); !count.isEmpty())
    details << count;
  const double pacesPerM = leg.length_m && *leg.length_m > 0 && leg.paces ? double(*leg.paces) / *leg.length_m : 0;
  if (leg.sightings && *leg.sightings > 0) {
    QString text = *leg.sightings == 1 ? Text::tr("1 sighting") : Text::tr("%1 sightings").arg(*leg.sightings);
    if (*leg.sightings > 1 && leg.spacing_m && pacesPerM > 0)
      text = Text::tr("%1 sightings of about %2 paces").arg(*leg.sightings).arg(whole(*leg.spacing_m * pacesPerM));
    details << text;
  }
  QStringList spaced;
  for (const SheetMark &mark : leg.marks) {
    if (!mark.paces || (leg.length_m && mark.at_m && *mark.at_m > *leg.length_m - 1))
      continue;
    if (mark.name.isEmpty())
      spaced << QString::number(*mark.paces);
    else
      details << Text::tr("%1 at %2 paces").arg(nameBeside(mark.name), QString::number(*mark.paces));
  }
  constexpr int mostSpaced = 8; // more are told by their spacing alone
  if (!spaced.isEmpty() && spaced.size() <= mostSpaced)
    details << Text::tr("marks at %1 paces").arg(spaced.join(QStringLiteral(", ")));
  for (const MetFeature &feature : met) {
    const bool atEnd = feature.name == leg.to && std::abs(feature.at_m - leg.length_m.value_or(HUGE_VAL)) < 1;
    if (atEnd && feature.role == QLatin1String("crossed")) // where the leg goes is told above
      continue;
    details << (pacesPerM > 0 ? Text::tr("%1 at %2 paces").arg(metWords(feature), whole(feature.at_m * pacesPerM))
                              : Text::tr("%1 at %2 m").arg(metWords(feature), whole(feature.at_m)));
  }
  return details;
}

// The warnings on a leg's row: the layer's, and that legs before or behind it are lacking. Those before the first row
// are told there, others where the walker would go on.
QStringList warningsOf(const LegSheet &sheet, size_t i) {
  const SheetLeg &leg = sheet.legs[i];
  QStringList warnings;
  if (!leg.warnings.isEmpty())
    warnings << leg.warnings;
  const auto first =
      i == 0 ? sheet.missing.begin() : std::upper_bound(sheet.missing.begin(), sheet.missing.end(), leg.number);
  const auto end = i + 1 == sheet.legs.size() ? sheet.missing.end()
                                              : std::lower_bound(first, sheet.missing.end(), sheet.legs[i + 1].number);
  if (first != end)
    warnings << missingWords({first, end});
  return warnings;
}

// Where a leg ends, where that has a name: its own, the end, or the number that stands there on the map since the next
// leg of the card starts there.
QString endOf(const LegSheet &sheet, size_t i) {
  const SheetLeg &leg = sheet.legs[i];
  if (!leg.to.isEmpty())
    return leg.to;
  if (i + 1 == sheet.legs.size())
    return hasEnd(sheet) ? Text::tr("the end") : QString();
  const SheetLeg &next = sheet.legs[i + 1];
  return samePlace(leg.end, next.start) ? Text::tr("point %1").arg(next.label()) : QString();
}

QStringList extrasOf(const SheetLeg &leg) {
  QStringList parts;
  if (!leg.cover.isEmpty())
    parts << leg.cover;
  if (leg.sight_m)
    parts << Text::tr("one sees %1 m").arg(whole(*leg.sight_m));
  if (leg.climb_m && leg.drop_m)
    parts << Text::tr("up %1 m, down %2 m").arg(whole(*leg.climb_m), whole(*leg.drop_m));
  return parts.isEmpty() ? QStringList() : QStringList(parts.join(QStringLiteral("; ")));
}

std::vector<std::string> plain(const QStringList &texts) {
  std::vector<std::string> result;
  for (const QString &text : texts)
    result.push_back(text.toStdString());
  return result;
}

QString totalsOf(const LegSheet &sheet) {
  QStringList parts{sheet.legCount() == 1 ? Text::tr("1 leg") : Text::tr("%1 legs").arg(sheet.legCount())};
  if (const auto length = sheet.length_m())
    parts << Text::tr("%1 m").arg(whole(*length));
  if (const auto paces = sheet.paces())
    parts << Text::tr("%1 paces").arg(*paces);
  if (const auto minutes = sheet.minutes())
    parts << minutesText(*minutes);
  if (const auto climb = sheet.climb_m(), drop = sheet.drop_m(); climb && drop)
    parts << Text::tr("up %1 m, down %2 m").arg(whole(*climb), whole(*drop));
  return parts.join(QStringLiteral(", "));
}

CardWords words() {
  CardWords words;
  words.table.leg = Text::tr("leg").toStdString();
  words.table.dial = Text::tr("dial").toStdString();
  words.table.paces = Text::tr("paces").toStdString();
  words.table.way = Text::tr("from, to").toStdString();
  words.table.minutes = Text::tr("min").toStdString();
  words.table.metres = Text::tr("m").toStdString();
  words.table.no_dial = Text::tr("none").toStdString();
  words.table.left_out = Text::tr("… and %1 more that have no room here").toStdString();
  words.page = Text::tr("card %1 of %2").toStdString();
  words.more = Text::tr("goes on: card %1").toStdString();
  words.turn_back = Text::tr("Turn back at").toStdString();
  words.told = Text::tr("Told (who)").toStdString();
  words.back_by = Text::tr("back by").toStdString();
  return words;
}

} // namespace

CardContents contents(const LegSheet &sheet, const QString &title, const std::vector<std::vector<MetFeature>> &met,
                      bool pictures) {
  CardContents result;
  result.words = words();
  const QString route = sheet.route.isEmpty() ? Text::tr("Course without a name") : sheet.route;
  result.title = (title.isEmpty() ? route : title).toStdString();
  result.route = title.isEmpty() ? std::string() : route.toStdString();
  result.walker = sheet.walker.toStdString();
  const QString day = hasOneDay(sheet) ? SheetWords::days(sheet) : Text::tr("several days");
  const QString way = sheet.back ? Text::tr("way back") : Text::tr("way out");
  result.way = (day.isEmpty() ? way : way + QStringLiteral(", ") + day).toStdString();
  result.totals = totalsOf(sheet).toStdString();
  const auto north = northOf(sheet);
  std::array<std::string, 4> letters;
  const std::array<QString, 4> texts = SheetWords::compassLetters();
  std::transform(texts.begin(), texts.end(), letters.begin(), [](const QString &text) { return text.toStdString(); });
  for (size_t i = 0; i < sheet.legs.size(); ++i) {
    const SheetLeg &leg = sheet.legs[i];
    CardLeg row;
    row.number = leg.number;
    row.letter = leg.letter().toStdString();
    const DialNumber dial = dialNumber(leg.dial_text);
    row.dial = dial.number.toStdString();
    row.unit = dial.unit.toStdString();
    row.paces = leg.paces ? std::to_string(*leg.paces) : std::string();
    row.minutes = leg.minutes ? wholeMinutes(*leg.minutes).toStdString() : std::string();
    row.metres = leg.length_m ? whole(*leg.length_m).toStdString() : std::string();
    // A place without a name is where the leg's number stands on the map.
    const QString from = !leg.from.isEmpty()         ? leg.from
                         : i == 0 && hasStart(sheet) ? Text::tr("the start")
                                                     : Text::tr("point %1").arg(leg.label());
    const QString to = endOf(sheet, i);
    if (!leg.back_text.isEmpty())
      row.back = Text::tr("back %1").arg(leg.back_text).toStdString();
    row.from = Text::tr("from %1").arg(from).toStdString();
    if (!to.isEmpty())
      row.to = Text::tr("to %1").arg(to).toStdString();
    row.details = plain(detailsOf(leg, i < met.size() ? met[i] : std::vector<MetFeature>()));
    row.extras = plain(extrasOf(leg));
    row.warnings = plain(warningsOf(sheet, i));
    if (pictures && leg.dial && dial.circle)
      row.picture = DialPicture{(dial.unit.startsWith(QLatin1Char(' ')) ? dial.number : leg.dial_text).toStdString(),
                                Angle::degrees(*leg.dial * 360 / *dial.circle),
                                north ? needleOn(leg, *north) : std::nullopt, letters};
    result.legs.push_back(std::move(row));
  }
  result.notes = plain(notesOf(sheet));
  result.cautions = plain(Cautions::onCard());
  return result;
}

QString scale(MapScale scale) {
  QString number =
      QString::number(scale.number, 'f', scale.number < 1000 && scale.number != std::floor(scale.number) ? 1 : 0);
  if (number.size() > 4 && !number.contains(QLatin1Char('.')))
    for (int i = int(number.size()) - 3; i > 0; i -= 3)
      number.insert(i, QChar(QChar::Nbsp));
  return QStringLiteral("1:") + number;
}

ProfileWords profile() {
  return {Text::tr("m").toStdString(), Text::tr("Profile, heights drawn %1 times").toStdString(),
          Text::tr("Profile, heights drawn as lengths").toStdString(), Text::tr("no heights known here").toStdString()};
}

MapStrip strip(const LegSheet &sheet, MapScale scale, const std::optional<MapNorth> &north, double lines_apart) {
  MapStrip strip;
  strip.scale = scale;
  strip.scale_text = card_words::scale(scale).toStdString();
  if (const auto paces = sheet.paces(),
      length_m = sheet.length_m() ? std::optional(std::lround(*sheet.length_m())) : std::nullopt;
      paces && length_m && *length_m > 0 && *paces > 0)
    strip.paces_per_m = double(*paces) / *sheet.length_m();
  strip.north = north;
  if (north && north->magnetic) {
    const bool km = lines_apart >= 1000;
    strip.north_text = {
        Text::tr("magnetic north,").toStdString(),
        (km ? Text::tr("lines %1 km apart").arg(lines_apart / 1000) : Text::tr("lines %1 m apart").arg(lines_apart))
            .toStdString()};
  } else if (north) {
    strip.north_text = {Text::tr("true north, in the").toStdString(), Text::tr("middle of the map").toStdString()};
  }
  strip.metres = Text::tr("m").toStdString();
  strip.kilometres = Text::tr("km").toStdString();
  strip.paces = Text::tr("paces").toStdString();
  return strip;
}

void nameEnds(CoursePicture &course, const LegSheet &sheet) {
  if (hasStart(sheet))
    course.start = Text::tr("start").toStdString();
  if (hasEnd(sheet))
    course.end = Text::tr("end").toStdString();
}

QString tooLarge(MapScale wanted, MapScale drawn) {
  return Text::tr("At %1 the course is larger than this map, so the map is drawn at %2.")
      .arg(scale(wanted), scale(drawn));
}

QString tooSmall(MapScale wanted, double paper_mm) {
  return Text::tr("At %1 the course is only %2 mm long on this map.").arg(scale(wanted)).arg(paper_mm, 0, 'f', 1);
}

} // namespace brushline::card_words
