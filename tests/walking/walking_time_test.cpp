// SPDX-License-Identifier: GPL-2.0-or-later
#include "walking/walking_time.h"

#include "support/check_values.h"
#include "support/near.h"

#include <set>
#include <stdexcept>

using namespace brushline;
using namespace brushline::test;

class WalkingTimeTest : public QObject {
  Q_OBJECT
private slots:
  void speeds();
  void peaks();
  void distanceAndClimb();
  void distanceAndClimbEdges();
  void walkersTime();
  void speedFactor();
  void level();
  void nowhere();
  void inPieces();
};

namespace {
double speedBy(const std::string &rule, double slope) {
  if (rule == "tobler_path")
    return hikingSpeed(slope);
  if (rule == "tobler_off_path")
    return offPathFactor * hikingSpeed(slope);
  if (rule == "irmischer_clarke_on_path")
    return onTrailSpeed(slope);
  if (rule == "irmischer_clarke_off_path")
    return offTrailSpeed(slope);
  throw std::runtime_error("no such rule: " + rule);
}

double unitOf(const std::string &unit) {
  if (unit == "m_s")
    return 1;
  if (unit == "km_h")
    return 3.6;
  throw std::runtime_error("no such unit: " + unit);
}

Walker walkerWith(TimeRule rule, double factor = 1) {
  Walker walker;
  walker.time_rule = rule;
  walker.speed_factor = factor;
  return walker;
}

double seconds(double run, double rise, const Walker &walker) {
  return walkingTime(Length::metres(run), Length::metres(rise), walker).seconds();
}

double climbTime(double run, double rise) {
  return distanceAndClimbTime(Length::metres(run), Length::metres(rise)).seconds();
}

constexpr TimeRule allRules[] = {TimeRule::OffTrailSpeed, TimeRule::HikingOffPath, TimeRule::DistanceAndClimb};
} // namespace

void WalkingTimeTest::speeds() {
  const CheckValues values("walking/data/walking_speed.csv");
  std::set<std::string> rules;
  for (const CheckRow &row : values.rows()) {
    const double speed = speedBy(row.text("rule"), row.number("slope")) * unitOf(row.text("unit"));
    VERIFY_CHECK(values.check(row, "speed", speed));
    rules.insert(row.text("rule"));
  }
  QCOMPARE(rules.size(), size_t(4));
}

// The note of walking_speed.csv: a sign lost or a bracket misread would miss these.
void WalkingTimeTest::peaks() {
  QVERIFY(onTrailSpeed(-0.05) == 1.11);
  QVERIFY(offTrailSpeed(-0.02) == 0.78);
  VERIFY_NEAR(hikingSpeed(-0.05) * 3.6, 6, 1e-12, "6 km/h");
  for (int i = -1000; i <= 1000; ++i) {
    const double s = i / 1000.0;
    VERIFY_AT(onTrailSpeed(s) <= 1.11 && onTrailSpeed(s) > 0.11, std::to_string(s));
    VERIFY_AT(offTrailSpeed(s) <= 0.78 && offTrailSpeed(s) > 0.11 - 1e-12, std::to_string(s));
    VERIFY_AT(hikingSpeed(s) <= 6 / 3.6 + 1e-12 && hikingSpeed(s) > 0, std::to_string(s));
  }
}

void WalkingTimeTest::distanceAndClimb() {
  const CheckValues values("walking/data/walking_time.csv");
  std::set<std::string> rules;
  for (const CheckRow &row : values.rows()) {
    const double rise = row.number("climb_m") - row.number("drop_m");
    QVERIFY(row.number("climb_m") == 0 || row.number("drop_m") == 0); // one slope
    VERIFY_CHECK(values.check(row, "expected_s", climbTime(row.number("dist_m"), rise)));
    rules.insert(row.text("rule"));
  }
  QCOMPARE(rules.size(), size_t(2));
}

