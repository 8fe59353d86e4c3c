// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "planning/obstacles.h"
#include "quantities/length.h"
#include "quantities/progress.h"
#include "shared/geodesic.h"
#include "shared/limits.h"
#include "shared/route.h"

#include <optional>
#include <vector>

namespace brushline {

//! What a piece of a leg is: on the leg's own line, or one of the three sides of a detour.
enum class LegPart { Along, Out, Past, Back };

//! As one who walks the leg sees it.
enum class Side { Left, Right };

//! How obstacles are kept away from.
struct DetourRule {
  Length clearance = Length::metres(clearanceLimits.usual);
  Length most_out = Length::metres(mostOutLimits.usual); //!< the longest way out

  static constexpr Limits clearanceLimits{0, 1000, 5};
  static constexpr Limits mostOutLimits{1, 10000, 200};
};

//! A way round on three sides.
struct Detour {
  double leaves_m, returns_m; //!< where, metres from the leg's start
  double out_m;               //!< the length of the way out, and of the way back
  Side side;
  std::vector<size_t> obstacles; //!< that it leads round
};

//! Why a side offers no way round.
enum class Refusal {
  TooFarOut,    //!< the way out would be longer than allowed
  NoRoomBefore, //!< the way out would lie before the leg's start, or before where it can start
  NoRoomAfter,  //!< the way back would lie beyond the leg's end
};

//! How an end of a leg lies to the obstacles.
enum class EndState { Clear, Near, Inside };

//! An obstacle that the leg runs into, and no right-angled way round it.
struct NotPassed {
  double from_m, to_m; //!< of the leg: within obstacles or nearer to them than the clearance
  std::vector<size_t> obstacles;
  EndState start = EndState::Clear, end = EndState::Clear;       //!< of the leg, where this stretch reaches it
  Refusal left = Refusal::TooFarOut, right = Refusal::TooFarOut; //!< of no meaning unless both ends are clear
};

//! A straight piece that is walked.
struct LegPiece {
  LegPart part;
  Place from, to;
  GeodesicLeg geodesic;         //!< between them
  double from_m, to_m;          //!< the leg's own count at both ends; the same where a piece does not count
  std::optional<size_t> detour; //!< that it belongs to
};

//! A leg and its ways round.
struct DetouredLeg {
  Length length;
  std::vector<LegPiece> pieces; //!< in the order walked; each starts where the one before ends
  std::vector<Detour> detours;
  std::vector<NotPassed> not_passed;
};

/**
 * A leg with right-angled detours where it runs into obstacles: a quarter turn off and out, past the obstacle parallel
 * to the leg, a quarter turn back and as far in again as out.
 *
 * All is worked out in the leg's own coordinates (LegFrame). Clearance is kept along and across: every way out, past
 * and back, widened by the clearance to all four sides, is free of all obstacles, so nothing is nearer than the
 * clearance; and the leg itself likewise, but at its ends by the plain distance. Obstacles are taken in the order they
 * are met. On each side the shortest way out is found for which such a box exists, with the turns as near the obstacle
 * as they can be; obstacles that the box would run into are taken into it. The side with the shorter way out is taken,
 * of equal ones the right. Where a box has no room behind the one before, both become one.
 *
 * Exactness: turns lie on the leg's geodesic and its squares; out and back are equally long and return to the line to
 * 0.1 mm; past is shorter than the piece of the leg that it passes by the share out^2 / 2 R^2 (1.2e-8 at 1 km). Its
 * ends' bearings differ from right angles by out * past / 2 R^2 (1e-6 degrees at 1 by 1.4 km). Less
 * than 1 mm of an obstacle is overlooked, for box sides beyond 5 km off the leg 10 mm. With a clearance of 0 touching
 * is allowed: corners, and walking along an edge.
 *
 * \param from, to at least 1 mm apart.
 * \throws Cancelled
 * Bad input: places must be finite.
 */
DetouredLeg detourLeg(const Place &from, const Place &to, const Obstacles &obstacles, const DetourRule &rule,
                      const Progress &progress);

//! A leg of a route.
struct RouteLeg {
  size_t part;
  RouteVertex from, to;
  DetouredLeg way;
};

/**
 * The legs of a route with their detours, in order. Vertices less than 1 mm from the one before are merged, as
 * elsewhere.
 */
std::vector<RouteLeg> detourRoute(const Route &route, const Obstacles &obstacles, const DetourRule &rule,
                                  const Progress &progress);

} // namespace brushline
