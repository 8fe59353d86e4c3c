// SPDX-License-Identifier: GPL-2.0-or-later
#include "sighting/cover_source.h"

#include "shared/geodesic.h"
#include "sighting/extinction.h"
#include "support/near.h"
#include "support/random.h"

#include <algorithm>
#include <cstdint>
#include <limits>
#include <set>
#include <utility>

using namespace brushline;
using namespace brushline::test;

class CoverSourceTest : public QObject {
  Q_OBJECT
private slots:
  void nothingGiven();
  void patches();
  void codes();
  void sights();
  void precedence();
  void overlapping();
  void unknownCodes();
  void badSights();
  void projectionEnds();
  void projectionEndsForPatches();
  void antimeridianPatches_data();
  void antimeridianPatches();
  void antimeridianRasters();
  void longLineFollowsTheGeodesic();
  void noSlivers();
  void againstAskingPlaceByPlace();
  void beyondTheEnd();
  void asLongAsTheCoverIsKnown_data();
  void asLongAsTheCoverIsKnown();
};

namespace {

constexpr double missing = std::numeric_limits<double>::quiet_NaN();
constexpr double metresPerDegree = 111319.4907932736; // on the equator: the Earth's radius of WGS84 by a degree

Place place(double latitude, double longitude) { return {Angle::degrees(latitude), Angle::degrees(longitude)}; }
TrueBearing bearing(double degrees) { return TrueBearing(Angle::degrees(degrees)); }

// Made-up map coordinates: metres along the equator from a meridian, and up from it, near enough.
Project metresFrom(double meridian) {
  return [meridian](std::vector<double> &x, std::vector<double> &y) {
    for (size_t i = 0; i < x.size(); ++i) {
      x[i] = (x[i] - meridian) * metresPerDegree;
      y[i] *= metresPerDegree;
    }
  };
}

void asDegrees(std::vector<double> &, std::vector<double> &) {}

constexpr double origin = 20; // degrees east
const Place start = place(0, origin);
const TrueBearing east = bearing(90); // along the equator, a geodesic

CoverPatch box(int cover, double left, double right, double bottom = -1000, double top = 1000) {
  return {{{{left, bottom}, {right, bottom}, {right, top}, {left, top}}}, cover};
}

std::shared_ptr<const CoverMap> mapOf(std::vector<CoverPatch> patches) {
  return std::make_shared<CoverMap>(std::move(patches));
}

// Cells of 10 m, one row after the other from the line y = 50 down; the first begins at x = 0.
TiledGrid row(std::vector<double> cells) {
  const GridShape shape{0, 50, 10, 100, int64_t(cells.size()), 1};
  return {shape, [cells](const CellWindow &window) {
            return std::vector<float>(cells.begin() + window.column, cells.begin() + window.column + window.columns);
          }};
}

// Classes 0 to 3 with these extinctions, 1/m.
const std::vector<double> extinctions = {0.1, 0.2, 0.3, 0.4};
CoverSource source() { return CoverSource(extinctions); }

// The code 10 is class 0, 20 class 1, ...
int classOf(long code) { return code % 10 == 0 && code >= 10 && code <= 40 ? int(code / 10 - 1) : -1; }

// "100:1/0.2 250:-/- 300:2*/0.3": ends to the millimetre, classes, overlaps and extinctions.
QString text(const std::vector<CoverPiece> &pieces) {
  QStringList words;
  for (const CoverPiece &piece : pieces)
    words << QStringLiteral("%1:%2%3/%4")
                 .arg(QString::number(std::round(piece.to_m * 1000) / 1000, 'g', 10),
                      piece.cover < 0 ? QStringLiteral("-") : QString::number(piece.cover),
                      piece.overlapping ? QStringLiteral("*") : QString(),
                      piece.extinction ? QString::number(*piece.extinction, 'g', 6) : QStringLiteral("-"));
  return words.join(QLatin1Char(' '));
}

QString along(CoverSource &source, double length, const Place &from = start, TrueBearing departure = east) {
  return text(source.along(from, departure, Length::metres(length)));
}

// What the interface promises of any answer.
bool isWhole(const std::vector<CoverPiece> &pieces, double length) {
  if (pieces.empty() || pieces.back().to_m != length)
    return false;
  double before = 0;
  for (size_t i = 0; i < pieces.size(); ++i) {
    if (!(pieces[i].to_m > before))
      return false;
    before = pieces[i].to_m;
    if (i > 0 && pieces[i].cover == pieces[i - 1].cover && pieces[i].extinction == pieces[i - 1].extinction &&
        pieces[i].overlapping == pieces[i - 1].overlapping)
      return false;
  }
  return true;
}
} // namespace

