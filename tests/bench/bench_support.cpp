// SPDX-License-Identifier: GPL-2.0-or-later
#include "bench_support.h"

#include "provider.h"
#include "shared/compatibility_host.h"

#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <gdal_priv.h>
#include <qgsexception.h>
#include <qgsgeometry.h>
#include <qgslinestring.h>
#include <qgsnativealgorithms.h>
#include <qgsprocessingcontext.h>
#include <qgsprocessingfeedback.h>
#include <qgsprocessingregistry.h>
#include <qgsvectorfilewriter.h>
#include <qgsvectorlayer.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <limits>
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
    const double length = mRandom.between(mShortest, mLongest);
    const double x = xs.last() + length * std::sin(heading), y = ys.last() + length * std::cos(heading);
    if (inside(x, y)) {
      xs << x;
      ys << y;
    }
  }
  return new QgsLineString(xs, ys);
}

void writeRoutes(const QString &path, long count, RandomRoutes routes) {
  QgsFields fields;
  fields.append(host::field(QStringLiteral("route"), host::FieldType::Text));
  QgsVectorFileWriter::SaveVectorOptions options;
  options.driverName = QStringLiteral("FlatGeobuf");
  const std::unique_ptr<QgsVectorFileWriter> writer(
      QgsVectorFileWriter::create(path, fields, host::lineString, crs(), QgsCoordinateTransformContext(), options));
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

void readFeatures(const QString &path) {
  const QgsVectorLayer layer(path);
  QgsFeatureIterator features = layer.getFeatures();
  QgsFeature feature;
  long count = 0;
  while (features.nextFeature(feature))
    count += feature.hasGeometry();
  if (count == 0)
    throw std::runtime_error("nothing could be read");
}

void writeTerrain(const QString &path) {
  constexpr int cells = 4000; // along each side
  constexpr double cellSize = side / cells;
  struct Wave {
    double east, north, phase, height;
  };
  test::Random random(5);
  std::vector<Wave> waves(8);
  for (Wave &wave : waves) {
    const double length = random.between(700, 8000), towards = random.between(0, 2 * Angle::pi);
    const double perCell = 2 * Angle::pi / length * cellSize;
    wave = {perCell * std::sin(towards), perCell * std::cos(towards), random.between(0, 2 * Angle::pi), length / 50};
  }
  const char *options[] = {"TILED=YES", "BLOCKXSIZE=256", "BLOCKYSIZE=256", "COMPRESS=DEFLATE", nullptr};
  GDALDriver *driver = GetGDALDriverManager()->GetDriverByName("GTiff");
  GDALDataset *raster = driver->Create(qPrintable(path), cells, cells, 1, GDT_Float32, const_cast<char **>(options));
  if (!raster)
    throw std::runtime_error("the terrain model could not be made");
  double place[] = {westEdge, cellSize, 0, northEdge, 0, -cellSize};
  raster->SetGeoTransform(place);
  raster->SetProjection(crs().toWkt().toUtf8().constData());
  std::vector<float> row(cells);
  CPLErr error = CE_None;
  for (int r = 0; r < cells && error == CE_None; ++r) {
    for (int c = 0; c < cells; ++c) {
      double height = 500;
      for (const Wave &wave : waves)
        height += wave.height * std::sin(wave.east * c - wave.north * r + wave.phase);
      row[size_t(c)] = float(height);
    }
    error = raster->GetRasterBand(1)->RasterIO(GF_Write, 0, r, cells, 1, row.data(), cells, 1, GDT_Float32, 0, 0);
  }
  GDALClose(raster);
  if (error != CE_None)
    throw std::runtime_error("the terrain model could not be written");
}

std::vector<double> leastSeconds(const std::vector<std::function<void()>> &jobs, int repeat) {
  std::vector<double> least(jobs.size(), std::numeric_limits<double>::infinity());
  for (int i = 0; i < repeat; ++i)
    for (size_t job = 0; job < jobs.size(); ++job) {
      const auto start = std::chrono::steady_clock::now();
      jobs[job]();
      least[job] =
          std::min(least[job], std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count());
    }
  return least;
}

void print(const Comparison &comparison) {
  const double ratio = comparison.seconds / comparison.seconds_beside;
  std::optional<bool> met;
  if (comparison.limit)
    met = ratio <= *comparison.limit;
  const std::string target = met ? "at most " + text(*comparison.limit, 2) : "none set";
  std::printf("%-56s %7.2f s  ratio %.3f  %s  %s\n", comparison.name.c_str(), comparison.seconds, ratio, target.c_str(),
              !met ? "" : *met ? "ok" : "over");
  std::fflush(stdout);
  tell(comparison.name,
       text(ratio, 3) + " (" + text(comparison.seconds, 2) + " s / " + text(comparison.seconds_beside, 2) + " s)", target,
       met);
}

void tell(const std::string &what, const std::string &measured, const std::string &target, std::optional<bool> met) {
  const char *const path = std::getenv("BRUSHLINE_BENCH");
  if (!path)
    return;
  std::ofstream file(path, std::ios::app);
  file << "| " << what << " | " << measured << " | " << target << " | " << (!met ? "-" : *met ? "met" : "MISSED") << " |\n";
  if (!file.flush())
    throw std::runtime_error(std::string("cannot write to ") + path);
}

std::string text(double value, int decimals) { return QString::number(value, 'f', decimals).toStdString(); }

double peakMegabytes() {
  QFile status(QStringLiteral("/proc/self/status"));
  status.open(QIODevice::ReadOnly);
  for (const QByteArray &line : status.readAll().split('\n'))
    if (line.startsWith("VmHWM:"))
      return line.mid(6).trimmed().split(' ').first().toDouble() / 1024;
  throw std::runtime_error("the system does not tell the peak memory");
}

double peakOf(const QStringList &arguments) {
  QProcess process;
  process.setProcessChannelMode(QProcess::ForwardedErrorChannel);
  process.start(QCoreApplication::applicationFilePath(), arguments);
  bool ok = false;
  process.waitForFinished(-1);
  const double peak = process.readAllStandardOutput().trimmed().toDouble(&ok);
  if (!ok || process.exitCode() != 0)
    throw std::runtime_error("a measured process failed");
  return peak;
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
