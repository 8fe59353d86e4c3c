// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "shared/compatibility_host.h"
#include "support/work.h"

#include <QTemporaryDir>
#include <QtTest>
#include <qgscoordinatereferencesystem.h>
#include <qgsgeometry.h>
#include <qgsprocessingcontext.h>
#include <qgsprocessingfeedback.h>
#include <qgsvectorlayer.h>

#include <array>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <vector>

namespace brushline::test {

using host::FieldType;

/**
 * Starts the host with settings of its own in a temporary folder and the provider "brushline" in its registry, runs the
 * test object, drops every layer and ends the host.
 */
int hostTestMain(int argc, char **argv, const std::function<std::unique_ptr<QObject>()> &make);

#define BRUSHLINE_HOST_TEST_MAIN(Test)                                                                                 \
  int main(int argc, char **argv) {                                                                                    \
    return brushline::test::hostTestMain(argc, argv, [] { return std::unique_ptr<QObject>(new Test); });               \
  }

// --- what goes in ----------------------------------------------------------------------------------------------------

//! A row of a layer to be made.
struct Row {
  QgsGeometry geometry; //!< null: none
  QVariantList values;  //!< in the order of the fields
};

//! A geometry from its text; throws when the host cannot read it. Empty: none.
QgsGeometry wkt(const QString &text);
//! A line through points "x y", also ones that no text can tell (NaN, infinite).
QgsGeometry line(const std::vector<std::pair<double, double>> &points);

using Layer = std::unique_ptr<QgsVectorLayer>;

//! A layer in memory. \param type "LineString", "PointZ", "None" ... \param crs "EPSG:..."; empty: none.
Layer layer(const QString &name, const QString &type, const QString &crs, const QList<QgsField> &fields,
            const std::vector<Row> &rows);
//! Fields by name and type.
QgsField field(const char *name, FieldType type);
//! A table without geometry.
Layer table(const QString &name, const QList<QgsField> &fields, const std::vector<QVariantList> &rows);

//! The value of a layer parameter.
QVariant valueOf(const Layer &layer);

//! Saves a layer as a file; its ending tells the format.
void save(const Layer &layer, const QString &path);

//! How a raster file is laid out.
struct RasterShape {
  QString crs;
  std::array<double, 6> transform; //!< as GDAL has it: x, width, turn, y, turn, -height
  int columns = 0, rows = 0;
  std::optional<double> no_data, scale, offset;
  bool whole_numbers = false; //!< 16 bit, else 32 bit with a fraction
  int bands = 1;
};
//! Writes a GeoTIFF; value(x, y, band) is asked at the cells' centres, in the raster's coordinates, before scale and
//! offset. NaN: no data.
void writeRaster(const QString &path, const RasterShape &shape,
                 const std::function<double(double x, double y, int band)> &value);

// --- what comes out --------------------------------------------------------------------------------------------------

//! A row of an output.
struct OutputRow {
  QgsGeometry geometry;
  QVariantMap values;

  //! Throws when there is no such field.
  QVariant operator[](const char *field) const;
  double number(const char *field) const; //!< throws for NULL
  QString text(const char *field) const { return (*this)[field].toString(); }
  bool null(const char *field) const { return (*this)[field].isNull(); }
};

//! An output layer, read.
struct Output {
  QgsFields fields;
  host::WkbType type = host::noGeometry;
  QString crs;
  std::vector<OutputRow> rows;

  //! Every value and every coordinate is the same bit for bit, and so is the order.
  bool sameBits(const Output &other) const;
  //! The values of a field, in order, as text.
  QStringList texts(const char *field) const;
};

//! Reads a layer's rows in their order.
Output read(const QgsVectorLayer &layer);

//! Seconds within which a run that is cancelled has to end.
constexpr double soon = 0.1 * slower;

//! Keeps what an algorithm says.
class Ear final : public QgsProcessingFeedback {
public:
  Ear() : QgsProcessingFeedback(false) {}
  void reportError(const QString &error, bool fatal = false) override;
  void pushWarning(const QString &warning) override;
  void pushInfo(const QString &info) override;

  QStringList warnings, errors, infos;
};

//! What came of a run.
struct Outcome {
  bool accepted = false; //!< by checkParameterValues()
  bool ok = false;       //!< accepted, and run() said so
  QString refusal;       //!< of checkParameterValues()
  QStringList warnings, errors, infos;
  double seconds = 0; //!< that run() took
  QVariantMap results;
  std::map<QString, Output> outputs; //!< by key: every layer among the results

  const Output &output(const char *key = "OUTPUT") const; //!< throws when there is none
  const std::vector<OutputRow> &rows(const char *key = "OUTPUT") const { return output(key).rows; }
  //! All that was said, for messages.
  QString said() const;
};

//! How an algorithm is run.
struct Surroundings {
  std::function<void(QgsProcessingContext &)> context; //!< settles the context beforehand
  Ear *ear = nullptr;                                  //!< listens, and may cancel
  bool in_task = false;                                //!< in a thread of the host's, as the desktop does
  bool leave_outputs = false;                          //!< unread
};

//! Checks the parameters, then runs the algorithm, then reads its output layers.
Outcome run(const QString &algorithm, const QVariantMap &parameters, const Surroundings &surroundings = {});

} // namespace brushline::test
