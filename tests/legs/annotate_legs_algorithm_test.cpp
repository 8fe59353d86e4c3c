// SPDX-License-Identifier: GPL-2.0-or-later
// The face of annotatelegs in the host: parameters, fields, values, and every kind of route it reads.
// What walkers, terrain and cover do to the legs is in annotate_legs_ground_test, runs and files are in
// annotate_legs_run_test.
#include "legs/annotate_run.h"

#include "shared/compass.h"
#include "shared/grid_north.h"
#include "support/installed_models.h"

#include <GeographicLib/UTMUPS.hpp>
#include <QRegularExpression>
#include <QSet>
#include <qgsapplication.h>
#include <qgscoordinatetransform.h>
#include <qgslinestring.h>
#include <qgsprocessingregistry.h>

#include <cmath>

using namespace brushline;
using namespace brushline::test;

class AnnotateLegsAlgorithmTest : public QObject {
  Q_OBJECT
private slots:
  void identity();
  void parameters_data();
  void parameters();
  void noOtherParameters();
  void choices_data();
  void choices();
  void limits_data();
  void limits();
  void outputs();
  void fields();

  void workedExample();
  void asTheCore();
  void dial_data();
  void dial();
  void dialTexts_data();
  void dialTexts();
  void declinationGiven();
  void datesAndModels();
  void zones_data();
  void zones();

  void gridOfAProjectedLayer();
  void gridOfADegreesLayer();
  void gridAskedFor();
  void gridThatCountsWestAndSouth();
  void gridsWithTheirAxesSwapped_data();
  void gridsWithTheirAxesSwapped();
  void direction_data();
  void direction();

  void dimensions_data();
  void dimensions();
  void curves_data();
  void curves();
  void curvesAreFollowed();
  void partsAndGaps();
  void duplicates();
  void anywhere_data();
  void anywhere();
  void sameInEveryProjection_data();
  void sameInEveryProjection();
  void withoutRouteNames();

  void pointsInOrder_data();
  void pointsInOrder();
  void pointsOfSeveralRoutes();
  void pointsKeepTheirDimensions();
  void namedPoints();
  void snap_data();
  void snap();
  void counts();
};

namespace {
// Well-known text as older hosts spell it; newer ones write "LineString Z".
QString textOf(QString wkt) { return wkt.replace(QRegularExpression("LineString (?=[ZM])"), "LineString"); }

const QgsProcessingAlgorithm *algorithm() {
  return QgsApplication::processingRegistry()->algorithmById("brushline:annotatelegs");
}

// Off the middle of UTM zone 21, so that grid north is not true north; the declination is some 17 degrees west.
const Place start = place(48.4, -57.9);

// Two legs on the ellipsoid: 105 degrees and 200 m, then 340 degrees and 350 m.
const std::vector<Place> twoLegs = {start, onwards(start, 105, 200), onwards(onwards(start, 105, 200), 340, 350)};

} // namespace

// --- the face --------------------------------------------------------------------------------------------------------

void AnnotateLegsAlgorithmTest::identity() {
  QVERIFY(algorithm());
  QCOMPARE(algorithm()->name(), QString("annotatelegs"));
  QCOMPARE(algorithm()->displayName(), QString("Annotate legs"));
  QCOMPARE(algorithm()->groupId(), QString("legs"));
  QCOMPARE(algorithm()->provider()->id(), QString("brushline"));
  for (const char *word : {"compass", "bearing", "declination", "paces", "magnetic", "leg", "route"})
    QVERIFY2(algorithm()->tags().contains(QLatin1String(word)), word);
}

// Keys, types and defaults as the project has promised them.
void AnnotateLegsAlgorithmTest::parameters_data() {
  QTest::addColumn<QString>("type");
  QTest::addColumn<QVariant>("usual");
  QTest::addColumn<bool>("optional");
  const QVariant none;
  const auto row = [](const char *key, const char *type, const QVariant &usual, bool optional) {
    QTest::newRow(key) << QString(type) << usual << optional;
  };
  row("INPUT", "source", none, false);
  row("ROUTE_FIELD", "field", none, true);
  row("ORDER_FIELD", "field", none, true);
  row("POINTS", "source", none, true);
  row("POINT_NAME", "field", none, true);
  row("SNAP", "number", 10.0, false); // regression only
  row("DIRECTION", "enum", 0, false);
  row("DATE", "datetime", none, true);
  row("DECLINATION", "number", none, true);
  row("FIELD_MODEL", "string", none, true);
  row("GRID_CRS", "crs", none, true);
  row("NORTH", "enum", 0, false);
  row("DIAL_UNIT", "enum", 0, false);
  row("DIAL_STEP", "number", 2.0, false);
  row("BEARING_ERROR", "number", 3.0, false);
  row("PACES_PER_100M", "number", 130.0, false);
  row("PACE_KIND", "enum", 0, false);
  row("PACE_ERROR", "number", 5.0, false);
  row("SLOPE_RULE", "enum", 1, false);
  row("TIME_RULE", "enum", 0, false);
  row("EYE_HEIGHT", "number", 1.6, false);
  row("WALKERS", "source", none, true);
  row("DEM", "raster", none, true);
  row("DEM_BAND", "band", 1, true);
  row("COVER", "source", none, true);
  row("COVER_CLASS", "field", none, true);
  row("COVER_TABLE", "source", none, true);
  row("COVER_RASTER", "raster", none, true);
  row("COVER_LEGEND", "enum", 0, false);
  row("SEASON", "enum", 0, false);
  row("SIGHT_RASTER", "raster", none, true);
  row("CLEAR_SIGHT", "number", 0.5, false);
  row("MARK_FRACTION", "number", 0.8, false);
  row("SPACING_MIN", "number", 5.0, false);
  row("SPACING_MAX", "number", 400.0, false);
  row("NAMED_FOUND", "boolean", true, false);
  row("HAZARDS_FOUND", "source", none, true);
  row("KEEP_STYLE", "boolean", true, false);
  row("OUTPUT", "sink", none, false);
  row("MARKS", "sink", none, true);
  row("DRIFT", "sink", none, true);
}

void AnnotateLegsAlgorithmTest::parameters() {
  QFETCH(QString, type);
  QFETCH(QVariant, usual);
  QFETCH(bool, optional);
  const auto *definition = algorithm()->parameterDefinition(QTest::currentDataTag());
  QVERIFY(definition);
  QCOMPARE(definition->name(), QString(QTest::currentDataTag())); // the host finds keys whatever their case
  QCOMPARE(definition->type(), type);
  QgsProcessingContext context;
  QCOMPARE(definition->checkValueIsAcceptable(QVariant(), &context), optional || usual.isValid());
  if (usual.isValid())
    QCOMPARE(definition->defaultValue().toString(), usual.toString());
  else
    QVERIFY2(!definition->defaultValue().isValid() || definition->isDestination(),
             qPrintable(definition->defaultValue().toString()));
}

// Whoever adds a parameter adds it to the table above.
void AnnotateLegsAlgorithmTest::noOtherParameters() { QCOMPARE(algorithm()->parameterDefinitions().size(), 41); }

void AnnotateLegsAlgorithmTest::choices_data() {
  QTest::addColumn<QStringList>("options"); // a word of each
  QTest::newRow("DIRECTION") << QStringList{"Out", "Back", "Both"};
  QTest::newRow("NORTH") << QStringList{"Magnetic", "True", "Grid"};
  QTest::newRow("DIAL_UNIT") << QStringList{"Degrees", "Mils", "Gon"};
  QTest::newRow("PACE_KIND") << QStringList{"Single", "Double"};
  QTest::newRow("SLOPE_RULE") << QStringList{"None", "table"};
  QTest::newRow("TIME_RULE") << QStringList{"Off-trail", "Hiking", "climb"};
  QTest::newRow("SEASON") << QStringList{"leaf", "Bare"};
  QTest::newRow("COVER_LEGEND") << QStringList{"own", "ESA", "CORINE", "NLCD", "ISOM"};
}

void AnnotateLegsAlgorithmTest::choices() {
  QFETCH(QStringList, options);
  const auto *definition =
      dynamic_cast<const QgsProcessingParameterEnum *>(algorithm()->parameterDefinition(QTest::currentDataTag()));
  QVERIFY(definition);
  QVERIFY(!definition->allowMultiple());
  QCOMPARE(definition->options().size(), options.size());
  for (int i = 0; i < options.size(); ++i)
    QVERIFY2(definition->options().at(i).contains(options.at(i)), qPrintable(definition->options().at(i)));
}

