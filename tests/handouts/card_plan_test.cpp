// SPDX-License-Identifier: GPL-2.0-or-later
// Check values: paper sizes of ISO 216 and letter (from memory); else regression only.
#include "handouts/card_plan.h"

#include "handouts/card_contents.h"
#include "handouts/plain_ruler.h"
#include "support/near.h"

#include <QtTest>

#include <cctype>
#include <sstream>

using namespace brushline;

namespace {

const test::PlainRuler ruler;
constexpr PaperSize a6{105, 148}, a5{148, 210}, a4{210, 297}, letter{215.9, 279.4}, halfLetter{139.7, 215.9};

// The legs' numbers as they are told by the black boxes, in order.
std::vector<int> legsOn(const CardPlan &plan, const CardContents &contents) {
  std::vector<int> numbers;
  for (const CardPage &page : plan.pages)
    for (const DrawnText &text : test::textsOf(page.drawing))
      if (text.grey == 1 && text.text != "!")
        numbers.push_back(std::stoi(text.text));
  Q_UNUSED(contents)
  return numbers;
}

// Each number for the dial and of paces is told once, beside its leg.
bool figuresTold(const CardPlan &plan, const CardContents &contents) {
  for (const CardLeg &leg : contents.legs) {
    bool told = false;
    for (const CardPage &page : plan.pages) {
      double line = -1;
      const auto texts = test::textsOf(page.drawing);
      for (const DrawnText &text : texts)
        if (text.grey == 1 && text.text == std::to_string(leg.number))
          line = text.at.y;
      for (const DrawnText &dial : texts)
        for (const DrawnText &paces : texts)
          told |= line >= 0 && dial.text == leg.dial + leg.unit && paces.text == leg.paces && dial.at.y == paces.at.y &&
                  std::abs(dial.at.y - line) < 5 && dial.face.points == plan.figures;
    }
    if (!told)
      return false;
  }
  return true;
}

// So many words that are told apart: "w0 w1 w2".
std::string words(char letter, int count) {
  std::string text;
  for (int i = 0; i < count; ++i)
    text += (i == 0 ? "" : " ") + std::string(1, letter) + std::to_string(i);
  return text;
}

// Those words as the pages have them, one after another.
std::string told(const CardPlan &plan, char letter) {
  std::string all;
  for (const CardPage &page : plan.pages)
    for (const DrawnText &text : test::textsOf(page.drawing)) {
      std::istringstream line(text.text);
      for (std::string word; line >> word;)
        if (word.size() > 1 && word[0] == letter && std::isdigit(static_cast<unsigned char>(word[1])))
          all += (all.empty() ? "" : " ") + word;
    }
  return all;
}

// Texts that lie outside the margins or over each other; empty when all is well.
std::string misplaced(const CardPlan &plan, PaperSize paper) {
  const double margin = CardType::forPaper(std::min(paper.width, paper.height)).margin;
  const Area inside = Area{0, 0, paper.width, paper.height}.grown(-margin + 0.01);
  for (const CardPage &page : plan.pages) {
    const auto texts = test::textsOf(page.drawing);
    for (size_t i = 0; i < texts.size(); ++i) {
      const Area box = test::boxOf(texts[i], ruler);
      if (!inside.holds(box) || (page.map && page.map->meets(box)))
        return texts[i].text;
      for (size_t k = 0; k < i; ++k)
        if (box.grown(-0.02).meets(test::boxOf(texts[k], ruler)))
          return texts[i].text + " / " + texts[k].text;
    }
  }
  return std::string();
}

} // namespace

