// SPDX-License-Identifier: GPL-2.0-or-later
#include "magnetics/field_at_points.h"

#include "magnetics/world_magnetic_model.h"
#include "support/check_values.h"
#include "support/near.h"
#include "support/random.h"

#include <proj.h>

#include <memory>
#include <set>
#include <stdexcept>

using namespace brushline;
using namespace brushline::test;

class FieldAtPointsTest : public QObject {
  Q_OBJECT
private slots:
  void publishedValues_data();
  void publishedValues();
  void gridVariation();
  void publishedConvergences();
  void convergenceAgainstProjFactors();
  void gridMagneticAngle();
  void standardGrids();
  void outsideTheGrid();
  void given();
  void modelOfAnotherDay();
  void magneticPole();
  void poles();
  void longitudesOfAnyTurn();
  void firstAndLastDay();
  void heights();
  void notProjected();
};

namespace {
Place place(double latitude, double longitude) { return {Angle::degrees(latitude), Angle::degrees(longitude)}; }

FieldSetting wmm(double year, std::optional<Declination> given = std::nullopt) {
  return FieldSetting(coefficientModel(worldMagneticModel2025(), DecimalYear(year)), given);
}

// A field that is the same everywhere.
class Steady final : public FieldModel {
public:
  explicit Steady(FieldVector field) : mField(field) {}
  std::string name() const override { return "steady"; }
  FieldVector field(const Place &, Length) const override { return mField; }
  FieldVector changePerYear(const Place &, Length) const override { return {1, 1, 1}; }
  std::optional<DeclinationErrorModel> declinationError() const override { return wmm2025Error; }

private:
  FieldVector mField;
};
} // namespace

void FieldAtPointsTest::publishedValues_data() {
  QTest::addColumn<QString>("file");
  QTest::addColumn<int>("rows");
  QTest::newRow("test values") << "magnetics/data/wmm2025_test_values.csv" << 100;
  QTest::newRow("table of the report") << "magnetics/data/wmm2025_report_table.csv" << 12;
}

// Declination, dip, strength and the declination's rate as published with the model.
void FieldAtPointsTest::publishedValues() {
  QFETCH(QString, file);
  QFETCH(int, rows);
  const CheckValues values(file.toStdString());
  QCOMPARE(int(values.rows().size()), rows);
  for (const CheckRow &row : values.rows()) {
    const FieldSetting setting = wmm(row.number("year"));
    const PointField field =
        FieldAtPoints(setting, std::string())
            .at(place(row.number("lat_deg"), row.number("lon_deg")), Length::metres(1000 * row.number("height_km")));
    const std::string where = "line " + std::to_string(row.line());
    VERIFY_AT(field.inclination && field.horizontal_nt && field.total_nt && field.declination_change, where);
    VERIFY_CHECK(values.checkTurn(row, "d_deg", field.declination.east.degrees()));
    VERIFY_CHECK(values.check(row, "i_deg", field.inclination->degrees()));
    VERIFY_CHECK(values.check(row, "h_nt", *field.horizontal_nt));
    VERIFY_CHECK(values.check(row, "f_nt", *field.total_nt));
    VERIFY_CHECK(values.check(row, "ddot_deg_yr", field.declination_change->degrees()));
    VERIFY_AT(field.zone == compassZone(row.number("h_nt")), where);
    VERIFY_NEAR(field.declination_error->degrees(), wmm2025Error.at(row.number("h_nt")).degrees(), 1e-5, where);
  }
}

// The grid variation that the report's table prints is the grid magnetic angle of the polar grids.
void FieldAtPointsTest::gridVariation() {
  const CheckValues values("magnetics/data/wmm2025_report_table.csv");
  int published = 0;
  for (const CheckRow &row : values.rows()) {
    const auto expected = row.maybe("gv_deg");
    if (!expected)
      continue;
    const FieldSetting setting = wmm(row.number("year"));
    FieldAtPoints points(setting, row.number("lat_deg") > 0 ? "EPSG:32661" : "EPSG:32761");
    const PointField field =
        points.at(place(row.number("lat_deg"), row.number("lon_deg")), Length::metres(1000 * row.number("height_km")));
    QVERIFY(field.grid_magnetic);
    VERIFY_CHECK(values.check(row, "gv_deg", field.grid_magnetic->degrees()));
    ++published;
  }
  QCOMPARE(published, 8);
}

