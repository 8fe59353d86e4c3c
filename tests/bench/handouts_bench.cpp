// SPDX-License-Identifier: GPL-2.0-or-later
// What handouts cost, in one run with
//   a  exportgpx, annotated legs to GPX: sentences, bearings, and the legs' fields as extensions
//   b  GDAL's own GPX writer through the host: as many points of a layer with the same fields, and with name, comment
//      and description ready made in three more, written with all fields as extensions
//   c  the same, but for the three ready-made texts nothing is read or written
//   d  the host reading the legs with all fields, as a must, and nothing else
// With --memory: the peak memory of a and b, each in a process of its own, for a tenth of the legs and for all.
#include "bench_support.h"

#include "shared/compatibility_host.h"

#include <QCommandLineParser>
#include <QFile>
#include <qgsfeatureiterator.h>
#include <qgsgeometry.h>
#include <qgslinestring.h>
#include <qgspoint.h>
#include <qgsvectorfilewriter.h>
#include <qgsvectorlayer.h>

#include <cstdio>
#include <stdexcept>

using namespace brushline;
using namespace brushline::bench;

namespace {

const QString description = QStringLiteral("Leg 1 of 100, from Split Boulder to Fallen Spruce. Set the dial to 118° "
                                           "(ESE), counted from magnetic north. Walk 107 "
                                           "m: 173 paces, 4.6 minutes. The shortest sight is 35 m. Take 5 sightings, "
                                           "most of them about 46 m apart. It climbs 0.7 "
                                           "m and drops 7.9 m. Cover: open woods. From its end its start is sighted at "
                                           "298°. Two walks of three end less than 5.9 m "
                                           "to either side, and two of three less than 8.3 m short or far. Bearings: "
                                           "true 101.4°, grid 100.0°, magnetic 118.4°, "
                                           "declination 17.0° west.");

std::unique_ptr<QgsVectorFileWriter> writerTo(const QString &path, const QgsFields &fields, host::WkbType type) {
  QgsVectorFileWriter::SaveVectorOptions options;
  options.driverName = QStringLiteral("FlatGeobuf");
  return std::unique_ptr<QgsVectorFileWriter>(
      QgsVectorFileWriter::create(path, fields, type, crs(), QgsCoordinateTransformContext(), options));
}

void add(QgsVectorFileWriter &writer, QgsFeature &feature) {
  if (!writer.addFeature(feature, QgsFeatureSink::FastInsert))
    throw std::runtime_error(writer.errorMessage().toStdString());
}

// Annotated legs with every field filled, 100 to a route, and as points with the texts besides. A route's legs are
// those of the real algorithm; what it leaves empty without cover and terrain is filled in.
void writeLayers(const Host &host, long routes, const QString &legs, const QString &points) {
  const QString lines = host.path(QStringLiteral("lines.fgb")), annotated = host.path(QStringLiteral("annotated.gpkg"));
  writeRoutes(fresh(lines), routes);
  run(QStringLiteral("brushline:annotatelegs"), {{QStringLiteral("INPUT"), lines},
                                                 {QStringLiteral("ROUTE_FIELD"), QStringLiteral("route")},
                                                 {QStringLiteral("DATE"), QStringLiteral("2026-06-15")},
                                                 {QStringLiteral("OUTPUT"), fresh(annotated)}});
  const QgsVectorLayer layer(annotated);
  QgsFields fields = layer.fields();
  fields.remove(fields.lookupField(QStringLiteral("fid")));
  QgsFields more = fields;
  for (const char *text : {"name", "cmt", "desc"})
    more.append(host::field(QString::fromLatin1(text), host::FieldType::Text));
  const auto toLegs = writerTo(fresh(legs), fields, host::lineString),
             toPoints = writerTo(fresh(points), more, host::point);
  test::Random random(7);
  QgsFeature read;
  QgsFeatureIterator features = layer.getFeatures();
  while (features.nextFeature(read)) {
    QVector<QVariant> values = read.attributes();
    values.remove(0); // fid
    for (int i = 0; i < fields.size(); ++i)
      if (values[i].isNull()) {
        const QString name = fields.at(i).name();
        if (name.endsWith(QLatin1String("_m")))
          values[i] = random.between(0, 100);
        else if (name != QLatin1String("walker") && name != QLatin1String("warnings"))
          values[i] = QStringLiteral("Split Boulder");
      }
    QgsFeature leg(fields), point(more);
    leg.setAttributes(values);
    leg.setGeometry(read.geometry());
    add(*toLegs, leg);
    values << QStringLiteral("Split Boulder") << QStringLiteral("118° 173 p") << description;
    point.setAttributes(values);
    point.setGeometry(QgsGeometry(new QgsPoint(read.geometry().vertexAt(0))));
    add(*toPoints, point);
  }
}

void exportLegs(const QString &legs, const QString &gpx) {
  run(QStringLiteral("brushline:exportgpx"), {{QStringLiteral("INPUT"), legs}, {QStringLiteral("OUTPUT"), fresh(gpx)}});
}

void writeByGdal(const QString &points, const QString &gpx, bool allFields) {
  QgsVectorLayer layer(points);
  QgsVectorFileWriter::SaveVectorOptions options;
  options.driverName = QStringLiteral("GPX");
  options.ct = QgsCoordinateTransform(layer.crs(), QgsCoordinateReferenceSystem(QStringLiteral("EPSG:4326")),
                                      QgsCoordinateTransformContext());
  if (allFields)
    options.datasourceOptions << QStringLiteral("GPX_USE_EXTENSIONS=YES");
  else
    for (const char *text : {"name", "cmt", "desc"})
      options.attributes << layer.fields().lookupField(QString::fromLatin1(text));
  QString message;
  if (QgsVectorFileWriter::writeAsVectorFormatV3(&layer, fresh(gpx), QgsCoordinateTransformContext(), options,
                                                 &message) != QgsVectorFileWriter::NoError)
    throw std::runtime_error(message.toStdString());
}

double megabytes(const QString &path) { return double(QFile(path).size()) / (1 << 20); }

void compareTimes(const Host &host, const QString &legs, const QString &points, long routes, int repeat) {
  const QString a = host.path(QStringLiteral("a.gpx")), b = host.path(QStringLiteral("b.gpx")),
                c = host.path(QStringLiteral("c.gpx"));
  const std::vector<double> seconds =
      leastSeconds({[&] { exportLegs(legs, a); }, [&] { writeByGdal(points, b, true); },
                    [&] { writeByGdal(points, c, false); }, [&] { readFeatures(legs); }},
                   repeat);
  std::printf("%ld legs; least of %d\n", 100 * routes, repeat);
  std::printf("%-56s %7.2f s %7.1f MB\n", "a exportgpx", seconds[0], megabytes(a));
  std::printf("%-56s %7.2f s %7.1f MB\n", "b GDAL, all fields as extensions", seconds[1], megabytes(b));
  std::printf("%-56s %7.2f s %7.1f MB\n", "c GDAL, three ready-made texts only", seconds[2], megabytes(c));
  std::printf("%-56s %7.2f s\n", "d reading the legs", seconds[3]);
  const std::string count = std::to_string(100 * routes) + " legs";
  print({"exportgpx / GDAL's writer with all fields, " + count, seconds[0], seconds[1], 2});
  print({"exportgpx / GDAL's writer with three ready texts, " + count, seconds[0], seconds[2], 2});
  print({"exportgpx / (GDAL's writer with three ready texts + reading the legs), " + count,
         seconds[0],
         seconds[2] + seconds[3],
         {}});
}

void compareMemory(const Host &host, const QString &legs, const QString &points, long routes) {
  double peaks[2][2];
  for (const bool all : {false, true}) {
    const long count = all ? routes : routes / 10;
    writeLayers(host, count, legs, points);
    for (const bool gdal : {false, true})
      peaks[all][gdal] = peakOf({QStringLiteral("--job"), gdal ? QStringLiteral("gdal") : QStringLiteral("export"),
                                 gdal ? points : legs, host.path(QStringLiteral("out.gpx"))});
    std::printf("%7ld legs: a exportgpx %6.1f MB, b GDAL %6.1f MB at the peak\n", 100 * count, peaks[all][0],
                peaks[all][1]);
  }
  std::printf("growth of a %.0f bytes a leg\n", (peaks[1][0] - peaks[0][0]) * (1 << 20) / (double(routes) * 90));
}

} // namespace

