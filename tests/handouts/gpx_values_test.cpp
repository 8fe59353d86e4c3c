// SPDX-License-Identifier: GPL-2.0-or-later
// Check values: ranges of latitudeType (-90 to 90), longitudeType (-180 <= x < 180), degreesType (0 <= x < 360) and
// their base type decimal (no exponent): schema of GPX 1.1, gpx11.xsd, and XML Schema Part 2. The rest follows by
// arithmetic.
#include "handouts/gpx_values.h"

#include "support/comma_locale.h"
#include "support/random.h"

#include <QtTest>

#include <cmath>
#include <limits>

using namespace brushline;

namespace {
Angle degrees(double value) { return Angle::degrees(value); }
constexpr double notANumber = std::numeric_limits<double>::quiet_NaN(),
                 infinity = std::numeric_limits<double>::infinity();
} // namespace

class GpxValuesTest : public QObject {
  Q_OBJECT
private slots:
  void latitudes() {
    QCOMPARE(gpxLatitude(degrees(48.802437644)), std::string("48.802437644"));
    QCOMPARE(gpxLatitude(degrees(90)), std::string("90"));
    QCOMPARE(gpxLatitude(degrees(-90)), std::string("-90"));
    QCOMPARE(gpxLatitude(degrees(89.99999999999)), std::string("90"));
    QCOMPARE(gpxLatitude(degrees(-0.0)), std::string("0"));
    QCOMPARE(gpxLatitude(degrees(-1e-12)), std::string("0"));
    QCOMPARE(gpxLatitude(degrees(1e-9)), std::string("0.000000001")); // no exponent
    QCOMPARE(gpxLatitude(degrees(-47.5)), std::string("-47.5"));
  }

  void longitudes() {
    QCOMPARE(gpxLongitude(degrees(-55.198006434)), std::string("-55.198006434"));
    QCOMPARE(gpxLongitude(degrees(180)), std::string("-180"));
    QCOMPARE(gpxLongitude(degrees(-180)), std::string("-180"));
    QCOMPARE(gpxLongitude(degrees(540)), std::string("-180"));
    QCOMPARE(gpxLongitude(degrees(180.5)), std::string("-179.5"));
    QCOMPARE(gpxLongitude(degrees(-180.5)), std::string("179.5"));
    QCOMPARE(gpxLongitude(degrees(179.999999999)), std::string("179.999999999"));
    QCOMPARE(gpxLongitude(degrees(179.9999999999)), std::string("-180")); // by rounding
    QCOMPARE(gpxLongitude(degrees(-179.9999999999)), std::string("-180"));
    QCOMPARE(gpxLongitude(degrees(360)), std::string("0"));
    QCOMPARE(gpxLongitude(degrees(-360)), std::string("0"));
  }

  void magneticVariation() {
    const auto written = [](double east) { return gpxMagneticVariation({degrees(east)}); };
    QCOMPARE(written(-13), std::string("347"));
    QCOMPARE(written(13), std::string("13"));
    QCOMPARE(written(0), std::string("0"));
    QCOMPARE(written(-0.0), std::string("0"));
    QCOMPARE(written(-0.5), std::string("359.5"));
    QCOMPARE(written(-1e-20), std::string("0"));
    QCOMPARE(written(-0.0000004), std::string("0")); // 359.9999996 rounds to 360, which is none
    QCOMPARE(written(-0.000001), std::string("359.999999"));
    QCOMPARE(written(180), std::string("180"));
    QCOMPARE(written(-180), std::string("180"));
  }

  void shortestGivesBack() {
    QCOMPARE(shortestNumber(276), std::string("276"));
    QCOMPARE(shortestNumber(0.1), std::string("0.1"));
    QCOMPARE(shortestNumber(-0.0), std::string("0"));
    QCOMPARE(shortestNumber(notANumber), std::string());
    QCOMPARE(shortestNumber(-infinity), std::string());
    test::Random random(1);
    for (int i = 0; i < 10000; ++i) {
      const double value = std::ldexp(random.between(-1, 1), int(random.between(-80, 80)));
      const std::string text = shortestNumber(value);
      QCOMPARE(QByteArray::fromStdString(text).toDouble(), value);
    }
  }

  void roundedToDecimals() {
    QCOMPARE(roundedNumber(5.88, 1), std::string("5.9"));
    QCOMPARE(roundedNumber(-0.04, 1), std::string("0.0"));
    QCOMPARE(roundedNumber(-0.06, 1), std::string("-0.1"));
    QCOMPARE(roundedNumber(197.5, 0), std::string("198"));
    QCOMPARE(roundedNumber(-0.2, 0), std::string("0"));
    QCOMPARE(roundedNumber(notANumber, 1), std::string());
    QCOMPARE(roundedNumber(1e308, 0).size(), size_t(309)); // by definition
  }

  void pointInEveryLocale() {
    const test::CommaLocale locale;
    QCOMPARE(shortestNumber(1234.5), std::string("1234.5"));
    QCOMPARE(roundedNumber(1234.5, 1), std::string("1234.5"));
    QCOMPARE(gpxLongitude(degrees(-55.5)), std::string("-55.5"));
  }

  void neverOutOfRange() {
    test::Random random(2);
    for (int i = 0; i < 20000; ++i) {
      const double angle = random.between(-1000, 1000), near = 180 + random.between(-2e-9, 2e-9);
      for (const double turn : {angle, near, -near, near - 180, 2 * near}) {
        const double longitude = std::stod(gpxLongitude(degrees(turn)));
        QVERIFY(longitude >= -180 && longitude < 180);
        QVERIFY(std::abs(std::remainder(longitude - turn, 360)) < 1e-9);
        const double variation = std::stod(gpxMagneticVariation({degrees(turn)}));
        QVERIFY(variation >= 0 && variation < 360);
        QVERIFY(std::abs(std::remainder(variation - turn, 360)) < 1e-6);
      }
    }
  }

  void bounds() {
    GpxBounds box;
    QVERIFY(box.empty());
    box.add({degrees(1), degrees(179.9)});
    QCOMPARE(box.west(), box.east());
    box.add({degrees(-2), degrees(-179.9)}); // across the antimeridian: around the Earth
    QVERIFY(!box.empty());
    QCOMPARE(box.south(), std::string("-2"));
    QCOMPARE(box.north(), std::string("1"));
    QCOMPARE(box.west(), std::string("-179.9"));
    QCOMPARE(box.east(), std::string("179.9"));
    box.add({degrees(0), degrees(180)}); // is written as -180
    QCOMPARE(box.west(), std::string("-180"));
    QCOMPARE(box.east(), std::string("179.9"));
    GpxBounds rounded;
    rounded.add({degrees(0), degrees(179.9999999999)});
    QCOMPARE(rounded.east(), std::string("-180"));
  }

  void letters() {
    QCOMPARE(letterOf(0), std::string("A"));
    QCOMPARE(letterOf(25), std::string("Z"));
    QCOMPARE(letterOf(26), std::string("AA"));
    QCOMPARE(letterOf(27), std::string("AB"));
    QCOMPARE(letterOf(701), std::string("ZZ"));
    QCOMPARE(letterOf(702), std::string("AAA"));
    QSet<QString> seen;
    for (size_t i = 0; i < 20000; ++i)
      seen << QString::fromStdString(letterOf(i));
    QCOMPARE(seen.size(), 20000);
  }
};

QTEST_APPLESS_MAIN(GpxValuesTest)
#include "gpx_values_test.moc"
