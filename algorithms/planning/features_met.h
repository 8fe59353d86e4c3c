// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "planning/leg_line.h"
#include "shared/shapes.h"
#include "shared/terrain.h"

#include <vector>

namespace brushline {

//! Where one meets a feature. Beyond: after the leg's end, going on by the same bearing.
enum class MetRole { Crossed, Left, Right, Beyond };

//! What happens there.
enum class MetEvent {
  Across,      //!< a line is crossed
  Touched,     //!< a line or a point is come to, and not crossed
  Along,       //!< a line runs along the leg from here
  Into,        //!< a polygon is entered
  OutOf,       //!< and left
  Passed,      //!< to one side, nearest here
  GroundRises, //!< the ground, from here on
  GroundFalls,
  GroundLevels,
};

//! One thing met.
struct FeatureMet {
  MetRole role;
  MetEvent event;
  size_t shape;    //!< of the shapes; noShape for the ground
  double at_m;     //!< from the leg's start
  double across_m; //!< to the right positive; 0 on the line

  static constexpr size_t noShape = size_t(-1);
};

//! What counts as met.
struct MeetRule {
  Length width; //!< what lies no farther to either side is passed
  Length reach; //!< how far beyond the end one goes on looking
};

/**
 * What one crosses and passes along a leg, in the order of the way, and what would be met first beyond its end.
 *
 * A line that is crossed more than once is met each time, one that is touched (in a vertex or at its own end) once; one
 * that runs along the leg where it begins to. A polygon is met where it is entered and left; a leg that starts in one
 * does not enter it. What is neither crossed nor touched and lies within the width is passed where it is nearest, once.
 * What lies at the leg's start (to 1 mm) is where one stands, and not met; what lies at its end is. Beyond the end only
 * the first line or polygon counts: it catches one who has gone too far.
 *
 * What is nearest at the start, or behind it, was passed on the leg before and is not met again, unless it goes on
 * within the width beside the first 50 m of the leg, or half of a leg under 100 m: a handrail or a shore is passed from
 * the start, or where it is nearest after it; one that lies on the leg's line there runs along it. What leaves sooner
 * and comes within the width again is passed there. Common practice, no source, for the 50 m.
 *
 * Bad input: none; shapes without places are no shapes. Accuracy: that of LegLine.
 */
std::vector<FeatureMet> featuresMet(const Shapes &shapes, const LegLine &leg, const MeetRule &rule);

/**
 * Where the ground changes along a profile: rises, falls away, levels out.
 *
 * The grade is that over 30 m, 15 m to either side of a place. The ground rises or falls where it exceeds 15 percent
 * and levels out where it is under 5 percent again; so small bumps are not told. What it does at the start is not told,
 * only changes are. Common practice, no source, for all three numbers.
 *
 * \param profile with or without gaps: across a gap nothing is told, and after it the ground is judged anew.
 * \returns changes in order; their roles are Crossed.
 */
std::vector<FeatureMet> slopeBreaks(const Profile &profile);

/**
 * Features and changes of the ground together, in the order of the way; beyond the end the first of either.
 *
 * \param profile of the leg and beyond its end; null: nothing is known of the ground.
 */
std::vector<FeatureMet> allMet(const Shapes &shapes, const LegLine &leg, const Profile *profile, const MeetRule &rule);

} // namespace brushline
