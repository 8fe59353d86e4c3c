// SPDX-License-Identifier: GPL-2.0-or-later
#include "magnetics/north_lines.h"

#include "magnetics/world_magnetic_model.h"
#include "support/check.h"
#include "support/near.h"
#include "support/random.h"

#include <GeographicLib/Geodesic.hpp>
#include <proj.h>

#include <algorithm>
#include <limits>
#include <map>
#include <memory>
#include <optional>
#include <set>

using namespace brushline;
using namespace brushline::test;

class NorthLinesTest : public QObject {
  Q_OBJECT
private slots:
  void direction_data();
  void direction();
  void theCurveItself_data();
  void theCurveItself();
  void spacing_data();
  void spacing();
  void everyPlaceHasItsLine_data();
  void everyPlaceHasItsLine();
  void givenDeclination();
  void numbersAndPieces();
  void oneLineAtLeast();
  void blackout();
  void ringRoundThePole();
  void edgeOfTheProjection();
  void acrossTheAntimeridian();
  void tooMany();
  void refusals();
  void cancel();
  void sameEachTime();
};

namespace {

using Pj = std::unique_ptr<PJ, decltype(&proj_destroy)>;

// PROJ's own way between a projected system and longitudes and latitudes on its own datum.
class Map {
public:
  explicit Map(const char *crs)
      : mContext(proj_context_create(), proj_context_destroy), mForward(nullptr, proj_destroy) {
    PJ_CONTEXT *context = mContext.get();
    proj_log_level(context, PJ_LOG_NONE);
    const Pj system(proj_create(context, crs), proj_destroy);
    const Pj geodetic(proj_crs_get_geodetic_crs(context, system.get()), proj_destroy);
    const Pj raw(proj_create_crs_to_crs_from_pj(context, geodetic.get(), system.get(), nullptr, nullptr), proj_destroy);
    mForward.reset(proj_normalize_for_visualization(context, raw.get()));
    if (!mForward)
      qFatal("no projection: %s", crs);
  }

  Project direction(PJ_DIRECTION way) const {
    return [pj = mForward.get(), way](std::vector<double> &x, std::vector<double> &y) {
      for (size_t i = 0; i < x.size(); ++i) {
        const PJ_COORD to = proj_trans(pj, way, proj_coord(x[i], y[i], 0, HUGE_VAL));
        const bool fine = std::isfinite(to.xy.x) && std::isfinite(to.xy.y);
        x[i] = fine ? to.xy.x : std::nan("");
        y[i] = fine ? to.xy.y : std::nan("");
      }
    };
  }

  NorthLinesArea area(double left, double bottom, double right, double top) const {
    return {left, bottom, right, top, direction(PJ_FWD), direction(PJ_INV)};
  }
  // Round a place, so many metres of the map to each side.
  NorthLinesArea around(double latitude, double longitude, double half) const {
    std::vector<double> x{longitude}, y{latitude};
    direction(PJ_FWD)(x, y);
    return area(x[0] - half, y[0] - half, x[0] + half, y[0] + half);
  }
  Place place(const ProjectedPoint &point) const {
    std::vector<double> x{point.x}, y{point.y};
    direction(PJ_INV)(x, y);
    return {Angle::degrees(y[0]), Angle::degrees(x[0])};
  }

