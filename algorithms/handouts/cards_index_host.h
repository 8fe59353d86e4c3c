// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "handouts/leg_sheets_host.h"

#include <QByteArray>
#include <QString>

#include <vector>

namespace brushline {

//! A file of cards, for the list.
struct ListedCard {
  QString file; //!< in the list's folder
  QString route, walkers, way;
  size_t legs;
  std::optional<double> length_m;
};

//! A page that lists files of cards: HTML, UTF-8, without scripts.
QByteArray cardsIndex(const QString &title, const std::vector<ListedCard> &cards);

} // namespace brushline
