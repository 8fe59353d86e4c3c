// SPDX-License-Identifier: GPL-2.0-or-later
#include "magnetics/field_elements.h"

#include "support/check_values.h"
#include "support/near.h"
#include "support/random.h"

#include <set>
#include <stdexcept>

using namespace brushline;
using namespace brushline::test;

class FieldElementsTest : public QObject {
  Q_OBJECT
private slots:
  void elements();
  void noHorizontalPart();
  void declinationChange();
  void zoneLimits();
  void zonesOfTestValues();
  void zoneWords();
  void declinationError();
  void declinationErrorAtZero();
};

namespace {
// The zone of a field, in the files' words.
std::string zoneName(double horizontal) {
  const CompassZone zone = compassZone(horizontal);
  return zone == CompassZone::Blackout ? "blackout" : zone == CompassZone::Caution ? "caution" : "none";
}
} // namespace

// Computed by hand: 3, 4, 5 and 5, 12, 13 are right triangles.
void FieldElementsTest::elements() {
  const FieldVector field{3000, 4000, 12000};
  VERIFY_NEAR(field.horizontal(), 5000, 1e-9, "horizontal");
  VERIFY_NEAR(field.total(), 13000, 1e-9, "total");
  VERIFY_NEAR(field.declination().east.degrees(), std::atan2(4, 3) * 180 / Angle::pi, 1e-12, "declination");
  VERIFY_NEAR(field.inclination().degrees(), std::atan2(12, 5) * 180 / Angle::pi, 1e-12, "inclination");
  VERIFY_NEAR((FieldVector{-1, -1, 0}).declination().east.degrees(), -135, 1e-12, "declination west and south");
  VERIFY_NEAR((FieldVector{-1, 1, 0}).declination().east.degrees(), 135, 1e-12, "declination east and south");
  VERIFY_NEAR((FieldVector{0, -7, 0}).declination().east.degrees(), -90, 1e-12, "declination west");
  VERIFY_NEAR((FieldVector{3, 4, -5}).inclination().degrees(), -45, 1e-12, "upwards");
}

void FieldElementsTest::noHorizontalPart() {
  const FieldVector field{0, 0, 50000};
  QVERIFY(field.declination().east.degrees() == 0);
  QVERIFY(field.inclination().degrees() == 90);
  QVERIFY((FieldVector{0, 0, -1}).inclination().degrees() == -90);
  QVERIFY(std::isnan(brushline::declinationChange(field, {1, 1, 1}).degrees()));
}

// Against a difference over a thousandth of a year.
void FieldElementsTest::declinationChange() {
  Random random(50);
  for (int i = 0; i < 1000; ++i) {
    const FieldVector field{random.between(-40000, 40000), random.between(-40000, 40000), 0};
    const FieldVector change{random.between(-100, 100), random.between(-100, 100), random.between(-100, 100)};
    if (field.horizontal() < 2000)
      continue;
    const double t = 1e-3;
    const FieldVector after{field.north + t * change.north, field.east + t * change.east, 0};
    const FieldVector before{field.north - t * change.north, field.east - t * change.east, 0};
    const double turn = std::remainder(after.declination().east.degrees() - before.declination().east.degrees(), 360);
    VERIFY_NEAR(brushline::declinationChange(field, change).degrees(), turn / (2 * t), 1e-8,
                std::to_string(field.north) + " " + std::to_string(field.east));
  }
}

void FieldElementsTest::zoneLimits() {
  const CheckValues values("magnetics/data/field_zone_limits.csv");
  std::set<std::string> seen;
  for (const CheckRow &row : values.rows()) {
    VERIFY_CHECK(values.check(row, "zone", zoneName(row.number("h_nt"))));
    seen.insert(row.text("zone"));
  }
  QCOMPARE(seen.size(), size_t(3));
  QVERIFY(CompassZone::Reliable < CompassZone::Caution && CompassZone::Caution < CompassZone::Blackout); // worst last
}

void FieldElementsTest::zonesOfTestValues() {
  const CheckValues values("magnetics/data/field_zones.csv");
  for (const CheckRow &row : values.rows())
    VERIFY_CHECK(values.check(row, "zone", zoneName(row.number("h_nt"))));
}

// Tables keep these words whatever the language.
void FieldElementsTest::zoneWords() {
  QCOMPARE(QString(zoneWord(CompassZone::Reliable)), QString("reliable"));
  QCOMPARE(QString(zoneWord(CompassZone::Caution)), QString("caution"));
  QCOMPARE(QString(zoneWord(CompassZone::Blackout)), QString("blackout"));
}

void FieldElementsTest::declinationError() {
  const CheckValues values("magnetics/data/wmm_error.csv");
  std::set<int> years;
  for (const CheckRow &row : values.rows()) {
    const int year = int(row.number("model_year"));
    VERIFY_AT(year == 2025 || year == 2020, row.text("model_year"));
    const DeclinationErrorModel model = year == 2025 ? wmm2025Error : wmm2020Error;
    VERIFY_CHECK(values.check(row, "decl_err_deg", model.at(row.number("h_nt")).degrees()));
    years.insert(year);
  }
  QCOMPARE(years.size(), size_t(2));
}

void FieldElementsTest::declinationErrorAtZero() { QVERIFY(std::isinf(wmm2025Error.at(0).degrees())); }

QTEST_APPLESS_MAIN(FieldElementsTest)
#include "field_elements_test.moc"
