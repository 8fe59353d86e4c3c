// SPDX-License-Identifier: GPL-2.0-or-later
#include "magnetics/world_magnetic_model.h"

#include "shared/grid_north.h"
#include "support/check_values.h"
#include "support/comma_locale.h"
#include "support/installed_models.h"
#include "support/near.h"
#include "support/random.h"

#include <map>

using namespace brushline;
using namespace brushline::test;

class WorldMagneticModelTest : public QObject {
  Q_OBJECT
private slots:
  void publishedTestValues();
  void reportTable();
  void gridVariation();
  void rates();
  void poles();
  void zones();
  void dipole();
  void linearInTime();
  void agreesWithGeographicLib();
  void builtInIsTheFile();
  void parse();
  void parseErrors_data();
  void parseErrors();
  void parseInAnotherLocale();
  void yearOutside();
  void nameAndError();
};

namespace {
Place placeOf(const CheckRow &row) {
  return {Angle::degrees(row.number("lat_deg")), Angle::degrees(row.number("lon_deg"))};
}

// All elements and their changes, by the names of the files' columns.
std::map<std::string, double> elements(const CheckRow &row) {
  const auto model = coefficientModel(worldMagneticModel2025(), DecimalYear(row.number("year")));
  const Length height = Length::metres(1000 * row.number("height_km"));
  const FieldVector f = model->field(placeOf(row), height);
  const FieldVector d = model->changePerYear(placeOf(row), height);
  const double h = f.horizontal(), t = f.total();
  const double hChange = (f.north * d.north + f.east * d.east) / h;
  return {{"x_nt", f.north},
          {"y_nt", f.east},
          {"z_nt", f.down},
          {"h_nt", h},
          {"f_nt", t},
          {"d_deg", f.declination().east.degrees()},
          {"i_deg", f.inclination().degrees()},
          {"xdot_nt_yr", d.north},
          {"ydot_nt_yr", d.east},
          {"zdot_nt_yr", d.down},
          {"hdot_nt_yr", hChange},
          {"fdot_nt_yr", (h * hChange + f.down * d.down) / t},
          {"ddot_deg_yr", declinationChange(f, d).degrees()},
          {"idot_deg_yr", Angle::radians((h * d.down - f.down * hChange) / (t * t)).degrees()}};
}

// Every named column of every row, at the file's tolerances; says how many rows there were.
void compareFile(const char *path, const std::vector<std::string> &columns, size_t &rows) {
  const CheckValues values(path);
  rows = 0;
  for (const CheckRow &row : values.rows()) {
    const auto found = elements(row);
    for (const std::string &column : columns)
      VERIFY_CHECK(values.check(row, column, found.at(column)));
    ++rows;
  }
}

const std::vector<std::string> fieldColumns = {"x_nt", "y_nt", "z_nt", "h_nt", "f_nt", "d_deg", "i_deg"};
const std::vector<std::string> rateColumns = {"xdot_nt_yr", "ydot_nt_yr",  "zdot_nt_yr", "hdot_nt_yr",
                                              "fdot_nt_yr", "ddot_deg_yr", "idot_deg_yr"};
std::vector<std::string> allColumns() {
  std::vector<std::string> all = fieldColumns;
  all.insert(all.end(), rateColumns.begin(), rateColumns.end());
  return all;
}

std::string dataFile() {
  std::ifstream in(BRUSHLINE_SOURCE_DIR "/algorithms/magnetics/data/wmm2025.cof.txt");
  std::ostringstream text;
  text << in.rdbuf();
  if (!in || text.str().empty())
    throw std::runtime_error("the coefficients' file is missing");
  return text.str();
}

// Degree 1, made up.
const std::string small = "# made up\n"
                          "name small\n"
                          "epoch 2025\n"
                          "radius_m 6371200\n"
                          "degree 1\n"
                          "min_year 2025\n"
                          "max_year 2030\n"
                          "1 0 -30000 0 10 0\n"
                          "1 1 -1500.5 4500 5 -20 # the tilt\n";
} // namespace

void WorldMagneticModelTest::publishedTestValues() {
  size_t rows;
  compareFile("magnetics/data/wmm2025_test_values.csv", allColumns(), rows);
  QCOMPARE(rows, size_t(100));
}

