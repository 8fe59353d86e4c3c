// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "shared/compatibility_host.h"
#include "shared/limits.h"

#include <QCoreApplication>
#include <QDate>
#include <QString>
#include <qgsprocessingcontext.h>
#include <qgsprocessingfeedback.h>

#include <memory>
#include <optional>

class QgsRasterLayer;

namespace brushline {

class KeptStyles;

using Definitions = QList<QgsProcessingParameterDefinition *>;

//! Marks a definition as seldom needed.
QgsProcessingParameterDefinition *advanced(QgsProcessingParameterDefinition *definition);
//! Gives a definition the sentence that tooltip and manual show.
QgsProcessingParameterDefinition *helped(QgsProcessingParameterDefinition *definition, const QString &help);
//! A real number with its limits and default.
QgsProcessingParameterDefinition *numberDefinition(const QString &key, const QString &label, const Limits &limits);

/**
 * The values of one run. Every getter throws QgsProcessingException with a message that names the parameter and says
 * what to do when the value is not of use.
 */
class ParameterReader {
  Q_DECLARE_TR_FUNCTIONS(brushline::ParameterReader)

public:
  ParameterReader(const QgsProcessingAlgorithm &algorithm, const QVariantMap &parameters,
                  QgsProcessingContext &context);

  //! Whether the algorithm has such a parameter at all.
  bool has(const QString &key) const { return mAlgorithm.parameterDefinition(key) != nullptr; }
  bool given(const QString &key) const;
  double number(const QString &key, const Limits &limits) const;
  std::optional<double> maybeNumber(const QString &key, const Limits &limits) const;
  //! One of 0 .. count - 1.
  int choice(const QString &key, int count) const;
  bool flag(const QString &key) const;
  QString text(const QString &key) const;
  //! Null when not given.
  QDate maybeDate(const QString &key) const;
  //! Invalid when not given.
  QgsCoordinateReferenceSystem crs(const QString &key) const;
  //! Null only when an optional source is not given.
  std::unique_ptr<QgsProcessingFeatureSource> source(const QString &key) const;
  //! Null only when an optional layer is not given. Main thread.
  QgsRasterLayer *raster(const QString &key) const;
  //! The field's index in a source; -1 when not given.
  int fieldIndex(const QString &key, const QgsProcessingFeatureSource &source) const;

  //! The value of a layer parameter as people gave it, for messages.
  QString shown(const QString &key) const;
  const QgsProcessingParameterDefinition *definition(const QString &key) const;
  QgsProcessingParameterDefinitions definitions() const { return mAlgorithm.parameterDefinitions(); }
  const QVariantMap &parameters() const { return mParameters; }
  QgsProcessingContext &context() const { return mContext; }
  //! The looks of what is written in this run; shared by copies of this reader.
  const std::shared_ptr<KeptStyles> &styles() const { return mStyles; }

private:
  const QgsProcessingAlgorithm &mAlgorithm;
  const QVariantMap &mParameters;
  QgsProcessingContext &mContext;
  std::shared_ptr<KeptStyles> mStyles;
};

//! A number as people write it in messages.
QString plain(double value);

} // namespace brushline
