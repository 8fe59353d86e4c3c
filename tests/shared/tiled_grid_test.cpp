// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/tiled_grid.h"

#include "support/near.h"
#include "support/random.h"

#include <limits>
#include <memory>
#include <stdexcept>

using namespace brushline;
using namespace brushline::test;

class TiledGridTest : public QObject {
  Q_OBJECT
private slots:
  void badShape();
  void cellOf();
  void plane();
  void bilinear();
  void borders();
  void outside();
  void noData();
  void tiles();
  void readsOncePerTile();
  void nearest();
  void alongByHand();
  void alongBorders();
  void alongCorners();
  void alongAgainstSamples();
  void alongWithoutEnds();
  void fewTilesSameHeights();
  void latestTilesAreKept();
  void wrongSize();
  void failedRead();
};

namespace {
constexpr double missing = std::numeric_limits<double>::quiet_NaN();

using Cell = std::function<float(int64_t column, int64_t row)>;

// A grid of made-up cells, and the windows it read.
struct Made {
  std::shared_ptr<std::vector<CellWindow>> reads = std::make_shared<std::vector<CellWindow>>();
  TiledGrid grid;

  Made(int64_t columns, int64_t rows, Cell cell, size_t tilesKept = 256)
      : grid(
            GridShape{0, double(rows), 1, 1, columns, rows},
            [cell, reads = reads](const CellWindow &window) {
              reads->push_back(window);
              std::vector<float> cells;
              for (int64_t r = 0; r < window.rows; ++r)
                for (int64_t c = 0; c < window.columns; ++c)
                  cells.push_back(cell(window.column + c, window.row + r));
              return cells;
            },
            tilesKept) {}
};

// Exact in float: the heights of a plane over whole cells.
float planeCell(int64_t column, int64_t row) { return float(100 + 2 * column - 3 * row); }
// The same plane between the centres: cell (c, r) is centred on (c + 0.5, r + 0.5).
double planeHeight(CellPosition p) { return 100 + 2 * (p.column - 0.5) - 3 * (p.row - 0.5); }
} // namespace

void TiledGridTest::badShape() {
  const auto make = [](const GridShape &shape) {
    const TiledGrid grid(shape, [](const CellWindow &) { return std::vector<float>(); });
  };
  const GridShape bad[] = {
      {0, 0, 0, 1, 1, 1}, {0, 0, 1, -1, 1, 1}, {0, 0, missing, 1, 1, 1}, {0, 0, 1, 1, 0, 1}, {0, 0, 1, 1, 1, -5}};
  for (const GridShape &shape : bad)
    QVERIFY_EXCEPTION_THROWN(make(shape), std::invalid_argument);
  make({0, 0, 1, 1, 1, 1}); // and a good one passes
}

// Computed by hand.
void TiledGridTest::cellOf() {
  const TiledGrid grid(GridShape{500, 2000, 10, 25, 4, 4}, [](const CellWindow &) { return std::vector<float>(16); });
  const CellPosition p = grid.cellOf(525, 1950);
  QVERIFY(p.column == 2.5 && p.row == 2);
  const CellPosition left = grid.cellOf(490, 2025);
  QVERIFY(left.column == -1 && left.row == -1);
  QVERIFY(std::isnan(grid.cellOf(missing, 1950).column));
  QVERIFY(grid.shape().columns == 4 && grid.shape().cell_height == 25);
}

// A bilinear surface holds a plane exactly.
void TiledGridTest::plane() {
  Made made(600, 300, planeCell);
  Random random(30);
  for (int i = 0; i < 20000; ++i) {
    const CellPosition p{random.between(0.5, 599.5), random.between(0.5, 299.5)};
    VERIFY_NEAR(made.grid.interpolated(p), planeHeight(p), 1e-9,
                std::to_string(p.column) + " " + std::to_string(p.row));
  }
}

