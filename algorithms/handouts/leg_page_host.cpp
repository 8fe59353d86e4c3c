// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/leg_page_host.h"

#include "handouts/html_host.h"
#include "handouts/sheet_words_host.h"
#include "quantities/progress.h"

#include <QRegularExpression>
#include <qgsfeedback.h>

#include <algorithm>

namespace brushline {

namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::LegPage)
};

constexpr int columnCount = 6;
constexpr int longName = 60; // letters; longer ones are written smaller

QString spanning(const QString &content) {
  return QStringLiteral("<td colspan=\"%1\">").arg(columnCount - 1) + content + QLatin1String("</td>\n");
}

// A number for the dial, its unit smaller where it is a word.
QString dialMarkup(const QString &dialText) {
  static const QRegularExpression word(QStringLiteral("^(.*\\d)\\s+(\\w+)$"));
  const QRegularExpressionMatch match = word.match(dialText);
  const auto number = [](const QString &text) {
    return text.isEmpty() ? text : QStringLiteral("<span class=\"number\">%1</span>").arg(Html::text(text));
  };
  if (!match.hasMatch())
    return number(dialText);
  return number(match.captured(1)) +
         QStringLiteral(" <span class=\"unit\">%1</span>").arg(Html::text(match.captured(2)));
}

QString dialCell(const QString &dialText) {
  if (dialText.isEmpty())
    return QStringLiteral("<td class=\"dial none\">%1</td>\n").arg(Html::text(Text::tr("no number")));
  const QString size = dialText.size() <= 4   ? QStringLiteral("dial")
                       : dialText.size() <= 8 ? QStringLiteral("dial long")
                                              : QStringLiteral("dial longer");
  return QStringLiteral("<td class=\"%1\"><b>%2</b></td>\n").arg(size, dialMarkup(dialText));
}

QString partOf(const SheetLeg &leg) {
  const QString part = (SheetWords::part(leg) << SheetWords::count(leg)).join(QLatin1Char(' ')).trimmed();
  return part.isEmpty() ? part : Html::element("p", Html::text(part), "part");
}

QString endsOf(const SheetLeg &leg) {
  const QString from = QStringLiteral("<b>%1</b>").arg(Html::name(leg.from)),
                to = QStringLiteral("<b>%1</b>").arg(Html::name(leg.to));
  QString ends;
  if (const QString point = SheetWords::compassPoint(leg); !point.isEmpty())
    ends = QStringLiteral("<span class=\"point\">%1</span> ").arg(Html::text(point));
  if (!leg.from.isEmpty() && !leg.to.isEmpty())
    ends += Html::text(Text::tr("From %1 to %2")).arg(from, to);
  else if (!leg.from.isEmpty())
    ends += Html::text(Text::tr("From %1")).arg(from);
  else if (!leg.to.isEmpty())
    ends += Html::text(Text::tr("To %1")).arg(to);
  return ends.isEmpty() ? ends : Html::element("p", ends, "ends");
}

QString factsOf(const SheetLeg &leg) {
  QStringList facts;
  if (!leg.cover.isEmpty())
    facts << Html::name(leg.cover);
  if (leg.sightings) {
    const QString count = *leg.sightings == 1 ? Text::tr("1 sighting") : Text::tr("%1 sightings").arg(*leg.sightings);
    facts << Html::text(leg.spacing_m && *leg.sightings > 1
                            ? Text::tr("%1, about %2 apart").arg(count, SheetWords::metres(leg.spacing_m))
                            : count);
  }
  if (leg.sight_m)
    facts << Html::text(Text::tr("a mark is clear to %1").arg(SheetWords::metres(leg.sight_m)));
  if (leg.climb_m && leg.drop_m)
    facts << Html::text(
        Text::tr("up %1, down %2").arg(SheetWords::metres(leg.climb_m), SheetWords::metres(leg.drop_m)));
  if (leg.drift_m && leg.along_m)
    facts << Html::text(Text::tr("may be off %1 sideways, %2 along")
                            .arg(SheetWords::metres(leg.drift_m), SheetWords::metres(leg.along_m)));
  return Html::list(facts, "facts");
}

QString marksOf(const SheetLeg &leg) {
  QStringList marks;
  for (const SheetMark &mark : leg.marks) {
    QString item = mark.paces ? QString::number(*mark.paces) : Html::text(SheetWords::metres(mark.at_m));
    if (!mark.name.isEmpty())
      item += QLatin1Char(' ') + Html::name(mark.name);
    marks << item;
  }
  if (marks.isEmpty())
    return QString();
  return Html::element("div", Html::text(Text::tr("Marks at paces")) + QLatin1Char(' ') + Html::list(marks, nullptr),
                       "marks");
}

QString missingWords(const std::vector<int> &numbers) {
  if (numbers.size() == 1)
    return Text::tr("Leg %1 is not in this table. Do not walk on past it by these numbers.").arg(numbers.front());
  return Text::tr("Legs %1 are not in this table. Do not walk on past them by these numbers.")
      .arg(SheetWords::numbers(numbers));
}