void CoverSourceTest::nothingGiven() {
  CoverSource empty = source();
  QCOMPARE(along(empty, 300), QStringLiteral("300:-/-"));
  QVERIFY(empty.unknownCodes().empty() && !empty.metBadSights());
}

// Computed by hand, as all that follow.
void CoverSourceTest::patches() {
  CoverSource cover = source();
  cover.setPatches(mapOf({box(1, 100, 200), box(3, 250, 5000)}), metresFrom(origin));
  QCOMPARE(along(cover, 300), QStringLiteral("100:-/- 200:1/0.2 250:-/- 300:3/0.4"));
  QCOMPARE(along(cover, 90), QStringLiteral("90:-/-"));
  QCOMPARE(along(cover, 0.5), QStringLiteral("0.5:-/-"));
  // Over several chords: the same cover on and on is one piece.
  QCOMPARE(along(cover, 7300), QStringLiteral("100:-/- 200:1/0.2 250:-/- 5000:3/0.4 7300:-/-"));
  // The other way.
  const Place end = geodesicDestination(start, east, Length::metres(300));
  QCOMPARE(along(cover, 300, end, bearing(270)), QStringLiteral("50:3/0.4 100:-/- 200:1/0.2 300:-/-"));
}

void CoverSourceTest::codes() {
  CoverSource cover = source();
  cover.setCodes(row({10, 10, 20, missing, 40, 40}), metresFrom(origin), classOf);
  QCOMPARE(along(cover, 90), QStringLiteral("20:0/0.1 30:1/0.2 40:-/- 60:3/0.4 90:-/-"));
  QVERIFY(cover.unknownCodes().empty()); // no data is no code
  // A raster of numbers with a point holds whole ones all the same.
  CoverSource rounded = source();
  rounded.setCodes(row({9.9999, 20.0001}), metresFrom(origin), classOf);
  QCOMPARE(along(rounded, 20), QStringLiteral("10:0/0.1 20:1/0.2"));
}

// ln 2 / 50 m.
void CoverSourceTest::sights() {
  CoverSource cover = source();
  cover.setSights(row({50, 50, missing, 25}), metresFrom(origin));
  QCOMPARE(along(cover, 50), QStringLiteral("20:-/0.0138629 30:-/- 40:-/0.0277259 50:-/-"));
  QVERIFY(!cover.metBadSights());
}

// Sights before all; the class is that of the patch, and of the code where no patch lies.
void CoverSourceTest::precedence() {
  const auto withAll = [](bool usePatches, bool useCodes, bool useSights) {
    CoverSource cover = source();
    if (usePatches)
      cover.setPatches(mapOf({box(1, 20, 60)}), metresFrom(origin));
    if (useCodes)
      cover.setCodes(row({40, 40, 40, 40, 30, 30, 30, 30, missing}), metresFrom(origin), classOf);
    if (useSights)
      cover.setSights(row({missing, 100, 100, missing, missing, missing, missing, 100, 100}), metresFrom(origin));
    return cover;
  };
  CoverSource all = withAll(true, true, true);
  QCOMPARE(along(all, 100), QStringLiteral("10:3/0.4 20:3/0.00693147 30:1/0.00693147 60:1/0.2 70:2/0.3 80:2/0.00693147 "
                                           "90:-/0.00693147 100:-/-"));
  CoverSource land = withAll(true, true, false);
  QCOMPARE(along(land, 100), QStringLiteral("20:3/0.4 60:1/0.2 80:2/0.3 100:-/-"));
  CoverSource drawn = withAll(true, false, true);
  QCOMPARE(along(drawn, 100), QStringLiteral("10:-/- 20:-/0.00693147 30:1/0.00693147 60:1/0.2 70:-/- 90:-/0.00693147 "
                                             "100:-/-"));
  CoverSource rasters = withAll(false, true, true);
  QCOMPARE(along(rasters, 100), QStringLiteral("10:3/0.4 30:3/0.00693147 40:3/0.4 70:2/0.3 80:2/0.00693147 "
                                               "90:-/0.00693147 100:-/-"));
}