// Computed by hand: corners 0, 10 above 20, 50; a quarter across, three quarters down.
void TiledGridTest::bilinear() {
  const float cells[2][2] = {{0, 10}, {20, 50}};
  Made made(2, 2, [&](int64_t c, int64_t r) { return cells[r][c]; });
  QVERIFY(made.grid.interpolated({0.5, 0.5}) == 0);
  QVERIFY(made.grid.interpolated({1.5, 0.5}) == 10);
  QVERIFY(made.grid.interpolated({0.5, 1.5}) == 20);
  QVERIFY(made.grid.interpolated({1.5, 1.5}) == 50);
  QVERIFY(made.grid.interpolated({1, 1}) == 20);
  QVERIFY(made.grid.interpolated({0.75, 1.25}) == 2.5 + 0.75 * (27.5 - 2.5));
}

// In the outer half cell the border's heights reach outwards.
void TiledGridTest::borders() {
  Made made(4, 3, planeCell);
  QVERIFY(made.grid.interpolated({0, 0}) == planeCell(0, 0));
  QVERIFY(made.grid.interpolated({4, 3}) == planeCell(3, 2));
  QVERIFY(made.grid.interpolated({0, 3}) == planeCell(0, 2));
  QVERIFY(made.grid.interpolated({4, 0}) == planeCell(3, 0));
  QVERIFY(made.grid.interpolated({0.1, 1.0}) == planeHeight({0.5, 1.0}));
  QVERIFY(made.grid.interpolated({3.9, 1.0}) == planeHeight({3.5, 1.0}));
  QVERIFY(made.grid.interpolated({2.0, 2.99}) == planeHeight({2.0, 2.5}));
  Made one(1, 1, [](int64_t, int64_t) { return 7.0f; });
  QVERIFY(one.grid.interpolated({0, 0}) == 7 && one.grid.interpolated({1, 1}) == 7 &&
          one.grid.interpolated({0.3, 0.9}) == 7);
}

void TiledGridTest::outside() {
  Made made(4, 3, planeCell);
  constexpr double infinity = std::numeric_limits<double>::infinity();
  for (const CellPosition &p : {CellPosition{-1e-9, 1},
                                {4.000001, 1},
                                {1, -1e-9},
                                {1, 3.000001},
                                {missing, 1},
                                {1, missing},
                                {missing, missing},
                                {infinity, 1},
                                {1, -infinity},
                                {1e300, 1e300}})
    QVERIFY(std::isnan(made.grid.interpolated(p)));
  QVERIFY(made.reads->empty()); // and nothing was read for it
}

void TiledGridTest::noData() {
  Made made(4, 4, [](int64_t c, int64_t r) {
    return c == 2 && r == 1 ? std::numeric_limits<float>::quiet_NaN() : planeCell(c, r);
  });
  QVERIFY(std::isnan(made.grid.interpolated({2.5, 1.5})));
  QVERIFY(std::isnan(made.grid.interpolated({2.1, 1.2})));
  QVERIFY(std::isnan(made.grid.interpolated({1.6, 1.5})));
  QVERIFY(std::isnan(made.grid.interpolated({2.4, 0.6})));
  // A neighbour of weight 0 does not matter.
  QVERIFY(made.grid.interpolated({1.5, 1.5}) == planeCell(1, 1));
  QVERIFY(made.grid.interpolated({1.5, 1.0}) == planeHeight({1.5, 1.0}));
  QVERIFY(made.grid.interpolated({2.5, 0.5}) == planeCell(2, 0));
  QVERIFY(made.grid.interpolated({0.9, 2.2}) == planeHeight({0.9, 2.2}));
}

