// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "handouts/card_table.h"
#include "handouts/drawing.h"
#include "handouts/map_scale.h"

#include <optional>
#include <string>
#include <vector>

namespace brushline {

//! A leg on the map, on paper.
struct LegOnMap {
  int number;
  std::vector<Spot> line;  //!< from its start to its end, at least two
  std::vector<Spot> marks; //!< on the way
  std::string letter{};    //!< behind the number, of a piece of a leg
};

//! The north that lines and arrow on a map show.
struct MapNorth {
  double turn_degrees; //!< clockwise from the map's upward
  bool magnetic;       //!< else true
};

//! What is drawn over the map.
struct CoursePicture {
  Area map;
  std::vector<LegOnMap> legs; //!< at least one
  std::optional<MapNorth> north;
  double lines_apart = 0; //!< of the north lines, millimetres; 0: none
  std::string start, end; //!< the words; empty: a leg is lacking there, and it is not marked
};

//! The width of the line of a leg, and that of a north line: millimetres.
constexpr double legWidth = 0.6, northWidth = 0.2;

//! The course as drawn, and what of the map it needs for itself: names on the map should keep off.
struct DrawnCourse {
  Drawing drawing;
  std::vector<Area> labels;
  std::vector<std::pair<Spot, Spot>> lines;
};

/**
 * The course over the map: north lines, legs with an arrow on the way, their numbers at the starts (white on black, as
 * in the table), the start a black square, the end a white diamond, marks as ticks across.
 */
DrawnCourse drawCourse(const CoursePicture &course, const CardType &type, const TextRuler &ruler);

//! What stands below the map.
struct MapStrip {
  Area area;
  MapScale scale;
  std::string scale_text;
  std::optional<double> paces_per_m; //!< this walker's
  std::optional<MapNorth> north;
  std::vector<std::string> north_text;   //!< two lines
  std::string metres, kilometres, paces; //!< words after numbers
};

//! The scale as a number, a bar in metres and in paces, and the arrow of the north that is meant.
Drawing drawMapStrip(const MapStrip &strip, const CardType &type, const TextRuler &ruler);

} // namespace brushline
