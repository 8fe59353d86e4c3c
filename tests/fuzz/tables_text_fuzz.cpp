// SPDX-License-Identifier: GPL-2.0-or-later
// Tables of cover and of distances from iron, as text.
#include "fuzz_input.h"

#include "planning/separation_table.h"
#include "sighting/cover_table.h"

#include <stdexcept>

using namespace brushline;

namespace {

void cover(const std::string &text, const std::string &name) try {
  const CoverTable table = parseCoverTable(text);
  for (size_t i = 0; i < table.classes().size(); ++i) {
    const CoverClass &entry = table.at(int(i));
    PROMISED(table.find(entry.name) == int(i));
    for (const Season season : {Season::InLeaf, Season::Bare})
      PROMISED(CoverClass::sightLimits.contains(entry.sightIn(season).metres()));
    PROMISED(!entry.speed_factor || CoverClass::speedLimits.contains(*entry.speed_factor));
    PROMISED(CoverClass::paceLimits.contains(entry.pace_factor));
  }
  const int found = table.find(name);
  PROMISED(found >= -1 && found < int(table.classes().size()));
} catch (const std::invalid_argument &) {
}

void separation(const std::string &text, const std::string &name) try {
  const SeparationTable table = parseSeparation(text);
  PROMISED(table.empty() || SeparationTable::distanceLimits.contains(table.most().metres()));
  if (const auto distance = table.distance(name))
    PROMISED(SeparationTable::distanceLimits.contains(distance->metres()) && !(*distance > table.most()));
} catch (const std::invalid_argument &) {
}

} // namespace

FUZZ(input) {
  static const std::vector<std::string> words = {"class,label,sight_m,sight_bare,speed_f,pace_f,note\n",
                                                 "kind,distance_m,note\n",
                                                 "\n",
                                                 ",",
                                                 "\"",
                                                 "wood",
                                                 "fence",
                                                 "power line",
                                                 "# ",
                                                 "1",
                                                 "0.5",
                                                 "20",
                                                 "1e3",
                                                 "-1",
                                                 "nan",
                                                 "inf",
                                                 " ",
                                                 "\r\n"};
  const std::string name = input.text(12);
  switch (input.upTo(2)) {
  case 0: {
    const std::string text = input.rest();
    cover(text, name);
    separation(text, name);
    break;
  }
  case 1:
    cover("class,label,sight_m,sight_bare,speed_f,pace_f,note\n" + input.wordsOf(words, 40), name);
    break;
  default:
    separation("kind,distance_m,note\n" + input.wordsOf(words, 40), name);
  }
}
