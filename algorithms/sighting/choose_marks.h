// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/bearing.h"
#include "quantities/length.h"
#include "quantities/place.h"
#include "quantities/progress.h"
#include "shared/geodesic.h"
#include "shared/terrain.h"
#include "sighting/cover_source.h"
#include "sighting/mark_spacing.h"

#include <memory>
#include <vector>

namespace brushline {

//! Trees, boulders, stumps that could serve as marks, with a spatial index. Safe to ask from several threads.
class MarkCandidates {
public:
  //! Throws Cancelled.
  explicit MarkCandidates(const std::vector<Place> &places, const Progress &progress = Progress());
  ~MarkCandidates();
  MarkCandidates(MarkCandidates &&) noexcept;
  MarkCandidates &operator=(MarkCandidates &&) noexcept;

  //! A candidate as seen from a leg.
  struct Near {
    size_t candidate; //!< its number in the places given
    Place place;
    double along_m;  //!< from the leg's start
    double offset_m; //!< from the leg's line; right positive
  };

  /**
   * The candidates between a leg's start and end and within an offset of its line, sorted along it; of several at one
   * place the first. The time it takes grows with their number, not with that of all candidates.
   */
  std::vector<Near> alongLeg(const Place &start, TrueBearing departure, Length length, Length offset) const;

private:
  struct Index;
  std::unique_ptr<Index> mIndex;
};

//! A mark of a chain.
struct ChosenMark {
  static constexpr size_t spaced = size_t(-1);
  size_t candidate; //!< or spaced: no candidate serves here, the mark lies on the line
  Place place;
  double along_m;
  double offset_m;       //!< right positive
  GeodesicLeg from_last; //!< from the mark before (the leg's start)
  double sight_m;        //!< the sight distance from there in that direction; infinite where nothing hides marks
};

//! How marks are chosen.
struct ChoiceRule {
  Looking looking;
  SpacingRule spacing;
  Length offset;  //!< the farthest a mark may lie from the leg's line
  Angle sighting; //!< error of one sighting, 1 sigma
};

/**
 * One who has reached a mark stands beside it and not on it: 1 sigma. Common practice, no source.
 */
constexpr Length standingError = Length::metres(0.5);

/**
 * The chain of marks that brings one from a leg's start to its end with each mark visible from the one before and with
 * the least expected miss: the least sum over the hops of (length * sighting error)^2 + standing error^2. Where no
 * candidate serves, marks are set on the line by the spacing rule; as few of them as can be.
 *
 * A hop is no longer than the most spacing and than the rule's share of the sight distance in its direction, and the
 * ground lets the eye see its mark; hops under the least spacing are used at the leg's end only. It is the shortest
 * path in the graph of the candidates that see each other. All hops lead onward, so the graph has no circles and its
 * places are settled in one pass; we do so ourselves, since a graph library asks for all edges beforehand and an edge
 * costs a look through the cover. At most 64 of the hops to a place are looked at.
 *
 * \param terrain, cover may be null: nothing hides marks then.
 * \returns the marks in order, the last one at the leg's end (spaced, offset 0).
 * \throws Cancelled
 */
std::vector<ChosenMark> chooseMarks(const Place &start, const Place &end, const MarkCandidates &candidates,
                                    const ChoiceRule &rule, Terrain *terrain, CoverSource *cover,
                                    const Progress &progress);

} // namespace brushline
