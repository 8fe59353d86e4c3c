// SPDX-License-Identifier: GPL-2.0-or-later
// What all fuzz targets share: structured input out of bytes, and promises that must hold.
#pragma once

#include "quantities/progress.h"

#include <fuzzer/FuzzedDataProvider.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <limits>
#include <string>
#include <vector>

//! Ends the program, and tells libFuzzer so, where a promise is broken.
#define PROMISED(condition)                                                                                            \
  do {                                                                                                                 \
    if (!(condition)) {                                                                                                \
      std::fprintf(stderr, "%s:%d: broken promise: %s\n", __FILE__, __LINE__, #condition);                             \
      std::abort();                                                                                                    \
    }                                                                                                                  \
  } while (false)

namespace brushline::fuzz {

//! Stops work after so many looks, so that a run stays short and cancelling is tried as well.
class Patience final : public Progress {
public:
  explicit Patience(long looks) : mLooks(looks) {}
  bool cancelled() const override { return --mLooks < 0; }

private:
  mutable long mLooks;
};

/**
 * Numbers, texts and choices out of the fuzzer's bytes. What has run out of bytes gives the first of all choices.
 */
class Input {
public:
  Input(const uint8_t *data, size_t size) : mBytes(data, size) {}

  bool flag() { return mBytes.ConsumeBool(); }
  size_t upTo(size_t most) { return mBytes.ConsumeIntegralInRange<size_t>(0, most); }
  template <typename Value> Value from(std::initializer_list<Value> values) {
    return values.begin()[upTo(values.size() - 1)];
  }

  //! Any number at all: not numbers, infinite, denormal, huge, and those near which code decides.
  double any() {
    switch (upTo(5)) {
    case 0: {
      using Limits = std::numeric_limits<double>;
      return from({0.0,
                   -0.0,
                   Limits::quiet_NaN(),
                   Limits::infinity(),
                   -Limits::infinity(),
                   Limits::denorm_min(),
                   Limits::min(),
                   Limits::max(),
                   Limits::lowest(),
                   Limits::epsilon(),
                   1e300,
                   -1e300,
                   1e-300,
                   2147483648.0,
                   9007199254740993.0,
                   9223372036854775808.0,
                   360.0,
                   -360.0,
                   180.0,
                   -180.0,
                   90.0,
                   -90.0,
                   400.0,
                   6400.0,
                   0.5,
                   1.0,
                   -1.0,
                   100.0});
    }
    case 1: {
      const auto bits = mBytes.ConsumeIntegral<uint64_t>();
      double value;
      static_assert(sizeof value == sizeof bits);
      std::memcpy(&value, &bits, sizeof value);
      return value;
    }
    case 2:
      return mBytes.ConsumeIntegral<int16_t>();
    case 3:
      return mBytes.ConsumeIntegral<int16_t>() / 64.0;
    case 4:
      return std::ldexp(1 + mBytes.ConsumeIntegral<uint8_t>() / 256.0, mBytes.ConsumeIntegralInRange(-60, 60));
    default:
      return mBytes.ConsumeIntegral<int32_t>() / 65536.0;
    }
  }
  double finite() {
    const double value = any();
    return std::isfinite(value) ? value : 0;
  }
  //! Of a range, its ends often among them.
  double between(double least, double most) {
    switch (upTo(3)) {
    case 0:
      return most;
    case 1:
      return least;
    case 2:
      return least + (most - least) * mBytes.ConsumeIntegral<uint8_t>() / 256.0;
    default:
      return std::min(most, least + (most - least) * (mBytes.ConsumeIntegral<uint32_t>() / 4294967295.0));
    }
  }
  //! Of a range > 0, of whatever order of magnitude.
  double scaled(double least, double most) {
    const double share = mBytes.ConsumeIntegral<uint16_t>() / 65535.0;
    return std::clamp(least * std::pow(most / least, share), least, most);
  }

  std::string text(size_t most) { return mBytes.ConsumeRandomLengthString(most); }
  std::string rest() { return mBytes.ConsumeRemainingBytesAsString(); }
  //! Text put together of words that a parser knows, and others.
  std::string wordsOf(const std::vector<std::string> &words, size_t most) {
    std::string text;
    for (size_t count = upTo(most); count > 0; --count)
      text += upTo(7) == 0 ? mBytes.ConsumeRandomLengthString(4) : words[upTo(words.size() - 1)];
    return text;
  }

private:
  FuzzedDataProvider mBytes;
};

inline bool isBearing(double degrees) { return degrees >= 0 && degrees < 360; }
inline bool isShare(double share) { return share >= 0 && share <= 1; }

} // namespace brushline::fuzz

//! The body of a target; `input` is what it takes.
#define FUZZ(input)                                                                                                    \
  static void fuzzOne(brushline::fuzz::Input &input);                                                                  \
  extern "C" int LLVMFuzzerTestOneInput(const uint8_t *data, size_t size) {                                            \
    brushline::fuzz::Input made(data, size);                                                                           \
    fuzzOne(made);                                                                                                     \
    return 0;                                                                                                          \
  }                                                                                                                    \
  static void fuzzOne(brushline::fuzz::Input &input)