// A dialog bounds what the check refuses.
void AnnotateLegsAlgorithmTest::limits_data() {
  QTest::addColumn<double>("inside");
  for (const auto &[key, inside] :
       {std::pair("SNAP", 0.0), std::pair("DECLINATION", -180.0), std::pair("DIAL_STEP", 0.5),
        std::pair("BEARING_ERROR", 3.0), std::pair("PACES_PER_100M", 65.0), std::pair("PACE_ERROR", 5.0),
        std::pair("EYE_HEIGHT", 1.1), std::pair("CLEAR_SIGHT", 0.5), std::pair("MARK_FRACTION", 1.0),
        std::pair("SPACING_MIN", 5.0), std::pair("SPACING_MAX", 400.0)})
    QTest::newRow(key) << inside;
}

void AnnotateLegsAlgorithmTest::limits() {
  QFETCH(double, inside);
  const QString key = QTest::currentDataTag();
  const auto *number = dynamic_cast<const QgsProcessingParameterNumber *>(algorithm()->parameterDefinition(key));
  QVERIFY(number);
  QVERIFY(number->dataType() == host::doubleNumber);
  const Layer routes = routesOf("EPSG:4326", {lineText(twoLegs)});
  const auto accepted = [&](double value) {
    QgsProcessingContext context;
    QString message;
    return algorithm()->checkParameterValues({{"INPUT", valueOf(routes)}, {key, value}, {"OUTPUT", "TEMPORARY_OUTPUT"}},
                                             context, &message);
  };
  QVERIFY(accepted(inside));
  QVERIFY(!accepted(number->minimum() - 0.001 * (1 + std::abs(number->minimum()))));
  QVERIFY(!accepted(number->maximum() + 0.001 * (1 + std::abs(number->maximum()))));
}

void AnnotateLegsAlgorithmTest::outputs() {
  QStringList all;
  for (const QgsProcessingOutputDefinition *definition : algorithm()->outputDefinitions())
    all << definition->name() + ":" + definition->type();
  all.sort();
  QCOMPARE(all, QStringList({"DRIFT:outputVector", "LEG_COUNT:outputNumber", "MARKS:outputVector",
                             "OUTPUT:outputVector", "ROUTE_COUNT:outputNumber"}));
  for (const char *key : {"MARKS", "DRIFT"}) {
    const auto *sink =
        dynamic_cast<const QgsProcessingParameterFeatureSink *>(algorithm()->parameterDefinition(QLatin1String(key)));
    QVERIFY(sink);
    QVERIFY(!sink->createByDefault());
  }
}

// Names, order and types of the legs' columns.
void AnnotateLegsAlgorithmTest::fields() {
  const std::vector<std::pair<const char *, QVariant::Type>> expected = {
      {"route", QVariant::String},     {"leg", QVariant::Int},           {"walker", QVariant::String},
      {"direction", QVariant::String}, {"from_name", QVariant::String},  {"to_name", QVariant::String},
      {"true_brg", QVariant::Double},  {"grid_brg", QVariant::Double},   {"mag_brg", QVariant::Double},
      {"converg", QVariant::Double},   {"decl", QVariant::Double},       {"decl_err", QVariant::Double},
      {"date", QVariant::Date},        {"dial", QVariant::Double},       {"dial_text", QVariant::String},
      {"back_dial", QVariant::Double}, {"compass_pt", QVariant::String}, {"dist_m", QVariant::Double},
      {"slope_m", QVariant::Double},   {"climb_m", QVariant::Double},    {"drop_m", QVariant::Double},
      {"paces", QVariant::Int},        {"walk_min", QVariant::Double},   {"cover", QVariant::String},
      {"sight_m", QVariant::Double},   {"spacing_m", QVariant::Double},  {"marks", QVariant::Int},
      {"drift_m", QVariant::Double},   {"along_m", QVariant::Double},    {"warnings", QVariant::String}};
  const Layer routes = routesOf("EPSG:4326", {lineText(twoLegs)});
  const Outcome outcome = annotate({{"INPUT", valueOf(routes)}});
  VERIFY_RAN(outcome);
  const QgsFields &fields = outcome.output().fields;
  QCOMPARE(size_t(fields.size()), expected.size());
  for (size_t i = 0; i < expected.size(); ++i) {
    QCOMPARE(fields.at(int(i)).name(), QString(expected[i].first));
    QVERIFY2(int(fields.at(int(i)).type()) == int(expected[i].second), expected[i].first);
    QVERIFY2(fields.at(int(i)).name().size() <= 10, expected[i].first); // what a shapefile keeps
  }
  QCOMPARE(outcome.output().crs, QString("EPSG:4326"));
  QCOMPARE(outcome.rows().size(), size_t(2));
  QCOMPARE(outcome.rows()[0].geometry.asWkt(6), wkt(lineText({twoLegs[0], twoLegs[1]})).asWkt(6));
  QCOMPARE(outcome.rows()[1].geometry.asWkt(6), wkt(lineText({twoLegs[1], twoLegs[2]})).asWkt(6));
}

// --- values ----------------------------------------------------------------------------------------------------------

// As the help tells it: 200 m at 105 degrees, declination 17 west.
void AnnotateLegsAlgorithmTest::workedExample() {
  QVERIFY(algorithm()->shortHelpString().contains("A leg of 200 m runs at 105 degrees"));
  const Layer routes = routesOf("EPSG:4326", {lineText({twoLegs[0], twoLegs[1]})});
  const Outcome outcome = annotate({{"INPUT", valueOf(routes)}, {"DECLINATION", -17}});
  VERIFY_RAN(outcome);
  QCOMPARE(outcome.rows().size(), size_t(1));
  const OutputRow &leg = outcome.rows()[0];
  VERIFY_NEAR(leg.number("true_brg"), 105, 1e-6, "help");
  VERIFY_NEAR(leg.number("dist_m"), 200, 1e-6, "help");
  QCOMPARE(leg.number("decl"), -17.0);
  VERIFY_NEAR(leg.number("mag_brg"), 122, 1e-6, "help");
  QCOMPARE(leg.number("dial"), 122.0);
  QCOMPARE(leg.text("dial_text"), QString("122°"));
  QCOMPARE(leg["paces"].toInt(), 260);
  QCOMPARE(leg.number("back_dial"), 302.0);
  QCOMPARE(leg.text("compass_pt"), QString("ESE")); // 112.5 +- 11.25 degrees
}

// Every number of a leg, worked out here from the core's own tools and GeographicLib's grid.
void AnnotateLegsAlgorithmTest::asTheCore() {
  const Layer routes = layer("routes", "LineString", "EPSG:4326", {field("name", FieldType::Text)},
                             {{wkt(lineText(twoLegs)), {"ridge"}}});
  const Outcome outcome = annotate({{"INPUT", valueOf(routes)}, {"ROUTE_FIELD", "name"}});
  VERIFY_RAN(outcome);
  QVERIFY2(outcome.warnings.isEmpty(), qPrintable(outcome.said()));
  QCOMPARE(outcome.rows().size(), size_t(2));
  const FieldSetting fieldSetting = walkField();
  for (size_t i = 0; i < 2; ++i) {
    const OutputRow &row = outcome.rows()[i];
    const Place &from = twoLegs[i], &to = twoLegs[i + 1];
    const GeodesicLeg leg = geodesicBetween(from, to);
    const LocalField there = fieldSetting.at(from, Length()), atEnd = fieldSetting.at(to, Length());
    QVERIFY(there.declination.east.degrees() < -10); // so that leaving it out would show
    QCOMPARE(row.text("route"), QString("ridge"));
    QCOMPARE(row["leg"].toInt(), int(i + 1));
    QVERIFY(row.null("walker") && row.null("from_name") && row.null("to_name") && row.null("warnings"));
    QCOMPARE(row.text("direction"), QString("out"));
    QVERIFY(row.number("true_brg") == leg.departure.degrees());
    QVERIFY(row.number("dist_m") == leg.length.metres());
    QVERIFY(row.number("decl") == there.declination.east.degrees());
    QVERIFY(row.number("decl_err") == there.declination_error->degrees());
    QVERIFY(row.number("decl_err") > 0.26); // the report's floor, section 3.4
    QVERIFY(row.number("mag_brg") == toMagnetic(leg.departure, there.declination).degrees());
    QCOMPARE(row["date"].toDate(), QDate(2026, 6, 15));

    double x0, y0, x1, y1, gamma, scale;
    int zone;
    bool north;
    using GeographicLib::UTMUPS;
    UTMUPS::Forward(from.latitude.degrees(), from.longitude.degrees(), zone, north, x0, y0, gamma, scale);
    UTMUPS::Forward(to.latitude.degrees(), to.longitude.degrees(), zone, north, x1, y1, zone);
    QCOMPARE(zone, 21);
    VERIFY_NEAR(row.number("converg"), gamma, 1e-6, "GeographicLib");
    QVERIFY(std::abs(gamma) > 0.5);
    const double grid = Angle::radians(std::atan2(x1 - x0, y1 - y0)).fullCircle().degrees();
    VERIFY_NEAR(turnBetween(row.number("grid_brg"), grid), 0, 1e-6, "GeographicLib");

    const Compass compass;
    QVERIFY(row.number("dial") == dialReading(toMagnetic(leg.departure, there.declination).angle(), compass));
    QVERIFY(row.number("back_dial") ==
            dialReading(toMagnetic(leg.arrival.reversed(), atEnd.declination).angle(), compass));
    QCOMPARE(row.text("dial_text"), QString::fromStdString(dialText(row.number("dial"), compass)));
    QCOMPARE(row.text("compass_pt"), QString(compassPoint(Angle::degrees(row.number("dial")))));

    QVERIFY(row.null("slope_m") && row.null("climb_m") && row.null("drop_m"));
    QCOMPARE(row["paces"].toInt(), int(std::lround(1.3 * leg.length.metres())));
    // Irmischer and Clarke 2018 at no slope: 0.11 + 0.67 exp(-4/1800) m/s.
    VERIFY_NEAR(row.number("walk_min"), leg.length.metres() / (0.11 + 0.67 * std::exp(-4 / 1800.0)) / 60, 1e-9,
                "level");
    QVERIFY(row.null("cover") && row.null("sight_m") && row.null("spacing_m"));
    QCOMPARE(row["marks"].toInt(), 1); // both legs are under SPACING_MAX
  }
  // Errors of the first leg, one hop: sighting 3 degrees, graduation 2/sqrt(12) degrees, the declination's; 5 percent
  // of the way. The sum of squares is common practice, no source.
  const OutputRow &first = outcome.rows()[0];
  const double degree = Angle::pi / 180;
  const double across = 200 * degree * std::sqrt(9 + 4 / 12.0 + first.number("decl_err") * first.number("decl_err"));
  VERIFY_NEAR(first.number("drift_m"), across, 1e-6, "one hop");
  VERIFY_NEAR(first.number("along_m"), 10, 1e-6, "5 percent of 200 m");
}

