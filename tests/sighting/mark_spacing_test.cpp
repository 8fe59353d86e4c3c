// SPDX-License-Identifier: GPL-2.0-or-later
#include "sighting/mark_spacing.h"

#include "sighting/extinction.h"
#include "support/near.h"
#include "support/random.h"

#include <algorithm>
#include <limits>
#include <vector>

using namespace brushline;
using namespace brushline::test;

class MarkSpacingTest : public QObject {
  Q_OBJECT
private slots:
  void ruleAsGiven();
  void evenCover();
  void leastAndMost();
  void openGround();
  void twoCovers();
  void lastOneAtTheEnd_data();
  void lastOneAtTheEnd();
  void roundingMakesNoHop();
  void blind();
  void blindRest();
  void overTheGround();
  void medians_data();
  void medians();
  void squares();
  void properties();
};

namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();
constexpr Looking half{0.5};

Length metres(double value) { return Length::metres(value); }

// Cover whose half-clear distances and ends are given.
SightLine cover(const std::vector<std::pair<double, double>> &sightsAndEnds) {
  std::vector<SightStretch> stretches;
  for (const auto &[sight, end] : sightsAndEnds)
    stretches.push_back({end, extinctionOf(metres(sight))});
  return SightLine(std::move(stretches));
}

SpacingRule rule(double share, double least, double most) { return {share, metres(least), metres(most)}; }

std::vector<double> placesOf(const MarkChain &chain) {
  std::vector<double> places;
  for (const SpacedMark &mark : chain.marks)
    places.push_back(mark.at_m);
  return places;
}

QString text(const std::vector<double> &places) {
  QStringList words;
  for (double at : places)
    words << QString::number(at, 'g', 10);
  return words.join(QLatin1Char(' '));
}

MarkChain chainOf(const std::vector<double> &places) {
  MarkChain chain;
  for (double at : places)
    chain.marks.push_back({at, 1});
  return chain;
}
} // namespace

// The defaults of the parameters (common practice, no source).
void MarkSpacingTest::ruleAsGiven() {
  const SpacingRule usual;
  QVERIFY(usual.sight_share == 0.8 && usual.least.metres() == 5 && usual.most.metres() == 400);
  QVERIFY(SpacingRule::clearLimits.usual == 0.5);
}

// 55 m half clear, four fifths of it: a mark every 44 m. By hand.
void MarkSpacingTest::evenCover() {
  const MarkChain chain = spaceMarks(cover({{55, 10000}}), metres(200), half, rule(0.8, 5, 400));
  const double expected[] = {44, 88, 132, 176, 200};
  QCOMPARE(chain.marks.size(), size_t(5));
  for (size_t i = 0; i < 5; ++i) {
    VERIFY_NEAR(chain.marks[i].at_m, expected[i], 1e-9, std::to_string(i));
    VERIFY_NEAR(chain.marks[i].sight_m, 55, 1e-9, std::to_string(i));
  }
  QVERIFY(chain.blind_m == 0);
  // A mark that must be clear for certain is nearer: a quarter is clear at twice the distance, so at 0.25 it is 110 m.
  const MarkChain quarter = spaceMarks(cover({{55, 10000}}), metres(200), Looking{0.25}, rule(0.8, 5, 400));
  VERIFY_NEAR(quarter.marks.at(0).at_m, 88, 1e-9, "a quarter");
}

void MarkSpacingTest::leastAndMost() {
  // 0.8 of 100 m is 80 m.
  const SightLine line = cover({{100, 10000}});
  const auto hops = [&](double least, double most) {
    return text(placesOf(spaceMarks(line, metres(300), half, rule(0.8, least, most))));
  };
  QCOMPARE(hops(5, 400), QStringLiteral("80 160 240 300"));
  QCOMPARE(hops(5, 60), QStringLiteral("60 120 180 240 300"));
  QCOMPARE(hops(120, 400), QStringLiteral("120 240 300"));
  QCOMPARE(hops(80, 80), QStringLiteral("80 160 240 300"));
  QCOMPARE(hops(1, 300), QStringLiteral("80 160 240 300"));
  QCOMPARE(hops(500, 500), QStringLiteral("300")); // the end comes first
}

// Nothing hides marks: the most spacing alone.
void MarkSpacingTest::openGround() {
  for (const SightLine &line : {SightLine({}), SightLine({{1000, 0}})}) {
    const MarkChain chain = spaceMarks(line, metres(1000), half, rule(0.8, 5, 400));
    QCOMPARE(text(placesOf(chain)), QStringLiteral("400 800 1000"));
    for (const SpacedMark &mark : chain.marks)
      QVERIFY(mark.sight_m == infinite);
    QVERIFY(chain.blind_m == 0);
  }
}

