// SPDX-License-Identifier: GPL-2.0-or-later
#include "sighting/drift.h"

#include "support/check_values.h"
#include "support/near.h"
#include "support/random.h"

#include <algorithm>
#include <set>
#include <vector>

using namespace brushline;
using namespace brushline::test;

class DriftTest : public QObject {
  Q_OBJECT
private slots:
  void roundingErrorByHand();
  void roundingErrorOfRandomNumbers();
  void sigmas();
  void workedNumbers();
  void shorterHopsHelpChanceAlone();
  void oneLeg_data();
  void oneLeg();
  void commonDeclination();
  void turnAndBack();
  void restart();
  void splittingALeg();
  void axis();
  void ellipseAndLegAgree();
  void walkers();
};

namespace {

TrueBearing bearing(double degrees) { return TrueBearing(Angle::degrees(degrees)); }
Length metres(double value) { return Length::metres(value); }

LegErrors errorsOf(double sightingDegrees, double settingDegrees, double declinationDegrees, double pacing) {
  return {Angle::degrees(sightingDegrees), Angle::degrees(settingDegrees), Angle::degrees(declinationDegrees), pacing};
}

// A leg of equal hops.
DriftEllipse walkHops(RouteDrift &drift, double bearingDegrees, double length, double hops, const LegErrors &errors) {
  return drift.walk(bearing(bearingDegrees), metres(length), length * length / hops, errors);
}

// A standard normal number, by the polar method (Marsaglia and Bray 1964, from memory).
class Normal {
public:
  explicit Normal(uint64_t seed) : mRandom(seed) {}
  double operator()() {
    if (mHasNext) {
      mHasNext = false;
      return mNext;
    }
    double u, v, square;
    do {
      u = mRandom.between(-1, 1);
      v = mRandom.between(-1, 1);
      square = u * u + v * v;
    } while (square >= 1 || square == 0);
    const double factor = std::sqrt(-2 * std::log(square) / square);
    mNext = v * factor;
    mHasNext = true;
    return u * factor;
  }

private:
  Random mRandom;
  double mNext = 0;
  bool mHasNext = false;
};

constexpr double degree = Angle::pi / 180;
} // namespace

// Computed: sqrt(12) = 3.4641016.
void DriftTest::roundingErrorByHand() {
  VERIFY_NEAR(roundingError(Angle::degrees(2)).degrees(), 0.57735027, 1e-8, "2 degrees");
  VERIFY_NEAR(roundingError(Angle::degrees(360 / 6400.0)).degrees(), 0.016237976, 1e-9, "1 mil");
  VERIFY_NEAR(roundingError(Angle()).degrees(), 0, 0, "no graduation");
}

// The error made by rounding, by doing it.
void DriftTest::roundingErrorOfRandomNumbers() {
  Random random(110);
  const double step = 5;
  double squares = 0;
  constexpr int numbers = 100000;
  for (int i = 0; i < numbers; ++i) {
    const double number = random.between(0, 360);
    const double error = std::round(number / step) * step - number;
    squares += error * error;
  }
  const double expected = roundingError(Angle::degrees(step)).degrees();
  VERIFY_NEAR(std::sqrt(squares / numbers), expected, 0.01 * expected, "5 degrees");
}

// Square roots of the chi-square distribution's quantiles with two degrees of freedom, from any table of it: 1.386,
// 4.605, 5.991, 7.378, 9.210 at 50, 90, 95, 97.5 and 99 percent (three decimals).
void DriftTest::sigmas() {
  VERIFY_NEAR(sigmasHolding(0.95), 2.4477, 0.00005, "the interface");
  const std::pair<double, double> table[] = {{0.5, 1.386}, {0.9, 4.605}, {0.95, 5.991}, {0.975, 7.378}, {0.99, 9.210}};
  for (const auto &[share, chiSquare] : table)
    VERIFY_CHECK(checkOf(
        "square of sigmasHolding", std::to_string(share), sigmasHolding(share) * sigmasHolding(share), chiSquare,
        0.0006, "1", "quantiles of the chi-square distribution with two degrees of freedom, any table; from memory"));
  // One sigma holds 1 - exp(-1/2), computed.
  VERIFY_NEAR(sigmasHolding(0.39346934028736658), 1, 1e-12, "one sigma");
  QVERIFY(sigmasHolding(0) == 0);
}

