// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/line_fan.h"

#include <algorithm>
#include <utility>

namespace brushline {

namespace {

constexpr double turn = 2 * Angle::pi;
constexpr double leastWidth = 1e-12;   // radians; 3e-9 m at 3 km
constexpr double sameDistance = 1e-10; // as a share

double cross(const PlanePoint &a, const PlanePoint &b) { return a.east * b.north - a.north * b.east; }
PlanePoint minus(const PlanePoint &a, const PlanePoint &b) { return {a.east - b.east, a.north - b.north}; }
PlanePoint towards(double bearing) { return {std::sin(bearing), std::cos(bearing)}; }

double bearingOf(const PlanePoint &point) {
  const double bearing = std::atan2(point.east, point.north);
  return bearing < 0 ? bearing + turn : bearing;
}

// -1: a is nearer, 1: b is, 0: alike.
int nearer(double a, double b) {
  if (std::abs(a - b) <= sameDistance * (std::abs(a) + std::abs(b)))
    return 0;
  return a < b ? -1 : 1;
}

} // namespace

double LineFan::distance(size_t edge, double bearing) const {
  const FanEdge &line = mEdges[edge];
  const PlanePoint along = minus(line.b, line.a);
  const double metres = cross(line.a, along) / cross(towards(bearing), along);
  const double a = std::hypot(line.a.east, line.a.north), b = std::hypot(line.b.east, line.b.north);
  return std::isfinite(metres) ? std::min(std::max(metres, 0.0), std::max(a, b)) : std::max(a, b);
}

LineFan::LineFan(std::vector<FanEdge> edges) : mEdges(std::move(edges)) {
  std::vector<Piece> all;
  for (size_t i = 0; i < mEdges.size(); ++i) {
    double from = bearingOf(mEdges[i].a), to = bearingOf(mEdges[i].b);
    double width = std::remainder(to - from, turn);
    if (width < 0) {
      std::swap(from, to);
      width = -width;
    }
    if (!(width > leastWidth) || cross(mEdges[i].a, mEdges[i].b) == 0)
      continue;
    if (from + width > turn) {
      all.push_back({from, turn, i});
      all.push_back({0, from + width - turn, i});
    } else {
      all.push_back({from, from + width, i});
    }
  }
  if (all.empty())
    return;
  for (const Piece &piece : envelope(all, 0, all.size())) {
    const double from = distance(piece.edge, piece.from), to = distance(piece.edge, piece.to);
    mPieces.push_back({piece.from, piece.to, piece.edge, from, to, from, to});
  }
  for (size_t i = 0; i < mPieces.size(); ++i) {
    FanPiece &piece = mPieces[i], &next = mPieces[(i + 1) % mPieces.size()];
    const double gap = i + 1 < mPieces.size() ? next.from - piece.to : next.from + turn - piece.to;
    if (std::abs(gap) <= 2 * leastWidth)
      piece.pass_to_m = next.pass_from_m = std::min(piece.to_m, next.from_m);
  }
}

std::vector<LineFan::Piece> LineFan::envelope(const std::vector<Piece> &pieces, size_t first, size_t last) const {
  if (last - first == 1)
    return {pieces[first]};
  const size_t middle = first + (last - first) / 2;
  return merged(envelope(pieces, first, middle), envelope(pieces, middle, last));
}

std::vector<LineFan::Piece> LineFan::merged(const std::vector<Piece> &a, const std::vector<Piece> &b) const {
  std::vector<Piece> result;
  result.reserve(a.size() + b.size());
  const auto emit = [&](double from, double to, size_t edge) {
    if (!(to - from > leastWidth))
      return;
    if (!result.empty() && result.back().edge == edge && from - result.back().to <= leastWidth)
      result.back().to = to;
    else
      result.push_back({from, to, edge});
  };
  size_t i = 0, j = 0;
  double at = 0; // everything before is settled
  while (i < a.size() || j < b.size()) {
    if (j == b.size() || (i < a.size() && a[i].to <= b[j].from)) {
      emit(std::max(at, a[i].from), a[i].to, a[i].edge);
      ++i;
      continue;
    }
    if (i == a.size() || b[j].to <= a[i].from) {
      emit(std::max(at, b[j].from), b[j].to, b[j].edge);
      ++j;
      continue;
    }
    const Piece &p = a[i], &q = b[j];
    const double start = std::max(at, std::max(p.from, q.from)), end = std::min(p.to, q.to);
    if (p.from < start)
      emit(std::max(at, p.from), start, p.edge);
    if (q.from < start)
      emit(std::max(at, q.from), start, q.edge);
    if (end > start) {
      const int atStart = nearer(distance(p.edge, start), distance(q.edge, start));
      const int atEnd = nearer(distance(p.edge, end), distance(q.edge, end));
      if (atStart * atEnd < 0) {
        const FanEdge &one = mEdges[p.edge], &other = mEdges[q.edge];
        const PlanePoint d = minus(one.b, one.a), e = minus(other.b, other.a);
        const double share = cross(minus(other.a, one.a), e) / cross(d, e);
        double crossing = bearingOf({one.a.east + share * d.east, one.a.north + share * d.north});
        crossing = std::min(std::max(crossing, start), end);
        emit(start, crossing, atStart < 0 ? p.edge : q.edge);
        emit(crossing, end, atStart < 0 ? q.edge : p.edge);
      } else {
        emit(start, end, atStart + atEnd <= 0 ? p.edge : q.edge);
      }
    }
    at = std::max(at, end);
    const bool pDone = p.to <= at, qDone = q.to <= at;
    i += pDone;
    j += qDone;
  }
  return result;
}

std::optional<LineFan::Met> LineFan::met(double bearing) const {
  double b = std::fmod(bearing, turn);
  if (b < 0)
    b += turn;
  auto next = std::upper_bound(mPieces.begin(), mPieces.end(), b,
                               [](double value, const FanPiece &piece) { return value < piece.from; });
  if (next == mPieces.begin())
    return std::nullopt;
  --next;
  if (b > next->to)
    return std::nullopt;
  return Met{next->edge, distance(next->edge, b)};
}

std::vector<LineFan::Slice> LineFan::slicesAround(double aim, const AimSpread &spread, double limit_m) const {
  std::vector<Slice> slices;
  constexpr double farthest = 9; // standard deviations; 1e-19 is beyond
  const double half = std::min(Angle::pi, farthest * spread.most());
  double low = std::fmod(aim - half, turn);
  if (low < 0)
    low += turn;
  const size_t count = mPieces.size();
  const size_t first = size_t(std::upper_bound(mPieces.begin(), mPieces.end(), low,
                                               [](double value, const FanPiece &piece) { return value < piece.to; }) -
                              mPieces.begin());
  for (size_t i = first; count > 0 && i < first + count + 1; ++i) { // the first may come back at the end
    const FanPiece &whole = mPieces[i % count];
    const double turned = i < count ? 0 : turn * double(i / count);
    if (whole.from + turned >= low + 2 * half)
      break;
    FanPiece piece;
    if (!within(whole, limit_m, piece))
      continue;
    const double from = piece.from + turned, to = piece.to + turned;
    const double a = std::max(from, low), b = std::min(to, low + 2 * half);
    if (b > a)
      slices.push_back({(a - low - half) / spread.at(a > from ? distance(piece.edge, a) : piece.pass_from_m),
                        (b - low - half) / spread.at(b < to ? distance(piece.edge, b) : piece.pass_to_m), piece.edge,
                        0});
  }
  return slices;
}

// The part of a piece that lies within a distance; an edge leaves a circle at most once on each side of its nearest
// point.
bool LineFan::within(const FanPiece &piece, double limit_m, FanPiece &part) const {
  part = piece;
  if (piece.from_m <= limit_m && piece.to_m <= limit_m)
    return true;
  const FanEdge &edge = mEdges[piece.edge];
  const PlanePoint along = minus(edge.b, edge.a);
  const double length = std::hypot(along.east, along.north);
  const double square = std::abs(cross(edge.a, along)) / length; // the line's distance
  if (square >= limit_m)
    return false;
  // The bearing of the line's nearest point, and how far from it the line is within the limit.
  const double side = cross(edge.a, along) > 0 ? 1 : -1;
  const double foot = std::atan2(side * along.north, -side * along.east);
  const double spread = std::acos(square / limit_m);
  const double middle = (piece.from + piece.to) / 2;
  const double centre = middle + std::remainder(foot - middle, turn);
  if (piece.from_m > limit_m) {
    part.from = std::max(part.from, centre - spread);
    part.from_m = part.pass_from_m = limit_m;
  }
  if (piece.to_m > limit_m) {
    part.to = std::min(part.to, centre + spread);
    part.to_m = part.pass_to_m = limit_m;
  }
  return part.to > part.from;
}

} // namespace brushline
