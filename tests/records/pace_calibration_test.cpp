// SPDX-License-Identifier: GPL-2.0-or-later
// Intervals, outliers and slope effects against scipy: calibrate_check.py.
#include "records/pace_calibration.h"

#include "support/check_values.h"
#include "support/near.h"
#include "walking/pacing.h"

#include <algorithm>
#include <cmath>
#include <sstream>

using namespace brushline;
using namespace brushline::test;

namespace {

PaceTry tried(double count, double metres, double slope = 0) {
  return {count, Length::metres(metres), Angle::degrees(slope)};
}

std::vector<PaceTry> over(double metres, const std::vector<double> &counts) {
  std::vector<PaceTry> tries;
  for (const double count : counts)
    tries.push_back(tried(count, metres));
  return tries;
}

// What one counts whose steps the slope changes so many times as much as the table says.
double steps(double level, double metres, double slope, double factor = 1) {
  return level / 100 * metres * (1 + factor * (1 / stepLengthRatio(Angle::degrees(slope)) - 1));
}

std::vector<TryFlag> flagsOf(const PaceCalibration &calibration) {
  std::vector<TryFlag> flags;
  for (const JudgedTry &each : calibration.tries)
    flags.push_back(each.flag);
  return flags;
}

constexpr auto none = TryFlag::None;

} // namespace

class PaceCalibrationTest : public QObject {
  Q_OBJECT
private slots:
  // To the last bit: sums that are rounded in another order differ in it.
  void theOrderOfTriesIsNothing() {
    std::vector<PaceTry> tries;
    for (int i = 0; i < 40; ++i)
      tries.push_back(tried(120 + i % 7 + 0.1 * i, 90 + 1.7 * (i % 11), double(i * 5 % 17) - 8));
    const PaceCalibration wanted = calibratePaces(tries, PaceKind::Single);
    for (int turn = 1; turn < 40; ++turn) {
      std::rotate(tries.begin(), tries.begin() + 1, tries.end());
      const PaceCalibration got = calibratePaces(tries, PaceKind::Single);
      QVERIFY(got.steps_per_100m == wanted.steps_per_100m);
      QVERIFY(got.paced.metres() == wanted.paced.metres());
    }
  }
  void published() {
    const CheckValues values("records/data/pace_calibration.csv");
    for (const CheckRow &row : values.rows()) {
      std::vector<PaceTry> tries;
      std::istringstream counts(row.text("counts"));
      counts.imbue(std::locale::classic());
      for (double count; counts >> count;)
        tries.push_back(tried(count, row.number("distance_m")));
      const PaceCalibration result = calibratePaces(tries, PaceKind::Single);
      const std::string where = "line " + std::to_string(row.line());
      VERIFY_AT(!result.none, where);
      VERIFY_CHECK(values.check(row, "steps_100m", result.steps_per_100m));
      VERIFY_AT(result.spread.has_value() == row.maybe("sd_100m").has_value(), where);
      VERIFY_AT(result.interval.has_value() == row.maybe("low_100m").has_value(), where);
      if (result.spread) {
        VERIFY_CHECK(values.check(row, "sd_100m", *result.spread));
        VERIFY_CHECK(values.check(row, "low_100m", result.interval->low));
        VERIFY_CHECK(values.check(row, "high_100m", result.interval->high));
      }
      std::string outliers;
      for (size_t i = 0; i < tries.size(); ++i) {
        const bool outlier = row.maybe("outlier") && *row.maybe("outlier") == double(i + 1);
        if (result.tries[i].flag == TryFlag::Outlier)
          outliers += std::to_string(i + 1);
        VERIFY_AT(result.tries[i].used != outlier, where);
      }
      VERIFY_CHECK(values.check(row, "outlier", outliers));
    }
  }

