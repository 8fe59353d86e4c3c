// SPDX-License-Identifier: GPL-2.0-or-later
// What algorithms draw across the 180th meridian lies beside what they were given, and their numbers are those of a map
// that is not cut there: Mercator about 150 degrees east (EPSG:3832).
#include "records/walk_by_chance.h"
#include "support/host_fixture.h"
#include "support/near.h"

#include <qgscoordinatetransform.h>

#include <algorithm>
#include <cmath>

using namespace brushline;
using namespace brushline::test;

namespace {
// Thousandths of a degree of longitude and latitude, some 106 and 111 m, from the middle at 16.8 south.
struct At {
  double east, north;
};
const double middleLatitude = -16.8;

// Layers about a meridian, 180 or -180, on which longitudes go on as they do on a map.
class Scene {
public:
  Scene(const QString &system, double meridian) : mSystem(system), mMeridian(meridian) {}

  const QString &system() const { return mSystem; }
  // Web Mercator is that of a sphere: EPSG guidance note 7-2, method 1024; from memory.
  QgsPointXY point(const At &at) const {
    const Angle longitude = Angle::degrees(mMeridian + at.east / 1000),
                latitude = Angle::degrees(middleLatitude + at.north / 1000);
    if (mSystem == QLatin1String("EPSG:3857"))
      return {6378137 * longitude.radians(), 6378137 * std::asinh(std::tan(latitude.radians()))};
    const QgsPointXY place(longitude.degrees(), latitude.degrees());
    const QgsCoordinateReferenceSystem crs(mSystem);
    if (crs.isGeographic())
      return place;
    return QgsCoordinateTransform(QgsCoordinateReferenceSystem("EPSG:4326"), crs, QgsCoordinateTransformContext())
        .transform(place);
  }
  // As receivers and exchange files count: -180 to 180.
  QgsPointXY folded(const At &at) const {
    QgsPointXY result = point(at);
    if (mSystem == QLatin1String("EPSG:3857"))
      result.setX(std::remainder(result.x(), 2 * Angle::pi * 6378137));
    else if (mSystem != QLatin1String("EPSG:3832"))
      result.setX(std::remainder(result.x(), 360));
    return result;
  }
  QgsRectangle box() const { return QgsRectangle(point({-20, -20}), point({20, 20})); }
  QString text(const QgsPointXY &at) const {
    return QStringLiteral("%1,%2 [%3]").arg(at.x(), 0, 'f', 10).arg(at.y(), 0, 'f', 10).arg(mSystem);
  }

  QVariant line(const QString &name, const std::vector<At> &way) {
    return keep(name, "LineString", {QgsGeometry::fromPolylineXY(drawn(way))});
  }
  QVariant polygon(const QString &name, const std::vector<At> &ring) {
    return keep(name, "Polygon", {QgsGeometry::fromPolygonXY({drawn(ring)})});
  }
  QVariant points(const QString &name, const std::vector<At> &all) {
    std::vector<QgsGeometry> geometries;
    for (const At &at : all)
      geometries.push_back(QgsGeometry::fromPointXY(folded(at)));
    return keep(name, "Point", geometries);
  }
  QVariant notes(const std::vector<QVariantList> &rows) {
    mLayers.push_back(table("notes",
                            {field("route", FieldType::Text), field("n", FieldType::Integer),
                             field("brg", FieldType::Text), field("count", FieldType::Real)},
                            rows));
    return valueOf(mLayers.back());
  }

private:
  QgsPolylineXY drawn(const std::vector<At> &way) const {
    QgsPolylineXY points;
    for (const At &at : way)
      points << point(at);
    return points;
  }
  QVariant keep(const QString &name, const QString &type, const std::vector<QgsGeometry> &geometries) {
    std::vector<Row> rows;
    for (const QgsGeometry &geometry : geometries)
      rows.push_back({geometry, {name, int(rows.size())}});
    mLayers.push_back(
        layer(name, type, mSystem, {field("name", FieldType::Text), field("n", FieldType::Integer)}, rows));
    return valueOf(mLayers.back());
  }

