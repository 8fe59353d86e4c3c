// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/shapes.h"

#include "shared/space.h"
#include "shared/spatial_index.h"

#include <boost/geometry/algorithms/assign.hpp>
#include <boost/geometry/algorithms/expand.hpp>

#include <algorithm>
#include <tuple>
#include <utility>

namespace brushline {

namespace {
namespace bg = boost::geometry;
using StretchIndex = SpatialIndex<SpaceBox, ShapeStretch>;
using AreaIndex = SpatialIndex<SpaceBox, size_t>;

constexpr size_t stretchEdges = 16;

// Around places that follow each other, and the geodesics between them.
SpaceBox around(const Place *first, const Place *last) {
  SpaceBox box;
  bg::assign_inverse(box);
  double most = 0;
  SpacePoint before = inSpace(*first);
  bg::expand(box, before);
  for (const Place *place = first + 1; place <= last; ++place) {
    const SpacePoint here = inSpace(*place);
    bg::expand(box, here);
    most = std::max(most, bulge(before, here));
    before = here;
  }
  return grown(box, most + spaceRounding);
}
} // namespace

struct Shapes::Index {
  std::vector<Shape> shapes;
  StretchIndex boxes;
  AreaIndex areas; // the polygons
};

Shapes::Shapes(std::vector<Shape> shapes, const Progress &progress) : mIndex(std::make_unique<Index>()) {
  mIndex->shapes = std::move(shapes);
  std::vector<StretchIndex::Entry> entries;
  std::vector<AreaIndex::Entry> areas;
  for (size_t i = 0; i < mIndex->shapes.size(); ++i) {
    const Shape &shape = mIndex->shapes[i];
    const size_t before = entries.size();
    SpaceBox all;
    bg::assign_inverse(all);
    for (size_t p = 0; p < shape.parts.size(); ++p) {
      const std::vector<Place> &part = shape.parts[p];
      if (part.empty())
        continue;
      for (size_t first = 0; first == 0 || first + 1 < part.size(); first += stretchEdges) {
        const size_t last = std::min(first + stretchEdges, part.size() - 1);
        if (entries.size() % 4096 == 0)
          progress.check();
        entries.emplace_back(around(&part[first], &part[last]), ShapeStretch{i, p, first, last});
        bg::expand(all, entries.back().first);
      }
    }
    // The ground within rises above the borders no more than above a straight line from corner to corner of the box.
    if (shape.kind == ShapeKind::Polygon && entries.size() > before)
      areas.emplace_back(grown(all, bulge(all.min_corner(), all.max_corner())), i);
  }
  mIndex->boxes = StretchIndex(std::move(entries), progress);
  mIndex->areas = AreaIndex(std::move(areas), progress);
}
Shapes::~Shapes() = default;
Shapes::Shapes(Shapes &&) noexcept = default;
Shapes &Shapes::operator=(Shapes &&) noexcept = default;

size_t Shapes::size() const { return mIndex->shapes.size(); }
const Shape &Shapes::operator[](size_t i) const { return mIndex->shapes[i]; }

std::vector<ShapeStretch> Shapes::near(const Place &from, const Place &to, Length reach) const {
  const Place ends[] = {from, to};
  const auto found = mIndex->boxes.meeting(grown(around(ends, ends + 1), reach.metres()));
  std::vector<ShapeStretch> stretches;
  stretches.reserve(found.size());
  for (const auto &entry : found)
    stretches.push_back(entry.second);
  std::sort(stretches.begin(), stretches.end(), [](const ShapeStretch &a, const ShapeStretch &b) {
    return std::tie(a.shape, a.part, a.first) < std::tie(b.shape, b.part, b.first);
  });
  return stretches;
}

std::vector<size_t> Shapes::mayHold(const Place &place) const {
  std::vector<size_t> areas;
  for (const auto &entry : mIndex->areas.meeting(inSpace(place)))
    areas.push_back(entry.second);
  std::sort(areas.begin(), areas.end());
  return areas;
}

} // namespace brushline
