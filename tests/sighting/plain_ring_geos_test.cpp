// SPDX-License-Identifier: GPL-2.0-or-later
// The quick check of rings beside GEOS, asked through the host: what the first calls plain must be valid to the second.
#include "sighting/plain_ring.h"

#include "support/host_fixture.h"
#include "support/near.h"
#include "support/random.h"

#include <qgslinestring.h>
#include <qgspolygon.h>

#include <algorithm>
#include <cmath>
#include <functional>

using namespace brushline;
using namespace brushline::test;

namespace {

using Ring = std::vector<MapPoint>;

bool isValid(const Ring &ring) {
  QVector<double> x, y;
  for (const MapPoint &point : ring) {
    x << point.x;
    y << point.y;
  }
  return QgsGeometry(new QgsPolygon(new QgsLineString(x, y))).isGeosValid();
}

std::string inWords(const Ring &ring) {
  std::string words;
  char number[64];
  for (const MapPoint &point : ring) {
    std::snprintf(number, sizeof number, "%.17g %.17g, ", point.x, point.y);
    words += number;
  }
  return words;
}

// What came of many rings.
struct Tally {
  int rings = 0, valid = 0, plain = 0;
  int missed = 0;    // valid, but not plain
  std::string wrong; // plain, but not valid

  void add(Ring corners) {
    corners.push_back(corners.front());
    const bool plain = isPlainRing(corners), valid = isValid(corners);
    ++rings;
    this->plain += plain;
    this->valid += valid;
    missed += valid && !plain;
    if (plain && !valid)
      wrong = inWords(corners);
  }
  int invalid() const { return rings - valid; }
  double missedShare() const { return valid > 0 ? double(missed) / valid : 0; }
  void report() const {
    qInfo("%d rings, %d valid, %d of them plain: %.1f percent missed", rings, valid, plain, 100 * missedShare());
  }
};

int whole(Random &random, int least, int most) { return int(random.between(least, most + 1)); }

// --- rings, without their last point ---------------------------------------------------------------------------------

// Any corners on a small grid.
Ring scribble(Random &random, int corners, int grid) {
  Ring ring;
  for (int i = 0; i < corners; ++i)
    ring.push_back({double(whole(random, 0, grid)), double(whole(random, 0, grid))});
  return ring;
}

// Steps of one in eight directions, which come to where they began.
Ring stroll(Random &random, int steps) {
  Ring ring{{0, 0}};
  for (int i = 1; i < steps; ++i)
    ring.push_back({ring.back().x + whole(random, -1, 1), ring.back().y + whole(random, -1, 1)});
  return ring;
}

// Round a centre, each corner farther round than the one before: valid but for rounding. \param wild 0: a circle; 1:
// any distance from the centre.
Ring star(Random &random, int corners, double wild) {
  Ring ring;
  const double first = random.between(0, 2 * Angle::pi);
  for (int i = 0; i < corners; ++i) {
    const double turn = first + 2 * Angle::pi * (i + random.between(-0.4, 0.4)) / corners;
    const double radius = 1000 * (1 - random.between(0, wild));
    ring.push_back({radius * std::cos(turn), radius * std::sin(turn)});
  }
  return ring;
}

// A bay or two, drawn smoothly: the radius swings a few times on the way round.
Ring blob(Random &random, int corners) {
  double size[4], phase[4];
  for (int k = 0; k < 4; ++k) {
    size[k] = random.between(0, 0.3 / (k + 1));
    phase[k] = random.between(0, 2 * Angle::pi);
  }
  Ring ring;
  for (int i = 0; i < corners; ++i) {
    const double turn = 2 * Angle::pi * i / corners;
    double radius = 1000;
    for (int k = 0; k < 4; ++k)
      radius += 1000 * size[k] * std::sin((k + 1) * turn + phase[k]);
    ring.push_back({radius * std::cos(turn), radius * std::sin(turn)});
  }
  return ring;
}

Ring rectangle(Random &random) {
  const double width = random.between(10, 1000), height = random.between(10, 1000);
  const double turn = random.between(0, 2 * Angle::pi), c = std::cos(turn), s = std::sin(turn);
  return {{0, 0}, {width * c, width * s}, {width * c - height * s, width * s + height * c}, {-height * s, height * c}};
}

// --- what may happen to a ring ---------------------------------------------------------------------------------------

// Even numbers, so that the middle of an edge is a point.
Ring onEvenGrid(Ring ring) {
  for (MapPoint &point : ring)
    point = {2 * std::round(point.x / 100), 2 * std::round(point.y / 100)};
  return ring;
}

// Elsewhere: a map's coordinates in metres, or in degrees.
Ring moved(Random &random, Ring ring) {
  const int where = whole(random, 0, 3);
  for (MapPoint &point : ring) {
    if (where == 1)
      point = {point.x + 633000, point.y + 5407000};
    if (where == 2)
      point = {point.x * 0.1 + 633000.3, point.y * 0.1 + 5407060.7};
    if (where == 3)
      point = {point.x * 1e-5 - 55.2, point.y * 1e-5 + 48.8};
  }
  return ring;
}

size_t some(Random &random, const Ring &ring) { return size_t(whole(random, 0, int(ring.size()) - 1)); }
MapPoint next(const Ring &ring, size_t i) { return ring[(i + 1) % ring.size()]; }
MapPoint between(const MapPoint &a, const MapPoint &b, double share) {
  return {a.x + share * (b.x - a.x), a.y + share * (b.y - a.y)};
}
void insertAfter(Ring &ring, size_t i, const Ring &points) {
  ring.insert(ring.begin() + long(i) + 1, points.begin(), points.end());
}

void pointTwice(Random &random, Ring &ring) {
  const size_t i = some(random, ring);
  insertAfter(ring, i, {ring[i]});
}
void cornersMeet(Random &random, Ring &ring) { ring[some(random, ring)] = ring[some(random, ring)]; }
void cornerOnEdge(Random &random, Ring &ring) {
  const size_t edge = some(random, ring);
  ring[some(random, ring)] = between(ring[edge], next(ring, edge), 0.5);
}
void cornerBesideEdge(Random &random, Ring &ring) {
  const size_t edge = some(random, ring);
  MapPoint beside = between(ring[edge], next(ring, edge), random.between(0, 1));
  beside.x += random.between(-1e-9, 1e-9);
  ring[some(random, ring)] = beside;
}
void bowTie(Random &random, Ring &ring) { std::swap(ring[some(random, ring)], ring[some(random, ring)]); }
void onALine(Random &random, Ring &ring) {
  const size_t i = some(random, ring);
  insertAfter(ring, i, {between(ring[i], next(ring, i), 0.5)});
}
void spike(Random &random, Ring &ring) {
  const size_t i = some(random, ring);
  insertAfter(ring, i, {{double(whole(random, -20, 20)), double(whole(random, -20, 20))}, ring[i]});
}
// A little way past a corner and back, on the line of the edge that leads there.
void overlap(Random &random, Ring &ring) {
  const size_t i = some(random, ring);
  const MapPoint from = ring[i], to = next(ring, i);
  insertAfter(ring, i, {between(from, to, random.between(1, 2)), between(from, to, random.between(0, 1))});
}
// Out and back by a way that is ever so little beside the first.
void needle(Random &random, Ring &ring) {
  const size_t i = some(random, ring);
  const double width = std::pow(10, random.between(-12, -2));
  const MapPoint tip{ring[i].x * random.between(0.5, 2), ring[i].y * random.between(0.5, 2)};
  insertAfter(ring, i, {tip, {ring[i].x + width * random.between(-1, 1), ring[i].y + width * random.between(-1, 1)}});
}

using Spoil = std::function<void(Random &, Ring &)>;
using Make = std::function<Ring(Random &)>;

} // namespace

