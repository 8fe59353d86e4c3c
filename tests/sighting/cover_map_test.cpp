// SPDX-License-Identifier: GPL-2.0-or-later
#include "sighting/cover_map.h"

#include "support/near.h"
#include "support/random.h"
#include "support/work.h"

#include <algorithm>
#include <limits>
#include <thread>
#include <utility>

using namespace brushline;
using namespace brushline::test;

class CoverMapTest : public QObject {
  Q_OBJECT
private slots:
  void noPatches();
  void square();
  void unclosedRings();
  void hole();
  void multipart();
  void concave();
  void sharedBorders();
  void sharedBordersFarFromTheOrigin();
  void extraVertices();
  void alongABorder_data();
  void alongABorder();
  void alongAnOuterBorder();
  void alongASlantedBorder();
  void throughVertices();
  void throughVerticesFarFromTheOrigin();
  void touching();
  void startOnABorder();
  void startOnAVertex();
  void overlaps();
  void zeroLength_data();
  void zeroLength();
  void degenerateRings();
  void moved();
  void severalThreads();
  void againstPointInPolygon_data();
  void againstPointInPolygon();
  void aHundredThousandVertices();
};

namespace {

using Ring = std::vector<MapPoint>;

Ring box(double left, double bottom, double right, double top) {
  return {{left, bottom}, {right, bottom}, {right, top}, {left, top}, {left, bottom}};
}

CoverPatch patch(int cover, std::vector<Ring> rings) { return {std::move(rings), cover}; }

// "0.25:- 0.75:3 1:-": ends and classes; an overlap is marked by a star.
QString text(const std::vector<CoverStretch> &stretches) {
  QStringList words;
  for (const CoverStretch &stretch : stretches)
    words << QStringLiteral("%1:%2%3").arg(QString::number(stretch.to, 'g', 9),
                                           stretch.cover < 0 ? QStringLiteral("-") : QString::number(stretch.cover),
                                           stretch.overlapping ? QStringLiteral("*") : QString());
  return words.join(QLatin1Char(' '));
}

QString along(const CoverMap &map, MapPoint from, MapPoint to) { return text(map.along(from, to)); }

// What the interface promises of any answer.
bool isWhole(const std::vector<CoverStretch> &stretches) {
  if (stretches.empty() || stretches.back().to != 1)
    return false;
  double before = 0;
  for (size_t i = 0; i < stretches.size(); ++i) {
    if (!(stretches[i].to > before))
      return false;
    before = stretches[i].to;
    if (i > 0 && stretches[i].cover == stretches[i - 1].cover &&
        stretches[i].overlapping == stretches[i - 1].overlapping)
      return false;
  }
  return true;
}

// Even-odd, by the crossings of a ray to the right; written apart from the map's own way.
bool isInside(const CoverPatch &patch, MapPoint p) {
  bool inside = false;
  for (const Ring &ring : patch.rings)
    for (size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++)
      if ((ring[i].y > p.y) != (ring[j].y > p.y) &&
          p.x < (ring[j].x - ring[i].x) * (p.y - ring[i].y) / (ring[j].y - ring[i].y) + ring[i].x)
        inside = !inside;
  return inside;
}

struct Bounds {
  double left = std::numeric_limits<double>::infinity(), bottom = left, right = -left, top = -left;
  explicit Bounds(const CoverPatch &patch) {
    for (const Ring &ring : patch.rings)
      for (const MapPoint &p : ring) {
        left = std::min(left, p.x);
        right = std::max(right, p.x);
        bottom = std::min(bottom, p.y);
        top = std::max(top, p.y);
      }
  }
  bool hold(MapPoint p) const { return p.x >= left && p.x <= right && p.y >= bottom && p.y <= top; }
};

/*
 * A made-up coverage: 22 by 22 fields whose corners are shaken and whose borders are bent, both sides of a border by
 * the same points. Some fields are missing, some have a hole, some of the holes are filled by a patch of their own.
 */
std::vector<CoverPatch> coverage(uint64_t seed, double originX, double originY, double size) {
  constexpr int n = 22;
  Random random(seed);
  const auto shaken = [&](double x, double y, double by) {
    return MapPoint{originX + size * (x + random.between(-by, by)), originY + size * (y + random.between(-by, by))};
  };
  std::vector<MapPoint> corners;
  for (int row = 0; row <= n; ++row)
    for (int column = 0; column <= n; ++column)
      corners.push_back(shaken(column, row, 0.3));
  const auto corner = [&](int column, int row) { return corners[size_t(row * (n + 1) + column)]; };
  // Between two corners up to four points, off the straight line.
  const auto border = [&](MapPoint a, MapPoint b) {
    std::vector<MapPoint> points{a};
    const int extra = int(random.between(0, 5));
    for (int i = 1; i <= extra; ++i) {
      const double share = i / (extra + 1.0);
      points.push_back({a.x + share * (b.x - a.x) + size * random.between(-0.08, 0.08),
                        a.y + share * (b.y - a.y) + size * random.between(-0.08, 0.08)});
    }
    points.push_back(b);
    return points;
  };
  std::vector<std::vector<MapPoint>> across, up; // along the rows, and along the columns
  for (int row = 0; row <= n; ++row)
    for (int column = 0; column < n; ++column)
      across.push_back(border(corner(column, row), corner(column + 1, row)));
  for (int row = 0; row < n; ++row)
    for (int column = 0; column <= n; ++column)
      up.push_back(border(corner(column, row), corner(column, row + 1)));
  std::vector<CoverPatch> patches;
  for (int row = 0; row < n; ++row)
    for (int column = 0; column < n; ++column) {
      if (random.between(0, 1) < 0.05)
        continue;
      Ring ring;
      const auto add = [&](const std::vector<MapPoint> &points, bool forwards) {
        if (forwards)
          ring.insert(ring.end(), points.begin(), points.end() - 1);
        else
          ring.insert(ring.end(), points.rbegin(), points.rend() - 1);
      };
      add(across[size_t(row * n + column)], true);
      add(up[size_t(row * (n + 1) + column + 1)], true);
      add(across[size_t((row + 1) * n + column)], false);
      add(up[size_t(row * (n + 1) + column)], false);
      if (random.between(0, 1) < 0.5)
        ring.push_back(ring.front()); // closed in words, or not
      if (random.between(0, 1) < 0.5)
        std::reverse(ring.begin(), ring.end());
      const int cover = int(random.between(0, 6));
      CoverPatch field = patch(cover, {ring});
      if (random.between(0, 1) < 0.2) {
        const double x = column + 0.5, y = row + 0.5;
        const Ring hole{shaken(x - 0.1, y - 0.1, 0.05), shaken(x + 0.1, y - 0.1, 0.05), shaken(x, y + 0.1, 0.05)};
        field.rings.push_back(hole);
        if (random.between(0, 1) < 0.5)
          patches.push_back(patch(6, {hole}));
      }
      patches.push_back(std::move(field));
    }
  return patches;
}
} // namespace