// Tiles cover the raster once, the last ones cut to it. 256 cells a side: the interface's 256 KiB a tile.
void TiledGridTest::tiles() {
  Made made(600, 300, planeCell);
  for (double c : {10.0, 300.0, 590.0})
    for (double r : {10.0, 290.0})
      QVERIFY(made.grid.interpolated({c, r}) == planeHeight({c, r}));
  QCOMPARE(made.reads->size(), size_t(6));
  int64_t cells = 0;
  for (const CellWindow &w : *made.reads) {
    QVERIFY(w.column >= 0 && w.row >= 0 && w.column + w.columns <= 600 && w.row + w.rows <= 300);
    QVERIFY(w.columns * w.rows * int64_t(sizeof(float)) <= 256 * 1024);
    cells += w.columns * w.rows;
  }
  QCOMPARE(cells, int64_t(600 * 300));
}

void TiledGridTest::readsOncePerTile() {
  Made made(600, 300, planeCell);
  QVERIFY(made.reads->empty()); // nothing before it is asked
  made.grid.interpolated({1, 1});
  made.grid.interpolated({200, 200});
  QCOMPARE(made.reads->size(), size_t(1));
  made.grid.interpolated({256.0, 256.0}); // the corner of four tiles
  QCOMPARE(made.reads->size(), size_t(4));
  Random random(31);
  for (int i = 0; i < 10000; ++i)
    made.grid.interpolated({random.between(0, 600), random.between(0, 300)});
  QCOMPARE(made.reads->size(), size_t(6));
}

// The cell that holds a position: its left and upper borders are its own.
void TiledGridTest::nearest() {
  Made made(600, 300, planeCell);
  Random random(33);
  for (int i = 0; i < 2000; ++i) {
    const CellPosition p{random.between(0, 600), random.between(0, 300)};
    QVERIFY(made.grid.nearest(p) == planeCell(int64_t(p.column), int64_t(p.row)));
  }
  QVERIFY(made.grid.nearest({0, 0}) == planeCell(0, 0));
  QVERIFY(made.grid.nearest({3, 5}) == planeCell(3, 5));
  QVERIFY(made.grid.nearest({std::nextafter(600.0, 0.0), 299.5}) == planeCell(599, 299));
  for (const CellPosition &p : {CellPosition{600, 1}, {1, 300}, {-1e-9, 1}, {1, -1e-9}, {missing, 1}, {1, missing}})
    QVERIFY(std::isnan(made.grid.nearest(p)));
  Made hole(2, 1, [](int64_t c, int64_t) { return c ? std::numeric_limits<float>::quiet_NaN() : 1.0f; });
  QVERIFY(hole.grid.nearest({0.99, 0.5}) == 1 && std::isnan(hole.grid.nearest({1.01, 0.5})));
}

// Computed by hand: cells 1 1 2 in a row, asked from half a cell left of the raster to half a cell right of it.
void TiledGridTest::alongByHand() {
  Made made(3, 1, [](int64_t c, int64_t) { return c < 2 ? 1.0f : 2.0f; });
  const auto runs = made.grid.along({-0.5, 0.5}, {3.5, 0.5});
  QCOMPARE(runs.size(), size_t(4));
  QVERIFY(runs[0].to == 0.125 && std::isnan(runs[0].value));
  QVERIFY(runs[1].to == 0.625 && runs[1].value == 1); // two cells of one value are one run
  QVERIFY(runs[2].to == 0.875 && runs[2].value == 2);
  QVERIFY(runs[3].to == 1 && std::isnan(runs[3].value));
  const auto back = made.grid.along({3.5, 0.5}, {-0.5, 0.5});
  QCOMPARE(back.size(), size_t(4));
  QVERIFY(back[0].to == 0.125 && back[1].to == 0.375 && back[1].value == 2 && back[2].to == 0.875 && back[3].to == 1);
  const auto within = made.grid.along({0.25, 0.5}, {1.75, 0.5});
  QVERIFY(within.size() == 1 && within[0].to == 1 && within[0].value == 1);
  const auto point = made.grid.along({2.5, 0.5}, {2.5, 0.5});
  QVERIFY(point.size() == 1 && point[0].to == 1 && point[0].value == 2);
  const auto away = made.grid.along({10, 10}, {20, 30});
  QVERIFY(away.size() == 1 && away[0].to == 1 && std::isnan(away[0].value));
}

