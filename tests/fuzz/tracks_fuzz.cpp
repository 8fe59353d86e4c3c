// SPDX-License-Identifier: GPL-2.0-or-later
// Recorded tracks: cleaned, cut into legs, matched with courses and compared.
#include "fuzz_land.h"

#include "records/course_matching.h"
#include "records/track_cleaning.h"
#include "records/walked_turn.h"

using namespace brushline;
using fuzz::Input;

FUZZ(input) {
  fuzz::Land land(input, input.scaled(1, 3000));
  std::vector<PlannedCourse> courses;
  for (size_t count = 1 + input.upTo(2); count > 0; --count) {
    PlannedCourse course{courses.empty() ? 0 : courses.back().route + input.upTo(1), {}};
    const std::vector<Place> turns = land.line(2, 6);
    for (size_t i = 1; i < turns.size(); ++i) {
      const GeodesicLeg leg = geodesicBetween(turns[i - 1], turns[i]);
      if (leg.length.metres() >= 1e-3)
        course.legs.push_back({turns[i - 1], turns[i], leg, input.upTo(7) == 0});
    }
    if (!course.legs.empty())
      courses.push_back(std::move(course));
  }
  if (courses.empty())
    return;

  // A walk of the first course, more or less, and other fixes.
  std::vector<TrackFix> fixes;
  double time = 1.7e9;
  const bool timed = input.flag();
  const auto add = [&](const Place &place) {
    TrackFix fix{place, {}, input.upTo(31) == 0};
    if (timed && input.upTo(15) > 0) {
      time += input.from({1.0, 10.0, 0.0, -5.0, 300.0, 0.5});
      fix.time_s = time;
    }
    fixes.push_back(fix);
  };
  for (const PlannedLeg &leg : courses[0].legs) {
    const size_t steps = input.upTo(20);
    const double stray = input.from({0.0, 1.0, 20.0});
    for (size_t i = 0; i < steps; ++i) {
      const Place on = geodesicDestination(leg.from, leg.geodesic.departure,
                                           Length::metres(leg.geodesic.length.metres() * double(i) / double(steps)));
      add(geodesicDestination(on, TrueBearing(Angle::degrees(double(input.upTo(7)) * 45)), Length::metres(stray)));
      for (size_t stand = input.upTo(15) == 0 ? input.upTo(30) : 0; stand > 0; --stand)
        add(on);
    }
  }
  for (size_t count = input.upTo(10); count > 0; --count)
    add(land.place());

  const TrackRule rule{input.between(TrackRule::errorLimits.least, TrackRule::errorLimits.most),
                       input.between(TrackRule::speedLimits.least, TrackRule::speedLimits.most)};
  const double tolerance = input.scaled(1, 5000);
  const LocalPlane plane(fixes.empty() ? land.origin : fixes.front().place);
  try {
    const CleanTrack track = cleanTrack(fixes, plane, rule, fuzz::Patience(1000));
    PROMISED(track.fixes.size() + track.duplicates + track.spikes <= fixes.size());
    PROMISED(fixes.empty() == track.fixes.empty());
    double before = -HUGE_VAL;
    for (const CleanFix &fix : track.fixes) {
      PROMISED(std::isfinite(fix.at.east) && std::isfinite(fix.at.north));
      PROMISED(fix.arrived_s.has_value() == fix.left_s.has_value());
      if (fix.arrived_s) {
        PROMISED(track.times == TrackTimes::Kept && *fix.arrived_s >= before && *fix.left_s >= *fix.arrived_s);
        before = *fix.left_s;
      }
    }
    const CuttingRule cutting{tolerance, rule.error_m};
    const std::vector<MeantLeg> meant = onPlane(courses[0].legs, plane);
    if (const auto cuts = cutAtTurns(track, meant, cutting, fuzz::Patience(1000))) {
      PROMISED(cuts->cuts.size() >= 2 && cuts->first_leg + cuts->cuts.size() - 1 <= meant.size());
      PROMISED(std::isfinite(cuts->score) && cuts->blur_m >= 0);
      size_t at = 0;
      for (size_t i = 0; i < cuts->cuts.size(); ++i) {
        const TrackCut &cut = cuts->cuts[i];
        PROMISED(cut.before >= at && cut.before <= cut.after && cut.after < track.fixes.size());
        at = cut.before;
        const WalkedTurn turn = walkedTurn(track, *cuts, i, rule.error_m);
        PROMISED(std::isfinite(turn.at.east) && std::isfinite(turn.at.north));
        PROMISED(turn.place >= 0 && turn.place <= double(track.fixes.size() - 1));
        PROMISED(turn.ee >= 0 && turn.nn >= 0 && std::isfinite(turn.ee + turn.en + turn.nn));
      }
    }
    const CourseMatcher matcher(courses, rule, tolerance);
    std::optional<size_t> only;
    if (input.upTo(3) == 0)
      only = courses[0].route;
    const TrackMatch match = matcher.match(fixes, only, fuzz::Patience(1000));
    if (!match.course)
      return;
    PROMISED(*match.course < courses.size());
    PROMISED(match.legs.size() == courses[*match.course].legs.size());
    for (const WalkedLeg &leg : match.legs) {
      if (leg.share == LegShare::None)
        continue;
      PROMISED(fuzz::isFinite(leg.start) && fuzz::isFinite(leg.end));
      PROMISED(!leg.walked || fuzz::isBearing(leg.walked->degrees()));
      PROMISED(!leg.walked_m || (*leg.walked_m >= 0 && std::isfinite(*leg.walked_m)));
      PROMISED(!leg.brg_diff || (*leg.brg_diff > -180 && *leg.brg_diff <= 180));
      PROMISED(!leg.minutes || *leg.minutes >= 0);
      PROMISED(!leg.stand_min || (*leg.stand_min >= 0 && (!leg.minutes || *leg.stand_min <= *leg.minutes + 1e-9)));
      PROMISED(!leg.wander_m || (*leg.wander_m >= 0 && std::isfinite(*leg.wander_m)));
      PROMISED(!leg.walked || (std::isfinite(leg.brg_sigma) && std::isfinite(leg.length_sigma)));
      for (const ProfilePoint &point : leg.profile)
        PROMISED(std::isfinite(point.at_m) && std::isfinite(point.cross_m));
    }
  } catch (const Cancelled &) {
  }
}
