// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "shared/parameter_reader_host.h"

#include <QHash>
#include <QString>
#include <QVector>

namespace brushline {

/**
 * What “Check legs for hazards” found, for the warnings of annotated legs.
 */
class LegAdvice {
  Q_DECLARE_TR_FUNCTIONS(brushline::LegAdvice)

public:
  //! HAZARDS_FOUND, optional.
  static Definitions definitions();
  //! Throws for a layer without the fields that are needed.
  static void check(const ParameterReader &reader);

  LegAdvice() = default;
  //! Main thread. Throws Cancelled.
  LegAdvice(const ParameterReader &reader, const QgsFeedback *feedback);

  /**
   * The words for a leg; empty where nothing was found.
   *
   * \param opposite the number of the same leg walked the other way. Metres told from the other end would mislead: of
   * what was found that way, and not this way too, only the hazards are named.
   */
  QString forLeg(const QString &route, int number, bool back, int opposite) const;

private:
  struct Found {
    QString hazard, advice;
  };
  QHash<QString, QVector<Found>> mFound; // by route, leg and direction
};

} // namespace brushline