void WorldMagneticModelTest::reportTable() {
  size_t rows;
  compareFile("magnetics/data/wmm2025_report_table.csv", allColumns(), rows);
  QCOMPARE(rows, size_t(12));
}

// The table's grid variation: the angle from the north of the polar grid to magnetic north.
void WorldMagneticModelTest::gridVariation() {
  const CheckValues values("magnetics/data/wmm2025_report_table.csv");
  const GridNorth north("EPSG:32661"), south("EPSG:32761");
  int published = 0;
  for (const CheckRow &row : values.rows()) {
    if (!row.maybe("gv_deg"))
      continue;
    const Place place = placeOf(row);
    const Convergence convergence = (row.number("lat_deg") > 0 ? north : south).at(place);
    const double variation = elements(row).at("d_deg") - convergence.east.degrees();
    VERIFY_CHECK(values.checkTurn(row, "gv_deg", variation));
    ++published;
  }
  QCOMPARE(published, 8);
}

void WorldMagneticModelTest::rates() {
  size_t rows;
  compareFile("magnetics/data/wmm2025_rates_computed.csv", rateColumns, rows);
  QCOMPARE(rows, size_t(100));
  const CheckValues values("magnetics/data/wmm2025_rates_computed.csv");
  int published = 0;
  for (const CheckRow &row : values.rows())
    if (row.maybe("published_ddot_deg_yr")) {
      VERIFY_CHECK(values.check(row, "published_ddot_deg_yr", elements(row).at("ddot_deg_yr")));
      ++published;
    }
  QCOMPARE(published, 6);
}

void WorldMagneticModelTest::poles() {
  size_t rows;
  compareFile("magnetics/data/wmm2025_poles.csv", {"x_nt", "y_nt", "z_nt"}, rows);
  QCOMPARE(rows, size_t(2));
}

void WorldMagneticModelTest::zones() {
  const CheckValues values("magnetics/data/field_zones.csv");
  for (const CheckRow &row : values.rows()) {
    const double h = elements(row).at("h_nt");
    VERIFY_CHECK(values.check(row, "h_nt", h));
    const CompassZone zone = compassZone(h);
    VERIFY_CHECK(values.check(row, "zone",
                              std::string(zone == CompassZone::Blackout  ? "blackout"
                                          : zone == CompassZone::Caution ? "caution"
                                                                         : "none")));
  }
}

// The field of a dipole in closed form, at the distance of the reference sphere: -g10 to the north on the equator,
// 2 g10 upwards at the pole; g11 and h11 alike about longitudes 0 and 90. Computed by hand.
void WorldMagneticModelTest::dipole() {
  const FieldCoefficients made = parseCoefficients(small);
  const auto model = coefficientModel(made, DecimalYear(2027));
  const double g10 = -30000 + 2 * 10, g11 = -1500.5 + 2 * 5, h11 = 4500 - 2 * 20;
  const Length equator = Length::metres(6371200.0 - 6378137.0);
  const Length pole = Length::metres(6371200.0 - 6378137.0 * (1 - 1 / 298.257223563));
  const auto verify = [&](Place place, Length height, FieldVector expected, const char *where) {
    const FieldVector found = model->field(place, height);
    VERIFY_NEAR(found.north, expected.north, 1e-7, where);
    VERIFY_NEAR(found.east, expected.east, 1e-7, where);
    VERIFY_NEAR(found.down, expected.down, 1e-7, where);
  };
  verify({Angle::degrees(0), Angle::degrees(0)}, equator, {-g10, -h11, -2 * g11}, "longitude 0");
  verify({Angle::degrees(0), Angle::degrees(90)}, equator, {-g10, g11, -2 * h11}, "longitude 90");
  verify({Angle::degrees(0), Angle::degrees(180)}, equator, {-g10, h11, 2 * g11}, "longitude 180");
  verify({Angle::degrees(90), Angle::degrees(0)}, pole, {g11, -h11, -2 * g10}, "north pole");
  verify({Angle::degrees(-90), Angle::degrees(0)}, pole, {-g11, -h11, 2 * g10}, "south pole");
  const FieldVector change = model->changePerYear({Angle::degrees(0), Angle::degrees(0)}, equator);
  VERIFY_NEAR(change.north, -10, 1e-9, "change");
  VERIFY_NEAR(change.east, 20, 1e-9, "change");
  VERIFY_NEAR(change.down, -10, 1e-9, "change");
}

