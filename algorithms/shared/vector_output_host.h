// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "shared/kept_styles_host.h"
#include "shared/parameter_reader_host.h"

#include <qgscoordinatereferencesystem.h>
#include <qgsfields.h>

#include <initializer_list>
#include <memory>
#include <optional>
#include <string>
#include <utility>

namespace brushline {

struct TableTarget;

//! Fields by name and type, in their order. \param before others that come first.
QgsFields fieldsOf(std::initializer_list<std::pair<const char *, host::FieldType>> all, QgsFields before = {});

//! NULL for what is not known: none, no number, or an empty text.
QVariant orNull(double value);
QVariant orNull(const std::optional<double> &value);
QVariant orNull(const std::string &text);
QVariant orNull(const QString &text);

/**
 * An output layer that appears whole or not at all: unless finish() is reached, the file, or the table of a database,
 * that was begun is removed.
 */
class VectorOutput {
  Q_DECLARE_TR_FUNCTIONS(brushline::VectorOutput)

public:
  //! Throws QgsProcessingException when the output cannot be made. Null sinks of optional outputs take no features.
  //! \param flags RegeneratePrimaryKey when rows of the input come more than once, with their key.
  VectorOutput(const ParameterReader &reader, const QString &key, const QgsFields &fields, host::WkbType type,
               const QgsCoordinateReferenceSystem &crs, QgsFeatureSink::SinkFlags flags = QgsFeatureSink::SinkFlags());
  ~VectorOutput();
  VectorOutput(const VectorOutput &) = delete;
  VectorOutput &operator=(const VectorOutput &) = delete;

  //! Writes a feature. Throws QgsProcessingException when it cannot be written, as far as that is known by then.
  void add(QgsFeature &feature);

  /**
   * Ends the writing; the layer stays. Throws QgsProcessingException, and nothing stays, when the file does not hold
   * what was added: for GeoPackage, shapefile, FlatGeobuf, GeoJSON and CSV the features in it are counted.
   *
   * \param styleResource path of a style inside the library, applied when the host shows the layer; empty: none.
   * \returns the value for the algorithm's results.
   */
  QString finish(const QString &styleResource);

private:
  void fail(const QString &reason);
  void removeTable(const TableTarget &target) const;
  void seeWalker(const QgsFeature &feature);
  void close();

  QgsProcessingContext &mContext;
  QString mKey;
  QString mDestination;
  QString mGiven; // as the user gave it
  std::unique_ptr<QgsFeatureSink> mSink;
  std::shared_ptr<KeptStyles> mStyles; // null: not to be kept
  long mAdded = 0;
  int mWalkerField;
  std::optional<QString> mWalker; // whose labels are worn; see Look
  QString mFirstWalker;
  bool mFinished = false;
};

} // namespace brushline
