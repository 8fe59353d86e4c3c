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

  //! An output and the path of its style inside the library, applied when the host shows the layer; empty: none.
  using Styled = std::pair<VectorOutput *, QString>;

  /**
   * Ends the writing of all outputs of a run; the layers stay. When it throws none does. QgsProcessingException: a file
   * does not hold what was added; for GeoPackage, shapefile, FlatGeobuf, GeoJSON and CSV the features in it are
   * counted. Cancelled: as soon as a file is closed, or in the middle of a GeoPackage's index.
   *
   * \param outputs null ones were not asked for. \param feedback tells of a cancel, and is told of texts that the
   * format cut; may be null.
   * \returns the algorithm's results, by the outputs' keys.
   */
  static QVariantMap finishAll(std::initializer_list<Styled> outputs, QgsProcessingFeedback *feedback);

  //! The same for one. \returns the value for the algorithm's results.
  QString finish(const QString &styleResource, QgsProcessingFeedback *feedback);

private:
  void fail(const QString &reason);
  void removeTable(const TableTarget &target) const;
  void seeWalker(const QgsFeature &feature);
  void close(const QgsFeedback *feedback);
  QString keep(const QString &styleResource, QgsProcessingFeedback *feedback);

  QgsProcessingContext &mContext;
  QString mKey;
  QString mDestination;
  QString mGiven; // as the user gave it
  std::unique_ptr<QgsFeatureSink> mSink;
  std::shared_ptr<KeptStyles> mStyles;
  long mAdded = 0, mCut = 0; // features in all, and those with a text that the format cuts
  bool mCutsTexts;
  bool mIndexLeftOut; // to be made at the end
  int mWalkerField;
  std::optional<QString> mWalker; // whose labels are worn; see Look
  QString mFirstWalker;
  bool mFinished = false;
};

} // namespace brushline
