// SPDX-License-Identifier: GPL-2.0-or-later
#include "sighting/sight_line.h"

#include "sighting/extinction.h"
#include "support/near.h"
#include "support/random.h"

#include <algorithm>
#include <limits>
#include <optional>
#include <utility>
#include <vector>

using namespace brushline;
using namespace brushline::test;

class SightLineTest : public QObject {
  Q_OBJECT
private slots:
  void nothingKnown();
  void halfClearIsTheSight();
  void exponentsAddUp();
  void outOfAThicket();
  void intoAThicket();
  void openGround();
  void eyeOnABorder();
  void beyondTheEnd();
  void sightAgainstIntegration();
  void shortestByHand();
  void shortestBeforeOpenGround();
  void shortestAgainstBruteForce();
  void flatGround();
  void wall();
  void riseAndGroundBeyond();
  void eyeHeight();
  void markHeight();
  void eyeBetweenHeights();
  void coverEndsBeforeTheGround();
  void groundAgainstBruteForce();
  void missingHeights();
  void profileOfAPoint();
  void shortestOverTheGround();
  void shortestBetweenStepsOfTheProfile();
  void groundLetsSeeByHand();
  void groundLetsSeeAgreesWithSight();
};

namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();
constexpr double missing = std::numeric_limits<double>::quiet_NaN();

Length metres(double value) { return Length::metres(value); }
Looking clearTo(double probability) { return {probability, metres(1.6), metres(1)}; }

double halfClear(double sight) { return extinctionOf(metres(sight)); }

Profile profileOf(double step, std::vector<double> heights) { return {metres(step), std::move(heights)}; }

// Open land, so that the ground alone hides.
SightLine overGround(Profile profile) { return SightLine({}, std::move(profile)); }

// The extinction at a place of a line.
double extinctionAt(const std::vector<SightStretch> &stretches, double at) {
  for (const SightStretch &stretch : stretches)
    if (at < stretch.to_m)
      return stretch.extinction;
  return 0;
}

// Height of the ground between its samples.
double heightAt(const Profile &profile, double at) {
  const double position = std::clamp(at / profile.step.metres(), 0.0, double(profile.heights.size() - 1));
  const size_t i = std::min(size_t(position), profile.heights.size() - 2);
  return profile.heights[i] + (position - double(i)) * (profile.heights[i + 1] - profile.heights[i]);
}

// How far from the eye a mark is first hidden by ground before it: looked for in a hundred places between heights.
double hiddenFrom(const Profile &profile, double eyeAt, double eyeHeight, double markHeight) {
  const double eye = heightAt(profile, eyeAt) + eyeHeight;
  double steepest = -infinite;
  for (size_t i = 1; i <= 100 * (profile.heights.size() - 1); ++i) {
    const double at = profile.step.metres() * double(i) / 100;
    if (at <= eyeAt)
      continue;
    const double ground = i % 100 ? heightAt(profile, at) : profile.heights[i / 100];
    if ((ground + markHeight - eye) / (at - eyeAt) < steepest)
      return at - eyeAt;
    steepest = std::max(steepest, (ground - eye) / (at - eyeAt));
  }
  return infinite;
}
} // namespace

void SightLineTest::nothingKnown() {
  const SightLine line({});
  QVERIFY(line.length() == 0);
  QVERIFY(line.sightFrom(0, clearTo(0.5)) == infinite && line.sightFrom(77, clearTo(0.99)) == infinite);
  QVERIFY(line.visibility(0, 1000) == 1);
  QVERIFY(line.shortestSight(0, 1000, clearTo(0.5)) == infinite);
}

// What a class's sight distance means, by definition; other probabilities by powers of a half.
void SightLineTest::halfClearIsTheSight() {
  for (double sight : {0.5, 6.0, 55.0, 400.0}) {
    const SightLine line({{20 * sight, halfClear(sight)}});
    const std::string where = std::to_string(sight);
    VERIFY_NEAR(line.length(), 20 * sight, 0, where);
    for (double at : {0.0, 0.3 * sight, 7 * sight}) {
      VERIFY_NEAR(line.sightFrom(at, clearTo(0.5)), sight, 1e-12 * 20 * sight, where);
      VERIFY_NEAR(line.sightFrom(at, clearTo(0.25)), 2 * sight, 1e-12 * 20 * sight, where);
      VERIFY_NEAR(line.sightFrom(at, clearTo(std::sqrt(0.5))), sight / 2, 1e-12 * 20 * sight, where);
      VERIFY_NEAR(line.visibility(at, at + sight), 0.5, 1e-12, where);
      VERIFY_NEAR(line.visibility(at, at + 3 * sight), 0.125, 1e-12, where);
      VERIFY_AT(line.visibility(at, at) == 1, where);
    }
  }
}