void DriftTest::workedNumbers() {
  const CheckValues values("sighting/data/drift.csv");
  const double tolerance = values.tolerance("expected_m");
  std::set<std::string> quantities;
  for (const CheckRow &row : values.rows()) {
    const std::string quantity = row.text("quantity");
    const double length = row.number("leg_m"), hops = row.number("hops");
    const double common = row.number("common_bearing_deg");
    quantities.insert(quantity);

    // The common error of the bearing may come from the dial or from the declination.
    for (const LegErrors &errors : {errorsOf(row.number("random_bearing_deg"), common, 0, row.number("common_pace")),
                                    errorsOf(row.number("random_bearing_deg"), 0, common, row.number("common_pace"))}) {
      RouteDrift drift;
      const DriftEllipse ellipse = walkHops(drift, 33, length, hops, errors);
      if (quantity == "cross_common") {
        // An offset, L sin d; a standard deviation is L d. They part by less than L d^3 / 6.
        const double d = common * degree;
        VERIFY_CHECK(values.check(row, "expected_m", ellipse.across.metres(), tolerance + length * d * d * d / 6));
        VERIFY_CHECK(values.check(row, "expected_m", length * std::sin(ellipse.across.metres() / length)));
      } else if (quantity.rfind("cross_", 0) == 0) {
        VERIFY_CHECK(values.check(row, "expected_m", ellipse.across.metres()));
      } else if (quantity == "along_common") {
        VERIFY_CHECK(values.check(row, "expected_m", ellipse.along.metres()));
      }
      // A count that errs anew on each hop: as many legs.
      if (quantity == "along_random" || quantity == "along_total") {
        RouteDrift hopByHop;
        DriftEllipse atEnd;
        for (int i = 0; i < int(hops); ++i)
          atEnd = walkHops(hopByHop, 33, length / hops, 1, errorsOf(0, 0, 0, row.number("random_pace")));
        VERIFY_CHECK(values.check(row, "expected_m", std::hypot(atEnd.along.metres(), ellipse.along.metres())));
      }
    }
  }
  QVERIFY((quantities == std::set<std::string>{"cross_random", "cross_common", "cross_total", "along_common",
                                               "along_random", "along_total"}));
}

// Computed by hand: n hops divide the part that errs by chance by sqrt n, and leave the rest as it is.
void DriftTest::shorterHopsHelpChanceAlone() {
  const auto at = [](double hops, const LegErrors &errors) {
    RouteDrift drift;
    return walkHops(drift, 200, 1000, hops, errors);
  };
  const double one = at(1, errorsOf(3, 0, 0, 0)).across.metres();
  for (double hops : {2.0, 5.0, 20.0, 400.0}) {
    const std::string where = std::to_string(hops);
    VERIFY_NEAR(at(hops, errorsOf(3, 0, 0, 0)).across.metres(), one / std::sqrt(hops), 1e-9, where);
    VERIFY_NEAR(at(hops, errorsOf(0, 1, 0, 0)).across.metres(), 1000 * degree, 1e-9, where);
    VERIFY_NEAR(at(hops, errorsOf(0, 0, 1, 0)).across.metres(), 1000 * degree, 1e-9, where);
    VERIFY_NEAR(at(hops, errorsOf(0, 0, 0, 0.05)).along.metres(), 50, 1e-9, where);
    VERIFY_NEAR(at(hops, errorsOf(3, 0, 0, 0)).along.metres(), 0, 1e-6, where);
    VERIFY_NEAR(at(hops, errorsOf(0, 0, 0, 0.05)).across.metres(), 0, 1e-6, where);
  }
  // Unequal hops: 100 + 200 + 700 have a sum of squares of 540 000. By hand.
  RouteDrift drift;
  VERIFY_NEAR(drift.walk(bearing(10), metres(1000), 540000, errorsOf(3, 0, 0, 0)).across.metres(),
              3 * degree * std::sqrt(540000), 1e-9, "unequal");
}

