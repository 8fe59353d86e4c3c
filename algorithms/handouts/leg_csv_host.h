// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "handouts/leg_sheets_host.h"

#include <QByteArray>
#include <QString>

class QgsFeedback;

namespace brushline {

/**
 * A sheet as a table of comma-separated values by RFC 4180: a header, one line for each leg, CR LF at the ends of
 * lines. All fields of annotated legs, under their names, and behind them those that legs with detours have besides,
 * for such legs; numbers with a decimal point and with as many digits as it takes to read the same number again; empty
 * where nothing is known.
 *
 * UTF-8 with a byte order mark. RFC 4180 knows none, and a reader that takes the mark for text finds it before the
 * first field's name; but spreadsheets take a file without it for one of another encoding, and then the degree sign of
 * every number for the dial and half the names are spoiled, before the eyes of people who cannot know why.
 *
 * \throws Cancelled
 */
QByteArray legCsv(const LegSheet &sheet, const QgsFeedback *feedback);

/**
 * A text that no spreadsheet takes for a formula: an apostrophe before what begins like one, where a cell begins (at
 * the start, and after a semicolon, a tab or a line's end, since some spreadsheets begin a new cell there).
 */
QString withoutFormula(const QString &text);

} // namespace brushline
