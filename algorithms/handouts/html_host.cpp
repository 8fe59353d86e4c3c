// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/html_host.h"

#include "handouts/cautions_host.h"

#include <QFile>

namespace brushline {

namespace {

// The style sheet, without its first line.
QString style() {
  QFile file(QStringLiteral(":/brushline/styles/tables.css"));
  if (!file.open(QIODevice::ReadOnly))
    return QString();
  const QString text = QString::fromUtf8(file.readAll());
  return text.mid(text.indexOf(QLatin1Char('\n')) + 1);
}

// Embeddings, overrides and isolates: they could turn what comes after a name.
bool turnsDirection(uint code) { return (code >= 0x202A && code <= 0x202E) || (code >= 0x2066 && code <= 0x2069); }

bool isNoCharacter(uint code) {
  return (code >= 0xD800 && code <= 0xDFFF) || (code >= 0xFDD0 && code <= 0xFDEF) || (code & 0xFFFE) == 0xFFFE;
}

} // namespace

QString Html::text(const QString &text) {
  QString kept;
  for (const uint code : text.toUcs4()) {
    if (code == '\t' || code == '\n' || code == '\r')
      kept += QLatin1Char(' ');
    else if (isNoCharacter(code))
      kept += QChar(QChar::ReplacementCharacter);
    else if (QChar::category(code) != QChar::Other_Control && !turnsDirection(code))
      kept += QString::fromUcs4(&code, 1);
  }
  return kept.toHtmlEscaped();
}

QString Html::name(const QString &name) { return QStringLiteral("<bdi dir=\"auto\">%1</bdi>").arg(text(name)); }

QString Html::element(const char *tag, const QString &content, const char *cssClass) {
  const QString attribute = cssClass ? QStringLiteral(" class=\"%1\"").arg(QLatin1String(cssClass)) : QString();
  return QLatin1Char('<') + QLatin1String(tag) + attribute + QLatin1Char('>') + content + QLatin1String("</") +
         QLatin1String(tag) + QLatin1String(">\n");
}

QString Html::list(const QStringList &items, const char *cssClass) {
  if (items.isEmpty())
    return QString();
  QString content;
  for (const QString &item : items)
    content += element("li", item);
  return element("ul", content, cssClass);
}

QByteArray Html::begin(const QString &title) {
  static const QString css = style();
  //: The language these words are written in, as a web page names it: "en", "de", "pt-BR" ...
  const QString language = tr("en");
  //: The direction in which this language is written: "ltr" or "rtl"
  const QString direction = tr("ltr");
  QString page = QStringLiteral("<!DOCTYPE html>\n<html lang=\"%1\" dir=\"%2\">\n<head>\n<meta charset=\"utf-8\">\n")
                     .arg(text(language), text(direction));
  page += QLatin1String("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; "
                        "style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'\">\n"
                        "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
                        "<meta name=\"referrer\" content=\"no-referrer\">\n"
                        "<meta name=\"generator\" content=\"Brushline\">\n");
  page += element("title", text(title)) + element("style", css) + QLatin1String("</head>\n<body>\n");
  return page.toUtf8();
}

QByteArray Html::end(const QStringList &notes) {
  const auto chapter = [](const QString &head, const QStringList &texts) {
    QStringList items;
    for (const QString &one : texts)
      items << text(one);
    return items.isEmpty() ? QString() : element("h2", text(head)) + list(items, nullptr);
  };
  const QString foot = chapter(tr("Take care"), Cautions::full()) + chapter(tr("How to read this page"), notes);
  return (element("footer", foot) + QLatin1String("</body>\n</html>\n")).toUtf8();
}

} // namespace brushline