void DriftTest::oneLeg_data() {
  QTest::addColumn<double>("degrees");
  for (double degrees : {0.0, 30.0, 45.0, 90.0, 135.0, 179.9, 180.0, 225.0, 270.0, 300.0, 359.9})
    QTest::addRow("%g", degrees) << degrees;
}

// One leg's ellipse lies along the leg or square to it. Computed by hand: 1000 m, 20 m across, 50 m along.
void DriftTest::oneLeg() {
  QFETCH(double, degrees);
  RouteDrift drift;
  const double setting = 0.02 / degree;
  const DriftEllipse longEllipse = walkHops(drift, degrees, 1000, 1, errorsOf(0, setting, 0, 0.05));
  VERIFY_NEAR(longEllipse.across.metres(), 20, 1e-9, "across");
  VERIFY_NEAR(longEllipse.along.metres(), 50, 1e-9, "along");
  VERIFY_NEAR(longEllipse.semi_major.metres(), 50, 1e-9, "major");
  VERIFY_NEAR(longEllipse.semi_minor.metres(), 20, 1e-9, "minor");
  VERIFY_NEAR(std::remainder(longEllipse.major_axis.degrees() - degrees, 180), 0, 1e-9, "along the leg");
  RouteDrift other;
  const DriftEllipse wideEllipse = walkHops(other, degrees, 1000, 1, errorsOf(0, setting, 0, 0.01));
  VERIFY_NEAR(wideEllipse.semi_major.metres(), 20, 1e-9, "major");
  VERIFY_NEAR(wideEllipse.semi_minor.metres(), 10, 1e-9, "minor");
  VERIFY_NEAR(std::remainder(wideEllipse.major_axis.degrees() - degrees - 90, 180), 0, 1e-9, "square to the leg");
  for (const DriftEllipse &ellipse : {longEllipse, wideEllipse})
    QVERIFY(ellipse.major_axis.degrees() >= 0 && ellipse.major_axis.degrees() < 180);
}

// One error of the declination for all legs turns the route as a whole; one of the dial's setting adds up by squares.
// By hand, 1 degree: two legs of 1000 m in line, and two at a right angle, whose end is turned about the start.
void DriftTest::commonDeclination() {
  RouteDrift line;
  walkHops(line, 70, 1000, 1, errorsOf(0, 0, 1, 0));
  const DriftEllipse straight = walkHops(line, 70, 1000, 1, errorsOf(0, 0, 1, 0));
  VERIFY_NEAR(straight.across.metres(), 2000 * degree, 1e-9, "in line: twice");
  VERIFY_NEAR(straight.along.metres(), 0, 1e-6, "in line");
  RouteDrift setting;
  walkHops(setting, 70, 1000, 1, errorsOf(0, 1, 0, 0));
  VERIFY_NEAR(walkHops(setting, 70, 1000, 1, errorsOf(0, 1, 0, 0)).across.metres(), std::sqrt(2) * 1000 * degree, 1e-9,
              "the dial: sqrt 2 times");
  RouteDrift corner;
  walkHops(corner, 0, 1000, 1, errorsOf(0, 0, 1, 0));
  const DriftEllipse turned = walkHops(corner, 90, 1000, 1, errorsOf(0, 0, 1, 0));
  VERIFY_NEAR(turned.semi_major.metres(), std::sqrt(2) * 1000 * degree, 1e-9, "the end is sqrt 2 km away");
  VERIFY_NEAR(turned.semi_minor.metres(), 0, 1e-6, "and moves on a line");
  VERIFY_NEAR(turned.major_axis.degrees(), 135, 1e-9, "square to the way there");
  VERIFY_NEAR(turned.across.metres(), 1000 * degree, 1e-9, "across the second leg");
  VERIFY_NEAR(turned.along.metres(), 1000 * degree, 1e-9, "along the second leg");
}

