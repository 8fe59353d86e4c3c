// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/label_places.h"

#include "quantities/angle.h"

#include <algorithm>
#include <cmath>

namespace brushline {

double lengthInside(const std::pair<Spot, Spot> &line, const Area &area) {
  const auto [a, b] = line;
  double from = 0, to = 1;
  const auto clip = [&](double start, double step, double low, double high) {
    if (std::abs(step) < 1e-12) {
      if (start < low || start > high)
        to = -1;
      return;
    }
    const double first = (low - start) / step, second = (high - start) / step;
    from = std::max(from, std::min(first, second));
    to = std::min(to, std::max(first, second));
  };
  clip(a.x, b.x - a.x, area.left, area.right());
  clip(a.y, b.y - a.y, area.top, area.bottom());
  return to > from ? (to - from) * std::hypot(b.x - a.x, b.y - a.y) : 0;
}

namespace {

double shared(const Area &a, const Area &b) {
  const double width = std::min(a.right(), b.right()) - std::max(a.left, b.left);
  const double height = std::min(a.bottom(), b.bottom()) - std::max(a.top, b.top);
  return width > 0 && height > 0 ? width * height : 0;
}

Area movedInside(Area area, const Area &inside) {
  area.left = std::clamp(area.left, inside.left, std::max(inside.left, inside.right() - area.width));
  area.top = std::clamp(area.top, inside.top, std::max(inside.top, inside.bottom() - area.height));
  return area;
}

} // namespace

std::vector<PlacedLabel> placeLabels(const std::vector<LabelWish> &wishes,
                                     const std::vector<std::pair<Spot, Spot>> &lines, const Area &inside) {
  constexpr double steps[] = {0, 1.5, 3.5, 6, 9, 13, 18};
  constexpr int directions = 16;
  constexpr double labelPrice = 40, spotPrice = 40, linePrice = 2.5, distancePrice = 0.7; // per mm2, mm2, mm, mm
  std::vector<PlacedLabel> placed;
  for (const LabelWish &wish : wishes) {
    PlacedLabel best;
    double least = -1;
    for (const double step : steps)
      for (int i = 0; i < directions; ++i) {
        const double turn = 2 * Angle::pi * (i + 0.5) / directions, x = std::sin(turn), y = -std::cos(turn);
        // The label's middle, so far out that its nearest edge keeps clear of the spot.
        const double out = std::min(std::abs(x) > 1e-9 ? wish.width / 2 / std::abs(x) : 1e9,
                                    std::abs(y) > 1e-9 ? wish.height / 2 / std::abs(y) : 1e9);
        const double distance = wish.clear + step + out;
        const Area area{wish.anchor.x + x * distance - wish.width / 2, wish.anchor.y + y * distance - wish.height / 2,
                        wish.width, wish.height};
        if (!inside.holds(area))
          continue;
        double cost = step * distancePrice + 1e-3 * i;
        const Area roomy = area.grown(0.3);
        for (const PlacedLabel &other : placed)
          cost += labelPrice * shared(roomy, other.area);
        for (const LabelWish &other : wishes)
          cost += spotPrice * shared(area, Area{other.anchor.x, other.anchor.y, 0, 0}.grown(0.9));
        for (const auto &line : lines)
          if (least < 0 || cost < least)
            cost += linePrice * lengthInside(line, roomy);
        if (least < 0 || cost < least) {
          least = cost;
          best = {area, step >= 3};
        }
      }
    if (least < 0)
      best = {movedInside({wish.anchor.x + wish.clear, wish.anchor.y + wish.clear, wish.width, wish.height}, inside),
              true};
    placed.push_back(best);
  }
  return placed;
}

} // namespace brushline