void CoverSourceTest::overlapping() {
  CoverSource cover = source();
  cover.setPatches(mapOf({box(1, 0, 60), box(2, 40, 100)}), metresFrom(origin));
  cover.setSights(row({missing, missing, missing, missing, missing, 80}), metresFrom(origin));
  QCOMPARE(along(cover, 100), QStringLiteral("40:1/0.2 50:1*/0.2 60:1*/0.00866434 100:2/0.3"));
}

// Each is kept once, and nothing is known there.
void CoverSourceTest::unknownCodes() {
  CoverSource cover = source();
  cover.setCodes(row({10, 77, 77, 20, 0, -5, 77, 255}), metresFrom(origin), classOf);
  cover.setPatches(mapOf({box(1, 65, 90)}), metresFrom(origin));
  QVERIFY(cover.unknownCodes().empty()); // none met so far
  QCOMPARE(along(cover, 35), QStringLiteral("10:0/0.1 30:-/- 35:1/0.2"));
  QVERIFY((cover.unknownCodes() == std::set<long>{77}));
  QCOMPARE(along(cover, 80), QStringLiteral("10:0/0.1 30:-/- 40:1/0.2 65:-/- 80:1/0.2"));
  QVERIFY(cover.unknownCodes().count(0) == 1 && cover.unknownCodes().count(-5) == 1);
  QVERIFY(cover.unknownCodes().count(10) == 0 && cover.unknownCodes().count(20) == 0);
}

// Sights of 0 and less are no data, and are told.
void CoverSourceTest::badSights() {
  for (double bad : {0.0, -1.0, -9999.0}) {
    CoverSource cover = source();
    cover.setPatches(mapOf({box(1, 0, 25)}), metresFrom(origin));
    cover.setSights(row({50, bad, bad, 50}), metresFrom(origin));
    QCOMPARE(along(cover, 9), QStringLiteral("9:1/0.0138629"));
    QVERIFY(!cover.metBadSights()); // not met so far
    QCOMPARE(along(cover, 39), QStringLiteral("10:1/0.0138629 25:1/0.2 30:-/- 39:-/0.0138629"));
    QVERIFY(cover.metBadSights());
  }
}

// Where the projection does not reach, nothing is known; from where it does, all is as it was.
void CoverSourceTest::projectionEnds() {
  const Project halfWay = [](std::vector<double> &x, std::vector<double> &y) {
    metresFrom(origin)(x, y);
    for (size_t i = 0; i < x.size(); ++i)
      if (x[i] > 2100)
        x[i] = y[i] = missing;
  };
  CoverSource cover = source();
  const std::vector<double> all(1000, 10);
  cover.setCodes(row(all), halfWay, classOf);
  cover.setSights(row(std::vector<double>(1000, 50)), halfWay);
  const auto pieces = cover.along(start, east, Length::metres(5000)); // chords of 1 km
  QVERIFY(isWhole(pieces, 5000));
  QCOMPARE(text(pieces), QStringLiteral("2000:0/0.0138629 5000:-/-"));
  QVERIFY(cover.unknownCodes().empty() && !cover.metBadSights());
  // Nowhere at all.
  CoverSource lost = source();
  const Project nowhere = [](std::vector<double> &x, std::vector<double> &y) {
    std::fill(x.begin(), x.end(), missing);
    std::fill(y.begin(), y.end(), missing);
  };
  lost.setPatches(mapOf({box(1, -1e9, 1e9)}), nowhere);
  lost.setCodes(row(all), nowhere, classOf);
  lost.setSights(row(all), nowhere);
  QCOMPARE(along(lost, 2500), QStringLiteral("2500:-/-"));
}

