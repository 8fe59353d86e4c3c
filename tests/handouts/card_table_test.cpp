// SPDX-License-Identifier: GPL-2.0-or-later
// Check values: regression only.
#include "handouts/card_table.h"

#include "handouts/card_contents.h"
#include "handouts/plain_ruler.h"
#include "support/near.h"

#include <QtTest>

using namespace brushline;

namespace {
const test::PlainRuler ruler;
const TableWords words{"leg", "dial", "paces", "from, to", "min", "m", "none", "and %1 more"};

struct Case {
  std::vector<CardLeg> legs;
  CardTable table;
  Case(std::vector<CardLeg> all, double width, double paper = 148, double height = 1000)
      : legs(std::move(all)), table(legs, words, CardType::forPaper(paper), {width, height}, ruler) {}
};

bool says(const Drawing &drawing, const std::string &wanted) {
  const auto texts = test::textsOf(drawing);
  return std::any_of(texts.begin(), texts.end(), [&](const DrawnText &text) { return text.text == wanted; });
}
// The lines of warnings on a card of 105 mm, whose body is 7 points (CardType::forPaper), joined.
std::string warningsIn(const Drawing &drawing) {
  std::string told;
  for (const DrawnText &text : test::textsOf(drawing))
    if (text.face.bold && text.face.points == 7)
      told += (told.empty() ? "" : " ") + text.text;
  return told;
}

std::string sentences(int count) {
  std::string text;
  for (int i = 1; i <= count; ++i)
    text += (i == 1 ? "" : " ") + std::string("Slope ") + std::to_string(i) + " is too steep to walk: go round it.";
  return text;
}
} // namespace

