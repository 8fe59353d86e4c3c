// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/aim_off.h"

#include "shared/geodesic.h"
#include "walking/pacing.h"
#include "walking/profile_summary.h"
#include "walking/walk_line.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <set>
#include <stdexcept>
#include <utility>

namespace brushline {

namespace {

constexpr double onTheLine = 1;  // metres
constexpr double walkOn = 1.5;   // times the distance on the aimed bearing
constexpr double lookAround = 3; // times the distance to the destination, or to the nearest line
constexpr double farthestAside = 75 * Angle::pi / 180;
constexpr double settled = 2e-4;      // radians; 0.2 m at 1 km
constexpr double nearlyAsLong = 0.05; // two ways whose lengths differ by less are alike
constexpr double surelyMet = 0.999;   // of those who meet the line, before they stop
constexpr double sigmasPaced = 3;     // by which a count of paces may be short
constexpr double claimed = 1e-9;      // rounding of a probability

double bearingOf(const PlanePoint &point) { return std::atan2(point.east, point.north); }
double awayOf(const PlanePoint &point) { return std::hypot(point.east, point.north); }
double turnFrom(double a, double b) { return std::remainder(b - a, 2 * Angle::pi); }

PlanePoint between(const PlanePoint &a, const PlanePoint &b, double share) {
  return {a.east + share * (b.east - a.east), a.north + share * (b.north - a.north)};
}

double distanceTo(const PlanePoint &a, const PlanePoint &b) { // of the origin from an edge
  const double east = b.east - a.east, north = b.north - a.north, squared = east * east + north * north;
  const double share = squared > 0 ? std::min(std::max(-(a.east * east + a.north * north) / squared, 0.0), 1.0) : 0.0;
  return awayOf(between(a, b, share));
}

Shapes indexOf(const std::vector<AimDestination> &all) {
  std::vector<Shape> points;
  for (const AimDestination &one : all) {
    Shape point;
    point.kind = ShapeKind::Point;
    point.parts = {{one.on.place}};
    points.push_back(std::move(point));
  }
  return Shapes(std::move(points));
}

} // namespace

AimDestinations::AimDestinations(std::vector<AimDestination> all) : mAll(std::move(all)), mIndex(indexOf(mAll)) {}

std::optional<size_t> AimDestinations::nearest(const Place &place, Length reach) const {
  std::optional<size_t> best;
  double least = std::numeric_limits<double>::infinity();
  for (const ShapeStretch &stretch : mIndex.near(place, place, reach)) {
    const double metres = geodesicBetween(place, mAll[stretch.shape].on.place).length.metres();
    if (metres <= reach.metres() && metres < least) {
      least = metres;
      best = stretch.shape;
    }
  }
  return best;
}

//! What an edge of the fan is.
struct AimPlanner::Edge {
  size_t line, part, edge;
  double along_a, along_b;
  LineTurn turn = LineTurn::None; // to the destination
};

//! What is seen from a start.
struct AimPlanner::View {
  std::optional<LineFan> fan;
  std::vector<Edge> edges;
  double reach_m = 0;
};

//! Where one walks from and to.
struct AimPlanner::Trip {
  const AimStart *start;
  LocalPlane plane;
  std::optional<size_t> destination;
  const AimDestination *to = nullptr;                        // null without
  double bearing = 0, metres = 0;                            // to the destination
  double around_m = std::numeric_limits<double>::infinity(); // look no farther
};

struct AimPlanner::Odds {
  double left = 0, right = 0, none = 0; // of meeting the line where one has to turn so
  double others = 0;                    // of meeting another line first
  size_t likeliest = 0;                 // of the others
  double hit() const { return left + right + none; }
  double of(LineTurn turn) const { return turn == LineTurn::Left ? left : turn == LineTurn::Right ? right : hit(); }
};

struct AimPlanner::Aim {
  const View *view = nullptr;
  size_t line = 0;
  double bearing = 0; // radians
  double metres = 0;  // to the line
  LineTurn turn = LineTurn::None;
  AimSide side = AimSide::Choose;
  double chance = 0;
  OnLine at{};
  double along_m = 0; // to the destination
};

AimPlanner::AimPlanner(Setting setting, std::vector<std::unique_ptr<LegAnnotator>> annotators,
                       std::unique_ptr<Terrain> terrain)
    : mSetting(std::move(setting)), mAnnotators(std::move(annotators)), mTerrain(std::move(terrain)) {
  if (!mSetting.lines || mAnnotators.empty() || mAnnotators.size() != mSetting.legs.walkers.size())
    throw std::invalid_argument("aiming off needs lines, and an annotator for each walker");
  if (!(mSetting.rule.confidence > 0.5 && mSetting.rule.confidence < 1))
    throw std::invalid_argument("confidence lies between 0.5 and 1");
}

AnnotateSettings AimPlanner::annotatorSettings(const AnnotateSettings &all, size_t walker) {
  AnnotateSettings one = all;
  one.walkers = {all.walkers[walker]};
  one.direction = Direction::Out;
  one.keep_marks = true; // the hops
  return one;
}

std::optional<AimFailure> AimPlanner::look(const Trip &trip, std::optional<size_t> only, View &view,
                                           const Progress &progress) const {
  const LineNet &net = *mSetting.lines;
  view.reach_m = std::min(mSetting.rule.reach.metres(), trip.around_m);
  std::vector<FanEdge> fan;
  const Place &start = trip.start->place;
  for (const ShapeStretch &stretch : net.shapes().near(start, start, Length::metres(view.reach_m))) {
    progress.check();
    if (only && stretch.shape != *only)
      continue;
    const bool target = !trip.to || stretch.shape == trip.to->on.line;
    const auto &part = net.shapes()[stretch.shape].parts[stretch.part];
    // Where the way to the destination changes: at the destination, and on a closed line opposite to it.
    std::vector<double> changes;
    if (trip.to && target && stretch.part == trip.to->on.part) {
      changes.push_back(trip.to->on.along_m);
      if (net.closed(stretch.shape, stretch.part)) {
        const double round = net.length(stretch.shape, stretch.part);
        changes.push_back(std::fmod(trip.to->on.along_m + round / 2, round));
      }
      std::sort(changes.begin(), changes.end());
    }
    PlanePoint a = trip.plane.toPlane(part[stretch.first]);
    for (size_t edge = stretch.first; edge < stretch.last; ++edge) {
      const PlanePoint b = trip.plane.toPlane(part[edge + 1]);
      const double from = net.along(stretch.shape, stretch.part, edge),
                   to = net.along(stretch.shape, stretch.part, edge + 1);
      if (distanceTo(a, b) < onTheLine) {
        if (target)
          return AimFailure::OnTheLine;
        a = b; // one stands on another line and leaves it
        continue;
      }
      double cut = from;
      PlanePoint at = a;
      const auto add = [&](double until) {
        const PlanePoint next = until == to ? b : between(a, b, (until - from) / (to - from));
        Edge piece{stretch.shape, stretch.part, edge, cut, until, LineTurn::None};
        if (!changes.empty()) {
          const double way = net.way(stretch.shape, stretch.part, (cut + until) / 2, trip.to->on.along_m);
          const double leftward = (at.east * (next.north - at.north) - at.north * (next.east - at.east)) * way;
          piece.turn = leftward > 0 ? LineTurn::Left : LineTurn::Right;
        }
        fan.push_back({at, next});
        view.edges.push_back(piece);
        cut = until;
        at = next;
      };
      for (const double change : changes)
        if (change > cut && change < to)
          add(change);
      add(to);
      a = b;
    }
  }
  view.fan.emplace(std::move(fan));
  return view.fan->pieces().empty() ? std::optional(AimFailure::NoLine) : std::nullopt;
}

double AimPlanner::limitAt(const View &view, double metres) const { return std::min(view.reach_m, walkOn * metres); }

AimPlanner::Odds AimPlanner::odds(const View &view, size_t line, double bearing, const AimSpread &spread,
                                  double limit_m) const {
  Odds odds;
  double most = 0;
  view.fan->chances(bearing, spread, limit_m, [&](size_t edge, double share) {
    const Edge &met = view.edges[edge];
    if (met.line != line) {
      odds.others += share;
      if (share > most) {
        most = share;
        odds.likeliest = met.line;
      }
    } else {
      (met.turn == LineTurn::Left ? odds.left : met.turn == LineTurn::Right ? odds.right : odds.none) += share;
    }
  });
  return odds;
}

// The chance of meeting a line where one has to turn so; 0 where the bearing itself does not.
double AimPlanner::chance(const View &view, size_t line, double bearing, LineTurn turn, const AimSpread &spread) const {
  const auto met = view.fan->met(bearing);
  if (!met || !(met->metres <= view.reach_m) || view.edges[met->edge].line != line ||
      (turn != LineTurn::None && view.edges[met->edge].turn != turn))
    return 0;
  return odds(view, line, bearing, spread, limitAt(view, met->metres)).of(turn);
}

AimPlanner::Aim AimPlanner::aimOn(const View &view, size_t line, double bearing, LineTurn turn,
                                  const AimSpread &spread) const {
  const auto met = view.fan->met(bearing);
  const Edge &edge = view.edges[met->edge];
  const FanEdge &drawn = view.fan->edges()[met->edge];
  const PlanePoint here{met->metres * std::sin(bearing), met->metres * std::cos(bearing)};
  const double length = std::hypot(drawn.b.east - drawn.a.east, drawn.b.north - drawn.a.north);
  const double share = std::min(std::hypot(here.east - drawn.a.east, here.north - drawn.a.north) / length, 1.0);
  Aim aim;
  aim.view = &view;
  aim.line = line;
  aim.bearing = bearing;
  aim.metres = met->metres;
  aim.turn = turn;
  aim.chance = chance(view, line, bearing, turn, spread);
  aim.at = {edge.line, edge.part, edge.edge, edge.along_a + share * (edge.along_b - edge.along_a), {}, 0};
  return aim;
}

std::optional<AimPlanner::Aim> AimPlanner::aimTo(const Trip &trip, const View &view, AimSide side,
                                                 const AimSpread &spread) {
  const size_t line = trip.to->on.line;
  const double confidence = mSetting.rule.confidence;
  const auto toSide = [&](AimSide one) -> std::optional<Aim> {
    const double way = one == AimSide::Left ? -1 : 1;
    const LineTurn turn = one == AimSide::Left ? LineTurn::Right : LineTurn::Left;
    const auto at = [&](double aside) { return chance(view, line, trip.bearing + way * aside, turn, spread); };
    const double step = std::min(std::max(spread.at(trip.metres) / 4, 5e-4), 0.02);
    double best = 0, aside = 0, before = 0;
    bool sure = false;
    for (double here = 0; here <= farthestAside && !sure; here += step) {
      const double now = at(here);
      if (now > best) {
        best = now;
        aside = here;
      }
      sure = now >= confidence;
      if (!sure)
        before = here;
    }
    if (best <= 0)
      return std::nullopt;
    if (sure) { // the smallest angle that is enough
      for (double low = before; aside - low > 1e-7;) {
        const double middle = (low + aside) / 2;
        (at(middle) >= confidence ? aside : low) = middle;
      }
    } else {
      double low = std::max(0.0, aside - step), high = std::min(aside + step, farthestAside);
      for (int i = 0; i < 30; ++i) {
        const double one = low + (high - low) / 3, two = high - (high - low) / 3;
        (at(one) < at(two) ? low : high) = at(one) < at(two) ? one : two;
      }
      if (at((low + high) / 2) > best)
        aside = (low + high) / 2;
    }
    Aim aim = aimOn(view, line, trip.bearing + way * aside, turn, spread);
    aim.side = one;
    aim.along_m = std::abs(mSetting.lines->way(aim.at.line, aim.at.part, aim.at.along_m, trip.to->on.along_m));
    return aim;
  };
  if (side != AimSide::Choose)
    return toSide(side);

  const std::optional<Aim> left = toSide(AimSide::Left), right = toSide(AimSide::Right);
  if (!left || !right)
    return left ? left : right;
  const bool leftSure = left->chance >= confidence - claimed, rightSure = right->chance >= confidence - claimed;
  if (leftSure != rightSure)
    return leftSure ? left : right;
  if (!leftSure)
    return left->chance >= right->chance ? left : right;
  const double leftWay = left->metres + left->along_m, rightWay = right->metres + right->along_m;
  if (mTerrain && std::abs(leftWay - rightWay) <= nearlyAsLong * std::min(leftWay, rightWay)) {
    const auto height = [&](const Aim &aim) {
      return mTerrain->height(
          geodesicDestination(trip.start->place, TrueBearing(Angle::radians(aim.bearing)), Length::metres(aim.metres)));
    };
    const double leftHeight = height(*left), rightHeight = height(*right); // the higher one is walked down from
    if (leftHeight != rightHeight && std::isfinite(leftHeight) && std::isfinite(rightHeight))
      return leftHeight > rightHeight ? left : right;
  }
  return leftWay <= rightWay ? left : right;
}

std::optional<AimPlanner::Aim> AimPlanner::surest(const std::vector<View> &views, const AimSpread &spread,
                                                  const Progress &progress) const {
  std::optional<Aim> best;
  double bestRounded = 0;
  const auto consider = [&](const View &view, double bearing) {
    const auto met = view.fan->met(bearing);
    if (!met || !(met->metres <= view.reach_m))
      return;
    const size_t line = view.edges[met->edge].line;
    const double rounded = std::round(1000 * chance(view, line, bearing, LineTurn::None, spread));
    if (rounded > bestRounded || (best && rounded == bestRounded && met->metres < best->metres)) {
      bestRounded = rounded;
      best = aimOn(view, line, bearing, LineTurn::None, spread);
    }
  };
  for (const View &view : views) {
    double last = -1;
    const auto &pieces = view.fan->pieces();
    for (const FanPiece &piece : pieces) {
      progress.check();
      const double middle = (piece.from + piece.to) / 2;
      const double step = std::max(spread.at((piece.from_m + piece.to_m) / 2) / 2, 0.001);
      // Its nearest place, which lies at an end or where the line is square to the bearing.
      const FanEdge &edge = view.fan->edges()[piece.edge];
      const double east = edge.b.east - edge.a.east, north = edge.b.north - edge.a.north;
      const double side = edge.a.east * north - edge.a.north * east > 0 ? 1 : -1;
      const double foot = middle + turnFrom(middle, std::atan2(side * north, -side * east));
      consider(view, std::min(std::max(foot, piece.from), piece.to));
      if (piece.from - last < step && piece.to - last < step)
        continue; // a bend so small that a neighbour has been tried
      const int tries = int(std::ceil((piece.to - piece.from) / step));
      for (int i = 0; i <= tries; ++i)
        consider(view, piece.from + (piece.to - piece.from) * (tries > 0 ? double(i) / tries : 0.5));
      consider(view, middle);
      last = piece.to;
    }
  }
  return best;
}

AnnotatedLeg AimPlanner::annotate(const Trip &trip, size_t walker, const Place &end, const Progress &progress) {
  std::vector<double> x, y;
  for (const Place &place : {trip.start->place, end}) {
    x.push_back(place.longitude.signedTurn().degrees());
    y.push_back(place.latitude.degrees());
  }
  trip.start->project(x, y);
  Route route;
  route.grid = trip.start->grid;
  route.parts = {{{trip.start->place, {x[0], y[0]}, 0}, {end, {x[1], y[1]}, 1}}};
  std::vector<AnnotatedLeg> legs = mAnnotators[walker]->annotate(route, progress);
  if (legs.size() != 1)
    throw std::logic_error("a start a metre from its line has a leg");
  return std::move(legs.front());
}

AimSpread AimPlanner::spreadOf(const AnnotatedLeg &leg, size_t walker) const {
  const Walker &who = mSetting.legs.walkers[walker];
  const LegErrors errors{who.bearing_error,
                         roundingError(dialBearing(mSetting.legs.compass.step, mSetting.legs.compass.unit)),
                         leg.field.declination_error.value_or(Angle()), who.pace_error_percent / 100};
  std::vector<double> marks;
  for (const LegMark &mark : leg.by_walker.front().marks)
    marks.push_back(mark.at_m);
  return AimSpread(marks, errors);
}

// The aim that the dial can show: of the numbers on both sides of it, and on the side of the destination aimed for, the
// one nearer to the destination that is enough, else the better one; none where neither meets the line.
std::optional<AimPlanner::Aim> AimPlanner::onTheDial(const Trip &trip, const AnnotatedLeg &leg, const Aim &aim,
                                                     const AimSpread &spread) const {
  const Compass &compass = mSetting.legs.compass;
  const Angle exact = compass.north == North::True   ? leg.true_bearing.angle()
                      : compass.north == North::Grid ? leg.grid_bearing.angle()
                                                     : leg.magnetic_bearing.value_or(MagneticBearing()).angle();
  const double off = Angle(dialBearing(*leg.dial, compass.unit) - exact).signedTurn().radians();
  const double step = dialBearing(compass.step, compass.unit).radians();
  std::vector<double> tries{aim.bearing + off, aim.bearing + off + (off > 0 ? -step : step)};
  const auto aside = [&](double bearing) { return std::abs(turnFrom(trip.bearing, bearing)); };
  if (aim.side != AimSide::Choose && aside(tries[1]) < aside(tries[0]))
    std::swap(tries[0], tries[1]);
  std::optional<Aim> best;
  for (const double bearing : tries) {
    // Where the line bends round in front of the destination, the turn may be right on both sides of it.
    const double right = turnFrom(trip.bearing, bearing);
    if ((aim.side == AimSide::Left && right > claimed) || (aim.side == AimSide::Right && right < -claimed))
      continue;
    const double now = chance(*aim.view, aim.line, bearing, aim.turn, spread);
    if (now <= 0)
      continue;
    if (!best || (best->chance < mSetting.rule.confidence && now > best->chance)) {
      const AimSide side = aim.side;
      best = aimOn(*aim.view, aim.line, bearing, aim.turn, spread);
      best->side = side;
    }
  }
  return best;
}

std::optional<AimedLeg> AimPlanner::toDestination(const Trip &trip, const View &view, size_t walker, AimSide side,
                                                  AimFailure &failure, const Progress &progress) {
  AnnotatedLeg leg = annotate(trip, walker, trip.to->on.place, progress);
  const bool choose = side == AimSide::Choose;
  std::optional<Aim> aim;
  const auto go = [&] {
    const Place end =
        geodesicDestination(trip.start->place, TrueBearing(Angle::radians(aim->bearing)), Length::metres(aim->metres));
    leg = annotate(trip, walker, end, progress);
  };
  // The hops depend on the cover along the aim, and the aim on the hops.
  for (int i = 0; i < 4; ++i) {
    progress.check();
    const std::optional<Aim> next = aimTo(trip, view, side, spreadOf(leg, walker));
    if (!next) {
      failure = AimFailure::NoAim;
      return std::nullopt;
    }
    const bool same = aim && std::abs(turnFrom(aim->bearing, next->bearing)) < settled;
    side = next->side;
    aim = next;
    go();
    if (same)
      break;
  }
  if (mSetting.rule.whole_dial && leg.dial) {
    aim = onTheDial(trip, leg, *aim, spreadOf(leg, walker));
    if (!aim) {
      std::optional<AimedLeg> other;
      if (choose)
        other = toDestination(trip, view, walker, side == AimSide::Left ? AimSide::Right : AimSide::Left, failure,
                              progress);
      failure = AimFailure::OffTheDial;
      return other;
    }
    go();
  }
  return finished(trip, *aim, std::move(leg), walker);
}

// The views of all lines, or of each alone where they are told apart.
std::optional<AimFailure> AimPlanner::lookAtEach(const Trip &trip, std::vector<View> &views,
                                                 const Progress &progress) const {
  views.clear();
  if (!mSetting.rule.tell_apart)
    return look(trip, std::nullopt, views.emplace_back(), progress);
  const Length around = Length::metres(std::min(mSetting.rule.reach.metres(), trip.around_m));
  std::set<size_t> lines;
  for (const ShapeStretch &stretch : mSetting.lines->shapes().near(trip.start->place, trip.start->place, around))
    lines.insert(stretch.shape);
  for (const size_t line : lines) {
    const auto failure = look(trip, line, views.emplace_back(), progress);
    if (failure == AimFailure::OnTheLine)
      return failure;
    if (failure)
      views.pop_back();
  }
  return views.empty() ? std::optional(AimFailure::NoLine) : std::nullopt;
}

std::optional<AimedLeg> AimPlanner::toAnyLine(const Trip &trip, const std::vector<View> &views, size_t walker,
                                              bool &sure, AimFailure &failure, const Progress &progress) {
  const FanPiece *nearest = nullptr;
  const View *where = nullptr;
  for (const View &view : views)
    for (const FanPiece &piece : view.fan->pieces())
      if (!nearest || std::min(piece.from_m, piece.to_m) < std::min(nearest->from_m, nearest->to_m)) {
        nearest = &piece;
        where = &view;
      }
  const double bearing = (nearest->from + nearest->to) / 2;
  const auto placeAt = [&](double towards, double metres) {
    return geodesicDestination(trip.start->place, TrueBearing(Angle::radians(towards)), Length::metres(metres));
  };
  AnnotatedLeg leg = annotate(trip, walker, placeAt(bearing, where->fan->distance(nearest->edge, bearing)), progress);
  std::optional<Aim> aim;
  for (int i = 0; i < 3; ++i) {
    progress.check();
    const std::optional<Aim> next = surest(views, spreadOf(leg, walker), progress);
    if (!next) {
      failure = AimFailure::NoLine;
      return std::nullopt;
    }
    const bool same = aim && std::abs(turnFrom(aim->bearing, next->bearing)) < settled;
    aim = next;
    leg = annotate(trip, walker, placeAt(aim->bearing, aim->metres), progress);
    if (same)
      break;
  }
  sure = std::round(1000 * aim->chance) >= 1000 && walkOn * aim->metres <= aim->view->reach_m;
  if (mSetting.rule.whole_dial && leg.dial) {
    aim = onTheDial(trip, leg, *aim, spreadOf(leg, walker));
    if (!aim) {
      failure = AimFailure::OffTheDial;
      return std::nullopt;
    }
    leg = annotate(trip, walker, placeAt(aim->bearing, aim->metres), progress);
  }
  return finished(trip, *aim, std::move(leg), walker);
}

void AimPlanner::walkAlong(const OnLine &from, AimedLeg &aimed) {
  const OnLine &to = (*mSetting.destinations)[*aimed.destination].on;
  const Walker &walker = mSetting.legs.walkers[aimed.walker];
  const double metres = std::abs(mSetting.lines->way(from.line, from.part, from.along_m, to.along_m));
  aimed.along_line_m = metres;
  double steps = 0;
  Duration time;
  const auto walk = [&](Length length, const Profile *profile) {
    const WalkLine line(length, profile, {}, walker);
    steps += line.steps();
    time = time + line.time().value_or(Duration());
  };
  if (!mTerrain) {
    if (metres > 0)
      walk(Length::metres(metres), nullptr);
  } else {
    const std::vector<Place> places = mSetting.lines->walk(from, to);
    for (size_t i = 1; i < places.size(); ++i) {
      const Length length = geodesicBetween(places[i - 1], places[i]).length;
      if (!(length > Length::metres(0.001)))
        continue;
      const Profile profile = mTerrain->profile(places[i - 1], places[i], length);
      walk(length, summarize(profile).without_data > Length() ? nullptr : &profile);
    }
  }
  aimed.along_paces = pacesCounted(steps, walker.kind);
  aimed.along_time = time;
}

std::optional<AimCatch> AimPlanner::catchBeyond(const Trip &trip, double bearing, double metres) const {
  const double reach = mSetting.rule.reach.metres();
  if (!mSetting.catching || metres >= reach)
    return std::nullopt;
  const TrueBearing onward{Angle::radians(bearing)};
  const Place &start = trip.start->place;
  const double east = std::sin(bearing), north = std::cos(bearing);
  std::optional<AimCatch> best;
  for (const ShapeStretch &stretch :
       mSetting.catching->near(geodesicDestination(start, onward, Length::metres(metres)),
                               geodesicDestination(start, onward, Length::metres(reach)), Length())) {
    const auto &part = (*mSetting.catching)[stretch.shape].parts[stretch.part];
    PlanePoint a = trip.plane.toPlane(part[stretch.first]);
    for (size_t edge = stretch.first; edge < stretch.last; ++edge) {
      const PlanePoint b = trip.plane.toPlane(part[edge + 1]);
      const double sideA = a.east * north - a.north * east, sideB = b.east * north - b.north * east; // to the right
      if ((sideA <= 0) != (sideB <= 0)) {
        const PlanePoint at = between(a, b, sideA / (sideA - sideB));
        const double beyond = at.east * east + at.north * north - metres;
        if (beyond > onTheLine && beyond + metres <= reach && (!best || beyond < best->beyond_m))
          best = AimCatch{stretch.shape, beyond};
      }
      a = b;
    }
  }
  return best;
}

AimedLeg AimPlanner::finished(const Trip &trip, const Aim &aim, AnnotatedLeg leg, size_t walker) {
  AimedLeg aimed;
  aimed.walker = walker;
  aimed.line = aim.line;
  aimed.destination = trip.destination;
  aimed.side = aim.side;
  aimed.turn = aim.turn;
  const AimSpread spread = spreadOf(leg, walker);
  const double limit = limitAt(*aim.view, aim.metres);
  const Odds all = odds(*aim.view, aim.line, aim.bearing, spread, limit);
  aimed.hit = all.hit();
  aimed.right = all.of(aim.turn);
  aimed.wrong = aimed.hit - aimed.right;

  // By then those who meet the line have met it, however short they may have counted.
  double low = aim.metres, high = limit;
  while (high - low > 0.1) {
    const double middle = (low + high) / 2;
    (odds(*aim.view, aim.line, aim.bearing, spread, middle).hit() >= surelyMet * aimed.hit ? high : low) = middle;
  }
  aimed.stop_m = high * (1 + sigmasPaced * mSetting.legs.walkers[walker].pace_error_percent / 100);
  aimed.stop_paces =
      long(std::ceil(double(leg.by_walker.front().paces) * aimed.stop_m / leg.length.metres() - claimed));
  aimed.catching = catchBeyond(trip, aim.bearing, aim.metres);

  const double confidence = mSetting.rule.confidence;
  if (trip.to) {
    const double aside = turnFrom(trip.bearing, aim.bearing);
    aimed.offset = Angle::radians(std::abs(aside));
    if (std::abs(aside) < Angle::pi / 2)
      aimed.offset_m = trip.metres * std::tan(std::abs(aside));
    OnLine from = aim.at;
    from.place = leg.end;
    walkAlong(from, aimed);
    if (aimed.right < confidence - claimed)
      aimed.warnings.push_back({AimRemark::NotSure, aimed.right});
    if (trip.to->on.away_m >= onTheLine)
      aimed.warnings.push_back({AimRemark::BesideTheLine, 0, trip.to->on.away_m});
    if (std::abs(aside) > Angle::pi / 4)
      aimed.warnings.push_back({AimRemark::FarAside});
  } else if (aimed.hit < confidence - claimed) {
    aimed.warnings.push_back({AimRemark::MayMiss, aimed.hit});
  }
  if (all.others >= 0.005)
    aimed.warnings.push_back({AimRemark::OtherFirst, all.others, 0, all.likeliest});
  aimed.leg = std::move(leg);
  return aimed;
}

AimPlan AimPlanner::plan(const AimStart &start, const Progress &progress) {
  AimPlan plan;
  const auto fail = [&](AimFailure why) {
    plan.legs.clear();
    plan.failure = why;
    return plan;
  };
  progress.check();
  Trip trip{&start, LocalPlane(start.place), start.destination};
  std::vector<View> views;
  if (mSetting.destinations) {
    if (!trip.destination)
      trip.destination = mSetting.destinations->nearest(start.place, mSetting.rule.reach);
    if (!trip.destination)
      return fail(AimFailure::NoDestination);
    trip.to = &(*mSetting.destinations)[*trip.destination];
    const PlanePoint there = trip.plane.toPlane(trip.to->on.place);
    trip.bearing = bearingOf(there);
    trip.metres = awayOf(there);
    if (trip.metres > mSetting.rule.reach.metres())
      return fail(AimFailure::TooFar);
    if (trip.metres < onTheLine)
      return fail(AimFailure::OnTheLine);
    trip.around_m = lookAround * trip.metres;
    View &view = views.emplace_back();
    if (const auto failure =
            look(trip, mSetting.rule.tell_apart ? std::optional(trip.to->on.line) : std::nullopt, view, progress))
      return fail(*failure);
    for (size_t walker = 0; walker < mAnnotators.size(); ++walker) {
      AimFailure why{};
      std::optional<AimedLeg> aimed = toDestination(trip, view, walker, mSetting.rule.side, why, progress);
      if (!aimed)
        return fail(why);
      plan.legs.push_back(std::move(*aimed));
    }
    return plan;
  }

  // A sure meeting with a near line cannot be bettered by lines farther off; so look there first.
  const double reach = mSetting.rule.reach.metres();
  std::optional<OnLine> nearest;
  for (double within = 64; !nearest; within *= 2) {
    nearest = mSetting.lines->nearest(start.place, Length::metres(std::min(within, reach)));
    if (!nearest && within >= reach)
      return fail(AimFailure::NoLine);
  }
  if (nearest->away_m < onTheLine)
    return fail(AimFailure::OnTheLine);
  trip.around_m = lookAround * nearest->away_m;
  if (const auto failure = lookAtEach(trip, views, progress))
    return fail(*failure);
  bool all = trip.around_m >= reach;
  for (size_t walker = 0; walker < mAnnotators.size();) {
    bool sure = false;
    AimFailure why{};
    std::optional<AimedLeg> aimed = toAnyLine(trip, views, walker, sure, why, progress);
    if (!all && !(aimed && sure)) {
      all = true;
      trip.around_m = reach;
      if (const auto failure = lookAtEach(trip, views, progress))
        return fail(*failure);
      continue;
    }
    if (!aimed)
      return fail(why);
    plan.legs.push_back(std::move(*aimed));
    ++walker;
  }
  return plan;
}

} // namespace brushline
