// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "handouts/gpx_export_host.h"
#include "handouts/handout_files_host.h"
#include "shared/base_algorithm.h"

#include <memory>

namespace brushline {

//! Annotated legs, and their marks, as routes and waypoints of a GPX file.
class ExportGpxAlgorithm final : public BaseAlgorithm {
  Q_DECLARE_TR_FUNCTIONS(brushline::ExportGpxAlgorithm)

public:
  QString name() const override;
  QString displayName() const override;
  QString group() const override;
  QString groupId() const override;
  QStringList tags() const override;
  QString shortDescription() const override;
  QgsProcessingAlgorithm *createInstance() const override;
  void initAlgorithm(const QVariantMap &configuration) override;

protected:
  void check(const ParameterReader &reader) const override;
  void prepare(const ParameterReader &reader, QgsProcessingFeedback *feedback) override;
  QVariantMap run(const ParameterReader &reader, QgsProcessingFeedback *feedback) override;

private:
  std::unique_ptr<HandoutFiles> mFiles;
  QString mPath;
  GpxSettings mSettings;
};

} // namespace brushline