void AnnotateLegsAlgorithmTest::dial_data() {
  QTest::addColumn<int>("north");
  QTest::addColumn<int>("unit");
  QTest::addColumn<double>("circle");
  QTest::addColumn<double>("step");
  const double circles[] = {360, 6400, 400};
  const std::vector<double> steps[] = {{1, 2, 5, 0.5}, {10, 20, 100}, {1, 2, 0.1}};
  for (int north = 0; north < 3; ++north)
    for (int unit = 0; unit < 3; ++unit)
      for (const double step : steps[unit])
        QTest::addRow("north %d, circle of %g, step %g", north, circles[unit], step)
            << north << unit << circles[unit] << step;
}

// The number on the dial is the multiple of the step that is nearest to the bearing from the dial's north.
void AnnotateLegsAlgorithmTest::dial() {
  QFETCH(int, north);
  QFETCH(int, unit);
  QFETCH(double, circle);
  QFETCH(double, step);
  std::vector<Place> spokes;
  QStringList texts;
  for (int bearing = 3; bearing < 360; bearing += 17)
    texts << lineText({start, onwards(start, bearing, 300)});
  const Layer routes = routesOf("EPSG:4326", texts);
  const Outcome outcome =
      annotate({{"INPUT", valueOf(routes)}, {"NORTH", north}, {"DIAL_UNIT", unit}, {"DIAL_STEP", step}});
  VERIFY_RAN(outcome);
  QCOMPARE(outcome.rows().size(), size_t(texts.size()));
  const char *const bearings[] = {"mag_brg", "true_brg", "grid_brg"};
  for (const OutputRow &row : outcome.rows()) {
    const double exact = row.number(bearings[north]) * circle / 360, dial = row.number("dial");
    const std::string where = "route " + row.text("route").toStdString();
    VERIFY_AT(dial >= 0 && dial < circle, where);
    VERIFY_NEAR(dial / step, std::round(dial / step), 1e-9, where);
    VERIFY_NEAR(std::remainder(dial - exact, circle), 0, step / 2 + 1e-9, where);
    // 300 m on, meridians turn by under 0.004 degrees, grid lines not at all: the way back is the dial's other side.
    const double back = std::remainder(row.number("back_dial") - dial - circle / 2, circle);
    VERIFY_NEAR(back, 0, step + 1e-9, where);
    VERIFY_NEAR(std::remainder(row.number("back_dial") - exact - circle / 2, circle), 0, step / 2 + 0.02 * circle / 360,
                where);
  }
}

void AnnotateLegsAlgorithmTest::dialTexts_data() {
  QTest::addColumn<double>("bearing");
  QTest::addColumn<int>("unit");
  QTest::addColumn<double>("step");
  QTest::addColumn<QString>("text");
  QTest::newRow("degrees") << 42.3 << 0 << 2.0 << "042°";
  QTest::newRow("full circle") << 359.5 << 0 << 2.0 << "000°";
  QTest::newRow("tenths") << 7.04 << 0 << 0.5 << "007.0°";
  QTest::newRow("mils") << 42.0 << 1 << 1.0 << "0747 mil"; // 42 * 6400 / 360 = 746.67
  QTest::newRow("gon") << 42.3 << 2 << 1.0 << "047 gon";
}

void AnnotateLegsAlgorithmTest::dialTexts() {
  QFETCH(double, bearing);
  QFETCH(int, unit);
  QFETCH(double, step);
  QFETCH(QString, text);
  const Layer routes = routesOf("EPSG:4326", {lineText({start, onwards(start, bearing, 100)})});
  const Outcome outcome =
      annotate({{"INPUT", valueOf(routes)}, {"NORTH", 1}, {"DIAL_UNIT", unit}, {"DIAL_STEP", step}});
  VERIFY_RAN(outcome);
  QCOMPARE(outcome.rows()[0].text("dial_text"), text);
}

void AnnotateLegsAlgorithmTest::declinationGiven() {
  const Layer routes = routesOf("EPSG:4326", {lineText(twoLegs)});
  const Outcome model = annotate({{"INPUT", valueOf(routes)}});
  const Outcome given = annotate({{"INPUT", valueOf(routes)}, {"DECLINATION", 12.5}});
  const Outcome none = annotate({{"INPUT", valueOf(routes)}, {"DECLINATION", 0}});
  VERIFY_RAN(model);
  VERIFY_RAN(given);
  VERIFY_RAN(none);
  for (size_t i = 0; i < 2; ++i) {
    QCOMPARE(given.rows()[i].number("decl"), 12.5);
    QVERIFY(given.rows()[i].null("decl_err"));
    VERIFY_NEAR(turnBetween(given.rows()[i].number("mag_brg"), model.rows()[i].number("true_brg") - 12.5), 0, 1e-9, "");
    QVERIFY(none.rows()[i].number("mag_brg") == model.rows()[i].number("true_brg")); // 0 is a value, not "none"
    QVERIFY(given.rows()[i].number("true_brg") == model.rows()[i].number("true_brg"));
    QVERIFY(given.rows()[i].number("grid_brg") == model.rows()[i].number("grid_brg"));
  }
  // A day that no model reaches is no hindrance to a declination off a map.
  const Outcome old = annotate({{"INPUT", valueOf(routes)}, {"DECLINATION", 12.5}, {"DATE", QDate(1995, 7, 1)}});
  VERIFY_RAN(old);
  QCOMPARE(old.rows()[0].number("dial"), given.rows()[0].number("dial"));
  QCOMPARE(old.rows()[0]["date"].toDate(), QDate(1995, 7, 1));
}

