// SPDX-License-Identifier: GPL-2.0-or-later
#include "records/walked_turn.h"

#include "quantities/angle.h"

#include <algorithm>
#include <cmath>

namespace brushline {

namespace {
constexpr double window_m = 50;
constexpr size_t fewFixes = 12;                  // for a line: then it reaches farther
constexpr double leastTurn = 15, mostTurn = 150; // degrees, between which lines meet in a point
constexpr double leastReach_m = 20;
constexpr double unseenShare = 0.2; // of the shorter leg

double distance(const PlanePoint &a, const PlanePoint &b) { return std::hypot(b.east - a.east, b.north - a.north); }
PlanePoint minus(const PlanePoint &a, const PlanePoint &b) { return {a.east - b.east, a.north - b.north}; }
double dot(const PlanePoint &a, const PlanePoint &b) { return a.east * b.east + a.north * b.north; }
double cross(const PlanePoint &a, const PlanePoint &b) { return a.east * b.north - a.north * b.east; }
PlanePoint onward(const PlanePoint &from, const PlanePoint &way, double by) {
  return {from.east + by * way.east, from.north + by * way.north};
}

//! A straight line through fixes, in the direction walked.
struct Line {
  PlanePoint mean{0, 0}, way{0, 0}; // way: length 1
  double squares = 0;               // of the distances
  bool known = false;
};

//! Sums over the fixes about a turn, relative to the first of them.
class Lines {
public:
  Lines(const std::vector<CleanFix> &fixes, size_t first, size_t last)
      : mFixes(fixes), mFirst(first), mSums{{0, 0, 0, 0, 0}} {
    const PlanePoint o = fixes[first].at;
    for (size_t i = first; i <= last; ++i) {
      const PlanePoint p = minus(fixes[i].at, o);
      const Sum &s = mSums.back();
      mSums.push_back(
          {s.x + p.east, s.y + p.north, s.xx + p.east * p.east, s.xy + p.east * p.north, s.yy + p.north * p.north});
    }
  }

  //! Through fixes a to b, both among them.
  Line through(size_t a, size_t b) const {
    Line line;
    const Sum &s = mSums[a - mFirst], &e = mSums[b - mFirst + 1];
    const double n = double(b - a + 1), x = (e.x - s.x) / n, y = (e.y - s.y) / n;
    line.mean = {mFixes[mFirst].at.east + x, mFixes[mFirst].at.north + y};
    const double xx = e.xx - s.xx - n * x * x, xy = e.xy - s.xy - n * x * y, yy = e.yy - s.yy - n * y * y;
    const double half = (xx + yy) / 2, root = std::hypot((xx - yy) / 2, xy);
    if (!(half + root > 1e-12))
      return line;
    const double turn = std::atan2(2 * xy, xx - yy) / 2;
    line.way = {std::cos(turn), std::sin(turn)};
    if (dot(line.way, minus(mFixes[b].at, mFixes[a].at)) < 0)
      line.way = {-line.way.east, -line.way.north};
    line.squares = std::max(0.0, half - root);
    line.known = true;
    return line;
  }

private:
  struct Sum {
    double x, y, xx, xy, yy;
  };
  const std::vector<CleanFix> &mFixes;
  size_t mFirst;
  std::vector<Sum> mSums;
};

//! The distances of fixes along a way as a straight line over their numbers: value at number i is a + b i.
struct Fall {
  double a = 0, b = 0, squares = 0;
};
Fall fallOf(const std::vector<CleanFix> &fixes, size_t first, size_t last, const PlanePoint &o, const PlanePoint &way) {
  double n = 0, si = 0, sii = 0, sv = 0, siv = 0;
  for (size_t i = first; i <= last; ++i) {
    const double k = double(i - first), v = dot(minus(fixes[i].at, o), way);
    n += 1, si += k, sii += k * k, sv += v, siv += k * v;
  }
  const double det = n * sii - si * si;
  const double b = det > 0 ? (n * siv - si * sv) / det : 0, a = (sv - b * si) / n;
  double squares = 0;
  for (size_t i = first; i <= last; ++i)
    squares += std::pow(dot(minus(fixes[i].at, o), way) - a - b * double(i - first), 2);
  return {a - b * double(first), b, squares};
}

double turnBetween(const PlanePoint &in, const PlanePoint &out) {
  return std::abs(std::atan2(cross(in, out), dot(in, out))) * 180 / Angle::pi;
}

class Turn {
public:
  Turn(const CleanTrack &track, const TrackCuts &cuts, size_t cut, double error_m)
      : mFixes(track.fixes), mCuts(cuts.cuts), mCut(cut), mError(error_m), mBlur(cuts.blur_m) {}

