// SPDX-License-Identifier: GPL-2.0-or-later
// By hand; beside GEOS in plain_ring_geos_test.
#include "sighting/plain_ring.h"

#include "quantities/angle.h"
#include "support/near.h"

#include <algorithm>
#include <cmath>

using namespace brushline;

namespace {

using Ring = std::vector<MapPoint>;

Ring scaled(Ring ring, double scale) {
  for (MapPoint &point : ring)
    point = {point.x * scale, point.y * scale};
  return ring;
}

} // namespace

Q_DECLARE_METATYPE(Ring)

class PlainRingTest : public QObject {
  Q_OBJECT
private slots:
  void byHand_data();
  void byHand();
  void corners();
  void noRing();
};

void PlainRingTest::byHand_data() {
  QTest::addColumn<Ring>("ring");
  QTest::addColumn<bool>("plain");
  const auto row = [](const char *name, bool plain, const Ring &ring) { QTest::newRow(name) << ring << plain; };
  row("triangle", true, {{0, 0}, {4, 0}, {0, 3}, {0, 0}});
  row("square", true, {{0, 0}, {1, 0}, {1, 1}, {0, 1}, {0, 0}});
  row("corner on an edge's line", true, {{0, 0}, {1, 0}, {2, 0}, {2, 2}, {0, 2}, {0, 0}});
  row("sharp", true, {{0, 0}, {1000, 0}, {0, 0.01}, {0, 0}});
  // Not valid.
  row("open", false, {{0, 0}, {1, 0}, {1, 1}, {0, 1}});
  row("flat triangle", false, {{0, 0}, {1, 1}, {3, 3}, {0, 0}});
  row("there and back", false, {{0, 0}, {1, 0}, {0, 0}});
  row("bow tie", false, {{0, 0}, {2, 2}, {2, 0}, {0, 2}, {0, 0}});
  row("spike", false, {{0, 0}, {4, 0}, {4, 4}, {2, 4}, {2, 9}, {2, 4}, {0, 4}, {0, 0}});
  row("oblique spike", false, {{0, 0}, {5, 1}, {8, 8}, {29, 15}, {8, 8}, {1, 7}, {0, 0}});
  row("oblique overlap", false, {{0, 0}, {5, 1}, {8, 8}, {29, 15}, {5, 7}, {0, 0}});
  row("folds back on an edge", false, {{0, 0}, {4, 0}, {6, 0}, {4, 0}, {4, 4}, {0, 0}});
  row("folds back at the start", false, {{0, 0}, {-2, 0}, {4, 0}, {4, 4}, {0, 4}, {0, 0}});
  row("folds back across the start", false, {{2, 0}, {4, 0}, {4, 4}, {0, 4}, {0, 0}, {6, 0}, {2, 0}});
  row("two corners in one place", false, {{0, 0}, {2, 2}, {4, 0}, {4, 4}, {2, 2}, {0, 4}, {0, 0}});
  row("corner on an edge", false, {{0, 0}, {4, 0}, {4, 4}, {2, 0}, {0, 4}, {0, 0}});
  row("last edge crosses", false, {{0, 0}, {4, 0}, {4, 4}, {-1, 4}, {3, -1}, {0, 0}});
  // Valid, but it takes a closer look.
  row("point twice", false, {{0, 0}, {1, 0}, {1, 0}, {1, 1}, {0, 1}, {0, 0}});
  row("boxes that meet", false, {{0, -1}, {1, 0}, {0, 1}, {-1, 0}, {0, -1}});
}

// Drawn on paper. Small or large, mirrored or the other way round, it is the same; and where products of edges are too
// small or too large for numbers, nothing that is not valid becomes plain.
void PlainRingTest::byHand() {
  QFETCH(Ring, ring);
  QFETCH(bool, plain);
  for (double scale : {1.0, 0x1p-60, 0x1p60, -1.0}) {
    QCOMPARE(isPlainRing(scaled(ring, scale)), plain);
    Ring reversed = scaled(ring, scale);
    std::reverse(reversed.begin(), reversed.end());
    QCOMPARE(isPlainRing(reversed), plain);
  }
  if (!plain)
    for (double scale : {0x1p-530, 0x1p-537, 0x1p-540, 0x1p-1070, 0x1p510, 0x1p1000})
      VERIFY_AT(!isPlainRing(scaled(ring, scale)), std::to_string(std::log2(scale)));
}

// Wherever a closed ring begins. 64 edges are held against each other, 65 are not.
void PlainRingTest::corners() {
  for (int edges : {3, 4, 5, 17, 64, 65}) {
    Ring corners;
    for (int i = 0; i < edges; ++i)
      corners.push_back(
          {100 * std::cos(2 * Angle::pi * (i + 0.1) / edges), 70 * std::sin(2 * Angle::pi * (i + 0.1) / edges)});
    for (int first = 0; first < edges; ++first) {
      std::rotate(corners.begin(), corners.begin() + 1, corners.end());
      Ring ring = corners;
      ring.push_back(ring.front());
      VERIFY_AT(isPlainRing(ring) == (edges <= 64), std::to_string(edges) + " from " + std::to_string(first));
    }
  }
}

void PlainRingTest::noRing() {
  QVERIFY(!isPlainRing({}));
  QVERIFY(!isPlainRing({{1, 2}}));
  QVERIFY(!isPlainRing({{1, 2}, {1, 2}}));
  QVERIFY(!isPlainRing({{1, 2}, {1, 2}, {1, 2}, {1, 2}, {1, 2}}));
}

QTEST_APPLESS_MAIN(PlainRingTest)
#include "plain_ring_test.moc"
