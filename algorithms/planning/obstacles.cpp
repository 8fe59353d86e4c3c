// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/obstacles.h"

#include "shared/geodesic.h"
#include "shared/local_plane.h"
#include "shared/space.h"

#include <GeographicLib/Geocentric.hpp>

#include <boost/geometry/algorithms/assign.hpp>
#include <boost/geometry/algorithms/expand.hpp>

#include <algorithm>
#include <cmath>
#include <utility>

namespace brushline {

namespace {
namespace bg = boost::geometry;

constexpr size_t checkEvery = 1024; // places between two looks at the cancel button

// The same ring with places between those that are far apart.
std::vector<Place> withShortEdges(const std::vector<Place> &ring) {
  std::vector<Place> result;
  result.reserve(ring.size());
  for (size_t i = 0; i < ring.size(); ++i) {
    if (i > 0) {
      const double turn = (ring[i].longitude - ring[i - 1].longitude).signedTurn().degrees();
      const double rise = ring[i].latitude.degrees() - ring[i - 1].latitude.degrees();
      // Under 0.006 degrees both ways an edge is shorter than longestEdge; no need to work it out.
      if (std::abs(turn) > 0.006 || std::abs(rise) > 0.006) {
        const GeodesicLeg edge = geodesicBetween(ring[i - 1], ring[i]);
        const double pieces = std::ceil(edge.length.metres() / Obstacles::longestEdge);
        for (double piece = 1; piece < pieces; ++piece)
          result.push_back(
              geodesicDestination(ring[i - 1], edge.departure, Length::metres(edge.length.metres() * piece / pieces)));
      }
    }
    result.push_back(ring[i]);
  }
  return result;
}

// A polygon in a plane of its own.
struct Body {
  LocalPlane plane;
  std::vector<std::vector<PlanePoint>> rings;

  bool holds(const PlanePoint &point) const {
    bool inside = false;
    for (const auto &ring : rings)
      for (size_t i = 1; i < ring.size(); ++i) {
        const PlanePoint &a = ring[i - 1], &b = ring[i];
        if ((a.north > point.north) != (b.north > point.north) &&
            point.east < a.east + (b.east - a.east) * (point.north - a.north) / (b.north - a.north))
          inside = !inside;
      }
    return inside;
  }
};
} // namespace

struct Obstacles::Bodies {
  Bodies(std::vector<Shape> shapes, const Progress &progress) : outlines(std::move(shapes), progress) {}

  Shapes outlines;
  std::vector<Body> bodies; // one a shape; without rings where it is no polygon
};

Obstacles::Obstacles(std::vector<Shape> shapes, const Progress &progress) {
  size_t done = 0;
  for (Shape &shape : shapes) {
    if (shape.kind != ShapeKind::Polygon)
      shape.parts.clear();
    for (auto &ring : shape.parts) {
      ring = withShortEdges(ring);
      if ((done += ring.size()) >= checkEvery) {
        progress.check();
        done = 0;
      }
    }
  }
  mBodies = std::make_unique<Bodies>(std::move(shapes), progress);

  for (size_t i = 0; i < mBodies->outlines.size(); ++i) {
    const Shape &shape = mBodies->outlines[i];
    SpaceBox box;
    bg::assign_inverse(box);
    bool any = false;
    for (const auto &ring : shape.parts)
      for (const Place &place : ring) {
        bg::expand(box, inSpace(place));
        any = true;
      }
    if (!any) {
      mBodies->bodies.push_back({LocalPlane(Place{}), {}});
      continue;
    }
    const SpacePoint low = box.min_corner(), high = box.max_corner();
    double latitude, longitude, height;
    GeographicLib::Geocentric::WGS84().Reverse((low.get<0>() + high.get<0>()) / 2, (low.get<1>() + high.get<1>()) / 2,
                                               (low.get<2>() + high.get<2>()) / 2, latitude, longitude, height);
    Body body{LocalPlane({Angle::degrees(latitude), Angle::degrees(longitude)}), {}};
    for (const auto &ring : shape.parts) {
      auto &points = body.rings.emplace_back();
      points.reserve(ring.size());
      for (const Place &place : ring) {
        points.push_back(body.plane.toPlane(place));
        if (++done % checkEvery == 0)
          progress.check();
      }
    }
    mBodies->bodies.push_back(std::move(body));
  }
}
Obstacles::~Obstacles() = default;
Obstacles::Obstacles(Obstacles &&) noexcept = default;
Obstacles &Obstacles::operator=(Obstacles &&) noexcept = default;

const Shapes &Obstacles::outlines() const { return mBodies->outlines; }

std::vector<size_t> Obstacles::holding(const Place &place) const {
  std::vector<size_t> result;
  for (const size_t index : mBodies->outlines.mayHold(place)) {
    const Body &body = mBodies->bodies[index];
    if (body.holds(body.plane.toPlane(place)))
      result.push_back(index);
  }
  return result;
}

} // namespace brushline