// Snyder's example on the ellipsoid of 1866 among them.
void FieldAtPointsTest::publishedConvergences() {
  const CheckValues values("shared/data/grid_convergence.csv");
  const FieldSetting setting = wmm(2026.5);
  std::set<std::string> origins;
  for (const CheckRow &row : values.rows()) {
    const PointField field =
        FieldAtPoints(setting, row.text("crs")).at(place(row.number("lat_deg"), row.number("lon_deg")), Length());
    QVERIFY(field.convergence);
    VERIFY_CHECK(values.checkTurn(row, "convergence_deg", field.convergence->east.degrees()));
    origins.insert(row.text("origin").substr(0, 15));
  }
  QVERIFY(origins.count("published point"));
}

// PROJ's own factors, in systems that are conformal and that are not.
void FieldAtPointsTest::convergenceAgainstProjFactors() {
  const FieldSetting setting = wmm(2026.5);
  const std::unique_ptr<PJ_CONTEXT, decltype(&proj_context_destroy)> context(proj_context_create(),
                                                                             proj_context_destroy);
  struct Area {
    const char *crs;
    double south, north, west, east;
  };
  for (const Area &area : {Area{"EPSG:32621", 40, 60, -60, -54}, Area{"EPSG:32756", -60, -20, 150, 156},
                           Area{"EPSG:3857", -70, 70, -180, 180}, Area{"EPSG:3413", 60, 89, -180, 180},
                           Area{"EPSG:29873", -4, 8, 109, 119},
                           Area{"+proj=laea +lat_0=52 +lon_0=10 +ellps=GRS80 +type=crs", 35, 70, -10, 40}}) {
    FieldAtPoints points(setting, area.crs);
    const std::unique_ptr<PJ, decltype(&proj_destroy)> system(proj_create(context.get(), area.crs), proj_destroy);
    QVERIFY(system);
    Random random(61);
    for (int i = 0; i < 5; ++i) {
      const Place at = place(random.between(area.south, area.north), random.between(area.west, area.east));
      const PointField field = points.at(at, Length());
      const PJ_FACTORS factors =
          proj_factors(system.get(), proj_coord(at.longitude.radians(), at.latitude.radians(), 0, 0));
      VERIFY_AT(proj_errno(system.get()) == 0, area.crs);
      VERIFY_AT(field.convergence, area.crs);
      const double expected = Angle::radians(factors.meridian_convergence).degrees();
      VERIFY_CHECK(checkOf("convergence", std::string(area.crs) + " " + std::to_string(i),
                           turnedTo(field.convergence->east.degrees(), expected), expected, 1e-6, "deg",
                           "computed with PROJ's proj_factors, conformal systems and others"));
    }
  }
}

// Grid magnetic angle = declination - convergence, in [-180, 180]; it turns a grid bearing into a magnetic one.
void FieldAtPointsTest::gridMagneticAngle() {
  const FieldSetting setting = wmm(2026.5);
  FieldAtPoints points(setting, "EPSG:3413");
  Random random(62);
  int wrapped = 0;
  for (int i = 0; i < 500; ++i) {
    const Place at = place(random.between(60, 90), random.between(-180, 180));
    const PointField field = points.at(at, Length());
    QVERIFY(field.convergence && field.grid_magnetic);
    const double difference = field.declination.east.degrees() - field.convergence->east.degrees();
    VERIFY_NEAR(turnBetween(field.grid_magnetic->degrees(), difference), 0, 1e-12, std::to_string(i));
    QVERIFY(std::abs(field.grid_magnetic->degrees()) <= 180);
    wrapped += std::abs(difference) > 180;
    const GridBearing grid(Angle::degrees(random.between(0, 360)));
    const MagneticBearing magnetic = toMagnetic(toTrue(grid, *field.convergence), field.declination);
    VERIFY_NEAR(turnBetween(magnetic.degrees(), grid.degrees() - field.grid_magnetic->degrees()), 0, 1e-10,
                std::to_string(i));
  }
  QVERIFY(wrapped > 10);
}

