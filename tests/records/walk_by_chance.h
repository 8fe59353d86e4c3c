// SPDX-License-Identifier: GPL-2.0-or-later
// Someone who walks legs by compass and pace count, errs by chance and carries a receiver: written apart from what it
// checks. In a plane, x to the east and y to the north.
#pragma once

#include "records/track.h"
#include "records/turn_cutting.h"
#include "shared/geodesic.h"

#include <array>
#include <cmath>
#include <cstdint>
#include <random>
#include <vector>

namespace brushline::test {

using XY = std::array<double, 2>;

class WalkByChance {
public:
  //! All of them 1 sigma and independent of each other, unless they say otherwise.
  struct Errors {
    double common_brg = 0;   //!< degrees, added to every bearing; not by chance
    double leg_brg = 0;      //!< of each leg's bearing
    double common_dist = 0;  //!< share, added to every length; not by chance
    double leg_dist = 0;     //!< share, of each leg's length
    double hop_brg = 0;      //!< degrees, of each hop from mark to mark; the leg's last hop makes up for the rest
    double hop_m = 20;       //!< a hop
    double fix = 0;          //!< metres, of a fix in each direction
    double fix_memory_s = 0; //!< 0: each fix errs anew; else errors fade with this time (first-order process)
    double speed = 0.8;      //!< m/s
    double every_s = 1;      //!< between fixes
    double stand_s = 0;      //!< at every turn
  };

  struct Walk {
    std::vector<XY> turns;          //!< where the walker really turned, start and end included
    std::vector<double> turn_times; //!< of arrival
    std::vector<XY> fixes;
    std::vector<double> times;
  };

  explicit WalkByChance(uint64_t seed) : mNumbers(seed) {}

  Walk walk(const std::vector<XY> &plan, const Errors &errors) {
    Walk walk;
    XY at = plan[0];
    std::vector<XY> way{at};
    std::vector<double> times{0};
    walk.turns.push_back(at);
    walk.turn_times.push_back(0);
    for (size_t leg = 1; leg < plan.size(); ++leg) {
      if (leg > 1 && errors.stand_s > 0) {
        way.push_back(at);
        times.push_back(times.back() + errors.stand_s);
      }
      const double dx = plan[leg][0] - plan[leg - 1][0], dy = plan[leg][1] - plan[leg - 1][1];
      const double bearing = std::atan2(dx, dy) + (errors.common_brg + errors.leg_brg * normal()) * degree;
      const double length = std::hypot(dx, dy) * (1 + errors.common_dist + errors.leg_dist * normal());
      const XY end{at[0] + length * std::sin(bearing), at[1] + length * std::cos(bearing)};
      for (double left = length; left > errors.hop_m && errors.hop_brg > 0; left -= errors.hop_m) {
        // Each hop aims at the leg's end and misses by its error.
        const double aim = std::atan2(end[0] - at[0], end[1] - at[1]) + errors.hop_brg * degree * normal();
        at = {at[0] + errors.hop_m * std::sin(aim), at[1] + errors.hop_m * std::cos(aim)};
        step(way, times, at, errors.speed);
      }
      at = end;
      step(way, times, at, errors.speed);
      walk.turns.push_back(at);
      walk.turn_times.push_back(times.back());
    }
    const double fade = errors.fix_memory_s > 0 ? std::exp(-errors.every_s / errors.fix_memory_s) : 0;
    XY off{errors.fix * normal(), errors.fix * normal()};
    size_t k = 1;
    for (double t = 0;; t += errors.every_s) {
      const double time = std::min(t, times.back());
      while (k + 1 < times.size() && times[k] < time)
        ++k;
      const double share = times[k] > times[k - 1] ? (time - times[k - 1]) / (times[k] - times[k - 1]) : 1;
      walk.fixes.push_back({way[k - 1][0] + share * (way[k][0] - way[k - 1][0]) + off[0],
                            way[k - 1][1] + share * (way[k][1] - way[k - 1][1]) + off[1]});
      walk.times.push_back(time);
      const double fresh = errors.fix * std::sqrt(1 - fade * fade);
      off = {fade * off[0] + fresh * normal(), fade * off[1] + fresh * normal()};
      if (t >= times.back())
        break;
    }
    return walk;
  }

  double normal() { return std::sqrt(-2 * std::log(uniform())) * std::cos(2 * std::acos(-1.0) * uniform()); }
  double uniform() { return (double(mNumbers() >> 11) + 0.5) * 0x1p-53; }

private:
  static constexpr double degree = 3.14159265358979323846 / 180;
  static void step(std::vector<XY> &way, std::vector<double> &times, const XY &to, double speed) {
    times.push_back(times.back() + std::hypot(to[0] - way.back()[0], to[1] - way.back()[1]) / speed);
    way.push_back(to);
  }
  std::mt19937_64 mNumbers;
};

//! The plane laid onto the Earth about a place, and back, by geodesics from it.
inline Place placeOf(const XY &at, const Place &origin) {
  return geodesicDestination(origin, TrueBearing(Angle::radians(std::atan2(at[0], at[1]))),
                             Length::metres(std::hypot(at[0], at[1])));
}

inline std::vector<TrackFix> fixesOf(const WalkByChance::Walk &walk, const Place &origin) {
  std::vector<TrackFix> fixes;
  for (size_t i = 0; i < walk.fixes.size(); ++i)
    fixes.push_back({placeOf(walk.fixes[i], origin), walk.times[i], false});
  return fixes;
}

//! A track straight from plane points, every one a second after the one before.
inline CleanTrack trackOf(const std::vector<XY> &points) {
  CleanTrack track;
  for (const XY &p : points)
    track.fixes.push_back({{p[0], p[1]}, double(track.fixes.size()), double(track.fixes.size()), false, false});
  track.times = TrackTimes::Kept;
  return track;
}

//! Points along lines between corners, the corners among them when the steps fall on them.
inline std::vector<XY> along(const std::vector<XY> &corners, double step, double offset = 0) {
  std::vector<XY> points;
  double ahead = offset;
  for (size_t i = 1; i < corners.size(); ++i) {
    const double length = std::hypot(corners[i][0] - corners[i - 1][0], corners[i][1] - corners[i - 1][1]);
    for (; ahead <= length + 1e-9; ahead += step)
      points.push_back({corners[i - 1][0] + ahead / length * (corners[i][0] - corners[i - 1][0]),
                        corners[i - 1][1] + ahead / length * (corners[i][1] - corners[i - 1][1])});
    ahead -= length;
  }
  return points;
}

inline std::vector<MeantLeg> meantOf(const std::vector<XY> &plan) {
  std::vector<MeantLeg> legs;
  for (size_t i = 1; i < plan.size(); ++i)
    legs.push_back({{plan[i - 1][0], plan[i - 1][1]}, {plan[i][0], plan[i][1]}, false});
  return legs;
}

} // namespace brushline::test
