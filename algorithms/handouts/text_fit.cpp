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

// The end of the longest piece from a start on that is no wider than the width.
size_t pieceEnd(const std::string &text, size_t start, const Face &face, double width, const TextRuler &ruler) {
  const std::string rest = text.substr(start);
  size_t end = 0;
  for (const size_t candidate : ruler.lineEnds(rest)) {
    if (candidate == 0)
      continue;
    if (ruler.width(withoutEndBlanks(rest.substr(0, candidate)), face) > width)
      break;
    end = candidate;
  }
  if (end > 0)
    return start + end;
  for (const size_t candidate : ruler.letterEnds(rest)) { // a word that is too wide by itself
    if (candidate == 0)
      continue;
    if (end > 0 && ruler.width(rest.substr(0, candidate), face) > width)
      break;
    end = candidate;
  }
  return start + std::max<size_t>(end, 1);
}

} // namespace

FittedText fitText(const std::string &text, const Face &face, double width, int mostLines, const TextRuler &ruler) {
  FittedText result;
  size_t start = 0;
  while (start < text.size()) {
    if (text[start] == ' ') {
      ++start;
      continue;
    }
    const size_t end = pieceEnd(text, start, face, width, ruler);
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

Face narrowed(const std::string &text, Face face, double width, const TextRuler &ruler) {
  while (face.points > smallestText && ruler.width(text, face) > width)
    face.points = std::max(smallestText, face.points - 0.5);
  return face;
}

} // namespace brushline
