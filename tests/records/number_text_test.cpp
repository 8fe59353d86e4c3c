// SPDX-License-Identifier: GPL-2.0-or-later
// What is accepted and what is not: common practice, no source.
#include "records/number_text.h"
#include "support/comma_locale.h"
#include "support/near.h"

using namespace brushline;
using namespace brushline::test;

namespace {
using Reading = std::variant<double, TextFault>;

bool isFault(const Reading &reading, TextFault fault) {
  return std::holds_alternative<TextFault>(reading) && std::get<TextFault>(reading) == fault;
}
} // namespace

class NumberTextTest : public QObject {
  Q_OBJECT
private slots:
  void amounts() {
    const std::tuple<const char *, AmountKind, double> accepted[] = {
        {"62", AmountKind::Paces, 62},           {" 062 ", AmountKind::Paces, 62},
        {"62.5", AmountKind::Paces, 62.5},       {"62,5", AmountKind::Paces, 62.5},
        {"62 paces", AmountKind::Paces, 62},     {"62Paces", AmountKind::Paces, 62},
        {"1 pace", AmountKind::Paces, 1},        {"0,125", AmountKind::Paces, 0.125},
        {"1200", AmountKind::Paces, 1200},       {"12.500", AmountKind::Paces, 12.5},
        {"1.25", AmountKind::Paces, 1.25},       {"1.2500", AmountKind::Paces, 1.25},
        {"0.125", AmountKind::Metres, 0.125},    {"47.125", AmountKind::Metres, 47.125},
        {"1.250 km", AmountKind::Metres, 1250},  {"47", AmountKind::Metres, 47},
        {"47 m", AmountKind::Metres, 47},        {"47,25m", AmountKind::Metres, 47.25},
        {"0.12 km", AmountKind::Metres, 120},    {"3 metres", AmountKind::Metres, 3},
        {"62\u00a0paces", AmountKind::Paces, 62}};
    const CommaLocale locale;
    for (const auto &[text, kind, value] : accepted) {
      const Reading reading = readAmount(text, kind);
      VERIFY_AT(std::holds_alternative<double>(reading), text);
      VERIFY_NEAR(std::get<double>(reading), value, 1e-12 * value, text);
    }
  }

  void amountsRefused() {
    const std::tuple<const char *, AmountKind, TextFault> refused[] = {
        {"", AmountKind::Paces, TextFault::Empty},
        {" \t\u00a0", AmountKind::Paces, TextFault::Empty},
        {"0", AmountKind::Paces, TextFault::Zero},
        {"0.00 m", AmountKind::Metres, TextFault::Zero},
        {"-5", AmountKind::Paces, TextFault::Negative},
        {"\u22125", AmountKind::Paces, TextFault::Negative},
        {"1,200", AmountKind::Paces, TextFault::Thousands},
        {"1.250", AmountKind::Paces, TextFault::Thousands},
        {"1.000 paces", AmountKind::Paces, TextFault::Thousands},
        {"9.999", AmountKind::Metres, TextFault::Thousands},
        {"1.250 m", AmountKind::Metres, TextFault::Thousands},
        {"1.250 ft", AmountKind::Metres, TextFault::Unreadable},
        {"1 200", AmountKind::Paces, TextFault::Unreadable},
        {"sixty", AmountKind::Paces, TextFault::Unreadable},
        {"60-70", AmountKind::Paces, TextFault::Unreadable},
        {"62 steps", AmountKind::Paces, TextFault::Unreadable},
        {"62 m", AmountKind::Paces, TextFault::Unreadable},
        {"62 paces", AmountKind::Metres, TextFault::Unreadable},
        {"62 ft", AmountKind::Metres, TextFault::Unreadable},
        {"+62", AmountKind::Paces, TextFault::Unreadable},
        {"1e3", AmountKind::Paces, TextFault::Unreadable},
        {"nan", AmountKind::Paces, TextFault::Unreadable},
        {"inf", AmountKind::Metres, TextFault::Unreadable},
        {"0x10", AmountKind::Paces, TextFault::Unreadable},
        {"62.", AmountKind::Paces, TextFault::Unreadable},
        {".5", AmountKind::Paces, TextFault::Unreadable},
        {"1.2.3", AmountKind::Paces, TextFault::Unreadable},
        {"1234567890123", AmountKind::Paces, TextFault::Unreadable},
        {"\u0662", AmountKind::Paces, TextFault::Unreadable},
        {"?", AmountKind::Paces, TextFault::Unreadable}};
    for (const auto &[text, kind, fault] : refused)
      VERIFY_AT(isFault(readAmount(text, kind), fault), text);
    VERIFY_AT(isFault(readAmount(std::string_view("6\0002", 3), AmountKind::Paces), TextFault::Unreadable), "NUL");
  }

  void spelling() {
    QCOMPARE(plainSpelling("  s 68\u00b005\u203235\u2033  w "), std::string("S 68*05'35\" W"));
    QCOMPARE(plainSpelling("42\u00ba 5'' \u2013"), std::string("42* 5\" -"));
    QCOMPARE(plainSpelling("\u00e9"), std::string("??"));
    QCOMPARE(plainSpelling(""), std::string());
  }

  void digitsAreKept() {
    std::string_view text = "042.25 rest";
    const auto taken = takeNumber(text);
    QVERIFY(std::holds_alternative<WrittenNumber>(taken));
    const auto &number = std::get<WrittenNumber>(taken);
    QCOMPARE(number.digits, std::string("042"));
    QCOMPARE(number.fraction, 0.25);
    QVERIFY(number.decimal);
    QCOMPARE(number.value(), 42.25);
    QCOMPARE(std::string(text), std::string(" rest"));
  }
};

QTEST_GUILESS_MAIN(NumberTextTest)
#include "number_text_test.moc"