  ProjectedPoint point(const Place &place) const {
    std::vector<double> x{place.longitude.degrees()}, y{place.latitude.degrees()};
    direction(PJ_FWD)(x, y);
    return {x[0], y[0]};
  }

private:
  std::unique_ptr<PJ_CONTEXT, decltype(&proj_context_destroy)> mContext;
  Pj mForward;
};

FieldSetting wmm(std::optional<Declination> given = std::nullopt) {
  return FieldSetting(coefficientModel(worldMagneticModel2025(), DecimalYear(2026.9)), given);
}

// What the interface promises of every chord, and of the curve beside it.
constexpr double straightness = 0.0075; // degrees
constexpr double beside = 0.15;         // metres

struct Drawn {
  std::vector<NorthLine> lines;
  NorthLinesReport report;
};

Drawn draw(const FieldSetting &field, const NorthLinesArea &area, double spacing,
           const Progress &progress = Progress()) {
  Drawn drawn;
  drawn.report = northLines(field, area, Length::metres(spacing), progress,
                            [&](const NorthLine &line) { drawn.lines.push_back(line); });
  return drawn;
}

// The geodesic from one place to another: metres, and the azimuth at the first.
struct Inverse {
  double metres, azimuth;
};
Inverse inverse(const Place &from, const Place &to) {
  double metres, azimuth, arrival;
  GeographicLib::Geodesic::WGS84().Inverse(from.latitude.degrees(), from.longitude.degrees(), to.latitude.degrees(),
                                           to.longitude.degrees(), metres, azimuth, arrival);
  return {metres, azimuth};
}

// How far a place is from a line, metres on the ground: the chord nearest on the map, and on it the point with the
// shortest geodesic.
double distanceTo(const Map &map, const ProjectedPoint &point, const std::vector<ProjectedPoint> &line) {
  size_t nearest = 1;
  double least = std::numeric_limits<double>::infinity();
  for (size_t i = 1; i < line.size(); ++i) {
    const double x = line[i].x - line[i - 1].x, y = line[i].y - line[i - 1].y;
    const double ex = point.x - line[i - 1].x, ey = point.y - line[i - 1].y;
    const double t = std::clamp((ex * x + ey * y) / (x * x + y * y), 0.0, 1.0);
    if (const double distance = std::hypot(ex - t * x, ey - t * y); distance < least) {
      least = distance;
      nearest = i;
    }
  }
  const ProjectedPoint &a = line[nearest - 1], &b = line[nearest];
  const Place place = map.place(point);
  const auto at = [&](double t) {
    return inverse(place, map.place({a.x + t * (b.x - a.x), a.y + t * (b.y - a.y)})).metres;
  };
  double low = 0, high = 1;
  for (int step = 0; step < 40; ++step) {
    const double c = low + (high - low) / 3, d = high - (high - low) / 3;
    (at(c) < at(d) ? high : low) = at(c) < at(d) ? d : c;
  }
  return at((low + high) / 2);
}

// The width of an area on the ground, metres.
double groundWidth(const Map &map, const NorthLinesArea &area) {
  const double y = (area.bottom + area.top) / 2;
  const double middle = (area.left + area.right) / 2;
  return inverse(map.place({area.left, y}), map.place({middle, y})).metres +
         inverse(map.place({middle, y}), map.place({area.right, y})).metres;
}

// The projections and places of the checks.
void places() {
  QTest::addColumn<QString>("crs");
  QTest::addColumn<double>("latitude");
  QTest::addColumn<double>("longitude");
  QTest::addColumn<double>("half");
  const auto row = [](const char *name, const char *crs, double latitude, double longitude, double half) {
    QTest::newRow(name) << QString::fromLatin1(crs) << latitude << longitude << half;
  };
  row("UTM 21 north, west", "EPSG:32621", 48.8, -55.2, 15000);
  row("UTM 55 south", "EPSG:32755", -42, 147, 15000);
  row("UTM far from its meridian", "EPSG:32633", 70, 27, 15000);
  row("web map at 60 north", "EPSG:3857", 60, 10.2, 30000);
  row("web map at 78 north", "EPSG:3857", 78, -20, 60000);
  row("polar stereographic, high north", "EPSG:3413", 81, -20, 20000);
  row("polar stereographic, the pole itself", "EPSG:32761", -89.95, 100, 20000);
  row("polar stereographic, south", "EPSG:3031", -78, 20, 20000);
  row("equal area, Europe", "EPSG:3035", 64, -20, 15000);
  row("oblique Mercator, Borneo", "EPSG:29873", 5, 117, 15000);
  row("oblique Mercator, Alaska", "EPSG:26931", 57, -134, 15000);
  row("south up", "EPSG:2048", -33.9, 18.6, 15000);
  row("conic, US feet", "EPSG:2225", 41, -122, 50000);
  row("plate carree, not conformal", "EPSG:4087", 62, -114, 20000);
}

} // namespace

void NorthLinesTest::direction_data() { places(); }

