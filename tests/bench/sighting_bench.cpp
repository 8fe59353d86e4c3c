// SPDX-License-Identifier: GPL-2.0-or-later
// What sight through cover and over ground costs. Without an option:
//   a  annotatelegs, legs of 300 m, with a terrain model and cover, against the sum of b, c and d
//   b  reading the terrain model once, block by block
//   c  reading the cover polygons once
//   d  annotatelegs, the same legs without either
// With --marks: choosemarks with more and more candidates, first away from the legs only, then everywhere.
// With --surface: time and peak memory of sightsurface.
#include "bench_support.h"

#include "shared/compatibility_host.h"

#include <QCommandLineParser>
#include <QFile>
#include <gdal_priv.h>
#include <qgsfeatureiterator.h>
#include <qgsgeometry.h>
#include <qgslinestring.h>
#include <qgspoint.h>
#include <qgspolygon.h>
#include <qgsvectorfilewriter.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <stdexcept>

using namespace brushline;
using namespace brushline::bench;

namespace {

constexpr double legLength = 300; // metres

// A FlatGeobuf with one text field.
class Layer {
public:
  Layer(const QString &path, const QString &field, host::WkbType type) {
    mFields.append(host::field(field, host::FieldType::Text));
    QgsVectorFileWriter::SaveVectorOptions options;
    options.driverName = QStringLiteral("FlatGeobuf");
    mWriter.reset(QgsVectorFileWriter::create(path, mFields, type, crs(), QgsCoordinateTransformContext(), options));
  }
  void add(QgsAbstractGeometry *geometry, const QString &value) {
    QgsFeature feature(mFields);
    feature.setGeometry(QgsGeometry(geometry));
    feature.setAttributes(QVector<QVariant>{value});
    if (!mWriter->addFeature(feature, QgsFeatureSink::FastInsert))
      throw std::runtime_error(mWriter->errorMessage().toStdString());
  }

private:
  QgsFields mFields;
  std::unique_ptr<QgsVectorFileWriter> mWriter;
};

// 50 000 polygons of 32 corners that share their crooked borders and fill the square.
void writeCover(const QString &path) {
  constexpr int columns = 250, rows = 200, steps = 8; // along each of a polygon's four sides
  constexpr double width = side / (columns * steps), height = side / (rows * steps);
  const auto corner = [&](int i, int k) {
    const double wide = 0.3 * std::sin(12.9898 * i + 78.233 * k), high = 0.3 * std::sin(39.346 * i + 11.135 * k);
    const bool border = i == 0 || k == 0 || i == columns * steps || k == rows * steps;
    return QgsPoint(westEdge + width * (i + (border ? 0 : wide)), northEdge - height * (k + (border ? 0 : high)));
  };
  const char *classes[] = {"open ground", "heath",        "scattered trees", "open woods",
                           "tall forest", "mixed forest", "young growth",    "brush"};
  Layer layer(path, QStringLiteral("class"), host::polygon);
  test::Random random(11);
  for (int row = 0; row < rows; ++row)
    for (int column = 0; column < columns; ++column) {
      QgsPointSequence ring;
      int i = column * steps, k = row * steps;
      for (const auto &[right, down] : {std::pair(1, 0), std::pair(0, 1), std::pair(-1, 0), std::pair(0, -1)})
        for (int step = 0; step < steps; ++step, i += right, k += down)
          ring << corner(i, k);
      ring << ring.first();
      layer.add(new QgsPolygon(new QgsLineString(ring)), QString::fromLatin1(classes[size_t(random.between(0, 8))]));
    }
}

void readBlocks(const QString &path) {
  const std::unique_ptr<GDALDataset> raster(
      GDALDataset::Open(qPrintable(path), GDAL_OF_RASTER, nullptr, nullptr, nullptr));
  GDALRasterBand *band = raster->GetRasterBand(1);
  int width, height;
  band->GetBlockSize(&width, &height);
  std::vector<float> block(size_t(width) * size_t(height));
  for (int y = 0; y * height < band->GetYSize(); ++y)
    for (int x = 0; x * width < band->GetXSize(); ++x)
      if (band->ReadBlock(x, y, block.data()) != CE_None)
        throw std::runtime_error("the terrain model could not be read");
}

QVariant orNone(const QString &path) { return path.isEmpty() ? QVariant() : QVariant(path); }

void annotate(const QString &routes, const QString &legs, const QString &terrain, const QString &cover) {
  run(QStringLiteral("brushline:annotatelegs"), {{QStringLiteral("INPUT"), routes},
                                                 {QStringLiteral("ROUTE_FIELD"), QStringLiteral("route")},
                                                 {QStringLiteral("DATE"), QStringLiteral("2026-06-15")},
                                                 {QStringLiteral("DEM"), orNone(terrain)},
                                                 {QStringLiteral("COVER"), orNone(cover)},
                                                 {QStringLiteral("OUTPUT"), fresh(legs)}});
}

void compareAnnotating(const Host &host, long routes, int repeat) {
  const QString terrain = host.path(QStringLiteral("terrain.tif")), cover = host.path(QStringLiteral("cover.fgb")),
                input = host.path(QStringLiteral("routes.fgb")), legs = host.path(QStringLiteral("legs.fgb"));
  writeTerrain(terrain);
  writeCover(cover);
  writeRoutes(input, routes, RandomRoutes(legLength, legLength));
  const std::vector<double> seconds = leastSeconds(
      {[&] { annotate(input, legs, terrain, cover); }, [&] { readBlocks(terrain); }, [&] { readFeatures(cover); },
       [&] { annotate(input, legs, QString(), QString()); }, [&] { annotate(input, legs, terrain, QString()); },
       [&] { annotate(input, legs, QString(), cover); }},
      repeat);
  std::printf("%ld routes, %ld legs of 300 m; least of %d\n", routes, 100 * routes, repeat);
  const char *names[] = {"b reading the terrain model", "c reading the cover", "d annotatelegs without either",
                         "  annotatelegs with terrain only", "  annotatelegs with cover only"};
  for (size_t i = 1; i < seconds.size(); ++i)
    std::printf("%-56s %7.2f s\n", names[i - 1], seconds[i]);
  print({"annotatelegs with DEM and 50 000 polygons / (reading them + annotatelegs without), " +
             std::to_string(100 * routes) + " legs of 300 m",
         seconds[0], seconds[1] + seconds[2] + seconds[3], 2});
}

// Candidates for marks: some along the legs, the others away from them; or all of them anywhere.
class Candidates {
public:
  static constexpr long alongLegs = 5000;

