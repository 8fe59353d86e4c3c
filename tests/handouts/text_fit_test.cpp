// SPDX-License-Identifier: GPL-2.0-or-later
// Check values: regression only; widths are those of the ruler of the tests.
#include "handouts/text_fit.h"

#include "handouts/plain_ruler.h"
#include "support/random.h"

#include <QtTest>

using namespace brushline;

namespace {
const test::PlainRuler ruler;
const Face face{10};
// So many letters wide.
double letters(double count) { return count * ruler.width("x", face) + 1e-6; }
const std::string ellipsis = "\xE2\x80\xA6"; // three letters to this ruler

// Counts the bytes that are measured.
class Counting final : public TextRuler {
public:
  double width(const std::string &text, const Face &measured) const override {
    mMeasured += text.size();
    return ruler.width(text, measured);
  }
  std::vector<size_t> letterEnds(const std::string &text) const override { return ruler.letterEnds(text); }
  std::vector<size_t> lineEnds(const std::string &text) const override { return ruler.lineEnds(text); }
  mutable size_t mMeasured = 0;
};
} // namespace

class TextFitTest : public QObject {
  Q_OBJECT
private slots:
  void wordsGoToTheNextLine() {
    const FittedText fitted = fitText("one two three", face, letters(7), 5, ruler);
    QCOMPARE(fitted.lines, (std::vector<std::string>{"one two", "three"}));
    QVERIFY(!fitted.shortened);
  }
  void nothingGivesNothing() {
    QVERIFY(fitText("", face, letters(7), 3, ruler).lines.empty());
    QVERIFY(fitText("   ", face, letters(7), 3, ruler).lines.empty());
    QVERIFY(inOneLine("", face, 10, ruler).empty());
  }
  void aWordThatIsTooWideIsParted() {
    QCOMPARE(fitText("abcdefghij", face, letters(4), 5, ruler).lines, (std::vector<std::string>{"abcd", "efgh", "ij"}));
  }
  void whatHasNoRoomEndsInAnEllipsis() {
    const FittedText fitted = fitText("one two three four", face, letters(7), 2, ruler);
    QVERIFY(fitted.shortened);
    QCOMPARE(fitted.lines, (std::vector<std::string>{"one two", "thre" + ellipsis}));
    QCOMPARE(inOneLine("abcdefghij", face, letters(6), ruler), "abc" + ellipsis);
  }
  void narrowerThanALetter() {
    const FittedText fitted = fitText("abc", face, 0.01, 10, ruler);
    QCOMPARE(fitted.lines, (std::vector<std::string>{"a", "b", "c"}));
  }
  void whatFitsIsNotChanged() {
    QCOMPARE(inOneLine("abc", face, letters(3), ruler), std::string("abc"));
    QCOMPARE(fitText("  abc  ", face, letters(3), 1, ruler).lines, std::vector<std::string>{"abc"});
  }
  void facesShrinkNoFurtherThanCanBeRead() {
    QCOMPARE(narrowed("abc", face, letters(3), ruler).points, 10.0);
    QVERIFY(ruler.width("abcdef", narrowed("abcdef", {20}, letters(6), ruler)) <= letters(6));
    QCOMPARE(narrowed("abcdefghijklmnop", face, 1, ruler).points, smallestText);
  }

  // A name of a million letters costs no more than one of some hundred.
  void longTextsAreMeasuredNoFurtherThanTheLine() {
    const Counting counting;
    const std::string text(1000000, 'x');
    QCOMPARE(inOneLine(text, face, letters(20), counting), std::string(17, 'x') + ellipsis);
    QVERIFY(counting.mMeasured < 5 * text.size());
  }

  // Warnings are told whole, and a long word is not measured to its end for each of its lines.
  void allLinesOfALongText() {
    const Counting counting;
    const std::string text(20000, 'x');
    const FittedText fitted = fitText(text, face, letters(20), allLines, counting);
    QVERIFY(!fitted.shortened);
    QCOMPARE(fitted.lines, std::vector<std::string>(1000, std::string(20, 'x')));
    // For each line 300 letters of the rest, then 2 to 21 one by one: 530.
    QVERIFY2(counting.mMeasured < 1000 * 600, qPrintable(QString::number(counting.mMeasured)));
  }

  // No letter is lost or turned round, and no line is too wide.
  void nothingIsLost() {
    test::Random random(11);
    for (int round = 0; round < 2000; ++round) {
      std::string text;
      const int words = 1 + int(random.between(0, 8));
      for (int i = 0; i < words; ++i)
        text += std::string(i ? 1 : 0, ' ') + std::string(size_t(1 + random.between(0, 12)), char('a' + i));
      const double width = letters(1 + std::floor(random.between(0, 15)));
      std::string joined, bare;
      for (const std::string &line : fitText(text, face, width, 1000, ruler).lines) {
        QVERIFY(ruler.width(line, face) <= width);
        joined += line;
      }
      for (std::string *one : {&joined, &text})
        one->erase(std::remove(one->begin(), one->end(), ' '), one->end());
      QCOMPARE(joined, text);
    }
  }
};

QTEST_APPLESS_MAIN(TextFitTest)
#include "text_fit_test.moc"
