// SPDX-License-Identifier: GPL-2.0-or-later
#include "handouts/course_map_host.h"

#include "shared/geodesic.h"
#include "shared/geodesic_chords.h"
#include "shared/grid_north.h"
#include "shared/place_reader_host.h"
#include "shared/raster_host.h"

#include <qgscoordinatetransform.h>
#include <qgsexception.h>

#include <algorithm>
#include <cmath>
#include <limits>

namespace brushline {

namespace {

constexpr double unevenAtMost = 0.003; // a third of a percent: nobody measures better on a card

// The units of a projection to a metre on the ground, northward and eastward, around a place.
struct LocalScale {
  double north, east, skew; // skew: what the angle between them lacks of a right one, as a sine
  bool even() const {
    return std::isfinite(north) && std::isfinite(east) && north > 0 && std::abs(east / north - 1) < unevenAtMost &&
           std::abs(skew) < unevenAtMost;
  }
};
LocalScale localScale(const Place &place, const Project &project) {
  const Length step = Length::metres(100);
  const auto at = [&](double bearing) {
    return geodesicDestination(place, TrueBearing(Angle::degrees(bearing)), step);
  };
  std::vector<double> x, y;
  for (const Place &p : {at(0), at(180), at(90), at(270)}) {
    x.push_back(p.longitude.signedTurn().degrees());
    y.push_back(p.latitude.degrees());
  }
  project(x, y);
  const double nx = x[0] - x[1], ny = y[0] - y[1], ex = x[2] - x[3], ey = y[2] - y[3];
  const double north = std::hypot(nx, ny), east = std::hypot(ex, ey);
  return {north / 200, east / 200, (nx * ex + ny * ey) / (north * east)};
}

} // namespace

CourseMap::CourseMap(const LegSheet &sheet, const QgsCoordinateReferenceSystem &layerCrs,
                     const QgsCoordinateTransformContext &transforms) {
  const bool own =
      layerCrs.isValid() && !layerCrs.isGeographic() && tryIn(sheet, layerCrs, transforms) && mUneven < unevenAtMost;
  if (!own) {
    const Place place = sheet.legs[sheet.legs.size() / 2].start;
    const QgsCoordinateReferenceSystem grid(QString::fromStdString(standardGrid(place)));
    if (!tryIn(sheet, grid, transforms))
      throw QgsProcessingException(
          tr("INPUT: the legs of route “%1” cannot be brought into the projection %2 of a map. "
             "Are its coordinates right?")
              .arg(sheet.route, grid.authid()));
  }
  findNorth(sheet, transforms);
}

bool CourseMap::tryIn(const LegSheet &sheet, const QgsCoordinateReferenceSystem &crs,
                      const QgsCoordinateTransformContext &transforms) {
  if (!crs.isValid())
    return false;
  const Project project = projectInto(crs, transforms);
  mCrs = crs;
  mLines.clear();
  mBox = QgsRectangle();
  std::vector<double> units;
  for (const SheetLeg &leg : sheet.legs) {
    Line line{leg.number, {}, {}, {}, {}, leg.letter().toStdString()};
    const Length length = geodesicBetween(leg.start, leg.end).length;
    for (const GeodesicChord &chord : chordsAlong(leg.start, leg.end, length, project)) {
      if (line.x.empty()) {
        line.x.push_back(chord.x0);
        line.y.push_back(chord.y0);
      }
      line.x.push_back(chord.x1);
      line.y.push_back(chord.y1);
    }
    const LocalScale scale = localScale(leg.start, project);
    if (!scale.even())
      return false;
    units.push_back((scale.north + scale.east) / 2);
    double drawn = 0;
    for (size_t i = 0; i < line.x.size(); ++i) {
      if (!std::isfinite(line.x[i]) || !std::isfinite(line.y[i]))
        return false;
      mBox.combineExtentWith(line.x[i], line.y[i]);
      if (i > 0)
        drawn += std::hypot(line.x[i] - line.x[i - 1], line.y[i] - line.y[i - 1]);
    }
    if (length > Length::metres(1) && std::abs(drawn / units.back() / length.metres() - 1) > 0.02)
      return false; // torn apart at the projection's edge
    for (const SheetMark &mark : leg.marks) {
      line.mark_x.push_back(mark.place.longitude.signedTurn().degrees());
      line.mark_y.push_back(mark.place.latitude.degrees());
    }
    project(line.mark_x, line.mark_y);
    mLines.push_back(std::move(line));
  }
  const auto [least, most] = std::minmax_element(units.begin(), units.end());
  mUnits = (*least + *most) / 2;
  mUneven = *most / *least - 1;
  // Between legs the projection may be torn as well: a course is no wider than it is long.
  double length = 0;
  for (size_t i = 0; i < sheet.legs.size(); ++i) {
    length += geodesicBetween(sheet.legs[i].start, sheet.legs[i].end).length.metres();
    if (i > 0)
      length += geodesicBetween(sheet.legs[i - 1].end, sheet.legs[i].start).length.metres();
  }
  return std::hypot(mBox.width(), mBox.height()) <= 1.05 * length * mUnits + 1;
}

void CourseMap::findNorth(const LegSheet &sheet, const QgsCoordinateTransformContext &transforms) {
  const auto found = ToPlaces(mCrs, transforms)(mBox.center().x(), mBox.center().y());
  if (!found)
    return;
  const Place middle = *found;
  std::optional<double> declination;
  double nearest = std::numeric_limits<double>::infinity();
  for (const SheetLeg &leg : sheet.legs) {
    const double away =
        std::min(geodesicBetween(middle, leg.start).length.metres(), geodesicBetween(middle, leg.end).length.metres());
    if (leg.declination && !leg.dial_text.isEmpty() && away < nearest) {
      nearest = away;
      declination = leg.declination;
    }
  }
  const TrueBearing bearing(Angle::degrees(declination.value_or(0)));
  const Place ahead = geodesicDestination(middle, bearing, Length::metres(100));
  std::vector<double> px{middle.longitude.signedTurn().degrees(), ahead.longitude.signedTurn().degrees()},
      py{middle.latitude.degrees(), ahead.latitude.degrees()};
  projectInto(mCrs, transforms)(px, py);
  const double turn = Angle::radians(std::atan2(px[1] - px[0], py[1] - py[0])).degrees();
  if (std::isfinite(turn))
    mNorth = MapNorth{turn, declination.has_value()};
}

QgsRectangle CourseMap::extent(const Area &map, MapScale scale) const {
  const double width = scale.toGround(map.width) * mUnits, height = scale.toGround(map.height) * mUnits;
  const QgsPointXY middle = mBox.center();
  return QgsRectangle(middle.x() - width / 2, middle.y() - height / 2, middle.x() + width / 2, middle.y() + height / 2);
}

Spot CourseMap::onPaper(double x, double y, const Area &map, MapScale scale) const {
  const QgsPointXY middle = mBox.center();
  return {map.centre().x + scale.toPaper((x - middle.x()) / mUnits),
          map.centre().y - scale.toPaper((y - middle.y()) / mUnits)};
}

std::vector<LegOnMap> CourseMap::legs(const Area &map, MapScale scale) const {
  std::vector<LegOnMap> legs;
  for (const Line &line : mLines) {
    LegOnMap leg{line.number, {}, {}, line.letter};
    for (size_t i = 0; i < line.x.size(); ++i)
      leg.line.push_back(onPaper(line.x[i], line.y[i], map, scale));
    for (size_t i = 0; i < line.mark_x.size(); ++i)
      if (std::isfinite(line.mark_x[i]) && std::isfinite(line.mark_y[i]))
        leg.marks.push_back(onPaper(line.mark_x[i], line.mark_y[i], map, scale));
    legs.push_back(std::move(leg));
  }
  return legs;
}

std::vector<CourseProfile::Point> groundAlong(const LegSheet &sheet, Terrain &terrain) {
  std::vector<CourseProfile::Point> points;
  double along = 0;
  for (size_t i = 0; i < sheet.legs.size(); ++i) {
    const SheetLeg &leg = sheet.legs[i];
    const Length length = geodesicBetween(leg.start, leg.end).length;
    if (i > 0 && geodesicBetween(sheet.legs[i - 1].end, leg.start).length > Length::metres(1))
      points.push_back({along, std::numeric_limits<double>::quiet_NaN()});
    const Profile ground = terrain.profile(leg.start, leg.end, length);
    for (size_t k = 0; k < ground.heights.size(); ++k)
      points.push_back({along + std::min(length.metres(), ground.step.metres() * double(k)), ground.heights[k]});
    along += length.metres();
  }
  return points;
}

std::vector<ProfileLeg> profileLegs(const LegSheet &sheet) {
  std::vector<ProfileLeg> legs;
  double along = 0;
  for (const SheetLeg &leg : sheet.legs) {
    const double length = geodesicBetween(leg.start, leg.end).length.metres();
    ProfileLeg drawn{leg.number, along, along + length, leg.cover.toStdString(), {}, leg.letter().toStdString()};
    for (const SheetMark &mark : leg.marks)
      if (mark.at_m && *mark.at_m >= 0 && *mark.at_m <= length + 1)
        drawn.marks.push_back(along + std::min(length, *mark.at_m));
    legs.push_back(std::move(drawn));
    along += length;
  }
  return legs;
}

} // namespace brushline
