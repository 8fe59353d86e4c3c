// SPDX-License-Identifier: GPL-2.0-or-later
#include "records/blunders.h"

#include <algorithm>
#include <cmath>

namespace brushline {

namespace {

constexpr double share = 0.95; // of the walks without blunders

// A mended leg, or all of them.
struct Mend {
  std::optional<size_t> leg;
  double stretch = 1;
  Angle turn;

  bool serves(size_t i) const { return !leg || *leg == i; }
};

PlanePoint mended(const PlanePoint &step, const Mend &mend) {
  const double c = std::cos(mend.turn.radians()), s = std::sin(mend.turn.radians()); // clockwise
  return {mend.stretch * (step.east * c + step.north * s), mend.stretch * (step.north * c - step.east * s)};
}

double lengthOf(const PlanePoint &step) { return std::hypot(step.east, step.north); }

DriftEllipse ellipseOf(const std::vector<SuspectLeg> &legs, const std::optional<Mend> &mend) {
  RouteDrift drift;
  DriftEllipse ellipse;
  for (size_t i = 0; i < legs.size(); ++i) {
    const bool changed = mend && mend->serves(i);
    const PlanePoint step = changed ? mended(legs[i].step, *mend) : legs[i].step;
    const double stretch = changed ? mend->stretch : 1;
    ellipse = drift.walk(TrueBearing(Angle::radians(std::atan2(step.east, step.north))), Length::metres(lengthOf(step)),
                         legs[i].squared_hops * stretch * stretch, legs[i].errors);
  }
  return ellipse;
}

// A vector along and across the ellipse's major axis, in sigmas.
PlanePoint inSigmas(const DriftEllipse &ellipse, const PlanePoint &vector) {
  const double axis = ellipse.major_axis.angle().radians();
  const double along = vector.east * std::sin(axis) + vector.north * std::cos(axis);
  const double across = vector.east * std::cos(axis) - vector.north * std::sin(axis);
  return {across / ellipse.semi_minor.metres(), along / ellipse.semi_major.metres()};
}

class Trial {
public:
  Trial(const std::vector<SuspectLeg> &legs, const PlanePoint &miss, const Progress &progress)
      : mLegs(legs), mMiss(miss), mProgress(progress), mEllipse(ellipseOf(legs, std::nullopt)) {
    for (const SuspectLeg &leg : legs) {
      mWay.east += leg.step.east;
      mWay.north += leg.step.north;
    }
  }

  double sigmas() const { return lengthOf(inSigmas(mEllipse, mMiss)); }

  //! Keeps the slip when it accounts for the miss; tells whether it does.
  bool keep(Slip slip, const Mend &mend) {
    const PlanePoint &before = mend.leg ? mLegs[*mend.leg].step : mWay;
    const PlanePoint after = mended(before, mend);
    const PlanePoint left{mMiss.east + after.east - before.east, mMiss.north + after.north - before.north};
    if (lengthOf(left) >= lengthOf(mMiss))
      return false;
    mProgress.check();
    const double away = lengthOf(inSigmas(ellipseOf(mLegs, mend), left));
    if (!(away <= sigmasHolding(share)))
      return false;
    mFound.push_back({{slip, mend.leg, mend.stretch, mend.turn, Length::metres(lengthOf(left))}, away});
    return true;
  }

  //! The share of its length that a leg would need to bring the miss nearest to nothing, in sigmas.
  double bestStretch(size_t i) const {
    const PlanePoint unit = inSigmas(mEllipse, mLegs[i].step), miss = inSigmas(mEllipse, mMiss);
    const double squared = unit.east * unit.east + unit.north * unit.north;
    return 1 - (unit.east * miss.east + unit.north * miss.north) / squared;
  }

  std::vector<BlunderHint> hints() {
    std::stable_sort(mFound.begin(), mFound.end(), [](const Found &a, const Found &b) {
      const bool anyA = a.hint.slip == Slip::LengthWrong, anyB = b.hint.slip == Slip::LengthWrong;
      return anyA != anyB ? anyB : a.sigmas < b.sigmas;
    });
    std::vector<BlunderHint> hints;
    for (const Found &found : mFound)
      hints.push_back(found.hint);
    return hints;
  }

private:
  struct Found {
    BlunderHint hint;
    double sigmas;
  };
  const std::vector<SuspectLeg> &mLegs;
  const PlanePoint mMiss;
  const Progress &mProgress;
  const DriftEllipse mEllipse;
  PlanePoint mWay{0, 0}; // from start to end
  std::vector<Found> mFound;
};

} // namespace

Suspicion suspect(const std::vector<SuspectLeg> &legs, const PlanePoint &miss, const std::vector<CommonTurn> &common,
                  const Progress &progress) {
  Trial trial(legs, miss, progress);
  const double most = sigmasHolding(share), away = trial.sigmas();
  Suspicion result;
  // A miss of nothing has no direction; any serves.
  result.allowed = away > 0 ? Length::metres(lengthOf(miss) * most / away) : Length();
  result.within = away <= most;
  if (result.within)
    return result;

  for (size_t i = 0; i < legs.size(); ++i) {
    const SuspectLeg &leg = legs[i];
    trial.keep(Slip::Reversed, {i, 1, Angle::degrees(180)});
    for (const Angle turn : leg.swapped)
      trial.keep(Slip::DigitsSwapped, {i, 1, turn});
    const double hundreds = leg.hundred.metres() / lengthOf(leg.step);
    bool named = hundreds < 1 && trial.keep(Slip::HundredTooMany, {i, 1 - hundreds, Angle()});
    named = trial.keep(Slip::HundredTooFew, {i, 1 + hundreds, Angle()}) || named;
    if (leg.paced) {
      named = trial.keep(Slip::DoubledCount, {i, 0.5, Angle()}) || named;
      named = trial.keep(Slip::HalvedCount, {i, 2, Angle()}) || named;
    }
    if (const double stretch = trial.bestStretch(i); !named && stretch > 0)
      trial.keep(Slip::LengthWrong, {i, stretch, Angle()});
  }
  if (!common.empty()) {
    for (const CommonTurn &turn : common)
      trial.keep(turn.slip, {std::nullopt, 1, turn.clockwise});
    if (std::all_of(legs.begin(), legs.end(), [](const SuspectLeg &leg) { return leg.paced; })) {
      trial.keep(Slip::AllDoubled, {std::nullopt, 0.5, Angle()});
      trial.keep(Slip::AllHalved, {std::nullopt, 2, Angle()});
    }
  }
  result.hints = trial.hints();
  return result;
}

std::vector<CommonTurn> commonTurns(North north, Declination declination, Convergence convergence) {
  const Angle d = declination.east, between = declination.east - convergence.east;
  switch (north) {
  case North::Magnetic:
    return {{Slip::TrueReadings, -d}, {Slip::WrongWayRound, -d - d}};
  case North::True:
    return {{Slip::MagneticReadings, d}, {Slip::WrongWayRound, d + d}};
  case North::Grid:
    return {{Slip::MagneticReadings, between},
            {Slip::WrongWayRound, between + between},
            {Slip::TrueReadings, -convergence.east}};
  }
  return {};
}

} // namespace brushline