// Without a grid, each point's own UTM zone or polar cap.
void FieldAtPointsTest::standardGrids() {
  const FieldSetting setting = wmm(2026.5);
  FieldAtPoints points(setting, std::string());
  Random random(63);
  std::set<std::string> grids;
  for (int i = 0; i < 300; ++i) {
    const Place at = random.place();
    const std::string grid = standardGrid(at);
    QVERIFY(points.at(at, Length()).convergence->east.degrees() == GridNorth(grid).at(at).east.degrees());
    grids.insert(grid);
  }
  QVERIFY(grids.size() > 60);
}

void FieldAtPointsTest::outsideTheGrid() {
  const FieldSetting setting = wmm(2026.5);
  const PointField field = FieldAtPoints(setting, "EPSG:32632").at(place(0, 99), Length());
  QVERIFY(!field.convergence && !field.grid_magnetic);
  QVERIFY(field.inclination && std::isfinite(field.declination.east.degrees()));
}

// A declination read off a map has no error; the rest stays the model's.
void FieldAtPointsTest::given() {
  const FieldSetting model = wmm(2026.5), setting = wmm(2026.5, Declination{Angle::degrees(-12.5)});
  const Place at = place(48.8, -55.2);
  const PointField own = FieldAtPoints(model, std::string()).at(at, Length());
  const PointField field = FieldAtPoints(setting, std::string()).at(at, Length());
  QVERIFY(field.declination.east.degrees() == -12.5);
  QVERIFY(!field.declination_error);
  QVERIFY(field.inclination->degrees() == own.inclination->degrees());
  QVERIFY(*field.horizontal_nt == *own.horizontal_nt && *field.total_nt == *own.total_nt);
  QVERIFY(field.declination_change->degrees() == own.declination_change->degrees());
  VERIFY_NEAR(field.grid_magnetic->degrees(), -12.5 - own.convergence->east.degrees(), 1e-12, "grid magnetic");
}

void FieldAtPointsTest::modelOfAnotherDay() {
  const FieldSetting setting = wmm(2025, Declination{Angle::degrees(-12.5)});
  const PointField field =
      FieldAtPoints(setting, std::string(), FieldAtPoints::ModelDay::Nearest).at(place(85.8, 140), Length());
  QVERIFY(!field.inclination && !field.horizontal_nt && !field.total_nt && !field.declination_change);
  QVERIFY(field.convergence && field.grid_magnetic);
  QVERIFY(field.zone == CompassZone::Blackout);
}

// A plumb field has no declination to change, and its error has no bound.
void FieldAtPointsTest::magneticPole() {
  const FieldSetting setting(std::make_unique<Steady>(FieldVector{0, 0, 57000}));
  const PointField field = FieldAtPoints(setting, std::string()).at(place(86, 139), Length());
  QVERIFY(!field.declination_change && !field.declination_error);
  QVERIFY(field.zone == CompassZone::Blackout);
  QVERIFY(field.inclination->degrees() == 90);
}

// At a pole the field stands still while north turns with the longitude that is given: the declination grows with it in
// the north and falls in the south, and so does the convergence of the polar grids (lon and -lon, by formula). The grid
// magnetic angle is the same for all. The declination on longitude 0 is that of the published X and Y, atan2(Y, X).
void FieldAtPointsTest::poles() {
  const CheckValues values("magnetics/data/wmm2025_poles.csv");
  QCOMPARE(values.rows().size(), size_t(2));
  for (const CheckRow &row : values.rows()) {
    const double x = row.number("x_nt"), y = row.number("y_nt"), horizontal = std::hypot(x, y);
    const double onGreenwich = Angle::radians(std::atan2(y, x)).degrees();
    // X and Y to 0.0501 nT each, so the direction to that over H.
    const double tolerance = Angle::radians(0.0501 * std::sqrt(2) / horizontal).degrees();
    const double latitude = row.number("lat_deg"), sign = latitude > 0 ? 1 : -1;
    const Length height = Length::metres(1000 * row.number("height_km"));
    const FieldSetting setting = wmm(row.number("year"));
    FieldAtPoints points(setting, std::string());
    for (const double longitude : {0.0, 45.0, 90.0, 139.0, 180.0, -27.5, -135.0}) {
      const PointField field = points.at(place(latitude, longitude), height);
      const std::string where = std::to_string(latitude) + ", " + std::to_string(longitude);
      VERIFY_NEAR(turnBetween(field.declination.east.degrees(), onGreenwich + sign * longitude), 0, tolerance, where);
      VERIFY_AT(field.convergence && field.grid_magnetic && field.inclination && field.declination_change, where);
      VERIFY_NEAR(turnBetween(field.convergence->east.degrees(), sign * longitude), 0, 1e-7, where);
      VERIFY_NEAR(turnBetween(field.grid_magnetic->degrees(), onGreenwich), 0, tolerance, where);
      VERIFY_NEAR(*field.horizontal_nt, horizontal, 0.0501 * std::sqrt(2), where);
      VERIFY_NEAR(field.inclination->degrees(), Angle::radians(std::atan2(row.number("z_nt"), horizontal)).degrees(),
                  tolerance, where);
      // 1760 and 16 658 nT, by hand.
      VERIFY_AT(field.zone == (latitude > 0 ? CompassZone::Blackout : CompassZone::Reliable), where);
    }
  }
}

