// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/angle.h"
#include "quantities/bearing.h"
#include "quantities/place.h"

#include <string>

namespace brushline {

/**
 * A number in as few digits as give it back exactly, with a point in every locale: "276", "0.1", "1e-05".
 *
 * Degenerate: "-0" becomes "0". Bad input: NaN and infinite give "".
 */
std::string shortestNumber(double value);

/**
 * A number with so many decimals and a point in every locale; never "-0". NaN and infinite give "".
 */
std::string roundedNumber(double value, int decimals);

/**
 * Coordinates as GPX 1.1 wants them: decimal degrees, no exponent, nine decimals at most (0.1 mm).
 *
 * \param latitude -90 to 90 degrees. \param longitude east positive, any turn.
 * \returns the longitude in -180 <= x < 180: the antimeridian is -180, also when it comes of rounding.
 * Source: types latitudeType and longitudeType of the schema of GPX 1.1.
 */
std::string gpxLatitude(Angle latitude);
std::string gpxLongitude(Angle longitude);

/**
 * A declination as GPX 1.1 has it in magvar: clockwise from true north in 0 <= x < 360, six decimals at most; 13
 * degrees west is 347.
 *
 * Source: type degreesType of the schema of GPX 1.1.
 */
std::string gpxMagneticVariation(Declination declination);

/**
 * The box around places, in the numbers that are written. Longitudes count from -180 up to 180, so that the box of
 * places on both sides of the antimeridian runs around the Earth: every reader finds them inside.
 */
class GpxBounds {
public:
  void add(const Place &place);
  bool empty() const { return mSouth > mNorth; }
  std::string south() const { return gpxLatitude(Angle::degrees(mSouth)); }
  std::string north() const { return gpxLatitude(Angle::degrees(mNorth)); }
  std::string west() const { return gpxLongitude(Angle::degrees(mWest)); }
  std::string east() const { return gpxLongitude(Angle::degrees(mEast)); }

private:
  double mSouth = 91, mNorth = -91, mWest = 181, mEast = -181;
};

/**
 * The letters of the n-th of several things, from 0: "A" ... "Z", "AA", "AB" ...
 */
std::string letterOf(size_t index);

} // namespace brushline
