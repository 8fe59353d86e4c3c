// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/dial_drawing.h"

#include "handouts/text_fit.h"

#include <cmath>

namespace brushline {

namespace {
// Clockwise from upward.
Spot around(Spot centre, double radius, Angle turn) {
  return {centre.x + radius * std::sin(turn.radians()), centre.y - radius * std::cos(turn.radians())};
}
} // namespace

Drawing drawDial(const DialPicture &dial, const Area &area, const TextRuler &ruler) {
  Drawing drawing;
  const double radius = area.width / 2 * 0.96;
  const Spot centre{area.left + area.width / 2, area.bottom() - radius - 0.02 * area.width};
  const double hair = 0.2, thick = 0.45;

  // The housing; its middle is white so that a shaded row does not grey the needle.
  drawing.add(DrawnDisc{centre, radius, thick, 0, 1.0});
  constexpr int ticks = 36;
  for (int i = 0; i < ticks; ++i) {
    const Angle turn = Angle::degrees(360.0 * i / ticks) - dial.turn;
    const bool quarter = i % (ticks / 4) == 0;
    drawing.line(around(centre, radius, turn), around(centre, radius * (quarter ? 0.82 : 0.9), turn),
                 quarter ? thick : hair);
  }
  const Face letter{std::max(smallestText, area.width * 0.5), true};
  for (int i = 0; i < 4; ++i) {
    const Spot at = around(centre, radius * 0.64, Angle::degrees(90.0 * i) - dial.turn);
    drawing.add(DrawnText{{at.x, at.y + letter.em() * capHeight / 2}, dial.letters[size_t(i)], letter, Align::Centre});
  }

  // The needle: its north end black, its south end white.
  if (dial.needle) {
    const Angle needle = *dial.needle - dial.turn;
    const double length = radius * 0.44, half = radius * 0.1;
    const Spot tip = around(centre, length, needle), tail = around(centre, -length, needle);
    const Spot right = around(centre, half, needle + Angle::degrees(90)),
               left = around(centre, -half, needle + Angle::degrees(90));
    drawing.add(DrawnShape{{left, tip, right}, true, hair, 0, 0.0});
    drawing.add(DrawnShape{{left, tail, right}, true, hair, 0, 1.0});
  }

  // Over it the number, the arrow that shows the way to go, and the index line.
  const Face face = narrowed(dial.number, Face{std::max(smallestText, area.width * 0.5), true}, area.width, ruler);
  const double numberLine = area.top + face.em() * capHeight, arrow = numberLine + 0.4, edge = centre.y - radius;
  const double wing = std::max(0.9, radius * 0.16), head = std::min(2 * wing, edge - arrow);
  drawing.add(DrawnText{{centre.x, numberLine}, dial.number, face, Align::Centre});
  drawing.line({centre.x, centre.y - radius * 0.8}, {centre.x, arrow + head / 2}, thick);
  drawing.add(DrawnShape{{{centre.x, arrow}, {centre.x - wing, arrow + head}, {centre.x + wing, arrow + head}},
                         true,
                         0,
                         0,
                         0.0});
  return drawing;
}

} // namespace brushline
