// SPDX-License-Identifier: GPL-2.0-or-later
// Check values: paper sizes of ISO 216 (two of a size make the next larger one; from memory), letter 8.5 x 11 inches.
#include "handouts/sheet_plan.h"

#include "handouts/plain_ruler.h"

#include <QtTest>

using namespace brushline;

namespace {
constexpr PaperSize a3{297, 420}, a4{210, 297}, a5{148, 210}, a6{105, 148}, letter{215.9, 279.4}, half{139.7, 215.9};
}

class SheetPlanTest : public QObject {
  Q_OBJECT
private slots:
  void cardsThatAreHalvesFillTheSheet() {
    QCOMPARE(planSheet(a4, a6, 0).cards.size(), size_t(4));
    QCOMPARE(planSheet(a4, a6.turned(), 0).cards.size(), size_t(4));
    QCOMPARE(planSheet(a4, a5, 0).cards.size(), size_t(2));
    QCOMPARE(planSheet(a3, a6, 0).cards.size(), size_t(8));
    QCOMPARE(planSheet(letter, half, 0).cards.size(), size_t(2));
    QCOMPARE(planSheet(a4, a4, 0).cards.size(), size_t(1));
    QVERIFY(planSheet(a6, a4, 0).cards.empty());
    QVERIFY(planSheet(letter, a3, 0).cards.empty());
  }
  void theSheetIsTurnedWhenItHoldsMore() {
    QVERIFY(planSheet(a4, a5, 0).sheet.width > planSheet(a4, a5, 0).sheet.height);
    QVERIFY(planSheet(a4, a5.turned(), 0).sheet.width < planSheet(a4, a5.turned(), 0).sheet.height);
  }
  void noMoreThanAskedFor() {
    for (const int most : {1, 2, 3, 4})
      QCOMPARE(int(planSheet(a4, a6, most).cards.size()), most);
    QCOMPARE(planSheet(a4, a6, 9).cards.size(), size_t(4));
  }
  void cardsLieOnTheSheetAndBesideEachOther() {
    for (const PaperSize sheet : {a3, a4, letter})
      for (const PaperSize card : {a6, a6.turned(), a5, a5.turned(), half})
        for (const int most : {0, 1, 2, 3}) {
          const SheetPlan plan = planSheet(sheet, card, most);
          const Area paper{0, 0, plan.sheet.width, plan.sheet.height};
          for (size_t i = 0; i < plan.cards.size(); ++i) {
            QVERIFY(paper.grown(1).holds(plan.cards[i])); // paper is rounded to millimetres
            QCOMPARE(plan.cards[i].width, card.width);
            QCOMPARE(plan.cards[i].height, card.height);
            for (size_t k = 0; k < i; ++k)
              QVERIFY(!plan.cards[i].meets(plan.cards[k].grown(-1e-6)));
          }
        }
  }
  void cutsLieBetweenCardsAndNotThroughThem() {
    for (const PaperSize card : {a6, a5, half}) {
      const SheetPlan plan = planSheet(a4, card, 0);
      const auto cuts = test::partsOf<DrawnShape>(cuttingLines(plan));
      for (const DrawnShape &cut : cuts) {
        QVERIFY(cut.dashed);
        for (const Area &each : plan.cards) {
          const Area inner = each.grown(-0.01);
          const bool upright = cut.corners[0].x == cut.corners[1].x;
          QVERIFY(upright ? cut.corners[0].x <= inner.left || cut.corners[0].x >= inner.right()
                          : cut.corners[0].y <= inner.top || cut.corners[0].y >= inner.bottom());
        }
      }
    }
    QCOMPARE(test::partsOf<DrawnShape>(cuttingLines(planSheet(a4, a6, 0))).size(), size_t(2)); // one each way
    QCOMPARE(test::partsOf<DrawnShape>(cuttingLines(planSheet(a4, a4, 0))).size(), size_t(0));
    QCOMPARE(test::partsOf<DrawnShape>(cuttingLines(planSheet(a4, a6, 1))).size(), size_t(4)); // all round
  }
};

QTEST_APPLESS_MAIN(SheetPlanTest)
#include "sheet_plan_test.moc"
