// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <exception>

namespace brushline {

//! Thrown by long work that was told to stop.
struct Cancelled : std::exception {
  const char *what() const noexcept override { return "cancelled"; }
};

//! How long work hears that it should stop. Implementations are called from any thread.
class Progress {
public:
  virtual ~Progress() = default;
  virtual bool cancelled() const { return false; }

  //! Throws Cancelled when the work should stop. Call at least every tenth of a second.
  void check() const {
    if (cancelled())
      throw Cancelled();
  }
};

} // namespace brushline
