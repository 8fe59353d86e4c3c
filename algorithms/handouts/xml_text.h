// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace brushline {

//! A text as an XML file can hold it, and what was changed for that.
struct XmlText {
  std::u16string text;
  bool replaced = false;           //!< signs that XML cannot hold or nobody can read, by U+FFFD
  bool directions_removed = false; //!< signs that turn the direction of writing and may hide what is written
};

/**
 * Makes a text fit to stand in XML 1.0. It is not escaped: "<" stays "<".
 *
 * \param text UTF-16. \returns none when nothing needs changing, as nearly always.
 * Ends of lines and tabs become spaces; other control characters, halves of surrogate pairs, U+FFFE and U+FFFF become
 * U+FFFD; bidirectional control characters are left out.
 * Source: XML 1.0 (Fifth Edition), production 2, Char; Unicode, property Bidi_Control (from memory).
 */
std::optional<XmlText> forXml(std::u16string_view text);

} // namespace brushline
