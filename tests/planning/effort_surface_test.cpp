// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/effort_surface.h"
#include "support/near.h"
#include "support/random.h"
#include "support/work.h"

#include <algorithm>
#include <cmath>
#include <ctime>

using namespace brushline;

namespace {
const Walker walker;
const Progress progress;

EffortGrid plane(int side, double slopeEast, double slopeSouth) {
  EffortGrid grid(side, side, Length::metres(5), slopeEast == 0 && slopeSouth == 0);
  const int open = grid.addKind({"open", 1.0});
  for (int row = 0; row < side; ++row)
    for (int column = 0; column < side; ++column) {
      grid.setKind(column, row, open);
      if (!grid.level())
        grid.setHeight(column, row, float(5 * (slopeEast * column + slopeSouth * row)));
    }
  return grid;
}
} // namespace

class EffortSurfaceTest : public QObject {
  Q_OBJECT
private slots:
  void uniformPlaneInEveryDirection_data() {
    QTest::addColumn<double>("slope");
    QTest::newRow("level") << 0.0;
    QTest::newRow("5 percent") << 0.05;
    QTest::newRow("10 percent") << 0.10;
  }
  // The straight line is the quickest on an even plane (as long as nobody gains by zigzags: up to 10 percent).
  void uniformPlaneInEveryDirection() {
    QFETCH(double, slope);
    constexpr int side = 301;
    const EffortGrid grid = plane(side, slope * 0.8, slope * 0.6);
    const PaceTable pace(walker);
    const CellPosition middle{150.3, 150.8}; // not in a cell's middle
    EffortSurface surface(grid, pace);
    surface.search({middle}, nullptr, progress);
    for (int row = 0; row < side; ++row)
      for (int column = 0; column < side; ++column) {
        const double straight = grid.legSeconds(middle, {column + 0.5, row + 0.5}, pace);
        if (straight > 1)
          VERIFY_NEAR(double(surface.secondsAt(column, row)) / straight, 1, 0.005,
                      std::to_string(column) + " " + std::to_string(row));
      }
  }

  // Snell's law: sin(i) / sin(r) is the ratio of the speeds. The quickest way's time found by trying all places on the
  // border; computed here.
  void refraction() {
    constexpr int side = 400;
    EffortGrid grid(side, side, Length::metres(1), true);
    const int fast = grid.addKind({"fast", 1.0}), slow = grid.addKind({"slow", 0.4});
    for (int row = 0; row < side; ++row)
      for (int column = 0; column < side; ++column)
        grid.setKind(column, row, column < 200 ? fast : slow);
    const PaceTable pace(walker);
    const CellPosition from{20.5, 30.5};
    EffortSurface surface(grid, pace);
    surface.search({from}, nullptr, progress);
    for (const CellPosition to : {CellPosition{390.5, 370.5}, {250.5, 370.5}, {390.5, 200.5}, {300.5, 40.5}}) {
      double best = HUGE_VAL, at = 0;
      for (double y = 0; y <= side; y += 0.01) {
        const double t = std::hypot(200 - from.column, y - from.row) + std::hypot(to.column - 200, to.row - y) / 0.4;
        if (t < best) {
          best = t;
          at = y;
        }
      }
      VERIFY_NEAR(double(surface.secondsAt(int64_t(to.column), int64_t(to.row))) / (best * double(pace.level())), 1,
                  0.01, "time");
      // The way found crosses the border where it should.
      const auto way = surface.wayTo(to);
      QVERIFY(way.size() > 10);
      for (size_t i = 1; i < way.size(); ++i)
        if (way[i - 1].column < 200 && way[i].column >= 200) {
          const double sinIn = (at - from.row) / std::hypot(200 - from.column, at - from.row);
          const double sinFound = (way[i].row - from.row) / std::hypot(200 - from.column, way[i].row - from.row);
          VERIFY_NEAR(sinFound, sinIn, 0.03, "direction"); // the way is there to draw a corridor round
        }
    }
  }

