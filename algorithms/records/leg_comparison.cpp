// SPDX-License-Identifier: GPL-2.0-or-later
#include "records/leg_comparison.h"

#include "records/walked_turn.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace brushline {

namespace {
constexpr double unlikeTurn = 45; // degrees
constexpr double unlikeShare = 2;
constexpr size_t enoughLegs = 3; // for a median that one leg does not spoil

PlanePoint minus(const PlanePoint &a, const PlanePoint &b) { return {a.east - b.east, a.north - b.north}; }

//! A straight line on the plane, and places as one who walks it sees them.
struct Sight {
  PlanePoint from, way;
  Sight(const PlanePoint &start, const PlanePoint &end) : from(start) {
    const PlanePoint step = minus(end, start);
    const double length = std::hypot(step.east, step.north);
    way = length > 0 ? PlanePoint{step.east / length, step.north / length} : PlanePoint{0, 0};
  }
  double along(const PlanePoint &p) const {
    return (p.east - from.east) * way.east + (p.north - from.north) * way.north;
  }
  double right(const PlanePoint &p) const {
    return (p.east - from.east) * way.north - (p.north - from.north) * way.east;
  }
};

double standing(const std::vector<CleanFix> &fixes, const WalkedTurn &from, const WalkedTurn &to, double begin,
                double end) {
  double seconds = 0;
  for (size_t i = size_t(from.place); i < fixes.size() && double(i) <= to.place; ++i)
    if (fixes[i].stand)
      seconds += std::max(0.0, std::min(end, *fixes[i].left_s) - std::max(begin, *fixes[i].arrived_s));
  return seconds;
}

// The fixes of a leg: off the planned line, off the walked one.
void addProfile(WalkedLeg &leg, const std::vector<CleanFix> &fixes, const WalkedTurn &from, const WalkedTurn &to,
                const Sight &planned, const LocalPlane &plane, std::optional<double> begin) {
  const Sight walked(from.at, to.at);
  double squares = 0;
  const auto add = [&](const PlanePoint &at, std::optional<double> time) {
    const double cross = planned.right(at);
    leg.profile.push_back({plane.toPlace(at), planned.along(at), cross,
                           time && begin ? std::optional((*time - *begin) / 60) : std::nullopt});
    if (!leg.cross_m || std::abs(cross) > std::abs(*leg.cross_m))
      leg.cross_m = cross;
    squares += walked.right(at) * walked.right(at);
  };
  add(from.at, begin);
  for (size_t i = size_t(std::floor(from.place)) + 1; i < fixes.size() && double(i) < to.place; ++i)
    add(fixes[i].at, fixes[i].arrived_s);
  add(to.at, to.arrived_s);
  leg.wander_m = std::sqrt(squares / double(leg.profile.size()));
}

WalkedLeg compare(const std::vector<CleanFix> &fixes, const WalkedTurn &from, const WalkedTurn &to,
                  const PlannedLeg &meant, const LocalPlane &plane, bool first, bool begun) {
  WalkedLeg leg;
  leg.share = begun ? LegShare::Begun : LegShare::Whole;
  leg.start_seen = from.seen;
  leg.end_seen = to.seen;
  leg.gap_at_turn = from.in_gap || to.in_gap;
  leg.start = plane.toPlace(from.at);
  leg.end = plane.toPlace(to.at);
  const bool seen = from.seen && to.seen;

  const GeodesicLeg walked = geodesicBetween(leg.start, leg.end);
  const double length = walked.length.metres();
  if (length > 0) {
    leg.walked = walked.departure;
    const double turn = (walked.departure.angle() - meant.geodesic.departure.angle()).signedTurn().degrees();
    leg.brg_diff = turn <= -180 ? turn + 360 : turn;
    const PlanePoint step = minus(to.at, from.at);
    const double e = step.east / std::hypot(step.east, step.north), n = step.north / std::hypot(step.east, step.north);
    const double ee = from.ee + to.ee, en = from.en + to.en, nn = from.nn + to.nn;
    leg.length_sigma = std::sqrt(std::max(0.0, e * e * ee + 2 * e * n * en + n * n * nn));
    leg.brg_sigma =
        Angle::radians(std::sqrt(std::max(0.0, n * n * ee - 2 * e * n * en + e * e * nn)) / length).degrees();
  }
  if (seen) {
    leg.walked_m = length;
    if (!begun) {
      leg.dist_diff = length - meant.geodesic.length.metres();
      leg.miss_m = geodesicBetween(meant.to, leg.end).length.metres();
      const Place aimed = geodesicDestination(leg.start, meant.geodesic.departure, meant.geodesic.length);
      leg.own_m = geodesicBetween(aimed, leg.end).length.metres();
    }
  }
  const std::optional<double> begin = first ? from.left_s : from.arrived_s;
  if (seen && begin && to.arrived_s && *to.arrived_s >= *begin) {
    leg.minutes = (*to.arrived_s - *begin) / 60;
    leg.stand_min = standing(fixes, from, to, *begin, *to.arrived_s) / 60;
  }
  addProfile(leg, fixes, from, to, Sight(plane.toPlane(meant.from), plane.toPlane(meant.to)), plane, begin);
  return leg;
}

// The median of turns, counted from their mean direction, since 179 and -179 are nearly the same.
double medianTurn(std::vector<double> turns) {
  double sines = 0, cosines = 0;
  for (const double turn : turns) {
    sines += std::sin(turn * Angle::pi / 180);
    cosines += std::cos(turn * Angle::pi / 180);
  }
  const double mean = std::atan2(sines, cosines) * 180 / Angle::pi;
  for (double &turn : turns)
    turn = std::remainder(turn - mean, 360);
  std::sort(turns.begin(), turns.end());
  return mean + turns[turns.size() / 2];
}

void markUnlike(std::vector<WalkedLeg> &legs, const std::vector<PlannedLeg> &planned) {
  std::vector<double> turns;
  for (const WalkedLeg &leg : legs)
    if (leg.brg_diff)
      turns.push_back(*leg.brg_diff);
  const double median = turns.size() >= enoughLegs ? medianTurn(std::move(turns)) : 0;
  for (size_t i = 0; i < legs.size(); ++i) {
    WalkedLeg &leg = legs[i];
    if (leg.share == LegShare::None || planned[i].any_way)
      continue;
    const double share =
        leg.walked_m && leg.share == LegShare::Whole ? *leg.walked_m / planned[i].geodesic.length.metres() : 1;
    leg.like = leg.brg_diff && std::abs(std::remainder(*leg.brg_diff - median, 360)) <= unlikeTurn &&
               share <= unlikeShare && share >= 1 / unlikeShare;
  }
}
} // namespace

std::vector<WalkedLeg> compareLegs(const CleanTrack &track, const TrackCuts &cuts, const std::vector<PlannedLeg> &legs,
                                   const LocalPlane &plane, double error_m, const Progress &progress) {
  std::vector<WalkedTurn> turns;
  for (size_t i = 0; i < cuts.cuts.size(); ++i) {
    progress.check();
    turns.push_back(walkedTurn(track, cuts, i, error_m));
  }
  std::vector<WalkedLeg> result(legs.size());
  for (size_t i = 0; i + 1 < turns.size(); ++i) {
    progress.check();
    const size_t leg = cuts.first_leg + i;
    if (!legs[leg].any_way)
      result[leg] = compare(track.fixes, turns[i], turns[i + 1], legs[leg], plane, i == 0 || legs[leg - 1].any_way,
                            cuts.partial && i + 2 == turns.size());
  }
  markUnlike(result, legs);
  return result;
}

std::vector<MeantLeg> onPlane(const std::vector<PlannedLeg> &legs, const LocalPlane &plane) {
  std::vector<MeantLeg> result;
  for (const PlannedLeg &leg : legs)
    result.push_back({plane.toPlane(leg.from), plane.toPlane(leg.to), leg.any_way});
  return result;
}

} // namespace brushline
