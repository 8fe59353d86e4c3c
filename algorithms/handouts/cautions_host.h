// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QCoreApplication>
#include <QStringList>

namespace brushline {

/**
 * What everybody must be told who walks by these numbers, in plain words; the one place for all handouts. Plain text
 * without markup.
 */
class Cautions {
  Q_DECLARE_TR_FUNCTIONS(brushline::Cautions)

public:
  //! Each a sentence or two that stands by itself, the compass first, then the ground, then people.
  static QStringList full();
  //! Five short ones for a card, whose back or table has the full ones.
  static QStringList onCard();
};

} // namespace brushline
