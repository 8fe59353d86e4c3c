// SPDX-License-Identifier: GPL-2.0-or-later
#include "magnetics/north_lines.h"

#include "shared/geodesic.h"

#include <GeographicLib/Geocentric.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <utility>

namespace brushline {

TooManyLines::TooManyLines(double lines) : std::length_error("too many lines"), count(lines) {}
AreaOutOfReach::AreaOutOfReach() : std::domain_error("the projection does not reach this area") {}

namespace {

constexpr double longestStep = 4000, shortestStep = 1;        // metres
constexpr double longestLine = 3e7;                           // metres; from one magnetic pole to the other it is 2e7
const double straightness = Angle::degrees(0.0075).radians(); // of a chord against magnetic north
constexpr double differenceHalf = 100;                        // metres, of the projection's differentials

//! A move in the plane.
struct Move {
  double x = 0, y = 0;
};
Move operator*(const Move &move, double factor) { return {move.x * factor, move.y * factor}; }
Move operator+(const Move &a, const Move &b) { return {a.x + b.x, a.y + b.y}; }
Move operator-(const Move &a, const Move &b) { return {a.x - b.x, a.y - b.y}; }
ProjectedPoint operator+(const ProjectedPoint &point, const Move &move) { return {point.x + move.x, point.y + move.y}; }
Move operator-(const ProjectedPoint &a, const ProjectedPoint &b) { return {a.x - b.x, a.y - b.y}; }

//! A move on the ground, in metres.
struct OnGround {
  double north, east; // magnetic
};

//! A point of the plane and the field there.
struct Here {
  ProjectedPoint at{0, 0};
  Place place;
  LocalField field;
  Move north, east; // of a metre on the ground towards magnetic north and magnetic east
  bool reached = false;

  OnGround ground(const Move &move) const {
    const double turn = north.x * east.y - north.y * east.x;
    return {(move.x * east.y - move.y * east.x) / turn, (north.x * move.y - north.y * move.x) / turn};
  }
};

enum class Way { North, East };
Move along(const Here &here, Way way) { return way == Way::North ? here.north : here.east; }

//! The plane with the field laid over it.
class FieldPlane {
public:
  FieldPlane(const FieldSetting &field, const NorthLinesArea &area) : mField(field), mArea(area) {
    mHalf = 1e-4 * std::hypot(area.right - area.left, area.top - area.bottom);
  }

  //! Sets the differences by the scale of the map at a point; false where the projection does not reach it.
  bool scaleBy(const ProjectedPoint &point) {
    const Here here = look(point);
    if (!here.reached)
      return false;
    mScale = std::sqrt(std::abs(here.north.x * here.east.y - here.north.y * here.east.x));
    mHalf = differenceHalf * mScale;
    return true;
  }

  Here look(const ProjectedPoint &point) {
    Here here;
    here.at = point;
    mX = {point.x, point.x + mHalf, point.x - mHalf, point.x, point.x};
    mY = {point.y, point.y, point.y, point.y + mHalf, point.y - mHalf};
    mArea.to_places(mX, mY);
    for (size_t i = 0; i < mX.size(); ++i)
      if (!std::isfinite(mX[i]) || !(std::abs(mY[i]) <= 90))
        return here;
    // One bearing cannot be followed past a pole.
    if (mField.given() && std::abs(mY[0]) > 89.99)
      return here;
    here.place = {Angle::degrees(mY[0]), Angle::degrees(mX[0])};
    here.field = mField.at(here.place, Length());

    // How far one comes on the ground by a unit of x and of y. Through space, so that neither the 180th meridian nor a
    // pole is in the way.
    const auto &earth = GeographicLib::Geocentric::WGS84();
    double x, y, z;
    earth.Forward(mY[0], mX[0], 0, x, y, z, mTurn); // columns: east, north, up
    std::array<std::array<double, 3>, 5> space;
    for (size_t i = 1; i < 5; ++i)
      earth.Forward(mY[i], mX[i], 0, space[i][0], space[i][1], space[i][2]);
    const auto component = [&](size_t plus, size_t column) {
      double sum = 0;
      for (size_t row = 0; row < 3; ++row)
        sum += mTurn[3 * row + column] * (space[plus][row] - space[plus + 1][row]);
      return sum / (2 * mHalf);
    };
    const double xEast = component(1, 0), xNorth = component(1, 1), yEast = component(3, 0), yNorth = component(3, 1);
    const double area = xEast * yNorth - yEast * xNorth;
    // A map squeezed or stretched a thousandfold against its middle has come to its end.
    const double stretch = std::sqrt(std::abs(area)) * mScale;
    if (!std::isfinite(area) || area == 0 || (mScale > 0 && (stretch < 1e-3 || stretch > 1e3)))
      return here;
    const auto moveBy = [&](double east, double north) {
      return Move{(east * yNorth - yEast * north) / area, (xEast * north - east * xNorth) / area};
    };
    const double declination = here.field.declination.east.radians();
    here.north = moveBy(std::sin(declination), std::cos(declination));
    here.east = moveBy(std::cos(declination), -std::sin(declination));
    here.reached = true;
    return here;
  }