void WorldMagneticModelTest::linearInTime() {
  const auto early = coefficientModel(worldMagneticModel2025(), DecimalYear(2025.25));
  const auto late = coefficientModel(worldMagneticModel2025(), DecimalYear(2029.75));
  Random random(53);
  for (int i = 0; i < 500; ++i) {
    const Place place = random.place();
    const Length height = Length::metres(random.between(0, 5000));
    const FieldVector a = early->field(place, height), b = late->field(place, height);
    const FieldVector change = early->changePerYear(place, height);
    VERIFY_NEAR(b.north - a.north, 4.5 * change.north, 1e-7, std::to_string(i));
    VERIFY_NEAR(b.east - a.east, 4.5 * change.east, 1e-7, std::to_string(i));
    VERIFY_NEAR(b.down - a.down, 4.5 * change.down, 1e-7, std::to_string(i));
  }
}

// The same coefficients summed by GeographicLib's own model: another road through the same library.
void WorldMagneticModelTest::agreesWithGeographicLib() {
  const InstalledModels installed;
  installed.write("wmm2025test", worldMagneticModel2025());
  Random random(54);
  for (int i = 0; i < 2000; ++i) {
    const DecimalYear year(random.between(2025, 2030));
    const Place place = i % 100 == 0
                            ? Place{Angle::degrees(i % 200 ? 90 : -90), Angle::degrees(random.between(-180, 180))}
                            : random.place();
    const Length height = Length::metres(random.between(-1000, 100000));
    const auto ours = coefficientModel(worldMagneticModel2025(), year);
    const auto theirs = installedModel("wmm2025test", year);
    for (bool change : {false, true}) {
      const FieldVector a = change ? ours->changePerYear(place, height) : ours->field(place, height);
      const FieldVector b = change ? theirs->changePerYear(place, height) : theirs->field(place, height);
      const std::string source = "computed with GeographicLib's MagneticModel from a file of the same coefficients "
                                 "(the same library on another road), 2000 places";
      const std::string unit = change ? "nT/yr" : "nT", of = change ? "change of " : "";
      VERIFY_CHECK(checkOf(of + "X", std::to_string(i), a.north, b.north, 1e-6, unit, source));
      VERIFY_CHECK(checkOf(of + "Y", std::to_string(i), a.east, b.east, 1e-6, unit, source));
      VERIFY_CHECK(checkOf(of + "Z", std::to_string(i), a.down, b.down, 1e-6, unit, source));
    }
  }
}

void WorldMagneticModelTest::builtInIsTheFile() {
  const FieldCoefficients file = parseCoefficients(dataFile());
  const FieldCoefficients &built = worldMagneticModel2025();
  QCOMPARE(built.degree, 12);
  QCOMPARE(built.c.size(), size_t(91));
  QCOMPARE(built.s.size(), size_t(78));
  QVERIFY(built.epoch == 2025 && built.radius_m == 6371200 && built.years.first == 2025 && built.years.last == 2030);
  QVERIFY(built.c == file.c && built.s == file.s && built.c_change == file.c_change && built.s_change == file.s_change);
  QVERIFY(built.c[1] == -29351.8); // g10, read in the source
}

// Order outer, degree inner: C is 00, 10, 11 and S 11.
void WorldMagneticModelTest::parse() {
  const FieldCoefficients made = parseCoefficients(small);
  QCOMPARE(made.name, std::string("small"));
  QVERIFY(made.epoch == 2025 && made.radius_m == 6371200 && made.degree == 1);
  QVERIFY(made.years.first == 2025 && made.years.last == 2030);
  QVERIFY((made.c == std::vector<double>{0, -30000, -1500.5}));
  QVERIFY((made.s == std::vector<double>{4500}));
  QVERIFY((made.c_change == std::vector<double>{0, 10, 5}));
  QVERIFY((made.s_change == std::vector<double>{-20}));
  // Carriage returns, blank lines, keys it does not know and another order of rows do not matter.
  std::string other = small;
  for (size_t at = 0; (at = other.find('\n', at)) != std::string::npos; at += 3)
    other.replace(at, 1, "\r\n\n");
  other += "released 2024-11-13\n";
  QVERIFY(parseCoefficients(other).c == made.c);
}