QString headOf(const LegSheet &sheet, const QString &occasion) {
  QString head;
  if (!occasion.isEmpty())
    head += Html::element("p", Html::name(occasion), "occasion");
  const QString route = SheetWords::route(sheet);
  head += Html::element("h1", Html::name(route), route.size() > longName ? "long" : nullptr);
  QStringList who;
  if (!sheet.walker.isEmpty())
    who << Html::name(sheet.walker);
  who << Html::text(Text::tr("direction: %1").arg(SheetWords::direction(sheet)));
  const QString days = SheetWords::days(sheet);
  who << QStringLiteral("<span class=\"day\">%1</span>")
             .arg(Html::text(days.isEmpty() ? Text::tr("day not known") : days));
  head += Html::element("p", who.join(QStringLiteral(" · ")), "who");

  QStringList sums{SheetWords::legs(sheet.legCount()), SheetWords::metres(sheet.length_m()),
                   SheetWords::paces(sheet.paces()), SheetWords::minutes(sheet.minutes())};
  if (sheet.climb_m() && sheet.drop_m())
    sums << Text::tr("up %1, down %2").arg(SheetWords::metres(sheet.climb_m()), SheetWords::metres(sheet.drop_m()));
  sums.removeAll(QString());
  head += Html::element("p", Html::text(sums.join(QStringLiteral(" · "))), "sums");

  head += QStringLiteral(
              "<ul class=\"blanks\">\n<li>%1</li>\n<li class=\"main\">%2</li>\n<li>%3</li>\n<li>%4</li>\n</ul>\n")
              .arg(Html::text(Text::tr("Start")), Html::text(Text::tr("Turn back at")), Html::text(Text::tr("Back by")),
                   Html::text(Text::tr("Told to")));

  QString north;
  const QString declination = SheetWords::declination(sheet);
  if (declination.isEmpty())
    north = Text::tr("Declination not known.");
  else if (const auto error = sheet.legs.front().declination_error)
    north = Text::tr("Declination %1, give or take %2°, on %3.")
                .arg(declination, QString::number(*error, 'f', 1), days.isEmpty() ? Text::tr("a day not known") : days);
  else
    north = Text::tr("Declination %1, on %2.").arg(declination, days.isEmpty() ? Text::tr("a day not known") : days);
  head += Html::element("p", Html::text(north + QLatin1Char(' ') + SheetWords::north(sheet)), "north");
  if (!sheet.missing.empty())
    head += Html::element("p", Html::text(missingWords(sheet.missing)), "gap");
  return Html::element("header", head);
}

QString missingRows(const std::vector<int> &numbers) {
  return numbers.empty()
             ? QString()
             : QStringLiteral("<tbody>\n<tr><td colspan=\"%1\"><p class=\"gap\">%2</p></td></tr>\n</tbody>\n")
                   .arg(QString::number(columnCount), Html::text(missingWords(numbers)));
}

QString legRows(const SheetLeg &leg) {
  QString rows =
      QStringLiteral("<tbody>\n<tr><th scope=\"rowgroup\" rowspan=\"2\" class=\"leg\">%1</th>\n").arg(leg.label());
  rows += dialCell(leg.dial_text);
  rows += QStringLiteral("<td class=\"paces number\">%1</td>\n").arg(*leg.paces);
  rows += QStringLiteral("<td class=\"back\">%1</td>\n").arg(dialMarkup(leg.back_text));
  rows +=
      QStringLiteral("<td class=\"far number\"><span>%1</span>%2</td>\n")
          .arg(Html::text(SheetWords::metres(leg.length_m)),
               leg.minutes ? QStringLiteral(" <span>%1</span>").arg(Html::text(SheetWords::wholeMinutes(leg.minutes)))
                           : QString());
  rows += QLatin1String("<td class=\"done\"></td></tr>\n<tr class=\"words\">");
  QString words = partOf(leg) + endsOf(leg) + factsOf(leg) + marksOf(leg);
  if (!leg.warnings.isEmpty())
    words += Html::element("p", Html::text(Text::tr("Warning: %1")).arg(Html::name(leg.warnings)), "warning");
  return rows + spanning(words) + QLatin1String("</tr>\n</tbody>\n");
}

QString totalRow(const LegSheet &sheet) {
  const QString label = sheet.missing.empty() ? Text::tr("All %1").arg(SheetWords::legs(sheet.legCount()))
                                              : Text::tr("The %1 here").arg(SheetWords::legs(sheet.legCount()));
  QString far = QStringLiteral("<td colspan=\"3\">%1").arg(Html::text(SheetWords::metres(sheet.length_m())));
  if (sheet.minutes())
    far += QLatin1String("<br>") + Html::text(SheetWords::minutes(sheet.minutes()));
  return QStringLiteral("<tbody class=\"totals\">\n<tr><th scope=\"row\" colspan=\"2\">%1</th>\n<td>%2</td>\n")
             .arg(Html::text(label), sheet.paces() ? QString::number(*sheet.paces()) : QString()) +
         far + QLatin1String("</td></tr>\n</tbody>\n");
}