// At random points of the chords, the azimuth onward to the chord's end, and to a point of it 20 m on (inverse
// projection by PROJ, geodesic by GeographicLib), against the model's declination there.
void NorthLinesTest::direction() {
  QFETCH(QString, crs);
  QFETCH(double, latitude);
  QFETCH(double, longitude);
  QFETCH(double, half);
  const Map map(crs.toLatin1());
  const FieldSetting field = wmm();
  const NorthLinesArea area = map.around(latitude, longitude, half);
  const Drawn drawn = draw(field, area, groundWidth(map, area) / 20);
  QVERIFY(drawn.lines.size() >= 20);
  Random random(70);
  double worst = 0;
  for (int i = 0; i < 1000; ++i) {
    const NorthLine &line = drawn.lines[size_t(random.between(0, double(drawn.lines.size())))];
    QVERIFY(line.points.size() >= 2);
    const size_t j = 1 + size_t(random.between(0, double(line.points.size() - 1)));
    const ProjectedPoint &a = line.points[j - 1], &b = line.points[j];
    const double t = random.between(0, 0.99);
    const Place here = map.place({a.x + t * (b.x - a.x), a.y + t * (b.y - a.y)});
    const Inverse onward = inverse(here, map.place(b));
    if (onward.metres < 0.05) // too short for an azimuth
      continue;
    const double u = t + (1 - t) * std::min(1.0, 20 / onward.metres);
    const Inverse close = inverse(here, map.place({a.x + u * (b.x - a.x), a.y + u * (b.y - a.y)}));
    for (const double azimuth : {onward.azimuth, close.azimuth}) {
      const double declination = field.at(here, Length()).declination.east.degrees();
      worst = std::max(worst, turnBetween(azimuth, declination));
      VERIFY_CHECK(checkOf("direction of north lines", crs.toStdString() + " line " + std::to_string(line.number),
                           turnedTo(azimuth, declination), declination, straightness, "deg",
                           "the model's declination beside azimuths computed with PROJ and GeographicLib's Geodesic"));
    }
  }
  for (const NorthLine &line : drawn.lines) {
    VERIFY_NEAR(line.declination.east.degrees(), field.at(line.middle, Length()).declination.east.degrees(), 1e-9,
                "at the middle");
    const double whole = inverse(map.place(line.points.front()), map.place(line.points.back())).metres;
    VERIFY_NEAR(inverse(map.place(line.points.front()), line.middle).metres, whole / 2, whole / 100 + 1e-3, "middle");
  }
  qInfo("worst %.5f degrees, %.2f to %.2f m apart", worst, drawn.report.least_spacing_m, drawn.report.most_spacing_m);
}

void NorthLinesTest::theCurveItself_data() { places(); }

// A chord may be off by what makes it a chord; the line as a whole may not. From its first vertex that is no cut by the
// edge the curve is followed by short geodesics of our own to the line's end: a direction that is wrong by the 0.0075
// degrees of the chords would lead 3 m aside on 25 km. A chord of 4 km (the longest), off by 0.0075 degrees = 1.309e-4
// at its ends, lies 4000 m * 1.309e-4 / 4 = 0.131 m beside its arc, by hand; the interface says under 0.15.
void NorthLinesTest::theCurveItself() {
  QFETCH(QString, crs);
  QFETCH(double, latitude);
  QFETCH(double, longitude);
  QFETCH(double, half);
  const Map map(crs.toLatin1());
  const FieldSetting field = wmm();
  const NorthLinesArea area = map.around(latitude, longitude, half);
  const Drawn drawn = draw(field, area, groundWidth(map, area) / 20);
  const auto declination = [&](const Place &place) { return field.at(place, Length()).declination.east.degrees(); };
  const auto &earth = GeographicLib::Geodesic::WGS84();
  constexpr double step = 50;
  double worst = 0, longest = 0;
  for (size_t i = drawn.lines.size() / 4; i < drawn.lines.size(); i += drawn.lines.size() / 4) {
    const std::vector<ProjectedPoint> &points = drawn.lines[i].points;
    if (points.size() < 4)
      continue;
    Place place = map.place(points[1]);
    const double whole = inverse(place, map.place(points.back())).metres;
    longest = std::max(longest, whole);
    for (int k = 1; k * step < whole; ++k) {
      // The geodesic that has the field's direction halfway, as far as half a step tells how the field turns.
      double lat, lon, arrival;
      const double start = declination(place);
      earth.Direct(place.latitude.degrees(), place.longitude.degrees(), start, step / 2, lat, lon, arrival);
      const double turn = std::remainder(declination({Angle::degrees(lat), Angle::degrees(lon)}) - arrival, 360.0);
      earth.Direct(place.latitude.degrees(), place.longitude.degrees(), start + turn, step, lat, lon);
      place = {Angle::degrees(lat), Angle::degrees(lon)};
      if (k % 7 == 0) {
        const double off = distanceTo(map, map.point(place), points);
        worst = std::max(worst, off);
        VERIFY_NEAR(off, 0, beside, crs.toStdString() + " after " + std::to_string(k * step) + " m");
      }
    }
  }
  QVERIFY2(longest > 8000, qPrintable(QString::number(longest)));
  qInfo("worst %.4f m on up to %.0f m", worst, longest);
}