  WalkedTurn found() {
    const TrackCut &here = mCuts[mCut];
    const double before = mCut > 0 ? distance(mCuts[mCut - 1].near, here.near) : window_m * 2;
    const double after = mCut + 1 < mCuts.size() ? distance(here.near, mCuts[mCut + 1].near) : window_m * 2;
    mShorter = std::min(before, after);
    mFirst = here.before;
    const size_t least = mCut > 0 ? mCuts[mCut - 1].before : 0;
    while (mFirst > least && (mFirst == here.before || wanted(mFirst - 1, here.before - mFirst, before)))
      --mFirst;
    mLast = here.after;
    const size_t most = mCut + 1 < mCuts.size() ? mCuts[mCut + 1].after : mFixes.size() - 1;
    while (mLast < most && (mLast == here.after || wanted(mLast + 1, mLast - here.after, after)))
      ++mLast;
    const bool start = mCut == 0 && here.at_end, end = mCut + 1 == mCuts.size() && here.at_end;
    if (start || end)
      atTheEnd(start);
    else
      between();
    return mTurn;
  }

private:
  bool near(size_t fix, double reach) const { return distance(mFixes[fix].at, mCuts[mCut].near) <= reach; }

  // Whether a line takes one more fix, having so many.
  bool wanted(size_t fix, size_t count, double leg) const {
    return near(fix, count < fewFixes ? leg / 2 : std::min(window_m, leg / 2));
  }

  void setVariance(double ee, double en, double nn) { mTurn.ee = ee, mTurn.en = en, mTurn.nn = nn; }

  void atTheEnd(bool start) {
    const size_t fix = start ? 0 : mFixes.size() - 1;
    const CleanFix &end = mFixes[fix];
    mTurn.place = double(fix);
    mTurn.at = end.at;
    mTurn.arrived_s = end.arrived_s;
    mTurn.left_s = end.left_s;
    if (const Line line = Lines(mFixes, mFirst, mLast).through(mFirst, mLast); line.known && !end.stand)
      mTurn.at = onward(line.mean, line.way, dot(minus(end.at, line.mean), line.way));
    setVariance(mError * mError, 0, mError * mError);
    standNear(fix, fix);
  }

  void between() {
    const TrackCut &here = mCuts[mCut];
    const PlanePoint arriving = minus(here.near, mFixes[mFirst].at), leaving = minus(mFixes[mLast].at, here.near);
    if (turnBetween(arriving, leaving) > mostTurn) {
      thereAndBack(arriving, leaving);
      return;
    }
    const Lines lines(mFixes, mFirst, mLast);
    // Which fix ends the line before (a) and begins the one after (b): the same one, or the next.
    size_t a = here.before, b = here.after;
    double least = HUGE_VAL;
    const double span = 3 * mBlur;
    for (size_t i = mFirst; i <= mLast; ++i) {
      if (!near(i, span) && i != here.before && i != here.after)
        continue;
      const auto tryOut = [&](size_t to, size_t from) {
        if (to <= mFirst || from >= mLast)
          return;
        const double squares = lines.through(mFirst, to).squares + lines.through(from, mLast).squares;
        if (squares < least * (1 - 1e-9) - 1e-9)
          least = squares, a = to, b = from;
      };
      tryOut(i, i);
      tryOut(i, i + 1);
    }
    const Line in = lines.through(mFirst, std::max(a, mFirst)), out = lines.through(std::min(b, mLast), mLast);
    const double variance = mError * mError;
    setVariance(variance, 0, variance);
    mTurn.place = double(a);
    mTurn.in_gap = mFixes[b].after_gap && b > a;
    if (!in.known || !out.known) {
      mTurn.at = here.near;
      mTurn.seen = false;
    } else {
      const double turn = turnBetween(in.way, out.way);
      if (turn > mostTurn) {
        thereAndBack(in.way, out.way);
        return;
      }
      if (turn < leastTurn)
        straightOn(lines.through(mFirst, mLast));
      else
        meeting(in, out, a, b);
    }
    finish(a, b);
  }

  void finish(size_t a, size_t b) {
    placeBetween(a, b);
    standNear(a, b);
    if (!mTurn.seen)
      mTurn.arrived_s = mTurn.left_s = std::nullopt;
  }

  void meeting(const Line &in, const Line &out, size_t a, size_t b) {
    const double by = cross(minus(out.mean, in.mean), out.way) / cross(in.way, out.way);
    const PlanePoint at = onward(in.mean, in.way, by);
    const double step = std::max({distance(mFixes[a - 1].at, mFixes[a].at), distance(mFixes[a].at, mFixes[b].at),
                                  distance(mFixes[b].at, mFixes[b + 1].at)});
    const double off =
        std::min({distance(at, mFixes[a].at), distance(at, mFixes[b].at), distance(at, mCuts[mCut].near)});
    if (off > std::max({4 * mError, leastReach_m, step})) {
      mTurn.at = mFixes[a].at;
      mTurn.seen = false;
      alongUnknown(in.way);
      return;
    }
    mTurn.at = at;
    // Each line tells the place square to itself: the inverse of the sum of n n' / variance.
    const auto square = [](const Line &line) { return PlanePoint{-line.way.north, line.way.east}; };
    const PlanePoint p = square(in), q = square(out);
    const double ee = p.east * p.east + q.east * q.east, en = p.east * p.north + q.east * q.north,
                 nn = p.north * p.north + q.north * q.north, det = ee * nn - en * en;
    const double variance = mError * mError;
    setVariance(variance * nn / det, -variance * en / det, variance * ee / det);
  }