Q_DECLARE_METATYPE(Spoil)
Q_DECLARE_METATYPE(Make)

class PlainRingGeosTest : public QObject {
  Q_OBJECT
private slots:
  void everySmallRing_data();
  void everySmallRing();
  void spoiledRings_data();
  void spoiledRings();
  void usualRings_data();
  void usualRings();
  void coverOfTheSample();
  void toldOfALayer();
};

void PlainRingGeosTest::everySmallRing_data() {
  QTest::addColumn<int>("corners");
  QTest::addColumn<int>("grid");
  QTest::newRow("triangles, 4 by 4") << 3 << 4;
  QTest::newRow("four corners, 4 by 4") << 4 << 4;
  QTest::newRow("five corners, 3 by 3") << 5 << 3;
}

// Each ring there is on a grid of a few points: all touching, folding, crossing and repeating that so few corners can
// do.
void PlainRingGeosTest::everySmallRing() {
  QFETCH(int, corners);
  QFETCH(int, grid);
  const int points = grid * grid;
  Tally tally;
  for (int code = 0; code < int(std::pow(points, corners)); ++code) {
    Ring ring;
    for (int rest = code; int(ring.size()) < corners; rest /= points)
      ring.push_back({double(rest % points % grid), double(rest % points / grid)});
    tally.add(ring);
    VERIFY_AT(tally.wrong.empty(), tally.wrong);
  }
  tally.report();
  QVERIFY(tally.plain >= 400 && tally.invalid() >= 500);
}