void WorldMagneticModelTest::parseErrors_data() {
  QTest::addColumn<QString>("from");
  QTest::addColumn<QString>("to");
  QTest::addColumn<QString>("message"); // a part of it
  const auto row = [](const char *name, const char *from, const char *to, const char *message) {
    QTest::newRow(name) << QString::fromLatin1(from) << QString::fromLatin1(to) << QString::fromLatin1(message);
  };
  row("missing row", "1 0 -30000 0 10 0\n", "", "not complete: 1 rows");
  row("no rows", "1 0 -30000 0 10 0\n1 1 -1500.5 4500 5 -20 # the tilt\n", "", "not complete: 0 rows");
  row("row given twice", "1 1 -1500.5 4500", "1 0 -1500.5 4500", "line 9 of the coefficients (\"1 0 -1500.5 4500");
  row("row twice beside all others", "5 -20 # the tilt\n", "5 -20 # the tilt\n1 1 -1500.5 4500 5 -20\n",
      "line 10 of the coefficients (\"1 1 -1500.5 4500 5 -20\"): this n and m stand twice");
  row("row twice with other numbers", "5 -20 # the tilt\n", "5 -20 # the tilt\n1 0 -29000 0 9 0\n",
      "line 10 of the coefficients (\"1 0 -29000 0 9 0\"): this n and m stand twice");
  row("a number too few", "-30000 0 10 0", "-30000 0 10", "line 8 of the coefficients (\"1 0 -30000 0 10\")");
  row("a number too many", "-30000 0 10 0", "-30000 0 10 0 7", "line 8 of the coefficients");
  row("no number", "1 0 -30000", "1 0 -3oooo", "line 8 of the coefficients (\"1 0 -3oooo");
  row("decimal comma", "-1500.5", "-1500,5", "line 9 of the coefficients");
  row("not a number", "1 0 -30000", "1 0 nan", "line 8 of the coefficients");
  row("infinite", "1 0 -30000", "1 0 inf", "line 8 of the coefficients");
  row("too great", "1 0 -30000", "1 0 -1e999", "line 8 of the coefficients");
  row("a degree beyond", "1 0 -30000", "2 0 -30000", "line 8 of the coefficients");
  row("degree 0", "1 0 -30000", "0 0 -30000", "line 8 of the coefficients");
  row("negative degree", "1 0 -30000", "-1 0 -30000", "line 8 of the coefficients");
  row("order beyond the degree", "1 1 -1500.5", "1 2 -1500.5", "line 9 of the coefficients");
  row("negative order", "1 1 -1500.5", "1 -1 -1500.5", "line 9 of the coefficients");
  row("broken degree", "1 1 -1500.5", "1.5 1 -1500.5", "line 9 of the coefficients");
  row("no degree", "degree 1\n", "", "line 7 of the coefficients");
  row("degree without number", "degree 1\n", "degree\n", "line 5 of the coefficients (\"degree\")");
  row("degree twice", "degree 1\n", "degree 1\ndegree 1\n", "line 6 of the coefficients (\"degree 1\")");
  row("another degree", "degree 1\n", "degree 1\ndegree 2\n", "line 6 of the coefficients (\"degree 2\")");
  row("degree twice, late", "min_year", "degree 1\nmin_year", "line 6 of the coefficients (\"degree 1\")");
  row("epoch twice", "epoch 2025\n", "epoch 2025\nepoch 2020\n", "line 4 of the coefficients (\"epoch 2020\")");
  row("epoch twice, alike", "epoch 2025\n", "epoch 2025\nepoch 2025\n", "line 4 of the coefficients");
  row("name twice", "name small\n", "name small\nname large\n", "line 3 of the coefficients (\"name large\")");
  row("radius twice", "degree 1\n", "degree 1\nradius_m 6371000\n",
      "line 6 of the coefficients (\"radius_m 6371000\")");
  row("first year twice", "min_year 2025\n", "min_year 2025\nmin_year 2024\n", "line 7 of the coefficients");
  row("last year twice", "max_year 2030\n", "max_year 2030\nmax_year 2040\n", "line 8 of the coefficients");
  row("last year twice, behind the rows", "# the tilt\n", "\nmax_year 2040\n", "line 10 of the coefficients");
  row("two epochs in a line", "epoch 2025\n", "epoch 2025 2020\n", "line 3 of the coefficients (\"epoch 2025 2020\")");
  row("two degrees in a line", "degree 1\n", "degree 1 2\n", "line 5 of the coefficients (\"degree 1 2\")");
  row("no whole degree", "degree 1\n", "degree 1.5\n", "line 5 of the coefficients");
  row("degree too great", "degree 1\n", "degree 1001\n", "line 5 of the coefficients");
  row("degree zero", "degree 1\n", "degree 0\n", "line 5 of the coefficients");
  row("epoch no number", "epoch 2025\n", "epoch soon\n", "line 3 of the coefficients (\"epoch soon\")");
  row("no epoch", "epoch 2025\n", "", "lack a key");
  row("no name", "name small\n", "", "lack a key");
  row("name without a name", "name small\n", "name\n", "lack a key");
  row("no radius", "radius_m 6371200\n", "", "lack a key");
  row("negative radius", "radius_m 6371200\n", "radius_m -1\n", "lack a key");
  row("no first year", "min_year 2025\nmax_year 2030\n", "", "lack a key");
  row("years the wrong way round", "max_year 2030", "max_year 2024", "lack a key");
  row("years infinite", "max_year 2030", "max_year inf", "line 7 of the coefficients");
}

