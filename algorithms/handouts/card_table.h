// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "handouts/dial_drawing.h"
#include "handouts/drawing.h"

#include <optional>
#include <string>
#include <vector>

namespace brushline {

//! How large things are on a card, by its paper.
struct CardType {
  Face big, title, name, body, small;
  double margin;  //!< of the paper, millimetres
  double picture; //!< width of a dial's picture
  double writing; //!< height of a line to write on by hand

  //! \param shorter side of the paper, millimetres.
  static CardType forPaper(double shorter);
  //! The same with larger figures and texts.
  CardType enlarged(double factor) const;
};

//! A leg as a card shows it: texts ready to be read.
struct CardLeg {
  int number = 0;
  //! Behind the number, of a piece of a leg; else empty.
  std::string letter;

  std::string dial;  //!< empty: no compass can be used
  std::string unit;  //!< of the dial
  std::string paces; //!< figures alone, as the next two
  std::string minutes, metres;
  std::string back; //!< the number that is sighted back to; stands below the dial's
  std::string from, to;
  std::vector<std::string> details; //!< each begins a line, the most useful first
  std::vector<std::string> extras;  //!< likewise, on wide tables only
  std::vector<std::string> warnings;
  std::optional<DialPicture> picture;
};

//! The words over the table's columns.
struct TableWords {
  std::string leg, dial, paces, way, minutes, metres;
  std::string no_dial;  //!< where a number for the dial would be
  std::string left_out; //!< with %1, how many details have no room
};

//! What a page has for a table, its head included: millimetres.
struct TableRoom {
  double width, height;
};

/**
 * The table of legs: measured once, drawn piece by piece. A row's height is that of its texts; names take two lines at
 * most, a detail three, and an ellipsis tells what was left out.
 *
 * Warnings are never shortened. Where a leg has no room on one page its last details are left out, which a line says;
 * where its warnings alone are longer than a page, they go on in rows of their own, with the leg's number.
 */
class CardTable {
public:
  //! \param ruler, legs, words outlive it.
  CardTable(const std::vector<CardLeg> &legs, const TableWords &words, const CardType &type, TableRoom room,
            const TextRuler &ruler);

  //! One for each leg, and those in which warnings go on.
  size_t rows() const { return mRows.size(); }
  //! Legs that begin in rows.
  size_t legs(size_t first, size_t count) const;

  double headHeight() const { return mHead; }
  double rowHeight(size_t row) const { return mRows[row].height; }
  //! Of rows with the head.
  double height(size_t first, size_t count) const;
  //! Rows from a first one that have room in a height, with the head; at least one, which has it in the table's room.
  size_t fitting(size_t first, double height) const;
  Drawing draw(size_t first, size_t count, Spot corner) const;

  bool shortened() const { return mShortened; }
  size_t detailsLeftOut() const { return mLeftOut; }
  Face bigFace() const { return mBig; }

private:
  struct Line {
    std::string text;
    Face face;
  };
  struct WarningLine {
    std::string text;
    bool begins; // a warning, with a triangle
  };
  struct Row {
    const CardLeg *leg;
    bool goes_on = false;              // only the leg's number and warnings
    std::vector<Line> lines;           // beside the numbers
    std::vector<WarningLine> warnings; // below, over the whole width
    double height = 0;
  };
  struct Column {
    double left = 0, width = 0;
    double right() const { return left + width; }
  };
  void arrangeColumns(double width);
  void addRows(const CardLeg &leg);
  std::vector<Line> detailsOf(const CardLeg &leg, double room); // as many as have room
  Face warningFace() const { return {mType.body.points, true}; }
  double heightOf(const WarningLine &line) const;
  static double heightOf(const std::vector<Line> &lines);
  std::string way(const CardLeg &leg) const;      // metres and minutes in one
  double numbersHeight(const CardLeg &leg) const; // of what stands left of the texts
  void addLines(std::vector<Line> &lines, const std::string &text, const Face &face, int most);
  void drawFigures(Drawing &drawing, const CardLeg &leg, Spot corner) const;
  void drawRow(Drawing &drawing, const Row &row, Spot corner) const;

  const std::vector<CardLeg> &mLegs;
  const TableWords &mWords;
  const CardType mType;
  const TextRuler &mRuler;
  double mWidth, mHeight, mHead; // the room, and the head
  Face mBig;
  bool mPictures = false, mOwnColumns = false, mExtras = false; // columns for minutes and metres
  Column mNumber, mPicture, mDial, mPaces, mWay, mMinutes, mMetres;
  std::vector<Row> mRows;
  bool mShortened = false;
  size_t mLeftOut = 0;
};

} // namespace brushline
