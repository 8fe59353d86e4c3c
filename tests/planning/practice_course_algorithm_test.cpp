// SPDX-License-Identifier: GPL-2.0-or-later
// Courses against the host's own geometry (GEOS) and distances, and against annotated legs.
#include "support/host_fixture.h"
#include "support/random.h"

#include <QFile>
#include <qgsdistancearea.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

using namespace brushline::test;

namespace {
const QString id = QStringLiteral("brushline:practicecourse");
const QString crs = QStringLiteral("EPSG:32621");

Layer polygons(const std::vector<QString> &all, const QString &system = crs,
               const QString &type = QStringLiteral("Polygon")) {
  std::vector<Row> rows;
  for (const QString &each : all)
    rows.push_back({wkt(each), {}});
  return layer(QStringLiteral("area"), type, system, {}, rows);
}
Layer points(const char *name, const std::vector<std::pair<QString, QString>> &nameAndPlace,
             const QString &system = crs) {
  std::vector<Row> rows;
  for (const auto &[text, place] : nameAndPlace)
    rows.push_back({wkt(place), {text.isEmpty() ? QVariant() : QVariant(text)}});
  return layer(QString::fromLatin1(name), QStringLiteral("Point"), system, {field("name", FieldType::Text)}, rows);
}
QVariantMap with(const Layer &area, QVariantMap more = {}) {
  more.insert(QStringLiteral("AREA"), valueOf(area));
  for (const auto &[key, value] :
       {std::pair("DATE", "2026-06-01"), std::pair("OUTPUT", "memory:"), std::pair("CONTROLS", "memory:")})
    if (!more.contains(QLatin1String(key)))
      more.insert(QLatin1String(key), QLatin1String(value));
  return more;
}
const QVariantMap lawn{{"LEG_MIN", 15}, {"LEG_MAX", 30}};
const QString square =
    QStringLiteral("POLYGON((600000 5400000,600050 5400000,600050 5400050,600000 5400050,600000 5400000))");

QString sample(const char *name) {
  return QStringLiteral("%1/sample-project/sample.gpkg|layername=%2")
      .arg(QStringLiteral(BRUSHLINE_SOURCE_DIR), QLatin1String(name));
}
QgsDistanceArea ruler(const QString &system) {
  QgsDistanceArea ruler;
  ruler.setSourceCrs(QgsCoordinateReferenceSystem(system), QgsCoordinateTransformContext());
  ruler.setEllipsoid(QStringLiteral("EPSG:7030"));
  return ruler;
}
double sumOf(const std::vector<OutputRow> &rows, const QString &route, const char *field) {
  double sum = 0;
  for (const OutputRow &row : rows)
    if (row.text("route") == route)
      sum += row.number(field);
  return sum;
}

struct Asked {
  QgsGeometry area, avoid; // avoid may be null
  double clearance = 2, least = 15, most = 30, turn = 30;
  int courses = 4, legs = 6;
  bool closed = true;
  QString system = crs;
};

// What is wrong with courses; empty: nothing.
QString wrong(const Outcome &outcome, const Asked &asked) {
  if (!outcome.ok)
    return outcome.said();
  const QgsDistanceArea distances = ruler(asked.system);
  const auto &routes = outcome.rows(), &controls = outcome.rows("CONTROLS");
  if (int(routes.size()) != asked.courses || int(controls.size()) != asked.courses * (asked.legs + 1))
    return QStringLiteral("counts");
  const QgsGeometry inside = asked.area.buffer(0.003, 8);
  std::set<QString> drawn;
  std::map<std::pair<QString, QString>, int> uses;
  size_t at = 0;
  for (const OutputRow &route : routes) {
    const QgsPolylineXY line = route.geometry.asPolyline();
    if (line.size() != asked.legs + 1 || asked.closed != (line.first() == line.last()))
      return QStringLiteral("shape of the line");
    if (!inside.contains(route.geometry))
      return QStringLiteral("leaves the area: ") + route.geometry.asWkt();
    if (!asked.avoid.isNull() && asked.avoid.distance(route.geometry) < asked.clearance - 0.003)
      return QStringLiteral("too near to what is avoided");
    double length = 0;
    for (int i = 1; i < line.size(); ++i) {
      const double metres = distances.measureLine(line[i - 1], line[i]);
      length += metres;
      if (metres < asked.least - 1e-5 || metres > asked.most + 1e-5)
        return QStringLiteral("leg of %1 m").arg(metres);
      const auto turn = [&](int k) {
        return (distances.bearing(line[k], line[k + 1]) - distances.bearing(line[k - 1], line[k])) * 180 / M_PI;
      };
      if (i + 1 < line.size() && std::abs(std::remainder(turn(i), 360)) < asked.turn - 0.01)
        return QStringLiteral("turn of %1").arg(turn(i));
      const QString a = line[i - 1].toString(3), b = line[i].toString(3);
      ++uses[{std::min(a, b), std::max(a, b)}];
    }
    if (std::abs(length - route.number("length_m")) > 0.01)
      return QStringLiteral("length_m");
    drawn.insert(route.geometry.asWkt(3));
    for (int i = 0; i < line.size(); ++i, ++at) {
      const OutputRow &control = controls[at];
      if (control.text("route") != route.text("route") || control.number("number") != i ||
          control.geometry.asPoint() != line[i] || control.text("name").isEmpty())
        return QStringLiteral("control %1").arg(at);
    }
  }
  if (drawn.size() != routes.size())
    return QStringLiteral("the same course twice");
  const auto sharedCount = std::count_if(uses.begin(), uses.end(), [](const auto &use) { return use.second > 1; });
  if (outcome.results.value("SHARED_LEGS").toInt() != int(sharedCount))
    return QStringLiteral("SHARED_LEGS");
  // No other control within the reach of a leg that leads to one.
  for (const OutputRow &one : controls)
    for (const OutputRow &other : controls) {
      if (one.null("reach_m") || one.geometry.equals(other.geometry) || (one.null("letter") && other.null("letter")))
        continue;
      const double apart = distances.measureLine(one.geometry.asPoint(), other.geometry.asPoint());
      if (apart < one.number("reach_m") - 0.002 || apart < one.number("apart_m") - 0.01)
        return QStringLiteral("controls %1 m apart").arg(apart);
    }
  // Balance, from the fields.
  double worst = 0;
  for (const char *measure : {"length_m", "minutes", "cover_f", "drift_m"}) {
    double least = HUGE_VAL, most = 0;
    for (const OutputRow &route : routes)
      if (!route.null(measure)) {
        least = std::min(least, route.number(measure));
        most = std::max(most, route.number(measure));
      }
    if (most > 0)
      worst = std::max(worst, most / least - 1);
  }
  if (!routes[0].null("climb_m")) {
    double least = HUGE_VAL, most = 0;
    for (const OutputRow &route : routes) {
      least = std::min(least, route.number("climb_m"));
      most = std::max(most, route.number("climb_m"));
    }
    worst = std::max(worst, (most - least) / std::max(least, 5.0 * asked.legs));
  }
  if (std::abs(worst * 100 - outcome.results.value("BALANCE").toDouble()) > 1e-6)
    return QStringLiteral("BALANCE");
  return QString();
}
} // namespace

