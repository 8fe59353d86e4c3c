// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "handouts/leg_sheets_host.h"

#include <QCoreApplication>
#include <QStringList>

#include <array>

namespace brushline {

/**
 * What handouts say of sheets, as plain text. Numbers are rounded to whole ones, with a decimal point elsewhere; what
 * is not known is empty.
 */
class SheetWords {
  Q_DECLARE_TR_FUNCTIONS(brushline::SheetWords)

public:
  //! Its route, numbered where several have the name.
  static QString route(const LegSheet &sheet);
  //! "out" or "back".
  static QString direction(const LegSheet &sheet);
  //! Route, walker and direction, for a line of their own.
  static QString whole(const LegSheet &sheet);

  static QString metres(const std::optional<double> &metres);
  static QString wholeMinutes(const std::optional<double> &minutes);
  //! From an hour on with hours: "112 min (1 h 52 min)".
  static QString minutes(const std::optional<double> &minutes);
  static QString legs(size_t count);
  //! What to do on a piece of a leg, in sentences: "Turn left, a quarter turn.", "Past Tarn."; none for a whole leg.
  static QStringList part(const SheetLeg &leg);
  //! How the paces of a piece count for its leg: "Count on from 100 to 180."; empty for a whole leg.
  static QString count(const SheetLeg &leg);
  static QString paces(const std::optional<long> &paces);
  //! The days the legs hold for: one in the usual case.
  static QString days(const LegSheet &sheet);
  //! "17.0° west"; "16.9° west to 17.1° west" when the legs differ.
  static QString declination(const LegSheet &sheet);
  //! From which north the numbers for the dial are, as far as the legs tell it.
  static QString north(const LegSheet &sheet);
  //! N, E, S and W as the reader's language has them on a dial.
  static std::array<QString, 4> compassLetters();
  //! A leg's point of the compass in these letters: "WSW", in French "OSO". What is no such point stays as it is.
  static QString compassPoint(const SheetLeg &leg);
  //! "2, 5–7"
  static QString numbers(const std::vector<int> &rising);
};

} // namespace brushline
