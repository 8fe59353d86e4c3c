// SPDX-License-Identifier: GPL-2.0-or-later
// Text for cards, and a ruler for it: letters as wide as they are high, which end where UTF-8 says.
#pragma once

#include "fuzz_input.h"

#include "../handouts/plain_ruler.h"

namespace brushline::fuzz {

class PlainRuler final : public test::PlainRuler {
public:
  double width(const std::string &text, const Face &face) const override {
    return double(letterEnds(text).size()) * face.em() * (face.bold ? 0.6 : 0.5);
  }
  std::vector<size_t> letterEnds(const std::string &text) const override {
    std::vector<size_t> ends;
    for (size_t i = 1; i <= text.size(); ++i)
      if (i == text.size() || (text[i] & 0xC0) != 0x80)
        ends.push_back(i);
    return ends;
  }
};

//! A name as layers hold them: any bytes, much blank, letters of two and four bytes.
inline std::string name(Input &input, size_t most) {
  static const std::vector<std::string> words = {
      "a",  " ",  "oak ", "Longwordwithoutanyend", "\xC3\xA9", "\xF0\x9F\x8C\xB2", "  ", "-",
      "\n", "%1", "%2",   "\xE2\x80\xA6",          "1"};
  return input.flag() ? input.text(most) : input.wordsOf(words, most / 4);
}

} // namespace brushline::fuzz
