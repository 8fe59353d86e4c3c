// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "handouts/card_table.h"
#include "handouts/sheet_plan.h"

#include <optional>
#include <string>
#include <vector>

namespace brushline {

//! The words of a card that do not come from its legs.
struct CardWords {
  TableWords table;
  std::string page;                     //!< with %1 of %2
  std::string more;                     //!< "goes on" with %1, the card's number
  std::string turn_back, told, back_by; //!< before blanks to write in
};

//! What a card says: texts ready to be read.
struct CardContents {
  std::string title;
  std::string route;  //!< empty: the title tells it
  std::string walker; //!< empty: nobody is named
  std::string way;    //!< out or back, and the day
  std::string totals;
  std::vector<CardLeg> legs;      //!< at least one
  std::vector<std::string> notes; //!< of the numbers: declination, which north
  std::vector<std::string> cautions;
  std::string map_note; //!< over the map; empty: none
  bool profile = false;
  double course_aspect = 1;             //!< its height on the map over its width
  double map_width = 0, map_height = 0; //!< that the map should have at least, where a page has them: millimetres
  CardWords words;
};

//! One side of a card.
struct CardPage {
  Drawing drawing; //!< from the paper's upper left corner
  size_t leg_count = 0;
  std::optional<Area> map, strip, profile; //!< left free for them; the strip is the one below the map
};

struct CardPlan {
  std::vector<CardPage> pages;
  double figures = 0;          //!< points, of the numbers for dial and paces
  bool shortened = false;      //!< somewhere an ellipsis stands for text left out
  size_t details_left_out = 0; //!< of legs that have no room on a page
};

/**
 * What goes where on a card.
 *
 * Upright: head, legs, map, notes one below the other; across: legs on the left, the map on the right. Where that does
 * not leave the map enough room, or not all legs find room, there are more pages, each with the head and its number;
 * the map is then on the last one, and the table grows into the room that is left. Where slightly smaller type saves a
 * page, the table has that. Every leg's numbers are on one page, and no text lies outside the margins.
 *
 * Names may be shortened; where a leg has no room on a page of its own its last details are left out, and a line says
 * how many. Warnings, notes and cautions are never shortened: what has no room goes on in the next column or on the
 * next page, notes and cautions on pages of their own before the map.
 *
 * \param contents at least one leg. \param paper as it is held; 90 mm or more each way.
 */
CardPlan planCard(const CardContents &contents, PaperSize paper, const TextRuler &ruler);

} // namespace brushline