  // All steps over all metres, by hand.
  void longTriesWeighMore() {
    const PaceCalibration result = calibratePaces({tried(120, 100), tried(520, 400)}, PaceKind::Single);
    VERIFY_NEAR(result.steps_per_100m, 128, 1e-12, "640 over 500 m");
    VERIFY_NEAR(result.paced.metres(), 500, 1e-12, "paced");
    // sigma^2 = 100 8^2 + 400 2^2 = 8000; of a try of 250 m sqrt(32).
    VERIFY_NEAR(*result.spread, std::sqrt(32.0), 1e-12, "spread");
    VERIFY_NEAR(result.interval->high - 128, 12.7062047 * 4, 1e-5, "t of 1, 12.706");
    VERIFY_NEAR(result.tries[0].residual_percent, -6.25, 1e-12, "residual");
    VERIFY_NEAR(result.tries[1].residual_percent, 1.5625, 1e-12, "residual");
  }

  void oneTryHasNoError() {
    const PaceCalibration result = calibratePaces({tried(65, 100)}, PaceKind::Double);
    QVERIFY(!result.none);
    VERIFY_NEAR(result.steps_per_100m, 130, 1e-12, "twice the double paces");
    QVERIFY(!result.spread && !result.interval && !result.pace_error_percent && !result.slope);
    QVERIFY(result.used == 1 && result.tries[0].used);
  }

  // One sigma of a new distance. By hand: t(0.6827) is 1.8374 for 1 degree of freedom, 1.0 for many.
  void paceErrorNearsTheSpread() {
    const PaceCalibration two = calibratePaces(over(100, {119, 121}), PaceKind::Single);
    VERIFY_NEAR(*two.pace_error_percent, 1.8374 * std::sqrt(2.0) * std::sqrt(1.5) / 1.2, 1e-3, "two");
    std::vector<double> many;
    for (int i = 0; i < 1000; ++i)
      many.push_back(i % 2 ? 123 : 117);
    const PaceCalibration thousand = calibratePaces(over(100, many), PaceKind::Single);
    VERIFY_NEAR(*thousand.pace_error_percent, 2.5, 0.005, "a thousand");
  }

  // Tries that are all alike are no proof of a perfect pace.
  void whollyAlike() {
    for (const PaceKind kind : {PaceKind::Single, PaceKind::Double}) {
      const double whole = kind == PaceKind::Double ? 2 : 1;
      const PaceCalibration result = calibratePaces(over(100, {124 / whole, 124 / whole, 124 / whole}), kind);
      QVERIFY(result.spread_is_rounding);
      VERIFY_NEAR(*result.spread, whole / std::sqrt(12.0), 1e-12, "spread");
      QVERIFY(result.interval->low < 124 && result.interval->high > 124);
      QVERIFY(Walker::paceErrorLimits.contains(*result.pace_error_percent));
    }
    const PaceCalibration far = calibratePaces(over(10000, {12400, 12400, 12400}), PaceKind::Single);
    QVERIFY(*far.pace_error_percent == Walker::paceErrorLimits.least);
    QVERIFY(!calibratePaces(over(100, {122, 124, 126}), PaceKind::Single).spread_is_rounding);
  }

  void blunders() {
    const PaceCalibration half = calibratePaces(over(100, {124, 126, 62, 122}), PaceKind::Single);
    QVERIFY(flagsOf(half) == (std::vector{none, none, TryFlag::Half, none}));
    QVERIFY(!half.tries[2].used && half.used == 3 && half.flagged == 1);
    VERIFY_NEAR(half.steps_per_100m, 124, 1e-12, "without it");
    const PaceCalibration twice = calibratePaces(over(100, {62, 124, 63, 61}), PaceKind::Double);
    QVERIFY(flagsOf(twice) == (std::vector{none, TryFlag::Twice, none, none}));
    const PaceCalibration feet = calibratePaces({tried(124, 100), tried(76, 200), tried(125, 100)}, PaceKind::Single);
    QVERIFY(flagsOf(feet) == (std::vector{none, TryFlag::Feet, none})); // 200 ft
    const PaceCalibration far = calibratePaces(over(100, {124, 1240, 125}), PaceKind::Single);
    QVERIFY(flagsOf(far) == (std::vector{none, TryFlag::FarOff, none}));
    // Nothing tells which of two, or two pairs, is right.
    QVERIFY(calibratePaces(over(100, {124, 62}), PaceKind::Single).none == NoPaces::Disagree);
    QVERIFY(calibratePaces(over(100, {124, 62, 125, 63}), PaceKind::Single).none == NoPaces::Disagree);
  }