// The law of Beer and Lambert: across borders the probabilities multiply.
void SightLineTest::exponentsAddUp() {
  const SightLine line({{30, 0.02}, {45, 0.1}, {45.5, 3}, {80, 0}, {200, 0.005}});
  // By hand: 0.6 + 1.5 + 1.5 + 0 + 0.6.
  VERIFY_NEAR(line.visibility(0, 200), std::exp(-4.2), 1e-15, "all");
  VERIFY_NEAR(line.visibility(0, 30), std::exp(-0.6), 1e-15, "the first");
  VERIFY_NEAR(line.visibility(20, 40), std::exp(-0.2 - 1), 1e-15, "over a border");
  VERIFY_NEAR(line.visibility(45.25, 60), std::exp(-0.75), 1e-15, "from the middle of the hedge");
  VERIFY_NEAR(line.visibility(50, 75), 1, 1e-15, "in the open");
  Random random(140);
  for (int i = 0; i < 5000; ++i) {
    double at[3] = {random.between(0, 200), random.between(0, 200), random.between(0, 200)};
    std::sort(std::begin(at), std::end(at));
    VERIFY_NEAR(line.visibility(at[0], at[1]) * line.visibility(at[1], at[2]), line.visibility(at[0], at[2]), 1e-14,
                std::to_string(i));
  }
}

// Computed by hand. 10 m of thicket (6 m half clear), then woods (60 m): from 7 m the 3 m left are half of what may
// be hidden, the other half are 30 m of woods.
void SightLineTest::outOfAThicket() {
  const SightLine line({{10, halfClear(6)}, {1000, halfClear(60)}});
  VERIFY_NEAR(line.sightFrom(0, clearTo(0.5)), 6, 1e-9, "in it");
  VERIFY_NEAR(line.sightFrom(4, clearTo(0.5)), 6, 1e-9, "to its very edge");
  VERIFY_NEAR(line.sightFrom(7, clearTo(0.5)), 33, 1e-9, "out of it");
  VERIFY_NEAR(line.sightFrom(10, clearTo(0.5)), 60, 1e-9, "from its edge");
  // Into open ground one sees without an end.
  const SightLine meadow({{10, halfClear(6)}, {1000, 0}});
  VERIFY_NEAR(meadow.sightFrom(3.9, clearTo(0.5)), 6, 1e-9, "in it");
  QVERIFY(meadow.sightFrom(4.1, clearTo(0.5)) == infinite);
}

void SightLineTest::intoAThicket() {
  const SightLine line({{100, halfClear(60)}, {1000, halfClear(6)}});
  VERIFY_NEAR(line.sightFrom(0, clearTo(0.5)), 60, 1e-9, "far from it");
  VERIFY_NEAR(line.sightFrom(40, clearTo(0.5)), 60, 1e-9, "as far as its edge");
  VERIFY_NEAR(line.sightFrom(70, clearTo(0.5)), 33, 1e-9, "into it");
  VERIFY_NEAR(line.sightFrom(100, clearTo(0.5)), 6, 1e-9, "from its edge");
  // Over a meadow, and through a hedge into another.
  const SightLine meadow({{100, 0}, {103, halfClear(6)}, {300, 0}, {1000, halfClear(6)}});
  VERIFY_NEAR(meadow.sightFrom(0, clearTo(0.5)), 303, 1e-9, "the hedge takes half, the far wood the rest");
  VERIFY_NEAR(meadow.sightFrom(102, clearTo(0.5)), 198 + 5, 1e-9, "a third of the hedge left");
  VERIFY_NEAR(meadow.sightFrom(200, clearTo(0.5)), 106, 1e-9, "beyond the hedge");
}

void SightLineTest::openGround() {
  const SightLine line({{500, 0}});
  QVERIFY(line.sightFrom(0, clearTo(0.99)) == infinite && line.sightFrom(499, clearTo(0.01)) == infinite);
  QVERIFY(line.visibility(0, 500) == 1);
  QVERIFY(line.shortestSight(0, 500, clearTo(0.5)) == infinite);
}