class PracticeCourseAlgorithmTest : public QObject {
  Q_OBJECT
  QTemporaryDir mFolder;
  QString file(const char *name) const { return mFolder.filePath(QString::fromLatin1(name)); }

private slots:
  void hundredGardens() {
    const QString bed =
        QStringLiteral("POLYGON((600030 5400030,600036 5400030,600036 5400038,600030 5400038,600030 5400030))");
    const Layer area = polygons({square}), beds = polygons({bed}),
                gate = points("starts", {{"Gate", "POINT(600010 5400010)"}});
    Asked asked;
    asked.area = wkt(square);
    asked.avoid = wkt(bed);
    for (int seed = 0; seed < 100; ++seed) {
      asked.closed = seed % 4 != 0;
      QVariantMap more = lawn;
      more.insert("SEED", seed);
      more.insert("CLOSED", asked.closed);
      more.insert("STARTS", valueOf(gate));
      more.insert("AVOID", QVariantList{valueOf(beds)});
      const Outcome outcome = run(id, with(area, more));
      const QString fault = wrong(outcome, asked);
      QVERIFY2(fault.isEmpty(), qPrintable(fault));
      QVERIFY(outcome.results.value("BALANCE").toDouble() <= 10);
      QCOMPARE(outcome.results.value("SHARED_LEGS").toInt(), 0);
      for (const OutputRow &row : outcome.rows()) {
        QCOMPARE(row.text("start"), QStringLiteral("Gate"));
        QCOMPARE(row.number("crossings"), 0.0);
        QVERIFY(row.null("climb_m") && row.null("cover_f") && row.null("note"));
      }
    }
  }