  /**
   * Whether the place is brought back to its point. Some projections answer beyond their end, with nonsense. On a map
   * round the Earth a place lies at several points, a world apart.
   */
  bool bringsBack(const Here &here) {
    std::vector<double> x{here.place.longitude.signedTurn().degrees()}, y{here.place.latitude.degrees()};
    mArea.to_plane(x, y);
    const double off = std::abs(x[0] - here.at.x);
    return std::abs(y[0] - here.at.y) <= mHalf / 10 && (off <= mHalf / 10 || off > 1000 * mHalf);
  }

  //! A step of so many metres (any sign).
  Here step(const Here &from, double metres, Way way) {
    const Move first = along(from, way);
    const Here second = look(from.at + first * (metres / 2));
    if (!second.reached)
      return second;
    const Here third = look(from.at + along(second, way) * (metres / 2));
    if (!third.reached)
      return third;
    const Here fourth = look(from.at + along(third, way) * metres);
    if (!fourth.reached)
      return fourth;
    return look(from.at + (first + (along(second, way) + along(third, way)) * 2 + along(fourth, way)) * (metres / 6));
  }

private:
  const FieldSetting &mField;
  const NorthLinesArea &mArea;
  double mHalf;
  double mScale = 0; // units to a metre; 0: not known yet
  std::vector<double> mX, mY, mTurn = std::vector<double>(9);
};

//! Steps along a line, as long as the line is straight.
class Walk {
public:
  Walk(FieldPlane &plane, const Here &start, Way way, int sign) : mPlane(plane), mHere(start), mWay(way), mSign(sign) {}

  const Here &here() const { return mHere; }

  /**
   * The next point, at most so far ahead; not reached where the map ends. Stays where it is until moved there.
   */
  Here next(double most) {
    mStep = std::min(mLength, most);
    for (;;) {
      const Here to = mPlane.step(mHere, mSign * mStep, mWay);
      double factor = 0.5;
      if (to.reached) {
        const double off = std::max(offOnMap(to), offOnGround(to));
        factor = off > 0 ? 0.9 * straightness / off : 2;
        if (off <= straightness || mStep <= shortestStep) {
          mLength = std::clamp(mStep * std::min(factor, 2.0), shortestStep, longestStep);
          return to;
        }
      } else if (mStep <= shortestStep) {
        return to;
      }
      mStep = std::max(std::min(shortestStep, mStep), mStep * std::clamp(factor, 0.1, 0.9));
    }
  }

  double step() const { return mStep; } //!< metres to the point that next() gave
  void moveTo(const Here &to) { mHere = to; }

  //! The last point before a compass fails, between here and the point that next() gave.
  Here lastReliable() {
    Here last = mHere;
    double low = 0, high = mStep;
    while (high - low > 0.5) {
      const double middle = (low + high) / 2;
      const Here there = mPlane.step(mHere, mSign * middle, mWay);
      if (there.reached && there.field.zone != CompassZone::Blackout) {
        low = middle;
        last = there;
      } else {
        high = middle;
      }
    }
    return last;
  }

private:
  // How far the chord on the map is off the way at its ends, radians: by half the turn between them.
  double offOnMap(const Here &to) const {
    const OnGround change = mHere.ground(along(to, mWay) - along(mHere, mWay));
    return std::abs(mWay == Way::North ? change.east : change.north) / 2;
  }

  // How far the shortest way on the ground is; the chord is another line on most maps.
  double offOnGround(const Here &to) const {
    const GeodesicLeg leg = geodesicBetween(mHere.place, to.place);
    const Angle turn = Angle::degrees((mWay == Way::North ? 0 : 90) + (mSign > 0 ? 0 : 180));
    const auto off = [&](TrueBearing bearing, const Here &here) {
      return std::abs((bearing.angle() - here.field.declination.east - turn).signedTurn().radians());
    };
    return std::max(off(leg.departure, mHere), off(leg.arrival, to));
  }

