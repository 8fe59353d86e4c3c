// SPDX-License-Identifier: GPL-2.0-or-later
// What annotatelegs costs, in one run with
//   a  annotatelegs, routes to FlatGeobuf
//   b  the host's own way to a table of legs: explode lines, then refactor fields to as many columns, both FlatGeobuf
//   c  a bare loop over the host's writer: the same columns, one row of values for all, as many two-point lines
// With --memory: the peak memory of a and c, each in a process of its own, for a tenth of the routes and for all.
#include "bench_support.h"

#include "shared/compatibility_host.h"

#include <QCommandLineParser>
#include <QFile>
#include <qgsexpression.h>
#include <qgsfeatureiterator.h>
#include <qgsgeometry.h>
#include <qgslinestring.h>
#include <qgsvectorfilewriter.h>
#include <qgsvectorlayer.h>

#include <cstdio>
#include <stdexcept>

using namespace brushline;
using namespace brushline::bench;

namespace {

// The columns of annotatelegs, with the values of one leg.
struct Columns {
  QgsFields fields;
  QgsAttributes values;
};

void annotate(const QString &routes, const QString &legs) {
  run(QStringLiteral("brushline:annotatelegs"), {{QStringLiteral("INPUT"), routes},
                                                 {QStringLiteral("ROUTE_FIELD"), QStringLiteral("route")},
                                                 {QStringLiteral("DATE"), QStringLiteral("2026-06-15")},
                                                 {QStringLiteral("OUTPUT"), fresh(legs)}});
}

Columns columnsOf(const QString &legs) {
  const QgsVectorLayer layer(legs);
  QgsFeature leg;
  if (!layer.isValid() || !layer.getFeatures().nextFeature(leg))
    throw std::runtime_error("no legs in " + legs.toStdString());
  return {layer.fields(), leg.attributes()};
}

void explodeAndRefactor(const QString &routes, const Columns &columns, const QString &pieces, const QString &legs) {
  run(QStringLiteral("native:explodelines"),
      {{QStringLiteral("INPUT"), routes}, {QStringLiteral("OUTPUT"), fresh(pieces)}});
  QVariantList mapping;
  for (int i = 0; i < columns.fields.size(); ++i) {
    const QgsField &field = columns.fields.at(i);
    const bool copied = field.name() == QLatin1String("route");
    mapping << QVariantMap{{QStringLiteral("name"), field.name()},
                           {QStringLiteral("type"), int(field.type())},
                           {QStringLiteral("length"), field.length()},
                           {QStringLiteral("precision"), field.precision()},
                           {QStringLiteral("expression"),
                            copied ? QStringLiteral("\"route\"") : QgsExpression::quotedValue(columns.values.at(i))}};
  }
  run(QStringLiteral("native:refactorfields"), {{QStringLiteral("INPUT"), pieces},
                                                {QStringLiteral("FIELDS_MAPPING"), mapping},
                                                {QStringLiteral("OUTPUT"), fresh(legs)}});
}

// The lines are made on the way, for some 0.1 microseconds each.
void writeOnly(long routes, const Columns &columns, const QString &legs) {
  QgsVectorFileWriter::SaveVectorOptions options;
  options.driverName = QgsVectorFileWriter::driverForExtension(legs.section(QLatin1Char('.'), -1));
  const std::unique_ptr<QgsVectorFileWriter> writer(QgsVectorFileWriter::create(
      fresh(legs), columns.fields, host::lineString, crs(), QgsCoordinateTransformContext(), options));
  RandomRoutes random;
  for (long i = 0; i < routes; ++i) {
    const std::unique_ptr<QgsLineString> route(random.next());
    for (int k = 1; k < route->numPoints(); ++k) {
      QgsFeature feature;
      feature.setGeometry(QgsGeometry(new QgsLineString(QVector<double>{route->xAt(k - 1), route->xAt(k)},
                                                        QVector<double>{route->yAt(k - 1), route->yAt(k)})));
      feature.setAttributes(columns.values);
      if (!writer->addFeature(feature, QgsFeatureSink::FastInsert))
        throw std::runtime_error(writer->errorMessage().toStdString());
    }
  }
}

void compareTimes(const Host &host, const Columns &columns, long routes, int repeat) {
  const QString input = host.path(QStringLiteral("routes.fgb"));
  writeRoutes(input, routes);
  const std::vector<double> seconds = leastSeconds(
      {[&] { annotate(input, host.path(QStringLiteral("a.fgb"))); },
       [&] {
         explodeAndRefactor(input, columns, host.path(QStringLiteral("b1.fgb")), host.path(QStringLiteral("b2.fgb")));
       },
       [&] { writeOnly(routes, columns, host.path(QStringLiteral("c.fgb"))); }},
      repeat);
  std::printf("%ld routes, %ld legs; least of %d\n", routes, 100 * routes, repeat);
  std::printf("%-56s %7.2f s\n%-56s %7.2f s\n", "b explodelines, refactorfields", seconds[1], "c writing only",
              seconds[2]);
  const std::string legs = std::to_string(100 * routes) + " legs";
  print({"annotatelegs / (explodelines + refactorfields), " + legs, seconds[0], seconds[1], 0.75});
  print({"annotatelegs / the host's writer alone, " + legs, seconds[0], seconds[2], 1.15});
}

void compareMemory(const Host &host, const QString &sample, long routes) {
  constexpr double limit = 20; // MB
  const auto printGrowth = [](const QString &format, const char *what, double growth, const char *remark) {
    std::printf("%s  %-30s %6.1f MB  %s\n", qPrintable(format), what, growth, remark);
    std::fflush(stdout);
  };
  const auto verdict = [&](const std::string &what, double growth) {
    tell("memory of annotatelegs, " + what + ", from " + std::to_string(10 * routes) + " to " +
             std::to_string(100 * routes) + " legs",
         text(growth, 1) + " MB", "under 20 MB", growth < limit);
    return growth < limit ? "limit 20  ok" : "limit 20  over";
  };
  std::printf("peaks at %ld and %ld routes, and their growth\n", routes / 10, routes);
  // FlatGeobuf's writer keeps an item of its index for every feature, whoever calls it; that of CSV keeps nothing.
  for (const QString &format : {QStringLiteral("fgb"), QStringLiteral("csv")}) {
    double growth[2];
    for (const bool bare : {false, true}) {
      double peak[2];
      for (const bool all : {false, true}) {
        const long count = all ? routes : routes / 10;
        const QString input = host.path(QStringLiteral("routes%1.fgb").arg(count));
        if (!QFile::exists(input))
          writeRoutes(input, count);
        peak[all] = peakOf({QStringLiteral("--routes"), QString::number(count), QStringLiteral("--job"),
                            bare ? QStringLiteral("write") : QStringLiteral("annotate"), input, sample,
                            host.path(QStringLiteral("legs.") + format)});
        printGrowth(format, bare ? "c writing only" : "a annotatelegs", peak[all], "");
      }
      growth[bare] = peak[1] - peak[0];
    }
    const bool flat = format == QLatin1String("csv");
    printGrowth(format, "growth of a", growth[0], flat ? verdict("CSV", growth[0]) : "most of it the writer's");
    const double beyond = growth[0] - growth[1];
    printGrowth(format, "growth of a beyond that of c", beyond,
                verdict(format.toUpper().toStdString() + ", beyond the writer's", beyond));
  }
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
    const QCommandLineOption memoryOption(QStringLiteral("memory"), QStringLiteral("Measure memory, not time."));
    const QCommandLineOption jobOption(QStringLiteral("job"),
                                       QStringLiteral("Do one job (annotate, write) and print its peak memory; takes "
                                                      "the paths of routes, of a sample of legs, and of the output."),
                                       QStringLiteral("name"));
    parser.addHelpOption();
    parser.addOptions({routesOption, repeatOption, memoryOption, jobOption});
    parser.process(*QCoreApplication::instance());
    const long routes = parser.value(routesOption).toLong();
    if (const QStringList paths = parser.positionalArguments(); parser.isSet(jobOption)) {
      if (parser.value(jobOption) == QLatin1String("write"))
        writeOnly(routes, columnsOf(paths.at(1)), paths.at(2));
      else
        annotate(paths.at(0), paths.at(2));
      std::printf("%.3f\n", peakMegabytes());
      return;
    }
    const QString one = host.path(QStringLiteral("one.fgb")), sample = host.path(QStringLiteral("sample.fgb"));
    writeRoutes(one, 1);
    annotate(one, sample);
    if (parser.isSet(memoryOption))
      compareMemory(host, sample, routes);
    else
      compareTimes(host, columnsOf(sample), routes, parser.value(repeatOption).toInt());
  });
}