void CoverMapTest::noPatches() {
  const CoverMap map({});
  QCOMPARE(along(map, {0, 0}, {1, 1}), QStringLiteral("1:-"));
  QCOMPARE(along(map, {5, 5}, {5, 5}), QStringLiteral("1:-"));
}

// Computed by hand, as all that follow.
void CoverMapTest::square() {
  const CoverMap map({patch(3, {box(10, 10, 20, 20)})});
  QCOMPARE(along(map, {5, 15}, {25, 15}), QStringLiteral("0.25:- 0.75:3 1:-"));
  QCOMPARE(along(map, {25, 15}, {5, 15}), QStringLiteral("0.25:- 0.75:3 1:-"));
  QCOMPARE(along(map, {15, 0}, {15, 40}), QStringLiteral("0.25:- 0.5:3 1:-"));
  QCOMPARE(along(map, {15, 15}, {15, 40}), QStringLiteral("0.2:3 1:-"));
  QCOMPARE(along(map, {0, 15}, {15, 15}), QStringLiteral("0.666666667:- 1:3"));
  QCOMPARE(along(map, {12, 13}, {18, 19}), QStringLiteral("1:3"));
  QCOMPARE(along(map, {5, 5}, {25, 25}), QStringLiteral("0.25:- 0.75:3 1:-"));
  // Outside, also where the endless line would cross.
  QCOMPARE(along(map, {0, 15}, {9, 15}), QStringLiteral("1:-"));
  QCOMPARE(along(map, {21, 15}, {30, 15}), QStringLiteral("1:-"));
  QCOMPARE(along(map, {0, 25}, {30, 25}), QStringLiteral("1:-"));
  QCOMPARE(along(map, {5, 25}, {9, 15}), QStringLiteral("1:-"));
  QCOMPARE(along(map, {-1e7, -2e7}, {-3e7, 5e7}), QStringLiteral("1:-"));
}

// Closed whether or not the last point repeats the first.
void CoverMapTest::unclosedRings() {
  const CoverMap open({patch(1, {{{0, 0}, {10, 0}, {10, 10}, {0, 10}}})});
  const CoverMap clockwise({patch(1, {{{0, 0}, {0, 10}, {10, 10}, {10, 0}}})});
  const CoverMap closed({patch(1, {box(0, 0, 10, 10)})});
  Random random(130);
  for (int i = 0; i < 1000; ++i) {
    const MapPoint from{random.between(-5, 15), random.between(-5, 15)},
        to{random.between(-5, 15), random.between(-5, 15)};
    const QString expected = along(closed, from, to);
    QCOMPARE(along(open, from, to), expected);
    QCOMPARE(along(clockwise, from, to), expected);
  }
  QCOMPARE(along(open, {-5, 5}, {5, 5}), QStringLiteral("0.5:- 1:1")); // by the side that nobody drew
}