void FieldAtPointsTest::longitudesOfAnyTurn() {
  const FieldSetting setting = wmm(2026.5);
  for (const char *grid : {"", "EPSG:32621", "EPSG:3413"}) {
    FieldAtPoints points(setting, grid);
    const PointField once = points.at(place(48.8, -55.2), Length());
    for (const double longitude : {304.8, -415.2, 664.8}) {
      const PointField again = points.at(place(48.8, longitude), Length());
      const std::string where = std::string(grid) + " " + std::to_string(longitude);
      VERIFY_NEAR(again.declination.east.degrees(), once.declination.east.degrees(), 1e-9, where);
      VERIFY_AT(again.convergence && again.grid_magnetic, where);
      VERIFY_NEAR(again.convergence->east.degrees(), once.convergence->east.degrees(), 1e-9, where);
      VERIFY_NEAR(again.grid_magnetic->degrees(), once.grid_magnetic->degrees(), 1e-9, where);
      VERIFY_NEAR(*again.total_nt, *once.total_nt, 1e-6, where);
    }
  }
}

// On the model's first and last day, ends included, the declination is that of the day between plus its yearly change
// (the coefficients are linear in time; the declination to 0.01 degrees a year or so, since it bends). A day outside is
// refused.
void FieldAtPointsTest::firstAndLastDay() {
  const Place at = place(48.8, -55.2);
  const FieldSetting middle = wmm(2027.5);
  const PointField between = FieldAtPoints(middle, std::string()).at(at, Length());
  for (const double year : {2025.0, 2030.0}) {
    const FieldSetting setting = wmm(year);
    const PointField field = FieldAtPoints(setting, std::string()).at(at, Length());
    const double years = year - 2027.5;
    VERIFY_NEAR(field.declination.east.degrees() - between.declination.east.degrees(),
                years * between.declination_change->degrees(), 0.025, std::to_string(year));
    QVERIFY(std::abs(years * between.declination_change->degrees()) > 0.1); // it does change
  }
  QVERIFY_EXCEPTION_THROWN(wmm(std::nextafter(2025.0, 0)), YearOutsideModel);
  QVERIFY_EXCEPTION_THROWN(wmm(std::nextafter(2030.0, 3000)), YearOutsideModel);
}

// From 1 km below the ellipsoid to 850 km above it, ends included: MIL-PRF-89500B, from memory.
void FieldAtPointsTest::heights() {
  for (const double height : {-1000.0, -430.0, 0.0, 8849.0, 850000.0})
    VERIFY_AT(FieldAtPoints::reaches(Length::metres(height)), std::to_string(height));
  for (const double height : {std::nextafter(-1000.0, -2000), -1001.0, -9999.0, std::nextafter(850000.0, 1e6), 850001.0,
                              1e6, std::nan(""), double(HUGE_VAL), -double(HUGE_VAL)})
    VERIFY_AT(!FieldAtPoints::reaches(Length::metres(height)), std::to_string(height));
  const FieldSetting setting = wmm(2026.5);
  FieldAtPoints points(setting, std::string());
  const Place at = place(48.8, -55.2);
  QVERIFY(*points.at(at, Length::metres(1000)).total_nt < *points.at(at, Length()).total_nt);
}

void FieldAtPointsTest::notProjected() {
  const FieldSetting setting = wmm(2026.5);
  QVERIFY_EXCEPTION_THROWN(FieldAtPoints(setting, "EPSG:4326"), std::invalid_argument);
}

QTEST_APPLESS_MAIN(FieldAtPointsTest)
#include "field_at_points_test.moc"
