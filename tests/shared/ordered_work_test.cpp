// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/ordered_work.h"

#include <QtTest>

#include <atomic>
#include <chrono>
#include <memory>
#include <stdexcept>
#include <thread>
#include <vector>

using namespace brushline;

class OrderedWorkTest : public QObject {
  Q_OBJECT
private slots:
  void inOrder_data();
  void inOrder();
  void nothing();
  void onTheCallersThread();
  void workersOneJobEach();
  void workersOneThreadEach();
  void exceptions();
  void destroyedUnfinished();
  void movesJobsAndResults();
};

namespace {
void rest(int microseconds) { std::this_thread::sleep_for(std::chrono::microseconds(microseconds)); }
} // namespace

void OrderedWorkTest::inOrder_data() {
  QTest::addColumn<int>("workers");
  QTest::addColumn<int>("jobs");
  for (int workers : {0, 1, 2, 3, 8})
    for (int jobs : {1, 2, 7, 100})
      QTest::addRow("%d workers, %d jobs", workers, jobs) << workers << jobs;
}

// The results come in the order of the jobs, each once, whatever the number of workers and however long jobs take.
void OrderedWorkTest::inOrder() {
  QFETCH(int, workers);
  QFETCH(int, jobs);
  std::vector<int> taken;
  OrderedWork<int, int> work(
      size_t(workers),
      [](int job, size_t) {
        rest(job * 7919 % 500); // later jobs are often done first
        return job * job;
      },
      [&](int result) { taken.push_back(result); });
  for (int i = 0; i < jobs; ++i)
    work.push(i);
  work.finish();
  QCOMPARE(int(taken.size()), jobs);
  for (int i = 0; i < jobs; ++i)
    QCOMPARE(taken[size_t(i)], i * i);
  work.finish(); // again: nothing is left
  QCOMPARE(int(taken.size()), jobs);
}

void OrderedWorkTest::nothing() {
  int taken = 0;
  OrderedWork<int, int> work(
      3, [](int job, size_t) { return job; }, [&](int) { ++taken; });
  work.finish();
  QCOMPARE(taken, 0);
}

void OrderedWorkTest::onTheCallersThread() {
  const auto here = std::this_thread::get_id();
  std::atomic<int> elsewhere{0};
  int taken = 0;
  OrderedWork<int, int> work(
      2,
      [&](int job, size_t) {
        elsewhere += std::this_thread::get_id() != here;
        return job;
      },
      [&](int) { taken += std::this_thread::get_id() == here; });
  for (int i = 0; i < 20; ++i)
    work.push(i);
  work.finish();
  QCOMPARE(taken, 20);
  QCOMPARE(elsewhere.load(), 20);
}

// Workers are numbered 0 to n - 1, run together, and none runs two jobs at once.
void OrderedWorkTest::workersOneJobEach() {
  constexpr size_t workers = 4;
  std::atomic<int> busy[workers] = {};
  std::atomic<int> together{0}, most{0}, clashes{0}, strangers{0};
  OrderedWork<int, int> work(
      workers,
      [&](int job, size_t worker) {
        if (worker >= workers) {
          ++strangers;
          return job;
        }
        if (++busy[worker] > 1)
          ++clashes;
        const int now = ++together;
        for (int before = most; now > before && !most.compare_exchange_weak(before, now);) {
        }
        rest(300 + job * 104729 % 700);
        --together;
        --busy[worker];
        return job;
      },
      [](int) { rest(100); });
  for (int i = 0; i < 200; ++i)
    work.push(i);
  work.finish();
  QCOMPARE(clashes.load(), 0);
  QCOMPARE(strangers.load(), 0);
  QVERIFY(most > 1 && most <= int(workers));
}

// What a library makes for each thread is made once a worker, not once a job.
void OrderedWorkTest::workersOneThreadEach() {
  static std::atomic<int> made{0};
  struct ForEachThread {
    ForEachThread() { ++made; }
    int used = 0;
  };
  OrderedWork<int, int> work(
      3,
      [](int job, size_t) {
        static thread_local ForEachThread mine;
        ++mine.used;
        return job;
      },
      [](int) {});
  for (int i = 0; i < 100; ++i)
    work.push(i);
  work.finish();
  QCOMPARE(made.load(), 3);
}

void OrderedWorkTest::exceptions() {
  std::vector<int> taken;
  const auto run = [&](size_t workers) {
    taken.clear();
    OrderedWork<int, int> work(
        workers,
        [](int job, size_t) {
          if (job == 5)
            throw std::runtime_error("job 5");
          return job;
        },
        [&](int result) { taken.push_back(result); });
    for (int i = 0; i < 10; ++i)
      work.push(i);
    work.finish();
  };
  for (size_t workers : {size_t(1), size_t(3), size_t(20)}) {
    QVERIFY_EXCEPTION_THROWN(run(workers), std::runtime_error);
    QVERIFY((taken == std::vector<int>{0, 1, 2, 3, 4})); // what came before it was handed on
  }
}

// What is under way is waited for.
void OrderedWorkTest::destroyedUnfinished() {
  std::atomic<int> done{0};
  {
    OrderedWork<int, int> work(
        3,
        [&](int job, size_t) {
          rest(3000);
          ++done;
          return job;
        },
        [](int) {});
    for (int i = 0; i < 3; ++i)
      work.push(i);
  }
  QCOMPARE(done.load(), 3);
}

void OrderedWorkTest::movesJobsAndResults() {
  int sum = 0;
  OrderedWork<std::unique_ptr<int>, std::unique_ptr<int>> work(
      2, [](std::unique_ptr<int> job, size_t) { return job; }, [&](std::unique_ptr<int> result) { sum += *result; });
  for (int i = 1; i <= 10; ++i)
    work.push(std::make_unique<int>(i));
  work.finish();
  QCOMPARE(sum, 55);
}

QTEST_APPLESS_MAIN(OrderedWorkTest)
#include "ordered_work_test.moc"
