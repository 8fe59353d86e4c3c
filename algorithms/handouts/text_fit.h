// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "handouts/drawing.h"

#include <limits>
#include <string>
#include <vector>

namespace brushline {

//! For texts whose end must not be left out.
constexpr int allLines = std::numeric_limits<int>::max();

struct FittedText {
  std::vector<std::string> lines; //!< none for an empty text
  bool shortened = false;         //!< its end was left out, and an ellipsis says so
};

/**
 * A text in lines no wider than a width: parted between words, and inside a word where one alone is too wide.
 *
 * \param mostLines >= 1; what would need more ends in an ellipsis. allLines: nothing is left out.
 * A width under that of a letter gives one letter a line.
 */
FittedText fitText(const std::string &text, const Face &face, double width, int mostLines, const TextRuler &ruler);

//! The same in a single line.
std::string inOneLine(const std::string &text, const Face &face, double width, const TextRuler &ruler);

//! A text with a number in the place of a sign, "%1" for example.
std::string filledIn(std::string text, const std::string &sign, size_t number);

//! The face, or the largest smaller one (in half points, no less than the smallest text) in which the text is no wider
//! than the width.
Face narrowed(const std::string &text, Face face, double width, const TextRuler &ruler);

} // namespace brushline