void CoverSourceTest::projectionEndsForPatches() {
  for (bool infinity : {false, true}) {
    CoverSource cover = source();
    cover.setPatches(mapOf({box(2, -1e6, 1e6)}), [infinity](std::vector<double> &x, std::vector<double> &y) {
      metresFrom(origin)(x, y);
      for (size_t i = 0; i < x.size(); ++i)
        if (x[i] > 1500 && x[i] < 2500)
          x[i] = infinity ? std::numeric_limits<double>::infinity() : missing;
    });
    QCOMPARE(along(cover, 4000), QStringLiteral("1000:2/0.3 3000:-/- 4000:2/0.3"));
  }
}

void CoverSourceTest::antimeridianPatches_data() {
  QTest::addColumn<double>("before"); // metres walked before the 180th meridian
  QTest::newRow("in the middle of a chord") << 300.0;
  QTest::newRow("on its end") << 1000.0;
  QTest::newRow("close to the start") << 0.001;
  QTest::newRow("on the start") << 0.0;
}

// A map in degrees from -180 to 180: patches at both its edges, another round the world in between that is not met.
void CoverSourceTest::antimeridianPatches() {
  QFETCH(double, before);
  const auto degrees = [](int cover, double left, double right) {
    return CoverPatch{{{{left, -1}, {right, -1}, {right, 1}, {left, 1}}}, cover};
  };
  const double wide = 800 / metresPerDegree;
  for (double turn : {0.0, 360.0, -720.0})
    for (bool west : {false, true}) {
      CoverSource cover = source();
      cover.setPatches(mapOf({degrees(0, 180 - wide, 180), degrees(1, -180, -180 + wide), degrees(3, -100, 100)}),
                       asDegrees);
      const Place from = place(0, turn + (west ? -1 : 1) * (180 - before / metresPerDegree));
      const auto pieces = cover.along(from, bearing(west ? 270 : 90), Length::metres(2000));
      QVERIFY(isWhole(pieces, 2000));
      // Which of the two lies before the meridian, and how much of it is met.
      std::vector<std::pair<double, int>> expected;
      const int first = west ? 1 : 0, second = west ? 0 : 1;
      if (before > 800)
        expected.emplace_back(before - 800, -1);
      if (before > 0)
        expected.emplace_back(before, first);
      expected.emplace_back(before + 800, second);
      expected.emplace_back(2000, -1);
      QCOMPARE(pieces.size(), expected.size());
      for (size_t i = 0; i < pieces.size(); ++i) {
        QCOMPARE(pieces[i].cover, expected[i].second);
        VERIFY_NEAR(pieces[i].to_m, expected[i].first, 1e-4, text(pieces).toStdString());
      }
    }
}

// A raster of the world, its cells 0.001 degrees wide: the column tells the code.
void CoverSourceTest::antimeridianRasters() {
  constexpr int64_t columns = 360000;
  const GridShape world{-180, 1, 0.001, 1, columns, 2};
  CoverSource cover = source();
  cover.setCodes(TiledGrid(world,
                           [](const CellWindow &window) {
                             std::vector<float> cells;
                             for (int64_t r = 0; r < window.rows; ++r)
                               for (int64_t c = 0; c < window.columns; ++c) {
                                 const int64_t column = window.column + c;
                                 cells.push_back(column < 5 ? 10 : column >= columns - 5 ? 20 : 99);
                               }
                             return cells;
                           }),
                 asDegrees, classOf);
  const double five = 0.005 * metresPerDegree; // five cells
  const auto pieces = cover.along(place(0.5, 180 - 0.004), bearing(90), Length::metres(1500));
  QVERIFY(isWhole(pieces, 1500));
  QCOMPARE(pieces.size(), size_t(3));
  QVERIFY(pieces[0].cover == 1 && pieces[1].cover == 0 && pieces[2].cover == -1);
  // At 0.5 north a degree of longitude is 0.99996 of one on the equator.
  VERIFY_NEAR(pieces[0].to_m, five * 0.8, 0.05, "to the meridian");
  VERIFY_NEAR(pieces[1].to_m, five * 1.8, 0.05, "five cells on");
  QVERIFY((cover.unknownCodes() == std::set<long>{99}));
}

