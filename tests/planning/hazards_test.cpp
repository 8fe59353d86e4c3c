// SPDX-License-Identifier: GPL-2.0-or-later
// By hand, and random shapes asked place by place by geodesics.
#include "planning/hazards.h"
#include "shared/geodesic.h"
#include "shared/local_plane.h"
#include "support/near.h"
#include "support/random.h"

#include <QtTest>

#include <cmath>

using namespace brushline;

namespace {

struct Scene {
  Place start{Angle::degrees(-46.3), Angle::degrees(179.9995)};
  double direction = 60, length = 300;
  LegLine line() const { return {start, TrueBearing(Angle::degrees(direction)), Length::metres(length)}; }
  Shape shape(ShapeKind kind, const std::vector<std::pair<double, double>> &points) const {
    Shape shape;
    shape.kind = kind;
    shape.parts.emplace_back();
    for (const auto &[along, across] : points)
      shape.parts[0].push_back(line().placeOff({along, across}));
    if (kind == ShapeKind::Polygon)
      shape.parts[0].push_back(shape.parts[0].front());
    return shape;
  }
};

QString text(const std::vector<LegStretch> &stretches) {
  QStringList parts;
  for (const LegStretch &stretch : stretches)
    parts << QStringLiteral("%1-%2").arg(stretch.from_m + 1e-7, 0, 'f', 2).arg(stretch.to_m + 1e-7, 0, 'f', 2);
  return parts.join(' ');
}

} // namespace

class HazardsTest : public QObject {
  Q_OBJECT

private slots:
  void byHand() {
    const Scene scene;
    const auto near = [&](ShapeKind kind, const std::vector<std::pair<double, double>> &points, double distance) {
      return text(stretchesNear(scene.shape(kind, points), scene.line(), distance));
    };
    const auto line = ShapeKind::Line, point = ShapeKind::Point, area = ShapeKind::Polygon;
    // A high-tension line square across the leg, 55 m.
    QCOMPARE(near(line, {{200, -500}, {200, 500}}, 55), QString("145.00-255.00"));
    // Aslant by 45 degrees: 10 sqrt 2.
    QCOMPARE(near(line, {{100, -100}, {300, 100}}, 10), QString("185.86-214.14"));
    // Beside the leg, 30 m off: from where its end is 50 m away (3-4-5) to the leg's end.
    QCOMPARE(near(line, {{150, 30}, {400, 30}}, 50), QString("110.00-300.00"));
    QCOMPARE(near(line, {{150, 51}, {400, 51}}, 50), QString(""));
    QCOMPARE(near(point, {{100, 30}}, 50), QString("60.00-140.00"));
    QCOMPARE(near(point, {{-30, 0}}, 50), QString("0.00-20.00"));
    QCOMPARE(near(point, {{500, 0}}, 50), QString(""));
    // An area: inside, and the margin before and behind.
    QCOMPARE(near(area, {{100, -50}, {150, -50}, {150, 50}, {100, 50}}, 10), QString("90.00-160.00"));
    QCOMPARE(near(area, {{100, -50}, {150, -50}, {150, 50}, {100, 50}}, 0), QString("100.00-150.00"));
    QCOMPARE(near(area, {{-100, -500}, {900, -500}, {900, 500}, {-100, 500}}, 10), QString("0.00-300.00")); // all round
    // Two wires with clear ground between them.
    Shape two = scene.shape(line, {{50, -9}, {50, 9}});
    two.parts.push_back(scene.shape(line, {{250, -9}, {250, 9}}).parts[0]);
    QCOMPARE(text(stretchesNear(two, scene.line(), 10)), QString("40.00-60.00 240.00-260.00"));
  }

