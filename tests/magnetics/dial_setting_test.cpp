// SPDX-License-Identifier: GPL-2.0-or-later
#include "magnetics/dial_setting.h"

#include <QtTest>

using namespace brushline;

class DialSettingTest : public QObject {
  Q_OBJECT
private slots:
  // True 105, declination 17 west, convergence 2 east: magnetic 122, grid 103. Computed by hand from the definitions.
  void eachNorth() {
    const TrueBearing bearing(Angle::degrees(105));
    const GridBearing grid(Angle::degrees(103));
    LocalField field;
    field.declination = {Angle::degrees(-17)};
    Compass compass;
    compass.step = 1;
    compass.north = North::Magnetic;
    QCOMPARE(dialSetting(compass, bearing, grid, field).value(), 122.0);
    compass.north = North::True;
    QCOMPARE(dialSetting(compass, bearing, grid, field).value(), 105.0);
    compass.north = North::Grid;
    QCOMPARE(dialSetting(compass, bearing, grid, field).value(), 103.0);
  }

  void noneWhereNoCompassWorks() {
    LocalField field;
    for (const North north : {North::Magnetic, North::True, North::Grid}) {
      Compass compass;
      compass.north = north;
      field.zone = CompassZone::Caution;
      QVERIFY(dialSetting(compass, TrueBearing(), GridBearing(), field));
      field.zone = CompassZone::Blackout;
      QVERIFY(!dialSetting(compass, TrueBearing(), GridBearing(), field));
    }
  }
};

QTEST_APPLESS_MAIN(DialSettingTest)
#include "dial_setting_test.moc"