// 100 km at 70 north: in degrees the geodesic bulges by half a kilometre from the straight line, and is followed.
void CoverSourceTest::longLineFollowsTheGeodesic() {
  const Place from = place(70, 20), to = place(70, 22.6);
  const GeodesicLeg leg = geodesicBetween(from, to);
  CoverSource cover = source();
  // North of 70.003 there is class 2.
  cover.setPatches(mapOf({{{{{0, 70.003}, {40, 70.003}, {40, 75}, {0, 75}}}, 2}}), asDegrees);
  const auto pieces = cover.along(from, leg.departure, leg.length);
  QCOMPARE(pieces.size(), size_t(3));
  QVERIFY(pieces[0].cover == -1 && pieces[1].cover == 2 && pieces[2].cover == -1);
  for (size_t i = 0; i < 2; ++i) {
    // A chord strays by L^2 tan(latitude) / 8 R, 5 cm; the line climbs by up to 2 in 100.
    const Place border = geodesicDestination(from, leg.departure, Length::metres(pieces[i].to_m));
    VERIFY_NEAR((border.latitude.degrees() - 70.003) * 111000, 0, 0.1, std::to_string(i));
  }
}

// A line along cells' corners meets those beside it not at all: not for a millionth of a millimetre.
void CoverSourceTest::noSlivers() {
  const Project plain = metresFrom(origin);
  for (double offset : {0.0, 0.1, 0.3, 1 / 3.0}) {
    CoverSource cover = source();
    const GridShape shape{-50 - offset, 80 + offset, 10, 10, 100, 100};
    cover.setCodes(
        TiledGrid(shape,
                  [](const CellWindow &window) {
                    std::vector<float> cells;
                    for (int64_t r = 0; r < window.rows; ++r)
                      for (int64_t c = 0; c < window.columns; ++c)
                        cells.push_back(window.row + r == window.column + c ? 10 : 40);
                    return cells;
                  }),
        [&](std::vector<double> &x, std::vector<double> &y) {
          plain(x, y);
          for (size_t i = 0; i < x.size(); ++i) // as if straight down the diagonal
            y[i] = 30 - x[i];
        },
        classOf);
    for (double length : {100.0, 333.0, 777.7})
      for (double more : {0.0, 0.7, 3.1}) {
        const Place from = geodesicDestination(start, east, Length::metres(more));
        QCOMPARE(along(cover, length, from), QStringLiteral("%1:0/0.1").arg(length));
      }
  }
}