  explicit Candidates(long routes) : mTaken(size_t(cells) * cells, false) {
    RandomRoutes random(legLength, legLength);
    for (long i = 0; i < routes; ++i) {
      mRoutes.emplace_back(random.next());
      const QgsLineString &route = *mRoutes.back();
      for (double at = 0; at < route.length(); at += cell) {
        const std::unique_ptr<QgsPoint> point(route.interpolatePoint(at));
        const int column = int((point->x() - westEdge) / cell), row = int((northEdge - point->y()) / cell);
        for (int r = std::max(row - 2, 0); r <= std::min(row + 2, cells - 1); ++r)
          for (int c = std::max(column - 2, 0); c <= std::min(column + 2, cells - 1); ++c)
            mTaken[size_t(r) * cells + size_t(c)] = true;
      }
    }
  }

  void write(const QString &path, long count, bool away) {
    Layer layer(fresh(path), QStringLiteral("name"), host::point);
    test::Random random(13);
    for (long i = 0; i < count; ++i) {
      QgsPoint point;
      if (away && i < alongLegs) {
        const QgsLineString &route = *mRoutes[size_t(random.between(0, double(mRoutes.size())))];
        const std::unique_ptr<QgsPoint> on(route.interpolatePoint(random.between(0, route.length())));
        point = QgsPoint(on->x() + random.between(-7, 7), on->y() + random.between(-7, 7));
      } else {
        int column, row;
        do {
          point = QgsPoint(westEdge + random.between(0, side), northEdge - random.between(0, side));
          column = std::min(int((point.x() - westEdge) / cell), cells - 1);
          row = std::min(int((northEdge - point.y()) / cell), cells - 1);
        } while (away && mTaken[size_t(row) * cells + size_t(column)]);
      }
      layer.add(point.clone(), QStringLiteral("Tree %1").arg(i));
    }
  }

private:
  static constexpr double cell = 20;
  static constexpr int cells = int(side / cell);
  std::vector<bool> mTaken; // cells by a leg
  std::vector<std::unique_ptr<QgsLineString>> mRoutes;
};

void chooseMarks(const QString &routes, const QString &candidates, const QString &marks, const QString &terrain,
                 const QString &cover) {
  run(QStringLiteral("brushline:choosemarks"), {{QStringLiteral("INPUT"), routes},
                                                {QStringLiteral("ROUTE_FIELD"), QStringLiteral("route")},
                                                {QStringLiteral("CANDIDATES"), candidates},
                                                {QStringLiteral("DATE"), QStringLiteral("2026-06-15")},
                                                {QStringLiteral("DEM"), terrain},
                                                {QStringLiteral("COVER"), cover},
                                                {QStringLiteral("OUTPUT"), fresh(marks)}});
}

void compareChoosing(const Host &host, long most, int repeat) {
  const QString terrain = host.path(QStringLiteral("terrain.tif")), cover = host.path(QStringLiteral("cover.fgb")),
                routes = host.path(QStringLiteral("routes.fgb")), none = host.path(QStringLiteral("none.fgb")),
                trees = host.path(QStringLiteral("trees.fgb")), marks = host.path(QStringLiteral("marks.fgb"));
  constexpr long count = 10; // routes
  writeTerrain(terrain);
  writeCover(cover);
  writeRoutes(routes, count, RandomRoutes(legLength, legLength));
  {
    // One leg of a metre: what remains is reading, and the index.
    Layer layer(none, QStringLiteral("route"), host::lineString);
    layer.add(
        new QgsLineString(QVector<double>{westEdge + 1, westEdge + 2}, QVector<double>{northEdge - 1, northEdge - 1}),
        QStringLiteral("short"));
  }
  Candidates candidates(count);
  for (const bool away : {true, false}) {
    std::printf("choosemarks, %ld legs of 300 m; least of %d; candidates %s\n%10s %12s %12s %12s\n", 100 * count,
                repeat, away ? "grow away from the legs, 5 a leg beside them" : "grow everywhere", "candidates",
                "all s", "reading s", "beyond it s");
    double first = 0; // seconds beyond reading
    for (long all = 10000; all <= most; all *= 10) {
      candidates.write(trees, all, away);
      const std::vector<double> seconds = leastSeconds({[&] { chooseMarks(routes, trees, marks, terrain, cover); },
                                                        [&] { chooseMarks(none, trees, marks, terrain, cover); }},
                                                       repeat);
      const double beyond = seconds[0] - seconds[1];
      std::printf("%10ld %12.2f %12.2f %12.2f\n", all, seconds[0], seconds[1], beyond);
      std::fflush(stdout);
      if (all == 10000)
        first = beyond;
      else if (away)
        tell("choosemarks beyond reading, " + std::to_string(all) +
                 " candidates / 10000, the others away from 1000 legs",
             text(beyond / first, 2) + " (" + text(beyond, 2) + " s / " + text(first, 2) + " s)", "at most 2",
             beyond <= 2 * first);
    }
  }
}

void makeSurface(const QString &cover, long cells, const QString &surface) {
  run(QStringLiteral("brushline:sightsurface"), {{QStringLiteral("COVER"), cover},
                                                 {QStringLiteral("CELL"), side / double(cells)},
                                                 {QStringLiteral("OUTPUT"), fresh(surface)}});
}

void measureSurface(const Host &host, long cells) {
  const QString cover = host.path(QStringLiteral("cover.fgb"));
  writeCover(cover);
  const double start = peakOf({QStringLiteral("--job")}); // the host alone
  double peak = 0;
  const double seconds =
      leastSeconds({[&] {
                     peak = peakOf({QStringLiteral("--cells"), QString::number(cells), QStringLiteral("--job"), cover,
                                    host.path(QStringLiteral("surface.tif"))});
                   }},
                   1)[0];
  const double beyond = peak - start;
  std::printf("sightsurface, %ld x %ld cells from 50 000 polygons: %.1f s, peak %.0f MB, %.0f MB beyond the host's  "
              "limit 200  %s\n",
              cells, cells, seconds, peak, beyond, beyond < 200 ? "ok" : "over");
  tell("memory of sightsurface beyond the host's, " + std::to_string(cells) + " x " + std::to_string(cells) +
           " cells from 50 000 polygons",
       text(beyond, 0) + " MB (" + text(seconds, 1) + " s)", "under 200 MB", beyond < 200);
}

} // namespace