// Computed by hand: on a border the cells to its right and below, and none beyond the last one; ends on a border cut
// nothing.
void TiledGridTest::alongBorders() {
  Made made(3, 3, [](int64_t c, int64_t r) { return float(10 * c + r); });
  const auto text = [&](CellPosition from, CellPosition to) {
    QStringList words;
    for (const CellRun &run : made.grid.along(from, to))
      words << QStringLiteral("%1:%2").arg(run.to, 0, 'g', 6).arg(run.value, 0, 'g', 6);
    return words.join(QLatin1Char(' '));
  };
  QCOMPARE(text({1, 0}, {1, 3}), QStringLiteral("0.333333:10 0.666667:11 1:12"));
  QCOMPARE(text({1, 3}, {1, 0}), QStringLiteral("0.333333:12 0.666667:11 1:10"));
  QCOMPARE(text({0, 2}, {3, 2}), QStringLiteral("0.333333:2 0.666667:12 1:22"));
  QCOMPARE(text({0, 0}, {0, 3}), QStringLiteral("0.333333:0 0.666667:1 1:2"));
  QCOMPARE(text({3, 0}, {3, 3}), QStringLiteral("1:nan"));
  QCOMPARE(text({0, 3}, {3, 3}), QStringLiteral("1:nan"));
  QCOMPARE(text({1, 0.5}, {2, 0.5}), QStringLiteral("1:10"));
  QCOMPARE(text({2, 0.5}, {1, 0.5}), QStringLiteral("1:10"));
  QCOMPARE(text({0, 0}, {3, 3}), QStringLiteral("0.333333:0 0.666667:11 1:22"));
  QCOMPARE(text({1, 1}, {1, 1}), QStringLiteral("1:11"));
  QCOMPARE(text({3, 3}, {3, 3}), QStringLiteral("1:nan"));
}

// From corner to corner a line meets the cells of its diagonal and none of those beside it, whatever the rounding.
void TiledGridTest::alongCorners() {
  Random random(35);
  for (int i = 0; i < 500; ++i) {
    const auto column = int64_t(random.between(0, 50)), row = int64_t(random.between(0, 50));
    Made made(100, 100, [=](int64_t c, int64_t r) { return c - column == r - row ? 1.0f : 2.0f; });
    const double start = random.between(0, 1), end = start + random.between(2, 40);
    for (const bool back : {false, true}) {
      CellPosition from{double(column) + start, double(row) + start}, to{double(column) + end, double(row) + end};
      if (back)
        std::swap(from, to);
      const auto runs = made.grid.along(from, to);
      QCOMPARE(runs.size(), size_t(1));
      QVERIFY(runs[0].to == 1 && runs[0].value == 1);
    }
  }
}

// Random lines in and out of a raster of few values: what along() says of a place is what nearest() says there.
void TiledGridTest::alongAgainstSamples() {
  Made made(300, 40, [](int64_t c, int64_t r) {
    const int64_t value = (c * 7 + r * 13) % 5;
    return value == 4 ? std::numeric_limits<float>::quiet_NaN() : float(value / 2);
  });
  Random random(34);
  for (int i = 0; i < 300; ++i) {
    const CellPosition from{random.between(-20, 320), random.between(-10, 50)};
    const CellPosition to = i % 10 == 0   ? CellPosition{from.column, random.between(-10, 50)}
                            : i % 10 == 1 ? CellPosition{random.between(-20, 320), from.row}
                                          : CellPosition{random.between(-20, 320), random.between(-10, 50)};
    const auto runs = made.grid.along(from, to);
    QVERIFY(!runs.empty() && runs.back().to == 1);
    for (size_t k = 1; k < runs.size(); ++k) {
      QVERIFY(runs[k].to > runs[k - 1].to);
      QVERIFY(!(runs[k].value == runs[k - 1].value) && !(std::isnan(runs[k].value) && std::isnan(runs[k - 1].value)));
    }
    size_t run = 0;
    for (int k = 0; k < 500; ++k) {
      const double share = (k + 0.5) / 500;
      while (runs[run].to < share)
        ++run;
      const double start = run == 0 ? 0 : runs[run - 1].to;
      if (share - start < 1e-9 || runs[run].to - share < 1e-9)
        continue; // on a border
      const double value =
          made.grid.nearest({from.column + share * (to.column - from.column), from.row + share * (to.row - from.row)});
      QVERIFY(runs[run].value == value || (std::isnan(runs[run].value) && std::isnan(value)));
    }
  }
}