void CoverMapTest::hole() {
  // The hole's ring runs the same way as the outer one, or against it: that does not matter.
  Ring hole = box(4, 4, 6, 6);
  for (int turn = 0; turn < 2; ++turn) {
    const CoverMap map({patch(1, {box(0, 0, 10, 10), hole})});
    QCOMPARE(along(map, {0, 5}, {10, 5}), QStringLiteral("0.4:1 0.6:- 1:1"));
    QCOMPARE(along(map, {5, 5}, {10, 5}), QStringLiteral("0.2:- 1:1"));
    QCOMPARE(along(map, {4.5, 5}, {5.5, 5}), QStringLiteral("1:-"));
    QCOMPARE(along(map, {0, 2}, {10, 2}), QStringLiteral("1:1"));
    std::reverse(hole.begin(), hole.end());
  }
  // Filled by another patch, and an island in it.
  const CoverMap filled({patch(1, {box(0, 0, 10, 10), hole}), patch(2, {hole})});
  QCOMPARE(along(filled, {0, 5}, {10, 5}), QStringLiteral("0.4:1 0.6:2 1:1"));
  const CoverMap island({patch(1, {box(0, 0, 10, 10), box(2, 2, 8, 8), box(4, 4, 6, 6)})});
  QCOMPARE(along(island, {0, 5}, {10, 5}), QStringLiteral("0.2:1 0.4:- 0.6:1 0.8:- 1:1"));
}

void CoverMapTest::multipart() {
  const CoverMap map({patch(7, {box(0, 0, 2, 10), box(4, 0, 6, 10), box(8, 0, 10, 10)}), patch(2, {box(2, 0, 4, 10)})});
  QCOMPARE(along(map, {0, 5}, {10, 5}), QStringLiteral("0.2:7 0.4:2 0.6:7 0.8:- 1:7"));
  QCOMPARE(along(map, {10, 5}, {0, 5}), QStringLiteral("0.2:7 0.4:- 0.6:7 0.8:2 1:7"));
}

// A comb whose back lies at the bottom.
void CoverMapTest::concave() {
  const CoverMap map(
      {patch(1, {{{0, 0}, {10, 0}, {10, 8}, {8, 8}, {8, 2}, {6, 2}, {6, 8}, {4, 8}, {4, 2}, {2, 2}, {2, 8}, {0, 8}}})});
  QCOMPARE(along(map, {0, 5}, {10, 5}), QStringLiteral("0.2:1 0.4:- 0.6:1 0.8:- 1:1"));
  QCOMPARE(along(map, {0, 1}, {10, 1}), QStringLiteral("1:1"));
  QCOMPARE(along(map, {3, 5}, {7, 5}), QStringLiteral("0.25:- 0.75:1 1:-"));
  QCOMPARE(along(map, {3, 7}, {3, 0}), QStringLiteral("0.714285714:- 1:1"));
}

// Neighbours leave no sliver between them, nor lie over each other: a fan round a point and its rim.
void CoverMapTest::sharedBorders() {
  Random random(131);
  std::vector<CoverPatch> fan;
  std::vector<MapPoint> rim;
  constexpr int slices = 40;
  for (int i = 0; i < slices; ++i) {
    const double angle = 2 * Angle::pi * i / slices + random.between(-0.05, 0.05);
    rim.push_back({random.between(8, 10) * std::cos(angle), random.between(8, 10) * std::sin(angle)});
  }
  const MapPoint hub{0.123, -0.456};
  for (int i = 0; i < slices; ++i)
    fan.push_back(patch(i, {{hub, rim[size_t(i)], rim[size_t((i + 1) % slices)]}}));
  const CoverMap map(fan);
  for (int i = 0; i < 5000; ++i) {
    const auto stretches =
        map.along({random.between(-5, 5), random.between(-5, 5)}, {random.between(-5, 5), random.between(-5, 5)});
    QVERIFY(isWhole(stretches));
    for (const CoverStretch &stretch : stretches)
      QVERIFY(stretch.cover >= 0 && !stretch.overlapping);
  }
}

// The same where coordinates have few digits to spare: projected ones in metres, and degrees.
void CoverMapTest::sharedBordersFarFromTheOrigin() {
  for (const auto &[x, y, size] : {std::make_tuple(712345.678, 5198765.432, 90.0), std::make_tuple(-3e6, 9.9e6, 5.0),
                                   std::make_tuple(179.9, -66.6, 1e-3)}) {
    // Four squares round a corner.
    const CoverMap map({patch(0, {box(x - size, y - size, x, y)}), patch(1, {box(x, y - size, x + size, y)}),
                        patch(2, {box(x, y, x + size, y + size)}), patch(3, {box(x - size, y, x, y + size)})});
    Random random(132);
    for (int i = 0; i < 5000; ++i) {
      const auto stretches = map.along({x + size * random.between(-0.9, 0.9), y + size * random.between(-0.9, 0.9)},
                                       {x + size * random.between(-0.9, 0.9), y + size * random.between(-0.9, 0.9)});
      QVERIFY(isWhole(stretches) && stretches.size() <= 3);
      for (const CoverStretch &stretch : stretches)
        QVERIFY2(stretch.cover >= 0 && !stretch.overlapping, qPrintable(text(stretches)));
    }
  }
}

