// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/geodesic.h"
#include "shared/shapes.h"
#include "support/near.h"
#include "support/random.h"

#include <QtTest>

#include <algorithm>
#include <set>

using namespace brushline;

namespace {
Place place(double latitude, double longitude) { return {Angle::degrees(latitude), Angle::degrees(longitude)}; }
} // namespace

class ShapesTest : public QObject {
  Q_OBJECT

private slots:
  // All that comes near is found, anywhere on the Earth; asked place by place.
  void nothingNearIsMissed() {
    test::Random random(5);
    for (const auto &[latitude, longitude] :
         {std::pair(0.0, 0.0), {50.0, 8.0}, {-47.0, 180.0}, {89.9, 20.0}, {-90.0, 0.0}, {10.0, -179.99}}) {
      const Place centre = place(latitude, longitude);
      std::vector<Shape> shapes;
      for (int i = 0; i < 60; ++i) {
        Shape shape;
        shape.kind = i % 3 == 0 ? ShapeKind::Point : ShapeKind::Line;
        const int count = shape.kind == ShapeKind::Point ? 1 : int(random.between(2, 60));
        Place here = geodesicDestination(centre, TrueBearing(Angle::degrees(random.between(0, 360))),
                                         Length::metres(random.between(0, 20000)));
        shape.parts.emplace_back();
        for (int k = 0; k < count; ++k) {
          shape.parts[0].push_back(here);
          here = geodesicDestination(here, TrueBearing(Angle::degrees(random.between(0, 360))),
                                     Length::metres(random.between(1, 3000)));
        }
        shapes.push_back(shape);
      }
      const Shapes index(shapes);
      int hits = 0, asked = 0;
      for (int q = 0; q < 40; ++q) {
        const TrueBearing bearing(Angle::degrees(random.between(0, 360)));
        const Place from = geodesicDestination(centre, TrueBearing(Angle::degrees(random.between(0, 360))),
                                               Length::metres(random.between(0, 20000)));
        const double length = random.between(0, 4000), reach = random.between(1, 500);
        const Place to = geodesicDestination(from, bearing, Length::metres(length));
        std::set<std::pair<size_t, size_t>> found; // shape and first place
        for (const ShapeStretch &stretch : index.near(from, to, Length::metres(reach)))
          for (size_t k = stretch.first; k < std::max(stretch.last, stretch.first + 1); ++k)
            found.insert({stretch.shape, k});
        hits += int(found.size());
        for (size_t i = 0; i < shapes.size(); ++i)
          for (size_t k = 0; k < shapes[i].parts[0].size(); ++k) {
            ++asked;
            // A place of the shape within reach of a place of the line.
            for (double at : {0.0, length / 2, length}) {
              const Place on = geodesicDestination(from, bearing, Length::metres(at));
              const bool last = shapes[i].parts[0].size() > 1 && k + 1 == shapes[i].parts[0].size();
              if (geodesicBetween(on, shapes[i].parts[0][k]).length.metres() <= reach)
                VERIFY_AT(found.count({i, last ? k - 1 : k}), std::to_string(latitude) + " " + std::to_string(i));
            }
          }
      }
      QVERIFY(hits > 0 && hits < asked / 2); // it does choose
    }
  }

  // Edges of 100 km rise above the straight line by 200 m: they are found from their middle.
  void longEdges() {
    Shape shape;
    const Place from = place(45, 10);
    const TrueBearing bearing(Angle::degrees(80));
    shape.parts = {{from, geodesicDestination(from, bearing, Length::metres(100000))}};
    const Shapes index({shape});
    const Place middle = geodesicDestination(from, bearing, Length::metres(50000));
    QCOMPARE(index.near(middle, middle, Length::metres(1)).size(), size_t(1));
  }

  // Areas from their middle and from before their border, however large: the ground within rises above the corners.
  void areasMayHold() {
    for (const auto &[latitude, longitude] : {std::pair(0.0, 0.0), {50.0, 8.0}, {-47.0, 180.0}, {90.0, 20.0}})
      for (const double radius : {10.0, 5000.0, 100000.0})
        for (const int corners : {3, 4, 100}) {
          const Place centre = place(latitude, longitude);
          const auto out = [&](double bearing, double metres) {
            return geodesicDestination(centre, TrueBearing(Angle::degrees(bearing)), Length::metres(metres));
          };
          Shape area;
          area.kind = ShapeKind::Polygon;
          area.parts.emplace_back();
          for (int i = 0; i <= corners; ++i)
            area.parts[0].push_back(out(360.0 * (i % corners) / corners, radius));
          Shape line = area, empty;
          line.kind = ShapeKind::Line;
          empty.kind = ShapeKind::Polygon;
          empty.parts = {{}};
          const Shapes index({line, area, empty, area});
          const std::vector<size_t> both{1, 3};
          const std::string where = std::to_string(latitude) + ", " + std::to_string(radius);
          VERIFY_AT(index.mayHold(centre) == both, where);
          // The inner circle of a triangle is half as wide as the outer one.
          for (double bearing = 0; bearing < 360; bearing += 10)
            VERIFY_AT(index.mayHold(out(bearing, 0.49 * radius)) == both, where);
          VERIFY_AT(index.mayHold(out(30, 4 * radius)).empty(), where); // it does choose
        }
  }

  void emptyOnes() {
    QVERIFY(Shapes({}).near(place(0, 0), place(0, 1), Length::metres(1e5)).empty());
    Shape shape;
    shape.parts = {{}, {}};
    QVERIFY(Shapes({shape}).near(place(0, 0), place(0, 1), Length::metres(1e5)).empty());
  }
};

QTEST_APPLESS_MAIN(ShapesTest)
#include "shapes_test.moc"