// Each hop by the sight from its own start. By hand, in half-clear distances: 100 m of open woods (80 m), then brush
// (12 m). From 0: 80. 0.5 x 80 = 40. From 40: 60 m of woods are three quarters, a quarter is left: 3 m of brush: 63 m,
// hop 31.5. From 71.5: 28.5 m are 0.35625, 0.64375 are left: 7.725 m: 36.225, hop 18.1125; from 89.6125: 10.3875 m are
// 0.12984375, left 0.87015625: 10.441875 m: 20.829375, hop 10.4146875; then at 100.0271875 the brush: 12, hops of 6.
void MarkSpacingTest::twoCovers() {
  const MarkChain chain = spaceMarks(cover({{80, 100}, {12, 1000}}), metres(110), half, rule(0.5, 5, 400));
  const double places[] = {40, 71.5, 89.6125, 100.0271875, 106.0271875, 110},
               sights[] = {80, 63, 36.225, 20.829375, 12, 12};
  QCOMPARE(chain.marks.size(), size_t(6));
  for (size_t i = 0; i < 6; ++i) {
    VERIFY_NEAR(chain.marks[i].at_m, places[i], 1e-9, std::to_string(i));
    VERIFY_NEAR(chain.marks[i].sight_m, sights[i], 1e-9, std::to_string(i));
  }
}

void MarkSpacingTest::lastOneAtTheEnd_data() {
  QTest::addColumn<double>("length");
  QTest::addColumn<int>("marks");
  QTest::newRow("a millimetre") << 0.001 << 1;
  QTest::newRow("less than the least spacing") << 3.0 << 1;
  QTest::newRow("one hop") << 40.0 << 1;
  QTest::newRow("a hair more") << 40.001 << 2;
  QTest::newRow("a hair less") << 39.999 << 1;
  QTest::newRow("ten hops") << 400.0 << 10;
  QTest::newRow("many") << 123456.78 << 3087;
}

// 50 m half clear, hops of 40 m.
void MarkSpacingTest::lastOneAtTheEnd() {
  QFETCH(double, length);
  QFETCH(int, marks);
  const MarkChain chain = spaceMarks(cover({{50, 1e6}}), metres(length), half, rule(0.8, 5, 400));
  QCOMPARE(chain.marks.size(), size_t(marks));
  QVERIFY(chain.marks.back().at_m == length); // to the last bit
  QVERIFY(chain.blind_m == 0);
}

// Hops of 0.1 m do not add up to whole metres in binary; no hop of a hair's breadth is left over.
void MarkSpacingTest::roundingMakesNoHop() {
  for (double hop : {0.7, 1.1, 3.3, 12.3, 44.4}) {
    for (int count : {1, 3, 10, 99, 1000}) {
      const double length = hop * count;
      const MarkChain chain = spaceMarks(SightLine({}), metres(length), half, rule(0.8, 0.5, hop));
      const std::string where = std::to_string(hop) + " x " + std::to_string(count);
      VERIFY_AT(chain.marks.size() == size_t(count), where);
      VERIFY_AT(chain.marks.back().at_m == length, where);
      VERIFY_NEAR(chain.medianHop(), hop, 1e-9, where);
    }
  }
  // More than rounding is a hop.
  QCOMPARE(spaceMarks(SightLine({}), metres(10.00001), half, rule(0.8, 0.5, 5)).marks.size(), size_t(3));
}

// 3 m half clear, no mark nearer than 5 m: all of it blind. By hand.
void MarkSpacingTest::blind() {
  const MarkChain all = spaceMarks(cover({{3, 1000}}), metres(50), half, rule(0.8, 5, 400));
  QCOMPARE(all.marks.size(), size_t(10));
  VERIFY_NEAR(all.blind_m, 50, 1e-9, "all");
  // A sight just as far as the least spacing is no blind one, though the share of it is less.
  QVERIFY(spaceMarks(cover({{5.0001, 1000}}), metres(50), half, rule(0.8, 5, 400)).blind_m == 0);
  VERIFY_NEAR(spaceMarks(cover({{4.9999, 1000}}), metres(50), half, rule(0.8, 5, 400)).blind_m, 50, 1e-9, "just under");
  // Woods (80 m) to 100 m, a belt of thorn (2 m) to 130 m, woods again, hops by the whole sight: the first hop ends in
  // the thorn, at 80 m; from there 20 m are 0.25, left 0.75: 1.5 m of thorn: 101.5. From there 2 m: blind hops of 5 m
  // to 126.5 (5 of them); 3.5 m to the end of the thorn are more than a half-clear distance: blind to 131.5 too.
  const MarkChain belt = spaceMarks(cover({{80, 100}, {2, 130}, {80, 1000}}), metres(300), half, rule(1, 5, 400));
  VERIFY_NEAR(belt.marks.at(1).at_m, 101.5, 1e-9, "into the thorn");
  VERIFY_NEAR(belt.marks.at(7).at_m, 131.5, 1e-9, "out of it");
  VERIFY_NEAR(belt.blind_m, 30, 1e-9, "the belt");
}

