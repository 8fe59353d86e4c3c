// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/map_scale.h"

#include "quantities/angle.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace brushline {

bool hasRoom(GroundSize what, const Area &room, MapScale scale) {
  return scale.toPaper(what.width) <= room.width * (1 + 1e-9) && scale.toPaper(what.height) <= room.height * (1 + 1e-9);
}

MapScale roundScale(GroundSize what, const Area &room) {
  constexpr double steps[] = {1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 6, 7.5};
  constexpr double largest = 250;
  for (double power = 100;; power *= 10)
    for (const double step : steps)
      if (const MapScale scale{step * power}; scale.number >= largest && hasRoom(what, room, scale))
        return scale;
}

double roundDown(double value) {
  const double power = std::pow(10, std::floor(std::log10(value) + 1e-12));
  for (const double step : {5.0, 2.0})
    if (step * power <= value * (1 + 1e-12))
      return step * power;
  return power;
}

std::vector<std::pair<Spot, Spot>> parallelsAcross(const Area &area, double turn_degrees, double apart) {
  const double turn = Angle::degrees(turn_degrees).radians();
  const double forwardX = std::sin(turn), forwardY = -std::cos(turn); // y grows downward
  const double reach = std::hypot(area.width, area.height) / 2;
  const int each = int(std::floor(reach / apart));
  std::vector<std::pair<Spot, Spot>> lines;
  for (int i = -each; i <= each; ++i) {
    const double x = area.centre().x - forwardY * apart * i, y = area.centre().y + forwardX * apart * i;
    // The stretch of the line inside both pairs of edges.
    double from = -std::numeric_limits<double>::infinity(), to = -from;
    const auto clip = [&](double at, double step, double low, double high) {
      if (std::abs(step) < 1e-12) {
        if (at < low || at > high)
          to = -std::numeric_limits<double>::infinity();
        return;
      }
      const double a = (low - at) / step, b = (high - at) / step;
      from = std::max(from, std::min(a, b));
      to = std::min(to, std::max(a, b));
    };
    clip(x, forwardX, area.left, area.right());
    clip(y, forwardY, area.top, area.bottom());
    if (to - from > 1e-9)
      lines.push_back({{x + forwardX * from, y + forwardY * from}, {x + forwardX * to, y + forwardY * to}});
  }
  return lines;
}

} // namespace brushline
