// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "support/check.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace brushline::test {

//! A row of check values.
class CheckRow {
public:
  CheckRow(std::map<std::string, std::string> cells, int line) : mCells(std::move(cells)), mLine(line) {}
  //! Throws when there is no such column.
  const std::string &text(const std::string &column) const;
  //! None for an empty cell: nothing was published. Throws for anything else that is no number.
  std::optional<double> maybe(const std::string &column) const;
  //! Throws for an empty cell.
  double number(const std::string &column) const;
  int line() const { return mLine; }

private:
  std::map<std::string, std::string> mCells;
  int mLine;
};

/**
 * A file of check values: "#" lines (source, licence, "# tolerance: COLUMN VALUE UNIT"), a header row, rows.
 * What a column is worth: "# sure:", or for some columns alone "# sure of COLUMN,COLUMN: ..."; for a row, its own cell
 * "sure", "source" or "origin" (read by make_checks.py).
 * Loading throws when the file is missing, has no "# source:" line, a ragged row, or no rows: a test without its data
 * fails.
 */
class CheckValues {
public:
  //! \param path relative to the tests folder, for example "walking/data/slope_table.csv".
  explicit CheckValues(const std::string &path);

  const std::vector<CheckRow> &rows() const { return mRows; }
  //! The tolerance of a column, in the column's unit. Throws when the file gives none.
  double tolerance(const std::string &column) const;

  //! A result beside a row's cell, at the column's tolerance. Throws for an empty cell.
  Check check(const CheckRow &row, const std::string &column, double got) const;
  //! The same at a tolerance of its own, in the column's unit.
  Check check(const CheckRow &row, const std::string &column, double got, double tolerance) const;
  //! A direction, degrees: whole turns do not count.
  Check checkTurn(const CheckRow &row, const std::string &column, double gotDegrees) const;
  //! A word.
  Check check(const CheckRow &row, const std::string &column, const std::string &got) const;

private:
  Check placed(Check check, const CheckRow &row) const;

  std::string mPath;
  std::string mSource;
  std::vector<CheckRow> mRows;
  std::map<std::string, double> mTolerances;
  std::map<std::string, std::string> mUnits;
};

} // namespace brushline::test
