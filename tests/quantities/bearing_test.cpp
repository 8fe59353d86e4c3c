// SPDX-License-Identifier: GPL-2.0-or-later
#include "quantities/bearing.h"

#include "support/check_values.h"
#include "support/near.h"
#include "support/random.h"

#include <stdexcept>
#include <type_traits>

using namespace brushline;
using namespace brushline::test;

// Bearings of different norths do not mix.
static_assert(!std::is_convertible_v<TrueBearing, MagneticBearing> &&
              !std::is_constructible_v<MagneticBearing, TrueBearing>);
static_assert(!std::is_convertible_v<GridBearing, TrueBearing> && !std::is_constructible_v<TrueBearing, GridBearing>);
static_assert(!std::is_assignable_v<GridBearing &, MagneticBearing>);
static_assert(!std::is_convertible_v<double, TrueBearing> && !std::is_convertible_v<Angle, TrueBearing>);
static_assert(!std::is_convertible_v<Convergence, Declination> && !std::is_convertible_v<Declination, Convergence>);

template <class B, class By, class = void> struct CanToTrue : std::false_type {};
template <class B, class By>
struct CanToTrue<B, By, std::void_t<decltype(toTrue(std::declval<B>(), std::declval<By>()))>> : std::true_type {};
static_assert(CanToTrue<MagneticBearing, Declination>() && CanToTrue<GridBearing, Convergence>());
static_assert(!CanToTrue<MagneticBearing, Convergence>() && !CanToTrue<GridBearing, Declination>());
static_assert(!CanToTrue<TrueBearing, Declination>());

class BearingTest : public QObject {
  Q_OBJECT
private slots:
  void interval();
  void reversed();
  void workedExamples();
  void wrap();
  void thereAndBack();
};

namespace {
TrueBearing toTrueFrom(const std::string &north, double degrees, Declination declination, Convergence convergence) {
  const Angle angle = Angle::degrees(degrees);
  if (north == "true")
    return TrueBearing(angle);
  if (north == "magnetic")
    return toTrue(MagneticBearing(angle), declination);
  if (north == "grid")
    return toTrue(GridBearing(angle), convergence);
  throw std::runtime_error("no such north: " + north);
}

double wanted(const std::string &north, TrueBearing bearing, Declination declination, Convergence convergence) {
  if (north == "true")
    return bearing.degrees();
  if (north == "magnetic")
    return toMagnetic(bearing, declination).degrees();
  if (north == "grid")
    return toGrid(bearing, convergence).degrees();
  throw std::runtime_error("no such north: " + north);
}
} // namespace

// By definition: 0 <= bearing < 360.
void BearingTest::interval() {
  QVERIFY(TrueBearing().degrees() == 0);
  for (double degrees : {360.0, 720.0, -360.0, -1e-20, -0.0, 0.0}) {
    const double full = TrueBearing(Angle::degrees(degrees)).degrees();
    QVERIFY(full == 0 && !std::signbit(full));
  }
  QVERIFY(MagneticBearing(Angle::degrees(-1)).degrees() == 359);
  QVERIFY(GridBearing(Angle::degrees(361)).angle().degrees() == 1);
}

// Computed by hand.
void BearingTest::reversed() {
  QVERIFY(TrueBearing(Angle::degrees(0)).reversed().degrees() == 180);
  QVERIFY(TrueBearing(Angle::degrees(180)).reversed().degrees() == 0);
  QVERIFY(MagneticBearing(Angle::degrees(270)).reversed().degrees() == 90);
  QVERIFY(GridBearing(Angle::degrees(359.5)).reversed().degrees() == 179.5);
}

// The examples know only the angle from grid to magnetic north: the split into declination and convergence is ours,
// and must not matter.
void BearingTest::workedExamples() {
  const CheckValues values("quantities/data/declination_examples.csv");
  for (const CheckRow &row : values.rows())
    for (double convergence : {0.0, 2.5, -1.25, 170.0}) {
      const Declination d{Angle::degrees(row.number("gm_angle_deg") + convergence)};
      const Convergence c{Angle::degrees(convergence)};
      const TrueBearing bearing = toTrueFrom(row.text("given_north"), row.number("given_deg"), d, c);
      const double result = wanted(row.text("wanted_north"), bearing, d, c);
      VERIFY_CHECK(values.checkTurn(row, "expected_deg", result));
    }
}

void BearingTest::wrap() {
  const CheckValues values("quantities/data/declination_wrap.csv");
  for (const CheckRow &row : values.rows()) {
    const Declination d{Angle::degrees(row.number("declination_deg"))};
    const Convergence c{Angle::degrees(row.number("convergence_deg"))};
    const TrueBearing bearing = toTrueFrom(row.text("given_north"), row.number("given_deg"), d, c);
    const double result = wanted(row.text("wanted_north"), bearing, d, c);
    const std::string where = "line " + std::to_string(row.line());
    VERIFY_CHECK(values.checkTurn(row, "expected_deg", result));
    VERIFY_AT(result >= 0 && result < 360, where);
  }
}

void BearingTest::thereAndBack() {
  Random random(3);
  for (int i = 0; i < 10000; ++i) {
    const TrueBearing bearing(Angle::degrees(random.between(0, 360)));
    const Declination d{Angle::degrees(random.between(-180, 180))};
    const Convergence c{Angle::degrees(random.between(-180, 180))};
    const std::string where = std::to_string(bearing.degrees());
    const MagneticBearing magnetic = toMagnetic(bearing, d);
    const GridBearing grid = toGrid(bearing, c);
    VERIFY_AT(magnetic.degrees() >= 0 && magnetic.degrees() < 360 && grid.degrees() >= 0 && grid.degrees() < 360,
              where);
    VERIFY_NEAR(turnBetween(toTrue(magnetic, d).degrees(), bearing.degrees()), 0, 1e-12, where);
    VERIFY_NEAR(turnBetween(toTrue(grid, c).degrees(), bearing.degrees()), 0, 1e-12, where);
  }
}

QTEST_APPLESS_MAIN(BearingTest)
#include "bearing_test.moc"