// 5 and 12 degrees as in the interface; computed by hand with the coefficients of walking_time.csv.
void WalkingTimeTest::distanceAndClimbEdges() {
  const double five = 1000 * std::tan(Angle::degrees(5).radians()),
               twelve = 1000 * std::tan(Angle::degrees(12).radians());
  VERIFY_NEAR(climbTime(1000, -(five - 1e-6)), 720, 1e-9, "just under 5 degrees: nothing");
  VERIFY_NEAR(climbTime(1000, -(five + 1e-6)), 720 - 1.9998 * five, 1e-3, "just over 5 degrees: faster");
  VERIFY_NEAR(climbTime(1000, -(twelve - 1e-6)), 720 - 1.9998 * twelve, 1e-3, "just under 12 degrees: faster");
  VERIFY_NEAR(climbTime(1000, -(twelve + 1e-6)), 720 + 1.9998 * twelve, 1e-3, "just over 12 degrees: slower");
  VERIFY_NEAR(climbTime(1000, 0), 720, 1e-9, "level");
  VERIFY_NEAR(climbTime(1000, 1e-6), 720, 1e-4, "the least climb");
  VERIFY_NEAR(climbTime(0, 0), 0, 0, "nothing");
  VERIFY_NEAR(climbTime(0, 10), 60, 1e-9, "a wall up");
  VERIFY_NEAR(climbTime(0, -10), 19.998, 1e-9, "a wall down");
}

// Which rule asks which speed.
void WalkingTimeTest::walkersTime() {
  for (double slope : {0.1, 0.0, -0.1, -0.25}) {
    const std::string where = std::to_string(slope);
    VERIFY_NEAR(seconds(100, 100 * slope, walkerWith(TimeRule::OffTrailSpeed)), 100 / offTrailSpeed(slope), 1e-9,
                where);
    VERIFY_NEAR(seconds(100, 100 * slope, walkerWith(TimeRule::HikingOffPath)), 100 / hikingSpeed(slope) / 0.6, 1e-9,
                where);
    VERIFY_NEAR(seconds(100, 100 * slope, walkerWith(TimeRule::DistanceAndClimb)), climbTime(100, 100 * slope), 1e-9,
                where);
  }
}

// Computed by hand: twice as fast takes half the time.
void WalkingTimeTest::speedFactor() {
  for (TimeRule rule : allRules)
    for (double rise : {0.0, 10.0, -25.0}) {
      const double usual = seconds(100, rise, walkerWith(rule));
      VERIFY_NEAR(seconds(100, rise, walkerWith(rule, 2)), usual / 2, 1e-9, "twice as fast");
      VERIFY_NEAR(seconds(100, rise, walkerWith(rule, 0.5)), usual * 2, 1e-9, "half as fast");
    }
}

// 100 m on the level: 0.77851 m/s and 0.6 of 5.03674 km/h (walking_speed.csv), 0.72 s/m (walking_time.csv).
void WalkingTimeTest::level() {
  VERIFY_NEAR(seconds(100, 0, walkerWith(TimeRule::OffTrailSpeed)), 100 / 0.77851, 1e-3, "off trail");
  VERIFY_NEAR(seconds(100, 0, walkerWith(TimeRule::HikingOffPath)), 360 / 3.02205, 1e-3, "hiking");
  VERIFY_NEAR(seconds(100, 0, walkerWith(TimeRule::DistanceAndClimb)), 72, 1e-9, "distance and climb");
}

void WalkingTimeTest::nowhere() {
  for (TimeRule rule : allRules)
    QVERIFY(seconds(0, 0, walkerWith(rule)) == 0);
}

// An even slope takes the same time in pieces.
void WalkingTimeTest::inPieces() {
  for (TimeRule rule : allRules)
    for (double rise : {200.0, 50.0, 0.0, -40.0, -150.0, -300.0})
      VERIFY_NEAR(64 * seconds(1000 / 64.0, rise / 64, walkerWith(rule)), seconds(1000, rise, walkerWith(rule)), 1e-6,
                  std::to_string(rise));
}

QTEST_APPLESS_MAIN(WalkingTimeTest)
#include "walking_time_test.moc"
