// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "legs/annotate_legs.h"
#include "planning/course_ground.h"

#include <memory>
#include <optional>
#include <string>

namespace brushline {

//! Why a leg may not be walked.
enum class LegBar { None, Length, LeavesArea, Avoided, NotWalked, NoCover, NoHeight, Steep };
constexpr size_t legBars = 8;

//! What a leg asks of those who walk it one way. Rounded, so that choices come out alike on every machine.
struct LegEffort {
  double climb_m = 0;      //!< 0 without terrain
  double seconds = 0;      //!< of the slowest walker
  double bare_seconds = 0; //!< the same if nothing grew there
  double across_m = 0;     //!< drift_m of annotated legs, of the walker who drifts most
  double reach_m = 0;      //!< no more than 5 percent end farther from the leg's end than this
  double unknown_m = 0;    //!< of it without known cover
};

//! A leg between two spots; what is known of it.
struct CourseLeg {
  LegBar bar = LegBar::None;
  double length_m = 0;
  LegEffort out, back;
};

//! The lengths a leg may have.
struct LegWindow {
  double least_m, most_m;
};

/**
 * Works out the legs of courses as annotated legs are: one at a time, one thread.
 */
class CourseLegs {
public:
  struct Tools {
    const CourseGround *ground = nullptr;                          //!< borrowed; never null
    AnnotateSettings legs;                                         //!< field, compass, walkers, cover
    std::unique_ptr<Terrain> terrain, bare_terrain, slope_terrain; //!< the same model thrice; all null without
    std::unique_ptr<CoverSource> cover, spot_cover;                //!< the same cover twice; both null without
    Angle slope_limit = Angle::degrees(90);
    bool cover_classes = false; //!< whether the cover has classes and so slows; else it only hides
    bool close_unknown = false; //!< nobody is sent where the cover is not known
  };

  explicit CourseLegs(Tools tools);

  //! \throws Cancelled
  CourseLeg between(const Place &from, const Place &to, const GroundPoint &a, const GroundPoint &b,
                    const LegWindow &window, const Progress &progress);

  //! Whether nobody walks at a place, or it has no height or, where that closes it, no known cover.
  bool closedAt(const Place &place);

  /**
   * How far from its end no more than 5 percent of walks of a length end, where nothing hides marks: so no leg of that
   * length or less does worse. Metres, rounded up.
   */
  double farthestReach(double length_m, const Progress &progress);

  bool hasTerrain() const { return bool(mTools.slope_terrain); }
  bool hasCover() const { return mTools.cover_classes; }
  const CoverSource *cover() const { return mAnnotator.cover(); }

private:
  Route routeOf(const Place &from, const Place &to) const;
  LegEffort effortOf(const AnnotatedLeg &leg) const;

  Tools mTools;
  std::string mGrid;
  LegAnnotator mAnnotator, mBare;
};

} // namespace brushline
