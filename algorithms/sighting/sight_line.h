// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/length.h"
#include "shared/terrain.h"

#include <optional>
#include <utility>
#include <vector>

namespace brushline {

//! A piece of a line through cover of one extinction.
struct SightStretch {
  double to_m;       //!< its end from the line's start; it starts where the one before ends
  double extinction; //!< 1/m, >= 0
};

//! Who looks, and what counts as seen.
struct Looking {
  double clear_probability;                          //!< of a clear sight that a usable mark needs, in (0, 1)
  Length eye_height = Length::metres(1.6);           //!< above the ground
  Length mark_height = Length::metres(1.0);          //!< above the ground
};

/**
 * How far one sees along a line, from any place on it towards its end: through the cover, and over the ground where a
 * profile is given.
 *
 * Cover: the distance at which the probability exp(-integral of k) of a clear sight falls to the one asked for.
 * Ground: up to the first point where the ground between hides a mark from the eye. The Earth's curve is left out: over
 * 400 m it is 13 mm.
 */
class SightLine {
public:
  /**
   * \param stretches in order, covering the line; to_m grows. Empty: nothing hides anything but the ground.
   * \param profile of the same line, from its start; null: level ground. Where it has no data nothing is hidden.
   */
  explicit SightLine(std::vector<SightStretch> stretches, std::optional<Profile> profile = std::nullopt);

  //! Gives the ground that a line made without a profile lies on.
  void setProfile(Profile profile) { mProfile = std::move(profile); }

  //! Length of the cover known, metres.
  double length() const { return mStretches.empty() ? 0 : mStretches.back().to_m; }

  //! The probability of a clear sight between two places of the line (metres from its start, to >= from).
  double visibility(double from_m, double to_m) const;

  //! The sight distance from a place, metres; infinite when nothing hides marks up to the line's end.
  double sightFrom(double at_m, const Looking &looking) const;

  /**
   * The shortest sight distance from any place between two of the line.
   *
   * Exact in the cover: between borders the sight distance is linear in the place, so its least value lies where the
   * eye or the point just seen is on a border. Over the ground: looked for at every step of the profile and between, a
   * metre apart at the most; before an edge beyond which the ground falls by a slope s that is too far by 0.2 s metres.
   */
  double shortestSight(double from_m, double to_m, const Looking &looking) const;

private:
  double opticalDepth(double at_m) const;
  double placeOfDepth(double depth) const;
  double coverSight(double at_m, double exponent) const; // until the optical depth has grown by the exponent
  double groundSight(double at_m, double farthest_m, const Looking &looking) const;
  //! The least of a sight and those over the ground from between two places.
  double shortestGroundSight(double from_m, double to_m, double shortest, const Looking &looking) const;

  std::vector<SightStretch> mStretches;
  std::vector<double> mDepths; // optical depth at the end of each stretch
  std::optional<Profile> mProfile;
};

//! Whether the ground lets an eye at the profile's start see a mark at its end; what has no data hides nothing.
bool groundLetsSee(const Profile &profile, Length eye_height, Length mark_height);

} // namespace brushline
