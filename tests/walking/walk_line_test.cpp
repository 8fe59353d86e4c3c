// SPDX-License-Identifier: GPL-2.0-or-later
#include "walking/walk_line.h"

#include "support/near.h"
#include "support/random.h"
#include "walking/pacing.h"
#include "walking/walking_time.h"

using namespace brushline;
using namespace brushline::test;

class WalkLineTest : public QObject {
  Q_OBJECT
private slots:
  void level();
  void flatProfileIsLevel();
  void hill();
  void evenSlopeInSteps();
  void footing();
  void footingAcrossProfileSteps();
  void footingAddsUp();
  void nobodyWalksThere();
  void heldWithinTheLine();
  void growsAlongTheLine();
  void wholeAtItsEnd();
};

namespace {
constexpr TimeRule allRules[] = {TimeRule::OffTrailSpeed, TimeRule::HikingOffPath, TimeRule::DistanceAndClimb};

Walker walkerWith(TimeRule time, SlopeRule slope = SlopeRule::SlopeTable) {
  Walker walker; // 130 steps to 100 m
  walker.time_rule = time;
  walker.slope_rule = slope;
  return walker;
}

const Walker usual = walkerWith(TimeRule::DistanceAndClimb);

// One even slope.
Profile slope(double run, double rise, int steps) {
  Profile profile{Length::metres(run / steps), {}};
  for (int i = 0; i <= steps; ++i)
    profile.heights.push_back(100 + rise * i / steps);
  return profile;
}
} // namespace

// Computed by hand: 130 steps and 72 s to 100 m.
void WalkLineTest::level() {
  const WalkLine line(Length::metres(1000), nullptr, {}, usual);
  VERIFY_NEAR(line.steps(), 1300, 1e-9, "steps");
  VERIFY_NEAR(line.time()->seconds(), 720, 1e-9, "time");
  VERIFY_NEAR(line.stepsTo(250), 325, 1e-9, "a quarter");
  VERIFY_NEAR(line.timeTo(250)->seconds(), 180, 1e-9, "a quarter");
  QVERIFY(line.stepsTo(0) == 0 && line.timeTo(0)->seconds() == 0);
}

void WalkLineTest::flatProfileIsLevel() {
  Random random(73);
  for (int i = 0; i < 200; ++i) {
    const int steps = 1 + int(random.between(0, 50));
    const Profile flat{Length::metres(random.between(0.1, 30)), std::vector<double>(size_t(steps + 1), -3.25)};
    const Length length = Length::metres(flat.step.metres() * steps);
    for (TimeRule rule : allRules) {
      Walker walker = walkerWith(rule, i % 2 ? SlopeRule::None : SlopeRule::SlopeTable);
      walker.speed_factor = random.between(0.1, 3);
      walker.steps_per_100m = random.between(90, 200);
      const WalkLine sloped(length, &flat, {}, walker), plain(length, nullptr, {}, walker);
      VERIFY_NEAR(sloped.steps(), plain.steps(), 1e-9 * plain.steps(), std::to_string(i));
      VERIFY_NEAR(sloped.time()->seconds(), plain.time()->seconds(), 1e-9 * plain.time()->seconds(), std::to_string(i));
      VERIFY_AT(plain.steps() > 0 && plain.time()->seconds() > 0, std::to_string(i));
    }
  }
}

