// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/effort_grid.h"
#include "support/near.h"
#include "support/random.h"
#include "walking/walking_time.h"

#include <cmath>

using namespace brushline;

namespace {
const Walker walker;
EffortGrid even(int64_t columns, int64_t rows, double cell = 5) {
  EffortGrid grid(columns, rows, Length::metres(cell), true);
  const int open = grid.addKind({"open", 1.0});
  for (int64_t row = 0; row < rows; ++row)
    for (int64_t column = 0; column < columns; ++column)
      grid.setKind(column, row, open);
  return grid;
}
} // namespace

class EffortGridTest : public QObject {
  Q_OBJECT
private slots:
  // Source: the formula itself, walkingTime().
  void paces() {
    for (const TimeRule rule : {TimeRule::OffTrailSpeed, TimeRule::HikingOffPath, TimeRule::DistanceAndClimb}) {
      Walker each;
      each.time_rule = rule;
      each.speed_factor = 0.7;
      const PaceTable pace(each);
      for (double slope = -0.9; slope <= 0.9; slope += 0.0137) {
        const double exact = walkingTime(Length::metres(1), Length::metres(slope), each).seconds();
        // The rule of distance and climb jumps at 5 and 12 degrees: there within one step of the table.
        const bool jumps = rule == TimeRule::DistanceAndClimb && (std::abs(-slope - std::tan(5 * M_PI / 180)) < 0.002 ||
                                                                  std::abs(-slope - std::tan(12 * M_PI / 180)) < 0.002);
        if (!jumps)
          VERIFY_NEAR(double(pace.at(float(slope))), exact, exact * 5e-4, std::to_string(slope));
      }
    }
  }

  void evenLegs() {
    const EffortGrid grid = even(40, 30);
    const PaceTable pace(walker);
    test::Random random(1);
    for (int i = 0; i < 200; ++i) {
      const CellPosition a{random.between(0, 40), random.between(0, 30)},
          b{random.between(0, 40), random.between(0, 30)};
      const double metres = 5 * std::hypot(a.column - b.column, a.row - b.row);
      VERIFY_NEAR(grid.legSeconds(a, b, pace), metres * double(pace.level()), 1e-6 * metres, std::to_string(i));
    }
  }

  // Half of each cell's way at its own speed: by hand.
  void throughTwoCovers() {
    EffortGrid grid = even(10, 10);
    const int slow = grid.addKind({"slow", 0.25});
    for (int row = 0; row < 10; ++row)
      for (int column = 5; column < 10; ++column)
        grid.setKind(column, row, slow);
    const PaceTable pace(walker);
    VERIFY_NEAR(grid.legSeconds({1, 1}, {9, 4}, pace), 5 * std::hypot(8, 3) * double(pace.level()) * (0.5 + 0.5 * 4),
                1e-4, "");
    VERIFY_NEAR(grid.legSeconds({9, 4}, {1, 1}, pace), grid.legSeconds({1, 1}, {9, 4}, pace), 1e-9, "");
  }

  // Up and down a slope differ as the formula says.
  void upAndDown() {
    EffortGrid grid(20, 20, Length::metres(5), false);
    const int open = grid.addKind({"open", 1.0});
    for (int row = 0; row < 20; ++row)
      for (int column = 0; column < 20; ++column) {
        grid.setKind(column, row, open);
        grid.setHeight(column, row, float(0.15 * 5 * column));
      }
    const PaceTable pace(walker);
    const double up = grid.legSeconds({2.5, 7.5}, {12.5, 7.5}, pace),
                 down = grid.legSeconds({12.5, 7.5}, {2.5, 7.5}, pace);
    VERIFY_NEAR(up, walkingTime(Length::metres(50), Length::metres(7.5), walker).seconds(), up * 1e-4, "up");
    VERIFY_NEAR(down, walkingTime(Length::metres(50), Length::metres(-7.5), walker).seconds(), down * 1e-4, "down");
    QVERIFY(up > 1.05 * down);
  }

  void steepGroundAndGroundWithoutHeight() {
    EffortGrid grid(9, 3, Length::metres(1), false);
    const int open = grid.addKind({"open", 1.0});
    for (int row = 0; row < 3; ++row)
      for (int column = 0; column < 9; ++column) {
        grid.setKind(column, row, open);
        grid.setHeight(column, row, column == 8 ? NAN : column < 4 ? 0 : float(column - 4));
      }
    for (int row = 0; row < 3; ++row)
      grid.closeSteep(row, 0.6);
    QCOMPARE(grid.kindAt(2, 1), open);
    QCOMPARE(grid.kindAt(4, 1), open); // half as steep: one side is level
    QCOMPARE(grid.kindAt(5, 1), int(EffortGrid::steep));
    QCOMPARE(grid.kindAt(7, 1), int(EffortGrid::steep)); // one-sided
    QCOMPARE(grid.kindAt(8, 1), int(EffortGrid::noHeight));
    const PaceTable pace(walker);
    QVERIFY(std::isinf(grid.legSeconds({0.5, 0.5}, {6.5, 2.5}, pace)));
  }

