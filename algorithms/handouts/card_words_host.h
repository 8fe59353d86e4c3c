// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "handouts/card_plan.h"
#include "handouts/course_drawing.h"
#include "handouts/leg_sheets_host.h"
#include "handouts/profile_drawing.h"

#include <QString>
#include <QStringList>

#include <optional>

namespace brushline {

//! Something that a leg meets, as a card tells it.
struct MetFeature {
  double at_m;         //!< told in the walker's paces
  QString name;        //!< what is met
  QString role, event; //!< the words of “Features met along legs”, told in the reader's; other roles as they are
};

/**
 * The words of leg cards: rows of a layer become texts to be read. Numbers come from the layer, as it has them.
 */
namespace card_words {

//! \param met for each leg, in order of its legs. \param pictures of dials.
CardContents contents(const LegSheet &sheet, const QString &title, const std::vector<std::vector<MetFeature>> &met,
                      bool pictures);

QString scale(MapScale scale); //!< "1:10 000"
ProfileWords profile();
//! The strip below a map without its place. \param lines_apart metres; 0: none.
MapStrip strip(const LegSheet &sheet, MapScale scale, const std::optional<MapNorth> &north, double lines_apart);
//! Names the course's start and end, where they are those of the route.
void nameEnds(CoursePicture &course, const LegSheet &sheet);

//! Where a scale that was wanted leaves the course no room, or hardly any; empty when all is well.
QString tooLarge(MapScale wanted, MapScale drawn);
QString tooSmall(MapScale wanted, double paper_mm);

} // namespace card_words

} // namespace brushline