  void againstGeodesics() {
    test::Random random(21);
    int inside = 0, outside = 0;
    for (int i = 0; i < 60; ++i) {
      Scene scene;
      scene.start = {Angle::degrees(random.between(-80, 80)), Angle::degrees(random.between(-180, 180))};
      scene.direction = random.between(0, 360);
      std::vector<std::pair<double, double>> points;
      for (int k = 0; k < 4; ++k)
        points.emplace_back(random.between(-100, 400), random.between(-150, 150));
      const double distance = random.between(5, 60);
      const Shape shape = scene.shape(ShapeKind::Line, points);
      const auto stretches = stretchesNear(shape, scene.line(), distance);
      for (double at = 0; at <= scene.length; at += 7) {
        const Place here = scene.line().placeAt(at);
        double least = 1e9; // from places every 10 cm of the shape
        for (size_t k = 1; k < shape.parts[0].size(); ++k) {
          const GeodesicLeg edge = geodesicBetween(shape.parts[0][k - 1], shape.parts[0][k]);
          const LocalPlane plane(here);
          const PlanePoint a = plane.toPlane(shape.parts[0][k - 1]), b = plane.toPlane(shape.parts[0][k]);
          const double step = 0.1 / std::max(0.1, edge.length.metres());
          for (double share = 0; share <= 1; share += step)
            least = std::min(least, std::hypot(a.east + share * (b.east - a.east), a.north + share * (b.north - a.north)));
        }
        const bool told = std::any_of(stretches.begin(), stretches.end(), [&](const LegStretch &stretch) {
          return at >= stretch.from_m && at <= stretch.to_m;
        });
        if (std::abs(least - distance) < 0.05)
          continue;
        VERIFY_AT(told == (least < distance), std::to_string(i) + " at " + std::to_string(at));
        ++(told ? inside : outside);
      }
    }
    QVERIFY(inside > 300 && outside > 300);
  }

  void onlyWhatHasADistance() {
    const Scene scene;
    const Shapes shapes({scene.shape(ShapeKind::Line, {{100, -9}, {100, 9}}), scene.shape(ShapeKind::Line, {{200, -9}, {200, 9}})});
    const auto found = shapesNear(
        shapes, scene.line(), [](size_t i) { return i == 1 ? std::optional(Length::metres(5)) : std::nullopt; },
        Length::metres(50));
    QCOMPARE(found.size(), size_t(1));
    QVERIFY(found[0].shape == 1);
    QCOMPARE(text(found[0].stretches), QString("195.00-205.00"));
  }

  // By hand: each shape of an index by its own distance, and by its own number.
  void shapesOfAnIndex() {
    const Scene scene;
    const auto line = ShapeKind::Line, point = ShapeKind::Point, area = ShapeKind::Polygon;
    Shape two = scene.shape(line, {{50, -9}, {50, 9}});
    two.parts.push_back(scene.shape(line, {{250, -9}, {250, 9}}).parts[0]);
    std::vector<std::pair<double, double>> fine; // edges of 10 m, so that the index parts them
    for (int i = 0; i < 40; ++i)
      fine.emplace_back(80 + 10 * i, 25);
    const std::vector<std::pair<Shape, std::optional<double>>> given{
        {two, 10},
        {scene.shape(point, {{100, 0}}), std::nullopt},
        {scene.shape(point, {{100, 30}}), 50},
        {scene.shape(line, {{400, -9}, {400, 9}}), 60}, // beyond the end
        {scene.shape(area, {{100, -50}, {150, -50}, {150, 50}, {100, 50}}), 0},
        {scene.shape(area, {{100, -50}, {150, -50}, {150, 50}, {100, 50}}), 20},
        {scene.shape(line, fine), 25.1}, // sqrt(25.1^2 - 25^2) = 2.24
        {scene.shape(line, {{0, 70}, {300, 70}}), 60},
        {scene.shape(area, {{-100, -500}, {900, -500}, {900, 500}, {-100, 500}}), 5}, // all round
    };
    std::vector<Shape> all;
    for (const auto &each : given)
      all.push_back(each.first);
    const auto distanceOf = [&](size_t i) {
      return given[i].second ? std::optional(Length::metres(*given[i].second)) : std::nullopt;
    };
    QStringList found;
    for (const NearShape &near : shapesNear(Shapes(all), scene.line(), distanceOf, Length::metres(60)))
      found << QString::number(near.shape) + ": " + text(near.stretches);
    QCOMPARE(found.join("; "), QString("0: 40.00-60.00 240.00-260.00; 2: 60.00-140.00; 4: 100.00-150.00; "
                                       "5: 80.00-170.00; 6: 77.76-300.00; 8: 0.00-300.00"));
  }