void NorthLinesTest::spacing_data() { places(); }

// From the extent's middle a geodesic square to the middle line meets its neighbours at the spacing asked for.
void NorthLinesTest::spacing() {
  QFETCH(QString, crs);
  QFETCH(double, latitude);
  QFETCH(double, longitude);
  QFETCH(double, half);
  const Map map(crs.toLatin1());
  const FieldSetting field = wmm();
  const NorthLinesArea area = map.around(latitude, longitude, half);
  const double spacing = groundWidth(map, area) / 20;
  const Drawn drawn = draw(field, area, spacing);
  const ProjectedPoint middle{(area.left + area.right) / 2, (area.bottom + area.top) / 2};
  int centre = -1;
  for (size_t i = 0; i < drawn.lines.size(); ++i)
    if (distanceTo(map, middle, drawn.lines[i].points) < 0.05)
      centre = int(i);
  QVERIFY(centre >= 0);
  // The cross-line, by short geodesics of our own.
  for (const double side : {-90.0, 90.0}) {
    Place place = map.place(middle);
    for (int number = 1; number <= 3; ++number) {
      for (int step = 0; step < 50; ++step) {
        const double declination = field.at(place, Length()).declination.east.degrees();
        double lat, lon;
        GeographicLib::Geodesic::WGS84().Direct(place.latitude.degrees(), place.longitude.degrees(), declination + side,
                                                spacing / 50, lat, lon);
        place = {Angle::degrees(lat), Angle::degrees(lon)};
      }
      const int other = centre + (side > 0 ? number : -number);
      if (other < 0 || other >= int(drawn.lines.size()))
        break;
      QCOMPARE(drawn.lines[size_t(other)].number, drawn.lines[size_t(centre)].number + (side > 0 ? number : -number));
      VERIFY_NEAR(distanceTo(map, map.point(place), drawn.lines[size_t(other)].points), 0, 0.0002 * spacing,
                  std::to_string(number));
    }
  }
  // And the report's bounds hold the spacing; they are close to it on so small a map, away from the pole.
  QVERIFY(drawn.report.least_spacing_m <= spacing + 0.1 && drawn.report.most_spacing_m >= spacing - 0.1);
  if (std::abs(latitude) < 71)
    QVERIFY(drawn.report.least_spacing_m > 0.97 * spacing && drawn.report.most_spacing_m < 1.03 * spacing);
}

void NorthLinesTest::everyPlaceHasItsLine_data() { places(); }

// No corner is left out: every place of the extent has a line within half a spacing or so.
void NorthLinesTest::everyPlaceHasItsLine() {
  QFETCH(QString, crs);
  QFETCH(double, latitude);
  QFETCH(double, longitude);
  QFETCH(double, half);
  const Map map(crs.toLatin1());
  const NorthLinesArea area = map.around(latitude, longitude, half);
  const FieldSetting field = wmm();
  const Drawn drawn = draw(field, area, groundWidth(map, area) / 16);
  Random random(71);
  for (int i = 0; i < 40; ++i) {
    // The last ones in the corners.
    const double edge = i < 20 ? 1 : 0.02;
    const double fx = random.between(0, edge), fy = random.between(0, edge);
    const ProjectedPoint point{i % 2 ? area.left + fx * 2 * half : area.right - fx * 2 * half,
                               i % 4 < 2 ? area.bottom + fy * 2 * half : area.top - fy * 2 * half};
    double least = std::numeric_limits<double>::infinity();
    for (const NorthLine &line : drawn.lines)
      least = std::min(least, distanceTo(map, point, line.points));
    // In a corner the nearest line may pass outside, and the next one is up to a spacing away.
    VERIFY_AT(least <= drawn.report.most_spacing_m * (i < 20 ? 0.75 : 1.05),
              crs.toStdString() + ": " + std::to_string(least) + " of " + std::to_string(drawn.report.most_spacing_m));
  }
  for (const NorthLine &line : drawn.lines)
    for (const ProjectedPoint &point : line.points)
      QVERIFY(point.x >= area.left - 1e-6 && point.x <= area.right + 1e-6 && point.y >= area.bottom - 1e-6 &&
              point.y <= area.top + 1e-6);
}

