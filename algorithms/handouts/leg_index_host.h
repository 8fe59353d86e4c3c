// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "handouts/leg_sheets_host.h"

#include <QByteArray>
#include <QString>

#include <vector>

class QgsFeedback;

namespace brushline {

//! A sheet and its files, for the index.
struct IndexedSheet {
  const LegSheet *sheet;
  QString page, csv; //!< names in the index's folder; empty: not written
};

//! A web page that lists sheets, with a link to each one's files. \param title may be empty. \throws Cancelled
QByteArray legIndex(const std::vector<IndexedSheet> &sheets, const QString &title, const QgsFeedback *feedback);

} // namespace brushline