  FieldPlane &mPlane;
  Here mHere;
  Way mWay;
  int mSign;
  double mLength = longestStep; // next to be tried
  double mStep = 0;
};

//! A piece of a line within the area.
struct Piece {
  std::vector<ProjectedPoint> points;
  CompassZone zone = CompassZone::Reliable;
  double length = 0; // in the plane
};

class NorthLinesMaker {
public:
  NorthLinesMaker(const FieldSetting &field, const NorthLinesArea &area, Length spacing, const Progress &progress)
      : mArea(area), mSpacing(spacing.metres()), mProgress(progress), mPlane(field, area) {
    mMiddle = {(area.left + area.right) / 2, (area.bottom + area.top) / 2};
    mHalfDiagonal = std::hypot(area.right - area.left, area.top - area.bottom) / 2;
  }

  NorthLinesReport make(const std::function<void(const NorthLine &)> &take);

private:
  std::vector<Here> findStarts();
  double expectedLines(const Here &start) const;
  //! The places on a cross-line where lines start, from magnetic west to east.
  struct CrossLine {
    std::vector<Here> seeds;
    bool closed = false;   // round a magnetic pole
    bool blackout = false; // it ends there, within the area
    bool edge = false;     // it ends at the map's, within the area
  };
  CrossLine crossLine(const Here &start);
  std::vector<Here> spread(CrossLine &cross, const Here &start, int sign);
  std::vector<Here> trace(const Here &start, int sign);
  std::vector<Here> wholeLine(const Here &start);
  std::vector<Piece> clip(const std::vector<Here> &line) const;
  void measure(const Here &here, const std::vector<Here> &neighbour);

  // 0 and less inside.
  double outside(const ProjectedPoint &p) const {
    return std::max({mArea.left - p.x, p.x - mArea.right, mArea.bottom - p.y, p.y - mArea.top});
  }
  bool near(const ProjectedPoint &p) const { return std::hypot(p.x - mMiddle.x, p.y - mMiddle.y) <= mReach; }