// The last hop may be shorter than the least spacing: what is seen of it counts.
void MarkSpacingTest::blindRest() {
  // 3 m half clear, hops of 5 m; the last one of 2 m is seen, the one of 4 m is not.
  VERIFY_NEAR(spaceMarks(cover({{3, 1000}}), metres(12), half, rule(0.8, 5, 400)).blind_m, 10, 1e-9, "2 m left");
  VERIFY_NEAR(spaceMarks(cover({{3, 1000}}), metres(14), half, rule(0.8, 5, 400)).blind_m, 14, 1e-9, "4 m left");
}

// A ridge across open ground: marks lie before it, on it, and beyond. 5 m high, 100 m to either side of it; from
// 1.6 m above the ground at its foot one sees marks on the slope, up to its crest and not beyond.
void MarkSpacingTest::overTheGround() {
  Profile profile{metres(10), std::vector<double>(61, 0)};
  for (int i = 0; i <= 60; ++i)
    profile.heights[size_t(i)] = 5 * std::max(0.0, 1 - std::abs(i * 10 - 200) / 100.0);
  const SightLine line({{600, 0}}, profile);
  const MarkChain chain = spaceMarks(line, metres(600), half, rule(1, 5, 1000));
  QVERIFY(chain.marks.size() >= 2);
  // From the start: the crest at 200 m, then the far slope falls by 1 in 20 while the line of sight rises.
  QVERIFY(chain.marks[0].at_m >= 200 && chain.marks[0].at_m < 220);
  QVERIFY(chain.marks.back().at_m == 600 && chain.blind_m == 0);
}

void MarkSpacingTest::medians_data() {
  QTest::addColumn<QList<double>>("places");
  QTest::addColumn<double>("median");
  QTest::newRow("no marks") << QList<double>{} << 0.0;
  QTest::newRow("one") << QList<double>{7} << 7.0;
  QTest::newRow("two") << QList<double>{7, 17} << 8.5;
  QTest::newRow("three") << QList<double>{1, 101, 104} << 3.0;
  QTest::newRow("four: 40 10 20 30") << QList<double>{40, 50, 70, 100} << 25.0;
  QTest::newRow("five: 40 40 40 40 2") << QList<double>{40, 80, 120, 160, 162} << 40.0;
}

// Computed by hand.
void MarkSpacingTest::medians() {
  QFETCH(QList<double>, places);
  QFETCH(double, median);
  QCOMPARE(chainOf(std::vector<double>(places.begin(), places.end())).medianHop(), median);
}

// Computed by hand: 3, 4 and 5.
void MarkSpacingTest::squares() {
  QVERIFY(chainOf({}).squaredHops() == 0);
  QVERIFY(chainOf({3}).squaredHops() == 9);
  QVERIFY(chainOf({3, 7, 12}).squaredHops() == 50);
  QVERIFY(chainOf({5, 9, 12}).squaredHops() == 50);
}

// Any cover, any rule.
void MarkSpacingTest::properties() {
  Random random(120);
  for (int i = 0; i < 1000; ++i) {
    std::vector<std::pair<double, double>> sightsAndEnds;
    double end = 0;
    for (int k = int(random.between(1, 8)); k > 0; --k)
      sightsAndEnds.emplace_back(std::exp(random.between(0, 6)), end += random.between(1, 300));
    sightsAndEnds.back().second += 5000;
    const SightLine line = cover(sightsAndEnds);
    const double length = random.between(0.01, end);
    const double least = random.between(0.5, 20);
    const SpacingRule spacing = rule(random.between(0.05, 1), least, least + random.between(0, 300));
    const MarkChain chain = spaceMarks(line, metres(length), half, spacing);
    const std::string where = std::to_string(i);
    VERIFY_AT(!chain.marks.empty() && chain.marks.back().at_m == length, where);
    double before = 0, sum = 0, blind = 0;
    for (const SpacedMark &mark : chain.marks) {
      const double hop = mark.at_m - before;
      const bool last = &mark == &chain.marks.back();
      VERIFY_AT(hop > 0 && hop <= spacing.most.metres() + 2e-6, where);
      VERIFY_AT(last || hop >= least - 1e-9, where);
      // A mark lies no farther than it can be seen, but for the least spacing.
      VERIFY_NEAR(mark.sight_m, line.sightFrom(before, half), 1e-9, where);
      VERIFY_AT(hop <= std::max(least, spacing.sight_share * mark.sight_m) + 2e-6, where);
      if (line.visibility(before, mark.at_m) < 0.5 - 1e-9)
        blind += hop;
      before = mark.at_m;
      sum += hop;
    }
    VERIFY_NEAR(sum, length, 1e-9, where);
    // A hop whose own mark cannot be seen is a blind one; a blind one is no longer than the least spacing.
    VERIFY_AT(blind <= chain.blind_m + 1e-9 && chain.blind_m <= length + 1e-9, where);
  }
}

QTEST_APPLESS_MAIN(MarkSpacingTest)
#include "mark_spacing_test.moc"
