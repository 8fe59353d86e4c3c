// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "handouts/handout_files_host.h"
#include "handouts/leg_sheets_host.h"
#include "shared/base_algorithm.h"

#include <memory>
#include <vector>

namespace brushline {

//! Annotated legs in; for each route, walker and direction a table to print, to read on a phone or to reckon with.
class LegTablesAlgorithm final : public BaseAlgorithm {
  Q_DECLARE_TR_FUNCTIONS(brushline::LegTablesAlgorithm)

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
  bool mCsv = true, mPages = true;
  QString mTitle;
};

} // namespace brushline