  void upAndDownDiffer() {
    const EffortGrid grid = plane(101, 0.2, 0);
    const PaceTable pace(walker);
    EffortSurface surface(grid, pace);
    surface.search({{50.5, 50.5}}, nullptr, progress);
    const double up = surface.secondsAt(90, 50), down = surface.secondsAt(10, 50);
    VERIFY_NEAR(up, 200 * double(pace.at(0.2f)), up * 0.005, "up");
    VERIFY_NEAR(down, 200 * double(pace.at(-0.2f)), down * 0.005, "down");
    QVERIFY(up > 1.05 * down);
  }

  void barriersAndGaps() {
    EffortGrid grid = plane(50, 0, 0);
    grid.addBarrierLine({{0, 24.3}, {50, 25.9}}); // thin and slanting, from edge to edge
    grid.finishBarriers();
    const PaceTable pace(walker);
    EffortSurface surface(grid, pace);
    surface.search({{10.5, 10.5}}, nullptr, progress);
    for (int column = 0; column < 50; ++column) {
      QVERIFY(std::isfinite(surface.secondsAt(column, 5)));
      QVERIFY(std::isinf(surface.secondsAt(column, 40)));
    }
    QVERIFY(surface.wayTo({10.5, 40.5}).empty());
    const auto enclosure = surface.enclosure({10.5, 10.5});
    QVERIFY(enclosure.cells > 1000 && enclosure.cells < 1300);
    QVERIFY(enclosure.borders.at(EffortGrid::barrier) >= 50);
    VERIFY_NEAR(enclosure.nearest_cells.at(EffortGrid::barrier), 14.2, 0.8, "nearest");
    EffortGrid diagonal = plane(20, 0, 0);
    for (int i = 0; i < 20; ++i)
      diagonal.setKind(i, 19 - i, EffortGrid::barrier);
    EffortSurface other(diagonal, pace);
    other.search({{2.5, 2.5}}, nullptr, progress);
    QVERIFY(std::isinf(other.secondsAt(17, 17)));
  }

  // A start in a cell that a fence crosses: nothing beyond the fence is reached where it runs from edge to edge, and
  // the other side of that very cell round the fence's end where it has one.
  void startsBesideAFence() {
    const PaceTable pace(walker);
    for (const double end : {30.0, 22.2}) {
      EffortGrid grid = plane(30, 0, 0);
      const int open = grid.kindAt(0, 0);
      grid.addBarrierLine({{0, 10.5}, {end, 10.5}});
      grid.finishBarriers();
      grid.openForLegs(15, 10, open);
      const CellPosition source{15.5, 10.2}, across{15.5, 10.8}, beside{15.1, 10.1};
      EffortSurface surface(grid, pace);
      surface.search({source}, nullptr, progress);
      VERIFY_NEAR(double(surface.secondsAt(15, 2)), 5 * 7.7 * double(pace.level()), 1e-3, "straight");
      VERIFY_NEAR(surface.secondsTo(beside), 5 * std::hypot(0.4, 0.1) * double(pace.level()), 1e-3, "the same cell");
      QCOMPARE(surface.wayTo(beside).size(), size_t(2));
      if (end == 30.0) {
        for (int column = 0; column < 30; ++column)
          QVERIFY(std::isinf(surface.secondsAt(column, 11)));
        QVERIFY(std::isinf(surface.secondsTo(across)));
        QVERIFY(surface.wayTo(across).empty());
        QCOMPARE(surface.enclosure(source).borders.count(EffortGrid::barrier), size_t(1));
        continue;
      }
      // Round the end: twice the way to it, and a cell or so that is closed there.
      const double least = 5 * 2 * (22.2 - 15.5) * double(pace.level());
      QVERIFY(surface.secondsTo(across) > least && surface.secondsTo(across) < 1.3 * least);
      const auto way = surface.wayTo(across);
      QVERIFY(way.size() > 5);
      for (size_t i = 1; i < way.size(); ++i)
        QVERIFY(std::isfinite(grid.legSeconds(way[i - 1], way[i], pace)));
      // The search may end soon after, though no step leads into that cell.
      const EffortSurface::Goal goal{across, Duration::seconds(1)};
      surface.search({source}, &goal, progress);
      VERIFY_NEAR(surface.secondsTo(across), 5 * 15 * double(pace.level()), 5 * 3 * double(pace.level()), "goal");
      QVERIFY(std::isinf(surface.secondsAt(0, 29)));
    }
  }
  // What the grid does not know is asked of the lines out of such a cell alone.
  void linesOutOfAClosedCellAreAskedFor() {
    EffortGrid grid = plane(30, 0, 0);
    const int open = grid.kindAt(0, 0);
    grid.setKind(15, 10, grid.addKind({"water", std::nullopt}));
    grid.openForLegs(15, 10, open);
    const PaceTable pace(walker);
    EffortSurface surface(grid, pace, [](CellPosition, CellPosition to) { return to.row < 10; });
    surface.search({{15.5, 10.2}}, nullptr, progress);
    VERIFY_NEAR(double(surface.secondsAt(15, 2)), 5 * 7.7 * double(pace.level()), 1e-3, "straight");
    QVERIFY(double(surface.secondsAt(15, 12)) > 5 * 4 * double(pace.level())); // round the cell, not through it
  }