// Up and down again: both slopes count, they do not cancel; each step has its own slope.
void WalkLineTest::hill() {
  const Profile hill{Length::metres(100), {0, 10, 0, -25}}; // slopes 0.1, -0.1, -0.25
  for (TimeRule rule : allRules) {
    const Walker walker = walkerWith(rule);
    double steps = 0, seconds = 0;
    const WalkLine line(Length::metres(300), &hill, {}, walker);
    for (int i = 0; i < 3; ++i) {
      const Length run = Length::metres(100);
      const Length rise = Length::metres(hill.heights[size_t(i) + 1] - hill.heights[size_t(i)]);
      steps += stepsOver(run, rise, walker);
      seconds += walkingTime(run, rise, walker).seconds();
      VERIFY_NEAR(line.stepsTo(100 * (i + 1)), steps, 1e-9, std::to_string(i));
      VERIFY_NEAR(line.timeTo(100 * (i + 1))->seconds(), seconds, 1e-9, std::to_string(i));
    }
    VERIFY_NEAR(line.steps(), steps, 1e-9, "all");
    VERIFY_NEAR(line.time()->seconds(), seconds, 1e-9, "all");
  }
  // By hand, distance and climb: 72 s each, a climb of 10 m, a moderate descent of 10 m and a steep one of 25 m.
  VERIFY_NEAR(WalkLine(Length::metres(300), &hill, {}, usual).time()->seconds(),
              3 * 72 + 6 * 10 - 1.9998 * 10 + 1.9998 * 25, 1e-9, "by hand");
}

// From slope_table.csv: at 10 degrees up a step is 0.8026 of that on the level, along the slope.
void WalkLineTest::evenSlopeInSteps() {
  const double rise = 1000 * std::tan(Angle::degrees(10).radians());
  for (int steps : {1, 7, 100}) {
    const Profile profile = slope(1000, rise, steps);
    const WalkLine line(Length::metres(1000), &profile, {}, usual);
    VERIFY_NEAR(line.steps(), 1300 / std::cos(Angle::degrees(10).radians()) / 0.8026, 0.1, std::to_string(steps));
    VERIFY_NEAR(line.stepsTo(333), line.steps() * 0.333, 1e-6, std::to_string(steps));
    VERIFY_NEAR(line.time()->seconds(), 720 + 6 * rise, 1e-6, std::to_string(steps));
  }
}

// Computed by hand: 400 m plain, 200 m of a fifth more steps at half the speed, 400 m plain.
void WalkLineTest::footing() {
  const std::vector<FootingStretch> footing = {{400, 1, 1.0}, {600, 1.2, 0.5}, {1000, 1, 1.0}};
  const WalkLine line(Length::metres(1000), nullptr, footing, usual);
  VERIFY_NEAR(line.steps(), 520 + 312 + 520, 1e-9, "steps");
  VERIFY_NEAR(line.time()->seconds(), 288 + 288 + 288, 1e-9, "time");
  VERIFY_NEAR(line.stepsTo(400), 520, 1e-9, "border");
  VERIFY_NEAR(line.stepsTo(500), 520 + 156, 1e-9, "in the thicket");
  VERIFY_NEAR(line.timeTo(500)->seconds(), 288 + 144, 1e-9, "in the thicket");
  VERIFY_NEAR(line.stepsTo(700), 520 + 312 + 130, 1e-9, "behind it");
}

// Borders of the footing that fall within steps of the profile, and the other way round.
void WalkLineTest::footingAcrossProfileSteps() {
  const double rise = 100;
  const std::vector<FootingStretch> footing = {{333.3, 1, 1.0}, {333.4, 2, 0.25}, {777.7, 1.2, 0.5}, {1000, 1, 1.0}};
  for (int steps : {1, 3, 10, 1000}) {
    const Profile profile = slope(1000, rise, steps);
    const WalkLine plain(Length::metres(1000), &profile, {}, usual);
    const WalkLine line(Length::metres(1000), &profile, footing, usual);
    const double perMetre = plain.steps() / 1000, secondsPerMetre = plain.time()->seconds() / 1000;
    VERIFY_NEAR(line.steps(), perMetre * (333.3 + 0.1 * 2 + 444.3 * 1.2 + 222.3), 1e-6, std::to_string(steps));
    VERIFY_NEAR(line.time()->seconds(), secondsPerMetre * (333.3 + 0.1 * 4 + 444.3 * 2 + 222.3), 1e-6,
                std::to_string(steps));
    VERIFY_NEAR(line.stepsTo(500), perMetre * (333.3 + 0.2 + 166.6 * 1.2), 1e-6, std::to_string(steps));
  }
}