class CardTableTest : public QObject {
  Q_OBJECT
private slots:
  void aRowTellsItsLeg() {
    const Case wide({test::cardLeg(3)}, 136);
    const Drawing drawing = wide.table.draw(0, 1, {6, 30});
    const CardLeg &leg = wide.legs[0];
    for (const std::string &text : {std::string("3"), leg.dial + leg.unit, leg.paces, leg.from, leg.to, leg.minutes,
                                    leg.metres, leg.back, leg.details[0]})
      QVERIFY2(says(drawing, text), text.c_str());
    const Case narrow({test::cardLeg(3)}, 95, 105);
    QVERIFY(says(narrow.table.draw(0, 1, {5, 30}), leg.metres + " m, " + leg.minutes + " min"));
  }
  void figuresAreTheLargest() {
    for (const double width : {66.0, 95.0, 136.0, 190.0, 277.0}) {
      const Case one({test::cardLeg(1), test::cardLeg(12)}, width, width < 100 ? 105 : 148);
      for (const DrawnText &text : test::textsOf(one.table.draw(0, 2, {6, 30}))) {
        QVERIFY(text.face.points >= smallestText);
        const bool figure = text.text == one.legs[0].dial + "o" || text.text == one.legs[1].dial + "o" ||
                            text.text == one.legs[0].paces || text.text == one.legs[1].paces;
        VERIFY_AT(figure ? text.face.points == one.table.bigFace().points
                         : text.face.points < one.table.bigFace().points,
                  text.text);
      }
    }
  }
  void unitsAreWrittenAsTheyAre() {
    CardLeg leg = test::cardLeg(1);
    leg.dial = "1707";
    leg.unit = " mil";
    const Case mils({leg}, 136);
    const Drawing drawing = mils.table.draw(0, 1, {6, 30});
    double number = 0, unit = 0, line = 0, unitLine = 1;
    for (const DrawnText &text : test::textsOf(drawing)) {
      if (text.text == "1707") {
        number = test::boxOf(text, ruler).right();
        line = text.at.y;
      }
      if (text.text == " mil") {
        unit = test::boxOf(text, ruler).left;
        unitLine = text.at.y;
      }
    }
    QCOMPARE(unitLine, line);
    VERIFY_NEAR(number, unit, 1e-6, "the unit stands behind its number");
  }
  void withoutADialItSaysSo() {
    CardLeg leg = test::cardLeg(1);
    leg.dial = leg.unit = leg.back = "";
    leg.warnings = {"No compass works here: too near the magnetic pole."};
    const Case none({leg}, 136);
    QVERIFY(says(none.table.draw(0, 1, {6, 30}), "none"));
    QVERIFY(says(none.table.draw(0, 1, {6, 30}), leg.warnings[0]));
  }
  void warningsAreToldWhole() {
    CardLeg leg = test::cardLeg(1);
    leg.warnings = {"Crosses 84 m of lake, pond or river, which cannot be walked. The cover of 20 m of this leg is not "
                    "known: look before you trust the marks."};
    const Case one({leg}, 95, 105);
    QVERIFY(!one.table.shortened());
    std::string told;
    for (const DrawnText &text : test::textsOf(one.table.draw(0, 1, {5, 30})))
      if (text.face.bold && leg.warnings[0].find(text.text) != std::string::npos && text.text.size() > 10)
        told += (told.empty() ? "" : " ") + text.text;
    QCOMPARE(told, leg.warnings[0]);
    QVERIFY(one.table.rowHeight(0) > Case({test::cardLeg(1)}, 95, 105).table.rowHeight(0));
  }
  void longWarningsAreNotShortened() {
    CardLeg leg = test::cardLeg(1);
    leg.warnings = {sentences(12), "Keep off the cliff."};
    const Case one({leg}, 95, 105);
    QVERIFY(!one.table.shortened());
    QCOMPARE(one.table.rows(), size_t(1));
    const std::string told = warningsIn(one.table.draw(0, 1, {5, 30}));
    QCOMPARE(told, leg.warnings[0] + " " + leg.warnings[1]);
  }
  void detailsGiveWayToWarnings() {
    CardLeg leg = test::cardLeg(1);
    leg.details.clear();
    for (int i = 0; i < 45; ++i)
      leg.details.push_back("Stump " + std::to_string(i) + " at 9 paces");
    leg.warnings = {sentences(5)};
    const Case one({leg}, 95, 105, 80);
    QCOMPARE(one.table.rows(), size_t(1));
    QVERIFY(one.table.height(0, 1) <= 80);
    const Drawing drawing = one.table.draw(0, 1, {5, 30});
    QCOMPARE(warningsIn(drawing), leg.warnings[0]);
    QVERIFY(one.table.shortened());
    size_t stumps = 0;
    for (const DrawnText &text : test::textsOf(drawing))
      stumps += text.text.rfind("Stump ", 0) == 0;
    QVERIFY(stumps > 0 && one.table.detailsLeftOut() > 0);
    QCOMPARE(stumps + one.table.detailsLeftOut(), size_t(45));
    QVERIFY(says(drawing, "and " + std::to_string(one.table.detailsLeftOut()) + " more"));

    const Case roomy({leg}, 95, 105);
    QCOMPARE(roomy.table.detailsLeftOut(), size_t(0));
    QVERIFY(!roomy.table.shortened());
  }
  void warningsLongerThanAPageGoOn() {
    CardLeg leg = test::cardLeg(7);
    leg.warnings = {sentences(60)};
    const Case one({test::cardLeg(6), leg, test::cardLeg(8)}, 95, 105, 60);
    const size_t rows = one.table.rows();
    QVERIFY(rows > 4);
    QCOMPARE(one.table.legs(0, rows), size_t(3));
    QCOMPARE(one.table.legs(2, rows - 3), size_t(0));
    int numbers = 0;
    std::string told;
    for (size_t row = 0; row < rows; ++row) {
      QVERIFY(one.table.height(row, 1) <= 60 + 1e-6);
      const Drawing drawing = one.table.draw(row, 1, {5, 30});
      for (const DrawnText &text : test::textsOf(drawing))
        numbers += text.text == "7" && text.grey == 1;
      const std::string here = warningsIn(drawing);
      told += (told.empty() || here.empty() ? "" : " ") + here;
    }
    QCOMPARE(numbers, int(rows) - 2); // of the others each has one row
    QCOMPARE(told, leg.warnings[0]);
  }
  void longNamesEndInAnEllipsis() {
    CardLeg leg = test::cardLeg(1);
    leg.to = "to " + std::string(300, 'W');
    const Case one({leg}, 95, 105);
    QVERIFY(one.table.shortened());
    QVERIFY(one.table.rowHeight(0) < 30);
    int ellipses = 0;
    for (const DrawnText &text : test::textsOf(one.table.draw(0, 1, {5, 30}))) {
      ellipses += text.text.size() > 3 && text.text.substr(text.text.size() - 3) == "\xE2\x80\xA6";
      QVERIFY(test::boxOf(text, ruler).right() <= 100 + 1e-6);
    }
    QCOMPARE(ellipses, 1);
  }
  void asManyRowsAsHaveRoom() {
    std::vector<CardLeg> legs;
    for (int i = 1; i <= 20; ++i)
      legs.push_back(test::cardLeg(i));
    const Case all(legs, 136);
    for (const double height : {0.0, 20.0, 55.5, 100.0, 1000.0}) {
      const size_t count = all.table.fitting(3, height);
      QVERIFY(count >= 1);
      QVERIFY(count == 1 || all.table.height(3, count) <= height + 1e-9);
      QVERIFY(3 + count == 20 || all.table.height(3, count + 1) > height);
    }
    double sum = all.table.headHeight();
    for (size_t i = 0; i < 20; ++i)
      sum += all.table.rowHeight(i);
    VERIFY_NEAR(all.table.height(0, 20), sum, 1e-9, "height");
  }
  void hugeNumbersStayInTheirColumns() {
    CardLeg leg = test::cardLeg(123);
    leg.paces = "123456";
    leg.metres = "98765";
    leg.minutes = "1234";
    const Case one({leg, test::cardLeg(2)}, 95, 105);
    const auto texts = test::textsOf(one.table.draw(0, 2, {5, 30}));
    for (size_t i = 0; i < texts.size(); ++i)
      for (size_t k = 0; k < i; ++k)
        VERIFY_AT(!test::boxOf(texts[i], ruler).meets(test::boxOf(texts[k], ruler)),
                  texts[i].text + " / " + texts[k].text);
  }
};

QTEST_APPLESS_MAIN(CardTableTest)
#include "card_table_test.moc"
