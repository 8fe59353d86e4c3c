// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "handouts/card_plan.h"

#include <string>

namespace brushline::test {

inline CardLeg cardLeg(int number) {
  CardLeg leg;
  leg.number = number;
  leg.dial = std::to_string(100 + (number * 37) % 260);
  leg.unit = "o";
  leg.back = "back " + std::to_string((number * 53) % 360) + "o";
  leg.paces = std::to_string(200 + (number * 71) % 700);
  leg.minutes = std::to_string(3 + number % 9);
  leg.metres = std::to_string(150 + (number * 31) % 200);
  leg.from = "from Split Boulder";
  leg.to = "to Twin Tamaracks";
  leg.details = {"5 sightings of about 57 paces", "marks at 55, 125, 195, 252 paces"};
  leg.extras = {"tall forest; one sees 9 m; up 2 m, down 4 m"};
  return leg;
}

inline CardContents cardContents(int legs, bool pictures = false, bool profile = false) {
  CardContents contents;
  contents.title = "Camp to stand";
  contents.walker = "Joff (12)";
  contents.way = "way out, 2026-11-25";
  contents.totals = "7 legs, 1446 m, 2399 paces, 51 min, up 29 m, down 43 m";
  for (int i = 1; i <= legs; ++i) {
    contents.legs.push_back(cardLeg(i));
    if (pictures)
      contents.legs.back().picture = DialPicture{contents.legs.back().dial, Angle::degrees(30.0 * i), Angle()};
    if (i % 4 == 0)
      contents.legs.back().warnings = {"Crosses 84 m of lake, pond or river, which cannot be walked."};
  }
  contents.notes = {"Declination 17.0 W +- 0.4 on 2026-11-25. It is in the dial numbers already: set them as printed.",
                    "The paces are those of Joff (12), nobody else's."};
  contents.cautions = {
      "Knives, phones, cars, wire fences and power lines turn the needle: keep away from iron and current.",
      "The line knows nothing of cliffs, water or thicket: look, go round, come back to it."};
  contents.profile = profile;
  contents.words.table = {"leg", "dial", "paces", "from, to", "min", "m", "none", "and %1 more"};
  contents.words.page = "card %1 of %2";
  contents.words.more = "goes on: card %1";
  contents.words.turn_back = "Turn back at";
  contents.words.told = "Told (who)";
  contents.words.back_by = "back by";
  return contents;
}

} // namespace brushline::test