// On a border the sight is that of the side ahead; borders of stretches alike change nothing.
void SightLineTest::eyeOnABorder() {
  const SightLine line({{10, halfClear(6)}, {20, halfClear(6)}, {30, halfClear(50)}, {500, halfClear(6)}});
  VERIFY_NEAR(line.sightFrom(10, clearTo(0.5)), 6, 1e-9, "none");
  // From 20: 10 m of 50 are 0.2, left 0.8: 4.8 m.
  VERIFY_NEAR(line.sightFrom(20, clearTo(0.5)), 14.8, 1e-9, "into a glade");
  VERIFY_NEAR(line.sightFrom(30, clearTo(0.5)), 6, 1e-9, "out of it");
  VERIFY_NEAR(line.sightFrom(20 - 1e-9, clearTo(0.5)), line.sightFrom(20 + 1e-9, clearTo(0.5)), 1e-7, "no jump");
}

// "Infinite when nothing hides marks up to the line's end".
void SightLineTest::beyondTheEnd() {
  const SightLine line({{100, halfClear(60)}});
  VERIFY_NEAR(line.sightFrom(39.9, clearTo(0.5)), 60, 1e-9, "just within");
  QVERIFY(line.sightFrom(40.1, clearTo(0.5)) == infinite);
  QVERIFY(line.sightFrom(100, clearTo(0.5)) == infinite && line.sightFrom(200, clearTo(0.5)) == infinite);
  VERIFY_NEAR(line.visibility(40, 400), 0.5, 1e-12, "nothing more is known to hide");
}

// Against adding up the extinction in small steps.
void SightLineTest::sightAgainstIntegration() {
  Random random(141);
  for (int i = 0; i < 200; ++i) {
    std::vector<SightStretch> stretches;
    double end = 0;
    constexpr double step = 0x1p-8; // of which all borders are multiples
    const auto steps = [&](double least, double most) { return step * std::floor(random.between(least, most) / step); };
    for (int k = int(random.between(1, 8)); k > 0; --k)
      stretches.push_back({end += steps(0.5, 60), random.between(0, 1) < 0.2 ? 0 : random.between(0.002, 0.3)});
    stretches.push_back({end + 4000, 0.05});
    const SightLine line(stretches);
    const double at = steps(0, end), probability = random.between(0.02, 0.95);
    double depth = 0, place = at;
    for (; depth < -std::log(probability); place += step)
      depth += step * extinctionAt(stretches, place + step / 2);
    const double sight = line.sightFrom(at, clearTo(probability));
    VERIFY_NEAR(sight, place - at, step, std::to_string(i));
    VERIFY_NEAR(line.visibility(at, at + sight), probability, 1e-12, std::to_string(i));
  }
}

// Woods (60 m) with a belt of brush (12 m) from 100 to 106 m. Computed by hand: before it the sight falls from 60 m
// (at 40) until the belt's far edge is just seen, from 70 (half a sight of woods, half of brush), 36 m; then grows.
void SightLineTest::shortestByHand() {
  const SightLine line({{100, halfClear(60)}, {106, halfClear(12)}, {1000, halfClear(60)}});
  VERIFY_NEAR(line.shortestSight(0, 200, clearTo(0.5)), 36, 1e-9, "all");
  VERIFY_NEAR(line.shortestSight(0, 40, clearTo(0.5)), 60, 1e-9, "before");
  VERIFY_NEAR(line.shortestSight(0, 50, clearTo(0.5)), line.sightFrom(50, clearTo(0.5)), 1e-9, "the end is the least");
  VERIFY_NEAR(line.shortestSight(103, 300, clearTo(0.5)), 48, 1e-9, "the start is: half the belt, 45 m of woods");
  VERIFY_NEAR(line.shortestSight(150, 300, clearTo(0.5)), 60, 1e-9, "beyond");
  VERIFY_NEAR(line.shortestSight(70, 70, clearTo(0.5)), 36, 1e-9, "a place");
}

