// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "planning/leg_frame.h"
#include "quantities/bearing.h"
#include "quantities/length.h"
#include "quantities/place.h"
#include "shared/shapes.h"

#include <vector>

namespace brushline {

/**
 * The straight line of a leg, on before its start and beyond its end, as what lies round it is measured. One thread at
 * a time. Accuracy: that of LegFrame.
 */
class LegLine {
public:
  LegLine(const Place &start, TrueBearing departure, Length length);

  LegPoint at(const Place &place) const { return mFrame.toLeg(place, mStation); }
  //! The place on the line.
  Place placeAt(double along_m) const { return mFrame.toPlace({along_m, 0}); }
  //! A place beside the line.
  Place placeOff(const LegPoint &point) const { return mFrame.toPlace(point); }
  double length_m() const { return mLength; }

  //! Stretches of shapes that may come within reach of the leg, carried on beyond its end; in order, none twice.
  std::vector<ShapeStretch> near(const Shapes &shapes, Length beyond, Length reach) const;

private:
  double mLength;
  LegFrame mFrame;
  mutable size_t mStation = 0; // where the last place was found
};

/**
 * Whether a place lies inside a shape's rings (even-odd), whose edges are geodesics, as in LegLine. False for points
 * and lines.
 *
 * A shape of up to 10000 km, anywhere. Accuracy: 1 mm at edges of 10 km.
 */
bool isInside(const Shape &shape, const Place &place);

} // namespace brushline
