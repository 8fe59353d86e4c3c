// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/features_met.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>
#include <utility>

namespace brushline {

namespace {

constexpr double onLine = 1e-3; // metres; nobody tells a millimetre
constexpr double handrail = 50; // metres; common practice, no source

// A place where a run of edges meets the endless line of the leg.
struct Meeting {
  double at_m;
  MetEvent event; // Across, Touched or Along
  bool crosses;   // to the other side
};

// A run of edges, told by the leg.
using Run = std::vector<LegPoint>;

// Where a run meets the line.
std::vector<Meeting> meetings(const Run &run) {
  std::vector<Meeting> found;
  const auto side = [](const LegPoint &point) { return std::abs(point.across) <= onLine ? 0 : point.across > 0 ? 1 : -1; };
  int before = 0; // the side last known; 0: none yet
  for (size_t i = 0; i < run.size(); ++i) {
    const int here = side(run[i]);
    if (here != 0) {
      if (i > 0 && before == -here && side(run[i - 1]) != 0) {
        const double share = run[i - 1].across / (run[i - 1].across - run[i].across);
        found.push_back({run[i - 1].along + share * (run[i].along - run[i - 1].along), MetEvent::Across, true});
      }
      before = here;
      continue;
    }
    // On the line, for a while.
    size_t last = i;
    double least = run[i].along, most = run[i].along;
    while (last + 1 < run.size() && side(run[last + 1]) == 0) {
      ++last;
      least = std::min(least, run[last].along);
      most = std::max(most, run[last].along);
    }
    const int after = last + 1 < run.size() ? side(run[last + 1]) : 0;
    const bool crosses = before != 0 && after == -before;
    found.push_back({least, most - least > onLine ? MetEvent::Along : crosses ? MetEvent::Across : MetEvent::Touched,
                     crosses});
    if (after != 0)
      before = after;
    i = last + (after != 0 ? 1 : 0);
  }
  return found;
}

// Gathers the runs of a shape's stretches: those that follow each other are one.
std::vector<Run> runsOf(const Shape &shape, const ShapeStretch *first, const ShapeStretch *last, const LegLine &leg) {
  std::vector<Run> runs;
  constexpr size_t none = size_t(-1);
  size_t ringStart = none; // of the runs, the one with which the present part begins, when it begins at its first place
  for (const ShapeStretch *stretch = first; stretch != last; ++stretch) {
    const std::vector<Place> &part = shape.parts[stretch->part];
    const bool goesOn = stretch != first && (stretch - 1)->part == stretch->part && (stretch - 1)->last == stretch->first;
    if (!goesOn)
      runs.emplace_back();
    if (stretch != first && (stretch - 1)->part != stretch->part)
      ringStart = none;
    for (size_t i = stretch->first + (goesOn ? 1 : 0); i <= stretch->last; ++i)
      runs.back().push_back(leg.at(part[i]));
    if (stretch->first == 0)
      ringStart = runs.size() - 1;
    // A ring's last place is its first once more: there the runs go on, too.
    const bool ends = stretch->last + 1 == part.size() && shape.kind == ShapeKind::Polygon;
    if (ends && stretch->first > 0 && ringStart != none && ringStart + 1 < runs.size()) {
      runs.back().insert(runs.back().end(), runs[ringStart].begin() + 1, runs[ringStart].end());
      runs.erase(runs.begin() + long(ringStart));
      ringStart = none;
    }
  }
  // A whole ring is turned to begin off the line, so that no meeting is cut in two.
  if (shape.kind == ShapeKind::Polygon)
    for (Run &run : runs) {
      if (run.size() < 3 || std::abs(run.front().along - run.back().along) > 1e-9 ||
          std::abs(run.front().across - run.back().across) > 1e-9)
        continue;
      const auto off = std::find_if(run.begin(), run.end(),
                                    [](const LegPoint &point) { return std::abs(point.across) > onLine; });
      if (off == run.end() || off == run.begin())
        continue;
      run.pop_back();
      std::rotate(run.begin(), off, run.end());
      run.push_back(run.front());
    }
  return runs;
}

// Of equally near places the first on the way.
bool isNearer(const LegPoint &one, const LegPoint &other) {
  const double distance = std::abs(one.across), least = std::abs(other.across);
  return distance < least - onLine || (distance < least + onLine && one.along < other.along);
}

// The place of a run nearest to the leg: along it, and how far off.
LegPoint nearest(const Run &run, double length) {
  LegPoint best{0, std::numeric_limits<double>::infinity()};
  const auto look = [&](const LegPoint &point) {
    const double along = std::clamp(point.along, 0.0, length);
    if (point.along - length > std::abs(point.across))
      return; // ahead of the end rather than beside it
    const LegPoint here{along, std::copysign(std::hypot(point.along - along, point.across), point.across)};
    if (isNearer(here, best))
      best = here;
  };
  for (size_t i = 0; i < run.size(); ++i) {
    look(run[i]);
    if (i + 1 == run.size())
      break;
    // The leg's ends may lie nearest to an edge's middle.
    const double dx = run[i + 1].along - run[i].along, dy = run[i + 1].across - run[i].across;
    const double squared = dx * dx + dy * dy;
    for (const double end : {0.0, length})
      if (squared > 0) {
        const double share = std::clamp(((end - run[i].along) * dx - run[i].across * dy) / squared, 0.0, 1.0);
        look({run[i].along + share * dx, run[i].across + share * dy});
      }
    // Or that place may lie ahead of the end, and what is beside it count.
    if ((run[i].along < length) != (run[i + 1].along < length))
      look({length, run[i].across + (length - run[i].along) / dx * dy});
  }
  return best;
}

// A stretch of the leg beside which runs lie no farther off than the width.
struct Beside {
  double from_m, to_m;
  LegPoint nearest;
};

std::vector<Beside> besideLeg(const std::vector<Run> &runs, double length, double width) {
  std::vector<Beside> pieces; // one of each edge
  for (const Run &run : runs)
    for (size_t i = 1; i < run.size(); ++i) {
      const LegPoint &start = run[i - 1];
      const double dx = run[i].along - start.along, dy = run[i].across - start.across;
      double first = 0, last = 1; // shares of the edge
      const auto keep = [&](double value, double change, double least, double most) {
        if (change == 0) {
          if (value < least || value > most)
            last = -1;
          return;
        }
        const double one = (least - value) / change, other = (most - value) / change;
        first = std::max(first, std::min(one, other));
        last = std::min(last, std::max(one, other));
      };
      keep(start.along, dx, 0, length);
      keep(start.across, dy, -width, width);
      if (first > last)
        continue;
      LegPoint from{std::clamp(start.along + first * dx, 0.0, length), start.across + first * dy},
          to{std::clamp(start.along + last * dx, 0.0, length), start.across + last * dy};
      if (to.along < from.along)
        std::swap(from, to);
      pieces.push_back({from.along, to.along, isNearer(to, from) ? to : from});
    }
  std::sort(pieces.begin(), pieces.end(), [](const Beside &a, const Beside &b) { return a.from_m < b.from_m; });
  std::vector<Beside> stretches;
  for (const Beside &piece : pieces) {
    if (stretches.empty() || piece.from_m > stretches.back().to_m + onLine) {
      stretches.push_back(piece);
      continue;
    }
    Beside &stretch = stretches.back();
    stretch.to_m = std::max(stretch.to_m, piece.to_m);
    if (isNearer(piece.nearest, stretch.nearest))
      stretch.nearest = piece.nearest;
  }
  return stretches;
}

// Where a shape that is nearest at the start is passed on this leg; none where it only comes past the start.
std::optional<LegPoint> passedFromStart(const std::vector<Run> &runs, double length, double width) {
  std::optional<LegPoint> best;
  for (const Beside &stretch : besideLeg(runs, length, std::max(width, onLine)))
    if ((stretch.from_m > onLine || stretch.to_m >= std::min(handrail, length / 2)) &&
        (!best || isNearer(stretch.nearest, *best)))
      best = stretch.nearest;
  return best;
}

} // namespace

std::vector<FeatureMet> featuresMet(const Shapes &shapes, const LegLine &leg, const MeetRule &rule) {
  const double length = leg.length_m(), end = length + rule.reach.metres();
  const std::vector<ShapeStretch> stretches = leg.near(shapes, rule.reach, rule.width);
  std::vector<FeatureMet> met;
  std::optional<FeatureMet> beyond;
  for (size_t i = 0; i < stretches.size();) {
    const size_t index = stretches[i].shape;
    size_t next = i;
    while (next < stretches.size() && stretches[next].shape == index)
      ++next;
    const Shape &shape = shapes[index];
    const std::vector<Run> runs = runsOf(shape, &stretches[i], &stretches[i] + (next - i), leg);
    i = next;

    std::vector<Meeting> all;
    if (shape.kind != ShapeKind::Point)
      for (const Run &run : runs)
        for (const Meeting &meeting : meetings(run))
          all.push_back(meeting);
    std::sort(all.begin(), all.end(), [](const Meeting &a, const Meeting &b) { return a.at_m < b.at_m; });
    if (shape.kind == ShapeKind::Polygon) {
      // What happens at each border follows from where one starts.
      bool inside = isInside(shape, leg.placeAt(0));
      std::vector<Meeting> changes;
      for (const Meeting &meeting : all) {
        if (!meeting.crosses || meeting.at_m < -onLine)
          continue;
        if (meeting.at_m <= onLine) {
          inside = isInside(shape, leg.placeAt(2 * onLine));
          continue;
        }
        inside = !inside;
        changes.push_back({meeting.at_m, inside ? MetEvent::Into : MetEvent::OutOf, true});
      }
      all = changes;
    }

    bool here = false, ahead = false;
    for (const Meeting &meeting : all) {
      if (meeting.at_m <= onLine || meeting.at_m > end)
        continue;
      if (meeting.at_m <= length + onLine) {
        met.push_back({MetRole::Crossed, meeting.event, index, std::min(meeting.at_m, length), 0});
        here = true;
        continue;
      }
      ahead = true;
      if (!beyond || meeting.at_m < beyond->at_m)
        beyond = FeatureMet{MetRole::Beyond, meeting.event, index, meeting.at_m, 0};
    }
    if (here || (shape.kind == ShapeKind::Polygon && isInside(shape, leg.placeAt(length / 2))))
      continue;
    LegPoint best{0, std::numeric_limits<double>::infinity()};
    for (const Run &run : runs)
      if (const LegPoint point = nearest(run, length); std::abs(point.across) < std::abs(best.across))
        best = point;
    if (!(std::abs(best.across) <= rule.width.metres()))
      continue;
    // What lies beside the start or behind it was passed on the leg before, unless it goes on.
    if (best.along <= onLine) {
      const std::optional<LegPoint> passed = passedFromStart(runs, length, rule.width.metres());
      if (!passed)
        continue;
      best = *passed;
    }
    if (ahead && best.along >= length - onLine)
      continue; // what is met beyond the end is told there
    if (std::abs(best.across) <= onLine)
      met.push_back(
          {MetRole::Crossed, best.along <= onLine ? MetEvent::Along : MetEvent::Touched, index, best.along, 0});
    else
      met.push_back({best.across > 0 ? MetRole::Right : MetRole::Left, MetEvent::Passed, index, best.along, best.across});
  }
  if (beyond)
    met.push_back(*beyond);
  std::stable_sort(met.begin(), met.end(), [](const FeatureMet &a, const FeatureMet &b) { return a.at_m < b.at_m; });
  return met;
}

std::vector<FeatureMet> slopeBreaks(const Profile &profile) {
  constexpr double window = 30, steep = 0.15, gentle = 0.05; // metres; grades
  const double step = profile.step.metres();
  const std::vector<double> &heights = profile.heights;
  std::vector<FeatureMet> breaks;
  if (!(step > 0) || double(heights.size() - 1) * step < window)
    return breaks;
  const auto heightAt = [&](double at) {
    const double position = at / step;
    const size_t below = std::min(size_t(position), heights.size() - 2);
    return heights[below] + (position - double(below)) * (heights[below + 1] - heights[below]);
  };
  MetEvent state = MetEvent::GroundLevels;
  bool known = false; // the state
  const double end = double(heights.size() - 1) * step;
  for (size_t i = 0; i < heights.size(); ++i) {
    const double at = double(i) * step;
    if (at < window / 2 || at > end - window / 2)
      continue;
    const double grade = (heightAt(at + window / 2) - heightAt(at - window / 2)) / window;
    if (std::isnan(grade)) {
      known = false;
      continue;
    }
    MetEvent now = known ? state : MetEvent::GroundLevels;
    const bool stillRises = now == MetEvent::GroundRises && grade > gentle;
    const bool stillFalls = now == MetEvent::GroundFalls && grade < -gentle;
    if (grade >= steep)
      now = MetEvent::GroundRises;
    else if (grade <= -steep)
      now = MetEvent::GroundFalls;
    else if (!stillRises && !stillFalls)
      now = MetEvent::GroundLevels;
    if (known && now != state)
      breaks.push_back({MetRole::Crossed, now, FeatureMet::noShape, at, 0});
    state = now;
    known = true;
  }
  return breaks;
}

std::vector<FeatureMet> allMet(const Shapes &shapes, const LegLine &leg, const Profile *profile, const MeetRule &rule) {
  std::vector<FeatureMet> met = featuresMet(shapes, leg, rule);
  if (!profile)
    return met;
  for (FeatureMet &change : slopeBreaks(*profile)) {
    if (change.at_m > leg.length_m() + rule.reach.metres())
      break;
    const bool beyond = change.at_m > leg.length_m();
    if (beyond)
      change.role = MetRole::Beyond;
    met.push_back(change);
    if (beyond)
      break; // the first one only
  }
  std::stable_sort(met.begin(), met.end(), [](const FeatureMet &a, const FeatureMet &b) { return a.at_m < b.at_m; });
  return met;
}

} // namespace brushline
