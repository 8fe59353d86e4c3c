// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/course_ground.h"

#include "shared/local_plane.h"
#include "shared/space.h"
#include "shared/spatial_index.h"

#include <GeographicLib/Geocentric.hpp>

#include <boost/geometry/algorithms/assign.hpp>
#include <boost/geometry/algorithms/expand.hpp>
#include <boost/geometry/geometries/box.hpp>
#include <boost/geometry/geometries/point.hpp>

#include <algorithm>
#include <limits>
#include <stdexcept>
#include <utility>

namespace brushline {

namespace {
namespace bg = boost::geometry;
using FlatPoint = bg::model::point<double, 2, bg::cs::cartesian>;
using FlatBox = bg::model::box<FlatPoint>;

constexpr double gap = 1.5;           // millimetres; what rounding leaves between two polygons that touch
constexpr double longestEdge = 50000; // metres
constexpr size_t checkEvery = 1024;   // places between two looks at the cancel button

struct Edge {
  GroundPoint a, b;
  size_t polygon; // shared by the edges of its rings; notClosed for lines and points
};
constexpr size_t notClosed = std::numeric_limits<size_t>::max();

FlatBox around(const GroundPoint &a, const GroundPoint &b, double by) {
  return {{double(std::min(a.east, b.east)) - by, double(std::min(a.north, b.north)) - by},
          {double(std::max(a.east, b.east)) + by, double(std::max(a.north, b.north)) + by}};
}

int sign(int64_t value) { return value > 0 ? 1 : value < 0 ? -1 : 0; }

// Millimetres from a point to a stretch.
double distanceTo(const GroundPoint &p, const GroundPoint &a, const GroundPoint &b) {
  const double dx = double(b.east - a.east), dy = double(b.north - a.north);
  const double px = double(p.east - a.east), py = double(p.north - a.north), squared = dx * dx + dy * dy;
  const double share = squared > 0 ? std::max(0.0, std::min(1.0, (px * dx + py * dy) / squared)) : 0;
  const double x = px - share * dx, y = py - share * dy;
  return std::sqrt(x * x + y * y);
}

// A place of the rounded centre: the same whatever the order of the area's polygons and the machine's last bit.
Place roundedCentre(const std::vector<Shape> &area) {
  SpaceBox box;
  bg::assign_inverse(box);
  bool any = false;
  for (const Shape &shape : area)
    if (shape.kind == ShapeKind::Polygon)
      for (const auto &ring : shape.parts)
        for (const Place &place : ring) {
          bg::expand(box, inSpace(place));
          any = true;
        }
  const SpacePoint low = box.min_corner(), high = box.max_corner();
  if (!any)
    throw std::invalid_argument("the area has no polygons");
  if (high.get<0>() - low.get<0>() > CourseGround::mostWidth ||
      high.get<1>() - low.get<1>() > CourseGround::mostWidth || high.get<2>() - low.get<2>() > CourseGround::mostWidth)
    throw std::invalid_argument("the area is wider than 100 km");
  double latitude, longitude, height;
  GeographicLib::Geocentric::WGS84().Reverse((low.get<0>() + high.get<0>()) / 2, (low.get<1>() + high.get<1>()) / 2,
                                             (low.get<2>() + high.get<2>()) / 2, latitude, longitude, height);
  return {Angle::degrees(std::round(latitude * 1e5) / 1e5), Angle::degrees(std::round(longitude * 1e5) / 1e5)};
}
} // namespace

bool stretchesMeet(const GroundPoint &a, const GroundPoint &b, const GroundPoint &c, const GroundPoint &d) {
  const auto apart = [](int64_t a0, int64_t a1, int64_t b0, int64_t b1) {
    return std::max(a0, a1) < std::min(b0, b1) || std::max(b0, b1) < std::min(a0, a1);
  };
  if (apart(a.east, b.east, c.east, d.east) || apart(a.north, b.north, c.north, d.north))
    return false;
  return sign(turnOf(a, b, c)) * sign(turnOf(a, b, d)) <= 0 && sign(turnOf(c, d, a)) * sign(turnOf(c, d, b)) <= 0;
}

//! Edges with an index.
struct CourseGround::Layer {
  using EdgeIndex = SpatialIndex<FlatBox, uint32_t>;

  std::vector<Edge> edges;
  size_t polygons = 0;
  EdgeIndex boxes;

  void add(const std::vector<Shape> &shapes, bool polygonsOnly, const LocalPlane &plane, const Progress &progress) {
    size_t done = 0;
    for (const Shape &shape : shapes) {
      const bool closed = shape.kind == ShapeKind::Polygon;
      if (polygonsOnly && !closed)
        continue;
      for (const auto &part : shape.parts) {
        GroundPoint before;
        for (size_t i = 0; i < part.size(); ++i) {
          if (++done % checkEvery == 0)
            progress.check();
          const PlanePoint flat = plane.toPlane(part[i]);
          const GroundPoint here{int64_t(std::llround(flat.east * 1000)), int64_t(std::llround(flat.north * 1000))};
          if (i > 0 || part.size() == 1)
            addPieces(i > 0 ? before : here, here, closed ? polygons : notClosed);
          before = here;
        }
      }
      polygons += closed;
    }
    std::vector<EdgeIndex::Entry> entries;
    entries.reserve(edges.size());
    for (size_t i = 0; i < edges.size(); ++i)
      entries.emplace_back(around(edges[i].a, edges[i].b, 0), uint32_t(i));
    boxes = EdgeIndex(std::move(entries), progress);
  }