// A declination read off a map holds everywhere.
void NorthLinesTest::givenDeclination() {
  const Map map("EPSG:32621");
  const FieldSetting field = wmm(Declination{Angle::degrees(-17.25)});
  const Drawn given = draw(field, map.around(48.8, -55.2, 5000), 1000);
  QVERIFY2(given.lines.size() >= 10, qPrintable(QString::number(given.lines.size())));
  for (const NorthLine &line : given.lines) {
    QVERIFY(line.points.size() > 1);
    QVERIFY(line.declination.east.degrees() == -17.25);
    for (size_t i = 1; i < line.points.size(); ++i)
      VERIFY_NEAR(inverse(map.place(line.points[i - 1]), map.place(line.points[i])).azimuth, -17.25, straightness,
                  "azimuth");
  }
  // On a web map such lines are straight, by the map's definition.
  const Map web("EPSG:3857");
  const Drawn straight = draw(field, web.around(60, 10, 50000), 5000);
  QVERIFY2(straight.lines.size() >= 10, qPrintable(QString::number(straight.lines.size())));
  for (const NorthLine &line : straight.lines) {
    QVERIFY(line.points.size() > 2);
    const ProjectedPoint &a = line.points.front(), &b = line.points.back();
    for (const ProjectedPoint &p : line.points)
      VERIFY_NEAR((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x), 0, 1 * std::hypot(b.x - a.x, b.y - a.y),
                  "straight within a metre");
  }
  // At the pole itself one bearing leads nowhere; lines end before it.
  const Map polar("EPSG:32661");
  const Drawn pole = draw(field, polar.around(89.8, 0, 40000), 5000);
  QVERIFY(pole.lines.size() > 3);
}

// Numbers run from magnetic west to east without gap; pieces of a line share theirs.
void NorthLinesTest::numbersAndPieces() {
  const Map map("EPSG:3857");
  const FieldSetting field = wmm();
  const Drawn drawn = draw(field, map.area(-1.2e7, -8e6, 1.2e7, 1.2e7), 3000000);
  int last = 0;
  double done = 0;
  for (const NorthLine &line : drawn.lines) {
    QVERIFY(line.number == last || line.number == last + 1);
    last = line.number;
    QVERIFY(line.done >= done && line.done <= 1);
    done = line.done;
  }
  QCOMPARE(last, drawn.report.lines);
  QVERIFY(last > 7);
  QVERIFY(drawn.report.caution);

  // Nearly circles round the south pole: some bend out of the square's right side and in again.
  std::map<int, int> pieces;
  const Map polar("EPSG:3031");
  for (const NorthLine &line : draw(wmm(Declination{Angle::degrees(88)}), polar.area(6e5, -3e5, 1e6, 3e5), 20000).lines)
    ++pieces[line.number];
  QVERIFY(std::any_of(pieces.begin(), pieces.end(), [](const auto &entry) { return entry.second > 1; }));

  const Map utm("EPSG:32621");
  double x = -1e9;
  for (const NorthLine &line : draw(field, utm.around(48.8, -55.2, 5000), 700).lines) {
    // All these lines cross the row through the middle or would, so their western order shows.
    const ProjectedPoint &a = line.points.front(), &b = line.points.back();
    const double onMiddle = a.x + (b.x - a.x) * (5.405e6 - a.y) / (b.y - a.y);
    QVERIFY(onMiddle > x);
    x = onMiddle;
    QVERIFY(b.y > a.y); // towards north
    QVERIFY(line.zone == CompassZone::Reliable);
  }
}

