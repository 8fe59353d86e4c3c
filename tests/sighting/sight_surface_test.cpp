// SPDX-License-Identifier: GPL-2.0-or-later
#include "sighting/sight_surface.h"

#include "sighting/extinction.h"

#include <QtTest>

#include <cmath>

using namespace brushline;

class SightSurfaceTest : public QObject {
  Q_OBJECT
private slots:
  // Cells of 2 from x = 0; a patch from 3 to 9: the centres 3, 5, 7 lie in it (3 on its border, to the right).
  void cellsTakeTheCoverAtTheirCentres() {
    const CoverMap map({{{{{3, -5}, {9, -5}, {9, 5}, {3, 5}}}, 0}});
    std::vector<double> row(7);
    extinctionRow(map, {0.1}, {1, 0}, 2, row);
    QVERIFY(std::isnan(row[0]));
    for (size_t i = 2; i <= 3; ++i)
      QCOMPARE(row[i], 0.1);
    QVERIFY(std::isnan(row[4]) || row[4] == 0.1); // its centre is on the border
    QVERIFY(std::isnan(row[5]));
    QVERIFY(std::isnan(row[6]));
  }

  void rowsOutsideAreUnknown() {
    const CoverMap map({{{{{0, 0}, {4, 0}, {4, 4}, {0, 4}}}, 0}});
    std::vector<double> row(3, 7.0);
    extinctionRow(map, {0.1}, {1, 9}, 1, row);
    for (const double value : row)
      QVERIFY(std::isnan(value));
  }

  // Against asking at each centre by a line of no length; random patches, every cell.
  void agreesWithAskingCellByCell() {
    std::vector<CoverPatch> patches;
    unsigned state = 12345;
    const auto random = [&state] { return double((state = state * 1664525u + 1013904223u) >> 8) / double(1u << 24); };
    for (int i = 0; i < 40; ++i) {
      const double x = 100 * random(), y = 100 * random(), r = 3 + 12 * random();
      patches.push_back({{{{x - r, y}, {x, y - r}, {x + r, y + r / 3}, {x, y + r}}}, i % 3});
    }
    const CoverMap map(std::move(patches));
    const std::vector<double> extinctions = {0.01, 0.1, 1};
    int known = 0;
    for (double y = 0.5; y < 100; ++y) {
      std::vector<double> row(100);
      extinctionRow(map, extinctions, {0.5, y}, 1, row);
      for (size_t i = 0; i < row.size(); ++i) {
        const double x = double(i) + 0.5;
        const int cover = map.along({x, y}, {x + 1e-9, y}).front().cover;
        known += cover >= 0;
        QVERIFY2(cover < 0 ? std::isnan(row[i]) : row[i] == extinctions[size_t(cover)],
                 qPrintable(QStringLiteral("%1 %2").arg(x).arg(y)));
      }
    }
    QVERIFY(known > 2000);
  }

  // Half the marks are clear at ln 2 / k, nine of ten at ln(10 / 9) / k: the law itself.
  void sights() {
    std::vector<double> row = {0.0125, std::nan(""), 0};
    sightsFromExtinctions(row, 0.5);
    QVERIFY(std::abs(row[0] - 55.452) < 0.001); // 500 stems per hectare of 0.25 m: median of the Poisson stand
    QVERIFY(std::isnan(row[1]));
    QCOMPARE(row[2], 10000.0); // bare: the greatest of the tables
    row = {0.0125};
    sightsFromExtinctions(row, 0.9);
    QVERIFY(std::abs(row[0] - std::log(10.0 / 9) / 0.0125) < 1e-9);
  }
};

QTEST_APPLESS_MAIN(SightSurfaceTest)
#include "sight_surface_test.moc"
