// SPDX-License-Identifier: GPL-2.0-or-later
#include "sighting/choose_marks.h"

#include "shared/space.h"
#include "shared/spatial_index.h"

#include <boost/geometry/algorithms/assign.hpp>
#include <boost/geometry/algorithms/expand.hpp>

#include <algorithm>
#include <cmath>
#include <limits>
#include <set>
#include <utility>

namespace brushline {

namespace {
namespace bg = boost::geometry;
using CandidateIndex = SpatialIndex<SpacePoint, size_t>;

SpaceBox around(const Place &a, const Place &b, double reach) {
  SpaceBox box;
  bg::assign_inverse(box);
  bg::expand(box, inSpace(a));
  bg::expand(box, inSpace(b));
  return grown(box, reach);
}
} // namespace

struct MarkCandidates::Index {
  std::vector<Place> places;
  CandidateIndex points;
};

MarkCandidates::MarkCandidates(const std::vector<Place> &places, const Progress &progress)
    : mIndex(std::make_unique<Index>()) {
  mIndex->places = places;
  std::vector<CandidateIndex::Entry> entries;
  entries.reserve(places.size());
  for (size_t i = 0; i < places.size(); ++i) {
    if (i % 65536 == 0)
      progress.check();
    entries.emplace_back(inSpace(places[i]), i);
  }
  mIndex->points = CandidateIndex(std::move(entries), progress);
}
MarkCandidates::~MarkCandidates() = default;
MarkCandidates::MarkCandidates(MarkCandidates &&) noexcept = default;
MarkCandidates &MarkCandidates::operator=(MarkCandidates &&) noexcept = default;

std::vector<MarkCandidates::Near> MarkCandidates::alongLeg(const Place &start, TrueBearing departure, Length length,
                                                           Length offset) const {
  // Box by box, so that a long slanting leg does not gather all that lies in its one big box. A box of pieces up to
  // 1 km is wide enough for the bulge of the Earth (2 cm) by the metre added.
  const double piece = std::clamp(4 * offset.metres(), 50.0, 1000.0);
  const auto pieces = size_t(std::max(1.0, std::ceil(length.metres() / piece)));
  std::set<size_t> found;
  std::vector<CandidateIndex::Entry> entries;
  Place from = start;
  for (size_t i = 1; i <= pieces; ++i) {
    const Place to =
        geodesicDestination(start, departure, Length::metres(length.metres() * double(i) / double(pieces)));
    mIndex->points.meeting(around(from, to, offset.metres() + 1), entries);
    for (const auto &entry : entries)
      found.insert(entry.second);
    from = to;
  }
  std::vector<Near> result;
  for (const size_t candidate : found) {
    const Place &place = mIndex->places[candidate];
    const GeodesicLeg way = geodesicBetween(start, place);
    const Angle turn = way.departure.angle() - departure.angle();
    const double along = way.length.metres() * std::cos(turn.radians());
    const double across = way.length.metres() * std::sin(turn.radians());
    if (along > 0 && along < length.metres() && std::abs(across) <= offset.metres())
      result.push_back({candidate, place, along, across});
  }
  std::stable_sort(result.begin(), result.end(), [](const Near &a, const Near &b) { return a.along_m < b.along_m; });
  result.erase(std::unique(result.begin(), result.end(),
                           [](const Near &a, const Near &b) {
                             return std::hypot(a.along_m - b.along_m, a.offset_m - b.offset_m) < 0.01;
                           }),
               result.end());
  return result;
}

namespace {

class Viewer {
public:
  Viewer(const ChoiceRule &rule, Terrain *terrain, CoverSource *cover)
      : mRule(rule), mTerrain(terrain), mCover(cover) {}

  SightLine line(const Place &from, TrueBearing bearing, Length length) const {
    std::optional<Profile> profile;
    if (mTerrain)
      profile = mTerrain->profile(from, bearing, length);
    return SightLine(coverAlong(from, bearing, length), std::move(profile));
  }

  bool sees(const Place &from, const Place &to) const {
    const GeodesicLeg leg = geodesicBetween(from, to);
    const double farthest = leg.length.metres() / mRule.spacing.sight_share; // that a sight distance needs to be
    const double sight =
        SightLine(coverAlong(from, leg.departure, Length::metres(farthest))).sightFrom(0, mRule.looking);
    return sight >= farthest * (1 - 1e-9) &&
           (!mTerrain || groundLetsSee(mTerrain->profile(from, to, leg.length), mRule.looking.eye_height,
                                       mRule.looking.mark_height));
  }

  // As far as the most spacing can need.
  double sightFrom(const Place &from, TrueBearing bearing) const {
    const Length reach = Length::metres(mRule.spacing.most.metres() / mRule.spacing.sight_share);
    return line(from, bearing, reach).sightFrom(0, mRule.looking);
  }

private:
  std::vector<SightStretch> coverAlong(const Place &from, TrueBearing bearing, Length length) const {
    std::vector<SightStretch> stretches;
    if (mCover)
      for (const CoverPiece &piece : mCover->along(from, bearing, length))
        stretches.push_back({piece.to_m, piece.extinction.value_or(0)});
    return stretches;
  }

