// SPDX-License-Identifier: GPL-2.0-or-later
#include "sighting/footing.h"

#include "support/near.h"

#include <QtTest>

#include <cmath>
#include <limits>
#include <memory>

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
    QCOMPARE(footingOf(pieces, table, Length::metres(50), 0.5)[1].speed_factor.value(), 0.5);
    QCOMPARE(footingOf(pieces, table, Length::metres(50), 0.5)[0].speed_factor.value(), 0.4);
    QVERIFY(footingOf({}, table, Length::metres(50)).empty());
  }

  // Worked by hand: 130 steps over 100 m of level ground, brush that costs a quarter more on all of the line.
  void stepsAlongALine() {
    Walker walker;
    walker.steps_per_100m = 130;
    const Place from{Angle::degrees(48), Angle::degrees(-67)};
    const GeodesicLeg line = geodesicBetween(from, {Angle::degrees(48.001), Angle::degrees(-67)});
    const double level = line.length.metres() * 1.3;
    QVERIFY(std::abs(stepsAlong(from, line, walker, nullptr, nullptr, nullptr) - level) < 1e-9);
    QCOMPARE(stepsAlong(from, geodesicBetween(from, from), walker, nullptr, nullptr, nullptr), 0.0);

    CoverTable table;
    CoverClass brush;
    brush.name = "brush";
    brush.pace_factor = 1.25;
    table.add(brush);
    const Project same = [](std::vector<double> &, std::vector<double> &) {};
    CoverSource cover({0.1});
    cover.setPatches(
        std::make_shared<CoverMap>(std::vector<CoverPatch>{{{{{-68, 47}, {-66, 47}, {-66, 49}, {-68, 49}}}, 0}}), same);
    QVERIFY(std::abs(stepsAlong(from, line, walker, nullptr, &cover, &table) - 1.25 * level) < 1e-6);

    GridShape shape;
    shape.left = -68;
    shape.top = 49;
    shape.columns = shape.rows = 200;
    shape.cell_width = shape.cell_height = 0.01;
    // Rises northward by 300 m over a cell of 0.01 degrees, so by 30 m on the line; a value in the northern half.
    const auto land = [&](float known) {
      return TiledGrid(shape, [known](const CellWindow &window) {
        std::vector<float> cells;
        for (int64_t row = window.row; row < window.row + window.rows; ++row)
          cells.insert(cells.end(), size_t(window.columns), row < 100 ? known : float(200 - row) * 300);
        return cells;
      });
    };
    Terrain hole(land(std::numeric_limits<float>::quiet_NaN()), same), hill(land(30300), same);
    QVERIFY(std::abs(stepsAlong(from, line, walker, &hole, nullptr, nullptr) - level) < 1e-9); // not known: level

    // 30 m on 111.2 m: 15.1 degrees. By the table of Moss 1917 steps of 30.4 inches on the level are, on such ground,
    // between 22.1 (15 degrees) and 19.7 inches (20 degrees) long uphill, between 27.6 and 26.4 downhill.
    const double way = std::hypot(line.length.metres(), 30);
    const double past15 = Angle::radians(std::atan2(30, line.length.metres())).degrees() - 15;
    QVERIFY(past15 > 0 && past15 < 5);
    const double uphill = 1.3 * way * 30.4 / (22.1 + past15 / 5 * (19.7 - 22.1));
    const double downhill = 1.3 * way * 30.4 / (27.6 + past15 / 5 * (26.4 - 27.6));
    VERIFY_NEAR(stepsAlong(from, line, walker, &hill, nullptr, nullptr), uphill, 1e-3, "uphill");
    VERIFY_NEAR(stepsAlong(from, line, walker, &hill, &cover, &table), 1.25 * uphill, 1e-3, "uphill in brush");
    const Place top{Angle::degrees(48.001), Angle::degrees(-67)};
    VERIFY_NEAR(stepsAlong(top, geodesicBetween(top, from), walker, &hill, nullptr, nullptr), downhill, 1e-3,
                "downhill");
  }
};

QTEST_APPLESS_MAIN(FootingTest)
#include "footing_test.moc"