void WorldMagneticModelTest::parseErrors() {
  QFETCH(QString, from);
  QFETCH(QString, to);
  QFETCH(QString, message);
  QString text = QString::fromStdString(small);
  QVERIFY(text.contains(from));
  text.replace(from, to);
  QString what;
  try {
    parseCoefficients(text.toStdString());
  } catch (const std::invalid_argument &error) {
    what = QString::fromUtf8(error.what());
  }
  QVERIFY2(what.contains(message), qPrintable(QStringLiteral("'%1' does not say '%2'").arg(what, message)));
}

void WorldMagneticModelTest::parseInAnotherLocale() {
  const std::string text = dataFile();
  const CommaLocale comma;
  std::istringstream control("1,5");
  double value = 0;
  control >> value;
  QVERIFY(value == 1.5); // the locale does change what streams read
  const FieldCoefficients made = parseCoefficients(text);
  QVERIFY(made.c == worldMagneticModel2025().c && made.s == worldMagneticModel2025().s);
  QVERIFY(made.c_change == worldMagneticModel2025().c_change && made.epoch == 2025);
}

void WorldMagneticModelTest::yearOutside() {
  const FieldCoefficients &coefficients = worldMagneticModel2025();
  for (double year : {2024.9999, 2030.0001, 1900.0, std::nan("")}) {
    bool refused = false;
    try {
      coefficientModel(coefficients, DecimalYear(year));
    } catch (const YearOutsideModel &error) {
      refused = error.years.first == 2025 && error.years.last == 2030 && error.model == coefficients.name;
    }
    VERIFY_AT(refused, std::to_string(year));
  }
  QVERIFY(coefficientModel(coefficients, DecimalYear(2025)));
  QVERIFY(coefficientModel(coefficients, DecimalYear(2030)));
}

void WorldMagneticModelTest::nameAndError() {
  const auto model = coefficientModel(worldMagneticModel2025(), DecimalYear(2026));
  QCOMPARE(model->name(), worldMagneticModel2025().name);
  QVERIFY(model->declinationError());
  QVERIFY(model->declinationError()->per_horizontal == 5417); // report of WMM2025, equation 43, read second-hand
}

QTEST_APPLESS_MAIN(WorldMagneticModelTest)
#include "world_magnetic_model_test.moc"
