// SPDX-License-Identifier: GPL-2.0-or-later
#include "sighting/cover_map.h"

#include "shared/spatial_index.h"

#include <boost/geometry/algorithms/assign.hpp>
#include <boost/geometry/algorithms/expand.hpp>
#include <boost/geometry/geometries/box.hpp>
#include <boost/geometry/geometries/point_xy.hpp>
#include <boost/geometry/geometries/segment.hpp>

#include <algorithm>
#include <cmath>
#include <utility>

namespace brushline {

namespace {
namespace bg = boost::geometry;
using IndexPoint = bg::model::d2::point_xy<double>;
using IndexBox = bg::model::box<IndexPoint>;
using IndexSegment = bg::model::segment<IndexPoint>;
using PatchIndex = SpatialIndex<IndexBox, size_t>; // a patch

// Edges that follow each other, with the box around them.
struct Chain {
  double centre_x, centre_y, half_width, half_height;
  size_t first, last; // points; edges run from first to last
};
constexpr size_t chainEdges = 16;
} // namespace

struct CoverMap::Index {
  struct Patch {
    int cover;
    size_t first_chain, last_chain;
  };
  std::vector<MapPoint> points; // rings one after the other, closed
  std::vector<Chain> chains;
  std::vector<Patch> patches;
  PatchIndex boxes;

  void addRing(const std::vector<MapPoint> &ring, IndexBox &box) {
    if (ring.size() < 3)
      return;
    size_t first = points.size();
    points.insert(points.end(), ring.begin(), ring.end());
    if (ring.front().x != ring.back().x || ring.front().y != ring.back().y)
      points.push_back(ring.front());
    for (const MapPoint &point : ring)
      bg::expand(box, IndexPoint(point.x, point.y));
    while (first + 1 < points.size()) {
      const size_t last = std::min(first + chainEdges, points.size() - 1);
      double left = points[first].x, right = left, bottom = points[first].y, top = bottom;
      for (size_t i = first + 1; i <= last; ++i) {
        left = std::min(left, points[i].x);
        right = std::max(right, points[i].x);
        bottom = std::min(bottom, points[i].y);
        top = std::max(top, points[i].y);
      }
      // A little wider than it is, for the rounding of great coordinates: in millions of metres a nanometre, and then a
      // ring would be crossed an odd number of times.
      const double x = (left + right) / 2, y = (bottom + top) / 2;
      constexpr double rounding = 1e-15;
      chains.push_back({x, y, (right - left) / 2 + rounding * std::abs(x), (top - bottom) / 2 + rounding * std::abs(y),
                        first, last});
      first = last;
    }
  }