  // A leg far inside an area, where no border is near: a lake 4 km wide with an island, and many places on its shore.
  void farInside() {
    Scene scene;
    for (const auto &[latitude, longitude] : {std::pair(-46.3, 179.9995), {0.0, 0.0}, {69.0, -40.0}, {85.0, 0.0}}) {
      scene.start = {Angle::degrees(latitude), Angle::degrees(longitude)};
      const auto round = [&](double east, double north, double radius, int count) {
        Shape shape;
        shape.kind = ShapeKind::Polygon;
        shape.parts.emplace_back();
        for (int i = 0; i <= count; ++i) {
          const double turn = 2 * M_PI * (i % count) / count;
          shape.parts[0].push_back(
              LocalPlane(scene.start).toPlace({east + radius * std::cos(turn), north + radius * std::sin(turn)}));
        }
        return shape;
      };
      Shape lake = round(100, 50, 2000, 100);
      lake.parts.push_back(round(-1000, 0, 300, 50).parts[0]);
      Shape ring = lake; // the leg on the island
      ring.parts[1] = round(100, 50, 1000, 100).parts[0];
      Shape shore = lake; // no area
      shore.kind = ShapeKind::Line;
      const Shapes shapes({round(8000, 0, 2000, 100), lake, ring, shore, round(0, 0, 50000, 1000)});
      const auto margin = [](size_t) { return std::optional(Length::metres(10)); };
      QStringList found;
      for (const NearShape &near : shapesNear(shapes, scene.line(), margin, Length::metres(10)))
        found << QString::number(near.shape) + ": " + text(near.stretches);
      QCOMPARE(found.join("; "), QString("1: 0.00-300.00; 4: 0.00-300.00"));
      const auto noLake = [](size_t i) { return i == 1 ? std::nullopt : std::optional(Length::metres(10)); };
      const auto others = shapesNear(shapes, scene.line(), noLake, Length::metres(10));
      QCOMPARE(others.size(), size_t(1));
      QCOMPARE(others[0].shape, size_t(4));
    }
  }

  // A straight border of 16 km, square to the meridian: a leg 2 m inside of it lies all in the area, one 2 m outside of
  // it nowhere, though the parallel of latitude between the border's ends runs on the other side of it.
  void besideALongBorder() {
    for (const double latitude : {-60.0, -46.3, 46.3, 80.0})
      for (const double side : {-1.0, 1.0}) {
        Scene scene;
        scene.start = {Angle::degrees(latitude), Angle::degrees(179.99)};
        scene.direction = 90;
        const Shape area = scene.shape(
            ShapeKind::Polygon, {{-8000, side * 2}, {8000, side * 2}, {8000, side * 9000}, {-8000, side * 9000}});
        const Shape other = scene.shape(
            ShapeKind::Polygon, {{-8000, side * 2}, {8000, side * 2}, {8000, side * -9000}, {-8000, side * -9000}});
        const Shapes shapes({area, other});
        const auto found = shapesNear(
            shapes, scene.line(), [](size_t) { return std::optional(Length()); }, Length());
        VERIFY_AT(text(stretchesNear(area, scene.line(), 0)).isEmpty(), std::to_string(latitude));
        QCOMPARE(text(stretchesNear(other, scene.line(), 0)), QString("0.00-300.00"));
        QCOMPARE(found.size(), size_t(1));
        QCOMPARE(found[0].shape, size_t(1));
      }
  }

  // A pond that covers the leg and whose shore comes from the right and runs along it from 100 to 200 m, in the middle
  // of what lies inside: the water on both sides of that is told.
  void shoreAlongTheLeg() {
    for (int i = 0; i < 50; ++i) { // what rounding leaves decides on which side of the leg the shore lies
      Scene scene;
      scene.direction = 7 * i;
      const Shape pond = scene.shape(
          ShapeKind::Polygon, {{-20, -50}, {320, -50}, {320, 50}, {210, 50}, {200, 0}, {100, 0}, {90, 50}, {-20, 50}});
      for (const double place : {1.0, 99.0, 201.0, 299.0}) {
        bool told = false;
        for (const LegStretch &stretch : stretchesNear(pond, scene.line(), 0))
          told = told || (place >= stretch.from_m && place <= stretch.to_m);
        VERIFY_AT(told, std::to_string(i) + " at " + std::to_string(place));
      }
    }
  }

