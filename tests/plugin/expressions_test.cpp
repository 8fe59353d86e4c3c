// SPDX-License-Identifier: GPL-2.0-or-later
// The functions for the host's expressions: the same numbers as the algorithms, bit for bit.
#include "magnetics/field_setting.h"
#include "magnetics/world_magnetic_model.h"
#include "registration.h"
#include "support/host_fixture.h"
#include "support/random.h"

#include <qgsexpression.h>
#include <qgsexpressioncontextutils.h>
#include <qgsexpressionfunction.h>
#include <qgspallabeling.h>
#include <qgsprintlayout.h>
#include <qgsproject.h>
#include <qgsreferencedgeometry.h>

#include <atomic>
#include <cmath>
#include <thread>

using namespace brushline;
using namespace brushline::test;

namespace {

const QStringList names = {"brushline_declination", "brushline_dial", "brushline_compass_point", "brushline_paces"};
const char *const day = "2026-06-20";

struct Answer {
  QVariant value;
  QString error;
};

Answer evaluate(const QString &text, const QgsExpressionContext &context = QgsExpressionContext()) {
  QgsExpression expression(text);
  if (expression.hasParserError())
    return {QVariant(), QStringLiteral("parser: ") + expression.parserErrorString()};
  expression.prepare(&context);
  const QVariant value = expression.evaluate(&context);
  return {value, expression.hasEvalError() ? expression.evalErrorString() : QString()};
}

QgsExpressionContext contextOf(const Layer &layer, const QgsFeature &feature = QgsFeature()) {
  QgsExpressionContext context;
  context << layer->createExpressionContextScope();
  context.setFeature(feature);
  return context;
}

bool isNull(const Answer &answer) { return answer.error.isEmpty() && answer.value.isNull(); }

// The declination on the day above, straight from the core.
double wmm(double latitude, double longitude, double height = 0) {
  const FieldSetting field(coefficientModel(worldMagneticModel2025(), DecimalYear::of({2026, 6, 20})));
  return field.at({Angle::degrees(latitude), Angle::degrees(longitude)}, Length::metres(height))
      .declination.east.degrees();
}

} // namespace

//! Stops the test when an expression fails or is not equal, bit for bit.
#define SAME(answer, expected)                                                                                         \
  do {                                                                                                                 \
    const Answer same_answer = (answer);                                                                               \
    QVERIFY2(same_answer.error.isEmpty() && !same_answer.value.isNull(), qPrintable(same_answer.error));               \
    if (!(same_answer.value.toDouble() == (expected)))                                                                 \
      QCOMPARE(QString::number(same_answer.value.toDouble(), 'g', 17), QString::number((expected), 'g', 17));          \
  } while (false)

class ExpressionsTest : public QObject {
  Q_OBJECT
private slots:
  void initTestCase() {
    for (const QString &name : names)
      QVERIFY(!QgsExpression::isFunctionName(name));
    QCOMPARE(brushline_register(), 0);
  }
  void cleanupTestCase() { brushline_unregister(); }

  void registeredAsOftenAsTakenBack() {
    const int count = QgsExpression::functionCount();
    QCOMPARE(brushline_register(), 0); // the loader beside the desktop's plugin
    QCOMPARE(QgsExpression::functionCount(), count);
    brushline_unregister();
    for (const QString &name : names)
      QVERIFY(QgsExpression::isFunctionName(name));
    brushline_unregister();
    for (const QString &name : names)
      QVERIFY(!QgsExpression::isFunctionName(name));
    QCOMPARE(QgsExpression::functionCount(), count - names.size());
    brushline_unregister(); // once too often
    QVERIFY(evaluate("brushline_paces(100, 130)").error.startsWith("parser"));
    QCOMPARE(brushline_register(), 0);
    QCOMPARE(QgsExpression::functionCount(), count);
    SAME(evaluate("brushline_paces(100, 130)"), 130.0);
    SAME(evaluate("round(1.4)"), 1.0); // the host's own are untouched
  }

  // What the expression builder shows.
  void helpAndGroup() {
    for (const QString &name : names) {
      const QgsExpressionFunction *function = QgsExpression::Functions().at(QgsExpression::functionIndex(name));
      QCOMPARE(function->group(), QStringLiteral("Brushline"));
      const QString help = function->helpText();
      QVERIFY2(help.contains(name + QLatin1Char('(')) && help.size() > 200, qPrintable(help));
      for (const auto &parameter : function->parameters())
        QVERIFY2(help.contains(parameter.name()) || parameter.name() == QLatin1String("place"),
                 qPrintable(parameter.name()));
    }
  }

