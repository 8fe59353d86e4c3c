// SPDX-License-Identifier: GPL-2.0-or-later
// Held against geodesics (GeographicLib).
#include "planning/leg_line.h"
#include "shared/geodesic.h"
#include "support/near.h"
#include "support/random.h"

#include <QtTest>

#include <cmath>

using namespace brushline;

namespace {
Place place(double latitude, double longitude) { return {Angle::degrees(latitude), Angle::degrees(longitude)}; }
TrueBearing bearing(double degrees) { return TrueBearing(Angle::degrees(degrees)); }
} // namespace

class LegLineTest : public QObject {
  Q_OBJECT

private slots:
  // A place so many metres along and so many square to the leg is told so.
  void alongAndAcross() {
    test::Random random(7);
    for (const Place &start : {place(0, 0), place(51, 10), place(-46, 179.999), place(84, -120)})
      for (int i = 0; i < 50; ++i) {
        const double direction = random.between(0, 360), length = random.between(10, 3000);
        const LegLine line(start, bearing(direction), Length::metres(length));
        const double along = random.between(-200, length + 500), across = random.between(-300, 300);
        const Place on = line.placeAt(along);
        const double back = geodesicBetween(on, start).departure.degrees();
        const double onward = std::abs(along) < 1e-9 ? direction : along > 0 ? back + 180 : back;
        const Place off = geodesicDestination(on, bearing(onward + 90), Length::metres(across));
        const LegPoint point = line.at(off);
        VERIFY_NEAR(point.along, along, 1e-3, std::to_string(direction));
        VERIFY_NEAR(point.across, across, 1e-3, std::to_string(direction));
      }
  }

  void inside() {
    Shape pond;
    pond.kind = ShapeKind::Polygon;
    const auto ring = [](double west, double east, double south, double north) {
      return std::vector<Place>{place(south, west), place(south, east), place(north, east), place(north, west),
                                place(south, west)};
    };
    pond.parts = {ring(179.9, -179.9, -1, 1), ring(179.98, -179.98, -0.5, 0.5)}; // with an island
    QVERIFY(isInside(pond, place(0.8, 180)));
    QVERIFY(isInside(pond, place(0.8, -180)));
    QVERIFY(isInside(pond, place(0, 179.95)));
    QVERIFY(isInside(pond, place(0, 539.95)));
    QVERIFY(!isInside(pond, place(0, 180)));
    QVERIFY(!isInside(pond, place(0, 179.8)));
    QVERIFY(!isInside(pond, place(0, -179.8)));
    QVERIFY(!isInside(pond, place(2, 180)));
    QVERIFY(!isInside(pond, place(0, 0)));
    Shape line = pond;
    line.kind = ShapeKind::Line;
    QVERIFY(!isInside(line, place(0, 179.95)));
  }

  // The borders are geodesics, not parallels of latitude, which lie up to 71 m beside one of 20 km at 80 degrees: sides
  // of 0.1 to 20 km, and places a metre to either side of their middle (GeographicLib's geodesics).
  void besideALongBorder() {
    for (const double latitude : {-60.0, 0.0, 46.5, 80.0})
      for (const double side : {100.0, 3000.0, 20000.0})
        for (const double turn : {90.0, 60.0, 0.0}) {
          Shape wood;
          wood.kind = ShapeKind::Polygon;
          wood.parts.resize(1);
          const Place middle = place(latitude, 179.99);
          for (const double corner : {45.0, 135.0, 225.0, 315.0})
            wood.parts[0].push_back(
                geodesicDestination(middle, bearing(turn + corner), Length::metres(side / std::sqrt(2.0))));
          wood.parts[0].push_back(wood.parts[0].front());
          for (size_t i = 0; i < 4; ++i) {
            const GeodesicLeg border = geodesicBetween(wood.parts[0][i], wood.parts[0][i + 1]);
            for (const double share : {0.1, 0.5, 0.8}) {
              const Place on = geodesicDestination(wood.parts[0][i], border.departure,
                                                   Length::metres(border.length.metres() * share));
              const double right = geodesicBetween(on, wood.parts[0][i + 1]).departure.degrees() + 90;
              const std::string where = std::to_string(latitude) + ", " + std::to_string(side);
              VERIFY_AT(isInside(wood, geodesicDestination(on, bearing(right), Length::metres(1))), where);
              VERIFY_AT(!isInside(wood, geodesicDestination(on, bearing(right + 180), Length::metres(1))), where);
            }
          }
        }
  }

  // A ring round the pole holds it, and what lies between.
  void roundThePole() {
    for (const double pole : {90.0, -90.0}) {
      Shape ice;
      ice.kind = ShapeKind::Polygon;
      ice.parts.resize(1);
      for (int i = 0; i <= 40; ++i)
        ice.parts[0].push_back(place(pole * 8 / 9, i % 40 * 9));
      for (const double longitude : {-180.0, -77.0, 0.0, 4.0, 180.0}) {
        QVERIFY(isInside(ice, place(pole, longitude)));
        QVERIFY(isInside(ice, place(pole * 0.95, longitude)));
        QVERIFY(!isInside(ice, place(pole * 0.85, longitude)));
        QVERIFY(!isInside(ice, place(-pole * 0.95, longitude)));
      }
    }
  }

  void nearIsInOrderAndNeverTwice() {
    Shape trail;
    for (int i = 0; i <= 100; ++i)
      trail.parts.resize(1), trail.parts[0].push_back(place(0.0001, i * 0.001));
    const Shapes shapes({trail});
    const LegLine line(place(0, 0), bearing(90), Length::metres(8000));
    const auto stretches = line.near(shapes, Length::metres(500), Length::metres(20));
    QVERIFY(stretches.size() >= 5);
    for (size_t i = 1; i < stretches.size(); ++i)
      QVERIFY(stretches[i].first == stretches[i - 1].last);
  }
};

QTEST_APPLESS_MAIN(LegLineTest)
#include "leg_line_test.moc"
