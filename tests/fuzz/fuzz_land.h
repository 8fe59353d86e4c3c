// SPDX-License-Identifier: GPL-2.0-or-later
// Places, shapes, terrain, cover, walkers and routes out of the fuzzer's bytes: valid, but as odd as can be.
#pragma once

#include "fuzz_input.h"

#include "legs/annotate_legs.h"
#include "magnetics/world_magnetic_model.h"
#include "shared/shapes.h"

#include <GeographicLib/UTMUPS.hpp>

#include <memory>

namespace brushline::fuzz {

//! A country of some kilometres: things in it lie on a coarse lattice mostly, so that much touches, repeats, lines up.
class Land {
public:
  Land(Input &input, double halfWidth) : mInput(input), mHalf(halfWidth) {
    const double latitude = input.from({47.0, 0.0, 90.0, -90.0, 89.999, -89.995, 83.999, -33.0, 71.5, 84.0, -80.0});
    const double longitude = input.from({9.0, 0.0, 180.0, -180.0, 179.999, -179.999, 6.0, 540.0, -365.0, 15.0});
    origin = {Angle::degrees(latitude), Angle::degrees(longitude)};
  }

  Place origin;

  double metre() {
    switch (mInput.upTo(3)) {
    case 0:
    case 1:
      return (double(mInput.upTo(8)) - 4) * mHalf / 4;
    case 2:
      return (double(mInput.upTo(8)) - 4) * mHalf / 4 + mInput.from({1e-3, -1e-3, 1e-7, 1e-2, -5e-4});
    default:
      return mInput.between(-mHalf, mHalf);
    }
  }
  Place at(double east, double north) const {
    if (east == 0 && north == 0)
      return origin;
    return geodesicDestination(origin, TrueBearing(Angle::radians(std::atan2(east, north))),
                               Length::metres(std::hypot(east, north)));
  }
  Place place() {
    const double east = metre();
    return at(east, metre());
  }
  std::vector<Place> line(size_t least, size_t most) {
    std::vector<Place> line;
    for (size_t count = least + mInput.upTo(most - least); count > 0; --count)
      line.push_back(!line.empty() && mInput.upTo(15) == 0 ? line[mInput.upTo(line.size() - 1)] : place());
    return line;
  }
  //! Parts and rings may be degenerate: of one place, of no area, crossing themselves.
  Shape shape(size_t mostParts, size_t mostPlaces) {
    return shape(mInput.from({ShapeKind::Polygon, ShapeKind::Line, ShapeKind::Point}), mostParts, mostPlaces);
  }
  Shape shape(ShapeKind kind, size_t mostParts, size_t mostPlaces) {
    Shape shape;
    shape.kind = kind;
    for (size_t count = mInput.upTo(mostParts); count > 0; --count) {
      auto &part = shape.parts.emplace_back(line(1, kind == ShapeKind::Point ? 1 : mostPlaces));
      if (kind == ShapeKind::Polygon)
        part.push_back(part.front());
    }
    shape.name = mInput.from({"", "a", "b"});
    shape.feature = (long long)(mInput.upTo(3));
    return shape;
  }
  std::vector<Shape> shapes(size_t most, size_t mostParts = 3, size_t mostPlaces = 8) {
    std::vector<Shape> shapes;
    for (size_t count = mInput.upTo(most); count > 0; --count)
      shapes.push_back(shape(mostParts, mostPlaces));
    return shapes;
  }
  //! As above; some may lie anywhere on the Earth, as in layers of whole countries.
  std::vector<Shape> shapesNearAndFar(size_t most) {
    std::vector<Shape> all = shapes(most);
    if (mInput.upTo(3) == 0) {
      Land elsewhere(mInput, mInput.scaled(1e3, 5e6));
      for (Shape &shape : elsewhere.shapes(3))
        all.push_back(std::move(shape));
    }
    return all;
  }

