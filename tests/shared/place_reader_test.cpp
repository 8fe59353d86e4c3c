// SPDX-License-Identifier: GPL-2.0-or-later
// Places as points of a map, where it goes on round the Earth and where it does not.
#include "shared/place_reader_host.h"

#include "support/host_fixture.h"
#include "support/near.h"

#include <cmath>

using namespace brushline;
using namespace brushline::test;

namespace {
Place place(double latitude, double longitude) { return {Angle::degrees(latitude), Angle::degrees(longitude)}; }
FromPlaces into(const char *crs) {
  return FromPlaces(QgsCoordinateReferenceSystem(QString::fromLatin1(crs)), QgsCoordinateTransformContext());
}
const double edge =
    Angle::pi * 6378137; // of Web Mercator, a sphere's: EPSG guidance note 7-2, method 1024; from memory
} // namespace

class PlaceReaderTest : public QObject {
  Q_OBJECT

private slots:
  void besideWhatIsDrawn_data() {
    QTest::addColumn<QByteArray>("crs");
    QTest::addColumn<double>("longitude");
    QTest::addColumn<double>("near_x");
    QTest::addColumn<double>("x");
    const auto row = [](const char *name, const char *crs, double longitude, double near_x, double x) {
      QTest::newRow(name) << QByteArray(crs) << longitude << near_x << x;
    };
    const double metres = edge / 180; // a degree
    row("far from the cut", "EPSG:4326", -57.25, -57, -57.25);
    row("eastwards", "EPSG:4326", -179.998, 180, 180.002);
    row("westwards", "EPSG:4326", 179.998, -179.999, -180.002);
    row("a turn further, given as it is", "EPSG:4326", 180.002, 180, 180.002);
    row("turns further", "EPSG:4326", 10, 730, 730);
    row("on the meridian", "EPSG:4326", -180, 179.9, 180);
    row("beyond the pole", "EPSG:4326", 180, 0, 180);
    row("beyond the pole, west", "EPSG:4326", -150, 30, -150);
    row("another datum", "EPSG:4258", -179.998, 180, 180.002);
    row("another datum, westwards", "EPSG:4258", 179.998, -180, -180.002);
    row("Web Mercator", "EPSG:3857", -57.25, -57 * metres, -57.25 * metres);
    row("Web Mercator, eastwards", "EPSG:3857", -179.998, edge - 10, 180.002 * metres);
    row("Web Mercator, westwards", "EPSG:3857", 179.998, -edge, -180.002 * metres);
    row("Web Mercator, drawn beyond its edge", "EPSG:3857", 179.999, edge + 10, 179.999 * metres);
    // PDC Mercator, about 150 east, goes on at 180 and is cut at 30 west; x as that of a sphere.
    row("Mercator of the Pacific", "EPSG:3832", -179.998, 29.9 * metres, 30.002 * metres);
    row("Mercator of the Pacific, at its cut", "EPSG:3832", -29.99, 179.9 * metres, 180.01 * metres);
  }

  void besideWhatIsDrawn() {
    QFETCH(QByteArray, crs);
    QFETCH(double, longitude);
    QFETCH(double, near_x);
    QFETCH(double, x);
    const QgsPointXY point = into(crs.constData())(place(-16.8, longitude), near_x);
    VERIFY_NEAR(point.x(), x, 1e-7, crs.toStdString());
    QVERIFY(std::isfinite(point.y()));
  }

  // Where nothing comes again, it does not matter what is drawn.
  void elsewhere() {
    for (const char *crs : {"EPSG:32601", "EPSG:32760", "EPSG:3413", "EPSG:3031", "EPSG:27700", "EPSG:4978"}) {
      const FromPlaces fromPlaces = into(crs);
      QCOMPARE(fromPlaces.worldWidth(), 0.0);
      QCOMPARE(fromPlaces.beside(5e7, -5e7), 5e7);
    }
    const FromPlaces zone = into("EPSG:32760");
    const QgsPolylineXY line = zone({place(-17, 179.999), place(-17, -179.999)}, -1e8);
    QVERIFY(line[0].distance(line[1]) < 220); // 0.002 degrees are 213 m here
  }

  // A line goes on from point to point, also more than once round.
  void line() {
    const FromPlaces fromPlaces = into("EPSG:4326");
    std::vector<Place> places;
    for (int i = 0; i < 9; ++i)
      places.push_back(place(80, std::remainder(170 + 100.0 * i, 360)));
    const QgsPolylineXY line = fromPlaces(places, 180);
    QCOMPARE(line.size(), 9);
    for (int i = 0; i < line.size(); ++i)
      VERIFY_NEAR(line[i].x(), 170 + 100 * i, 1e-9, std::to_string(i));
    VERIFY_NEAR(fromPlaces({place(80, -170)}, std::nullopt)[0].x(), -170, 0, "nothing drawn");
    QVERIFY(fromPlaces(std::vector<Place>(), 0).isEmpty());
  }

  void outOfReach() {
    const QgsPolylineXY line = into("EPSG:32632")({place(0, 99), place(47, 9)}, 500000);
    QVERIFY(!std::isfinite(line[0].x()) && std::isfinite(line[1].y()));
  }
};

BRUSHLINE_HOST_TEST_MAIN(PlaceReaderTest)
#include "place_reader_test.moc"
