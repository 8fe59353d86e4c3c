// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "handouts/course_drawing.h"
#include "handouts/leg_sheets_host.h"
#include "handouts/map_scale.h"
#include "handouts/profile_drawing.h"
#include "shared/terrain.h"

#include <qgscoordinatereferencesystem.h>
#include <qgscoordinatetransformcontext.h>
#include <qgsrectangle.h>

#include <vector>

namespace brushline {

/**
 * A course in the projection of its map: the layer's own where that is true to scale in all directions over the whole
 * course, else the UTM zone (or polar cap) of its place.
 */
class CourseMap {
  Q_DECLARE_TR_FUNCTIONS(brushline::CourseMap)

public:
  //! Throws QgsProcessingException when the course cannot be brought into any of them.
  CourseMap(const LegSheet &sheet, const QgsCoordinateReferenceSystem &layerCrs,
            const QgsCoordinateTransformContext &transforms);

  const QgsCoordinateReferenceSystem &crs() const { return mCrs; }
  //! The ground that the course covers.
  GroundSize size() const { return {mBox.width() / mUnits, mBox.height() / mUnits}; }
  //! What a map shows: the course in its middle, at a scale that is true there.
  QgsRectangle extent(const Area &map, MapScale scale) const;
  //! Its legs on a map.
  std::vector<LegOnMap> legs(const Area &map, MapScale scale) const;
  /**
   * Where magnetic north lies in the middle of the map, by the declination of the leg nearest to it; true north for
   * legs without declination or dial; none where the projection does not tell.
   */
  std::optional<MapNorth> north() const { return mNorth; }

private:
  struct Line {
    int number;
    std::vector<double> x, y, mark_x, mark_y;
    std::string letter;
  };
  bool tryIn(const LegSheet &sheet, const QgsCoordinateReferenceSystem &crs,
             const QgsCoordinateTransformContext &transforms);
  void findNorth(const LegSheet &sheet, const QgsCoordinateTransformContext &transforms);
  Spot onPaper(double x, double y, const Area &map, MapScale scale) const;

  QgsCoordinateReferenceSystem mCrs;
  std::vector<Line> mLines;
  QgsRectangle mBox;
  double mUnits = 1;  // of the map's coordinates to a metre on the ground
  double mUneven = 0; // the largest share by which that changes over the course
  std::optional<MapNorth> mNorth;
};

//! The ground along a sheet's legs. Gaps between legs are left open.
std::vector<CourseProfile::Point> groundAlong(const LegSheet &sheet, Terrain &terrain);

//! The legs of a profile, with their marks.
std::vector<ProfileLeg> profileLegs(const LegSheet &sheet);

} // namespace brushline