  // Where the endless line through two points crosses a patch's borders, as shares of the way between them, sorted.
  void crossings(const Patch &patch, MapPoint from, MapPoint to, std::vector<double> &shares) const {
    shares.clear();
    const double dx = to.x - from.x, dy = to.y - from.y;
    const double squared = dx * dx + dy * dy;
    const auto side = [&](const MapPoint &p) { return dx * (p.y - from.y) - dy * (p.x - from.x); };
    for (size_t c = patch.first_chain; c < patch.last_chain; ++c) {
      const Chain &chain = chains[c];
      const double centre = dx * (chain.centre_y - from.y) - dy * (chain.centre_x - from.x);
      // A little wider than the box, for its rounding.
      if (std::abs(centre) >
          (std::abs(dx) * chain.half_height + std::abs(dy) * chain.half_width) * (1 + 1e-9) + 1e-9 * std::sqrt(squared))
        continue;
      double before = side(points[chain.first]);
      for (size_t i = chain.first + 1; i <= chain.last; ++i) {
        const double here = side(points[i]);
        // A point on the line counts to its left, always; so each ring is crossed an even number of times.
        if ((before >= 0) != (here >= 0)) {
          // From the left to the right point, whichever way the edge runs: neighbours get the very same crossing.
          const bool leftFirst = before >= 0;
          const MapPoint &left = points[leftFirst ? i - 1 : i], &right = points[leftFirst ? i : i - 1];
          const double leftSide = leftFirst ? before : here, rightSide = leftFirst ? here : before;
          const double share = leftSide / (leftSide - rightSide);
          const double x = left.x + share * (right.x - left.x) - from.x;
          const double y = left.y + share * (right.y - left.y) - from.y;
          shares.push_back((x * dx + y * dy) / squared);
        }
        before = here;
      }
    }
    std::sort(shares.begin(), shares.end());
  }
};

CoverMap::CoverMap(std::vector<CoverPatch> given, const Progress &progress) : mIndex(std::make_unique<Index>()) {
  std::vector<PatchIndex::Entry> entries;
  size_t points = 0;
  for (const CoverPatch &patch : given)
    for (const auto &ring : patch.rings)
      points += ring.size() + 1;
  mIndex->points.reserve(points);
  mIndex->patches.reserve(given.size());
  entries.reserve(given.size());
  size_t done = 0;
  for (CoverPatch &patch : given) {
    if (++done % 1024 == 0)
      progress.check();
    IndexBox box;
    bg::assign_inverse(box);
    const size_t firstChain = mIndex->chains.size();
    for (const auto &ring : patch.rings)
      mIndex->addRing(ring, box);
    if (mIndex->chains.size() > firstChain)
      entries.emplace_back(box, mIndex->patches.size());
    mIndex->patches.push_back({patch.cover, firstChain, mIndex->chains.size()});
    patch.rings = {};
  }
  mIndex->boxes = PatchIndex(std::move(entries), progress);
}
CoverMap::~CoverMap() = default;
CoverMap::CoverMap(CoverMap &&) noexcept = default;
CoverMap &CoverMap::operator=(CoverMap &&) noexcept = default;

std::vector<CoverStretch> CoverMap::along(MapPoint from, MapPoint to) const {
  // 1. Where each patch begins and ends on the line.
  struct Event {
    double at;
    size_t patch;
    bool enters;
  };
  std::vector<Event> events;
  events.reserve(32);
  if (from.x == to.x && from.y == to.y)
    to.x = std::nextafter(to.x + 1e-12, HUGE_VAL); // a direction, so that inside and outside can be told
  std::vector<double> shares;
  shares.reserve(16);
  for (const auto &entry : mIndex->boxes.meeting(IndexSegment({from.x, from.y}, {to.x, to.y}))) {
    mIndex->crossings(mIndex->patches[entry.second], from, to, shares);
    for (size_t i = 0; i + 1 < shares.size(); i += 2) {
      const double start = std::max(shares[i], 0.0), end = std::min(shares[i + 1], 1.0);
      if (!(start < end))
        continue;
      events.push_back({start, entry.second, true});
      events.push_back({end, entry.second, false});
    }
  }
  std::sort(events.begin(), events.end(), [](const Event &a, const Event &b) { return a.at < b.at; });

  // 2. Between events the first patch counts.
  constexpr double sliver = 1e-9; // what rounding leaves between neighbours
  std::vector<CoverStretch> stretches;
  const auto append = [&](double end, int cover, bool overlapping) {
    const double start = stretches.empty() ? 0 : stretches.back().to;
    const bool same =
        !stretches.empty() && stretches.back().cover == cover && stretches.back().overlapping == overlapping;
    if (same || (!stretches.empty() && end - start <= sliver))
      stretches.back().to = std::max(start, end);
    else if (end - start > sliver)
      stretches.push_back({end, cover, overlapping});
  };
  std::vector<size_t> active; // sorted
  for (size_t i = 0; i < events.size();) {
    const double at = events[i].at;
    append(at, active.empty() ? -1 : mIndex->patches[active.front()].cover, active.size() > 1);
    for (; i < events.size() && events[i].at == at; ++i) {
      const auto found = std::lower_bound(active.begin(), active.end(), events[i].patch);
      if (events[i].enters)
        active.insert(found, events[i].patch);
      else if (found != active.end() && *found == events[i].patch)
        active.erase(found);
    }
  }
  append(1, -1, false);
  if (stretches.empty())
    stretches.push_back({1, -1, false});
  stretches.back().to = 1;
  return stretches;
}

} // namespace brushline