// Random patches and rasters of three different systems, asked place by place.
void CoverSourceTest::againstAskingPlaceByPlace() {
  Random random(150);
  const auto scaled = [](double factor) {
    return [factor](std::vector<double> &x, std::vector<double> &y) {
      metresFrom(origin)(x, y);
      for (size_t i = 0; i < x.size(); ++i) {
        x[i] *= factor;
        y[i] *= factor;
      }
    };
  };
  const auto noise = [](double scale, uint64_t seed, std::vector<double> values) {
    return [=](int64_t column, int64_t row) {
      Random cell(seed + uint64_t(column) * 7919 + uint64_t(row) * 104729);
      return float(values[size_t(cell.between(0, double(values.size())))] * scale);
    };
  };
  const auto gridOf = [](const GridShape &shape, auto value) {
    return TiledGrid(shape, [value](const CellWindow &window) {
      std::vector<float> cells;
      for (int64_t r = 0; r < window.rows; ++r)
        for (int64_t c = 0; c < window.columns; ++c)
          cells.push_back(value(window.column + c, window.row + r));
      return cells;
    });
  };
  // The land is 4 km square round (2 km, 2 km); the rasters' edges lie within it.
  std::vector<CoverPatch> patches;
  for (int i = 0; i < 60; ++i) {
    const double x = random.between(0, 4000), y = random.between(0, 4000);
    patches.push_back(box(int(random.between(0, 4)), x, x + random.between(20, 600), y, y + random.between(20, 600)));
  }
  const auto code = noise(10, 151, {1, 2, 3, 4, 7, missing});
  const auto sight = noise(1, 152, {30, 60, 90, 0, missing, missing, missing});
  const GridShape codeShape{300, 3500, 30, 30, 100, 100};
  const GridShape sightShape{200 * 3.28, 3800 * 3.28, 50 * 3.28, 50 * 3.28, 70, 70};
  CoverSource cover = source();
  cover.setPatches(mapOf(patches), metresFrom(origin));
  cover.setCodes(gridOf(codeShape, code), scaled(1), classOf);
  cover.setSights(gridOf(sightShape, sight), scaled(3.28));
  const auto valueAt = [](const GridShape &shape, auto value, double x, double y) {
    const auto column = int64_t(std::floor((x - shape.left) / shape.cell_width)),
               row = int64_t(std::floor((shape.top - y) / shape.cell_height));
    return column < 0 || row < 0 || column >= shape.columns || row >= shape.rows ? missing : double(value(column, row));
  };
  int asked = 0, classes[5] = {}, bySight = 0, overlaps = 0;
  for (int l = 0; l < 400; ++l) {
    const Place from =
        place(random.between(0, 4000) / metresPerDegree, origin + random.between(0, 4000) / metresPerDegree);
    const TrueBearing departure = bearing(random.between(0, 360));
    const double length = random.between(1, 3000);
    const auto pieces = cover.along(from, departure, Length::metres(length));
    VERIFY_AT(isWhole(pieces, length), std::to_string(l));
    size_t p = 0;
    for (int i = 0; i < 100; ++i) {
      const double at = (i + 0.5) / 100 * length;
      while (pieces[p].to_m < at)
        ++p;
      // Chords stray from the geodesic by under a millimetre here.
      if (pieces[p].to_m - at < 0.05 || (p > 0 && at - pieces[p - 1].to_m < 0.05))
        continue;
      const Place here = geodesicDestination(from, departure, Length::metres(at));
      std::vector<double> xs{here.longitude.degrees()}, ys{here.latitude.degrees()};
      metresFrom(origin)(xs, ys);
      const double x = xs[0], y = ys[0];
      int expected = -1, layers = 0;
      for (const CoverPatch &patch : patches) {
        const auto &ring = patch.rings[0];
        if (x > ring[0].x && x < ring[1].x && y > ring[0].y && y < ring[2].y && layers++ == 0)
          expected = patch.cover;
      }
      if (expected < 0) {
        const double found = valueAt(codeShape, code, x, y);
        expected = std::isnan(found) ? -1 : classOf(std::lround(found));
      }
      const double metres = valueAt(sightShape, sight, x * 3.28, y * 3.28);
      const std::string where = std::to_string(l) + " at " + std::to_string(at) + ": " + text(pieces).toStdString();
      VERIFY_AT(pieces[p].cover == expected, where);
      VERIFY_AT(pieces[p].overlapping == (layers > 1), where);
      if (metres > 0)
        VERIFY_AT(pieces[p].extinction && *pieces[p].extinction == extinctionOf(Length::metres(metres)), where);
      else if (expected >= 0)
        VERIFY_AT(pieces[p].extinction && *pieces[p].extinction == extinctions[size_t(expected)], where);
      else
        VERIFY_AT(!pieces[p].extinction, where);
      ++asked;
      ++classes[expected + 1];
      bySight += metres > 0;
      overlaps += layers > 1;
    }
  }
  QVERIFY(asked > 38000 && bySight > 3000 && overlaps > 1000);
  for (int count : classes)
    QVERIFY(count > 1000);
  QVERIFY((cover.unknownCodes() == std::set<long>{70}));
  QVERIFY(cover.metBadSights());
}

