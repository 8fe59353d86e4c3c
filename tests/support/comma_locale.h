// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <clocale>
#include <locale>
#include <string>

namespace brushline::test {

/**
 * While it lives, numbers are written "1,5" and "1.000": in the C++ streams always, by a facet of our own, since the
 * machine may have no such locale; in the C functions too where the machine has one.
 */
class CommaLocale {
public:
  CommaLocale()
      : mBefore(std::locale::global(std::locale(std::locale::classic(), new Comma))),
        mCBefore(std::setlocale(LC_ALL, nullptr)) {
    for (const char *name : {"de_DE.UTF-8", "de_DE.utf8", "de_DE", "fr_FR.UTF-8", "fr_FR.utf8"})
      if (std::setlocale(LC_ALL, name))
        break;
  }
  ~CommaLocale() {
    std::setlocale(LC_ALL, mCBefore.c_str());
    std::locale::global(mBefore);
  }
  CommaLocale(const CommaLocale &) = delete;
  CommaLocale &operator=(const CommaLocale &) = delete;

private:
  struct Comma : std::numpunct<char> {
    char do_decimal_point() const override { return ','; }
    char do_thousands_sep() const override { return '.'; }
    std::string do_grouping() const override { return "\3"; }
  };
  std::locale mBefore;
  std::string mCBefore;
};

} // namespace brushline::test
