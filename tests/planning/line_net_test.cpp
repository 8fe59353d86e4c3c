// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/line_net.h"

#include "shared/geodesic.h"
#include "support/near.h"

#include <algorithm>

using namespace brushline;

namespace {

Place place(double latitude, double longitude) { return {Angle::degrees(latitude), Angle::degrees(longitude)}; }
Place from(const Place &start, double bearing, double metres) {
  return geodesicDestination(start, TrueBearing(Angle::degrees(bearing)), Length::metres(metres));
}

Shape line(const std::string &name, std::vector<std::vector<Place>> parts) {
  Shape shape;
  shape.name = name;
  shape.parts = std::move(parts);
  return shape;
}

} // namespace

class LineNetTest : public QObject {
  Q_OBJECT
private slots:
  void piecesOfATrailJoin() {
    const Place a = place(47, 8), b = from(a, 90, 100), c = from(b, 90, 100), d = from(c, 90, 100);
    const LineNet net({line("ridge", {{b, c}}), line("ridge", {{b, a}}), line("", {{a, d}}), line("ridge", {{d, c}})});
    QCOMPARE(net.shapes().size(), size_t(2));
    QCOMPARE(net.shapes()[0].parts.size(), size_t(1));
    VERIFY_NEAR(net.length(0, 0), 300, 0.001, "joined");
    QVERIFY(!net.closed(0, 0));
  }

  // Ends that differ by less than a centimetre meet, wherever their roundings part, also at the 180th meridian.
  void endsBesideEachOtherJoin() {
    for (int i = 0; i < 40; ++i) {
      const double off = i * 2.5e-9; // degrees; steps through a rounding of 1e-7
      for (const double longitude : {8.0, 180.0, -180.0}) {
        const Place a = place(47, longitude - 0.001), b = place(47 + off, longitude + off);
        const Place beside = place(47 + off + 4e-8, longitude + off - 4e-8), c = place(47, longitude + 0.001);
        const LineNet net({line("ridge", {{a, b}, {beside, c}})});
        VERIFY_AT(net.shapes()[0].parts.size() == 1, std::to_string(longitude) + " " + std::to_string(i));
        const LineNet ring({line("ring", {{a, b, place(47.001, longitude), place(47, longitude - 0.001 + 4e-8)}})});
        VERIFY_AT(ring.closed(0, 0), std::to_string(longitude) + " " + std::to_string(i));
        const LineNet apart({line("ridge", {{a, b}, {place(47 + off + 3e-7, longitude), c}})});
        VERIFY_AT(apart.shapes()[0].parts.size() == 2, std::to_string(longitude) + " " + std::to_string(i));
      }
    }
  }

  void forksDoNotJoin() {
    const Place a = place(47, 8), b = from(a, 90, 100), c = from(a, 0, 100), d = from(a, 200, 100);
    const LineNet net({line("fork", {{a, b}, {c, a}, {a, d}})});
    QCOMPARE(net.shapes()[0].parts.size(), size_t(3));
  }

  void ringsAreClosed() {
    const Place a = place(-20, 179.9999), b = from(a, 90, 100), c = from(b, 0, 100), d = from(c, 270, 100);
    const LineNet net({line("ring", {{a, b, c}, {a, d, c}}), line("own", {{a, b, c, d, a}})});
    for (const size_t ring : {size_t(0), size_t(1)}) {
      QCOMPARE(net.shapes()[ring].parts.size(), size_t(1));
      QVERIFY(net.closed(ring, 0));
      VERIFY_NEAR(net.length(ring, 0), 400, 0.02, "round");
      VERIFY_NEAR(net.way(ring, 0, 390, 10), 20, 0.03, "the shorter way");
      VERIFY_NEAR(net.way(ring, 0, 10, 390), -20, 0.03, "the shorter way, back");
    }
  }

