// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "legs/annotate_legs.h"
#include "shared/parameter_reader_host.h"
#include "shared/place_reader_host.h"
#include "shared/shapes.h"

#include <QHash>
#include <QString>

#include <memory>
#include <optional>
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
   * The words for a leg; empty where nothing was found.
   *
   * The advice itself, which tells metres, goes to the very leg it was given for, by route, number and direction, where
   * it lies on it at those metres. Any other leg of the route on which a stretch lies, in part too, since the route was
   * drawn anew or is walked the other way, is told the hazard's name only: its metres would mislead. Rows of a table,
   * without a line, go by number.
   *
   * \param opposite the number of the same leg walked the other way.
   */
  QString forLeg(const QString &route, const AnnotatedLeg &leg, int opposite);
  //! Warns of what belonged to none of the legs asked for.
  void finish(QgsProcessingFeedback *feedback) const;

private:
  struct Found {
    QString route, key, hazard, advice; // key: of route, leg and direction
    std::optional<double> from_m;       // from the leg's start, where it is known
    bool told;                          // to a leg
  };

  QString mLayer;
  std::vector<Found> mFound;
  QHash<QString, std::vector<size_t>> mRows; // those without a line, by key
  std::unique_ptr<Shapes> mStretches;        // the others; feature is the index of what was found
};

} // namespace brushline