// From where a hedge's far edge is just seen, a step further lets one see over all the meadow beyond: the least sight
// is that one place's, and rounding must not lose it. Woods of random sights, hedges too thin to take half alone.
void SightLineTest::shortestBeforeOpenGround() {
  Random random(142);
  for (int i = 0; i < 2000; ++i) {
    const double woods = random.between(30, 90), thorn = random.between(2, 10), start = random.between(60, 150);
    const double hedge = thorn * random.between(0.1, 0.9); // takes that share of a half
    if (start < woods)
      continue;
    const SightLine line({{start, halfClear(woods)}, {start + hedge, halfClear(thorn)}, {start + 5000, 0}});
    // The far edge is just seen from where the woods take the rest.
    const double expected = hedge + woods * (1 - hedge / thorn);
    VERIFY_NEAR(line.shortestSight(0, start, clearTo(0.5)), expected, 1e-6, std::to_string(i));
  }
}

// Against looking every 0.1 m. Between looks the sight falls by no more than the step itself.
void SightLineTest::shortestAgainstBruteForce() {
  Random random(143);
  int within = 0;
  for (int i = 0; i < 1500; ++i) {
    std::vector<SightStretch> stretches;
    double end = 0;
    for (int k = int(random.between(1, 9)); k > 0; --k)
      stretches.push_back({end += std::exp(random.between(-1, 4)),
                           random.between(0, 1) < 0.25 ? 0 : halfClear(std::exp(random.between(0, 5)))});
    stretches.push_back({end + 5000, random.between(0, 1) < 0.5 ? 0 : 0.02});
    const SightLine line(stretches);
    const double from = random.between(0, end / 2), to = random.between(end / 2, end);
    const Looking looking = clearTo(random.between(0.05, 0.95));
    double least = infinite;
    for (double at = from; at <= to; at += 0.1)
      least = std::min(least, line.sightFrom(at, looking));
    const double shortest = line.shortestSight(from, to, looking);
    const std::string where = std::to_string(i) + ": " + std::to_string(shortest) + " and " + std::to_string(least);
    VERIFY_AT(shortest <= least + 1e-9, where);
    VERIFY_AT(shortest >= least - 0.1 - 1e-9, where);
    within += shortest < std::min(line.sightFrom(from, looking), line.sightFrom(to, looking)) - 1e-6;
  }
  QVERIFY2(within > 300, qPrintable(QString::number(within))); // the ends alone would not do
}

// Level or of one slope, the ground hides nothing; heights themselves do not matter.
void SightLineTest::flatGround() {
  for (double base : {0.0, -300.0, 8000.0})
    for (double slope : {0.0, 0.4, -0.4}) {
      std::vector<double> heights;
      for (int i = 0; i <= 100; ++i)
        heights.push_back(base + slope * 5 * i);
      const SightLine line = overGround(profileOf(5, heights));
      for (double at : {0.0, 2.5, 333.0, 500.0})
        QVERIFY(line.sightFrom(at, clearTo(0.5)) == infinite);
      QVERIFY(line.shortestSight(0, 500, clearTo(0.5)) == infinite);
    }
}

// Computed by hand: level, a wall 10 m high at 100 m, 10 m wide at its foot on either side. Eye 1.6 m, mark 1 m. The
// line of sight over the top climbs by 8.4 m in 100. Behind the top a mark's height above the eye is 9.4 - t, at
// 100 + t: it sinks out of sight where 9.4 - t = 0.084 (100 + t).
void SightLineTest::wall() {
  std::vector<double> heights(31, 0);
  heights[10] = 10;
  const SightLine line = overGround(profileOf(10, heights));
  VERIFY_NEAR(line.sightFrom(0, clearTo(0.5)), 100 + 1 / 1.084, 1e-9, "over the top");
  // From 80 m: 20 m before the top, 8.4 m above the eye: 9.4 - t = 0.42 (20 + t).
  VERIFY_NEAR(line.sightFrom(80, clearTo(0.5)), 20 + 1 / 1.42, 1e-9, "nearer");
  QVERIFY(line.sightFrom(110, clearTo(0.5)) == infinite); // the wall is behind
  // From its top the ground falls away and then no more: nothing hides.
  QVERIFY(line.sightFrom(100, clearTo(0.5)) == infinite);
}

