// SPDX-License-Identifier: GPL-2.0-or-later
// Legs laid from bearings that were worked out the other way, by geodesics between random places.
#include "records/plot_legs.h"

#include "magnetics/world_magnetic_model.h"
#include "support/check.h"
#include "support/near.h"
#include "support/random.h"

#include <GeographicLib/UTMUPS.hpp>

#include <cmath>
#include <map>

using namespace brushline;
using namespace brushline::test;

namespace {

Place place(double latitude, double longitude) { return {Angle::degrees(latitude), Angle::degrees(longitude)}; }

const FieldSetting &field() {
  static const FieldSetting setting(coefficientModel(worldMagneticModel2025(), DecimalYear(2026.5)));
  return setting;
}

// The bearing of the straight line on the UTM grid, from GeographicLib's own projection.
double gridBearing(const Place &from, const Place &to, int zone, bool north) {
  double x1, y1, x2, y2;
  int zoneOut;
  bool northOut;
  using GeographicLib::UTMUPS;
  UTMUPS::Forward(from.latitude.degrees(), from.longitude.degrees(), zoneOut, northOut, x1, y1, zone);
  if (northOut != north)
    y1 += northOut ? 1e7 : -1e7;
  UTMUPS::Forward(to.latitude.degrees(), to.longitude.degrees(), zoneOut, northOut, x2, y2, zone);
  if (northOut != north)
    y2 += northOut ? 1e7 : -1e7;
  return Angle::radians(std::atan2(x2 - x1, y2 - y1)).degrees();
}

} // namespace

class PlotLegsTest : public QObject {
  Q_OBJECT
private slots:
  void backToWhereTheyCameFrom_data() {
    QTest::addColumn<int>("north");
    QTest::newRow("magnetic") << 0;
    QTest::newRow("true") << 1;
    QTest::newRow("grid") << 2;
  }
  void backToWhereTheyCameFrom() {
    QFETCH(int, north);
    Random random(21);
    int laid = 0;
    std::map<std::string, GridNorth> grids;
    for (int run = 0; run < 2000; ++run) {
      Place start = random.place();
      if (run % 7 == 0)
        start = place(start.latitude.degrees(), run % 2 ? 179.9999 : -179.9999);
      if (std::abs(start.latitude.degrees()) > 83) // the grid there is another's, tried below
        continue;
      const std::string definition = standardGrid(start);
      const GridNorth &grid = grids.try_emplace(definition, definition).first->second;
      const int zone = GeographicLib::UTMUPS::StandardZone(start.latitude.degrees(), start.longitude.degrees());
      std::vector<Place> places{start};
      std::vector<ReadLeg> legs;
      bool reliable = true;
      for (int i = 0; i < 5; ++i) {
        const Place next = geodesicDestination(places.back(), TrueBearing(Angle::degrees(random.between(0, 360))),
                                               Length::metres(random.between(10, 5000)));
        const GeodesicLeg leg = geodesicBetween(places.back(), next);
        const LocalField local = field().at(places.back(), Length());
        reliable = reliable && local.zone != CompassZone::Blackout;
        Angle bearing = leg.departure.angle();
        if (north == 0)
          bearing = bearing - local.declination.east;
        if (north == 2)
          bearing = Angle::degrees(gridBearing(places.back(), next, zone, start.latitude.degrees() >= 0));
        legs.push_back({bearing, leg.length});
        places.push_back(next);
      }
      const PlottedLegs plotted = plotLegs(start, legs, field(), static_cast<North>(north), grid, Progress());
      QCOMPARE(plotted.stop == PlottedLegs::Stop::None, reliable);
      if (!reliable)
        continue;
      ++laid;
      QCOMPARE(plotted.places.size(), places.size());
      QCOMPARE(plotted.bearings.size(), legs.size());
      for (size_t i = 0; i < places.size(); ++i)
        // Grid: 1e-6 degrees on up to 25 km. Else what geodesics are good for, on five legs there and back.
        VERIFY_CHECK(
            checkOf(north == 2 ? "places off by, grid bearings" : "places off by, true and magnetic bearings",
                    std::to_string(run), geodesicBetween(places[i], plotted.places[i]).length.metres(), 0,
                    north == 2 ? 5e-4 : 5e-7, "m",
                    "round trip: routes of five legs computed with GeographicLib's Geodesic and UTMUPS, plotted anew"));
    }
    QVERIFY(laid > 1700);
  }

