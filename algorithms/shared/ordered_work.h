// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <cstddef>
#include <deque>
#include <functional>
#include <future>
#include <utility>

namespace brushline {

/**
 * Computes jobs on several threads and hands the results on in the order of the jobs, on the caller's thread; so the
 * caller reads and writes while others compute, and the outcome does not depend on the number of threads.
 *
 * At most as many jobs as workers are under way: memory does not grow with their number. An exception thrown by compute
 * comes out of push() or finish(); the destructor waits for what is under way.
 */
template <typename Job, typename Result> class OrderedWork {
public:
  //! \param worker 0 .. workers - 1; no two jobs of the same worker run at once, so each may have tools of its own.
  using Compute = std::function<Result(Job job, size_t worker)>;
  using Take = std::function<void(Result result)>;

  OrderedWork(size_t workers, Compute compute, Take take)
      : mWorkers(workers > 0 ? workers : 1), mCompute(std::move(compute)), mTake(std::move(take)) {}

  void push(Job job) {
    if (mRunning.size() < mWorkers) {
      start(std::move(job));
      return;
    }
    Result result = takeFront();
    start(std::move(job)); // before the result is dealt with, so that no thread waits for it
    mTake(std::move(result));
  }

  void finish() {
    while (!mRunning.empty())
      mTake(takeFront());
  }

private:
  Result takeFront() {
    std::future<Result> front = std::move(mRunning.front());
    mRunning.pop_front();
    return front.get();
  }

  void start(Job job) {
    const size_t worker = mNext;
    mNext = (mNext + 1) % mWorkers;
    mRunning.push_back(std::async(std::launch::async, [this, worker, job = std::move(job)]() mutable {
      return mCompute(std::move(job), worker);
    }));
  }

  size_t mWorkers;
  Compute mCompute;
  Take mTake;
  size_t mNext = 0;
  std::deque<std::future<Result>> mRunning;
};

} // namespace brushline