class CardPlanTest : public QObject {
  Q_OBJECT
private slots:
  void cards_data() {
    QTest::addColumn<double>("width");
    QTest::addColumn<double>("height");
    QTest::addColumn<int>("legs");
    QTest::addColumn<bool>("pictures");
    QTest::addColumn<bool>("profile");
    for (const PaperSize paper : {a6, a5, a4, letter, halfLetter})
      for (const bool across : {false, true})
        for (const int legs : {1, 2, 5, 7, 13, 40, 130})
          for (const int with : {0, 1, 2, 3}) {
            if (legs >= 40 && (with != 3 || paper.width > 110)) // long ones take long
              continue;
            const PaperSize size = across ? paper.turned() : paper;
            QTest::newRow(
                qPrintable(QStringLiteral("%1x%2, %3 legs, %4").arg(size.width).arg(size.height).arg(legs).arg(with)))
                << size.width << size.height << legs << bool(with & 1) << bool(with & 2);
          }
  }
  void cards() {
    QFETCH(double, width);
    QFETCH(double, height);
    QFETCH(int, legs);
    QFETCH(bool, pictures);
    QFETCH(bool, profile);
    const CardContents contents = test::cardContents(legs, pictures, profile);
    const CardPlan plan = planCard(contents, {width, height}, ruler);
    const double margin = CardType::forPaper(std::min(width, height)).margin;
    const Area inside = Area{0, 0, width, height}.grown(-margin + 0.01);

    // No leg is lost, none comes twice, and the order is kept.
    const std::vector<int> numbers = legsOn(plan, contents);
    QCOMPARE(int(numbers.size()), legs);
    for (int i = 0; i < legs; ++i)
      QCOMPARE(numbers[size_t(i)], i + 1);
    size_t counted = 0;
    int maps = 0;
    for (const CardPage &page : plan.pages) {
      counted += page.leg_count;
      maps += page.map.has_value();
    }
    QCOMPARE(counted, size_t(legs));
    QCOMPARE(maps, 1);
    QVERIFY(figuresTold(plan, contents));

    for (size_t i = 0; i < plan.pages.size(); ++i) {
      const CardPage &page = plan.pages[i];
      QVERIFY(test::isFinite(page.drawing));
      const auto texts = test::textsOf(page.drawing);
      // The head is on each page.
      for (const std::string &text : {contents.title, contents.walker})
        QVERIFY(std::any_of(texts.begin(), texts.end(), [&](const DrawnText &one) { return one.text == text; }));
      if (plan.pages.size() > 1) {
        const std::string mark = "card " + std::to_string(i + 1) + " of " + std::to_string(plan.pages.size());
        QVERIFY(std::any_of(texts.begin(), texts.end(), [&](const DrawnText &one) { return one.text == mark; }));
        QCOMPARE(std::any_of(texts.begin(), texts.end(),
                             [](const DrawnText &one) { return one.text.rfind("goes on", 0) == 0; }),
                 i + 1 < plan.pages.size());
      }
      for (size_t k = 0; k < texts.size(); ++k) {
        const Area box = test::boxOf(texts[k], ruler);
        VERIFY_AT(inside.holds(box), texts[k].text);
        QVERIFY(texts[k].face.points >= smallestText);
        QVERIFY(texts[k].face.points <= plan.figures);
        for (size_t m = 0; m < k; ++m)
          VERIFY_AT(!box.grown(-0.02).meets(test::boxOf(texts[m], ruler)), texts[k].text + " / " + texts[m].text);
      }
      for (const auto &area : {page.map, page.strip, page.profile}) {
        if (!area)
          continue;
        QVERIFY(inside.holds(*area));
        for (const DrawnText &text : texts)
          VERIFY_AT(!area->meets(test::boxOf(text, ruler)), text.text);
      }
      if (page.map) {
        QVERIFY(page.map->height >= 34);
        QVERIFY(page.map->width >= 45);
        QVERIFY(page.strip && page.profile.has_value() == profile);
        QVERIFY(!page.map->meets(page.strip->grown(-1e-6)));
        QVERIFY(!profile || !page.profile->meets(page.strip->grown(-1e-6)));
      }
    }

    // What is to be written by hand, and the cautions, stand on the card once.
    for (const std::string &wanted : {contents.words.turn_back, contents.words.told, contents.words.back_by}) {
      int count = 0;
      for (const CardPage &page : plan.pages)
        for (const DrawnText &text : test::textsOf(page.drawing))
          count += text.text == wanted;
      QCOMPARE(count, 1);
    }
    std::string all;
    for (const CardPage &page : plan.pages)
      for (const DrawnText &text : test::textsOf(page.drawing))
        all += text.text + " ";
    for (const std::string &caution : contents.cautions)
      VERIFY_AT(all.find(caution) != std::string::npos, caution);
    QVERIFY(!plan.shortened);
  }

