// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "handouts/courses_host.h"
#include "quantities/bearing.h"

#include <optional>
#include <vector>

namespace brushline {

/**
 * Legs and marks in words: in short for a line on a small screen, and in sentences. Numbers have a point in every
 * language. What is not known is not spoken of.
 */
class LegWords {
  Q_DECLARE_TR_FUNCTIONS(brushline::LegWords)

public:
  //! \param north that the dials count from, if it is certain.
  explicit LegWords(std::optional<North> north);

  //! "042° 130 p"; with several walkers "042° Ann 130 p, Bo 150 p"; a piece of a leg "out: 132° 40 p". "!" behind it:
  //! there are warnings.
  static QString shortLeg(const std::vector<LegOnSheet> &walked);
  //! \param legs of the whole route.
  QString leg(const std::vector<LegOnSheet> &walked, int legs) const;

  //! The caution that legs of these numbers are lacking.
  static QString lacking(const std::vector<int> &legs);
  //! Numbers of legs that one of the sheets lacks, rising.
  static std::vector<int> missing(const std::vector<const LegSheet *> &walked);

  static QString shortMark(const CourseMark &mark);
  static QString mark(const CourseMark &mark);

  //! "7 legs 1430 m 1890 p 36 min".
  static QString shortRoute(const std::vector<const LegSheet *> &walked);
  QString route(const std::vector<const LegSheet *> &walked) const;

  static QString paces(long count);
  //! Whole metres, under ten with a tenth where there is one.
  static QString metres(double value);

private:
  QString mNorth; // "magnetic north"; empty: not certain
};

} // namespace brushline