// A neighbour that has more points on the border leaves a gap of rounding's size there; it is none.
void CoverMapTest::extraVertices() {
  Random random(133);
  for (int i = 0; i < 300; ++i) {
    const double x = 712345.678, y = 5198765.432;
    const MapPoint a{x + random.between(-50, 0), y - 100}, b{x + random.between(0, 50), y + 100};
    const double share = random.between(0.1, 0.9);
    const MapPoint between{a.x + share * (b.x - a.x), a.y + share * (b.y - a.y)};
    const CoverMap map({patch(1, {{{x - 200, y - 100}, a, b, {x - 200, y + 100}}}),
                        patch(2, {{a, {x + 200, y - 100}, {x + 200, y + 100}, b, between}})});
    for (int k = 0; k < 20; ++k) {
      const auto stretches = map.along({x - 190, y + random.between(-99, 99)}, {x + 190, y + random.between(-99, 99)});
      QCOMPARE(stretches.size(), size_t(2));
      QVERIFY(stretches[0].cover == 1 && stretches[1].cover == 2);
    }
  }
}

void CoverMapTest::alongABorder_data() {
  QTest::addColumn<double>("dx");
  QTest::addColumn<double>("dy");
  QTest::addColumn<int>("right");
  QTest::newRow("east") << 1.0 << 0.0 << 1;
  QTest::newRow("west") << -1.0 << 0.0 << 2;
  QTest::newRow("north") << 0.0 << 1.0 << 4;
  QTest::newRow("south") << 0.0 << -1.0 << 3;
}

// A line along a border has the cover of the side to its right. 1 lies south, 2 north, 3 west and 4 east of the line.
void CoverMapTest::alongABorder() {
  QFETCH(double, dx);
  QFETCH(double, dy);
  QFETCH(int, right);
  const CoverMap map(dx == 0 ? std::vector<CoverPatch>{patch(3, {box(-9, -9, 0, 9)}), patch(4, {box(0, -9, 9, 9)})}
                             : std::vector<CoverPatch>{patch(1, {box(-9, -9, 9, 0)}), patch(2, {box(-9, 0, 9, 9)})});
  QCOMPARE(along(map, {-5 * dx, -5 * dy}, {5 * dx, 5 * dy}), QStringLiteral("1:%1").arg(right));
  // From the border's beginning to its end, and over both.
  QCOMPARE(along(map, {-9 * dx, -9 * dy}, {9 * dx, 9 * dy}), QStringLiteral("1:%1").arg(right));
  QCOMPARE(along(map, {-18 * dx, -18 * dy}, {18 * dx, 18 * dy}), QStringLiteral("0.25:- 0.75:%1 1:-").arg(right));
}

// One patch alone: it is there when it lies to the right.
void CoverMapTest::alongAnOuterBorder() {
  const CoverMap map({patch(1, {box(0, 0, 10, 10)})});
  QCOMPARE(along(map, {0, 0}, {10, 0}), QStringLiteral("1:-"));
  QCOMPARE(along(map, {10, 0}, {0, 0}), QStringLiteral("1:1"));
  QCOMPARE(along(map, {0, 0}, {0, 10}), QStringLiteral("1:1"));
  QCOMPARE(along(map, {0, 10}, {0, 0}), QStringLiteral("1:-"));
  QCOMPARE(along(map, {0, 10}, {10, 10}), QStringLiteral("1:1"));
  QCOMPARE(along(map, {10, 10}, {10, 0}), QStringLiteral("1:1"));
  // A border that turns away on either side.
  const CoverMap step({patch(1, {{{0, 0}, {5, 0}, {5, 5}, {10, 5}, {10, 10}, {0, 10}}})});
  QCOMPARE(along(step, {0, 5}, {10, 5}), QStringLiteral("0.5:1 1:-"));
  QCOMPARE(along(step, {10, 5}, {0, 5}), QStringLiteral("1:1"));
}

