// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/obstacles.h"
#include "shared/geodesic.h"
#include "support/near.h"
#include "support/random.h"

#include <cmath>

using namespace brushline;
using namespace brushline::test;

namespace {
Place place(double latitude, double longitude) { return {Angle::degrees(latitude), Angle::degrees(longitude)}; }

// A circle of so many corners.
std::vector<Place> circle(const Place &centre, double radius, int corners) {
  std::vector<Place> ring;
  for (int i = 0; i <= corners; ++i)
    ring.push_back(geodesicDestination(centre, TrueBearing(Angle::degrees(360.0 * (i % corners) / corners)),
                                       Length::metres(radius)));
  return ring;
}

Shape polygon(std::vector<std::vector<Place>> rings) {
  Shape shape;
  shape.kind = ShapeKind::Polygon;
  shape.parts = std::move(rings);
  return shape;
}
} // namespace

class ObstaclesTest : public QObject {
  Q_OBJECT
private slots:
  // A regular polygon of n corners on radius r has its edges r cos(pi / n) from the centre (plane geometry).
  void circlesAnywhere() {
    Random random(3);
    for (const double radius : {0.5, 30.0, 5000.0, 400000.0})
      for (int i = 0; i < 30; ++i) {
        const Place centre = i == 0 ? place(90, 0) : i == 1 ? place(-17, 180) : random.place();
        const Obstacles obstacles({polygon({circle(centre, radius, 720)})}, Progress());
        const double nearest = radius * std::cos(Angle::pi / 720);
        for (const double share : {0.0, 0.5, 0.999, 1.001, 1.5}) {
          const TrueBearing bearing(Angle::degrees(random.between(0, 360)));
          const double r = share < 1 ? nearest * share : radius * share;
          const Place there = geodesicDestination(centre, bearing, Length::metres(r));
          QVERIFY2(obstacles.holding(there).size() == (share < 1 ? 1u : 0u),
                   qPrintable(QStringLiteral("%1 m, share %2").arg(radius).arg(share)));
        }
      }
  }

  void holesAndParts() {
    const Place here = place(47, 8);
    const Place other = geodesicDestination(here, TrueBearing(Angle::degrees(90)), Length::metres(500));
    const Obstacles obstacles({polygon({circle(here, 100, 36), circle(here, 40, 36), circle(other, 50, 36)}),
                               polygon({circle(here, 20, 36)})},
                              Progress());
    const auto at = [&](double east) {
      return obstacles.holding(geodesicDestination(here, TrueBearing(Angle::degrees(90)), Length::metres(east)));
    };
    QCOMPARE(at(0), std::vector<size_t>{1}); // the island in the lake
    QCOMPARE(at(30), std::vector<size_t>{});
    QCOMPARE(at(70), std::vector<size_t>{0});
    QCOMPARE(at(500), std::vector<size_t>{0});
    QCOMPARE(at(300), std::vector<size_t>{});
  }

  void longEdgesAreParted() {
    const Obstacles obstacles({polygon({{place(0, 0), place(0, 1), place(1, 1), place(0, 0)}})}, Progress());
    const auto &ring = obstacles.outlines()[0].parts[0];
    for (size_t i = 1; i < ring.size(); ++i)
      QVERIFY(geodesicBetween(ring[i - 1], ring[i]).length.metres() <= Obstacles::longestEdge + 1e-6);
    QVERIFY(ring.size() > 300);
  }

  void whatStopsNobody() {
    Shape line = polygon({circle(place(1, 1), 100, 8)});
    line.kind = ShapeKind::Line;
    const Obstacles obstacles({line, polygon({}), polygon({{place(1, 1)}})}, Progress());
    QVERIFY(obstacles.holding(place(1, 1)).empty());
    QCOMPARE(obstacles.outlines().size(), size_t(3)); // numbers stay
    QVERIFY(Obstacles({}, Progress()).holding(place(1, 1)).empty());
  }
};

QTEST_GUILESS_MAIN(ObstaclesTest)
#include "obstacles_test.moc"
