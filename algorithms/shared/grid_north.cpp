// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/grid_north.h"

#include "shared/geodesic.h"

#include <GeographicLib/UTMUPS.hpp>
#include <proj.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <stdexcept>
#include <string_view>
#include <utility>

namespace brushline {

namespace {
struct ContextDeleter {
  void operator()(PJ_CONTEXT *context) const { proj_context_destroy(context); }
};
struct PjDeleter {
  void operator()(PJ *object) const { proj_destroy(object); }
};
using Context = std::unique_ptr<PJ_CONTEXT, ContextDeleter>;
using Pj = std::unique_ptr<PJ, PjDeleter>;
} // namespace

struct GridNorth::Projection {
  Context context; // outlives what was made in it
  Pj forward;      // longitude, latitude on the system's own datum to the grid
  // Old systems count longitudes from Paris or Oslo, and some of them in gon.
  Angle primeMeridian; // of those longitudes, from Greenwich
  double unit = 1;     // of those longitudes and latitudes, degrees
  // How the coordinates that come out count, by the names of their axes.
  bool northingFirst = false;
  double eastward = 1, northward = 1; // -1: to the west, to the south

  // Degrees, the longitude from the system's own meridian. Infinite where the projection does not reach.
  PJ_XY project(double longitude, double latitude) const {
    return proj_trans(forward.get(), PJ_FWD, proj_coord(longitude / unit, latitude / unit, 0, HUGE_VAL)).xy;
  }
  Angle bearing(double dx, double dy) const {
    if (northingFirst)
      std::swap(dx, dy);
    return Angle::radians(std::atan2(eastward * dx, northward * dy));
  }
};

GridNorth::GridNorth(const std::string &crs) : mProjection(std::make_unique<Projection>()) {
  mProjection->context.reset(proj_context_create());
  PJ_CONTEXT *context = mProjection->context.get();
  proj_log_level(context, PJ_LOG_NONE);
  Pj system(proj_create(context, crs.c_str()));
  while (system) {
    const PJ_TYPE type = proj_get_type(system.get());
    if (type == PJ_TYPE_BOUND_CRS)
      system.reset(proj_get_source_crs(context, system.get()));
    else if (type == PJ_TYPE_COMPOUND_CRS)
      system.reset(proj_crs_get_sub_crs(context, system.get(), 0));
    else
      break;
  }
  if (!system || proj_get_type(system.get()) != PJ_TYPE_PROJECTED_CRS)
    throw std::invalid_argument("not a projected coordinate system: " + crs);
  const Pj geodetic(proj_crs_get_geodetic_crs(context, system.get()));
  const Pj raw(geodetic ? proj_create_crs_to_crs_from_pj(context, geodetic.get(), system.get(), nullptr, nullptr)
                        : nullptr);
  if (raw)
    mProjection->forward.reset(proj_normalize_for_visualization(context, raw.get()));
  if (!mProjection->forward)
    throw std::invalid_argument("this projection cannot be computed: " + crs);

  // The axes as the coordinates come out; PROJ puts east before north, but leaves what counts south or west.
  const Pj counted(proj_get_target_crs(context, mProjection->forward.get()));
  const Pj countedAxes(counted ? proj_crs_get_coordinate_system(context, counted.get()) : nullptr);
  const auto direction = [&](int axis) -> std::string_view {
    const char *name = nullptr;
    return countedAxes && proj_cs_get_axis_info(context, countedAxes.get(), axis, nullptr, nullptr, &name, nullptr,
                                                nullptr, nullptr, nullptr)
               ? name
               : "";
  };
  const std::string_view first = direction(0), second = direction(1);
  const auto liesAcross = [](std::string_view way) { return way == "east" || way == "west"; };
  const auto liesAlong = [](std::string_view way) { return way == "north" || way == "south"; };
  if ((liesAcross(first) && liesAlong(second)) || (liesAlong(first) && liesAcross(second))) {
    mProjection->northingFirst = liesAlong(first);
    mProjection->eastward = first == "west" || second == "west" ? -1 : 1;
    mProjection->northward = first == "south" || second == "south" ? -1 : 1;
  }

  double toRadians, fromGreenwich, meridianToRadians;
  const Pj axes(proj_crs_get_coordinate_system(context, geodetic.get()));
  const Pj meridian(proj_get_prime_meridian(context, geodetic.get()));
  if (axes && proj_cs_get_axis_info(context, axes.get(), 0, nullptr, nullptr, nullptr, &toRadians, nullptr, nullptr,
                                    nullptr))
    mProjection->unit = Angle::radians(toRadians).degrees();
  if (meridian &&
      proj_prime_meridian_get_parameters(context, meridian.get(), &fromGreenwich, &meridianToRadians, nullptr))
    mProjection->primeMeridian = Angle::radians(fromGreenwich * meridianToRadians);
  mWorldWidth = findWorldWidth();
}

GridNorth::~GridNorth() = default;
GridNorth::GridNorth(GridNorth &&) noexcept = default;
GridNorth &GridNorth::operator=(GridNorth &&) noexcept = default;

double GridNorth::longitudeOf(const Place &place) const {
  // PROJ refuses more than 10 radians. Fewer are left to it, since some maps go on beyond half a turn.
  Angle turned = place.longitude - mProjection->primeMeridian;
  if (std::abs(turned.degrees()) > 540)
    turned = turned.signedTurn();
  return turned.degrees();
}

Convergence GridNorth::at(const Place &place) const {
  // The direction of the meridian on the grid, by a central difference over about 2 * 30 m: its own error is under
  // 1e-9 degrees, the coordinates' rounding gives about as much.
  constexpr double half = 2.7e-4; // degrees
  const double longitude = longitudeOf(place);
  const double north = std::min(place.latitude.degrees() + half, 90.0);
  const double south = std::max(place.latitude.degrees() - half, -90.0);
  const PJ_XY upper = mProjection->project(longitude, north), lower = mProjection->project(longitude, south);
  const double dx = upper.x - lower.x;
  const double dy = upper.y - lower.y;
  if (!std::isfinite(dx) || !std::isfinite(dy) || (dx == 0 && dy == 0))
    return {Angle::degrees(std::numeric_limits<double>::quiet_NaN())};
  // The grid bearing of true north is minus the bearing of grid north.
  return {-mProjection->bearing(dx, dy)};
}

GridBearing GridNorth::bearing(const Place &place, TrueBearing way) const {
  constexpr Length half = Length::metres(30); // as in at()
  const auto point = [&](TrueBearing towards) {
    const Place there = geodesicDestination(place, towards, half);
    const PJ_XY at = mProjection->project(longitudeOf(there), there.latitude.degrees());
    return GridPoint{at.x, at.y};
  };
  const GridPoint behind = point(way.reversed()), ahead = point(way);
  if (!std::isfinite(behind.easting + behind.northing + ahead.easting + ahead.northing))
    return GridBearing(Angle::degrees(std::numeric_limits<double>::quiet_NaN()));
  return bearing(behind, ahead);
}

GridBearing GridNorth::bearing(const GridPoint &from, const GridPoint &to) const {
  double dx = to.easting - from.easting;
  if (mWorldWidth > 0)
    dx = std::remainder(dx, mWorldWidth); // the grid is cut somewhere, the line is not
  return GridBearing(mProjection->bearing(dx, to.northing - from.northing));
}

// On a map that goes on round the Earth x grows evenly with the longitude, whatever the latitude, and y does not change
// with it. It is cut at some longitude, so that one of the steps between eight may be a world too short.
double GridNorth::findWorldWidth() const {
  constexpr size_t count = 8;
  constexpr double apart = 360.0 / count; // degrees
  std::array<PJ_XY, count> south, north;
  for (size_t i = 0; i < count; ++i) {
    const double longitude = (double(i) + 0.5) * apart - 180;
    south[i] = mProjection->project(longitude, -20);
    north[i] = mProjection->project(longitude, 50);
    if (!std::isfinite(south[i].x + south[i].y + north[i].x + north[i].y))
      return 0;
  }
  std::array<double, count - 1> steps;
  for (size_t i = 0; i + 1 < count; ++i)
    steps[i] = south[i + 1].x - south[i].x;
  std::nth_element(steps.begin(), steps.begin() + count / 2 - 1, steps.end());
  const double step = steps[count / 2 - 1], width = std::abs(step) * count;
  if (!(width > 0))
    return 0;
  for (size_t i = 0; i < count; ++i) {
    const double off = std::remainder(south[i].x - south[0].x - double(i) * step, width);
    const double slant = std::remainder(north[i].x - south[i].x, width);
    const double bend = std::max(std::abs(south[i].y - south[0].y), std::abs(north[i].y - north[0].y));
    if (std::max({std::abs(off), std::abs(slant), bend}) > 1e-6 * width)
      return 0;
  }
  return width;
}

std::string standardGrid(const Place &place) {
  using GeographicLib::UTMUPS;
  const double latitude = place.latitude.degrees();
  const int zone = UTMUPS::StandardZone(latitude, place.longitude.degrees());
  return "EPSG:" + std::to_string(UTMUPS::EncodeEPSG(zone, latitude >= 0));
}

} // namespace brushline