void CoverMapTest::alongASlantedBorder() {
  // Exact in binary: a border from (0, 0) to (8, 4).
  const CoverMap map({patch(1, {{{0, 0}, {8, 0}, {8, 4}}}), patch(2, {{{0, 0}, {8, 4}, {0, 4}}})});
  QCOMPARE(along(map, {0, 0}, {8, 4}), QStringLiteral("1:1"));
  QCOMPARE(along(map, {8, 4}, {0, 0}), QStringLiteral("1:2"));
  QCOMPARE(along(map, {2, 1}, {6, 3}), QStringLiteral("1:1"));
  QCOMPARE(along(map, {-4, -2}, {12, 6}), QStringLiteral("0.25:- 0.75:1 1:-"));
  QCOMPARE(along(map, {12, 6}, {-4, -2}), QStringLiteral("0.25:- 0.75:2 1:-"));
}

void CoverMapTest::throughVertices() {
  // A square on its corner.
  const CoverMap map({patch(1, {{{0, -5}, {5, 0}, {0, 5}, {-5, 0}}})});
  for (const auto &[dx, dy] :
       {std::make_pair(1, 0), std::make_pair(-1, 0), std::make_pair(0, 1), std::make_pair(0, -1)})
    QCOMPARE(along(map, {-10.0 * dx, -10.0 * dy}, {10.0 * dx, 10.0 * dy}), QStringLiteral("0.25:- 0.75:1 1:-"));
  // In by a corner and out by a side, and the other way round.
  QCOMPARE(along(map, {-7, 4}, {1, -4}), QStringLiteral("0.375:- 1:1"));
  QCOMPARE(along(map, {-7, 2}, {1, -6}), QStringLiteral("1:-")); // along its side, outside to the right
  QCOMPARE(along(map, {-10, 0}, {0, 0}), QStringLiteral("0.5:- 1:1"));
  QCOMPARE(along(map, {0, 0}, {10, 0}), QStringLiteral("0.5:1 1:-"));
  // Where four patches meet, from one to the one across.
  const CoverMap four({patch(0, {box(-9, -9, 0, 0)}), patch(1, {box(0, -9, 9, 0)}), patch(2, {box(0, 0, 9, 9)}),
                       patch(3, {box(-9, 0, 0, 9)})});
  QCOMPARE(along(four, {-4, -4}, {4, 4}), QStringLiteral("0.5:0 1:2"));
  QCOMPARE(along(four, {4, -4}, {-4, 4}), QStringLiteral("0.5:1 1:3"));
  QCOMPARE(along(four, {-4, -2}, {4, 2}), QStringLiteral("0.5:0 1:2"));
  // Through a corner on to a border: that of the side to the right.
  QCOMPARE(along(four, {-4, 0}, {4, 0}), QStringLiteral("0.5:0 1:1"));
  QCOMPARE(along(four, {0, 4}, {0, -4}), QStringLiteral("0.5:3 1:0"));
}

// Small patches of many edges where coordinates are great: New Zealand on a map of the web, Canada on a grid in feet. A
// line through a corner meets the boxes around stretches of the border in their own corners.
void CoverMapTest::throughVerticesFarFromTheOrigin() {
  Random random(134);
  for (const auto &[x, y] :
       {std::make_pair(1.95e7, -5.0e6), std::make_pair(-1.98e7, 1.7e7), std::make_pair(1.64e6, 1.9e7)})
    for (int i = 0; i < 300; ++i) {
      const double radius = random.between(0.3, 2), left = x + random.between(-1, 1),
                   bottom = y + random.between(-1, 1);
      Ring ring;
      for (int corner = 0; corner < 64; ++corner)
        ring.push_back({left + radius * std::cos(corner * 0.098), bottom + radius * std::sin(corner * 0.098)});
      const CoverMap map({patch(1, {ring})});
      for (const MapPoint &corner : ring) {
        for (const bool level : {true, false}) {
          const double away = level ? std::abs(corner.y - bottom) : std::abs(corner.x - left);
          if (away > 0.95 * radius)
            continue; // all but touched
          const MapPoint from{level ? left - 3 : corner.x, level ? corner.y : bottom - 3},
              to{level ? left + 3 : corner.x, level ? corner.y : bottom + 3};
          const auto stretches = map.along(from, to);
          QVERIFY2(stretches.size() == 3 && stretches[0].cover == -1 && stretches[1].cover == 1,
                   qPrintable(text(stretches)));
          const double half = std::sqrt(radius * radius - away * away);
          QVERIFY2(std::abs((stretches[1].to - stretches[0].to) * 6 - 2 * half) < 0.02 * radius,
                   qPrintable(text(stretches)));
        }
      }
    }
}

// To touch is not to enter: not by a corner, nor by a corner that points inwards.
void CoverMapTest::touching() {
  const CoverMap tip({patch(1, {{{-5, -5}, {5, -5}, {0, 0}}})});
  QCOMPARE(along(tip, {-9, 0}, {9, 0}), QStringLiteral("1:-"));
  QCOMPARE(along(tip, {9, 0}, {-9, 0}), QStringLiteral("1:-"));
  const CoverMap notch({patch(1, {{{-5, -5}, {5, -5}, {5, 5}, {0, 0}, {-5, 5}}})});
  QCOMPARE(along(notch, {-5, 0}, {5, 0}), QStringLiteral("1:1"));
  QCOMPARE(along(notch, {5, 0}, {-5, 0}), QStringLiteral("1:1"));
}

