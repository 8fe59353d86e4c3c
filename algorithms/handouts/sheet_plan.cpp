// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/sheet_plan.h"

#include <algorithm>
#include <cmath>

namespace brushline {

namespace {

constexpr double roundingOfPaper = 1;

SheetPlan filled(PaperSize sheet, PaperSize card, int most) {
  const auto fit = [](double room, double length) { return int(std::floor((room + roundingOfPaper) / length)); };
  int columns = fit(sheet.width, card.width), rows = fit(sheet.height, card.height);
  if (most > 0 && columns > 0 && rows > 0) {
    columns = std::min(columns, most);
    rows = std::min(rows, (most + columns - 1) / columns);
  }
  SheetPlan plan{sheet, {}};
  const double left = (sheet.width - columns * card.width) / 2, top = (sheet.height - rows * card.height) / 2;
  for (int row = 0; row < rows; ++row)
    for (int column = 0; column < columns; ++column)
      if (most == 0 || int(plan.cards.size()) < most)
        plan.cards.push_back({left + column * card.width, top + row * card.height, card.width, card.height});
  return plan;
}

} // namespace

SheetPlan planSheet(PaperSize sheet, PaperSize card, int most) {
  SheetPlan upright = filled(sheet, card, most), across = filled(sheet.turned(), card, most);
  return across.cards.size() > upright.cards.size() ? across : upright;
}

Drawing cuttingLines(const SheetPlan &plan) {
  std::vector<double> xs, ys;
  const auto remember = [](std::vector<double> &values, double value, double end) {
    const bool atEdge = value < roundingOfPaper || value > end - roundingOfPaper;
    const bool known = std::any_of(values.begin(), values.end(), [&](double v) { return std::abs(v - value) < 1e-6; });
    if (!atEdge && !known)
      values.push_back(value);
  };
  for (const Area &card : plan.cards) {
    remember(xs, card.left, plan.sheet.width);
    remember(xs, card.right(), plan.sheet.width);
    remember(ys, card.top, plan.sheet.height);
    remember(ys, card.bottom(), plan.sheet.height);
  }
  Drawing drawing;
  for (const double x : xs)
    drawing.add(DrawnShape{{{x, 0}, {x, plan.sheet.height}}, false, 0.15, 0.4, {}, true});
  for (const double y : ys)
    drawing.add(DrawnShape{{{0, y}, {plan.sheet.width, y}}, false, 0.15, 0.4, {}, true});
  return drawing;
}

} // namespace brushline
