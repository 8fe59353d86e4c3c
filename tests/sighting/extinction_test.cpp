// SPDX-License-Identifier: GPL-2.0-or-later
#include "sighting/extinction.h"

#include "support/check_values.h"
#include "support/near.h"
#include "support/random.h"

#include <algorithm>
#include <limits>
#include <set>
#include <stdexcept>
#include <vector>

using namespace brushline;
using namespace brushline::test;

class ExtinctionTest : public QObject {
  Q_OBJECT
private slots:
  void halfClear();
  void openGround();
  void poissonStand();
  void hidingCover();
  void understorey();
  void rayInARandomStand_data();
  void rayInARandomStand();
  void finiteWidth();
};

namespace {

double k(double stemsPerHa, double diameter) { return standExtinction(stemsPerHa, Length::metres(diameter), 0); }
double clear(double extinction, double probability) { return clearDistance(extinction, probability).metres(); }

// A stem's centre: how far along the line from the eye, and how far to its side.
struct Stem {
  double along, aside;
};

// A Poisson-distributed number: how many steps of an exponential law fit into the mean.
int poisson(double mean, Random &random) {
  int count = 0;
  for (double sum = -std::log(1 - random.between(0, 1)); sum < mean; sum -= std::log(1 - random.between(0, 1)))
    ++count;
  return count;
}

// A stand of stems at random, beside the line from the eye to the end of the distance. Stems behind the eye or beyond
// the target are no part of the law.
std::vector<Stem> standOf(double stemsPerM2, double distance, double halfWidth, Random &random) {
  std::vector<Stem> stems(size_t(poisson(stemsPerM2 * distance * 2 * halfWidth, random)));
  for (Stem &stem : stems)
    stem = {random.between(0, distance), random.between(-halfWidth, halfWidth)};
  return stems;
}

// How far a stem's centre lies from the ray between the eye (0, 0) and a point.
double fromRay(const Stem &stem, double along, double aside) {
  const double share =
      std::clamp((stem.along * along + stem.aside * aside) / (along * along + aside * aside), 0.0, 1.0);
  return std::hypot(stem.along - share * along, stem.aside - share * aside);
}

// Whether no stem touches the ray from the eye to a point.
bool isClear(const std::vector<Stem> &stems, double diameter, double along, double aside) {
  return std::none_of(stems.begin(), stems.end(),
                      [&](const Stem &stem) { return fromRay(stem, along, aside) < diameter / 2; });
}

// Whether no stem touches the triangle between the eye and a target square to the line.
bool seesWhole(const std::vector<Stem> &stems, double diameter, double distance, double width) {
  return std::none_of(stems.begin(), stems.end(), [&](const Stem &stem) {
    const bool inside = std::abs(stem.aside) < width / 2 * stem.along / distance;
    return inside || fromRay(stem, distance, width / 2) < diameter / 2 ||
           fromRay(stem, distance, -width / 2) < diameter / 2;
  });
}

// Whether a strip of a width is free all the way.
bool isFree(const std::vector<Stem> &stems, double diameter, double width) {
  return std::none_of(stems.begin(), stems.end(),
                      [&](const Stem &stem) { return std::abs(stem.aside) < (diameter + width) / 2; });
}

constexpr int stands = 60000; // the share of clear ones then has a standard deviation of 0.002 at the most
} // namespace

// At the half-clear distance half is clear, by definition; ln 2 by its decimals (mathematical constant).
void ExtinctionTest::halfClear() {
  VERIFY_NEAR(extinctionOf(Length::metres(1)), 0.693147180559945, 1e-15, "1 m");
  VERIFY_NEAR(extinctionOf(Length::metres(50)), 0.0138629436111989, 1e-16, "50 m");
  for (double metres : {0.5, 6.0, 55.0, 300.0, 10000.0}) {
    VERIFY_NEAR(clear(extinctionOf(Length::metres(metres)), 0.5), metres, 1e-12 * metres, std::to_string(metres));
    // Computed by hand: a quarter is clear at twice the distance, 1 in 1024 at ten times.
    VERIFY_NEAR(clear(extinctionOf(Length::metres(metres)), 0.25), 2 * metres, 1e-12 * metres, std::to_string(metres));
    VERIFY_NEAR(clear(extinctionOf(Length::metres(metres)), 1 / 1024.0), 10 * metres, 1e-11 * metres,
                std::to_string(metres));
  }
}

void ExtinctionTest::openGround() {
  for (double probability : {0.01, 0.5, 0.99})
    QVERIFY(clear(0, probability) == std::numeric_limits<double>::infinity());
  QVERIFY(std::isfinite(clear(1e-12, 0.5)));
}