  // At random: the index gives of each shape what the shape alone gives.
  void indexAgreesWithShapesAlone() {
    test::Random random(22);
    int stretches = 0, inside = 0;
    for (int round = 0; round < 30; ++round) {
      Scene scene;
      scene.start = {Angle::degrees(random.between(-80, 80)), Angle::degrees(random.between(-180, 180))};
      scene.direction = random.between(0, 360);
      std::vector<Shape> all;
      std::vector<double> distances;
      for (int i = 0; i < 30; ++i) {
        std::vector<std::pair<double, double>> points;
        const double middle = random.between(-300, 600), off = random.between(-300, 300);
        const int corners = i % 3 == 0 ? 1 : 40;
        for (int k = 0; k < corners; ++k) {
          const double turn = 2 * M_PI * k / corners, radius = random.between(20, i % 2 ? 500 : 100);
          points.emplace_back(middle + radius * std::cos(turn), off + radius * std::sin(turn));
        }
        const ShapeKind kinds[] = {ShapeKind::Point, ShapeKind::Line, ShapeKind::Polygon};
        all.push_back(scene.shape(kinds[i % 3], points));
        distances.push_back(random.between(0, 60));
      }
      const auto distanceOf = [&](size_t i) { return std::optional(Length::metres(distances[i])); };
      const auto found = shapesNear(Shapes(all), scene.line(), distanceOf, Length::metres(60));
      auto next = found.begin();
      for (size_t i = 0; i < all.size(); ++i) {
        const auto alone = stretchesNear(all[i], scene.line(), distances[i]);
        const bool told = next != found.end() && next->shape == i;
        VERIFY_AT(told == !alone.empty(), std::to_string(round) + ", shape " + std::to_string(i));
        if (!told)
          continue;
        QCOMPARE(text(next->stretches), text(alone));
        stretches += int(alone.size());
        inside += all[i].kind == ShapeKind::Polygon;
        ++next;
      }
      QVERIFY(next == found.end());
    }
    QVERIFY2(stretches > 300 && inside > 60, qPrintable(QStringLiteral("%1, %2").arg(stretches).arg(inside)));
  }

  // Planes: a slope of 3 in 4 is 36.87 degrees, whichever way the leg runs over it.
  void steepPlanes() {
    const GridShape grid{-1000, 1000, 5, 5, 400, 400};
    for (double direction : {0.0, 90.0, 200.0}) {
      Terrain terrain(TiledGrid(grid,
                                [](const CellWindow &window) {
                                  std::vector<float> cells;
                                  for (int64_t r = 0; r < window.rows; ++r)
                                    for (int64_t c = 0; c < window.columns; ++c) {
                                      const double east = -1000 + (double(window.column + c) + 0.5) * 5;
                                      cells.push_back(float(east > 50 ? 0.75 * (east - 50) : 0)); // level in the west
                                    }
                                  return cells;
                                }),
                      [](std::vector<double> &x, std::vector<double> &y) {
                        for (size_t i = 0; i < x.size(); ++i) {
                          x[i] *= 111319.49;
                          y[i] *= 110574.28;
                        }
                      });
      Scene scene;
      scene.start = {Angle::degrees(0), Angle::degrees(direction == 90.0 ? 0 : 0.002)}; // 222 m east
      scene.direction = direction;
      scene.length = 200;
      const SteepGround ground = steepGround(terrain, scene.line(), Length::metres(5), Angle::degrees(30));
      VERIFY_NEAR(ground.steepest.degrees(), 36.87, 0.05, std::to_string(direction));
      QCOMPARE(ground.stretches.size(), size_t(1));
      VERIFY_NEAR(ground.stretches[0].from_m, direction == 90.0 ? 50 : 0, 6, "from");
      VERIFY_NEAR(ground.stretches[0].to_m, 200, 1e-6, "to");
      QVERIFY(steepGround(terrain, scene.line(), Length::metres(5), Angle::degrees(37)).stretches.empty());
      QCOMPARE(ground.without_data_m, 0.0);
    }
  }

  void gapsAreNotGuessed() {
    const GridShape grid{0, 100, 5, 5, 20, 20};
    Terrain terrain(TiledGrid(grid, [](const CellWindow &window) {
                      return std::vector<float>(size_t(window.columns * window.rows), 7);
                    }),
                    [](std::vector<double> &x, std::vector<double> &y) {
                      for (size_t i = 0; i < x.size(); ++i) {
                        x[i] *= 111319.49;
                        y[i] *= 110574.28;
                      }
                    });
    Scene scene;
    scene.start = {Angle::degrees(0.0004), Angle::degrees(0.0004)};
    scene.direction = 90; // out of the model after 55 m
    const SteepGround ground = steepGround(terrain, scene.line(), Length::metres(5), Angle::degrees(30));
    QVERIFY(ground.stretches.empty());
    QVERIFY(ground.without_data_m > 230 && ground.without_data_m < 260);
  }
};

QTEST_APPLESS_MAIN(HazardsTest)
#include "hazards_test.moc"
