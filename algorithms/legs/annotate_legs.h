// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "magnetics/field_setting.h"
#include "magnetics/grid_north.h"
#include "quantities/duration.h"
#include "quantities/progress.h"
#include "shared/compass.h"
#include "shared/geodesic.h"
#include "shared/named_places.h"
#include "shared/route.h"
#include "shared/terrain.h"
#include "shared/walker.h"
#include "walking/profile_summary.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace brushline {

//! Which way a route is walked. The numbers are those of the parameter DIRECTION.
enum class Direction { Out = 0, Back = 1, Both = 2 };

//! What needs saying about a leg.
enum class LegRemark {
  CompassBlackout, //!< no compass works here; value: the field along the ground, none
  CompassCaution,  //!< the needle is slow and easily drawn off
  NoTerrain,       //!< part of the leg has no heights; value: metres
  GapBefore,       //!< the leg starts elsewhere than the one before ended; value: metres
};

struct LegWarning {
  LegRemark remark;
  double value; //!< as the remark says; 0 where it has none
};

//! What one walker counts on a leg.
struct LegPaces {
  long paces;    //!< whole, of the walker's kind
  Duration time; //!< on level ground when there is no terrain
};

//! A leg, worked out.
struct AnnotatedLeg {
  int number = 0;    //!< from 1, in the order walked
  bool back = false; //!< walked against the route's own direction
  size_t from_source = 0, to_source = 0;               //!< RouteVertex::source of its ends
  const NamedPlace *from = nullptr, *to = nullptr;     //!< named places at its ends

  TrueBearing true_bearing; //!< at the start
  GridBearing grid_bearing;
  Convergence convergence; //!< at the start; NaN where the projection does not reach
  LocalField field;        //!< at the start
  std::optional<MagneticBearing> magnetic_bearing; //!< none where a compass cannot be used

  std::optional<double> dial, back_dial; //!< in the dial's unit; back_dial as sighted from the end to the start
  Length length;                         //!< geodesic
  std::optional<ProfileSummary> profile; //!< none without terrain, or where it has gaps on the leg
  std::vector<LegPaces> by_walker;       //!< in the walkers' order
  std::vector<LegWarning> warnings;
};

//! What a route's legs are worked out with.
struct AnnotateSettings {
  const FieldSetting *field = nullptr; //!< never null
  Compass compass;
  std::vector<Walker> walkers; //!< at least one
  Direction direction = Direction::Out;
  Terrain *terrain = nullptr;         //!< may be null
  const NamedPlaces *names = nullptr; //!< may be null
};

/**
 * Works out the legs of routes. One thread at a time; the same result whatever came before.
 */
class LegAnnotator {
public:
  explicit LegAnnotator(AnnotateSettings settings);

  /**
   * The legs of one route, in the order walked; for Direction::Both out and then back.
   *
   * Bearings: true from the geodesic at the leg's start (WGS84); grid from the vertices' grid coordinates; magnetic =
   * true - declination at the start. The back bearing is taken at the leg's end. Height for the field from the
   * terrain, 0 without.
   *
   * Degenerate: vertices less than 1 mm from the one before are merged; a part with one vertex left gives no leg; no
   * parts, no legs.
   * Bad input: std::invalid_argument when Route::grid is not a projected coordinate system. Places must be finite.
   * \throws Cancelled
   */
  std::vector<AnnotatedLeg> annotate(const Route &route, const Progress &progress);

private:
  const GridNorth &gridNorth(const std::string &grid);

  AnnotateSettings mSettings;
  std::map<std::string, GridNorth> mGrids;
};

} // namespace brushline