// A rise of 4 m from 100 to 200 m, level beyond it at 4 m; and one that falls again. From its foot's level, 1.6 m:
// the edge at 200 m, 2.4 m above the eye, hides ground beyond; marks of 1 m there are seen while
// (4 + 1 - 1.6) / d >= 2.4 / 200: d = 283.333. By hand.
void SightLineTest::riseAndGroundBeyond() {
  std::vector<double> plateau, hill;
  for (int i = 0; i <= 100; ++i) {
    const double at = 10.0 * i;
    plateau.push_back(std::clamp((at - 100) * 0.04, 0.0, 4.0));
    hill.push_back(at <= 200 ? plateau.back() : std::max(-6.0, 4 - (at - 200) * 0.1));
  }
  VERIFY_NEAR(overGround(profileOf(10, plateau)).sightFrom(0, clearTo(0.5)), 3.4 / 0.012, 1e-9, "plateau");
  // The hill falls by 1 in 10: 3.4 - 0.1 (d - 200) = 0.012 d: d = 23.4 / 0.112.
  VERIFY_NEAR(overGround(profileOf(10, hill)).sightFrom(0, clearTo(0.5)), 23.4 / 0.112, 1e-9, "hill");
  // Ground beyond that comes into sight again does not count: up to the first hidden mark.
  std::vector<double> twice = hill;
  twice[90] = 100;
  VERIFY_NEAR(overGround(profileOf(10, twice)).sightFrom(0, clearTo(0.5)), 23.4 / 0.112, 1e-9, "and another hill");
  QVERIFY(overGround(profileOf(10, plateau)).sightFrom(200, clearTo(0.5)) == infinite);
}

// Who is taller sees farther over a rise.
void SightLineTest::eyeHeight() {
  std::vector<double> heights;
  for (int i = 0; i <= 100; ++i)
    heights.push_back(std::clamp((10.0 * i - 100) * 0.04, 0.0, 4.0));
  const SightLine line = overGround(profileOf(10, heights));
  double before = 0;
  // As above: (5 - eye) / d = (4 - eye) / 200, by hand.
  for (double eye : {0.3, 1.1, 1.6, 1.9, 3.0}) {
    const double sight = line.sightFrom(0, {0.5, metres(eye), metres(1)});
    VERIFY_NEAR(sight, 200 * (5 - eye) / (4 - eye), 1e-9, std::to_string(eye));
    QVERIFY(sight > before);
    before = sight;
  }
  QVERIFY(line.sightFrom(0, {0.5, metres(4), metres(1)}) == infinite); // level with the plateau
}

void SightLineTest::markHeight() {
  std::vector<double> heights;
  for (int i = 0; i <= 100; ++i)
    heights.push_back(std::clamp((10.0 * i - 100) * 0.04, 0.0, 4.0));
  const SightLine line = overGround(profileOf(10, heights));
  // (4 + mark - 1.6) / d = 2.4 / 200, by hand; a mark on the ground is hidden from the edge on.
  VERIFY_NEAR(line.sightFrom(0, {0.5, metres(1.6), metres(2)}), 4.4 / 0.012, 1e-9, "2 m");
  VERIFY_NEAR(line.sightFrom(0, {0.5, metres(1.6), metres(0.5)}), 2.9 / 0.012, 1e-9, "0.5 m");
  VERIFY_NEAR(line.sightFrom(0, {0.5, metres(1.6), metres(0)}), 200, 1e-9, "on the ground");
}

// The eye stands on the ground between two heights of the profile.
void SightLineTest::eyeBetweenHeights() {
  std::vector<double> heights;
  for (int i = 0; i <= 100; ++i)
    heights.push_back(std::clamp((10.0 * i - 100) * 0.04, 0.0, 4.0));
  const SightLine line = overGround(profileOf(10, heights));
  // At 125 m the ground is 1 m, the eye 2.6; the edge is 75 m off and 1.4 m above it: 2.4 / d = 1.4 / 75.
  VERIFY_NEAR(line.sightFrom(125, clearTo(0.5)), 2.4 * 75 / 1.4, 1e-9, "125 m");
  // Up to an edge on the way, none is hidden by the piece one stands on.
  VERIFY_NEAR(line.sightFrom(101, clearTo(0.5)), (5 - 1.64) * 99 / (4 - 1.64), 1e-9, "101 m");
}

