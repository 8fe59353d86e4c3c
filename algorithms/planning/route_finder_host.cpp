// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/route_finder_host.h"

#include "shared/base_algorithm.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace brushline {

FoundRoute RouteFinder::find(const PlacePair &pair, bool everywhere, const Progress &progress, const Told &told) {
  const EffortGrid &grid = mSetting.ground.grid();
  const CellPosition start = mSetting.ground.cellOf(pair.start), end = mSetting.ground.cellOf(pair.end);
  // What a plan costs more than the quickest way decides how far beyond the end its turns may lie.
  const EffortSurface::Goal goal{end, Duration::seconds(2 * mSetting.rule.turn.seconds() + 60)};
  const double cells = double(grid.columns()) * double(grid.rows());
  mSurface.search({start}, everywhere ? nullptr : &goal, progress,
                  [&](size_t settled) { told(0.7 * double(settled) / cells); });
  mEverywhere = everywhere;
  FoundRoute found;
  if (!std::isfinite(mSurface.secondsTo(end))) {
    found.reason = whyNoWay(start, end, progress);
    return found;
  }
  told(0.7);
  std::vector<TurnPoint> places;
  for (size_t i = 0; i < mSetting.places.size(); ++i)
    if (const CellPosition at = mSetting.ground.cellOf(mSetting.places[i]);
        grid.contains(at) && grid.isOpen(int64_t(at.column), int64_t(at.row)))
      places.push_back({at, int(i)});
  const LegPlanner planner(grid, mSetting.pace, mSetting.rule, allowed());
  const auto plan = planner.plan(mSurface, start, end, places, progress);
  if (!plan) {
    const auto bends = planner.pulledTight(mSurface.wayTo(end), progress);
    found.reason =
        tr("there is a way, but none of %1 legs or fewer was found; the quickest, pulled tight, has %2. Raise "
           "MAX_LEGS.")
            .arg(mSetting.rule.most_legs)
            .arg(std::max<int>(1, int(bends.size()) - 1));
    return found;
  }
  std::vector<CellPosition> points;
  for (const TurnPoint &point : plan->points) {
    points.push_back(point.at);
    found.at_place.push_back(point.place >= 0);
    found.places.push_back(mSetting.ground.placeOf(point.at));
  }
  found.places.front() = pair.start;
  found.places.back() = pair.end;
  found.points = mSetting.ground.mapped(points, mSetting.crs);
  double before = pair.start_x;
  for (QgsPointXY &point : found.points) {
    point.setX(mSetting.from_places.beside(point.x(), before));
    before = point.x();
  }
  for (size_t i = 1; i < points.size(); ++i)
    found.walking =
        found.walking + mSetting.walked(found.places[i - 1], found.places[i]).value_or(Duration::seconds(NAN));
  if (!std::isfinite(found.walking.seconds())) {
    found.reason =
        tr("the legs found cross, by a hair, ground that nobody walks or that has no height. Move start or end "
           "a few metres away from it, or give smaller CELLs.");
    return found;
  }
  if (std::isfinite(grid.legSeconds(start, end, mSetting.pace)))
    found.straight = mSetting.walked(pair.start, pair.end);
  told(1);
  return found;
}

QString RouteFinder::described(const EffortSurface::Enclosure &enclosure) const {
  size_t all = 0;
  std::vector<std::pair<size_t, int>> kinds;
  for (const auto &[kind, count] : enclosure.borders) {
    all += count;
    kinds.emplace_back(count, kind);
  }
  std::sort(kinds.rbegin(), kinds.rend());
  // The edge of the land looked at comes last: it lies round everything.
  std::stable_partition(kinds.begin(), kinds.end(), [](const auto &kind) { return kind.second != EffortGrid::edge; });
  QStringList words;
  for (const auto &[count, kind] : kinds)
    words << tr("%1 (%2 % of its border, nearest after %3 m)")
                 .arg(mSetting.ground.inWords(kind),
                      QString::number(std::max(1L, std::lround(100.0 * double(count) / double(all)))),
                      QString::number(
                          std::lround(enclosure.nearest_cells.at(kind) * mSetting.ground.grid().cell().metres())));
  return words.join(QLatin1String(", "));
}

QString RouteFinder::whyNoWay(CellPosition start, CellPosition end, const Progress &progress) {
  const EffortSurface::Enclosure fromStart = mSurface.enclosure(start, progress);
  if (fromStart.cells == 0)
    return tr(
        "no way leads out of the start's own cell: a barrier, or ground that nobody walks, runs through it. Give a "
        "smaller CELL, or move the start.");
  EffortSurface back(mSetting.ground.grid(), mSetting.pace, allowed());
  back.search({end}, nullptr, progress);
  const EffortSurface::Enclosure fromEnd = back.enclosure(end, progress);
  if (fromEnd.cells == 0)
    return tr("no way leads out of the end's own cell: a barrier, or ground that nobody walks, runs through it. Give a "
              "smaller CELL, or move the end.");
  return fromStart.cells <= fromEnd.cells
             ? tr("there is no way: the start is enclosed by %1.").arg(described(fromStart))
             : tr("there is no way: the end is enclosed by %1.").arg(described(fromEnd));
}

std::unique_ptr<RasterOutput> RouteFinder::writeEffort(const ParameterReader &reader, const QString &key,
                                                       const std::vector<PlacePair> &pairs,
                                                       QgsProcessingFeedback *feedback, const Told &told) {
  const EffortGrid &grid = mSetting.ground.grid();
  const FeedbackProgress progress(feedback);
  if (!mEverywhere) {
    std::vector<CellPosition> starts;
    for (const PlacePair &pair : pairs)
      starts.push_back(mSetting.ground.cellOf(pair.start));
    const double cells = double(grid.columns()) * double(grid.rows());
    mSurface.search(starts, nullptr, progress, [&](size_t settled) { told(0.8 * double(settled) / cells); });
  }
  auto output = std::make_unique<RasterOutput>(reader, key, mSetting.ground.extent(), int(grid.columns()),
                                               int(grid.rows()), mSetting.ground.crs());
  constexpr int64_t together = 16;
  std::vector<double> minutes;
  for (int64_t row = 0; row < grid.rows(); row += together) {
    if (feedback->isCanceled())
      throw Cancelled();
    const int64_t last = std::min(row + together, grid.rows());
    minutes.clear();
    for (int64_t r = row; r < last; ++r)
      for (int64_t column = 0; column < grid.columns(); ++column)
        minutes.push_back(double(mSurface.secondsAt(column, r)) / 60);
    output->writeRows(int(row), minutes);
  }
  return output;
}

} // namespace brushline
