// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/tile_store.h"
#include "shared/tiled_grid.h"

#include <QtTest>

#include <atomic>
#include <chrono>
#include <stdexcept>
#include <thread>
#include <vector>

using namespace brushline;

class TileStoreTest : public QObject {
  Q_OBJECT

private slots:
  void keepsTheLatest() {
    TileStore store(2);
    std::vector<int64_t> reads;
    const auto get = [&](int64_t key) {
      return store.get(key, [&] {
        reads.push_back(key);
        return std::vector<float>{float(key)};
      });
    };
    QVERIFY(get(1)->front() == 1);
    QVERIFY(get(2)->front() == 2);
    QVERIFY(get(1)->front() == 1); // 2 is now the oldest
    QVERIFY(get(3)->front() == 3);
    get(1);
    get(2);
    QCOMPARE(reads, (std::vector<int64_t>{1, 2, 3, 2}));
  }

  void aTileInUseOutlivesTheStore() {
    TileCells cells;
    {
      TileStore store(1);
      cells = store.get(1, [] { return std::vector<float>{7}; });
      store.get(2, [] { return std::vector<float>{8}; });
    }
    QVERIFY(cells->front() == 7);
  }

  void whatFailedIsTriedAgain() {
    TileStore store(4);
    int tries = 0;
    const auto read = [&]() -> std::vector<float> {
      if (++tries == 1)
        throw std::runtime_error("unreadable");
      return {1};
    };
    QVERIFY_EXCEPTION_THROWN(store.get(1, read), std::runtime_error);
    QVERIFY(store.get(1, read)->front() == 1);
    QCOMPARE(tries, 2);
  }

  // Several threads, each with its own grid over one store: every tile is read once, and all see the same.
  void threadsReadEachTileOnce() {
    const GridShape shape{0, 4000, 1, 1, 4000, 4000}; // 16 by 16 tiles
    const auto store = std::make_shared<TileStore>(256);
    std::atomic<int> reads{0}, wrong{0};
    std::vector<std::thread> threads;
    for (int t = 0; t < 4; ++t)
      threads.emplace_back([&, t] {
        TiledGrid grid(
            shape,
            [&](const CellWindow &window) {
              ++reads;
              std::this_thread::sleep_for(std::chrono::microseconds(200));
              std::vector<float> cells;
              for (int64_t r = 0; r < window.rows; ++r)
                for (int64_t c = 0; c < window.columns; ++c)
                  cells.push_back(float(window.row + r) - 2 * float(window.column + c));
              return cells;
            },
            store);
        for (int i = 0; i < 4000; ++i) {
          const int64_t column = (i * 37 + t * 11) % 4000, row = (i * 91 + t * 5) % 4000;
          if (grid.nearest({double(column) + 0.5, double(row) + 0.5}) != double(row - 2 * column))
            ++wrong;
        }
      });
    for (std::thread &thread : threads)
      thread.join();
    QCOMPARE(wrong.load(), 0);
    QCOMPARE(reads.load(), 256);
  }
};

QTEST_APPLESS_MAIN(TileStoreTest)
#include "tile_store_test.moc"