  QString mSystem;
  double mMeridian;
  std::vector<Layer> mLayers;
};

const std::vector<At> course{{-3, 0}, {3, -1}, {-0.3, -6}, {-3, -6.5}}, // it ends a leg some 30 m from the meridian
    pond{{-0.4, 0}, {0.4, 0}, {0.4, -0.8}, {-0.4, -0.8}, {-0.4, 0}};
const std::vector<XY> plan{{0, 0}, {180, 60}, {260, 240}, {100, 330}, {60, 180}, {-120, 150}, {-60, 20}}; // metres
const Place origin{Angle::degrees(middleLatitude), Angle::degrees(179.9995)};

At atOf(const Place &place) {
  return {(place.longitude - Angle::degrees(180)).signedTurn().degrees() * 1000,
          (place.latitude.degrees() - middleLatitude) * 1000};
}

struct Case {
  const char *algorithm;
  QStringList outputs;
  bool numbers; // do not hang on the system of what is given
  bool folded;  // what is given has longitudes from -180 to 180, so it starts on the western side
  std::function<QVariantMap(Scene &)> parameters;
};

QVariantMap routes(Scene &scene, QVariantMap more) {
  more.insert("INPUT", scene.line("routes", course));
  more.insert("GRID_CRS", "EPSG:32760");
  return more;
}

std::vector<Case> cases() {
  return {
      {"annotatelegs",
       {"OUTPUT", "MARKS", "DRIFT"},
       true,
       false,
       [](Scene &scene) {
         return routes(scene, {{"DIRECTION", 2}});
       }},
      {"annotatelegs",
       {"OUTPUT", "MARKS", "DRIFT"},
       true,
       true,
       [](Scene &scene) {
         return QVariantMap{{"INPUT", scene.points("turns", course)}, {"ORDER_FIELD", "n"}, {"GRID_CRS", "EPSG:32760"}};
       }},
      {"detourlegs",
       {"OUTPUT"},
       true,
       false,
       [](Scene &scene) {
         return routes(scene, {{"OBSTACLES", scene.polygon("pond", pond)}});
       }},
      {"choosemarks",
       {"OUTPUT", "SIGHTINGS", "GAPS"},
       true,
       false,
       [](Scene &scene) {
         return routes(scene, {{"CANDIDATES", scene.points("trees", {{-1.5, -0.3}, {0.4, -0.55}, {2, -0.8}})}});
       }},
      {"featuresmet",
       {"OUTPUT"},
       true,
       false,
       [](Scene &scene) {
         return routes(scene, {{"FEATURES", QVariantList{scene.line("brook", {{0.5, 2}, {0.5, -2.5}}),
                                                         scene.line("trail", {{-0.5, 2}, {-0.5, -2.5}})}}});
       }},
      {"checkhazards",
       {"OUTPUT"},
       true,
       false,
       [](Scene &scene) {
         return routes(scene, {{"HAZARDS", QVariantList{scene.polygon("pond", pond)}}});
       }},
      {"throughcover",
       {"OUTPUT"},
       true,
       true,
       [](Scene &scene) {
         return QVariantMap{{"STARTS", scene.points("starts", {{-3, 0}})}, {"ENDS", scene.points("ends", {{3, -1}})}};
       }},
      {"aimoff",
       {"OUTPUT"},
       true,
       true,
       [](Scene &scene) {
         return QVariantMap{{"STARTS", scene.points("starts", {{-2, 0}})},
                            {"LINES", scene.line("trail", {{2, 8}, {2, -8}})},
                            {"DESTINATIONS", scene.points("huts", {{2, 0}})},
                            {"SIDE", 1},
                            {"GRID_CRS", "EPSG:32760"}};
       }},
      {"practicecourse",
       {"OUTPUT", "CONTROLS"},
       false,
       false,
       [](Scene &scene) {
         return QVariantMap{{"AREA", scene.polygon("lawn", pond)}, {"LEG_MIN", 15}, {"LEG_MAX", 30}};
       }},
      {"comparetrack",
       {"OUTPUT", "PROFILE"},
       true,
       false,
       [](Scene &scene) {
         std::vector<At> meant, walked;
         for (const XY &turn : plan)
           meant.push_back(atOf(placeOf(turn, origin)));
         WalkByChance::Errors errors;
         errors.fix = 1;
         errors.leg_brg = 1;
         for (const TrackFix &fix : fixesOf(WalkByChance(1).walk(plan, errors), origin))
           walked.push_back(atOf(fix.place));
         return QVariantMap{{"INPUT", scene.line("routes", meant)},
                            {"TRACKS", scene.points("log", walked)},
                            {"TRACK_FIELD", "name"},
                            {"TRACK_ORDER", "n"}};
       }},
      {"plotlegs",
       {"OUTPUT"},
       true,
       true,
       [](Scene &scene) {
         return QVariantMap{{"INPUT", scene.notes({{"r", 1, "95", 400}, {"r", 2, "200", 300}, {"r", 3, "280", 500}})},
                            {"ROUTE_FIELD", "route"},
                            {"ORDER_FIELD", "n"},
                            {"BEARING_FIELD", "brg"},
                            {"DISTANCE_FIELD", "count"},
                            {"START", scene.text(scene.folded({-2, 0}))},
                            {"NORTH", 1},
                            {"GRID_CRS", "EPSG:32760"}};
       }},
  };
}

Outcome drawn(const Case &one, Scene &scene) {
  QVariantMap parameters = one.parameters(scene);
  parameters.insert("DATE", "2026-06-01");
  for (const QString &output : one.outputs)
    parameters.insert(output, "memory:");
  return run(QStringLiteral("brushline:") + QLatin1String(one.algorithm), parameters);
}

// What is not beside the middle of a scene; empty: nothing.
QString astray(const Output &output, const QgsRectangle &box) {
  if (output.rows.empty())
    return QStringLiteral("no rows");
  for (const OutputRow &row : output.rows)
    if (row.geometry.isNull() || !box.contains(row.geometry.boundingBox()))
      return row.geometry.asWkt(6);
  return QString();
}

// A value that differs; empty: none. Places differ by the rounding of their transforms, 1e-8 m.
QString different(const Output &a, const Output &b) {
  if (a.rows.size() != b.rows.size())
    return QStringLiteral("%1 rows and %2").arg(a.rows.size()).arg(b.rows.size());
  for (size_t i = 0; i < a.rows.size(); ++i)
    for (int field = 0; field < a.fields.size(); ++field) {
      const QVariant left = a.rows[i].values.value(a.fields.at(field).name()),
                     right = b.rows[i].values.value(a.fields.at(field).name());
      bool same = left == right;
      if (!same && !left.isNull() && !right.isNull() && left.type() == QVariant::Double)
        same = std::abs(left.toDouble() - right.toDouble()) <= 1e-5;
      if (!same)
        return QStringLiteral("row %1, %2: %3 and %4")
            .arg(QString::number(i), a.fields.at(field).name(), left.toString(), right.toString());
    }
  return QString();
}

Outcome annotatedBothWays(const Layer &routes) {
  return run("brushline:annotatelegs", {{"INPUT", valueOf(routes)},
                                        {"DATE", "2026-06-01"},
                                        {"DIRECTION", 2},
                                        {"OUTPUT", "memory:"},
                                        {"MARKS", "memory:"},
                                        {"DRIFT", "memory:"}});
}
} // namespace

