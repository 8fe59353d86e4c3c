// SPDX-License-Identifier: GPL-2.0-or-later
// Check values: XML 1.0 (Fifth Edition), production 2: Char ::= #x9 | #xA | #xD | [#x20-#xD7FF] | [#xE000-#xFFFD] |
// [#x10000-#x10FFFF] (from memory). Bidi_Control of Unicode: 061C, 200E, 200F, 202A to 202E, 2066 to 2069 (from
// memory).
#include "handouts/xml_text.h"

#include <QtTest>

using namespace brushline;

namespace {
std::u16string cleaned(std::u16string_view text) {
  const auto fit = forXml(text);
  return fit ? fit->text : std::u16string(text);
}
bool mayStand(char32_t c) {
  return c == 0x9 || c == 0xA || c == 0xD || (c >= 0x20 && c <= 0xD7FF) || (c >= 0xE000 && c <= 0xFFFD) || c >= 0x10000;
}
} // namespace

class XmlTextTest : public QObject {
  Q_OBJECT
private slots:
  void mostTextStays() {
    for (const char16_t *text : {u"", u"Camp", u"<b>&amp;]]>\"'</b>", u"Ørret – 狐", u"🦊 👩‍👩‍👧",
                                 u"שלום", u"\uFFFD", u"\uE000"})
      QVERIFY(!forXml(text));
  }

  void replaced() {
    const auto fit = forXml(std::u16string_view(u"a\0b\x01"
                                                u"c\x1F"
                                                u"d\x7F"
                                                u"e\x9B"
                                                u"f",
                                                11));
    QVERIFY(fit && fit->replaced && !fit->directions_removed);
    QVERIFY(fit->text == u"a\uFFFDb\uFFFDc\uFFFDd\uFFFDe\uFFFDf");
    QVERIFY(cleaned(u"x\uFFFEy\uFFFFz") == u"x\uFFFDy\uFFFDz");
  }

  void halvesOfPairs() {
    const char16_t high = 0xD83E, low = 0xDD8A; // a fox
    QVERIFY(cleaned(std::u16string{high}) == u"\uFFFD");
    QVERIFY(cleaned(std::u16string{low}) == u"\uFFFD");
    QVERIFY(cleaned(std::u16string{low, high}) == u"\uFFFD\uFFFD");
    QVERIFY(cleaned(std::u16string{high, high, low}) == (std::u16string{0xFFFD, high, low}));
    QVERIFY(!forXml(std::u16string{high, low}));
  }

  void directionsAreLeftOut() {
    const auto fit = forXml(u"a\u202Egpx.exe\u2066\u200F\u061C");
    QVERIFY(fit && !fit->replaced && fit->directions_removed);
    QVERIFY(fit->text == u"agpx.exe");
  }

  void endsOfLinesBecomeSpaces() {
    const auto fit = forXml(u"a\nb\r\nc\td\re\u2028f\u0085g");
    QVERIFY(fit && !fit->replaced && !fit->directions_removed);
    QVERIFY(fit->text == u"a b c d e f g");
    QVERIFY(cleaned(u"\n") == u" ");
  }

  void everySignOfThePlane() {
    for (unsigned c = 0; c <= 0xFFFF; ++c) {
      const std::u16string text = cleaned(std::u16string{u'a', char16_t(c), u'b'});
      for (const char16_t sign : text)
        QVERIFY2(mayStand(sign), qPrintable(QString::number(c, 16)));
      if (!mayStand(c))
        QVERIFY2(text == u"a\uFFFDb", qPrintable(QString::number(c, 16)));
    }
  }
};

QTEST_APPLESS_MAIN(XmlTextTest)
#include "xml_text_test.moc"