void AnnotateLegsAlgorithmTest::datesAndModels() {
  const Layer routes = routesOf("EPSG:4326", {lineText(twoLegs)});
  // Dates: as a value, as text, and today's when none is given.
  for (const QVariant &day : {QVariant(QDate(2029, 12, 31)), QVariant("2029-12-31"),
                              QVariant(QDateTime(QDate(2029, 12, 31), QTime(15, 0)))}) {
    const Outcome outcome = annotate({{"INPUT", valueOf(routes)}, {"DATE", day}});
    VERIFY_RAN(outcome);
    QCOMPARE(outcome.rows()[0]["date"].toDate(), QDate(2029, 12, 31));
    const FieldSetting fieldSetting(coefficientModel(worldMagneticModel2025(), DecimalYear::of({2029, 12, 31})));
    QVERIFY(outcome.rows()[0].number("decl") == fieldSetting.at(start, Length()).declination.east.degrees());
  }
  const QDate before = QDate::currentDate();
  const Outcome today = annotate({{"INPUT", valueOf(routes)}, {"DATE", QVariant()}, {"DECLINATION", 1}});
  VERIFY_RAN(today);
  QVERIFY(today.rows()[0]["date"].toDate() >= before && today.rows()[0]["date"].toDate() <= QDate::currentDate());

  // Beyond the model's years: which they are, and what to give instead.
  for (const QDate &day : {QDate(2024, 12, 31), QDate(2030, 1, 2), QDate(1990, 1, 1)}) {
    const Outcome outcome = annotate({{"INPUT", valueOf(routes)}, {"DATE", day}});
    QVERIFY(!outcome.accepted);
    for (const QString &word : {QString("DATE"), day.toString(Qt::ISODate), QString("2025"), QString("2030"),
                                QString("DECLINATION"), QString("FIELD_MODEL")})
      QVERIFY2(outcome.refusal.contains(word), qPrintable(outcome.refusal));
  }

  // A model of another epoch, installed for GeographicLib.
  const InstalledModels installed;
  FieldCoefficients older = worldMagneticModel2025();
  older.years = {1990, 2000};
  older.epoch = 1995;
  installed.write("older", older);
  const Outcome outcome = annotate({{"INPUT", valueOf(routes)}, {"DATE", QDate(1995, 1, 1)}, {"FIELD_MODEL", "older"}});
  VERIFY_RAN(outcome);
  const FieldSetting atEpoch(coefficientModel(worldMagneticModel2025(), DecimalYear(2025)));
  VERIFY_NEAR(outcome.rows()[0].number("decl"), atEpoch.at(start, Length()).declination.east.degrees(), 1e-9, "epoch");
  const Outcome beyond = annotate({{"INPUT", valueOf(routes)}, {"DATE", QDate(2026, 1, 1)}, {"FIELD_MODEL", "older"}});
  QVERIFY(!beyond.accepted);
  for (const char *word : {"1990", "2000", "DECLINATION", "FIELD_MODEL"})
    QVERIFY2(beyond.refusal.contains(word), qPrintable(beyond.refusal));
  // What that advises: a map's declination, as for the built-in model.
  const Outcome map = annotate(
      {{"INPUT", valueOf(routes)}, {"DATE", QDate(2026, 1, 1)}, {"FIELD_MODEL", "older"}, {"DECLINATION", -16.5}});
  VERIFY_RAN(map);
  QCOMPARE(map.rows()[0].number("decl"), -16.5);
  QVERIFY(map.rows()[0].null("decl_err"));
}

// The published field at two places of the test values (H 1504 and 2164 nT; the rows are 2025.0, heights of 28 and
// 48 km aside) and at 80 north 0 east (H 6523 nT, the report's table).
void AnnotateLegsAlgorithmTest::zones_data() {
  QTest::addColumn<double>("latitude");
  QTest::addColumn<double>("longitude");
  QTest::addColumn<QString>("warning");
  QTest::newRow("blackout") << 89.0 << -121.0 << "No compass works here";
  QTest::newRow("caution") << 80.0 << -96.0 << "needle is weak";
  QTest::newRow("reliable") << 80.0 << 0.0 << "";
}

void AnnotateLegsAlgorithmTest::zones() {
  QFETCH(double, latitude);
  QFETCH(double, longitude);
  QFETCH(QString, warning);
  const Place from = place(latitude, longitude);
  const Layer routes = routesOf("EPSG:4326", {lineText({from, onwards(from, 60, 250)})});
  const Outcome outcome = annotate({{"INPUT", valueOf(routes)}, {"DATE", QDate(2025, 1, 1)}});
  VERIFY_RAN(outcome);
  const OutputRow &leg = outcome.rows()[0];
  const bool blackout = latitude > 85;
  for (const char *name : {"mag_brg", "dial", "dial_text", "back_dial", "compass_pt"})
    QVERIFY2(leg.null(name) == blackout, name);
  QCOMPARE(leg.null("warnings"), warning.isEmpty());
  QVERIFY2(leg.text("warnings").contains(warning), qPrintable(leg.text("warnings")));
  VERIFY_NEAR(leg.number("true_brg"), 60, 1e-6, "the start's");
  VERIFY_NEAR(leg.number("dist_m"), 250, 1e-6, "the start's");
  QVERIFY(!leg.null("paces") && !leg.null("walk_min") && !leg.null("grid_brg") && !leg.null("decl"));
}

// --- the grid --------------------------------------------------------------------------------------------------------

// 30 to the east and 40 to the north on the layer's own grid.
void AnnotateLegsAlgorithmTest::gridOfAProjectedLayer() {
  for (const char *crs : {"EPSG:32621", "EPSG:3857", "EPSG:2154", "EPSG:2225"}) { // metres, and US survey feet
    const bool feet = QString(crs) == "EPSG:2225";
    const Layer routes = routesOf(crs, {feet                          ? "LINESTRING(6500000 2200000, 6500030 2200040)"
                                        : QString(crs) == "EPSG:2154" ? "LINESTRING(450000 6600000, 450030 6600040)"
                                                                      : "LINESTRING(400000 5300000, 400030 5300040)"});
    const Outcome outcome = annotate({{"INPUT", valueOf(routes)}});
    VERIFY_RAN(outcome);
    QCOMPARE(outcome.output().crs, QString(crs));
    VERIFY_NEAR(outcome.rows()[0].number("grid_brg"), 36.86989764584402, 1e-9, crs); // atan(3/4), computed
  }
}

// Degrees have no grid of their own: each route gets the UTM zone of its first point.
void AnnotateLegsAlgorithmTest::gridOfADegreesLayer() {
  const std::vector<std::pair<Place, QString>> places = {{place(48, -60.001), "EPSG:32620"},
                                                         {place(48, -59.999), "EPSG:32621"}, // two zones side by side
                                                         {place(-33, 18.5), "EPSG:32734"},   // south
                                                         {place(60.4, 5.3), "EPSG:32632"},   // the west of Norway
                                                         {place(78.2, 15.6), "EPSG:32633"},  // Svalbard
                                                         {place(85, 20), "EPSG:32661"}};     // beyond the zones
  QStringList texts;
  for (const auto &[from, crs] : places)
    texts << lineText({from, onwards(from, 70, 400)});
  const Layer routes = routesOf("EPSG:4326", texts);
  const Outcome outcome = annotate({{"INPUT", valueOf(routes)}});
  VERIFY_RAN(outcome);
  QCOMPARE(outcome.rows().size(), places.size());
  for (size_t i = 0; i < places.size(); ++i) {
    const auto &[from, crs] = places[i];
    const QgsCoordinateTransform toGrid(QgsCoordinateReferenceSystem("EPSG:4326"), QgsCoordinateReferenceSystem(crs),
                                        QgsCoordinateTransformContext());
    const Place to = onwards(from, 70, 400);
    const QgsPointXY a = toGrid.transform(from.longitude.degrees(), from.latitude.degrees());
    const QgsPointXY b = toGrid.transform(to.longitude.degrees(), to.latitude.degrees());
    const double expected = Angle::radians(std::atan2(b.x() - a.x(), b.y() - a.y())).fullCircle().degrees();
    const OutputRow &row = outcome.rows()[i];
    VERIFY_NEAR(turnBetween(row.number("grid_brg"), expected), 0, 1e-7, crs.toStdString());
    VERIFY_NEAR(row.number("converg"), GridNorth(crs.toStdString()).at(from).east.degrees(), 1e-12, crs.toStdString());
    // grid = true - convergence, up to the small turn of a geodesic against a straight line of the grid.
    VERIFY_NEAR(turnBetween(row.number("grid_brg"), row.number("true_brg") - row.number("converg")), 0, 0.002,
                crs.toStdString());
  }
  // On both sides of the border the grids turn opposite ways.
  QVERIFY(outcome.rows()[0].number("converg") > 2 && outcome.rows()[1].number("converg") < -2);
}

