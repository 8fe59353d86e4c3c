// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "handouts/drawing.h"

#include <algorithm>
#include <cctype>
#include <cmath>
#include <vector>

namespace brushline::test {

//! A ruler for which every sign of ASCII is as wide: 0.6 of an em, 0.7 in bold, about what DejaVu Sans has at the most
//! (regression only). Other signs count byte by byte.
class PlainRuler : public TextRuler {
public:
  double width(const std::string &text, const Face &face) const override {
    return double(text.size()) * face.em() * (face.bold ? 0.7 : 0.6);
  }
  std::vector<size_t> letterEnds(const std::string &text) const override {
    std::vector<size_t> ends;
    for (size_t i = 1; i <= text.size(); ++i)
      ends.push_back(i);
    return ends;
  }
  std::vector<size_t> lineEnds(const std::string &text) const override {
    std::vector<size_t> ends;
    for (size_t i = 1; i <= text.size(); ++i)
      if (i == text.size() || (text[i - 1] == ' ' && text[i] != ' '))
        ends.push_back(i);
    return ends;
  }
};

//! The texts of a drawing.
inline std::vector<DrawnText> textsOf(const Drawing &drawing) {
  std::vector<DrawnText> texts;
  for (const auto &part : drawing.parts)
    if (const auto *text = std::get_if<DrawnText>(&part))
      texts.push_back(*text);
  return texts;
}

template <typename Part> std::vector<Part> partsOf(const Drawing &drawing) {
  std::vector<Part> parts;
  for (const auto &part : drawing.parts)
    if (const auto *one = std::get_if<Part>(&part))
      parts.push_back(*one);
  return parts;
}

//! Where the letters of a text lie, from the base line to the height of capitals.
inline Area boxOf(const DrawnText &text, const TextRuler &ruler) {
  const double width = ruler.width(text.text, text.face), height = text.face.em() * capHeight;
  const double left = text.at.x - (text.align == Align::Left ? 0 : text.align == Align::Right ? width : width / 2);
  return {left, text.at.y - height, width, height};
}

//! Whether every coordinate is a number.
inline bool isFinite(const Drawing &drawing) {
  bool finite = true;
  const auto check = [&](Spot spot) { finite = finite && std::isfinite(spot.x) && std::isfinite(spot.y); };
  for (const auto &part : drawing.parts) {
    if (const auto *text = std::get_if<DrawnText>(&part))
      check(text->at);
    if (const auto *shape = std::get_if<DrawnShape>(&part))
      for (const Spot &spot : shape->corners)
        check(spot);
    if (const auto *disc = std::get_if<DrawnDisc>(&part))
      check(disc->centre);
  }
  return finite;
}

} // namespace brushline::test
