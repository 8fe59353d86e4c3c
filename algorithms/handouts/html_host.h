// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QByteArray>
#include <QCoreApplication>
#include <QString>
#include <QStringList>

namespace brushline {

/**
 * Pieces of web pages: HTML 5, UTF-8, one file each, without scripts and without a second file.
 */
class Html {
  Q_DECLARE_TR_FUNCTIONS(brushline::Html)

public:
  //! Text for an element or an attribute in quotes: no markup, none of the signs that a page may not hold, none that
  //! turn the direction of what comes after them.
  static QString text(const QString &text);
  //! A name that people gave, whichever way it is written.
  static QString name(const QString &name);
  //! An element with a content that is HTML already.
  static QString element(const char *tag, const QString &content, const char *cssClass = nullptr);
  //! A list of items that are HTML already; nothing for none.
  static QString list(const QStringList &items, const char *cssClass);

  //! A page as far as its body. \param title plain text, for the window's bar.
  static QByteArray begin(const QString &title);
  //! What must be heeded (cautions_host.h), notes of the page's own (plain text), and the end of the page.
  static QByteArray end(const QStringList &notes);
};

} // namespace brushline