  const NorthLinesArea &mArea;
  double mSpacing;
  const Progress &mProgress;
  FieldPlane mPlane;
  ProjectedPoint mMiddle;
  double mHalfDiagonal;
  double mReach = 0; // how far from the middle lines are followed, in the plane
  NorthLinesReport mReport;
};

// The middle, if a compass works there, and the nearest place where the needle is not weak, or else as strong as can
// be.
std::vector<Here> NorthLinesMaker::findStarts() {
  constexpr int count = 21;
  std::vector<std::pair<double, ProjectedPoint>> candidates{{-1, mMiddle}};
  for (int i = 0; i < count; ++i)
    for (int j = 0; j < count; ++j) {
      const ProjectedPoint p{mArea.left + (mArea.right - mArea.left) * (i + 0.5) / count,
                             mArea.bottom + (mArea.top - mArea.bottom) * (j + 0.5) / count};
      candidates.emplace_back(std::hypot(p.x - mMiddle.x, p.y - mMiddle.y), p);
    }
  std::stable_sort(candidates.begin(), candidates.end(),
                   [](const auto &a, const auto &b) { return a.first < b.first; });
  bool reached = false, reliable = false;
  std::vector<Here> starts;
  std::optional<Here> best;
  for (const auto &[distance, point] : candidates) {
    mProgress.check();
    const Here here = reached || mPlane.scaleBy(point) ? mPlane.look(point) : Here();
    if (!here.reached || !mPlane.bringsBack(here)) {
      mReport.edge = true;
      continue;
    }
    reached = true;
    if (here.field.zone == CompassZone::Blackout) {
      mReport.blackout = true;
      continue;
    }
    if (distance < 0)
      starts.push_back(here);
    if (!best || (!reliable && here.field.horizontal_nt > best->field.horizontal_nt)) {
      best = here;
      reliable = here.field.zone == CompassZone::Reliable;
    }
  }
  if (!reached)
    throw AreaOutOfReach();
  if (best)
    starts.push_back(*best);
  return starts;
}

// By the width of the rectangle, square to magnetic north, at the scale of the start.
double NorthLinesMaker::expectedLines(const Here &start) const {
  const OnGround width = start.ground({mArea.right - mArea.left, 0}),
                 height = start.ground({0, mArea.top - mArea.bottom});
  return std::floor((std::abs(width.east) + std::abs(height.east)) / mSpacing) + 1;
}

// The places on one side of the start from which lines meet the rectangle. These lie in one stretch of the cross-line,
// since the lines fill the plane without gap.
std::vector<Here> NorthLinesMaker::spread(CrossLine &cross, const Here &start, int sign) {
  std::vector<Here> seeds;
  Walk walk(mPlane, start, Way::East, sign);
  for (int misses = 0; misses < 2;) {
    for (double left = mSpacing; left > 1e-9 * mSpacing; left -= walk.step()) {
      mProgress.check();
      const Here to = walk.next(left);
      const bool fails = !to.reached || !mPlane.bringsBack(to);
      if (fails || to.field.zone == CompassZone::Blackout) {
        if (outside(walk.here().at) <= 0)
          (fails ? cross.edge : cross.blackout) = true;
        return seeds;
      }
      walk.moveTo(to);
      if (!near(to.at))
        return seeds;
    }
    const Here &here = walk.here();
    // Of two seeds about the start of a closed cross-line one is within half a spacing.
    if (seeds.size() >= 2 && geodesicBetween(here.place, start.place).length.metres() <= mSpacing / 2) {
      cross.closed = true;
      return seeds;
    }
    if (outside(here.at) > 0)
      misses = clip(wholeLine(here)).empty() ? misses + 1 : 0;
    seeds.push_back(here);
    if (seeds.size() > size_t(mostNorthLines))
      throw TooManyLines(std::max(expectedLines(start), double(seeds.size())));
  }
  return seeds;
}

NorthLinesMaker::CrossLine NorthLinesMaker::crossLine(const Here &start) {
  // Beyond the corners, so that the lines through them start too.
  mReach = 1.1 * mHalfDiagonal + 2 * mSpacing * std::hypot(start.east.x, start.east.y);
  CrossLine cross;
  const std::vector<Here> east = spread(cross, start, 1);
  if (!cross.closed) {
    cross.seeds = spread(cross, start, -1);
    std::reverse(cross.seeds.begin(), cross.seeds.end());
  }
  cross.seeds.push_back(start);
  cross.seeds.insert(cross.seeds.end(), east.begin(), east.end());
  return cross;
}

std::vector<Here> NorthLinesMaker::trace(const Here &start, int sign) {
  std::vector<Here> line;
  Walk walk(mPlane, start, Way::North, sign);
  bool wasInside = outside(start.at) <= 0;
  for (double walked = 0; walked < longestLine; walked += walk.step()) {
    mProgress.check();
    const Here to = walk.next(longestStep);
    if (!to.reached || !mPlane.bringsBack(to)) {
      mReport.edge = mReport.edge || outside(walk.here().at) <= 0;
      break;
    }
    if (to.field.zone == CompassZone::Blackout) {
      const Here last = walk.lastReliable();
      if (last.at.x != walk.here().at.x || last.at.y != walk.here().at.y)
        line.push_back(last);
      mReport.blackout = mReport.blackout || outside(last.at) <= 0;
      break;
    }
    line.push_back(to);
    walk.moveTo(to);
    // A curve that has left comes back from close by, if at all.
    wasInside = wasInside || outside(to.at) <= 0;
    if (!near(to.at) || (wasInside && outside(to.at) > 0.1 * mHalfDiagonal))
      break;
  }
  return line;
}

std::vector<Here> NorthLinesMaker::wholeLine(const Here &start) {
  std::vector<Here> line = trace(start, -1);
  std::reverse(line.begin(), line.end());
  line.push_back(start);
  const std::vector<Here> north = trace(start, 1);
  line.insert(line.end(), north.begin(), north.end());
  return line;
}

// Cuts chord by chord (Liang and Barsky).
std::vector<Piece> NorthLinesMaker::clip(const std::vector<Here> &line) const {
  std::vector<Piece> pieces;
  bool open = false;
  for (size_t i = 1; i < line.size(); ++i) {
    const ProjectedPoint &a = line[i - 1].at;
    const Move d = line[i].at - a;
    double enter = 0, leave = 1;
    const auto edge = [&](double speed, double room) { // stays inside while speed * t <= room
      if (speed == 0) {
        if (room < 0)
          leave = -1;
      } else if (speed < 0) {
        enter = std::max(enter, room / speed);
      } else {
        leave = std::min(leave, room / speed);
      }
    };
    edge(-d.x, a.x - mArea.left);
    edge(d.x, mArea.right - a.x);
    edge(-d.y, a.y - mArea.bottom);
    edge(d.y, mArea.top - a.y);
    if (!(enter < leave)) {
      open = false;
      continue;
    }
    if (!open || enter > 0) {
      pieces.emplace_back();
      pieces.back().points.push_back(a + d * enter);
    }
    Piece &piece = pieces.back();
    piece.points.push_back(leave < 1 ? a + d * leave : line[i].at);
    piece.length += std::hypot(d.x, d.y) * (leave - enter);
    for (const Here *end : {&line[i - 1], &line[i]})
      piece.zone = std::max(piece.zone, end->field.zone);
    open = leave >= 1;
  }
  // A line that touches a corner leaves nothing to see.
  pieces.erase(std::remove_if(pieces.begin(), pieces.end(),
                              [this](const Piece &piece) { return piece.length < 1e-6 * mHalfDiagonal; }),
               pieces.end());
  return pieces;
}

// How far a point of a line is from the neighbouring line.
void NorthLinesMaker::measure(const Here &here, const std::vector<Here> &neighbour) {
  double least = std::numeric_limits<double>::infinity();
  bool between = false; // else the neighbour is nearest at its end, and that says nothing
  for (size_t j = 1; j < neighbour.size(); ++j) {
    const OnGround a = here.ground(neighbour[j - 1].at - here.at);
    const OnGround b = here.ground(neighbour[j].at - here.at);
    const double north = b.north - a.north, east = b.east - a.east;
    const double share = -(a.north * north + a.east * east) / (north * north + east * east);
    const double t = std::clamp(share, 0.0, 1.0);
    const double distance = std::hypot(a.north + t * north, a.east + t * east);
    if (distance < least) {
      least = distance;
      between = !(share < 0 && j == 1) && !(share > 1 && j + 1 == neighbour.size());
    }
  }
  if (between) {
    mReport.least_spacing_m = std::min(mReport.least_spacing_m, least);
    mReport.most_spacing_m = std::max(mReport.most_spacing_m, least);
  }
}

NorthLinesReport NorthLinesMaker::make(const std::function<void(const NorthLine &)> &take) {
  const std::vector<Here> starts = findStarts();
  if (starts.empty())
    return mReport;
  if (const double lines = expectedLines(starts.front()); !(lines <= mostNorthLines))
    throw TooManyLines(lines);
  CrossLine cross = crossLine(starts.front());
  if (cross.blackout && starts.size() > 1)
    if (CrossLine other = crossLine(starts.back()); !other.blackout)
      cross = std::move(other);
  mReport.blackout = mReport.blackout || cross.blackout;
  mReport.edge = mReport.edge || cross.edge;

  std::vector<Here> before; // the neighbour, when it was drawn
  for (size_t i = 0; i < cross.seeds.size(); ++i) {
    std::vector<Here> line = wholeLine(cross.seeds[i]);
    const std::vector<Piece> pieces = clip(line);
    if (!pieces.empty() && ++mReport.lines > mostNorthLines)
      throw TooManyLines(double(cross.seeds.size()));
    for (const Piece &piece : pieces) {
      double left = piece.length / 2;
      ProjectedPoint middle = piece.points.back();
      for (size_t j = 1; j < piece.points.size(); ++j) {
        const Move chord = piece.points[j] - piece.points[j - 1];
        const double length = std::hypot(chord.x, chord.y);
        if (left <= length && length > 0) {
          middle = piece.points[j - 1] + chord * (left / length);
          break;
        }
        left -= length;
      }
      const Here here = mPlane.look(middle);
      mReport.caution = mReport.caution || piece.zone == CompassZone::Caution;
      take({mReport.lines, piece.points, here.place, here.field.declination, piece.zone,
            double(i + 1) / double(cross.seeds.size())});
      for (const Here &point : {mPlane.look(piece.points.front()), here, mPlane.look(piece.points.back())})
        if (point.reached)
          measure(point, before);
    }
    if (pieces.empty())
      line.clear();
    before = std::move(line);
  }
  return mReport;
}

} // namespace

NorthLinesReport northLines(const FieldSetting &field, const NorthLinesArea &area, Length spacing,
                            const Progress &progress, const std::function<void(const NorthLine &line)> &take) {
  if (!std::isfinite(area.left + area.bottom + area.right + area.top) || !(area.left < area.right) ||
      !(area.bottom < area.top))
    throw std::invalid_argument("the area is empty");
  if (!(spacing.metres() > 0) || !std::isfinite(spacing.metres()))
    throw std::invalid_argument("the spacing is not positive");
  return NorthLinesMaker(field, area, spacing, progress).make(take);
}

} // namespace brushline