void CoverMapTest::startOnABorder() {
  const CoverMap map({patch(1, {box(0, 0, 10, 10)}), patch(2, {box(10, 0, 20, 10)})});
  QCOMPARE(along(map, {0, 5}, {10, 5}), QStringLiteral("1:1"));
  QCOMPARE(along(map, {0, 5}, {-10, 5}), QStringLiteral("1:-"));
  QCOMPARE(along(map, {10, 5}, {20, 5}), QStringLiteral("1:2"));
  QCOMPARE(along(map, {10, 5}, {0, 5}), QStringLiteral("1:1"));
  QCOMPARE(along(map, {10, 5}, {14, 8}), QStringLiteral("1:2"));
  QCOMPARE(along(map, {-5, 5}, {0, 5}), QStringLiteral("1:-")); // to end there is not to enter
  QCOMPARE(along(map, {5, 5}, {10, 5}), QStringLiteral("1:1"));
}

void CoverMapTest::startOnAVertex() {
  const CoverMap map({patch(1, {box(0, 0, 10, 10)}), patch(2, {box(10, 0, 20, 10)})});
  QCOMPARE(along(map, {0, 0}, {10, 10}), QStringLiteral("1:1"));
  QCOMPARE(along(map, {0, 0}, {-10, -10}), QStringLiteral("1:-"));
  QCOMPARE(along(map, {10, 0}, {20, 10}), QStringLiteral("1:2"));
  QCOMPARE(along(map, {10, 0}, {0, 10}), QStringLiteral("1:1"));
  QCOMPARE(along(map, {10, 10}, {15, 5}), QStringLiteral("1:2"));
  QCOMPARE(along(map, {10, 10}, {10, 20}), QStringLiteral("1:-"));
}

// The first patch counts, and the overlap is told.
void CoverMapTest::overlaps() {
  const CoverPatch one = patch(1, {box(0, 0, 6, 10)}), two = patch(2, {box(4, 0, 10, 10)});
  QCOMPARE(along(CoverMap({one, two}), {0, 5}, {10, 5}), QStringLiteral("0.4:1 0.6:1* 1:2"));
  QCOMPARE(along(CoverMap({two, one}), {0, 5}, {10, 5}), QStringLiteral("0.4:1 0.6:2* 1:2"));
  QCOMPARE(along(CoverMap({one, two}), {10, 5}, {0, 5}), QStringLiteral("0.4:2 0.6:1* 1:1"));
  // One within the other, three at once, and the same patch twice.
  const CoverPatch inner = patch(3, {box(2, 2, 3, 8)});
  QCOMPARE(along(CoverMap({one, inner}), {0, 5}, {10, 5}), QStringLiteral("0.2:1 0.3:1* 0.6:1 1:-"));
  QCOMPARE(along(CoverMap({inner, one}), {0, 5}, {10, 5}), QStringLiteral("0.2:1 0.3:3* 0.6:1 1:-"));
  const CoverPatch all = patch(4, {box(0, 0, 10, 10)});
  QCOMPARE(along(CoverMap({one, two, all}), {0, 5}, {10, 5}), QStringLiteral("0.6:1* 1:2*"));
  QCOMPARE(along(CoverMap({all, one, two}), {0, 5}, {10, 5}), QStringLiteral("1:4*"));
  QCOMPARE(along(CoverMap({one, one}), {0, 5}, {10, 5}), QStringLiteral("0.6:1* 1:-"));
  // A class as such may lie over itself: that is an overlap too.
  QCOMPARE(along(CoverMap({patch(1, {box(0, 0, 6, 10)}), patch(1, {box(4, 0, 10, 10)})}), {0, 5}, {10, 5}),
           QStringLiteral("0.4:1 0.6:1* 1:1"));
}

void CoverMapTest::zeroLength_data() {
  QTest::addColumn<double>("x");
  QTest::addColumn<double>("y");
  QTest::addColumn<double>("size");
  QTest::newRow("at the origin") << 0.0 << 0.0 << 1.0;
  QTest::newRow("at the origin, degrees") << 0.0 << 0.0 << 1e-4;
  QTest::newRow("at a small number") << 1e-200 << -1e-200 << 1.0;
  QTest::newRow("on the prime meridian") << 0.0 << 51.48 << 1e-3;
  QTest::newRow("on the equator") << -78.5 << 0.0 << 1e-3;
  QTest::newRow("degrees") << 9.5 << 47.25 << 1e-4;
  QTest::newRow("metres") << 712345.678 << 5198765.432 << 1.0;
  QTest::newRow("west and south") << -8e6 << -1e7 << 0.1;
}

