// SPDX-License-Identifier: GPL-2.0-or-later
// Check values: arithmetic (1 : n means n millimetres on the ground for one on paper); else regression only.
#include "handouts/map_scale.h"

#include "support/near.h"
#include "support/random.h"

#include <QtTest>

using namespace brushline;

class MapScaleTest : public QObject {
  Q_OBJECT
private slots:
  void scalesAreWhatTheySay() {
    const MapScale scale{10000};
    QCOMPARE(scale.toPaper(250), 25.0); // 250 m are 25 mm
    QCOMPARE(scale.toGround(25), 250.0);
  }
  void theLargestRoundOneThatFits() {
    const Area room{0, 0, 100, 60};
    QCOMPARE(roundScale({1000, 100}, room).number, 10000.0);
    QCOMPARE(roundScale({1001, 100}, room).number, 12500.0);
    QCOMPARE(roundScale({100, 1000}, room).number, 20000.0); // 16667 would fill the height
    QCOMPARE(roundScale({10, 10}, room).number, 250.0);      // no larger one
    QCOMPARE(roundScale({0, 0}, room).number, 250.0);
    QCOMPARE(roundScale({50000, 20000}, room).number, 500000.0);
  }
  void fittedOnesFit() {
    test::Random random(3);
    for (int i = 0; i < 5000; ++i) {
      const GroundSize what{std::pow(10, random.between(0, 6)), std::pow(10, random.between(0, 6))};
      const Area room{5, 5, random.between(20, 250), random.between(20, 250)};
      const MapScale scale = roundScale(what, room);
      QVERIFY(hasRoom(what, room, scale));
      // Not smaller than needed: the next larger round number is 1.5 times at the most (1 to 1.25 ... 7.5 to 10).
      QVERIFY(scale.number == 250 || !hasRoom(what, room, {scale.number / 1.51}));
    }
  }
  void roundNumbersBelow() {
    for (const auto &[value, expected] : {std::pair(1.0, 1.0),
                                          {1.99, 1.0},
                                          {2.0, 2.0},
                                          {4.99, 2.0},
                                          {5.0, 5.0},
                                          {9.99, 5.0},
                                          {10.0, 10.0},
                                          {999.0, 500.0},
                                          {0.03, 0.02},
                                          {0.1, 0.1}})
      VERIFY_NEAR(roundDown(value), expected, 1e-12, std::to_string(value));
  }

  void parallelsRunAsTold() {
    const Area area{10, 20, 80, 50};
    for (const double turn : {0.0, 17.0, -17.0, 90.0, 135.0, 180.0, -89.999}) {
      const auto lines = parallelsAcross(area, turn, 12);
      QVERIFY(lines.size() > 3);
      bool middle = false;
      double last = 1e9;
      for (const auto &[from, to] : lines) {
        for (const Spot &end : {from, to}) {
          QVERIFY(area.grown(1e-6).holds(Area{end.x, end.y, 0, 0}));
          const double edge = std::min(std::min(end.x - area.left, area.right() - end.x),
                                       std::min(end.y - area.top, area.bottom() - end.y));
          VERIFY_NEAR(edge, 0, 1e-6, std::to_string(turn)); // from edge to edge
        }
        // Clockwise from upward, y downward.
        const double drawn = std::atan2(to.x - from.x, -(to.y - from.y)) * 180 / Angle::pi;
        VERIFY_NEAR(test::turnBetween(drawn, turn), 0, 1e-6, std::to_string(turn));
        const double radians = turn * Angle::pi / 180;
        const double across =
            (from.x - area.centre().x) * std::cos(radians) + (from.y - area.centre().y) * std::sin(radians);
        if (last < 1e8)
          VERIFY_NEAR(std::abs(across - last), 12, 1e-6, std::to_string(turn));
        middle |= std::abs(across) < 1e-6;
        last = across;
      }
      QVERIFY(middle);
    }
  }
};

QTEST_APPLESS_MAIN(MapScaleTest)
#include "map_scale_test.moc"
