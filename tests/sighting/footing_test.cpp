// SPDX-License-Identifier: GPL-2.0-or-later
#include "sighting/footing.h"

#include <QtTest>

using namespace brushline;

class FootingTest : public QObject {
  Q_OBJECT
private slots:
  void takesTheTablesFactorsUpToTheLength() {
    CoverTable table;
    CoverClass brush;
    brush.name = "brush";
    brush.pace_factor = 1.25;
    brush.speed_factor = 0.4;
    table.add(brush);
    CoverClass water;
    water.name = "water";
    water.speed_factor.reset();
    table.add(water);
    const std::vector<CoverPiece> pieces = {
        {10, 0, 0.1, false}, {30, -1, std::nullopt, false}, {70, 1, 0.1, false}, {90, 0, 0.1, false}};
    const auto footing = footingOf(pieces, table, Length::metres(50));
    QCOMPARE(footing.size(), size_t(3));
    QCOMPARE(footing[0].to_m, 10.0);
    QCOMPARE(footing[0].pace_factor, 1.25);
    QCOMPARE(footing[0].speed_factor.value(), 0.4);
    QCOMPARE(footing[1].pace_factor, 1.0); // not known: as it is
    QCOMPARE(footing[1].speed_factor.value(), 1.0);
    QCOMPARE(footing[2].to_m, 50.0);
    QVERIFY(!footing[2].speed_factor);
    QVERIFY(footingOf({}, table, Length::metres(50)).empty());
  }
};

QTEST_APPLESS_MAIN(FootingTest)
#include "footing_test.moc"
