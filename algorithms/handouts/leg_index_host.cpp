// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/leg_index_host.h"

#include "handouts/html_host.h"
#include "handouts/sheet_words_host.h"
#include "quantities/progress.h"

#include <QUrl>
#include <qgsfeedback.h>

namespace brushline {

namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::LegIndex)
};

struct Link {
  QString file;    // empty: none
  QString content; // HTML
  QString spoken;  // plain text for who hears it; empty: the content tells enough
};

QString markup(const Link &link) {
  if (link.file.isEmpty())
    return link.content;
  const QString label =
      link.spoken.isEmpty() ? QString() : QStringLiteral(" aria-label=\"%1\"").arg(Html::text(link.spoken));
  return QStringLiteral("<a href=\"%1\"%2>%3</a>")
      .arg(QString::fromLatin1(QUrl::toPercentEncoding(link.file)), label, link.content);
}

QString rowOf(const IndexedSheet &listed) {
  const LegSheet &sheet = *listed.sheet;
  const auto cell = [](const QString &content) {
    return QStringLiteral("<td class=\"sum number\">%1</td>").arg(content);
  };
  QString name = Html::name(SheetWords::route(sheet));
  if (!sheet.walker.isEmpty())
    name += QStringLiteral(" – ") + Html::name(sheet.walker);
  const QString days = SheetWords::days(sheet);
  QStringList about{Html::text(SheetWords::direction(sheet)), Html::text(SheetWords::legs(sheet.legCount()))};
  if (!sheet.missing.empty())
    about << Html::element("b", Html::text(Text::tr("without %1").arg(SheetWords::numbers(sheet.missing)))).trimmed();
  about << QStringLiteral("<span class=\"day\">%1</span>")
               .arg(Html::text(days.isEmpty() ? Text::tr("day not known") : days));
  QString row = QStringLiteral("<tr><th scope=\"row\">%1<br><span class=\"about\">%2</span></th>")
                    .arg(markup({listed.page.isEmpty() ? listed.csv : listed.page, name, QString()}),
                         about.join(QStringLiteral(" · ")));
  row += cell(Html::text(SheetWords::metres(sheet.length_m()))) +
         cell(sheet.paces() ? QString::number(*sheet.paces()) : QString()) +
         cell(Html::text(SheetWords::wholeMinutes(sheet.minutes())));
  if (!listed.csv.isEmpty() && !listed.page.isEmpty())
    row += cell(markup({listed.csv, Html::text(Text::tr("CSV")), Text::tr("CSV: %1").arg(SheetWords::whole(sheet))}));
  return row + QLatin1String("</tr>\n");
}

} // namespace

QByteArray legIndex(const std::vector<IndexedSheet> &sheets, const QString &title, const QgsFeedback *feedback) {
  const QString heading = title.isEmpty() ? Text::tr("Leg tables") : title;
  QStringList columns{Text::tr("Route and walker"), Text::tr("Distance"), Text::tr("Paces"), Text::tr("Time")};
  if (!sheets.empty() && !sheets.front().csv.isEmpty() && !sheets.front().page.isEmpty())
    columns << Text::tr("Table");
  QString heads;
  for (const QString &column : columns)
    heads += QStringLiteral("<th scope=\"col\">%1</th>").arg(Html::text(column));
  QByteArray page = Html::begin(heading);
  page += Html::element("header", Html::element("h1", Html::name(heading))).toUtf8();
  page += QStringLiteral("<table class=\"list\">\n<caption>%1</caption>\n<thead>\n<tr>%2</tr>\n</thead>\n<tbody>\n")
              .arg(Html::text(Text::tr("Routes and walkers")), heads)
              .toUtf8();
  for (const IndexedSheet &sheet : sheets) {
    if (feedback->isCanceled())
      throw Cancelled();
    page += rowOf(sheet).toUtf8();
  }
  return page + "</tbody>\n</table>\n" +
         Html::end({Text::tr("Minutes are for walking without a stop. What is not known is left out.")});
}

} // namespace brushline