  // Sums of long edges would not fit in 64 bits.
  void addPieces(const GroundPoint &from, const GroundPoint &to, size_t polygon) {
    const double pieces = std::max(1.0, std::ceil(metresBetween(from, to) / longestEdge));
    GroundPoint before = from;
    for (double piece = 1; piece <= pieces; ++piece) {
      const double share = piece / pieces;
      const GroundPoint here{from.east + int64_t(std::llround(double(to.east - from.east) * share)),
                             from.north + int64_t(std::llround(double(to.north - from.north) * share))};
      edges.push_back({before, here, polygon});
      before = here;
    }
  }

  std::vector<uint32_t> within(const FlatBox &box) const {
    std::vector<uint32_t> result;
    for (const auto &entry : boxes.meeting(box))
      result.push_back(entry.second);
    std::sort(result.begin(), result.end());
    return result;
  }

  // Whether any polygon holds a point: edges that a ray to the east crosses, by the even-odd rule.
  bool holds(double east, double north) const {
    std::vector<size_t> crossed;
    for (const uint32_t i : within({{east, north}, {1e12, north}})) {
      const Edge &edge = edges[i];
      const double ay = double(edge.a.north), by = double(edge.b.north), ax = double(edge.a.east);
      if (edge.polygon != notClosed && (ay > north) != (by > north) &&
          east < ax + (double(edge.b.east) - ax) * (north - ay) / (by - ay))
        crossed.push_back(edge.polygon);
    }
    std::sort(crossed.begin(), crossed.end());
    for (size_t i = 0; i < crossed.size();) {
      size_t next = i;
      while (next < crossed.size() && crossed[next] == crossed[i])
        ++next;
      if ((next - i) % 2 == 1)
        return true;
      i = next;
    }
    return false;
  }
};

struct CourseGround::Ground {
  LocalPlane plane;
  Place centre;
  Layer area, avoid;
  double clearance; // millimetres
  GroundPoint low, high;

  bool nearAvoided(const GroundPoint &a, const GroundPoint &b) const {
    for (const uint32_t i : avoid.within(around(a, b, clearance + 1))) {
      const Edge &edge = avoid.edges[i];
      if (stretchesMeet(a, b, edge.a, edge.b))
        return true;
      if (clearance > 0 && std::min(std::min(distanceTo(a, edge.a, edge.b), distanceTo(b, edge.a, edge.b)),
                                    std::min(distanceTo(edge.a, a, b), distanceTo(edge.b, a, b))) < clearance)
        return true;
    }
    return avoid.holds(double(a.east), double(a.north));
  }
};

CourseGround::CourseGround(const std::vector<Shape> &area, const std::vector<Shape> &avoid, Length clearance,
                           const Progress &progress) {
  const Place centre = roundedCentre(area);
  mGround = std::make_unique<Ground>(Ground{LocalPlane(centre),
                                            centre,
                                            Layer(),
                                            Layer(),
                                            clearance.metres() * 1000,
                                            {INT64_MAX, INT64_MAX},
                                            {INT64_MIN, INT64_MIN}});
  mGround->area.add(area, true, mGround->plane, progress);
  mGround->avoid.add(avoid, false, mGround->plane, progress);
  for (const Edge &edge : mGround->area.edges) {
    mGround->low = {std::min(mGround->low.east, edge.a.east), std::min(mGround->low.north, edge.a.north)};
    mGround->high = {std::max(mGround->high.east, edge.a.east), std::max(mGround->high.north, edge.a.north)};
  }
  if (mGround->low.east >= mGround->high.east || mGround->low.north >= mGround->high.north)
    throw std::invalid_argument("the area's polygons enclose nothing");
}
CourseGround::~CourseGround() = default;
CourseGround::CourseGround(CourseGround &&) noexcept = default;

GroundPoint CourseGround::toGround(const Place &place) const {
  const PlanePoint flat = mGround->plane.toPlane(place);
  return {int64_t(std::llround(flat.east * 1000)), int64_t(std::llround(flat.north * 1000))};
}
Place CourseGround::toPlace(const GroundPoint &point) const {
  return mGround->plane.toPlace({double(point.east) / 1000, double(point.north) / 1000});
}
Place CourseGround::centre() const { return mGround->centre; }
GroundPoint CourseGround::low() const { return mGround->low; }
GroundPoint CourseGround::high() const { return mGround->high; }

bool CourseGround::holds(const GroundPoint &point) const {
  return mGround->area.holds(double(point.east), double(point.north));
}

bool CourseGround::avoids(const GroundPoint &point) const { return mGround->nearAvoided(point, point); }

GroundLeg CourseGround::leg(const GroundPoint &from, const GroundPoint &to) const {
  const double dx = double(to.east - from.east), dy = double(to.north - from.north),
               length = std::sqrt(dx * dx + dy * dy);
  std::vector<double> borders{0, 1};
  for (const uint32_t i : mGround->area.within(around(from, to, 0))) {
    const Edge &edge = mGround->area.edges[i];
    const double a = double(turnOf(from, to, edge.a)), b = double(turnOf(from, to, edge.b));
    if ((a > 0) == (b > 0))
      continue;
    const double share = a / (a - b), x = double(edge.a.east - from.east) + share * double(edge.b.east - edge.a.east),
                 y = double(edge.a.north - from.north) + share * double(edge.b.north - edge.a.north);
    const double at = (x * dx + y * dy) / (length * length);
    if (at > 0 && at < 1)
      borders.push_back(at);
  }
  std::sort(borders.begin(), borders.end());
  for (size_t i = 1; i < borders.size(); ++i) {
    const double middle = (borders[i - 1] + borders[i]) / 2;
    if ((borders[i] - borders[i - 1]) * length > gap &&
        !mGround->area.holds(double(from.east) + middle * dx, double(from.north) + middle * dy))
      return GroundLeg::LeavesArea;
  }
  return mGround->nearAvoided(from, to) ? GroundLeg::Avoided : GroundLeg::Open;
}

} // namespace brushline