  const ChoiceRule &mRule;
  Terrain *mTerrain;
  CoverSource *mCover;
};

} // namespace

std::vector<ChosenMark> chooseMarks(const Place &start, const Place &end, const MarkCandidates &candidates,
                                    const ChoiceRule &rule, Terrain *terrain, CoverSource *cover,
                                    const Progress &progress) {
  const GeodesicLeg leg = geodesicBetween(start, end);
  if (!(leg.length > Length()))
    return {};
  const Viewer viewer(rule, terrain, cover);
  const double most = rule.spacing.most.metres(), least = rule.spacing.least.metres();

  // 1. The places: the start, candidates, marks set on the line in case, the end.
  std::vector<ChosenMark> nodes;
  nodes.push_back({ChosenMark::spaced, start, 0, 0, {}, 0});
  for (const auto &near : candidates.alongLeg(start, leg.departure, leg.length, rule.offset))
    nodes.push_back({near.candidate, near.place, near.along_m, near.offset_m, {}, 0});
  const Length beyond = leg.length + Length::metres(most / rule.spacing.sight_share);
  for (const SpacedMark &mark :
       spaceMarks(viewer.line(start, leg.departure, beyond), leg.length, rule.looking, rule.spacing).marks) {
    const bool last = mark.at_m >= leg.length.metres();
    nodes.push_back({ChosenMark::spaced,
                     last ? end : geodesicDestination(start, leg.departure, Length::metres(mark.at_m)),
                     mark.at_m,
                     0,
                     {},
                     0});
  }
  std::stable_sort(nodes.begin(), nodes.end(),
                   [](const ChosenMark &a, const ChosenMark &b) { return a.along_m < b.along_m; });

  // 2. The best way to each place, in their order: all hops lead onward. Whether a hop can be made costs a look through
  // cover and over ground, a thousand times its length; so the hops to a place are looked at from the best one on, and
  // no further than the first that can be made.
  const double sighting = rule.sighting.radians(), standing = standingError.metres();
  const auto miss = [&](double hop) { return sighting * sighting * hop * hop + standing * standing; };
  // Dearer than any chain of candidates: a mark on the line, or one that cannot be seen, is the last resort.
  const double dear = (miss(leg.length.metres()) + 1) * double(nodes.size() + 1);
  constexpr size_t mostLooks = 64; // at one place; in a thicket full of candidates all of them would be in vain
  struct Hop {
    double total;
    size_t from;
  };
  std::vector<double> total(nodes.size(), 0);
  std::vector<size_t> before(nodes.size(), 0);
  std::vector<Hop> hops;
  size_t first = 0; // of those near enough behind
  for (size_t j = 1; j < nodes.size(); ++j) {
    progress.check();
    const bool end = j + 1 == nodes.size();
    const bool isSpaced = nodes[j].candidate == ChosenMark::spaced;
    const double price = isSpaced && !end ? dear : 0;
    hops.clear();
    while (nodes[j].along_m - nodes[first].along_m > most * (1 + 1e-9))
      ++first;
    size_t lastSpaced = 0; // the last mark on the line behind; from it on the spacing rule leads here
    for (size_t i = first; i < j; ++i) {
      const double straight = std::hypot(nodes[j].along_m - nodes[i].along_m, nodes[j].offset_m - nodes[i].offset_m);
      if (std::isfinite(total[i]) && straight <= most * (1 + 1e-9) && (straight >= least || end))
        hops.push_back({total[i] + miss(straight) + price, i});
    }
    for (size_t i = j; i-- > 0;)
      if (nodes[i].candidate == ChosenMark::spaced && nodes[i].along_m < nodes[j].along_m) {
        lastSpaced = i;
        break;
      }
    std::sort(hops.begin(), hops.end(),
              [](const Hop &a, const Hop &b) { return a.total != b.total ? a.total < b.total : a.from > b.from; });
    total[j] = std::numeric_limits<double>::infinity();
    for (size_t k = 0; k < std::min(hops.size(), mostLooks); ++k)
      if (viewer.sees(nodes[hops[k].from].place, nodes[j].place)) {
        total[j] = hops[k].total;
        before[j] = hops[k].from;
        break;
      }
    if (isSpaced)
      // From the mark on the line before, and from those between that the spacing allows, the next one can be walked
      // to, if need be unseen.
      for (size_t i = lastSpaced; i < j; ++i) {
        const double straight = std::hypot(nodes[j].along_m - nodes[i].along_m, nodes[i].offset_m);
        const double unseen = total[i] + miss(straight) + dear;
        const bool spacedOut = i == lastSpaced || (straight <= most * (1 + 1e-9) && (straight >= least || end));
        if (spacedOut && nodes[i].along_m < nodes[j].along_m && unseen < total[j]) {
          total[j] = unseen;
          before[j] = i;
        }
      }
  }

  // 3. The chain with the least miss.
  std::vector<ChosenMark> chain;
  for (size_t i = nodes.size() - 1; i != 0; i = before[i])
    chain.push_back(nodes[i]);
  std::reverse(chain.begin(), chain.end());
  Place from = start;
  for (ChosenMark &mark : chain) {
    mark.from_last = geodesicBetween(from, mark.place);
    mark.sight_m = viewer.sightFrom(from, mark.from_last.departure);
    from = mark.place;
  }
  return chain;
}

} // namespace brushline
