// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "legs/annotate_legs.h"

#include <QCoreApplication>
#include <QDate>
#include <qgsfeature.h>
#include <qgsfields.h>

namespace brushline {

/**
 * The tables of annotated legs, their marks and their drift: fields in their fixed order, and the rows that legs become.
 */
class LegLayer {
  Q_DECLARE_TR_FUNCTIONS(brushline::LegLayer)

public:
  static QgsFields fields();
  static QgsFields markFields();
  static QgsFields driftFields();

  //! \param compass, walkers, date those of the run, the same for all legs. \param table of the cover; may be null.
  LegLayer(const Compass &compass, const std::vector<Walker> &walkers, const QDate &date,
           std::shared_ptr<const CoverTable> table);

  //! The row of a leg for one walker; in the order of fields().
  QgsAttributes row(const QVariant &route, const AnnotatedLeg &leg, size_t walker);
  //! The row of one of its marks; in the order of markFields(). \param pacesBefore counted on the legs before.
  QgsAttributes markRow(const QVariant &route, const AnnotatedLeg &leg, size_t walker, size_t mark,
                        long pacesBefore) const;
  //! The row of the place its end may be at; in the order of driftFields().
  QgsAttributes driftRow(const QVariant &route, const AnnotatedLeg &leg, size_t walker) const;

  //! A warning in words.
  QString inWords(const LegWarning &warning) const;

private:

  Compass mCompass;
  std::vector<QVariant> mWalkerNames;
  QVariant mDate;
  std::shared_ptr<const CoverTable> mTable;
  QVariant mOut, mBack; // the words of the field direction; never translated
  std::map<double, QVariant> mDialTexts;
};

} // namespace brushline