  // The forest of the sample, with terrain and cover, over a hundred seeds; water and cliffs kept away from.
  void hundredForests() {
    QgsVectorLayer cover(sample("cover"), QStringLiteral("cover")), cliffs(sample("cliffs"), QStringLiteral("cliffs"));
    QVERIFY(cover.isValid() && cliffs.isValid());
    const QgsRectangle box = cover.extent();
    const double west = box.xMinimum() + 500, south = box.yMinimum() + 500;
    const QString forest = QStringLiteral("POLYGON((%1 %2,%3 %2,%3 %4,%1 %4,%1 %2))")
                               .arg(west, 0, 'f', 0)
                               .arg(south, 0, 'f', 0)
                               .arg(west + 1500, 0, 'f', 0)
                               .arg(south + 1500, 0, 'f', 0);
    const Layer area = polygons({forest});
    std::vector<QgsGeometry> water, rock;
    for (const OutputRow &row : read(cover).rows)
      if (row.text("class") == QLatin1String("water"))
        water.push_back(row.geometry);
    for (const OutputRow &row : read(cliffs).rows)
      rock.push_back(row.geometry);
    Asked asked;
    asked.area = wkt(forest);
    asked.avoid = QgsGeometry::unaryUnion(QVector<QgsGeometry>(rock.begin(), rock.end()));
    asked.clearance = 15;
    asked.least = 150;
    asked.most = 350;
    for (int seed = 0; seed < 100; ++seed) {
      const Outcome outcome =
          run(id, with(area, {{"SEED", seed},
                              {"LEG_MIN", 150},
                              {"LEG_MAX", 350},
                              {"CLEARANCE", 15},
                              {"AVOID", QVariantList{sample("cliffs")}},
                              {"COVER", sample("cover")},
                              {"COVER_CLASS", "class"},
                              {"DEM", QStringLiteral(BRUSHLINE_SOURCE_DIR) + "/sample-project/terrain.tif"}}));
      const QString fault = wrong(outcome, asked);
      QVERIFY2(fault.isEmpty(), qPrintable(fault));
      QVERIFY2(outcome.results.value("BALANCE").toDouble() <= 10, qPrintable(outcome.said()));
      for (const OutputRow &row : outcome.rows()) {
        QVERIFY(!row.null("climb_m") && row.number("cover_f") > 0.5);
        for (const QgsGeometry &pond : water)
          QVERIFY(!pond.buffer(-0.01, 4).intersects(row.geometry));
      }
    }
  }

