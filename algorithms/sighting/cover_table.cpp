// SPDX-License-Identifier: GPL-2.0-or-later
#include "sighting/cover_table.h"

#include <algorithm>
#include <array>
#include <locale>
#include <sstream>
#include <stdexcept>
#include <utility>

namespace brushline {

extern const char *const coverOwnText;
extern const char *const coverEsaWorldCoverText;
extern const char *const coverCorineText;
extern const char *const coverNlcdText;
extern const char *const coverMapSymbolsText;

namespace {

std::string keyOf(const std::string &name) {
  // By hand: the host sets the locale of the C functions, and in some "I" is no capital "i".
  const auto blank = [](char c) { return c == ' ' || (c >= '\t' && c <= '\r'); };
  const auto first = std::find_if_not(name.begin(), name.end(), blank);
  const auto last = std::find_if_not(name.rbegin(), std::make_reverse_iterator(first), blank).base();
  std::string key(first, last);
  std::transform(key.begin(), key.end(), key.begin(),
                 [](char c) { return c >= 'A' && c <= 'Z' ? char(c - 'A' + 'a') : c; });
  return key;
}

std::vector<std::string> cellsOf(const std::string &line) {
  std::vector<std::string> cells(1);
  bool quoted = false;
  for (size_t i = 0; i < line.size(); ++i) {
    const char c = line[i];
    if (c == '"' && quoted && i + 1 < line.size() && line[i + 1] == '"') {
      cells.back() += c;
      ++i;
    } else if (c == '"') {
      quoted = !quoted;
    } else if (c == ',' && !quoted) {
      cells.emplace_back();
    } else if (c != '\r') {
      cells.back() += c;
    }
  }
  return cells;
}

[[noreturn]] void failLine(int number, const std::string &what) {
  throw std::invalid_argument("line " + std::to_string(number) + " of the cover table: " + what);
}

std::optional<double> numberIn(const std::string &cell, const Limits &limits, int line, const char *column) {
  if (keyOf(cell).empty())
    return std::nullopt;
  std::istringstream in(cell);
  in.imbue(std::locale::classic());
  double value;
  std::string rest;
  if (!(in >> value) || (in >> rest) || !limits.contains(value))
    failLine(line, std::string(column) + " is \"" + cell + "\"");
  return value;
}

} // namespace

void CoverTable::add(CoverClass entry) {
  const std::string key = keyOf(entry.name);
  if (key.empty())
    throw std::invalid_argument("a class of cover has no name");
  if (!mByName.emplace(key, int(mClasses.size())).second)
    throw std::invalid_argument("the class of cover \"" + entry.name + "\" stands twice");
  mClasses.push_back(std::move(entry));
}

int CoverTable::find(const std::string &name) const {
  const auto found = mByName.find(keyOf(name));
  return found == mByName.end() ? -1 : found->second;
}

CoverTable parseCoverTable(const std::string &text) {
  static const std::vector<std::string> header = {"class",   "label",  "sight_m", "sight_bare",
                                                  "speed_f", "pace_f", "note"};
  CoverTable table;
  bool headed = false;
  std::istringstream lines(text);
  std::string line;
  for (int number = 1; std::getline(lines, line); ++number) {
    if (keyOf(line).empty() || line[0] == '#')
      continue;
    const std::vector<std::string> cells = cellsOf(line);
    if (!headed) {
      if (cells != header)
        failLine(number, "the header is not class,label,sight_m,sight_bare,speed_f,pace_f,note");
      headed = true;
      continue;
    }
    if (cells.size() != header.size())
      failLine(number, "it has " + std::to_string(cells.size()) + " cells instead of 7");
    CoverClass entry;
    entry.name = cells[0];
    entry.label = cells[1].empty() ? cells[0] : cells[1];
    const auto sight = numberIn(cells[2], CoverClass::sightLimits, number, "sight_m");
    if (!sight)
      failLine(number, "sight_m is empty");
    entry.sight = Length::metres(*sight);
    if (const auto bare = numberIn(cells[3], CoverClass::sightLimits, number, "sight_bare"))
      entry.sight_bare = Length::metres(*bare);
    entry.speed_factor = numberIn(cells[4], CoverClass::speedLimits, number, "speed_f");
    entry.pace_factor = numberIn(cells[5], CoverClass::paceLimits, number, "pace_f").value_or(1);
    entry.note = cells[6];
    try {
      table.add(std::move(entry));
    } catch (const std::invalid_argument &error) {
      failLine(number, error.what());
    }
  }
  if (!headed)
    throw std::invalid_argument("the cover table has no header");
  return table;
}

const CoverTable &builtInCover(CoverLegend legend) {
  static const std::array<CoverTable, 5> tables = {
      parseCoverTable(coverOwnText), parseCoverTable(coverEsaWorldCoverText), parseCoverTable(coverCorineText),
      parseCoverTable(coverNlcdText), parseCoverTable(coverMapSymbolsText)};
  return tables[size_t(legend)];
}

} // namespace brushline
