// SPDX-License-Identifier: GPL-2.0-or-later
#include "records/compass_rule.h"

#include "records/bearing_text.h"
#include "shared/geodesic.h"
#include "support/check_values.h"
#include "support/near.h"
#include "support/random.h"

#include <cmath>

using namespace brushline;
using namespace brushline::test;

namespace {

// The published loop, its bearings read as they are printed; feet are as good as metres here.
struct Loop {
  CheckValues values{"records/data/compass_rule_loop.csv"};
  CheckValues closure{"records/data/compass_rule_closure.csv"};
  std::vector<Angle> bearings;
  std::vector<Length> lengths;

  Loop() {
    for (const CheckRow &row : values.rows()) {
      bearings.push_back(std::get<WrittenBearing>(readBearing(row.text("bearing"), DialUnit::Degrees)).angle);
      lengths.push_back(Length::metres(row.number("length_ft")));
    }
  }

  std::vector<PlanePoint> points() const {
    std::vector<PlanePoint> result{{2000, 500}};
    for (size_t i = 0; i < lengths.size(); ++i)
      result.push_back({result.back().east + lengths[i].metres() * std::sin(bearings[i].radians()),
                        result.back().north + lengths[i].metres() * std::cos(bearings[i].radians())});
    return result;
  }

  // Every printed figure of the loop.
  void compare(const std::vector<PlanePoint> &plain, const std::vector<PlanePoint> &adjusted) const {
    QCOMPARE(plain.size(), values.rows().size() + 1);
    QCOMPARE(adjusted.size(), plain.size());
    for (size_t i = 0; i < values.rows().size(); ++i) {
      const CheckRow &row = values.rows()[i];
      VERIFY_CHECK(values.check(row, "lat_ft", plain[i + 1].north - plain[i].north));
      VERIFY_CHECK(values.check(row, "dep_ft", plain[i + 1].east - plain[i].east));
      const double north = adjusted[i + 1].north - adjusted[i].north, east = adjusted[i + 1].east - adjusted[i].east;
      VERIFY_CHECK(values.check(row, "adj_lat_ft", north));
      VERIFY_CHECK(values.check(row, "adj_dep_ft", east));
      VERIFY_CHECK(values.check(row, "adj_length_ft", std::hypot(north, east)));
      VERIFY_CHECK(values.checkTurn(row, "adj_bearing_deg", Angle::radians(std::atan2(east, north)).degrees()));
      VERIFY_CHECK(values.check(row, "end_north_ft", adjusted[i + 1].north));
      VERIFY_CHECK(values.check(row, "end_east_ft", adjusted[i + 1].east));
      // As printed, but for the two printing errors that the file names (CD).
      if (row.text("remark").empty()) {
        VERIFY_CHECK(values.check(row, "printed_adj_length_ft", std::hypot(north, east)));
        const auto printed = readBearing(row.text("printed_adj_bearing"), DialUnit::Degrees);
        // Printed to 0.1 seconds; DA from rounded parts is off by one more.
        const double degrees = std::get<WrittenBearing>(printed).angle.degrees();
        VERIFY_CHECK(checkOf("adjusted bearing as printed", row.text("course"),
                             turnedTo(Angle::radians(std::atan2(east, north)).degrees(), degrees), degrees, 0.16 / 3600,
                             "deg", "J. Mahun, the loop of compass_rule_loop.csv; read in the source"));
      }
    }
  }

  void compare(const Closure &result) const {
    const CheckRow &row = closure.rows().front();
    VERIFY_CHECK(closure.check(row, "perimeter_ft", result.walked.metres()));
    VERIFY_CHECK(closure.check(row, "sum_lat_ft", result.miss.north));
    VERIFY_CHECK(closure.check(row, "sum_dep_ft", result.miss.east));
    VERIFY_CHECK(closure.check(row, "misclosure_ft", result.missed.metres()));
    VERIFY_CHECK(closure.check(row, "misclosure_bearing_deg", result.bearing.degrees()));
    QVERIFY(result.ratio);
    VERIFY_CHECK(closure.check(row, "ratio", *result.ratio));
  }
};

Place place(double latitude, double longitude) { return {Angle::degrees(latitude), Angle::degrees(longitude)}; }

} // namespace

class CompassRuleTest : public QObject {
  Q_OBJECT
private slots:
  void publishedLoop() {
    const Loop loop;
    const std::vector<PlanePoint> points = loop.points();
    loop.compare(points, compassRule(points, loop.lengths, points.front()));
    loop.compare(closureOf(Length::metres(1347.57), {points.back().east - 2000, points.back().north - 500}));
  }

  // The same over the ellipsoid: on the equator the meridians are parallel, and 500 m are as good as flat (the
  // curvature takes 500^2 / 6 R^2 = 1e-9 of a length).
  void publishedLoopOverTheEllipsoid() {
    const Loop loop;
    const Place start = place(0, 31);
    std::vector<Place> places{start};
    for (size_t i = 0; i < loop.lengths.size(); ++i)
      places.push_back(geodesicDestination(places.back(), TrueBearing(loop.bearings[i]), loop.lengths[i]));
    const PlacedClosure closed = closeTraverse(places, loop.lengths, start);
    const auto shifted = [](std::vector<PlanePoint> points) {
      for (PlanePoint &point : points)
        point = {point.east + 2000, point.north + 500};
      return points;
    };
    std::vector<PlanePoint> adjusted;
    for (const Place &each : closed.adjusted)
      adjusted.push_back(LocalPlane(start).toPlane(each));
    loop.compare(shifted(closed.points), shifted(adjusted));
    loop.compare(closed.closure);
  }

