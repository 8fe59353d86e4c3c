// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "legs/annotate_legs.h"
#include "shared/parameter_reader_host.h"
#include "shared/place_reader_host.h"

#include <QHash>
#include <QString>
#include <QVector>

#include <vector>

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
  //! Throws Cancelled.
  LegAdvice(const ParameterReader &reader, const QgsFeedback *feedback);

  /**
   * The words for a leg; empty where nothing was found. What lies elsewhere than on the leg is not told, though it has
   * the leg's number: the route was drawn anew, or another one has its name.
   *
   * \param opposite the number of the same leg walked the other way. Metres told from the other end would mislead: of
   * what was found that way, and not this way too, only the hazards are named.
   */
  QString forLeg(const QString &route, const AnnotatedLeg &leg, int opposite);
  //! Warns of what belonged to none of the legs asked for.
  void finish(QgsProcessingFeedback *feedback) const;

private:
  struct Found {
    QString hazard, advice;
    std::vector<Place> ends; // of the stretch; none in a table
    bool told = false;       // to a leg
  };
  //! Of those with a key the ones that lie on a leg, which are told then.
  std::vector<const Found *> onLeg(const QString &key, const AnnotatedLeg &leg);

  QString mLayer;
  QHash<QString, QVector<Found>> mFound; // by route, leg and direction
};

} // namespace brushline