class AntimeridianTest : public QObject {
  Q_OBJECT

private slots:
  void besideWhatIsGiven_data() {
    QTest::addColumn<QString>("system");
    QTest::addColumn<double>("meridian");
    QTest::newRow("longitudes") << "EPSG:4326" << 180.0;
    QTest::newRow("longitudes, a turn further") << "EPSG:4326" << -180.0;
    QTest::newRow("longitudes of another datum") << "EPSG:4258" << 180.0;
    QTest::newRow("map of the world") << "EPSG:3857" << 180.0;
  }

  void besideWhatIsGiven() {
    QFETCH(QString, system);
    QFETCH(double, meridian);
    for (const Case &one : cases()) {
      Scene scene(system, meridian), uncut("EPSG:3832", 180);
      const Outcome outcome = drawn(one, scene), same = drawn(one, uncut);
      QVERIFY2(outcome.ok && same.ok, qPrintable(one.algorithm + outcome.said() + same.said()));
      const QgsRectangle box = one.folded ? Scene(system, 180).box() : scene.box();
      for (const QString &key : one.outputs) {
        const QString where = QStringLiteral("%1 %2: ").arg(QLatin1String(one.algorithm), key);
        const QString off = astray(outcome.output(key.toLatin1()), box);
        QVERIFY2(off.isEmpty(), qPrintable(where + off));
        const QString uncutOff = astray(same.output(key.toLatin1()), uncut.box());
        QVERIFY2(uncutOff.isEmpty(), qPrintable(where + uncutOff));
        if (!one.numbers)
          continue;
        const QString numbers = different(outcome.output(key.toLatin1()), same.output(key.toLatin1()));
        QVERIFY2(numbers.isEmpty(), qPrintable(where + numbers));
      }
    }
  }