  void straightOn(const Line &line) {
    const PlanePoint &near = mCuts[mCut].near;
    mTurn.at = onward(line.mean, line.way, dot(minus(near, line.mean), line.way));
    mTurn.seen = false;
    alongUnknown(line.way);
  }

  void alongUnknown(const PlanePoint &way) {
    const double along = std::pow(unseenShare * mShorter, 2);
    mTurn.ee += along * way.east * way.east;
    mTurn.en += along * way.east * way.north;
    mTurn.nn += along * way.north * way.north;
  }

  void thereAndBack(const PlanePoint &arriving, const PlanePoint &leaving) {
    PlanePoint way = minus(arriving, leaving);
    const double length = std::hypot(way.east, way.north);
    way = {way.east / length, way.north / length};
    const PlanePoint o = mCuts[mCut].near, side{-way.north, way.east};
    const auto far = [&](size_t i) { return dot(minus(mFixes[i].at, o), way); };
    size_t farthest = mFirst;
    for (size_t i = mFirst; i <= mLast; ++i)
      if (far(i) > far(farthest))
        farthest = i;
    // The farthest fix ends the way out, or begins the way back, or both.
    size_t a = farthest, b = farthest;
    Fall up, down;
    double least = HUGE_VAL;
    for (const auto &[to, from] :
         {std::pair(farthest, farthest), std::pair(farthest, farthest + 1), std::pair(farthest - 1, farthest)}) {
      if (to > mLast || to <= mFirst || from >= mLast)
        continue;
      const Fall out = fallOf(mFixes, mFirst, to, o, way), home = fallOf(mFixes, from, mLast, o, way);
      if (out.squares + home.squares < least * (1 - 1e-9) - 1e-9)
        least = out.squares + home.squares, up = out, down = home, a = to, b = from;
    }
    double along = far(farthest);
    if (up.b > 0 && down.b < 0)
      along = std::clamp(up.a + up.b * (down.a - up.a) / (up.b - down.b), along - 3 * mError,
                         along + std::max(up.b, -down.b));
    double across = 0;
    size_t close = 0;
    for (size_t i = mFirst; i <= mLast; ++i)
      if (far(i) > along - leastReach_m) {
        across += dot(minus(mFixes[i].at, o), side);
        ++close;
      }
    mTurn.at = onward(onward(o, way, along), side, close > 0 ? across / double(close) : 0);
    setVariance(mError * mError, 0, mError * mError);
    mTurn.in_gap = mFixes[b].after_gap && b > a;
    finish(a, b);
  }

  // Place and time on the track: the turn's foot between the two fixes.
  void placeBetween(size_t a, size_t b) {
    const CleanFix &from = mFixes[a], &to = mFixes[b];
    double share = 0;
    if (b > a) {
      const PlanePoint step = minus(to.at, from.at);
      const double squared = dot(step, step);
      share = squared > 0 ? std::clamp(dot(minus(mTurn.at, from.at), step) / squared, 0.0, 1.0) : 0;
    }
    mTurn.place = double(a) + share;
    if (b == a) {
      mTurn.arrived_s = from.arrived_s;
      mTurn.left_s = from.left_s;
    } else if (from.left_s && to.arrived_s) {
      mTurn.arrived_s = mTurn.left_s = *from.left_s + share * (*to.arrived_s - *from.left_s);
    }
  }

  // A stand about the turn: one arrives when it begins and walks off when it ends.
  void standNear(size_t a, size_t b) {
    const double reach = std::max(3 * mError, 10.0);
    const CleanFix *stand = nullptr;
    const auto look = [&](size_t i) {
      if (mFixes[i].stand && (!stand || *mFixes[i].left_s - *mFixes[i].arrived_s > *stand->left_s - *stand->arrived_s))
        stand = &mFixes[i], mTurn.place = double(i);
    };
    for (size_t i = a;; --i) {
      if (distance(mFixes[i].at, mTurn.at) > reach)
        break;
      look(i);
      if (i == 0)
        break;
    }
    for (size_t i = b; i < mFixes.size() && distance(mFixes[i].at, mTurn.at) <= reach; ++i)
      look(i);
    if (!stand)
      return;
    mTurn.arrived_s = stand->arrived_s;
    mTurn.left_s = stand->left_s;
    if (!mTurn.seen) {
      mTurn.at = stand->at;
      mTurn.seen = true;
      setVariance(mError * mError, 0, mError * mError);
    }
  }

  const std::vector<CleanFix> &mFixes;
  const std::vector<TrackCut> &mCuts;
  const size_t mCut;
  const double mError, mBlur;
  double mShorter = 0;
  size_t mFirst = 0, mLast = 0;
  WalkedTurn mTurn;
};
} // namespace

WalkedTurn walkedTurn(const CleanTrack &track, const TrackCuts &cuts, size_t cut, double error_m) {
  return Turn(track, cuts, cut, error_m).found();
}

} // namespace brushline
