// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/aim_spread.h"

#include "support/check.h"
#include "support/near.h"

#include <stdexcept>

using namespace brushline;
using namespace brushline::test;

namespace {

LegErrors errorsOf(double sighting, double setting, double declination) {
  return {Angle::degrees(sighting), Angle::degrees(setting), Angle::degrees(declination), 0.05};
}

std::vector<double> equalHops(double length, int hops) {
  std::vector<double> marks;
  for (int i = 1; i <= hops; ++i)
    marks.push_back(length * i / hops);
  return marks;
}

} // namespace

class AimSpreadTest : public QObject {
  Q_OBJECT
private slots:
  // Standard propagation of errors: n equal hops of a leg L leave L sigma / sqrt(n); 1000 m, 3 degrees, 20 hops.
  void equalHopsByHand() {
    VERIFY_NEAR(AimSpread(equalHops(1000, 20), errorsOf(3, 0, 0)).at(1000) * 1000, 11.708, 0.0005, "20 hops");
  }

  // A common error of 3 degrees moves the end of 1000 m by 1000 m * sin 3 deg = 52.336 m (trigonometry). Drift counts
  // by small angles, 52.360 m: the difference is allowed for, and no more.
  void commonErrorByHand() {
    const double moved = AimSpread(equalHops(1000, 20), errorsOf(0, 3, 0)).at(1000) * 1000;
    VERIFY_NEAR(moved, 52.336, 0.025, "common error");
    VERIFY_NEAR(AimSpread(equalHops(1000, 20), errorsOf(0, 0, 3)).at(1000) * 1000, moved, 1e-9, "declination");
  }

  // The drift of an annotated leg is the same number, at the end of the leg and wherever it might have ended.
  void sameAsDrift() {
    const LegErrors errors = errorsOf(3, 0.577, 0.4);
    const std::vector<double> marks{40, 95, 100, 260, 400};
    const AimSpread spread(marks, errors);
    for (const double end : {12.0, 40.0, 70.0, 99.0, 130.0, 400.0}) {
      double squared = 0, before = 0;
      for (const double mark : marks) {
        const double to = std::min(mark, end);
        if (to > before)
          squared += (to - before) * (to - before);
        before = std::max(before, to);
      }
      RouteDrift drift;
      const DriftEllipse ellipse = drift.walk(TrueBearing(Angle::degrees(77)), Length::metres(end), squared, errors);
      VERIFY_NEAR(spread.at(end) * end, ellipse.across.metres(), 1e-9, std::to_string(end));
    }
  }

  void beyondTheEndByLikeHops() {
    const AimSpread spread(equalHops(500, 10), errorsOf(3, 0, 0));
    const AimSpread twice(equalHops(1000, 20), errorsOf(3, 0, 0));
    VERIFY_NEAR(spread.at(1000), twice.at(1000), 1e-12, "twice as far");
    VERIFY_NEAR(spread.most(), Angle::degrees(3).radians(), 1e-12, "first hop");
  }

  void normalTable() {
    const std::pair<double, double> table[] = {{1.6449, 0.95}, {1.9600, 0.975}, {-2.3263, 0.01}};
    for (const auto &[sigmas, share] : table)
      VERIFY_CHECK(checkOf("share below", std::to_string(sigmas) + " sigma", shareBelow(sigmas), share, 1e-5, "1",
                           "any table of the standard normal distribution; from memory"));
    QCOMPARE(shareBelow(0), 0.5);
  }

  void noHops() {
    QVERIFY_EXCEPTION_THROWN(AimSpread({}, errorsOf(3, 0, 0)), std::invalid_argument);
    QVERIFY_EXCEPTION_THROWN(AimSpread({0}, errorsOf(3, 0, 0)), std::invalid_argument);
  }
};

QTEST_GUILESS_MAIN(AimSpreadTest)
#include "aim_spread_test.moc"