  // An extent of longitudes that go on, on maps that do not and on one that is cut there.
  void northLines() {
    for (const char *system : {"EPSG:3857", "EPSG:3832", "EPSG:32760"}) {
      const Outcome outcome = run("brushline:northlines", {{"EXTENT", "179.99,180.01,-16.81,-16.79 [EPSG:4326]"},
                                                           {"GRID_CRS", system},
                                                           {"SPACING", 250},
                                                           {"DATE", "2026-06-01"},
                                                           {"OUTPUT", "memory:"}});
      QVERIFY2(outcome.ok, qPrintable(system + outcome.said()));
      // 2.1 km across, and a few lines more on either side since they run aslant.
      QVERIFY2(outcome.rows().size() >= 8 && outcome.rows().size() <= 14, system);
      const QString off = astray(outcome.output(), Scene(system, 180).box());
      QVERIFY2(off.isEmpty(), qPrintable(system + off));
    }
  }

  // A course drawn from 179.997 to -179.997 goes round the Earth on the map, and its legs are its own; what is made of
  // them lies where each leg starts.
  void drawnRoundTheEarth() {
    const Layer torn = layer("routes", "LineString", "EPSG:4326", {field("name", FieldType::Text)},
                             {{wkt("LINESTRING(179.997 -16.8,-179.997 -16.801)"), {"torn"}}});
    const Outcome outcome = annotatedBothWays(torn);
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(outcome.rows().size(), size_t(2));
    for (const OutputRow &row : outcome.rows()) {
      QVERIFY(row.geometry.boundingBox().width() > 359);
      QVERIFY(row.number("dist_m") > 640 && row.number("dist_m") < 660);
    }
    for (const char *key : {"MARKS", "DRIFT"})
      for (const OutputRow &row : outcome.rows(key)) {
        const double meridian = row.text("direction") == QLatin1String("back") ? -180 : 180;
        const QgsRectangle box = row.geometry.boundingBox();
        QVERIFY2(box.xMinimum() > meridian - 0.005 && box.xMaximum() < meridian + 0.005, qPrintable(box.toString()));
      }
  }

  // Bearings from the north of a grid that is cut between the ends of a leg: in Mercator's, due east is 90 and due
  // west 270, by its definition.
  void gridBearings() {
    for (const QString system : {"EPSG:3857", "EPSG:4326"}) {
      Scene scene(system, 180);
      const QVariant turns = scene.points("turns", {{-3, 0}, {3, 0}, {-3, 0}});
      const Outcome outcome = run("brushline:annotatelegs", {{"INPUT", turns},
                                                             {"ORDER_FIELD", "n"},
                                                             {"GRID_CRS", "EPSG:3857"},
                                                             {"NORTH", 2},
                                                             {"DATE", "2026-06-01"},
                                                             {"OUTPUT", "memory:"}});
      QVERIFY2(outcome.ok, qPrintable(outcome.said()));
      QCOMPARE(outcome.rows().size(), size_t(2));
      for (size_t i = 0; i < 2; ++i) {
        VERIFY_NEAR(outcome.rows()[i].number("grid_brg"), i == 0 ? 90 : 270, 1e-6, system.toStdString());
        QCOMPARE(outcome.rows()[i].number("dial"), i == 0 ? 90.0 : 270.0);
      }
    }
  }

  void atThePole() {
    const Layer over =
        layer("routes", "LineString", "EPSG:4326", {field("name", FieldType::Text)},
              {{wkt("LINESTRING(30 -89.997,-150 -89.997)"), {"over"}}, {wkt("LINESTRING(30 -89.997,0 -90)"), {"to"}}});
    const Outcome outcome = annotatedBothWays(over);
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    QCOMPARE(outcome.rows().size(), size_t(4));
    QCOMPARE(outcome.rows("DRIFT").size(), size_t(4));
    for (const char *key : {"OUTPUT", "MARKS", "DRIFT"})
      for (const OutputRow &row : outcome.rows(key)) {
        QVERIFY(!row.geometry.isNull());
        const QgsRectangle box = row.geometry.boundingBox();
        QVERIFY2(box.isFinite() && box.yMinimum() >= -90, qPrintable(box.toString()));
      }
  }
};

BRUSHLINE_HOST_TEST_MAIN(AntimeridianTest)
#include "antimeridian_test.moc"