  void outliers() {
    // A lost ten among eight.
    const PaceCalibration ten = calibratePaces(over(100, {124, 125, 123, 124, 114, 126, 124, 125}), PaceKind::Single);
    QVERIFY(ten.tries[4].flag == TryFlag::Outlier && !ten.tries[4].used);
    VERIFY_NEAR(ten.steps_per_100m, 871 / 7.0, 1e-12, "of seven");
    // Too few would be left of three.
    const PaceCalibration three = calibratePaces(over(100, {124, 124.01, 140}), PaceKind::Single);
    QVERIFY(three.tries[2].flag == TryFlag::Outlier && three.tries[2].used);
    QVERIFY(three.used == 3 && three.flagged == 1);
    VERIFY_NEAR(three.steps_per_100m, 388.01 / 3, 1e-9, "of all");
    // However alike the others are, 3 percent is no outlier.
    const PaceCalibration small = calibratePaces(over(100, {124, 124, 124, 124, 124, 124, 127}), PaceKind::Single);
    QVERIFY(small.flagged == 0 && small.used == 7);
  }

  void tooSteep() {
    const PaceCalibration some =
        calibratePaces({tried(124, 100), tried(300, 100, 31), tried(200, 100, -40)}, PaceKind::Single);
    QVERIFY(flagsOf(some) == (std::vector{none, TryFlag::TooSteep, TryFlag::TooSteep}));
    QVERIFY(some.used == 1 && some.steps_per_100m == 124);
    QVERIFY(calibratePaces({tried(300, 100, 45)}, PaceKind::Single).none == NoPaces::NoTry);
    QVERIFY(calibratePaces({}, PaceKind::Single).none == NoPaces::NoTry);
  }

  void nobodysSteps() {
    QVERIFY(calibratePaces(over(100, {38, 39}), PaceKind::Single).none == NoPaces::NoSteps); // feet taken for metres
    QVERIFY(!calibratePaces(over(100, {62, 63}), PaceKind::Single).none);                    // may be double paces
    QVERIFY(calibratePaces(over(100, {38, 39}), PaceKind::Double).none == NoPaces::NoSteps);
    QVERIFY(!calibratePaces(over(100, {50, 49}), PaceKind::Double).none);
    QVERIFY(calibratePaces(over(100, {1100, 1090}), PaceKind::Single).none == NoPaces::NoSteps);
  }

  // Whatever slopes the table holds for come out as on the level.
  void levelledByTheTable() {
    std::vector<PaceTry> tries;
    for (const double slope : {0.0, 4.0, 9.0, 17.5, -6.0, -12.0, -30.0, 30.0})
      tries.push_back(tried(steps(130, 80, slope), 80, slope));
    const PaceCalibration result = calibratePaces(tries, PaceKind::Single);
    VERIFY_NEAR(result.steps_per_100m, 130, 1e-9, "level");
    QVERIFY(result.slope && !result.own_slope && result.flagged == 0 && result.sloped == 7);
    VERIFY_NEAR(result.slope->factor, 1, 1e-9, "as the table");
    // And back: the walker counts on the slope what was counted there.
    Walker walker;
    walker.steps_per_100m = result.steps_per_100m;
    for (const PaceTry &each : tries) {
      const double run = each.distance.metres() * std::cos(each.slope.radians());
      const double rise = each.distance.metres() * std::sin(each.slope.radians());
      VERIFY_NEAR(stepsOver(Length::metres(run), Length::metres(rise), walker), each.count, 1e-8, "back");
    }
  }