  //! The land's own grid, as GridNorth reads it. A place that it does not reach becomes NaN.
  std::string grid() const { return standardGrid(origin); }
  Project project() const {
    int zone;
    bool north;
    double x, y;
    GeographicLib::UTMUPS::Forward(origin.latitude.degrees(), origin.longitude.signedTurn().degrees(), zone, north, x,
                                   y);
    return [zone, north](std::vector<double> &east, std::vector<double> &up) {
      for (size_t i = 0; i < east.size(); ++i) {
        double e = std::numeric_limits<double>::quiet_NaN(), n = e;
        int found;
        bool foundNorth;
        try {
          GeographicLib::UTMUPS::Forward(up[i], east[i], found, foundNorth, e, n, zone);
          if (foundNorth != north)
            n += north ? -GeographicLib::UTMUPS::UTMShift() : GeographicLib::UTMUPS::UTMShift();
        } catch (const std::exception &) {
        }
        east[i] = e;
        up[i] = n;
      }
    };
  }
  Route route(size_t mostParts, size_t mostPlaces) {
    Route route{grid(), {}};
    const Project toGrid = project();
    size_t source = 0;
    for (size_t count = mInput.upTo(mostParts); count > 0; --count) {
      auto &part = route.parts.emplace_back();
      for (const Place &place : line(0, mostPlaces)) {
        std::vector<double> x{place.longitude.signedTurn().degrees()}, y{place.latitude.degrees()};
        toGrid(x, y);
        part.push_back({place, {x[0], y[0]}, source++});
      }
    }
    return route;
  }

  //! A raster in degrees round the origin; its cells' values repeat.
  TiledGrid raster(std::vector<float> values) const {
    const double cell = mHalf / 1e5 / 8;
    if (values.empty())
      values.push_back(0);
    return TiledGrid({origin.longitude.signedTurn().degrees() - 20 * cell, origin.latitude.degrees() + 20 * cell, cell,
                      cell, 40, 40},
                     [values](const CellWindow &window) {
                       std::vector<float> cells;
                       for (int64_t row = window.row; row < window.row + window.rows; ++row)
                         for (int64_t column = window.column; column < window.column + window.columns; ++column)
                           cells.push_back(values[size_t(row * 5 + column * 3 + row * column) % values.size()]);
                       return cells;
                     });
  }
  static Project inDegrees() {
    return [](std::vector<double> &, std::vector<double> &) {};
  }
  std::vector<float> heights() {
    std::vector<float> heights;
    for (size_t count = 1 + mInput.upTo(15); count > 0; --count)
      heights.push_back(mInput.upTo(9) == 0 ? std::numeric_limits<float>::quiet_NaN()
                                            : float(mInput.between(-50, 3000)));
    return heights;
  }
  std::unique_ptr<Terrain> terrain(const std::vector<float> &heights) const {
    return std::make_unique<Terrain>(raster(heights), inDegrees());
  }