// The nearer of the two counts.
void SightLineTest::coverEndsBeforeTheGround() {
  std::vector<double> heights(31, 0);
  heights[10] = 10;
  const Profile profile = profileOf(10, heights);
  VERIFY_NEAR(SightLine({{1000, halfClear(60)}}, profile).sightFrom(0, clearTo(0.5)), 60, 1e-9, "cover");
  VERIFY_NEAR(SightLine({{1000, halfClear(60)}}, profile).sightFrom(70, clearTo(0.5)), 30 + 1 / (1 + 8.4 / 30), 1e-9,
              "ground");
  VERIFY_NEAR(SightLine({{1000, halfClear(100.5)}}, profile).sightFrom(0, clearTo(0.5)), 100.5, 1e-9, "just before");
  // visibility() is of the cover alone.
  QVERIFY(SightLine({{1000, 0}}, profile).visibility(0, 300) == 1);
}

// Random ground against many small steps.
void SightLineTest::groundAgainstBruteForce() {
  Random random(144);
  int hidden = 0, open = 0;
  for (int i = 0; i < 400; ++i) {
    std::vector<double> heights{0};
    const double roughness = random.between(0.02, 1.5);
    double slope = 0;
    for (int k = 0; k < 40; ++k)
      heights.push_back(heights.back() + (slope = 0.7 * slope + random.between(-roughness, roughness)));
    const Profile profile = profileOf(random.between(2, 12), heights);
    const double at = random.between(0, 0.7) * 40 * profile.step.metres();
    const Looking looking{0.5, metres(random.between(0.5, 3)), metres(random.between(0.3, 2))};
    const double sight = overGround(profile).sightFrom(at, looking);
    const double expected = hiddenFrom(profile, at, looking.eye_height.metres(), looking.mark_height.metres());
    VERIFY_AT(std::isinf(sight) == std::isinf(expected), std::to_string(i));
    if (!std::isinf(expected))
      VERIFY_NEAR(sight, expected, profile.step.metres() / 100 + 1e-9, std::to_string(i));
    ++(std::isinf(expected) ? open : hidden);
  }
  QVERIFY(hidden > 100 && open > 30);
}

// What has no height hides nothing; what has one before and after it still does.
void SightLineTest::missingHeights() {
  std::vector<double> wall(31, 0);
  wall[10] = 10;
  std::vector<double> gap = wall;
  gap[10] = missing;
  QVERIFY(overGround(profileOf(10, gap)).sightFrom(0, clearTo(0.5)) == infinite);
  std::vector<double> all(31, missing);
  QVERIFY(overGround(profileOf(10, all)).sightFrom(0, clearTo(0.5)) == infinite);
  QVERIFY(overGround(profileOf(10, all)).shortestSight(0, 300, clearTo(0.5)) == infinite);
  // An eye on ground without a height sees all.
  std::vector<double> start = wall;
  start[0] = missing;
  QVERIFY(overGround(profileOf(10, start)).sightFrom(0, clearTo(0.5)) == infinite);
  QVERIFY(overGround(profileOf(10, start)).sightFrom(5, clearTo(0.5)) == infinite);
  QVERIFY(std::isfinite(overGround(profileOf(10, start)).sightFrom(10, clearTo(0.5))));
  // Marks behind the wall are hidden all the same when the ground just behind it is not known: somewhere there.
  std::vector<double> behind = wall;
  behind[11] = behind[12] = missing;
  const double sight = overGround(profileOf(10, behind)).sightFrom(0, clearTo(0.5));
  QVERIFY(sight >= 100 && sight <= 130);
  // The cover hides where the ground is not known.
  VERIFY_NEAR(SightLine({{1000, halfClear(60)}}, profileOf(10, all)).sightFrom(0, clearTo(0.5)), 60, 1e-9, "cover");
}

// No profile to speak of is level ground, and no endless work.
void SightLineTest::profileOfAPoint() {
  for (const Profile &profile : {Profile{}, Profile{Length(), {500}}, Profile{metres(5), {500}}}) {
    const SightLine line({{1000, halfClear(60)}}, profile);
    VERIFY_NEAR(line.sightFrom(10, clearTo(0.5)), 60, 1e-9, "sight");
    VERIFY_NEAR(line.shortestSight(0, 100, clearTo(0.5)), 60, 1e-9, "shortest");
  }
}

