// SPDX-License-Identifier: GPL-2.0-or-later
// Routes that close, spoiled by one slip each: the hint has to find it. The slips and the routes are made here.
#include "records/blunders.h"

#include "support/near.h"
#include "support/random.h"

#include <algorithm>
#include <cmath>

using namespace brushline;
using namespace brushline::test;

namespace {

constexpr double steps100 = 130;

PlanePoint step(double bearing, double metres) {
  const double turn = Angle::degrees(bearing).radians();
  return {metres * std::sin(turn), metres * std::cos(turn)};
}

// A route as it was read, with errors of 1 degree and 2 percent.
struct Route {
  std::vector<std::pair<double, double>> legs; // bearing, metres

  std::vector<SuspectLeg> suspects() const {
    std::vector<SuspectLeg> result;
    for (const auto &[bearing, metres] : legs)
      result.push_back({step(bearing, metres),
                        LegErrors{Angle::degrees(1), Angle::degrees(0.5), Angle::degrees(0.4), 0.02},
                        metres * metres,
                        Length::metres(100 * 100 / steps100),
                        true,
                        {}});
    return result;
  }

  PlanePoint end() const {
    PlanePoint at{0, 0};
    for (const auto &[bearing, metres] : legs) {
      at.east += step(bearing, metres).east;
      at.north += step(bearing, metres).north;
    }
    return at;
  }
};

// A quadrangle without parallel sides that closes, by its last leg.
Route loop() {
  Route route{{{42, 310}, {128, 260}, {215, 190}}};
  const PlanePoint end = route.end();
  route.legs.emplace_back(Angle::radians(std::atan2(-end.east, -end.north)).fullCircle().degrees(),
                          std::hypot(end.east, end.north));
  return route;
}

PlanePoint missOf(const Route &read, const Route &meant) {
  return {read.end().east - meant.end().east, read.end().north - meant.end().north};
}

bool names(const Suspicion &suspicion, Slip slip, size_t leg) {
  return !suspicion.hints.empty() && suspicion.hints.front().slip == slip && suspicion.hints.front().leg == leg;
}

} // namespace

class BlundersTest : public QObject {
  Q_OBJECT
private slots:
  void nothingWrong() {
    const Route route = loop();
    const Suspicion none = suspect(route.suspects(), {0, 0}, {}, Progress());
    QVERIFY(none.within);
    QVERIFY(none.hints.empty());
    const Suspicion little = suspect(route.suspects(), {4, -3}, {}, Progress());
    QVERIFY(little.within && little.hints.empty());
    QVERIFY(little.allowed > Length::metres(5));
  }

  // The bound is the ellipse of the errors. Two legs square to each other, one sighting each: by hand.
  void allowed() {
    const Route route{{{0, 200}, {90, 100}}};
    const double bearing = std::hypot(1.0, 0.5) * Angle::pi / 180, pacing = 0.02, common = 0.4 * Angle::pi / 180;
    const double east = std::hypot(200 * bearing, 100 * pacing), north = std::hypot(100 * bearing, 200 * pacing);
    // The declination turns the way from start to end, (100, 200), by its error: (200, -100) m a radian.
    const double ee = east * east + std::pow(200 * common, 2), nn = north * north + std::pow(100 * common, 2),
                 en = -200 * 100 * common * common;
    // A miss to the east: k^2 = m^2 nn / (ee nn - en^2).
    const double expected = 2.44775 * std::sqrt((ee * nn - en * en) / nn);
    for (const double miss : {0.1, 5.0, expected - 0.001}) {
      const Suspicion found = suspect(route.suspects(), {miss, 0}, {}, Progress());
      VERIFY_NEAR(found.allowed.metres(), expected, 1e-4, "allowed");
      QVERIFY(found.within);
    }
    QVERIFY(!suspect(route.suspects(), {expected + 0.001, 0}, {}, Progress()).within);
  }

