// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/length.h"
#include "shared/limits.h"

#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

namespace brushline {

//! Whether the leaves are out. The numbers are those of the parameter SEASON.
enum class Season { InLeaf = 0, Bare = 1 };

//! Whose class names or codes a built-in table has. The numbers are those of the parameter COVER_LEGEND.
enum class CoverLegend { Own = 0, EsaWorldCover = 1, Corine = 2, Nlcd = 3, MapSymbols = 4 };

//! What is known of a class of cover.
struct CoverClass {
  std::string name;                         //!< as it stands in the layer
  std::string label;                        //!< plain words; may equal the name
  Length sight;                             //!< half the marks are clear, in leaf
  std::optional<Length> sight_bare;         //!< the same when the leaves are off; none: as in leaf
  std::optional<double> speed_factor = 1.0; //!< of the speed off trails; none: nobody walks there
  double pace_factor = 1;                   //!< of the number of paces
  std::string note;

  Length sightIn(Season season) const { return season == Season::Bare && sight_bare ? *sight_bare : sight; }

  static constexpr Limits sightLimits{0.5, 10000, 100};
  static constexpr Limits speedLimits{0.01, 3, 1};
  static constexpr Limits paceLimits{0.5, 3, 1};
};

//! Classes of cover by name.
class CoverTable {
public:
  //! \throws std::invalid_argument when a name is empty or stands twice.
  void add(CoverClass entry);
  //! The index of a class, or -1. Spaces around the name do not count, nor does the case of its letters (ASCII).
  int find(const std::string &name) const;
  const CoverClass &at(int index) const { return mClasses[size_t(index)]; }
  const std::vector<CoverClass> &classes() const { return mClasses; }

private:
  std::vector<CoverClass> mClasses;
  std::unordered_map<std::string, int> mByName;
};

/**
 * Reads a table from text: "#" comment lines, then comma separated with the header "class,label,sight_m,sight_bare,
 * speed_f,pace_f,note"; text may stand in double quotes. An empty sight_bare is as in leaf, an empty speed_f nobody
 * walks there.
 *
 * \throws std::invalid_argument that names the line.
 */
CoverTable parseCoverTable(const std::string &text);

//! A built-in table.
const CoverTable &builtInCover(CoverLegend legend);

} // namespace brushline
