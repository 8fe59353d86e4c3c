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
  std::vector<std::string> details; //!< each begins a line
  std::vector<std::string> extras;  //!< likewise, on wide tables only
  std::vector<std::string> warnings;
  std::optional<DialPicture> picture;
};

//! The words over the table's columns.
struct TableWords {
  std::string leg, dial, paces, way, minutes, metres;
  std::string no_dial; //!< where a number for the dial would be
};

/**
 * The table of legs: measured once, drawn piece by piece. A row's height is that of its texts; names take two lines at
 * most, a detail three, a warning six, and an ellipsis tells what was left out.
 */
class CardTable {
public:
  //! \param ruler, legs, words outlive it.
  CardTable(const std::vector<CardLeg> &legs, const TableWords &words, const CardType &type, double width,
            const TextRuler &ruler);

  double headHeight() const { return mHead; }
  double rowHeight(size_t row) const { return mRows[row].height; }
  //! Of rows with the head.
  double height(size_t first, size_t count) const;
  //! Rows from a first one that have room in a height, with the head; at least one.
  size_t fitting(size_t first, double height) const;
  Drawing draw(size_t first, size_t count, Spot corner) const;

  bool shortened() const { return mShortened; }
  Face bigFace() const { return mBig; }

private:
  struct Line {
    std::string text;
    Face face;
  };
  struct Row {
    std::vector<Line> lines;                        // beside the numbers
    std::vector<std::vector<std::string>> warnings; // below, over the whole width
    double height = 0;
  };
  struct Column {
    double left = 0, width = 0;
    double right() const { return left + width; }
  };
  void arrangeColumns(double width);
  Row rowOf(const CardLeg &leg);
  std::string way(const CardLeg &leg) const;      // metres and minutes in one
  double numbersHeight(const CardLeg &leg) const; // of what stands left of the texts
  void addLines(Row &row, const std::string &text, const Face &face, int most);
  void drawRow(Drawing &drawing, const CardLeg &leg, const Row &row, Spot corner) const;

  const std::vector<CardLeg> &mLegs;
  const TableWords &mWords;
  const CardType mType;
  const TextRuler &mRuler;
  double mWidth, mHead;
  Face mBig;
  bool mPictures = false, mOwnColumns = false, mExtras = false; // columns for minutes and metres
  Column mNumber, mPicture, mDial, mPaces, mWay, mMinutes, mMetres;
  std::vector<Row> mRows;
  bool mShortened = false;
};

} // namespace brushline
