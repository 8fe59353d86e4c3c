// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QtGlobal>

#ifdef Q_OS_UNIX
#include <csignal>
#include <sys/resource.h>

namespace brushline::test {

/**
 * While it lives, this program's files cannot grow beyond a size, in bytes: as on a disk that is full. What goes beyond
 * fails when it is written, as there, and sends no signal.
 */
class FullDisk {
public:
  explicit FullDisk(rlim_t bytes) : mSignal(std::signal(SIGXFSZ, SIG_IGN)) {
    getrlimit(RLIMIT_FSIZE, &mBefore);
    const rlimit limit{bytes, mBefore.rlim_max};
    setrlimit(RLIMIT_FSIZE, &limit);
  }
  ~FullDisk() {
    setrlimit(RLIMIT_FSIZE, &mBefore);
    std::signal(SIGXFSZ, mSignal);
  }
  FullDisk(const FullDisk &) = delete;
  FullDisk &operator=(const FullDisk &) = delete;

private:
  void (*mSignal)(int);
  rlimit mBefore{};
};

} // namespace brushline::test
#endif
