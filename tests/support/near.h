// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QtTest>

#include <cmath>
#include <cstdio>
#include <string>

namespace brushline::test {

//! How far two directions are apart, degrees, whole turns left out; NaN for NaN.
inline double turnBetween(double aDegrees, double bDegrees) {
  return std::abs(std::remainder(aDegrees - bDegrees, 360.0));
}

//! Fails the test with the numbers in its message. NaN is near nothing.
inline void failNear(double actual, double expected, double tolerance, const char *text, const std::string &where,
                     const char *file, int line) {
  char numbers[160];
  std::snprintf(numbers, sizeof numbers, "%.17g instead of %.17g, off by %.3g, allowed %.3g", actual, expected,
                actual - expected, tolerance);
  QTest::qVerify(false, text, (where + ": " + numbers).c_str(), file, line);
}

} // namespace brushline::test

//! As QCOMPARE, but with a tolerance and a word on where in the data we are (put together only when it fails).
#define VERIFY_NEAR(actual, expected, tolerance, where)                                                                \
  do {                                                                                                                 \
    const double verify_actual = (actual), verify_expected = (expected), verify_tolerance = (tolerance);               \
    if (!(std::abs(verify_actual - verify_expected) <= verify_tolerance)) {                                            \
      brushline::test::failNear(verify_actual, verify_expected, verify_tolerance, #actual, where, __FILE__, __LINE__); \
      return;                                                                                                          \
    }                                                                                                                  \
  } while (false)

//! As QVERIFY, with a word on where in the data we are (put together only when it fails).
#define VERIFY_AT(statement, where)                                                                                    \
  do {                                                                                                                 \
    if (!(statement)) {                                                                                                \
      QTest::qVerify(false, #statement, std::string(where).c_str(), __FILE__, __LINE__);                               \
      return;                                                                                                          \
    }                                                                                                                  \
  } while (false)
