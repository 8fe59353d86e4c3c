// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "legs/annotate_legs.h"

#include <QCoreApplication>
#include <QDate>
#include <qgsfeature.h>
#include <qgsfields.h>

namespace brushline {

/**
 * The table of annotated legs: its fields in their fixed order, and the rows that legs become.
 */
class LegLayer {
  Q_DECLARE_TR_FUNCTIONS(brushline::LegLayer)

public:
  static QgsFields fields();

  //! \param compass, walkers, date those of the run, the same for all legs.
  LegLayer(const Compass &compass, const std::vector<Walker> &walkers, const QDate &date);

  //! The row of a leg for one walker; in the order of fields().
  QgsAttributes row(const QVariant &route, const AnnotatedLeg &leg, size_t walker);

  //! A warning in words.
  static QString inWords(const LegWarning &warning);

private:

  Compass mCompass;
  std::vector<QVariant> mWalkerNames;
  QVariant mDate;
  QVariant mOut, mBack; // the words of the field direction; never translated
  std::map<double, QVariant> mDialTexts;
};

} // namespace brushline