// Out and straight back, a turn of the whole comes to nothing.
void DriftTest::turnAndBack() {
  RouteDrift drift;
  walkHops(drift, 20, 800, 1, errorsOf(0, 0, 2, 0));
  walkHops(drift, 110, 300, 1, errorsOf(0, 0, 2, 0));
  walkHops(drift, 290, 300, 1, errorsOf(0, 0, 2, 0));
  const DriftEllipse home = walkHops(drift, 200, 800, 1, errorsOf(0, 0, 2, 0));
  VERIFY_NEAR(home.semi_major.metres(), 0, 1e-6, "home");
  // The dial errs anew on every leg.
  RouteDrift dial;
  walkHops(dial, 20, 800, 1, errorsOf(0, 2, 0, 0));
  VERIFY_NEAR(walkHops(dial, 200, 800, 1, errorsOf(0, 2, 0, 0)).across.metres(), std::sqrt(2) * 800 * 2 * degree, 1e-9,
              "the dial");
}

void DriftTest::restart() {
  const LegErrors errors = errorsOf(3, 0.6, 0.4, 0.05);
  RouteDrift fresh;
  const DriftEllipse first = walkHops(fresh, 77, 600, 9, errors);
  RouteDrift drift;
  walkHops(drift, 10, 5000, 3, errors);
  const DriftEllipse second = walkHops(drift, 77, 600, 9, errors);
  drift.restart();
  const DriftEllipse again = walkHops(drift, 77, 600, 9, errors);
  QVERIFY(again.across.metres() == first.across.metres() && again.along.metres() == first.along.metres());
  QVERIFY(again.semi_major.metres() == first.semi_major.metres());
  QVERIFY(again.major_axis.degrees() == first.major_axis.degrees());
  QVERIFY(second.semi_major.metres() > 3 * first.semi_major.metres());
}

// A vertex on a straight line changes nothing but what errs leg by leg.
void DriftTest::splittingALeg() {
  RouteDrift whole, split;
  const DriftEllipse one = walkHops(whole, 123, 900, 30, errorsOf(3, 0, 0.5, 0));
  walkHops(split, 123, 300, 10, errorsOf(3, 0, 0.5, 0));
  const DriftEllipse two = walkHops(split, 123, 600, 20, errorsOf(3, 0, 0.5, 0));
  VERIFY_NEAR(two.across.metres(), one.across.metres(), 1e-9, "across");
  VERIFY_NEAR(two.semi_major.metres(), one.semi_major.metres(), 1e-9, "major");
}

// Any route: the axis within half a circle, and the axes' lengths in order.
void DriftTest::axis() {
  Random random(111);
  for (int i = 0; i < 20000; ++i) {
    RouteDrift drift;
    DriftEllipse ellipse;
    for (int leg = int(random.between(1, 5)); leg > 0; --leg) {
      // Now and then due north, east, ... and errors that make circles.
      const bool plain = random.between(0, 1) < 0.3;
      const double degrees = plain ? 90 * std::floor(random.between(0, 4)) : random.between(0, 360);
      const LegErrors errors =
          plain ? errorsOf(0, 1, 0, degree)
                : errorsOf(random.between(0, 5), random.between(0, 1), random.between(0, 1), random.between(0, 0.2));
      ellipse = walkHops(drift, degrees, random.between(1, 3000), random.between(1, 50), errors);
    }
    const std::string where = std::to_string(i);
    VERIFY_AT(ellipse.major_axis.degrees() >= 0 && ellipse.major_axis.degrees() < 180, where);
    VERIFY_AT(ellipse.semi_major.metres() >= ellipse.semi_minor.metres() && ellipse.semi_minor.metres() >= 0, where);
  }
}