// Looking on beyond the end finds what a longer line finds, and stops where enough is known.
void CoverSourceTest::beyondTheEnd() {
  Random random(153);
  std::vector<CoverPatch> patches;
  for (int i = 0; i < 60; ++i) {
    const double x = random.between(0, 4000), y = random.between(0, 4000);
    patches.push_back(box(int(random.between(0, 4)), x, x + random.between(20, 600), y, y + random.between(20, 600)));
  }
  CoverSource cover = source();
  cover.setPatches(mapOf(patches), metresFrom(origin));
  int early = 0, late = 0;
  for (int l = 0; l < 300; ++l) {
    const Place from =
        place(random.between(0, 4000) / metresPerDegree, origin + random.between(0, 4000) / metresPerDegree);
    const TrueBearing departure = bearing(random.between(0, 360));
    const double length = random.between(1, 1500), farthest = random.between(1, 900), wanted = random.between(0.1, 2);
    const auto all = cover.along(from, departure, Length::metres(length + farthest));
    const auto pieces =
        cover.along(from, departure, Length::metres(length), {Length::metres(farthest), Length(), wanted});
    const double known = pieces.back().to_m;
    QVERIFY(isWhole(pieces, known));
    QVERIFY(known >= length && known <= length + farthest);
    double depth = 0, before = 0;
    for (size_t i = 0; i < pieces.size(); ++i) {
      VERIFY_AT(pieces[i].cover == all[i].cover && pieces[i].extinction == all[i].extinction, std::to_string(l));
      if (i + 1 < pieces.size())
        VERIFY_NEAR(pieces[i].to_m, all[i].to_m, 1e-6, std::to_string(l));
      if (pieces[i].extinction && pieces[i].to_m > length)
        depth += *pieces[i].extinction * (pieces[i].to_m - std::max(before, length));
      before = pieces[i].to_m;
    }
    const bool whole = known == length + farthest;
    VERIFY_AT(whole || depth >= wanted, std::to_string(l));
    (whole ? late : early) += 1;
  }
  QVERIFY(early > 30 && late > 30);
}

void CoverSourceTest::asLongAsTheCoverIsKnown_data() {
  QTest::addColumn<double>("known");    // from the line's start
  QTest::addColumn<double>("farthest"); // from its end
  QTest::addColumn<double>("least");    // of the place, from the start, up to which is looked
  QTest::addColumn<double>("most");
  QTest::newRow("not known there") << 300.0 << 10000.0 << 600.0 << 600.0;
  QTest::newRow("known to where marks are hidden") << 5000.0 << 10000.0 << 900.0 << 1700.0;
  QTest::newRow("known, and the end of all") << 5000.0 << 700.0 << 800.0 << 800.0;
  QTest::newRow("known, the end of all before") << 5000.0 << 0.0 << 600.0 << 600.0;
  QTest::newRow("not known farther on") << 800.0 << 100000.0 << 800.0 << 1500.0;
}

// Beyond 500 m past the line's end only known cover is looked through: 800 m of it hide half the marks.
void CoverSourceTest::asLongAsTheCoverIsKnown() {
  QFETCH(double, known);
  QFETCH(double, farthest);
  QFETCH(double, least);
  QFETCH(double, most);
  CoverSource cover = source();
  cover.setSights(row(std::vector<double>(size_t(known / 10), 800)), metresFrom(origin));
  const auto pieces =
      cover.along(start, east, Length::metres(100), {Length::metres(500), Length::metres(farthest), std::log(2.0)});
  QVERIFY(isWhole(pieces, pieces.back().to_m));
  QVERIFY2(pieces.back().to_m >= least && pieces.back().to_m <= most, qPrintable(QString::number(pieces.back().to_m)));
}

QTEST_APPLESS_MAIN(CoverSourceTest)
#include "cover_source_test.moc"
