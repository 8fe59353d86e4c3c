// SPDX-License-Identifier: GPL-2.0-or-later
#include "walking/pacing.h"

#include "support/check_values.h"
#include "support/near.h"

#include <stdexcept>

using namespace brushline;
using namespace brushline::test;

class PacingTest : public QObject {
  Q_OBJECT
private slots:
  void slopeTable();
  void stepsAlongTheSlope();
  void betweenAndBeyondTheTable();
  void upNeverFewerThanLevel();
  void downNeverFewerThanLevel();
  void paceCounts();
  void level();
  void noSlopeRule();
  void wall();
  void doubleIsHalf();
  void halvesUp_data();
  void halvesUp();
};

namespace {
constexpr double inch = 0.0254;     // metres, by definition
constexpr double mossInches = 30.4; // the normal pace of the table

// The sign of a row's slope.
double signOf(const CheckRow &row) {
  if (row.text("direction") == "up")
    return 1;
  if (row.text("direction") == "down")
    return -1;
  throw std::runtime_error("neither up nor down: " + row.text("direction"));
}

// Steps over an even slope, its length given along it.
double stepsAlong(double metres, double degrees, const Walker &walker) {
  const double angle = Angle::degrees(degrees).radians();
  return stepsOver(Length::metres(metres * std::cos(angle)), Length::metres(metres * std::sin(angle)), walker);
}

Walker walkerWith(double stepsPer100m, SlopeRule rule = SlopeRule::SlopeTable) {
  Walker walker;
  walker.steps_per_100m = stepsPer100m;
  walker.slope_rule = rule;
  return walker;
}
} // namespace

void PacingTest::slopeTable() {
  const CheckValues values("walking/data/slope_table.csv");
  for (const CheckRow &row : values.rows()) {
    const double ratio = stepLengthRatio(Angle::degrees(signOf(row) * row.number("slope_deg")));
    const std::string where = "line " + std::to_string(row.line());
    VERIFY_CHECK(values.check(row, "ratio", ratio));
    VERIFY_CHECK(values.check(row, "step_in", ratio * mossInches));
    VERIFY_NEAR(ratio, row.number("step_in") / mossInches, 1e-12, where); // the table itself, not the rounded ratio
  }
}

void PacingTest::stepsAlongTheSlope() {
  const CheckValues values("walking/data/slope_table.csv");
  const Walker moss = walkerWith(100 / (mossInches * inch));
  for (const CheckRow &row : values.rows())
    VERIFY_CHECK(values.check(row, "steps_100m", stepsAlong(100, signOf(row) * row.number("slope_deg"), moss)));
}

// Computed by hand: linear between the table's angles, its last value beyond 30 degrees.
void PacingTest::betweenAndBeyondTheTable() {
  const auto ratio = [](double degrees) { return stepLengthRatio(Angle::degrees(degrees)) * mossInches; };
  VERIFY_NEAR(ratio(2.5), (30.4 + 27.6) / 2, 1e-12, "2.5 up");
  VERIFY_NEAR(ratio(-2.5), (30.4 + 29.2) / 2, 1e-12, "2.5 down");
  VERIFY_NEAR(ratio(26), 17.8 - 0.2 * 2.8, 1e-12, "26 up");
  VERIFY_NEAR(ratio(-29), 23.6 - 0.8 * 3.9, 1e-12, "29 down");
  VERIFY_NEAR(ratio(45), 15.0, 1e-12, "45 up");
  VERIFY_NEAR(ratio(-90), 19.7, 1e-12, "straight down");
  VERIFY_NEAR(ratio(90), 15.0, 1e-12, "straight up");
  QVERIFY(ratio(0) == ratio(-0.0));
  // No jump at an angle of the table.
  for (int degrees = -30; degrees <= 30; degrees += 5)
    VERIFY_NEAR(ratio(degrees + 1e-9), ratio(degrees - 1e-9), 1e-8, std::to_string(degrees));
}

void PacingTest::upNeverFewerThanLevel() {
  const Walker walker = walkerWith(130);
  double before = 0;
  for (int i = 0; i <= 900; ++i) { // to 45 degrees
    const double degrees = i / 20.0;
    const double along = stepsAlong(100, degrees, walker);
    VERIFY_AT(along >= 130 - 1e-9, std::to_string(degrees));
    VERIFY_AT(along >= before - 1e-9, std::to_string(degrees)); // and the steeper the more
    before = along;
  }
}

