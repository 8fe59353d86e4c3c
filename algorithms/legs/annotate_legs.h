// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "magnetics/field_setting.h"
#include "quantities/duration.h"
#include "quantities/progress.h"
#include "shared/compass.h"
#include "shared/geodesic.h"
#include "shared/grid_north.h"
#include "shared/named_places.h"
#include "shared/route.h"
#include "shared/terrain.h"
#include "shared/walker.h"
#include "sighting/cover_source.h"
#include "sighting/cover_table.h"
#include "sighting/drift.h"
#include "sighting/mark_spacing.h"
#include "walking/profile_summary.h"

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace brushline {

//! Which way a route is walked. The numbers are those of the parameter DIRECTION.
enum class Direction { Out = 0, Back = 1, Both = 2 };

//! What needs saying about a leg.
enum class LegRemark {
  CompassBlackout, //!< no compass works here
  CompassCaution,  //!< the needle is slow and easily drawn off
  NoTerrain,       //!< metres of the leg have no heights
  GapBefore,       //!< the leg starts so many metres from where the one before ended
  NoCover,         //!< metres of the leg have no known cover
  NotWalked,       //!< metres of the leg lie in a class that nobody walks (water)
  Blind,           //!< on so many metres, and paces, not even the least spacing can be seen
};

struct LegWarning {
  LegRemark remark;
  double metres = 0;
  long paces = 0;       //!< for Blind
  int cover = -1;       //!< for NotWalked: the class
};

//! A mark on a leg, and what the walker has counted on reaching it.
struct LegMark {
  double at_m;
  long paces;                    //!< from the leg's start
  std::optional<double> sight_m; //!< from where it is sighted; none where nothing is known to hide marks
};

//! A leg for one walker.
struct LegForWalker {
  long paces = 0;                //!< whole, of the walker's kind
  std::optional<Duration> time;  //!< on level ground without terrain; none across what nobody walks
  std::optional<double> sight_m; //!< the shortest along the leg; none without cover
  std::optional<double> spacing_m; //!< the median; none without cover
  long sightings = 0;            //!< to take
  DriftEllipse drift;            //!< at the leg's end, since the last place found with certainty
  std::vector<LegMark> marks;    //!< when asked for; the last one at the leg's end
  std::vector<LegWarning> warnings;
};

//! A leg, worked out.
struct AnnotatedLeg {
  int number = 0;    //!< from 1, in the order walked
  bool back = false; //!< walked against the route's own direction
  size_t from_source = 0, to_source = 0;           //!< RouteVertex::source of its ends
  Place start, end;
  const NamedPlace *from = nullptr, *to = nullptr; //!< named places at its ends

  TrueBearing true_bearing; //!< at the start
  GridBearing grid_bearing;
  Convergence convergence; //!< at the start; NaN where the projection does not reach
  LocalField field;        //!< at the start
  std::optional<MagneticBearing> magnetic_bearing; //!< none where a compass cannot be used

  std::optional<double> dial, back_dial; //!< in the dial's unit; back_dial as sighted from the end to the start
  Length length;                         //!< geodesic
  std::optional<ProfileSummary> profile; //!< none without terrain, or where it has gaps on the leg
  int cover = -1;                        //!< the class with the longest share; -1: none is known
  bool overlapping_cover = false;
  std::vector<LegForWalker> by_walker;   //!< in the walkers' order
  std::vector<LegWarning> warnings;      //!< for every walker
};

//! What a route's legs are worked out with. The pointers are borrowed.
struct AnnotateSettings {
  const FieldSetting *field = nullptr; //!< never null
  Compass compass;
  std::vector<Walker> walkers; //!< at least one
  Direction direction = Direction::Out;
  const NamedPlaces *names = nullptr;      //!< may be null
  bool named_found = true;                 //!< named places are found with certainty: drift starts anew there
  double clear_sight = SpacingRule::clearLimits.usual; //!< the probability that a usable mark needs
  SpacingRule spacing;
  const CoverTable *cover_table = nullptr; //!< not null when a cover source is given
  double unknown_speed = 1;                //!< speed factor where the cover is not known, > 0
  bool keep_marks = false;
};

/**
 * Works out the legs of routes. One thread at a time; the same result whatever came before.
 */
class LegAnnotator {
public:
  //! \param terrain, cover may be null.
  LegAnnotator(AnnotateSettings settings, std::unique_ptr<Terrain> terrain, std::unique_ptr<CoverSource> cover);

  /**
   * The legs of one route, in the order walked; for Direction::Both out and then back.
   *
   * Bearings: true from the geodesic at the leg's start (WGS84); grid from the vertices' grid coordinates; magnetic =
   * true - declination at the start. The back bearing is taken at the leg's end. Height for the field from the
   * terrain, 0 without.
   *
   * Sight: along the leg's line and beyond its end, to where the cover hides marks from there, whatever the spacing;
   * but no farther than 10 km, and 500 m (or what the most spacing needs, if that is more) where the cover is not known
   * there. None when nothing hides marks that far. Without any known cover on a leg there is no sight and no spacing,
   * and marks lie the most spacing apart; where part of it is not known, nothing hides marks there and a warning tells
   * the metres.
   *
   * Drift: sightings by the walker's error, hop by hop; the dial's graduation as a common error of a leg; the
   * declination's error (none when it was read off a map) as one for the whole route.
   *
   * Degenerate: vertices less than 1 mm from the one before are merged; a part with one vertex left gives no leg; no
   * parts, no legs.
   * Bad input: std::invalid_argument when Route::grid is not a projected coordinate system. Places must be finite.
   * \throws Cancelled
   */
  std::vector<AnnotatedLeg> annotate(const Route &route, const Progress &progress);

  const CoverSource *cover() const { return mCover.get(); }

private:
  struct Ground;
  const GridNorth &gridNorth(const std::string &grid);
  Ground groundOf(AnnotatedLeg &leg, TrueBearing arrival, std::optional<Profile> profile);
  LegForWalker walk(const AnnotatedLeg &leg, const Ground &ground, const Walker &walker, RouteDrift &drift) const;

  AnnotateSettings mSettings;
  std::unique_ptr<Terrain> mTerrain;
  std::unique_ptr<CoverSource> mCover;
  std::map<std::string, GridNorth> mGrids;
};

} // namespace brushline