// At every step of the profile and each metre between, as the interface says.
void SightLineTest::shortestOverTheGround() {
  Random random(145);
  for (int i = 0; i < 200; ++i) {
    std::vector<double> heights{0};
    for (int k = 0; k < 60; ++k)
      heights.push_back(heights.back() + random.between(-0.6, 0.6));
    const Profile profile = profileOf(5, heights);
    const auto least = [](const SightLine &line) {
      double least = infinite;
      for (int k = 20; k <= 200; ++k)
        least = std::min(least, line.sightFrom(k, clearTo(0.5)));
      return least;
    };
    // Without borders on the way it is looked for nowhere else.
    const SightLine even({{1000, halfClear(200)}}, profile);
    VERIFY_AT(even.shortestSight(20, 200, clearTo(0.5)) == least(even), std::to_string(i));
    const SightLine belt({{100, halfClear(200)}, {130, halfClear(40)}, {1000, halfClear(200)}}, profile);
    // Where the cover alone hides, the two reckon the same place by other ways: 1e-9 m for the rounding.
    VERIFY_AT(belt.shortestSight(20, 200, clearTo(0.5)) <= least(belt) + 1e-9, std::to_string(i));
  }
}

// On level ground before a slope that falls by s, the eye at e and marks at m above the ground: d before the edge one
// sees d + d / (s d - e) far (none of it hidden where s d < e), at the least (sqrt(m) + sqrt(e))^2 / s = 2.26^2 / s for
// marks of 1 m. In a coarse terrain model that is far from any of its steps: 17 m where one sees 34 m from the nearest.
void SightLineTest::shortestBetweenStepsOfTheProfile() {
  for (const double step : {2., 5., 10., 30., 90.})
    for (const double slope : {0.1, 0.3, 0.6}) {
      std::vector<double> heights(20, 500);
      for (int k = 1; k <= 20; ++k)
        heights.push_back(500 - slope * step * k);
      const double edge = 19 * step, expected = std::pow(1 + std::sqrt(1.6), 2) / slope;
      const double eye = (1.6 + std::sqrt(1.6)) / slope; // before the edge
      if (eye > edge || expected > 19 * step)
        continue;
      VERIFY_NEAR(overGround(profileOf(step, heights)).shortestSight(0, edge + step, clearTo(0.5)), expected,
                  0.2 * slope + 1e-9, std::to_string(step) + " m, " + std::to_string(slope));
    }
}

// Computed by hand.
void SightLineTest::groundLetsSeeByHand() {
  const auto sees = [](std::vector<double> heights, double eye = 1.6, double mark = 1) {
    return groundLetsSee(profileOf(10, std::move(heights)), metres(eye), metres(mark));
  };
  QVERIFY(sees({}) && sees({5}) && sees({0, 100}) && sees({0, 0, 0}));
  // Half way between 1.6 m and 1 m the line of sight is 1.3 m high.
  QVERIFY(sees({0, 1.29, 0}) && !sees({0, 1.31, 0}));
  QVERIFY(sees({0, 1.49, 0}, 2, 1) && !sees({0, 1.51, 0}, 2, 1));
  QVERIFY(sees({0, 1.79, 0}, 1.6, 2) && !sees({0, 1.81, 0}, 1.6, 2));
  // Up and down a slope.
  QVERIFY(sees({0, 10, 20, 30}) && sees({30, 20, 10, 0}));
  QVERIFY(!sees({0, 20, 20, 30}) && !sees({30, 20, 20, 0}));
  // What has no data hides nothing.
  QVERIFY(sees({0, missing, 0}) && !sees({0, missing, 50, 0}));
  QVERIFY(sees({missing, 50, 0}) && sees({0, 50, missing}));
}

// The two ways to ask: a mark at the end is seen when the sight reaches as far, unless it came into sight again.
void SightLineTest::groundLetsSeeAgreesWithSight() {
  Random random(146);
  int seen = 0, again = 0;
  for (int i = 0; i < 2000; ++i) {
    std::vector<double> heights{0};
    for (int k = int(random.between(2, 15)); k > 0; --k)
      heights.push_back(heights.back() + random.between(-1.2, 1.2));
    const Profile profile = profileOf(10, heights);
    const double length = 10 * double(heights.size() - 1);
    const bool sees = groundLetsSee(profile, metres(1.6), metres(1));
    const double sight = overGround(profile).sightFrom(0, clearTo(0.5));
    VERIFY_AT(sees || sight <= length, std::to_string(i));
    seen += sees && sight > length;
    again += sees && sight <= length;
    if (std::isinf(sight))
      VERIFY_AT(sees, std::to_string(i));
  }
  QVERIFY(seen > 500 && again > 20);
}

QTEST_APPLESS_MAIN(SightLineTest)
#include "sight_line_test.moc"