  void likeFieldAtPoints() {
    Random random(7);
    std::vector<Row> rows;
    for (int i = 0; i < 300; ++i) {
      const double x = random.between(300000, 700000), y = random.between(1000, 9300000);
      rows.push_back({wkt(i % 2 ? QStringLiteral("POINTZ(%1 %2 0)").arg(x, 0, 'g', 17).arg(y, 0, 'g', 17)
                                : QStringLiteral("POINTZ(%1 %2 %3)").arg(x, 0, 'g', 17).arg(y, 0, 'g', 17).arg(i * 20)),
                      {QDate(2026, 6, 20)}});
    }
    const Layer points = layer("points", "PointZ", "EPSG:32621", {field("day", FieldType::Date)}, rows);
    const Outcome outcome =
        run("brushline:fieldatpoints", {{"INPUT", valueOf(points)}, {"DATE", day}, {"OUTPUT", "TEMPORARY_OUTPUT"}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QgsFeatureIterator features = points->getFeatures();
    QgsFeature feature;
    int known = 0;
    for (const OutputRow &row : outcome.rows()) {
      QVERIFY(features.nextFeature(feature));
      const QgsExpressionContext context = contextOf(points, feature);
      const Answer answer = evaluate("brushline_declination($geometry, date:=\"day\")", context);
      if (row.text("zone") == QLatin1String("blackout")) {
        QVERIFY(isNull(answer));
        continue;
      }
      ++known;
      SAME(answer, row.number("decl"));
      if (feature.geometry().vertexAt(0).z() == 0) {
        SAME(evaluate("brushline_declination($x, $y, date:='2026-06-20')", context), row.number("decl"));
        SAME(evaluate("brushline_declination($x, $y, 'EPSG:32621', \"day\")", context), row.number("decl"));
      }
      SAME(evaluate("brushline_declination($geometry, 'EPSG:32621', to_date('2026-06-20'))", context),
           row.number("decl"));
    }
    QVERIFY(known > 250);
  }

  // Also virtual fields, labels, and lines of one and of several parts.
  void likeAnnotatedLegs_data() {
    QTest::addColumn<QString>("crs");
    QTest::addColumn<QString>("type");
    QTest::newRow("projected") << "EPSG:32621"
                               << "LineString";
    QTest::newRow("degrees") << "EPSG:4326"
                             << "LineString";
    QTest::newRow("heights") << "EPSG:32621"
                             << "LineStringZ";
    QTest::newRow("several parts") << "EPSG:32621"
                                   << "MultiLineString";
  }
  void likeAnnotatedLegs() {
    QFETCH(QString, crs);
    QFETCH(QString, type);
    Random random(11);
    std::vector<Row> rows;
    for (int i = 0; i < 200; ++i) {
      const bool degrees = crs == QLatin1String("EPSG:4326");
      const double x = degrees ? random.between(-60, -54) : random.between(400000, 600000);
      const double y = degrees ? random.between(40, 60) : random.between(4500000, 6500000);
      const double reach = degrees ? 0.004 : 400;
      const QString z = type.endsWith(QLatin1Char('Z')) ? QStringLiteral(" 900") : QString();
      const QString points = QStringLiteral("%1 %2%5,%3 %4%5")
                                 .arg(x, 0, 'g', 17)
                                 .arg(y, 0, 'g', 17)
                                 .arg(x + random.between(-reach, reach), 0, 'g', 17)
                                 .arg(y + random.between(-reach, reach), 0, 'g', 17)
                                 .arg(z);
      rows.push_back({wkt(QStringLiteral("%1(%2%3%4)")
                              .arg(type, type.startsWith(QLatin1String("Multi")) ? "(" : "", points,
                                   type.startsWith(QLatin1String("Multi")) ? ")" : "")),
                      {}});
    }
    const Layer routes = layer("routes", type, crs, {}, rows);
    for (const double step : {2.0, 5.0, 0.5}) {
      const Outcome outcome =
          run("brushline:annotatelegs",
              {{"INPUT", valueOf(routes)}, {"DATE", day}, {"DIAL_STEP", step}, {"OUTPUT", "TEMPORARY_OUTPUT"}});
      QVERIFY2(outcome.ok, qPrintable(outcome.said()));
      QList<QgsField> fields;
      for (const QgsField &each : outcome.output().fields)
        fields << each;
      std::vector<Row> again;
      for (const OutputRow &row : outcome.rows()) {
        QVariantList values;
        for (const QgsField &each : fields)
          values << row.values.value(each.name());
        again.push_back({row.geometry, values});
      }
      const Layer legs = layer("legs", type, crs, fields, again);
      const QString dial = QStringLiteral("brushline_dial(\"true_brg\", $geometry, \"date\", %1)").arg(step);
      QVERIFY(legs->addExpressionField(dial, field("virtual", FieldType::Real)) >= 0);
      QgsPalLayerSettings settings;
      settings.isExpression = true;
      settings.fieldName = dial + " || ' ' || brushline_compass_point(\"dial\")";
      QgsFeatureIterator features = legs->getFeatures();
      QgsFeature feature;
      for (const OutputRow &row : outcome.rows()) {
        QVERIFY(features.nextFeature(feature));
        const QgsExpressionContext context = contextOf(legs, feature);
        SAME(evaluate(dial, context), row.number("dial"));
        QCOMPARE(feature.attribute("virtual").toDouble(), row.number("dial"));
        SAME(evaluate("brushline_declination($geometry, date:=\"date\")", context), row.number("decl"));
        QCOMPARE(evaluate("brushline_compass_point(\"dial\")", context).value.toString(), row.text("compass_pt"));
        SAME(evaluate("brushline_paces(\"dist_m\", 130)", context), row.number("paces"));
        QgsExpression *label = settings.getLabelExpression();
        label->prepare(&context);
        QCOMPARE(label->evaluate(&context).toString(),
                 QStringLiteral("%1 %2").arg(row.number("dial")).arg(row.text("compass_pt")));
      }
    }
  }

  void systems() {
    const double here = wmm(49.5, -57);
    const QString point = "make_point(-57, 49.5)";
    for (const QString &crs : {QStringLiteral("'EPSG:4326'"), QStringLiteral("'PROJ:+proj=longlat +datum=WGS84'"),
                               QStringLiteral("'OGC:CRS84'")})
      SAME(evaluate(QStringLiteral("brushline_declination(%1, %2, '%3')").arg(point, crs, day)), here);
    SAME(evaluate(QStringLiteral("brushline_declination(-57, 49.5, 'EPSG:4326', '%1')").arg(day)), here);
    SAME(evaluate(QStringLiteral("brushline_declination('-57', ' 49.5', crs:='EPSG:4326', date:='%1')").arg(day)),
         here);
    SAME(evaluate(QStringLiteral("brushline_declination(%1, date:='%2', crs:='EPSG:4326')").arg(point, day)), here);
    SAME(evaluate(QStringLiteral("brushline_declination(%1, 'EPSG:4326', date:='%2')").arg(point, day)), here);
    SAME(evaluate(QStringLiteral("brushline_declination(make_point(-57, 49.5, 1500), 'EPSG:4326', '%1')").arg(day)),
         wmm(49.5, -57, 1500));

    // The layer's comes before the project's, also one without a code of its own; a geometry's own before both.
    QgsProject::instance()->setCrs(QgsCoordinateReferenceSystem("EPSG:4326"));
    QgsExpressionContext project;
    project << QgsExpressionContextUtils::projectScope(QgsProject::instance());
    const QString plain = QStringLiteral("brushline_declination(%1, date:='%2')").arg(point, day);
    SAME(evaluate(plain, project), here);
    const Layer shifted = layer("shifted", "Point", "EPSG:4326", {}, {});
    shifted->setCrs(QgsCoordinateReferenceSystem::fromProj("+proj=longlat +datum=WGS84 +pm=10"));
    QgsExpressionContext both = project;
    both << shifted->createExpressionContextScope();
    SAME(evaluate(plain, both), wmm(49.5, -47));
    SAME(evaluate(QStringLiteral("brushline_declination(%1, @project_crs, '%2')").arg(point, day), both), here);
    both.lastScope()->setVariable("there", QVariant::fromValue(QgsReferencedGeometry(
                                               wkt("POINT(-57 49.5)"), QgsCoordinateReferenceSystem("EPSG:4326"))));
    SAME(evaluate(QStringLiteral("brushline_declination(@there, date:='%1')").arg(day), both), here);
    SAME(evaluate(QStringLiteral("brushline_dial(0, @there, '%1', 0.01)").arg(day), both),
         evaluate(QStringLiteral("brushline_dial(0, %1, '%2', 0.01, 'EPSG:4326')").arg(point, day)).value.toDouble());

    const Answer none = evaluate(plain);
    QVERIFY2(none.value.isNull() && none.error.contains("crs:='EPSG:4326'"), qPrintable(none.error));
    QgsProject::instance()->clear();
  }

  void geometries() {
    const auto at = [](const QString &text) {
      return evaluate(QStringLiteral("brushline_declination(geom_from_wkt('%1'), 'EPSG:4326', '%2')").arg(text, day));
    };
    const double here = wmm(49.5, -57);
    SAME(at("POINT(-57 49.5)"), here);
    SAME(at("MULTIPOINT((-57 49.5))"), here);
    SAME(at("LINESTRING(-57 49.5, -50 40)"), here); // a leg's start
    SAME(at("MULTILINESTRING((-57 49.5, -50 40))"), here);
    SAME(at("POLYGON((-58 48.5, -56 48.5, -56 50.5, -58 50.5, -58 48.5))"), here); // the centroid
    SAME(at("MULTIPOINT((-58 49.5), (-56 49.5))"), here);
    QVERIFY(isNull(at("POINT EMPTY")));
    QVERIFY(isNull(at("POLYGON EMPTY")));
  }

  void today() {
    const QString now = QDate::currentDate().toString(Qt::ISODate);
    const Answer answer = evaluate("brushline_declination(-57, 49.5, 'EPSG:4326')");
    SAME(answer,
         evaluate(QStringLiteral("brushline_declination(-57, 49.5, 'EPSG:4326', '%1')").arg(now)).value.toDouble());
    SAME(evaluate("brushline_declination(-57, 49.5, 'EPSG:4326', now())"), answer.value.toDouble());
  }

  // Computed by hand.
  void pointsAndPaces() {
    for (const auto &[bearing, point] :
         {std::pair("0", "N"), {"359.9", "N"}, {"-90", "W"}, {"11.25", "NNE"}, {"'45'", "NE"}})
      QCOMPARE(evaluate(QStringLiteral("brushline_compass_point(%1)").arg(bearing)).value.toString(), QString(point));
    SAME(evaluate("brushline_paces(250, 120)"), 300.0);
    SAME(evaluate("brushline_paces(0, 120)"), 0.0);
    SAME(evaluate("brushline_paces(50, 121)"), 61.0); // 60.5
    SAME(evaluate("brushline_paces(1e8, 1000)"), 1e9);
    QCOMPARE(int(evaluate("brushline_paces(250, 120)").value.type()), int(QVariant::LongLong));
  }

  void nullsGiveNull() {
    for (const char *text :
         {"brushline_declination(NULL, 'EPSG:4326', '2026-06-20')", "brushline_declination(-57, NULL, 'EPSG:4326')",
          "brushline_declination(-57, 49.5, NULL)", "brushline_declination(-57, 49.5, 'EPSG:4326', NULL)",
          "brushline_dial(NULL, make_point(-57, 49.5), '2026-06-20', 2, 'EPSG:4326')",
          "brushline_dial(90, NULL, '2026-06-20', 2, 'EPSG:4326')",
          "brushline_dial(90, make_point(-57, 49.5), NULL, 2, 'EPSG:4326')",
          "brushline_dial(90, make_point(-57, 49.5), '2026-06-20', NULL, 'EPSG:4326')", "brushline_compass_point(NULL)",
          "brushline_paces(NULL, 130)", "brushline_paces(100, NULL)"})
      QVERIFY2(isNull(evaluate(text)), text);
  }

  // No compass works there: field along the ground under 2000 nT.
  void noCompass() {
    QVERIFY(isNull(evaluate("brushline_declination(140, 85.5, 'EPSG:4326', '2026-06-20')")));
    QVERIFY(isNull(evaluate("brushline_dial(90, make_point(140, 85.5), '2026-06-20', 2, 'EPSG:4326')")));
  }

  void wrongInputSaysWhatToDo_data() {
    QTest::addColumn<QString>("text");
    QTest::addColumn<QString>("word");
    QTest::newRow("year") << "brushline_declination(-57, 49.5, 'EPSG:4326', '2031-06-20')"
                          << "2025 to 2030";
    QTest::newRow("year of a dial") << "brushline_dial(1, make_point(1, 2), '2019-01-01', 2, 'EPSG:4326')"
                                    << "give a date within them";
    QTest::newRow("date") << "brushline_declination(-57, 49.5, 'EPSG:4326', 'soon')"
                          << "year-month-day";
    QTest::newRow("date without text") << "brushline_declination(-57, 49.5, 'EPSG:4326', '')"
                                       << "year-month-day";
    QTest::newRow("date as number") << "brushline_declination(-57, 49.5, 'EPSG:4326', 2026)"
                                    << "year-month-day";
    QTest::newRow("crs") << "brushline_declination(-57, 49.5, 'EPSG:1')"
                         << "'EPSG:32621'";
    QTest::newRow("crs as number") << "brushline_declination(-57, 49.5, 4326)"
                                   << "'EPSG:32621'";
    QTest::newRow("no y") << "brushline_declination(-57)"
                          << "x and y";
    QTest::newRow("a text") << "brushline_declination('POINT(1 2)', 'EPSG:4326')"
                            << "decimal point";
    QTest::newRow("no place") << "brushline_declination(500000, 5400000, 'EPSG:4326')"
                              << "no place on the Earth";
    QTest::newRow("beyond the pole") << "brushline_declination(49, 157, 'EPSG:4326')"
                                     << "no place on the Earth";
    QTest::newRow("height") << "brushline_declination(make_point(1, 2, 1e7), 'EPSG:4326')"
                            << "height";
    QTest::newRow("bearing") << "brushline_dial('north', make_point(1, 2), '2026-01-01', 2, 'EPSG:4326')"
                             << "decimal point";
    QTest::newRow("comma") << "brushline_dial('9,5', make_point(1, 2), '2026-01-01', 2, 'EPSG:4326')"
                           << "decimal point";
    QTest::newRow("dial without geometry") << "brushline_dial(90, 12)"
                                           << "$geometry";
    QTest::newRow("graduation") << "brushline_dial(90, make_point(1, 2), '2026-01-01', 0, 'EPSG:4326')"
                                << "graduation";
    QTest::newRow("graduation over an eighth of the circle")
        << "brushline_dial(105, make_point(1, 2), '2026-06-20', 45.5, 'EPSG:4326')"
        << "from 0.01 to 45.";
    QTest::newRow("point") << "brushline_compass_point('N')"
                           << "give a number";
    QTest::newRow("point of a geometry") << "brushline_compass_point(make_point(1, 2))"
                                         << "give a number";
    QTest::newRow("negative metres") << "brushline_paces(-1, 130)"
                                     << "from 0 to";
    QTest::newRow("steps") << "brushline_paces(100, 5)"
                           << "from 20 to 1000";
  }
  void wrongInputSaysWhatToDo() {
    QFETCH(QString, text);
    QFETCH(QString, word);
    const Answer answer = evaluate(text);
    QVERIFY(answer.value.isNull());
    QVERIFY2(answer.error.startsWith(text.section(QLatin1Char('('), 0, 0)) && answer.error.contains(word),
             qPrintable(answer.error));
  }

  void wrongNumberOfArguments() {
    for (const char *text :
         {"brushline_paces(100)", "brushline_declination()", "brushline_dial(90)", "brushline_compass_point(1, 2)",
          "brushline_declination(1, 2, 'EPSG:4326', '2026-01-01', 5)"})
      QVERIFY2(evaluate(text).error.startsWith("parser"), text);
  }

  // What a label in a layout does with its text.
  void layoutLabel() {
    QgsProject project;
    project.setCrs(QgsCoordinateReferenceSystem("EPSG:4326"));
    QgsPrintLayout layout(&project);
    const QgsExpressionContext context = layout.createExpressionContext();
    const QString text = QgsExpression::replaceExpressionText(
        QStringLiteral("Declination [% round(brushline_declination(-57, 49.5, date:='%1'), 2) %], [% "
                       "brushline_paces(250, 120) %] steps")
            .arg(day),
        &context);
    QCOMPARE(text, QStringLiteral("Declination %1, 300 steps").arg(std::round(wmm(49.5, -57) * 100) / 100));
  }

  // Labels are drawn in several threads at once.
  void manyThreads() {
    std::atomic<int> wrong{0};
    std::vector<std::thread> threads;
    for (int t = 0; t < 4; ++t)
      threads.emplace_back([&wrong, t] {
        for (int i = 0; i < 300; ++i) {
          const double x = -170 + (i * 7 + t) % 340, y = -55 + (i * 3) % 110;
          const Answer answer =
              evaluate(QStringLiteral("brushline_declination(%1, %2, 'EPSG:4326', '2026-06-20')").arg(x).arg(y));
          if (!answer.error.isEmpty() || !(answer.value.toDouble() == wmm(y, x)))
            ++wrong;
        }
      });
    for (std::thread &thread : threads)
      thread.join();
    QCOMPARE(wrong.load(), 0);
  }
};

BRUSHLINE_HOST_TEST_MAIN(ExpressionsTest)
#include "expressions_test.moc"