void AnnotateLegsAlgorithmTest::gridAskedFor() {
  const Layer degrees = routesOf("EPSG:4326", {lineText(twoLegs)});
  const Layer zone21 = routesOf("EPSG:32621", {"LINESTRING(400000 5300000, 400030 5300040)"});
  for (const Layer *routes : {&degrees, &zone21}) {
    const Outcome outcome = annotate({{"INPUT", valueOf(*routes)}, {"GRID_CRS", "EPSG:32622"}});
    VERIFY_RAN(outcome);
    QVERIFY(outcome.rows()[0].number("converg") < -4); // 6 degrees and more west of zone 22's middle
    VERIFY_NEAR(turnBetween(outcome.rows()[0].number("grid_brg"),
                            outcome.rows()[0].number("true_brg") - outcome.rows()[0].number("converg")),
                0, 0.002, "zone 22");
  }
  // A grid of no authority.
  QgsCoordinateReferenceSystem own;
  own.createFromProj("+proj=tmerc +lat_0=48 +lon_0=-57.9 +k=1 +datum=WGS84 +units=m +type=crs");
  QVERIFY(own.isValid());
  const Outcome outcome = annotate({{"INPUT", valueOf(degrees)}, {"GRID_CRS", QVariant::fromValue(own)}});
  VERIFY_RAN(outcome);
  VERIFY_NEAR(outcome.rows()[0].number("converg"), 0, 1e-9, "on its middle meridian");
  VERIFY_NEAR(outcome.rows()[0].number("grid_brg"), 105, 1e-4, "on its middle meridian");
}

// South Africa's Lo 19 counts to the west and to the south; its maps have north up. 1000 m at 45 degrees from 33.9 S
// 18.5 E, computed with GeographicLib's Geodesic and TransverseMercatorExact (WGS 84, central meridian 19 E, scale 1).
void AnnotateLegsAlgorithmTest::gridThatCountsWestAndSouth() {
  const Place from = place(-33.9, 18.5);
  const Layer degrees = routesOf("EPSG:4326", {lineText({from, onwards(from, 45, 1000)})});
  const Layer lo19 = routesOf("EPSG:2048", {"LINESTRING(46246.6750 3752681.8425, 45542.9997 3751971.2842)"});
  for (const Layer *routes : {&degrees, &lo19}) {
    QVariantMap parameters{{"INPUT", valueOf(*routes)}, {"NORTH", 2}, {"DIAL_STEP", 1}, {"DIRECTION", 2}};
    if (routes == &degrees)
      parameters["GRID_CRS"] = "EPSG:2048";
    const Outcome outcome = annotate(parameters);
    VERIFY_RAN(outcome);
    QVERIFY2(outcome.warnings.isEmpty(), qPrintable(outcome.said()));
    const OutputRow &out = outcome.rows().at(0), &back = outcome.rows().at(1);
    VERIFY_NEAR(out.number("true_brg"), 45, 2e-5, "0.1 mm of 1000 m");
    VERIFY_NEAR(out.number("grid_brg"), 44.721145584, 2e-5, "");
    VERIFY_NEAR(out.number("converg"), 0.278877500, 1e-6, "");
    VERIFY_NEAR(back.number("grid_brg"), 224.721145584, 2e-5, "");
    VERIFY_NEAR(back.number("converg"), 0.274568169, 1e-6, "at the leg's end");
    QCOMPARE(out.number("dial"), 45.0);
    QCOMPARE(out.number("back_dial"), 225.0);
    QCOMPARE(back.number("dial"), 225.0);
    QCOMPARE(out.text("compass_pt"), QString("NE"));
  }
}

// The polar grids come twice, once with the northing named first; the host's coordinates have the easting first in
// both.
void AnnotateLegsAlgorithmTest::gridsWithTheirAxesSwapped_data() {
  QTest::addColumn<QString>("own");
  QTest::addColumn<QString>("asked");
  QTest::newRow("north") << "EPSG:32661"
                         << "EPSG:5041";
  QTest::newRow("north, the other way") << "EPSG:5041"
                                        << "EPSG:32661";
  QTest::newRow("south") << "EPSG:32761"
                         << "EPSG:5042";
  QTest::newRow("a UTM zone") << "EPSG:25833"
                              << "EPSG:3045";
}

void AnnotateLegsAlgorithmTest::gridsWithTheirAxesSwapped() {
  QFETCH(QString, own);
  QFETCH(QString, asked);
  // 300 m and 400 m to the grid's east and north, in the reach of each of them.
  const QString line = own.contains("25833") ? "LINESTRING(500000 5500000, 500300 5500400)"
                                             : "LINESTRING(2800000 2000000, 2800300 2000400)";
  const Layer routes = routesOf(own, {line});
  const Outcome outcome = annotate({{"INPUT", valueOf(routes)}, {"GRID_CRS", asked}});
  VERIFY_RAN(outcome);
  VERIFY_NEAR(outcome.rows()[0].number("grid_brg"), 36.869897646, 1e-5, "atan 3/4");
}

void AnnotateLegsAlgorithmTest::direction_data() {
  QTest::addColumn<int>("direction");
  QTest::addColumn<QStringList>("directions");
  QTest::addColumn<QVector<int>>("legs");
  QTest::addColumn<QVector<double>>("bearings");
  // The way back turns with the meridians, by under 0.003 degrees here.
  QTest::newRow("out") << 0 << QStringList{"out", "out"} << QVector<int>{1, 2} << QVector<double>{105, 340};
  QTest::newRow("back") << 1 << QStringList{"back", "back"} << QVector<int>{1, 2} << QVector<double>{160, 285};
  QTest::newRow("both") << 2 << QStringList{"out", "out", "back", "back"} << QVector<int>{1, 2, 1, 2}
                        << QVector<double>{105, 340, 160, 285};
}

void AnnotateLegsAlgorithmTest::direction() {
  QFETCH(int, direction);
  QFETCH(QStringList, directions);
  QFETCH(QVector<int>, legs);
  QFETCH(QVector<double>, bearings);
  const Layer routes = routesOf("EPSG:4326", {lineText(twoLegs)});
  const Outcome outcome = annotate({{"INPUT", valueOf(routes)}, {"DIRECTION", direction}});
  VERIFY_RAN(outcome);
  QCOMPARE(outcome.output().texts("direction"), directions);
  QCOMPARE(outcome.rows().size(), size_t(legs.size()));
  for (int i = 0; i < legs.size(); ++i) {
    const OutputRow &row = outcome.rows()[size_t(i)];
    QCOMPARE(row["leg"].toInt(), legs[i]);
    VERIFY_NEAR(row.number("true_brg"), bearings[i], 0.003, "");
    // The line is drawn the way it is walked.
    const QgsPointXY first = row.geometry.asPolyline().first();
    const Place &from = directions[i] == "out" ? twoLegs[size_t(legs[i] - 1)] : twoLegs[size_t(3 - legs[i])];
    VERIFY_NEAR(first.x(), from.longitude.degrees(), 1e-12, "");
    VERIFY_NEAR(first.y(), from.latitude.degrees(), 1e-12, "");
  }
  QCOMPARE(outcome.results.value("LEG_COUNT").toDouble(), double(legs.size()));
  QCOMPARE(outcome.results.value("ROUTE_COUNT").toDouble(), 1.0);
}

// --- geometries ------------------------------------------------------------------------------------------------------

void AnnotateLegsAlgorithmTest::dimensions_data() {
  QTest::addColumn<QString>("text");
  QTest::addColumn<QString>("type");
  QTest::addColumn<QString>("legType");
  QTest::addColumn<QStringList>("legs");
  QTest::newRow("plain") << "LINESTRING(0 0, 3 4, 6 8)"
                         << "LineString"
                         << "LineString" << QStringList{"LineString (0 0, 3 4)", "LineString (3 4, 6 8)"};
  QTest::newRow("Z") << "LINESTRINGZ(0 0 10, 3 4 20, 6 8 30)"
                     << "LineStringZ"
                     << "LineStringZ" << QStringList{"LineStringZ (0 0 10, 3 4 20)", "LineStringZ (3 4 20, 6 8 30)"};
  QTest::newRow("M") << "LINESTRINGM(0 0 1, 3 4 2, 6 8 3)"
                     << "LineStringM"
                     << "LineStringM" << QStringList{"LineStringM (0 0 1, 3 4 2)", "LineStringM (3 4 2, 6 8 3)"};
  QTest::newRow("ZM") << "LINESTRINGZM(0 0 10 1, 3 4 20 2)"
                      << "LineStringZM"
                      << "LineStringZM" << QStringList{"LineStringZM (0 0 10 1, 3 4 20 2)"};
  QTest::newRow("parts") << "MULTILINESTRING((0 0, 3 4), (10 0, 20 0, 20 5))"
                         << "MultiLineString"
                         << "LineString"
                         << QStringList{"LineString (0 0, 3 4)", "LineString (10 0, 20 0)", "LineString (20 0, 20 5)"};
  QTest::newRow("parts ZM") << "MULTILINESTRINGZM((0 0 1 2, 3 4 5 6), (10 0 7 8, 20 0 9 10))"
                            << "MultiLineStringZM"
                            << "LineStringZM"
                            << QStringList{"LineStringZM (0 0 1 2, 3 4 5 6)", "LineStringZM (10 0 7 8, 20 0 9 10)"};
  QTest::newRow("one part") << "MULTILINESTRING((0 0, 3 4))"
                            << "MultiLineString"
                            << "LineString" << QStringList{"LineString (0 0, 3 4)"};
}

