// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "shared/feedback_progress_host.h"
#include "shared/parameter_reader_host.h"

#include <qgsprocessingalgorithm.h>

namespace brushline {

/**
 * What all algorithms share: help from their folder, and the boundary at which every exception becomes the host's
 * own (the host ends the program for any other).
 *
 * The desktop runs prepare() in the thread that its window lives in, and run() in another.
 */
class BaseAlgorithm : public QgsProcessingAlgorithm {
public:
  //! From the resource help/<id>.txt, or help/<id>_<language>.txt where there is one.
  QString shortHelpString() const final;
  QIcon icon() const final;
  QString svgIconPath() const final;
  bool checkParameterValues(const QVariantMap &parameters, QgsProcessingContext &context, QString *message) const final;

protected:
  //! Throws QgsProcessingException for values that are of no use. Cheap: reads tables, no rasters.
  virtual void check(const ParameterReader &reader) const = 0;
  //! Takes what is bound to the main thread: rasters, layers to draw. Reads no features, since the window waits for it
  //! and nobody can cancel. The values have been checked.
  virtual void prepare(const ParameterReader &reader, QgsProcessingFeedback *feedback) = 0;
  //! Does the work. Cancelled may be thrown.
  virtual QVariantMap run(const ParameterReader &reader, QgsProcessingFeedback *feedback) = 0;

  void addParameters(const Definitions &definitions);

  //! How many threads the user lets the host have (an option of the host), at least 1.
  static size_t workers();

  bool prepareAlgorithm(const QVariantMap &parameters, QgsProcessingContext &context,
                        QgsProcessingFeedback *feedback) final;
  QVariantMap processAlgorithm(const QVariantMap &parameters, QgsProcessingContext &context,
                               QgsProcessingFeedback *feedback) final;
  QVariantMap postProcessAlgorithm(QgsProcessingContext &context, QgsProcessingFeedback *feedback) final;

private:
  void checkAll(const ParameterReader &reader) const;

  std::shared_ptr<KeptStyles> mStyles; // of what was written
};

} // namespace brushline
