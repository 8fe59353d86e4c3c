// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/xml_text.h"

#include <algorithm>

namespace brushline {

namespace {

bool isDirection(char16_t c) {
  return c == 0x061C || c == 0x200E || c == 0x200F || (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
}
bool isBreak(char16_t c) { return c == '\t' || c == '\n' || c == '\r' || c == 0x85 || c == 0x2028 || c == 0x2029; }
bool isControl(char16_t c) { return c < 0x20 || (c >= 0x7F && c < 0xA0); }
bool isHighHalf(char16_t c) { return c >= 0xD800 && c < 0xDC00; }
bool isLowHalf(char16_t c) { return c >= 0xDC00 && c < 0xE000; }

// Whether a sign needs looking at; quick, since nearly none does.
bool isSuspect(char16_t c) {
  return isControl(c) || isDirection(c) || isBreak(c) || (c >= 0xD800 && c < 0xE000) || c >= 0xFFFE;
}

} // namespace

std::optional<XmlText> forXml(std::u16string_view text) {
  if (std::none_of(text.begin(), text.end(), isSuspect))
    return std::nullopt;
  XmlText result;
  result.text.reserve(text.size());
  for (size_t i = 0; i < text.size(); ++i) {
    const char16_t c = text[i];
    if (isHighHalf(c) && i + 1 < text.size() && isLowHalf(text[i + 1])) {
      result.text += c;
      result.text += text[++i];
    } else if (isDirection(c)) {
      result.directions_removed = true;
    } else if (isBreak(c)) {
      if (c != '\n' || i == 0 || text[i - 1] != '\r') // one space for both
        result.text += u' ';
    } else if (isSuspect(c)) {
      result.text += u'\uFFFD';
      result.replaced = true;
    } else {
      result.text += c;
    }
  }
  if (result.text == text)
    return std::nullopt;
  return result;
}

} // namespace brushline
