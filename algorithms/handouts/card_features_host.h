// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "handouts/card_words_host.h"

#include <QHash>

namespace brushline {

//! What legs meet: the optional layer FEATURES with fields route, leg, feature, at_m, and role, event, walker and
//! direction where it has them; without direction they lie on the way out.
class CardFeatures {
  Q_DECLARE_TR_FUNCTIONS(brushline::CardFeatures)

public:
  static Definitions definitions();
  //! Throws for a layer without the fields.
  static void check(const ParameterReader &reader);

  //! Rows that belong to no leg of the sheets (or to several, of routes of one name), or say no distance, are counted
  //! and told. Throws Cancelled.
  CardFeatures(const ParameterReader &reader, const std::vector<LegSheet> &sheets, QgsProcessingFeedback *feedback);

  //! For each leg of a sheet.
  std::vector<std::vector<MetFeature>> of(const LegSheet &sheet) const;

private:
  struct Row {
    QString walker; // null: any
    MetFeature feature;
  };
  QHash<QString, std::vector<Row>> mRows; // by route, leg and direction
};

} // namespace brushline