void AnnotateLegsAlgorithmTest::dimensions() {
  QFETCH(QString, text);
  QFETCH(QString, type);
  QFETCH(QString, legType);
  QFETCH(QStringList, legs);
  QgsGeometry geometry = wkt(text);
  geometry.translate(400000, 5300000);
  const Layer routes = layer("routes", type, "EPSG:32621", {}, {{geometry, {}}});
  for (const int direction : {0, 1}) {
    const Outcome outcome = annotate({{"INPUT", valueOf(routes)}, {"DIRECTION", direction}});
    VERIFY_RAN(outcome);
    QCOMPARE(QgsWkbTypes::displayString(outcome.output().type), legType);
    QStringList written;
    for (const OutputRow &row : outcome.rows()) {
      QgsGeometry leg = row.geometry;
      QCOMPARE(QgsWkbTypes::displayString(leg.wkbType()), legType);
      leg.translate(-400000, -5300000);
      if (direction == 1) {
        const std::unique_ptr<QgsLineString> turned(
            qgsgeometry_cast<const QgsLineString *>(leg.constGet())->reversed());
        written.prepend(textOf(turned->asWkt(3)));
      } else {
        written << textOf(leg.asWkt(3));
      }
    }
    QCOMPARE(written, legs);
  }
}

void AnnotateLegsAlgorithmTest::curves_data() {
  QTest::addColumn<QString>("type");
  QTest::addColumn<QString>("text");
  QTest::addColumn<QString>("legType");
  QTest::addColumn<bool>("bent");
  QTest::newRow("arc") << "CircularString"
                       << "CIRCULARSTRING(0 0, 100 100, 200 0)"
                       << "LineString" << true;
  QTest::newRow("arc Z") << "CircularStringZ"
                         << "CIRCULARSTRINGZ(0 0 5, 100 100 5, 200 0 5)"
                         << "LineStringZ" << true;
  QTest::newRow("compound") << "CompoundCurve"
                            << "COMPOUNDCURVE((-50 0, 0 0), CIRCULARSTRING(0 0, 100 100, 200 0))"
                            << "LineString" << true;
  QTest::newRow("compound ZM")
      << "CompoundCurveZM"
      << "COMPOUNDCURVEZM((-50 0 1 2, 0 0 1 2), CIRCULARSTRINGZM(0 0 1 2, 100 100 1 2, 200 0 1 2))"
      << "LineStringZM" << true;
  QTest::newRow("compound of straight lines") << "CompoundCurve"
                                              << "COMPOUNDCURVE((0 0, 100 0, 200 0))"
                                              << "LineString" << false;
  QTest::newRow("parts") << "MultiCurve"
                         << "MULTICURVE((-50 0, 0 0), CIRCULARSTRING(0 0, 100 100, 200 0))"
                         << "LineString" << true;
  QTest::newRow("parts of straight lines") << "MultiCurve"
                                           << "MULTICURVE((0 0, 100 0), COMPOUNDCURVE((100 0, 200 0)))"
                                           << "LineString" << false;
}

void AnnotateLegsAlgorithmTest::curves() {
  QFETCH(QString, type);
  QFETCH(QString, text);
  QFETCH(QString, legType);
  QFETCH(bool, bent);
  QgsGeometry geometry = wkt(text);
  geometry.translate(400000, 5300000);
  const Layer routes = layer("routes", type, "EPSG:32621", {}, {{geometry, {}}});
  const Outcome outcome = annotate({{"INPUT", valueOf(routes)}});
  VERIFY_RAN(outcome);
  QCOMPARE(QgsWkbTypes::displayString(outcome.output().type), legType);
  if (!bent) {
    QCOMPARE(outcome.rows().size(), size_t(2));
  } else {
    QVERIFY(outcome.rows().size() > 20);
  }
  double length = 0;
  QgsPointXY before = outcome.rows()[0].geometry.vertexAt(0);
  for (const OutputRow &row : outcome.rows()) {
    QCOMPARE(row.geometry.constGet()->nCoordinates(), 2);
    length += row.geometry.length();
    QCOMPARE(QgsPointXY(row.geometry.vertexAt(0)), before);
    before = row.geometry.vertexAt(1);
  }
  VERIFY_NEAR(length, geometry.length(), 0.001 * geometry.length(), "chords are a little shorter");
}

// Chords of half a circle: by turns, each bears a little further round.
void AnnotateLegsAlgorithmTest::curvesAreFollowed() {
  QgsGeometry geometry = wkt("CIRCULARSTRING(0 0, 100 100, 200 0)");
  geometry.translate(400000, 5300000);
  const Layer routes = layer("routes", "CircularString", "EPSG:32621", {}, {{geometry, {}}});
  const Outcome outcome = annotate({{"INPUT", valueOf(routes)}});
  VERIFY_RAN(outcome);
  double before = -90; // so that the first chord, a little east of north, is further
  for (const OutputRow &row : outcome.rows()) {
    const double bearing = Angle::degrees(row.number("grid_brg")).signedTurn().degrees();
    QVERIFY(bearing > before && bearing < 180);
    before = bearing;
  }
  QVERIFY(before > 170);
}

void AnnotateLegsAlgorithmTest::partsAndGaps() {
  const Layer routes = routesOf("EPSG:32621",
                                {"MULTILINESTRING((400000 5300000, 400100 5300000), (400100 5300000, 400100 5300100), "
                                 "(400130 5300140, 400200 5300140))"},
                                "MultiLineString");
  for (const int direction : {0, 1}) {
    const Outcome outcome = annotate({{"INPUT", valueOf(routes)}, {"DIRECTION", direction}});
    VERIFY_RAN(outcome);
    QCOMPARE(outcome.rows().size(), size_t(3));
    QCOMPARE(outcome.output().texts("leg"), QStringList({"1", "2", "3"}));
    // 30 and 40 m apart: 50 m on the grid, whose scale is 0.9997 here.
    const size_t after = direction == 0 ? 2 : 1;
    for (size_t i = 0; i < 3; ++i)
      QCOMPARE(outcome.rows()[i].text("warnings"),
               i == after ? QString("Starts 50 m from where the leg before ends.") : QString());
  }
}

// Vertices in one place are one; what is left makes the same legs.
void AnnotateLegsAlgorithmTest::duplicates() {
  const Layer once = routesOf("EPSG:32621", {"LINESTRING(400000 5300000, 400100 5300050, 400100 5300200)"});
  const Layer often = routesOf("EPSG:32621", {"LINESTRING(400000 5300000, 400000 5300000, 400000.0004 5300000, "
                                              "400100 5300050, 400100 5300050, 400100 5300200, 400100 5300200)"});
  const Outcome a = annotate({{"INPUT", valueOf(once)}, {"DIRECTION", 2}});
  const Outcome b = annotate({{"INPUT", valueOf(often)}, {"DIRECTION", 2}});
  VERIFY_RAN(a);
  VERIFY_RAN(b);
  QVERIFY(a.output().sameBits(b.output()));
  QCOMPARE(a.rows().size(), size_t(4));
}

void AnnotateLegsAlgorithmTest::anywhere_data() {
  QTest::addColumn<double>("latitude");
  QTest::addColumn<double>("longitude");
  QTest::addColumn<double>("endLatitude");
  QTest::addColumn<double>("endLongitude"); // as the layer has it
  QTest::addColumn<bool>("blackout");
  QTest::newRow("north west") << 48.4 << -57.9 << 48.403 << -57.903 << false;
  QTest::newRow("north east") << 61.0 << 25.0 << 61.003 << 25.004 << false;
  QTest::newRow("south east") << -37.5 << 145.2 << -37.503 << 145.196 << false;
  QTest::newRow("south west") << -41.0 << -71.5 << -41.002 << -71.504 << false;
  QTest::newRow("over the equator") << 0.001 << 10.0 << -0.002 << 10.001 << false;
  QTest::newRow("over Greenwich") << 51.2 << -0.001 << 51.2 << 0.002 << false;
  QTest::newRow("eastwards over the antimeridian") << -16.8 << 179.999 << -16.801 << -179.998 << false;
  QTest::newRow("westwards over the antimeridian") << 65.5 << -179.999 << 65.501 << 179.998 << false;
  QTest::newRow("beyond 180, one turn further") << -16.8 << 179.999 << -16.801 << 180.002 << false;
  QTest::newRow("whole turns aside") << 48.4 << 302.1 << 48.403 << 302.097 << false;
  QTest::newRow("on the antimeridian") << -16.8 << 180.0 << -16.801 << -180.0 << false;
  QTest::newRow("beyond the zones, north") << 84.5 << 40.0 << 84.502 << 40.02 << false;
  QTest::newRow("beyond the zones, south") << -85.0 << 120.0 << -85.002 << 120.02 << false;
  QTest::newRow("over the south pole") << -89.999 << 30.0 << -89.999 << -150.0 << false;
  QTest::newRow("over the north pole") << 89.999 << 30.0 << 89.999 << -150.0 << true;
  QTest::newRow("to the north pole") << 89.999 << 30.0 << 90.0 << 0.0 << true;
}