  // No leg crosses a barrier line, however thin; exactly those that do not (and keep out of closed cells) are open.
  void thinBarriers() {
    test::Random random(7);
    const PaceTable pace(walker);
    int crossing = 0, open = 0;
    for (int i = 0; i < 300; ++i) {
      EffortGrid grid = even(30, 30);
      const CellPosition p{random.between(0, 30), random.between(0, 30)},
          q{random.between(0, 30), random.between(0, 30)};
      grid.addBarrierLine({p, q});
      grid.finishBarriers();
      for (int k = 0; k < 20; ++k) {
        const CellPosition a{random.between(0, 30), random.between(0, 30)},
            b{random.between(0, 30), random.between(0, 30)};
        const auto side = [](CellPosition u, CellPosition v, CellPosition w) {
          return (v.column - u.column) * (w.row - u.row) - (v.row - u.row) * (w.column - u.column) > 0;
        };
        const bool crosses = side(a, b, p) != side(a, b, q) && side(p, q, a) != side(p, q, b);
        const bool passes = std::isfinite(grid.legSeconds(a, b, pace));
        QVERIFY(!(crosses && passes));
        QCOMPARE(grid.crossesBarrier(a, b), crosses);
        crossing += crosses;
        open += passes;
      }
    }
    QVERIFY(crossing > 500 && open > 500);
  }

  // A leg that only begins or ends on a barrier along the cells' border touches it, from either side.
  void barriersOnBorders() {
    const PaceTable pace{Walker()};
    EffortGrid grid(4, 4, Length::metres(5), true);
    const int open = grid.addKind({"open", 1.0});
    for (int row = 0; row < 4; ++row)
      for (int column = 0; column < 4; ++column)
        grid.setKind(column, row, open);
    grid.addBarrierLine({{0, 2}, {4, 2}});
    grid.finishBarriers();
    for (const double row : {1.2, 2.8}) {
      QVERIFY(std::isinf(grid.legSeconds({1.2, 2}, {1.4, row}, pace)));
      QVERIFY(std::isinf(grid.legSeconds({1.4, row}, {1.2, 2}, pace)));
      QVERIFY(grid.crossesBarrier({1.2, 2}, {1.4, row}));
    }
  }
  void diagonalGapsAreClosed() {
    EffortGrid grid = even(10, 10);
    for (int i = 0; i < 10; ++i)
      grid.setKind(i, 9 - i, EffortGrid::barrier);
    const PaceTable pace(walker);
    QVERIFY(std::isinf(grid.legSeconds({1, 1}, {9, 9}, pace))); // through the corner between two of them
    QVERIFY(std::isinf(grid.legSeconds({0.5, 0.5}, {8.5, 9.5}, pace)));
    QVERIFY(std::isfinite(grid.legSeconds({0.5, 0.5}, {4.2, 4.2}, pace)));
  }

  // A fence over steep ground, or over ground without height, does not make it ground that only a fence closes.
  void barriersOverSteepGround() {
    EffortGrid grid = even(3, 3);
    grid.setKind(0, 1, EffortGrid::steep);
    grid.setKind(1, 1, EffortGrid::noHeight);
    grid.addBarrierLine({{0, 1.5}, {3, 1.5}});
    grid.closeInside({{{0, 1}, {3, 1}, {3, 2}, {0, 2}}});
    QCOMPARE(grid.kindAt(0, 1), int(EffortGrid::steep));
    QCOMPARE(grid.kindAt(1, 1), int(EffortGrid::noHeight));
    QCOMPARE(grid.kindAt(2, 1), int(EffortGrid::barrier));
  }

  // Beside a fence, in its cell: legs are open on the one side of it, and closed across it.
  void openForLegsAlone() {
    EffortGrid grid = even(10, 10);
    const int open = grid.kindAt(0, 0);
    grid.addBarrierLine({{0, 4.5}, {10, 4.5}});
    grid.finishBarriers();
    const PaceTable pace(walker);
    QVERIFY(std::isinf(grid.legSeconds({5.5, 4.2}, {5.5, 2.5}, pace)));
    grid.openForLegs(5, 4, open);
    VERIFY_NEAR(grid.legSeconds({5.5, 4.2}, {5.5, 2.5}, pace), 5 * 1.7 * double(pace.level()), 1e-4, "this side");
    QVERIFY(std::isinf(grid.legSeconds({5.5, 4.2}, {5.5, 4.8}, pace)));
    QVERIFY(std::isinf(grid.legSeconds({5.5, 4.2}, {5.5, 6.5}, pace)));
    QVERIFY(!grid.isOpen(5, 4)); // for steps
  }

  void areas() {
    EffortGrid grid = even(10, 10);
    const std::vector<CellPosition> outer{{1, 1}, {9, 1}, {9, 9}, {1, 9}}, hole{{3, 3}, {7, 3}, {7, 7}, {3, 7}};
    grid.closeInside({outer, hole});
    QVERIFY(!grid.isOpen(1, 1));
    QVERIFY(grid.isOpen(0, 0));
    QVERIFY(grid.isOpen(4, 4));
    QVERIFY(!grid.isOpen(7, 7));
  }

  void badInput() {
    QVERIFY_EXCEPTION_THROWN(EffortGrid(0, 5, Length::metres(1), true), std::invalid_argument);
    QVERIFY_EXCEPTION_THROWN(EffortGrid(5, 5, Length(), true), std::invalid_argument);
    QVERIFY_EXCEPTION_THROWN(EffortGrid(100000, 100000, Length::metres(1), true), std::invalid_argument);
    EffortGrid grid = even(5, 5);
    const PaceTable pace(walker);
    QVERIFY(std::isinf(grid.legSeconds({-1, 2}, {3, 3}, pace)));
    QVERIFY(std::isinf(grid.legSeconds({NAN, 2}, {3, 3}, pace)));
    QCOMPARE(grid.legSeconds({2, 2}, {2, 2}, pace), 0.0);
    QCOMPARE(grid.addKind({"open", 1.0}), grid.addKind({"open", 1.0}));
    for (int i = 5; i < EffortGrid::mostKinds; ++i)
      grid.addKind({std::to_string(i), 1.0});
    QVERIFY_EXCEPTION_THROWN(grid.addKind({"one more", 1.0}), std::length_error);
  }
};

QTEST_GUILESS_MAIN(EffortGridTest)
#include "effort_grid_test.moc"