  void nothingLeft() {
    const Place a = place(47, 8), b = from(a, 90, 0.001);
    Shape polygon = line("pond", {{a, from(a, 0, 10), from(a, 90, 10), a}});
    polygon.kind = ShapeKind::Polygon;
    const LineNet net({line("one point", {{a}}), line("twice the same", {{a, a}, {a, b}}), polygon, line("", {})});
    QCOMPARE(net.shapes().size(), size_t(0));
    for (int i = 0; i < 40; ++i) { // a millimetre, across a rounding too
      const Place start = place(47 + i * 2.5e-9, 8 + i * 2.5e-9);
      QCOMPARE(LineNet({line("short", {{start, from(start, 45, 0.001)}})}).shapes().size(), size_t(0));
    }
    QVERIFY(!net.nearest(a, Length::metres(1e6)));
  }

  void nearestPlace() {
    const Place a = place(89.999, 12), b = from(a, 45, 200); // beside the pole
    const LineNet net({line("", {{a, b}}), line("", {{from(a, 45, 20000), from(a, 45, 20100)}})});
    const GeodesicLeg leg = geodesicBetween(a, b);
    const Place on = geodesicDestination(a, leg.departure, Length::metres(70));
    const TrueBearing there = geodesicBetween(on, b).departure;
    const Place beside = geodesicDestination(on, TrueBearing(there.angle() + Angle::degrees(90)), Length::metres(12));
    const auto found = net.nearest(beside, Length::metres(20));
    QVERIFY(found);
    VERIFY_NEAR(found->away_m, 12, 0.001, "away");
    VERIFY_NEAR(found->along_m, 70, 0.001, "along");
    VERIFY_NEAR(geodesicBetween(found->place, on).length.metres(), 0, 0.001, "place");
    QVERIFY(!net.nearest(beside, Length::metres(11.9)));
  }

  void walks() {
    const Place a = place(47, 8), b = from(a, 90, 100), c = from(b, 0, 100), d = from(c, 270, 100);
    // Between 30 m from a towards b and 40 m from d towards c: over b and c 230 m, over a and d 170 m. The same line is
    // alone, or the second part of the second line.
    const Place one = from(a, 90, 30), further = from(a, 90, 80), other = from(d, 90, 40);
    const std::vector<Place> overB{one, b, c, other}, overA{one, a, d, other};
    const std::vector<Place> far{from(a, 180, 5000), from(a, 180, 6000)},
        farther{from(a, 180, 7000), from(a, 180, 8000)};
    int walked = 0;
    for (const bool closed : {false, true})
      for (const bool alone : {true, false}) {
        std::vector<Place> way{a, b, c, d};
        if (closed)
          way.push_back(a);
        const LineNet net(alone ? std::vector<Shape>{line("", {way})}
                                : std::vector<Shape>{line("far", {far}), line("", {farther, way})});
        const auto on = [&](const Place &place) { return *net.nearest(place, Length::metres(1)); };
        const std::string where = std::string(closed ? "closed" : "open") + (alone ? ", alone" : ", among others");
        QCOMPARE(on(one).line, size_t(alone ? 0 : 1));
        QCOMPARE(on(one).part, size_t(alone ? 0 : 1));
        const auto checked = [&](const Place &start, const Place &end, std::vector<Place> expected) {
          for (const bool back : {false, true}) {
            const std::vector<Place> places = back ? net.walk(on(end), on(start)) : net.walk(on(start), on(end));
            QCOMPARE(places.size(), expected.size());
            for (size_t i = 0; i < expected.size(); ++i)
              VERIFY_NEAR(geodesicBetween(places[i], expected[i]).length.metres(), 0, 0.001,
                          where + (back ? ", back, " : ", there, ") + std::to_string(i));
            std::reverse(expected.begin(), expected.end());
            ++walked;
          }
        };
        checked(one, other, closed ? overA : overB);
        checked(one, further, {one, further}); // on one edge
        checked(one, one, {one, one});
        checked(further, from(b, 0, 60), {further, b, from(b, 0, 60)});
      }
    QCOMPARE(walked, 32); // each there and back
  }
};

QTEST_GUILESS_MAIN(LineNetTest)
#include "line_net_test.moc"