void PlainRingGeosTest::spoiledRings_data() {
  QTest::addColumn<Spoil>("spoil");
  QTest::addColumn<int>("leastPlain"); // of so many at least the test is one
  QTest::addColumn<int>("leastInvalid");
  const auto row = [](const char *name, const Spoil &spoil, int leastPlain, int leastInvalid) {
    QTest::newRow(name) << spoil << leastPlain << leastInvalid;
  };
  row(
      "nothing", [](Random &, Ring &) {}, 10000, 0);
  row(
      "scribble", [](Random &random, Ring &ring) { ring = scribble(random, whole(random, 3, 8), 5); }, 1000, 5000);
  row(
      "stroll", [](Random &random, Ring &ring) { ring = stroll(random, whole(random, 3, 12)); }, 100, 5000);
  row("point twice", pointTwice, 0, 0);
  row("corner on a line", onALine, 10000, 0);
  row("corners meet", cornersMeet, 1000, 5000);
  row("corner on an edge", cornerOnEdge, 1000, 5000);
  row("corner beside an edge", cornerBesideEdge, 1000, 3000);
  row("bow tie", bowTie, 1000, 5000);
  row("spike", spike, 0, 15000);
  row("overlap", overlap, 0, 10000);
  row("needle", needle, 100, 5000);
}

// Rings that something happened to, many of them on whole numbers, so that points meet and lie on edges exactly.
void PlainRingGeosTest::spoiledRings() {
  QFETCH(Spoil, spoil);
  QFETCH(int, leastPlain);
  QFETCH(int, leastInvalid);
  Random random(131);
  Tally tally;
  for (int i = 0; i < 20000; ++i) {
    Ring ring = star(random, whole(random, 3, 9), 0.7);
    if (random.between(0, 1) < 0.7)
      ring = onEvenGrid(ring);
    spoil(random, ring);
    tally.add(moved(random, ring));
    VERIFY_AT(tally.wrong.empty(), tally.wrong);
  }
  tally.report();
  QVERIFY(tally.plain >= leastPlain && tally.invalid() >= leastInvalid);
}

void PlainRingGeosTest::usualRings_data() {
  QTest::addColumn<Make>("make");
  const auto row = [](const char *name, const Make &make) { QTest::newRow(name) << make; };
  row("rectangles", rectangle);
  row("triangles", [](Random &random) { return star(random, 3, 0.7); });
  row("round, 4 to 9 corners", [](Random &random) { return star(random, whole(random, 4, 9), 0.2); });
  row("rough, 4 to 9 corners", [](Random &random) { return star(random, whole(random, 4, 9), 0.6); });
  row("round, 10 to 60 corners", [](Random &random) { return star(random, whole(random, 10, 60), 0.05); });
  row("rough, 10 to 60 corners", [](Random &random) { return star(random, whole(random, 10, 60), 0.4); });
  row("with bays, 8 to 20 corners", [](Random &random) { return blob(random, whole(random, 8, 20)); });
  row("with bays, 20 to 64 corners", [](Random &random) { return blob(random, whole(random, 20, 64)); });
}

// Shapes as people draw them: of valid rings fewer than half may need the closer look, or the quick one is not worth
// it.
void PlainRingGeosTest::usualRings() {
  QFETCH(Make, make);
  Random random(132);
  Tally tally;
  for (int i = 0; i < 5000; ++i) {
    tally.add(moved(random, make(random)));
    VERIFY_AT(tally.wrong.empty(), tally.wrong);
  }
  tally.report();
  QVERIFY(tally.valid >= 4900);
  VERIFY_AT(tally.missedShare() < 0.5, std::to_string(tally.missedShare()));
}