  void everySlipIsFound() {
    const Route meant = loop();
    const double hundred = 10000 / steps100;
    for (size_t i = 0; i < meant.legs.size(); ++i) {
      const double metres = meant.legs[i].second;
      const std::tuple<Slip, double, double> slips[] = {// read: bearing, metres
                                                        {Slip::Reversed, 180, metres},
                                                        {Slip::HundredTooMany, 0, metres + hundred},
                                                        {Slip::HundredTooFew, 0, metres - hundred},
                                                        {Slip::DoubledCount, 0, 2 * metres},
                                                        {Slip::HalvedCount, 0, metres / 2},
                                                        {Slip::LengthWrong, 0, metres + 35}};
      for (const auto &[slip, turn, length] : slips) {
        Route read = meant;
        read.legs[i].first += turn;
        read.legs[i].second = length;
        const Suspicion found = suspect(read.suspects(), missOf(read, meant), {}, Progress());
        const std::string at = std::to_string(i) + " " + std::to_string(int(slip));
        VERIFY_AT(!found.within, at);
        VERIFY_AT(names(found, slip, i), at);
        const BlunderHint &hint = found.hints.front();
        VERIFY_NEAR(hint.stretch * length, metres, slip == Slip::LengthWrong ? 1e-6 : 1e-9, at);
        VERIFY_NEAR(hint.left.metres(), 0, 1e-6, at);
      }
    }
  }

  void swappedDigits() {
    const Route meant = loop();
    Route read = meant;
    read.legs[0].first = 24; // for 042
    std::vector<SuspectLeg> suspects = read.suspects();
    suspects[0].swapped = {Angle::degrees(18), Angle::degrees(240 - 24)};
    const Suspicion found = suspect(suspects, missOf(read, meant), {}, Progress());
    QVERIFY(names(found, Slip::DigitsSwapped, 0));
    QCOMPARE(found.hints.front().turn.degrees(), 18.0);
    // Without its digits nobody can tell.
    const Suspicion lost = suspect(read.suspects(), missOf(read, meant), {}, Progress());
    QVERIFY(!lost.within);
    for (const BlunderHint &hint : lost.hints)
      QVERIFY(hint.slip != Slip::DigitsSwapped);
  }

  // A rotation of everything does not show in a route that ends at its start, and does in one that ends elsewhere.
  void commonSlips() {
    const Route loopMeant = loop();
    Route turned = loopMeant;
    for (auto &leg : turned.legs)
      leg.first += 17;
    QVERIFY(suspect(turned.suspects(), missOf(turned, loopMeant), {}, Progress()).within);

    const Route meant{{{42, 310}, {128, 260}, {95, 190}, {20, 120}}};
    const std::vector<CommonTurn> turns = commonTurns(North::Magnetic, {Angle::degrees(-17)}, {Angle::degrees(1.4)});
    for (const CommonTurn &turn : turns) {
      Route read = meant;
      for (auto &leg : read.legs)
        leg.first -= turn.clockwise.degrees();
      const Suspicion found = suspect(read.suspects(), missOf(read, meant), turns, Progress());
      QVERIFY(!found.within && !found.hints.empty());
      QVERIFY(found.hints.front().slip == turn.slip && !found.hints.front().leg);
      VERIFY_NEAR(found.hints.front().left.metres(), 0, 1e-6, "left");
    }
    for (const double factor : {2.0, 0.5}) {
      Route read = meant;
      for (auto &leg : read.legs)
        leg.second *= factor;
      const Suspicion found = suspect(read.suspects(), missOf(read, meant), turns, Progress());
      QVERIFY(!found.hints.empty());
      QVERIFY(found.hints.front().slip == (factor > 1 ? Slip::AllDoubled : Slip::AllHalved));
      // A tape knows no double paces.
      std::vector<SuspectLeg> taped = read.suspects();
      for (SuspectLeg &leg : taped)
        leg.paced = false;
      for (const BlunderHint &hint : suspect(taped, missOf(read, meant), turns, Progress()).hints)
        QVERIFY(hint.slip == Slip::LengthWrong || hint.leg);
    }
  }