void TiledGridTest::alongWithoutEnds() {
  Made made(3, 3, planeCell);
  for (const auto &runs : {made.grid.along({missing, 1}, {2, 2}), made.grid.along({1, 1}, {2, missing}),
                           made.grid.along({missing, missing}, {missing, missing}),
                           made.grid.along({1, 1}, {std::numeric_limits<double>::infinity(), 1})})
    QVERIFY(runs.size() == 1 && runs[0].to == 1 && std::isnan(runs[0].value));
}

void TiledGridTest::fewTilesSameHeights() {
  const Cell rough = [](int64_t c, int64_t r) { return float((c * 7919 + r * 104729) % 1000); };
  Made all(600, 600, rough);
  for (size_t kept : {size_t(0), size_t(1), size_t(2), size_t(3)}) {
    Made few(600, 600, rough, kept);
    Random random(32);
    for (int i = 0; i < 60; ++i) {
      // Half of the positions lie in the seams between tiles, where four are needed at once.
      const bool seam = i % 2;
      const CellPosition p{seam ? random.between(255.5, 256.5) : random.between(0, 600),
                           seam ? random.between(511.5, 512.5) : random.between(0, 600)};
      QVERIFY(few.grid.interpolated(p) == all.grid.interpolated(p));
    }
    QVERIFY(few.reads->size() > all.reads->size()); // tiles were let go and read again
  }
  QCOMPARE(all.reads->size(), size_t(9));
}

void TiledGridTest::latestTilesAreKept() {
  Made made(256 * 3, 10, planeCell, 2);
  const auto ask = [&](int tile) {
    made.grid.interpolated({tile * 256.0 + 100.5, 5.5});
    return made.reads->size();
  };
  QCOMPARE(ask(0), size_t(1));
  QCOMPARE(ask(1), size_t(2));
  QCOMPARE(ask(0), size_t(2)); // 0 is the latest now
  QCOMPARE(ask(2), size_t(3)); // so 1 goes
  QCOMPARE(ask(0), size_t(3));
  QCOMPARE(ask(1), size_t(4));
}

void TiledGridTest::wrongSize() {
  for (size_t size : {size_t(0), size_t(11), size_t(13)}) {
    TiledGrid grid(GridShape{0, 3, 1, 1, 4, 3}, [size](const CellWindow &) { return std::vector<float>(size); });
    QVERIFY_EXCEPTION_THROWN(grid.interpolated({1, 1}), std::runtime_error);
  }
}

// A failed read passes through, and the next one is asked again.
void TiledGridTest::failedRead() {
  bool broken = true;
  TiledGrid grid(GridShape{0, 3, 1, 1, 4, 3}, [&](const CellWindow &) {
    if (broken)
      throw std::runtime_error("no answer");
    return std::vector<float>(12, 5);
  });
  QVERIFY_EXCEPTION_THROWN(grid.interpolated({1, 1}), std::runtime_error);
  broken = false;
  QVERIFY(grid.interpolated({1, 1}) == 5);
}

QTEST_APPLESS_MAIN(TiledGridTest)
#include "tiled_grid_test.moc"