// The ellipse and the spread in the leg's own directions are one: the extent of an ellipse in a direction.
void DriftTest::ellipseAndLegAgree() {
  Random random(112);
  for (int i = 0; i < 2000; ++i) {
    RouteDrift drift;
    DriftEllipse ellipse;
    double degrees = 0;
    for (int leg = 0; leg < 4; ++leg) {
      degrees = random.between(0, 360);
      ellipse = walkHops(
          drift, degrees, random.between(50, 3000), random.between(1, 50),
          errorsOf(random.between(0.5, 5), random.between(0, 1), random.between(0, 1), random.between(0.01, 0.1)));
    }
    const double turn = (ellipse.major_axis.degrees() - degrees) * degree;
    const double major = ellipse.semi_major.metres(), minor = ellipse.semi_minor.metres();
    VERIFY_NEAR(std::hypot(major * std::cos(turn), minor * std::sin(turn)), ellipse.along.metres(), 1e-6,
                std::to_string(i));
    VERIFY_NEAR(std::hypot(major * std::sin(turn), minor * std::cos(turn)), ellipse.across.metres(), 1e-6,
                std::to_string(i));
  }
}

// 10 000 made-up walkers with all their errors against what RouteDrift says after every leg.
void DriftTest::walkers() {
  struct Leg {
    double degrees;
    std::vector<double> hops;
  };
  const std::vector<Leg> route = {{35, {40, 40, 12, 8, 8, 25}},
                                  {80, {300, 15}},
                                  {350, {5, 5, 5, 5, 60, 90, 110, 5}},
                                  {205, {400}},
                                  {120, {33, 66, 99, 132, 165, 20}}};
  constexpr double sighting = 3, setting = 0.58, declination = 1.2, pacing = 0.05;
  constexpr size_t walks = 10000;
  struct Spot {
    double east = 0, north = 0;
  };
  std::vector<Spot> spots(walks); // where they are
  std::vector<double> turned(walks);
  Normal normal(113);
  for (double &turn : turned)
    turn = declination * normal();
  RouteDrift drift;
  Spot meant;
  for (size_t l = 0; l < route.size(); ++l) {
    const Leg &leg = route[l];
    double length = 0, squares = 0;
    for (double hop : leg.hops) {
      length += hop;
      squares += hop * hop;
    }
    const DriftEllipse ellipse =
        drift.walk(bearing(leg.degrees), metres(length), squares, errorsOf(sighting, setting, declination, pacing));
    const double sine = std::sin(leg.degrees * degree), cosine = std::cos(leg.degrees * degree);
    meant.east += length * sine;
    meant.north += length * cosine;
    for (size_t w = 0; w < walks; ++w) {
      const double dial = setting * normal(), longer = 1 + pacing * normal();
      for (double hop : leg.hops) {
        const double walked = (leg.degrees + turned[w] + dial + sighting * normal()) * degree;
        spots[w].east += hop * longer * std::sin(walked);
        spots[w].north += hop * longer * std::cos(walked);
      }
    }
    double meanEast = 0, meanNorth = 0;
    for (const Spot &spot : spots) {
      meanEast += spot.east / walks;
      meanNorth += spot.north / walks;
    }
    double across = 0, along = 0;
    int held = 0;
    const double axisSine = std::sin(ellipse.major_axis.angle().radians()),
                 axisCosine = std::cos(ellipse.major_axis.angle().radians());
    for (const Spot &spot : spots) {
      const double east = spot.east - meanEast, north = spot.north - meanNorth;
      along += std::pow(east * sine + north * cosine, 2) / (walks - 1);
      across += std::pow(east * cosine - north * sine, 2) / (walks - 1);
      // Round the place that was meant, as it is drawn.
      const double e = spot.east - meant.east, n = spot.north - meant.north;
      const double onMajor = (e * axisSine + n * axisCosine) / ellipse.semi_major.metres(),
                   onMinor = (e * axisCosine - n * axisSine) / ellipse.semi_minor.metres();
      held += std::hypot(onMajor, onMinor) <= sigmasHolding(0.95);
    }
    const std::string where = "leg " + std::to_string(l);
    VERIFY_NEAR(std::sqrt(across), ellipse.across.metres(), 0.03 * ellipse.across.metres(), where);
    VERIFY_NEAR(std::sqrt(along), ellipse.along.metres(), 0.03 * ellipse.along.metres(), where);
    VERIFY_AT(held >= 9400 && held <= 9600, where + ": " + std::to_string(held));
  }
}

QTEST_APPLESS_MAIN(DriftTest)
#include "drift_test.moc"