  void waysAreOpenAndTakeTheTimeTold() {
    test::Random random(3);
    for (int map = 0; map < 20; ++map) {
      EffortGrid grid(80, 80, Length::metres(5), true);
      const int kinds[] = {grid.addKind({"a", 1.0}), grid.addKind({"b", 0.4}), grid.addKind({"c", 1.4}),
                           int(EffortGrid::barrier)};
      int patches[100];
      for (int &patch : patches)
        patch = int(random.between(0, 3.6));
      patches[0] = patches[99] = 0;
      for (int row = 0; row < 80; ++row)
        for (int column = 0; column < 80; ++column)
          grid.setKind(column, row, kinds[patches[(row / 8) * 10 + column / 8]]);
      const PaceTable pace(walker);
      EffortSurface surface(grid, pace);
      surface.search({{1.3, 1.3}}, nullptr, progress);
      const CellPosition end{78.6, 78.2};
      const auto way = surface.wayTo(end);
      if (way.empty()) {
        QVERIFY(std::isinf(surface.secondsTo(end)));
        continue;
      }
      double seconds = 0;
      for (size_t i = 1; i < way.size(); ++i)
        seconds += grid.legSeconds(way[i - 1], way[i], pace);
      QVERIFY(std::isfinite(seconds));
      // A way down the surface is nearly the quickest.
      VERIFY_NEAR(seconds / surface.secondsTo(end), 1, 0.06, std::to_string(map));
    }
  }

  void sourcesThatLeadNowhere() {
    EffortGrid grid = plane(10, 0, 0);
    grid.setKind(5, 5, EffortGrid::barrier);
    const PaceTable pace(walker);
    EffortSurface surface(grid, pace);
    for (const std::vector<CellPosition> &sources :
         {std::vector<CellPosition>{}, {{5.5, 5.5}}, {{-1, 3}}, {{NAN, 3}}}) {
      surface.search(sources, nullptr, progress);
      QVERIFY(std::isinf(surface.secondsAt(0, 0)));
      QVERIFY(surface.wayTo({1, 1}).empty());
      QCOMPARE(surface.enclosure({1, 1}).cells, size_t(0));
    }
    surface.search({{0.5, 0.5}, {9.5, 9.5}}, nullptr, progress);
    VERIFY_NEAR(double(surface.secondsAt(8, 9)), 5 * double(pace.level()), 1e-3, "the sooner of two");
  }

  void cancelEndsSoon() {
    // It asks often: never more than 0.05 s of the processor between two questions. Of three tries the best counts.
    struct Stop : Progress {
      mutable std::clock_t last = std::clock(), longest = 0;
      mutable int asked = 0;
      bool cancelled() const override {
        longest = std::max(longest, std::clock() - last);
        last = std::clock();
        return ++asked > 300;
      }
    };
    const EffortGrid grid = plane(3000, 0, 0);
    const PaceTable pace(walker);
    double least = 1e9;
    for (int attempt = 0; attempt < 3; ++attempt) {
      EffortSurface surface(grid, pace);
      const Stop stop;
      QVERIFY_EXCEPTION_THROWN(surface.search({{1500, 1500}}, nullptr, stop), Cancelled);
      least = std::min(least, double(stop.longest) / CLOCKS_PER_SEC);
    }
    QVERIFY2(least < 0.05 * test::slower, qPrintable(QString::number(least)));
  }
};

QTEST_GUILESS_MAIN(EffortSurfaceTest)
#include "effort_surface_test.moc"