// Bearings and lengths by the core's geodesic, declination by the core's field, the grid's by its convergence.
void AnnotateLegsAlgorithmTest::anywhere() {
  QFETCH(double, latitude);
  QFETCH(double, longitude);
  QFETCH(double, endLatitude);
  QFETCH(double, endLongitude);
  QFETCH(bool, blackout);
  const Place from = place(latitude, longitude), to = place(endLatitude, endLongitude);
  const Layer routes = routesOf("EPSG:4326", {lineText({from, to})});
  const Outcome outcome = annotate({{"INPUT", valueOf(routes)}, {"DIRECTION", 2}});
  VERIFY_RAN(outcome);
  QVERIFY2(outcome.warnings.isEmpty(), qPrintable(outcome.said()));
  QCOMPARE(outcome.rows().size(), size_t(2));
  const FieldSetting fieldSetting = walkField();
  for (const bool back : {false, true}) {
    const OutputRow &row = outcome.rows()[back];
    const Place &a = back ? to : from, &b = back ? from : to;
    const GeodesicLeg leg = geodesicBetween(a, b);
    QVERIFY(leg.length.metres() > 100 && leg.length.metres() < 700);
    VERIFY_NEAR(row.number("dist_m"), leg.length.metres(), 1e-8, "");
    VERIFY_NEAR(turnBetween(row.number("true_brg"), leg.departure.degrees()), 0, 1e-7, "");
    VERIFY_NEAR(row.number("decl"), fieldSetting.at(a, Length()).declination.east.degrees(), 1e-9, "");
    QCOMPARE(row.null("mag_brg"), blackout);
    if (!blackout)
      VERIFY_NEAR(turnBetween(row.number("mag_brg"), row.number("true_brg") - row.number("decl")), 0, 1e-9, "");
    VERIFY_NEAR(turnBetween(row.number("grid_brg"), row.number("true_brg") - row.number("converg")), 0, 0.003, "");
    for (const char *name : {"true_brg", "grid_brg"})
      QVERIFY2(row.number(name) >= 0 && row.number(name) < 360, name);
    // The line drawn is the layer's own.
    const QgsPointXY drawn = row.geometry.vertexAt(0);
    VERIFY_NEAR(drawn.x(), back ? endLongitude : longitude, 1e-12, "");
  }
}

void AnnotateLegsAlgorithmTest::sameInEveryProjection_data() {
  QTest::addColumn<QString>("crs");
  QTest::newRow("UTM") << "EPSG:32621";
  QTest::newRow("the next zone of UTM") << "EPSG:32622";
  QTest::newRow("web map") << "EPSG:3857";
  QTest::newRow("the national grid") << "EPSG:2962"; // NAD83(CSRS), UTM zone 21
  QTest::newRow("polar") << "EPSG:3995";
  QTest::newRow("degrees, another datum's") << "EPSG:4617"; // NAD83(CSRS)
}

// Bearings do not depend on the layer's projection beyond 0.001 degrees.
void AnnotateLegsAlgorithmTest::sameInEveryProjection() {
  QFETCH(QString, crs);
  std::vector<Place> places = {start};
  for (int i = 0; i < 24; ++i)
    places.push_back(onwards(places.back(), 37.0 * i, 150 + 20 * i));
  const QString text = lineText(places);
  const Layer degrees = routesOf("EPSG:4326", {text});
  const Outcome expected = annotate({{"INPUT", valueOf(degrees)}, {"GRID_CRS", "EPSG:32621"}});
  VERIFY_RAN(expected);

  QgsGeometry geometry = wkt(text);
  geometry.transform(QgsCoordinateTransform(QgsCoordinateReferenceSystem("EPSG:4326"),
                                            QgsCoordinateReferenceSystem(crs), QgsCoordinateTransformContext()));
  const Layer projected = layer("routes", "LineString", crs, {}, {{geometry, {}}});
  const Outcome outcome = annotate({{"INPUT", valueOf(projected)}, {"GRID_CRS", "EPSG:32621"}});
  VERIFY_RAN(outcome);
  QCOMPARE(outcome.output().crs, crs);
  QCOMPARE(outcome.rows().size(), expected.rows().size());
  for (size_t i = 0; i < expected.rows().size(); ++i) {
    const OutputRow &a = outcome.rows()[i], &b = expected.rows()[i];
    for (const char *name : {"true_brg", "mag_brg", "grid_brg", "decl", "converg", "dial", "back_dial"})
      VERIFY_NEAR(turnBetween(a.number(name), b.number(name)), 0, 0.001, name);
    VERIFY_NEAR(a.number("dist_m"), b.number("dist_m"), 0.001, "dist_m");
    QCOMPARE(a["paces"].toInt(), b["paces"].toInt());
  }
}

void AnnotateLegsAlgorithmTest::withoutRouteNames() {
  const Layer unnamed = routesOf("EPSG:4326", {lineText(twoLegs), lineText({twoLegs[1], twoLegs[0]})});
  const Outcome outcome = annotate({{"INPUT", valueOf(unnamed)}});
  VERIFY_RAN(outcome);
  QCOMPARE(outcome.output().texts("route"), QStringList({"1", "1", "2"}));

  // Names of any type; a route without one is called by # and its number.
  const Layer named = layer("routes", "LineString", "EPSG:4326", {field("n", FieldType::Integer)},
                            {{wkt(lineText({twoLegs[0], twoLegs[1]})), {70}},
                             {wkt(lineText({twoLegs[0], twoLegs[1]})), {QVariant()}},
                             {wkt(lineText({twoLegs[0], twoLegs[1]})), {70}}});
  const Outcome numbered = annotate({{"INPUT", valueOf(named)}, {"ROUTE_FIELD", "n"}});
  VERIFY_RAN(numbered);
  QCOMPARE(numbered.output().texts("route"), QStringList({"70", "#2", "70"}));
  QCOMPARE(numbered.results.value("ROUTE_COUNT").toDouble(), 3.0);
  // Another one may be called "2".
  const Layer two = layer(
      "routes", "LineString", "EPSG:4326", {field("n", FieldType::Text)},
      {{wkt(lineText({twoLegs[0], twoLegs[1]})), {"2"}}, {wkt(lineText({twoLegs[1], twoLegs[2]})), {QVariant()}}});
  const Outcome apart = annotate({{"INPUT", valueOf(two)}, {"ROUTE_FIELD", "n"}});
  VERIFY_RAN(apart);
  QCOMPARE(apart.output().texts("route"), QStringList({"2", "#2"}));
}

// --- points ----------------------------------------------------------------------------------------------------------

void AnnotateLegsAlgorithmTest::pointsInOrder_data() {
  QTest::addColumn<int>("type");
  QTest::addColumn<QVariantList>("order"); // of the route's third, first and second point
  QTest::newRow("whole numbers") << int(QVariant::Int) << QVariantList{10, -1, 9};
  QTest::newRow("long whole numbers") << int(QVariant::LongLong)
                                      << QVariantList{4000000002LL, 4000000000LL, 4000000001LL};
  QTest::newRow("fractions") << int(QVariant::Double) << QVariantList{2.5, 0.5, 2.25};
  QTest::newRow("numbers as text, 10 after 9") << int(QVariant::String) << QVariantList{"10", " 2 ", "9"};
  QTest::newRow("fractions as text") << int(QVariant::String) << QVariantList{"1e1", "-3", "9.5"};
  QTest::newRow("days") << int(QVariant::Date)
                        << QVariantList{QDate(2026, 1, 2), QDate(2025, 12, 31), QDate(2026, 1, 1)};
  QTest::newRow("moments") << int(QVariant::DateTime)
                           << QVariantList{QDateTime(QDate(2026, 5, 1), QTime(10, 0, 0)),
                                           QDateTime(QDate(2026, 5, 1), QTime(9, 0, 0)),
                                           QDateTime(QDate(2026, 5, 1), QTime(9, 59, 59))};
  QTest::newRow("times of day") << int(QVariant::Time) << QVariantList{QTime(10, 0), QTime(8, 5), QTime(9, 30)};
}

