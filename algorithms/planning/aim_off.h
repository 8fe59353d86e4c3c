// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "legs/annotate_legs.h"
#include "planning/aim_spread.h"
#include "planning/line_fan.h"
#include "planning/line_net.h"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace brushline {

//! To which side of the destination one aims, facing it. The numbers are those of the parameter SIDE.
enum class AimSide { Choose = 0, Left = 1, Right = 2 };

//! The way to turn on meeting a line.
enum class LineTurn { None, Left, Right };

struct AimRule {
  AimSide side = AimSide::Choose;
  double confidence = 0.95; //!< in (0.5, 1)
  Length reach = Length::metres(reachLimits.usual);
  bool tell_apart = false; //!< walkers tell the lines from each other; else another line met first counts as a miss
  bool whole_dial = true;  //!< aim by a number that stands on the dial

  static constexpr Limits reachLimits{1, 100000, 3000};
};

//! A place on a line that somebody wants to come to.
struct AimDestination {
  OnLine on;
  std::string name; //!< UTF-8; empty: none
};

//! Destinations with an index. Safe to ask from several threads.
class AimDestinations {
public:
  explicit AimDestinations(std::vector<AimDestination> all);
  const AimDestination &operator[](size_t i) const { return mAll[i]; }
  size_t size() const { return mAll.size(); }
  //! The nearest by geodesic distance, of equally near ones the first; none within reach.
  std::optional<size_t> nearest(const Place &place, Length reach) const;

private:
  std::vector<AimDestination> mAll;
  Shapes mIndex;
};

//! What needs saying about an aim.
enum class AimRemark {
  NotSure,       //!< the chance of the right turn is only share
  MayMiss,       //!< the chance of meeting the line is only share
  OtherFirst,    //!< with a chance of share another line is met first; line tells the likeliest
  BesideTheLine, //!< the destination lies so many metres beside the line
  FarAside,      //!< the aim lies more than 45 degrees beside the destination
};

struct AimWarning {
  AimRemark remark;
  double share = 0;
  double metres = 0;
  size_t line = 0;
};

//! What is met beyond the line.
struct AimCatch {
  size_t shape;
  double beyond_m; //!< the line, along the bearing
};

//! A leg to a line, for one walker.
struct AimedLeg {
  AnnotatedLeg leg; //!< from the start to where the aimed bearing meets the line; by_walker holds the one walker
  size_t walker = 0;
  size_t line = 0; //!< of the net
  std::optional<size_t> destination;

  AimSide side = AimSide::Choose; //!< Choose: no destination, so none
  LineTurn turn = LineTurn::None;
  std::optional<double> offset_m; //!< how far beside the destination one aims, square to the line of sight to it
  std::optional<Angle> offset;    //!< the same as an angle at the start
  std::optional<double> along_line_m;
  std::optional<long> along_paces;
  std::optional<Duration> along_time;

  double hit = 0;    //!< the chance of meeting the line before any other that is not told from it
  double right = 0;  //!< the chance of meeting it where the turn leads to the destination; hit without one
  double wrong = 0;  //!< the chance of meeting it where the other turn would, or neither
  double stop_m = 0; //!< the paced distance by which one has surely met it
  long stop_paces = 0;
  std::optional<AimCatch> catching;
  std::vector<AimWarning> warnings;
};

//! Why there is no aim.
enum class AimFailure {
  NoLine,        //!< no line within reach
  OnTheLine,     //!< the start lies on the line
  NoDestination, //!< no destination within reach
  TooFar,        //!< the destination asked for is out of reach
  NoAim,         //!< no bearing meets the line so that the turn leads to the destination
  OffTheDial,    //!< one does, but the numbers of the dial beside it do not
};

struct AimPlan {
  std::optional<AimFailure> failure;
  std::vector<AimedLeg> legs; //!< by walker; empty after a failure
};

struct AimStart {
  Place place;
  std::optional<size_t> destination; //!< none: the nearest
  std::string grid;                  //!< as GridNorth reads it
  Project project;                   //!< into that grid
};

