// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/text_fit.h"

#include <algorithm>

namespace brushline {

namespace {

const std::string ellipsis = "\xE2\x80\xA6";

std::string withoutEndBlanks(std::string text) {
  while (!text.empty() && text.back() == ' ')
    text.pop_back();
  return text;
}

std::string withEllipsis(const std::string &text, const Face &face, double width, const TextRuler &ruler) {
  const std::vector<size_t> ends = ruler.letterEnds(text);
  // From the start, since a text may be a million times as long as a line.
  size_t i = 0;
  while (i < ends.size() && ruler.width(text.substr(0, ends[i]), face) <= width)
    ++i;
  while (i-- > 0) {
    const std::string cut = withoutEndBlanks(text.substr(0, ends[i])) + ellipsis;
    if (ruler.width(cut, face) <= width)
      return cut;
  }
  return ellipsis;
}

// Whether a text is wider. The start of a long one mostly tells: a word of many lines is not measured whole for each.
bool isWider(const std::string &text, const Face &face, double width, const TextRuler &ruler) {
  size_t some = 300; // bytes
  if (text.size() > some) {
    while (some > 0 && (static_cast<unsigned char>(text[some]) & 0xC0) == 0x80) // not inside a letter
      --some;
    if (ruler.width(text.substr(0, some), face) > width)
      return true;
  }
  return ruler.width(text, face) > width;
}

// Where a text may be parted; found once, since it may have thousands of lines.
struct Breaks {
  std::vector<size_t> lines, letters;
};

// The end of the longest piece from a start on that is no wider than the width.
size_t pieceEnd(const std::string &text, size_t start, Breaks &breaks, const Face &face, double width,
                const TextRuler &ruler) {
  const auto after = [start](const std::vector<size_t> &ends) {
    return std::upper_bound(ends.begin(), ends.end(), start);
  };
  size_t end = start;
  for (auto candidate = after(breaks.lines); candidate != breaks.lines.end(); ++candidate) {
    if (isWider(withoutEndBlanks(text.substr(start, *candidate - start)), face, width, ruler))
      break;
    end = *candidate;
  }
  if (end > start)
    return end;
  if (breaks.letters.empty())
    breaks.letters = ruler.letterEnds(text);
  // a word that is too wide by itself
  for (auto candidate = after(breaks.letters); candidate != breaks.letters.end(); ++candidate) {
    if (end > start && ruler.width(text.substr(start, *candidate - start), face) > width)
      break;
    end = *candidate;
  }
  return std::max(end, start + 1);
}

} // namespace

FittedText fitText(const std::string &text, const Face &face, double width, int mostLines, const TextRuler &ruler) {
  FittedText result;
  Breaks breaks{ruler.lineEnds(text), {}};
  size_t start = 0;
  while (start < text.size()) {
    if (text[start] == ' ') {
      ++start;
      continue;
    }
    const size_t end = pieceEnd(text, start, breaks, face, width, ruler);
    const std::string line = withoutEndBlanks(text.substr(start, end - start));
    if (int(result.lines.size()) + 1 == mostLines && withoutEndBlanks(text.substr(end)).size() > 0) {
      result.lines.push_back(withEllipsis(text.substr(start), face, width, ruler));
      result.shortened = true;
      return result;
    }
    result.lines.push_back(line);
    start = end;
  }
  return result;
}

std::string inOneLine(const std::string &text, const Face &face, double width, const TextRuler &ruler) {
  const FittedText fitted = fitText(text, face, width, 1, ruler);
  return fitted.lines.empty() ? std::string() : fitted.lines.front();
}

std::string filledIn(std::string text, const std::string &sign, size_t number) {
  if (const size_t at = text.find(sign); at != std::string::npos)
    text.replace(at, sign.size(), std::to_string(number));
  return text;
}

Face narrowed(const std::string &text, Face face, double width, const TextRuler &ruler) {
  while (face.points > smallestText && ruler.width(text, face) > width)
    face.points = std::max(smallestText, face.points - 0.5);
  return face;
}

} // namespace brushline
