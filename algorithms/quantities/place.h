// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/angle.h"

namespace brushline {

//! A place on the WGS84 ellipsoid: geodetic latitude, north positive; longitude, east positive, any turn.
struct Place {
  Angle latitude;
  Angle longitude;
};

} // namespace brushline