/**
 * Aims off: to one side of a destination on a line, so that on meeting the line one knows which way to turn.
 *
 * One keeps walking on the aimed bearing until meeting the line. A walk errs to the side by AimSpread, whose number at
 * the aim is the drift of the annotated leg; how far one has come does not matter, since the line itself tells. The aim
 * is the smallest angle beside the destination at which the chance of meeting the line where the turn leads to the
 * destination is at least the confidence; or the one with the greatest chance where no angle reaches it. Angles up to
 * 75 degrees are tried. With whole_dial the aim is then a number of the dial beside that angle; where neither of the
 * two meets the line as it has to, there is no aim (with the side left open, none to that side).
 *
 * What counts as met: the line as seen from the start (LineFan), within reach, and no farther than half as far again as
 * on the aimed bearing itself; with a destination also no farther than three times the distance to it. Another line met
 * first is a miss, unless lines are told apart. On a closed line the shorter way round is the way to the destination.
 *
 * Without destinations: the bearing with the greatest chance of meeting any line; of chances alike to the thousandth
 * the nearest. Bearings are tried half a standard deviation apart.
 *
 * One thread at a time; the same result whatever came before.
 */
class AimPlanner {
public:
  //! Borrowed.
  struct Setting {
    const LineNet *lines = nullptr;                //!< never null
    const AimDestinations *destinations = nullptr; //!< null: no destinations
    const Shapes *catching = nullptr;              //!< may be null
    AimRule rule;
    AnnotateSettings legs; //!< with all walkers
  };

  //! \param annotators one a walker, made with annotatorSettings(). \param terrain may be null.
  AimPlanner(Setting setting, std::vector<std::unique_ptr<LegAnnotator>> annotators, std::unique_ptr<Terrain> terrain);

  //! The settings of the annotator for one walker.
  static AnnotateSettings annotatorSettings(const AnnotateSettings &all, size_t walker);

  //! \throws Cancelled
  AimPlan plan(const AimStart &start, const Progress &progress);

  const std::vector<std::unique_ptr<LegAnnotator>> &annotators() const { return mAnnotators; }

private:
  struct Edge;
  struct View;
  struct Aim;
  struct Odds;
  struct Trip;

  std::optional<AimFailure> look(const Trip &trip, std::optional<size_t> only, View &view,
                                 const Progress &progress) const;
  Odds odds(const View &view, size_t line, double bearing, const AimSpread &spread, double limit_m) const;
  double limitAt(const View &view, double metres) const;
  double chance(const View &view, size_t line, double bearing, LineTurn turn, const AimSpread &spread) const;
  std::optional<Aim> aimTo(const Trip &trip, const View &view, AimSide side, const AimSpread &spread);
  std::optional<Aim> surest(const std::vector<View> &views, const AimSpread &spread, const Progress &progress) const;
  Aim aimOn(const View &view, size_t line, double bearing, LineTurn turn, const AimSpread &spread) const;
  AnnotatedLeg annotate(const Trip &trip, size_t walker, const Place &end, const Progress &progress);
  AimSpread spreadOf(const AnnotatedLeg &leg, size_t walker) const;
  std::optional<Aim> onTheDial(const Trip &trip, const AnnotatedLeg &leg, const Aim &aim,
                               const AimSpread &spread) const;
  //! \param failure why, where there is none.
  std::optional<AimedLeg> toDestination(const Trip &trip, const View &view, size_t walker, AimSide side,
                                        AimFailure &failure, const Progress &progress);
  std::optional<AimFailure> lookAtEach(const Trip &trip, std::vector<View> &views, const Progress &progress) const;
  //! \param sure whether no line farther off can be better. \param failure why, where there is none.
  std::optional<AimedLeg> toAnyLine(const Trip &trip, const std::vector<View> &views, size_t walker, bool &sure,
                                    AimFailure &failure, const Progress &progress);
  AimedLeg finished(const Trip &trip, const Aim &aim, AnnotatedLeg leg, size_t walker);
  void walkAlong(const OnLine &from, AimedLeg &aimed);
  std::optional<AimCatch> catchBeyond(const Trip &trip, double bearing, double metres) const;

  Setting mSetting;
  std::vector<std::unique_ptr<LegAnnotator>> mAnnotators;
  std::unique_ptr<Terrain> mTerrain;
};

} // namespace brushline
