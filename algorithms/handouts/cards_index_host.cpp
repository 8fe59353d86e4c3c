// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/cards_index_host.h"

#include "handouts/html_host.h"

#include <QUrl>

#include <cmath>

namespace brushline {

namespace {
struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::CardsIndex)
};
QString cell(const QString &text) { return QStringLiteral("<td>") + Html::text(text) + QStringLiteral("</td>"); }
QString nameCell(const QString &name) {
  return name.isEmpty() ? cell(name) : QStringLiteral("<td>") + Html::name(name) + QStringLiteral("</td>");
}
QString head(const QString &text) { return QStringLiteral("<th>") + Html::text(text) + QStringLiteral("</th>"); }
} // namespace

QByteArray cardsIndex(const QString &title, const std::vector<ListedCard> &cards) {
  const QString name = Html::text(title.isEmpty() ? Text::tr("Leg cards") : title);
  QString page = QStringLiteral("<!DOCTYPE html>\n<html>\n<head>\n<meta charset=\"utf-8\">\n<title>%1</title>\n"
                                "<style>body{font-family:sans-serif;margin:2em}table{border-collapse:collapse}"
                                "th,td{text-align:left;padding:.3em .8em;border-bottom:1px solid #999}</style>\n"
                                "</head>\n<body>\n<h1>%1</h1>\n<table>\n")
                     .arg(name);
  page += QStringLiteral("<tr>") + head(Text::tr("Route")) + head(Text::tr("Walker")) + head(Text::tr("Direction")) +
          head(Text::tr("Legs")) + head(Text::tr("Metres")) + head(Text::tr("File")) + QStringLiteral("</tr>\n");
  for (const ListedCard &card : cards) {
    // "./", since a name may hold a colon-like sign that would be read as a scheme.
    const QString link = QStringLiteral("./") + QString::fromLatin1(QUrl::toPercentEncoding(card.file));
    page += QStringLiteral("<tr>") + nameCell(card.route) + nameCell(card.walkers) + cell(card.way) +
            cell(QString::number(card.legs)) +
            cell(card.length_m ? QString::number(std::lround(*card.length_m)) : QString()) +
            QStringLiteral("<td><a href=\"%1\">").arg(link) + Html::name(card.file) +
            QStringLiteral("</a></td></tr>\n");
  }
  page += QStringLiteral("</table>\n</body>\n</html>\n");
  return page.toUtf8();
}

} // namespace brushline