void AnnotateLegsAlgorithmTest::pointsInOrder() {
  QFETCH(int, type);
  QFETCH(QVariantList, order);
  const Layer points = layer("points", "Point", "EPSG:4326", {QgsField("nr", QVariant::Type(type))},
                             {{wkt("POINT(" + xy(twoLegs[2]) + ")"), {order[0]}},
                              {wkt("POINT(" + xy(twoLegs[0]) + ")"), {order[1]}},
                              {wkt("POINT(" + xy(twoLegs[1]) + ")"), {order[2]}}});
  const Outcome outcome = annotate({{"INPUT", valueOf(points)}, {"ORDER_FIELD", "nr"}});
  VERIFY_RAN(outcome);
  const Layer drawn = routesOf("EPSG:4326", {lineText(twoLegs)});
  const Outcome expected = annotate({{"INPUT", valueOf(drawn)}});
  VERIFY_RAN(expected);
  QVERIFY(outcome.output().sameBits(expected.output()));
}

void AnnotateLegsAlgorithmTest::pointsOfSeveralRoutes() {
  const auto at = [](size_t i) { return wkt("POINT(" + xy(twoLegs[i]) + ")"); };
  const Layer points =
      layer("points", "Point", "EPSG:4326", {field("way", FieldType::Text), field("nr", FieldType::Text)},
            {{at(1), {"there", "2"}},
             {at(2), {"back", "1"}},
             {at(0), {"there", "1"}},
             {at(2), {" there ", "10"}},
             {at(0), {"back", "3"}},
             {at(1), {"back", "2"}},
             {at(1), {QVariant(), "4"}},
             {at(1), {"alone", "1"}}});
  const Outcome outcome = annotate({{"INPUT", valueOf(points)}, {"ROUTE_FIELD", "way"}, {"ORDER_FIELD", "nr"}});
  VERIFY_RAN(outcome);
  QCOMPARE(outcome.output().texts("route"), QStringList({"there", "there", "back", "back"}));
  VERIFY_NEAR(outcome.rows()[0].number("true_brg"), 105, 1e-6, "");
  VERIFY_NEAR(outcome.rows()[1].number("true_brg"), 340, 1e-6, "");
  VERIFY_NEAR(outcome.rows()[2].number("true_brg"), 160, 0.003, "");
  QCOMPARE(outcome.results.value("ROUTE_COUNT").toDouble(), 2.0);
  // A point of no route, and a route of one point, are told.
  const QString said = outcome.said();
  for (const char *word : {"INPUT", "feature 7", "way", "alone", "2 route(s) passed over"})
    QVERIFY2(said.contains(word), qPrintable(said));
}

void AnnotateLegsAlgorithmTest::pointsKeepTheirDimensions() {
  const Layer points = layer("points", "PointZM", "EPSG:32621", {field("nr", FieldType::Integer)},
                             {{wkt("POINTZM(400000 5300000 7 8)"), {2}}, {wkt("POINTZM(400000 5300100 5 6)"), {1}}});
  const Outcome outcome = annotate({{"INPUT", valueOf(points)}, {"ORDER_FIELD", "nr"}});
  VERIFY_RAN(outcome);
  QCOMPARE(outcome.rows().size(), size_t(1));
  QCOMPARE(textOf(outcome.rows()[0].geometry.asWkt(1)),
           QString("LineStringZM (400000 5300100 5 6, 400000 5300000 7 8)"));
  // Points that come as collections of one.
  const Layer multi = layer("points", "MultiPoint", "EPSG:32621", {field("nr", FieldType::Integer)},
                            {{wkt("MULTIPOINT((400000 5300000))"), {2}}, {wkt("MULTIPOINT((400000 5300100))"), {1}}});
  const Outcome of = annotate({{"INPUT", valueOf(multi)}, {"ORDER_FIELD", "nr"}});
  VERIFY_RAN(of);
  QCOMPARE(of.rows()[0].geometry.asWkt(1), QString("LineString (400000 5300100, 400000 5300000)"));
}

// --- named points ----------------------------------------------------------------------------------------------------

void AnnotateLegsAlgorithmTest::namedPoints() {
  const Layer routes = routesOf("EPSG:4326", {lineText(twoLegs)});
  // In another projection, with a point that nobody named and one that lies nowhere.
  QgsGeometry camp = wkt("POINT(" + xy(onwards(twoLegs[0], 200, 3)) + ")");
  QgsGeometry pine = wkt("POINT(" + xy(twoLegs[1]) + ")"), far = wkt("POINT(" + xy(onwards(twoLegs[1], 20, 4)) + ")");
  const QgsCoordinateTransform toGrid(QgsCoordinateReferenceSystem("EPSG:4326"),
                                      QgsCoordinateReferenceSystem("EPSG:32621"), QgsCoordinateTransformContext());
  for (QgsGeometry *each : {&camp, &pine, &far})
    each->transform(toGrid);
  const Layer points =
      layer("places", "Point", "EPSG:32621", {field("name", FieldType::Text), field("called", FieldType::Text)},
            {{far, {"farther", "weiter"}},
             {camp, {" camp ", "Lager"}},
             {pine, {"lone pine", "Kiefer"}},
             {pine, {QVariant(), QVariant()}},
             {QgsGeometry(), {"nowhere", "nirgends"}}});
  const Outcome outcome = annotate({{"INPUT", valueOf(routes)}, {"POINTS", valueOf(points)}, {"DIRECTION", 2}});
  VERIFY_RAN(outcome);
  QCOMPARE(outcome.output().texts("from_name"), QStringList({"camp", "lone pine", "", "lone pine"}));
  QCOMPARE(outcome.output().texts("to_name"), QStringList({"lone pine", "", "lone pine", "camp"}));
  QVERIFY(outcome.rows()[1].null("to_name"));
  const QString said = outcome.said();
  for (const char *word : {"POINTS", "places", "1 point(s)", "without a name", "place passed over"})
    QVERIFY2(said.contains(word), qPrintable(said));

  const Outcome other = annotate({{"INPUT", valueOf(routes)}, {"POINTS", valueOf(points)}, {"POINT_NAME", "called"}});
  VERIFY_RAN(other);
  QCOMPARE(other.output().texts("from_name"), QStringList({"Lager", "Kiefer"}));
}

void AnnotateLegsAlgorithmTest::snap_data() {
  QTest::addColumn<double>("reach");
  QTest::addColumn<bool>("reached");
  QTest::newRow("short of it") << 24.9 << false;
  QTest::newRow("beyond it") << 25.1 << true;
  QTest::newRow("0: on the spot only") << 0.0 << false;
  QTest::newRow("the most") << 1000.0 << true;
}

// A named point 25 m from the first leg's end.
void AnnotateLegsAlgorithmTest::snap() {
  QFETCH(double, reach);
  QFETCH(bool, reached);
  const Layer routes = routesOf("EPSG:4326", {lineText({twoLegs[0], twoLegs[1]})});
  const Layer points = layer("places", "Point", "EPSG:4326", {field("name", FieldType::Text)},
                             {{wkt("POINT(" + xy(onwards(twoLegs[1], 250, 25)) + ")"), {"spring"}},
                              {wkt("POINT(" + xy(twoLegs[0]) + ")"), {"camp"}}});
  const Outcome outcome = annotate({{"INPUT", valueOf(routes)}, {"POINTS", valueOf(points)}, {"SNAP", reach}});
  VERIFY_RAN(outcome);
  QCOMPARE(outcome.rows()[0].text("from_name"), QString("camp"));
  QCOMPARE(outcome.rows()[0].text("to_name"), reached ? QString("spring") : QString());
}

void AnnotateLegsAlgorithmTest::counts() {
  const Layer routes = routesOf("EPSG:4326", {lineText(twoLegs), "", lineText({twoLegs[0], twoLegs[1]})});
  const Layer walkers = table("walkers", {field("walker", FieldType::Text)}, {{"a"}, {"b"}, {"c"}});
  const Outcome outcome = annotate({{"INPUT", valueOf(routes)}, {"WALKERS", valueOf(walkers)}, {"DIRECTION", 2}});
  VERIFY_RAN(outcome);
  QCOMPARE(outcome.results.value("ROUTE_COUNT").toDouble(), 2.0);
  QCOMPARE(outcome.results.value("LEG_COUNT").toDouble(), 3.0 * 2 * 3); // legs, both ways, walkers
  QCOMPARE(outcome.rows().size(), size_t(18));
}

BRUSHLINE_HOST_TEST_MAIN(AnnotateLegsAlgorithmTest)
#include "annotate_legs_algorithm_test.moc"
