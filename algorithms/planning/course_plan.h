// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "planning/course_legs.h"
#include "planning/course_spots.h"

#include <array>
#include <functional>
#include <set>
#include <utility>
#include <vector>

namespace brushline {

//! What courses are to be like.
struct CourseRule {
  int courses = int(coursesLimits.usual);
  int legs = int(legsLimits.usual);
  LegWindow window{leastLimits.usual, mostLimits.usual};
  Angle least_turn = Angle::degrees(turnLimits.usual); //!< at each control between two legs
  bool closed = true;                                  //!< back to the start
  uint64_t seed = 1;

  static constexpr Limits coursesLimits{1, 200, 4};
  static constexpr Limits legsLimits{1, 50, 6};
  static constexpr Limits leastLimits{2, 10000, 100};
  static constexpr Limits mostLimits{2, 10000, 300};
  static constexpr Limits turnLimits{0, 150, 30};
  static constexpr Limits seedLimits{0, 999999999, 1};

  //! Controls of a course beside its start.
  int controls() const { return closed ? legs - 1 : legs; }
};

//! What courses are balanced in.
enum class Measure { Length, Climb, Time, Cover, Drift };
constexpr size_t measures = 5;

/**
 * A course.
 *
 * Its measures: metres; metres climbed; seconds; how many times longer it takes than if nothing grew there; the mean of
 * the legs' drift across (1 sigma), metres.
 */
struct Course {
  std::vector<size_t> spots; //!< from the start; a closed course ends with it once more
  std::array<double, measures> measure{};
  int crossings = 0; //!< how often it comes over its own ground: legs that cross, or double back within 15 degrees
  int shared = 0;    //!< legs that another course has too, whichever way
  int passes = 0;    //!< controls, its own and others', that its legs pass within twice the drift there
};

//! How alike courses are in a measure.
struct MeasureSpread {
  bool counts = false; //!< whether it is known
  double least = 0, most = 0;
  double spread = 0; //!< how much the greatest is above the least, as a share
};

//! Courses laid over spots.
struct CourseSet {
  std::vector<Course> courses; //!< dealt to the starts in turn; fewer than asked where no more was found
  std::array<MeasureSpread, measures> spreads;
  int shared_legs = 0; //!< ways that more than one course has, each counted once
  double fault = 0;    //!< what is wrong with it, to compare sets by; 0: nothing

  double worstSpread() const;
};

//! Courses are balanced within this share.
constexpr double balanceShare = 0.10;
//! A course that climbs less than so much a leg counts in the balance as if it climbed this: terrain models are not
//! better than half a metre a leg. Common practice, no source.
constexpr double climbFloor = 5;

//! Spreads of some courses. \param legs of each.
std::array<MeasureSpread, measures> spreadsOf(const std::vector<Course> &courses, int legs,
                                              const std::array<bool, measures> &counts);

/**
 * Lays courses over spots.
 *
 * A course is a walk over spots with legs that are open, within the window, and that lead to a spot no farther off than
 * the nearest other spot (by LegEffort::reach_m against room), each spot once, turning by the least turn or more. Such
 * walks are grown at random with backtracking. First some thousand; where they lie densest, in all measures together,
 * is what all courses aim at. Then one for each start in turn is chosen, and chosen anew as long as that helps, with
 * legs that no other course uses: with the least sum of shared legs, crossings, and excess over the balance, and then
 * the fewest controls that legs pass by.
 *
 * All limits count tries, none time: the same input gives the same courses everywhere.
 */
class CoursePlanner {
public:
  using LegBetween = std::function<const CourseLeg &(size_t, size_t)>; //!< from the lower index to the higher

  struct Spots {
    std::vector<GroundPoint> at;
    std::vector<size_t> starts; //!< among them, in the order courses are dealt; nobody's controls
    std::vector<double> room_m; //!< of each, to the nearest other one that is no start beside it
  };

  //! \param counts measures that are known.
  CoursePlanner(const CourseRule &rule, Spots spots, LegBetween between, const std::array<bool, measures> &counts);

  //! \param told of the share done, 0 to 1. \throws Cancelled
  CourseSet plan(const Progress &progress, const std::function<void(double)> &told);

  //! Spots within the window of a spot, in random order, most at mostNeighbours but for starts.
  const std::vector<size_t> &neighbours(size_t spot) const { return mNeighbours[spot]; }

private:
  static constexpr size_t mostNeighbours = 48;

  const CourseLeg &leg(size_t a, size_t b) const { return a < b ? mBetween(a, b) : mBetween(b, a); }
  bool open(size_t from, size_t to) const;
  bool turnsEnough(size_t a, size_t b, size_t c) const;
  bool doublesBack(size_t a, size_t b, size_t c) const;
  int crossingsWith(const std::vector<size_t> &path, size_t next) const;
  Course measured(std::vector<size_t> path) const;
  //! How far a measure lies beyond the window round what is aimed at, as a share.
  double excessIn(size_t measure, const Course &course) const;
  bool isBalanced(const Course &course) const;
  double excess(const Course &course) const;

  struct Walk; // being grown
  bool grow(Walk &walk);
  std::optional<Course> tryWalk(size_t start, bool freshLegs, bool mayCross);
  std::vector<Course> pool(size_t start, size_t count, const Progress &progress);
  void aim(const std::vector<std::vector<Course>> &pools, const Progress &progress);

  // Legs in use, by how many courses.
  uint16_t &uses(size_t a, size_t b) { return mUses[std::min(a, b) * mSpots.at.size() + std::max(a, b)]; }
  void use(const Course &course, int by);
  int sharedBy(const Course &course);
  //! Spots that a leg passes within twice the drift across there (2 sigma: 95 of 100 walks); no starts.
  const std::vector<size_t> &passedBy(size_t from, size_t to);
  //! Controls of this course and of others that its legs pass, and of its own that others' legs pass.
  int passesOf(const Course &course, bool others);
  double faultOf(const Course &course);
  double costOf(const Course &course);
  bool isTaken(const Course &course) const;

  CourseRule mRule;
  Spots mSpots;
  LegBetween mBetween;
  std::array<bool, measures> mCounts;
  double mTurnCosine;
  std::vector<std::vector<size_t>> mNeighbours;
  std::vector<bool> mIsStart;
  std::vector<uint16_t> mUses;
  std::vector<uint16_t> mSpotUses, mSpotPassed; // by courses, by legs of courses
  std::vector<int32_t> mPassedNumber;           // by pair of spots; -1: not worked out
  std::vector<std::vector<size_t>> mPassed;
  std::set<std::vector<std::pair<size_t, size_t>>> mTaken; // legs of the courses chosen
  std::array<double, measures> mTarget{};
  CourseRandom mRandom;
};

} // namespace brushline
