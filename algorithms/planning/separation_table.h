// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/length.h"
#include "shared/limits.h"

#include <map>
#include <optional>
#include <string>

namespace brushline {

/**
 * How far a compass must be from iron and current, by kind. Names count without regard to the case of their letters
 * (ASCII), spaces around them, or whether words are joined by spaces, underscores or hyphens.
 */
class SeparationTable {
public:
  static constexpr Limits distanceLimits{0, 10000, 10};

  //! \throws std::invalid_argument for an empty kind, one that stands twice, or a distance outside the limits.
  void add(const std::string &kind, Length distance);
  //! None when the table does not have the kind.
  std::optional<Length> distance(const std::string &kind) const;
  bool empty() const { return mDistances.empty(); }
  //! The greatest of all.
  Length most() const;

private:
  std::map<std::string, Length> mDistances;
};

//! The built-in table: US Army FM 3-25.26, section 9-3, read in copies. See data/separation.csv.
const SeparationTable &builtInSeparation();

//! Reads a table from text: "#" comment lines, a header "kind,distance_m,note", then rows.
//! \throws std::invalid_argument that names the line.
SeparationTable parseSeparation(const std::string &text);

} // namespace brushline