  void ownEffectOfSlope() {
    for (const double factor : {0.0, 0.5, 1.0, 1.7}) {
      std::vector<PaceTry> tries;
      int i = 0;
      for (const double slope : {0.0, 0.0, 0.0, 10.0, 10.0, 15.0, -10.0, -15.0})
        tries.push_back(tried(steps(140, 100, slope, factor) * (1 + (++i % 2 ? 0.004 : -0.004)), 100, slope));
      const PaceCalibration result = calibratePaces(tries, PaceKind::Single);
      QVERIFY(result.slope && result.slope->interval);
      VERIFY_NEAR(result.slope->factor, factor, 0.05, std::to_string(factor));
      QVERIFY(result.slope->interval->low < factor && result.slope->interval->high > factor);
      QVERIFY(result.own_slope == (factor != 1));
      VERIFY_NEAR(result.steps_per_100m, 140, 1, "on the level");
    }
  }

  void tooLittleSlope() {
    const std::vector<PaceTry> level = over(100, {130, 131, 129});
    const auto with = [&](std::vector<PaceTry> more) {
      more.insert(more.end(), level.begin(), level.end());
      return calibratePaces(more, PaceKind::Single);
    };
    const auto up = [](double slope) { return tried(steps(130, 100, slope), 100, slope); };
    QVERIFY(!with({up(10), up(12)}).slope);        // two
    QVERIFY(!with({up(3), up(4), up(4.5)}).slope); // less than 5 degrees
    QVERIFY(with({up(10), up(10), up(10)}).slope); // against the level ones
    QVERIFY(!calibratePaces({up(10), up(10), up(10), up(10)}, PaceKind::Single).slope);
    QVERIFY(!calibratePaces({up(-5), up(0), up(10)}, PaceKind::Single).slope); // three in all
    // Up and down with the same effect in the table: no line.
    const double down = -15, same = 5;
    QVERIFY(std::abs(stepLengthRatio(Angle::degrees(down)) - stepLengthRatio(Angle::degrees(same))) < 1e-9);
    QVERIFY(!calibratePaces({up(down), up(same), up(down), up(same)}, PaceKind::Single).slope);
    QVERIFY(with({up(10)}).sloped == 1 && !with({up(10)}).slope);
  }

  void doublePacesAreTwoSteps() {
    const PaceCalibration one =
        calibratePaces({tried(124, 100), tried(252, 200), tried(150, 100, 8)}, PaceKind::Single);
    const PaceCalibration two = calibratePaces({tried(62, 100), tried(126, 200), tried(75, 100, 8)}, PaceKind::Double);
    QVERIFY(one.steps_per_100m == two.steps_per_100m && *one.spread == *two.spread);
    QVERIFY(one.interval->low == two.interval->low && *one.pace_error_percent == *two.pace_error_percent);
  }

  void orderOfNoMatter() {
    std::vector<PaceTry> tries = {tried(124, 100), tried(260, 200), tried(150, 100, 8), tried(64, 100),
                                  tried(500, 400, -3)};
    const PaceCalibration one = calibratePaces(tries, PaceKind::Single);
    std::reverse(tries.begin(), tries.end());
    const PaceCalibration other = calibratePaces(tries, PaceKind::Single);
    VERIFY_NEAR(one.steps_per_100m, other.steps_per_100m, 1e-10, "steps");
    VERIFY_NEAR(*one.spread, *other.spread, 1e-10, "spread");
    QVERIFY(one.tries[3].flag == other.tries[1].flag && one.tries[3].flag == TryFlag::Half);
  }
};

QTEST_APPLESS_MAIN(PaceCalibrationTest)
#include "pace_calibration_test.moc"
