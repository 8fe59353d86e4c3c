// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

namespace brushline {

//! A span of time, seconds inside.
class Duration {
public:
  constexpr Duration() = default;
  static constexpr Duration seconds(double value) { return Duration(value); }
  static constexpr Duration minutes(double value) { return Duration(value * 60.0); }
  constexpr double seconds() const { return mSeconds; }
  constexpr double minutes() const { return mSeconds / 60.0; }

  constexpr Duration operator+(Duration other) const { return Duration(mSeconds + other.mSeconds); }

private:
  constexpr explicit Duration(double seconds) : mSeconds(seconds) {}
  double mSeconds = 0;
};

} // namespace brushline