  // A map of the cover that draws the pond alone: courses keep out of it and go over the rest, and the run tells how
  // far nobody has looked: every metre of the legs. With UNKNOWN_SPEED=0 nothing is left to walk on.
  void onlyThePondIsDrawn() {
    const Layer area = polygons(
        {QStringLiteral("POLYGON((600000 5400000,600500 5400000,600500 5400500,600000 5400500,600000 5400000))")});
    const QString drawn =
        QStringLiteral("POLYGON((600200 5400200,600300 5400200,600300 5400300,600200 5400300,600200 5400200))");
    const Layer pond = layer(QStringLiteral("cover"), QStringLiteral("Polygon"), crs, {field("class", FieldType::Text)},
                             {{wkt(drawn), {"water"}}});
    QVariantMap more{{"LEG_MIN", 50}, {"LEG_MAX", 150}, {"COVER", valueOf(pond)}};
    const Outcome outcome = run(id, with(area, more));
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(outcome.rows().size(), size_t(4));
    QCOMPARE(outcome.results.value("SHARED_LEGS").toInt(), 0);
    double metres = 0;
    for (const OutputRow &row : outcome.rows()) {
      QVERIFY(!row.geometry.intersects(wkt(drawn).buffer(-0.01, 4)));
      metres += row.number("length_m");
    }
    const QString said = outcome.warnings.join(QLatin1Char('\n'));
    const auto told =
        QRegularExpression("(\\d+) leg\\(s\\) lead over ground without known cover, (\\d+) m in all").match(said);
    QVERIFY2(told.hasMatch() && said.contains("UNKNOWN_SPEED=0"), qPrintable(said));
    QCOMPARE(told.captured(1).toInt(), 4 * 6);
    QVERIFY2(std::abs(told.captured(2).toDouble() - metres) < 1, qPrintable(said));
    more.insert("UNKNOWN_SPEED", 0);
    const Outcome closed = run(id, with(area, more));
    QVERIFY(!closed.ok);
    QVERIFY2(closed.said().contains("room for 0 controls only"), qPrintable(closed.said()));
  }

  // Length, climb, minutes and drift are those that annotated legs tell; their names those of the controls.
  void sameAsAnnotatedLegs() {
    const Layer area = polygons(
        {QStringLiteral("POLYGON((631900 5406300,632750 5406300,632900 5407700,631900 5407750,631900 5406300))")});
    const QVariantMap ground{{"COVER", sample("cover")},
                             {"COVER_CLASS", "class"},
                             {"DATE", "2026-06-01"},
                             {"DEM", QStringLiteral(BRUSHLINE_SOURCE_DIR) + "/sample-project/terrain.tif"}};
    QVariantMap more = ground;
    more.insert(QVariantMap{
        {"LEG_MIN", 100}, {"LEG_MAX", 300}, {"OUTPUT", file("routes.gpkg")}, {"CONTROLS", file("controls.gpkg")}});
    const Outcome made = run(id, with(area, more));
    QVERIFY2(made.ok, qPrintable(made.said()));
    QVariantMap legs = ground;
    legs.insert(QVariantMap{{"INPUT", file("routes.gpkg")},
                            {"ROUTE_FIELD", "route"},
                            {"POINTS", file("controls.gpkg")},
                            {"POINT_NAME", "name"},
                            {"OUTPUT", "memory:"}});
    const Outcome annotated = run(QStringLiteral("brushline:annotatelegs"), legs);
    QVERIFY2(annotated.ok, qPrintable(annotated.said()));
    QCOMPARE(annotated.rows().size(), size_t(4 * 6));
    for (const OutputRow &course : made.rows()) {
      const QString route = course.text("route");
      const auto sum = [&](const char *field) { return sumOf(annotated.rows(), route, field); };
      QVERIFY(std::abs(course.number("length_m") - sum("dist_m")) < 0.004);
      QVERIFY(std::abs(course.number("climb_m") - sum("climb_m")) < 0.004);
      QVERIFY(std::abs(course.number("minutes") - sum("walk_min")) < 1e-4);
      QVERIFY(std::abs(course.number("drift_m") - sum("drift_m") / 6) < 0.001);
      QStringList names;
      for (const OutputRow &leg : annotated.rows())
        if (leg.text("route") == route) {
          names << leg.text("to_name");
          QVERIFY(leg.null("warnings"));
        }
      QCOMPARE(course.text("controls"), names.join(", "));
    }
  }

