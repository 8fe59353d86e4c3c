// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "handouts/drawing.h"

#include <string>
#include <vector>

namespace brushline {

struct FittedText {
  std::vector<std::string> lines; //!< none for an empty text
  bool shortened = false;         //!< its end was left out, and an ellipsis says so
};

/**
 * A text in lines no wider than a width: parted between words, and inside a word where one alone is too wide.
 *
 * \param mostLines >= 1; what would need more ends in an ellipsis.
 * A width under that of a letter gives one letter a line.
 */
FittedText fitText(const std::string &text, const Face &face, double width, int mostLines, const TextRuler &ruler);

//! The same in a single line.
std::string inOneLine(const std::string &text, const Face &face, double width, const TextRuler &ruler);

//! The face, or the largest smaller one (in half points, no less than the smallest text) in which the text is no wider
//! than the width.
Face narrowed(const std::string &text, Face face, double width, const TextRuler &ruler);

} // namespace brushline