  // Web maps take the ellipsoid's latitudes for those of a sphere: lines on them are off by up to 0.19 degrees beside
  // what convergence makes of true bearings.
  void backOnAGridThatBendsAngles() {
    Random random(22);
    const GridNorth grid("EPSG:3857");
    const auto x = [](const Place &at) { return at.longitude.radians(); };
    const auto y = [](const Place &at) { return std::asinh(std::tan(at.latitude.radians())); };
    int laid = 0;
    for (int run = 0; run < 500; ++run) {
      const Place start = place(random.between(-80, 80), run % 7 == 0 ? 179.999 : random.between(-179, 179));
      const Angle departure = Angle::degrees(random.between(0, 360));
      const Length length = Length::metres(random.between(10, 2000));
      const Place end = geodesicDestination(start, TrueBearing(departure), length);
      const double east = std::remainder(x(end) - x(start), 2 * Angle::pi);
      const Angle onMap = Angle::radians(std::atan2(east, y(end) - y(start)));
      const FieldSetting given(coefficientModel(worldMagneticModel2025(), DecimalYear(2026.5)), Declination{});
      const PlottedLegs plotted = plotLegs(start, {{onMap, length}}, given, North::Grid, grid, Progress());
      if (plotted.stop != PlottedLegs::Stop::None) // near a magnetic pole
        continue;
      ++laid;
      VERIFY_CHECK(checkOf("end off by, web map", std::to_string(run),
                           geodesicBetween(end, plotted.places[1]).length.metres(), 0, 1e-3, "m",
                           "computed: x = a longitude, y = a asinh(tan latitude) (from memory)"));
    }
    QVERIFY(laid > 400);
  }

  // Along the equator, by hand: the declination is given, so that 90 is read as 90 less it.
  void declinationIsAdded() {
    const FieldSetting given(coefficientModel(worldMagneticModel2025(), DecimalYear(2026.5)),
                             Declination{Angle::degrees(-20)});
    const GridNorth grid("EPSG:32631");
    const std::vector<ReadLeg> legs{{Angle::degrees(110), Length::metres(6378137 * Angle::pi / 180)}};
    const PlottedLegs plotted = plotLegs(place(0, 3), legs, given, North::Magnetic, grid, Progress());
    VERIFY_NEAR(plotted.bearings[0].degrees(), 90, 1e-12, "true");
    VERIFY_NEAR(plotted.places[1].latitude.degrees(), 0, 1e-12, "latitude");
    VERIFY_NEAR(plotted.places[1].longitude.degrees(), 4, 1e-12, "longitude");
    // West of the central meridian grid north lies west of true north: by 0 on the equator.
    const PlottedLegs onGrid =
        plotLegs(place(0, 2), {{Angle::degrees(90), Length::metres(1000)}}, given, North::Grid, grid, Progress());
    VERIFY_NEAR(onGrid.bearings[0].degrees(), 90, 1e-7, "grid");
  }