  // Each leg's parts are mended by their share of the miss, wherever the route should end.
  void randomTraverses() {
    Random random(3);
    for (int run = 0; run < 200; ++run) {
      std::vector<PlanePoint> points{{random.between(-100, 100), random.between(-100, 100)}};
      std::vector<Length> lengths;
      double whole = 0;
      const int legs = 1 + int(random.between(0, 40));
      for (int i = 0; i < legs; ++i) {
        const double turn = random.between(0, 7), length = random.between(1, 400);
        points.push_back({points.back().east + length * std::sin(turn), points.back().north + length * std::cos(turn)});
        lengths.push_back(Length::metres(length));
        whole += length;
      }
      const PlanePoint target{random.between(-100, 100), random.between(-100, 100)};
      const std::vector<PlanePoint> adjusted = compassRule(points, lengths, target);
      const double missEast = points.back().east - target.east, missNorth = points.back().north - target.north;
      QCOMPARE(adjusted.front().east, points.front().east);
      QCOMPARE(adjusted.front().north, points.front().north);
      QCOMPARE(adjusted.back().east, target.east);
      QCOMPARE(adjusted.back().north, target.north);
      for (int i = 0; i < legs; ++i) {
        const size_t k = size_t(i);
        const double part = lengths[k].metres() / whole;
        VERIFY_NEAR(adjusted[k + 1].east - adjusted[k].east, points[k + 1].east - points[k].east - missEast * part,
                    1e-9, std::to_string(i));
        VERIFY_NEAR(adjusted[k + 1].north - adjusted[k].north, points[k + 1].north - points[k].north - missNorth * part,
                    1e-9, std::to_string(i));
      }
    }
  }

  // Over the ellipsoid, everywhere: the miss is the geodesic's, the ends are kept to the last bit, and every point
  // moves by its share.
  void anywhere() {
    Random random(4);
    for (int run = 0; run < 300; ++run) {
      Place start = random.place();
      if (run % 5 == 0)
        start = place(random.between(-80, 80), run % 2 ? 179.999 : -179.999);
      if (run % 50 == 1)
        start = place(run % 100 == 1 ? 90 : -89.999, 12);
      std::vector<Place> places{start};
      std::vector<Length> lengths;
      double whole = 0;
      for (int i = 0; i < 6; ++i) {
        lengths.push_back(Length::metres(random.between(20, 500)));
        whole += lengths.back().metres();
        places.push_back(
            geodesicDestination(places.back(), TrueBearing(Angle::degrees(random.between(0, 360))), lengths.back()));
      }
      const Place target = geodesicDestination(start, TrueBearing(Angle::degrees(random.between(0, 360))),
                                               Length::metres(random.between(0, 100)));
      const PlacedClosure closed = closeTraverse(places, lengths, target);
      const GeodesicLeg miss = geodesicBetween(target, places.back());
      const std::string at = std::to_string(run);
      VERIFY_NEAR(closed.closure.missed.metres(), miss.length.metres(), 1e-8, at);
      VERIFY_NEAR(turnBetween(closed.closure.bearing.degrees(), miss.departure.degrees()), 0,
                  1e-6 / miss.length.metres() * 57.3 + 1e-9, at);
      VERIFY_NEAR(closed.closure.walked.metres(), whole, 1e-9, at);
      QCOMPARE(closed.adjusted.front().latitude.degrees(), start.latitude.degrees());
      QCOMPARE(closed.adjusted.back().longitude.degrees(), target.longitude.degrees());
      double walked = 0;
      for (size_t i = 1; i < places.size(); ++i) {
        walked += lengths[i - 1].metres();
        const GeodesicLeg move = geodesicBetween(places[i], closed.adjusted[i]);
        // 3 km from the target: r^2 / 4 R^2 = 6e-8 of the shift.
        VERIFY_NEAR(move.length.metres(), miss.length.metres() * walked / whole, 1e-3 * 1e-3, at);
      }
    }
  }

  void ratios() {
    QVERIFY(!closureOf(Length::metres(100), {0, 0}).ratio);
    QVERIFY(!closureOf(Length::metres(100), {0.0009, 0}).ratio);
    QCOMPARE(*closureOf(Length::metres(100), {0, -4}).ratio, 25.0);
    QCOMPARE(closureOf(Length::metres(100), {0, -4}).bearing.degrees(), 180.0);
    QCOMPARE(closureOf(Length::metres(100), {0, 0}).bearing.degrees(), 0.0);
  }

  void badInput() {
    QVERIFY_EXCEPTION_THROWN(compassRule({{0, 0}, {1, 1}}, {}, {0, 0}), std::invalid_argument);
    QVERIFY_EXCEPTION_THROWN(compassRule({{0, 0}}, {}, {0, 0}), std::invalid_argument);
    QVERIFY_EXCEPTION_THROWN(compassRule({}, {Length::metres(1)}, {0, 0}), std::invalid_argument);
  }
};

QTEST_GUILESS_MAIN(CompassRuleTest)
#include "compass_rule_test.moc"
