// SPDX-License-Identifier: GPL-2.0-or-later
// What heights cost: annotatelegs with a terrain model beside the same without, and profiles read by tiles beside
// asking the host's raster point by point, with GDAL's cache held at 8 MB and at its default.
#include "bench_support.h"

#include "shared/geodesic.h"
#include "shared/terrain_parameters.h"

#include <QCommandLineParser>
#include <gdal_priv.h>
#include <qgscoordinatetransform.h>
#include <qgsrasterdataprovider.h>
#include <qgsrasterlayer.h>

#include <cmath>
#include <cstdio>
#include <memory>
#include <stdexcept>

using namespace brushline;
using namespace brushline::bench;

namespace {

void annotate(const QString &routes, const QString &legs, const QString &terrain) {
  run(QStringLiteral("brushline:annotatelegs"),
      {{QStringLiteral("INPUT"), routes},
       {QStringLiteral("ROUTE_FIELD"), QStringLiteral("route")},
       {QStringLiteral("DATE"), QStringLiteral("2026-06-15")},
       {QStringLiteral("DEM"), terrain.isEmpty() ? QVariant() : QVariant(terrain)},
       {QStringLiteral("OUTPUT"), fresh(legs)}});
}

Terrain terrainModel(const QString &path) {
  const QgsRasterLayer layer(path);
  const RasterInput raster(QStringLiteral("DEM"), std::shared_ptr<QgsRasterDataProvider>(layer.dataProvider()->clone()),
                           1, layer.crs(), QgsCoordinateTransformContext());
  return Terrain(raster.grid(), raster.project());
}

struct Leg {
  Place from, to;
  Length length;
  std::vector<QgsPointXY> points; // where its profile has heights
};

std::vector<Leg> randomLegs(int count, const QString &terrain) {
  Terrain model = terrainModel(terrain);
  const QgsCoordinateTransform toPlaces(crs(), QgsCoordinateReferenceSystem(QStringLiteral("EPSG:4326")),
                                        QgsCoordinateTransformContext());
  const auto placeOf = [&](const QgsPointXY &point) {
    const QgsPointXY degrees = toPlaces.transform(point);
    return Place{Angle::degrees(degrees.y()), Angle::degrees(degrees.x())};
  };
  test::Random random(7);
  const auto anywhere = [&] {
    const double x = westEdge + random.between(10, side - 10);
    return QgsPointXY(x, northEdge - random.between(10, side - 10));
  };
  std::vector<Leg> legs;
  while (int(legs.size()) < count) {
    const QgsPointXY a = anywhere(), b = anywhere();
    if (a.distance(b) > 3000)
      continue;
    Leg leg{placeOf(a), placeOf(b), {}, {}};
    leg.length = geodesicBetween(leg.from, leg.to).length;
    const size_t steps = model.profile(leg.from, leg.to, leg.length).heights.size() - 1;
    for (size_t i = 0; i <= steps; ++i)
      leg.points.push_back(a + (b - a) * (double(i) / double(steps)));
    legs.push_back(std::move(leg));
  }
  return legs;
}

void compareReading(const QString &terrain, int repeat) {
  const std::vector<Leg> legs = randomLegs(1000, terrain);
  size_t points = 0;
  for (const Leg &leg : legs)
    points += leg.points.size();
  std::printf("%zu random legs up to 3 km, %zu heights\n", legs.size(), points);
  double heights[2] = {0, 0}; // their sums: the same ground was read
  // Both start with nothing read: the raster is opened anew, as annotatelegs opens it.
  const auto byProfile = [&] {
    Terrain model = terrainModel(terrain);
    heights[0] = 0;
    for (const Leg &leg : legs)
      for (const double height : model.profile(leg.from, leg.to, leg.length).heights)
        heights[0] += height;
  };
  const auto byPoint = [&] {
    const QgsRasterLayer layer(terrain);
    const std::unique_ptr<QgsRasterDataProvider> provider(layer.dataProvider()->clone());
    heights[1] = 0;
    for (const Leg &leg : legs)
      for (const QgsPointXY &point : leg.points)
        heights[1] += provider->sample(point, 1);
  };
  const GIntBig usual = GDALGetCacheMax64();
  for (const bool small : {true, false}) {
    GDALSetCacheMax64(small ? 8 * 1024 * 1024 : usual);
    const std::vector<double> seconds = leastSeconds({byProfile, byPoint}, repeat);
    std::printf("%-56s %7.2f s\n", small ? "points one by one, cache of 8 MB" : "points one by one, usual cache",
                seconds[1]);
    if (small)
      print({"profiles of 1000 legs by tiles / by points, cache of 8 MB", seconds[0], seconds[1], 1.0 / 3});
    else // which holds the whole raster
      print({"profiles of 1000 legs by tiles / by points, usual cache", seconds[0], seconds[1], {}});
  }
  std::printf("mean height by profile %.2f m, by point %.2f m\n", heights[0] / double(points),
              heights[1] / double(points));
}

void compareAnnotating(const Host &host, const QString &terrain, long routes, int repeat) {
  const QString input = host.path(QStringLiteral("routes.fgb")), legs = host.path(QStringLiteral("legs.fgb"));
  writeRoutes(input, routes);
  const std::vector<double> seconds =
      leastSeconds({[&] { annotate(input, legs, terrain); }, [&] { annotate(input, legs, QString()); }}, repeat);
  std::printf("%ld routes, %ld legs; least of %d\n%-56s %7.2f s\n", routes, 100 * routes, repeat,
              "annotatelegs without terrain", seconds[1]);
  print({"annotatelegs with DEM / without, " + std::to_string(100 * routes) + " legs", seconds[0], seconds[1], 2});
}

} // namespace

int main(int argc, char **argv) {
  const Host host(argc, argv);
  return guarded([&] {
    QCommandLineParser parser;
    const QCommandLineOption routesOption(QStringLiteral("routes"), QStringLiteral("Routes of 100 legs each."),
                                          QStringLiteral("count"), QStringLiteral("10000"));
    const QCommandLineOption repeatOption(QStringLiteral("repeat"), QStringLiteral("Runs of each."),
                                          QStringLiteral("count"), QStringLiteral("3"));
    parser.addHelpOption();
    parser.addOptions({routesOption, repeatOption});
    parser.process(*QCoreApplication::instance());
    const int repeat = parser.value(repeatOption).toInt();
    const QString terrain = host.path(QStringLiteral("terrain.tif"));
    writeTerrain(terrain);
    compareReading(terrain, repeat);
    compareAnnotating(host, terrain, parser.value(routesOption).toLong(), repeat);
  });
}