// All of it; what has holes or more edges than are looked at is not plain.
void PlainRingGeosTest::coverOfTheSample() {
  QTemporaryDir folder; // lest reading it leaves files beside it
  const QString path = folder.filePath("sample.gpkg");
  QVERIFY(QFile::copy(QStringLiteral(BRUSHLINE_SOURCE_DIR "/sample-project/sample.gpkg"), path));
  int polygons = 0, plain = 0;
  for (const OutputRow &row : read(QgsVectorLayer(path + "|layername=cover", "cover", "ogr")).rows) {
    ++polygons;
    QVERIFY(row.geometry.isGeosValid());
    Ring ring;
    for (auto corner = row.geometry.vertices_begin(); corner != row.geometry.vertices_end(); ++corner)
      ring.push_back({(*corner).x(), (*corner).y()});
    plain += row.geometry.constGet()->ringCount() == 1 && isPlainRing(ring);
  }
  qInfo("%d polygons, %d plain", polygons, plain);
  QVERIFY(polygons > 300);
  VERIFY_AT(plain > polygons / 2, std::to_string(plain));
}

// Which polygons of a layer are told as not valid: what a quick look at their rings leaves open is asked of GEOS. Drawn
// on paper; the validity of each by OGC 06-103r4, "Simple Features", 6.1.11 and 6.1.14, from memory.
void PlainRingGeosTest::toldOfALayer() {
  const QStringList valid = {"POLYGON((0 0,10 0,10 10,0 10,0 0))",                                 // plain
                             "POLYGON((0 -1,1 0,0 1,-1 0,0 -1))",                                  // boxes that meet
                             "POLYGON((0 0,10 0,10 0,10 10,0 10,0 0))",                            // a point twice
                             "POLYGON((0 0,10 0,10 10,0 10,0 0),(2 2,2 8,8 8,8 2,2 2))",           // a hole
                             "MULTIPOLYGON(((0 0,10 0,10 10,0 10,0 0)),((20 0,30 0,30 9,20 0)))"}; // two parts
  const QStringList invalid = {"POLYGON((0 0,10 10,10 0,0 10,0 0))",                               // a bow tie
                               "POLYGON((0 0,10 0,10 10,5 0,0 10,0 0))",                        // a corner on an edge
                               "POLYGON((0 0,10 0,5 0,0 0))",                                   // flat
                               "POLYGON((0 0,10 0,10 10,0 10,0 0),(20 2,20 8,28 8,28 2,20 2))", // a hole outside
                               "MULTIPOLYGON(((0 0,10 0,10 10,0 10,0 0)),((5 5,30 5,30 9,5 5)))"}; // parts that overlap
  const Layer routes =
      layer("routes", "LineString", "EPSG:32621", {}, {{wkt("LINESTRING(400000 5300000,400300 5300000)"), {}}});
  for (bool spoiled : {true, false}) {
    std::vector<Row> rows;
    for (const QString &text : spoiled ? valid + invalid : valid) {
      QgsGeometry stand = wkt(text);
      stand.translate(400000, 5300000);
      rows.push_back({stand, {"brush"}});
    }
    const Layer stands = layer("stands", "MultiPolygon", "EPSG:32621", {field("class", FieldType::Text)}, rows);
    const Outcome outcome = run("brushline:annotatelegs", {{"INPUT", valueOf(routes)},
                                                           {"DATE", QDate(2026, 6, 15)},
                                                           {"COVER", valueOf(stands)},
                                                           {"COVER_CLASS", "class"},
                                                           {"OUTPUT", "TEMPORARY_OUTPUT"}});
    QVERIFY2(outcome.ok, qPrintable(outcome.said()));
    const QStringList told = outcome.warnings.filter("not valid");
    QCOMPARE(told.size(), spoiled ? 1 : 0);
    if (spoiled)
      QVERIFY2(told.front().startsWith("COVER: 5 polygon(s) of layer “stands”"), qPrintable(told.front()));
  }
}

BRUSHLINE_HOST_TEST_MAIN(PlainRingGeosTest)
#include "plain_ring_geos_test.moc"