  void sites() {
    const Layer area = polygons({square});
    std::vector<std::pair<QString, QString>> stones;
    Random random(4);
    for (int i = 0; i < 60; ++i)
      stones.push_back({QStringLiteral("Stone %1").arg(i), QStringLiteral("POINT(%1 %2)")
                                                               .arg(random.between(599995, 600055), 0, 'f', 3)
                                                               .arg(random.between(5399995, 5400055), 0, 'f', 3)});
    stones.push_back({"", "POINT(600025 5400025)"});
    const Layer forward = points("stones", stones);
    std::reverse(stones.begin(), stones.end());
    const Layer backward = points("stones", stones);
    QVariantMap more = lawn;
    more.insert("LEGS", 4);
    more.insert("SITES", valueOf(forward));
    const Outcome outcome = run(id, with(area, more));
    Asked asked;
    asked.area = wkt(square);
    asked.legs = 4;
    const QString fault = wrong(outcome, asked);
    QVERIFY2(fault.isEmpty(), qPrintable(fault));
    QVERIFY2(outcome.said().contains("outside the area") && outcome.said().contains("take one for the other"),
             qPrintable(outcome.said()));
    QVector<QgsGeometry> places;
    for (const auto &[name, place] : stones)
      places << wkt(place);
    const QgsGeometry all = QgsGeometry::unaryUnion(places);
    for (const OutputRow &row : outcome.rows("CONTROLS")) {
      QVERIFY(all.distance(row.geometry) < 1e-4);
      if (row.text("kind") == QLatin1String("control") && row.text("name").startsWith("Stone"))
        QCOMPARE(row.text("site"), row.text("name"));
    }
    QVERIFY(outcome.rows()[0].text("start").contains(QRegularExpression("Stone|Start"))); // a site serves as the start
    // The other way round, in a thread, and once more: the same bits.
    Surroundings inTask;
    inTask.in_task = true;
    more.insert("SITES", valueOf(backward));
    const Outcome again = run(id, with(area, more), inTask);
    QVERIFY(outcome.output().sameBits(again.output()) && outcome.output("CONTROLS").sameBits(again.output("CONTROLS")));
    more.insert("SEED", 77);
    const Outcome other = run(id, with(area, more));
    QVERIFY(other.ok && !outcome.output().sameBits(other.output()));
  }

  void manyCoursesFewAndShared() {
    const Layer area = polygons({square});
    Asked asked;
    asked.area = wkt(square);
    for (const int courses : {2, 8, 20}) {
      QVariantMap more = lawn;
      asked.courses = courses;
      more.insert("COURSES", courses);
      const Outcome outcome = run(id, with(area, more));
      const QString fault = wrong(outcome, asked);
      QVERIFY2(fault.isEmpty(), qPrintable(fault));
      QCOMPARE(outcome.rows()[0].text("route"), courses > 9 ? QStringLiteral("Course 01") : QStringLiteral("Course 1"));
    }
    // Four stones allow few courses: what is short of the wish is said.
    const Layer four = points("stones", {{"A stone", "POINT(600010 5400010)"},
                                         {"B stone", "POINT(600040 5400012)"},
                                         {"C stone", "POINT(600038 5400038)"},
                                         {"D stone", "POINT(600012 5400034)"}}),
                gate = points("starts", {{"Gate", "POINT(600025 5400022)"}});
    const Outcome few = run(id, with(area, {{"LEG_MIN", 10},
                                            {"LEG_MAX", 40},
                                            {"LEGS", 3},
                                            {"COURSES", 30},
                                            {"SITES", valueOf(four)},
                                            {"STARTS", valueOf(gate)}}));
    QVERIFY2(few.ok, qPrintable(few.said()));
    QVERIFY(few.rows().size() < 30 && few.rows().size() >= 4);
    QVERIFY2(few.warnings.join(' ').contains("of 30 courses"), qPrintable(few.said()));
    QVERIFY(few.warnings.join(' ').contains("walked by more than one course"));
    bool noted = false;
    for (const OutputRow &row : few.rows())
      noted = noted || row.text("note").contains("shares");
    QVERIFY(noted);
    QVERIFY(few.results.value("SHARED_LEGS").toInt() > 0);
  }