int main(int argc, char **argv) {
  const Host host(argc, argv);
  return guarded([&] {
    QCommandLineParser parser;
    const auto number = [](const char *name, const char *text, const char *usual) {
      return QCommandLineOption(QString::fromLatin1(name), QString::fromLatin1(text), QStringLiteral("count"),
                                QString::fromLatin1(usual));
    };
    const QCommandLineOption routesOption = number("routes", "Routes of 100 legs each.", "1000"),
                             repeatOption = number("repeat", "Runs of each.", "3"),
                             mostOption = number("candidates", "The most candidates for marks.", "1000000"),
                             cellsOption = number("cells", "Cells of the surface along each side.", "20000");
    const QCommandLineOption marksOption(QStringLiteral("marks"), QStringLiteral("Time choosemarks."));
    const QCommandLineOption surfaceOption(QStringLiteral("surface"), QStringLiteral("Measure sightsurface."));
    const QCommandLineOption jobOption(QStringLiteral("job"),
                                       QStringLiteral("Make one surface and print the peak memory; takes the paths of "
                                                      "the cover and of the output; without them the host's memory."));
    parser.addHelpOption();
    parser.addOptions({routesOption, repeatOption, mostOption, cellsOption, marksOption, surfaceOption, jobOption});
    parser.process(*QCoreApplication::instance());
    const int repeat = parser.value(repeatOption).toInt();
    if (parser.isSet(jobOption)) {
      if (!parser.positionalArguments().isEmpty())
        makeSurface(parser.positionalArguments().at(0), parser.value(cellsOption).toLong(),
                    parser.positionalArguments().at(1));
      std::printf("%.3f\n", peakMegabytes());
    } else if (parser.isSet(surfaceOption)) {
      measureSurface(host, parser.value(cellsOption).toLong());
    } else if (parser.isSet(marksOption)) {
      compareChoosing(host, parser.value(mostOption).toLong(), repeat);
    } else {
      compareAnnotating(host, parser.value(routesOption).toLong(), repeat);
    }
  });
}