// A line without length has the cover of its place.
void CoverMapTest::zeroLength() {
  QFETCH(double, x);
  QFETCH(double, y);
  QFETCH(double, size);
  const auto at = [&](double right, double up) { return MapPoint{x + right * size, y + up * size}; };
  const auto square = [&](double left, double bottom, double right, double top) {
    return Ring{at(left, bottom), at(right, bottom), at(right, top), at(left, top)};
  };
  const CoverMap map({patch(1, {square(-3, -3, 3, 3)}), patch(2, {square(10, 0, 20, 10)}),
                      patch(3, {{at(-3, 3), at(3, 3), at(0, 9)}})});
  const auto coverAt = [&](double right, double up) { return along(map, at(right, up), at(right, up)); };
  QCOMPARE(coverAt(0, 0), QStringLiteral("1:1"));
  QCOMPARE(coverAt(-2.5, 2.5), QStringLiteral("1:1"));
  QCOMPARE(coverAt(15, 5), QStringLiteral("1:2"));
  QCOMPARE(coverAt(0, 6), QStringLiteral("1:3"));
  QCOMPARE(coverAt(-2.5, 6), QStringLiteral("1:-")); // in its box alone
  QCOMPARE(coverAt(-4, 0), QStringLiteral("1:-"));
  QCOMPARE(coverAt(0, -3.5), QStringLiteral("1:-"));
  QCOMPARE(coverAt(5, 0), QStringLiteral("1:-"));
}

// Rings that hold nothing are nothing.
void CoverMapTest::degenerateRings() {
  const std::vector<Ring> nothing = {{},
                                     {{5, 5}},
                                     {{5, 5}, {5, 5}},
                                     {{0, 0}, {10, 10}},
                                     {{5, 5}, {5, 5}, {5, 5}},
                                     {{5, 5}, {5, 5}, {5, 5}, {5, 5}},
                                     {{0, 0}, {10, 0}, {0, 0}},
                                     {{0, 5}, {10, 5}, {5, 5}, {0, 5}},
                                     {{0, 0}, {10, 10}, {0, 0}, {10, 10}, {0, 0}}};
  const std::pair<MapPoint, MapPoint> lines[] = {
      {{0, 5}, {10, 5}}, {{0, 0}, {10, 10}}, {{10, 0}, {0, 10}}, {{5, 5}, {5, 5}}};
  const CoverMap empty({patch(1, nothing), patch(2, {})});
  for (const auto &[from, to] : lines)
    QCOMPARE(along(empty, from, to), QStringLiteral("1:-"));
  // Beside a true ring they take nothing away.
  std::vector<Ring> rings = nothing;
  rings.push_back(box(-1, -1, 11, 11));
  const CoverMap one({patch(1, rings)});
  for (const auto &[from, to] : lines)
    QCOMPARE(along(one, from, to), QStringLiteral("1:1"));
  // Points given twice in a ring that does hold something.
  const CoverMap twice({patch(1, {{{0, 0}, {0, 0}, {10, 0}, {10, 10}, {10, 10}, {10, 10}, {0, 10}, {0, 0}}})});
  QCOMPARE(along(twice, {-10, 5}, {10, 5}), QStringLiteral("0.5:- 1:1"));
  QCOMPARE(along(twice, {-10, -10}, {10, 10}), QStringLiteral("0.5:- 1:1"));
}

void CoverMapTest::moved() {
  CoverMap first({patch(1, {box(0, 0, 10, 10)})});
  CoverMap second(std::move(first));
  QCOMPARE(along(second, {0, 5}, {20, 5}), QStringLiteral("0.5:1 1:-"));
  first = CoverMap({patch(2, {box(0, 0, 10, 10)})});
  QCOMPARE(along(first, {0, 5}, {20, 5}), QStringLiteral("0.5:2 1:-"));
}

void CoverMapTest::severalThreads() {
  const CoverMap map(coverage(134, 0, 0, 100));
  const auto answers = [&map] {
    QString all;
    Random random(135);
    for (int i = 0; i < 500; ++i)
      all += along(map, {random.between(0, 2200), random.between(0, 2200)},
                   {random.between(0, 2200), random.between(0, 2200)});
    return all;
  };
  const QString expected = answers();
  std::vector<QString> found(4);
  std::vector<std::thread> threads;
  for (QString &answer : found)
    threads.emplace_back([&answer, &answers] { answer = answers(); });
  for (std::thread &thread : threads)
    thread.join();
  for (const QString &answer : found)
    QCOMPARE(answer, expected);
}

void CoverMapTest::againstPointInPolygon_data() {
  QTest::addColumn<double>("originX");
  QTest::addColumn<double>("originY");
  QTest::addColumn<double>("size");
  QTest::addColumn<bool>("overlapping");
  QTest::newRow("metres") << 712000.0 << 5198000.0 << 100.0 << false;
  QTest::newRow("degrees") << 8.4 << 47.1 << 0.001 << false;
  QTest::newRow("one coverage over another") << 712000.0 << 5198000.0 << 100.0 << true;
}