  void otherSystems() {
    // Degrees, on both sides of the 180th meridian, in the south and the west.
    struct Case {
      QString system, ring;
    };
    for (const auto &[system, ring] :
         {Case{"EPSG:4326", "-70.6 -33.5,-70.599 -33.5,-70.599 -33.499,-70.6 -33.499,-70.6 -33.5"},
          Case{"EPSG:4326", "179.9996 -17,180.0004 -17,180.0004 -16.9993,179.9996 -16.9993,179.9996 -17"},
          Case{"EPSG:4269", "-70 45,-69.999 45,-69.999 45.0009,-70 45.0009,-70 45"},
          Case{"EPSG:3857", "20037430 100000,20037508 100000,20037508 100080,20037430 100080,20037430 100000"},
          Case{"EPSG:32718", "400000 6200000,400080 6200000,400080 6200070,400000 6200070,400000 6200000"}}) {
      const QString drawn = QStringLiteral("POLYGON((%1))").arg(ring);
      const Layer area = polygons({drawn}, system);
      const Outcome outcome = run(id, with(area, lawn));
      QVERIFY2(outcome.ok, qPrintable(system + outcome.said()));
      QCOMPARE(outcome.output().crs, system);
      const double width = area->extent().width();
      const QgsGeometry inside = wkt(drawn).buffer(width * 1e-4, 8);
      for (const OutputRow &row : outcome.rows())
        QVERIFY2(inside.contains(row.geometry), qPrintable(system + row.geometry.asWkt()));
    }
    // The area in two parts, each on its side of the meridian.
    const Layer two = polygons({"MULTIPOLYGON(((179.9996 -17,180 -17,180 -16.9993,179.9996 -16.9993,179.9996 -17)),"
                                "((-180 -17,-179.9996 -17,-179.9996 -16.9993,-180 -16.9993,-180 -17)))"},
                               "EPSG:4326", "MultiPolygon");
    const Outcome outcome = run(id, with(two, lawn));
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    for (const OutputRow &row : outcome.rows())
      QVERIFY(row.geometry.boundingBox().width() < 0.001);
  }

  // Holes, parts, polygons that cross themselves, features without a geometry.
  void oddAreas() {
    const QString holed =
        QStringLiteral("POLYGON((600000 5400000,600060 5400000,600060 5400060,600000 5400060,600000 5400000),"
                       "(600025 5400025,600035 5400025,600035 5400035,600025 5400035,600025 5400025))");
    Asked asked;
    asked.area = wkt(holed);
    const Layer hole = polygons({holed});
    QString fault = wrong(run(id, with(hole, lawn)), asked);
    QVERIFY2(fault.isEmpty(), qPrintable(fault));
    const Layer halves =
        polygons({"POLYGON((600000 5400000,600025 5400000,600025 5400050,600000 5400050,600000 5400000))",
                  "POLYGON((600025 5400000,600050 5400000,600050 5400050,600025 5400050,600025 5400000))", QString()});
    asked.area = wkt(square);
    const Outcome both = run(id, with(halves, lawn));
    fault = wrong(both, asked);
    QVERIFY2(fault.isEmpty(), qPrintable(fault));
    QVERIFY(both.warnings.join(' ').contains("without a usable geometry"));
    bool over = false;
    for (const OutputRow &row : both.rows())
      over = over || row.geometry.intersects(wkt("LINESTRING(600025 5400000,600025 5400050)"));
    QVERIFY(over);
    const Layer bow =
        polygons({"POLYGON((600000 5400000,600080 5400080,600080 5400000,600000 5400080,600000 5400000))"});
    asked.area = wkt("MULTIPOLYGON(((600000 5400000,600040 5400040,600000 5400080,600000 5400000)),"
                     "((600080 5400000,600080 5400080,600040 5400040,600080 5400000)))");
    fault = wrong(run(id, with(bow, lawn)), asked);
    QVERIFY2(fault.isEmpty(), qPrintable(fault));
  }

