// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "planning/aim_spread.h"
#include "shared/local_plane.h"

#include <cmath>
#include <optional>
#include <vector>

namespace brushline {

//! A straight piece of a line, in a plane around a walker.
struct FanEdge {
  PlanePoint a, b;
};

//! What is met first on the bearings between two: a stretch of an edge.
struct FanPiece {
  double from, to;               //!< bearings, radians clockwise from north, from < to
  size_t edge;                   //!< its number among the edges
  double from_m, to_m;           //!< distances of its ends
  double pass_from_m, pass_to_m; //!< distances at which it is decided on which side of its ends one passes: those of
                                 //!< the nearer of the two pieces that meet there
};

/**
 * What someone meets first who walks straight away from the origin of a plane, for every bearing: the edges as they are
 * seen from there, the farther ones hidden by the nearer ones. Exact for straight edges; they may cross. Edges that
 * point straight at the origin are met by nobody.
 */
class LineFan {
public:
  explicit LineFan(std::vector<FanEdge> edges);

  //! In order of bearing, without overlap; within [0, 2 pi].
  const std::vector<FanPiece> &pieces() const { return mPieces; }
  const std::vector<FanEdge> &edges() const { return mEdges; }

  //! A meeting on one bearing.
  struct Met {
    size_t edge;
    double metres;
  };
  //! What is met on a bearing, radians; none when nothing is.
  std::optional<Met> met(double bearing) const;

  //! The distance at which the straight line of an edge is met on a bearing, radians.
  double distance(size_t edge, double bearing) const;

  /**
   * The chances of what is met by one who walks on a bearing that errs, up to a distance.
   *
   * A place at bearing b and distance r is passed on its left with the probability Phi((b - aim) / sigma(r)): the walk
   * errs to the side by a normal distribution whose angle, as seen from the start, is spread.at(r). Where by that two
   * pieces claim the same walks, the nearer one has them: the chances never add up to more than 1. Walks that turn
   * round by more than half a turn miss everything.
   *
   * \param aim bearing, radians. \param limit_m metres; what lies beyond is not met.
   * \param take called as take(edge, probability) for each piece of an edge that has any.
   */
  template <typename Take> void chances(double aim, const AimSpread &spread, double limit_m, Take take) const;

private:
  struct Piece {
    double from, to;
    size_t edge;
  };
  std::vector<Piece> envelope(const std::vector<Piece> &pieces, size_t first, size_t last) const;
  std::vector<Piece> merged(const std::vector<Piece> &a, const std::vector<Piece> &b) const;
  //! A piece, in standard deviations of the walk.
  struct Slice {
    double from, to;
    size_t edge;
    double share;
  };
  std::vector<Slice> slicesAround(double aim, const AimSpread &spread, double limit_m) const;
  bool within(const FanPiece &piece, double limit_m, FanPiece &part) const;

  std::vector<FanEdge> mEdges;
  std::vector<FanPiece> mPieces;
};

template <typename Take> void LineFan::chances(double aim, const AimSpread &spread, double limit_m, Take take) const {
  std::vector<Slice> slices = slicesAround(aim, spread, limit_m);
  // A walk that errs by so many standard deviations strays by a greater angle near the start than far off. So of two
  // pieces that lie side by side and claim the same walks, the outer one is the nearer, and is met first.
  double taken = HUGE_VAL;
  for (size_t i = slices.size(); i-- > 0 && slices[i].to > 0;) {
    const double to = std::min(taken, slices[i].to), from = std::min(std::max(slices[i].from, 0.0), to);
    slices[i].share += shareBelow(-from) - shareBelow(-to); // by the upper tail, where the difference keeps its digits
    taken = from;
  }
  taken = -HUGE_VAL;
  for (size_t i = 0; i < slices.size() && slices[i].from < 0; ++i) {
    const double from = std::max(taken, slices[i].from), to = std::max(std::min(slices[i].to, 0.0), from);
    slices[i].share += shareBelow(to) - shareBelow(from);
    taken = to;
  }
  for (const Slice &slice : slices)
    if (slice.share > 0)
      take(slice.edge, slice.share);
}

} // namespace brushline
