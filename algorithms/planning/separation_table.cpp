// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/separation_table.h"

#include <algorithm>
#include <locale>
#include <sstream>
#include <stdexcept>

namespace brushline {

extern const char *const separationText;

namespace {
std::string plainKind(const std::string &kind) {
  std::string plain;
  for (char c : kind)
    plain += c == '_' || c == '-' || c == '\t' ? ' ' : c >= 'A' && c <= 'Z' ? char(c - 'A' + 'a') : c;
  const size_t first = plain.find_first_not_of(' ');
  return first == std::string::npos ? std::string() : plain.substr(first, plain.find_last_not_of(' ') - first + 1);
}
} // namespace

void SeparationTable::add(const std::string &kind, Length distance) {
  const std::string plain = plainKind(kind);
  if (plain.empty())
    throw std::invalid_argument("a row names no kind");
  if (!distanceLimits.contains(distance.metres()))
    throw std::invalid_argument("the distance of \"" + kind + "\" is not from 0 to 10000 m");
  if (!mDistances.emplace(plain, distance).second)
    throw std::invalid_argument("\"" + kind + "\" stands twice");
}

std::optional<Length> SeparationTable::distance(const std::string &kind) const {
  const auto found = mDistances.find(plainKind(kind));
  return found == mDistances.end() ? std::nullopt : std::optional(found->second);
}

Length SeparationTable::most() const {
  Length most;
  for (const auto &[kind, distance] : mDistances)
    most = std::max(most, distance);
  return most;
}

SeparationTable parseSeparation(const std::string &text) {
  SeparationTable table;
  std::istringstream lines(text);
  std::string line;
  bool header = false;
  for (int number = 1; std::getline(lines, line); ++number) {
    if (!line.empty() && line.back() == '\r')
      line.pop_back();
    if (line.empty() || line[0] == '#')
      continue;
    if (!header) {
      if (line.rfind("kind,distance_m", 0) != 0)
        throw std::invalid_argument("line " + std::to_string(number) + ": the header is not kind,distance_m,note");
      header = true;
      continue;
    }
    const size_t comma = line.find(',');
    const std::string cell =
        comma == std::string::npos ? std::string() : line.substr(comma + 1, line.find(',', comma + 1) - comma - 1);
    std::istringstream reading(cell);
    reading.imbue(std::locale::classic()); // a decimal point, whatever the machine's language
    double metres = 0;
    if (!(reading >> metres) || !(reading >> std::ws).eof())
      throw std::invalid_argument("line " + std::to_string(number) + ": no distance");
    try {
      table.add(line.substr(0, comma), Length::metres(metres));
    } catch (const std::invalid_argument &error) {
      throw std::invalid_argument("line " + std::to_string(number) + ": " + error.what());
    }
  }
  return table;
}

const SeparationTable &builtInSeparation() {
  static const SeparationTable table = parseSeparation(separationText);
  return table;
}

} // namespace brushline