// A spacing wider than the extent leaves the line through the middle.
void NorthLinesTest::oneLineAtLeast() {
  const Map map("EPSG:32621");
  const NorthLinesArea area = map.around(48.8, -55.2, 1000);
  const Drawn drawn = draw(wmm(), area, 100000);
  QCOMPARE(drawn.lines.size(), size_t(1));
  QCOMPARE(drawn.report.lines, 1);
  QVERIFY(drawn.report.most_spacing_m == 0);
  VERIFY_NEAR(distanceTo(map, {(area.left + area.right) / 2, (area.bottom + area.top) / 2}, drawn.lines[0].points), 0,
              0.01, "through the middle");
  // And a metre of ground is enough.
  QVERIFY(draw(wmm(), map.around(48.8, -55.2, 0.5), 10).lines.size() == 1);
}

// The zone where no compass works lies round the magnetic pole, some 86 north and 139 east.
void NorthLinesTest::blackout() {
  const Map map("EPSG:3413");
  const FieldSetting field = wmm();
  const Drawn none = draw(field, map.around(86, 139, 50000), 10000);
  QVERIFY(none.lines.empty() && none.report.blackout && none.report.lines == 0);

  const Drawn drawn = draw(field, map.around(79, 139, 700000), 50000);
  QVERIFY(drawn.report.blackout && !drawn.report.edge);
  int ends = 0;
  for (const NorthLine &line : drawn.lines) {
    for (const ProjectedPoint &point : line.points)
      QVERIFY(field.at(map.place(point), Length()).zone != CompassZone::Blackout);
    // The last point is within a metre of the border of the zone.
    const Place end = map.place(line.points.back());
    double lat, lon;
    GeographicLib::Geodesic::WGS84().Direct(end.latitude.degrees(), end.longitude.degrees(),
                                            field.at(end, Length()).declination.east.degrees(), 2, lat, lon);
    ends += field.at({Angle::degrees(lat), Angle::degrees(lon)}, Length()).zone == CompassZone::Blackout;
  }
  QVERIFY(ends > 5);
  QVERIFY(std::any_of(drawn.lines.begin(), drawn.lines.end(),
                      [](const NorthLine &line) { return line.zone == CompassZone::Caution; }));
}

// Round the magnetic pole the cross-line closes, and every line comes once.
void NorthLinesTest::ringRoundThePole() {
  const Map map("EPSG:3413");
  const FieldSetting field = wmm();
  const Drawn drawn = draw(field, map.around(86, 139, 3000000), 200000);
  QVERIFY(drawn.report.blackout);
  QVERIFY(drawn.lines.size() > 30);
  std::vector<Place> ends;
  std::set<int> quarters; // they come from all sides
  for (const NorthLine &line : drawn.lines) {
    ends.push_back(map.place(line.points.back()));
    quarters.insert(int(std::floor(line.middle.longitude.degrees() / 45)));
  }
  QCOMPARE(quarters.size(), size_t(8));
  // From one to the next the ends go round once, all the same way.
  const Place pole{Angle::degrees(86), Angle::degrees(139)};
  double round = 0;
  for (size_t i = 1; i < ends.size(); ++i)
    if (drawn.lines[i].number != drawn.lines[i - 1].number) {
      const double turn = std::remainder(inverse(pole, ends[i]).azimuth - inverse(pole, ends[i - 1]).azimuth, 360);
      VERIFY_AT(turn < 0, std::to_string(i));
      round -= turn;
    }
  QVERIFY2(round > 270 && round < 360, qPrintable(QString::number(round)));
}

// Lines end where the map does, and that is told.
void NorthLinesTest::edgeOfTheProjection() {
  // A globe seen from afar; it ends at some 6378 km.
  const Map map("+proj=ortho +lat_0=10 +lon_0=0 +ellps=sphere +type=crs");
  const Drawn drawn = draw(wmm(), map.area(-1e6, 5e6, 1e6, 7e6), 200000);
  QVERIFY(!drawn.lines.empty());
  QVERIFY(drawn.report.edge);
  bool refused = false;
  try {
    draw(wmm(), map.area(-1e6, 7e6, 1e6, 8e6), 200000);
  } catch (const AreaOutOfReach &) {
    refused = true;
  }
  QVERIFY(refused);
}