QByteArray tableOf(const LegSheet &sheet, const QgsFeedback *feedback) {
  QString head = Html::element("caption", Html::text(Text::tr("Legs in the order walked")));
  QString columns, heads;
  for (const auto &[cssClass, head] :
       {std::pair("c-leg", Text::tr("Leg")), std::pair("c-dial", Text::tr("Dial")),
        std::pair("c-paces", Text::tr("Paces")), std::pair("c-back", Text::tr("Sight back")),
        std::pair("c-far", Text::tr("Distance, time")), std::pair("c-done", Text::tr("Done"))}) {
    columns += QStringLiteral("<col class=\"%1\">").arg(QLatin1String(cssClass));
    heads +=
        QStringLiteral("<th scope=\"col\"%1>%2</th>")
            .arg(QLatin1String(cssClass) == QLatin1String("c-done") ? QStringLiteral(" class=\"done\"") : QString(),
                 Html::text(head));
  }
  head += Html::element("colgroup", columns);
  // On each printed page, so that a page that got loose still says whose it is.
  QString who = Html::text(SheetWords::direction(sheet));
  if (!sheet.walker.isEmpty())
    who = Html::name(sheet.walker) + QStringLiteral(", ") + who;
  head += QStringLiteral("<thead>\n<tr class=\"again\"><th colspan=\"%1\" scope=\"colgroup\">%2</th><th colspan=\"%1\" "
                         "scope=\"colgroup\">%3</th></tr>\n<tr>%4</tr>\n</thead>\n")
              .arg(QString::number(columnCount / 2), Html::name(SheetWords::route(sheet)), who, heads);
  QByteArray table = "<table class=\"legs\">\n" + head.toUtf8();
  auto missing = sheet.missing.begin();
  for (const SheetLeg &leg : sheet.legs) {
    if (feedback->isCanceled())
      throw Cancelled();
    const auto before = missing;
    while (missing != sheet.missing.end() && *missing < leg.number)
      ++missing;
    table += (missingRows({before, missing}) + legRows(leg)).toUtf8();
  }
  table += (missingRows({missing, sheet.missing.end()}) + totalRow(sheet)).toUtf8();
  return table + "</table>\n";
}

QStringList notesFor(const LegSheet &sheet) {
  const auto some = [&sheet](const auto &known) { return std::any_of(sheet.legs.begin(), sheet.legs.end(), known); };
  QStringList notes{
      Text::tr(
          "Dial: the number to set on the compass. Sight back: the number when you look from the leg’s end back to "
          "its start."),
      Text::tr(
          "Paces are counted the way this walker counts them. Metres and minutes are rounded; what is not known is "
          "left out.")};
  if (some([](const SheetLeg &leg) { return leg.in_pieces; }))
    notes << Text::tr("Letters: a leg that goes round something comes in pieces, a, b and so on. Set the dial anew for "
                      "each. Paces along the line and past count for the leg, those out and back do not.");
  if (some([](const SheetLeg &leg) { return leg.minutes.has_value(); }))
    notes << Text::tr("Minutes are for walking without a stop: sighting from mark to mark takes time of its own.");
  if (some([](const SheetLeg &leg) { return leg.sightings || leg.sight_m; }))
    notes << Text::tr("Sightings: so many times pick a mark on the line, walk to it and sight again. How far a mark is "
                      "clear is for the thickest place of the leg.");
  if (some([](const SheetLeg &leg) { return !leg.marks.empty(); }))
    notes << Text::tr("Marks at paces: what is counted at each mark; the count starts anew with each leg.");
  // Each way by itself a normal error stays within its sigma in 0.6827 of the walks and within two in 0.9545; both at
  // once in 0.6827^2 = 0.466 and 0.9545^2 = 0.911, where the two are independent, and never in fewer (Z. Sidak,
  // Rectangular Confidence Regions for the Means of Multivariate Normal Distributions, JASA 62, 1967).
  if (some([](const SheetLeg &leg) { return leg.drift_m && leg.along_m; }))
    notes << Text::tr(
        "May be off: two of three walks end no farther to the side than the first number, and two of three no farther "
        "short or far than the second; nearly half of them keep within both. Within twice both end nine of ten.");
  if (some([](const SheetLeg &leg) { return leg.declination_error.has_value(); }))
    notes << Text::tr("Give or take: one standard deviation of the magnetic model.");
  return notes;
}

} // namespace

QByteArray legPage(const LegSheet &sheet, const QString &occasion, const QgsFeedback *feedback) {
  return Html::begin(SheetWords::whole(sheet)) + headOf(sheet, occasion).toUtf8() + tableOf(sheet, feedback) +
         Html::end(notesFor(sheet));
}

} // namespace brushline
