// SPDX-License-Identifier: GPL-2.0-or-later
#include "support/check.h"

#include <cerrno> // program_invocation_short_name
#include <cmath>
#include <cstdlib>
#include <fstream>
#include <iomanip>
#include <sstream>
#include <stdexcept>

namespace brushline::test {

namespace {
std::string digits(double value) {
  std::ostringstream out;
  out.imbue(std::locale::classic());
  out << std::setprecision(17) << value;
  return out.str();
}

std::string quoted(const std::string &text) {
  std::string cell = "\"";
  for (const char c : text)
    cell += c == '"' ? std::string("\"\"") : std::string(1, c);
  return cell + "\"";
}
} // namespace

std::string Check::message() const {
  return where + ", " + what + ": " + got + " instead of " + expected +
         (tolerance.empty() ? "" : ", allowed " + tolerance + " " + unit);
}

Check checkOf(const std::string &what, const std::string &where, double got, double expected, double tolerance,
              const std::string &unit, const std::string &source) {
  Check check;
  check.what = what;
  check.where = where;
  check.source = source;
  check.unit = unit;
  check.expected = digits(expected);
  check.got = digits(got);
  check.tolerance = digits(tolerance);
  check.passed = std::abs(got - expected) <= tolerance;
  return check;
}

Check checkOf(const std::string &what, const std::string &where, const std::string &got, const std::string &expected,
              const std::string &source) {
  Check check;
  check.what = what;
  check.where = where;
  check.source = source;
  check.expected = expected;
  check.got = got;
  check.passed = got == expected;
  return check;
}

double turnedTo(double degrees, double besideDegrees) {
  return besideDegrees + std::remainder(degrees - besideDegrees, 360.0);
}

void record(const Check &check) {
  static const char *const folder = std::getenv("BRUSHLINE_CHECKS");
  if (!folder || !*folder)
    return;
  static std::ofstream out(std::string(folder) + "/" + program_invocation_short_name + ".csv");
  out.imbue(std::locale::classic());
  if (out.tellp() == std::streampos(0))
    out << "what,where,file,line,source,expected,got,tolerance,unit,passed\n";
  out << quoted(check.what) << ',' << quoted(check.where) << ',' << quoted(check.file) << ',' << check.line << ','
      << quoted(check.source) << ',' << quoted(check.expected) << ',' << quoted(check.got) << ',' << check.tolerance
      << ',' << quoted(check.unit) << ',' << (check.passed ? "yes" : "no") << '\n';
  if (!out.flush())
    throw std::runtime_error(std::string("no check can be written into ") + folder);
}

} // namespace brushline::test