// Of the two sayings about downhill, that of the table: shorter steps, so never fewer.
void PacingTest::downNeverFewerThanLevel() {
  const Walker walker = walkerWith(130);
  for (int i = 0; i <= 900; ++i) {
    const double degrees = i / 20.0;
    const double down = stepsAlong(100, -degrees, walker);
    VERIFY_AT(down >= 130 - 1e-9, std::to_string(degrees));
    VERIFY_AT(down <= stepsAlong(100, degrees, walker) + 1e-9, std::to_string(degrees)); // nor more than up
  }
}

// The published counts, whatever their authors call a pace: so many to 100 m, so many to the distance.
void PacingTest::paceCounts() {
  const CheckValues values("walking/data/pace_counts.csv");
  for (const CheckRow &row : values.rows()) {
    const Walker walker = walkerWith(row.number("paces_per_100m"));
    const Length distance = Length::metres(row.number("distance_m"));
    const double steps = stepsOver(distance, Length(), walker);
    const std::string where = "line " + std::to_string(row.line());
    VERIFY_CHECK(values.check(row, "expected_paces", steps));
    VERIFY_AT(pacesCounted(steps, PaceKind::Single) == std::lround(row.number("expected_paces")), where);
  }
}

// Computed by hand; the two rules agree on the level.
void PacingTest::level() {
  for (SlopeRule rule : {SlopeRule::SlopeTable, SlopeRule::None}) {
    VERIFY_NEAR(stepsOver(Length::metres(1000), Length(), walkerWith(130, rule)), 1300, 1e-9, "1000 m");
    QVERIFY(stepsOver(Length(), Length(), walkerWith(130, rule)) == 0);
  }
  VERIFY_NEAR(stepsAlong(1000, 1e-9, walkerWith(130)), 1300, 1e-4, "hardly a slope");
  VERIFY_NEAR(stepsAlong(1000, -1e-9, walkerWith(130)), 1300, 1e-4, "hardly a slope");
}

// Without the rule a slope counts as its length on the map.
void PacingTest::noSlopeRule() {
  VERIFY_NEAR(stepsAlong(100, 30, walkerWith(130, SlopeRule::None)), 130 * std::cos(Angle::pi / 6), 1e-9, "30 degrees");
  QVERIFY(stepsAlong(100, 30, walkerWith(130)) > 260);
}

// A wall is its height long; steps by the table's last row.
void PacingTest::wall() {
  VERIFY_NEAR(stepsOver(Length(), Length::metres(10), walkerWith(130)), 13 * 30.4 / 15.0, 1e-9, "up");
  VERIFY_NEAR(stepsOver(Length(), Length::metres(-10), walkerWith(130)), 13 * 30.4 / 19.7, 1e-9, "down");
}

void PacingTest::doubleIsHalf() {
  for (long steps = 0; steps < 5000; steps += 2)
    QCOMPARE(pacesCounted(double(steps), PaceKind::Double) * 2, pacesCounted(double(steps), PaceKind::Single));
}

// Computed by hand; halves up.
void PacingTest::halvesUp_data() {
  QTest::addColumn<double>("steps");
  QTest::addColumn<int>("single");
  QTest::addColumn<int>("twos");
  QTest::newRow("0") << 0.0 << 0 << 0;
  QTest::newRow("0.49") << 0.49 << 0 << 0;
  QTest::newRow("0.5") << 0.5 << 1 << 0;
  QTest::newRow("1") << 1.0 << 1 << 1;
  QTest::newRow("1.5") << 1.5 << 2 << 1;
  QTest::newRow("2.5") << 2.5 << 3 << 1;
  QTest::newRow("3") << 3.0 << 3 << 2;
  QTest::newRow("130.4") << 130.4 << 130 << 65;
  QTest::newRow("131") << 131.0 << 131 << 66;
}

void PacingTest::halvesUp() {
  QFETCH(double, steps);
  QFETCH(int, single);
  QFETCH(int, twos);
  QCOMPARE(pacesCounted(steps, PaceKind::Single), long(single));
  QCOMPARE(pacesCounted(steps, PaceKind::Double), long(twos));
}

QTEST_APPLESS_MAIN(PacingTest)
#include "pacing_test.moc"