int main(int argc, char **argv) {
  const Host host(argc, argv);
  return guarded([&] {
    QCommandLineParser parser;
    const QCommandLineOption routesOption(QStringLiteral("routes"), QStringLiteral("Routes of 100 legs each."),
                                          QStringLiteral("count"), QStringLiteral("1000"));
    const QCommandLineOption repeatOption(QStringLiteral("repeat"), QStringLiteral("Runs of each."),
                                          QStringLiteral("count"), QStringLiteral("5"));
    const QCommandLineOption memoryOption(QStringLiteral("memory"), QStringLiteral("Measure memory, not time."));
    const QCommandLineOption keepOption(
        QStringLiteral("keep"), QStringLiteral("Folder for the layers, which are kept."), QStringLiteral("folder"));
    const QCommandLineOption jobOption(
        QStringLiteral("job"),
        QStringLiteral("Do one job (export, gdal, plain) and print its peak memory; takes the "
                       "paths of the layer and of the output."),
        QStringLiteral("name"));
    parser.addHelpOption();
    parser.addOptions({routesOption, repeatOption, memoryOption, keepOption, jobOption});
    parser.process(*QCoreApplication::instance());
    if (const QStringList paths = parser.positionalArguments(); parser.isSet(jobOption)) {
      if (parser.value(jobOption) != QLatin1String("export"))
        writeByGdal(paths.at(0), paths.at(1), parser.value(jobOption) == QLatin1String("gdal"));
      else
        exportLegs(paths.at(0), paths.at(1));
      std::printf("%.3f\n", peakMegabytes());
      return;
    }
    const long routes = parser.value(routesOption).toLong();
    const QString folder = parser.value(keepOption);
    const QString legs = folder.isEmpty() ? host.path(QStringLiteral("legs.fgb")) : folder + QLatin1String("/legs.fgb"),
                  points = folder.isEmpty() ? host.path(QStringLiteral("points.fgb"))
                                            : folder + QLatin1String("/points.fgb");
    if (parser.isSet(memoryOption)) {
      compareMemory(host, legs, points, routes);
      return;
    }
    writeLayers(host, routes, legs, points);
    compareTimes(host, legs, points, routes, parser.value(repeatOption).toInt());
  });
}
