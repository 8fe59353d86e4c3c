// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/place.h"
#include "shared/parameter_reader_host.h"

#include <QDate>
#include <QString>

#include <optional>
#include <vector>

namespace brushline {

//! A mark on a leg, as a row of the output MARKS has it.
struct SheetMark {
  int number = 0;             //!< from 1 on each leg
  QString name;               //!< empty: a spaced mark, not a thing on the ground
  std::optional<double> at_m; //!< from the leg's start
  std::optional<long> paces;  //!< from the leg's start
  std::optional<double> sight_m, offset_m;
  Place place;
};

//! What a row tells of a piece of a leg with detours, as “Detour round obstacles” writes it.
struct SheetPiece {
  int number = 1; //!< from 1 on each leg
  QString part;   //!< along, out, past or back; never translated
  QString turn;   //!< left or right, the quarter turn at the piece's start; empty: none
  QString side;   //!< left or right, where the detour lies
  QString obstacle;
  std::optional<double> count_m; //!< of the leg, at the piece's end
  std::optional<long> run_paces; //!< likewise: the count to go on with
  std::optional<double> blocked_m;
};

//! A leg, or a piece of one, as a row of annotated legs has it. Bearings in degrees from the north that is named; what
//! the row does not tell is none, or empty.
struct SheetLeg {
  int number = 0;
  QString from, to; //!< names of its ends
  std::optional<double> true_bearing, grid_bearing, magnetic_bearing, convergence, declination, declination_error;
  QDate date;
  std::optional<double> dial, back_dial; //!< in the unit that dial_text shows
  QString dial_text;                     //!< empty where no compass can be used
  QString back_text;                     //!< back_dial written like dial_text
  QString compass_point;
  std::optional<double> length_m, slope_m, climb_m, drop_m;
  std::optional<long> paces;
  std::optional<double> minutes;
  QString cover; //!< the class
  std::optional<double> sight_m, spacing_m;
  std::optional<long> sightings;
  std::optional<double> drift_m, along_m; //!< one sigma
  QString warnings;
  Place start, end;
  std::vector<SheetMark> marks;    //!< in order; empty without MARKS
  std::optional<SheetPiece> piece; //!< none: its layer knows whole legs only
  bool in_pieces = false;          //!< the leg has several, a row each

  //! "a" for the first of several pieces, and so on; else empty.
  QString letter() const;
  //! The number that stands for it everywhere: "3", and "3a", "3b" for pieces.
  QString label() const { return QString::number(number) + letter(); }
};

//! The legs of one route, one walker and one direction, in the order walked: what a handout is made of.
struct LegSheet {
  QString route;  //!< of several routes of one name the second is called "Loop (2)", and so on
  QString walker; //!< empty: none is named
  bool back = false;
  std::vector<SheetLeg> legs; //!< at least one; those of a leg in pieces are all there, one behind the other
  QString given_name;         //!< the route's, as the legs have it
  int copy = 1;               //!< 2, 3 ...: so many routes of this name, walker and direction have come
  //! Numbers of legs that are lacking: from 1 to the greatest number met, also those of rows that could not be used.
  std::vector<int> missing;

  //! Legs; one in pieces is one.
  size_t legCount() const;
  //! Sums; none when a leg does not tell.
  std::optional<double> length_m() const, minutes() const, climb_m() const, drop_m() const;
  std::optional<long> paces() const;
  //! The day its bearings hold for: the first leg's; null when unknown.
  QDate date() const { return legs.front().date; }
  //! The declination at the first leg's start.
  std::optional<double> declination() const { return legs.front().declination; }
};

namespace leg_sheets {

//! INPUT: annotated legs.
Definitions legsDefinitions();
//! MARKS: their marks, optional.
Definitions marksDefinitions();

//! Throws for layers without the fields that a handout needs; reads no features.
void check(const ParameterReader &reader);

/**
 * Reads INPUT, and MARKS where the algorithm has it and it is given, into sheets in the order in which they are met.
 * Legs without a line, without number or without paces are passed over, counted and told; so are marks that belong to
 * no leg, or lie elsewhere than they say (those of another run). A leg in pieces of which one is lacking or of no use
 * is passed over whole; it has no marks, which count from its start.
 *
 * Each leg begins where the one before ends, unless its warnings tell how far from there it starts. Several routes of
 * one name are told apart where the rows tell: each one's legs follow each other, numbered from 1; or each number comes
 * once, and where a leg does not begin at the end of the one before another route begins. Otherwise nobody could say
 * which leg belongs to which route: throws.
 * Throws QgsProcessingException when no leg is left, too, and Cancelled.
 */
std::vector<LegSheet> read(const ParameterReader &reader, QgsProcessingFeedback *feedback);

} // namespace leg_sheets

} // namespace brushline