void ExtinctionTest::poissonStand() {
  const CheckValues values("sighting/data/poisson_stand.csv");
  for (const CheckRow &row : values.rows()) {
    const double extinction = k(row.number("stems_per_ha"), row.number("diameter_m"));
    const std::string where = "line " + std::to_string(row.line());
    VERIFY_CHECK(values.check(row, "mean_m", 1 / extinction));
    VERIFY_CHECK(values.check(row, "median_m", clear(extinction, 0.5)));
    VERIFY_CHECK(values.check(row, "ten_percent_m", clear(extinction, 0.1)));
    // 50 m is the distance at which the share p_50m is clear; its digits are good to 5e-6 of a share of 0.4 and more.
    VERIFY_CHECK(values.check(row, "p_50m", std::exp(-extinction * 50)));
    VERIFY_NEAR(clear(extinction, row.number("p_50m")), 50, values.tolerance("p_50m") / 0.4 / extinction, where);
  }
}

void ExtinctionTest::hidingCover() {
  const CheckValues values("sighting/data/hiding_cover.csv");
  const double ln2OverLn10 = 0.301029995663981; // mathematical constant
  for (const CheckRow &row : values.rows()) {
    const std::string where = "line " + std::to_string(row.line());
    const double seen = 1 - row.number("hidden_fraction"), distance = row.number("distance_m");
    // The share that is seen falls to a tenth at that distance, so to a half at lg 2 of it.
    QVERIFY(std::abs(seen - 0.1) < 1e-12);
    const double extinction = extinctionOf(Length::metres(distance * ln2OverLn10));
    VERIFY_CHECK(values.check(row, "k_per_m", extinction));
    VERIFY_NEAR(clear(extinction, seen), distance, 1e-9, where);
  }
}

// What grows between the stems adds its own. Computed by hand: 1000 stems of 0.15 m are 0.015 1/m.
void ExtinctionTest::understorey() {
  VERIFY_NEAR(standExtinction(1000, Length::metres(0.15), 0.02), 0.035, 1e-15, "both");
  VERIFY_NEAR(standExtinction(0, Length::metres(0.15), 0.02), 0.02, 0, "no stems");
  VERIFY_NEAR(standExtinction(1000, Length(), 0), 0, 0, "stems of no width");
}

void ExtinctionTest::rayInARandomStand_data() {
  QTest::addColumn<double>("stemsPerHa");
  QTest::addColumn<double>("diameter");
  QTest::addColumn<double>("distance");
  QTest::newRow("many thin stems") << 1000.0 << 0.15 << 50.0;
  QTest::newRow("to the half-clear distance") << 500.0 << 0.25 << 55.452; // poisson_stand.csv
  QTest::newRow("few thick stems") << 300.0 << 0.35 << 120.0;
  QTest::newRow("a thicket") << 10000.0 << 0.05 << 20.0;
}

// The law itself, by counting: the share of random stands in which no stem touches the ray.
void ExtinctionTest::rayInARandomStand() {
  QFETCH(double, stemsPerHa);
  QFETCH(double, diameter);
  QFETCH(double, distance);
  Random random(100);
  int clearRays = 0;
  for (int i = 0; i < stands; ++i)
    clearRays += isClear(standOf(stemsPerHa / 10000, distance, 1, random), diameter, distance, 0);
  const double expected = std::exp(-k(stemsPerHa, diameter) * distance);
  QVERIFY(expected > 0.01 && expected < 0.6); // neither answer is a matter of course
  VERIFY_NEAR(clearRays / double(stands), expected, 0.01, "share of clear rays");
}

// What takes the place of the diameter when it is not a point that is to be seen: see standExtinction().
void ExtinctionTest::finiteWidth() {
  const CheckValues values("sighting/data/finite_width.csv");
  std::set<std::string> questions;
  for (const CheckRow &row : values.rows()) {
    const double density = row.number("stems_per_m2"), diameter = row.number("diameter_m"),
                 width = row.number("width_m"), distance = row.number("distance_m");
    const std::string question = row.text("question"), where = "line " + std::to_string(row.line());
    double wide = 0;
    if (question == "strip")
      wide = width;
    else if (question == "whole")
      wide = width / 2;
    else if (question != "fraction")
      throw std::runtime_error("no such question: " + question);
    questions.insert(question);
    const double expected = std::exp(-k(density * 10000, diameter + wide) * distance);
    VERIFY_CHECK(values.check(row, "expected", expected));

    Random random(101 + uint64_t(row.line()));
    double seen = 0;
    for (int i = 0; i < stands; ++i) {
      const auto stems = standOf(density, distance, 1, random);
      if (question == "strip")
        seen += isFree(stems, diameter, width);
      else if (question == "whole")
        seen += seesWhole(stems, diameter, distance, width);
      else // any point of the target will do for its average
        seen += isClear(stems, diameter, distance, random.between(-width / 2, width / 2));
    }
    VERIFY_NEAR(seen / stands, expected, values.tolerance("simulated"), where);
    if (row.maybe("simulated")) // each has its own chance
      VERIFY_CHECK(values.check(row, "simulated", seen / stands, 2 * values.tolerance("simulated")));
  }
  QCOMPARE(questions.size(), size_t(3));
}

QTEST_APPLESS_MAIN(ExtinctionTest)
#include "extinction_test.moc"