  void poles() {
    // From the south pole, where compasses work, along the meridian of 30 east and on past it.
    const Place pole = place(-90, 30);
    const GridNorth grid(standardGrid(pole));
    const PlottedLegs plotted =
        plotLegs(pole, {{Angle::degrees(0), Length::metres(5000)}, {Angle::degrees(180), Length::metres(7000)}},
                 field(), North::True, grid, Progress());
    QCOMPARE(plotted.places.size(), size_t(3));
    VERIFY_NEAR(turnBetween(plotted.places[1].longitude.degrees(), 30), 0, 1e-9, "out");
    VERIFY_NEAR(geodesicBetween(pole, plotted.places[1]).length.metres(), 5000, 1e-6, "out");
    VERIFY_NEAR(turnBetween(plotted.places[2].longitude.degrees(), -150), 0, 1e-9, "across");
    VERIFY_NEAR(geodesicBetween(pole, plotted.places[2]).length.metres(), 2000, 1e-6, "across");
    // At the north pole the field is too weak.
    for (const North north : {North::Magnetic, North::True, North::Grid}) {
      const PlottedLegs none = plotLegs(place(90, 0), {{Angle(), Length::metres(10)}}, field(), north,
                                        GridNorth(standardGrid(place(90, 0))), Progress());
      QVERIFY(none.stop == PlottedLegs::Stop::NoCompass);
      QCOMPARE(none.places.size(), size_t(1));
    }
  }

  // A UTM grid has no end a quarter of the Earth from its meridian (9 east). Along the equator, which it draws
  // straight, 90 on the grid is east: a turn of the equator is 2 pi 6378137 m long.
  void beyondTheGrid() {
    const double degree = 6378137 * Angle::pi / 180; // of the equator, metres
    const GridNorth grid("EPSG:32632");
    const ReadLeg kilometre{Angle::degrees(90), Length::metres(1000)};
    const ReadLeg out{Angle::degrees(90), Length::metres(50 * degree)};   // to where the grid has no end
    const ReadLeg wide{Angle::degrees(90), Length::metres(100 * degree)}; // there half way
    const auto plotted = [&](double longitude, const std::vector<ReadLeg> &legs, North north) {
      return plotLegs(place(0, longitude), legs, field(), north, grid, Progress());
    };

    const PlottedLegs none = plotted(99, {kilometre, kilometre}, North::Grid);
    QVERIFY(none.stop == PlottedLegs::Stop::NoGrid);
    QCOMPARE(none.places.size(), size_t(1));
    VERIFY_NEAR(none.places[0].longitude.degrees(), 99, 0, "start");
    QVERIFY(none.bearings.empty());

    // What was laid before stays, and nothing comes after.
    const PlottedLegs some = plotted(49, {out, kilometre, kilometre}, North::Grid);
    QVERIFY(some.stop == PlottedLegs::Stop::NoGrid);
    QCOMPARE(some.places.size(), size_t(2));
    QCOMPARE(some.bearings.size(), size_t(1));
    VERIFY_NEAR(some.bearings[0].degrees(), 90, 1e-6, "the leg laid");
    VERIFY_NEAR(some.places[1].longitude.degrees(), 99, 1e-6, "its end");
    VERIFY_NEAR(some.places[1].latitude.degrees(), 0, 1e-6, "its end");

    const PlottedLegs middle = plotted(49, {wide}, North::Grid);
    QVERIFY(middle.stop == PlottedLegs::Stop::NoGrid);
    QCOMPARE(middle.places.size(), size_t(1));

    // Who reads from other norths needs no grid.
    for (const North north : {North::Magnetic, North::True}) {
      const PlottedLegs all = plotted(99, {kilometre, kilometre}, north);
      QVERIFY(all.stop == PlottedLegs::Stop::None);
      QCOMPARE(all.places.size(), size_t(3));
    }
  }

  void cancels() {
    struct Now : Progress {
      bool cancelled() const override { return true; }
    };
    QVERIFY_EXCEPTION_THROWN(
        plotLegs(place(0, 3), {{Angle(), Length::metres(10)}}, field(), North::True, GridNorth("EPSG:32631"), Now()),
        Cancelled);
  }
};

QTEST_GUILESS_MAIN(PlotLegsTest)
#include "plot_legs_test.moc"