  void aFewLegsGoOnOnePage() {
    CardContents flat = test::cardContents(2);
    flat.course_aspect = 0.3; // a low map does
    QCOMPARE(planCard(flat, a6, ruler).pages.size(), size_t(1));
    QCOMPARE(planCard(test::cardContents(3), a5, ruler).pages.size(), size_t(1));
    QCOMPARE(planCard(test::cardContents(6), a4.turned(), ruler).pages.size(), size_t(1));
  }
  void figuresAreLargeEnoughToRead() {
    // Points; a twelve-year-old reads them at arm's length (common practice, no source).
    QVERIFY(planCard(test::cardContents(7), a6, ruler).figures >= 14);
    QVERIFY(planCard(test::cardContents(7), a5, ruler).figures >= 20);
    QVERIFY(planCard(test::cardContents(7), a4, ruler).figures >= 26);
  }
  void theTableGrowsIntoRoomThatIsLeft() {
    CardContents contents = test::cardContents(5);
    contents.course_aspect = 2; // wants a large map, so a page of its own
    const CardPlan plan = planCard(contents, a5, ruler);
    QCOMPARE(plan.pages.size(), size_t(2));
    QVERIFY(plan.figures > CardType::forPaper(148).big.points);
  }
  void aNoteStandsOverTheMap() {
    CardContents contents = test::cardContents(3);
    const CardPlan without = planCard(contents, a5, ruler);
    contents.map_note = "At 1:2000 the course is larger than this map, so the map is drawn at 1:12500.";
    const CardPlan with = planCard(contents, a5, ruler);
    QVERIFY(with.pages.back().map->height < without.pages.back().map->height);
    const auto texts = test::textsOf(with.pages.back().drawing);
    QVERIFY(std::any_of(texts.begin(), texts.end(),
                        [](const DrawnText &text) { return text.text.rfind("At 1:2000", 0) == 0; }));
  }
  void longTextsAreShortenedAndToldOf() {
    CardContents contents = test::cardContents(3);
    contents.title = std::string(300, 'W');
    contents.walker = std::string(300, 'M');
    const CardPlan plan = planCard(contents, a6, ruler);
    QVERIFY(plan.shortened);
    const Area inside = Area{0, 0, a6.width, a6.height}.grown(-5 + 0.01);
    for (const CardPage &page : plan.pages)
      for (const DrawnText &text : test::textsOf(page.drawing))
        VERIFY_AT(inside.holds(test::boxOf(text, ruler)), text.text);
  }
  void moreDetailsThanAPageHolds() {
    for (const PaperSize paper : {a6, a6.turned(), a5, a4}) {
      CardContents contents = test::cardContents(3);
      CardLeg &leg = contents.legs[1];
      leg.details.clear();
      for (int i = 0; i < 145; ++i)
        leg.details.push_back("Stump " + std::to_string(i));
      leg.warnings = {words('w', 60)};
      const CardPlan plan = planCard(contents, paper, ruler);
      QCOMPARE(misplaced(plan, paper), std::string());
      QCOMPARE(told(plan, 'w'), leg.warnings[0]);
      QVERIFY(plan.shortened && plan.details_left_out > 0);
      QCOMPARE(legsOn(plan, contents), (std::vector<int>{1, 2, 3}));
      const std::string note = "and " + std::to_string(plan.details_left_out) + " more";
      int notes = 0;
      for (const CardPage &page : plan.pages)
        for (const DrawnText &text : test::textsOf(page.drawing))
          notes += text.text == note;
      QCOMPARE(notes, 1);
    }
  }
  void warningsGoOnOverPages() {
    for (const PaperSize paper : {a6, a6.turned(), a5, a4.turned()}) {
      CardContents contents = test::cardContents(3);
      contents.legs[1].warnings = {words('w', 2500)};
      const CardPlan plan = planCard(contents, paper, ruler);
      QCOMPARE(misplaced(plan, paper), std::string());
      QCOMPARE(told(plan, 'w'), contents.legs[1].warnings[0]);
      QCOMPARE(plan.details_left_out, size_t(0)); // they keep their room
      size_t legs = 0;
      for (const CardPage &page : plan.pages)
        legs += page.leg_count;
      QCOMPARE(legs, size_t(3));
    }
  }
  void notesAndCautionsAreWhole() {
    for (const PaperSize paper : {a6, a6.turned(), a5, a5.turned(), a4, a4.turned()})
      for (const int count : {20, 60, 200, 600, 2000}) { // on A6 across six lines of its column and more
        CardContents contents = test::cardContents(7, true, true);
        contents.notes = {words('n', count)};
        contents.cautions = {words('c', count)};
        const CardPlan plan = planCard(contents, paper, ruler);
        const std::string where = std::to_string(paper.width) + " mm, " + std::to_string(count) + " words";
        VERIFY_AT(misplaced(plan, paper).empty(), where + ": " + misplaced(plan, paper));
        VERIFY_AT(told(plan, 'n') == contents.notes[0], where);
        VERIFY_AT(told(plan, 'c') == contents.cautions[0], where);
        QVERIFY(!plan.shortened);
        int maps = 0;
        for (const CardPage &page : plan.pages)
          if (page.map) {
            ++maps;
            VERIFY_AT(page.map->height >= 34 && page.map->width >= 45, where);
          }
        QCOMPARE(maps, 1);
      }
  }
  void theRouteIsToldBelowATitle() {
    CardContents contents = test::cardContents(3);
    contents.route = "North loop";
    for (const CardPage &page : planCard(contents, a5, ruler).pages) {
      const auto texts = test::textsOf(page.drawing);
      QVERIFY(std::any_of(texts.begin(), texts.end(), [](const DrawnText &text) { return text.text == "North loop"; }));
    }
  }
};

QTEST_APPLESS_MAIN(CardPlanTest)
#include "card_plan_test.moc"