  void refused() {
    const Layer area = polygons({square}), none = polygons({}), nowhere = polygons({square}, QString()),
                tiny =
                    polygons({"POLYGON((600000 5400000,600005 5400000,600005 5400005,600000 5400005,600000 5400000))"}),
                flat = polygons({"POLYGON((600000 5400000,600050 5400000,600070 5400000,600000 5400000))"}),
                huge =
                    polygons({"POLYGON((300000 5000000,600000 5000000,600000 5400000,300000 5400000,300000 5000000))"}),
                far = points("starts", {{"Far", "POINT(610000 5400000)"}}), empty = points("starts", {}),
                stones = points(
                    "stones",
                    {{"A", "POINT(600010 5400010)"}, {"B", "POINT(600040 5400010)"}, {"C", "POINT(700000 5400010)"}}),
                lost = points("stones", {{"A", "POINT(600010 5400010)"}}, QString());
    const auto says = [&](const Layer &over, QVariantMap more, const char *words) {
      for (auto it = lawn.begin(); it != lawn.end(); ++it)
        if (!more.contains(it.key()))
          more.insert(it.key(), it.value());
      more.insert("OUTPUT", file("refused.gpkg"));
      const Outcome outcome = run(id, with(over, more));
      const bool right =
          !outcome.ok && outcome.said().contains(QString::fromUtf8(words)) && !QFile::exists(file("refused.gpkg"));
      if (!right)
        qWarning("%s: %s", words, qPrintable(outcome.said()));
      return right;
    };
    QVERIFY(says(none, {}, "has no polygons"));
    QVERIFY(says(nowhere, {}, "has no coordinate reference system"));
    QVERIFY(says(tiny, {}, "m across, but the shortest leg"));
    QVERIFY(says(flat, {}, "room for 0 controls only")); // a hair of an area in another system
    QVERIFY(says(huge, {}, "wider than 100 km"));
    QVERIFY(says(area, {{"LEG_MIN", 31}}, "the shortest leg cannot be longer"));
    QVERIFY(says(area, {{"COURSES", 0}}, "COURSES"));
    QVERIFY(says(area, {{"COURSES", 2.5}}, "COURSES"));
    QVERIFY(says(area, {{"LEGS", 2}}, "three legs or more"));
    QVERIFY(says(area, {{"TURN_MIN", 170}}, "TURN_MIN"));
    QVERIFY(says(area, {{"SEED", -1}}, "SEED"));
    QVERIFY(says(area, {{"STARTS", valueOf(far)}}, "none of the starts can be used"));
    QVERIFY(says(area, {{"STARTS", valueOf(empty)}}, "has no points"));
    QVERIFY(says(area, {{"SITES", valueOf(stones)}}, "needs 6 sites"));
    QVERIFY(says(area, {{"SITES", valueOf(lost)}}, "has no coordinate reference system"));
    QVERIFY(says(area, {{"LEG_MIN", 60}, {"LEG_MAX", 70}, {"LEGS", 10}}, "legs tried"));
    QVERIFY(says(area, {{"AVOID", QVariantList{valueOf(area)}}}, "room for 0 controls only"));
  }

  void cancelledLeavesNothing() {
    const Layer area = polygons({square});
    Ear ear;
    QObject::connect(&ear, &QgsFeedback::progressChanged, &ear, [&](double) { ear.cancel(); });
    Surroundings surroundings;
    surroundings.ear = &ear;
    surroundings.leave_outputs = true;
    QVariantMap more = lawn;
    more.insert("OUTPUT", file("never.gpkg"));
    run(id, with(area, more), surroundings);
    QVERIFY(!QFile::exists(file("never.gpkg")));
  }
};

BRUSHLINE_HOST_TEST_MAIN(PracticeCourseAlgorithmTest)
#include "practice_course_algorithm_test.moc"
