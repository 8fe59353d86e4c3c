// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QtTest>

#include <string>

namespace brushline::test {

//! A result beside the value that someone else gives for it.
struct Check {
  std::string what; //!< the quantity: a file's column, or a few words
  std::string where;
  std::string file; //!< under tests; empty: the value stands in the test
  int line = 0;     //!< of the file
  std::string source;
  std::string unit;
  std::string expected, got; //!< numbers with 17 digits, or words
  std::string tolerance;     //!< empty for words
  bool passed = false;

  std::string message() const;
};

/**
 * A number.
 * \param source publication or program, and how it was read: "read in the source", "second-hand", "computed ...",
 * "from memory", "common practice", "regression only".
 * \param tolerance in the unit. NaN agrees with nothing.
 */
Check checkOf(const std::string &what, const std::string &where, double got, double expected, double tolerance,
              const std::string &unit, const std::string &source);
//! Words, which agree when they are alike.
Check checkOf(const std::string &what, const std::string &where, const std::string &got, const std::string &expected,
              const std::string &source);

//! A direction, degrees, with the whole turns that bring it next to another one: 359.9 is -0.1 beside 0.
double turnedTo(double degrees, double besideDegrees);

/**
 * Writes a check down for the report on all of them (sample-project/manual/make_checks.py), passed or not: when the
 * environment variable BRUSHLINE_CHECKS names a folder, a row of the file PROGRAM.csv there. Each test is a program of
 * its own, so no two write the same file. Throws when it cannot be written.
 */
void record(const Check &check);

} // namespace brushline::test

//! As VERIFY_NEAR, for a Check; it is recorded too.
#define VERIFY_CHECK(statement)                                                                                        \
  do {                                                                                                                 \
    const brushline::test::Check verify_check = (statement);                                                           \
    brushline::test::record(verify_check);                                                                             \
    if (!verify_check.passed) {                                                                                        \
      QTest::qVerify(false, #statement, verify_check.message().c_str(), __FILE__, __LINE__);                           \
      return;                                                                                                          \
    }                                                                                                                  \
  } while (false)
