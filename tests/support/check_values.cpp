// SPDX-License-Identifier: GPL-2.0-or-later
#include "support/check_values.h"

#include <fstream>
#include <sstream>
#include <stdexcept>

namespace brushline::test {

namespace {
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
} // namespace

const std::string &CheckRow::text(const std::string &column) const {
  const auto found = mCells.find(column);
  if (found == mCells.end())
    throw std::runtime_error("no column " + column);
  return found->second;
}

std::optional<double> CheckRow::maybe(const std::string &column) const {
  const std::string &cell = text(column);
  if (cell.empty())
    return std::nullopt;
  std::istringstream in(cell);
  in.imbue(std::locale::classic());
  double value;
  std::string rest;
  if (!(in >> value) || (in >> rest))
    throw std::runtime_error("line " + std::to_string(mLine) + ", " + column + ": no number: " + cell);
  return value;
}

double CheckRow::number(const std::string &column) const {
  const auto value = maybe(column);
  if (!value)
    throw std::runtime_error("line " + std::to_string(mLine) + ", " + column + ": empty");
  return *value;
}

CheckValues::CheckValues(const std::string &path) : mPath(path) {
  std::ifstream in(std::string(BRUSHLINE_TESTS_DIR) + "/" + path);
  if (!in)
    throw std::runtime_error("missing check values: " + path);
  std::vector<std::string> header;
  std::string line;
  for (int number = 1; std::getline(in, line); ++number) {
    if (line.rfind("# source:", 0) == 0)
      mSource = line.size() > 10 ? line.substr(10) : "";
    if (line.rfind("# tolerance:", 0) == 0) {
      std::istringstream words(line.substr(12));
      std::string column;
      double value;
      if (!(words >> column >> value))
        throw std::runtime_error(path + ": unreadable tolerance: " + line);
      mTolerances[column] = value;
      words >> mUnits[column];
    }
    if (line.empty() || line[0] == '#')
      continue;
    const std::vector<std::string> cells = cellsOf(line);
    if (header.empty()) {
      header = cells;
      continue;
    }
    if (cells.size() != header.size())
      throw std::runtime_error(path + ": line " + std::to_string(number) + " is ragged");
    std::map<std::string, std::string> row;
    for (size_t i = 0; i < cells.size(); ++i)
      row[header[i]] = cells[i];
    mRows.emplace_back(std::move(row), number);
  }
  if (mSource.empty())
    throw std::runtime_error(path + " names no source");
  if (mRows.empty())
    throw std::runtime_error(path + " has no rows");
}

double CheckValues::tolerance(const std::string &column) const {
  const auto found = mTolerances.find(column);
  if (found == mTolerances.end())
    throw std::runtime_error(mPath + " gives no tolerance for " + column);
  return found->second;
}

Check CheckValues::check(const CheckRow &row, const std::string &column, double got) const {
  return check(row, column, got, tolerance(column));
}

Check CheckValues::check(const CheckRow &row, const std::string &column, double got, double tolerance) const {
  const auto unit = mUnits.find(column);
  return placed(checkOf(column, "", got, row.number(column), tolerance, unit == mUnits.end() ? "" : unit->second, ""),
                row);
}

Check CheckValues::checkTurn(const CheckRow &row, const std::string &column, double gotDegrees) const {
  return check(row, column, turnedTo(gotDegrees, row.number(column)));
}

Check CheckValues::check(const CheckRow &row, const std::string &column, const std::string &got) const {
  return placed(checkOf(column, "", got, row.text(column), ""), row);
}

Check CheckValues::placed(Check check, const CheckRow &row) const {
  check.where = "line " + std::to_string(row.line());
  check.file = mPath;
  check.line = row.line();
  check.source = mSource;
  return check;
}

} // namespace brushline::test