// 2000 random lines over some 500 patches: what each holds at 200 places, and the same from its other end.
void CoverMapTest::againstPointInPolygon() {
  QFETCH(double, originX);
  QFETCH(double, originY);
  QFETCH(double, size);
  QFETCH(bool, overlapping);
  std::vector<CoverPatch> patches = coverage(136, originX, originY, size);
  if (overlapping) {
    const auto more = coverage(137, originX + 3.3 * size, originY - 2.7 * size, 0.8 * size);
    patches.insert(patches.begin() + 200, more.begin(), more.end()); // before some, after others
  }
  QVERIFY(patches.size() > 450);
  std::vector<Bounds> bounds(patches.begin(), patches.end());
  const CoverMap map(patches);
  Random random(138);
  const auto somewhere = [&] {
    return MapPoint{originX + size * random.between(-2, 24), originY + size * random.between(-2, 24)};
  };
  int asked = 0, onABorder = 0, unknown = 0, twofold = 0;
  for (int l = 0; l < 2000; ++l) {
    const MapPoint from = somewhere();
    MapPoint to = somewhere();
    if (l % 2) // short ones too
      to = {from.x + size * random.between(-1, 1), from.y + size * random.between(-1, 1)};
    const auto stretches = map.along(from, to);
    const std::string where = "line " + std::to_string(l);
    VERIFY_AT(isWhole(stretches), where);

    size_t s = 0;
    for (int i = 0; i < 200; ++i) {
      const double share = (i + 0.5) / 200;
      while (stretches[s].to < share)
        ++s;
      if (std::abs(stretches[s].to - share) < 1e-7 || (s > 0 && std::abs(stretches[s - 1].to - share) < 1e-7)) {
        ++onABorder;
        continue;
      }
      const MapPoint p{from.x + share * (to.x - from.x), from.y + share * (to.y - from.y)};
      int cover = -1, layers = 0;
      for (size_t k = 0; k < patches.size(); ++k)
        if (bounds[k].hold(p) && isInside(patches[k], p) && layers++ == 0)
          cover = patches[k].cover;
      VERIFY_AT(stretches[s].cover == cover, where + " at " + std::to_string(share));
      VERIFY_AT(stretches[s].overlapping == (layers > 1), where + " at " + std::to_string(share));
      ++asked;
      unknown += cover < 0;
      twofold += layers > 1;
    }

    const auto back = map.along(to, from);
    VERIFY_AT(back.size() == stretches.size(), where);
    for (size_t i = 0; i < back.size(); ++i) {
      const CoverStretch &same = stretches[stretches.size() - 1 - i];
      VERIFY_AT(back[i].cover == same.cover && back[i].overlapping == same.overlapping, where);
      if (i + 1 < back.size())
        VERIFY_NEAR(back[i].to, 1 - stretches[stretches.size() - 2 - i].to, 1e-8, where);
    }
  }
  QVERIFY(asked > 390000 && onABorder < 1000);
  QVERIFY(unknown > 10000 && (overlapping ? twofold > 50000 : twofold == 0));
}

// One patch like a big country's coast: read and asked 10 000 times in under a second of work. Edge by edge it would
// take several.
void CoverMapTest::aHundredThousandVertices() {
  constexpr int vertices = 100000;
  constexpr double radius = 10000;
  Ring ring;
  for (int i = 0; i < vertices; ++i) {
    const double angle = 2 * Angle::pi * i / vertices;
    const double reach = radius * (i % 2 ? 1 : 0.999); // jagged
    ring.push_back({reach * std::cos(angle), reach * std::sin(angle)});
  }
  const auto readAndAsk = [&] {
    const CoverMap map({patch(1, {ring})});
    Random random(139);
    for (int i = 0; i < 10000; ++i) {
      // Through the middle: in at a quarter, out at three quarters of a line of four radii.
      const double angle = random.between(0, 2 * Angle::pi);
      const MapPoint from{2 * radius * std::cos(angle), 2 * radius * std::sin(angle)};
      const auto stretches = map.along(from, {-from.x, -from.y});
      QVERIFY(stretches.front().cover == -1 && stretches.back().cover == -1 && stretches.size() >= 3);
      VERIFY_NEAR(stretches.front().to, 0.25, 0.0003, std::to_string(i));
      VERIFY_NEAR(stretches[stretches.size() - 2].to, 0.75, 0.0003, std::to_string(i));
    }
  };
  const double seconds = secondsOfWork(readAndAsk, 1);
  QVERIFY2(seconds < slower, qPrintable(QString::number(seconds)));
}

QTEST_APPLESS_MAIN(CoverMapTest)
#include "cover_map_test.moc"