  //! Patches in degrees.
  std::shared_ptr<const CoverMap> patches(size_t most, int classes) {
    std::vector<CoverPatch> patches;
    for (size_t count = mInput.upTo(most); count > 0; --count) {
      CoverPatch patch{{}, int(mInput.upTo(size_t(classes - 1)))};
      for (size_t rings = mInput.upTo(2); rings > 0; --rings) {
        auto &ring = patch.rings.emplace_back();
        for (const Place &place : line(1, 6))
          ring.push_back({place.longitude.signedTurn().degrees(), place.latitude.degrees()});
        if (mInput.flag())
          ring.push_back(ring.front());
      }
      patches.push_back(std::move(patch));
    }
    return std::make_shared<const CoverMap>(std::move(patches));
  }
  struct Cover {
    std::shared_ptr<const CoverMap> map;
    std::vector<float> codes, sights;
  };
  Cover cover(int classes) {
    Cover cover;
    if (mInput.flag())
      cover.map = patches(4, classes);
    if (mInput.flag())
      for (size_t count = 1 + mInput.upTo(7); count > 0; --count)
        cover.codes.push_back(mInput.upTo(7) == 0 ? float(mInput.any()) : float(mInput.upTo(size_t(classes))));
    if (mInput.flag())
      for (size_t count = 1 + mInput.upTo(7); count > 0; --count)
        cover.sights.push_back(mInput.upTo(7) == 0 ? float(mInput.any()) : float(mInput.between(0.5, 500)));
    return cover;
  }
  std::unique_ptr<CoverSource> source(const Cover &cover, const CoverTable &table) const {
    std::vector<double> extinctions;
    for (const CoverClass &entry : table.classes())
      extinctions.push_back(std::log(2) / entry.sight.metres());
    auto source = std::make_unique<CoverSource>(std::move(extinctions));
    const int classes = int(table.classes().size());
    if (cover.map)
      source->setPatches(cover.map, inDegrees());
    if (!cover.codes.empty())
      source->setCodes(raster(cover.codes), inDegrees(),
                       [classes](long code) { return code >= 0 && code < classes ? int(code) : -1; });
    if (!cover.sights.empty())
      source->setSights(raster(cover.sights), inDegrees());
    return source;
  }

private:
  Input &mInput;
  double mHalf;
};

inline Walker walker(Input &input) {
  Walker walker;
  walker.steps_per_100m = input.between(Walker::countLimits.least, Walker::countLimits.most);
  walker.kind = input.from({PaceKind::Single, PaceKind::Double});
  walker.pace_error_percent = input.between(Walker::paceErrorLimits.least, Walker::paceErrorLimits.most);
  walker.bearing_error = Angle::degrees(input.between(Compass::errorLimits.least, Compass::errorLimits.most));
  walker.eye_height = Length::metres(input.between(Walker::eyeLimits.least, Walker::eyeLimits.most));
  walker.speed_factor = input.between(Walker::speedLimits.least, Walker::speedLimits.most);
  walker.slope_rule = input.from({SlopeRule::SlopeTable, SlopeRule::None});
  walker.time_rule = input.from({TimeRule::OffTrailSpeed, TimeRule::HikingOffPath, TimeRule::DistanceAndClimb});
  return walker;
}

inline Compass compass(Input &input) {
  Compass compass;
  compass.north = input.from({North::Magnetic, North::True, North::Grid});
  compass.unit = input.from({DialUnit::Degrees, DialUnit::Mils, DialUnit::Gon});
  compass.step = input.between(Compass::stepLimits.least, Compass::stepLimits.most);
  compass.bearing_error = Angle::degrees(input.between(Compass::errorLimits.least, Compass::errorLimits.most));
  return compass;
}

inline SpacingRule spacing(Input &input) {
  SpacingRule rule;
  rule.sight_share = input.between(SpacingRule::shareLimits.least, SpacingRule::shareLimits.most);
  rule.least = Length::metres(input.scaled(SpacingRule::leastLimits.least, SpacingRule::leastLimits.most));
  rule.most = Length::metres(
      std::max(rule.least.metres(), input.scaled(SpacingRule::mostLimits.least, SpacingRule::mostLimits.most)));
  return rule;
}

//! The built-in model, or a declination read off a map.
inline const FieldSetting &field(Input &input) {
  static const FieldSetting model(coefficientModel(worldMagneticModel2025(), DecimalYear(2026)));
  static const FieldSetting map(coefficientModel(worldMagneticModel2025(), DecimalYear(2026)),
                                Declination{Angle::degrees(-13.5)});
  return input.flag() ? map : model;
}

inline bool isFinite(const Place &place) {
  return std::abs(place.latitude.degrees()) <= 90 && std::isfinite(place.longitude.degrees());
}

//! What holds for every annotated leg.
inline void checkLeg(const AnnotatedLeg &leg, const Compass &compass, size_t walkers) {
  const double circle = fullCircle(compass.unit);
  PROMISED(isBearing(leg.true_bearing.degrees()));
  PROMISED(std::isnan(leg.convergence.east.degrees()) || isBearing(leg.grid_bearing.degrees()));
  PROMISED(!leg.magnetic_bearing || isBearing(leg.magnetic_bearing->degrees()));
  PROMISED(!leg.dial || (*leg.dial >= 0 && *leg.dial < circle));
  PROMISED(!leg.back_dial || (*leg.back_dial >= 0 && *leg.back_dial < circle));
  PROMISED(leg.field.zone != CompassZone::Blackout || (!leg.dial && !leg.magnetic_bearing));
  PROMISED(leg.length.metres() > 0 && std::isfinite(leg.length.metres()));
  PROMISED(leg.by_walker.size() == walkers);
  for (const LegForWalker &one : leg.by_walker) {
    PROMISED(one.paces >= 0);
    PROMISED(!one.time || one.time->seconds() > 0);
    PROMISED(!one.sight_m || *one.sight_m >= 0);
    PROMISED(!one.spacing_m || *one.spacing_m > 0);
    PROMISED(one.sightings >= 1);
    const DriftEllipse &drift = one.drift;
    PROMISED(drift.across.metres() >= 0 && drift.along.metres() >= 0);
    PROMISED(drift.semi_minor.metres() >= 0 && drift.semi_major.metres() >= drift.semi_minor.metres());
    PROMISED(drift.major_axis.degrees() >= 0 && drift.major_axis.degrees() < 180);
    double before = 0;
    for (const LegMark &mark : one.marks) {
      PROMISED(mark.at_m >= before && mark.at_m <= leg.length.metres() * (1 + 1e-12));
      PROMISED(mark.paces >= 0 && mark.paces <= one.paces);
      before = mark.at_m;
    }
  }
}

} // namespace brushline::fuzz
