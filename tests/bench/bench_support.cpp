// SPDX-License-Identifier: GPL-2.0-or-later
#include "bench_support.h"

#include "provider.h"
#include "shared/compatibility_host.h"

#include <QFile>
#include <QTemporaryDir>
#include <qgsexception.h>
#include <qgsgeometry.h>
#include <qgslinestring.h>
#include <qgsnativealgorithms.h>
#include <qgsprocessingcontext.h>
#include <qgsprocessingfeedback.h>
#include <qgsprocessingregistry.h>
#include <qgsvectorfilewriter.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <stdexcept>
#include <string>

namespace brushline::bench {

Host::Host(int &argc, char **argv) : mFolder(std::make_unique<QTemporaryDir>()) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  qputenv("QGIS_CUSTOM_CONFIG_PATH", QFile::encodeName(mFolder->path()));
  if (qEnvironmentVariableIsEmpty("XDG_RUNTIME_DIR"))
    qputenv("XDG_RUNTIME_DIR", QFile::encodeName(mFolder->path()));
  mApplication = std::make_unique<QgsApplication>(argc, argv, false);
  QgsApplication::setPrefixPath(QStringLiteral("/usr"), true);
  QgsApplication::initQgis();
  QgsProcessingRegistry *registry = QgsApplication::processingRegistry();
  registry->addProvider(new QgsNativeAlgorithms(registry));
  registry->addProvider(new Provider());
}

Host::~Host() { QgsApplication::exitQgis(); }

QString Host::path(const QString &file) const { return mFolder->filePath(file); }

QgsCoordinateReferenceSystem crs() { return QgsCoordinateReferenceSystem(QStringLiteral("EPSG:32621")); }

QgsLineString *RandomRoutes::next() {
  const auto inside = [](double x, double y) {
    return x > westEdge && x < westEdge + side && y < northEdge && y > northEdge - side;
  };
  QVector<double> xs{westEdge + mRandom.between(0, side)}, ys{northEdge - mRandom.between(0, side)};
  double heading = mRandom.between(0, 2 * Angle::pi);
  while (xs.size() < 101) {
    heading += mRandom.between(-Angle::pi / 3, Angle::pi / 3);
    const double length = mRandom.between(80, 120);
    const double x = xs.last() + length * std::sin(heading), y = ys.last() + length * std::cos(heading);
    if (inside(x, y)) {
      xs << x;
      ys << y;
    }
  }
  return new QgsLineString(xs, ys);
}

void writeRoutes(const QString &path, long count) {
  QgsFields fields;
  fields.append(host::field(QStringLiteral("route"), host::FieldType::Text));
  QgsVectorFileWriter::SaveVectorOptions options;
  options.driverName = QStringLiteral("FlatGeobuf");
  const std::unique_ptr<QgsVectorFileWriter> writer(
      QgsVectorFileWriter::create(path, fields, host::lineString, crs(), QgsCoordinateTransformContext(), options));
  RandomRoutes routes;
  for (long i = 1; i <= count; ++i) {
    QgsFeature feature(fields);
    feature.setGeometry(QgsGeometry(routes.next()));
    feature.setAttributes(QVector<QVariant>{QStringLiteral("Route %1").arg(i)});
    if (!writer->addFeature(feature, QgsFeatureSink::FastInsert))
      throw std::runtime_error("the routes could not be written");
  }
}

QVariantMap run(const QString &algorithm, const QVariantMap &parameters) {
  const std::unique_ptr<QgsProcessingAlgorithm> created(
      QgsApplication::processingRegistry()->createAlgorithmById(algorithm));
  if (!created)
    throw std::runtime_error("no algorithm " + algorithm.toStdString());
  QgsProcessingContext context;
  QgsProcessingFeedback feedback(false);
  QString message;
  if (!created->checkParameterValues(parameters, context, &message))
    throw std::runtime_error(message.toStdString());
  bool ok = false;
  const QVariantMap results = created->run(parameters, context, &feedback, &ok);
  if (!ok)
    throw std::runtime_error(feedback.textLog().toStdString());
  return results;
}

QString fresh(const QString &path) {
  QFile::remove(path);
  return path;
}

std::vector<double> medianSeconds(const std::vector<std::function<void()>> &jobs, int repeat) {
  std::vector<std::vector<double>> seconds(jobs.size());
  for (int i = 0; i < repeat; ++i)
    for (size_t job = 0; job < jobs.size(); ++job) {
      const auto start = std::chrono::steady_clock::now();
      jobs[job]();
      seconds[job].push_back(std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count());
    }
  std::vector<double> medians;
  for (auto &of : seconds) {
    std::sort(of.begin(), of.end());
    medians.push_back((of[(of.size() - 1) / 2] + of[of.size() / 2]) / 2);
  }
  return medians;
}

void print(const Comparison &comparison) {
  const double ratio = comparison.seconds / comparison.seconds_beside;
  std::printf("%-56s %7.2f s  ratio %.3f  limit %.2f  %s\n", comparison.name, comparison.seconds, ratio,
              comparison.limit, ratio <= comparison.limit ? "ok" : "over");
  std::fflush(stdout);
}

int guarded(const std::function<void()> &work) {
  std::string message;
  try {
    work();
    return 0;
  } catch (const std::exception &error) {
    message = error.what();
  } catch (const QgsException &error) {
    message = error.what().toStdString();
  }
  std::fprintf(stderr, "failed: %s\n", message.c_str());
  return 1;
}

} // namespace brushline::bench
