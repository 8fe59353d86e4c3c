// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "magnetics/world_magnetic_model.h"
#include "planning/practice_courses.h"
#include "shared/local_plane.h"
#include "support/near.h"
#include "support/random.h"

#include <memory>
#include <utility>
#include <vector>

namespace brushline::test {

using Outline = std::vector<std::pair<double, double>>; //!< east, north of a place, metres

//! A place in the world round which things are drawn in metres.
struct CourseScene {
  Place middle{Angle::degrees(48.5), Angle::degrees(-56.2)};

  Place at(double east, double north) const { return LocalPlane(middle).toPlace({east, north}); }
  Shape shape(ShapeKind kind, const std::vector<Outline> &parts) const {
    Shape shape;
    shape.kind = kind;
    for (const Outline &part : parts) {
      auto &places = shape.parts.emplace_back();
      for (const auto &[east, north] : part)
        places.push_back(at(east, north));
      if (kind == ShapeKind::Polygon)
        places.push_back(places.front());
    }
    return shape;
  }
  Shape square(double west, double south, double east, double north) const {
    return shape(ShapeKind::Polygon, {{{west, south}, {east, south}, {east, north}, {west, north}}});
  }
  NamedPlace named(double east, double north, const char *name = "") const { return {at(east, north), name}; }
};

//! Legs of a walker of the defaults, with a declination read off a map, on level open ground.
struct PlainLegs {
  FieldSetting field{coefficientModel(worldMagneticModel2025(), DecimalYear(2026)), Declination{Angle()}};
  CourseLegs legs;
  explicit PlainLegs(const CourseGround &ground) : legs(tools(ground)) {}

private:
  CourseLegs::Tools tools(const CourseGround &ground) const {
    CourseLegs::Tools tools;
    tools.ground = &ground;
    tools.legs.field = &field;
    tools.legs.walkers = {Walker()};
    return tools;
  }
};

} // namespace brushline::test
