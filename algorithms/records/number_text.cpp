// SPDX-License-Identifier: GPL-2.0-or-later
#include "records/number_text.h"

#include <algorithm>
#include <utility>

namespace brushline {

namespace {
bool isDigit(char c) { return c >= '0' && c <= '9'; }

// In this order: a doubled mark of minutes is one of seconds.
constexpr std::pair<std::string_view, std::string_view> spellings[] = {
    {"\u00b0", "*"}, {"\u00ba", "*"},  {"\u02da", "*"},  {"\u2032", "'"}, {"\u2019", "'"},
    {"\u00b4", "'"}, {"\u2033", "\""}, {"\u201d", "\""}, {"''", "\""},    {"\u2212", "-"},
    {"\u2013", "-"}, {"\u2010", "-"},  {"\u2011", "-"},  {"\u00a0", " "}, {"\u202f", " "},
    {"\u2009", " "}, {"\t", " "},      {"\r", " "},      {"\n", " "}};

std::string replaced(std::string text, std::string_view from, std::string_view to) {
  for (size_t at = text.find(from); at != std::string::npos; at = text.find(from, at + to.size()))
    text.replace(at, from.size(), to);
  return text;
}
} // namespace

double WrittenNumber::value() const {
  double whole = 0;
  for (const char digit : digits)
    whole = 10 * whole + (digit - '0');
  return whole + fraction;
}

std::string plainSpelling(std::string_view utf8) {
  std::string text(utf8);
  for (const auto &[from, to] : spellings)
    text = replaced(std::move(text), from, to);
  std::string result;
  for (char c : text) {
    if (c >= 'a' && c <= 'z')
      c = char(c - 'a' + 'A');
    if (static_cast<unsigned char>(c) >= 0x80 || c == '\0')
      c = '?';
    if (c != ' ' || (!result.empty() && result.back() != ' '))
      result += c;
  }
  if (!result.empty() && result.back() == ' ')
    result.pop_back();
  return result;
}

void skipSpaces(std::string_view &text) {
  while (!text.empty() && text.front() == ' ')
    text.remove_prefix(1);
}

std::variant<WrittenNumber, TextFault> takeNumber(std::string_view &text) {
  WrittenNumber number;
  while (!text.empty() && isDigit(text.front())) {
    number.digits += text.front();
    text.remove_prefix(1);
  }
  if (number.digits.empty() || number.digits.size() > 12)
    return TextFault::Unreadable;
  if (text.empty() || (text.front() != '.' && text.front() != ','))
    return number;
  const bool comma = text.front() == ',';
  text.remove_prefix(1);
  std::string decimals;
  while (!text.empty() && isDigit(text.front())) {
    decimals += text.front();
    text.remove_prefix(1);
  }
  if (decimals.empty())
    return TextFault::Unreadable;
  if (comma && decimals.size() == 3 && number.digits.find_first_not_of('0') != std::string::npos)
    return TextFault::Thousands;
  number.decimal = true;
  number.grouped = decimals.size() == 3 && number.digits.size() == 1 && number.digits != "0";
  decimals.resize(std::min<size_t>(decimals.size(), 15)); // what a double holds
  for (auto digit = decimals.rbegin(); digit != decimals.rend(); ++digit)
    number.fraction = (number.fraction + (*digit - '0')) / 10;
  return number;
}

std::variant<double, TextFault> readAmount(std::string_view utf8, AmountKind kind) {
  const std::string spelled = plainSpelling(utf8);
  std::string_view text(spelled);
  if (text.empty())
    return TextFault::Empty;
  if (text.front() == '-')
    return TextFault::Negative;
  const auto taken = takeNumber(text);
  if (const auto *fault = std::get_if<TextFault>(&taken))
    return *fault;
  const auto &number = std::get<WrittenNumber>(taken);
  double value = number.value();
  skipSpaces(text);
  if (kind == AmountKind::Paces) {
    if (!text.empty() && text != "PACES" && text != "PACE")
      return TextFault::Unreadable;
  } else if (text == "KM") {
    value *= 1000;
  } else if (!text.empty() && text != "M" && text != "METRES" && text != "METERS" && text != "METRE" &&
             text != "METER") {
    return TextFault::Unreadable;
  }
  if (number.grouped && text != "KM")
    return TextFault::Thousands;
  if (!(value > 0))
    return TextFault::Zero;
  return value;
}

} // namespace brushline