// Cutting a stretch in two changes nothing; a footing that ends early leaves the rest plain.
void WalkLineTest::footingAddsUp() {
  const Profile profile = slope(1000, -80, 13);
  const WalkLine whole(Length::metres(1000), &profile, {{1000, 1.3, 0.7}}, usual);
  const WalkLine cut(Length::metres(1000), &profile, {{17, 1.3, 0.7}, {400, 1.3, 0.7}, {1000, 1.3, 0.7}}, usual);
  VERIFY_NEAR(cut.steps(), whole.steps(), 1e-9, "steps");
  VERIFY_NEAR(cut.time()->seconds(), whole.time()->seconds(), 1e-9, "time");
  const WalkLine early(Length::metres(1000), nullptr, {{400, 2, 0.5}}, usual);
  VERIFY_NEAR(early.steps(), 520 * 2 + 780, 1e-9, "plain behind its end");
}

// Steps are counted on, but there is no time from there on.
void WalkLineTest::nobodyWalksThere() {
  const std::vector<FootingStretch> footing = {{400, 1, 1.0}, {500, 1.5, std::nullopt}, {1000, 1, 1.0}};
  const WalkLine line(Length::metres(1000), nullptr, footing, usual);
  VERIFY_NEAR(line.timeTo(400)->seconds(), 288, 1e-9, "up to the water");
  QVERIFY(!line.timeTo(450) && !line.timeTo(500) && !line.timeTo(900) && !line.time());
  VERIFY_NEAR(line.steps(), 520 + 195 + 650, 1e-9, "steps");
}

void WalkLineTest::heldWithinTheLine() {
  const WalkLine line(Length::metres(100), nullptr, {}, usual);
  QVERIFY(line.stepsTo(-5) == 0 && line.timeTo(-5)->seconds() == 0);
  QVERIFY(line.stepsTo(1000) == line.steps() && line.timeTo(1000)->seconds() == line.time()->seconds());
}

void WalkLineTest::growsAlongTheLine() {
  Random random(74);
  Profile profile{Length::metres(10), {}};
  for (int i = 0; i <= 100; ++i)
    profile.heights.push_back(random.between(0, 4));
  const WalkLine line(Length::metres(1000), &profile, {{123.4, 1.1, 0.9}, {777, 1.4, 0.3}, {1000, 1, 1.0}}, usual);
  double steps = 0, seconds = 0;
  for (double at = 0.5; at < 1000; at += 0.5) {
    QVERIFY(line.stepsTo(at) > steps && line.timeTo(at)->seconds() > seconds);
    steps = line.stepsTo(at);
    seconds = line.timeTo(at)->seconds();
  }
  VERIFY_NEAR(line.stepsTo(1000), line.steps(), 1e-9, "end");
}

// At the line's end all of it has been walked, to the last bit: the last mark's count is the leg's.
void WalkLineTest::wholeAtItsEnd() {
  Random random(75);
  for (int i = 0; i < 1000; ++i) {
    Profile profile{Length::metres(random.between(0.5, 30)), {}};
    const int steps = 1 + int(random.between(0, 3));
    for (int k = 0; k <= steps; ++k)
      profile.heights.push_back(random.between(0, 20));
    const double length = profile.step.metres() * steps;
    const double border = random.between(0.01, 0.6) * length;
    const std::vector<FootingStretch> footing = {{border, 1.1, 0.9}, {length, 1.4, 0.3}};
    const WalkLine line(Length::metres(length), &profile, footing, usual);
    VERIFY_AT(line.stepsTo(length) == line.steps(), std::to_string(i));
    VERIFY_AT(line.timeTo(length)->seconds() == line.time()->seconds(), std::to_string(i));
  }
}

QTEST_APPLESS_MAIN(WalkLineTest)
#include "walk_line_test.moc"
