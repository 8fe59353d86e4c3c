// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <condition_variable>
#include <cstddef>
#include <deque>
#include <functional>
#include <future>
#include <memory>
#include <mutex>
#include <thread>
#include <utility>
#include <vector>

namespace brushline {

/**
 * Computes jobs on several threads and hands the results on in the order of the jobs, on the caller's thread; so the
 * caller reads and writes while others compute, and the outcome does not depend on the number of threads.
 *
 * At most as many jobs as workers are under way: memory does not grow with their number. An exception thrown by compute
 * comes out of push() or finish(); the destructor waits for what is under way. Each worker is one thread to the end:
 * what PROJ makes for a thread is made once.
 */
template <typename Job, typename Result> class OrderedWork {
public:
  //! \param worker 0 .. workers - 1; no two jobs of the same worker run at once, so each may have tools of its own.
  using Compute = std::function<Result(Job job, size_t worker)>;
  using Take = std::function<void(Result result)>;

  OrderedWork(size_t workers, Compute compute, Take take)
      : mCompute(std::move(compute)), mTake(std::move(take)), mWorkers(workers > 0 ? workers : 1) {}

  void push(Job job) {
    if (mRunning.size() < mWorkers.size()) {
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
  using Task = std::packaged_task<Result()>;

  // A thread that does one task after the other, and ends when it is destroyed. The next one is given only when what
  // came of the last is known.
  class Worker {
  public:
    Worker() : mThread(&Worker::work, this) {}
    ~Worker() {
      {
        const std::lock_guard<std::mutex> lock(mMutex);
        mEnding = true;
      }
      mWake.notify_one();
      mThread.join();
    }
    Worker(const Worker &) = delete;
    Worker &operator=(const Worker &) = delete;

    void give(Task task) {
      {
        const std::lock_guard<std::mutex> lock(mMutex);
        mTask = std::move(task);
      }
      mWake.notify_one();
    }

  private:
    void work() {
      std::unique_lock<std::mutex> lock(mMutex);
      for (;;) {
        mWake.wait(lock, [this] { return mEnding || mTask.valid(); });
        if (!mTask.valid())
          return;
        Task task = std::move(mTask);
        lock.unlock();
        task();
        lock.lock();
      }
    }

    std::mutex mMutex;
    std::condition_variable mWake;
    Task mTask; // none when it is not valid
    bool mEnding = false;
    std::thread mThread; // the last, since it uses the others
  };

  Result takeFront() {
    std::future<Result> front = std::move(mRunning.front());
    mRunning.pop_front();
    return front.get();
  }

  void start(Job job) {
    const size_t worker = mNext;
    mNext = (mNext + 1) % mWorkers.size();
    if (!mWorkers[worker])
      mWorkers[worker] = std::make_unique<Worker>();
    Task task([this, worker, job = std::move(job)]() mutable { return mCompute(std::move(job), worker); });
    mRunning.push_back(task.get_future());
    mWorkers[worker]->give(std::move(task));
  }

  Compute mCompute;
  Take mTake;
  size_t mNext = 0;
  std::deque<std::future<Result>> mRunning;
  std::vector<std::unique_ptr<Worker>> mWorkers; // the last, since they use the others
};

} // namespace brushline
