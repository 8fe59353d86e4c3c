// SPDX-License-Identifier: GPL-2.0-or-later
#include "sighting/plain_ring.h"

#include <algorithm>
#include <cmath>

namespace brushline {

bool isPlainRing(const std::vector<MapPoint> &ring) {
  constexpr size_t mostEdges = 64; // each is held against each
  if (ring.size() < 4 || ring.size() > mostEdges + 1 || ring.front().x != ring.back().x ||
      ring.front().y != ring.back().y)
    return false;
  const size_t edges = ring.size() - 1;
  for (size_t i = 0; i < edges; ++i) {
    const MapPoint &a = ring[i], &b = ring[i + 1], &c = ring[i + 1 < edges ? i + 2 : 1];
    const double dot = (b.x - a.x) * (c.x - b.x) + (b.y - a.y) * (c.y - b.y);
    const double cross = (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x);
    if (!(dot > 0 || std::abs(cross) > 1e-6 * std::abs(dot)))
      return false;
    const auto [left, right] = std::minmax(a.x, b.x);
    const auto [bottom, top] = std::minmax(a.y, b.y);
    for (size_t k = i + 2; k < edges - (i == 0); ++k) {
      const MapPoint &p = ring[k], &q = ring[k + 1];
      const bool apart = std::max(p.x, q.x) < left || std::min(p.x, q.x) > right || std::max(p.y, q.y) < bottom ||
                         std::min(p.y, q.y) > top;
      if (!apart)
        return false;
    }
  }
  return true;
}

} // namespace brushline
