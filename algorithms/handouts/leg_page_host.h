// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "handouts/leg_sheets_host.h"

#include <QByteArray>
#include <QString>

class QgsFeedback;

namespace brushline {

/**
 * A sheet as a web page to print or to read on a phone: what to set and to count large, the rest beneath it, blanks to
 * fill in, and what must be heeded.
 *
 * \param occasion stands above the route's name; may be empty. \throws Cancelled
 */
QByteArray legPage(const LegSheet &sheet, const QString &occasion, const QgsFeedback *feedback);

} // namespace brushline