// Both sides of the 180th meridian, on maps that go on there and on one round the Earth.
void NorthLinesTest::acrossTheAntimeridian() {
  const FieldSetting field = wmm();
  for (const char *crs : {"EPSG:32660", "EPSG:3857", "EPSG:3832"}) {
    const Map map(crs);
    const bool world = QLatin1String(crs) == QLatin1String("EPSG:3857");
    const NorthLinesArea area =
        world ? map.area(20037508.34 - 20000, -2020000, 20037508.34 + 20000, -1980000) : map.around(-17.7, 180, 20000);
    const Drawn drawn = draw(field, area, 2000);
    QVERIFY(drawn.lines.size() >= 20);
    QVERIFY(!drawn.report.edge);
    bool west = false, east = false;
    for (const NorthLine &line : drawn.lines) {
      const double longitude = map.place(line.points.back()).longitude.signedTurn().degrees();
      west = west || (longitude > -180 && longitude < -179);
      east = east || (longitude > 179 && longitude < 180);
      for (size_t i = 1; i < line.points.size(); ++i) {
        const Place a = map.place(line.points[i - 1]), b = map.place(line.points[i]);
        if (const Inverse chord = inverse(a, b); chord.metres > 1)
          VERIFY_NEAR(turnBetween(chord.azimuth, field.at(a, Length()).declination.east.degrees()), 0, straightness,
                      crs);
      }
    }
    VERIFY_AT(west && east, crs);
  }
}

void NorthLinesTest::tooMany() {
  const Map map("EPSG:32621");
  double count = 0;
  try {
    draw(wmm(), map.around(48.8, -55.2, 50000), 5);
  } catch (const TooManyLines &error) {
    count = error.count;
  }
  // 100 km, leaning by 18.4 degrees to the grid.
  VERIFY_NEAR(count, 100000 * (std::cos(0.321) + std::sin(0.321)) / 5, 200, "lines");
  const Drawn most = draw(wmm(), map.around(48.8, -55.2, 3000), 1);
  QVERIFY(most.report.lines > 7000 && most.report.lines < mostNorthLines);
}

void NorthLinesTest::refusals() {
  const Map map("EPSG:32621");
  const FieldSetting field = wmm();
  const NorthLinesArea area = map.around(48.8, -55.2, 1000);
  for (const double spacing : {0.0, -5.0, std::nan(""), double(HUGE_VAL)})
    QVERIFY_EXCEPTION_THROWN(draw(field, area, spacing), std::invalid_argument);
  QVERIFY_EXCEPTION_THROWN(draw(field, map.area(0, 0, 0, 1), 1), std::invalid_argument);
  QVERIFY_EXCEPTION_THROWN(draw(field, map.area(1, 0, 0, 1), 1), std::invalid_argument);
  QVERIFY_EXCEPTION_THROWN(draw(field, map.area(0, std::nan(""), 1, 1), 1), std::invalid_argument);
  QVERIFY_EXCEPTION_THROWN(draw(field, map.area(0, 0, HUGE_VAL, 1), 1), std::invalid_argument);
}

void NorthLinesTest::cancel() {
  struct After final : Progress {
    mutable int left = 50;
    bool cancelled() const override { return --left < 0; }
  } after;
  const Map map("EPSG:32621");
  int lines = 0;
  bool stopped = false;
  try {
    northLines(wmm(), map.around(48.8, -55.2, 50000), Length::metres(20), after, [&](const NorthLine &) { ++lines; });
  } catch (const Cancelled &) {
    stopped = true;
  }
  QVERIFY(stopped && lines == 0 && after.left == -1);
}

void NorthLinesTest::sameEachTime() {
  const Map map("EPSG:3035");
  const FieldSetting field = wmm();
  const NorthLinesArea area = map.around(64, -20, 20000);
  const Drawn a = draw(field, area, 3000), b = draw(field, area, 3000);
  QCOMPARE(a.lines.size(), b.lines.size());
  for (size_t i = 0; i < a.lines.size(); ++i)
    for (size_t j = 0; j < a.lines[i].points.size(); ++j)
      QVERIFY(a.lines[i].points[j].x == b.lines[i].points[j].x && a.lines[i].points[j].y == b.lines[i].points[j].y);
}

QTEST_APPLESS_MAIN(NorthLinesTest)
#include "north_lines_test.moc"