  void turnsOfEachNorth() {
    const Declination d{Angle::degrees(-17)};
    const Convergence c{Angle::degrees(1.5)};
    const auto turn = [&](North north, Slip slip) {
      for (const CommonTurn &each : commonTurns(north, d, c))
        if (each.slip == slip)
          return each.clockwise.degrees();
      return 999.0;
    };
    // A reading that was from true north all along has had the declination added for nothing, and so on.
    QCOMPARE(turn(North::Magnetic, Slip::TrueReadings), 17.0);
    QCOMPARE(turn(North::Magnetic, Slip::WrongWayRound), 34.0);
    QCOMPARE(turn(North::True, Slip::MagneticReadings), -17.0);
    QCOMPARE(turn(North::True, Slip::WrongWayRound), -34.0);
    QCOMPARE(turn(North::Grid, Slip::MagneticReadings), -18.5);
    QCOMPARE(turn(North::Grid, Slip::WrongWayRound), -37.0);
    QCOMPARE(turn(North::Grid, Slip::TrueReadings), -1.5);
  }

  // Two legs side by side: either may be the long one, and both are named.
  void severalCandidates() {
    const Route meant{{{0, 200}, {90, 150}, {180, 200}, {270, 150}}};
    Route read = meant;
    read.legs[0].second += 10000 / steps100;
    const Suspicion found = suspect(read.suspects(), missOf(read, meant), {}, Progress());
    QVERIFY(found.hints.size() >= 2);
    bool first = false, third = false;
    for (const BlunderHint &hint : found.hints) {
      first = first || (hint.slip == Slip::HundredTooMany && hint.leg == size_t(0));
      third = third || (hint.slip == Slip::HundredTooFew && hint.leg == size_t(2));
    }
    QVERIFY(first && third);
  }

  void twoSlipsAreNotOne() {
    const Route meant = loop();
    Route read = meant;
    read.legs[0].second += 140;
    read.legs[1].second += 120;
    const Suspicion found = suspect(read.suspects(), missOf(read, meant), {}, Progress());
    QVERIFY(!found.within);
    QVERIFY(found.hints.empty());
  }

  // By chance alone: walks with errors of the size that was told are within in 95 of 100 cases, and with a slip on top
  // the right leg is among those named nearly always.
  void chance() {
    Random random(77);
    const auto normal = [&] { // Box and Muller
      return std::sqrt(-2 * std::log(1 - random.between(0, 1))) * std::cos(random.between(0, 2 * Angle::pi));
    };
    const Route meant = loop();
    int within = 0, named = 0, spoiled = 0;
    constexpr int runs = 4000;
    for (int run = 0; run < runs; ++run) {
      Route read = meant;
      for (auto &[bearing, metres] : read.legs) {
        bearing += std::hypot(1.0, 0.5) * normal();
        metres *= 1 + 0.02 * normal();
      }
      within += suspect(read.suspects(), missOf(read, meant), {}, Progress()).within;
      const size_t leg = size_t(run) % 4;
      read.legs[leg].first += 180;
      const Suspicion found = suspect(read.suspects(), missOf(read, meant), {}, Progress());
      spoiled += !found.within;
      named += std::any_of(found.hints.begin(), found.hints.end(),
                           [&](const BlunderHint &hint) { return hint.slip == Slip::Reversed && hint.leg == leg; });
    }
    // 95 %, four standard deviations of the count: 4 sqrt(0.95 * 0.05 / 4000) = 1.4 %.
    VERIFY_NEAR(double(within) / runs, 0.95, 0.014, "within");
    QCOMPARE(spoiled, runs);
    VERIFY_NEAR(double(named) / runs, 0.95, 0.014, "named");
  }
};

QTEST_GUILESS_MAIN(BlundersTest)
#include "blunders_test.moc"
