// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "support/random.h"

#include <QString>
#include <QVariantMap>
#include <qgsapplication.h>
#include <qgscoordinatereferencesystem.h>

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

class QgsLineString;
class QTemporaryDir;

namespace brushline::bench {

//! The host without windows, on a settings folder of its own, with its native algorithms and ours.
class Host {
public:
  Host(int &argc, char **argv);
  ~Host();

  //! A path in a folder that is deleted in the end.
  QString path(const QString &file) const;

private:
  std::unique_ptr<QTemporaryDir> mFolder;
  std::unique_ptr<QgsApplication> mApplication;
};

//! EPSG:32621.
QgsCoordinateReferenceSystem crs();

//! The square of 20 km that all routes stay in.
constexpr double westEdge = 490000, northEdge = 5210000, side = 20000;

//! Routes of 100 legs, each turned by up to 60 degrees from the one before; always the same.
class RandomRoutes {
public:
  //! \param shortest, longest leg, metres.
  explicit RandomRoutes(double shortest = 80, double longest = 120) : mShortest(shortest), mLongest(longest) {}

  //! A new line of 101 vertices.
  QgsLineString *next();

private:
  double mShortest, mLongest;
  test::Random mRandom{20260615};
};

//! Writes that many routes, named by the field route, to a FlatGeobuf.
void writeRoutes(const QString &path, long count, RandomRoutes routes = RandomRoutes());

//! Reads a layer to its end, with all fields. Throws when nothing can be read.
void readFeatures(const QString &path);

//! Writes a terrain model of the square in cells of 5 m: hills, a sum of waves 0.7 to 8 km long.
void writeTerrain(const QString &path);

//! Runs an algorithm; throws when it fails.
QVariantMap run(const QString &algorithm, const QVariantMap &parameters);

//! Deletes a file and returns its path.
QString fresh(const QString &path);

//! The least of each job's seconds: what else the machine does only adds. The jobs run in turn, repeatedly, so that a
//! change of the machine's pace meets all.
std::vector<double> leastSeconds(const std::vector<std::function<void()>> &jobs, int repeat);

//! What took how long, and how long the thing beside it took.
struct Comparison {
  std::string name;
  double seconds;
  double seconds_beside;
  std::optional<double> limit; //!< of seconds / seconds_beside
};

//! Prints a line: name, seconds, ratio, limit, and "ok" or "over"; and tells it.
void print(const Comparison &comparison);

//! A row of the table that run.sh makes, appended to the file that the environment variable BRUSHLINE_BENCH names.
void tell(const std::string &what, const std::string &measured, const std::string &target, std::optional<bool> met);

//! A number with that many decimals.
std::string text(double value, int decimals);

//! This process' peak memory, MB.
double peakMegabytes();

//! Runs this program once more, with arguments that make it print its peak memory. \returns it, MB.
double peakOf(const QStringList &arguments);

//! Does a program's work; the exit code. 1, and the reason on the error stream, when it failed.
int guarded(const std::function<void()> &work);

} // namespace brushline::bench
